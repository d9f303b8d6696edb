"""All checks in one tuple, run in order; each a pure function from the scene to cautions.

To add one: a row in the policy with its source, a function here that reads it, its sentence in the wording.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from datetime import datetime
from typing import TypeAlias

from bot.engine.cautions import canister, checked, happened, record, sudden, volume
from bot.engine.cautions.scene import Scene
from bot.engine.patient import Patient
from bot.engine.policy import Policy
from bot.engine.values import Caution, Severity

Check: TypeAlias = Callable[[Scene], Iterator[Caution]]

CHECKS: tuple[Check, ...] = (
    happened.disconnected,
    happened.dislodged,
    volume.ladder,
    volume.rate_sustained,
    volume.amount_at_once,
    volume.amount_24h,
    volume.per_kg,
    volume.effusion_limit,
    sudden.sudden_stop,
    happened.clamped,
    volume.rate_high,
    sudden.sudden_rise,
    happened.tipped,
    happened.damaged,
    happened.elevated,
    canister.full,
    checked.wall_suction,
    checked.seal,
    checked.leak,
    checked.fluid_changed,
    record.overdue,
    record.line_fell,
    canister.over_capacity,
    canister.three_quarters_full,
    happened.kinked,
    happened.suction_off,
    checked.dial_suction,
    checked.suction_indicator,
    checked.tidaling_lost,
    record.jump,
    record.time_conflict,
    record.at_least,
    record.no_boundary_line,
    record.amended,
    volume.average_only,
)

_ORDER = {Severity.HIGH: 0, Severity.MODERATE: 1, Severity.LOW: 2}


def all_cautions(patient: Patient, now: datetime, policy: Policy) -> tuple[Caution, ...]:
    """Every row that is met now at this bed, most severe first, several of one code included."""
    scene = Scene(patient=patient, now=now, policy=policy)
    found = [caution for check in CHECKS for caution in check(scene)]
    return tuple(sorted(found, key=lambda caution: _ORDER[caution.severity]))


def cautions(patient: Patient, now: datetime, policy: Policy) -> tuple[Caution, ...]:
    """The cautions that stand now at this bed, most severe first: of each code one per drain, its most
    severe row, of rows as severe the first of the policy. (Overdue: one per thing that is late.)"""
    return tuple(_one_per_code(all_cautions(patient, now, policy)))


def _one_per_code(found: Iterable[Caution]) -> Iterator[Caution]:
    told: set[tuple[str, str | None, str]] = set()
    for caution in found:
        key = (caution.code, caution.drain, caution.detail if caution.code == "overdue" else "")
        if key not in told:
            told.add(key)
            yield caution
