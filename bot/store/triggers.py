"""Append-only by trigger: what was recorded cannot be changed or deleted, whoever writes the SQL.

Alembic's batch mode on SQLite rebuilds a table and drops its triggers without a word, so a migration that
uses it installs them again, and `penline serve` looks for every one of them at start.
"""

from __future__ import annotations

from sqlalchemy import Connection, text

from bot.store.tables import metadata

_GUARD = """
CREATE OR REPLACE FUNCTION penline_append_only() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION '% is append-only', TG_TABLE_NAME; END $$
"""


def append_only_tables() -> tuple[str, ...]:
    """The names of the tables whose rows never change: all of them."""
    return tuple(sorted(metadata.tables))


def guard(connection: Connection, tables: tuple[str, ...]) -> None:
    """Install the triggers on these tables."""
    if connection.dialect.name == "postgresql":
        connection.exec_driver_sql(_GUARD.replace("%", "%%"))
    for table in tables:
        for statement in _statements(connection.dialect.name, table):
            connection.exec_driver_sql(statement)


def unguarded(connection: Connection) -> tuple[str, ...]:
    """The triggers that should be there and are not, by name."""
    catalogue = {
        "sqlite": "SELECT name FROM sqlite_master WHERE type = 'trigger'",
        "postgresql": "SELECT tgname FROM pg_trigger WHERE NOT tgisinternal AND tgenabled <> 'D'",
    }[connection.dialect.name]
    present = set(connection.scalars(text(catalogue)))
    wanted = {name for table in append_only_tables() for name in _names(connection.dialect.name, table)}
    return tuple(sorted(wanted - present))


def _names(dialect: str, table: str) -> tuple[str, ...]:
    """The trigger names of one table."""
    if dialect == "postgresql":
        return (f"{table}_append_only", f"{table}_no_truncate")
    return (f"{table}_no_update", f"{table}_no_delete")


def _statements(dialect: str, table: str) -> tuple[str, ...]:
    """The DDL of one table's triggers."""
    first, second = _names(dialect, table)
    if dialect == "postgresql":
        action = "EXECUTE FUNCTION penline_append_only()"
        return (
            f"CREATE TRIGGER {first} BEFORE UPDATE OR DELETE ON {table} FOR EACH ROW {action}",
            f"CREATE TRIGGER {second} BEFORE TRUNCATE ON {table} FOR EACH STATEMENT {action}",
        )
    refuse = f"BEGIN SELECT RAISE(ABORT, '{table} is append-only'); END"
    return (
        f"CREATE TRIGGER {first} BEFORE UPDATE ON {table} {refuse}",
        f"CREATE TRIGGER {second} BEFORE DELETE ON {table} {refuse}",
    )
