"""What the drains hold: entries, appended and never changed.

Which drains there are, and at which beds, is found in `berths`.
"""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import bindparam, select

from bot.engine.entries import Entry, Payload
from bot.store.berths import Berths
from bot.store.chain import START, link
from bot.store.codec import decode, encode
from bot.store.remembered import Read
from bot.store.rows import entry_of, entry_row
from bot.store.statements import ONE, Statement, into
from bot.store.tables import drains, entries

_VISIBLE = (
    select(entries).join(drains, drains.c.id == entries.c.drain).where(drains.c.unit == bindparam("of_unit"))
)
_in_order = _VISIBLE.where(entries.c.drain == bindparam("of_drain")).order_by(entries.c.position)
_OF_A_DRAIN = Statement(_in_order)
_BEHIND = Statement(_in_order.where(entries.c.position > bindparam("behind")))
_OF_A_MESSAGE = Statement(
    _VISIBLE.where(entries.c.message == bindparam("of_message")).order_by(drains.c.seq, entries.c.position)
)
_ONE = Statement(
    _VISIBLE.where(entries.c.drain == bindparam("of_drain"), entries.c.position == bindparam("at_position"))
)
_LAST = Statement(
    select(entries.c.position, entries.c.chain)
    .where(entries.c.drain == bindparam("of_drain"))
    .order_by(entries.c.position.desc())
    .limit(ONE)
)
_APPEND = into(entries)


class Ledgers(Berths):
    """The part of a `Book` that is about what the drains hold."""

    def append(self, drain: str, at: datetime, payload: Payload) -> Entry:
        """The entry as recorded: next position of its drain, entered when the message at hand arrived.

        LedgerError: it could not be read again, and would keep everyone from its drain.
        """
        self._own(drain)
        told = encode(payload)
        decode(payload.kind, told)
        position, before = self._last(drain)
        entry = Entry(
            drain=drain,
            position=position + 1,
            at=at,
            entered=self.hand.arrived,
            who=self.hand.sender,
            message=self.hand.message,
            payload=payload,
        )
        row = entry_row(entry, before, told)
        self._put(entries.name, _APPEND, row)
        self._grown(entry, str(row["chain"]))
        return entry

    def entries(self, drain: str) -> tuple[Entry, ...]:
        """The drain's entries in the order of recording; none for a drain that is not of this unit."""
        return self._once(entries.name, drain, lambda: self._entries(drain)).entries

    def entry(self, entry_id: str) -> Entry | None:
        """The entry of that id, if it is of this unit."""
        drain, _, position = entry_id.rpartition("-")
        if not (position.isascii() and position.isdigit()):
            return None
        if (held := self._read(drain)) is not None:
            return next((each for each in reversed(held.entries) if each.id == entry_id), None)
        named = {"of_unit": self.unit, "of_drain": drain, "at_position": int(position)}
        row = _ONE.one(self._connection, named)
        return None if row is None else entry_of(row)

    def entries_of_message(self, message: str) -> tuple[Entry, ...]:
        """What a message recorded, by drain and position."""
        named = {"of_unit": self.unit, "of_message": message}
        return tuple(map(entry_of, _OF_A_MESSAGE.rows(self._connection, named)))

    def _entries(self, drain: str) -> Read:
        """What stands in the table: what is remembered of it, where the hashes say that it still is so."""
        known = self._remembered.find(self.unit, drain) if self._remembered else Read()
        read = self._gone_on(drain, known) if known.entries else None
        if read is None:
            rows = _OF_A_DRAIN.rows(self._connection, {"of_unit": self.unit, "of_drain": drain})
            read = Read(tuple(map(entry_of, rows)), rows[-1].chain) if rows else Read()
        self._remember(drain, read)
        return read

    def _gone_on(self, drain: str, known: Read) -> Read | None:
        """What is known with what was written after it; none where the table does not go on from there."""
        position, chain = self._last_row(drain)
        if (position, chain) == (known.position, known.chain):
            return known
        if position <= known.position:
            return None
        named = {"of_unit": self.unit, "of_drain": drain, "behind": known.position}
        rows = _BEHIND.rows(self._connection, named)
        new, before = tuple(map(entry_of, rows)), known.chain
        for entry, row in zip(new, rows, strict=True):
            before = link(before, entry)
            if before != row.chain:
                return None
        return known.grown(new, before)

    def _remember(self, drain: str, read: Read) -> None:
        if self._remembered and read.entries:
            self._remembered.keep(self.unit, drain, read)

    def _read(self, drain: str) -> Read | None:
        """What was read of the drain; none where nothing was, or where it has no entries here."""
        held: Read | None = self._held.get((entries.name, drain))
        return held if held is not None and held.entries else None

    def _grown(self, entry: Entry, chain: str) -> None:
        """Hold with what was read what is written after it."""
        held = self._read(entry.drain)
        self._told(entry, chain)
        if held is None:
            self._written(entries.name, entry.drain)
        else:
            read = self._held[entries.name, entry.drain] = held.grown((entry,), chain)
            self._remember(entry.drain, read)

    def _own(self, drain: str) -> None:
        if self._read(drain) is None:
            super()._own(drain)

    def _last(self, drain: str) -> tuple[int, str]:
        """The position and the hash of its last entry."""
        held = self._read(drain)
        return self._last_row(drain) if held is None else (held.position, held.chain)

    def _last_row(self, drain: str) -> tuple[int, str]:
        last: Any = self._stood(drain) or _LAST.one(self._connection, {"of_drain": drain})
        return (0, START) if last is None or last.position is None else (last.position, last.chain)
