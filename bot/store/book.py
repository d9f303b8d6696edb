"""The ledger book of one transaction: what a turn of the conversation reads and writes.

Reads see its own writes. One book answers one message, in one unit; nothing of another unit shows in it.
"""

from __future__ import annotations

from bot.store.asking import Asking
from bot.store.claims import Claim, Claims, MessageRow, Stored
from bot.store.ledgers import Ledgers
from bot.store.outbox import Outbox
from bot.store.people import People, PeopleEvent

__all__ = ["Book", "Claim", "MessageRow", "PeopleEvent", "Stored"]


class Book(Claims, Ledgers, Asking, Outbox, People):
    """Messages, drains with their entries, questions, notices and people, in one transaction."""
