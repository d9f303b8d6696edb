"""A database beside a backup of it: every row of the backup must still be there, as it was.

That shows what no hash shows: messages that were cut off at the end with all that they wrote, and hashes that
were all reckoned anew.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from functools import cache

from sqlalchemy import Connection, Table, bindparam, select

from bot.store.copying import backed_up
from bot.store.statements import Statement
from bot.store.verify import Flaw

_MISSING = "is missing, and the backup holds it"
_OTHER = "is not what the backup holds"


def flaws_beside(connection: Connection, lines: Iterable[str]) -> Iterator[Flaw]:
    """The first row of each table that is missing, or is another one. LedgerError where it is no backup."""
    _, rows = backed_up(lines)
    flawed: set[str] = set()
    for table, row in rows:
        what = None if table.name in flawed else _wrong(connection, table, row)
        if what is not None:
            flawed.add(table.name)
            yield Flaw(_place(table, row), what)


def _wrong(connection: Connection, table: Table, row: Mapping[str, object]) -> str | None:
    found = _of_key(table).one(connection, {f"of_{key.name}": row[key.name] for key in table.primary_key})
    if found is None:
        return _MISSING
    return None if found._asdict() == row else _OTHER


@cache
def _of_key(table: Table) -> Statement:
    meets = (key == bindparam(f"of_{key.name}", type_=key.type) for key in table.primary_key)
    return Statement(select(table).where(*meets))


def _place(table: Table, row: Mapping[str, object]) -> str:
    """The id of a message or entry, as everywhere; of another row its table and its key."""
    match table.name:
        case "messages":
            return str(row["id"])
        case "entries":
            return f"{row['drain']}-{row['position']}"
        case name:
            return f"{name} {'-'.join(str(row[key.name]) for key in table.primary_key)}"
