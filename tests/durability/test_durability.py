"""A few cuts of each kind, the four planted bugs found, and what happens while nothing can be written."""

from __future__ import annotations

import json
import random
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import create_engine, text

from tests.databases import on_ci, postgres_cluster, with_driver
from tests.durability.check import faults
from tests.durability.nest import Nest
from tests.durability.phones import Mark, send
from tests.durability.places import File, Postgres
from tests.durability.planted import BUGS
from tests.durability.shim import compiled, compiler
from tests.durability.trial import Place, Trial

pytestmark = pytest.mark.durability


@pytest.fixture(scope="module")
def nest(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Nest]:
    """Where servers hatch, with the power cut preloaded where there is a C compiler."""
    shim = compiled(tmp_path_factory.mktemp("shim")) if compiler() else None
    nest = Nest(shim)
    yield nest
    nest.close()


@pytest.fixture
def file(nest: Nest, tmp_path: Path) -> File:
    """A ledger in a file whose power can be cut."""
    if nest.shim is None:
        assert not on_ci(), "a C compiler is needed"
        pytest.skip("no C compiler: neither power cut nor full disk")
    return File(tmp_path, power=True)


@pytest.fixture(scope="module")
def cluster(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Any]:
    """A PostgreSQL that may be killed."""
    with postgres_cluster(tmp_path_factory.mktemp("pg")) as cluster:
        yield cluster


@pytest.fixture
def trials() -> Iterator[list[Trial]]:
    """Trials that are stopped at the end."""
    held: list[Trial] = []
    yield held
    for trial in held:
        trial.stop()


def trial(nest: Nest, trials: list[Trial], place: Place, folder: Path, bug: str | None = None) -> Trial:
    """A trial of that place."""
    trials.append(Trial(nest=nest, place=place, folder=folder, bug=bug, chance=random.Random(7)))
    return trials[-1]


def test_a_killed_server_loses_nothing_and_counts_nothing_twice(
    nest: Nest, trials: list[Trial], tmp_path: Path
) -> None:
    assert trial(nest, trials, File(tmp_path), tmp_path).run(4) == ()
    assert len(trials[0].journal.answered) >= 4


def test_a_power_cut_loses_nothing_that_was_answered(
    nest: Nest, trials: list[Trial], file: File, tmp_path: Path
) -> None:
    assert trial(nest, trials, file, tmp_path).run(4) == ()


@pytest.mark.parametrize("bug", BUGS)
def test_each_planted_bug_is_found(
    bug: str, nest: Nest, trials: list[Trial], file: File, tmp_path: Path
) -> None:
    assert trial(nest, trials, file, tmp_path, bug).run(3) != ()


@pytest.mark.parametrize(("database", "cuts"), [(False, 3), (True, 1)], ids=["server", "database"])
def test_on_postgresql_neither_a_killed_server_nor_a_killed_database_loses_anything(
    database: bool, cuts: int, cluster: Any, nest: Nest, trials: list[Trial], tmp_path: Path
) -> None:
    assert trial(nest, trials, Postgres(cluster, database), tmp_path).run(cuts) == ()


def sent(trial: Trial) -> tuple[Mark, int, dict[str, Any]]:
    """The next mark, and what came back."""
    trial.serve()
    mark = trial.journal.next()
    status, body = send(trial.port(), mark)
    trial.journal.note(mark, status, body)
    return mark, status, json.loads(body)


def test_a_full_disk_is_503_with_nothing_half_written_and_passes(
    nest: Nest, trials: list[Trial], file: File, tmp_path: Path
) -> None:
    full = trial(nest, trials, file, tmp_path)
    assert sent(full)[1] == 200
    with file.full():
        mark, status, problem = sent(full)
        assert (status, problem["status"]) == (503, 503)
        assert "Send the same message again" in problem["detail"]
    status, body = send(full.port(), mark)
    full.journal.note(mark, status, body)
    assert (status, json.loads(body)["status"]) == (200, "recorded")
    full.stop()
    assert faults(file.copy(), full.journal) == ()


def test_a_postgresql_that_is_read_only_is_503_and_passes(
    cluster: Any, nest: Nest, trials: list[Trial], tmp_path: Path
) -> None:
    place = Postgres(cluster)
    reading = trial(nest, trials, place, tmp_path)
    assert sent(reading)[1] == 200
    read_only(place.url, True)
    mark, status, _ = sent(reading)
    assert status == 503
    read_only(place.url, False)
    status, body = send(reading.port(), mark)
    reading.journal.note(mark, status, body)
    assert status == 200
    reading.stop()
    assert faults(place.url, reading.journal) == ()


def read_only(url: str, on: bool) -> None:
    """Let the database take no writes, or take them again, and let everyone connect anew."""
    engine = create_engine(with_driver(url), isolation_level="AUTOCOMMIT")
    with engine.connect() as connection:
        connection.execute(text("SET default_transaction_read_only = off"))
        name = connection.scalar(text("SELECT current_database()"))
        setting = "on" if on else "off"
        connection.execute(text(f"ALTER DATABASE {name} SET default_transaction_read_only = {setting}"))
        connection.execute(
            text(
                "SELECT pg_terminate_backend(pid) FROM pg_stat_activity"
                " WHERE datname = current_database() AND pid <> pg_backend_pid()"
            )
        )
    engine.dispose()
