"""The query for open questions, and the unconfirmed readings that other replies must show."""

from __future__ import annotations

from collections.abc import Callable

from bot.dialogue.pending import Pending, holds_reading, is_bare, is_passing, is_unconfirmed
from bot.dialogue.queries.desk import Desk
from bot.dialogue.reminders import unconfirmed_line
from bot.dialogue.said_json import loaded
from bot.store.questions import Question
from bot.wording.gsm import gsm_only
from bot.wording.queries import waiting as words
from bot.wording.queries.view import place
from bot.wording.readback import pending_text, settle_text


def open_of_bed(desk: Desk, bed: str) -> tuple[str, ...]:
    """What waits for an answer about the bed."""
    return _told(desk, place(bed, None), desk.book.unsettled(bed=bed))


def open_of_unit(desk: Desk) -> tuple[str, ...]:
    """What waits for an answer in the unit."""
    return _told(desk, gsm_only(desk.context.unit.name), desk.book.unsettled())


def waiting_lines(desk: Desk, bed: str) -> tuple[str, ...]:
    """Each question about the bed that is open or was never answered, in words."""
    waiting = (each for each in desk.book.unsettled(bed=bed) if not _is_stale(desk, each))
    return tuple(_line(desk, each) for each in waiting)


def unconfirmed_lines(desk: Desk, here: Callable[[str | None], bool]) -> tuple[str, ...]:
    """Each unconfirmed reading of the beds for which `here` holds."""
    lapsed = (each for each in desk.book.unsettled() if is_unconfirmed(each, desk.now))
    return tuple(_line(desk, each) for each in lapsed if here(each.bed))


def waiting_readings(desk: Desk, bed: str) -> tuple[str, ...]:
    """Each reading of the bed that is still asked about, or that nobody confirmed."""
    held = (each for each in desk.book.unsettled(bed=bed) if holds_reading(loaded(each.said_json, Pending)))
    return tuple(reading_text(desk, each) for each in held)


def reading_text(desk: Desk, question: Question) -> str:
    """What a question holds back: "Not recorded yet: bed 12 800 mL at 16:00 (asked 16:00, Amy)." """
    if is_unconfirmed(question, desk.now):
        return _line(desk, question)
    told = loaded(question.said_json, Pending).brief
    return pending_text(told, question.asked_at, question.sender, desk.view)


def _is_stale(desk: Desk, question: Question) -> bool:
    """Whether no reading hung on it, and nobody wants it answered any more."""
    pending = loaded(question.said_json, Pending)
    return question.lapsed(desk.now) and (is_passing(pending) or is_bare(pending))


def _told(desk: Desk, where: str, questions: tuple[Question, ...]) -> tuple[str, ...]:
    questions = tuple(each for each in questions if not _is_stale(desk, each))
    if not questions:
        return (f"{where}: {words.NONE_OPEN}",)
    lapsed = sum(is_unconfirmed(each, desk.now) for each in questions)
    head = words.waiting_head(where, len(questions) - lapsed, lapsed)
    ordered = sorted(questions, key=lambda each: (not each.danger, each.asked_at))
    return desk.page(head, tuple(_line(desk, each) for each in ordered))


def _line(desk: Desk, question: Question) -> str:
    if not is_unconfirmed(question, desk.now):
        return words.question_text(question.text, question.asked_at, question.sender, desk.view)
    return unconfirmed_line(question, desk.view, settle_text(question.bed, question.offered))
