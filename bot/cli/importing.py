"""`penline import FILE`: a unit's ledgers from the lines of `penline export --jsonl`, on either engine."""

from __future__ import annotations

from pathlib import Path

import click

from bot.cli.options import (
    config_option,
    database_option,
    in_option,
    one_unit,
    settings_of,
    units_option,
    what_is_wrong,
)
from bot.cli.progress import followed
from bot.dialogue.answer import Answer
from bot.interchange.jsonl import Exported
from bot.store import LedgerError, open_store
from bot.store.importing import import_entries
from bot.unit import load_units

_REPLY = "This was recorded before the ledger moved here."


@click.command("import")
@config_option
@database_option
@units_option
@in_option
@click.argument("file", type=click.Path(path_type=Path, dir_okay=False, exists=True))
def command(
    config: Path | None, database: str | None, units: tuple[Path, ...], unit_id: str | None, file: Path
) -> None:
    """Add the ledgers in FILE to a unit that does not have them. All of them, or none."""
    settings = settings_of(config, database_url=database, units=units)
    unit = one_unit(load_units(settings.units), unit_id)
    store = open_store(settings.database_url)
    answer = Answer(id="", status="recorded", reply=_REPLY, speech=_REPLY, segments=1)
    try:
        with file.open(encoding="utf-8") as lines, store.connection() as connection:
            told = Exported(followed(lines, "entries"))
            count = import_entries(connection, unit.id, told, answer.as_json())
    except (LedgerError, UnicodeDecodeError) as wrong:
        raise click.ClickException(f"nothing was imported: {what_is_wrong(wrong)}") from wrong
    finally:
        store.close()
    if not told.whole:
        click.echo(
            "The file is of an older version, without an end: whether it was cut cannot be told.", err=True
        )
    click.echo(f"{count} entries imported.")
