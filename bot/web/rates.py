"""How many messages are taken: from all, before the signature is looked at; from one sender, after it."""

from __future__ import annotations

import math
import threading
import time
from http import HTTPStatus

from limits import RateLimitItem, RateLimitItemPerMinute, RateLimitItemPerSecond
from limits.storage import MemoryStorage
from limits.strategies import FixedWindowRateLimiter

from bot.web.problems import Problem

_MANY = 1000
"""So many keys are counted before those whose time is over are first let go of."""


class Rates:
    """The counters of this process."""

    def __init__(self, sender_per_minute: int, per_second: int) -> None:
        self._limiter = FixedWindowRateLimiter(_Counters())
        self._one_at_a_time = threading.Lock()
        self._all = RateLimitItemPerSecond(per_second)
        self._sender = RateLimitItemPerMinute(sender_per_minute)

    def count(self) -> None:
        """Count a request of anyone. Problem 429 when there are too many."""
        self._hit(self._all, "all")

    def count_sender(self, sender: str) -> None:
        """Count a signed message of this sender. Problem 429 when there are too many."""
        self._hit(self._sender, sender)

    def _hit(self, limit: RateLimitItem, key: str) -> None:
        with self._one_at_a_time:  # the storage's own locks let one too many through, now and then
            if self._limiter.hit(limit, key):
                return
            window = self._limiter.get_window_stats(limit, key)
        wait = max(1, math.ceil(window.reset_time - time.time()))
        raise Problem(HTTPStatus.TOO_MANY_REQUESTS, "Too many messages.", retry_after_s=wait)


class _Counters(MemoryStorage):
    """The library's counters, with whose time is over let go of by whoever counts.

    Its own way, a thread started for it at nearly every message, takes longer than all else of a count.
    """

    def __init__(self) -> None:
        super().__init__()
        self._many = _MANY

    def incr(self, key: str, expiry: float, amount: int = 1) -> int:
        """How many of this key there are with these, in a window that begins with its first."""
        count = self.get(key) + amount
        self.storage[key] = count
        if count == amount:
            self.expirations[key] = time.time() + expiry
            self._let_go()
        return count

    def _let_go(self) -> None:
        """Forget those whose window is over; looked for again when there are twice as many as remain."""
        if len(self.storage) > self._many:
            for key in tuple(self.storage):
                self.get(key)  # which forgets it
            self._many = max(_MANY, 2 * len(self.storage))
