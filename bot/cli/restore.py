"""`penline restore FILE`: a backup into an empty database, of either engine, and checked before it counts."""

from __future__ import annotations

from pathlib import Path

import click

from bot.cli.options import config_option, database_option, settings_of, what_is_wrong
from bot.cli.progress import followed, line_count
from bot.cli.verify import looked_through
from bot.store import LedgerError, open_store
from bot.store.copying import read_in


@click.command("restore")
@config_option
@database_option
@click.argument("file", type=click.Path(path_type=Path, dir_okay=False, exists=True))
def command(config: Path | None, database: str | None, file: Path) -> None:
    """Read FILE into an empty database. All of it, or nothing when an entry is not as it was recorded."""
    settings = settings_of(config, database_url=database)
    store = open_store(settings.database_url)
    try:
        with file.open(encoding="utf-8") as lines, store.connection() as connection:
            count = read_in(connection, followed(lines, "rows", line_count(lines)))
            flaw = next(looked_through(connection), None)
            if flaw is not None:
                raise LedgerError(f"{flaw.where}: {flaw.what}")
    except (LedgerError, UnicodeDecodeError) as wrong:
        raise click.ClickException(f"nothing was restored: {what_is_wrong(wrong)}") from wrong
    finally:
        store.close()
    click.echo(f"{count} rows restored, every entry as it was recorded.")
