"""Messages that tell and ask nothing of a drain: a greeting, another device, a goal. Called by `read`."""

from __future__ import annotations

from itertools import pairwise

from .items import FULL_HOUR, Item
from .numbers import Toks, word
from .patterns.numerals import is_number
from .patterns.remarks import GREETING_HEADS, GREETINGS
from .pipeline import Read

NOT_TOLD = frozenset({"bed", "word", "filler", "plan", "reason", "about", "join", "side", "span", "window"})
"""Cues that tell nothing of a drain by themselves."""
TOLD = frozenset({"level", "volume", "output", "check", "weight", "bad", "alt", "num", "denied", "repair"})


DEVICES = frozenset({"foley", "catheter", "jp", "vac", "ng", "hemovac", "bulb", "penrose", "stoma", "bag"})
"""What else has a bag or a bulb that is emptied."""
OURS = frozenset({"level", "levelat", "kind", "what", "final", "old", "question"})
"""With one of these cues more is told than of that device."""


def is_greeting(toks: Toks) -> bool:
    """Whether the words are a greeting and no more: "evening all"."""
    return not toks.words.isdisjoint(GREETING_HEADS) and GREETINGS.issuperset(t.text for t in toks)


def is_nothing_of_ours(items: tuple[Item, ...]) -> bool:
    """Whether nothing is told, and nothing is to be asked: "bed 12 BP 105/60"."""
    roles = {i.role for i in items}
    if roles.isdisjoint({"foreign", "claimed"}) or not roles.isdisjoint(TOLD):
        return False
    cues = {i.value for i in items if i.role == "cue"}
    aside = "foreign" in roles or "reason" not in cues  # "65 yo post op heart"
    if not aside or cues - NOT_TOLD:
        return False
    timed = sum(i.role == "time" for i in items) > 1
    return not (any(_may_be_level(item, timed) for item in items) or _may_be_line(items))


def is_of_another_device(read: Read) -> bool:
    """Dictated "wound vac bed 8 60", "foley for bed 8 350": another device, a bed, and how much was in it.

    Typed it is none of ours; a recogniser may have written it for another word.
    """
    cues = read.cues
    if (
        not cues
        or cues[0].label != "other"
        or DEVICES.isdisjoint(read.tokens.said[cues[0].start : cues[0].end])
    ):
        return False
    labels = {cue.label for cue in cues}
    figures = [k for k in range(len(read.tokens)) if is_number(word(read.tokens, k))]
    return "bed" in labels and not labels & OURS and len(figures) > 1


def _may_be_line(items: tuple[Item, ...]) -> bool:
    """ "full english for breakfast 12 340 at 1900": a bed and its line, where no other bed is named."""
    if any(
        bed.role == "bed" and time.role == "time" and bed is not items[0] for bed, time in pairwise(items)
    ):
        return sum(i.role == "bed" for i in items) > 1  # "10 leaking around the site, 22 at 2100"
    if any(i.role == "bed" for i in items) or not any(i.role == "time" for i in items):
        return False
    return any(
        bed.role == line.role == "claimed" and bed.label is not None and bed.end == line.start
        for bed, line in pairwise(items)
    )


def _may_be_level(item: Item, timed: bool) -> bool:
    """ "12 bp 90/50 0630, 640", "4B 1250 @ 1850 sats 95": a time only for want of another place."""
    loose = item.role == "time" and not (item.sure_time or item.at or item.lead)
    return loose and item.amount is not None and (timed or len(item.digits) < FULL_HOUR)
