"""The tables. Every row is inserted once and never changed: triggers refuse UPDATE and DELETE.

`migrations` builds the same schema step by step; a test holds the two equal.
"""

from __future__ import annotations

from sqlalchemy import (
    BigInteger,
    Boolean,
    Column,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    Integer,
    MetaData,
    String,
    Table,
    Text,
    false,
)

from bot.store.moments import Moment

metadata = MetaData(
    naming_convention={
        "ix": "ix_%(table_name)s_%(column_0_N_name)s",
        "uq": "uq_%(table_name)s_%(column_0_N_name)s",
        "fk": "fk_%(table_name)s_%(column_0_N_name)s",
        "pk": "pk_%(table_name)s",
    }
)

Sequence = BigInteger().with_variant(Integer, "sqlite")
"""SQLite numbers rows by itself only in a column of type INTEGER."""

messages = Table(
    "messages",
    metadata,
    Column("seq", Sequence, primary_key=True),
    Column("id", String(64), nullable=False, unique=True),
    Column("digest", String(64), nullable=False),
    Column("arrived", Moment, nullable=False),
    Column("sender", String(128), nullable=False),
    Column("unit", String(64), nullable=False),
    Column("text", Text),
    Column("channel", String(8), nullable=False),
    Index(None, "unit", "sender", "seq"),
)
"""Who sent what. `unit` is empty for a sender on no unit's list; `text` is null where it may not be kept."""

replies = Table(
    "replies",
    metadata,
    Column("message", ForeignKey("messages.id"), primary_key=True),
    Column("reply", Text, nullable=False),
)

seals = Table(
    "seals",
    metadata,
    Column("number", ForeignKey("messages.seq"), primary_key=True, autoincrement=False),
    Column("unit", String(64), nullable=False),
    Column("chain", String(64), nullable=False),
    Index(None, "unit", "number"),
)
"""Of each message, in the order in which its unit took them: see `bot.store.seals`."""

drains = Table(
    "drains",
    metadata,
    Column("seq", Sequence, primary_key=True),
    Column("id", String(16), nullable=False, unique=True),
    Column("unit", String(64), nullable=False),
    Column("message", ForeignKey("messages.id"), nullable=False),
    Index(None, "unit", "seq"),
)

berths = Table(
    "berths",
    metadata,
    Column("seq", Sequence, primary_key=True),
    Column("drain", ForeignKey("drains.id"), nullable=False),
    Column("unit", String(64), nullable=False),
    Column("bed", String(16), nullable=False),
    Column("tube", String(64)),
    Column("since", Moment, nullable=False),
    Index(None, "unit", "bed", "seq"),
    Index(None, "drain"),
)
"""Where a drain may be found: an index to the ledgers, which alone say where it was when."""

entries = Table(
    "entries",
    metadata,
    Column("drain", ForeignKey("drains.id"), primary_key=True),
    Column("position", Integer, primary_key=True, autoincrement=False),
    Column("at", Moment, nullable=False),
    Column("entered", Moment, nullable=False),
    Column("who", String(128), nullable=False),
    Column("message", ForeignKey("messages.id"), nullable=False),
    Column("kind", String(16), nullable=False),
    Column("payload", Text, nullable=False),
    Column("target", Integer),
    Column("chain", String(64), nullable=False),
    ForeignKeyConstraint(["drain", "target"], ["entries.drain", "entries.position"]),
    Index(None, "message"),
    Index(None, "drain", "kind"),
)
"""`target`: the position that a correction or withdrawal is about. `chain`: see `bot.store.chain`."""

questions = Table(
    "questions",
    metadata,
    Column("seq", Sequence, primary_key=True),
    Column("id", String(16), nullable=False, unique=True),
    Column("unit", String(64), nullable=False),
    Column("sender", String(128), nullable=False),
    Column("bed", String(16)),
    Column("drain", ForeignKey("drains.id")),
    Column("slot", String(32), nullable=False),
    Column("asked_at", Moment, nullable=False),
    Column("message", ForeignKey("messages.id"), nullable=False),
    Column("text", Text, nullable=False),
    Column("said", Text, nullable=False),
    Column("choices", Text, nullable=False),
    Column("danger", Boolean, nullable=False),
    Index(None, "unit", "asked_at"),
)

settlements = Table(
    "settlements",
    metadata,
    Column("question", ForeignKey("questions.id"), primary_key=True),
    Column("outcome", String(16), nullable=False),
    Column("message", ForeignKey("messages.id"), nullable=False),
    Column("at", Moment, nullable=False),
)
"""A question is settled once; whether it is open or lapsed follows from these rows and the moment."""

notices = Table(
    "notices",
    metadata,
    Column("seq", Sequence, primary_key=True),
    Column("unit", String(64), nullable=False),
    Column("bed", String(16)),
    Column("drain", ForeignKey("drains.id")),
    Column("code", String(32), nullable=False),
    Column("text", Text, nullable=False),
    Column("unconfirmed", Boolean, nullable=False),
    Column("queued_at", Moment, nullable=False),
    Column("message", ForeignKey("messages.id"), nullable=False),
    Column("about", String(64)),
    Index(None, "unit", "seq"),
    Index(None, "unit", "queued_at"),
)
"""The outbox. `about`: the question that a reminder of an unconfirmed reading is about."""

attempts = Table(
    "attempts",
    metadata,
    Column("seq", Sequence, primary_key=True),
    Column("notice", ForeignKey("notices.seq"), nullable=False),
    Column("person", String(128), nullable=False),
    Column("at", Moment, nullable=False),
    Column("outcome", String(16), nullable=False),
    Column("status", Integer),
    Index(None, "notice"),
)
"""Each time that a notice was sent to someone; `status` is the receiver's HTTP answer, null without one."""

acknowledgements = Table(
    "acknowledgements",
    metadata,
    Column("notice", ForeignKey("notices.seq"), primary_key=True, autoincrement=False),
    Column("who", String(128), nullable=False),
    Column("at", Moment, nullable=False),
    Column("message", ForeignKey("messages.id"), nullable=False),
)
"""A notice is acknowledged once, by whoever said first that it was seen."""

tellings = Table(
    "tellings",
    metadata,
    Column("seq", Sequence, primary_key=True),
    Column("unit", String(64), nullable=False),
    Column("key", String(128), nullable=False),
    Column("sender", String(128), nullable=False),
    Column("at", Moment, nullable=False),
    Column("message", ForeignKey("messages.id"), nullable=False),
    Index(None, "unit", "key", "sender", "seq"),
)
"""Which standing caution was told to whom, so that it need not be told in full again."""

people_events = Table(
    "people_events",
    metadata,
    Column("seq", Sequence, primary_key=True),
    Column("unit", String(64), nullable=False),
    Column("person", String(128), nullable=False),
    Column("event", String(16), nullable=False),
    Column("name", String(128), nullable=False),
    Column("role", String(16), nullable=False),
    Column("until", Moment),
    Column("at", Moment, nullable=False),
    Column("by", String(128), nullable=False),
    Column("shared", Boolean, nullable=False, server_default=false()),
    Index(None, "person", "seq"),
)
"""Who was enrolled or removed, when and by whom; the unit file's list comes before all of these."""
