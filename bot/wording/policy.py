"""A row of the policy in words: for the command line and the README."""

from __future__ import annotations

from bot.engine.entries import Reason
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
    "check": "",
    "minutes": "min",
}
_CHECK_UNITS = {"seal": "cm", "wall_suction": "mmHg", "dial_suction": "cmH2O"}
_FLOORS = {"stop": ("mean at least", "mL/h before"), "times_mean": ("and at least", "mL")}


def policy_row(rule: Rule) -> tuple[str, ...]:
    """The row as cells: id, code, whom it is for, the rule in words, severity, source and its status."""
    status = rule.source_status if rule.on else f"{rule.source_status}, off"
    return (rule.id, rule.code, _whom(rule), rule_words(rule), PREFIX[rule.severity], rule.source, status)


def rule_words(rule: Rule) -> str:
    """The rule in words: "over 200 mL/h in each of 2 h", "at least 200 mL within 1 h, in the first 6 h"."""
    if rule.measure == "told":
        return "when told or found"
    return f"{_COMPARED[rule.comparison]} {_value(rule)}{_window(rule)}{_conditions(rule)}"


def _value(rule: Rule) -> str:
    if rule.measure == "fraction":
        return f"{_plain(rule.value * 100)}% of the canister"
    unit = _UNITS[rule.measure]
    if rule.measure == "check":
        unit = _CHECK_UNITS.get(rule.code, "")
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
    hours = "" if rule.window_h is None else f"{_plain(rule.window_h)} h"
    match rule.measure:
        case "times_mean" | "stop":
            return f" in the last hour, against {hours} before"
        case "since_placement":
            return f" within {hours} of placement" if hours else " since placement or the last pause"
        case "each_hour":
            each = f" in each hour for over {hours}" if rule.longer else f" in each of {hours}"
            return " in any hour" if rule.window_h == 1 else each
        case "rate":
            return " in any hour"
    return f" within {hours}" if hours else ""


def _conditions(rule: Rule) -> str:
    told = (
        _floor(rule),
        f"from {_plain(rule.after_h)} h on" if rule.after_h is not None else "",
        f"in the first {_plain(rule.within_h)} h" if rule.within_h is not None else "",
        "bloody" if rule.bloody else "",
        "mediastinal or unnamed tube" if rule.mediastinal else "",
    )
    return "".join(f", {words}" for words in told if words)


def _floor(rule: Rule) -> str:
    if rule.floor is None:
        return ""
    before, after = _FLOORS.get(rule.measure, ("and at least", ""))
    return f"{before} {_plain(rule.floor)} {after}".strip()


def _whom(rule: Rule) -> str:
    missing = [reason for reason in Reason if reason not in rule.profiles]
    profiles = "all" if "all" in rule.profiles else ", ".join(rule.profiles)
    if len(missing) <= 2 and "all" not in rule.profiles:
        profiles = f"all but {formats.listed(tuple(missing))}"
    return profiles if rule.population == "all" else f"{profiles} ({rule.population})"
