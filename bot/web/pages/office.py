"""What every page is made from: the deployment, its links, its limits, its clock."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import datetime
from threading import Lock
from typing import TypeVar

from bot.dialogue.context import Context
from bot.intake import Deployment
from bot.links import Links
from bot.store import Book
from bot.unit import Person, Unit
from bot.web.rates import Rates

T = TypeVar("T")


class UsedDoors:
    """Links to the pages that were used: each opens once. Kept in memory, as long as they would open."""

    def __init__(self) -> None:
        self._lock = Lock()
        self._used: dict[str, datetime] = {}

    def use(self, token: str, now: datetime, until: datetime) -> bool:
        """Use a link; False when it was used before."""
        with self._lock:
            self._used = {each: end for each, end in self._used.items() if end > now}
            return self._used.setdefault(token, until) is until


@dataclass(frozen=True, slots=True, kw_only=True)
class Office:
    """One deployment, as the pages see it. `demo`: whoever opens it may choose who they are."""

    deployment: Deployment
    links: Links
    rates: Rates
    clock: Callable[[], datetime]
    demo: bool = False
    used: UsedDoors = field(default_factory=UsedDoors)

    def units(self) -> tuple[Unit, ...]:
        """The units with their people as they are now."""
        return self.deployment.store.transact(self.deployment.roster.units)

    def looks(self, unit: Unit, person: Person, now: datetime, look: Callable[[Context, Book], T]) -> T:
        """What someone of the unit sees in one transaction."""
        context = Context(unit=unit, person=person, now=now, message_id="", links=self.links)
        return self.deployment.store.transact(lambda book: look(context, book), unit.id)
