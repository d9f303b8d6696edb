"""The third step: every message is sealed with its reply and what it recorded; older ones as they are now."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

from bot.store.sealing import seal_the_rest
from bot.store.triggers import guard

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the table, seal what is there, and guard it."""
    op.create_table(
        "seals",
        sa.Column(
            "number",
            sa.BigInteger().with_variant(sa.Integer(), "sqlite"),
            autoincrement=False,
            nullable=False,
        ),
        sa.Column("unit", sa.String(64), nullable=False),
        sa.Column("chain", sa.String(64), nullable=False),
        sa.ForeignKeyConstraint(["number"], ["messages.seq"], name="fk_seals_number"),
        sa.PrimaryKeyConstraint("number", name="pk_seals"),
    )
    op.create_index("ix_seals_unit_number", "seals", ["unit", "number"])
    seal_the_rest(op.get_bind())
    guard(op.get_bind(), ("seals",))
