"""A statement that the driver runs by itself finds and keeps what it does when SQLAlchemy runs it."""

from __future__ import annotations

import importlib
import pkgutil
from collections.abc import Iterator, Mapping
from datetime import UTC, datetime
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from sqlalchemy import Select, Table, insert, select
from sqlalchemy.exc import IntegrityError

import bot.store
from bot.store import Question, Store
from bot.store.statements import Statement, into
from bot.store.tables import berths, people_events, questions
from tests.store.hands import at, claimed
from tests.store.test_copying import fill


def statements() -> Iterator[tuple[str, Statement]]:
    """Every one that the store has, by its name."""
    for found in pkgutil.iter_modules(bot.store.__path__, "bot.store."):
        module = importlib.import_module(found.name)
        for name, held in vars(module).items():
            if isinstance(held, Statement):
                yield f"{found.name.rpartition('.')[2]}.{name}", held


EVENING = datetime(2026, 3, 4, 19, 0, tzinfo=ZoneInfo("America/New_York"))

EVERY = tuple(statements())
NAMED: Mapping[str, object] = {
    "unit": "ward", "of_unit": "ward", "sender": "amy", "of_sender": "amy", "message": "m2",
    "of_message": "m1", "of_bed": "12", "of_key": "full:bed", "of_person": "zoe",
    "since": datetime.min.replace(tzinfo=UTC), "behind": 1, "at_position": 2,
}  # fmt: skip


def selects() -> list[Any]:
    """Those that only look."""
    return [
        pytest.param(each, id=name)
        for name, each in EVERY
        if isinstance(each.on("sqlite"), Select) and "pg_advisory" not in str(each.on("sqlite"))
    ]


def named(store: Store) -> dict[str, object]:
    """Something to find for every parameter."""
    with store.connection() as connection:
        return {**NAMED, "of_drain": connection.scalar(select(berths.c.drain))}


@pytest.fixture
def filled(store: Store) -> Store:
    """A store with rows in every table, and a question that waits."""
    fill(store)
    with store.turn() as book:
        claimed(book, "m2")
        for danger in (False, True):
            book.ask(
                Question(
                    unit="ward", sender="amy", bed=None, drain=None, slot="at", asked_at=at(1), message="m2",
                    text="When?", said_json="{}", danger=danger,
                )
            )  # fmt: skip
    return store


def test_there_are_more_than_twenty_of_them() -> None:
    assert len(EVERY) > 20


@pytest.mark.parametrize("statement", selects())
def test_it_finds_what_sqlalchemy_finds(filled: Store, statement: Statement) -> None:
    values = named(filled)
    with filled.connection() as connection:
        query = statement.on(connection.dialect.name)
        wanted = {bind.key: values[bind.key] for bind in query.compile().bind_names if bind.required}
        theirs = connection.execute(query, wanted).all()
        mine = statement.rows(connection, wanted)
        assert theirs
        assert mine == [tuple(row) for row in theirs]
        assert [list(map(type, row)) for row in mine] == [list(map(type, row)) for row in theirs]
        assert mine[0]._fields == theirs[0]._fields


def rows(name: str) -> list[tuple[Table, dict[str, object]]]:
    """Rows with moments, yes and no, and nothing, told apart by name."""
    question: dict[str, object] = {
        "id": name, "unit": "ward", "sender": "amy", "bed": None, "drain": None, "slot": "at",
        "asked_at": EVENING, "message": "m1", "text": "100% sure?", "said": "{}", "choices": "[]",
        "danger": name == "two",
    }  # fmt: skip
    person: dict[str, object] = {
        "unit": "ward", "person": name, "event": "enrolled", "name": "Zo\u00eb", "role": "nurse",
        "until": None, "at": EVENING, "by": "x", "shared": True,
    }  # fmt: skip
    return [(questions, question), (people_events, person)]


def test_it_keeps_what_sqlalchemy_keeps(filled: Store) -> None:
    with filled.connection() as connection:
        for (table, mine), (_, theirs) in zip(rows("one"), rows("two"), strict=True):
            into(table).rows(connection, {**mine, "danger": True})
            connection.execute(insert(table), theirs)
            last = f"SELECT * FROM {table.name} ORDER BY seq DESC LIMIT 2"
            kept = [tuple(row)[1:] for row in connection.exec_driver_sql(last)]
            assert [tuple("?" if cell in ("one", "two") else cell for cell in row) for row in kept[:1]] == [
                tuple("?" if cell in ("one", "two") else cell for cell in row) for row in kept[1:]
            ]


def test_a_row_that_lacks_a_column_is_not_kept(store: Store) -> None:
    _, row = rows("one")[0]
    del row["danger"]
    with store.connection() as connection, pytest.raises(KeyError):
        into(questions).rows(connection, row)


def test_its_errors_have_sqlalchemys_names_and_no_parameters(filled: Store) -> None:
    _, row = rows("secret")[0]
    for nobody in (None, "nobody"):
        with pytest.raises(IntegrityError) as caught, filled.connection() as connection:
            into(questions).rows(connection, row | {"message": nobody})
        assert "secret" not in str(caught.value).partition("DETAIL")[0]
        assert caught.value.orig is not None
