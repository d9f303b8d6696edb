"""Entries and the drains that they belong to: appended, never changed."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from functools import cache
from typing import Any

from sqlalchemy import ColumnElement, Row, Select, and_, bindparam, exists, func, insert, or_, select

from bot.engine.entries import Correction, Entry, Payload, Withdrawal
from bot.store.chain import START, link
from bot.store.codec import decode, encode
from bot.store.desk import Desk
from bot.store.errors import LedgerError
from bot.store.tables import berths, drains, entries

MOST_DRAINS_OF_A_BED = 40
"""How many of a bed's drains are looked at, latest first: far more than any late entry reaches back to."""

ALWAYS_LOOKED_AT = 2
"""So many of them, the latest, are looked at however long ago they were closed."""


_ENTRIES_OF_A_DRAIN = (
    select(entries)
    .join(drains, drains.c.id == entries.c.drain)
    .where(drains.c.unit == bindparam("unit"), entries.c.drain == bindparam("of_drain"))
    .order_by(entries.c.position)
)
"""Built once: a turn asks this more often than anything else."""


class Ledgers(Desk):
    """The part of a `Book` that is about drains."""

    def open_drain(self, bed: str, tube: str | None, since: datetime | None = None) -> str:
        """The id of a new drain, to be found at this bed (from now, or from `since`)."""
        drain = self.new_id("drain")
        self._connection.execute(insert(drains).values(id=drain, unit=self.unit, message=self.hand.message))
        self.berth(drain, bed, tube, since or self.hand.arrived)
        return drain

    def berth(self, drain: str, bed: str, tube: str | None, since: datetime) -> None:
        """Note that the drain may be found at this bed too."""
        self._own(drain)
        row = {"drain": drain, "unit": self.unit, "bed": bed, "tube": tube, "since": since}
        self._connection.execute(insert(berths), row)

    def append(self, drain: str, at: datetime, payload: Payload) -> Entry:
        """The entry as recorded: next position of its drain, entered when the message at hand arrived."""
        self._own(drain)
        last = self._last(drain)
        entry = Entry(
            drain=drain,
            position=1 if last is None else last.position + 1,
            at=at,
            entered=self.hand.arrived,
            who=self.hand.sender,
            message=self.hand.message,
            payload=payload,
        )
        before = START if last is None else last.chain
        self._connection.execute(insert(entries), entry_row(entry, before))
        return entry

    def entries(self, drain: str) -> tuple[Entry, ...]:
        """The drain's entries in the order of recording; none for a drain that is not of this unit."""
        rows = self._connection.execute(_ENTRIES_OF_A_DRAIN, {"unit": self.unit, "of_drain": drain})
        return tuple(map(entry_of, rows))

    def entry(self, entry_id: str) -> Entry | None:
        """The entry of that id, if it is of this unit."""
        drain, _, position = entry_id.rpartition("-")
        if not (position.isascii() and position.isdigit()):
            return None
        query = self._visible().where(entries.c.drain == drain, entries.c.position == int(position))
        row = self._connection.execute(query).one_or_none()
        return None if row is None else entry_of(row)

    def entries_of_message(self, message: str) -> tuple[Entry, ...]:
        """What a message recorded, by drain and position."""
        query = self._visible().where(entries.c.message == message)
        query = query.order_by(drains.c.seq, entries.c.position)
        return tuple(map(entry_of, self._connection.execute(query)))

    def drains_of(self, bed: str, since: datetime | None = None) -> tuple[str, ...]:
        """The drains ever seen at this bed, the latest first.

        `since`: of all but the latest few only those that are open, or of which something was told from
        then on. A bed has many drains in a year, and a message is about what is there now or was lately.
        """
        latest = func.max(berths.c.seq)
        query = (
            select(berths.c.drain)
            .where(berths.c.unit == self.unit, berths.c.bed == bed)
            .group_by(berths.c.drain)
            .order_by(latest.desc())
            .limit(MOST_DRAINS_OF_A_BED)
        )
        found = tuple(self._connection.scalars(query))
        if since is None or len(found) <= ALWAYS_LOOKED_AT:
            return found
        alive = {*found[:ALWAYS_LOOKED_AT], *self._alive(found[ALWAYS_LOOKED_AT:], since)}
        return tuple(drain for drain in found if drain in alive)

    def _alive(self, older: Sequence[str], since: datetime) -> tuple[str, ...]:
        """Those that are not known to be closed, or whose last entry was entered from then on."""
        found = self._connection.scalars(_alive_of(), {"older": list(older), "since": since})
        return tuple(found)

    def unit_drains(self) -> tuple[str, ...]:
        """The unit's drains that are not known to be closed, in the order in which they were opened."""
        query = select(drains.c.id).where(drains.c.unit == self.unit, ~_closed()).order_by(drains.c.seq)
        return tuple(self._connection.scalars(query))

    def every_drain(self) -> tuple[str, ...]:
        """All of the unit's drains, closed ones too, in the order in which they were opened."""
        query = select(drains.c.id).where(drains.c.unit == self.unit).order_by(drains.c.seq)
        return tuple(self._connection.scalars(query))

    def _visible(self) -> Select[Any]:
        return select(entries).join(drains, drains.c.id == entries.c.drain).where(drains.c.unit == self.unit)

    def _own(self, drain: str) -> None:
        query = select(drains.c.unit).where(drains.c.id == drain)
        if self._connection.scalar(query) != self.unit:
            raise LedgerError("the unit has no such drain")

    def _last(self, drain: str) -> Row[*tuple[Any, ...]] | None:
        query = select(entries.c.position, entries.c.chain).where(entries.c.drain == drain)
        return self._connection.execute(query.order_by(entries.c.position.desc()).limit(1)).one_or_none()


def entry_row(entry: Entry, before: str) -> dict[str, object]:
    """The columns of an entry that follows the one whose hash is `before`."""
    return {
        "drain": entry.drain,
        "position": entry.position,
        "at": entry.at,
        "entered": entry.entered,
        "who": entry.who,
        "message": entry.message,
        "kind": entry.payload.kind,
        "payload": encode(entry.payload),
        "target": _target(entry),
        "chain": link(before, entry),
    }


def entry_of(row: Row[Any]) -> Entry:
    """The entry that a row of the table holds."""
    return Entry(
        drain=row.drain,
        position=row.position,
        at=row.at,
        entered=row.entered,
        who=row.who,
        message=row.message,
        payload=decode(row.kind, row.payload),
    )


def _target(entry: Entry) -> int | None:
    match entry.payload:
        case Correction(target=target) | Withdrawal(target=target):
            drain, _, position = target.rpartition("-")
            if drain != entry.drain:
                raise LedgerError("a correction is about an entry of its own drain")
            return int(position)
        case _:
            return None


def _closed() -> ColumnElement[bool]:
    """Whether a removal or a leaving stands: recorded, and no withdrawal names it."""
    closing, taken_back = entries.alias("closing"), entries.alias("taken_back")
    withdrawn = exists().where(
        and_(
            taken_back.c.drain == closing.c.drain,
            taken_back.c.kind == Withdrawal.kind,
            taken_back.c.target == closing.c.position,
        )
    )
    standing = and_(closing.c.drain == drains.c.id, closing.c.kind.in_(("removed", "left")), ~withdrawn)
    return exists().where(standing)


@cache
def _alive_of() -> Select[Any]:
    """Of the drains `older`, those not known to be closed, or of which something was told since."""
    last = select(entries.c.entered).where(entries.c.drain == drains.c.id)
    newest = last.order_by(entries.c.position.desc()).limit(1).scalar_subquery()
    query = select(drains.c.id).where(drains.c.id.in_(bindparam("older", expanding=True)))
    return query.where(or_(newest >= bindparam("since", type_=entries.c.entered.type), ~_closed()))
