"""What waits in a unit, and its beds, are remembered from message to message, and believed under its seal."""

from __future__ import annotations

import itertools
import random
from contextlib import suppress
from datetime import timedelta
from typing import Any

import pytest

from bot.engine.entries import Left, Line, Opened, Removed, Withdrawal
from bot.store import Book, Question, Store, open_store
from bot.store.asking import _UNSETTLED, REACH
from bot.store.berths import MOST_DRAINS_OF_A_BED
from bot.store.ledgers import _LAST
from bot.store.remembered import Known
from bot.store.statements import Statement
from tests.store.hands import at, claimed

UNITS = ("ward", "other")
BEDS = ("12", "14")
SENDERS = ("amy", "ben", "cleo", "dan")


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


@pytest.fixture
def asked(monkeypatch: pytest.MonkeyPatch) -> list[Statement]:
    """The statements that are run."""
    noted: list[Statement] = []
    rows = Statement.rows

    def run(statement: Statement, *told: Any) -> list[Any]:
        noted.append(statement)
        return rows(statement, *told)

    monkeypatch.setattr(Statement, "rows", run)
    return noted


def test_what_waits_is_read_once_and_gone_on_from(store: Store, asked: list[Statement]) -> None:
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


def test_of_a_drain_that_is_known_no_message_asks_whether_it_has_grown(
    store: Store, asked: list[Statement]
) -> None:
    with store.turn() as book:
        claimed(book, "m1")
        drain = book.open_drain("12", None)
        book.append(drain, at(0), Opened(bed="12"))
        book.drains_of("12")
    for number in range(2, 5):
        with store.turn() as book:
            claimed(book, f"m{number}", minutes=number)
            book.drains_of("12" if number == 2 else "14")
            asked.clear()
            assert book.entries(drain)
            assert _LAST not in asked


@pytest.mark.parametrize("seed", range(8))
def test_it_is_what_the_tables_say_whoever_wrote_and_whatever_was_undone(database: str, seed: int) -> None:
    store = open_store(database)
    other = Store(store.engine) if database == "sqlite://" else open_store(database)
    chance = random.Random(seed)
    for number in range(80):
        minute = number - chance.choice((0, 0, 0, 3)) + chance.choice((0, 0, 60 * 24)) * (number > 60)
        server = chance.choice((store, store, store, other))
        with suppress(_UndoneError), server.turn() as book:
            sender = chance.choice(SENDERS)
            claimed(book, f"m{number}", sender=sender, unit=chance.choice(UNITS), minutes=minute)
            _turn(book, chance, minute)
    other.close()
    store.close()


def _turn(book: Book, chance: random.Random, minute: int) -> None:
    """A message that asks, settles and records, each time it has looked or not, and that may be undone."""
    for _ in range(chance.randrange(7)):
        _look(book, chance, minute)
        chance.choice((_ask_or_settle, _record, _open))(book, chance, minute)
        if chance.random() < 0.2:
            book.take_up(book.hand.message, "bea", book.hand.arrived)
    _look(book, chance, minute)
    if chance.random() < 0.2:
        raise _UndoneError


def _look(book: Book, chance: random.Random, minute: int) -> None:
    """At nothing, at some, or at all of it: it is what the tables say."""
    tables = Book(book._connection, book.unit)
    tables.take_up(book.hand.message, "?", book.hand.arrived)
    for sender in SENDERS:
        assert book.first_message(sender) == tables.first_message(sender)
    tables = Book(book._connection, book.unit)
    if chance.random() < 0.7:
        assert book.unsettled() == as_it_stands(book, minute)
    for bed in BEDS:
        if chance.random() < 0.7:
            assert book._drains_of(bed) == tables._drains_of(bed)
        if chance.random() < 0.7:
            assert book.drains_of(bed) == tables.drains_of(bed)
            assert book.drains_of(bed, at(minute - 9)) == tables.drains_of(bed, at(minute - 9))
        for drain in tables.drains_of(bed):
            assert book._last_row(drain) == tables._last_row(drain)


def _ask_or_settle(book: Book, chance: random.Random, minute: int) -> None:
    waits = as_it_stands(book, minute)
    if waits and chance.random() < 0.5:
        book.settle(chance.choice(waits).id, "answered")
    else:
        book.ask(question(book, chance.choice(BEDS), minute))


def _open(book: Book, chance: random.Random, minute: int) -> None:
    bed = chance.choice(BEDS)
    drain = book.open_drain(bed, None, at(minute))
    book.append(drain, at(minute), Opened(bed=bed))


def _record(book: Book, chance: random.Random, minute: int) -> None:
    drains = Book(book._connection, book.unit).drains_of(chance.choice(BEDS))
    if not drains:
        return
    drain = chance.choice(drains[:3])
    ended = [each for each in book.entries(drain) if isinstance(each.payload, Removed | Left)]
    match chance.randrange(5):
        case 0:
            book.append(drain, at(minute), chance.choice((Removed(), Left())))
        case 1 if ended:
            book.append(drain, at(minute), Withdrawal(target=ended[-1].id))
        case 2:
            book.berth(drain, chance.choice(BEDS), None, at(minute))
        case _:
            book.append(drain, at(minute), Line(level_ml=10 * minute if minute > 0 else 0))


def test_of_the_drains_of_years_only_the_latest_of_each_bed_stay_at_hand(store: Store) -> None:
    def known() -> Known:
        with store.turn() as book:
            claimed(book, f"look{next(numbers)}", minutes=next(numbers))
            for bed in BEDS:
                book.drains_of(bed)
            return book._known

    numbers = itertools.count()
    for _ in range(MOST_DRAINS_OF_A_BED + 5):
        with store.turn() as book:
            claimed(book, f"m{next(numbers)}", minutes=next(numbers))
            for bed in BEDS:
                book.append(book.open_drain(bed, None), at(0), Opened(bed=bed))
        known()
    with store.turn() as book:
        claimed(book, "moves", minutes=next(numbers))
        book.berth(book.drains_of("12")[0], "14", None, at(0))
    known()
    kept = known()
    with store.turn("ward") as book:
        tables = Book(book._connection, "ward")
        assert {bed: tables.drains_of(bed) for bed in BEDS} == kept.beds
    assert set(kept.drains) == {drain for of_bed in kept.beds.values() for drain in of_bed}
    assert len(kept.drains) < 2 * MOST_DRAINS_OF_A_BED


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
