"""Whether the parts of a message of one bed agree, and what they say together.

No two may contradict each other, and none may have the time or the tube of another; what was found at one
time is one statement. Called by `onebed`.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import fields, replace
from datetime import datetime

from .again import Told
from .statements import (
    Answered,
    Asked,
    Away,
    Back,
    Checked,
    Corrected,
    Described,
    Drained,
    Exchanged,
    Left,
    Mark,
    Moved,
    Ordered,
    Placed,
    Removed,
    Statement,
    Withdrawn,
)

TIMELESS = (Asked, Checked, Corrected, Described, Drained, Ordered)
ONCE = (Exchanged, Left, Moved, Placed, Removed)
OF_PATIENT = (Asked, Away, Back, Left, Moved)
ENDING = (Left, Moved, Removed)
PLACE = frozenset({"bed", "tube", "at", "spans"})


def agree(said: Sequence[Statement], now: datetime, *, aside: bool) -> bool:
    """Whether no part contradicts another, and none may have the time of another or of an `aside`."""
    if any(isinstance(s, Answered | Withdrawn) for s in said):
        return False
    if any(isinstance(s, Checked) and s.at == now for s in said) and any(isinstance(s, Mark) for s in said):
        return False  # "690 at noon, looks serous now": now, or then?
    if aside and any(isinstance(s, Mark | Checked) and s.at is None for s in said):
        return False
    return _is_timed_apart(said) and not any(_contradictions(said)) and _is_of_one_tube(said)


def _is_timed_apart(said: Sequence[Statement]) -> bool:
    """Whether no line may be of the time of another part: "away 1500, back 1640, line 240"."""
    times = {s.at for s in said if s.at is not None}
    events = {s.spans.get("at") for s in said if not isinstance(s, (*TIMELESS, Mark))} - {None}
    if len(times) > 1 and any(isinstance(s, Mark) and s.spans.get("at") in events for s in said):
        return False
    lines = [s.at is not None for s in said if isinstance(s, Mark)]
    return all(lines) or not any(s.at is not None for s in said)


def _contradictions(said: Sequence[Statement]) -> Iterator[bool]:
    """Two of what happens once; two values of one line or finding; what comes after the end."""
    kinds = Counter((s.kind, s.tube) for s in said if isinstance(s, ONCE))
    yield any(n > 1 for n in kinds.values())
    found = [(slot, s.tube) for s in said if isinstance(s, Checked) for slot in _found(s)]
    yield len(set(found)) < len(found)
    lines = Counter((s.tube, s.at) for s in said if isinstance(s, Mark | Corrected))
    yield any(n > 1 for n in lines.values()) or sum(isinstance(s, Mark) for s in said) > 1
    yield any(isinstance(s, Corrected) and s.at is None for s in said)
    yield any(isinstance(s, ENDING) for s in said[:-1]) and any(
        _comes_after(end, s) for end in said if isinstance(end, ENDING) for s in said
    )


def _comes_after(end: Statement, said: Statement) -> bool:
    """Whether something happened to a drain that had ended, or may have."""
    if end is said or isinstance(said, Asked | Corrected | Described):
        return False
    if None not in {end.tube, said.tube} and end.tube != said.tube:
        return False
    return end.at is None or said.at is None or said.at > end.at


def _is_of_one_tube(said: Sequence[Statement]) -> bool:
    """Whether each says of which tube it is, or none does."""
    tubes = {s.tube for s in said if not isinstance(s, OF_PATIENT)}
    return len(tubes) <= 1 or None not in tubes


def _found(said: Checked) -> list[str]:
    """The slots of what was found."""
    return [f.name for f in fields(said) if f.name not in PLACE and getattr(said, f.name) is not None]


def in_one(said: Iterable[Statement]) -> Iterator[Statement]:
    """What is told, and what was found at one time in one statement."""
    found: dict[tuple[str | None, datetime | None], Checked] = {}
    told = tuple(said)
    for each in told:
        if isinstance(each, Checked):
            before = found.get((each.tube, each.at))
            values = {slot: getattr(each, slot) for slot in _found(each)}
            spans = {**each.spans, **(before.spans if before is not None else {})}
            found[each.tube, each.at] = replace(before or each, **values, spans=spans)
    for each in told:
        if not isinstance(each, Checked):
            yield each
        elif (whole := found.pop((each.tube, each.at), None)) is not None:
            yield whole


def with_time_of_all(said: Told) -> Iterator[Statement]:
    """What was found without a time is of the only one that was told."""
    timed = {
        s.at: s.spans.get("at") for s in said if s.at is not None and not isinstance(s, Asked | Corrected)
    }
    for each in said:
        if isinstance(each, Checked) and each.at is None and len(timed) == 1:
            at, span = next(iter(timed.items()))
            yield replace(each, at=at, spans={**each.spans, **({"at": span} if span is not None else {})})
        else:
            yield each
