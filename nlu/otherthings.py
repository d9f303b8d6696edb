"""Clauses of another thing: "NG clamped", "the bin next to it fell over", "he pulled his iv out".

What a word of ours tells there is told of that thing: it stands right before the word, or is what something
is done to. A second event, a number, a word for a drain or its line, and an "it" that may be one leave the
clause doubtful. Called by `ownclauses`.
"""

from __future__ import annotations

from collections.abc import Sequence

from .measured import NAMES
from .numbers import Toks, is_digits, starts_number, word
from .patterns.ownclauses import (
    ARTICLES,
    DOUBTFUL,
    HAPPENS,
    HEDGES,
    MOVERS,
    NAMED_BY,
    NEXT_TO,
    OBJECTS,
    PARTS,
    ROOM,
    STRIKES,
    THINGS,
    VAGUE,
)
from .pipeline import Cue
from .somebody import Clause, names_bed

EVENTS = frozenset({"kind", "what", "out", "leak", "fluid"})
SILENT = frozenset({"filler", "word", "other", "okay", "bed", "badunit", "claimed", "about", "neg"})
OF_SUCTION = frozenset({"suction", "gravity"})
LEADING = frozenset({"is", "to", "on", "off", "at", "low", "wall", "intermittent", "continuous", "still"})
PLACING = frozenset(
    {"for", "by", "under", "on", "during", "after", "with", "from", "in", "at", "near", "to", "of", "against"}
)
GOING_ON = frozenset({"out", "off", "over", "away", "closer", "down", "up", "across", "again", "back"})
NO_EVENT = frozenset({"corrected", "withdrawn", "moved"})
DOES, DONE_TO = "does", "done to"
MOST_BEFORE = 3
"""Words before a thing that say which: "his old iv"."""
NO_NAMES = DOUBTFUL | OBJECTS | PLACING
IN_ROOM = (ROOM | THINGS) - VAGUE


def told_of_another(toks: Toks, clause: Clause, cues: Sequence[Cue], behind: str = "") -> str:
    """Whether a clause tells what another thing does, or what is done to one; empty where neither is so.

    `behind` is that of the clause before: "screen cracked | but it still sends".
    """
    beside = word(toks, clause.end) in PLACING and names_bed(toks, clause.end + 1)
    if clause.beds or beside or word(toks, clause.end) == "?":
        return ""
    if behind and word(toks, clause.begins) in OBJECTS:
        return DOES * _is_its_own(toks, clause.begins + 1, clause.end, cues)
    end = _thing(toks, clause.begins, clause.end, cues)
    if end:
        happens = any(_happens(toks, k, cues) for k in range(end, clause.end))
        told = end < clause.end and (word(toks, end) not in PLACING or _is_sucked(toks, end, clause.end))
        return DOES * ((happens or told) and _is_its_own(toks, end, clause.end, cues))
    done = next((k for k in range(clause.begins, clause.end) if _happens(toks, k, cues)), clause.end)
    if not DOUBTFUL.isdisjoint(toks.said[clause.begins : done]):
        return ""
    done = next((c.end for c in cues if c.start <= done < c.end), done + 1)
    end = _thing(toks, done, clause.end, cues, owned=True)
    return DONE_TO * (bool(end) and _is_its_own(toks, end, clause.end, cues, happened=True))


def goes_on_with_event(toks: Toks, clause: Clause, behind: str) -> bool:
    """ "NG out, | clamped", "pulled his iv | and tube out": of that thing as well, or of the drain?"""
    joined = behind == DONE_TO and word(toks, clause.start) == "and" and not clause.who
    return joined or word(toks, clause.begins) in HAPPENS


def _thing(toks: Toks, k: int, end: int, cues: Sequence[Cue], *, owned: bool = False) -> int:
    """Where the words for another thing end that begin there, or 0; `owned`, what something is done to."""
    other = {
        c.start: c.end for c in cues if c.label == "other" and VAGUE.isdisjoint(toks.said[c.start : c.end])
    }
    ours = {j for c in cues if c.label not in SILENT for j in range(c.start, c.end)}
    first = k
    while k < end and not (k in other or _is_room(toks, k)):
        said = word(toks, k)
        plain = said not in NO_NAMES and k not in ours and said.isalpha()
        named = said in ARTICLES | HEDGES or (plain and not owned) or word(toks, k + 1) in ROOM
        if not named or k - first >= MOST_BEFORE or starts_number(toks, k + 1):
            return 0
        k += 1
    if k >= end:
        return 0
    last = other.get(k, k + 1)
    while last < end and (word(toks, last) in PARTS or last in other or _is_room(toks, last)):
        last = other.get(last, last + 1)
    loose = owned and k == first and last < end and word(toks, last) not in GOING_ON
    return 0 if loose else last


def _is_room(toks: Toks, k: int) -> bool:
    said = word(toks, k)
    return said in IN_ROOM or said.removesuffix("s") in ROOM


def _happens(toks: Toks, k: int, cues: Sequence[Cue]) -> bool:
    return word(toks, k) in HAPPENS or any(c.label in EVENTS and c.start <= k < c.end for c in cues)


def _is_its_own(toks: Toks, start: int, end: int, cues: Sequence[Cue], *, happened: bool = False) -> bool:
    """Whether nothing from there on may be of a drain: one thing happens, and no number is told."""
    measured = not NAMES.isdisjoint(toks.said[max(0, start - 2) : start])
    struck = word(toks, start - 1) in MOVERS and start + 1 >= end and word(toks, start) in STRIKES
    if struck or any(_may_be_ours(toks, k, start, measured=measured) for k in range(start, end)):
        return False
    inside = [c for c in cues if start <= c.start < end]
    events = [c for c in inside if c.label in EVENTS and not (happened and c.label == "out")]
    told = (
        {c.label for c in inside if toks.said[c.start : c.end] != ("over",)}
        - EVENTS
        - SILENT
        - {"side", "span", "window", "foreign"}
    )
    told -= {"suction", "levelat", "output"} if measured or _is_sucked(toks, start, end) else set()
    told -= {"ask"} if all(c.value == "repeat" for c in inside if c.label == "ask") else set()  # "again"
    denied = any(c.label == "no" or c.value in NO_EVENT or c.value == "none" for c in inside)
    return not (told or denied) and len(events) + happened <= 1


def _is_sucked(toks: Toks, start: int, end: int) -> bool:
    """ "NG to low suction"."""
    said = toks.said[start:end]
    return not OF_SUCTION.isdisjoint(said) and LEADING.issuperset(said[: _first(said, OF_SUCTION)])


def _first(said: Sequence[str], words: frozenset[str]) -> int:
    return next((k for k, w in enumerate(said) if w in words), len(said))


def _may_be_ours(toks: Toks, k: int, start: int, *, measured: bool) -> bool:
    said = word(toks, k)
    if said in {"one", "ones"}:
        return True  # "drain clamped at 1820, bile one": which drain it was
    if is_digits(toks, k):
        return not (measured and "." in {word(toks, k - 1), word(toks, k + 1)})  # "back at 8.1"
    if said in OBJECTS:
        return word(toks, k - 1) not in NEXT_TO and word(toks, k + 1) not in NAMED_BY.get(said, ())
    if said in OF_SUCTION:
        return not LEADING.issuperset(toks.said[start:k])
    return said in DOUBTFUL - HAPPENS and not (
        said == "wall" and LEADING.issuperset(toks.said[start : k + 1])
    )
