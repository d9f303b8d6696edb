"""The checks on what happened to the drain, until something said undoes it."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta
from itertools import takewhile

from bot.engine.cautions.scene import Scene, clamped_spells, last_found, raised
from bot.engine.entries import Checked, Entry, Exchanged, Incident, Line, Ordered, What
from bot.engine.ledger import Ledger
from bot.engine.values import Caution

_MINUTE = timedelta(minutes=1)


def tipped(scene: Scene) -> Iterator[Caution]:
    """Tipped over, until the canister is changed: its volume can no longer be measured."""
    return _stands(scene, What.TIPPED, Exchanged)


def damaged(scene: Scene) -> Iterator[Caution]:
    """Damaged, until the canister is changed."""
    return _stands(scene, What.DAMAGED, Exchanged)


def disconnected(scene: Scene) -> Iterator[Caution]:
    """The tubing came off, until an exchange or a check."""
    return _stands(scene, What.DISCONNECTED, Exchanged, Checked)


def dislodged(scene: Scene) -> Iterator[Caution]:
    """The tube came out of place, until a check."""
    return _stands(scene, What.DISLODGED, Checked)


def elevated(scene: Scene) -> Iterator[Caution]:
    """Above the chest, until a check or a line."""
    return _stands(scene, What.RAISED, Checked, Line, Exchanged)


def kinked(scene: Scene) -> Iterator[Caution]:
    """The tubing is kinked, until a check or a line."""
    return _stands(scene, What.KINKED, Checked, Line, Exchanged)


def clamped(scene: Scene) -> Iterator[Caution]:
    """Clamped and not undone: with an air leak, for too long, or at all (only for a stated purpose)."""
    for rule, drain in scene.met("clamped"):
        since = _clamped_since(drain)
        if since is None:
            continue
        leak = last_found(drain, "air_leak")
        minutes = max(0, (scene.now - since) // _MINUTE)
        if rule.id == "clamped.leak" and (leak is None or leak.value == "none"):
            continue
        if rule.measure == "minutes" and not rule.met_by(minutes):
            continue
        timed = rule.measure == "minutes"
        yield raised(
            rule,
            drain,
            value=minutes if timed else None,
            limit=rule.value if timed else None,
            unit="min" if timed else "",
            comparison=rule.comparison if timed else "",
            begin=since,
            end=scene.now,
            detail=leak.value if leak and rule.id == "clamped.leak" else "",
        )


def suction_off(scene: Scene) -> Iterator[Caution]:
    """Suction told to be off, until told on, or a check or an order says otherwise."""
    for rule, drain in scene.met("suction_off"):
        since = _suction_off_since(drain)
        if since is not None:
            yield raised(rule, drain, begin=since)


def _clamped_since(drain: Ledger) -> datetime | None:
    spells = clamped_spells(drain)
    return spells[-1][0] if spells and spells[-1][1] is None else None


def _suction_off_since(drain: Ledger) -> datetime | None:
    since: datetime | None = None
    if not drain.of_kind(Incident):
        return None
    for entry in drain.live:
        match entry.payload:
            case Incident(what=What.SUCTION_OFF):
                since = since or entry.at
            case Incident(what=What.SUCTION_ON) | Checked(suction_cmh2o=int()) | Ordered(suction_cmh2o=0):
                since = None
            case _:
                pass
    return since


def _stands(scene: Scene, what: What, *undone_by: type) -> Iterator[Caution]:
    for rule, drain in scene.met(what.value):
        happened = _last_of(drain, what, undone_by)
        if happened is not None:
            yield raised(rule, drain, begin=happened.at)


def _last_of(drain: Ledger, what: What, undone_by: tuple[type, ...]) -> Entry | None:
    """The incident that nothing later has undone. What is told with it in one minute does not undo it,
    but for an exchange."""
    happened = [entry for entry, incident in drain.of_kind(Incident) if incident.what is what]
    if not happened:
        return None
    later = takewhile(lambda entry: entry is not happened[-1], reversed(drain.live))
    undone = any(isinstance(entry.payload, undone_by) and _undoes(entry, happened[-1]) for entry in later)
    return None if undone else happened[-1]


def _undoes(entry: Entry, incident: Entry) -> bool:
    return isinstance(entry.payload, Exchanged) or entry.at > incident.at
