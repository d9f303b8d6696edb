"""The schema equals the sum of its migrations, is guarded after them, and is brought to head at start."""

from __future__ import annotations

import stat
from collections.abc import Iterator
from pathlib import Path

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import inspect, text

from bot.store import Store, StoreAwayError, open_store
from bot.store.connect import connect
from bot.store.schema import HEAD, MIGRATIONS, is_ready, step, upgrade
from bot.store.tables import metadata
from bot.store.triggers import append_only_tables
from bot.store.verify import flaws


@pytest.fixture
def migrated(lasting: str) -> Iterator[Store]:
    """A database that was made by the migrations."""
    store = open_store(lasting)
    yield store
    store.close()


def test_the_schema_is_the_sum_of_its_migrations(migrated: Store) -> None:
    with migrated.connection() as connection:
        context = MigrationContext.configure(connection, opts={"compare_type": True})
        assert compare_metadata(context, metadata) == []
        assert set(inspect(connection).get_table_names()) == {*append_only_tables(), "alembic_version"}
        assert is_ready(connection)


def test_the_names_of_keys_and_indexes_are_those_of_the_tables(migrated: Store) -> None:
    with migrated.connection() as connection:
        seen = inspect(connection)
        for table in metadata.sorted_tables:
            assert {key["name"] for key in seen.get_foreign_keys(table.name)} == {
                key.name for key in table.foreign_key_constraints
            }
            assert seen.get_pk_constraint(table.name)["name"] == table.primary_key.name


def test_head_is_the_last_step_of_the_folder() -> None:
    assert ScriptDirectory(str(MIGRATIONS)).get_current_head() == HEAD


def test_a_start_on_a_database_at_head_changes_nothing(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path}/ward.sqlite"
    open_store(url).close()
    before = schema(url)
    open_store(url).close()
    assert schema(url) == before


def schema(url: str) -> list[str]:
    """Every statement that makes the schema."""
    engine = connect(url)
    with engine.begin() as connection:
        found = [
            str(row.sql) for row in connection.execute(text("SELECT sql FROM sqlite_master ORDER BY name"))
        ]
    engine.dispose()
    return found


def test_a_start_without_the_triggers_is_refused(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path}/ward.sqlite"
    store = open_store(url)
    with store.connection() as connection:
        connection.execute(text("DROP TRIGGER replies_no_delete"))
        assert not is_ready(connection)
    store.close()
    with pytest.raises(StoreAwayError, match="replies_no_delete"):
        open_store(url)


@pytest.mark.parametrize("url", ["sqlite://", "sqlite:///:memory:"])
def test_a_ledger_in_memory_is_ready(url: str) -> None:
    store = open_store(url)
    with store.connection() as connection:
        assert is_ready(connection)
    store.close()


def test_a_database_of_a_later_version_is_not_ready(tmp_path: Path) -> None:
    store = open_store(f"sqlite:///{tmp_path}/ward.sqlite")
    with store.connection() as connection:
        connection.execute(text("UPDATE alembic_version SET version_num = '9999'"))
        assert step(connection) == "9999"
        assert not is_ready(connection)
    store.close()


def test_security_19_only_the_owner_can_read_the_database(tmp_path: Path) -> None:
    path = tmp_path / "ward.sqlite"
    path.touch(0o644)
    store = open_store(f"sqlite:///{path}")
    with store.connection() as connection:
        connection.execute(text("SELECT 1"))
    modes = {file.name: stat.S_IMODE(file.stat().st_mode) for file in tmp_path.iterdir()}
    store.close()
    assert modes["ward.sqlite"] == modes["ward.sqlite-wal"] == modes["ward.sqlite-shm"] == 0o600


def test_sqlite_is_set_up_to_lose_nothing(tmp_path: Path) -> None:
    store = open_store(f"sqlite:///{tmp_path}/ward.sqlite")
    with store.connection() as connection:
        pragmas = {
            name: connection.scalar(text(f"PRAGMA {name}"))
            for name in ("journal_mode", "synchronous", "foreign_keys", "recursive_triggers")
        }
    store.close()
    assert pragmas == {"journal_mode": "wal", "synchronous": 2, "foreign_keys": 1, "recursive_triggers": 1}


def test_the_messages_of_before_there_were_seals_are_sealed_as_they_are(lasting: str) -> None:
    engine = connect(lasting)
    with engine.begin() as connection:
        upgrade(connection, "0002")
        for number, unit in enumerate(("ward", "other", "ward", ""), start=1):
            values = {**WHEN, "number": number, "id": f"m{number}", "unit": unit}
            connection.execute(
                text("INSERT INTO messages VALUES (:number, :id, 'd', :at, 'amy', :unit, 'words', 'text')"),
                values,
            )
            connection.execute(text("INSERT INTO replies VALUES (:id, '{}')"), values)
        connection.execute(
            text(
                "INSERT INTO notices VALUES (1, 'ward', '12', NULL, 'ladder', 'URGENT', :no, :at, 'm1', NULL)"
            ),
            {**WHEN, "no": False},
        )
    engine.dispose()
    store = open_store(lasting)
    with store.connection() as connection:
        assert tuple(flaws(connection)) == ()
        assert connection.scalar(text("SELECT count(*) FROM seals")) == 4
        connection.execute(
            text(
                f"ALTER TABLE replies {OFF}"
                if lasting.startswith("postgresql")
                else "DROP TRIGGER replies_no_update"
            )
        )
        connection.execute(text("UPDATE replies SET reply = '[]' WHERE message = 'm3'"))
        assert "m3" in [flaw.where for flaw in flaws(connection)]
    store.close()


OFF = "DISABLE TRIGGER replies_append_only"


def test_a_ledger_of_the_first_step_goes_on_at_head_with_all_its_rows(tmp_path: Path) -> None:
    engine = connect(f"sqlite:///{tmp_path}/old.sqlite")
    with engine.begin() as connection:
        upgrade(connection, "0001")
        connection.execute(
            text("INSERT INTO messages VALUES (1, 'm1', 'd', :at, 'amy', 'ward', 'words', 'text')"), WHEN
        )
        connection.execute(
            text("INSERT INTO notices VALUES (1, 'ward', '12', NULL, 'ladder', 'URGENT', 0, :at, 'm1')"), WHEN
        )
        connection.execute(
            text(
                "INSERT INTO people_events VALUES"
                " (1, 'ward', 'amy', 'enrolled', 'Amy', 'nurse', NULL, :at, 'root')"
            ),
            WHEN,
        )
    engine.dispose()
    old = open_store(f"sqlite:///{tmp_path}/old.sqlite")
    with old.turn("ward") as book:
        (notice,) = book.notices()
        (event,) = book.people_events()
    with old.connection() as connection:
        assert is_ready(connection)
    old.close()
    assert (notice.text, notice.about, event.shared) == ("URGENT", None, False)


WHEN = {"at": "2026-03-04T12:00:00.000000Z"}
