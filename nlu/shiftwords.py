""" "On nights": which of the unit's shifts that is, seen from the moment of arrival. Called by `queries`."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, time, timedelta
from itertools import pairwise
from typing import Literal

INSIDE = {"nights": time(3), "days": time(12)}
"""An hour that lies in every night shift, and in every day shift."""
JUST_BEGUN = timedelta(hours=2)
"""So early in a night shift, "on nights" may well be the night before."""


SAID = frozenset({"night", "nights", "days", "overnight"})
"""Whose output is asked with one of these is of no other window."""
WORKING = frozenset({"nurse", "nurses", "staff", "shift", "team", "crew", "rn", "get", "have", "girl", "lot"})
SUMMED = frozenset({"total", "totals", "output", "sum", "volume"})


def whose(names: Sequence[str]) -> str:
    """ "what did the night nurse get": whose shift is meant, "nights", "days", or nothing."""
    for name, after in pairwise(names):
        if name in {"night", "nights", "days", "day"} and after in WORKING:
            return "nights" if name.startswith("night") else "days"
        if name == "night" and after in SUMMED:
            return "nights"  # "night total for 3"
    return ""


def named_shift(
    name: str, arrived: datetime, starts: Sequence[time]
) -> Literal["shift", "last_shift"] | None:
    """The shift at hand or the one before, if it is the one named; nothing where that is not sure."""
    if name not in INSIDE or not starts:
        return None
    begins = _begins(arrived, starts)
    if _is_inside(begins[2], begins[3], INSIDE[name]):
        return "shift" if arrived - begins[2] >= JUST_BEGUN else None
    return "last_shift" if _is_inside(begins[1], begins[2], INSIDE[name]) else None


def night(
    which: Literal["last", "this"], arrived: datetime, starts: Sequence[time]
) -> Literal["shift", "last_shift"] | None:
    """The night shift of "last night" or "tonight", if it is the one at hand or the one before.

    Before midnight last night is the one before this night; towards its end, it is this one.
    """
    if not starts:
        return None
    begins = _begins(arrived, starts)
    now = _is_inside(begins[2], begins[3], INSIDE["nights"])
    if which == "this":
        return "shift" if now else None
    if now:
        late = arrived.date() > begins[2].date() and arrived.time() >= INSIDE["nights"]
        return "shift" if late and begins[3] - arrived <= JUST_BEGUN else None
    return "last_shift" if _is_inside(begins[1], begins[2], INSIDE["nights"]) else None


def begun(arrived: datetime, starts: Sequence[time]) -> tuple[datetime, datetime]:
    """When the shift at hand began, and when the next one begins."""
    _, _, last, following = _begins(arrived, starts)
    return last, following


def _begins(arrived: datetime, starts: Sequence[time]) -> list[datetime]:
    """Three starts of shifts up to the arrival and the next one, by the clocks of the ward."""
    days = [arrived.date() + timedelta(days=k) for k in (-3, -2, -1, 0, 1)]
    found = sorted(datetime.combine(day, start, arrived.tzinfo) for day in days for start in starts)
    now = sum(at <= arrived for at in found)
    return found[now - 3 : now + 1]


def _is_inside(begin: datetime, end: datetime, hour: time) -> bool:
    days = {begin.date(), end.date()}
    return any(begin <= datetime.combine(day, hour, begin.tzinfo) < end for day in days)
