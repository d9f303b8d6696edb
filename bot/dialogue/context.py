"""What is known of a message beside its words: whose it is, where, and when."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Literal

from bot.links import Links
from bot.store.notices import Notice
from bot.unit import Person, Unit
from bot.wording.queries.view import View

SKEW = timedelta(minutes=5)
"""A phone's clock may be this far ahead of ours."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Context:
    """One message's surroundings; `now` is its arrival, in UTC."""

    unit: Unit
    person: Person
    now: datetime
    sent_at: datetime | None = None
    message_id: str
    channel: Literal["text", "voice"] = "text"
    device: str | None = None
    """The sender id of the shared phone that the person writes from."""

    links: Links | None = None
    """Where replies may point to; None where the deployment has no address."""

    @property
    def sender(self) -> str:
        """Whose messages these are to the gateway: the phone's, where it is shared."""
        return self.device or self.person.id

    @property
    def view(self) -> View:
        """From when and where a reply is written; who is or was on the unit's list has a name there."""
        names = {self.person.id: self.person.name, **self.unit.names}
        return View(zone=self.unit.zone, now=self.now, people=names)

    def notice(self, bed: str | None, code: str, text: str) -> Notice:
        """What this message has to tell someone who did not ask, about a bed."""
        return Notice(
            unit=self.unit.id,
            bed=bed,
            drain=None,
            code=code,
            text=text,
            queued_at=self.now,
            message=self.message_id,
        )

    @property
    def said_at(self) -> datetime:
        """The moment that holds where no time was said, to the minute: when sent, else when arrived."""
        moment = self.now
        if self.sent_at is not None and self.sent_at <= self.now + SKEW:
            moment = min(self.sent_at.astimezone(UTC), self.now)
        return moment.replace(second=0, microsecond=0)

    @property
    def late_by(self) -> timedelta:
        """How long the message was on its way."""
        if self.sent_at is None:
            return timedelta()
        return max(timedelta(), self.now - self.sent_at)
