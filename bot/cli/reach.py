"""Whom a unit's notices reach at this moment: those named under [notify] who are on the unit's list now.

Someone named there may be enrolled later by command, or have left: they are passed over, and it is said.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from bot.intake.roster import listed
from bot.unit import Role, Unit


@dataclass(frozen=True, slots=True, kw_only=True)
class Reach:
    """The ids named under [notify], in their order: who can be told now, and who cannot."""

    unit: str
    people: tuple[str, ...]
    missing: tuple[str, ...]
    readers: tuple[str, ...] = ()
    """Of the people, those who are told and cannot say that they have seen it."""

    def faults(self) -> tuple[str, ...]:
        """What whoever runs the ward must know, a line each; nothing while everyone can be told."""
        if not self.people and not self.missing:
            return (f"{self.unit} names nobody to notify: see [notify] in its unit file",)
        passed = tuple(
            f"{each} is named under [notify] and is not on the list of {self.unit}: passed over"
            for each in self.missing
        )
        mute = tuple(
            f"{each} is named under [notify] and only reads in {self.unit}: cannot answer that it was seen"
            for each in self.readers
        )
        alone = () if self.people else (f"{self.unit} has nobody to notify: its notices wait",)
        return (*passed, *mute, *alone)


def reach(unit: Unit, now: datetime) -> Reach:
    """Whom the notices of a unit reach; `unit` with its people as they are now."""
    found = {each: listed(unit, each, now) for each in unit.notify.people}
    return Reach(
        unit=unit.name,
        people=tuple(each for each, person in found.items() if person is not None),
        missing=tuple(each for each, person in found.items() if person is None),
        readers=tuple(each for each, person in found.items() if person and person.role is Role.READER),
    )
