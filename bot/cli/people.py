"""`penline people`: who is on a unit's list, and changes to it, which count from the next message on."""

from __future__ import annotations

import getpass
from datetime import UTC, datetime
from pathlib import Path

import click

from bot.cli.options import config_option, database_option, settings_of, units_option
from bot.cli.reach import reach
from bot.config import ConfigError
from bot.intake.roster import listed, with_changes
from bot.store import Store, open_store
from bot.store.people import PeopleEvent
from bot.unit import Person, Role, Unit, load_units


class Office:
    """The unit whose list is looked at, and the database that keeps the changes."""

    def __init__(self, units: tuple[Unit, ...], unit_id: str | None, store: Store) -> None:
        self.store = store
        self.unit = _one_unit(units, unit_id)
        self.now = datetime.now(UTC)

    def current(self) -> Unit:
        """The unit with its list as it stands."""
        with self.store.turn() as book:
            return with_changes(self.unit, book.people_events())

    def note(self, event: PeopleEvent) -> None:
        """Keep a change."""
        with self.store.turn() as book:
            book.note_person(event)


@click.group("people")
@config_option
@database_option
@units_option
@click.option("--in", "unit_id", metavar="UNIT", help="Which unit, where the deployment has several.")
@click.pass_context
def command(
    context: click.Context,
    config: Path | None,
    database: str | None,
    units: tuple[Path, ...],
    unit_id: str | None,
) -> None:
    """List, enrol and remove the people of a unit."""
    settings = settings_of(config, database_url=database, units=units)
    found = load_units(settings.units)
    store = open_store(settings.database_url)
    context.call_on_close(store.close)
    context.obj = Office(found, unit_id, store)


@command.command("list")
@click.pass_obj
def show(office: Office) -> None:
    """Who may write now, and who could once."""
    for person in office.current().people:
        click.echo(_line(person, office))


@command.command("enrol")
@click.argument("sender")
@click.option("--name", required=True, help="As it stands in replies.")
@click.option("--role", required=True, type=click.Choice([role.value for role in Role]))
@click.option("--until", type=click.DateTime(["%Y-%m-%dT%H:%M"]), help="Ward time; for agency staff.")
@click.option("--shared", is_flag=True, help="A ward phone: it asks who is writing.")
@click.pass_obj
def enrol(office: Office, sender: str, name: str, role: str, until: datetime | None, shared: bool) -> None:
    """Put SENDER (what the gateway sends) on the list, or change who that is."""
    if not (0 < len(sender) <= 128 and sender.isprintable() and 0 < len(name) <= 40 and name.isprintable()):
        raise click.UsageError("the sender has 1 to 128 printable characters, the name 1 to 40")
    end = None if until is None else until.replace(tzinfo=office.unit.zone).astimezone(UTC)
    if end is not None and end <= office.now:
        raise click.UsageError("--until is over already")
    person = Person(id=sender, name=name, role=Role(role), until=end, shared=shared)
    office.note(_event(office, person, removed=False))
    click.echo(_line(person, office))


@command.command("remove")
@click.argument("sender")
@click.pass_obj
def remove(office: Office, sender: str) -> None:
    """Take SENDER off the list. What they recorded stays."""
    person = listed(office.current(), sender, office.now)
    if person is None:
        raise click.UsageError(f"{sender} is not on the list of {office.unit.name}")
    office.note(_event(office, person, removed=True))
    click.echo(f"{person.name} is no longer on the list of {office.unit.name}.")
    if sender in office.unit.notify.people:
        for fault in reach(office.current(), datetime.now(UTC)).faults():
            click.echo(fault, err=True)


def _event(office: Office, person: Person, *, removed: bool) -> PeopleEvent:
    return PeopleEvent(
        unit=office.unit.id,
        person=person.id,
        event="removed" if removed else "enrolled",
        name=person.name,
        role=person.role.value,
        until=person.until,
        at=office.now,
        by=getpass.getuser(),
        shared=person.shared,
    )


def _line(person: Person, office: Office) -> str:
    """One person: sender, name, role, and until when."""
    words = [person.id, person.name, person.role.value, *(["shared phone"] if person.shared else [])]
    if person.until is not None:
        over = "over since" if person.until <= office.now else "until"
        words.append(f"{over} {person.until.astimezone(office.unit.zone):%Y-%m-%d %H:%M}")
    return "  ".join(words)


def _one_unit(units: tuple[Unit, ...], unit_id: str | None) -> Unit:
    fitting = [unit for unit in units if unit_id in (None, unit.id)]
    if len(fitting) != 1:
        known = ", ".join(unit.id for unit in units) or "none"
        raise ConfigError("the command line", "--in", f"must name one unit of this deployment: {known}")
    return fitting[0]
