"""What becomes of the sender's own open question when they say something new about its drain."""

from __future__ import annotations

from dataclasses import replace
from functools import partial

from bot.dialogue.bedside import Bedside
from bot.dialogue.brief import all_named, each_named
from bot.dialogue.part import Part
from bot.dialogue.pending import Ask, Grant, Pending, is_bare
from bot.dialogue.said import Amount, Fix, Report, Said, Slots
from bot.dialogue.said_json import loaded
from bot.dialogue.slots import NUMBER_OF
from bot.dialogue.take import take
from bot.engine.entries import Exchanged, Line
from bot.store.questions import Question
from bot.wording.gsm import gsm_only
from bot.wording.readback import dropped_text, no_longer_asked_text


def at_the_pending_line(bedside: Bedside, said: Said) -> Said:
    """An exchange told as the answer to a fall, with no time said, was before the line that fell."""
    if not (isinstance(said, Report) and isinstance(said.fact, Exchanged) and said.at is None):
        return said
    for question in bedside.open_questions():
        pending = loaded(question.said_json, Pending)
        if pending.ask is Ask.DOUBT and question.bed == said.bed and isinstance(pending.said, Report):
            return replace(said, at=pending.said.at)
    return said


def give_way(bedside: Bedside, said: Said, part: Part) -> list[Part]:
    """The older questions about the drain of a new statement, settled; what is not recorded is named."""
    if not isinstance(said, Report | Amount | Fix):
        return []
    is_reading = isinstance(said, Amount | Fix) or isinstance(said.fact, Line)
    number = _number(said)
    parts = _told_whole(bedside, said)
    for question in _older(bedside, part):
        pending = loaded(question.said_json, Pending)
        if is_reading and _is_reading(pending):
            one_of_them = number is not None and number in map(_number, pending.readings)
            parts.append((_no_longer_asked if one_of_them else _replaced)(bedside, question, pending))
        elif isinstance(said, Report) and isinstance(said.fact, Exchanged) and part.entries:
            parts += _taken_again(bedside, question, pending)
    return [*parts, *_unconfirmed_settled(bedside, part)]


def asked_again(bedside: Bedside, part: Part) -> list[Part]:
    """The sender's older questions that ask the same of the same reading, settled: one answer is enough."""
    if part.question is None:
        return []
    new, parts = loaded(part.question.said_json, Pending), []
    for question in bedside.open_questions():
        old = loaded(question.said_json, Pending)
        same = (question.bed, question.slot) == (part.question.bed, part.question.slot)
        if same and question.message != bedside.context.message_id and _is_same(old, new):
            bedside.book.settle(question.id, "replaced")
            parts.append(Part(status="told", kind="replaced", bed=question.bed))
    return parts


def _is_same(old: Pending, new: Pending) -> bool:
    """Whether both hold back one amount of one tube, or none; a level is told anew where its time differs."""
    match old.said, new.said:
        case Slots() as before, Slots() as now if not (old.rest or old.readings or new.readings):
            told = (before.kind, before.tube, _number(before), old.choices)
            alike = told == (now.kind, now.tube, _number(now), new.choices)
            return alike and (before.at == now.at or _number(now) is None)
        case _:
            return False


def _told_whole(bedside: Bedside, said: Report | Amount | Fix) -> list[Part]:
    """The sender's reading that lacked its bed or its time, now told again with it: nothing is left of it."""
    number, parts = _number(said), []
    if number is None:
        return []
    for question in bedside.book.unsettled(sender=bedside.context.person.id):
        if not _lacked(question, said) or question.message == bedside.context.message_id:
            continue
        pending = loaded(question.said_json, Pending)
        if _number(pending.said) == number and getattr(pending.said, "tube", None) in (None, said.tube):
            parts.append(_no_longer_asked(bedside, question, pending))
    return parts


def _lacked(question: Question, said: Report | Amount | Fix) -> bool:
    """Whether it asks for the bed of a reading, or for the time of a level of this bed."""
    level = isinstance(said, Report) and isinstance(said.fact, Line)
    return question.bed is None or (level and question.slot == "at" and question.bed == said.bed)


def _no_longer_asked(bedside: Bedside, question: Question, pending: Pending) -> Part:
    """Told again in words that leave nothing to ask; what waited for the answer is named, as not recorded."""
    bedside.book.settle(question.id, "replaced")
    text = no_longer_asked_text(pending.brief, question.asked_at, bedside.view)
    if pending.rest:
        text = f"{text}\n{dropped_text(each_named(pending.rest, bedside.view))}"
    return Part(status="told", kind="replaced", text=text)


def _number(said: Said | Slots | None) -> tuple[str, int] | None:
    """Which level or amount a statement tells, be it whole or not."""
    match said:
        case Report(fact=Line(level_ml=level)):
            return "mark", level
        case Amount(volume_ml=volume):
            return "drained", volume
        case Slots(kind="mark" | "drained" as kind, values=values):
            number = dict(values).get(NUMBER_OF[kind])
            return (kind, number) if isinstance(number, int) else None
        case _:
            return None


def _unconfirmed_settled(bedside: Bedside, part: Part) -> list[Part]:
    """The unconfirmed reading of a minute, by whomever, for which the right line has now been told."""
    told = {
        (each.rpartition("-")[0], entry.at) for each in part.entries if (entry := bedside.book.entry(each))
    }
    parts = []
    for question in bedside.book.unsettled(bed=part.bed) if part.bed else ():
        pending = loaded(question.said_json, Pending)
        at = getattr(pending.said, "at", None)
        if question.lapsed(bedside.now) and _is_reading(pending) and (question.drain, at) in told:
            parts.append(_replaced(bedside, question, pending))
    return parts


def _is_reading(pending: Pending) -> bool:
    """Whether the question holds back a level (or asks for one to begin with), which a new level replaces."""
    match pending.said:
        case Report(fact=fact):
            return isinstance(fact, Line)
        case Slots(kind=kind):
            return kind in NUMBER_OF
        case None:
            told = pending.readings
            return pending.ask is Ask.OPENING or (bool(told) and all(_number(each) for each in told))
        case said:
            return isinstance(said, Amount | Fix)


def _older(bedside: Bedside, part: Part) -> tuple[Question, ...]:
    """The sender's open questions of earlier messages about the drains that a statement was about."""
    drains = {each.rpartition("-")[0] for each in part.entries}
    if part.question is not None and part.question.drain is not None:
        drains.add(part.question.drain)
    return tuple(
        each
        for each in bedside.open_questions()
        if each.message != bedside.context.message_id and _about(each, drains, part)
    )


def _about(question: Question, drains: set[str], part: Part) -> bool:
    if question.drain is not None:
        return question.drain in drains
    if question.bed is None or question.bed != part.bed:
        return False
    tube = getattr(loaded(question.said_json, Pending).said, "tube", None)
    return question.slot in ("bed", "tube") or tube in (None, part.tube)


def _replaced(bedside: Bedside, question: Question, pending: Pending) -> Part:
    bedside.book.settle(question.id, "replaced")
    text = gsm_only(f"Replaced, not recorded: {all_named(pending, bedside.view)}.")
    quiet = pending.ask is Ask.OPENING or is_bare(pending)
    return Part(status="told", kind="replaced", bed=question.bed, text="" if quiet else text)


def _taken_again(bedside: Bedside, question: Question, pending: Pending) -> list[Part]:
    """The reading that fell is on the new canister: it is judged again there."""
    if pending.ask is not Ask.DOUBT or not isinstance(pending.said, Report):
        return []
    grant = Grant(drain=question.drain, heard=True)
    return [bedside.answered(question, partial(take, bedside, pending.said, grant))]
