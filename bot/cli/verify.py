"""`penline verify`: is the database as the program left it?"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from pathlib import Path

import click
from sqlalchemy import Connection, inspect

from bot.cli.options import config_option, database_option, settings_of
from bot.cli.progress import followed
from bot.store.connect import connect
from bot.store.store import Store
from bot.store.verify import Flaw, drain_count, flaws


@click.command("verify")
@config_option
@database_option
def command(config: Path | None, database: str | None) -> None:
    """Check schema, triggers and each drain's chain; exit code 1 names the first entry that is wrong."""
    settings = settings_of(config, database_url=database)
    store = Store(connect(settings.database_url, reading=True))
    with store.connection() as connection:
        found = tuple(looked_through(connection))
    store.close()
    for flaw in found:
        click.echo(f"{flaw.where}: {flaw.what}")
    if found:
        raise click.exceptions.Exit(1)
    click.echo("Every entry is as it was recorded.")


def looked_through(connection: Connection) -> Iterator[Flaw]:
    """What is wrong with the database, with a bar over its drains."""
    return flaws(connection, partial(followed, what="drains", total=_drains(connection)))


def _drains(connection: Connection) -> int | None:
    """None where the schema is not ours: that is told as the first flaw."""
    return drain_count(connection) if inspect(connection).has_table("entries") else None
