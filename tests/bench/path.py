"""A message through the whole path, against the floor and a constant answer, in turn and several times.

The sides are driven one after the other within each round, and a ratio is of one round: on a machine that is
shared, the figures move together. What is printed is the median of the rounds.
"""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager, suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from statistics import median

import psutil

from tests.bench.client import Run, drive, request
from tests.bench.floor import KINDS
from tests.bench.probe import sync_ms
from tests.durability.nest import Nest
from tests.load.__main__ import served
from tests.load.ward import Post, fill, this_minute

SIDES = (*KINDS, "penline")
THREADS = 16
_WARM = 200
"""Messages sent before anything is measured: one to each bed."""


@dataclass(frozen=True, slots=True)
class Side:
    """One server or several: where they listen, and their processes."""

    ports: tuple[int, ...]
    processes: tuple[psutil.Process, ...]

    def cpu_s(self) -> float:
        """How long they have reckoned so far: hardly longer when others share the machine."""
        times = [process.cpu_times() for process in self.processes]
        return sum(each.user + each.system for each in times)


@dataclass(frozen=True, slots=True, kw_only=True)
class Size:
    """How much is measured."""

    entries: int = 1000
    messages: int = 400
    rounds: int = 5
    connections: tuple[int, ...] = (1, 16)
    servers: int = 1
    """Of each side, on one database."""


def compare(folder: Path, urls: dict[str, str], size: Size) -> None:
    """Print what each side does on these databases, and the ratios."""
    now = this_minute()
    fill(urls["penline"], size.entries, now)
    with _sides(folder, urls, size.servers) as sides:
        for side in sides.values():
            drive(side.ports, _requests(range(_WARM), now), 4)
        first = _WARM
        for connections in size.connections:
            probes, runs = [], {side: list[Run]() for side in SIDES}
            for _ in range(size.rounds):
                probes.append(sync_ms(folder))
                for name, side in sides.items():
                    numbers = range(first, first + size.messages)
                    runs[name].append(_driven(side, _requests(numbers, now), connections))
                first += size.messages
            _print(connections, median(probes), runs)


def _requests(numbers: range, now: datetime) -> list[bytes]:
    posts = (Post("bench", number, now) for number in numbers)
    return [request(post.body, post.id) for post in posts]


def _driven(side: Side, requests: list[bytes], connections: int) -> Run:
    before = side.cpu_s()
    run = drive(side.ports, requests, connections)
    run.cpu_s = side.cpu_s() - before
    return run


@contextmanager
def _sides(folder: Path, urls: dict[str, str], servers: int) -> Iterator[dict[str, Side]]:
    """The three sides, so many servers each."""
    nest = Nest()
    with ExitStack() as stack:
        stack.callback(nest.close)
        sides = {}
        for kind in KINDS:
            ports, processes = zip(
                *(stack.enter_context(_floor(kind, urls[kind], servers)) for _ in range(servers)), strict=True
            )
            sides[kind] = Side(ports, processes)
        ours = [served(nest, urls["penline"], folder, PENLINE_THREADS=str(THREADS)) for _ in range(servers)]
        sides["penline"] = Side(
            tuple(server.port for server in ours), tuple(psutil.Process(server.pid) for server in ours)
        )
        yield sides
        for server in ours:
            server.kill()


@contextmanager
def _floor(kind: str, url: str, servers: int) -> Iterator[tuple[int, psutil.Process]]:
    """A server of that kind, one of so many on its database: its port and process."""
    command = [sys.executable, "-m", "tests.bench.floor", kind, url, str(THREADS), str(servers)]
    process = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
    assert process.stdout is not None
    try:
        yield int(process.stdout.readline()), psutil.Process(process.pid)
    finally:
        process.kill()
        with suppress(subprocess.TimeoutExpired):
            process.wait(timeout=10)
        process.stdout.close()


def _print(connections: int, probe_ms: float, runs: dict[str, list[Run]]) -> None:
    print(f"{connections} connections; a sync takes {probe_ms:.2f} ms")
    print(
        f"{'':>10}  {'messages/s':>9}  {'p50 ms':>7}  {'p99 ms':>7}  {'CPU ms':>7}  {'of floor':>8}  constant"
    )
    for side in SIDES:
        mine = runs[side]
        shares = [
            median(one.per_second / other.per_second for one, other in zip(mine, runs[against], strict=True))
            for against in ("floor", "constant")
        ]
        statuses = sum((one.statuses for one in mine), start=type(mine[0].statuses)())
        print(
            f"{side:>10}  {median(one.per_second for one in mine):>10.0f}"
            f"  {median(one.percentile_ms(50) for one in mine):>7.1f}"
            f"  {median(one.percentile_ms(99) for one in mine):>7.1f}"
            f"  {median(1000 * one.cpu_s / len(one.taken_s) for one in mine):>7.2f}"
            f"  {shares[0]:>8.2f}  {shares[1]:>8.2f}  {dict(statuses)}",
            flush=True,
        )
