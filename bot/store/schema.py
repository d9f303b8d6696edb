"""The schema's steps: which one a database is at, and how it is brought to the last one.

Alembic is imported only when there is a step to take, so that a start on a database at head is quick.
"""

from __future__ import annotations

from pathlib import Path

from sqlalchemy import Connection, Engine, func, inspect, select, text
from sqlalchemy.exc import DatabaseError, InterfaceError, OperationalError, ProgrammingError

from bot.store.connect import in_memory
from bot.store.errors import NO_DATABASE, StoreAwayError, is_no_database
from bot.store.triggers import unguarded

HEAD = "0003"
_NOT_ALLOWED = "42501"
MIGRATIONS = Path(__file__).parent / "migrations"


def step(connection: Connection) -> str | None:
    """The step that the database is at; None when it is empty."""
    if not inspect(connection).has_table("alembic_version"):
        return None
    found: str | None = connection.scalar(text("SELECT version_num FROM alembic_version"))
    return found


def bring_to_head(engine: Engine) -> None:
    """Take the steps that are missing, then refuse a database without its append-only triggers."""
    try:
        with engine.begin() as connection:
            _take_missing_steps(connection)
            missing = unguarded(connection)
    except (OperationalError, InterfaceError) as away:
        raise StoreAwayError(str(away.orig)) from away
    except ProgrammingError as wrong:
        if getattr(wrong.orig, "sqlstate", None) != _NOT_ALLOWED:
            raise
        raise StoreAwayError("its role may not use or change the schema: see `penline migrate`") from wrong
    except DatabaseError as wrong:
        if not is_no_database(wrong):
            raise
        raise StoreAwayError(NO_DATABASE) from wrong
    if missing:
        raise StoreAwayError(f"append-only triggers are missing: {', '.join(missing)}")


def _take_missing_steps(connection: Connection) -> None:
    """Of several servers that start at once on PostgreSQL, one takes the steps and the others wait for it."""
    if step(connection) == HEAD:
        return
    if connection.dialect.name == "postgresql":
        connection.execute(select(func.pg_advisory_xact_lock(func.hashtext("penline schema"))))
        if step(connection) == HEAD:
            return
    upgrade(connection)


def upgrade(connection: Connection, to: str = "head") -> None:
    """Take the steps up to `to`, in the connection's transaction."""
    from alembic import command
    from alembic.config import Config

    config = Config()
    config.set_main_option("script_location", str(MIGRATIONS).replace("%", "%%"))
    config.attributes["connection"] = connection
    command.upgrade(config, to)


def is_ready(connection: Connection) -> bool:
    """Whether this database takes entries: schema at head (or made in memory), every trigger there."""
    made = in_memory(str(connection.engine.url))
    return (made or step(connection) == HEAD) and not unguarded(connection)
