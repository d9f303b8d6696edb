"""`penline verify`: is the database as the program left it?"""

from __future__ import annotations

from pathlib import Path

import click

from bot.cli.options import config_option, database_option, settings_of
from bot.store.connect import connect
from bot.store.store import Store
from bot.store.verify import flaws


@click.command("verify")
@config_option
@database_option
def command(config: Path | None, database: str | None) -> None:
    """Check schema, triggers and each drain's chain; exit code 1 names the first entry that is wrong."""
    settings = settings_of(config, database_url=database)
    store = Store(connect(settings.database_url, reading=True))
    with store.connection() as connection:
        found = tuple(flaws(connection))
    store.close()
    for flaw in found:
        click.echo(f"{flaw.where}: {flaw.what}")
    if found:
        raise click.exceptions.Exit(1)
    click.echo("Every entry is as it was recorded.")
