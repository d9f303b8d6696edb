"""The unit's beds in order of need: urgent first, then overdue, then the rest."""

from __future__ import annotations

from dataclasses import dataclass

from bot.dialogue.pending import is_unconfirmed
from bot.dialogue.queries.desk import Desk
from bot.dialogue.queries.rates import short_rate
from bot.dialogue.queries.reply import QueryReply
from bot.dialogue.queries.telling import caution_lines, of_bed, standing, urgent_only
from bot.dialogue.queries.waiting import unconfirmed_lines
from bot.dialogue.queries.where import patients
from bot.engine.amend import outstanding
from bot.engine.due import due
from bot.engine.ledger import Ledger
from bot.engine.patient import Patient
from bot.engine.shifts import shift_at, shift_sum
from bot.engine.values import Caution, Severity
from bot.store.questions import Question
from bot.wording.queries.nothing import empty_unit
from bot.wording.queries.summary import Needs, bed_head, tube_text, unit_head
from bot.wording.queries.sums import short_sum


@dataclass(frozen=True, slots=True, kw_only=True)
class BedNeeds:
    """A bed with what it waits for."""

    patient: Patient
    cautions: tuple[Caution, ...]
    needs: Needs

    @property
    def rank(self) -> tuple[bool, bool, bool]:
        """The order of need, the greatest first; within one rank the unit's order of beds."""
        needs = self.needs
        return (not needs.urgent, not needs.overdue, not (needs.unconfirmed or needs.cautions))


def in_order_of_need(desk: Desk) -> tuple[BedNeeds, ...]:
    """Every bed of the unit with an open drain, urgent first, then overdue, then the rest."""
    waiting = desk.book.unsettled()
    beds = tuple(_bed_needs(desk, patient, waiting) for patient in patients(desk))
    return tuple(sorted(beds, key=lambda each: each.rank))


def beds(desk: Desk) -> QueryReply:
    """The unit's summary, a page at a time; the unconfirmed readings of beds with no drain come last."""
    unit = desk.context.unit
    ordered = in_order_of_need(desk)
    with_drain = frozenset(each.patient.bed for each in ordered)
    rows = [row for each in ordered for row in _rows(desk, each)]
    rows += unconfirmed_lines(desk, lambda bed: bed not in with_drain)
    if not rows:
        return QueryReply(lines=(empty_unit(unit.name),))
    head = unit_head(unit.name, tuple(each.needs for each in ordered))
    return QueryReply(
        lines=desk.page(head, tuple(rows)),
        cautions=tuple(
            item for each in ordered for item in of_bed(each.patient.bed, urgent_only(each.cautions))
        ),
        beds=tuple(each.patient.bed for each in ordered),
        tells_unconfirmed=True,
    )


def _bed_needs(desk: Desk, patient: Patient, waiting: tuple[Question, ...]) -> BedNeeds:
    held = standing(desk, patient)
    here = tuple(each for each in waiting if each.bed == patient.bed)
    urgent = len(urgent_only(held)) + sum(each.danger for each in here)
    needs = Needs(
        urgent=urgent,
        overdue=sum(each.overdue for each in due(patient, desk.now, desk.policy)),
        cautions=sum(each.severity is Severity.MODERATE and each.code != "overdue" for each in held),
        asked=sum(not each.lapsed(desk.now) for each in here),
        unconfirmed=sum(is_unconfirmed(each, desk.now) for each in here),
        amendments=sum(len(outstanding(one, desk.schedule, desk.policy.chart_by)) for one in patient.drains),
        away=any(ledger.away for ledger in patient.drains),
    )
    return BedNeeds(patient=patient, cautions=held, needs=needs)


def _rows(desk: Desk, each: BedNeeds) -> tuple[str, ...]:
    """The bed's own row; under it every URGENT and every unconfirmed reading spelled out."""
    bed = each.patient.bed
    tubes = "; ".join(_tube(desk, ledger) for ledger in each.patient.drains)
    urgent = caution_lines(desk, urgent_only(each.cautions), bed=bed)
    unconfirmed = unconfirmed_lines(desk, lambda other: other == bed)
    return (f"{bed_head(bed, each.needs)}; {tubes}.", *urgent, *unconfirmed)


def _tube(desk: Desk, ledger: Ledger) -> str:
    shift = shift_at(desk.schedule, desk.now)
    held = shift_sum(ledger, desk.schedule, shift, desk.now)
    told = short_sum(held, desk.view, shift.start)
    return tube_text(ledger, told, short_rate(desk, ledger), desk.view)
