"""How much drained per hour, from marks at any times.

An hour is a stretch between two lines of 45 to 75 min, scaled to 60; shorter intervals are joined until they
make one. What drained within 60 min counts as it is, at once. Over a longer stretch of T hours some hour held
at least V / ceil(T): that proves "in any one hour", never "in each of n hours", and is called an average.

Judged is the newest hour: stretches that end less than 45 min before the last line. So an hour that was over
stands until a later whole hour is known.

Cost: each function looks only at the lines of its window: n hours back for an n-hour rule, 75 min back from
each line of the last 45 min for an hour. Linear in the lines of the window, but for those that are 45 to
75 min apart, which are compared pairwise; a chain of hours is looked for only behind a newest hour that meets
the rule.
"""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.engine.ledger import Ledger
from bot.engine.series import Series, first_within, series_of
from bot.engine.values import AT

SHORTEST = timedelta(minutes=45)
LONGEST = timedelta(minutes=75)
HOUR = timedelta(hours=1)
SLACK = LONGEST - HOUR
"""A window of n hours may be so much longer, as an hour may; what it held is then scaled."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Rate:
    """What drained between two lines: `value` in mL/h (a rate) or mL (an amount).

    `average`: the stretch is longer than the window, and some hour of it held at least that much.
    """

    begin: datetime
    end: datetime
    value: float
    average: bool = False
    hours: int = 1
    at_least: bool = False


Inside = Callable[[datetime, datetime], bool]
"""Whether a stretch lies where a rule looks (the first 6 h, say)."""


def anywhere(_begin: datetime, _end: datetime) -> bool:
    """Every stretch."""
    return True


def hour_rates(ledger: Ledger, now: datetime) -> tuple[Rate, ...]:
    """The rates of this drain, in mL/h, from line to line, oldest first: short intervals joined to hours of
    45 to 75 min, longer ones as averages. The rest under 45 min at the end is not among them."""
    series = tuple(point for point in series_of((ledger,)) if point.at <= now)
    found: list[Rate] = []
    begin = 0
    for end in range(1, len(series)):
        if series[end].at - series[begin].at >= SHORTEST:
            found.append(_mean(series, begin, end))
            begin = end
    return tuple(found)


def recent_rate(ledger: Ledger, now: datetime) -> Rate | None:
    """The rate of the newest hour that ends at the last line, in mL/h; the mean of a longer stretch where
    there is no such hour; none with less than 45 min between the lines."""
    return recent_rate_of((ledger,), now)


def recent_rate_of(drains: Sequence[Ledger], now: datetime) -> Rate | None:
    """The same of several drains together, at the rounds in which each had a line."""
    series = tuple(point for point in series_of(drains) if point.at <= now)
    last = len(series) - 1
    for begin in range(last - 1, -1, -1):
        if series[last].at - series[begin].at >= SHORTEST:
            return _mean(series, begin, last)
    return None


def _mean(series: Series, begin: int, end: int) -> Rate:
    """The rate over a stretch as it is measured: no window, no proof."""
    first, last = series[begin], series[end]
    return Rate(
        begin=first.at,
        end=last.at,
        value=_hourly(series, begin, end),
        average=last.at - first.at > LONGEST,
        at_least=last.gaps > first.gaps,
    )


def _hourly(series: Series, begin: int, end: int) -> float:
    """The rate over a stretch, in mL/h."""
    first, last = series[begin], series[end]
    return (last.total_ml - first.total_ml) * HOUR / (last.at - first.at)


def newest_ends(series: Series) -> range:
    """The places of the lines that may end the newest hour: less than 45 min before the last one."""
    last = len(series) - 1
    if last < 0:
        return range(0)
    first = first_within(series, last, SHORTEST)
    if first < last and series[last].at - series[first].at == SHORTEST:
        first = next(place for place in range(first, last + 1) if series[place].at > series[first].at)
    return range(first, last + 1)


def highest_hour(series: Series, inside: Inside = anywhere) -> Rate | None:
    """The highest of the newest hours of 45 to 75 min, in mL/h."""
    return higher(*(_highest_hour(series, end, inside) for end in newest_ends(series)))


def higher(*rates: Rate | None) -> Rate | None:
    """The highest of these; of several as high the one that tells most."""
    return max((rate for rate in rates if rate is not None), key=_telling, default=None)


def _highest_hour(series: Series, end: int, inside: Inside) -> Rate | None:
    """The highest of the hours that end there; of several as high the shortest."""
    highest: float | None = None
    place = end
    for begin in _hours_before(series, end):
        value = _hourly(series, begin, end)
        if (highest is None or value > highest) and inside(series[begin].at, series[end].at):
            highest, place = value, begin
    return None if highest is None else _mean(series, place, end)


def highest_amount(series: Series, window: timedelta, inside: Inside = anywhere) -> Rate | None:
    """The most that is proven to have drained within any window of that length that ends with the newest
    lines, in mL: of what drained within it, and what the next longer stretch proves, up to each of these
    lines; of several as much the one that tells most."""
    most: tuple[float, bool, datetime] | None = None
    stretch = (0, 0)
    for end in newest_ends(series):
        first = first_within(series, end, window)
        for begin in (first, first - 1):
            if 0 <= begin < end and inside(series[begin].at, series[end].at):
                value, average = _proven(series, begin, end, window)
                told = (value, not average, series[end].at)
                if most is None or told > most:
                    most, stretch = told, (begin, end)
    return None if most is None else _amount(series, stretch, window)


def _telling(rate: Rate) -> tuple[float, bool, datetime]:
    return (rate.value, not rate.average, rate.end)


def _proven(series: Series, begin: int, end: int, window: timedelta) -> tuple[float, bool]:
    """What some window of that length held at least, in mL: all, where the stretch is no longer; and whether
    it is an average."""
    first, last = series[begin], series[end]
    span = last.at - first.at
    volume = last.total_ml - first.total_ml
    if span <= window:
        return volume, False
    if span <= window + SLACK:
        return volume * window / span, False
    return volume / math.ceil(span / window), True


def _amount(series: Series, stretch: tuple[int, int], window: timedelta) -> Rate:
    begin, end = stretch
    value, average = _proven(series, begin, end, window)
    return Rate(
        begin=series[begin].at,
        end=series[end].at,
        value=value,
        average=average,
        hours=math.ceil(window / HOUR),
    )


def _hours_before(series: Series, end: int) -> range:
    """The places where an hour of 45 to 75 min begins that ends there, the shortest hour first."""
    latest = bisect_right(series, series[end].at - SHORTEST, 0, end, key=AT) - 1
    return range(latest, first_within(series, end, LONGEST) - 1, -1)


def sustained(
    series: Series,
    hours: int,
    met: Callable[[float], bool],
    *,
    longer: bool = False,
    inside: Inside = anywhere,
) -> Rate | None:
    """The lowest of the newest `hours` hours in a row, in mL/h, when each meets the rule; none otherwise.

    Averages over longer stretches never count. `longer`: together they must last longer than that.
    """
    ends = newest_ends(series)
    if not hours or not any(_meets(series, end, met, inside) for end in ends):
        return None
    first = first_within(series, ends[-1], (hours + 2) * LONGEST)
    chains: list[dict[int, Rate]] = [{place: _nothing(series, place) for place in range(first, len(series))}]
    for _ in range(hours + longer):
        chains.append(_longer_by_one(series, chains[-1], met, inside, longer))
    found = [chain for row in chains[hours:] for end, chain in row.items() if end in ends]
    lasting = [chain for chain in found if not longer or chain.end - chain.begin > hours * HOUR]
    return max(lasting, key=lambda chain: (chain.end, chain.value), default=None)


def _nothing(series: Series, place: int) -> Rate:
    return Rate(begin=series[place].at, end=series[place].at, value=math.inf, hours=0)


def _meets(series: Series, end: int, met: Callable[[float], bool], inside: Inside) -> bool:
    """Whether any hour that ends there meets the rule."""
    return any(
        met(_hourly(series, begin, end)) and inside(series[begin].at, series[end].at)
        for begin in _hours_before(series, end)
    )


def _longer_by_one(
    series: Series, chains: dict[int, Rate], met: Callable[[float], bool], inside: Inside, longest: bool
) -> dict[int, Rate]:
    """Each chain of hours with one more hour put at its end; of several to one line the best."""
    grown: dict[int, Rate] = {}
    for end in chains:
        for begin in _hours_before(series, end):
            chain = chains.get(begin)
            if chain is None:
                continue
            value = _hourly(series, begin, end)
            if met(value) and inside(series[begin].at, series[end].at):
                grown[end] = _better(grown.get(end), _with_hour(chain, series[end].at, value), longest)
    return grown


def _with_hour(chain: Rate, end: datetime, value: float) -> Rate:
    return Rate(begin=chain.begin, end=end, value=min(chain.value, value), hours=chain.hours + 1)


def _better(one: Rate | None, other: Rate, longest: bool) -> Rate:
    if one is None:
        return other
    if longest:
        return min(one, other, key=lambda chain: (chain.begin, -chain.value))
    return max(one, other, key=lambda chain: (chain.value, chain.begin))
