"""The outbox: what waits to reach someone, each attempt to send it, and who said that it was seen."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import ColumnElement, Row, Select, and_, exists, insert, or_, select

from bot.store.desk import Desk
from bot.store.notices import Attempt, Filed, Notice
from bot.store.statements import into
from bot.store.tables import acknowledgements, attempts, entries, notices, questions, settlements

REACH = timedelta(days=60)
"""How far back a notice can be acknowledged."""


_QUEUE, _SEEN = into(notices), into(acknowledgements)


class Outbox(Desk):
    """The part of a `Book` that is about notices."""

    def queue(self, notice: Notice) -> None:
        """Keep a notice for whoever must be told without having asked."""
        row = {name: getattr(notice, name) for name in Notice.__slots__}
        self._put(notices.name, _QUEUE, {**row, "unit": self.unit})

    def notices(self) -> tuple[Notice, ...]:
        """The unit's notices, the oldest first."""
        query = select(notices).where(notices.c.unit == self.unit).order_by(notices.c.seq)
        return tuple(map(_notice, self._connection.execute(query)))

    def filed(self, since: datetime) -> tuple[Filed, ...]:
        """The unit's notices queued since then, the oldest first, each with what became of it."""
        mine = and_(notices.c.unit == self.unit, notices.c.queued_at >= since)
        query = (
            select(notices, acknowledgements.c.at.label("seen_at"), _over().label("over"))
            .outerjoin(acknowledgements, acknowledgements.c.notice == notices.c.seq)
            .where(mine)
        )
        tried = self._attempts(mine)
        return tuple(
            Filed(
                number=row.seq,
                notice=_notice(row),
                attempts=tuple(tried[row.seq]),
                seen_at=row.seen_at,
                over=bool(row.over),
            )
            for row in self._connection.execute(query.order_by(notices.c.seq))
        )

    def note_attempt(self, attempt: Attempt) -> None:
        """Keep what became of sending a notice once."""
        self._connection.execute(
            insert(attempts), {name: getattr(attempt, name) for name in Attempt.__slots__}
        )

    def acknowledge(self, bed: str, drains: Iterable[str] = ()) -> int:
        """How many notices this message says were seen: the bed's, and those of these drains elsewhere."""
        query = self._unseen(or_(notices.c.bed == bed, notices.c.drain.in_(tuple(drains))))
        numbers = tuple(self._connection.scalars(query))
        for number in numbers:
            row = {"notice": number, "who": self.hand.sender, "at": self.hand.arrived}
            self._put(acknowledgements.name, _SEEN, {**row, "message": self.hand.message})
        return len(numbers)

    def _unseen(self, where: ColumnElement[bool]) -> Select[tuple[int]]:
        seen = exists().where(acknowledgements.c.notice == notices.c.seq)
        return (
            select(notices.c.seq)
            .where(notices.c.unit == self.unit, notices.c.queued_at >= self.hand.arrived - REACH)
            .where(where, ~seen)
            .order_by(notices.c.seq)
        )

    def _attempts(self, mine: ColumnElement[bool]) -> defaultdict[int, list[Attempt]]:
        """The attempts of these notices, by the notice's number, in order."""
        found: defaultdict[int, list[Attempt]] = defaultdict(list)
        query = select(attempts).join(notices, notices.c.seq == attempts.c.notice).where(mine)
        for row in self._connection.execute(query.order_by(attempts.c.seq)):
            found[row.notice].append(Attempt(**{name: getattr(row, name) for name in Attempt.__slots__}))
        return found


def _over() -> ColumnElement[bool]:
    """Whether there is nothing left to tell: the question was settled, the overdue drain written about.

    A danger that a question carried is told again, confirmed, when it was right.
    """
    asked = or_(questions.c.id == notices.c.about, _of_its_message())
    settled = exists().where(settlements.c.question == questions.c.id)
    waits = exists().where(asked, ~settled).correlate(notices)
    was_asked = exists().where(asked).correlate(notices)
    written = exists().where(entries.c.drain == notices.c.drain, entries.c.entered > notices.c.queued_at)
    on_question = or_(notices.c.unconfirmed, notices.c.about.is_not(None))
    return or_(
        and_(on_question, was_asked, ~waits),
        and_(notices.c.code == "overdue", written.correlate(notices)),
    )


def _of_its_message() -> ColumnElement[bool]:
    return and_(notices.c.about.is_(None), questions.c.message == notices.c.message)


def _notice(row: Row[Any]) -> Notice:
    return Notice(**{name: getattr(row, name) for name in Notice.__slots__})
