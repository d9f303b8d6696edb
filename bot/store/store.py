"""The store: one transaction a message, and a book in it.

On SQLite a lock lets one transaction in at a time, and the messages that wait share the next (`together`).
On PostgreSQL the messages of one unit wait for each other (see `claims`), and the loser of a race for a
position in a ledger runs again on what the winner left; of those that have waited, this process answers one
at a time, as threads that reckon at once only take turns, and the next while that one's commit is under way.
"""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager, nullcontext
from typing import TypeVar

from sqlalchemy import Connection, Engine
from sqlalchemy.exc import DBAPIError, IntegrityError, InterfaceError, OperationalError
from sqlalchemy.exc import TimeoutError as PoolTimeout

from bot.store.book import Book
from bot.store.connect import connect, in_memory, written_file
from bot.store.errors import NO_DATABASE, StoreAwayError, is_no_database
from bot.store.gate import Gate
from bot.store.patience import ANSWER_S, Patience
from bot.store.remembered import Remembered
from bot.store.tables import metadata
from bot.store.together import Together
from bot.store.triggers import append_only_tables, guard

T = TypeVar("T")

RUNS = 3
"""How often a transaction is run before the message is given back as unanswered."""

LOCK_WAIT_S = ANSWER_S
"""How long a message waits for the one connection: after that the sender is told to come again."""

_AGAIN = ("40001", "40P01")
_AWAY = ("25006", "25P03")
"""It is read-only, or has ended a transaction in which it heard nothing: no `OperationalError` to psycopg."""


class Store:
    """A database of ledgers."""

    def __init__(self, engine: Engine, patience: Patience | None = None) -> None:
        self.engine = engine
        self._patience = patience
        self._remembered = Remembered()
        self._kept: Connection | None = None
        self._many_writers = engine.dialect.name == "postgresql"
        one_by_one = _Turnstile(LOCK_WAIT_S)
        self._lock = nullcontext() if self._many_writers else one_by_one
        self._once_claimed = one_by_one if self._many_writers else nullcontext()
        self._gate = Gate(written_file(engine), LOCK_WAIT_S)
        self.together = Together(self._alone, LOCK_WAIT_S)

    @contextmanager
    def turn(self, unit: str = "") -> Iterator[Book]:
        """One transaction on the unit's book: committed when it is left normally, else undone."""
        with self.connection() as connection, self._book(connection, unit) as book:
            yield book

    def transact(self, work: Callable[[Book], T], unit: str = "") -> T:
        """What `work` returns, once it is committed. StoreAwayError when the database could not."""
        if not self._many_writers:
            with self._asking():
                return self.together.answer(lambda connection: self._answer(connection, work, unit))
        for _ in range(RUNS - 1):
            try:
                return self._once(work, unit)
            except DBAPIError as lost:
                if not _lost_a_race(lost):
                    raise
        return self._once(work, unit)

    @contextmanager
    def connection(self) -> Iterator[Connection]:
        """A connection in a transaction, for those who read or copy tables as a whole."""
        with self._asking(), self._alone() as connection:
            yield connection

    @contextmanager
    def _asking(self) -> Iterator[None]:
        """Around whatever asks the database: the errors that say that it is away come under one name."""
        with self._patience.asking() if self._patience else nullcontext():
            try:
                yield
            except (OperationalError, InterfaceError, PoolTimeout) as away:
                if _lost_a_race(away):
                    raise
                raise StoreAwayError(type(away).__name__) from away
            except DBAPIError as error:
                if _state(error) in _AWAY:
                    raise StoreAwayError(type(error).__name__) from error
                if is_no_database(error):
                    raise StoreAwayError(NO_DATABASE) from error
                raise

    @contextmanager
    def _alone(self) -> Iterator[Connection]:
        """A transaction that nobody else is in: on SQLite the only one there is."""
        with self._lock, self._gate, self._transaction() as connection:
            yield connection

    @contextmanager
    def _transaction(self) -> Iterator[Connection]:
        """A transaction; where there is one connection it is kept, unless something went wrong on it."""
        if self._many_writers:
            with self.engine.begin() as connection:
                yield connection
            return
        connection, self._kept = self._kept or self.engine.connect(), None
        try:
            with connection.begin():
                yield connection
        except BaseException:
            connection.close()
            raise
        self._kept = connection

    def close(self) -> None:
        """Let go of the database."""
        if self._kept is not None:
            self._kept.close()
        self._gate.close()
        self.engine.dispose()

    def _once(self, work: Callable[[Book], T], unit: str) -> T:
        with self.connection() as connection:
            return self._answer(connection, work, unit)

    def _answer(self, connection: Connection, work: Callable[[Book], T], unit: str) -> T:
        with self._book(connection, unit) as book:
            return work(book)

    @contextmanager
    def _book(self, connection: Connection, unit: str) -> Iterator[Book]:
        """The unit's book in this transaction: sealed when it is left normally."""
        with ExitStack() as when_reckoned:
            book = Book(connection, unit, self._remembered)
            book.when_claimed = lambda: when_reckoned.enter_context(self._once_claimed)
            yield book
            book.seal()


class _Turnstile:
    """A lock that is waited for only so long."""

    def __init__(self, wait_s: float) -> None:
        self._lock = threading.Lock()
        self._wait_s = wait_s

    def __enter__(self) -> None:
        if not self._lock.acquire(timeout=self._wait_s):
            raise StoreAwayError("busy")

    def __exit__(self, *_: object) -> None:
        self._lock.release()


def open_store(url: str = "sqlite://", patience: Patience | None = None) -> Store:
    """The store at this URL with its schema at head; in memory unless told.

    With `patience` a message waits only so long for the database; a step of the schema as long as it takes.
    """
    engine = connect(url)
    if in_memory(url):
        with engine.begin() as connection:
            metadata.create_all(connection)
            guard(connection, append_only_tables())
        return Store(engine, patience)
    from bot.store.schema import bring_to_head

    try:
        bring_to_head(engine)
    except BaseException:
        engine.dispose()
        raise
    if patience is None or engine.dialect.name == "sqlite":
        return Store(engine, patience)
    engine.dispose()
    return Store(connect(url, answer_s=patience.answer_s), patience)


def _lost_a_race(error: Exception) -> bool:
    return isinstance(error, IntegrityError) or _state(error) in _AGAIN


def _state(error: Exception) -> str | None:
    return getattr(getattr(error, "orig", None), "sqlstate", None)
