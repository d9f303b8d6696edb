"""Whether a database is as the program left it: schema, triggers, positions, chains, payloads.

Finds what was altered behind the program's back. It reads every row, a drain at a time.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import groupby
from typing import Any

from sqlalchemy import Connection, Row, select

from bot.store.chain import START, link
from bot.store.errors import LedgerError
from bot.store.ledgers import entry_of
from bot.store.schema import HEAD, step
from bot.store.tables import drains, entries
from bot.store.triggers import unguarded


@dataclass(frozen=True, slots=True)
class Flaw:
    """Something that is not as it was left: where (an entry's id, a trigger, the schema), and what."""

    where: str
    what: str


def flaws(connection: Connection) -> Iterator[Flaw]:
    """What is wrong, the schema first and then drain by drain in the order in which they were opened."""
    if (found := step(connection)) != HEAD:
        yield Flaw("schema", f"is at {found}, not at {HEAD}")
        return
    for trigger in unguarded(connection):
        yield Flaw(trigger, "the trigger is missing")
    yield from entry_flaws(connection)


def entry_flaws(connection: Connection) -> Iterator[Flaw]:
    """The first flaw of each drain's ledger: what comes after it hangs on the broken link."""
    query = select(entries).join(drains, drains.c.id == entries.c.drain)
    rows = connection.execution_options(yield_per=1000).execute(
        query.order_by(drains.c.seq, entries.c.position)
    )
    for _, ledger in groupby(rows, key=lambda row: row.drain):
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
