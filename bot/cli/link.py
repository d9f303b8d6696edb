"""`penline link`: a link that opens the pages for someone on a unit's list, once and for a short time."""

from __future__ import annotations

from pathlib import Path

import click

from bot.cli.options import config_option, database_option, in_option, one_unit, settings_of, units_option
from bot.cli.people import Office
from bot.config import ConfigError
from bot.intake.roster import listed
from bot.links import DOOR_MIN, Links
from bot.settings import ENVIRONMENT
from bot.store import open_store
from bot.unit import load_units


@click.command("link", help="Print a link to the pages for SENDER, as the gateway calls them.")
@click.argument("sender")
@config_option
@database_option
@units_option
@in_option
def command(
    sender: str, config: Path | None, database: str | None, units: tuple[Path, ...], unit_id: str | None
) -> None:
    """The link, on a line of its own; what it does is told on the other stream."""
    settings = settings_of(config, database_url=database, units=units)
    if settings.address is None:
        raise ConfigError(ENVIRONMENT, "PENLINE_ADDRESS", "there are no pages without an address")
    if not settings.secrets:
        raise ConfigError(ENVIRONMENT, "PENLINE_SECRETS", "there is no signing secret")
    store = open_store(settings.database_url)
    try:
        office = Office(one_unit(load_units(settings.units), unit_id), store)
        person = listed(office.current(), sender, office.now)
    finally:
        store.close()
    if person is None:
        raise click.UsageError(f"{sender} is not on the list of {office.unit.name}")
    link = Links(settings.address, settings.secrets).door(office.unit.id, person.id, office.now)
    click.echo(f"Opens once, within {DOOR_MIN} min, as {person.name} of {office.unit.name}:", err=True)
    click.echo(link.url)
