"""The queries: what each topic returns for a bed, a tube or the whole unit. Reads only; records nothing."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace

from bot.dialogue.context import Context
from bot.dialogue.queries import beds, handoff, history, people, rates, status, volumes, waiting
from bot.dialogue.queries.desk import Desk, desk_of
from bot.dialogue.queries.reply import QueryReply
from bot.dialogue.queries.telling import caution_lines, of_bed, standing, urgent_only
from bot.dialogue.queries.where import Found, found, patients
from bot.dialogue.said import Query, Topic
from bot.engine.patient import Patient
from bot.store.book import Book
from bot.wording.queries import nothing

__all__ = ["OF_UNIT", "QueryReply", "answer_query"]

_BED: Mapping[Topic, Callable[[Desk, Found], tuple[str, ...]]] = {
    "last": volumes.last,
    "chart": volumes.chart,
    "total": volumes.total,
    "trend": volumes.trend,
    "rate": rates.rate,
    "due": status.due,
    "capacity": status.capacity,
    "checks": status.checks,
    "history": history.history,
    "handoff": handoff.handoff,
}
_UNIT: Mapping[Topic, Callable[[Desk, tuple[Patient, ...]], tuple[str, ...]]] = {
    "last": volumes.last_of_unit,
    "total": volumes.total_of_unit,
    "rate": rates.rate_of_unit,
    "due": status.due_of_unit,
    "capacity": status.capacity_of_unit,
    "checks": status.checks_of_unit,
}


OF_UNIT = frozenset(_UNIT)
"""What can be asked of all beds at once; the unit's beds and its open questions are topics of their own."""


def answer_query(query: Query, context: Context, book: Book) -> QueryReply:
    """The reply to a query. A bed that is not there, or has no drain, is a plain sentence, never an error.

    Any role may ask anything of its own unit. The book shows no other unit.
    """
    desk = desk_of(query, context, book)
    match query.topic:
        case "me":
            return QueryReply(lines=people.me(desk))
        case "repeat":
            return QueryReply(lines=people.repeat(desk))
        case "beds":
            return beds.beds(desk)
        case "handoff" if query.bed is None:
            return answer_query(replace(query, topic="beds"), context, book)
        case "open":
            return _open(desk)
    return _of_unit(desk) if query.bed is None else _of_bed(desk, query.bed)


def _open(desk: Desk) -> QueryReply:
    bed = desk.query.bed
    if bed is None:
        return QueryReply(lines=waiting.open_of_unit(desk), tells_unconfirmed=True)
    if bed not in desk.context.unit.beds:
        return QueryReply(lines=(nothing.unknown_bed(bed, desk.context.unit.name),))
    return QueryReply(lines=waiting.open_of_bed(desk, bed), beds=(bed,), tells_unconfirmed=True)


def _of_bed(desk: Desk, bed: str) -> QueryReply:
    """The reply about one bed; every URGENT that stands there is told, whatever was asked."""
    where = found(desk, bed)
    if isinstance(where, str):
        return QueryReply(lines=(where,), beds=(bed,) if bed in desk.context.unit.beds else ())
    lines = (*where.preface, *_BED[desk.query.topic](desk, where))
    held = standing(desk, where.patient)
    if desk.query.topic == "handoff":
        return QueryReply(lines=lines, cautions=of_bed(bed, held), beds=(bed,), tells_unconfirmed=True)
    held = tuple(each for each in held if each.code not in handoff.TOLD_ELSEWHERE)
    if desk.query.topic != "last":
        held = urgent_only(held)
    return QueryReply(lines=(*lines, *caution_lines(desk, held)), cautions=of_bed(bed, held), beds=(bed,))


def _of_unit(desk: Desk) -> QueryReply:
    """The reply over the unit's beds; every URGENT of any of them comes first."""
    if desk.query.topic not in _UNIT:
        return QueryReply(lines=(nothing.which_bed(desk.query.topic),))
    there = patients(desk)
    if not there:
        return QueryReply(lines=(nothing.empty_unit(desk.context.unit.name),))
    urgent = tuple((each.bed, urgent_only(standing(desk, each))) for each in there)
    first = (line for bed, held in urgent for line in caution_lines(desk, held, bed=bed))
    rows = (*first, *_UNIT[desk.query.topic](desk, there))
    head = nothing.unit_topic(desk.context.unit.name, desk.query.topic, len(there))
    return QueryReply(
        lines=desk.page(head, rows),
        cautions=tuple(item for bed, held in urgent for item in of_bed(bed, held)),
        beds=tuple(patient.bed for patient in there),
    )
