"""What nobody asked about and somebody should hear: overdue lines, and readings that nobody confirmed.

Called by `penline remind`, which goes round the unit as a charge nurse would.
"""

from __future__ import annotations

from collections.abc import Container
from dataclasses import replace
from datetime import datetime

from bot.dialogue.bedside import Bedside
from bot.dialogue.context import Context
from bot.dialogue.feared import feared_at
from bot.dialogue.part import BedCaution
from bot.dialogue.pending import is_unconfirmed
from bot.dialogue.queries.desk import Desk, desk_of
from bot.dialogue.queries.status import due_of_unit
from bot.dialogue.queries.where import patients
from bot.dialogue.reminders import unconfirmed_line
from bot.dialogue.said import Query
from bot.engine.cautions import cautions
from bot.notices.plan import is_repeat
from bot.store import Book, Notice
from bot.unit import Person, Role, Unit
from bot.wording.cautions import caution_text
from bot.wording.notices import unconfirmed_notice

ROUNDS = Person(id="penline", name="Penline", role=Role.READER)
"""In whose name the reminders are queued."""


def desk_for_rounds(unit: Unit, book: Book, now: datetime, message: str) -> Desk:
    """The unit as it is at this moment, for a look at every bed."""
    context = Context(unit=unit, person=ROUNDS, now=now, message_id=message)
    return desk_of(Query(topic="due"), context, book)


def what_is_due(desk: Desk) -> tuple[str, ...]:
    """What is expected at each bed, in words, the bed that waits longest first."""
    return due_of_unit(desk, patients(desk))


def feared_once(desk: Desk, beds: Container[str]) -> tuple[BedCaution, ...]:
    """What would be urgent at these beds, were a reading right that is asked about or was never confirmed.

    Two questions that hold back the same count once.
    """
    bedside = Bedside(context=desk.context, book=desk.book)
    found: dict[tuple[object, ...], BedCaution] = {}
    for _, held in feared_at(bedside, beds):
        for each in held:
            found.setdefault((each.bed, each.caution.key, each.caution.begin, each.caution.end), each)
    return tuple(found.values())


def reminders(desk: Desk) -> tuple[Notice, ...]:
    """A notice for each overdue line, closing line or check, and each unconfirmed reading.

    One that would say the same as another of a short while ago is left out (`quiet_min`).
    """
    notify = desk.context.unit.notify
    recent = tuple(each.notice for each in desk.book.filed(desk.now - notify.quiet) if not each.over)
    found = (*_overdue(desk), *_unconfirmed(desk))
    return tuple(each for each in found if not is_repeat(each, recent, notify))


def _overdue(desk: Desk) -> tuple[Notice, ...]:
    zone = desk.context.unit.zone
    return tuple(
        replace(
            desk.context.notice(patient.bed, caution.code, caution_text(caution, zone, desk.now)),
            drain=caution.drain,
        )
        for patient in patients(desk)
        for caution in cautions(patient, desk.now, desk.policy)
        if caution.code == "overdue"
    )


def _unconfirmed(desk: Desk) -> tuple[Notice, ...]:
    found = []
    for question in desk.book.unsettled():
        if is_unconfirmed(question, desk.now):
            text = unconfirmed_notice(unconfirmed_line(question, desk.view, settle=""))
            notice = desk.context.notice(question.bed, "unconfirmed", text)
            found.append(replace(notice, drain=question.drain, about=question.id))
    return tuple(found)
