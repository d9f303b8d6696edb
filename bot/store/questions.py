"""A question as it is kept: who was asked what, about which drain, and the statement that it holds back.

Open or lapsed is a function of when it was asked, whether it was settled, and the moment; it is never stored.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal

LAPSES_AFTER = timedelta(minutes=15)

Outcome = Literal["answered", "replaced", "withdrawn", "recorded", "dropped"]


@dataclass(frozen=True, slots=True)
class Choice:
    """One answer that is offered: what to say, and what it means."""

    say: str
    label: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """What was asked back; `said_json` is the statement that waits for it, `id` is given on asking."""

    id: str = ""
    unit: str
    sender: str
    bed: str | None
    drain: str | None
    slot: str
    asked_at: datetime
    message: str
    text: str
    said_json: str
    choices: tuple[Choice, ...] = ()
    danger: bool = False

    @property
    def offered(self) -> dict[str, str]:
        """What can be said to it, in the order in which it was named, and what each means."""
        return {choice.say: choice.label for choice in self.choices}

    def lapsed(self, now: datetime) -> bool:
        """Whether nobody answered in time, so that its reading counts as unconfirmed."""
        return now - self.asked_at > LAPSES_AFTER
