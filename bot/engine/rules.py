"""One row of a unit's policy: what is measured, against what, and whose rule it is. Types only.

The default rows are in `rows_rates`, `rows_volume` and `rows_system`; a unit changes them by `overrides`.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from bot.engine.values import Severity

Measure = Literal[
    "rate",  # mL/h in any one hour
    "each_hour",  # mL/h in each of `window_h` hours
    "amount",  # mL within `window_h`
    "since_placement",  # mL within `window_h` of placement; with none, since it or the last pause
    "times_mean",  # the last hour against the mean of `window_h` before it
    "stop",  # mL in the last hour, after a mean of `floor` over `window_h`
    "level",  # mL on the canister
    "fraction",  # of the canister's capacity
    "check",  # what a check found
    "minutes",  # how long something lasts
    "told",  # nothing measured: it was said
]


Comparison = Literal["over", "at_least", "under", "at_most"]
Population = Literal["adult", "child", "all"]
SourceStatus = Literal["seen", "second-hand", "memory", "common practice", "derived", "unit"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Rule:
    """One row: when `measure` over `window` compares so with `value`, the caution `code` is raised.

    value: mL, mL/h, mL/kg/h (where `per_kg`), cm, mmHg, min, or a fraction; of no account where the measure
    is `told` (something said, not measured). window: hours.
    """

    id: str
    code: str
    profiles: tuple[str, ...] = ("all",)
    population: Population = "all"
    measure: Measure
    comparison: Comparison = "at_least"
    value: float = 1.0
    window_h: float | None = None
    per_kg: bool = False
    severity: Severity
    source: str
    source_status: SourceStatus
    on: bool = True
    within_h: float | None = None
    """Only within so many hours of the placement or first line, the later; unknown counts as within."""
    after_h: float | None = None
    """Only later than so many hours after the placement or first line."""
    longer: bool = False
    """The hours together must last longer than the window: "for over 3 h"."""
    floor: float | None = None
    """A second number that must be reached too: mL in the hour of a rise, mL/h before a stop."""
    bloody: bool = False
    """Only of bloody fluid; fluid that was never named counts as bloody."""
    mediastinal: bool = False
    """Only of a mediastinal tube, or one whose name says no place."""

    def met_by(self, value: float, limit: float | None = None) -> bool:
        """True when the value meets the row's comparison (with another limit, where one is given)."""
        against = self.value if limit is None else limit
        match self.comparison:
            case "over":
                return value > against
            case "at_least":
                return value >= against
            case "under":
                return value < against
            case "at_most":
                return value <= against

    def is_for(self, reason: str) -> bool:
        """True when the row is for drains of this profile."""
        return "all" in self.profiles or reason in self.profiles

    @property
    def is_for_all(self) -> bool:
        """True when the row is for every drain."""
        return self.profiles == ("all",) and not (self.mediastinal or self.bloody)
