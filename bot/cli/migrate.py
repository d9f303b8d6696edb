"""`penline migrate`: bring a database to this version's schema, in the name of the role that owns it."""

from __future__ import annotations

from pathlib import Path

import click

from bot.cli.options import config_option, database_option, settings_of
from bot.store import open_store
from bot.store.schema import HEAD


@click.command("migrate")
@config_option
@database_option
def command(config: Path | None, database: str | None) -> None:
    """Make the schema, or bring it to this version's: for a database whose server may not do so itself."""
    settings = settings_of(config, database_url=database)
    open_store(settings.database_url).close()
    click.echo(f"The database is at step {HEAD}.")
