"""The role that the README gives to a server on PostgreSQL: enough for every message, and nothing else."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest
from click.testing import CliRunner
from sqlalchemy import create_engine, text
from sqlalchemy.exc import ProgrammingError

from bot.cli import penline
from bot.cli.player import replies, unit_of
from bot.store import StoreAwayError, open_store
from bot.store.connect import connect
from bot.store.schema import HEAD, is_ready
from bot.store.tables import metadata
from bot.store.triggers import append_only_tables
from tests.databases import new_database, server_role, with_driver
from tests.store.stories import STORIES, play, story
from tests.store.test_copying import fill


@pytest.fixture
def owned(postgres: str) -> str:
    """A new database at head, in the name of its owner."""
    url = new_database(postgres)
    run = CliRunner().invoke(penline, ["migrate", "--database", url])
    assert (run.exit_code, run.output) == (0, f"The database is at step {HEAD}.\n")
    return url


@pytest.fixture
def served(owned: str) -> str:
    """The same for a server."""
    return server_role(owned)


def fill_through(url: str) -> None:
    """Rows in every table, written at this URL."""
    store = open_store(url)
    fill(store)
    store.close()


@pytest.mark.parametrize("name", [path.stem for path in sorted(STORIES.glob("*.txt"))][::4])
def test_security_16_a_server_s_role_is_enough_for_every_message(served: str, name: str) -> None:
    told = story(name)
    assert play(told, served) == replies(told, unit_of(told, STORIES))


def test_a_server_s_role_is_enough_to_look_and_to_copy(served: str, tmp_path: Path) -> None:
    fill_through(served)
    for command in (("verify",), ("backup", str(tmp_path / "copy.jsonl"))):
        run = CliRunner().invoke(penline, [command[0], "--database", served, *command[1:]])
        assert run.exit_code == 0, run.output


WAYS = ("UPDATE {} SET seq = seq", "DELETE FROM {}", "TRUNCATE {} CASCADE", "DROP TABLE {} CASCADE",
        "DROP TRIGGER {0}_append_only ON {0}", "ALTER TABLE {} DISABLE TRIGGER ALL")  # fmt: skip


@pytest.mark.parametrize("way", WAYS)
def test_security_16_a_server_s_role_can_neither_change_nor_lose_a_row(
    owned: str, served: str, way: str
) -> None:
    fill_through(served)
    owner = create_engine(with_driver(owned))
    with owner.begin() as connection:  # even where nothing but the role is in the way
        for table in append_only_tables():
            connection.execute(text(f"ALTER TABLE {table} DISABLE TRIGGER USER"))
    engine = connect(served)
    for table in append_only_tables():
        column = list(metadata.tables[table].columns)[-1].name
        statement = way.replace("seq", f'"{column}"').format(table)
        with pytest.raises(ProgrammingError, match="InsufficientPrivilege"), engine.begin() as connection:
            connection.execute(text(statement))
    engine.dispose()
    owner.dispose()


@pytest.mark.parametrize(
    "way",
    ["CREATE TABLE mine (x int)", "UPDATE alembic_version SET version_num = '0'", "CREATE ROLE mine",
     "INSERT INTO alembic_version VALUES ('0009')", "SELECT setval('messages_seq_seq', 1)"],
)  # fmt: skip
def test_a_server_s_role_changes_nothing_of_the_schema(served: str, way: str) -> None:
    engine = connect(served)
    with pytest.raises(ProgrammingError, match="InsufficientPrivilege"), engine.begin() as connection:
        connection.execute(text(way))
    engine.dispose()


def test_a_server_s_role_does_not_start_on_a_schema_that_lacks_a_step(owned: str, served: str) -> None:
    engine = create_engine(with_driver(owned))
    with engine.begin() as connection:
        connection.execute(text("UPDATE alembic_version SET version_num = '0001'"))
    engine.dispose()
    with pytest.raises(StoreAwayError, match="penline migrate"):
        open_store(served)
    run = CliRunner().invoke(penline, ["migrate", "--database", served])
    assert (run.exit_code, "penline migrate" in run.output) == (1, True)


def test_servers_that_start_at_once_take_the_steps_once(postgres: str) -> None:
    url = new_database(postgres)
    with ThreadPoolExecutor(6) as pool:
        stores = list(pool.map(open_store, [url] * 6))
    with stores[0].connection() as connection:
        assert is_ready(connection)
    for store in stores:
        store.close()
