"""Which moment a time that was said is, given when the message arrived.

Wall clock on the way in, UTC for every difference (a night with a clock change has 11 or 13
hours). Zones by dateutil; digits were read in `clock`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from operator import attrgetter
from typing import NamedTuple
from zoneinfo import ZoneInfo

from dateutil import tz
from dateutil.relativedelta import relativedelta

from .clockface import Clock

SKEW = timedelta(minutes=5)
REACH = timedelta(hours=12)
LIST_REACH = timedelta(hours=16)
BARE_REACH = timedelta(hours=6)
DATE_REACH = timedelta(days=45)
EVENING = 20
MIDDAY = 12
EARLY_EVENING = frozenset({4, 5})
"""Hours of which "tonight" is said in the afternoon too."""
NONE = timedelta(0)
OFFERED = 2
"""Moments of a bare hour that are offered when none is near."""


@dataclass(frozen=True, slots=True)
class Moment:
    """The moments that a clock can be: one is sure, several are a question, none is one too.

    `nearest` is what to offer when no rule settles it.
    """

    values: tuple[datetime, ...] = ()
    nearest: tuple[datetime, ...] = ()

    @property
    def sure(self) -> datetime | None:
        """The only moment that it can be."""
        return self.values[0] if len(self.values) == 1 else None


def moment(clock: Clock, arrived: datetime, reach: timedelta = REACH) -> Moment:
    """The moments that a time as said can be, for a message that arrived then."""
    try:
        return _moment(clock, arrived, reach)
    except (OverflowError, ValueError):
        return Moment()


def distinct(moments: Iterable[datetime]) -> tuple[datetime, ...]:
    """Each moment once, in order: the two 01:30s of a repeated hour are two, though they compare equal."""
    found = tuple(moments)
    return tuple({m.astimezone(UTC): m for m in found}.values()) if len(found) > 1 else found


def since(earlier: datetime, later: datetime) -> timedelta:
    """The time between two moments, as the sun sees it."""
    return later.astimezone(UTC) - earlier.astimezone(UTC)


def is_same_time(before: Sequence[Clock], after: Sequence[Clock]) -> bool:
    """Whether the second time is the first one, said again: "3 o'clock" and then "03:00", noon and 12:00."""
    if len(before) != 1 or len(after) != 1 or {before[0].style, after[0].style} - {"24", "12", "hour"}:
        return False
    first, again = before[0], after[0]
    same = first.minute == again.minute and first.day == again.day
    hours, others = set(_hours(first)), set(_hours(again))
    return same and (hours <= others or others <= hours)


def hours_meant(times: Sequence[Clock]) -> int:
    """How many hours of a day a time can be of: the fewer, the more exactly it was said."""
    return len({hour for clock in times for hour in _hours(clock)})


def soon(clock: Clock, arrived: datetime) -> Iterator[datetime]:
    """The moments of today and tomorrow that a 24-hour time could be, were it a time to come."""
    if clock.style != "24":
        return
    for day in (arrived.date(), arrived.date() + timedelta(days=1)):
        for hour in _hours(clock):
            yield from _local(day, hour, clock.minute, arrived)


def _moment(clock: Clock, arrived: datetime, reach: timedelta) -> Moment:
    match clock.style:
        case "now":
            return Moment((arrived,))
        case "ago":
            back = arrived.astimezone(UTC) - timedelta(minutes=clock.back)
            return Moment((back.astimezone(arrived.tzinfo),))
        case "past":
            hour = arrived if arrived.minute + 5 >= clock.back else arrived - timedelta(hours=1)
            return _settled(hour.date(), [(hour.hour, clock.back)], arrived)
        case "odd" | "date":
            return Moment()
    hours = list(_hours(clock))
    if clock.day == "tonight" and clock.hour in EARLY_EVENING and arrived.hour >= MIDDAY:
        hours = [clock.hour + MIDDAY]  # "five tonight" told at 17:40
    if clock.day is not None and clock.day != "tonight":
        return _on_a_day(clock, hours, arrived)
    return _latest(clock, hours, arrived, reach)


def _hours(clock: Clock) -> Iterator[int]:
    """The hours of a 24-hour day (24: its end) that it can be."""
    hour, part = clock.hour, clock.part
    if part in {"noon", "midnight"} or (clock.style == "24" and not part):
        yield hour
    elif not part:
        yield hour % 12
        yield hour % 12 + 12
    else:
        yield from _hours_of_part(hour, part, clock.style == "24")


def _hours_of_part(hour: int, part: str, full: bool) -> Iterator[int]:
    after_noon = part in {"pm", "afternoon", "evening"} or (part == "night" and 6 <= hour <= 11)
    if hour > 12 or (full and hour == 0):
        late = hour >= 12
        if late == (part not in {"am", "morning"}) or part == "night":
            yield hour
    elif part == "evening" and hour == 12:
        yield 0
    else:
        yield hour % 12 + (12 if after_noon else 0)


class _Past(NamedTuple):
    """A moment that a time could be, and how long ago it was."""

    ago: timedelta
    at: datetime


_by_age = attrgetter("ago")


def _latest(clock: Clock, hours: list[int], arrived: datetime, reach: timedelta) -> Moment:
    today = arrived.date()
    past: list[_Past] = []
    # No time of tomorrow is now before the evening, whatever the clocks do in between.
    for back in (-1, 0, 1, 2) if arrived.hour >= EVENING else (0, 1, 2):
        day = today - timedelta(days=back) if back else today
        for hour in hours:
            first = _first(day, hour, clock.minute, arrived)
            ago = _ago(first, arrived)
            if ago < -SKEW:
                continue
            if _is_plain(first):
                past.append(_Past(ago, first))
                continue
            at = _local(day, hour, clock.minute, arrived)
            if not all(map(_exists, at)):
                if back <= 1 and ago < reach:
                    return Moment()
                continue
            past += [_Past(_ago(m, arrived), m) for m in at]
        if past and len(hours) == 1:
            break  # the same hour of an earlier day is out of reach, and no nearer
        if len(past) >= OFFERED and past[-1].ago > reach and past[-2].ago >= -SKEW:
            break  # what is of an earlier day is out of reach, and no nearer than these
    past = [each for each in past if each.ago >= -SKEW]
    past.sort(key=_by_age)
    return _within(clock, past, reach) if past else Moment()


def _within(clock: Clock, past: list[_Past], reach: timedelta) -> Moment:
    bare = clock.style in {"hour", "12"} and not clock.part
    limit = BARE_REACH if bare else reach
    near = [each for each in past if each.ago <= limit]
    if not near and bare and clock.colon and clock.hour >= 10:
        # "10:15" has four digits: the 24-hour reading, where the 12-hour one is out of reach.
        near = [each for each in past if each.ago <= reach and each.at.hour == clock.hour]
    if not near:
        return Moment((), tuple(each.at for each in past[: OFFERED if bare else 1]))
    first = near[0].at
    if len(near) == 1:
        return Moment((first,))
    shown = (first.hour, first.minute, first.date())
    twice = [each for each in near if (each.at.hour, each.at.minute, each.at.date()) == shown]
    return Moment(tuple(each.at for each in reversed(twice)))


def _on_a_day(clock: Clock, hours: list[int], arrived: datetime) -> Moment:
    day = _day(clock, hours, arrived)
    if day is None:
        return Moment()
    if clock.day == "last":
        # The night of yesterday runs into this morning.
        hours_days = [(h, day if h >= 12 else day + timedelta(days=1)) for h in hours]
    else:
        hours_days = [(h, day) for h in hours]
    found = [m for h, d in hours_days for m in _existing(d, h, clock.minute, arrived)]
    past = tuple(m for m in found if not _ahead(m, arrived))
    if isinstance(clock.day, tuple):
        past = tuple(m for m in past if since(m, arrived) < DATE_REACH)
    near = tuple(m for m in past if since(m, arrived) <= BARE_REACH)
    if len(past) > 1 and near and (clock.style in {"hour", "12"} and not clock.part):
        return Moment((max(near, key=lambda m: m.astimezone(UTC)),))
    return Moment(past)


def _day(clock: Clock, hours: list[int], arrived: datetime) -> date | None:
    today = arrived.date()
    match clock.day:
        case "today":
            return today
        case "yesterday" | "last":
            return today - timedelta(days=1)
        case int() as weekday:
            back = (today.weekday() - weekday) % 7
            if back == 0 and hours and _ahead(_local(today, min(hours), clock.minute, arrived)[0], arrived):
                return None  # "Tuesday 2330", told on Tuesday at ten past midnight: of the night before?
            return today - timedelta(days=back)
        case (int() as month, int() as day):
            return _month_day(month, day, today.year, today.year - 1, today=today)
        case (int() as month, int() as day, int() as year):
            return _month_day(month, day, year, today=today)
        case _:
            return None


def _month_day(month: int, day: int, *years: int, today: date) -> date | None:
    for year in years:
        try:
            found = date(year, month, day)
        except ValueError:
            continue
        if found <= today:
            return found
    return None


def _settled(day: date, times: Iterable[tuple[int, int]], arrived: datetime) -> Moment:
    found = [m for h, minute in times for m in _existing(day, h, minute, arrived)]
    return Moment(tuple(m for m in found if not _ahead(m, arrived)))


def _existing(day: date, hour: int, minute: int, arrived: datetime) -> list[datetime]:
    return [m for m in _local(day, hour, minute, arrived) if _exists(m)]


def _exists(at: datetime) -> bool:
    """Whether the clocks of the ward ever show this: not in the hour that is left out in spring."""
    if _is_plain(at):
        return True
    again = at.astimezone(UTC).astimezone(at.tzinfo)
    return again.replace(tzinfo=None) == at.replace(tzinfo=None)


def _is_plain(at: datetime) -> bool:
    """Whether the clocks show it once: what is left out and what comes twice has two offsets (PEP 495)."""
    return isinstance(at.tzinfo, ZoneInfo) and at.utcoffset() == at.replace(fold=1 - at.fold).utcoffset()


def _first(day: date, hour: int, minute: int, arrived: datetime) -> datetime:
    """The moment that the clocks of the ward show this, the first of two; also where they leave it out."""
    if hour == 24:
        day, hour = day + relativedelta(days=1), 0
    return datetime(day.year, day.month, day.day, hour, minute, tzinfo=arrived.tzinfo)


def _ago(at: datetime, arrived: datetime) -> timedelta:
    """How long before the arrival it was, as the sun sees it; both are of one zone."""
    wall = arrived - at  # between two of one zone these are the hands of the clock
    return wall - ((arrived.utcoffset() or NONE) - (at.utcoffset() or NONE))


def _local(day: date, hour: int, minute: int, arrived: datetime) -> list[datetime]:
    """The moment or two that the clocks of the ward show this; one in a gap is returned too."""
    first = _first(day, hour, minute, arrived)
    second = first.replace(fold=1)
    if first.utcoffset() == second.utcoffset() or not tz.datetime_ambiguous(first):
        return [first]
    return [first, second]


def _ahead(at: datetime, arrived: datetime) -> bool:
    return since(arrived, at) > SKEW
