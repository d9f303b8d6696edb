"""A store on each engine."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import create_engine, text

from bot.store import Store, open_store
from tests.databases import new_database, postgres_server, with_driver


@pytest.fixture(scope="session")
def postgres(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """A PostgreSQL for the session. It syncs nothing: what is here is deleted, and no test cuts the power."""
    with postgres_server(tmp_path_factory.mktemp("pg")) as url:
        engine = create_engine(with_driver(url), isolation_level="AUTOCOMMIT")
        with engine.connect() as connection:
            connection.execute(text("ALTER SYSTEM SET fsync = off"))
            connection.execute(text("SELECT pg_reload_conf()"))
        engine.dispose()
        yield url


@pytest.fixture(params=["memory", "file", "postgres"])
def database(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """The URL of an empty database on each engine."""
    return "sqlite://" if request.param == "memory" else _lasting(request, tmp_path)


@pytest.fixture(params=["file", "postgres"])
def lasting(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """The same of those that are still there when they are opened again."""
    return _lasting(request, tmp_path)


def _lasting(request: pytest.FixtureRequest, folder: Path) -> str:
    if request.param == "file":
        return f"sqlite:///{folder}/penline.sqlite"
    server: str = request.getfixturevalue("postgres")
    return new_database(server)


@pytest.fixture
def store(database: str) -> Iterator[Store]:
    """An open store."""
    store = open_store(database)
    yield store
    store.close()
