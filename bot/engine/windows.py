"""Sums over windows: 24 h, n hours, a day, since a moment. Cut at lines; nothing is interpolated."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

from bot.engine.ledger import Ledger
from bot.engine.policy import Schedule
from bot.engine.shifts import boundary, first_line_from, nearest_or_earlier, shift_at, sum_between
from bot.engine.values import Boundary, Level, Sum

_DAY = timedelta(days=1)


def day_at(schedule: Schedule, moment: datetime) -> tuple[datetime, datetime]:
    """The unit's day that holds that moment, start to next start, in UTC (23 or 25 h at a clock change)."""
    local = moment.astimezone(schedule.zone).date()
    starts = [
        datetime.combine(local + offset * _DAY, schedule.day_starts, tzinfo=schedule.zone).astimezone(UTC)
        for offset in (-1, 0, 1, 2)
    ]
    begin = max(start for start in starts if start <= moment)
    return begin, starts[starts.index(begin) + 1]


def window_sum(ledger: Ledger, schedule: Schedule, begin: datetime, end: datetime) -> Sum:
    """What drained from `begin` to `end`, in mL, between the lines that these moments are cut at.

    Each is cut as a shift start is: the nearest line within the grace, else the last one before it in that
    shift (flagged). Without one the sum runs from the first line after `begin`, to the last before `end`.
    The sum names its real ends.
    """
    first, flags = _begin(ledger, schedule, begin)
    last, end_flags = _end(ledger, schedule, end)
    return sum_between(ledger, first, last, flags=(*flags, *end_flags))


def cut(ledger: Ledger, schedule: Schedule, moment: datetime) -> Boundary | None:
    """The line that a window is cut at; at a shift start the same that the shift is cut at."""
    if shift_at(schedule, moment).start == moment:
        return boundary(ledger, schedule, moment)
    return nearest_or_earlier(ledger, schedule, moment, shift_at(schedule, moment).start)


def _begin(ledger: Ledger, schedule: Schedule, moment: datetime) -> tuple[Level | None, tuple[str, ...]]:
    found = cut(ledger, schedule, moment)
    if found is not None:
        return found.level, () if found.lined else ("no_boundary_line",)
    return first_line_from(ledger, moment)


def _end(ledger: Ledger, schedule: Schedule, moment: datetime) -> tuple[Level | None, tuple[str, ...]]:
    found = cut(ledger, schedule, moment)
    if found is not None and found.lined:
        return found.level, ()
    last = ledger.level_before(moment)
    # Nothing after the last line was measured, so a window that ends after it simply ends with it.
    return last, () if last is ledger.last else ("no_closing_line",)
