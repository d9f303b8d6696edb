"""What the charge nurse's page and the trend page show: the same as the replies, in pieces. Reads only."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal

from bot.dialogue.context import Context
from bot.dialogue.queries.beds import BedNeeds, in_order_of_need
from bot.dialogue.queries.desk import Desk, desk_of
from bot.dialogue.queries.rates import short_rate
from bot.dialogue.queries.telling import standing
from bot.dialogue.queries.waiting import unconfirmed_lines
from bot.dialogue.queries.where import patients
from bot.dialogue.said import Query
from bot.engine.due import due
from bot.engine.ledger import Ledger
from bot.engine.patient import Patient
from bot.engine.shifts import shift_at, shift_sum
from bot.engine.trend import Trend, trend_of
from bot.engine.values import Caution, Severity
from bot.links import Shown
from bot.store.book import Book
from bot.wording import formats
from bot.wording.cautions import caution_text
from bot.wording.queries.lines import NO_LINE
from bot.wording.queries.nothing import empty_unit
from bot.wording.queries.rates import NOT_KNOWN
from bot.wording.queries.status import due_text
from bot.wording.queries.summary import bed_head, unit_head
from bot.wording.queries.sums import short_sum
from bot.wording.queries.view import View

SMALL = timedelta(hours=12)
"""What a small picture looks back on; the large one that it leads to, on a day."""
LARGE = timedelta(hours=24)

Need = Literal["urgent", "overdue", "waiting", "quiet"]


@dataclass(frozen=True, slots=True, kw_only=True)
class ToldCaution:
    """A caution with its sentence."""

    severity: Severity
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class TubeCard:
    """One drain of a bed. `shown` is what a link to its large picture opens."""

    tube: str | None
    line: str
    age: str
    shift: str
    rate: str
    trend: Trend
    shown: Shown


@dataclass(frozen=True, slots=True, kw_only=True)
class BedCard:
    """One bed, and why it stands where it stands."""

    bed: str
    need: Need
    status: str
    tubes: tuple[TubeCard, ...]
    cautions: tuple[ToldCaution, ...]
    overdue: tuple[str, ...]
    """What is overdue and no caution tells: a check, where none was ever told."""
    unconfirmed: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Board:
    """The unit's beds in order of need. `unconfirmed`: readings for beds that have no drain."""

    head: str
    beds: tuple[BedCard, ...]
    unconfirmed: tuple[str, ...]
    view: View


@dataclass(frozen=True, slots=True, kw_only=True)
class TrendSheet:
    """One drain's large picture, and what waits to be confirmed about its bed."""

    bed: str
    trend: Trend
    cautions: tuple[ToldCaution, ...]
    unconfirmed: tuple[str, ...]
    view: View


def board(context: Context, book: Book) -> Board:
    """The beds of the unit as they stand at this moment."""
    desk = desk_of(Query(topic="beds"), context, book)
    needs = in_order_of_need(desk)
    with_drain = frozenset(each.patient.bed for each in needs)
    unit = context.unit
    head = unit_head(unit.name, tuple(each.needs for each in needs)) if needs else empty_unit(unit.name)
    return Board(
        head=head,
        beds=tuple(_bed(desk, each) for each in needs),
        unconfirmed=unconfirmed_lines(desk, lambda bed: bed not in with_drain),
        view=desk.view,
    )


def trend_sheets(shown: Shown, context: Context, book: Book) -> tuple[TrendSheet, ...]:
    """The pictures that a link opens, of those of its drains that this unit has."""
    desk = desk_of(Query(topic="trend"), context, book)
    end = min(shown.end or desk.now, desk.now)
    held = ((drain, desk.ledger(drain)) for drain in shown.drains)
    return tuple(_sheet(desk, ledger, shown.begin, end) for _, ledger in held if ledger.entries)


def _sheet(desk: Desk, ledger: Ledger, begin: datetime, end: datetime) -> TrendSheet:
    bed = ledger.bed or "?"
    running = end >= desk.now and ledger.is_open()
    cautions = standing(desk, _patient(desk, ledger)) if running else ()
    trend = trend_of(ledger, desk.schedule, _begin(ledger, begin), end, cautions)
    return TrendSheet(
        bed=bed,
        trend=trend,
        cautions=tuple(_told(desk, caution) for caution in trend.cautions),
        unconfirmed=unconfirmed_lines(desk, lambda other: other == bed) if running else (),
        view=desk.view,
    )


def _begin(ledger: Ledger, begin: datetime) -> datetime:
    """No earlier than the hour in which the drain was first heard of: before it there is nothing to see."""
    known = min((entry.at for entry in ledger.live), default=begin)
    return max(begin, _full_hour(known))


def _patient(desk: Desk, ledger: Ledger) -> Patient:
    """Whose drain it is, with the other open drains of the bed."""
    found = (each for each in patients(desk) if each.bed == ledger.bed)
    return next(found, Patient(bed=ledger.bed or "?", drains=(ledger,)))


def _bed(desk: Desk, each: BedNeeds) -> BedCard:
    bed = each.patient.bed
    return BedCard(
        bed=bed,
        need=_need(each),
        status=bed_head(bed, each.needs).partition(": ")[2],
        tubes=tuple(_tube(desk, ledger, each.cautions) for ledger in each.patient.drains),
        cautions=tuple(_told(desk, caution) for caution in each.cautions),
        overdue=tuple(_overdue(desk, each)),
        unconfirmed=unconfirmed_lines(desk, lambda other: other == bed),
    )


def _overdue(desk: Desk, each: BedNeeds) -> Iterator[str]:
    cautioned = {(caution.drain, caution.detail) for caution in each.cautions if caution.code == "overdue"}
    tubes = {ledger.drain: ledger.tube for ledger in each.patient.drains}
    for one in due(each.patient, desk.now, desk.policy):
        if one.overdue and (one.drain, one.what) not in cautioned:
            tube = tubes[one.drain]
            yield f"{tube}: {due_text(one, desk.view)}" if tube else due_text(one, desk.view)


def _need(each: BedNeeds) -> Need:
    needs = each.needs
    if needs.urgent:
        return "urgent"
    if needs.overdue:
        return "overdue"
    return "waiting" if needs.cautions or needs.unconfirmed or needs.amendments else "quiet"


def _told(desk: Desk, caution: Caution) -> ToldCaution:
    return ToldCaution(
        severity=caution.severity, text=caution_text(caution, desk.context.unit.zone, desk.now)
    )


def _tube(desk: Desk, ledger: Ledger, cautions: tuple[Caution, ...]) -> TubeCard:
    last, view, shift = ledger.last, desk.view, shift_at(desk.schedule, desk.now)
    return TubeCard(
        tube=ledger.tube,
        line=f"{formats.ml(last.level_ml)} at {view.clock(last.at)}" if last else NO_LINE,
        age=view.ago(last.at) if last else "",
        shift=short_sum(shift_sum(ledger, desk.schedule, shift, desk.now), view, shift.start),
        rate=short_rate(desk, ledger) or NOT_KNOWN,
        trend=trend_of(ledger, desk.schedule, desk.now - SMALL, desk.now, cautions, volumes=False),
        shown=Shown(drains=(ledger.drain,), begin=_full_hour(desk.now - LARGE)),
    )


def _full_hour(moment: datetime) -> datetime:
    """So that a page's links stay the same while nothing happens."""
    return moment.replace(minute=0, second=0, microsecond=0)
