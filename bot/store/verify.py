"""Whether a database is as the program left it: schema, triggers, chains, seals, and what hangs on what.

Finds what was altered or taken away behind the program's back. It reads every row, a drain or a message at a
time. Whoever reckons every later hash anew is not found so: only a copy kept elsewhere shows that.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Iterator, Mapping
from contextlib import suppress
from dataclasses import dataclass
from itertools import groupby
from typing import Any, TypeAlias

from sqlalchemy import Connection, Row, func, select

from bot.engine.entries import Entry, Moved, Opened, Placed
from bot.store.chain import START, link
from bot.store.errors import LedgerError
from bot.store.likeness import differences, orphans
from bot.store.rows import entry_of, target_of
from bot.store.schema import HEAD, step
from bot.store.sealing import Sealed, sealed
from bot.store.tables import berths, drains, entries
from bot.store.triggers import trigger_faults

Ledger: TypeAlias = tuple[str, Iterator[Row[Any]]]
Follow: TypeAlias = Callable[[Iterable[Ledger]], Iterator[Ledger]]

_BATCH = 1000
_MISSING = "the entry is missing"
_ALTERED = "the entry, or the one before it, is not what was recorded"
_BROKEN = "the message, its reply or what it recorded, or the message before it, is not what was recorded"


@dataclass(frozen=True, slots=True)
class Flaw:
    """Something that is not as it was left: where (an entry's id, a message, a trigger), and what."""

    where: str
    what: str


@dataclass(frozen=True, slots=True)
class _Told:
    """What the messages show; `named`: how far the replies say that each ledger goes."""

    unreplied: tuple[Flaw, ...]
    broken: tuple[Flaw, ...]
    named: Mapping[str, int]


def flaws(connection: Connection, follow: Follow = iter) -> Iterator[Flaw]:
    """What is wrong, the schema first, then drain by drain and message by message as they came.

    `follow` is handed the ledgers one by one as they are looked at: for whoever shows how far it is.
    """
    if (found := step(connection)) != HEAD:
        yield Flaw("schema", f"is at {found}, not at {HEAD}")
        return
    if unlike := tuple(differences(connection)):
        yield from (Flaw("schema", what) for what in unlike)
        return
    yield from (Flaw(name, what) for name, what in trigger_faults(connection).items())
    yield from (Flaw(where, f"its row of {other} is missing") for where, other in orphans(connection))
    told = _told(connection)
    yield from told.unreplied
    yield from entry_flaws(connection, follow, told.named)
    yield from told.broken


def drain_count(connection: Connection) -> int:
    """How many ledgers there are to look at."""
    return connection.scalar(select(func.count(func.distinct(entries.c.drain)))) or 0


def entry_flaws(
    connection: Connection, follow: Follow = iter, named: Mapping[str, int] | None = None
) -> Iterator[Flaw]:
    """The first flaw of each drain's ledger: what comes after it hangs on the broken link.

    `named`: the last position of each drain that a reply speaks of.
    """
    reach = dict.fromkeys(connection.scalars(select(drains.c.id).order_by(drains.c.seq)), 1) | dict(
        named or {}
    )
    beds = _beds(connection)
    for drain, ledger in follow(groupby(_rows(connection), key=lambda row: row.drain)):
        flaw = next(_ledger_flaws(ledger, reach.pop(drain, 0), beds.get(drain, frozenset())), None)
        if flaw is not None:
            yield flaw
    yield from (Flaw(f"{drain}-1", _MISSING) for drain in reach)


def _rows(connection: Connection) -> Iterable[Row[Any]]:
    query = select(entries).outerjoin(drains, drains.c.id == entries.c.drain)
    in_order = query.order_by(drains.c.seq, entries.c.drain, entries.c.position)
    return connection.execute(in_order.execution_options(yield_per=_BATCH))


def _ledger_flaws(rows: Iterator[Row[Any]], reach: int, beds: frozenset[str]) -> Iterator[Flaw]:
    """What is wrong with a ledger that goes to that position at least, of a drain found at these beds."""
    before, drain, expected = START, "", 1
    for expected, row in enumerate(rows, start=1):
        name, drain = f"{row.drain}-{row.position}", row.drain
        if row.position != expected:
            yield Flaw(f"{row.drain}-{expected}", _MISSING)
        try:
            entry = entry_of(row)
            if link(before, entry) != row.chain or target_of(entry) != row.target:
                yield Flaw(name, _ALTERED)
            if (bed := _bed(entry)) is not None and bed not in beds:
                yield Flaw(name, f"the drain cannot be found at bed {bed}, where it says that it was")
        except (LedgerError, ValueError) as wrong:
            yield Flaw(name, f"the entry cannot be read: {wrong}")
        before = row.chain
    if expected < reach:
        yield Flaw(f"{drain}-{expected + 1}", _MISSING)


def _bed(entry: Entry) -> str | None:
    """Where this entry says that the drain is from then on."""
    match entry.payload:
        case Placed(bed=bed) | Opened(bed=bed) | Moved(to_bed=bed):
            return bed
        case _:
            return None


def _beds(connection: Connection) -> Mapping[str, frozenset[str]]:
    """Where each drain is found."""
    query = select(berths.c.drain, berths.c.bed).join(drains, drains.c.id == berths.c.drain)
    mine = query.where(drains.c.unit == berths.c.unit).order_by(berths.c.drain)
    rows = connection.execute(mine.execution_options(yield_per=_BATCH))
    return {
        drain: frozenset(row.bed for row in found) for drain, found in groupby(rows, lambda row: row.drain)
    }


def _told(connection: Connection) -> _Told:
    """What one look at every message shows: those with no reply, and the first broken seal of each unit."""
    named: dict[str, int] = {}
    unreplied: list[Flaw] = []
    broken: dict[str, Flaw] = {}
    for each in sealed(connection):
        _note(each, named)
        if each.reply is None:
            unreplied.append(Flaw(each.message, "the message was taken and has no reply"))
        if each.kept != each.right:
            what = "the message has no seal" if each.kept is None else _BROKEN
            broken.setdefault(each.unit, Flaw(each.message, what))
    return _Told(tuple(unreplied), tuple(broken.values()), named)


def _note(message: Sealed, named: dict[str, int]) -> None:
    with suppress(ValueError, TypeError, KeyError, AttributeError):  # such a reply has a broken seal
        for result in json.loads(message.reply or "{}").get("results", ()):
            for entry in result["entries"]:
                drain, _, position = entry.rpartition("-")
                named[drain] = max(named.get(drain, 0), int(position))
