"""What the parts of a `Book` share: one connection in one transaction, the unit, and the message at hand."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from datetime import UTC, datetime

from sqlalchemy import Connection

from bot.store.errors import LedgerError


@dataclass(frozen=True, slots=True)
class Hand:
    """The message that is being answered: its id, who sent it, when it arrived (UTC)."""

    message: str
    sender: str
    arrived: datetime


class Desk:
    """One transaction's view of one unit. Rows of other units are never seen through it."""

    def __init__(self, connection: Connection, unit: str = "") -> None:
        self._connection = connection
        self._hand: Hand | None = None
        self._made = 0
        self.unit = unit

    @property
    def hand(self) -> Hand:
        """The message at hand; nothing is written without one."""
        if self._hand is None:
            raise LedgerError("no message was claimed in this transaction")
        return self._hand

    def take_up(self, message: str, sender: str, arrived: datetime) -> None:
        """Write in the name of this message from here on."""
        self._hand = Hand(message, sender, arrived.astimezone(UTC))

    def new_id(self, what: str) -> str:
        """A new id of 16 hex characters: the same message run again on the same ledger gives the same ids."""
        self._made += 1
        return hashlib.sha256(f"{what}/{self.hand.message}/{self._made}".encode()).hexdigest()[:16]
