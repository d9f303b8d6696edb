"""What is remembered of a drain is believed only where the table still says so."""

from __future__ import annotations

from contextlib import suppress
from typing import Any

import pytest

from bot.engine.entries import Line
from bot.store import Book, Store, open_store
from bot.store.remembered import Read, Remembered
from bot.store.statements import Statement
from tests.store.hands import at, claimed


def drain_of(store: Store, levels: int = 3) -> str:
    """A drain with so many lines."""

    def work(book: Book) -> str:
        drain = claimed(book).open_drain("12", None)
        for minute in range(levels):
            book.append(drain, at(minute), Line(level_ml=100 * minute))
        return drain

    return store.transact(work)


def levels(book: Book, drain: str) -> list[int]:
    """The levels of a drain's lines."""
    return [entry.payload.level_ml for entry in book.entries(drain) if isinstance(entry.payload, Line)]


def told(store: Store, drain: str, message: str, level_ml: int) -> list[int]:
    """The levels after a line was told."""
    with store.turn() as book:
        claimed(book, message)
        book.entries(drain)
        book.append(drain, at(9), Line(level_ml=level_ml))
        return levels(book, drain)


def test_a_known_drain_is_not_read_again(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    drain = drain_of(store)
    with store.turn("ward") as book:
        first = book.entries(drain)
    asked: list[str] = []
    rows = Statement.rows

    def noted(statement: Statement, *told: Any) -> list[Any]:
        asked.append(str(statement.on("sqlite")))
        return rows(statement, *told)

    monkeypatch.setattr(Statement, "rows", noted)
    with store.turn("ward") as book:
        assert all(one is other for one, other in zip(first, book.entries(drain), strict=True))
    assert asked
    assert not [statement for statement in asked if "payload" in statement]


def test_what_a_turn_that_broke_had_written_is_forgotten(store: Store) -> None:
    drain = drain_of(store)

    def breaks(book: Book) -> None:
        claimed(book, "m2")
        book.entries(drain)
        book.append(drain, at(8), Line(level_ml=999))
        assert levels(book, drain)[-1] == 999
        raise RuntimeError

    with suppress(RuntimeError):
        store.transact(breaks)
    with store.turn("ward") as book:
        assert levels(book, drain) == [0, 100, 200]
    assert told(store, drain, "m3", 500) == [0, 100, 200, 500]


def test_what_another_process_wrote_is_read(database: str) -> None:
    store = open_store(database)
    other = Store(store.engine) if database == "sqlite://" else open_store(database)
    drain = drain_of(store)
    assert told(other, drain, "m2", 500) == [0, 100, 200, 500]
    assert told(store, drain, "m3", 600) == [0, 100, 200, 500, 600]
    assert told(other, drain, "m4", 700) == [0, 100, 200, 500, 600, 700]
    with store.turn("ward") as book:
        assert levels(book, drain) == [0, 100, 200, 500, 600, 700]
    other.close()
    store.close()


def test_what_the_table_does_not_go_on_from_is_read_anew(store: Store) -> None:
    drain = drain_of(store)
    with store.turn("ward") as book:
        true = book.entries(drain)
        for count, chain in ((2, "f" * 64), (len(true), "f" * 64), (len(true), "")):
            wrong = Remembered()
            wrong.keep("ward", drain, Read(true[1 : count + 1] or true, chain))
            again = Book(book._connection, "ward", wrong)
            assert again.entries(drain) == true


def test_another_unit_is_not_told_what_is_remembered(store: Store) -> None:
    drain = drain_of(store)
    with store.turn("ward") as book:
        assert book.entries(drain)
    with store.turn("other") as book:
        assert book.entries(drain) == ()
