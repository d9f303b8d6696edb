"""A database that hangs: nobody waits for long, nobody queues up for it, and it is found again."""

from __future__ import annotations

import signal
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import psutil
import pytest
from sqlalchemy import text

from bot.engine.entries import Line
from bot.store import Book, Store, StoreAwayError, open_store
from bot.store.connect import connect
from bot.store.patience import ASK_AGAIN_S, LONG_S, Patience
from tests.databases import new_database, postgres_cluster
from tests.store.hands import NOON, claimed

ANSWER_S = 0.5
pytestmark = pytest.mark.real_time


@dataclass(slots=True)
class Clock:
    """Seconds that pass when they are told to."""

    now: float = 0.0

    def __call__(self) -> float:
        return self.now


@contextmanager
def hanging() -> Iterator[list[psutil.Process]]:
    """Processes that are put in here stand still until the end."""
    still: list[psutil.Process] = []
    try:
        yield still
    finally:
        for process in still:
            process.send_signal(signal.SIGCONT)


@pytest.fixture
def impatient() -> Iterator[Callable[[str], Store]]:
    """Stores that wait half a second for a database."""
    held: list[Store] = []

    def opened(url: str) -> Store:
        held.append(open_store(url, Patience(clock=time.monotonic, answer_s=ANSWER_S)))
        return held[-1]

    yield opened
    for store in held:
        store.close()


def line(number: int) -> Callable[[Book], str]:
    """A message that opens a drain of its own and reports a line."""

    def work(book: Book) -> str:
        drain = claimed(book, f"m{number}").open_drain(str(number), None)
        return book.append(drain, NOON, Line(level_ml=840)).id

    return work


def test_a_postgresql_that_hangs_is_away_in_time_and_is_found_again(
    impatient: Callable[[str], Store], tmp_path: Path
) -> None:
    with postgres_cluster(tmp_path / "pg") as cluster, hanging() as still:
        store = impatient(new_database(cluster.get_uri()))
        store.transact(line(1))
        postmaster = psutil.Process(cluster.get_pid())
        for process in (postmaster, *postmaster.children(recursive=True)):
            still.append(process)
            process.suspend()
        assert seconds_of_an_outage(store, line(2)) < ANSWER_S + 3 + 1  # and 3 s to connect anew
        assert seconds_of_an_outage(store, line(3)) < 0.1
        while still:
            still.pop().resume()
        time.sleep(ASK_AGAIN_S)
        assert store.transact(line(2))
        with store.connection() as connection:
            assert connection.scalar(text("SELECT count(*) FROM entries")) == 2
        store.close()


def seconds_of_an_outage(store: Store, work: Callable[[Book], Any]) -> float:
    """How long it takes to be told that the database is away."""
    begin = time.monotonic()
    with pytest.raises(StoreAwayError):
        store.transact(work)
    return time.monotonic() - begin


def test_a_unit_whose_lock_nobody_lets_go_is_away_and_nothing_goes_on_waiting(
    impatient: Callable[[str], Store], postgres: str
) -> None:
    url = new_database(postgres)
    store, other = impatient(url), Store(connect(url))
    with other.turn() as book:
        claimed(book, "held")
        assert seconds_of_an_outage(store, line(1)) < ANSWER_S + 1
        with other.connection() as connection:
            waiting = "SELECT count(*) FROM pg_locks WHERE NOT granted"
            assert connection.scalar(text(waiting)) == 0
    time.sleep(ASK_AGAIN_S)
    assert store.transact(line(1))
    other.close()


def test_a_server_that_stands_still_in_a_message_does_not_hold_the_others_for_long(
    impatient: Callable[[str], Store], postgres: str
) -> None:
    url = new_database(postgres)
    frozen, other = impatient(url), impatient(url)

    def stands_still(book: Book) -> None:
        claimed(book, "m1")
        time.sleep(7 * ANSWER_S)
        assert other.transact(line(2))
        book.unit_drains()

    with pytest.raises(StoreAwayError):
        frozen.transact(stands_still)
    time.sleep(ASK_AGAIN_S)
    assert frozen.transact(line(1))


def fails(patience: Patience, clock: Clock, seconds: float, error: Exception) -> None:
    """Ask the database, which fails so after a while."""
    with patience.asking():
        clock.now += seconds
        raise error


def asks(patience: Patience) -> None:
    """Ask the database, which answers."""
    with patience.asking():
        pass


def test_after_a_long_wait_all_are_told_at_once_and_one_asks_now_and_then() -> None:
    clock = Clock()
    patience = Patience(clock=clock)
    with pytest.raises(StoreAwayError, match="gone"):
        fails(patience, clock, LONG_S, StoreAwayError("gone"))
    clock.now += ASK_AGAIN_S / 2
    with pytest.raises(StoreAwayError, match="away"):
        asks(patience)
    clock.now += ASK_AGAIN_S / 2
    with patience.asking(), pytest.raises(StoreAwayError, match="away"):
        asks(patience)
    asks(patience)


def test_a_failure_that_comes_at_once_keeps_nobody_from_trying() -> None:
    clock = Clock()
    patience = Patience(clock=clock)
    for _ in range(2):
        with pytest.raises(StoreAwayError, match="gone"):
            fails(patience, clock, LONG_S / 2, StoreAwayError("gone"))


def test_a_broken_program_is_not_taken_for_an_outage() -> None:
    clock = Clock()
    patience = Patience(clock=clock)
    with pytest.raises(ZeroDivisionError):
        fails(patience, clock, 60, ZeroDivisionError())
    asks(patience)
