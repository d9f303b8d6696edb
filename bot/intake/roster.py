"""Who is on which unit's list now: the unit files, and on top of them what was changed by command since.

A change made by command counts from the next message on, without a restart.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime

from bot.store import Book
from bot.store.people import PeopleEvent
from bot.unit import Person, Role, Unit


class Roster:
    """The units with their people. Keeps what it read until the database has news."""

    def __init__(self, units: tuple[Unit, ...]) -> None:
        self._files = units
        self._read: tuple[int, tuple[Unit, ...]] = (0, units)

    def units(self, book: Book) -> tuple[Unit, ...]:
        """The units with everyone who is or was on their lists; `until` says who no longer is."""
        newest = book.newest_people_event()
        known, units = self._read
        if newest != known:
            units = tuple(with_changes(unit, book.people_events()) for unit in self._files)
            self._read = (newest, units)
        return units

    def units_of(self, sender: str, now: datetime, book: Book) -> tuple[Unit, ...]:
        """The units whose list the sender is on at this moment."""
        return tuple(unit for unit in self.units(book) if listed(unit, sender, now) is not None)


def listed(unit: Unit, sender: str, now: datetime) -> Person | None:
    """Who that is on the unit's list; None for a stranger and for someone whose time is over."""
    person = unit.person(sender)
    if person is None or (person.until is not None and person.until <= now):
        return None
    return person


def with_changes(unit: Unit, events: Iterable[PeopleEvent]) -> Unit:
    """The unit with its list as these changes, in their order, have left it."""
    people = {person.id: person for person in unit.people}
    for event in events:
        if event.unit == unit.id:
            people[event.person] = _person(event)
    return replace(unit, people=tuple(people.values()))


def _person(event: PeopleEvent) -> Person:
    """The person after the change; whoever was removed stays known by name, with an end."""
    until = event.at if event.event == "removed" else event.until
    return Person(id=event.person, name=event.name, role=Role(event.role), until=until, shared=event.shared)
