"""`python -m tests.durability`: cut as often as you like, and print what was found.

    python -m tests.durability --kills 200
    python -m tests.durability --kills 200 --engine postgres --cut database
    python -m tests.durability --kills 20 --cut power --bug synchronous_off

Ends with 1 when anything acknowledged was lost, counted twice or changed (with a bug planted: when it was not
found).
"""

from __future__ import annotations

import shutil
import sys
import tempfile
import time
from pathlib import Path

import click

from tests.databases import postgres_cluster
from tests.durability.nest import Nest
from tests.durability.phones import ANSWER_S
from tests.durability.places import File, Postgres
from tests.durability.planted import BUGS
from tests.durability.shim import compiled
from tests.durability.trial import Place, Trial, fresh
from tests.durability.watch import HungError


@click.command()
@click.option("--kills", default=200, show_default=True, help="How often to cut.")
@click.option("--engine", type=click.Choice(["sqlite", "postgres"]), default="sqlite", show_default=True)
@click.option(
    "--cut",
    type=click.Choice(["worker", "power", "database"]),
    default="worker",
    show_default=True,
    help="Kill the server; cut the power (SQLite); kill the database (PostgreSQL).",
)
@click.option("--bug", type=click.Choice(list(BUGS)), help="Plant a bug, to see it found.")
def main(kills: int, engine: str, cut: str, bug: str | None) -> None:
    """Serve, send, cut, and again; then see that nothing acknowledged was lost or counted twice."""
    if (cut == "power") > (engine == "sqlite") or (cut == "database") > (engine == "postgres"):
        raise click.UsageError("the power is cut of SQLite, the database is killed of PostgreSQL")
    folder = Path(tempfile.mkdtemp())
    folder.chmod(0o755)
    nest = Nest(compiled(folder) if engine == "sqlite" else None)
    try:
        if engine == "sqlite":
            found = _run(nest, File(folder / "file", power=cut == "power"), folder, kills, bug)
        else:
            with postgres_cluster(folder / "pg") as cluster:
                found = _run(nest, Postgres(cluster, cut == "database"), folder, kills, bug)
    except BaseException:
        print(f"what is left of it, logs included: {folder}", flush=True)
        raise
    finally:
        nest.close()
    if bool(found) == bool(bug):
        shutil.rmtree(folder)
        return
    print(f"its logs and its ledger: {folder}")
    sys.exit(1)


def _run(nest: Nest, place: Place, folder: Path, kills: int, bug: str | None) -> tuple[str, ...]:
    trial = Trial(nest=nest, place=place, folder=fresh(folder / "trial"), bug=bug)
    begin = time.monotonic()
    try:
        found = trial.run(kills, _tell)
    except HungError:
        place.keep_log(folder)
        print(f"hung after {trial.cuts} cuts", flush=True)
        raise
    finally:
        trial.stop()
    journal, taken_s = trial.journal, time.monotonic() - begin
    print(
        f"{kills} cuts, {len(journal.sent)} marks sent, {len(journal.answered)} acknowledged, {taken_s:.0f} s"
    )
    print(
        f"told to come again {journal.away} times, not answered within {ANSWER_S:g} s {journal.silent} times"
    )
    print("\n".join(found[:20]) or "Everything acknowledged is in the ledger exactly once, and adds up.")
    return found


def _tell(cuts: int) -> None:
    if cuts % 20 == 0:
        print(f"{cuts} cuts", flush=True)


if __name__ == "__main__":
    main()
