"""Several messages in one commit: certain together, undone each by itself, and as if each had been alone."""

from __future__ import annotations

import random
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from contextvars import ContextVar
from functools import partial
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import pytest
from sqlalchemy import event, text
from sqlalchemy.exc import IntegrityError, OperationalError

import bot.store.store as store_module
import bot.store.together as together_module
from bot.engine.entries import Line
from bot.store import Book, Store, StoreAwayError, open_store
from bot.store.sealing import sealed
from bot.store.together import MOST
from bot.store.verify import entry_flaws
from tests.store.hands import at, claim, claimed

Work = Callable[[Book], Any]


@pytest.fixture
def file(tmp_path: Path) -> Iterator[Store]:
    """A store on a file."""
    store = open_store(f"sqlite:///{tmp_path}/ward.sqlite")
    yield store
    store.close()


def line(number: int) -> Work:
    """A message that opens a drain of its own and reports a line."""

    def work(book: Book) -> str:
        drain = claimed(book, f"m{number}").open_drain(str(number), None)
        return book.append(drain, at(number), Line(level_ml=number)).id

    return work


def at_once(store: Store, works: Sequence[Work]) -> list[Future[Any]]:
    """What comes of these, all of which wait, in their order, before the first has its turn."""
    with ThreadPoolExecutor(len(works)) as pool, store.turn():
        asked = []
        for number, work in enumerate(works, start=1):
            asked.append(pool.submit(store.transact, work))
            until(partial(_wait, store, number))
    return asked


def _wait(store: Store, count: int) -> bool:
    return len(store.together) == count


def until(so: Callable[[], bool]) -> None:
    """Wait until it is so."""
    end = time.monotonic() + 10
    while not so():
        assert time.monotonic() < end
        time.sleep(0.001)


def messages(store: Store) -> list[str]:
    """The ids on the record, in the order in which they were taken."""
    with store.connection() as connection:
        assert list(entry_flaws(connection)) == []
        assert [each.message for each in sealed(connection) if each.kept != each.right] == []
        return list(connection.scalars(text("SELECT id FROM messages ORDER BY seq")))


def commits(store: Store) -> list[str]:
    """A list that grows by one with each commit."""
    seen: list[str] = []
    event.listen(store.engine, "commit", lambda _: seen.append("commit"))
    return seen


def test_those_that_wait_are_answered_in_one_commit_in_their_order(file: Store) -> None:
    seen = commits(file)
    asked = at_once(file, [line(number) for number in range(MOST)])
    assert len({each.result() for each in asked}) == MOST
    assert len(seen) == 2  # of whoever held the turn, and theirs
    assert messages(file) == [f"m{number}" for number in range(MOST)]


def test_more_than_fit_in_one_commit_are_answered_in_the_next(file: Store) -> None:
    seen = commits(file)
    asked = at_once(file, [line(number) for number in range(2 * MOST + 1)])
    assert len({each.result() for each in asked}) == 2 * MOST + 1
    assert len(seen) == 4


def test_nobody_is_told_before_the_commit(file: Store) -> None:
    told: list[Future[Any]] = []
    early: list[int] = []
    event.listen(file.engine, "commit", lambda _: early.append(sum(each.done() for each in told)))
    told += at_once(file, [line(number) for number in range(MOST)])
    assert [each.exception() for each in told] == [None] * MOST
    assert early == [0, 0]


def test_one_that_fails_leaves_nothing_and_hurts_no_other(file: Store) -> None:
    def breaks_off(book: Book) -> None:
        line(1)(book)
        raise RuntimeError("broken")

    def twice(book: Book) -> None:
        claimed(book, "m3")
        book.keep_reply("m3", "{}")

    asked = at_once(file, [line(0), breaks_off, line(2), twice, line(4)])
    assert [type(each.exception()) for each in asked] == [
        type(None), RuntimeError, type(None), IntegrityError, type(None)
    ]  # fmt: skip
    assert messages(file) == ["m0", "m2", "m4"]
    assert file.transact(line(1))
    assert messages(file) == ["m0", "m2", "m4", "m1"]


def test_a_failed_commit_is_told_to_all_and_leaves_nothing(file: Store) -> None:
    def fail(_: object) -> None:
        if messages_now:
            raise OperationalError("COMMIT", None, Exception("database or disk is full"))
        messages_now.append("of whoever held the turn")

    messages_now: list[str] = []
    event.listen(file.engine, "commit", fail)
    asked = at_once(file, [line(number) for number in range(5)])
    assert [type(each.exception()) for each in asked] == [StoreAwayError] * 5
    event.remove(file.engine, "commit", fail)
    assert messages(file) == []
    assert file.transact(line(3))


def test_a_full_disk_is_told_to_all_and_passes(file: Store) -> None:
    with file.connection() as connection:
        pages = connection.scalar(text("PRAGMA page_count"))
        connection.execute(text(f"PRAGMA max_page_count = {pages}"))

    def fill(book: Book) -> None:
        drain = claimed(book, "m1").open_drain("12", None)
        for number in range(1000):
            book.append(drain, at(number), Line(level_ml=number))

    asked = at_once(file, [fill, fill])
    assert [type(each.exception()) for each in asked] == [StoreAwayError] * 2
    assert messages(file) == []
    with file.connection() as connection:
        connection.execute(text("PRAGMA max_page_count = 1000000"))
    assert [each.exception() for each in at_once(file, [line(1), line(2)])] == [None, None]


def test_an_error_that_ends_the_transaction_is_told_to_all(file: Store) -> None:
    def ends_it(book: Book) -> None:
        line(1)(book)
        with pytest.raises(IntegrityError):
            book._connection.exec_driver_sql("INSERT OR ROLLBACK INTO messages SELECT * FROM messages")
        raise RuntimeError

    asked = at_once(file, [line(0), ends_it, line(2)])
    assert [type(each.exception()) for each in asked] == [StoreAwayError, RuntimeError, StoreAwayError]
    assert messages(file) == []
    assert file.transact(line(0))


def test_what_was_undone_beneath_a_message_that_goes_on_is_not_told_as_kept(file: Store) -> None:
    def goes_on(book: Book) -> None:
        line(1)(book)
        with pytest.raises(IntegrityError):
            book._connection.exec_driver_sql("INSERT OR ROLLBACK INTO messages SELECT * FROM messages")

    for _ in range(2):
        with pytest.raises(IntegrityError):
            file.transact(goes_on)
    asked = at_once(file, [line(0), goes_on, line(2)])
    assert [type(each.exception()) for each in asked] == [StoreAwayError, IntegrityError, StoreAwayError]
    assert messages(file) == []
    assert file.transact(line(1))


def test_a_message_that_is_broken_off_undoes_all_and_the_next_are_answered(file: Store) -> None:
    def breaks_off(_: Book) -> None:
        raise SystemExit

    asked = at_once(file, [line(0), breaks_off, *map(line, range(2, MOST + 2))])
    assert [type(each.exception()) for each in asked[:MOST]] == [SystemExit] * MOST
    assert [each.exception() for each in asked[MOST:]] == [None, None]
    assert messages(file) == [f"m{number}" for number in range(MOST, MOST + 2)]


def test_who_is_interrupted_while_it_waits_is_not_answered_and_holds_nobody_up(
    file: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    with ThreadPoolExecutor(3) as pool, file.turn():
        first = pool.submit(file.transact, line(0))
        until(partial(_wait, file, 1))
        monkeypatch.setattr(together_module, "threading", SimpleNamespace(Event=_Interrupted))
        assert isinstance(pool.submit(file.transact, line(1)).exception(timeout=5), KeyboardInterrupt)
        monkeypatch.undo()
        last = pool.submit(file.transact, line(2))
        until(partial(_wait, file, 2))
    assert [each.exception() for each in (first, last)] == [None, None]
    assert messages(file) == ["m0", "m2"]


def test_who_is_interrupted_when_it_has_the_turn_passes_it_on(
    file: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    with ThreadPoolExecutor(MOST + 2) as pool, file.turn():
        asked = []
        for number in range(MOST + 2):
            if number == MOST:
                monkeypatch.setattr(together_module, "threading", SimpleNamespace(Event=_InterruptedWhenTold))
            asked.append(pool.submit(file.transact, line(number)))
            until(partial(_wait, file, number + 1))
            monkeypatch.undo()
    told = [type(each.exception()) for each in asked]
    assert told == [*[type(None)] * MOST, KeyboardInterrupt, type(None)]
    assert messages(file) == [f"m{number}" for number in range(MOST + 2) if number != MOST]


class _Interrupted(threading.Event):
    def wait(self, timeout: float | None = None) -> bool:
        super().wait(0 if timeout else None)
        raise KeyboardInterrupt


class _InterruptedWhenTold(threading.Event):
    def wait(self, timeout: float | None = None) -> bool:
        assert super().wait(timeout)
        raise KeyboardInterrupt


_KILLED = """
import os, sys
from sqlalchemy import event
from bot.store import open_store
from tests.store.test_together import at_once, line
store = open_store(sys.argv[1])
store.transact(line(9))
commits = []
def cut(_):
    commits.append("of whoever held the turn")
    if len(commits) == 2:
        os._exit(9)
event.listen(store.engine, "commit", cut)
at_once(store, [line(number) for number in range(3)])
"""


def test_a_process_that_is_killed_before_the_commit_leaves_none_of_them(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path}/ward.sqlite"
    root = Path(__file__).parents[2]
    assert subprocess.run([sys.executable, "-c", _KILLED, url], cwd=root, timeout=60).returncode == 9
    store = open_store(url)
    assert messages(store) == ["m9"]
    assert [store.transact(line(number)) for number in range(3)]
    assert messages(store) == ["m9", "m0", "m1", "m2"]
    store.close()


def test_whatever_fails_what_was_told_is_kept_once_and_what_failed_can_be_sent_again(file: Store) -> None:
    chance = random.Random(8)
    fate = [chance.choice(["", "", "", "fails", "twice", "undone"]) for _ in range(300)]

    def send(number: int) -> str:
        def work(book: Book) -> str:
            if (stored := book.claim(claim(f"m{number}"))) is not None:
                return stored.reply
            drain = book.open_drain(str(number % 7), None)
            entry = book.append(drain, at(1), Line(level_ml=number)).id
            book.keep_reply(f"m{number}", entry)
            _fail(book, fate[number], number)
            return entry

        return file.transact(work)

    def fail_now_and_then(_: object) -> None:
        if chance.random() < 0.1:
            raise OperationalError("COMMIT", None, Exception("disk I/O error"))

    def attempt(number: int) -> str | None:
        try:
            return send(number)
        except (StoreAwayError, RuntimeError, IntegrityError):
            return None

    event.listen(file.engine, "commit", fail_now_and_then)
    with ThreadPoolExecutor(16) as pool:
        told = list(pool.map(attempt, range(300)))
    event.remove(file.engine, "commit", fail_now_and_then)
    assert 50 < sum(each is not None for each in told) < 250
    assert sorted(messages(file)) == sorted(f"m{number}" for number in range(300) if told[number])
    fate = [""] * 300
    with ThreadPoolExecutor(16) as pool:
        again = list(pool.map(send, range(300)))
    assert all(before in (None, after) for before, after in zip(told, again, strict=True))
    assert len(set(again)) == len(messages(file)) == 300


def _fail(book: Book, how: str, number: int) -> None:
    match how:
        case "fails":
            raise RuntimeError
        case "twice":
            book.keep_reply(f"m{number}", "")
        case "undone":
            book._connection.exec_driver_sql(
                "INSERT OR ROLLBACK INTO replies SELECT * FROM replies WHERE message = ?", (f"m{number}",)
            )


def test_a_message_is_answered_as_in_the_thread_that_asked(file: Store) -> None:
    who: ContextVar[str] = ContextVar("who")

    def ask(name: str) -> str:
        who.set(name)
        return file.transact(lambda book: who.get() if claimed(book, name) else "")

    with ThreadPoolExecutor(6) as pool, file.turn():
        asked = [pool.submit(ask, f"m{number}") for number in range(6)]
        until(lambda: len(file.together) == 6)
    assert [each.result() for each in asked] == [f"m{number}" for number in range(6)]


def test_who_waits_in_vain_is_told_so_and_is_not_answered_later(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(store_module, "LOCK_WAIT_S", 0.1)
    store = open_store(f"sqlite:///{tmp_path}/ward.sqlite")
    with ThreadPoolExecutor(3) as pool, store.turn():
        asked = [pool.submit(store.transact, line(number)) for number in range(3)]
        assert [type(each.exception(timeout=5)) for each in asked] == [StoreAwayError] * 3
    assert messages(store) == []
    assert store.transact(line(1))
    store.close()


def test_who_waits_too_long_for_the_commit_is_told_so_and_has_the_same_answer_when_it_asks_again(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(store_module, "LOCK_WAIT_S", 0.1)
    store, go_on = open_store(f"sqlite:///{tmp_path}/ward.sqlite"), threading.Event()

    def slow(book: Book) -> None:
        claimed(book, "slow")
        assert go_on.wait(10)

    with ThreadPoolExecutor(2) as pool:
        with store.turn():
            first = pool.submit(store.transact, slow)
            until(lambda: len(store.together) == 1)
            second = pool.submit(store.transact, line(1))
            until(lambda: len(store.together) == 2)
        with pytest.raises(StoreAwayError, match="busy"):
            second.result(timeout=5)
        go_on.set()
        assert first.result(timeout=5) is None
    assert messages(store) == ["slow", "m1"]
    store.close()


def test_a_queue_that_is_never_empty_is_answered_to_its_end() -> None:
    store, done = open_store(), list[int]()

    def ask(number: int) -> int:
        def work(_: Book) -> int:
            done.append(number)
            return number

        return store.transact(work)

    with ThreadPoolExecutor(2 * MOST) as pool:
        assert list(pool.map(ask, range(2000))) == list(range(2000))
    assert sorted(done) == list(range(2000))
    assert len(store.together) == 0
    store.close()
