"""Entries as they were last read: a drain's rows never change, so of a known ledger only new ones are read.

What is remembered is used only where the hash chain of the table says that it is the same, or its beginning:
the last row's hash is over all rows before it. So a turn that was undone, or another process that wrote, is
seen at once. A row altered behind the program's back is `verify`'s to find. Of a unit the same
is said by the seal of its last message, which is over all that it wrote and the seals before it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from types import MappingProxyType
from typing import NamedTuple, cast

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


class Past(NamedTuple):
    """A drain as it stands: its last entry, when that was entered (as it is stored: a bed has many drains,
    and those texts sort as their moments do), and whether it is closed."""

    drain: str
    position: int | None
    chain: str | None
    newest: str | None
    closed: bool


class Known(NamedTuple):
    """What is known of a unit: who has written to it; what waits in it; of beds, the drains ever seen there,
    the latest first; and how those stand."""

    senders: frozenset[str] = frozenset()
    waiting: Waiting | None = None
    beds: Mapping[str, tuple[str, ...]] = MappingProxyType({})
    drains: Mapping[str, Past] = MappingProxyType({})

    def drains_of(self, bed: str) -> tuple[Past, ...] | None:
        """The drains of the bed; none where they are not known."""
        found = tuple(map(self.drains.get, self.beds.get(bed, ())))
        return cast(tuple[Past, ...], found) if found and None not in found else None


class Remembered:
    """What was read of the drains of a database, by unit and drain, and what is known of each unit."""

    def __init__(self, most: int = MOST_ENTRIES) -> None:
        self._shelf: Shelf[Read] = Shelf(most)
        self._units: dict[str, tuple[str, Known]] = {}

    def find(self, unit: str, drain: str) -> Read:
        """What was read last of the drain; nothing where it is not remembered."""
        return self._shelf.find((unit, drain)) or Read()

    def keep(self, unit: str, drain: str, read: Read) -> None:
        """Remember it, in the place of what was read longest ago."""
        self._shelf.keep((unit, drain), read, len(read.entries))

    def known(self, unit: str, seal: str | None) -> Known:
        """What is known of the unit after the message of that seal; nothing where another was the last."""
        last, known = self._units.get(unit, (None, Known()))
        return known if last is not None and last == seal else Known()

    def keep_known(self, unit: str, seal: str, known: Known) -> None:
        """Remember what is known of the unit after the message of that seal."""
        self._units[unit] = (seal, known)
