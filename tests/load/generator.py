"""Connections that are kept open, each sending one signed message after the other; and how long each took."""

from __future__ import annotations

import threading
import time
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime
from http.client import HTTPConnection, HTTPException
from itertools import count
from statistics import quantiles

from tests.load.ward import Post
from tests.web.client import signed


@dataclass(slots=True)
class Seen:
    """What came back: how often each status (0: nothing), how long each took; what lacked Retry-After."""

    statuses: Counter[int] = field(default_factory=Counter)
    taken_s: list[float] = field(default_factory=list)
    bare: int = 0
    elapsed_s: float = 0.0

    @property
    def per_second(self) -> float:
        """Answers a second."""
        return len(self.taken_s) / self.elapsed_s

    def percentile_ms(self, percent: int) -> float:
        """So many of 100 were answered within that many milliseconds."""
        return 1000 * quantiles(self.taken_s, n=100, method="inclusive")[percent - 1]

    def add(self, status: int, taken_s: float, retry_after: str | None) -> None:
        """Count one answer."""
        self.statuses[status] += 1
        self.taken_s.append(taken_s)
        self.bare += status in (429, 503) and not (retry_after or "").isdigit()


def load(
    port: int, connections: int, *, run: str, now: datetime, seconds: float = 1e9, most: int = 10**9
) -> Seen:
    """What came back to that many connections, for so long or for so many messages."""
    numbers, until = count(), time.perf_counter() + seconds
    parts = [Seen() for _ in range(connections)]
    threads = [
        threading.Thread(target=_connection, args=(port, (run, now), numbers, (until, most), part))
        for part in parts
    ]
    begin = time.perf_counter()
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    return _together(parts, time.perf_counter() - begin)


def _connection(
    port: int, run: tuple[str, datetime], numbers: count[int], limits: tuple[float, int], seen: Seen
) -> None:
    connection = HTTPConnection("127.0.0.1", port, timeout=60)
    until, most = limits
    while time.perf_counter() < until and (number := next(numbers)) < most:
        post = Post(run[0], number, run[1])
        begin = time.perf_counter()
        try:
            headers = signed(post.body, post.id, at=datetime.now(UTC))
            connection.request("POST", "/messages", post.body, headers)
            response = connection.getresponse()
            response.read()
            seen.add(response.status, time.perf_counter() - begin, response.headers.get("Retry-After"))
        except (OSError, HTTPException):
            seen.add(0, time.perf_counter() - begin, None)
            connection.close()
    connection.close()


def _together(parts: Sequence[Seen], elapsed_s: float) -> Seen:
    whole = Seen(elapsed_s=elapsed_s)
    for part in parts:
        whole.statuses += part.statuses
        whole.taken_s += part.taken_s
        whole.bare += part.bare
    return whole
