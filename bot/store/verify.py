"""Whether a database is as the program left it: schema, triggers, replies, positions, chains, payloads.

Finds what was altered behind the program's back. It reads every row, a drain at a time.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from itertools import groupby
from typing import Any, TypeAlias

from sqlalchemy import Connection, Row, func, select

from bot.store.chain import START, link
from bot.store.errors import LedgerError
from bot.store.ledgers import entry_of
from bot.store.schema import HEAD, step
from bot.store.tables import drains, entries, messages, replies
from bot.store.triggers import unguarded

Ledger: TypeAlias = tuple[str, Iterator[Row[Any]]]
Follow: TypeAlias = Callable[[Iterable[Ledger]], Iterator[Ledger]]


@dataclass(frozen=True, slots=True)
class Flaw:
    """Something that is not as it was left: where (an entry's id, a trigger, the schema), and what."""

    where: str
    what: str


def flaws(connection: Connection, follow: Follow = iter) -> Iterator[Flaw]:
    """What is wrong, the schema first and then drain by drain in the order in which they were opened.

    `follow` is handed the ledgers one by one as they are looked at: for whoever shows how far it is.
    """
    if (found := step(connection)) != HEAD:
        yield Flaw("schema", f"is at {found}, not at {HEAD}")
        return
    for trigger in unguarded(connection):
        yield Flaw(trigger, "the trigger is missing")
    yield from (Flaw(name, "the message was taken and has no reply") for name in _unreplied(connection))
    yield from entry_flaws(connection, follow)


def _unreplied(connection: Connection) -> Iterable[str]:
    """Messages that are there without the reply that is written in the same transaction."""
    query = select(messages.c.id).outerjoin(replies, replies.c.message == messages.c.id)
    return connection.scalars(query.where(replies.c.message.is_(None)).order_by(messages.c.seq))


def drain_count(connection: Connection) -> int:
    """How many ledgers there are to look at."""
    return connection.scalar(select(func.count(func.distinct(entries.c.drain)))) or 0


def entry_flaws(connection: Connection, follow: Follow = iter) -> Iterator[Flaw]:
    """The first flaw of each drain's ledger: what comes after it hangs on the broken link."""
    query = select(entries).join(drains, drains.c.id == entries.c.drain)
    rows = connection.execution_options(yield_per=1000).execute(
        query.order_by(drains.c.seq, entries.c.position)
    )
    for _, ledger in follow(groupby(rows, key=lambda row: row.drain)):
        flaw = next(_ledger_flaws(ledger), None)
        if flaw is not None:
            yield flaw


def _ledger_flaws(rows: Iterator[Row[Any]]) -> Iterator[Flaw]:
    before = START
    for expected, row in enumerate(rows, start=1):
        name = f"{row.drain}-{row.position}"
        if row.position != expected:
            yield Flaw(f"{row.drain}-{expected}", "the entry is missing")
        try:
            if link(before, entry_of(row)) != row.chain:
                yield Flaw(name, "the entry, or the one before it, is not what was recorded")
        except (LedgerError, ValueError) as wrong:
            yield Flaw(name, f"the entry cannot be read: {wrong}")
        before = row.chain
