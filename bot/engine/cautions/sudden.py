"""The checks on sudden change: a rise against the hours before, and a stop after a steady flow."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from bot.engine.cautions.scene import Scene, Subject, clamped_spells, raised
from bot.engine.ledger import Ledger
from bot.engine.policy import Rule
from bot.engine.rates import HOUR, LONGEST, SHORTEST, SLACK, newest_ends
from bot.engine.series import Series, first_within
from bot.engine.values import Caution

_LOOK_BACK = timedelta(hours=24)


def sudden_rise(scene: Scene) -> Iterator[Caution]:
    """The newest hour (or less) held many times the mean of the 2 h before it, and not a little."""
    for rule in scene.rules("sudden_rise"):
        for subject in scene.subjects(rule):
            found = _risen(rule, subject) if subject.drain is not None else None
            if found is not None:
                yield found


def sudden_stop(scene: Scene) -> Iterator[Caution]:
    """Next to nothing since a steady flow, not while clamped. It stands until the drain flows again: the
    hours of nothing that follow do not make it usual."""
    for rule, drain in scene.met("sudden_stop"):
        found = _stopped(rule, drain, scene)
        if found is not None:
            yield found


def mean_before(series: Series, place: int, reach: timedelta) -> float | None:
    """The mean of the window before a point, in mL/h, of the hours known (at least one); none otherwise.

    A stretch across which more may have drained than was measured is not known.
    """
    first = first_within(series, place, reach + SLACK)
    begin, end = series[first], series[place]
    if end.at - begin.at < SHORTEST or end.gaps != begin.gaps:
        return None
    return (end.total_ml - begin.total_ml) * HOUR / (end.at - begin.at)


def _risen(rule: Rule, subject: Subject) -> Caution | None:
    series, window = subject.series, timedelta(hours=rule.window_h or 2)
    found: list[Caution] = []
    floor, means = rule.floor or 0, dict[int, float | None]()
    for end in newest_ends(series):
        for begin in range(end - 1, first_within(series, end, LONGEST) - 1, -1):
            if series[end].total_ml - series[begin].total_ml < floor:
                continue  # nor is it that much in an hour
            volume = _in_an_hour(series, begin, end)
            if begin not in means:
                means[begin] = mean_before(series, begin, window)
            mean = means[begin]
            if mean is not None and _is_rise(rule, volume, mean):
                found.append(_rise(rule, subject, (begin, end), volume, mean))
    return max(found, key=lambda caution: (caution.value or 0, caution.end), default=None)


def _is_rise(rule: Rule, volume: float, mean: float) -> bool:
    return volume >= (rule.floor or 0) and rule.met_by(round(volume, 6), round(rule.value * mean, 6))


def _rise(rule: Rule, subject: Subject, stretch: tuple[int, int], volume: float, mean: float) -> Caution:
    begin, end = stretch
    return raised(
        rule,
        subject.drain,
        value=volume,
        limit=rule.value,
        unit="mL",
        comparison=rule.comparison,
        begin=subject.series[begin].at,
        end=subject.series[end].at,
        detail=f"{mean:,.0f} mL/h before",
    )


def _in_an_hour(series: Series, begin: int, end: int) -> float:
    """What the stretch held, in mL; scaled down where it is longer than 60 min."""
    volume = series[end].total_ml - series[begin].total_ml
    return volume * HOUR / max(HOUR, series[end].at - series[begin].at)


def _stopped(rule: Rule, drain: Ledger, scene: Scene) -> Caution | None:
    series = next(one.series for one in scene.subjects(rule) if one.drain is drain)
    last = len(series) - 1
    for begin in range(last - 1, -1, -1):
        span = series[last].at - series[begin].at
        if span > _LOOK_BACK or not _is_still(rule, series, begin, last):
            return None
        mean = mean_before(series, begin, timedelta(hours=rule.window_h or 2))
        steady = mean is not None and mean >= (rule.floor or 0)
        if span >= SHORTEST and steady and not _was_clamped(drain, series[begin].at, series[last].at):
            return raised(
                rule,
                drain,
                value=series[last].total_ml - series[begin].total_ml,
                limit=rule.value,
                unit="mL",
                comparison=rule.comparison,
                begin=series[begin].at,
                end=series[last].at,
                detail=f"{mean:,.0f} mL/h",
            )
    return None


def _is_still(rule: Rule, series: Series, begin: int, last: int) -> bool:
    """At most the row's amount per hour over the whole stretch, all of it measured."""
    span = series[last].at - series[begin].at
    volume = series[last].total_ml - series[begin].total_ml
    hourly = volume * HOUR / span if span >= SHORTEST else float(volume)
    return series[last].gaps == series[begin].gaps and rule.met_by(round(hourly, 6))


def _was_clamped(drain: Ledger, begin: datetime, end: datetime) -> bool:
    return any(on < end and (off is None or off > begin) for on, off in clamped_spells(drain))
