"""What a reply costs as a hospital, a drain and a day grow; what the server holds; how long a start takes.

Messages go through the intake of this process, on a file, with the clock told: an hour between the lines of a
bed. Each pair is measured in turns of the same process, and the ratio is of the medians.
"""

from __future__ import annotations

import os
import subprocess
import sys
import time
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from pathlib import Path
from statistics import median

import psutil

from bot.app import warm_up
from bot.intake import Deployment, Incoming, handle
from bot.intake.respond import deployment
from bot.store import open_store
from bot.unit import load_units
from tests.bench.client import drive, request
from tests.durability.nest import Nest
from tests.load.__main__ import served
from tests.load.ward import UNITS, Hospital, Post, fill, this_minute, unit_files
from tests.web.client import SECRET

HOURS = 7
"""Hourly lines told of each bed in a turn; the bed's past ends before them."""


@dataclass(slots=True)
class Ward:
    """A hospital in this process, and how long each of its replies took, in ms."""

    deployment: Deployment
    hospital: Hospital
    now: datetime
    taken_ms: list[float] = field(default_factory=list)
    told: int = 0

    def tell(self, count: int) -> None:
        """The next lines, bed after bed."""
        beds = UNITS * self.hospital.beds
        for number in range(self.told, self.told + count):
            place, hour = number % beds, number // beds
            at = self.now - timedelta(hours=HOURS - hour)
            text = f"bed {1 + place // UNITS} mark {1000 + 20 * hour} at {at:%H%M}"
            message = Incoming(
                id=f"g{number}", sender=f"rn-{place % UNITS}", text=text, arrived=at + timedelta(minutes=3)
            )
            begin = time.perf_counter()
            handle(message, self.deployment)
            self.taken_ms.append(1000 * (time.perf_counter() - begin))
        self.told += count


def ward(folder: Path, name: str, entries: int, hospital: Hospital) -> Ward:
    """A hospital with so many entries, on a file."""
    url, now = f"sqlite:///{folder}/{name}.sqlite", this_minute()
    fill(url, entries, now, hospital)
    units = load_units(unit_files(folder, hospital))
    warm_up(units[0])
    return Ward(deployment(units, open_store(url)), hospital, now)


def compared(small: Ward, large: Ward, turns: int = 20) -> tuple[float, float, float, float]:
    """The first reply of the large one, the median replies of both, and their ratio; in ms."""
    each = UNITS * small.hospital.beds // 4
    large.tell(1)
    first = large.taken_ms.pop()
    for one in (small, large):
        one.tell(UNITS * one.hospital.beds)
        one.taken_ms.clear()
    for _ in range(turns):
        for one in (small, large):
            one.tell(each)
    ratio = median(large.taken_ms) / median(small.taken_ms)
    return first, median(small.taken_ms), median(large.taken_ms), ratio


def of_the_hospital(folder: Path, small: int, large: int) -> None:
    """Print what a reply costs in a hospital with few entries and with many."""
    pair = (ward(folder, "few", small, Hospital(number=1)), ward(folder, "many", large, Hospital(number=2)))
    _, before, after, ratio = compared(*pair)
    print(
        f"a reply at {small:,} entries {before:.2f} ms, at {large:,} {after:.2f} ms: {ratio:.2f}", flush=True
    )


def of_a_drain(folder: Path, small: int, large: int) -> None:
    """Print what a reply costs on short drains and on long ones."""
    short, long = (
        ward(
            folder,
            f"drain{entries}",
            2 * entries * UNITS,
            Hospital(beds=2, open_entries=entries, number=entries),
        )
        for entries in (small, large)
    )
    first, before, after, ratio = compared(short, long)
    print(
        f"a drain with {small:,} entries {before:.2f} ms, with {large:,} {after:.2f} ms: {ratio:.2f}"
        f" (its first reply after a start {first:.0f} ms)",
        flush=True,
    )


def of_memory(folder: Path, messages: int, connections: int = 4) -> None:
    """Print what the server holds as it answers so many messages, in MB."""
    url, now = f"sqlite:///{folder}/memory.sqlite", this_minute()
    fill(url, 1000, now)
    nest = Nest()
    server = served(nest, url, folder)
    process, share = psutil.Process(server.pid), max(1, messages // 10)
    held, refused = [process.memory_info().rss / 2**20], 0
    for part in range(10):
        numbers = range(part * share, (part + 1) * share)
        posts = (Post("memory", number, now) for number in numbers)
        seen = drive((server.port,), (request(post.body, post.id) for post in posts), connections)
        assert set(seen.statuses) <= {200, 503}, seen.statuses  # 503: come again, on a machine that is busy
        refused += seen.statuses[503]
        held.append(process.memory_info().rss / 2**20)
    server.kill()
    nest.close()
    print(f"memory after each tenth of {messages:,} messages, MB: {' '.join(f'{mb:.0f}' for mb in held)}")
    print(f"{refused} of them were told to come again", flush=True)


def of_a_start(folder: Path, times: int = 5) -> None:
    """Print how long it takes from the start of `penline serve` to its first answer, in s."""
    url = f"sqlite:///{folder}/start.sqlite"
    fill(url, 1000, this_minute())
    environ = {
        **os.environ,
        "PENLINE_SECRETS": SECRET,
        "PENLINE_UNITS": ",".join(map(str, unit_files(folder))),
        "PENLINE_DATABASE_URL": url,
        "PENLINE_PORT": "0",
        "PYTHONDONTWRITEBYTECODE": "",  # its bytecode is at hand, as where pip installed it
    }
    taken = [_start_s(environ, number) for number in range(times)]
    print(f"from a start to the first answer: {median(taken):.2f} s (of {times} at best {min(taken):.2f} s)")


def _start_s(environ: dict[str, str], number: int) -> float:
    begin = time.perf_counter()
    process = subprocess.Popen(
        [sys.executable, "-m", "bot", "serve"], env=environ, stderr=subprocess.PIPE, text=True
    )
    assert process.stderr is not None
    try:
        port = next(
            int(line.rpartition(":")[2].strip('"}\n ')) for line in process.stderr if "serving" in line
        )
        post = Post(f"start{number}", 0, this_minute())
        drive((port,), [request(post.body, post.id)], 1)
        return time.perf_counter() - begin
    finally:
        process.kill()
        process.wait(timeout=10)
        process.stderr.close()
