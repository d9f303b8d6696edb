"""What several commands take: the unit file."""

from __future__ import annotations

from pathlib import Path

import click

from bot.config import ConfigError
from bot.unit import Unit, demo_unit, load_unit

unit_option = click.option(
    "--unit",
    type=click.Path(exists=True, dir_okay=False, path_type=Path),
    help="A unit file; the invented demo ward unless given.",
)


def unit_or_demo(path: Path | None) -> Unit:
    """The unit of the file, or the demo ward. A file that is wrong ends the command with code 2."""
    try:
        return demo_unit() if path is None else load_unit(path)
    except ConfigError as error:
        raise click.UsageError(str(error)) from error
