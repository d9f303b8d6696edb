"""Recording that a patient went to another bed: the drains go too; two beds may swap."""

from __future__ import annotations

from dataclasses import dataclass, replace

from bot.dialogue.bedside import About, Bedside
from bot.dialogue.canisters import recorded_part
from bot.dialogue.events import have
from bot.dialogue.locate import Spot, locate
from bot.dialogue.part import Part
from bot.dialogue.pending import Ask, Grant, Pending
from bot.dialogue.said import Report
from bot.engine.entries import Left, Moved
from bot.engine.ledger import Ledger
from bot.wording import questions
from bot.wording.gsm import gsm_only
from bot.wording.readback import TWO_IDENTIFIERS, Where, closed_before_text


@dataclass(frozen=True, slots=True, kw_only=True)
class Move:
    """One patient's move, with the drains that were in the bed before any move of the message."""

    said: Report
    to_bed: str
    drains: tuple[Ledger, ...]


def move_of(bedside: Bedside, said: Report) -> Move:
    """The move and its drains, looked up before anything is recorded."""
    assert isinstance(said.fact, Moved)
    at = bedside.moment(said.at)
    drains = tuple(
        each for each in bedside.ledgers_of(said.bed, at) if each.bed_at(at) == said.bed and each.is_open(at)
    )
    return Move(said=said, to_bed=said.fact.to_bed, drains=drains)


def take_move(bedside: Bedside, move: Move, grant: Grant) -> Part:
    """A move recorded, or the question that it needs first."""
    said = move.said
    unknown = next((bed for bed in (said.bed, move.to_bed) if bed not in bedside.context.unit.beds), None)
    if unknown is not None:
        return _ask_bed(bedside, said, unknown, grant)
    if not move.drains:
        return _nothing_here(bedside, said, grant)
    sitting = tuple(each for each in bedside.patient(move.to_bed).drains if each not in move.drains)
    if sitting and move.to_bed not in bedside.leaving and f"occupied:{move.to_bed}" not in grant.accepted:
        return _ask_occupied(bedside, move, sitting, grant)
    return record_move(bedside, move)


def record_move(bedside: Bedside, move: Move) -> Part:
    """The drains at their new bed, on the ledger and in the index."""
    said, at = move.said, bedside.moment(move.said.at)
    spot = Spot(bed=said.bed, tube=move.drains[0].tube, at=at, ledger=move.drains[0])
    entries = []
    for each in move.drains:
        bedside.note(move.to_bed)
        entries.append(bedside.record(each.drain, at, Moved(from_bed=said.bed, to_bed=move.to_bed)))
        bedside.book.berth(each.drain, move.to_bed, each.tube, at)
    tubes = ", ".join(each.tube for each in move.drains if each.tube)
    named = f" ({tubes})" if len(move.drains) > 1 else ""
    clock = bedside.view.clock(at)
    text = gsm_only(f"Bed {said.bed}, {clock}: the drain{named} moved to bed {move.to_bed}.")
    part = recorded_part(spot, move.drains[0].drain, Moved.kind, tuple(entries))
    return replace(part, recorded=(), text=text, last=TWO_IDENTIFIERS)


def swap(bedside: Bedside, move: Move) -> tuple[Part, Part]:
    """Both patients moved, each to the other's bed."""
    back = replace(move.said, bed=move.to_bed, fact=Moved(from_bed=move.to_bed, to_bed=move.said.bed))
    other = move_of(bedside, replace(back, at=bedside.moment(move.said.at)))
    return record_move(bedside, move), record_move(bedside, other)


def clear(bedside: Bedside, move: Move) -> Part:
    """The patient in the other bed has left the unit: each of their drains is closed, and that is said."""
    at, entries, told = bedside.moment(move.said.at), [], []
    for each in bedside.patient(move.to_bed).drains:
        if each not in move.drains:
            entries.append(bedside.record(each.drain, at, Left()).id)
            told.append(closed_before_text(Where(bed=move.to_bed, tube=each.tube), each.last, bedside.view))
    text = "\n".join(told)
    return Part(status="recorded", kind=Left.kind, bed=move.to_bed, text=text, entries=tuple(entries))


def _ask_bed(bedside: Bedside, said: Report, unknown: str, grant: Grant) -> Part:
    slot = "bed" if unknown == said.bed else "to_bed"
    wording = questions.unknown_bed(unknown, "moved", bedside.context.unit.name)
    pending = Pending(ask=Ask.BED, said=said, grant=grant, slot=slot)
    return bedside.ask(pending, wording, About(bed=None, slot=slot, kind=Moved.kind))


def _nothing_here(bedside: Bedside, said: Report, grant: Grant) -> Part:
    """A move from a bed that has no open drain: nothing that we know of goes with the patient."""
    spot = locate(bedside, said, grant)
    if isinstance(spot, Part):
        return spot
    text = gsm_only(f"Bed {said.bed} has no open drain here. Not recorded: moved.")
    return Part(status="told", kind=Moved.kind, bed=said.bed, text=text)


def _ask_occupied(bedside: Bedside, move: Move, sitting: tuple[Ledger, ...], grant: Grant) -> Part:
    pending = Pending(
        ask=Ask.OCCUPIED,
        said=move.said,
        grant=grant,
        asked=(f"occupied:{move.to_bed}",),
        drains=tuple(each.drain for each in sitting),
    )
    there = "; ".join(have(bedside, each) for each in sitting)
    wording = questions.occupied(move.said.bed, move.to_bed, there, several=len(sitting) > 1)
    return bedside.ask(
        pending, wording, About(bed=move.said.bed, drain=move.drains[0].drain, slot="to_bed", kind=Moved.kind)
    )
