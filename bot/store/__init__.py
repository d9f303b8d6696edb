"""The durable ledger: append-only tables, one transaction a message, SQLite or PostgreSQL.

`open_store(url)` gives a `Store`; `store.transact(work)` runs `work(book)` in one transaction. Nothing
here knows what a reading means: that is the engine's.
"""

from bot.store.book import Book, MessageRow, Stored
from bot.store.errors import LedgerError, StoreAwayError
from bot.store.notices import Notice
from bot.store.questions import Choice, Outcome, Question
from bot.store.store import Store, open_store

__all__ = [
    "Book",
    "Choice",
    "LedgerError",
    "MessageRow",
    "Notice",
    "Outcome",
    "Question",
    "Store",
    "StoreAwayError",
    "Stored",
    "open_store",
]
