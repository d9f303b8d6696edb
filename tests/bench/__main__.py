"""`python -m tests.bench`: both sides in one go, and their ratios.

    python -m tests.bench path
    python -m tests.bench path --engine postgres
    python -m tests.bench path --servers 2
    python -m tests.bench readers
    python -m tests.bench growth
    python -m tests.bench all

Nothing is asserted of time. On a machine that is shared, look at the ratios, and at several runs.
"""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import click

from tests.bench import growth
from tests.bench import path as whole_path
from tests.bench.readers import readers as compare_readers
from tests.databases import new_database, postgres_cluster
from tests.engine.bench import main as engine_figures


@click.group()
def bench() -> None:
    """Measure, and print."""


@bench.command()
@click.option("--engine", type=click.Choice(["sqlite", "postgres"]), default="sqlite", show_default=True)
@click.option("--entries", default=1000, show_default=True, help="Entries in the ledger before.")
@click.option("--messages", default=400, show_default=True, help="Of each side in each round.")
@click.option("--rounds", default=5, show_default=True)
@click.option("--connections", default="1,16", show_default=True)
@click.option("--servers", default=1, show_default=True, help="Of each side, on one database.")
def path(engine: str, connections: str, **size: int) -> None:
    """A message through the whole path, against one row committed and against a constant answer."""
    told = tuple(int(part) for part in connections.split(","))
    measured = whole_path.Size(connections=told, **size)
    with _folder() as folder:
        if engine == "sqlite":
            urls = {side: f"sqlite:///{folder}/{side}.sqlite" for side in whole_path.SIDES}
            whole_path.compare(folder, urls, measured)
            return
        with postgres_cluster(folder / "pg") as cluster:
            urls = {side: new_database(cluster.get_uri()) for side in whole_path.SIDES}
            whole_path.compare(folder, urls, measured)


@bench.command()
def readers() -> None:
    """The reader against the bare tokenizer, and against general readers of numbers and of times."""
    compare_readers()


@bench.command("growth")
@click.option(
    "--entries", default=1_000_000, show_default=True, help="Of the large hospital; the small: 1,000."
)
@click.option(
    "--drain", default=2000, show_default=True, help="Entries of the long drain; the short one: 20."
)
@click.option("--messages", default=100_000, show_default=True, help="Answered while the memory is watched.")
def growing(entries: int, drain: int, messages: int) -> None:
    """A reply in a large hospital and on a long drain, the server's memory, and its start."""
    with _folder() as folder:
        growth.of_a_start(folder)
        growth.of_a_drain(folder, 20, drain)
        growth.of_the_hospital(folder, 1000, entries)
        growth.of_memory(folder, messages)


@bench.command()
def engine() -> None:
    """The engine alone: entries a second."""
    engine_figures()


@bench.command("all")
@click.pass_context
def everything(context: click.Context) -> None:
    """All of them, as they are by default."""
    for command in (engine, readers, path, growing):
        print(f"\n== {command.name} ==", flush=True)
        context.invoke(command)


@contextmanager
def _folder() -> Iterator[Path]:
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        folder.chmod(0o755)
        yield folder


if __name__ == "__main__":
    bench(prog_name="python -m tests.bench")
