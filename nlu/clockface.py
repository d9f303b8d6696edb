"""A time as it was said, before any day is known."""

from __future__ import annotations

from typing import Literal, NamedTuple

from .days import Day

Style = Literal["24", "12", "hour", "now", "ago", "past", "odd", "date"]


class Clock(NamedTuple):
    """A time as said. `sure`: it can be nothing else. `odd`: no rule says which time is meant.

    `back` is minutes before now for `ago`, and minutes after the hour for `past` without an hour.
    `crossed`: minutes taken off twelve o'clock: the half of the day named may be that of either.
    """

    hour: int = 0
    minute: int = 0
    style: Style = "hour"
    part: str = ""
    day: Day | None = None
    back: int = 0
    sure: bool = False
    colon: bool = False
    crossed: bool = False
