"""Which drains a unit has, at which beds they were seen, and how each stands.

What a drain holds is in `ledgers`, which goes on from here.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from sqlalchemy import (
    ColumnElement,
    Connection,
    Select,
    String,
    and_,
    bindparam,
    case,
    exists,
    func,
    literal_column,
    or_,
    select,
    type_coerce,
)

from bot.engine.entries import Entry, Left, Removed, Withdrawal
from bot.store.desk import Desk
from bot.store.errors import LedgerError
from bot.store.moments import moment_text
from bot.store.remembered import Known, Past, Remembered
from bot.store.statements import Statement, into
from bot.store.tables import berths, drains, entries

MOST_DRAINS_OF_A_BED = 40
"""How many of a bed's drains are looked at, latest first: far more than any late entry reaches back to."""

LOOKED_BACK_AT = 2
"""So many of them, where nothing was told of the latest for long."""

_UNIT_OF = Statement(select(drains.c.unit).where(drains.c.id == bindparam("of_drain")))
_OPEN, _BERTH = into(drains), into(berths)

_TOLD, _NEWEST = "told", "newest"
_NOTHING = Past("", None, None, None, closed=False)


class Berths(Desk):
    """The part of a `Book` that is about drains and where they are."""

    def __init__(self, connection: Connection, unit: str = "", remembered: Remembered | None = None) -> None:
        super().__init__(connection, unit, remembered)
        self._berthed: set[str] = set()
        self._written_to: dict[str, Past | None] = {}
        """How the drains that it wrote to stand by it; None: it may have closed or opened them."""

    def open_drain(self, bed: str, tube: str | None, since: datetime | None = None) -> str:
        """The id of a new drain, to be found at this bed (from now, or from `since`)."""
        drain = self.new_id("drain")
        row = {"id": drain, "unit": self.unit, "message": self.hand.message}
        self._put(drains.name, _OPEN, row)
        self.berth(drain, bed, tube, since or self.hand.arrived)
        return drain

    def berth(self, drain: str, bed: str, tube: str | None, since: datetime) -> None:
        """Note that the drain may be found at this bed too."""
        self._own(drain)
        row = {"drain": drain, "unit": self.unit, "bed": bed, "tube": tube, "since": since}
        _BERTH.rows(self._connection, row)
        self._written(berths.name, bed)
        self._berthed.add(bed)

    def drains_of(self, bed: str, since: datetime | None = None) -> tuple[str, ...]:
        """The drains ever seen at this bed, the latest first.

        `since`: only those that are open, or of which something was told from then on; where that is not
        so of the latest, the latest two too. A bed has many drains in a year, and a message is about what is
        there now or was lately.
        """
        found = self._once(berths.name, bed, lambda: self._drains_of(bed))
        if since is None:
            return tuple(each.drain for each in found)
        begin = moment_text(since)
        alive = {each.drain for each in found if not each.closed or (each.newest or "") >= begin}
        if self._hand is not None and self._hand.arrived >= since:
            alive |= {each.drain for each in found if (_TOLD, each.drain) in self._held}
        if found and found[0].drain not in alive:
            alive |= {each.drain for each in found[:LOOKED_BACK_AT]}
        return tuple(each.drain for each in found if each.drain in alive)

    def _drains_of(self, bed: str) -> tuple[Past, ...]:
        """As the unit's last message left them, where that is known and this one has written nothing yet."""
        untouched = not self._put_down and not self._berthed
        known = self._known.drains_of(bed) if untouched else None
        if known is None:
            rows = _OF_A_BED.rows(self._connection, {"of_unit": self.unit, "of_bed": bed})
            known = tuple(map(Past._make, rows))
        if self._hand is not None:
            self._held |= {(_NEWEST, each.drain): each for each in known}
        return known

    def _now_known(self, known: Known) -> Known:
        known = super()._now_known(known)
        seen = {bed: past for (table, bed), past in self._held.items() if table == berths.name and past}
        drains_of = {**known.beds, **{bed: tuple(each.drain for each in past) for bed, past in seen.items()}}
        stand = {**known.drains, **{each.drain: each for past in seen.values() for each in past}}
        for bed in self._berthed:
            drains_of.pop(bed, None)
        if drains_of != known.beds:
            stand = _of_these_beds(drains_of, stand)
        for drain, past in self._written_to.items():
            if past is None:
                stand.pop(drain, None)
            elif drain in stand:
                stand[drain] = past._replace(closed=stand[drain].closed)
        self._berthed.clear()
        self._written_to.clear()
        return known._replace(beds=drains_of, drains=stand)

    def unit_drains(self) -> tuple[str, ...]:
        """The unit's drains that are not known to be closed, in the order in which they were opened."""
        query = select(drains.c.id).where(drains.c.unit == self.unit, ~_closed()).order_by(drains.c.seq)
        return tuple(self._connection.scalars(query))

    def every_drain(self) -> tuple[str, ...]:
        """All of the unit's drains, closed ones too, in the order in which they were opened."""
        query = select(drains.c.id).where(drains.c.unit == self.unit).order_by(drains.c.seq)
        return tuple(self._connection.scalars(query))

    def _told(self, entry: Entry, chain: str) -> None:
        """Note that its drain has this entry now, and how it stands by it."""
        self._written_to[entry.drain] = self._stands(entry, chain)
        self._held[_TOLD, entry.drain] = True
        self._written(_NEWEST, entry.drain)

    def _stands(self, entry: Entry, chain: str) -> Past | None:
        """How its drain stands after the entry, but for whether it is closed; none where that may change."""
        moves = isinstance(entry.payload, Removed | Left | Withdrawal)
        if moves or self._written_to.get(entry.drain, _NOTHING) is None:
            return None
        return Past(entry.drain, entry.position, chain, moment_text(entry.entered), closed=False)

    def _stood(self, drain: str) -> Past | None:
        """How the drain stands; none where that is not known, or where this message has written to it."""
        if drain in self._written_to:
            return None
        found: Past | None = self._held.get((_NEWEST, drain))
        return found or self._known.drains.get(drain)

    def _own(self, drain: str) -> None:
        if _UNIT_OF.value(self._connection, {"of_drain": drain}) != self.unit:
            raise LedgerError("the unit has no such drain")


def _of_these_beds(beds: Mapping[str, tuple[str, ...]], stand: Mapping[str, Past]) -> dict[str, Past]:
    """The drains that are among the latest of a bed: those of years would be kept at hand for ever."""
    named = {drain for of_bed in beds.values() for drain in of_bed}
    return {drain: past for drain, past in stand.items() if drain in named}


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
    return exists().where(closing.c.drain == drains.c.id, _closes(closing.c.kind), ~withdrawn)


def _closes(kind: ColumnElement[str]) -> ColumnElement[bool]:
    return or_(kind == Removed.kind, kind == Left.kind)


def _of_a_bed() -> Select[Any]:
    """The latest drains of a bed, the latest first, with their last entry and whether they are closed."""
    seq = func.max(berths.c.seq).label("seq")
    latest = (
        select(berths.c.drain, seq)
        .where(berths.c.unit == bindparam("of_unit"), berths.c.bed == bindparam("of_bed"))
        .group_by(berths.c.drain)
        .order_by(seq.desc())
        .limit(literal_column(str(MOST_DRAINS_OF_A_BED)))
        .subquery()
    )
    last, earlier = entries.alias("last"), entries.alias("earlier")
    place = select(func.max(earlier.c.position)).where(earlier.c.drain == drains.c.id).scalar_subquery()
    # What closes a drain is mostly its last entry: then nothing has taken it back, and nobody need look.
    closed = case((_closes(last.c.kind), True), else_=_closed())
    return (
        select(
            drains.c.id.label("drain"),
            last.c.position,
            last.c.chain,
            type_coerce(last.c.entered, String).label("newest"),
            closed.label("closed"),
        )
        .join(latest, latest.c.drain == drains.c.id)
        .outerjoin(last, and_(last.c.drain == drains.c.id, last.c.position == place))
        .order_by(latest.c.seq.desc())
    )


_OF_A_BED = Statement(_of_a_bed())
