"""The unit's policy: thresholds as rows, each with its comparison, window, severity and source.

Every number is a default that the unit's own policy and the provider's orders override.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import time, timedelta, tzinfo
from typing import Literal

from bot.engine.overrides import PolicyError, RuleOverride, amended_rules
from bot.engine.rows_system import SYSTEM_ROWS
from bot.engine.rows_volume import VOLUME_ROWS
from bot.engine.rules import Rule

__all__ = [
    "Policy",
    "PolicyError",
    "Rule",
    "RuleOverride",
    "Schedule",
    "amended_rules",
    "default_rules",
]


@dataclass(frozen=True, slots=True, kw_only=True)
class Schedule:
    """The unit's shift starts, local time, and the day that the 24-hour total begins at."""

    zone: tzinfo
    starts: tuple[time, ...] = (time(7), time(19))
    day_starts: time = time(7)
    grace: timedelta = timedelta(minutes=30)
    _hash: int = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        told = (self.starts, self.day_starts, self.grace)
        object.__setattr__(self, "_hash", hash((str(self.zone), *told)))

    def __hash__(self) -> int:
        """Reckoned once: what is remembered of a schedule is looked for at every line."""
        return self._hash


def default_rules() -> tuple[Rule, ...]:
    """The rows that hold where the unit's file says nothing else, in the order in which they are told."""
    return (*VOLUME_ROWS, *SYSTEM_ROWS)


ChartBy = Literal["mark", "shift"]
"""Whether every line is charted, or only the closing line of a shift."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Policy:
    """All that the engine needs to know of a unit."""

    schedule: Schedule
    rules: tuple[Rule, ...] = field(default_factory=default_rules)
    capacity_ml: int = 2000
    chart_by: ChartBy = "mark"
    population: Literal["adult", "child"] = "adult"
    jump_ml: int = 500
    line_every_h: float = 1.0
    check_every_h: float = 4.0
    line_every_by: tuple[tuple[str, float], ...] = ()
    """Hours between lines of single profiles, where they differ from `line_every_h`."""
    _by_code: Mapping[str, tuple[Rule, ...]] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        found: dict[str, tuple[Rule, ...]] = {}
        for rule in self.rules:
            if rule.on and rule.population in ("all", self.population):
                found[rule.code] = (*found.get(rule.code, ()), rule)
        object.__setattr__(self, "_by_code", found)

    def rows(self, code: str) -> tuple[Rule, ...]:
        """The rows of that code that are on for the unit's population."""
        return self._by_code.get(code, ())

    def lines_every_h(self, reason: str) -> float:
        """Hours between two lines of a drain of that profile."""
        return dict(self.line_every_by).get(reason, self.line_every_h)
