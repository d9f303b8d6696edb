"""Entries as they were last read: a drain's rows never change, so of a known ledger only new ones are read.

What is remembered is used only where the hash chain of the table says that it is the same, or its beginning:
the last row's hash is over all rows before it. So a turn that was undone, or another process that wrote, is
seen at once. A row altered behind the program's back is `verify`'s to find.
"""

from __future__ import annotations

from dataclasses import dataclass

from bot.engine.entries import Entry
from bot.engine.shelf import MOST_ENTRIES, Shelf
from bot.store.chain import START


@dataclass(frozen=True, slots=True)
class Read:
    """A drain's entries by position, and the hash of the last of them."""

    entries: tuple[Entry, ...] = ()
    chain: str = START

    @property
    def position(self) -> int:
        """The position of the last entry; 0 where there is none."""
        return self.entries[-1].position if self.entries else 0

    def grown(self, entries: tuple[Entry, ...], chain: str) -> Read:
        """The same with what comes after it."""
        return Read((*self.entries, *entries), chain)


class Remembered:
    """What was read of the drains of a database, by unit and drain."""

    def __init__(self, most: int = MOST_ENTRIES) -> None:
        self._shelf: Shelf[Read] = Shelf(most)

    def find(self, unit: str, drain: str) -> Read:
        """What was read last of the drain; nothing where it is not remembered."""
        return self._shelf.find((unit, drain)) or Read()

    def keep(self, unit: str, drain: str, read: Read) -> None:
        """Remember it, in the place of what was read longest ago."""
        self._shelf.keep((unit, drain), read, len(read.entries))
