"""Questions, their settlement, notices, and what was told to whom."""

from __future__ import annotations

from datetime import timedelta

import pytest
from sqlalchemy.exc import IntegrityError

from bot.store import Book, Choice, Notice, Question, Store
from bot.store.asking import REACH
from bot.store.questions import LAPSES_AFTER
from tests.store.hands import NOON, at, claimed


def question(*, sender: str = "amy", bed: str | None = "12", drain: str | None = None) -> Question:
    """A question to ask."""
    return Question(
        unit="ward",
        sender=sender,
        bed=bed,
        drain=drain,
        slot="level_ml",
        asked_at=NOON,
        message="m1",
        text="Is 1,340 right?",
        said_json='{"kind":"mark"}',
        choices=(Choice("yes", "1,340 mL"), Choice("no", "misread")),
        danger=True,
    )


def test_a_question_is_kept_whole(store: Store) -> None:
    with store.turn() as book:
        drain = claimed(book).open_drain("12", None)
        asked = book.ask(question(drain=drain))
    with store.turn("ward") as book:
        assert book.unsettled() == (asked,)
    assert len(asked.id) == 16


def test_unsettled_questions_are_found_by_bed_and_by_sender(store: Store) -> None:
    with store.turn() as book:
        claimed(book)
        amy, ben = book.ask(question()), book.ask(question(sender="ben", bed="14"))
        assert book.unsettled() == (amy, ben)
        assert book.unsettled(bed="12") == (amy,)
        assert book.unsettled(sender="ben") == (ben,)
        assert book.unsettled(bed="12", sender="ben") == ()
    with store.turn("other") as book:
        assert book.unsettled() == ()


def test_a_settled_question_is_open_no_more_and_is_settled_once(store: Store) -> None:
    with store.turn() as book:
        asked = claimed(book).ask(question())
        book.settle(asked.id, "answered")
        assert book.unsettled() == ()
    with pytest.raises(IntegrityError), store.turn() as book:
        claimed(book, "m2").settle(asked.id, "dropped")


def test_a_question_lapses_a_moment_after_fifteen_minutes() -> None:
    assert not question().lapsed(NOON + LAPSES_AFTER)
    assert question().lapsed(NOON + LAPSES_AFTER + timedelta(microseconds=1))


def test_an_unsettled_question_is_looked_for_through_sixty_days(store: Store) -> None:
    with store.turn() as book:
        asked = claimed(book).ask(question())
    for number, minutes in enumerate((REACH // timedelta(minutes=1), REACH // timedelta(minutes=1) + 1)):
        with store.turn() as book:
            claimed(book, f"later{number}", minutes=minutes)
            assert book.unsettled() == ((asked,) if number == 0 else ())


def test_notices_are_queued_in_order(store: Store) -> None:
    notices = tuple(
        Notice(
            unit="ward",
            bed="12",
            drain=None,
            code=code,
            text="URGENT if right",
            queued_at=NOON,
            message="m1",
            unconfirmed=True,
        )
        for code in ("amount_at_once", "ladder")
    )
    with store.turn() as book:
        for notice in notices:
            claimed(book).queue(notice) if notice is notices[0] else book.queue(notice)
        assert book.notices() == notices


def test_a_caution_is_told_to_one_person_at_a_time(store: Store) -> None:
    def show(book: Book) -> None:
        claimed(book)
        book.show("rate_high:bed", "amy", at(0))
        book.show("rate_high:bed", "amy", at(5))

    store.transact(show)
    with store.turn("ward") as book:
        assert book.shown_at("rate_high:bed", "amy") == at(5)
        assert book.shown("rate_high:bed", "amy")
        assert not book.shown("rate_high:bed", "ben")
        assert not book.shown("ladder:bed", "amy")
