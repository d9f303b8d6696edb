"""A row of the policy in words: for the command line and the README."""

from __future__ import annotations

from bot.engine.policy import Rule
from bot.wording import formats
from bot.wording.cautions import PREFIX

HEADINGS = ("row", "caution", "for", "rule", "shown as", "source", "source was")
_COMPARED = {"over": "over", "at_least": "at least", "under": "under", "at_most": "at most"}
_UNITS = {
    "rate": "mL/h",
    "each_hour": "mL/h",
    "amount": "mL",
    "since_placement": "mL",
    "times_mean": "times the mean",
    "stop": "mL",
    "level": "mL",
    "fraction": "of the canister",
    "check": "",
    "minutes": "min",
}


def policy_row(rule: Rule) -> tuple[str, ...]:
    """The row as cells: id, code, whom it is for, the rule in words, severity, source and its status."""
    status = rule.source_status if rule.on else f"{rule.source_status}, off"
    return (rule.id, rule.code, _whom(rule), rule_words(rule), PREFIX[rule.severity], rule.source, status)


def rule_words(rule: Rule) -> str:
    """The rule in words: "over 200 mL/h in each of 2 h"."""
    return f"{_COMPARED[rule.comparison]} {_value(rule)}{_window(rule)}"


def _value(rule: Rule) -> str:
    unit = _UNITS[rule.measure]
    if rule.per_kg:
        unit = unit.replace("mL", "mL/kg", 1)
    return (
        formats.quantity(rule.value, unit)
        if unit.startswith("mL")
        else f"{_plain(rule.value)} {unit}".strip()
    )


def _plain(value: float) -> str:
    return formats.number(value, 2)


def _window(rule: Rule) -> str:
    if rule.window_h is None:
        return ""
    hours = f"{_plain(rule.window_h)} h"
    return f" in each of {hours}" if rule.measure == "each_hour" else f" within {hours}"


def _whom(rule: Rule) -> str:
    profiles = ", ".join(rule.profiles)
    return profiles if rule.population == "all" else f"{profiles} ({rule.population})"
