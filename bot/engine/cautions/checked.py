"""The checks on what a check of the system found, against the limits, the order, and earlier checks."""

from __future__ import annotations

from collections.abc import Iterator

from bot.engine.cautions.scene import BLOODY, Found, Scene, all_found, is_mediastinal, last_found, raised
from bot.engine.entries import Ordered
from bot.engine.ledger import Ledger
from bot.engine.policy import Rule
from bot.engine.values import Caution

_ALARMING_FLUIDS = BLOODY | {"purulent", "chylous"}
_LEAKS = {"none": 0, "intermittent": 1, "present": 1, "continuous": 2}
_LEAK_EXPECTED = frozenset({"air", "lung"})


def seal(scene: Scene) -> Iterator[Caution]:
    """The water seal as last found, in cm (Open RN 6.6)."""
    for rule, drain in scene.met("seal"):
        yield from _number(rule, drain, last_found(drain, "seal_cm"), "cm")


def wall_suction(scene: Scene) -> Iterator[Caution]:
    """The wall suction as last found, in mmHg; not on water seal only, where there is none."""
    for rule, drain in scene.met("wall_suction"):
        found = last_found(drain, "wall_mmhg")
        if found is not None and not _on_water_seal(drain):
            yield from _number(rule, drain, found, "mmHg")


def dial_suction(scene: Scene) -> Iterator[Caution]:
    """The dial as last found against the order; without an order against the usual range. In cmH2O."""
    for rule, drain in scene.met("dial_suction"):
        found, order = last_found(drain, "suction_cmh2o"), _ordered(drain)
        if found is None:
            continue
        if rule.measure == "told" and order is not None and found.value != order:
            yield raised(rule, drain, value=found.value, limit=order, unit="cmH2O", end=found.at)
        if rule.measure == "check" and order is None and found.value:
            yield from _number(rule, drain, found, "cmH2O")


def suction_indicator(scene: Scene) -> Iterator[Caution]:
    """The suction indicator not in range; not on water seal only."""
    for rule, drain in scene.met("suction_indicator"):
        found = last_found(drain, "suction_indicator")
        if found is not None and found.value == "not_in_range" and not _on_water_seal(drain):
            yield raised(rule, drain, end=found.at)


def leak(scene: Scene) -> Iterator[Caution]:
    """An air leak that is new or worse than it once was, until it is no longer.

    A first check with a leak counts as new, but after lung surgery or for air, where one is expected.
    """
    for rule, drain in scene.met("leak"):
        found, graded = last_found(drain, "air_leak"), last_found(drain, "leak_grade")
        if found is not None and _is_worse(found.value, drain):
            yield raised(rule, drain, end=found.at, detail=found.value)
        elif graded is not None and any(graded.value > each.value for each in all_found(drain, "leak_grade")):
            yield raised(rule, drain, detail=f"grade {graded.value}")


def leak_rank(told: str) -> int:
    """How bad a leak is that a caution tells in words; of two grades the higher is worse."""
    return _LEAKS[told] if told in _LEAKS else int(told.removeprefix("grade "))


def tidaling_lost(scene: Scene) -> Iterator[Caution]:
    """No tidaling when last looked at; never expected of a mediastinal tube (StatPearls)."""
    for rule, drain in scene.met("tidaling_lost"):
        found = last_found(drain, "tidaling")
        if found is not None and not found.value and not is_mediastinal(drain):
            dial = last_found(drain, "suction_cmh2o")
            yield raised(rule, drain, end=found.at, detail="on suction" if dial and dial.value else "")


def fluid_changed(scene: Scene) -> Iterator[Caution]:
    """The fluid has turned bloody, purulent or chylous, until it is named otherwise."""
    for rule, drain in scene.met("fluid_changed"):
        found = last_found(drain, "fluid")
        if found is None or found.value not in _ALARMING_FLUIDS:
            continue
        if any(each.value != found.value for each in all_found(drain, "fluid")):
            yield raised(rule, drain, end=found.at, detail=found.value)


def _is_worse(leak: str, drain: Ledger) -> bool:
    """Whether a leak as last found is worse than one once found, or is none that is expected."""
    rank = _LEAKS[leak]
    expected = drain.reason in _LEAK_EXPECTED
    return rank > 0 and (
        not expected or any(rank > _LEAKS[each.value] for each in all_found(drain, "air_leak"))
    )


def _number(rule: Rule, drain: Ledger, found: Found | None, unit: str) -> Iterator[Caution]:
    """The caution of a number that meets the row."""
    if found is not None and rule.met_by(found.value):
        yield raised(
            rule,
            drain,
            value=found.value,
            limit=rule.value,
            unit=unit,
            comparison=rule.comparison,
            end=found.at,
        )


def _ordered(drain: Ledger) -> int | None:
    orders = drain.of_kind(Ordered)
    return orders[-1][1].suction_cmh2o if orders else None


def _on_water_seal(drain: Ledger) -> bool:
    """True when the dial was last found at 0; where nobody looked, when the order is 0."""
    dial = last_found(drain, "suction_cmh2o")
    return (dial.value if dial else _ordered(drain)) == 0
