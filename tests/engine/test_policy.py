"""The rows of the policy, and what a unit's file may change in them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

import pytest

from bot.engine.overrides import MEASURES_OF
from bot.engine.policy import PolicyError, Rule, RuleOverride, amended_rules, default_rules
from bot.engine.values import Severity
from tests.engine.sheet import ADULT, hourly, rules

DEFAULTS = {rule.id: rule for rule in default_rules()}


def with_rows(*tables: Mapping[str, object]) -> dict[str, Rule]:
    overrides = [RuleOverride.from_table(table) for table in tables]
    return {rule.id: rule for rule in amended_rules(default_rules(), overrides)}


@pytest.mark.parametrize("rule", default_rules(), ids=lambda rule: rule.id)
def test_a_default_row_makes_sense_and_names_its_source(rule: Rule) -> None:
    assert rule.source.strip()
    assert rule.measure in MEASURES_OF[rule.code]
    assert rule.id.partition(".")[0] == rule.code
    same = RuleOverride(id=rule.id, source="Ward 4 policy")
    assert amended_rules((rule,), (same,)) == (replace(rule, source="Ward 4 policy", source_status="unit"),)


def test_every_row_has_its_own_id() -> None:
    assert len(DEFAULTS) == len(default_rules())


@pytest.mark.parametrize(
    ("code", "severity"),
    [
        *((code, Severity.HIGH) for code in ("rate_sustained", "ladder", "amount_at_once", "amount_24h")),
        *((code, Severity.HIGH) for code in ("disconnected", "dislodged")),
        *((code, Severity.MODERATE) for code in ("rate_high", "sudden_rise", "tipped", "damaged", "raised")),
        *((code, Severity.MODERATE) for code in ("full", "seal", "leak", "fluid_changed", "overdue")),
        *((code, Severity.MODERATE) for code in ("line_fell", "unconfirmed")),
        *((code, Severity.LOW) for code in ("three_quarters_full", "over_capacity", "kinked", "jump")),
        *(
            (code, Severity.LOW)
            for code in ("suction_off", "suction_indicator", "tidaling_lost", "dial_suction")
        ),
        *((code, Severity.LOW) for code in ("no_boundary_line", "average_only", "at_least", "duplicate")),
        *((code, Severity.LOW) for code in ("time_conflict", "amended", "two_identifiers")),
    ],
)
def test_the_default_severities(code: str, severity: Severity) -> None:
    assert {rule.severity for rule in default_rules() if rule.code == code} == {severity}


@pytest.mark.parametrize(
    ("row", "severity"),
    [
        ("effusion_limit.1500", Severity.HIGH),
        ("effusion_limit.1000", Severity.MODERATE),
        ("sudden_stop.cardiac", Severity.HIGH),
        ("sudden_stop", Severity.MODERATE),
        ("clamped.leak", Severity.HIGH),
        ("clamped.minutes", Severity.MODERATE),
        ("wall_suction.low", Severity.MODERATE),
        ("per_kg.child.1h", Severity.HIGH),
        ("per_kg.child.3h", Severity.HIGH),
        ("per_kg.cardiac.early", Severity.HIGH),
    ],
)
def test_the_default_severities_of_single_rows(row: str, severity: Severity) -> None:
    assert DEFAULTS[row].severity is severity


def test_a_unit_overrides_a_row_with_its_own_number_and_source() -> None:
    rows = with_rows({"id": "rate_high.general", "value": 80, "source": "Ward 4 policy"})
    assert (rows["rate_high.general"].value, rows["rate_high.general"].source) == (80, "Ward 4 policy")
    assert rows["rate_high.general"].source_status == "unit"
    policy = replace(ADULT, rules=tuple(rows.values()))
    assert "rate_high.general" in rules(hourly(81), policy=policy)
    assert "rate_high.general" not in rules(hourly(80), policy=policy)


def test_a_unit_turns_a_row_off() -> None:
    rows = with_rows({"id": "sudden_rise", "on": False, "source": "Ward 4 policy"})
    assert not rows["sudden_rise"].on
    assert list(rows) == list(DEFAULTS)


def test_a_unit_adds_a_row() -> None:
    rows = with_rows(
        {
            "id": "rate_high.ward4",
            "code": "rate_high",
            "profiles": ["trauma"],
            "measure": "rate",
            "comparison": "at_least",
            "value": 50,
            "severity": "high",
            "source": "Ward 4 policy",
        }
    )
    added = rows["rate_high.ward4"]
    assert (added.profiles, added.severity, added.on) == (("trauma",), Severity.HIGH, True)


NEW = {
    "id": "ladder.ward4",
    "code": "ladder",
    "measure": "each_hour",
    "comparison": "over",
    "value": 150,
    "window_h": 3,
    "severity": "high",
    "source": "Ward 4 policy",
}


@pytest.mark.parametrize(
    ("changes", "why"),
    [
        ({"value": -1}, "value"),
        ({"value": 0}, "value"),
        ({"value": float("nan")}, "value"),
        ({"value": float("inf")}, "value"),
        ({"value": "much"}, "value"),
        ({"value": True}, "value"),
        ({"measure": "guess"}, "measure"),
        ({"measure": "stop"}, "measure"),
        ({"comparison": "about"}, "comparison"),
        ({"comparison": "under"}, "comparison|go with"),
        ({"severity": "awful"}, "severity"),
        ({"population": "dogs"}, "population"),
        ({"profiles": ["heart"]}, "profiles"),
        ({"profiles": []}, "profiles"),
        ({"profiles": "all"}, "profiles"),
        ({"window_h": 2.5}, "whole hours"),
        ({"window_h": 0}, "window_h"),
        ({"window_h": 1000}, "window_h"),
        ({"window_h": None}, "window_h"),
        ({"within_h": 2, "after_h": 3}, "within_h"),
        ({"source": ""}, "source"),
        ({"source": "  "}, "source"),
        ({"on": "no"}, "on"),
        ({"colour": "red"}, "colour"),
        ({"code": "bleeding"}, "code"),
    ],
)
def test_a_row_that_makes_no_sense_is_refused_naming_the_row(changes: dict[str, object], why: str) -> None:
    with pytest.raises(PolicyError, match=why) as refused:
        with_rows({**NEW, **changes})
    assert refused.value.row_id == "ladder.ward4"


@pytest.mark.parametrize("key", ["code", "measure", "comparison", "value", "severity", "source", "window_h"])
def test_a_new_row_must_be_whole(key: str) -> None:
    with pytest.raises(PolicyError):
        with_rows({name: value for name, value in NEW.items() if name != key})
    assert "ladder.ward4" in with_rows(NEW)


def test_an_override_must_name_its_own_source() -> None:
    with pytest.raises(PolicyError, match="source"):
        with_rows({"id": "rate_high.general", "value": 80})


def test_a_row_that_comes_twice_or_has_no_id_is_refused() -> None:
    with pytest.raises(PolicyError, match="twice"):
        with_rows(NEW, NEW)
    with pytest.raises(PolicyError, match="id"):
        with_rows({"value": 80, "source": "Ward 4 policy"})
