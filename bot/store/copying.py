"""Every row of every table as JSON lines, and back: the same on both engines, so that a ledger can move.

The first line says which step of the schema the rows are of, the last how many there are: a file that was
cut short is seen.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from itertools import islice
from typing import Any

from sqlalchemy import Column, Connection, Table, func, insert, select, text
from sqlalchemy.exc import DataError, IntegrityError

from bot.store.codec import canonical
from bot.store.errors import LedgerError
from bot.store.moments import Moment, moment_of, plain
from bot.store.schema import HEAD
from bot.store.sealing import seal_the_rest
from bot.store.tables import metadata

_BATCH = 500
_UNSEALED = "0002"
"""The step before messages were sealed: its rows are those of today without the seals."""


def lines_of(connection: Connection) -> Iterator[str]:
    """The database as lines; run it in a transaction that sees one moment."""
    yield canonical({"schema": HEAD})
    count = 0
    for table in metadata.sorted_tables:
        query = select(table).order_by(*table.primary_key.columns)
        for row in connection.execution_options(yield_per=_BATCH).execute(query).mappings():
            count += 1
            yield canonical({"table": table.name, "row": {name: plain(value) for name, value in row.items()}})
    yield canonical({"rows": count})


def row_count(connection: Connection) -> int:
    """How many rows the database has."""
    counts = (select(func.count()).select_from(table) for table in metadata.sorted_tables)
    return sum(connection.scalar(count) or 0 for count in counts)


def read_in(connection: Connection, lines: Iterable[str]) -> int:
    """How many rows were read into this empty database. LedgerError, naming the line, on anything else.

    A backup of before messages were sealed is read too: they are sealed as they are.
    """
    if row_count(connection):
        raise LedgerError("the database is not empty")
    step, rows = backed_up(lines)
    count = 0
    while batch := list(islice(rows, _BATCH)):
        _insert(connection, batch)
        count += len(batch)
    if step == _UNSEALED:
        seal_the_rest(connection)
    _count_on(connection)
    return count


def backed_up(lines: Iterable[str]) -> tuple[str, Iterator[tuple[Table, dict[str, object]]]]:
    """The step of the schema that a backup is of, and its rows, checked as they are gone through.

    LedgerError, naming the line, on anything that is not what a backup holds there.
    """
    numbered = enumerate(lines, start=1)
    return _step(next((line for _, line in numbered), "")), _rows(numbered)


def _step(line: str) -> str:
    """The step of the schema that a backup's first line names."""
    match _held(1, line):
        case {"schema": str(step)} if step in (HEAD, _UNSEALED):
            return step
        case {"schema": step}:
            raise LedgerError(
                f"line 1: is a backup of step {step}, and this program knows {_UNSEALED} and {HEAD}"
            )
        case _:
            raise LedgerError("line 1: is not how a backup begins")


def _rows(numbered: Iterable[tuple[int, str]]) -> Iterator[tuple[Table, dict[str, object]]]:
    count, ended = 0, False
    for number, line in numbered:
        if ended:
            raise LedgerError(f"line {number}: after the end")
        match _held(number, line):
            case {"rows": rows} if rows == count:
                ended = True
            case {"table": str(name), "row": dict(row)} if name in metadata.tables:
                count += 1
                yield metadata.tables[name], _row(number, metadata.tables[name], row)
            case _:
                raise LedgerError(f"line {number}: is not what a backup holds there")
    if not ended:
        raise LedgerError("the file ends too early")


def _held(number: int, line: str) -> object:
    try:
        held: object = json.loads(line)
    except (ValueError, RecursionError) as wrong:
        raise LedgerError(f"line {number}: is not JSON") from wrong
    return held


def _row(number: int, table: Table, row: dict[str, Any]) -> dict[str, object]:
    """The row's columns, each of its own type."""
    if set(row) != {column.name for column in table.columns}:
        raise LedgerError(f"line {number}: has other columns than {table.name}")
    try:
        return {name: _cell(table.columns[name], value) for name, value in row.items()}
    except (TypeError, ValueError) as wrong:
        raise LedgerError(f"line {number}: {wrong}") from wrong


def _cell(column: Column[Any], value: Any) -> object:
    """The value, if the column can hold it on either engine; TypeError or ValueError if not."""
    if value is None and column.nullable:
        return None
    if isinstance(column.type, Moment):
        return moment_of(value)
    if type(value) is not column.type.python_type:
        raise TypeError(f"{column.name} cannot be {value!r:.40}")
    if type(value) is int and not -(2**63) <= value < 2**63:
        raise ValueError(f"{column.name} is out of range")
    if type(value) is str and ("\0" in value or any(0xD800 <= ord(letter) < 0xE000 for letter in value)):
        raise ValueError(f"{column.name} holds no character")
    return value


def _insert(connection: Connection, waiting: list[tuple[Table, dict[str, object]]]) -> None:
    """Insert the rows in their order, those of one table together."""
    for table in dict.fromkeys(table for table, _ in waiting):
        try:
            connection.execute(insert(table), [row for of, row in waiting if of is table])
        except (IntegrityError, DataError) as wrong:
            raise LedgerError(f"{table.name}: rows that do not go together") from wrong


def _count_on(connection: Connection) -> None:
    """Let PostgreSQL number new rows after the ones that were read in; SQLite does so by itself."""
    if connection.dialect.name != "postgresql":
        return
    for table in metadata.sorted_tables:
        if "seq" in table.columns:
            last = f"(SELECT coalesce(max(seq), 0) + 1 FROM {table.name})"
            connection.execute(
                text(f"SELECT setval(pg_get_serial_sequence('{table.name}', 'seq'), {last}, false)")
            )
