"""What is kept at hand of many ledgers, up to a number of entries in all: those asked about last."""

from __future__ import annotations

import threading
from collections import OrderedDict
from collections.abc import Hashable
from typing import Generic, TypeVar

V = TypeVar("V")

MOST_ENTRIES = 60_000
"""Of all ledgers at hand: those of 600 drains of a hundred lines, in about 60 MB."""


class Shelf(Generic[V]):
    """Values by key, each with the number of entries that it holds; safe to share between threads."""

    def __init__(self, most: int = MOST_ENTRIES) -> None:
        self._most = most
        self._held = 0
        self._lock = threading.Lock()
        self._values: OrderedDict[Hashable, tuple[V, int]] = OrderedDict()

    def find(self, key: Hashable) -> V | None:
        """What is kept under the key; none where nothing is, or no longer."""
        with self._lock:
            found = self._values.get(key)
            return None if found is None else found[0]

    def keep(self, key: Hashable, value: V, entries: int) -> None:
        """Keep this, and let go of what was kept longest ago where it is too much; never of this itself."""
        with self._lock:
            self._drop(key)
            self._values[key] = (value, entries)
            self._held += entries
            while self._held > self._most and len(self._values) > 1:
                self._drop(next(iter(self._values)))

    def _drop(self, key: Hashable) -> None:
        _, entries = self._values.pop(key, (None, 0))
        self._held -= entries
