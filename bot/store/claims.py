"""Messages: each is claimed once, by its id, before anything else is done about it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import ColumnElement, Connection, Insert, Select, Table, bindparam, func, select
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.sql.dml import ReturningInsert

from bot.store.desk import Desk
from bot.store.remembered import Known
from bot.store.seals import seal
from bot.store.statements import ONE, Statement, into
from bot.store.tables import messages, replies, seals


@dataclass(frozen=True, slots=True, kw_only=True)
class Claim:
    """A message as it came in: `digest` is the SHA-256 of its raw body; `text` None: it may not be kept."""

    id: str
    digest: str
    arrived: datetime
    sender: str
    unit: str
    text: str | None
    channel: str = "text"


@dataclass(frozen=True, slots=True)
class Stored:
    """What an earlier message of this id was: its body's digest, and the reply (JSON) that it was given."""

    digest: str
    reply: str


@dataclass(frozen=True, slots=True, kw_only=True)
class MessageRow:
    """A message on the record, with the reply (JSON) that it was given."""

    id: str
    arrived: datetime
    sender: str
    unit: str
    text: str | None
    channel: str
    reply: str | None


_KEEP_REPLY, _SEAL = into(replies), into(seals)
_ONE_AT_A_TIME = Statement(select(func.pg_advisory_xact_lock(func.hashtext(bindparam("unit"))).label("mine")))
_STORED = Statement(
    select(messages.c.digest, replies.c.reply)
    .join(replies, replies.c.message == messages.c.id)
    .where(messages.c.id == bindparam("message"))
)


def _latest(*where: ColumnElement[bool]) -> Select[*tuple[Any, ...]]:
    """The latest message of the unit that meets this, with its reply."""
    return (
        select(messages, replies.c.reply)
        .outerjoin(replies, replies.c.message == messages.c.id)
        .where(messages.c.unit == bindparam("unit"), *where)
        .order_by(messages.c.seq.desc())
        .limit(ONE)
    )


_LAST_OF = Statement(_latest(messages.c.sender == bindparam("sender"), messages.c.id != bindparam("message")))
_EARLIER = Statement(
    select(messages.c.seq)
    .where(
        messages.c.unit == bindparam("unit"),
        messages.c.sender == bindparam("sender"),
        messages.c.id != bindparam("message"),
    )
    .limit(ONE)
)
_OF_ID = Statement(_latest(messages.c.id == bindparam("message")))


@dataclass(slots=True)
class _Open:
    """A message that is being answered, and not sealed yet: its number, the seal before it, its columns."""

    number: int
    before: str | None
    row: dict[str, object]
    reply: str | None = None


class Claims(Desk):
    """The part of a `Book` that is about messages."""

    _open: _Open | None = None

    def claim(self, claim: Claim) -> Stored | None:
        """None when the message is ours to answer; what was stored when its id was seen before.

        Comes before anything is read that a turn decides on: of several with one id, one is let through.
        """
        row: dict[str, object] = {
            "id": claim.id,
            "digest": claim.digest,
            "arrived": claim.arrived,
            "sender": claim.sender,
            "unit": claim.unit,
            "text": claim.text,
            "channel": claim.channel,
        }
        self.seal()
        one_at_a_time(self._connection, claim.unit)
        if self.when_claimed is not None:
            self.when_claimed()
            self.when_claimed = None
        taken = _CLAIM.one(self._connection, {**row, "of_unit": claim.unit})
        if taken is None:
            return self._stored(claim.id)
        self.unit = claim.unit
        self._open = _Open(taken.seq, taken.before, row)
        self._claimed(taken.before)
        self.take_up(claim.id, claim.sender, claim.arrived)
        return None

    def keep_reply(self, message: str, reply: str) -> None:
        """Keep the reply of the message, to be given again to whoever resends it."""
        _KEEP_REPLY.rows(self._connection, {"message": message, "reply": reply})
        if self._open is not None:
            self._open.reply = reply

    def seal(self) -> None:
        """Seal the message at hand with its reply and all that it wrote: the last thing done."""
        if (mine := self._open) is None:
            return
        chain = seal(mine.before, mine.row, mine.reply, self._put_down)
        _SEAL.rows(self._connection, {"number": mine.number, "unit": self.unit, "chain": chain})
        self._put_down.clear()
        self._sealed(chain)
        self._open = None

    def _now_known(self, known: Known) -> Known:
        known = super()._now_known(known)
        if self._open is None or not self.unit or self._open.row["sender"] in known.senders:
            return known
        return known._replace(senders=known.senders | {str(self._open.row["sender"])})

    def last_message(self, sender: str) -> MessageRow | None:
        """The sender's message before this one, in this unit."""
        return self._message(_LAST_OF, sender=sender, message=self.hand.message)

    def message(self, message: str) -> MessageRow | None:
        """The message of that id, if it is of this unit."""
        return self._message(_OF_ID, message=message)

    def first_message(self, sender: str) -> bool:
        """Whether this unit has no earlier message from the sender."""
        if sender in self._known.senders:
            return False
        named = {"unit": self.unit, "sender": sender, "message": self.hand.message}
        return _EARLIER.one(self._connection, named) is None

    def _stored(self, message: str) -> Stored:
        (found,) = _STORED.rows(self._connection, {"message": message})
        return Stored(found.digest, found.reply)

    def _message(self, query: Statement, **named: str) -> MessageRow | None:
        row = query.one(self._connection, {"unit": self.unit, **named})
        if row is None:
            return None
        return MessageRow(**{name: getattr(row, name) for name in MessageRow.__slots__})


def one_at_a_time(connection: Connection, unit: str) -> None:
    """Let one message of a unit be answered at a time, as SQLite's one writer does for all.

    Without it two marks that arrive together could each be judged, and each open a drain, on a ledger that
    does not know the other. The unique position would catch only some of that.
    """
    if connection.dialect.name == "postgresql":
        _ONE_AT_A_TIME.rows(connection, {"unit": unit})


def insert_once(dialect: str, table: Table) -> Insert:
    """An insert that does nothing where the row is there already."""
    if dialect == "postgresql":
        return postgresql.insert(table).on_conflict_do_nothing()
    return sqlite.insert(table).on_conflict_do_nothing()


def _claiming(dialect: str) -> ReturningInsert[Any]:
    before = select(seals.c.chain).where(seals.c.unit == bindparam("of_unit")).order_by(seals.c.number.desc())
    return insert_once(dialect, messages).returning(
        messages.c.seq, before.limit(ONE).scalar_subquery().label("before")
    )


_CLAIM = Statement(_claiming, messages)
