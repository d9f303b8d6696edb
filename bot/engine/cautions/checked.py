"""The checks on what a check of the system found, against the limits, the order, and earlier checks."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

from bot.engine.cautions.scene import BLOODY, Scene, is_mediastinal, raised
from bot.engine.entries import Checked, Ordered
from bot.engine.ledger import Ledger
from bot.engine.policy import Rule
from bot.engine.values import Caution

_ALARMING_FLUIDS = BLOODY | {"purulent", "chylous"}
_LEAKS = {"none": 0, "intermittent": 1, "present": 1, "continuous": 2}
_LEAK_EXPECTED = frozenset({"air", "lung"})


@dataclass(frozen=True, slots=True)
class _Found:
    """What a check found, and when."""

    value: float
    at: datetime


def seal(scene: Scene) -> Iterator[Caution]:
    """The water seal as last found, in cm (Open RN 6.6)."""
    return _numbers(scene, "seal", "seal_cm", "cm")


def wall_suction(scene: Scene) -> Iterator[Caution]:
    """The wall suction as last found, in mmHg; not on water seal only, where there is none."""
    return (
        caution
        for caution in _numbers(scene, "wall_suction", "wall_mmhg", "mmHg")
        if not any(d.drain == caution.drain and _on_water_seal(d) for d in scene.patient.drains)
    )


def dial_suction(scene: Scene) -> Iterator[Caution]:
    """The dial as last found against the order; without an order against the usual range. In cmH2O."""
    for rule, drain in scene.met("dial_suction"):
        found, order = _last(drain, "suction_cmh2o"), _ordered(drain)
        if found is None:
            continue
        if rule.measure == "told" and order is not None and found.value != order:
            yield raised(rule, drain, value=found.value, limit=order, unit="cmH2O", end=found.at)
        if rule.measure == "check" and order is None and found.value and rule.met_by(found.value):
            yield _number(rule, drain, found, "cmH2O")


def suction_indicator(scene: Scene) -> Iterator[Caution]:
    """The suction indicator not in range; not on water seal only."""
    for rule, drain in scene.met("suction_indicator"):
        found = [(entry, check) for entry, check in drain.of_kind(Checked) if check.suction_indicator]
        if found and found[-1][1].suction_indicator == "not_in_range" and not _on_water_seal(drain):
            yield raised(rule, drain, end=found[-1][0].at)


def leak(scene: Scene) -> Iterator[Caution]:
    """An air leak that is new or worse than it once was, until it is no longer.

    A first check with a leak counts as new, but after lung surgery or for air, where one is expected.
    """
    for rule, drain in scene.met("leak"):
        found = [(entry, check.air_leak) for entry, check in drain.of_kind(Checked) if check.air_leak]
        graded = [check.leak_grade for _, check in drain.of_kind(Checked) if check.leak_grade is not None]
        ranks = [_LEAKS[word] for _, word in found]
        if ranks and _is_worse(ranks, drain):
            yield raised(rule, drain, end=found[-1][0].at, detail=found[-1][1])
        elif graded and graded[-1] > min(graded):
            yield raised(rule, drain, detail=f"grade {graded[-1]}")


def leak_rank(told: str) -> int:
    """How bad a leak is that a caution tells in words; of two grades the higher is worse."""
    return _LEAKS[told] if told in _LEAKS else int(told.removeprefix("grade "))


def tidaling_lost(scene: Scene) -> Iterator[Caution]:
    """No tidaling when last looked at; never expected of a mediastinal tube (StatPearls)."""
    for rule, drain in scene.met("tidaling_lost"):
        found = [
            (entry, check.tidaling) for entry, check in drain.of_kind(Checked) if check.tidaling is not None
        ]
        if found and not found[-1][1] and not is_mediastinal(drain):
            dial = _last(drain, "suction_cmh2o")
            yield raised(rule, drain, end=found[-1][0].at, detail="on suction" if dial and dial.value else "")


def fluid_changed(scene: Scene) -> Iterator[Caution]:
    """The fluid has turned bloody, purulent or chylous, until it is named otherwise."""
    for rule, drain in scene.met("fluid_changed"):
        found = [(entry, check.fluid) for entry, check in drain.of_kind(Checked) if check.fluid]
        if not found or found[-1][1] not in _ALARMING_FLUIDS:
            continue
        if any(fluid != found[-1][1] for _, fluid in found):
            yield raised(rule, drain, end=found[-1][0].at, detail=found[-1][1])


def _is_worse(ranks: list[int], drain: Ledger) -> bool:
    return ranks[-1] > min(ranks) or (ranks[-1] > 0 and drain.reason not in _LEAK_EXPECTED)


def _numbers(scene: Scene, code: str, slot: str, unit: str) -> Iterator[Caution]:
    for rule, drain in scene.met(code):
        found = _last(drain, slot)
        if found is not None and rule.met_by(found.value):
            yield _number(rule, drain, found, unit)


def _number(rule: Rule, drain: Ledger, found: _Found, unit: str) -> Caution:
    return raised(
        rule,
        drain,
        value=found.value,
        limit=rule.value,
        unit=unit,
        comparison=rule.comparison,
        end=found.at,
    )


def _last(drain: Ledger, slot: str) -> _Found | None:
    """The number that a check found last; none when nobody looked at it."""
    found = [
        _Found(value, entry.at)
        for entry, check in drain.of_kind(Checked)
        if (value := getattr(check, slot)) is not None
    ]
    return found[-1] if found else None


def _ordered(drain: Ledger) -> int | None:
    orders = drain.of_kind(Ordered)
    return orders[-1][1].suction_cmh2o if orders else None


def _on_water_seal(drain: Ledger) -> bool:
    """True when the dial was last found at 0; where nobody looked, when the order is 0."""
    dial = _last(drain, "suction_cmh2o")
    return (dial.value if dial else _ordered(drain)) == 0
