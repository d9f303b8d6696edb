"""Shifts: when they start, which line each start is cut at, and what a shift has drained.

Shift starts are the only local times in the engine. A start that a clock change repeats is its first
occurrence; one that it skips comes as much later as the clocks jumped (02:30 becomes 03:30). So every
start is one moment, every moment is in one shift, and a shift may last 11 or 13 hours.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from datetime import UTC, date, datetime, timedelta
from functools import lru_cache
from itertools import pairwise

from bot.engine.ledger import Ledger
from bot.engine.policy import Schedule
from bot.engine.values import AT, Boundary, Level, Shift, Sum

CLOSING_REACH = timedelta(hours=2)
_DAY = timedelta(days=1)


def shift_at(schedule: Schedule, moment: datetime) -> Shift:
    """The shift that holds that moment; a shift start is in the shift that it starts."""
    return _shift_at(schedule, moment.astimezone(UTC))


def shift_before(schedule: Schedule, shift: Shift) -> Shift:
    """The shift that ended when this one started."""
    return shift_at(schedule, shift.start - timedelta(microseconds=1))


def shift_after(schedule: Schedule, shift: Shift) -> Shift:
    """The shift that starts when this one ends."""
    return shift_at(schedule, shift.end)


@lru_cache(maxsize=4096)  # the same few are asked for: now, and where a shift starts and ends
def _shift_at(schedule: Schedule, moment: datetime) -> Shift:
    """The moment in UTC: two of one zone that are an hour apart can be equal."""
    starts, shifts = _around(schedule, moment.astimezone(schedule.zone).date())
    return shifts[bisect_right(starts, moment) - 1]


@lru_cache(maxsize=512)
def _around(schedule: Schedule, day: date) -> tuple[tuple[datetime, ...], tuple[Shift, ...]]:
    """All shifts from two days before that local day to two days after, and when each starts, in UTC."""
    days = [day + offset * _DAY for offset in range(-2, 3)]
    local = [datetime.combine(one, start, tzinfo=schedule.zone) for one in days for start in schedule.starts]
    starts = tuple(sorted({start.astimezone(UTC) for start in local}))
    return starts, tuple(_shift(schedule, *pair) for pair in pairwise(starts))


def _shift(schedule: Schedule, start: datetime, end: datetime) -> Shift:
    return Shift(start=start, end=end, name=_name(start.astimezone(schedule.zone).hour))


def _name(hour: int) -> str:
    return "day" if 4 <= hour < 12 else "evening" if 12 <= hour < 18 else "night"


def boundary(ledger: Ledger, schedule: Schedule, start: datetime) -> Boundary | None:
    """The line that a shift start is cut at; none when there is no line near it nor in the shift before.

    The line told to be closing within 2 h of it (the last entered), else the nearest within the grace (of
    two as near, the earlier), else the last one since the previous start, flagged as `earlier`.
    """
    return ledger.once(("boundary", schedule, start), lambda _: _boundary(ledger, schedule, start))


def _boundary(ledger: Ledger, schedule: Schedule, start: datetime) -> Boundary | None:
    closing = [level for level in _between(ledger.levels, start, CLOSING_REACH) if level.closing]
    if closing:
        last = max(closing, key=lambda level: (level.entered, _position(ledger, level)))
        return Boundary(level=last, start=start, how="closing")
    previous = shift_at(schedule, start - timedelta(microseconds=1)).start
    return nearest_or_earlier(ledger, schedule, start, previous)


def nearest_or_earlier(
    ledger: Ledger, schedule: Schedule, moment: datetime, previous: datetime
) -> Boundary | None:
    """The line nearest to that moment within the grace, else the last one from `previous` on, else none."""
    near = _between(ledger.levels, moment, schedule.grace)
    if near:
        level = _last_of_its_moment(near, min(near, key=lambda one: (abs(one.at - moment), one.at)))
        return Boundary(level=level, start=moment, how="near")
    earlier = ledger.level_before(moment)
    if earlier is None or earlier.at < previous:
        return None
    return Boundary(level=earlier, start=moment, how="earlier")


def _last_of_its_moment(near: Sequence[Level], level: Level) -> Level:
    """Of levels at one moment the last: a final level and the new canister's first line are one cut."""
    return [one for one in near if one.at == level.at][-1]


def _between(levels: Sequence[Level], moment: datetime, reach: timedelta) -> Sequence[Level]:
    first = bisect_left(levels, moment - reach, key=AT)
    return levels[first : bisect_right(levels, moment + reach, key=AT)]


def _position(ledger: Ledger, level: Level) -> int:
    entry = ledger.find(level.entry)
    return entry.position if entry else 0


def shift_sum(ledger: Ledger, schedule: Schedule, shift: Shift, now: datetime) -> Sum:
    """What the shift has drained, in mL: the total at its end boundary (while it runs, at the last line)
    less the total at its start boundary.

    No start boundary: from its first line, flagged `since_first_line`, and `uncounted_before` where an
    earlier line says that something drained before it. Start and end on one line: no sum, never 0.
    """
    begin, flags = _begin_of(ledger, schedule, shift)
    running = now < shift.end
    end, end_flags = _end_of(ledger, schedule, shift, running)
    if end is None and begin is not None:
        # A closing line far before the start: what was read after it is this shift's already.
        end, end_flags = ledger.level_before(shift.end), ("no_closing_line",)
    return sum_between(ledger, begin, end, running=running, flags=(*flags, *end_flags))


def _begin_of(ledger: Ledger, schedule: Schedule, shift: Shift) -> tuple[Level | None, tuple[str, ...]]:
    start = boundary(ledger, schedule, shift.start)
    if start is not None:
        return start.level, () if start.lined else ("no_boundary_line",)
    return first_line_from(ledger, shift.start)


def first_line_from(ledger: Ledger, moment: datetime) -> tuple[Level | None, tuple[str, ...]]:
    """The first line from that moment on, and the flags of a sum that begins there for want of a better."""
    place = bisect_left(ledger.levels, moment, key=AT)
    if place == len(ledger.levels):
        return None, ()
    return ledger.levels[place], ("since_first_line", "uncounted_before") if place else ("since_first_line",)


def _end_of(
    ledger: Ledger, schedule: Schedule, shift: Shift, running: bool
) -> tuple[Level | None, tuple[str, ...]]:
    end = boundary(ledger, schedule, shift.end)
    if running and (end is None or end.how != "closing"):
        return ledger.last, ()
    if end is None:
        return None, ()
    return end.level, () if end.lined else ("no_closing_line",)


def sum_between(
    ledger: Ledger,
    begin: Level | None,
    end: Level | None,
    *,
    running: bool = False,
    flags: tuple[str, ...] = (),
) -> Sum:
    """The volume between two levels; none (never 0) when they are one line, or in the wrong order."""
    if begin is None or end is None or begin.entry == end.entry or _after(ledger, begin, end):
        return Sum(volume_ml=None, begin=begin, end=end, running=running, flags=flags)
    return Sum(
        volume_ml=end.total_ml - begin.total_ml,
        begin=begin,
        end=end,
        at_least=end.gaps > begin.gaps or (ledger.end_unknown and end == ledger.last),
        running=running,
        flags=flags,
    )


def _after(ledger: Ledger, begin: Level, end: Level) -> bool:
    if begin.at != end.at:
        return begin.at > end.at
    order = [level.entry for level in ledger.levels_at(begin.at)]
    return begin.entry in order and end.entry in order and order.index(begin.entry) > order.index(end.entry)
