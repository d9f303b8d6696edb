"""What can go wrong in the store, in two words: the database is away, or the program asked for nonsense."""

from __future__ import annotations


class StoreAwayError(Exception):
    """The database cannot be used now (gone, locked, full, read-only): nothing was committed, try again."""


class LedgerError(Exception):
    """A row that the ledger refuses: another unit's drain, an entry that does not exist, a broken payload."""
