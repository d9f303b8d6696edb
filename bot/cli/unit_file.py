"""What the commands without a deployment take: one unit file, or the invented demo ward."""

from __future__ import annotations

from pathlib import Path

import click

from bot.unit import Unit, demo_unit, load_unit

unit_option = click.option(
    "--unit",
    type=click.Path(exists=True, dir_okay=False, path_type=Path),
    help="A unit file; the invented demo ward unless given.",
)


def unit_or_demo(path: Path | None) -> Unit:
    """The unit of the file, or the demo ward. ConfigError names what is wrong with it."""
    return demo_unit() if path is None else load_unit(path)
