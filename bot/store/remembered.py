"""Entries as they were last read: a drain's rows never change, so of a known ledger only new ones are read.

What is remembered is used only where the hash chain of the table says that it is the same, or its beginning:
the last row's hash is over all rows before it. So a turn that was undone, or another process that wrote, is
seen at once. A row altered behind the program's back is `verify`'s to find. Of a unit's questions the same
is said by the seal of its last message, which is over all that it wrote and the seals before it.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from bot.engine.entries import Entry
from bot.engine.shelf import MOST_ENTRIES, Shelf
from bot.store.chain import START
from bot.store.questions import Question


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


@dataclass(frozen=True, slots=True)
class Waiting:
    """What waits in a unit: of the questions asked since that moment those that nothing has settled."""

    since: datetime
    questions: tuple[Question, ...]


class Remembered:
    """What was read of the drains of a database, by unit and drain, and what waits in each unit."""

    def __init__(self, most: int = MOST_ENTRIES) -> None:
        self._shelf: Shelf[Read] = Shelf(most)
        self._waiting: dict[str, tuple[str, Waiting]] = {}

    def find(self, unit: str, drain: str) -> Read:
        """What was read last of the drain; nothing where it is not remembered."""
        return self._shelf.find((unit, drain)) or Read()

    def keep(self, unit: str, drain: str, read: Read) -> None:
        """Remember it, in the place of what was read longest ago."""
        self._shelf.keep((unit, drain), read, len(read.entries))

    def waiting(self, unit: str, seal: str | None) -> Waiting | None:
        """What waited in the unit after the message of that seal; none where that is not remembered."""
        known = self._waiting.get(unit)
        return known[1] if known is not None and known[0] == seal else None

    def keep_waiting(self, unit: str, seal: str, waiting: Waiting) -> None:
        """Remember what waits in the unit after the message of that seal."""
        self._waiting[unit] = (seal, waiting)
