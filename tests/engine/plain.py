"""What the engine reckons in few steps, reckoned in many: every pair of lines, every ledger that ever was.

Used only to compare with: slow where lines are dense or were told in any order.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence
from datetime import timedelta

from bot.engine.amend import _amended, _charted_afresh, _counts, _Held, _held
from bot.engine.cautions.scene import Subject, raised
from bot.engine.cautions.sudden import _in_an_hour, _is_rise, mean_before
from bot.engine.entries import Entry, Seen
from bot.engine.ledger import Ledger, fold
from bot.engine.past import reaches_back
from bot.engine.policy import ChartBy, Rule, Schedule
from bot.engine.rates import (
    HOUR,
    LONGEST,
    SHORTEST,
    SLACK,
    Inside,
    Rate,
    _better,
    _mean,
    _telling,
    newest_ends,
)
from bot.engine.series import Point, Series, first_within
from bot.engine.values import Amendment, Caution
from bot.engine.volumes import charted


def outstanding(ledger: Ledger, schedule: Schedule, chart_by: ChartBy) -> tuple[Amendment, ...]:
    """The amend list, from two whole ledgers for each step since the last "amended"."""
    entries, since = ledger.entries, _seen(ledger.entries)
    reaching = _reaching_back(entries) if chart_by == "mark" else _counting(entries)
    turns = [turn for turn in reaching if turn >= since]
    if not turns:
        return ()

    def volumes(count: int) -> _Held:
        return _held(charted(fold(entries[:count], ledger.capacity_ml), schedule, chart_by))

    chart: _Held = {}
    known: _Held = {}
    for turn in turns:
        was = volumes(turn)
        chart |= {key: interval for key, interval in was.items() if key not in known}
        known = volumes(turn + 1)
        chart |= _charted_afresh(was, known)
    holds = _held(charted(ledger, schedule, chart_by))
    chart |= {key: interval for key, interval in holds.items() if key not in known}
    stale = [interval for key, interval in chart.items() if key not in holds]
    return _amended(stale, [interval for key, interval in holds.items() if key not in chart])


def _seen(entries: Sequence[Entry]) -> int:
    """How many entries there were when someone last said that the chart was amended."""
    seen = [
        index
        for index, entry in enumerate(entries, start=1)
        if isinstance(entry.payload, Seen) and entry.payload.amended
    ]
    return seen[-1] if seen else 0


def _reaching_back(entries: Sequence[Entry]) -> list[int]:
    """The indexes of the entries that could change what was charted before them."""
    return [
        index
        for index, entry in enumerate(entries)
        if _counts(entry)
        and (reaches_back(entry) or any(entry.at <= earlier.at for earlier in entries[:index]))
    ]


def _counting(entries: Sequence[Entry]) -> list[int]:
    """The indexes of all entries that hold a level or change one: any line may move where a shift is cut."""
    return [index for index, entry in enumerate(entries) if _counts(entry)]


def highest_rate(series: Series, inside: Inside) -> Rate | None:
    """The most of any one hour, from every pair of lines."""
    hours = [
        _mean(series, begin, end)
        for end in newest_ends(series)
        for begin in range(end - 1, -1, -1)
        if SHORTEST <= series[end].at - series[begin].at <= LONGEST
        and inside(series[begin].at, series[end].at)
    ]
    return max((*hours, *amounts(series, HOUR, inside)), key=_telling, default=None)


def highest_amount(series: Series, window: timedelta, inside: Inside) -> Rate | None:
    """The most within any window, from all stretches that prove one."""
    return max(amounts(series, window, inside), key=_telling, default=None)


def amounts(series: Series, window: timedelta, inside: Inside) -> Iterator[Rate]:
    """What the longest stretch that the window holds, and the next longer one, prove, at each newest line."""
    for end in newest_ends(series):
        first = next(place for place, point in enumerate(series) if series[end].at - point.at <= window)
        for begin in (first, first - 1):
            if 0 <= begin < end and inside(series[begin].at, series[end].at):
                yield _amount(series[begin], series[end], window)


def _amount(begin: Point, end: Point, window: timedelta) -> Rate:
    span, volume = end.at - begin.at, end.total_ml - begin.total_ml
    if span <= window:
        value: float = volume
    else:
        value = volume * window / span if span <= window + SLACK else volume / math.ceil(span / window)
    return Rate(
        begin=begin.at,
        end=end.at,
        value=value,
        average=span > window + SLACK,
        hours=math.ceil(window / HOUR),
    )


def sustained(
    series: Series, hours: int, met: Callable[[float], bool], longer: bool, inside: Inside
) -> Rate | None:
    """The lowest of the newest hours in a row, from every chain of them."""
    ends = newest_ends(series)
    if not ends or not hours:
        return None
    first = first_within(series, ends[-1], (hours + 2) * LONGEST)
    chains = [{place: _nothing(series, place) for place in range(first, len(series))}]
    for _ in range(hours + longer):
        chains.append(_longer_by_one(series, chains[-1], met, inside, longer))
    found = [chain for row in chains[hours:] for end, chain in row.items() if end in ends]
    lasting = [chain for chain in found if not longer or chain.end - chain.begin > hours * HOUR]
    return max(lasting, key=lambda chain: (chain.end, chain.value), default=None)


def _nothing(series: Series, place: int) -> Rate:
    return Rate(begin=series[place].at, end=series[place].at, value=math.inf, hours=0)


def _longer_by_one(
    series: Series, chains: dict[int, Rate], met: Callable[[float], bool], inside: Inside, longest: bool
) -> dict[int, Rate]:
    grown: dict[int, Rate] = {}
    for end in chains:
        for begin in range(end - 1, -1, -1):
            chain, span = chains.get(begin), series[end].at - series[begin].at
            if chain is None or not SHORTEST <= span <= LONGEST:
                continue
            value = _mean(series, begin, end).value
            if met(value) and inside(series[begin].at, series[end].at):
                lowest = min(chain.value, value)
                longer = Rate(begin=chain.begin, end=series[end].at, value=lowest, hours=chain.hours + 1)
                grown[end] = _better(grown.get(end), longer, longest)
    return grown


def risen(rule: Rule, subject: Subject) -> Caution | None:
    """The sudden rise, from every pair of lines."""
    series, window = subject.series, timedelta(hours=rule.window_h or 2)
    found: list[Caution] = []
    for end in newest_ends(series):
        for begin in range(end - 1, -1, -1):
            mean = mean_before(series, begin, window)
            volume = _in_an_hour(series, begin, end)
            near = series[end].at - series[begin].at <= LONGEST
            if near and mean is not None and _is_rise(rule, volume, mean):
                found.append(
                    raised(
                        rule,
                        subject.drain,
                        value=volume,
                        limit=rule.value,
                        unit="mL",
                        comparison=rule.comparison,
                        begin=series[begin].at,
                        end=series[end].at,
                        detail=f"{mean:,.0f} mL/h before",
                    )
                )
    return max(found, key=lambda caution: (caution.value or 0, caution.end), default=None)
