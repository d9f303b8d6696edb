"""A ward that began on an older schema goes on at head with everything that it knew, on both engines."""

from __future__ import annotations

from pathlib import Path

import pytest
from click.testing import CliRunner
from sqlalchemy import Connection, MetaData, Table, insert, select, text

from bot.cli import penline
from bot.cli.player import replies, unit_of
from bot.store import open_store
from bot.store.connect import connect
from bot.store.schema import upgrade
from bot.store.tables import metadata
from bot.store.verify import flaws
from tests.store.stories import STORIES, play, story

STEPS = ("0001", "0002")
HEART = story("after-heart-surgery")
"""A story with cautions, notices, questions and their answers."""


@pytest.mark.parametrize("at_step", STEPS)
def test_a_ward_goes_on_in_the_middle_of_a_story_after_the_steps(
    lasting: str, at_step: str, tmp_path: Path
) -> None:
    middle = len(HEART.turns) // 2
    begun = f"sqlite:///{tmp_path}/begun.sqlite"
    told = play(HEART, begun, end=middle)
    as_it_was(begun, lasting, at_step)
    told += play(HEART, lasting, middle)
    assert told == replies(HEART, unit_of(HEART, STORIES))
    run = CliRunner().invoke(penline, ["verify", "--database", lasting])
    assert (run.exit_code, run.output) == (0, "Every entry is as it was recorded.\n")


@pytest.mark.parametrize("at_step", STEPS)
def test_the_steps_keep_every_row_and_seal_as_the_program_would_have(
    lasting: str, at_step: str, tmp_path: Path
) -> None:
    begun = f"sqlite:///{tmp_path}/begun.sqlite"
    play(HEART, begun)
    as_it_was(begun, lasting, at_step)
    open_store(lasting).close()
    assert everything(lasting) == everything(begun)
    engine = connect(lasting)
    with engine.begin() as connection:
        assert list(flaws(connection)) == []
    engine.dispose()


def as_it_was(source: str, target: str, at_step: str) -> None:
    """Put what the source holds into the empty target, as a program of that step would have kept it."""
    reading, writing = connect(source, reading=True), connect(target)
    with reading.begin() as rows, writing.begin() as old:
        upgrade(old, at_step)
        known = MetaData()
        known.reflect(old)
        for table in metadata.sorted_tables:
            if table.name in known.tables:
                columns = [column.name for column in known.tables[table.name].columns]
                found = [
                    dict(row._mapping) for row in rows.execute(select(*(table.c[name] for name in columns)))
                ]
                for row in found:
                    old.execute(insert(table).values(row))
                _count_on(old, table)
    reading.dispose()
    writing.dispose()


def _count_on(connection: Connection, table: Table) -> None:
    """Let PostgreSQL number new rows after these; SQLite does so by itself."""
    if connection.dialect.name == "postgresql" and "seq" in table.columns:
        sequence, last = (
            f"pg_get_serial_sequence('{table.name}', 'seq')",
            f"SELECT max(seq) FROM {table.name}",
        )
        connection.execute(text(f"SELECT setval({sequence}, coalesce(({last}), 0) + 1, false)"))


def everything(url: str) -> dict[str, list[tuple[object, ...]]]:
    """All rows of all tables."""
    engine = connect(url, reading=True)
    with engine.begin() as connection:
        found = {table.name: rows_of(connection, table.name) for table in metadata.sorted_tables}
    engine.dispose()
    return found


def rows_of(connection: Connection, table: str) -> list[tuple[object, ...]]:
    """Its rows in the order of their keys."""
    columns = metadata.tables[table]
    return [tuple(row) for row in connection.execute(select(columns).order_by(*columns.primary_key.columns))]
