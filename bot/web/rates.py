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


class Rates:
    """The counters of this process."""

    def __init__(self, sender_per_minute: int, per_second: int) -> None:
        self._limiter = FixedWindowRateLimiter(MemoryStorage())
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
            taken = self._limiter.hit(limit, key)
        if taken:
            return
        window = self._limiter.get_window_stats(limit, key)
        wait = max(1, math.ceil(window.reset_time - time.time()))
        raise Problem(HTTPStatus.TOO_MANY_REQUESTS, "Too many messages.", retry_after_s=wait)
