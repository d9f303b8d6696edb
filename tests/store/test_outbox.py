"""Notices in the outbox: what was tried, what was seen, and what there is nothing left to tell about."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.engine.entries import Line
from bot.store import Book, Notice, Question, Store
from bot.store.notices import Attempt, Filed
from tests.store.hands import NOON, at, claimed

LONG_AGO = NOON - timedelta(days=1)


def notice(bed: str = "12", *, drain: str | None = None, code: str = "ladder", **more: object) -> Notice:
    """A notice of the first message."""
    fields = {"unit": "ward", "bed": bed, "drain": drain, "code": code, "text": "URGENT", "message": "m1"}
    return Notice(**{**fields, "queued_at": NOON, **more})  # type: ignore[arg-type]


def asked(book: Book, message: str) -> Question:
    """A question of that message."""
    return book.ask(
        Question(
            unit="ward", sender="amy", bed="12", drain=None, slot="level_ml", asked_at=NOON,
            message=message, text="Is 1,340 right?", said_json="{}", danger=True,
        )
    )  # fmt: skip


def only(store: Store, unit: str = "ward") -> Filed:
    """The one notice."""
    with store.turn(unit) as book:
        (found,) = book.filed(LONG_AGO)
    return found


def test_a_notice_is_filed_with_its_attempts_in_order(store: Store) -> None:
    with store.turn() as book:
        claimed(book).queue(notice())
    tries = (
        Attempt(notice=1, person="carla", at=at(1), outcome="failed"),
        Attempt(notice=1, person="carla", at=at(2), outcome="delivered", status=204),
    )
    for attempt in tries:
        with store.turn("ward") as book:
            book.note_attempt(attempt)
    assert only(store) == Filed(number=1, notice=notice(), attempts=tries)


def test_a_notice_of_another_unit_is_neither_filed_nor_acknowledged(store: Store) -> None:
    with store.turn() as book:
        claimed(book).queue(notice())
    with store.turn() as book:
        claimed(book, "m2", unit="icu")
        assert book.filed(LONG_AGO) == ()
        assert book.acknowledge("12") == 0
    assert only(store).seen_at is None


def test_what_was_queued_before_is_not_looked_at(store: Store) -> None:
    with store.turn() as book:
        claimed(book).queue(notice())
        assert book.filed(at(1)) == ()
        assert len(book.filed(NOON)) == 1


def test_a_notice_is_acknowledged_once(store: Store) -> None:
    with store.turn() as book:
        claimed(book).queue(notice())
    for message, minutes, found in (("m2", 5, 1), ("m3", 6, 0)):
        with store.turn() as book:
            assert claimed(book, message, minutes=minutes).acknowledge("12") == found
    assert only(store).seen_at == at(5)


def test_a_notice_is_acknowledged_in_the_bed_where_its_drain_is_now(store: Store) -> None:
    with store.turn() as book:
        drain = claimed(book).open_drain("12", None)
        book.queue(notice(drain=drain))
    with store.turn() as book:
        claimed(book, "m2", minutes=5)
        assert book.acknowledge("14") == 0
        assert book.acknowledge("14", (drain,)) == 1


def test_a_danger_is_over_when_its_question_is_settled_and_not_before(store: Store) -> None:
    with store.turn() as book:
        claimed(book).queue(notice(unconfirmed=True))
        first, second = asked(book, "m1"), asked(book, "m1")
    assert not only(store).over
    for message, question, over in (("m2", first, False), ("m3", second, True)):
        with store.turn() as book:
            claimed(book, message).settle(question.id, "answered")
        assert only(store).over is over


@pytest.mark.parametrize("unconfirmed", [True, False])
def test_a_danger_without_a_question_is_never_over_by_itself(store: Store, unconfirmed: bool) -> None:
    with store.turn() as book:
        claimed(book).queue(notice(unconfirmed=unconfirmed))
        book.settle(asked(claimed(book, "m2"), "m2").id, "answered")
    assert not only(store).over


def test_a_confirmed_danger_is_not_over_when_a_question_of_its_message_is_settled(store: Store) -> None:
    with store.turn() as book:
        claimed(book).queue(notice())
        book.settle(asked(book, "m1").id, "answered")
    assert not only(store).over


def test_a_reminder_of_an_unconfirmed_reading_is_over_when_that_one_is_settled(store: Store) -> None:
    with store.turn() as book:
        question, other = asked(claimed(book), "m1"), asked(book, "m1")
        book.settle(other.id, "answered")
        book.queue(notice(code="unconfirmed", about=question.id))
    assert not only(store).over
    with store.turn() as book:
        claimed(book, "m2").settle(question.id, "recorded")
    assert only(store).over


@pytest.mark.parametrize(("code", "over"), [("overdue", True), ("ladder", False)])
def test_an_overdue_line_is_over_once_its_drain_is_written_about(store: Store, code: str, over: bool) -> None:
    with store.turn() as book:
        drain = claimed(book).open_drain("12", None)
        book.append(drain, NOON, Line(level_ml=840))
        book.queue(notice(drain=drain, code=code))
    assert not only(store).over
    with store.turn() as book:
        claimed(book, "m2", minutes=5).append(drain, at(5), Line(level_ml=860))
    assert only(store).over is over
