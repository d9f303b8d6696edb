"""Signs that a message broke off behind its number, or that the number is of a removal, a bed or an hour.

"mark 640 at" was to have a time, "left at six" is a line of 6 or six o'clock. Called by `mixups`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .clauses import NUMBERS
from .items import Item
from .numbers import Toks, word
from .rules import Rule

MOST_LABEL, NOON = 99, 12
DRAINED = frozenset({"drain", "chest", "tube", "pleural", "of"})
BROKEN = frozenset(
    {"at", "@", "since", "from", "by", "or", "but", "except", "when", "if", "unless", "with", "of", "is"}
    | {"was", "it's", "its", "that's", "thats", "because", "although", "the", "no"}
)
"""With one of these a message does not end; a "no" behind a line takes something of it back."""
LEADING_ON = frozenset(
    {"at", "as", "and", "the", "it", "time", ",", ".", "uh", "um", "about", "around", "oh"}
)
FILLED = frozenset({"uh", "um", "er", "erm", "hmm", "like", "about", "around"})
ASKING = frozenset({"please", "pls", "can", "could", "you", "i", "we", "need", "want", "to", "ok", "okay"})
REMOVING = frozenset({"remove", "retract", "revert", "unchart", "unsend", "unlog", "subtract", "deduct"})
REMOVING |= {"forget", "stop", "skip", "remind", "imagine", "test"}
"""First in a message these take a line back, or say that none is told yet."""
AWAY = frozenset({"off", "out", "away", "back"})


def _breaking_off(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "mark 640 at", "mark 640 at uh", "mark 640 but": what was to come was not said, a time or a doubt."""
    last = len(toks) - 1
    while last > 0 and (word(toks, last) in FILLED or not word(toks, last)[:1].isalnum()):
        last -= 1
    if word(toks, last) not in BROKEN:
        return
    ends = [i.end for i in items if i.role in NUMBERS | {"time"} and i.end <= last]
    told = ends and any(i.role in NUMBERS for i in items)
    if told and LEADING_ON.issuperset(toks.said[ends[-1] : last]):
        yield "the message breaks off"


def _to_be_removed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "remove bed 6 line 640": a line that is taken back, or a tube, and no new line."""
    first = next((k for k in range(len(toks)) if word(toks, k) not in ASKING), 0)
    taken = word(toks, first) == "take" and word(toks, first + 1) in AWAY
    taken |= toks.said[first : first + 2] == ("report", "from")  # "report from ER bed six 320"
    told = any(i.role in NUMBERS for i in items)
    if told and (taken or word(toks, first) in REMOVING):
        yield "a line to be taken back"


def _label_behind(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "ct 4 to ct 5", "ct four moved to ct five": the bed where the patient went, and no line of 5."""
    for cue, item in pairwise(items):
        place = cue.role == "cue" and word(toks, cue.end - 1) == "ct" and item.start == cue.end
        short = item.role in NUMBERS and (item.amount or 0) <= MOST_LABEL and not (item.unit or item.lead)
        if place and cue.value == "kind" and short:
            yield "a bed behind the place, or a line"


def _of_fluids(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "6 fluids 640": what went in by the vein or by mouth, or the line?"""
    for item in items:
        behind = word(toks, item.start - 1) == "fluids" and word(toks, item.start - 2) not in DRAINED
        if item.role in NUMBERS and behind:
            yield "fluids that went in, or the line"


def _at_an_hour(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed six left at six", "clamped 6", "left 6", "tube came out at 6": a line, or six o'clock?"""
    timed = any(i.role == "time" for i in items)
    for before, item in zip((None, *items), items, strict=False) if not timed else ():
        if item.unit or not 0 < (item.amount or 0) <= NOON:
            continue
        cue = before.value if before is not None and before.role == "cue" else ""
        left = before is not None and before.role == "tube" and word(toks, before.start) == "left"
        left &= sum(i.role == "tube" for i in items) == 1
        left |= cue == "tubeword" and word(toks, item.start - 1) == "ct"
        of_event = ((cue in EVENTS or left) and not item.lead) or (
            cue == "levelat" and any(i.value == "what" for i in items)
        )
        of_event |= item.role == "level" and cue == "opens"
        came = item.role == "volume" and toks.said[item.start - 2 : item.start] == ("out", "at")
        if came or (item.role == "level" and (item.lead in {"at", "new"} or of_event)):
            yield "an hour, or a level"


def _no_line(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 6 no line 640": there is none, or the number is mended."""
    for no, line in pairwise(items):
        joined = no.role == "cue" and no.value == "no" and line.start == no.end
        if joined and line.role == "cue" and line.value == "level" and word(toks, no.start - 1).isalnum():
            yield "no line, or the line"


def _more(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "6 more 40", "bed six plus forty": so much more, and no line of forty."""
    for item in items:
        if item.role == "level" and not item.lead and word(toks, item.start - 1) in {"more", "plus"}:
            yield "so much more, or the line"


def _drained_to(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "6 drained to 640", "drained to forty": to that line, two hundred and forty, or so much?"""
    for item in items:
        k = item.start - 1
        if item.role == "volume" and word(toks, k) in {"to", "too"} and word(toks, k - 1) in DRAINING:
            yield "to that line, or so much"


DRAINING = frozenset({"drained", "drain", "out"})
EVENTS = frozenset({"kind", "what", "waterseal", "tidal"})
HALF_SAID = (
    Rule(_more, frozenset({"level"}), frozenset({"more", "plus"})),
    Rule(_drained_to, frozenset({"volume"}), frozenset({"to", "too"})),
    Rule(_breaking_off, NUMBERS, BROKEN),
    Rule(_to_be_removed, NUMBERS, REMOVING | {"take", "report"}),
    Rule(_label_behind, frozenset({"kind"}), frozenset({"ct"})),
    Rule(_of_fluids, NUMBERS, frozenset({"fluids"})),
    Rule(_at_an_hour, frozenset({"level", "volume"})),
    Rule(_no_line, frozenset({"no"}), frozenset({"line", "mark", "level", "reading"})),
)
"""Typed or dictated."""
