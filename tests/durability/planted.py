"""Four bugs that the trial must find: each breaks, in the process at hand, one promise of the store."""

from __future__ import annotations

import time
from collections.abc import Callable, Mapping
from queue import SimpleQueue
from threading import Thread
from typing import Any, TypeVar

from sqlalchemy import Connection, Engine, event

import bot.store.store
import bot.store.together
from bot.store import Book, Store
from bot.store.claims import Claim, Claims
from bot.store.connect import connect

T = TypeVar("T")


def answer_before_commit() -> None:
    """The sender hears of it while it is not yet certain."""

    def transact(store: Store, work: Callable[[Book], T], unit: str = "") -> T:
        answered: SimpleQueue[T] = SimpleQueue()

        def late() -> None:
            with store.turn(unit) as book:
                answered.put(work(book))
                time.sleep(0.03)

        Thread(target=late, daemon=True).start()
        return answered.get(timeout=10)

    _replace(Store, "transact", transact)


def no_dedupe() -> None:
    """A message that is sent again is taken again."""
    claim, keep = Claims.claim, Claims.keep_reply
    again: set[str] = set()

    def always(claims: Claims, what: Claim) -> None:
        if claim(claims, what) is not None:
            again.add(what.id)
            claims.unit = what.unit
            claims.take_up(what.id, what.sender, what.arrived)

    def once(claims: Claims, message: str, reply: str) -> None:
        if message not in again:
            keep(claims, message, reply)

    _replace(Claims, "claim", always)
    _replace(Claims, "keep_reply", once)


def no_transaction() -> None:
    """Each statement is certain by itself, so that half a message can be."""

    def at_once(engine: Engine) -> Engine:
        if engine.dialect.name == "postgresql":
            return engine.execution_options(isolation_level="AUTOCOMMIT")
        event.listen(engine, "begin", lambda connection: connection.exec_driver_sql("COMMIT"))
        return engine

    def bare(connection: Connection, job: Any) -> None:
        try:  # without the savepoint, which is a transaction where there is none
            job.run(connection)
        except Exception as error:  # noqa: BLE001 - raised where it was asked
            job.error = error

    _connecting(at_once)
    _replace(bot.store.together, "_by_itself", bare)


def synchronous_off() -> None:
    """What is committed is certain only once the kernel, or the database, gets round to it."""

    def hurried(connection: Any, _record: object) -> None:
        if hasattr(connection, "pgconn"):
            connection.execute("SET SESSION synchronous_commit = off")
            connection.commit()
        else:
            connection.execute("PRAGMA synchronous = OFF")

    def listening(engine: Engine) -> Engine:
        event.listen(engine, "connect", hurried)
        return engine

    _connecting(listening)


def _connecting(change: Callable[[Engine], Engine]) -> None:
    """Change every engine that a store is opened on."""
    _replace(bot.store.store, "connect", lambda url, **given: change(connect(url, **given)))


def _replace(owner: object, name: str, by: object) -> None:
    setattr(owner, name, by)


BUGS: Mapping[str, Callable[[], None]] = {
    bug.__name__: bug for bug in (answer_before_commit, no_dedupe, no_transaction, synchronous_off)
}
