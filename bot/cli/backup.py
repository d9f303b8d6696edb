"""`penline backup FILE`: every row, as of one moment, while the bot goes on answering."""

from __future__ import annotations

import os
from pathlib import Path

import click

from bot.cli.options import config_option, database_option, settings_of
from bot.cli.progress import followed
from bot.store.connect import connect
from bot.store.copying import lines_of, row_count
from bot.store.store import Store


@click.command("backup")
@config_option
@database_option
@click.argument("file", type=click.Path(path_type=Path, dir_okay=False))
def command(config: Path | None, database: str | None, file: Path) -> None:
    """Copy every row into FILE, which must be new; only its owner can read it."""
    settings = settings_of(config, database_url=database)
    store = Store(connect(settings.database_url, reading=True))
    try:
        _copy(store, file)
    except FileExistsError as there:
        raise click.UsageError(f"{there.filename2 or there.filename} is there already") from there
    finally:
        store.close()
    click.echo(f"Everything is in {file}.")


def _copy(store: Store, file: Path) -> None:
    """Write the copy beside its place, and put it there once it is whole; no part of one is left."""
    partial = file.with_name(f"{file.name}.partial")
    handle = os.open(partial, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600)
    try:
        with os.fdopen(handle, "w", encoding="utf-8") as lines, store.connection() as connection:
            rows = followed(lines_of(connection), "rows", row_count(connection))
            lines.writelines(f"{row}\n" for row in rows)
            lines.flush()
            os.fsync(lines.fileno())
        os.link(partial, file)  # fails where there is such a file, unlike a rename
    finally:
        partial.unlink()
