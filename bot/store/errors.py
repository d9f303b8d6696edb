"""What can go wrong in the store, in two words: the database is away, or the program asked for nonsense."""

from __future__ import annotations

from sqlalchemy.exc import DatabaseError

NO_DATABASE = "the file is damaged, or is no database"


class StoreAwayError(Exception):
    """The database cannot be used now (gone, locked, full, read-only): nothing was committed, try again."""


class LedgerError(Exception):
    """A row that the ledger refuses: another unit's drain, an entry that does not exist, a broken payload."""


def is_no_database(error: Exception) -> bool:
    """Whether SQLite says that the file is none, or a damaged one: it has no better name for either."""
    return type(error) is DatabaseError
