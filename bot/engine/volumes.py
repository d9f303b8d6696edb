"""Volumes to chart: what drained between neighbouring levels, and the shift that charts each.

Each mL is charted once: over any cut at lines the volumes add up to the total.
"""

from __future__ import annotations

from bisect import bisect_left
from datetime import datetime, timedelta
from itertools import dropwhile, islice, pairwise, takewhile

from bot.engine.ledger import Ledger
from bot.engine.policy import ChartBy, Schedule
from bot.engine.shifts import (
    CLOSING_REACH,
    boundary,
    shift_after,
    shift_at,
    shift_before,
    shift_sum,
    sum_between,
)
from bot.engine.values import AT, Boundary, Interval, Level, Shift, Sum


def total(ledger: Ledger) -> Sum:
    """What this drain has drained since its first line or placement, in mL; none with one level."""
    first = ledger.levels[0] if ledger.levels else None
    return sum_between(ledger, first, ledger.last, running=ledger.closed_at is None)


def intervals(ledger: Ledger, schedule: Schedule) -> tuple[Interval, ...]:
    """All volumes to chart, in order, each with its shift.

    None ends in a baseline: up to a first line, a fall or a line after a tip-over nothing is charted.
    """
    return ledger.once(("intervals", schedule), lambda before: _intervals(ledger, schedule, before or ()))


def _intervals(ledger: Ledger, schedule: Schedule, before: tuple[Interval, ...]) -> tuple[Interval, ...]:
    """`before`: those of the ledger without its last entry; what ended before that can change them stays."""
    kept, first = before, 1
    if before:
        since = _changed_since(ledger, schedule)
        kept = before[: bisect_left(before, since, key=lambda interval: interval.end.at)]
        first = max(first, bisect_left(ledger.levels, since, key=AT))
    cuts = _Cuts(ledger, schedule)
    pairs = enumerate(pairwise(ledger.levels[first - 1 :]), start=first)
    new = (cuts.interval(index, begin, end) for index, (begin, end) in pairs if not end.baseline)
    return (*kept, *new)


def _changed_since(ledger: Ledger, schedule: Schedule) -> datetime:
    """From when on the last line may have changed a volume: from itself; where a shift starts so near to it
    that it can be the line of that start, from the start of the shift before."""
    last = ledger.levels[-1]
    reach = max(CLOSING_REACH, schedule.grace) if last.closing else schedule.grace
    if shift_at(schedule, last.at + reach).start < last.at - reach:
        return last.at
    return shift_at(schedule, last.at - reach - timedelta(microseconds=1)).start


def charted(ledger: Ledger, schedule: Schedule, chart_by: ChartBy) -> tuple[Interval, ...]:
    """What goes onto the chart: every volume between lines, or each shift's whole at its closing line."""
    return intervals(ledger, schedule) if chart_by == "mark" else closings(ledger, schedule)


def closings(ledger: Ledger, schedule: Schedule) -> tuple[Interval, ...]:
    """Each closed shift's volume, from the line that it is cut at to the one that ends it, in order."""
    shifts = dict.fromkeys(interval.shift for interval in intervals(ledger, schedule))
    found = (_closing(ledger, schedule, shift) for shift in shifts)
    return tuple(each for each in found if each is not None)


def _closing(ledger: Ledger, schedule: Schedule, shift: Shift) -> Interval | None:
    end = boundary(ledger, schedule, shift.end)
    if end is None or not end.lined:
        return None
    whole = shift_sum(ledger, schedule, shift, shift.end)
    if whole.volume_ml is None or whole.begin is None or whole.end is None:
        return None
    return Interval(
        begin=whole.begin,
        end=whole.end,
        volume_ml=whole.volume_ml,
        at_least=whole.at_least,
        shift=shift,
        includes_before=shift.start
        if whole.begin.at < shift.start and "no_boundary_line" in whole.flags
        else None,
        between=_between(ledger, whole.begin, whole.end),
    )


def _between(ledger: Ledger, begin: Level, end: Level) -> tuple[Level, ...]:
    """What was read between two levels of the ledger."""
    first = bisect_left(ledger.levels, begin.at, key=AT)
    after = dropwhile(lambda level: level.entry != begin.entry, islice(ledger.levels, first, None))
    return tuple(takewhile(lambda level: level.entry != end.entry, islice(after, 1, None)))


def charted_by(charted: tuple[Interval, ...], shift: Shift) -> tuple[Interval, ...]:
    """Those of the volumes that this shift charts."""
    return tuple(interval for interval in charted if interval.shift.start == shift.start)


class _Cuts:
    """Where each shift start cuts the levels, found once per shift."""

    def __init__(self, ledger: Ledger, schedule: Schedule) -> None:
        self._ledger = ledger
        self._schedule = schedule
        self._found: dict[datetime, tuple[Boundary | None, int]] = {}
        self._shift: Shift | None = None

    def interval(self, index: int, begin: Level, end: Level) -> Interval:
        """The volume between two neighbours; `index` is the place of `end` among the levels."""
        shift = self._shift_of(index, end)
        crosses = begin.at < shift.start and not self._lined(shift)
        return Interval(
            begin=begin,
            end=end,
            volume_ml=end.total_ml - begin.total_ml,
            at_least=end.gaps > begin.gaps,
            shift=shift,
            includes_before=shift.start if crosses else None,
        )

    def _shift_of(self, index: int, end: Level) -> Shift:
        """The shift whose boundaries enclose it: not always the one on the clock, as a closing line may be
        up to 2 h early or late."""
        shift = self._shift_at(end.at)
        if self._lined(shift) and index <= self._place(shift):
            return shift_before(self._schedule, shift)
        following = self._following
        if self._lined(following) and index > self._place(following):
            return following
        return shift

    def _shift_at(self, moment: datetime) -> Shift:
        """The shift on the clock; the levels come in order, so it is mostly that of the one before."""
        if self._shift is None or not self._shift.start <= moment < self._shift.end:
            self._shift = shift_at(self._schedule, moment)
            self._following = shift_after(self._schedule, self._shift)
        return self._shift

    def _lined(self, shift: Shift) -> bool:
        found, _ = self._boundary(shift)
        return found is not None and found.lined

    def _place(self, shift: Shift) -> int:
        return self._boundary(shift)[1]

    def _boundary(self, shift: Shift) -> tuple[Boundary | None, int]:
        """The line that the shift's start is cut at, and its place among the levels."""
        if shift.start not in self._found:
            found = boundary(self._ledger, self._schedule, shift.start)
            place = self._ledger.place_of(found.level.entry) if found else None
            self._found[shift.start] = (found, -1 if place is None else place)
        return self._found[shift.start]
