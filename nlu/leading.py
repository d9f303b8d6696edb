"""Which pieces lead in a message: whether its beds, tubes and times are said before their lines, or behind.

"bed 3 0300 310 0400 320 bed 8 0300 715": every bed comes before its lines, so the second line is of bed 3.
Called by `sharing` for `gathering`, and by `roles`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from .items import AMOUNTS, FINDINGS, Item

NO_MOMENT = frozenset({"since", "timeword"})


class Leads(NamedTuple):
    """What is said before its lines all through a message."""

    beds: bool = False
    tubes: bool = False
    times: bool = False
    findings: frozenset[int] = frozenset()
    """Where what was found begins that stands before its own bed."""


def leads(items: Sequence[Item]) -> Leads:
    """What leads in this reading."""
    lines = [i.start for i in items if _is_line(i)]
    findings = frozenset(found_before(items))
    if len(lines) < len(("one line", "the next")):
        return Leads(findings=findings)
    return Leads(
        findings=findings,
        beds=_is_first("bed", items, lines),
        tubes=_is_first("tube", items, lines),
        times=_is_first("time", items, lines) and _are_headings(items, lines),
    )


def found_before(items: Sequence[Item]) -> Iterator[int]:
    """ "no leak 4, no leak 6": behind a finding and its bed, the next finding is of the bed behind it."""
    said = [i for i in items if i.role != "sep"]
    led = next((_is_found(i) for i in said if _is_found(i) or i.role in {"bed", "num"}), False)
    if not led:
        return  # "4 swinging 6 no leak 8 swinging"
    for first, bed, found, other in zip(said, said[1:], said[2:], said[3:], strict=False):
        if _is_found(first) and _is_found(found) and _may_be_bed(bed) and _may_be_bed(other):
            yield found.start


def _is_found(item: Item) -> bool:
    return item.role == "cue" and item.value in FINDINGS


def _may_be_bed(item: Item) -> bool:
    bare = item.role == "num" and item.label is not None and item.known
    return item.role == "bed" or (bare and not (item.lead or item.at or item.unit))


def _is_line(item: Item) -> bool:
    return item.role in AMOUNTS or (item.role == "cue" and item.value == "same")


def _is_first(role: str, items: Sequence[Item], lines: list[int]) -> bool:
    first = next((i.start for i in items if i.role == role), None)
    return first is not None and first < lines[0]


def _are_headings(items: Sequence[Item], lines: list[int]) -> bool:
    """Two times or more, and behind each a line before the next time comes."""
    if any(map(_is_behind_its_line, items, items[1:], items[2:])):
        return False
    times = [i.start for i in items if i.role == "time" and i.lead not in NO_MOMENT]
    ends = [*times[1:], items[-1].end]
    pairs = zip(times, ends, strict=True)
    return len(times) > 1 and all(any(start < line < end for line in lines) for start, end in pairs)


def _is_behind_its_line(line: Item, time: Item, stop: Item) -> bool:
    """ "1830: 4 980, 22 1100 at 1800, 13 880": a time that ends the row of its bed."""
    return _is_line(line) and time.role == "time" and (stop.role == "sep" or time.at)
