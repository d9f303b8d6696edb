"""What the parts of a `Book` share: one connection in one transaction, the unit, and the message at hand."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any, TypeVar

from sqlalchemy import Connection

from bot.store.errors import LedgerError
from bot.store.remembered import Known, Remembered
from bot.store.seals import row_text
from bot.store.statements import Statement

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Hand:
    """The message that is being answered: its id, who sent it, when it arrived (UTC)."""

    message: str
    sender: str
    arrived: datetime


class Desk:
    """One transaction's view of one unit. Rows of other units are never seen through it.

    While a message is at hand nobody else writes to its unit (see `claims`), so what was read is not read
    again before this transaction writes to it itself. Without one everything is read anew.
    """

    def __init__(self, connection: Connection, unit: str = "", remembered: Remembered | None = None) -> None:
        self._connection = connection
        self._remembered = remembered
        self._hand: Hand | None = None
        self._made = 0
        self._held: dict[tuple[str, str], Any] = {}
        self._put_down: list[str] = []
        self._known = Known()
        """Of the unit when its last message was through; true for as long as this one has written nothing.

        Nothing before a message is at hand.
        """
        self.unit = unit
        self.when_claimed: Callable[[], None] | None = None
        """Waited for when the message is the only one of its unit, and before it is answered."""

    @property
    def hand(self) -> Hand:
        """The message at hand; nothing is written without one."""
        if self._hand is None:
            raise LedgerError("no message was claimed in this transaction")
        return self._hand

    def take_up(self, message: str, sender: str, arrived: datetime) -> None:
        """Write in the name of this message from here on."""
        self._hand = Hand(message, sender, arrived.astimezone(UTC))
        self._held.clear()

    def new_id(self, what: str) -> str:
        """A new id of 16 hex characters: the same message run again on the same ledger gives the same ids."""
        self._made += 1
        return hashlib.sha256(f"{what}/{self.hand.message}/{self._made}".encode()).hexdigest()[:16]

    def _put(self, table: str, statement: Statement, row: Mapping[str, object]) -> None:
        """Write a row in the name of the message at hand, under its seal."""
        statement.rows(self._connection, row)
        self._put_down.append(row_text(table, row))

    def _claimed(self, seal_before: str | None) -> None:
        """Take up what is known of the unit behind that seal."""
        self._known = self._remembered.known(self.unit, seal_before) if self._remembered else Known()

    def _sealed(self, seal: str) -> None:
        """Remember what is known of the unit when the message at hand has this seal."""
        if self._remembered is not None:
            self._remembered.keep_known(self.unit, seal, self._now_known(self._known))

    def _now_known(self, known: Known) -> Known:
        """What is known when this message is through; the parts of a book put their own to it."""
        return known

    def _once(self, table: str, key: str, read: Callable[[], T]) -> T:
        """What `read` finds in the table about this key; held while a message is at hand."""
        if self._hand is None:
            return read()
        if (table, key) not in self._held:
            self._held[table, key] = read()
        found: T = self._held[table, key]
        return found

    def _written(self, table: str, key: str) -> None:
        """Read that anew: this transaction has written to it."""
        self._held.pop((table, key), None)
