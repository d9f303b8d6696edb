"""Which drains a query is about, or why there is nothing to tell."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.dialogue.bedside import LATELY
from bot.dialogue.queries.desk import Desk
from bot.engine.entries import Left
from bot.engine.ledger import Ledger
from bot.engine.patient import Patient, patient_in
from bot.wording.queries import nothing

REACH = timedelta(hours=24)
"""How long a closed drain still answers for its bed; then only its history does (a bed is not a patient)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Found:
    """The drains that a query is about, all of one bed and either open or the last ones closed.

    `patient` holds all open drains of the bed, asked for or not. `preface` is told first.
    """

    bed: str
    drains: tuple[Ledger, ...]
    patient: Patient
    preface: tuple[str, ...] = ()


def found(desk: Desk, bed: str) -> Found | str:
    """The drains of the bed (of the tube, where one is named), or one sentence why there are none."""
    unit = desk.context.unit
    if bed not in unit.beds:
        return nothing.unknown_bed(bed, unit.name)
    ledgers = tuple(desk.ledger(drain) for drain in desk.book.drains_of(bed, desk.context.now - LATELY))
    here = tuple(ledger for ledger in ledgers if ledger.bed == bed)
    patient = patient_in(bed, here)
    asked = tuple(each for each in patient.drains if _is_tube(each, desk.query.tube))
    if asked:
        return Found(bed=bed, drains=asked, patient=patient)
    return _closed(desk, patient, here) or _none(desk, bed, patient, ledgers)


def patients(desk: Desk) -> tuple[Patient, ...]:
    """The unit's beds that have an open drain, in the unit's order of beds."""
    by_bed: dict[str, list[Ledger]] = {}
    for drain in desk.book.unit_drains():
        ledger = desk.ledger(drain)
        if ledger.bed is not None and ledger.is_open():
            by_bed.setdefault(ledger.bed, []).append(ledger)
    places = {bed: place for place, bed in enumerate(desk.context.unit.beds)}
    beds = sorted(by_bed, key=lambda bed: (places.get(bed, len(places)), bed))
    return tuple(patient_in(bed, by_bed[bed]) for bed in beds)


def ending(ledger: Ledger) -> tuple[str, datetime] | None:
    """How and when the drain was closed: "removed" or "left"; None while it is open."""
    closed = ledger.closed_by
    if closed is None:
        return None
    return ("left" if isinstance(closed.payload, Left) else "removed", closed.at)


def _is_tube(ledger: Ledger, tube: str | None) -> bool:
    return tube is None or ledger.tube == tube or tube in ledger.joined


def _closed(desk: Desk, patient: Patient, here: tuple[Ledger, ...]) -> Found | str | None:
    """The drain of the bed (or of the tube) that was closed last, when none is open."""
    if patient.drains and desk.query.tube is None:
        return None
    ended = [
        (how[1], how, ledger)
        for ledger in here
        if (how := ending(ledger)) is not None and _is_tube(ledger, desk.query.tube)
    ]
    if not ended:
        return None
    moment, how, last = max(ended, key=lambda item: item[0])
    told = nothing.closed_drain(patient.bed, desk.query.tube, how, desk.view)
    if desk.now - moment > REACH and desk.query.topic != "history":
        return told
    return Found(bed=patient.bed, drains=(last,), patient=patient, preface=(told,))


def _none(desk: Desk, bed: str, patient: Patient, ledgers: tuple[Ledger, ...]) -> str:
    if patient.drains and desk.query.tube is not None:
        return nothing.unknown_tube(bed, desk.query.tube, tuple(each.tube for each in patient.drains))
    gone = next((each for each in ledgers if each.bed not in (None, bed) and each.is_open()), None)
    if gone is not None and gone.bed is not None:
        return nothing.moved_away(bed, gone.tube, gone.bed)
    return nothing.no_drain(bed)
