"""What a message says, in ledger words: types only, frozen.

Made by `bot.reading` from what was read, taken by `bot.dialogue.turn`. Moments are in UTC; `at` None means
that no time was said. Volumes and levels are whole mL.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final, Literal, TypeAlias

from bot.engine.entries import (
    Away,
    Back,
    Checked,
    Described,
    Exchanged,
    Incident,
    Left,
    Line,
    Moved,
    Ordered,
    Placed,
    Removed,
)

Fact: TypeAlias = (
    Line
    | Placed
    | Described
    | Exchanged
    | Removed
    | Moved
    | Away
    | Back
    | Left
    | Checked
    | Ordered
    | Incident
)
Topic: TypeAlias = Literal[
    "last", "chart", "total", "rate", "trend", "due", "handoff", "capacity", "beds", "checks", "history",
    "open", "me", "repeat",
]  # fmt: skip
Window: TypeAlias = Literal["shift", "last_shift", "day", "last_day", "24h", "placement"]
Choice: TypeAlias = Literal["misread", "new_canister", "earlier_wrong", "first", "second"]
_MANY: Final = 3
"""So many numbers are more than the level and the time of one line."""
Value: TypeAlias = str | int | float | bool | datetime | timedelta | tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Report:
    """Something that happened at a drain; `final_ml` of an exchange or removal: the canister's last level.

    `of_old`: told as the level of an old canister, with no word of a change, which may be recorded already.
    """

    bed: str
    tube: str | None = None
    at: datetime | None = None
    fact: Fact
    final_ml: int | None = None
    of_old: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Amount:
    """What drained since the last line, in mL; not a level."""

    bed: str
    tube: str | None = None
    at: datetime | None = None
    volume_ml: int
    about: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Fix:
    """A line is wrong: `bed`, `tube`, `at`, `was_ml`, `of_final` say which, the others what is right.

    `of_final`: it is the final level of an old canister.
    """

    bed: str | None = None
    tube: str | None = None
    at: datetime | None = None
    was_ml: int | None = None
    level_ml: int | None = None
    to_bed: str | None = None
    to_tube: str | None = None
    to_at: datetime | None = None
    of_final: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class TakeBack:
    """Without a bed: the sender's last message whole. With one: the line of that bed and time."""

    bed: str | None = None
    tube: str | None = None
    at: datetime | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Query:
    """A question to the bot. `window`: a named span, a span back from now, or the moment since."""

    topic: Topic
    bed: str | None = None
    tube: str | None = None
    at: datetime | None = None
    window: Window | timedelta | datetime | None = None
    page: int = 1
    """Which page of a long reply: its last line says how to ask for the next one."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Answered:
    """An answer to what the bot asked: yes, no, a choice, a bare value, or several of these."""

    bed: str | None = None
    tube: str | None = None
    at: datetime | None = None
    yes: bool | None = None
    choice: Choice | None = None
    level_ml: int | None = None

    @property
    def place(self) -> int | None:
        """Which of those that were offered "first" or "second" names; None where neither was said."""
        return {"first": 0, "second": 1}.get(self.choice or "")


@dataclass(frozen=True, slots=True, kw_only=True)
class SeenIt:
    """The cautions of a bed were seen; `amended`: its chart was amended as the bot said."""

    bed: str
    tube: str | None = None
    amended: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class HelpMe:
    """How does this work?"""

    bed: str | None = None


Said: TypeAlias = Report | Amount | Fix | TakeBack | Query | Answered | SeenIt | HelpMe


@dataclass(frozen=True, slots=True, kw_only=True)
class Slots:
    """A statement that may not be whole, by the names of its slots; `built` makes it a `Said`."""

    kind: str
    bed: str | None = None
    tube: str | None = None
    at: datetime | None = None
    values: tuple[tuple[str, Value], ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class NotSure:
    """Something to ask before anything is done with it.

    `slot`: what is not sure. `choices`: the values that stand (none: it was not said). `readings`: the whole
    statements that go with the choices, in the same order. `partial`: what is sure. `text`: the words that
    it is about. `beside`: the numbers of the message that neither this nor anything else it says
    explains, where no readings are offered.
    """

    slot: str
    text: str
    choices: tuple[Value, ...] = ()
    readings: tuple[Said, ...] = ()
    partial: Slots | None = None
    beside: tuple[str, ...] = ()

    @property
    def leaves_out_much(self) -> bool:
        """Whether more stands beside it than the level and the time of the one line asked about."""
        return len(self.beside) >= _MANY


@dataclass(frozen=True, slots=True, kw_only=True)
class Message:
    """All that one message says.

    `reply`: what it says if it is taken for an answer to an open question; `fix`: what it puts right if the
    sender's last message told a line.
    """

    said: tuple[Said, ...] = ()
    unclear: tuple[NotSure, ...] = ()
    reply: Answered | None = None
    fix: Fix | None = None
    text: str = ""
    """The message itself, for a name that is no statement."""
    unread: tuple[str, ...] = ()
    """Stretches of it with numbers that nobody knows, beside what was read."""
