"""Who is next, of several processes that write to one file of SQLite."""

from __future__ import annotations

import stat
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from sqlalchemy import text

import bot.store.gate as gate_module
from bot.store import Store, StoreAwayError, open_store
from bot.store.connect import connect, written_file
from bot.store.gate import Gate

pytestmark = pytest.mark.real_time

_GREEDY = """
import sys, time
from pathlib import Path
from bot.store.gate import Gate
gate = Gate(Path(sys.argv[1]), 5)
while True:
    with gate:
        print("mine", flush=True)
        time.sleep(float(sys.argv[2]))
"""
"""A process that has the turn all the time but for the instants in which it could be taken from it."""


@contextmanager
def greedy(database: Path, seconds: float) -> Iterator[subprocess.Popen[str]]:
    """Such a process, once it has had its first turn."""
    command = [sys.executable, "-c", _GREEDY, str(database), str(seconds)]
    process = subprocess.Popen(command, stdout=subprocess.PIPE, text=True, cwd=Path(__file__).parents[2])
    assert process.stdout is not None
    assert process.stdout.readline() == "mine\n"
    try:
        yield process
    finally:
        process.kill()
        process.wait(timeout=10)
        process.stdout.close()


def test_a_turn_is_had_beside_a_process_that_never_rests(tmp_path: Path) -> None:
    gate = Gate(tmp_path / "ward.sqlite", 5)
    with greedy(tmp_path / "ward.sqlite", 0.02):
        begin = time.monotonic()
        for _ in range(20):
            with gate:
                pass
        assert time.monotonic() - begin < 20 * 0.2
    gate.close()


def test_a_turn_that_does_not_come_is_told_and_the_next_is_had(tmp_path: Path) -> None:
    gate = Gate(tmp_path / "ward.sqlite", 0.1)
    with greedy(tmp_path / "ward.sqlite", 60) as other:
        for _ in range(2):
            with pytest.raises(StoreAwayError, match="busy"), gate:
                pass
        other.kill()
        other.wait(timeout=10)
        with gate:
            pass
    gate.close()


def test_a_message_waits_for_the_turn_of_another_process_and_no_longer(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("bot.store.store.LOCK_WAIT_S", 0.1)
    store = open_store(f"sqlite:///{tmp_path}/ward.sqlite")
    with greedy(tmp_path / "ward.sqlite", 60), pytest.raises(StoreAwayError, match="busy"):
        store.transact(lambda _: None)
    store.transact(lambda _: None)
    store.close()


def test_who_only_reads_waits_for_no_turn(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path}/ward.sqlite"
    store, reading = open_store(url), Store(connect(url, reading=True))
    with greedy(tmp_path / "ward.sqlite", 60), reading.connection() as connection:
        assert connection.scalar(text("SELECT count(*) FROM messages")) == 0
    reading.close()
    store.close()


def test_of_postgresql_there_is_no_file_to_take_turns_at() -> None:
    engine = connect("postgresql://nobody@localhost/ward")
    assert written_file(engine) is None
    engine.dispose()


def test_where_the_turn_cannot_be_kept_the_database_is_written_all_the_same(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "ward.sqlite-turn").mkdir()
    store = open_store(f"sqlite:///{tmp_path}/ward.sqlite")
    store.transact(lambda _: None)
    store.close()
    monkeypatch.setattr(gate_module, "_locks", lambda: None)
    store = open_store(f"sqlite:///{tmp_path}/other.sqlite")
    store.transact(lambda _: None)
    store.close()
    assert not (tmp_path / "other.sqlite-turn").exists()


def test_a_file_system_without_such_locks_keeps_nobody_from_writing(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def none(*_: object) -> None:
        raise OSError("no locks available")

    gate = Gate(tmp_path / "ward.sqlite", 5)
    monkeypatch.setattr("fcntl.lockf", none)
    with gate:
        pass
    monkeypatch.undo()
    gate.close()


def test_only_the_owner_can_read_the_file_of_turns_and_memory_has_none(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    store = open_store(f"sqlite:///{tmp_path}/ward.sqlite")
    store.transact(lambda _: None)
    store.close()
    assert stat.S_IMODE((tmp_path / "ward.sqlite-turn").stat().st_mode) == 0o600
    monkeypatch.chdir(tmp_path)
    before = set(tmp_path.iterdir())
    store = open_store()
    store.transact(lambda _: None)
    store.close()
    assert set(tmp_path.iterdir()) == before
