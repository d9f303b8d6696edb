"""Append-only by trigger: what was recorded cannot be changed or deleted, whoever writes the SQL.

Alembic's batch mode on SQLite rebuilds a table and drops its triggers without a word, so a migration that
uses it installs them again, and `penline serve` looks for every one of them at start.
"""

from __future__ import annotations

from collections.abc import Mapping

from sqlalchemy import Connection, text

from bot.store.tables import metadata

_REFUSES = " BEGIN RAISE EXCEPTION '% is append-only', TG_TABLE_NAME; END "
_GUARD = f"""
CREATE OR REPLACE FUNCTION penline_append_only() RETURNS trigger LANGUAGE plpgsql AS
$${_REFUSES}$$
"""

_MISSING, _OFF, _ALTERED = "the trigger is missing", "the trigger is switched off", "the trigger was altered"
_STRANGE = "the trigger is not the program's"

_CATALOGUE = {
    "sqlite": "SELECT name, sql AS made, 1 AS fires, '' AS body, tbl_name AS of FROM sqlite_master"
    " WHERE type = 'trigger'",
    "postgresql": "SELECT tgname AS name, pg_get_triggerdef(t.oid, true) AS made,"
    " tgenabled IN ('O', 'A') AND current_setting('session_replication_role') <> 'replica' AS fires,"
    " prosrc AS body, relname AS of FROM pg_trigger t JOIN pg_proc p ON p.oid = tgfoid"
    " JOIN pg_class c ON c.oid = tgrelid WHERE NOT tgisinternal AND pg_table_is_visible(tgrelid)",
}


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
    """The triggers that should be there and are not, or do not do what they should, by name."""
    return tuple(name for name, what in trigger_faults(connection).items() if what != _STRANGE)


def trigger_faults(connection: Connection) -> Mapping[str, str]:
    """What is wrong with the triggers of these tables, by name: missing, off, altered, or someone else's."""
    dialect = connection.dialect.name
    wanted = {name: made for table in append_only_tables() for name, made in _made(dialect, table).items()}
    faults = dict.fromkeys(wanted, _MISSING)
    for row in connection.execute(text(_CATALOGUE[dialect])):
        if row.name not in wanted:
            if row.of in metadata.tables:
                faults[row.name] = _STRANGE
        elif not row.fires:
            faults[row.name] = _OFF
        elif (row.made, row.body) != (wanted[row.name], "" if dialect == "sqlite" else _REFUSES):
            faults[row.name] = _ALTERED
        else:
            del faults[row.name]
    return dict(sorted(faults.items()))


def _made(dialect: str, table: str) -> Mapping[str, str]:
    """What the catalogue says of one table's triggers, by name."""
    statements = _statements(dialect, table)
    if dialect == "postgresql":  # it names what a trigger refuses in an order of its own
        statements = tuple(each.replace("UPDATE OR DELETE", "DELETE OR UPDATE") for each in statements)
    return dict(zip(_names(dialect, table), statements, strict=True))


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
