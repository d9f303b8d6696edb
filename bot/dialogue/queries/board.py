"""What the charge nurse's page and the trend page show: the same as the replies, in pieces. Reads only."""

from __future__ import annotations

from collections.abc import Container, Iterable, Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal

from bot.dialogue.bedside import Bedside
from bot.dialogue.context import Context
from bot.dialogue.feared import feared_at
from bot.dialogue.queries.beds import BedNeeds, in_order_of_need
from bot.dialogue.queries.desk import Desk, desk_of
from bot.dialogue.queries.rates import short_rate
from bot.dialogue.queries.telling import standing
from bot.dialogue.queries.waiting import reading_text, unconfirmed_lines, waiting_readings
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
from bot.wording.cautions import caution_text
from bot.wording.queries.lines import NO_LINE, board_line
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
    """A caution with its sentence; `reading` is the one that it rests on, while that is not confirmed."""

    caution: Caution
    text: str
    reading: str = ""

    @property
    def severity(self) -> Severity:
        """How serious it is."""
        return self.caution.severity


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
    dangers = _unconfirmed_dangers(desk, with_drain)
    return Board(
        head=head,
        beds=tuple(_bed(desk, each, dangers.get(each.patient.bed, ())) for each in needs),
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
    dangers = _unconfirmed_dangers(desk, {bed}).get(bed, ()) if running else ()
    held = standing(desk, _patient(desk, ledger)) if running else ()
    cautions = _once((*dangers, *(_told(desk, each) for each in held)))
    trend = trend_of(ledger, desk.schedule, _begin(ledger, begin), end, (each.caution for each in cautions))
    return TrendSheet(
        bed=bed,
        trend=trend,
        cautions=tuple(each for each in cautions if each.caution in trend.cautions),
        unconfirmed=_unconfirmed(desk, bed, dangers) if running else (),
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


def _unconfirmed_dangers(desk: Desk, beds: Container[str]) -> dict[str, tuple[ToldCaution, ...]]:
    """What would be urgent at each bed, were a reading right that is asked about or was never confirmed."""
    bedside = Bedside(context=desk.context, book=desk.book)
    found: dict[str, tuple[ToldCaution, ...]] = {}
    for question, held in feared_at(bedside, beds):
        for each in held:
            reading = reading_text(desk, question) if each is held[0] else ""
            found[each.bed] = (*found.get(each.bed, ()), _told(desk, each.caution, reading))
    return found


def _once(told: Iterable[ToldCaution]) -> tuple[ToldCaution, ...]:
    """Each sentence once: two rules of one number may say the same."""
    found: dict[str, ToldCaution] = {}
    for each in told:
        found.setdefault(each.text, each)
    return tuple(found.values())


def _unconfirmed(desk: Desk, bed: str, dangers: tuple[ToldCaution, ...]) -> tuple[str, ...]:
    """The readings of the bed that nobody has confirmed yet, but for those that its dangers name."""
    named = {each.reading for each in dangers}
    return tuple(each for each in waiting_readings(desk, bed) if each not in named)


def _bed(desk: Desk, each: BedNeeds, dangers: tuple[ToldCaution, ...]) -> BedCard:
    bed = each.patient.bed
    return BedCard(
        bed=bed,
        need=_need(each),
        status=bed_head(bed, each.needs).partition(": ")[2],
        tubes=tuple(_tube(desk, ledger, each.cautions) for ledger in each.patient.drains),
        cautions=_once((*dangers, *(_told(desk, caution) for caution in each.cautions))),
        overdue=tuple(_overdue(desk, each)),
        unconfirmed=_unconfirmed(desk, bed, dangers),
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


def _told(desk: Desk, caution: Caution, reading: str = "") -> ToldCaution:
    text = caution_text(caution, desk.context.unit.zone, desk.now)
    return ToldCaution(caution=caution, text=text, reading=reading)


def _tube(desk: Desk, ledger: Ledger, cautions: tuple[Caution, ...]) -> TubeCard:
    last, view, shift = ledger.last, desk.view, shift_at(desk.schedule, desk.now)
    line, age = board_line(last, ledger.unread, view) if last else (NO_LINE, "")
    return TubeCard(
        tube=ledger.tube,
        line=line,
        age=age,
        shift=short_sum(shift_sum(ledger, desk.schedule, shift, desk.now), view, shift.start),
        rate=short_rate(desk, ledger) or NOT_KNOWN,
        trend=trend_of(ledger, desk.schedule, desk.now - SMALL, desk.now, cautions, volumes=False),
        shown=Shown(drains=(ledger.drain,), begin=_full_hour(desk.now - LARGE)),
    )


def _full_hour(moment: datetime) -> datetime:
    """So that a page's links stay the same while nothing happens."""
    return moment.replace(minute=0, second=0, microsecond=0)
