"""The second step: attempts to send notices, and who saw them; a shared phone can be enrolled by command."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

from bot.store.triggers import guard

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the tables and columns; nothing that is there is rebuilt, so the triggers stay."""
    op.add_column("notices", sa.Column("about", sa.String(64)))
    op.create_index("ix_notices_unit_queued_at", "notices", ["unit", "queued_at"])
    op.add_column(
        "people_events", sa.Column("shared", sa.Boolean(), nullable=False, server_default=sa.false())
    )
    _attempts()
    _acknowledgements()
    guard(op.get_bind(), ("attempts", "acknowledgements"))


def _attempts() -> None:
    op.create_table(
        "attempts",
        sa.Column("seq", _number(), nullable=False),
        sa.Column("notice", _number(), nullable=False),
        sa.Column("person", sa.String(128), nullable=False),
        sa.Column("at", sa.String(27), nullable=False),
        sa.Column("outcome", sa.String(16), nullable=False),
        sa.Column("status", sa.Integer()),
        _to_notice("attempts"),
        sa.PrimaryKeyConstraint("seq", name="pk_attempts"),
    )
    op.create_index("ix_attempts_notice", "attempts", ["notice"])


def _acknowledgements() -> None:
    op.create_table(
        "acknowledgements",
        sa.Column("notice", _number(), autoincrement=False, nullable=False),
        sa.Column("who", sa.String(128), nullable=False),
        sa.Column("at", sa.String(27), nullable=False),
        sa.Column("message", sa.String(64), nullable=False),
        _to_notice("acknowledgements"),
        sa.ForeignKeyConstraint(["message"], ["messages.id"], name="fk_acknowledgements_message"),
        sa.PrimaryKeyConstraint("notice", name="pk_acknowledgements"),
    )


def _number() -> sa.types.TypeEngine[int]:
    return sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def _to_notice(table: str) -> sa.ForeignKeyConstraint:
    return sa.ForeignKeyConstraint(["notice"], ["notices.seq"], name=f"fk_{table}_notice")
