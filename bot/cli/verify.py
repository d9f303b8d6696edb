"""`penline verify`: is the database as the program left it?"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from pathlib import Path

import click
from sqlalchemy import Connection, inspect

from bot.cli.options import config_option, database_option, settings_of, what_is_wrong
from bot.cli.progress import followed, line_count
from bot.store import LedgerError
from bot.store.beside import flaws_beside
from bot.store.connect import connect
from bot.store.store import Store
from bot.store.verify import Flaw, drain_count, flaws


@click.command("verify")
@config_option
@database_option
@click.option(
    "--backup",
    type=click.Path(path_type=Path, dir_okay=False, exists=True),
    help="Every row of this earlier backup must be there too, as it was.",
)
def command(config: Path | None, database: str | None, backup: Path | None) -> None:
    """Check schema, triggers, chains and seals; exit code 1 names the first entry or message gone wrong."""
    settings = settings_of(config, database_url=database)
    store = Store(connect(settings.database_url, reading=True))
    try:
        with store.connection() as connection:
            found = tuple(looked_through(connection))
            if backup is not None and not any(flaw.where == "schema" for flaw in found):
                found += tuple(_beside(connection, backup))
    except (LedgerError, UnicodeDecodeError) as wrong:
        raise click.ClickException(f"{backup} is no backup: {what_is_wrong(wrong)}") from wrong
    finally:
        store.close()
    for flaw in found:
        click.echo(f"{flaw.where}: {flaw.what}")
    if found:
        raise click.exceptions.Exit(1)
    click.echo("Every entry is as it was recorded.")


def looked_through(connection: Connection) -> Iterator[Flaw]:
    """What is wrong with the database, with a bar over its drains."""
    return flaws(connection, partial(followed, what="drains", total=_drains(connection)))


def _beside(connection: Connection, backup: Path) -> Iterator[Flaw]:
    """What the backup holds otherwise, with a bar over its rows."""
    with backup.open(encoding="utf-8") as lines:
        yield from flaws_beside(connection, followed(lines, "rows", line_count(lines)))


def _drains(connection: Connection) -> int | None:
    """None where the schema is not ours: that is told as the first flaw."""
    return drain_count(connection) if inspect(connection).has_table("entries") else None
