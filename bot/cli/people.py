"""`penline people`: who is on a unit's list, and changes to it, which count from the next message on."""

from __future__ import annotations

import getpass
from collections.abc import Callable
from datetime import UTC, datetime
from functools import partial, update_wrapper
from pathlib import Path
from typing import Any

import click

from bot.cli.options import config_option, database_option, in_option, one_unit, settings_of, units_option
from bot.cli.reach import reach
from bot.intake.roster import listed, with_changes
from bot.settings import Settings
from bot.store import Store, open_store
from bot.store.people import PeopleEvent
from bot.unit import Person, Role, Unit, load_units


class Office:
    """The unit whose list is looked at, and the database that keeps the changes."""

    def __init__(self, unit: Unit, store: Store) -> None:
        self.store = store
        self.unit = unit
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
@in_option
@click.pass_context
def command(
    context: click.Context,
    config: Path | None,
    database: str | None,
    units: tuple[Path, ...],
    unit_id: str | None,
) -> None:
    """List, enrol and remove the people of a unit."""
    context.obj = partial(_opened, settings_of(config, database_url=database, units=units), unit_id)


def _opened(settings: Settings, unit_id: str | None, context: click.Context) -> Office:
    unit = one_unit(load_units(settings.units), unit_id)
    store = open_store(settings.database_url)
    context.call_on_close(store.close)
    return Office(unit, store)


def in_the_office(function: Callable[..., None]) -> Callable[..., None]:
    """The command with the office before its own options: opened after they were read, so help needs none."""

    @click.pass_context
    def opened(context: click.Context, /, **given: Any) -> None:
        function(context.obj(context), **given)

    return update_wrapper(opened, function)


@command.command("list")
@in_the_office
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
@in_the_office
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
@in_the_office
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
