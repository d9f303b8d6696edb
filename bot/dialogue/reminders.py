"""What no reply keeps quiet about: questions that wait for its sender, unconfirmed readings of its beds."""

from __future__ import annotations

from bot.dialogue.bedside import Bedside
from bot.dialogue.brief import each_named
from bot.dialogue.news import News
from bot.dialogue.part import BedCaution, Part
from bot.dialogue.pending import NO_READING, Pending, is_passing, is_unconfirmed
from bot.dialogue.said import NotSure, Said
from bot.dialogue.said_json import loaded
from bot.engine.values import Caution, Severity
from bot.store.questions import Question
from bot.wording.queries.view import View
from bot.wording.readback import (
    DROP,
    not_recorded_text,
    settle_text,
    unconfirmed_text,
    waits_text,
)


def reminder_lines(bedside: Bedside, parts: list[Part]) -> list[str]:
    """The sender's open questions that this reply neither asks nor tells; all readings in one line.

    "Not recorded yet: bed 2 60 mL at 19:30; bed 11 40 mL at 19:30."
    """
    told = {part.question.id for part in parts if part.question is not None}
    if any(part.tells_open for part in parts):
        return []
    readings, others = [], []
    for question in bedside.open_questions():
        pending = loaded(question.said_json, Pending)
        shown = question.id in told or any(question.text in part.text for part in parts)
        if shown or is_passing(pending):
            continue
        if pending.ask in NO_READING:
            others.append(question.text)
        else:
            readings.append(pending.brief)
    return [*([not_recorded_text(*readings)] if readings else []), *others]


def waiting_told(bedside: Bedside, waiting: tuple[Said | NotSure, ...]) -> Part:
    """What was said further on and is taken once the question is answered."""
    return Part(status="question", kind="note", text=waits_text(each_named(waiting, bedside.view)))


def unconfirmed_told(bedside: Bedside, parts: list[Part]) -> News:
    """The unconfirmed readings of every bed that the reply is about, to whoever it is."""
    lines: list[str] = []
    cautions: list[BedCaution] = []
    for bed in _beds(bedside, parts):
        held = unconfirmed_of(bedside, bed)
        lines += _unconfirmed(bedside, bed, held)
        cautions += [_caution(bed, question) for question in held]
    lines += _of_no_bed(bedside, parts)
    return News(lines=tuple(lines), cautions=tuple(cautions))


def _unconfirmed(bedside: Bedside, bed: str | None, held: tuple[Question, ...]) -> list[str]:
    """How to settle them stands once behind those that are settled alike."""
    settled = [settle_text(bed, question.offered) for question in held]
    return [
        unconfirmed_line(question, bedside.view, "" if settle == after else settle)
        for question, settle, after in zip(held, settled, (*settled[1:], None), strict=False)
    ]


def unconfirmed_line(question: Question, view: View, settle: str) -> str:
    """What it is called, who was asked and when; `settle` is how it is settled, if that is to be said."""
    what = loaded(question.said_json, Pending).brief
    return unconfirmed_text(what, question.asked_at, question.sender, view, settle)


def _of_no_bed(bedside: Bedside, parts: list[Part]) -> list[str]:
    """The sender's own readings whose bed was never said: no reply about a bed would show them.

    A "no" drops them, where nothing else could be meant by it: by voice it takes the last message back.
    """
    held = () if any(part.tells_open for part in parts) else unconfirmed_of_no_bed(bedside)
    lines = _unconfirmed(bedside, None, held)
    free = bedside.context.channel == "text" and not bedside.open_questions()
    return [*lines, DROP] if lines and free else lines


def unconfirmed_of_no_bed(bedside: Bedside) -> tuple[Question, ...]:
    """The sender's readings whose bed was asked for and never said."""
    mine = bedside.book.unsettled(sender=bedside.context.person.id)
    return tuple(each for each in mine if each.bed is None and is_unconfirmed(each, bedside.now))


def unconfirmed_of(bedside: Bedside, bed: str) -> tuple[Question, ...]:
    """The bed's readings whose question nobody answered in time."""
    return tuple(each for each in bedside.questions_at(bed) if is_unconfirmed(each, bedside.now))


def beds_of(bedside: Bedside, parts: list[Part]) -> tuple[str, ...]:
    """The beds that the reply is about, each once."""
    return _beds(bedside, parts, every=True)


def _beds(bedside: Bedside, parts: list[Part], *, every: bool = False) -> tuple[str, ...]:
    """The beds of the reply, each once; a query that names its unconfirmed readings itself is left out."""
    named = dict.fromkeys(bedside.patients_before)
    for part in parts:
        if every or not part.tells_unconfirmed:
            own = (part.bed,) if part.bed in bedside.context.unit.beds else ()
            named |= dict.fromkeys(bed for bed in (*own, *part.beds) if bed is not None)
    return tuple(named)


def _caution(bed: str, question: Question) -> BedCaution:
    caution = Caution(
        code="unconfirmed",
        severity=Severity.MODERATE,
        rule="unconfirmed",
        source="",
        drain=question.drain,
        begin=question.asked_at,
        detail=question.id,
    )
    return BedCaution(bed=bed, caution=caution)
