"""The steps of the schema, run by alembic; `bot.store.schema` calls it."""
