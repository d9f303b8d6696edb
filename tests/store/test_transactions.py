"""Many at once, and a database that fails: nothing is lost, doubled, or half there."""

from __future__ import annotations

import random
import subprocess
import sys
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from threading import Event

import pytest
from sqlalchemy import event, text
from sqlalchemy.exc import IntegrityError, OperationalError

import bot.store.store as store_module
from bot.engine.entries import Line
from bot.store import Book, Store, StoreAwayError, open_store
from bot.store.connect import connect, in_memory, sqlite_module
from bot.store.sealing import sealed
from bot.store.verify import entry_flaws
from tests.databases import new_database
from tests.store.hands import NOON, at, claim, claimed


def test_160_messages_of_16_threads_get_160_places_in_one_ledger(store: Store) -> None:
    with store.turn() as book:
        drain = claimed(book, "first").open_drain("12", None)

    def send(number: int) -> str:
        def work(book: Book) -> str:
            claimed(book, f"m{number}")
            before = len(book.entries(drain))
            entry = book.append(drain, at(number), Line(level_ml=number))
            assert entry.position == before + 1
            return entry.id

        return store.transact(work)

    numbers = list(range(160))
    random.Random(5).shuffle(numbers)
    with ThreadPoolExecutor(16) as pool:
        ids = set(pool.map(send, numbers))
    assert ids == {f"{drain}-{position}" for position in range(1, 161)}
    with store.connection() as connection:
        assert list(entry_flaws(connection)) == []
        assert [each.message for each in sealed(connection) if each.kept != each.right] == []


def test_a_failed_commit_is_told_and_leaves_nothing(store: Store) -> None:
    def fail(_: object) -> None:
        raise OperationalError("COMMIT", None, Exception("database or disk is full"))

    event.listen(store.engine, "commit", fail)
    with pytest.raises(StoreAwayError):
        store.transact(lambda book: claimed(book).open_drain("12", None))
    event.remove(store.engine, "commit", fail)
    with store.turn() as book:
        assert book.claim(claim()) is None


def test_a_program_error_is_not_called_an_outage(store: Store) -> None:
    def twice(book: Book) -> None:
        claimed(book)
        book.keep_reply("m1", "{}")

    with pytest.raises(IntegrityError):
        store.transact(twice)


def test_a_full_disk_is_an_outage_and_passes(tmp_path: Path) -> None:
    store = open_store(f"sqlite:///{tmp_path}/ward.sqlite")
    with store.connection() as connection:
        pages = connection.scalar(text("PRAGMA page_count"))
        connection.execute(text(f"PRAGMA max_page_count = {pages}"))

    def fill(book: Book) -> str:
        drain = claimed(book).open_drain("12", None)
        for number in range(1000):
            book.append(drain, at(number), Line(level_ml=number))
        return drain

    with pytest.raises(StoreAwayError):
        store.transact(fill)
    with store.connection() as connection:
        assert connection.scalar(text("SELECT count(*) FROM messages")) == 0
        connection.execute(text("PRAGMA max_page_count = 1000000"))
    drain = store.transact(fill)
    with store.turn("ward") as book:
        assert len(book.entries(drain)) == 1000
    store.close()


def test_a_full_disk_of_postgresql_is_an_outage_and_passes(postgres: str) -> None:
    store = open_store(new_database(postgres))
    full = "CREATE FUNCTION full_disk() RETURNS trigger LANGUAGE plpgsql AS"
    with store.connection() as connection:
        told = "$$ BEGIN RAISE EXCEPTION 'could not extend file' USING ERRCODE = 'disk_full'; END $$"
        connection.execute(text(f"{full} {told}"))
        connection.execute(
            text("CREATE TRIGGER full_disk BEFORE INSERT ON entries EXECUTE FUNCTION full_disk()")
        )

    def line(book: Book) -> str:
        drain = claimed(book).open_drain("12", None)
        return book.append(drain, NOON, Line(level_ml=840)).id

    with pytest.raises(StoreAwayError):
        store.transact(line)
    with store.connection() as connection:
        assert connection.scalar(text("SELECT count(*) FROM messages")) == 0
        connection.execute(text("DROP TRIGGER full_disk ON entries"))
    assert store.transact(line).endswith("-1")
    store.close()


def test_a_read_only_database_is_an_outage(tmp_path: Path) -> None:
    store = open_store(f"sqlite:///{tmp_path}/ward.sqlite")
    with store.engine.connect() as connection:
        connection.connection.driver_connection.execute("PRAGMA query_only = ON")  # type: ignore[union-attr]
    with pytest.raises(StoreAwayError):
        store.transact(claimed)
    store.close()


def test_a_message_does_not_wait_for_ever(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(store_module, "LOCK_WAIT_S", 0.05)
    store = open_store()
    with store.turn("ward"), pytest.raises(StoreAwayError, match="busy"), store.turn("ward"):
        pass
    with store.turn("ward") as book:
        assert book.unit_drains() == ()
    store.close()


@pytest.mark.parametrize(
    ("url", "memory"),
    [
        ("sqlite://", True),
        ("sqlite:///:memory:", True),
        ("sqlite:///ward.sqlite", False),
        ("postgresql:///x", False),
    ],
)
def test_a_url_says_whether_the_ledger_outlives_the_program(url: str, memory: bool) -> None:
    assert in_memory(url) is memory


def test_sqlite_is_one_without_the_checkpoint_fault() -> None:
    version: str = sqlite_module().sqlite_version
    assert tuple(map(int, version.split("."))) >= (3, 51, 3)


_LOCKED = """
import fcntl, sys
with open(sys.argv[1], "r+b") as file:
    fcntl.lockf(file, fcntl.LOCK_EX | fcntl.LOCK_NB, 510, 0x40000002)
"""
"""Fails while another process has SQLite's lock of those who read: with it nobody takes the log away."""


def test_a_second_look_at_a_file_leaves_its_locks_to_the_first(tmp_path: Path) -> None:
    pytest.importorskip("fcntl")
    url = f"sqlite:///{tmp_path}/ward.sqlite"
    command = [sys.executable, "-c", _LOCKED, str(tmp_path / "ward.sqlite")]
    store = open_store(url)
    store.transact(claimed)
    reading = Store(connect(url, reading=True))
    assert b"BlockingIOError" in subprocess.run(command, capture_output=True, timeout=60).stderr
    with reading.connection() as connection:
        assert connection.scalar(text("SELECT count(*) FROM messages")) == 1
    reading.close()
    store.close()
    assert subprocess.run(command, timeout=60).returncode == 0


@pytest.mark.parametrize("name", ["folder", "no/folder"])
def test_what_can_be_no_file_is_an_outage(tmp_path: Path, name: str) -> None:
    (tmp_path / "folder").mkdir()
    mode = (tmp_path / "folder").stat().st_mode
    with pytest.raises(StoreAwayError, match="folder"):
        open_store(f"sqlite:///{tmp_path}/{name}")
    assert (tmp_path / "folder").stat().st_mode == mode


def test_what_was_recorded_outlives_the_program(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path}/ward.sqlite"
    store = open_store(url)
    with store.turn() as book:
        drain = claimed(book).open_drain("12", None)
        book.append(drain, NOON, Line(level_ml=840))
    store.close()
    again = open_store(url)
    with again.turn("ward") as book:
        assert [entry.payload for entry in book.entries(drain)] == [Line(level_ml=840)]
    again.close()


def test_this_process_answers_one_message_at_a_time(store: Store) -> None:
    at_work, most, done = 0, 0, list[str]()

    def answer(number: int) -> None:
        def work(book: Book) -> None:
            nonlocal at_work, most
            claimed(book, f"m{number}", unit=f"ward{number % 4}")
            at_work += 1
            most = max(most, at_work)
            time.sleep(0.01)
            at_work -= 1
            done.append(f"m{number}")

        store.transact(work)

    with ThreadPoolExecutor(8) as pool:
        list(pool.map(answer, range(12)))
    assert most == 1
    assert sorted(done) == sorted(f"m{number}" for number in range(12))


def test_while_a_commit_is_under_way_on_postgresql_the_message_of_another_unit_is_answered(
    postgres: str,
) -> None:
    store, under_way, answered = open_store(new_database(postgres)), Event(), Event()

    def wait(_: object) -> None:
        if not under_way.is_set():
            under_way.set()
            assert answered.wait(timeout=4)

    def work(book: Book) -> None:
        claimed(book, "m2", unit="other")
        answered.set()

    with ThreadPoolExecutor(1) as pool:
        event.listen(store.engine, "commit", wait)
        first = pool.submit(store.transact, claimed)
        assert under_way.wait(timeout=4)
        store.transact(work)
        first.result(timeout=4)
    store.close()


def test_a_message_that_failed_lets_the_next_one_in(store: Store) -> None:
    def fails(book: Book) -> None:
        claimed(book)
        raise RuntimeError

    for _ in range(3):
        with pytest.raises(RuntimeError):
            store.transact(fails)
    store.transact(claimed)
