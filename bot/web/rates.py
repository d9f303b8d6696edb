"""How many messages are taken: from all, before the signature is looked at; from one sender, after it."""

from __future__ import annotations

import math
import threading
import time
from http import HTTPStatus

from bot.web.problems import Problem

_MANY = 1000
"""Keys that are counted before those whose time is over are first let go of."""


class Rates:
    """The counters of this process."""

    def __init__(self, sender_per_minute: int, per_second: int) -> None:
        self._all = _Window(per_second, 1)
        self._sender = _Window(sender_per_minute, 60)

    def count(self) -> None:
        """Count a request of anyone. Problem 429 when there are too many."""
        _taken(self._all.wait_s("all"))

    def count_sender(self, sender: str) -> None:
        """Count a signed message of this sender. Problem 429 when there are too many."""
        _taken(self._sender.wait_s(sender))


class _Window:
    """At most so many of a key within a window of so many seconds, which begins with the first of them."""

    def __init__(self, most: int, window_s: float) -> None:
        self._most = most
        self._window_s = window_s
        self._lock = threading.Lock()
        self._counted: dict[str, tuple[float, int]] = {}
        self._many = _MANY

    def wait_s(self, key: str) -> float:
        """Count one more; 0 when it is taken, else the seconds until one is taken again."""
        now = time.monotonic()
        with self._lock:
            begun, count = self._counted.get(key, (now, 0))
            if now - begun >= self._window_s:
                begun, count = now, 0
            if count >= self._most:
                return begun + self._window_s - now
            self._counted[key] = (begun, count + 1)
            if len(self._counted) > self._many:
                self._let_go(now)
        return 0

    def _let_go(self, now: float) -> None:
        """Forget those whose window is over; looked for again when there are twice as many as remain."""
        held = {key: known for key, known in self._counted.items() if now - known[0] < self._window_s}
        self._counted, self._many = held, max(_MANY, 2 * len(held))


def _taken(wait_s: float) -> None:
    if wait_s > 0:
        raise Problem(
            HTTPStatus.TOO_MANY_REQUESTS, "Too many messages.", retry_after_s=max(1, math.ceil(wait_s))
        )
