"""Recording what is not a level: placements, reasons, checks, orders, incidents, away, back and left."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from bot.dialogue.bedside import About, Bedside
from bot.dialogue.brief import what
from bot.dialogue.canisters import recorded_part
from bot.dialogue.hearing import ask_heard, is_unheard
from bot.dialogue.locate import Spot, drain_of, is_tube, locate
from bot.dialogue.part import Part
from bot.dialogue.pending import Ask, Grant, Pending
from bot.dialogue.said import Report
from bot.engine.entries import Away, Back, Incident, Left, Placed, What
from bot.engine.ledger import Ledger
from bot.wording import formats, questions
from bot.wording.gsm import gsm_only
from bot.wording.readback import TWO_IDENTIFIERS, Where

LIVE = timedelta(minutes=15)
"""A placement told so soon is told live: its canister was new and starts at 0."""


def take_event(bedside: Bedside, said: Report, grant: Grant) -> Part:
    """A check, an order or an incident of one drain; no placement is needed."""
    spot = locate(bedside, said, grant)
    if isinstance(spot, Part):
        return _told_anyway(bedside, said, spot)
    if is_unheard(bedside, said, spot.ledger, grant):
        return ask_heard(bedside, said, spot, grant)
    drain = drain_of(bedside, spot)
    entry = bedside.record(drain, spot.at, said.fact)
    return recorded_part(spot, drain, said.fact.kind, (entry,))


_DANGEROUS = frozenset({What.DISCONNECTED, What.DISLODGED})


def _told_anyway(bedside: Bedside, said: Report, question: Part) -> Part:
    """A tube off or out is told to others at once, even where it is not sure which drain it was."""
    fact = said.fact
    if isinstance(fact, Incident) and fact.what in _DANGEROUS and not question.cautions:
        bedside.tell(question.bed, fact.what.value, f"If right: bed {said.bed} {what(said)}.", None, True)
    return question


def take_for_bed(bedside: Bedside, said: Report, grant: Grant) -> Part:
    """Something that holds for all drains of the bed's patient: a reason, away, back, left."""
    drains = _drains_of_patient(bedside, said)
    if not drains and isinstance(said.fact, Away | Back | Left) and said.bed in bedside.context.unit.beds:
        text = gsm_only(f"Bed {said.bed} has no open drain here. Not recorded: {what(said)}.")
        return Part(status="told", kind=said.fact.kind, bed=said.bed, text=text)
    if not drains:
        return take_event(bedside, said, grant)
    at = bedside.moment(said.at)
    spots = tuple(Spot(bed=said.bed, tube=each.tube, at=at, ledger=each) for each in drains)
    if is_unheard(bedside, said, drains[0], grant):
        return ask_heard(bedside, said, spots[0], grant)
    entries = tuple(bedside.record(each.drain, at, said.fact) for each in drains)
    part = recorded_part(spots[0], drains[0].drain, said.fact.kind, entries[:1])
    return replace(part, tube=said.tube, entries=tuple(entry.id for entry in entries))


def _drains_of_patient(bedside: Bedside, said: Report) -> tuple[Ledger, ...]:
    at = bedside.moment(said.at)
    here = tuple(
        each for each in bedside.ledgers_of(said.bed, at) if each.bed_at(at) == said.bed and each.is_open(at)
    )
    if said.tube is None or isinstance(said.fact, Left):
        return here
    return tuple(each for each in here if is_tube(each, said.tube))


def take_placement(bedside: Bedside, said: Report, grant: Grant) -> Part:
    """A new drain; one in place of an open drain is asked about, one of another tube is a second drain."""
    if said.bed not in bedside.context.unit.beds:
        found = locate(bedside, said, grant)
        assert isinstance(found, Part)
        return found
    at = bedside.moment(said.at)
    rival = _rival(bedside, said)
    blank = rival is not None and not rival.levels and rival.placed_at is None
    if rival is not None and not (grant.fresh or blank):
        return _ask_on_open(bedside, said, rival, grant)
    spot = Spot(bed=said.bed, tube=said.tube, at=at, ledger=None)
    if is_unheard(bedside, said, None, grant):
        return ask_heard(bedside, said, spot, grant)
    if rival is None or blank:
        return _place(bedside, said, spot, rival)
    closed = bedside.close(rival.drain, at)
    part = _place(bedside, said, spot, None)
    return replace(part, text="\n".join(each for each in (closed, part.text) if each))


def _rival(bedside: Bedside, said: Report) -> Ledger | None:
    """The open drain that a placement would stand in the place of."""
    at = bedside.moment(said.at)
    for each in bedside.ledgers_of(said.bed, at):
        if not (each.is_open(at) and each.is_open() and each.bed == said.bed):
            continue
        if said.tube is None or each.tube is None or is_tube(each, said.tube):
            return each
    return None


def _place(bedside: Bedside, said: Report, spot: Spot, blank: Ledger | None) -> Part:
    """`blank`: a drain that was only told of, by a check or an incident, and is placed now."""
    assert isinstance(said.fact, Placed)
    opening = said.fact.opening_ml
    if opening is None and bedside.now - spot.at <= LIVE:
        opening = 0
    placed = replace(said.fact, bed=spot.bed, tube=spot.tube, opening_ml=opening)
    if blank is not None:
        drain, entry = blank.drain, bedside.record(blank.drain, spot.at, placed)
    else:
        drain = bedside.open_drain(spot.bed, spot.tube, spot.at, placed)
        entry = bedside.ledger(drain).entries[0]
    part = replace(recorded_part(spot, drain, placed.kind, (entry,)), last=TWO_IDENTIFIERS)
    if opening is not None:
        return part
    pending = Pending(ask=Ask.OPENING, drains=(drain,))
    asked = bedside.ask(
        pending,
        questions.opening(spot.where()),
        About(bed=spot.bed, tube=spot.tube, drain=drain, slot="level_ml", kind=placed.kind),
    )
    return replace(part, question=asked.question, last=f"{TWO_IDENTIFIERS}\n{asked.text}")


def _ask_on_open(bedside: Bedside, said: Report, rival: Ledger, grant: Grant) -> Part:
    pending = Pending(ask=Ask.ON_OPEN, said=said, grant=grant, drains=(rival.drain,))
    where = Where(bed=said.bed, tube=said.tube)
    return bedside.ask(
        pending,
        questions.on_open(where, have(bedside, rival)),
        About(bed=said.bed, tube=said.tube, drain=rival.drain, slot="kind", kind=said.fact.kind),
    )


def have(bedside: Bedside, ledger: Ledger) -> str:
    """An open drain in a few words: its tube and last line."""
    last = ledger.last
    tube = f"{ledger.tube}, " if ledger.tube else ""
    if last is None:
        return f"{tube}no line yet"
    return f"{tube}last line {formats.ml(last.level_ml)} at {bedside.view.clock(last.at)}"
