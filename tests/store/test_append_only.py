"""What was recorded stays: on every table, by every way that SQL has of changing or losing a row."""

from __future__ import annotations

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DBAPIError

from bot.engine.entries import Line
from bot.store import Choice, Notice, Question, Store
from bot.store.notices import Attempt
from bot.store.people import PeopleEvent
from bot.store.tables import metadata
from bot.store.triggers import append_only_tables, unguarded
from tests.store.hands import NOON, claimed


@pytest.fixture
def full(store: Store) -> Store:
    """A store with a row in every table."""
    with store.turn() as book:
        drain = claimed(book).open_drain("12", None)
        book.append(drain, NOON, Line(level_ml=840))
        asked = book.ask(
            Question(
                unit="ward",
                sender="amy",
                bed="12",
                drain=drain,
                slot="at",
                asked_at=NOON,
                message="m1",
                text="When?",
                said_json="{}",
                choices=(Choice("now", "now"),),
            )
        )
        book.settle(asked.id, "answered")
        book.queue(
            Notice(unit="ward", bed="12", drain=drain, code="full", text="Full", queued_at=NOON, message="m1")
        )
        book.note_attempt(Attempt(notice=1, person="carla", at=NOON, outcome="delivered", status=204))
        book.acknowledge("12")
        book.show("full:bed", "amy", NOON)
        book.note_person(
            PeopleEvent(
                unit="ward",
                person="amy",
                event="enrolled",
                name="Amy",
                role="nurse",
                until=None,
                at=NOON,
                by="root",
            )
        )
    return store


@pytest.mark.parametrize("table", append_only_tables())
def test_security_16_a_row_is_neither_changed_nor_deleted(full: Store, table: str) -> None:
    column = list(metadata.tables[table].columns)[-1].name
    for statement in (f"UPDATE {table} SET {column} = {column}", f"DELETE FROM {table}"):
        with pytest.raises(DBAPIError, match="append-only"), full.connection() as connection:
            connection.execute(
                text(statement.replace(f"{column} ", f'"{column}" ').replace(f"= {column}", f'= "{column}"'))
            )
    with full.connection() as connection:
        assert connection.scalar(text(f"SELECT count(*) FROM {table}")) == 1


@pytest.mark.parametrize("table", append_only_tables())
def test_security_16_a_row_is_not_replaced_or_truncated(full: Store, table: str) -> None:
    postgres = full.engine.dialect.name == "postgresql"
    statement = (
        f"TRUNCATE {table} CASCADE" if postgres else f"INSERT OR REPLACE INTO {table} SELECT * FROM {table}"
    )
    with pytest.raises(DBAPIError, match="append-only"), full.connection() as connection:
        connection.execute(text(statement))


def test_a_missing_trigger_is_named(full: Store) -> None:
    postgres = full.engine.dialect.name == "postgresql"
    name = "entries_append_only" if postgres else "entries_no_delete"
    with full.connection() as connection:
        assert unguarded(connection) == ()
        connection.execute(text(f"DROP TRIGGER {name}{' ON entries' if postgres else ''}"))
        assert unguarded(connection) == (name,)
