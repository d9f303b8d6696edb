"""Totals over time, of one drain or of several together: what rates and amounts are measured on.

Of several drains the total is known only where each has a line: their lines at most 15 min apart make one
round. Nothing is interpolated.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import groupby
from operator import itemgetter
from typing import TypeAlias

from bot.engine.ledger import Ledger
from bot.engine.values import AT

ROUND = timedelta(minutes=15)


@dataclass(frozen=True, slots=True)
class Point:
    """The total at a moment, in mL. Between two points with different `gaps` more may have drained."""

    at: datetime
    total_ml: int
    gaps: int


Series: TypeAlias = tuple[Point, ...]


def series_of(drains: Sequence[Ledger]) -> Series:
    """The totals of one drain at its lines, or of several together at each round."""
    if len(drains) == 1:
        return _points(drains[0])
    return _rounds([_points(drain) for drain in drains])


def _points(drain: Ledger) -> Series:
    def reckon(before: Series | None) -> Series:
        known = before or ()
        new = (Point(level.at, level.total_ml, level.gaps) for level in drain.levels[len(known) :])
        return (*known, *new)

    return drain.once(_points, reckon)


def _rounds(drains: Sequence[Series]) -> Series:
    """One sweep over all lines: a round wherever each drain's last line is at most 15 min old.

    A drain that has not begun yet has drained nothing. Lines of one moment are one round.
    """
    lines = sorted(
        (point.at, number, place) for number, one in enumerate(drains) for place, point in enumerate(one)
    )
    latest: list[Point | None] = [None] * len(drains)
    rounds: list[Point] = []
    for at, moment in groupby(lines, key=itemgetter(0)):
        for _, number, place in moment:
            latest[number] = drains[number][place]
        begun = [number for number, one in enumerate(drains) if one and one[0].at <= at + ROUND]
        known = [point for number in begun if (point := latest[number]) and at - point.at <= ROUND]
        if len(known) == len(begun):
            rounds.append(Point(at, sum(p.total_ml for p in known), sum(p.gaps for p in known)))
    return tuple(rounds)


def first_within(series: Series, end: int, reach: timedelta) -> int:
    """The place of the first point at most `reach` before the point at `end`."""
    return bisect_left(series, series[end].at - reach, 0, end, key=AT)
