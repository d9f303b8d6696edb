"""A client that costs little: signed requests made beforehand, sent over open connections from one thread.

A client that takes as long as the server would hide how fast the server is.
"""

from __future__ import annotations

import selectors
import socket
import time
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime
from itertools import cycle, islice
from statistics import quantiles

from tests.web.client import signed


@dataclass(slots=True)
class Run:
    """What came back: how often each status, how long each answer took, how long all did."""

    statuses: Counter[int] = field(default_factory=Counter)
    taken_s: list[float] = field(default_factory=list)
    elapsed_s: float = 0.0
    cpu_s: float = 0.0
    """How long the server reckoned for all of them, where somebody looked."""

    @property
    def per_second(self) -> float:
        """Answers a second."""
        return len(self.taken_s) / self.elapsed_s

    def percentile_ms(self, percent: int) -> float:
        """So many of 100 were answered within that many milliseconds."""
        return 1000 * quantiles(self.taken_s, n=100, method="inclusive")[percent - 1]


@dataclass(slots=True)
class _Line:
    """One connection, with the answer that is on its way."""

    socket: socket.socket
    begun: float = 0.0
    heard: bytes = b""

    def whole(self) -> bool:
        """Whether the whole answer has come."""
        head, found, rest = self.heard.partition(b"\r\n\r\n")
        if not found:
            return False
        length = head.lower().partition(b"content-length:")[2].split(b"\r\n", 1)[0]
        return len(rest) >= int(length or b"0")


def request(body: bytes, message_id: str) -> bytes:
    """A signed POST as it goes over the wire."""
    headers = {**signed(body, message_id, at=datetime.now(UTC)), "content-length": str(len(body))}
    lines = (
        "POST /messages HTTP/1.1",
        "host: 127.0.0.1",
        *(f"{name}: {told}" for name, told in headers.items()),
    )
    return "\r\n".join(lines).encode() + b"\r\n\r\n" + body


def drive(ports: Sequence[int], requests: Iterable[bytes], connections: int) -> Run:
    """Send all of them, as many at a time as there are connections; each waits for its answer.

    `ports`: where they are sent, to each from its share of the connections.
    """
    run, left = Run(), iter(requests)
    with selectors.DefaultSelector() as selector:
        for port in islice(cycle(ports), connections):
            line = _Line(socket.create_connection(("127.0.0.1", port), timeout=60))
            line.socket.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
            selector.register(line.socket, selectors.EVENT_READ, line)
        begin = time.perf_counter()
        for key in list(selector.get_map().values()):
            _next(selector, key.data, left)
        while selector.get_map():
            for key, _ in selector.select(timeout=60):
                _hear(selector, key.data, left, run)
        run.elapsed_s = time.perf_counter() - begin
    return run


def _next(selector: selectors.BaseSelector, line: _Line, left: Iterator[bytes]) -> None:
    """Send the next request, or hang up."""
    told = next(left, None)
    if told is None:
        selector.unregister(line.socket)
        line.socket.close()
        return
    line.begun, line.heard = time.perf_counter(), b""
    line.socket.sendall(told)


def _hear(selector: selectors.BaseSelector, line: _Line, left: Iterator[bytes], run: Run) -> None:
    heard = line.socket.recv(65536)
    if not heard:
        raise ConnectionError("the server hung up")
    line.heard += heard
    if line.whole():
        run.taken_s.append(time.perf_counter() - line.begun)
        run.statuses[int(line.heard.split(b" ", 2)[1])] += 1
        _next(selector, line, left)
