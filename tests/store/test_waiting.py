"""What waits in a unit is remembered from one message to the next, and believed only under its seal."""

from __future__ import annotations

import random
from contextlib import suppress
from datetime import timedelta
from typing import Any

import pytest

from bot.store import Book, Question, Store, open_store
from bot.store.asking import _UNSETTLED, REACH
from bot.store.statements import Statement
from tests.store.hands import at, claimed

UNITS = ("ward", "other")


class _UndoneError(Exception):
    """A turn that breaks off."""


def question(book: Book, bed: str, minute: int) -> Question:
    """A question about a bed."""
    return Question(
        unit="ward", sender="amy", bed=bed, drain=None, slot="level_ml", asked_at=at(minute),
        message=book.hand.message, text="Is it right?", said_json="{}",
    )  # fmt: skip


def as_it_stands(book: Book, arrived_minute: int) -> tuple[Question, ...]:
    """What waits in the unit by the tables alone."""
    since = at(arrived_minute) - REACH
    return tuple(each for each in Book(book._connection, book.unit).unsettled() if each.asked_at >= since)


def test_what_waits_is_read_once_and_gone_on_from(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    asked: list[Statement] = []
    rows = Statement.rows

    def noted(statement: Statement, *told: Any) -> list[Any]:
        asked.append(statement)
        return rows(statement, *told)

    monkeypatch.setattr(Statement, "rows", noted)
    kept: list[Question] = []
    for minute in range(5):
        with store.turn() as book:
            claimed(book, f"m{minute}", minutes=minute)
            assert book.unsettled() == tuple(kept)
            kept.append(book.ask(question(book, "12", minute)))
            if minute == 3:
                book.settle(kept.pop(0).id, "answered")
            assert book.unsettled() == tuple(kept)
    assert asked.count(_UNSETTLED) == 1


@pytest.mark.parametrize("seed", range(6))
def test_it_is_what_the_tables_say_whoever_wrote_and_whatever_was_undone(database: str, seed: int) -> None:
    store = open_store(database)
    other = Store(store.engine) if database == "sqlite://" else open_store(database)
    chance = random.Random(seed)
    for number in range(60):
        minute = number - chance.choice((0, 0, 0, 3)) + chance.choice((0, 0, 60 * 24)) * (number > 40)
        server = chance.choice((store, store, store, other))
        with suppress(_UndoneError), server.turn() as book:
            claimed(book, f"m{number}", unit=chance.choice(UNITS), minutes=minute)
            _turn(book, chance, minute)
    other.close()
    store.close()


def _turn(book: Book, chance: random.Random, minute: int) -> None:
    """A message that asks and settles, each time it has looked or not, and that may be undone."""
    for _ in range(chance.randrange(4)):
        if chance.random() < 0.7:
            assert book.unsettled() == as_it_stands(book, minute)
        waits = as_it_stands(book, minute)
        if waits and chance.random() < 0.5:
            book.settle(chance.choice(waits).id, "answered")
        else:
            book.ask(question(book, chance.choice(("12", "14")), minute))
        if chance.random() < 0.2:
            book.take_up(book.hand.message, "bea", book.hand.arrived)
    assert book.unsettled() == as_it_stands(book, minute)
    if chance.random() < 0.2:
        raise _UndoneError


def test_what_was_asked_too_long_ago_waits_no_more_whichever_message_looks_first(store: Store) -> None:
    with store.turn() as book:
        claimed(book, "m1")
        book.unsettled()
        book.ask(question(book, "12", 0))
    anew = Store(store.engine)
    late = int(REACH / timedelta(minutes=1))
    turns = ((store, late, 1), (store, late + 1, 0), (store, late, 1), (anew, late + 1, 0), (anew, late, 1))
    for number, (server, minutes, waits) in enumerate(turns, start=2):
        with server.turn() as book:
            claimed(book, f"m{number}", minutes=minutes)
            assert len(book.unsettled()) == waits
