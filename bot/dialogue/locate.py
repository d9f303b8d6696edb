"""Which drain a statement is about: found, to be opened, or a question.

A bed is not a patient: what is said of a bed goes to the drain that was there at that moment, and a bed whose
drain was closed or moved away is asked about before a new ledger is begun.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from bot.dialogue.bedside import About, Bedside
from bot.dialogue.brief import what
from bot.dialogue.dangers import dangers_of
from bot.dialogue.part import Part
from bot.dialogue.pending import Ask, Grant, Pending
from bot.dialogue.said import Amount, Report
from bot.engine.entries import Removed
from bot.engine.ledger import Ledger
from bot.wording import questions
from bot.wording.readback import Where


@dataclass(frozen=True, slots=True, kw_only=True)
class Spot:
    """Where a statement goes. `ledger` None: no drain is known here, one is opened."""

    bed: str
    tube: str | None
    at: datetime
    ledger: Ledger | None

    def where(self) -> Where:
        """The bed and tube as they are read back."""
        if self.ledger is None:
            return Where(bed=self.bed, tube=self.tube)
        return Where(bed=self.bed, tube=self.ledger.tube or self.tube, now_bed=self.ledger.bed)


def drain_of(bedside: Bedside, spot: Spot) -> str:
    """The spot's drain; opened when there is none."""
    if spot.ledger is not None:
        return spot.ledger.drain
    return bedside.open_drain(spot.bed, spot.tube, spot.at)


def locate(bedside: Bedside, said: Report | Amount, grant: Grant) -> Spot | Part:
    """The spot of a statement, or the question that it needs first."""
    at = bedside.moment(said.at)
    if said.bed not in bedside.context.unit.beds:
        return _unknown_bed(bedside, said, grant)
    if grant.fresh:
        return Spot(bed=said.bed, tube=said.tube, at=at, ledger=None)
    granted = bedside.ledger(grant.drain) if grant.drain is not None else None
    if granted is not None and granted.is_open(at) and granted.bed_at(at) == said.bed:
        return Spot(bed=said.bed, tube=said.tube, at=at, ledger=granted)
    ledgers = bedside.ledgers_of(said.bed, at)
    here = _here(ledgers, said.bed, at)
    if here:
        return _of_tubes(bedside, said, grant, here)
    return _none_here(bedside, said, grant, ledgers)


def _here(ledgers: tuple[Ledger, ...], bed: str, at: datetime) -> tuple[Ledger, ...]:
    """The drains in the bed and open at that moment; else the one found there later and never placed."""
    in_bed = tuple(each for each in ledgers if each.bed_at(at) == bed and each.is_open(at))
    there = tuple(each for each in in_bed if each.live[0].at <= at)
    if there:
        return there
    later = tuple(each for each in in_bed if each.placed_at is None)
    first = min((each.live[0].at for each in later), default=at)
    return tuple(each for each in later if each.live[0].at == first)


def _of_tubes(bedside: Bedside, said: Report | Amount, grant: Grant, here: tuple[Ledger, ...]) -> Spot | Part:
    at = bedside.moment(said.at)
    fits = tuple(each for each in here if said.tube is None or is_tube(each, said.tube))
    if len(fits) == 1:
        return Spot(bed=said.bed, tube=said.tube, at=at, ledger=fits[0])
    if fits:
        return _which(bedside, said, grant, fits)
    if said.tube is not None and _told_apart(bedside, said, here):
        return Spot(bed=said.bed, tube=said.tube, at=at, ledger=None)
    if len(here) > 1:
        return _which(bedside, said, grant, here)
    return _other_tube(bedside, said, grant, here[0])


def is_tube(ledger: Ledger, tube: str) -> bool:
    """Whether the drain is called so, or joins a tube that is."""
    return ledger.tube == tube or tube in ledger.joined


def _told_apart(bedside: Bedside, said: Report | Amount, here: tuple[Ledger, ...]) -> bool:
    """Whether the message names several tubes of the bed, and all its drains have names."""
    tubes = {tube for bed, tube in bedside.told_apart if bed == said.bed}
    return len(tubes) > 1 and all(each.tube is not None for each in here)


def _none_here(
    bedside: Bedside, said: Report | Amount, grant: Grant, ledgers: tuple[Ledger, ...]
) -> Spot | Part:
    at = bedside.moment(said.at)
    placed = [
        each
        for each in ledgers
        if each.placed_at is not None and each.placed_at > at and each.bed == said.bed
    ]
    if placed:
        return _not_yet(bedside, said, grant, placed[-1])
    came = [each for each in ledgers if each.bed == said.bed and each.is_open() and _berth(each, at)]
    if came:
        return _came(bedside, said, grant, came)
    past = [
        (moment, how, each)
        for each in ledgers
        if (ended := _ended(each, said.bed, at))
        for how, moment in [ended]
    ]
    if past:
        moment, how, ledger = max(past, key=lambda item: item[0])
        return _gone(bedside, said, grant, (ledger, how, moment))
    return Spot(bed=said.bed, tube=said.tube, at=at, ledger=None)


def _ended(ledger: Ledger, bed: str, at: datetime) -> tuple[str, datetime] | None:
    """How and when the drain stopped being in this bed, if that was before the moment."""
    if ledger.closed_at is not None and ledger.closed_at <= at and ledger.bed == bed:
        return _how_closed(ledger), ledger.closed_at
    moves = [
        entry.at
        for entry in ledger.live
        if getattr(entry.payload, "from_bed", None) == bed and entry.at <= at
    ]
    if moves and ledger.bed != bed:
        return f"moved to bed {ledger.bed}", max(moves)
    return None


def _how_closed(ledger: Ledger) -> str:
    removed = ledger.closed_by is not None and isinstance(ledger.closed_by.payload, Removed)
    return "was removed" if removed else "left with its patient"


def _unknown_bed(bedside: Bedside, said: Report | Amount, grant: Grant) -> Part:
    pending = Pending(ask=Ask.BED, said=said, grant=grant)
    wording = questions.unknown_bed(said.bed, what(said), bedside.context.unit.name)
    return bedside.ask(pending, wording, About(bed=None, slot="bed", kind=kind_of(said)))


def _which(bedside: Bedside, said: Report | Amount, grant: Grant, fits: tuple[Ledger, ...]) -> Part:
    pending = Pending(ask=Ask.TUBE, said=said, grant=grant, drains=tuple(each.drain for each in fits))
    names = tuple(each.tube or "no name" for each in fits)
    wording = questions.which_tube(said.bed, _heard(bedside, said), names)
    dangers = tuple(danger for each in fits for danger in dangers_of(bedside, said, each))
    return bedside.ask(
        pending, wording, About(bed=said.bed, slot="tube", kind=kind_of(said)), dangers=dangers[:2]
    )


def _other_tube(bedside: Bedside, said: Report | Amount, grant: Grant, have: Ledger) -> Part:
    pending = Pending(ask=Ask.OTHER_TUBE, said=said, grant=grant, drains=(have.drain,))
    where = Where(bed=said.bed, tube=said.tube)
    wording = questions.other_tube(where, what(said), have.tube)
    return bedside.ask(
        pending,
        wording,
        About(bed=said.bed, tube=said.tube, drain=have.drain, slot="tube", kind=kind_of(said)),
        dangers=dangers_of(bedside, said, have),
    )


def _not_yet(bedside: Bedside, said: Report | Amount, grant: Grant, placed: Ledger) -> Part:
    pending = Pending(ask=Ask.NOT_YET, said=said, grant=grant, drains=(placed.drain,))
    at = bedside.view.clock(placed.placed_at or bedside.now)
    wording = questions.not_yet(Where(bed=said.bed, tube=said.tube), _heard(bedside, said), at)
    return bedside.ask(
        pending, wording, About(bed=said.bed, drain=placed.drain, slot="at", kind=kind_of(said))
    )


def _berth(ledger: Ledger, at: datetime) -> tuple[str, datetime] | None:
    """The bed that the drain was in then, and until when; None where it is there still."""
    later = [moment for moment, _ in ledger.beds if moment > at]
    bed = ledger.bed_at(at)
    return (bed, min(later)) if bed is not None and bed != ledger.bed and later else None


def _came(bedside: Bedside, said: Report | Amount, grant: Grant, came: list[Ledger]) -> Part:
    """A time before the bed's patient came: a new ledger for it would be a second patient in the bed."""
    at = bedside.moment(said.at)
    named = [each for each in came if said.tube is None or is_tube(each, said.tube)]
    ledger = (named or came)[0]
    berth = _berth(ledger, at)
    assert berth is not None
    pending = Pending(ask=Ask.CAME, said=said, grant=grant, drains=(ledger.drain,))
    where = Where(bed=said.bed, tube=said.tube)
    return bedside.ask(
        pending,
        questions.came(where, _heard(bedside, said), berth[0], bedside.view.clock(berth[1])),
        About(bed=said.bed, tube=said.tube, drain=ledger.drain, slot="at", kind=kind_of(said)),
        dangers=dangers_of(bedside, said, ledger),
    )


def _gone(bedside: Bedside, said: Report | Amount, grant: Grant, past: tuple[Ledger, str, datetime]) -> Part:
    ledger, how, moment = past
    pending = Pending(ask=Ask.GONE, said=said, grant=grant, drains=(ledger.drain,))
    where = Where(bed=said.bed, tube=said.tube)
    now_bed = ledger.bed if ledger.is_open() else None
    wording = questions.gone(where, _heard(bedside, said), how, bedside.view.clock(moment), now_bed)
    return bedside.ask(pending, wording, About(bed=said.bed, tube=said.tube, slot="bed", kind=kind_of(said)))


def _heard(bedside: Bedside, said: Report | Amount) -> str:
    """What was said and its time, as a question names it."""
    return f"{what(said)} at {bedside.view.clock(bedside.moment(said.at))}"


def kind_of(said: Report | Amount) -> str:
    """The kind of a statement, in the words of the wire."""
    return "drained" if isinstance(said, Amount) else said.fact.kind
