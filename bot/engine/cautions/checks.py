"""All checks in one tuple, run in order; each a pure function from the scene to cautions.

To add one: a row in the policy with its source, a function here that reads it, its sentence in the wording.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from operator import is_, itemgetter
from typing import TypeAlias

from bot.engine.cautions import canister, checked, happened, record, sudden, volume
from bot.engine.cautions.scene import Scene
from bot.engine.entries import Checked, Incident
from bot.engine.ledger import Ledger
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

_BY_THE_CLOCK: frozenset[Check] = frozenset({happened.clamped, record.overdue, record.no_boundary_line})
"""The checks that look at the moment. What the others find is the same as long as the ledgers are."""

_NEEDS: Mapping[Check, type[Incident | Checked]] = {
    **dict.fromkeys(
        (
            happened.disconnected,
            happened.dislodged,
            happened.clamped,
            happened.tipped,
            happened.damaged,
            happened.elevated,
            happened.kinked,
            happened.suction_off,
        ),
        Incident,
    ),
    **dict.fromkeys(
        (
            checked.wall_suction,
            checked.seal,
            checked.leak,
            checked.fluid_changed,
            checked.dial_suction,
            checked.suction_indicator,
            checked.tidaling_lost,
        ),
        Checked,
    ),
}
"""What must have been told of a drain for these to find anything."""

_AT_ANY_TIME, _AT_THE_MOMENT = (
    tuple((place, check) for place, check in enumerate(CHECKS) if (check in _BY_THE_CLOCK) is by_the_clock)
    for by_the_clock in (False, True)
)
"""The checks of either sort, each with its place among all."""

_ORDER = {Severity.HIGH: 0, Severity.MODERATE: 1, Severity.LOW: 2}

_Found: TypeAlias = tuple[int, int, Caution]
"""A caution behind what it is sorted by: how severe it is, and the place of the check that found it."""


def all_cautions(patient: Patient, now: datetime, policy: Policy) -> tuple[Caution, ...]:
    """Every row that is met now at this bed, most severe first, several of one code included."""
    if not patient.drains:
        return ()
    scene = Scene(patient=patient, now=now, policy=policy)
    found = (*_standing(scene), *_found_by(scene, _AT_THE_MOMENT))
    return tuple(caution for _, _, caution in sorted(found, key=itemgetter(0, 1)))


def _found_by(scene: Scene, checks: Iterable[tuple[int, Check]]) -> tuple[_Found, ...]:
    """What these checks find."""
    drains = scene.patient.drains
    told = {None, *(kind for kind in (Incident, Checked) if any(drain.of_kind(kind) for drain in drains))}
    return tuple(
        (_ORDER[caution.severity], place, caution)
        for place, check in checks
        if _NEEDS.get(check) in told
        for caution in check(scene)
    )


@dataclass(slots=True)
class _Memory:
    """What was found last at a bed by the checks that do not look at the moment.

    Used again only for the very same ledgers and policy, none of which ever changes.
    """

    last: tuple[Policy, tuple[Ledger, ...], tuple[_Found, ...]] | None = None


def _standing(scene: Scene) -> tuple[_Found, ...]:
    """What the checks find whatever the moment is: looked for once for the bed's ledgers."""
    first, *others = scene.patient.drains
    memory = first.once("standing", _no_memory)
    last = memory.last  # read once: another thread may be asking about the same bed
    if last is not None and last[0] is scene.policy and _are(last[1], others):
        return last[2]
    found = _found_by(scene, _AT_ANY_TIME)
    memory.last = (scene.policy, tuple(others), found)
    return found


def _no_memory(_before: _Memory | None) -> _Memory:
    return _Memory()


def _are(known: Sequence[Ledger], drains: Sequence[Ledger]) -> bool:
    """Whether they are the very same."""
    return len(known) == len(drains) and all(map(is_, known, drains))


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
