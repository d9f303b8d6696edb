"""Whose turn it is to write to a file, of the processes that do: in turn, however busy one of them is.

SQLite itself lets one in at a time, but leaves it to chance whom: who waits looks now and then, and hardly
ever in the instant between two transactions of a busy server. So each waits here first, at a file beside the
database. It only says who is next: where it cannot be had, nothing is less safe.
"""

from __future__ import annotations

import importlib
import os
import time
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path
from typing import Any

from bot.store.errors import StoreAwayError

_NEXT, _TURN = 0, 1
"""Who has the turn, and who is next: one that has just had it cannot be both at once."""

_LOOK_AGAIN_S = 0.001


class Gate:
    """The turn of this process among those that write to the database: waited for, and left.

    `database`: its file; None where there is none that others could write to.
    """

    def __init__(self, database: Path | None, wait_s: float) -> None:
        self._looks = round(wait_s / _LOOK_AGAIN_S)
        self._locks = _locks()
        self._file = None
        if database is not None and self._locks is not None:
            self._file = _opened(database.with_name(f"{database.name}-turn"))

    def __enter__(self) -> None:
        looks = iter(range(self._looks))
        self._take(_NEXT, looks)
        try:
            self._take(_TURN, looks)
        finally:
            self._leave(_NEXT)

    def __exit__(self, *_: object) -> None:
        self._leave(_TURN)

    def close(self) -> None:
        """Wait for no more turns."""
        if self._file is not None:
            os.close(self._file)
            self._file = None

    def _take(self, place: int, looks: Iterator[int]) -> None:
        """Have that place; StoreAwayError when others have it however often it is looked."""
        for _ in looks:
            if self._has(place):
                return
            time.sleep(_LOOK_AGAIN_S)
        raise StoreAwayError("busy")

    def _has(self, place: int) -> bool:
        """Whether it is ours now, or there is none to be had."""
        if self._file is None:
            return True
        try:
            self._locks.lockf(self._file, self._locks.LOCK_EX | self._locks.LOCK_NB, 1, place)
        except (BlockingIOError, PermissionError):
            return False
        except OSError:
            return True
        return True

    def _leave(self, place: int) -> None:
        if self._file is not None:
            with suppress(OSError):
                self._locks.lockf(self._file, self._locks.LOCK_UN, 1, place)


def _locks() -> Any:
    """The module of such locks; none where the system has none."""
    try:
        return importlib.import_module("fcntl")
    except ImportError:
        return None


def _opened(file: Path) -> int | None:
    """The file, which only its owner can read; none where it cannot be had."""
    try:
        return os.open(file, os.O_CREAT | os.O_RDWR, 0o600)
    except OSError:
        return None
