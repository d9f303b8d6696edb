"""What several commands ask for: the settings, from the environment, a file, and their options."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path
from typing import Any, TypeVar

import click

from bot.settings import Settings, settings_from
from bot.unit import Unit

F = TypeVar("F", bound=Callable[..., Any])

_CONFIG = click.option(
    "--config",
    type=click.Path(path_type=Path, dir_okay=False),
    help="Settings file (TOML); PENLINE_... wins.",
)
_DATABASE = click.option("--database", metavar="URL", help="Instead of PENLINE_DATABASE_URL.")
_UNITS = click.option(
    "--unit",
    "units",
    multiple=True,
    type=click.Path(path_type=Path, dir_okay=False),
    help="Unit file, instead of PENLINE_UNITS; may be given again.",
)
_IN = click.option(
    "--in", "--unit-id", "unit_id", metavar="UNIT", help="Which unit, where the deployment has several."
)


def config_option(function: F) -> F:
    """The command takes `--config`."""
    return _CONFIG(function)


def database_option(function: F) -> F:
    """The command takes `--database`."""
    return _DATABASE(function)


def units_option(function: F) -> F:
    """The command takes `--unit`."""
    return _UNITS(function)


def in_option(function: F) -> F:
    """The command takes `--in`, by its longer name too."""
    return _IN(function)


def one_unit(units: tuple[Unit, ...], unit_id: str | None) -> Unit:
    """The unit of that id, or the only one. UsageError names the ids to choose from."""
    found = [unit for unit in units if unit_id in (None, unit.id)]
    if len(found) != 1:
        known = ", ".join(unit.id for unit in units) or "none"
        raise click.UsageError(f"say one unit of this deployment with --in: {known}")
    return found[0]


def what_is_wrong(error: Exception) -> str:
    """Why a file cannot be read in; one that is packed, or no text at all, is told as that."""
    return "the file is not UTF-8 text" if isinstance(error, UnicodeDecodeError) else str(error)


def settings_of(config: Path | None, **given: object) -> Settings:
    """The settings of the environment and the file, with what the options gave (by setting name) on top."""
    environ = dict(os.environ)
    for key, value in given.items():
        if isinstance(value, tuple):
            value = ",".join(map(str, value))
        if value not in (None, ""):
            environ[f"PENLINE_{key.upper()}"] = str(value)
    return settings_from(environ, config)
