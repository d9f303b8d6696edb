"""How long the database is waited for, and what is told after it was waited for in vain.

A database that is gone says so at once. One that hangs (a network that drops everything, a disk that
stalls, a lock that nobody lets go) says nothing: each message would wait, and those behind it for theirs.
So after a long wait every message is told at once that the ledger is away, and one asks now and then.
"""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field

from bot.store.errors import StoreAwayError

ANSWER_S = 5.0
"""How long the database may be silent, or a message may wait for a lock in it or for a connection to it."""

LONG_S = 1.0
"""What failed sooner holds nobody up, and is simply tried again."""

ASK_AGAIN_S = 2.0
"""How long everyone is told at once, before one asks again."""


@dataclass(slots=True)
class Patience:
    """What a server has with its database. `clock`: seconds that only go forward."""

    clock: Callable[[], float]
    answer_s: float = ANSWER_S
    _until: float | None = None
    """Everyone is told until then; None: the database was there when it was last asked."""
    _lock: threading.Lock = field(default_factory=threading.Lock)

    @contextmanager
    def asking(self) -> Iterator[None]:
        """Around whatever asks the database. StoreAwayError at once, where others just waited in vain."""
        began = self._begin()
        try:
            yield
        except StoreAwayError:
            ended = self.clock()
            if ended - began >= LONG_S:
                self._until = ended + ASK_AGAIN_S
            raise
        self._until = None

    def _begin(self) -> float:
        """When this one begins to ask; those who come while it does are told at once."""
        now = self.clock()
        if self._until is None:
            return now
        with self._lock:
            if self._until is not None:
                if now < self._until:
                    raise StoreAwayError("away")
                self._until = now + ASK_AGAIN_S
        return now
