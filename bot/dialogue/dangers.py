"""What a statement would mean for its patient if it were right: the cautions that no question may hide."""

from __future__ import annotations

from collections.abc import Container, Iterator
from dataclasses import replace
from datetime import datetime

from bot.dialogue.bedside import Bedside
from bot.dialogue.part import BedCaution, Part
from bot.dialogue.said import Amount, Fix, NotSure, Report, Said, Slots
from bot.dialogue.slots import built
from bot.engine.entries import Correction, Exchanged, FinalLevel, Line, Payload, Placed, Removed
from bot.engine.ledger import Ledger
from bot.engine.values import Level


def dangers_of(
    bedside: Bedside, said: Said, ledger: Ledger, target: str | None = None
) -> tuple[BedCaution, ...]:
    """The cautions of high severity that the statement would raise on this drain, as "if right"."""
    at = bedside.moment(getattr(said, "at", None))
    entry = ledger.find(target) if target else None
    if isinstance(said, Fix) and entry is not None:
        at = said.to_at or entry.at
    payloads = supposed_of(said, ledger, at, target)
    if not payloads or ledger.bed is None or not ledger.is_open():
        return ()
    return bedside.dangers(ledger.bed, bedside.supposed(ledger, at, *payloads))


def dangers_at_its_bed(bedside: Bedside, said: Report | Amount) -> Iterator[BedCaution]:
    """The same on each open drain of its bed that the statement may be about."""
    for ledger in bedside.patient(said.bed).drains:
        if said.tube in (None, ledger.tube):
            yield from dangers_of(bedside, said, ledger)


def dangers_since_placed(
    bedside: Bedside, ledger: Ledger, at: datetime, volume_ml: int
) -> tuple[BedCaution, ...]:
    """The cautions of high severity of an amount, in mL, with no line before: it came since the placement."""
    if ledger.bed is None or not ledger.is_open():
        return ()
    placed = [entry.at for entry in ledger.live if isinstance(entry.payload, Placed) and entry.at < at]
    for moment in placed[-1:]:
        ledger = bedside.supposed(ledger, moment, Line(level_ml=0))
    return bedside.dangers(str(ledger.bed), bedside.supposed(ledger, at, Line(level_ml=volume_ml)))


def in_question(slots: Slots, asked_at: datetime) -> Report | Amount | None:
    """What a question about a slot holds back, whole; None where it has no bed or no amount.

    Where its time is what is asked, it is supposed to be as of the question.
    """
    whole = built(slots)
    return replace(whole, at=whole.at or asked_at) if isinstance(whole, Report | Amount) else None


def supposed_of(said: Said, ledger: Ledger, at: datetime, target: str | None = None) -> tuple[Payload, ...]:
    """The entries that the statement would make on this drain, were it right."""
    match said:
        case Report(fact=Exchanged() | Removed() as fact, final_ml=int(final)):
            return (FinalLevel(level_ml=final), fact)
        case Report(fact=Placed()):
            return ()
        case Report(fact=fact):
            return (fact,)
        case Amount(volume_ml=volume):
            base = base_level(ledger, at)
            return () if base is None else (Line(level_ml=base + volume, told_ml=volume),)
        case Fix(level_ml=int(level), to_bed=None, to_tube=None) if target:
            return (Correction(target=target, level_ml=level),)
        case _:
            return ()


def base_level(ledger: Ledger, at: datetime) -> int | None:
    """The level, in mL, that an amount told at this moment adds to; None without one."""
    before = added_to(ledger, at)
    opened = [entry for entry in ledger.live if isinstance(entry.payload, Exchanged) and entry.at <= at]
    if opened and (before is None or before.kind == "final" or before.at < opened[-1].at):
        payload = opened[-1].payload
        return payload.opening_ml if isinstance(payload, Exchanged) else None
    return None if before is None else before.level_ml


def added_to(ledger: Ledger, at: datetime) -> Level | None:
    """The level before that moment; where there is none, that of the same minute: "same" after a line."""
    return ledger.level_before(at) or next(iter(ledger.levels_at(at)), None)


def held_dangers(bedside: Bedside, asked: Said | NotSure, waiting: tuple[Said | NotSure, ...]) -> list[Part]:
    """The dangers in what waits behind a question, were all of it right; told with the question."""
    cautions = dangers_behind(bedside, (asked, *waiting))
    if not cautions:
        return []
    for danger in cautions:
        bedside.notify(danger, unconfirmed=True)
    text = "\n".join(bedside.caution_line(danger) for danger in cautions)
    return [Part(status="told", kind="note", bed=cautions[0].bed, text=text, cautions=cautions)]


def dangers_behind(
    bedside: Bedside,
    told: tuple[Said | NotSure | Slots, ...],
    *,
    drains: tuple[str, ...] = (),
    target: str | None = None,
    beds: Container[str] | None = None,
) -> tuple[BedCaution, ...]:
    """The dangers in a statement and in what waits for its answer. `drains`: those it may be about; `beds`:
    none is looked for elsewhere."""
    readings = tuple(each for each in told if isinstance(each, Report | Amount))
    found: dict[str, BedCaution] = {}
    for bed in dict.fromkeys(each.bed for each in readings):
        for ledger in _about(bedside, bed, drains, beds):
            named = ledger.drain in drains
            said = tuple(
                each for each in readings if each.bed == bed and (named or each.tube in (None, ledger.tube))
            )
            supposed = _all_supposed(bedside, ledger, said)
            found |= {danger.caution.key: danger for danger in bedside.dangers(str(ledger.bed), supposed)}
    for fix in (each for each in told if isinstance(each, Fix)):
        for ledger in _named(bedside, drains, beds):
            found |= {each.caution.key: each for each in dangers_of(bedside, fix, ledger, target)}
    return tuple(found.values())


def _about(
    bedside: Bedside, bed: str, drains: tuple[str, ...], beds: Container[str] | None
) -> tuple[Ledger, ...]:
    """The drains named, where they are open; else those of the bed."""
    if drains:
        return tuple(each for each in _named(bedside, drains, beds) if each.is_open())
    return bedside.patient(bed).drains if beds is None or bed in beds else ()


def _named(bedside: Bedside, drains: tuple[str, ...], beds: Container[str] | None) -> tuple[Ledger, ...]:
    """Those of the drains that are in a bed, of these."""
    ledgers = map(bedside.ledger, drains)
    return tuple(each for each in ledgers if each.bed is not None and (beds is None or each.bed in beds))


def _all_supposed(bedside: Bedside, ledger: Ledger, said: tuple[Report | Amount, ...]) -> Ledger:
    for each in said:
        at = bedside.moment(each.at)
        ledger = bedside.supposed(ledger, at, *supposed_of(each, ledger, at))
    return ledger
