"""The queries about now: what is due, room left, the last check, rate."""

from __future__ import annotations

from dataclasses import fields, replace

from bot.dialogue.queries.desk import Desk
from bot.dialogue.queries.where import Found
from bot.engine.due import due as due_of
from bot.engine.entries import Checked, Entry, Ordered
from bot.engine.forecast import forecasts, level_in_use
from bot.engine.ledger import Ledger
from bot.engine.patient import Patient
from bot.engine.rates import recent_rate
from bot.engine.values import Due
from bot.wording.queries import status as words
from bot.wording.queries.lines import NO_LINE
from bot.wording.queries.view import place


def due(desk: Desk, found: Found) -> tuple[str, ...]:
    """What is expected at the bed, overdue first."""
    return (_due_of(desk, found.patient, frozenset(each.drain for each in found.drains)),)


def due_of_unit(desk: Desk, patients: tuple[Patient, ...]) -> tuple[str, ...]:
    """What is expected at each bed, the bed that waits longest first."""
    waiting = [(items[0].at, patient) for patient in patients if (items := _items(desk, patient))]
    waiting.sort(key=lambda item: item[0])
    away = tuple(words.away_text(patient.bed) for patient in patients if _is_away(patient))
    return (*(_due_of(desk, patient) for _, patient in waiting), *away) or (words.NOTHING_DUE,)


def capacity(desk: Desk, found: Found) -> tuple[str, ...]:
    """The room left in each canister, and when it is three quarters full and full."""
    return tuple(_room(desk, found.bed, ledger) for ledger in found.drains)


def capacity_of_unit(desk: Desk, patients: tuple[Patient, ...]) -> tuple[str, ...]:
    """The room left in each canister of the unit, the fullest first."""
    held = [(patient.bed, ledger) for patient in patients for ledger in patient.drains if ledger.last]
    held.sort(key=lambda item: level_in_use(item[1]), reverse=True)
    return tuple(_room(desk, bed, ledger) for bed, ledger in held)


def checks(desk: Desk, found: Found) -> tuple[str, ...]:
    """The last check of each tube, what earlier ones add to it, and the order."""
    return tuple(line for ledger in found.drains for line in check_lines(desk, found.bed, ledger))


def checks_of_unit(desk: Desk, patients: tuple[Patient, ...]) -> tuple[str, ...]:
    """The last check of each tube of the unit."""
    return tuple(
        check_lines(desk, patient.bed, ledger)[0] for patient in patients for ledger in patient.drains
    )


def check_lines(desk: Desk, bed: str, ledger: Ledger) -> tuple[str, ...]:
    """The last check, what earlier ones add to it, the order, and what happened since."""
    where = place(bed, ledger.tube)
    made = [entry for entry in ledger.live if isinstance(entry.payload, Checked)]
    if not made:
        return (f"{where}: no check recorded.", *_orders(desk, ledger))
    head = f"{where}: last check {words.check_text(made[-1], desk.view)}."
    earlier = (f"Earlier: {words.check_text(each, desk.view)}." for each in _adding(tuple(made)))
    return (head, *earlier, *_orders(desk, ledger))


def forecast_line(desk: Desk, ledger: Ledger) -> str:
    """When the canister is three quarters full and full; empty with no line, once tipped over or out."""
    if ledger.last is None or ledger.canisters[-1].tipped or not ledger.is_open():
        return ""
    recent = recent_rate(ledger, desk.now)
    return words.forecast_text(
        forecasts(ledger, desk.now, desk.policy),
        level_in_use(ledger),
        desk.policy.capacity_ml,
        recent is not None and recent.average,
        desk.view,
    )


def due_items(desk: Desk, patient: Patient, drains: frozenset[str] | None = None) -> tuple[str, ...]:
    """What is expected of these drains (all, where none is named), in words, overdue first."""
    tubes = {ledger.drain: ledger.tube for ledger in patient.drains}
    several = len(tubes) > 1
    return tuple(
        f"{tubes.get(each.drain) or 'no name'} {words.due_text(each, desk.view)}"
        if several
        else words.due_text(each, desk.view)
        for each in _items(desk, patient)
        if drains is None or each.drain in drains
    )


def _due_of(desk: Desk, patient: Patient, drains: frozenset[str] | None = None) -> str:
    where = place(patient.bed, desk.query.tube)
    if _is_away(patient):
        return words.away_text(patient.bed)
    items = due_items(desk, patient, drains)
    return f"{where}: {', '.join(items)}." if items else words.nothing_due(where)


def _is_away(patient: Patient) -> bool:
    return bool(patient.drains) and all(ledger.away for ledger in patient.drains)


def _items(desk: Desk, patient: Patient) -> tuple[Due, ...]:
    return tuple(sorted(due_of(patient, desk.now, desk.policy), key=lambda each: (not each.overdue, each.at)))


def _room(desk: Desk, bed: str, ledger: Ledger) -> str:
    where = place(bed, ledger.tube)
    if ledger.last is None:
        return f"{where}: {NO_LINE}."
    if ledger.canisters[-1].tipped:
        return words.tipped_text(where)
    in_use = (level_in_use(ledger), ledger.last.canister != ledger.canisters[-1].index)
    room = words.room_text(where, ledger.last, in_use, desk.policy.capacity_ml, desk.view)
    return f"{room} {forecast_line(desk, ledger)}"


def _orders(desk: Desk, ledger: Ledger) -> tuple[str, ...]:
    orders = [entry for entry in ledger.live if isinstance(entry.payload, Ordered)]
    return (f"{words.ordered_text(orders[-1], desk.view)}.",) if orders else ()


def _adding(made: tuple[Entry, ...]) -> tuple[Entry, ...]:
    """Earlier checks cut down to what no later one looked at, the latest first."""
    seen = _looked_at(made[-1].payload)
    adding = []
    for entry in reversed(made[:-1]):
        new = _looked_at(entry.payload) - seen
        if new and isinstance(entry.payload, Checked):
            hidden = dict.fromkeys(_looked_at(entry.payload) - new)
            adding.append(replace(entry, payload=replace(entry.payload, **hidden)))
            seen |= new
    return tuple(adding)


def _looked_at(payload: object) -> frozenset[str]:
    if not isinstance(payload, Checked):
        return frozenset()
    return frozenset(item.name for item in fields(payload) if getattr(payload, item.name) is not None)
