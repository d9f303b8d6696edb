"""Where a bed stands, beside its label: the side room that is SR2, the bay that bed 14 is in.

A side room is a label of its own, never the bed of its number. A bay beside a bed whose label has no
bay in it says only where that bed is. Called by `wall` and `recast`.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from .labels import bed_label
from .numbers import Toks, heard_as_number, is_digits, numbers, starts_number, word

SIDE_ROOMS = (
    ("side", "room"), ("side", "rooms"), ("side", "rm"), ("side", "rms"),
    ("side", "ward"), ("side", "-", "room"), ("s", "/", "r"), ("sideroom",)
)  # fmt: skip
FIRST_WORDS = frozenset(name[0] for name in SIDE_ROOMS)
PREFIXES = ("sr", "sideroom", "siderm", "s", "side")
"""How a unit writes the label of a side room, before its number."""
BAYS = frozenset({"bay"})
BEDS = frozenset({"bed", "beds", "bd", "b"})
REACH = 5
"""Words back to where a side room before this number begins."""
PAUSES = frozenset({"-", "/"})
WHERE = frozenset({"on", "in", "from"})
"""Before a bay these say where who writes is: "nurse on bay two, bed seven"."""


def side_room(toks: Toks, i: int, index: Mapping[str, str], *, voice: bool) -> tuple[int, str] | None:
    """The end and label of the side room that is named here; one that the unit lacks is told as SR3."""
    if toks.words.isdisjoint(FIRST_WORDS):
        return None
    for name in SIDE_ROOMS:
        start = i + len(name)
        if tuple(word(toks, k) for k in range(i, start)) != name:
            continue
        start += word(toks, start) in {"number", "no", "#"}
        told = list(values(toks, start, voice=voice))
        return _likeliest(told, index)
    return _next_in_row(toks, i, index, voice=voice)


def _next_in_row(toks: Toks, i: int, index: Mapping[str, str], *, voice: bool) -> tuple[int, str] | None:
    """The "2" of "side rooms 1 and 2"."""
    if word(toks, i - 1) not in {"and", "&", "or"} or not starts_number(toks, i):
        return None
    rooms = (side_room(toks, k, index, voice=voice) for k in range(max(0, i - REACH), i - 1))
    named = any(found is not None and found[0] == i - 1 for found in rooms)
    return _likeliest(list(values(toks, i, voice=voice)), index) if named else None


def _likeliest(told: list[tuple[int, str]], index: Mapping[str, str]) -> tuple[int, str] | None:
    """The side room of the unit among the numbers that can stand at a place, or the shortest as said."""
    known = [(end, label) for end, value in told for label in _labels(value, index)]
    return next(iter(known or [(end, f"SR{value}") for end, value in reversed(told)]), None)


def _labels(value: str, index: Mapping[str, str]) -> list[str]:
    """The labels of the unit that a side room of this number can have."""
    found = [bed_label(f"{prefix}{value}", index) for prefix in PREFIXES]
    return [label for label in found if label is not None]


def values(toks: Toks, i: int, *, voice: bool) -> Iterator[tuple[int, str]]:
    """The digits or number that can stand here, longest first."""
    if is_digits(toks, i):
        yield i + 1, word(toks, i)
        return
    found = numbers(toks, i) + (heard_as_number(toks, i) if voice else [])
    told = [n for n in found if n.style in {"plain", "heard", "spelt"} and n.value.denominator == 1]
    yield from ((n.end, str(n.value)) for n in sorted(told, key=lambda n: -n.end))


def bays(toks: Toks, index: Mapping[str, str] | None, *, voice: bool) -> Iterator[tuple[int, int]]:
    """Where a bay begins and ends that only says where a bed is: the "bay 3" of "bay 3 bed 14"."""
    if index is None or toks.words.isdisjoint(BAYS):
        return
    for i in range(len(toks)):
        if word(toks, i) in BAYS:
            ends = (end for end, _ in values(toks, i + 1, voice=voice))
            found = (_beside_bed(toks, i, end, index, voice=voice) for end in ends)
            if (end := next((e for e in found if e), 0)) > 0:
                yield i, end


def _beside_bed(toks: Toks, i: int, end: int, index: Mapping[str, str], *, voice: bool) -> int:
    """Where the bay ends that is named beside a bed of the unit, 0 if there is no such bed."""
    paused = word(toks, end) in PAUSES or (word(toks, end) == "," and word(toks, i - 1) in WHERE)
    behind = end + paused
    if word(toks, behind) in BEDS and _is_bed(toks, behind + 1, index, voice=voice):
        return behind
    before = [k for k in range(max(0, i - 4), i) if word(toks, k) in BEDS]
    near = (e for k in before for e, value in values(toks, k + 1, voice=voice) if bed_label(value, index))
    return end if any(e in {i, i - (word(toks, i - 1) in PAUSES)} for e in near) else 0


def _is_bed(toks: Toks, i: int, index: Mapping[str, str], *, voice: bool) -> bool:
    return any(bed_label(value, index) for _, value in values(toks, i, voice=voice))
