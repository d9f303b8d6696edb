"""What an entry changes: the cautions that are new, that still stand, and that have cleared."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import datetime

from bot.engine.cautions.checked import leak_rank
from bot.engine.cautions.checks import cautions
from bot.engine.cautions.scene import Scene, raised
from bot.engine.entries import Entry, Moved, Placed
from bot.engine.ledger import Ledger, fold
from bot.engine.patient import Patient
from bot.engine.policy import Policy
from bot.engine.values import Caution

_NEVER_CLEARED = frozenset(
    {"line_fell", "jump", "time_conflict", "over_capacity", "overdue", "average_only", "no_boundary_line"}
    | {"at_least", "amended", "duplicate", "two_identifiers"}
)
"""What only speaks of the line just told, or is undone by telling it: nothing to announce."""

_GROWS_INTO = {"three_quarters_full": "full"}
"""What stands no more only because the other does now."""

_RATES = frozenset({"mL/h", "mL/kg/h"})

MUCH_WORSE = 1.25
"""So many times the amount or rate that others were told of is told to them again."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CautionNews:
    """The cautions of a bed after an entry; `cleared` holds them as they were.

    `worse` are those of `still` that are much further beyond their limit than before the entry; `risen`
    those that the entry has measured anew and found no better, or that have become worse in words.
    """

    new: tuple[Caution, ...] = ()
    still: tuple[Caution, ...] = ()
    worse: tuple[Caution, ...] = ()
    risen: tuple[Caution, ...] = ()
    cleared: tuple[Caution, ...] = ()


def entry_cautions(before: Patient, after: Patient, now: datetime, policy: Policy) -> CautionNews:
    """What the entries between two views of a bed have changed, each part most severe first.

    A caution of a drain that is no longer open is not "cleared": it simply ends.
    """
    was = {caution.key: caution for caution in cautions(before, now, policy)}
    found = cautions(after, now, policy)
    keys = {caution.key for caution in found}
    open_drains = {drain.drain for drain in after.drains}
    told = tuple(_of_entries(before, after, now, policy))
    return CautionNews(
        new=(*(one for one in found if one.key not in was), *told),
        still=tuple(one for one in found if one.key in was),
        worse=tuple(one for one in found if one.key in was and _is_worse(one, was[one.key])),
        risen=tuple(one for one in found if one.key in was and _has_risen(one, was[one.key])),
        cleared=tuple(
            one
            for key, one in was.items()
            if key not in keys
            and one.code not in _NEVER_CLEARED
            and not any(_goes_on_as(one, other) for other in found)
            and (not one.drain or one.drain in open_drains)
        ),
    )


def _is_worse(one: Caution, was: Caution) -> bool:
    """True when the amount or rate is a quarter more than it was (common practice, no source)."""
    if one.value is None or was.value is None or not one.unit.startswith("mL"):
        return False
    return one.comparison in ("over", "at_least") and one.value >= MUCH_WORSE * was.value


def _has_risen(one: Caution, was: Caution) -> bool:
    """True when a rate over its limit is as high or higher in a new measure, a number under it is lower
    still, a leak is worse, or the fluid is another."""
    if one.code == "leak":
        return leak_rank(one.detail) > leak_rank(was.detail)
    if one.code == "fluid_changed":
        return one.detail != was.detail
    if one.value is None or was.value is None:
        return False
    if one.comparison in ("under", "at_most"):
        return one.value < was.value
    new = (one.value, one.end) != (was.value, was.end)
    return (new and one.unit in _RATES and one.value >= was.value) or _is_worse(one, was)


def _goes_on_as(one: Caution, other: Caution) -> bool:
    """True when another row of the same code stands there, or what it has grown into: "cleared" would be
    heard as all is well."""
    return other.code in (one.code, _GROWS_INTO.get(one.code)) and (
        one.drain == other.drain or None in (one.drain, other.drain)
    )


def cautions_if(patient: Patient, entry: Entry, now: datetime, policy: Policy) -> tuple[Caution, ...]:
    """The cautions that this entry would newly raise if it were right, or raise with another number; each
    marked so. Nothing is recorded. An entry of a drain that is not there yet opens it."""
    known = {caution.key: (caution.value, caution.end) for caution in cautions(patient, now, policy)}
    supposed = cautions(_with_entry(patient, entry), now, policy)
    return tuple(
        replace(one, if_right=True) for one in supposed if known.get(one.key) != (one.value, one.end)
    )


def _with_entry(patient: Patient, entry: Entry) -> Patient:
    drains = tuple(
        drain.with_entry(entry) if drain.drain == entry.drain else drain for drain in patient.drains
    )
    if any(drain.drain == entry.drain for drain in drains):
        return replace(patient, drains=drains)
    return replace(patient, drains=(*drains, fold((entry,))))


def _of_entries(before: Patient, after: Patient, now: datetime, policy: Policy) -> Iterator[Caution]:
    """What only the entries themselves say: a repeated line, a bed that has a new patient."""
    scene = Scene(patient=after, now=now, policy=policy)
    known = {drain.drain: drain for drain in before.drains}
    for rule, drain in scene.met("duplicate"):
        for entry in _fresh(known.get(drain.drain), drain):
            kept = dict(drain.duplicates).get(entry.id)
            level = drain.level_of(kept) if kept else None
            if level is not None:
                yield raised(rule, drain, value=level.level_ml, unit="mL", end=level.at)
    for rule, drain in scene.met("two_identifiers"):
        if any(isinstance(entry.payload, Placed | Moved) for entry in _fresh(known.get(drain.drain), drain)):
            yield raised(rule, drain)


def _fresh(was: Ledger | None, drain: Ledger) -> tuple[Entry, ...]:
    return drain.entries[len(was.entries) if was else 0 :]
