"""The unit's policy: thresholds as rows, each with its comparison, window, severity and source.

Every number is a default that the unit's own policy and the provider's orders override.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import time, timedelta, tzinfo
from typing import Literal

from bot.engine.values import Severity


@dataclass(frozen=True, slots=True, kw_only=True)
class Schedule:
    """The unit's shift starts, local time, and the day that the 24-hour total begins at."""

    zone: tzinfo
    starts: tuple[time, ...] = (time(7), time(19))
    day_starts: time = time(7)
    grace: timedelta = timedelta(minutes=30)


Measure = Literal[
    "rate",
    "each_hour",
    "amount",
    "since_placement",
    "times_mean",
    "stop",
    "level",
    "fraction",
    "check",
    "minutes",
    "told",
]


@dataclass(frozen=True, slots=True, kw_only=True)
class Rule:
    """One row: when `measure` over `window` compares so with `value`, the caution `code` is raised.

    value: mL, mL/h, mL/kg/h (where `per_kg`), cm, mmHg, or a fraction. window: hours.
    """

    id: str
    code: str
    profiles: tuple[str, ...]
    population: Literal["adult", "child", "all"]
    measure: Measure
    comparison: Literal["over", "at_least", "under", "at_most"]
    value: float
    window_h: float | None = None
    per_kg: bool = False
    severity: Severity
    source: str
    source_status: Literal["seen", "second-hand", "memory", "common practice", "derived", "unit"]
    on: bool = True


@dataclass(frozen=True, slots=True, kw_only=True)
class Policy:
    """All that the engine needs to know of a unit."""

    schedule: Schedule
    rules: tuple[Rule, ...] = ()
    capacity_ml: int = 2000
    chart_by: Literal["mark", "shift"] = "mark"
    population: Literal["adult", "child"] = "adult"
    jump_ml: int = 500
    line_every_h: float = 1.0
    check_every_h: float = 4.0
