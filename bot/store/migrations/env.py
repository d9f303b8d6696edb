"""What alembic runs: the steps on the connection that it was handed, in that connection's transaction."""

from __future__ import annotations

from alembic import context

from bot.store.tables import metadata

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=metadata,
    transaction_per_migration=False,
)
with context.begin_transaction():
    context.run_migrations()
