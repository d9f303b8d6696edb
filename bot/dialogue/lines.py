"""Recording a line, or an amount that makes one."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from bot.dialogue.bedside import About, Bedside
from bot.dialogue.brief import brief
from bot.dialogue.dangers import added_to, base_level, dangers_of, dangers_since_placed
from bot.dialogue.doubts import admitted, ask_doubt
from bot.dialogue.hearing import ask_heard, is_unheard
from bot.dialogue.locate import Spot, drain_of, locate
from bot.dialogue.part import Part, Recorded
from bot.dialogue.pending import Ask, Grant, Pending
from bot.dialogue.said import Amount, Report
from bot.engine.entries import Line
from bot.engine.ledger import Ledger
from bot.wording import questions

NOTHING_FOR = timedelta(hours=6)
"""Within this of the last line, "nothing drained" is recorded without asking."""


def take_line(bedside: Bedside, said: Report, grant: Grant) -> Part:
    """A line recorded, or the question that it needs first."""
    spot = locate(bedside, said, grant)
    if isinstance(spot, Part):
        return spot
    assert isinstance(said.fact, Line)
    ledger = spot.ledger or bedside.ledger("")
    line, open_doubts = admitted(bedside, ledger, said.fact, spot.at, grant)
    if open_doubts:
        return ask_doubt(bedside, spot, said, line, open_doubts, grant)
    if is_unheard(bedside, said, spot.ledger, grant):
        return ask_heard(bedside, said, spot, grant)
    assert isinstance(line, Line)
    if grant.closes is None or not bedside.ledger(grant.closes).is_open():
        return record_line(bedside, said, spot, line)
    closed = bedside.close(grant.closes, spot.at)
    return replace(record_line(bedside, said, spot, line), text=closed)


def record_line(bedside: Bedside, said: Report, spot: Spot, line: Line) -> Part:
    """The line on its drain's ledger."""
    drain = drain_of(bedside, spot)
    entry = bedside.record(drain, spot.at, line)
    recorded = Recorded(entry=entry.id, drain=drain, said_bed=spot.bed, said_tube=spot.tube)
    return Part(
        status="recorded",
        kind=said.fact.kind,
        bed=spot.bed,
        tube=spot.where().tube,
        recorded=(recorded,),
        entries=(entry.id,),
    )


def take_amount(bedside: Bedside, said: Amount, grant: Grant) -> Part:
    """An amount as the line that it makes: asked, unless nothing drained and the last line is near."""
    spot = locate(bedside, said, grant)
    if isinstance(spot, Part):
        return spot
    base = base_level(spot.ledger, spot.at) if spot.ledger else None
    if base is None or spot.ledger is None:
        return _ask_level(bedside, said, spot, grant)
    line = Line(level_ml=base + said.volume_ml, about=said.about, told_ml=said.volume_ml)
    reading = Report(bed=said.bed, tube=said.tube, at=spot.at, fact=line)
    before = added_to(spot.ledger, spot.at)
    near = before is None or spot.at - before.at <= NOTHING_FOR
    if said.volume_ml == 0 and near:
        return take_line(bedside, reading, replace(grant, drain=spot.ledger.drain))
    return _ask_amount(bedside, said, reading, spot.ledger, grant)


def _ask_amount(bedside: Bedside, said: Amount, reading: Report, ledger: Ledger, grant: Grant) -> Part:
    at = bedside.moment(reading.at)
    before = added_to(ledger, at)
    assert isinstance(reading.fact, Line)
    pending = Pending(
        ask=Ask.AMOUNT,
        said=reading,
        grant=replace(grant, drain=ledger.drain),
        asked=(before.entry if before else "",),
        drains=(ledger.drain,),
        brief=brief(said, bedside.view),
    )
    since = f" at {bedside.view.clock(before.at)}" if before else ""
    where = Spot(bed=said.bed, tube=said.tube, at=at, ledger=ledger).where()
    return bedside.ask(
        pending,
        questions.amount(where, said.volume_ml, reading.fact.level_ml, since),
        About(bed=said.bed, tube=where.tube, drain=ledger.drain, slot="level_ml", kind="drained"),
        dangers=dangers_of(bedside, reading, ledger),
    )


def _ask_level(bedside: Bedside, said: Amount, spot: Spot, grant: Grant) -> Part:
    reading = Report(bed=said.bed, tube=said.tube, at=spot.at, fact=Line(level_ml=0))
    drain = spot.ledger.drain if spot.ledger else None
    pending = Pending(
        ask=Ask.LEVEL, said=reading, grant=replace(grant, drain=drain), brief=brief(said, bedside.view)
    )
    wording = questions.amount_without_line(spot.where(), said.volume_ml)
    return bedside.ask(
        pending,
        wording,
        About(bed=said.bed, tube=spot.tube, drain=drain, slot="level_ml", kind="drained"),
        dangers=dangers_since_placed(bedside, spot.ledger, spot.at, said.volume_ml) if spot.ledger else (),
    )
