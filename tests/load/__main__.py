"""`python -m tests.load`: signed messages on loopback at several numbers of connections, on one ledger.

    python -m tests.load --entries 1000
    python -m tests.load --entries 1000000 --engine postgres --seconds 20

Three of four messages are marks, the fourth asks what to chart. Ends with 1 when anything but 200 came back.
"""

from __future__ import annotations

import sys
import tempfile
import time
from pathlib import Path

import click

from tests.bench.probe import sync_ms
from tests.databases import new_database, postgres_cluster
from tests.durability.nest import Nest, Server
from tests.load.generator import load
from tests.load.ward import fill, this_minute, unit_files
from tests.web.client import SECRET


@click.command()
@click.option("--entries", default=1000, show_default=True, help="Entries in the ledger before.")
@click.option("--engine", type=click.Choice(["sqlite", "postgres"]), default="sqlite", show_default=True)
@click.option("--connections", default="1,16,64", show_default=True)
@click.option("--seconds", default=10.0, show_default=True, help="For each number of connections.")
def main(entries: int, engine: str, connections: str, seconds: float) -> None:
    """Fill a ledger, serve it, and send."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        folder.chmod(0o755)
        told = [int(part) for part in connections.split(",")]
        if engine == "sqlite":
            errors = _run(f"sqlite:///{folder}/hospital.sqlite", folder, entries, told, seconds)
        else:
            with postgres_cluster(folder / "pg") as cluster:
                errors = _run(new_database(cluster.get_uri()), folder, entries, told, seconds)
    sys.exit(bool(errors))


def _run(url: str, folder: Path, entries: int, connections: list[int], seconds: float) -> int:
    begin, now = time.perf_counter(), this_minute()
    fill(url, entries, now)
    print(
        f"{entries:,} entries filled in {time.perf_counter() - begin:.0f} s;"
        f" a sync takes {sync_ms(folder):.2f} ms"
    )
    nest = Nest()
    server = served(nest, url, folder)
    print(
        f"{'connections':>11}  {'messages/s':>10}  {'p50 ms':>7}  {'p99 ms':>7}  {'longest ms':>10}  statuses"
    )
    errors = 0
    for count in connections:
        seen = load(server.port, count, run=str(count), now=now, seconds=seconds)
        errors += sum(seen.statuses.values()) - seen.statuses[200]
        print(
            f"{count:>11}  {seen.per_second:>10.0f}  {seen.percentile_ms(50):>7.1f}"
            f"  {seen.percentile_ms(99):>7.1f}  {1000 * max(seen.taken_s):>10.1f}  {dict(seen.statuses)}",
            flush=True,
        )
    server.kill()
    nest.close()
    return errors


def served(nest: Nest, url: str, folder: Path, **settings: str) -> Server:
    """A server of that hospital, its limits by sender out of the way unless set."""
    environ = {
        "PENLINE_SECRETS": SECRET,
        "PENLINE_UNITS": ",".join(map(str, unit_files(folder))),
        "PENLINE_DATABASE_URL": url,
        "PENLINE_SENDER_PER_MINUTE": "1000000",
        "PENLINE_PER_SECOND": "1000000",
        **settings,
    }
    return nest.serve(environ, folder / "log")


if __name__ == "__main__":
    main()
