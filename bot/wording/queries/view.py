"""From when and where a reply is written: the moment, the unit's zone, and who is who."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime, tzinfo
from types import MappingProxyType

from bot.wording import formats
from bot.wording.gsm import gsm_only

_NOBODY: Mapping[str, str] = MappingProxyType({})


@dataclass(frozen=True, slots=True, kw_only=True)
class View:
    """The moment now, the unit's zone, and the names of its people by their id."""

    zone: tzinfo
    now: datetime
    people: Mapping[str, str] = field(default_factory=lambda: _NOBODY)

    def clock(self, moment: datetime) -> str:
        """The time in the unit's zone, with the day when it is not today."""
        return formats.clock(moment, self.zone, self.now)

    def stretch(self, begin: datetime, end: datetime) -> str:
        """Two moments in the unit's zone, with the day when it is not today."""
        return formats.stretch(begin, end, self.zone, self.now)

    def ago(self, moment: datetime) -> str:
        """How long ago: "35 min ago"."""
        return f"{formats.elapsed(moment, self.now)} ago"

    def who(self, person: str) -> str:
        """The person's name; the id of someone who is no longer on the list."""
        return gsm_only(self.people.get(person, person))


def place(bed: str, tube: str | None) -> str:
    """The bed and tube as a reply begins with them: "Bed 12", "Bed 12 left"."""
    return gsm_only(f"Bed {bed} {tube}" if tube else f"Bed {bed}")


def tube_to_say(tube: str | None) -> str:
    """The tube as a message names it: "left", "tube A"; empty for the only one."""
    return f"tube {tube}" if tube and len(tube) == 1 else tube or ""


def sentence(*parts: str) -> str:
    """The parts that are not empty, joined by commas and closed with a full stop."""
    return f"{', '.join(part for part in parts if part)}."
