"""The seals of a whole database: made for the messages that have none, and held against what is there."""

from __future__ import annotations

import heapq
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import groupby, islice
from typing import Any

from sqlalchemy import Connection, Table, and_, insert, select

from bot.store.seals import SEALED, row_text, seal
from bot.store.tables import messages, metadata, replies, seals

_BATCH = 500


@dataclass(frozen=True, slots=True)
class Sealed:
    """A message with the seal that it has (None: it has none) and the one that is right for what is there."""

    number: int
    message: str
    unit: str
    reply: str | None
    kept: str | None
    right: str


def sealed(connection: Connection) -> Iterator[Sealed]:
    """Every message in the order in which it was taken; each behind the kept seal before it in its unit."""
    before: dict[str, str] = {}
    for row, wrote in _with_rows(connection):
        right = seal(before.get(row["unit"]), row, row["reply"], wrote)
        yield Sealed(row["seq"], row["id"], row["unit"], row["reply"], row["chain"], right)
        before[row["unit"]] = row["chain"] or right


def seal_the_rest(connection: Connection) -> None:
    """Seal the messages that have no seal: those of before there were any, and imported ones."""
    new = (
        {"number": each.number, "unit": each.unit, "chain": each.right}
        for each in sealed(connection)
        if each.kept is None
    )
    while batch := list(islice(new, _BATCH)):
        connection.execute(insert(seals), batch)


def _with_rows(connection: Connection) -> Iterator[tuple[Any, list[str]]]:
    """Every message with its reply and seal, and the rows that it wrote, as they are sealed."""
    wrote = groupby(
        heapq.merge(*(_rows(connection, metadata.tables[name]) for name in SEALED)), key=lambda each: each[0]
    )
    number, rows = next(wrote, (None, iter(())))
    for row in _stream(connection, _messages()):
        mine: list[str] = []
        if row["seq"] == number:
            mine = [text for _, text in rows]
            number, rows = next(wrote, (None, iter(())))
        yield row, mine


def _messages() -> Any:
    return (
        select(messages, replies.c.reply, seals.c.chain)
        .outerjoin(replies, replies.c.message == messages.c.id)
        .outerjoin(seals, and_(seals.c.number == messages.c.seq, seals.c.unit == messages.c.unit))
        .order_by(messages.c.seq)
    )


def _rows(connection: Connection, table: Table) -> Iterator[tuple[int, str]]:
    """What messages wrote to a table, with the number of the message."""
    columns = (table.c[name] for name in SEALED[table.name])
    query = select(messages.c.seq.label("of_message"), *columns).join(
        messages, messages.c.id == table.c.message
    )
    for row in _stream(connection, query.order_by(messages.c.seq)):
        yield row["of_message"], row_text(table.name, row)


def _stream(connection: Connection, query: Any) -> Iterator[Any]:
    return iter(connection.execute(query.execution_options(yield_per=_BATCH)).mappings())
