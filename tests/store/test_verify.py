"""A row that was altered behind the program's back is found and named."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest
from click.testing import CliRunner
from sqlalchemy import text

from bot.cli import penline
from bot.engine.entries import Line
from bot.store import Store, open_store
from bot.store.connect import connect
from bot.store.schema import HEAD
from bot.store.verify import Flaw, flaws
from tests.store.hands import at, claimed


@pytest.fixture
def file(tmp_path: Path) -> Path:
    """A database with two drains of three lines each."""
    path = tmp_path / "ward.sqlite"
    store = open_store(f"sqlite:///{path}")
    with store.turn() as book:
        claimed(book)
        for bed in ("12", "14"):
            drain = book.open_drain(bed, None)
            for number in range(3):
                book.append(drain, at(number), Line(level_ml=100 * number))
    store.close()
    return path


def drains(path: Path) -> list[str]:
    """The two drains, in the order in which they were opened."""
    with closing(sqlite3.connect(path)) as connection:
        return [row[0] for row in connection.execute("SELECT id FROM drains ORDER BY seq")]


def tamper(path: Path, statement: str, table: str = "entries") -> None:
    """What someone with the file can do: take the triggers off, change a row, put them back."""
    connection = sqlite3.connect(path)
    triggers = connection.execute(
        "SELECT name, sql FROM sqlite_master WHERE type = 'trigger' AND tbl_name = ?", (table,)
    ).fetchall()
    for name, _ in triggers:
        connection.execute(f"DROP TRIGGER {name}")
    connection.execute(statement)
    for _, sql in triggers:
        connection.execute(sql)
    connection.commit()
    connection.close()


def found(path: Path) -> tuple[Flaw, ...]:
    """What verify finds."""
    store = open_store(f"sqlite:///{path}")
    with store.connection() as connection:
        result = tuple(flaws(connection))
    store.close()
    return result


def test_a_database_that_nobody_touched_is_sound(file: Path) -> None:
    assert found(file) == ()


@pytest.mark.parametrize(
    "change",
    [
        """UPDATE entries SET payload = '{{"level_ml":0}}' WHERE drain = '{drain}' AND position = 2""",
        """UPDATE entries SET at = '2026-03-04T12:01:00.000001Z' WHERE drain = '{drain}' AND position = 2""",
        """UPDATE entries SET who = 'ben' WHERE drain = '{drain}' AND position = 2""",
        """UPDATE entries SET kind = 'final' WHERE drain = '{drain}' AND position = 2""",
        """UPDATE entries SET chain = 'x' WHERE drain = '{drain}' AND position = 2""",
        """UPDATE entries SET payload = 'x' WHERE drain = '{drain}' AND position = 2""",
        """DELETE FROM entries WHERE drain = '{drain}' AND position = 2""",
    ],
)
def test_an_altered_row_is_named(file: Path, change: str) -> None:
    drain = drains(file)[1]
    tamper(file, change.format(drain=drain))
    assert found(file)[0].where == f"{drain}-2"


def test_the_first_flaw_of_every_drain_is_named(file: Path) -> None:
    tamper(file, "UPDATE entries SET who = 'ben' WHERE position > 1")
    assert [flaw.where for flaw in found(file)] == [f"{drain}-2" for drain in drains(file)]


def test_the_command_ends_with_1_and_names_the_entry(file: Path) -> None:
    drain = drains(file)[0]
    run = CliRunner().invoke(penline, ["verify", "--database", f"sqlite:///{file}"])
    assert (run.exit_code, run.output) == (0, "Every entry is as it was recorded.\n")
    tamper(file, f"DELETE FROM entries WHERE drain = '{drain}' AND position = 1")
    run = CliRunner().invoke(penline, ["verify", "--database", f"sqlite:///{file}"])
    assert run.exit_code == 1
    assert run.output.splitlines()[0] == f"{drain}-1: the entry is missing"


def test_an_old_schema_is_a_flaw(file: Path) -> None:
    store = Store(connect(f"sqlite:///{file}"))
    with store.connection() as connection_:
        connection_.execute(text("UPDATE alembic_version SET version_num = '0000'"))
        assert tuple(flaws(connection_)) == (Flaw("schema", f"is at 0000, not at {HEAD}"),)
    store.close()


def test_a_message_that_was_taken_and_not_answered_is_named(file: Path) -> None:
    tamper(file, "DELETE FROM replies", "replies")
    assert found(file)[0] == Flaw("m1", "the message was taken and has no reply")
