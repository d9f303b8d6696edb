"""Cues of an event, an amount or a finding whose next words say that it is of something else.

"pulled the tubing off the box" is no tube that is out; "no drainage at the site", "same suction 20" are no
amount; "brb, back in 5" is nobody's return; "CABGx3" no line of 3. Part of `narrated`, which calls these.
"""

from __future__ import annotations

from collections.abc import Iterator

from .goings import Rule, past
from .neighbours import begins_at
from .numbers import glued, is_digits, word
from .oldones import Message
from .patterns.leads import BED_WORDS
from .patterns.levels import MILLILITRES
from .patterns.otherfigures import COLLECTORS
from .pipeline import Cue

BOXES = frozenset({"box", "canister", "bottle", "drain", "chamber", "unit", "collection", "system"})
TUBES = frozenset({"tube", "tubing", "tubes", "line"})
PULLED = frozenset({"removed", "dislodged"})
SET = frozenset({"suction", "wall", "seal"})
AROUND = frozenset({"at", "around", "from", "on", "under", "near", "about"})
SITES = frozenset({"site", "dressing", "wound", "incision", "insertion", "exit", "skin", "gauze", "stitch"})
SUBJECTS = frozenset({"time", "times", "number", "rest", "everything", "date", "bed", "else"})
IS = frozenset({"is", "was", "are", "were"})
WHOSE = frozenset({"the", "his", "her", "tube", "drain", "insertion", "exit"})
BREAKS = frozenset(
    {"brb", "break", "lunch", "dinner", "coffee", "tea", "food", "loo", "phone", "min", "mins"}
)

STOPS = frozenset({",", ";", ".", "!", "-", "but", "so", "("})
AWAY = frozenset({"into", "away", "onto", "aside"})
LONGEST_LABEL = 3
AWAY_TO = frozenset(
    {("in", "to"), ("in", "for"), ("off", "to"), ("out", "to"), ("over", "to"), ("off", "for")}
)
GETTING = frozenset({"got", "was", "were", "been", "being", "getting", "keep", "kept", "i", "we", "me"})
OF_PATIENT = frozenset(
    {"he", "she", "him", "her", "his", "pt", "patient", "it", "them", "ct", "pigtail", "icd"}
)


def _off_the_box(said: Message) -> Iterator[Cue]:
    """ "toddler pulled the tubing off the box": it came off the canister, and is still in the chest."""
    toks = said.toks
    for cue in said.cues:
        tube = cue.value in PULLED and not TUBES.isdisjoint(toks.said[cue.start : cue.end + 2])
        off = past(toks, cue.end, TUBES | {"the", "his", "her", "chest", "right"})
        box = past(toks, off + 1, frozenset({"the", "his", "her", "of", "collection"}))
        if tube and word(toks, off) in {"off", "from"} and word(toks, box) in BOXES:
            yield Cue("what", "disconnected", cue.start, box + 1)


def _of_the_site(said: Message) -> Iterator[Cue]:
    """ "no drainage around the site": of the dressing, and nothing of how much came."""
    toks = said.toks
    for cue in said.cues:
        place = past(toks, cue.end + 1, WHOSE)
        around = cue.label == "same" and word(toks, cue.end) in AROUND
        if around and (word(toks, place) in SITES or word(toks, place - 1) in SITES):
            yield Cue("word", "drainage", cue.start, place + (word(toks, place) in SITES))


def _same_setting(said: Message) -> Iterator[Cue]:
    """ "same suction 20": what is set as it was, and no output."""
    toks = said.toks
    starts = {c.start: c for c in said.cues if c.label in SET}
    for cue in said.cues:
        follows = starts.get(cue.end)
        if cue.label == "same" and follows is not None and is_digits(toks, follows.end):
            yield Cue("filler", "", cue.start, cue.end)


def _so_many_times(said: Message) -> Iterator[Cue]:
    """ "CABGx3": how many grafts, and no line."""
    toks = said.toks
    for cue in said.cues:
        if cue.label == "reason" and is_digits(toks, cue.end) and glued(toks, cue.end):
            yield cue._replace(end=cue.end + 1)


def _is_right(said: Message) -> Iterator[Cue]:
    """ "that was bed 32, not 33, time is right": what was no mistake, and no side."""
    toks = said.toks
    for cue in said.cues:
        side = cue.label == "side" and toks.said[cue.start : cue.end] == ("right",)
        ends = word(toks, cue.end) in {"", ".", ",", "!"}
        if side and ends and word(toks, cue.start - 1) in IS and word(toks, cue.start - 2) in SUBJECTS:
            yield Cue("filler", "", cue.start - 2, cue.end)


def _back_in_minutes(said: Message) -> Iterator[Cue]:
    """ "brb back in 5", "dinner finally, back in 30": who writes comes back, in so many minutes."""
    toks = said.toks
    alone = not any(word(toks, k) in BED_WORDS for k in range(len(toks)))
    for k in range(len(toks) - 2) if alone else ():
        told = toks.said[k : k + 2] == ("back", "in") and is_digits(toks, k + 2)
        end = past(toks, k + 3, frozenset({"min", "mins", "minutes", "ish"}))
        if told and word(toks, end) in {"", ".", "!", ","}:
            brb = next((c for c in said.cues if "brb" in toks.said[c.start : c.end]), None)
            if brb is not None:
                yield Cue("filler", "", brb.start, brb.end)
            yield Cue("word", "back", k, end)


def _pulled_away(said: Message) -> Iterator[Cue]:
    """ "got pulled into a crash call", "we were pulled away": who writes, and nothing of ours."""
    toks = said.toks
    for cue in said.cues:
        start = begins_at(STOPS, toks, cue.start)
        end = next((k for k in range(cue.end, len(toks)) if word(toks, k) in STOPS), len(toks))
        clause = toks.said[start:end]
        pulled = cue.value == "removed" and toks.said[cue.start : cue.end] == ("pulled",)
        away = word(toks, cue.end) in AWAY or toks.said[cue.end : cue.end + 2] in AWAY_TO
        ours = (TUBES | BOXES | set(BED_WORDS) | OF_PATIENT).isdisjoint(clause)
        if pulled and away and ours and word(toks, cue.start - 1) in GETTING:
            yield Cue("filler", "", cue.start, cue.end + 1)


def _in_another(said: Message) -> Iterator[Cue]:
    """ "340 in bed 9's foley", "200 from the JP": what is in another device is no line of ours."""
    toks = said.toks
    for cue in said.cues:
        holds = not COLLECTORS.isdisjoint(toks.said[cue.start : cue.end])  # not "45 in the hr"
        if cue.label != "other" or not holds or cue.start < len(("340", "in")):
            continue
        k = cue.start - 1
        while k > 0 and _is_of_whom(said, k):
            k -= 1
        number = k - 1 - (word(toks, k) == "of" and word(toks, k - 1) == "out")
        unit = number
        number -= word(toks, number) in MILLILITRES
        led = word(toks, k) in {"in", "from", "via"} or word(toks, k - 1) == "out"
        timed = word(toks, number - 1) in {"at", "@"}  # "mark 340 at 1900 from the foley"
        if led and is_digits(toks, number) and not timed:
            yield Cue("claimed", "", number, unit + 1)


def _is_of_whom(said: Message, k: int) -> bool:
    """Whether it says whose the device is: "bed 9's", "the", "his"."""
    whose = word(said.toks, k) in WHOSE | BED_WORDS | {"'", "s", "'s", "her", "my"}
    label = is_digits(said.toks, k) and len(word(said.toks, k)) <= LONGEST_LABEL
    lettered = any(start <= k < end for start, (end, _) in said.beds.items())
    return whose or lettered or (label and word(said.toks, k - 1) in BED_WORDS | {"in", "from", "of", "via"})


OF_OTHER: tuple[tuple[frozenset[str], Rule], ...] = (
    (TUBES, _off_the_box),
    (SITES, _of_the_site),
    (frozenset({"same"}), _same_setting),
    (frozenset({"cabg"}), _so_many_times),
    (frozenset({"right"}), _is_right),
    (BREAKS, _back_in_minutes),
    (frozenset({"pulled"}), _pulled_away),
    (frozenset({"in", "from", "via", "of"}), _in_another),
)
