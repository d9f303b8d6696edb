"""Who was enrolled or removed after the unit file was written: every change is kept, with its author."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Any, Literal

from sqlalchemy import bindparam, func, insert, select

from bot.store.desk import Desk
from bot.store.statements import Statement
from bot.store.tables import people_events


@dataclass(frozen=True, slots=True, kw_only=True)
class PeopleEvent:
    """A change of a unit's list: who may write (`until` a moment, or for good), or may not any more.

    `shared`: a ward phone that several people write from.
    """

    unit: str
    person: str
    event: Literal["enrolled", "removed"]
    name: str
    role: str
    until: datetime | None
    at: datetime
    by: str
    shared: bool = False


_NEWEST = Statement(select(func.max(people_events.c.seq).label("newest")))
_EVERY = Statement(select(people_events).order_by(people_events.c.seq))
_OF_ONE = Statement(
    select(people_events)
    .where(people_events.c.person == bindparam("of_person"))
    .order_by(people_events.c.seq)
)


class People(Desk):
    """The part of a `Book` that is about people."""

    def people_events(self, person: str | None = None) -> tuple[PeopleEvent, ...]:
        """Every change (of one person), the oldest first, of all units: the caller tells them apart."""
        query, named = (_EVERY, {}) if person is None else (_OF_ONE, {"of_person": person})
        return tuple(map(_event, query.rows(self._connection, named)))

    def newest_people_event(self) -> int:
        """The number of the latest change; 0 before the first. The same number means the same lists."""
        return _NEWEST.value(self._connection, {}) or 0

    def note_person(self, event: PeopleEvent) -> None:
        """Keep a change of a unit's list."""
        row = {name: getattr(event, name) for name in PeopleEvent.__slots__}
        self._connection.execute(insert(people_events), row)


def _event(row: Any) -> PeopleEvent:
    return PeopleEvent(**{name: getattr(row, name) for name in PeopleEvent.__slots__})
