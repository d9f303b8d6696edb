"""Words of an event that are only of where something is, or where it stands again.

"left the ward for the scan", "new bottle put up in theatre", "bottle raised onto the bed, now back on the
floor", "returned to theatre", "new box reads 45". Called by `everyday`, for every cue of an event.
"""

from __future__ import annotations

from .neighbours import phrase_of
from .numbers import Toks, numbers, word
from .pipeline import Cue

KNOCKED = frozenset({"raised", "tipped"})
DONE_THERE = frozenset({"exchanged", "left"})
"""What may be told to have been done in theatre, where nobody says that somebody went there."""
SCANS = frozenset(
    {
        "scan",
        "ct",
        "xray",
        "x-ray",
        "mri",
        "theatre",
        "theater",
        "or",
        "surgery",
        "procedure",
        "bronch",
        "echo",
    }
    | {"angio", "ir", "dialysis", "endoscopy", "ultrasound", "test"}
)
"""Whoever leaves the ward for one of these comes back."""
WARDS = frozenset({"floor", "ward", "unit", "department"})
NEW = frozenset({"new", "fresh"})
NAMED = 2
"""Words of "new box"."""
HAS = frozenset({"has", "is", "already", "now"})
MIDNIGHT = 24
"""A number up to this may be an hour."""
MUCH = 500
"""mL that come into a new canister before it is told, at most; a choice of ours, no source."""
SHOWS = frozenset({"reads", "reading", "shows", "showing", "says", "sits", "sitting", "stands"})


def in_place(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue | None:
    """What such a word comes to; nothing where it tells its event."""
    words = phrase_of(cue, toks).split()
    floor = "floor" in (*words, *toks.said[cue.end : cue.end + 3])
    if cue.value == "back" and floor and any(o.value in KNOCKED for o in cues):
        return _quiet(cue)
    if cue.value == "away" and "in" in words and any(o.value in DONE_THERE for o in cues):
        return _quiet(cue)
    if cue.value == "left" and "left" in words and _is_away_before(cue, cues, toks):
        return _quiet(cue)
    ahead = toks.said[cue.end : cue.end + 3]
    if cue.value == "left" and "left" in words[:2] and ahead[:1] == ("for",) and not SCANS.isdisjoint(ahead):
        behind = next(k for k, text in enumerate(ahead) if text in SCANS)
        return cue._replace(value="away", end=cue.end + behind + 1)
    gone = any(o.value == "away" and o.start == cue.end for o in cues)
    if cue.value == "back" and words == ["returned"] and gone:
        return _quiet(cue)
    if cue.value == "exchanged" and words[0] in NEW and len(words) == NAMED:
        if word(toks, cue.end) in SHOWS:
            return _quiet(cue)
        if all(o.label != "old" for o in cues) and (end := _end_before_level(cue, toks)):
            return _quiet(cue._replace(end=end))
    return None


def on_gravity(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue | None:
    """ "suction on gravity", "suction on water seal": none, and nothing was put on."""
    if cue.value != "suction_on" or word(toks, cue.start) != "suction" or cue.end - cue.start != NAMED:
        return None
    none = any(o.label == "waterseal" and o.start == cue.end for o in cues)
    sealed = toks.said[cue.end : cue.end + 2] == ("water", "seal") and not word(toks, cue.end + 2).isdecimal()
    return Cue("waterseal", "", cue.start, cue.end + 2 * sealed) if none or sealed else None


def _is_away_before(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> bool:
    """ "gone to the OR, left the floor 1340": when whoever went there left the ward."""
    ward = not WARDS.isdisjoint(toks.said[cue.start : cue.end + 2])
    return ward and any(o.value == "away" and o.end <= cue.start for o in cues)


def _end_before_level(cue: Cue, toks: Toks) -> int:
    """ "new can 30 at 2230", "new box is 55": where its level begins; a large one may be of the old one."""
    k = cue.end
    while word(toks, k) in HAS:
        k += 1
    k += k > cue.end and word(toks, k) == "at"  # "new box is at forty"
    ends = [n.end for n in numbers(toks, k) if MIDNIGHT < n.value < MUCH]
    end = max(ends, default=k + 1)
    timed = word(toks, end) in {"at", "@"} and word(toks, end + 1).isdecimal() and word(toks, end + 2) != "ml"
    told = bool(ends) and (timed or k > cue.end) and word(toks, end) not in {":", ".", "/"}
    return k if told else 0


def _quiet(cue: Cue) -> Cue:
    return cue._replace(label="filler", value="")
