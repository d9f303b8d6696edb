"""What a unit's file changes in the default policy: a row overridden, turned off, or added, by its id.

An override must name its own source. A row that makes no sense is refused, naming the row.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, fields, replace
from typing import Any, get_args

from bot.engine.entries import Reason
from bot.engine.rules import Comparison, Measure, Population, Rule
from bot.engine.values import Severity

MEASURES_OF: Mapping[str, frozenset[Measure]] = {
    "rate_high": frozenset({"rate", "each_hour", "amount"}),
    "rate_sustained": frozenset({"each_hour"}),
    "ladder": frozenset({"each_hour", "rate"}),
    "amount_at_once": frozenset({"amount", "since_placement"}),
    "amount_24h": frozenset({"amount"}),
    "per_kg": frozenset({"rate", "each_hour", "amount", "told"}),
    "effusion_limit": frozenset({"since_placement", "amount"}),
    "sudden_rise": frozenset({"times_mean"}),
    "sudden_stop": frozenset({"stop"}),
    "over_capacity": frozenset({"fraction", "level"}),
    "three_quarters_full": frozenset({"fraction", "level"}),
    "full": frozenset({"fraction", "level"}),
    "seal": frozenset({"check"}),
    "wall_suction": frozenset({"check"}),
    "dial_suction": frozenset({"check", "told"}),
    "clamped": frozenset({"minutes", "told"}),
    "overdue": frozenset({"minutes"}),
    **dict.fromkeys(
        (
            *("average_only", "tipped", "damaged", "disconnected", "dislodged", "raised", "kinked"),
            *("suction_off", "suction_indicator", "leak", "tidaling_lost", "fluid_changed", "line_fell"),
            *("unconfirmed", "no_boundary_line", "at_least", "jump", "time_conflict", "duplicate"),
            *("amended", "two_identifiers"),
        ),
        frozenset[Measure]({"told"}),
    ),
}
"""All caution codes, each with what a row of it can measure."""

_WINDOWED = frozenset({"each_hour", "amount", "times_mean", "stop"})
_PROFILES = frozenset({"all", *Reason})
_LONGEST_H = 72


class PolicyError(Exception):
    """A row of a unit's policy that makes no sense."""

    def __init__(self, row_id: str, why: str) -> None:
        super().__init__(f"{row_id}: {why}")
        self.row_id = row_id
        self.why = why


@dataclass(frozen=True, slots=True, kw_only=True)
class RuleOverride:
    """One `[[policy]]` table of a unit's file; what is None stays as it was (or takes its default)."""

    id: str
    code: str | None = None
    profiles: tuple[str, ...] | None = None
    population: str | None = None
    measure: str | None = None
    comparison: str | None = None
    value: float | None = None
    window_h: float | None = None
    per_kg: bool | None = None
    severity: str | None = None
    source: str | None = None
    on: bool | None = None
    within_h: float | None = None
    after_h: float | None = None
    longer: bool | None = None
    floor: float | None = None
    bloody: bool | None = None
    mediastinal: bool | None = None

    @classmethod
    def from_table(cls, table: Mapping[str, object]) -> RuleOverride:
        """The override that a TOML table writes. PolicyError on an unknown key or a wrong type."""
        row_id = table.get("id")
        if not isinstance(row_id, str) or not row_id.strip():
            raise PolicyError("(no id)", "a row of the policy needs an id")
        known = {field.name: str(field.type) for field in fields(cls)}
        values: dict[str, Any] = {}
        for key, value in table.items():
            if key not in known:
                raise PolicyError(row_id, f"unknown key {key!r}")
            values[key] = _typed(row_id, key, value, known[key])
        return cls(**values)


def amended_rules(defaults: Iterable[Rule], overrides: Iterable[RuleOverride]) -> tuple[Rule, ...]:
    """The default rows with the unit's own: changed in place, new ones at the end.

    PolicyError, naming the row, where one makes no sense, comes twice, or names no source of its own.
    """
    rows = {rule.id: rule for rule in defaults}
    seen: set[str] = set()
    for override in overrides:
        if override.id in seen:
            raise PolicyError(override.id, "is there twice")
        seen.add(override.id)
        rows[override.id] = _checked(_overridden(rows.get(override.id), override))
    return tuple(rows.values())


def _typed(row_id: str, key: str, value: object, kind: str) -> object:
    """The value, when it is of the kind that the key takes."""
    if key == "profiles" and isinstance(value, list) and all(isinstance(one, str) for one in value):
        return tuple(value)
    if kind.startswith("float") and isinstance(value, int | float) and not isinstance(value, bool):
        return float(value)
    if (kind.startswith("bool") and isinstance(value, bool)) or (
        kind.startswith("str") and isinstance(value, str)
    ):
        return value
    raise PolicyError(row_id, f"{key} cannot be {value!r}")


def _overridden(rule: Rule | None, override: RuleOverride) -> Rule:
    if not (override.source or "").strip():
        raise PolicyError(override.id, "names no source of its own")
    told = {
        field.name: value
        for field in fields(override)
        if (value := getattr(override, field.name)) is not None and field.name != "id"
    }
    _refuse_unknown_words(override)
    if "severity" in told:
        told["severity"] = Severity(told["severity"])
    if rule is not None:
        return replace(rule, **told, source_status="unit")
    missing = [key for key in ("code", "measure", "comparison", "value", "severity") if key not in told]
    if missing:
        raise PolicyError(override.id, f"is a new row and lacks {', '.join(missing)}")
    return Rule(id=override.id, source_status="unit", **told)


def _refuse_unknown_words(override: RuleOverride) -> None:
    allowed: Mapping[str, Iterable[str]] = {
        "code": MEASURES_OF,
        "measure": get_args(Measure),
        "comparison": get_args(Comparison),
        "population": get_args(Population),
        "severity": tuple(Severity),
    }
    for key, words in allowed.items():
        word = getattr(override, key)
        if word is not None and word not in words:
            raise PolicyError(override.id, f"{key} cannot be {word!r}")
    for profile in override.profiles or ():
        if profile not in _PROFILES:
            raise PolicyError(override.id, f"profiles cannot hold {profile!r}")


def _checked(rule: Rule) -> Rule:
    """The row, when its parts go together."""
    for why, wrong in (*_wrong_words(rule), *_wrong_numbers(rule)):
        if wrong:
            raise PolicyError(rule.id, why)
    return rule


def _wrong_words(rule: Rule) -> tuple[tuple[str, bool], ...]:
    downward = rule.comparison in ("under", "at_most")
    backwards = rule.measure != "check" and downward != (rule.measure == "stop")
    return (
        (f"a {rule.code} row cannot measure {rule.measure!r}", rule.measure not in MEASURES_OF[rule.code]),
        ("profiles is empty", not rule.profiles),
        (f"{rule.comparison!r} does not go with {rule.measure!r}", backwards),
    )


def _wrong_numbers(rule: Rule) -> tuple[tuple[str, bool], ...]:
    window = rule.window_h
    odd_window = window is not None and not (_positive(window) and window <= _LONGEST_H)
    return (
        ("value must be a number over 0", not _positive(rule.value)),
        (f"window_h must be over 0 and at most {_LONGEST_H} h", odd_window),
        ("needs window_h", rule.measure in _WINDOWED and window is None),
        ("a rate is of one hour: window_h must be 1", rule.measure == "rate" and window not in (None, 1)),
        ("each_hour needs whole hours", rule.measure == "each_hour" and window != _whole(window)),
        ("needs floor", rule.measure in ("times_mean", "stop") and rule.floor is None),
        ("floor must be over 0", rule.floor is not None and not _positive(rule.floor)),
        ("within_h must be over after_h, and neither under 0", _crossed(rule)),
    )


def _positive(value: float) -> bool:
    return math.isfinite(value) and value > 0


def _whole(value: float | None) -> float | None:
    return None if value is None else float(int(value))


def _crossed(rule: Rule) -> bool:
    begin = rule.after_h or 0.0
    return begin < 0 or (rule.within_h is not None and not rule.within_h > begin)
