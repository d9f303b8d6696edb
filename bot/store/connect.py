"""How the database is reached: SQLite by one connection that is never shared, PostgreSQL by a pool.

Several SQLite writers at once cost more than anything else here (the busy handler sleeps), and a read
before the write lock gives wrong sums without an error: so one connection, and BEGIN IMMEDIATE.
"""

from __future__ import annotations

import importlib
import os
import sqlite3
from pathlib import Path
from types import ModuleType
from typing import Any, Literal

from sqlalchemy import URL, Engine, StaticPool, create_engine, event, make_url

from bot.store.errors import StoreAwayError
from bot.store.patience import ANSWER_S
from bot.store.statements import at_once

_PRAGMAS = (
    "PRAGMA journal_mode = WAL",
    "PRAGMA synchronous = FULL",
    "PRAGMA foreign_keys = ON",
    "PRAGMA recursive_triggers = ON",  # else INSERT OR REPLACE deletes past the triggers
    "PRAGMA trusted_schema = OFF",
    f"PRAGMA busy_timeout = {1000 * ANSWER_S:.0f}",
)

_READS = "only_reads"


def connect(url: str, *, reading: bool = False, answer_s: float | None = None) -> Engine:
    """The engine for a database URL. SQL parameters never show in its errors: they hold levels.

    `reading`: its transactions see one moment of the database and keep nobody from writing. `answer_s`: how
    long PostgreSQL may be silent before it counts as away; for as long as it takes unless told.
    """
    parsed = make_url(url)
    if parsed.get_backend_name() == "sqlite":
        return _sqlite(parsed, reading=reading)
    engine = _postgresql(parsed, "REPEATABLE READ" if reading else "READ COMMITTED")
    if answer_s is not None:
        from bot.store.punctual import punctual

        event.listen(engine, "do_connect", punctual(answer_s))
    return engine


def _postgresql(url: URL, isolation_level: Literal["REPEATABLE READ", "READ COMMITTED"]) -> Engine:
    return create_engine(
        url.set(drivername="postgresql+psycopg"),
        hide_parameters=True,
        isolation_level=isolation_level,
        pool_size=16,
        max_overflow=0,
        pool_timeout=ANSWER_S,
        pool_pre_ping=True,
        connect_args={"connect_timeout": 3},
    )


def in_memory(url: str) -> bool:
    """Whether the database is gone when the program ends."""
    parsed = make_url(url)
    return parsed.get_backend_name() == "sqlite" and _file(parsed) is None


def written_file(engine: Engine) -> Path | None:
    """The file of SQLite that is written to by this engine, and may be by other processes."""
    return None if engine.get_execution_options().get(_READS) else _file(engine.url)


def _file(url: URL) -> Path | None:
    """The file of SQLite; none where the database is in memory, or another engine's."""
    if url.get_backend_name() != "sqlite" or not url.database or url.database == ":memory:":
        return None
    return Path(url.database)


def _sqlite(url: URL, *, reading: bool) -> Engine:
    if (file := _file(url)) is not None:
        if reading and not file.exists():
            raise StoreAwayError(f"there is no {url.database}")
        _private_file(file)
    engine = create_engine(
        url.set(drivername="sqlite+pysqlite"),
        module=sqlite_module(),
        poolclass=StaticPool,
        connect_args={"check_same_thread": False},
        hide_parameters=True,
        execution_options={_READS: reading},
    )
    begin = "BEGIN" if reading else "BEGIN IMMEDIATE"
    event.listen(engine, "connect", _prepare)
    event.listen(engine, "begin", lambda connection: at_once(connection, begin))
    return engine


def sqlite_module() -> ModuleType:
    """The newest SQLite at hand: before 3.51.3, two connections that checkpoint at once can lose pages."""
    try:
        return importlib.import_module("pysqlite3.dbapi2")
    except ImportError:
        return sqlite3


def _private_file(path: Path) -> None:
    """Make the file, or tighten it, so that only its owner can read it; SQLite's side files follow it.

    One that is there is not opened: to close it would let go of SQLite's locks on it in this process.
    """
    try:
        if not path.is_file():
            os.close(os.open(path, os.O_CREAT | os.O_RDWR, 0o600))
        path.chmod(path.stat().st_mode & 0o600)
    except OSError as error:
        raise StoreAwayError(f"{path}: {error.strerror}") from error


def _prepare(connection: Any, _record: object) -> None:
    connection.isolation_level = None  # the driver would begin too late, at the first write
    for pragma in _PRAGMAS:
        connection.execute(pragma)
