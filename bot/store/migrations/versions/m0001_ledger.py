"""The first step: the ledger with its messages, questions, notices and people."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

from bot.store.triggers import guard

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None

MOMENT = sa.String(27)
TABLES = (
    "messages",
    "replies",
    "drains",
    "berths",
    "entries",
    "questions",
    "settlements",
    "notices",
    "tellings",
    "people_events",
)


def upgrade() -> None:
    """Make the tables and guard them."""
    _messages()
    _drains()
    _entries()
    _questions()
    _notices()
    _people()
    guard(op.get_bind(), TABLES)


def _messages() -> None:
    op.create_table(
        "messages",
        _seq(),
        _text("id", 64),
        _text("digest", 64),
        _moment("arrived"),
        _text("sender", 128),
        _text("unit", 64),
        sa.Column("text", sa.Text()),
        _text("channel", 8),
        sa.PrimaryKeyConstraint("seq", name="pk_messages"),
        sa.UniqueConstraint("id", name="uq_messages_id"),
    )
    op.create_index("ix_messages_unit_sender_seq", "messages", ["unit", "sender", "seq"])
    op.create_table(
        "replies",
        _text("message", 64),
        sa.Column("reply", sa.Text(), nullable=False),
        _to_message("replies"),
        sa.PrimaryKeyConstraint("message", name="pk_replies"),
    )


def _drains() -> None:
    op.create_table(
        "drains",
        _seq(),
        _text("id", 16),
        _text("unit", 64),
        _text("message", 64),
        _to_message("drains"),
        sa.PrimaryKeyConstraint("seq", name="pk_drains"),
        sa.UniqueConstraint("id", name="uq_drains_id"),
    )
    op.create_index("ix_drains_unit_seq", "drains", ["unit", "seq"])
    op.create_table(
        "berths",
        _seq(),
        _text("drain", 16),
        _text("unit", 64),
        _text("bed", 16),
        sa.Column("tube", sa.String(64)),
        _moment("since"),
        _to_drain("berths"),
        sa.PrimaryKeyConstraint("seq", name="pk_berths"),
    )
    op.create_index("ix_berths_unit_bed_seq", "berths", ["unit", "bed", "seq"])
    op.create_index("ix_berths_drain", "berths", ["drain"])


def _entries() -> None:
    op.create_table(
        "entries",
        _text("drain", 16),
        sa.Column("position", sa.Integer(), autoincrement=False, nullable=False),
        _moment("at"),
        _moment("entered"),
        _text("who", 128),
        _text("message", 64),
        _text("kind", 16),
        sa.Column("payload", sa.Text(), nullable=False),
        sa.Column("target", sa.Integer()),
        _text("chain", 64),
        _to_drain("entries"),
        _to_message("entries"),
        sa.ForeignKeyConstraint(
            ["drain", "target"], ["entries.drain", "entries.position"], name="fk_entries_drain_target"
        ),
        sa.PrimaryKeyConstraint("drain", "position", name="pk_entries"),
    )
    op.create_index("ix_entries_message", "entries", ["message"])
    op.create_index("ix_entries_drain_kind", "entries", ["drain", "kind"])


def _questions() -> None:
    op.create_table(
        "questions",
        _seq(),
        _text("id", 16),
        _text("unit", 64),
        _text("sender", 128),
        sa.Column("bed", sa.String(16)),
        sa.Column("drain", sa.String(16)),
        _text("slot", 32),
        _moment("asked_at"),
        _text("message", 64),
        sa.Column("text", sa.Text(), nullable=False),
        sa.Column("said", sa.Text(), nullable=False),
        sa.Column("choices", sa.Text(), nullable=False),
        sa.Column("danger", sa.Boolean(), nullable=False),
        _to_drain("questions"),
        _to_message("questions"),
        sa.PrimaryKeyConstraint("seq", name="pk_questions"),
        sa.UniqueConstraint("id", name="uq_questions_id"),
    )
    op.create_index("ix_questions_unit_asked_at", "questions", ["unit", "asked_at"])
    op.create_table(
        "settlements",
        _text("question", 16),
        _text("outcome", 16),
        _text("message", 64),
        _moment("at"),
        sa.ForeignKeyConstraint(["question"], ["questions.id"], name="fk_settlements_question"),
        _to_message("settlements"),
        sa.PrimaryKeyConstraint("question", name="pk_settlements"),
    )


def _notices() -> None:
    op.create_table(
        "notices",
        _seq(),
        _text("unit", 64),
        sa.Column("bed", sa.String(16)),
        sa.Column("drain", sa.String(16)),
        _text("code", 32),
        sa.Column("text", sa.Text(), nullable=False),
        sa.Column("unconfirmed", sa.Boolean(), nullable=False),
        _moment("queued_at"),
        _text("message", 64),
        _to_drain("notices"),
        _to_message("notices"),
        sa.PrimaryKeyConstraint("seq", name="pk_notices"),
    )
    op.create_index("ix_notices_unit_seq", "notices", ["unit", "seq"])
    op.create_table(
        "tellings",
        _seq(),
        _text("unit", 64),
        _text("key", 128),
        _text("sender", 128),
        _moment("at"),
        _text("message", 64),
        _to_message("tellings"),
        sa.PrimaryKeyConstraint("seq", name="pk_tellings"),
    )
    op.create_index("ix_tellings_unit_key_sender_seq", "tellings", ["unit", "key", "sender", "seq"])


def _people() -> None:
    op.create_table(
        "people_events",
        _seq(),
        _text("unit", 64),
        _text("person", 128),
        _text("event", 16),
        _text("name", 128),
        _text("role", 16),
        sa.Column("until", MOMENT),
        _moment("at"),
        _text("by", 128),
        sa.PrimaryKeyConstraint("seq", name="pk_people_events"),
    )
    op.create_index("ix_people_events_person_seq", "people_events", ["person", "seq"])


def _seq() -> sa.Column[int]:
    return sa.Column("seq", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False)


def _text(name: str, width: int) -> sa.Column[str]:
    return sa.Column(name, sa.String(width), nullable=False)


def _moment(name: str) -> sa.Column[str]:
    return sa.Column(name, MOMENT, nullable=False)


def _to_message(table: str) -> sa.ForeignKeyConstraint:
    return sa.ForeignKeyConstraint(["message"], ["messages.id"], name=f"fk_{table}_message")


def _to_drain(table: str) -> sa.ForeignKeyConstraint:
    return sa.ForeignKeyConstraint(["drain"], ["drains.id"], name=f"fk_{table}_drain")
