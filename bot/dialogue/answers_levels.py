"""Answers to questions about a level: misread, new canister, the other line, an amount, a final level."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

from bot.dialogue.bedside import Bedside
from bot.dialogue.brief import all_named
from bot.dialogue.pending import Grant, Pending
from bot.dialogue.said import Amount, Answered, Fix, Report
from bot.dialogue.verdicts import (
    AskLevel,
    Dropped,
    FinalTold,
    NewCanister,
    NoAnswer,
    OtherWrong,
    Retake,
    Verdict,
    declined,
    granted,
    heard,
    hhmm,
    level_of,
    not_recorded,
    with_level,
)
from bot.engine.entries import Line
from bot.wording.readback import first_stays_text


def doubt(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    """Misread, new canister, the other line wrong, or right."""
    said = pending.said
    if not isinstance(said, Report | Fix):
        return NoAnswer()
    match answer:
        case Answered(choice="new_canister", level_ml=level):
            return NewCanister(level)
        case Answered(choice="earlier_wrong", level_ml=level) if pending.targets:
            return OtherWrong(pending.targets[0], level)
        case Answered(choice="misread" | None, level_ml=int(level)) if level != level_of(said):
            return Retake(with_level(said, level), heard(bedside, replace(pending.grant, accepted=())))
        case Answered(choice="misread") | Answered(choice=None, yes=False):
            return AskLevel()
        case Answered(choice=None, yes=True) | Answered(choice=None, yes=None, level_ml=int()):
            return Retake(said, granted(pending))
        case _:
            return NoAnswer()


def conflict(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    said = pending.said
    if not isinstance(said, Report | Fix) or not pending.targets:
        return NoAnswer()
    other = bedside.ledger(pending.targets[0].rpartition("-")[0]).level_of(pending.targets[0])
    match answer:
        case Answered(choice="first"):
            return Dropped(first_stays_text(other, bedside.view))
        case Answered(choice="second" | "earlier_wrong") if isinstance(said, Fix):
            return Dropped("Nothing was changed. Take one of the two lines back first.")
        case Answered(choice="second" | "earlier_wrong", level_ml=None):
            return OtherWrong(pending.targets[0], level_of(said))
        case Answered(choice="misread", level_ml=None):
            return AskLevel()
        case Answered(level_ml=int(level)) if other is not None and level == other.level_ml:
            return Dropped(first_stays_text(other, bedside.view))
        case Answered(level_ml=int(level)) if level == level_of(said):
            return OtherWrong(pending.targets[0], level)
        case Answered(at=datetime() as at) if isinstance(said, Fix):
            return Retake(replace(said, to_at=at), heard(bedside, pending.grant))
        case Answered(yes=False, choice=None, level_ml=None, at=None):
            return Dropped(f"{first_stays_text(other, bedside.view)} Nothing was changed.")
        case _:
            return NoAnswer()


def silence(_: Bedside, pending: Pending, answer: Answered) -> Verdict:
    said = pending.said
    if not isinstance(said, Report | Fix):
        return NoAnswer()
    match answer:
        case Answered(yes=True) | Answered(choice="first"):
            return Retake(said, granted(pending))
        case Answered(yes=False) | Answered(choice="second"):
            closes = pending.drains[0] if pending.drains else None
            return Retake(said, replace(granted(pending), fresh=True, drain=None, closes=closes))
        case Answered(level_ml=int(level)):
            return Retake(with_level(said, level), replace(pending.grant, accepted=()))
        case _:
            return NoAnswer()


def gone(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    """A new drain; the bed to which the old one moved is taken as any other bed, or as a bare number."""
    assert isinstance(pending.said, Report | Amount)
    bed = bedside.ledger(pending.drains[0]).bed
    match answer:
        case Answered(yes=True):
            return Retake(pending.said, replace(granted(pending), fresh=True, drain=None))
        case Answered(yes=False):
            return not_recorded(pending, "Say it again with the right bed or time.")
        case Answered(level_ml=int(number)) if bed is not None and str(number) == bed != pending.said.bed:
            return Retake(replace(pending.said, bed=bed), heard(bedside, Grant()))
        case _:
            return NoAnswer()


def not_yet(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    assert isinstance(pending.said, Report | Amount)
    at = hhmm(bedside, answer.level_ml) if answer.level_ml is not None else None
    if at is not None:
        return Retake(replace(pending.said, at=at), pending.grant)
    return declined(pending, answer)


def came(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    """The drain that is here now, at the bed where it was then; or another time."""
    assert isinstance(pending.said, Report | Amount)
    if answer.yes is True:
        ledger = bedside.ledger(pending.drains[0])
        bed = ledger.bed_at(bedside.moment(pending.said.at)) or pending.said.bed
        return Retake(replace(pending.said, bed=bed), replace(pending.grant, drain=None))
    return not_yet(bedside, pending, answer)


def amount(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    assert isinstance(pending.said, Report)
    match answer:
        case Answered(level_ml=int(level)) if level != level_of(pending.said):
            return Retake(with_level(pending.said, level), heard(bedside, pending.grant))
        case Answered(yes=True) | Answered(level_ml=int()):
            return Retake(pending.said, granted(pending))
        case Answered(yes=False) | Answered(choice="misread"):
            return AskLevel()
        case _:
            return NoAnswer()


def level(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    said = pending.said
    if answer.level_ml is not None and isinstance(said, Report | Fix | Amount):
        return Retake(with_level(said, answer.level_ml), heard(bedside, pending.grant))
    return declined(pending, answer)


def heard_answer(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    said = pending.said
    match answer:
        case Answered(level_ml=int(level)) if isinstance(said, Report | Fix) and level != level_of(said):
            return Retake(with_level(said, level), heard(bedside, pending.grant))
        case Answered(yes=True) | Answered(yes=None, level_ml=int()) if isinstance(
            said, Report | Fix | Amount
        ):
            return Retake(said, granted(pending))
        case Answered(yes=False) | Answered(choice="misread"):
            whole = replace(pending, brief=all_named(pending, bedside.view))  # a no is to all of it
            return not_recorded(whole, "Say it again.")
        case _:
            return NoAnswer()


def final(_: Bedside, __: Pending, answer: Answered) -> Verdict:
    if answer.level_ml is not None:
        return FinalTold(answer.level_ml)
    if answer.yes is False:
        return Dropped('Not read: sums across this exchange stay "at least".')
    return NoAnswer()


def opening(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    ledger = bedside.ledger(pending.drains[0])
    if answer.level_ml is None or ledger.bed is None:
        return (
            Dropped("No opening level: the first line will be the baseline.")
            if answer.yes is False
            else NoAnswer()
        )
    reading = Report(bed=ledger.bed, tube=ledger.tube, at=answer.at, fact=Line(level_ml=answer.level_ml))
    return Retake(reading, heard(bedside, Grant(drain=ledger.drain)))


def other_level(_: Bedside, pending: Pending, answer: Answered) -> Verdict:
    if answer.level_ml is not None:
        return OtherWrong(pending.targets[0], answer.level_ml)
    return OtherWrong(pending.targets[0], None, unknown=True) if answer.yes is False else NoAnswer()
