"""What a message was read as: frozen statements, each with the words that it came from.

Types only. `nlu.parse` makes them; `bot.reading` turns them into ledger entries. `None` in a slot
means that it was not said. Moments are aware datetimes in the unit's zone.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from types import MappingProxyType
from typing import ClassVar, Literal

Reason = Literal["cardiac", "lung", "trauma", "effusion", "air"]
AirLeak = Literal["none", "intermittent", "continuous", "present"]
Fluid = Literal["serous", "serosanguineous", "sanguineous", "purulent", "chylous", "bright_red", "dark_red"]
What = Literal[
    "tipped",
    "damaged",
    "disconnected",
    "dislodged",
    "raised",
    "clamped",
    "unclamped",
    "kinked",
    "suction_off",
    "suction_on",
]
Topic = Literal[
    "last",
    "chart",
    "total",
    "rate",
    "trend",
    "due",
    "handoff",
    "capacity",
    "beds",
    "checks",
    "history",
    "open",
    "me",
    "repeat",
]
Choice = Literal["misread", "new_canister", "earlier_wrong", "first", "second"]
WindowName = Literal["shift", "last_shift", "day", "last_day", "24h", "placement"]


@dataclass(frozen=True, slots=True)
class Span:
    """Where in the message a value was said: `message[start:end]`."""

    start: int
    end: int


NO_SPANS: Mapping[str, Span] = MappingProxyType({})


@dataclass(frozen=True, slots=True, kw_only=True)
class Statement:
    """The slots that every statement has; `spans` maps a slot to where it was said."""

    kind: ClassVar[str]
    bed: str | None = None
    tube: str | None = None
    at: datetime | None = None
    spans: Mapping[str, Span] = field(default_factory=lambda: NO_SPANS, compare=False, repr=False)


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark(Statement):
    """A line read on the canister, in mL; `closing` when said to be the end-of-shift line."""

    kind: ClassVar[str] = "mark"
    level_ml: int | None = None
    closing: bool = False
    about: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Drained(Statement):
    """An amount, not a level, in mL; 0 for "same", "no change", "nil out"."""

    kind: ClassVar[str] = "drained"
    volume_ml: int | None = None
    about: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Placed(Statement):
    """A new drain; `level_ml` is the opening level if said, `tubes` the joined ones."""

    kind: ClassVar[str] = "placed"
    level_ml: int | None = None
    reason: Reason | None = None
    weight_kg: float | None = None
    tubes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Described(Statement):
    """A reason or a weight told after the placement."""

    kind: ClassVar[str] = "described"
    reason: Reason | None = None
    weight_kg: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Exchanged(Statement):
    """The canister was changed: the old one's final level, and what the new one held before use, in mL."""

    kind: ClassVar[str] = "exchanged"
    final_ml: int | None = None
    opening_ml: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Removed(Statement):
    """The tube is out; `level_ml` is the last level of its canister."""

    kind: ClassVar[str] = "removed"
    level_ml: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Moved(Statement):
    """The patient went to another bed of the unit."""

    kind: ClassVar[str] = "moved"
    to_bed: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Away(Statement):
    """The patient is off the unit for a while (CT, theatre)."""

    kind: ClassVar[str] = "away"


@dataclass(frozen=True, slots=True, kw_only=True)
class Back(Statement):
    """The patient is back on the unit."""

    kind: ClassVar[str] = "back"


@dataclass(frozen=True, slots=True, kw_only=True)
class Left(Statement):
    """The patient left the unit for good: transferred out, discharged, died."""

    kind: ClassVar[str] = "left"


@dataclass(frozen=True, slots=True, kw_only=True)
class Corrected(Statement):
    """A wrong line put right; `bed` and `at` say which line is wrong, `level_ml` and `to_*` what is right."""

    kind: ClassVar[str] = "corrected"
    was_ml: int | None = None
    level_ml: int | None = None
    to_bed: str | None = None
    to_tube: str | None = None
    to_at: datetime | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Withdrawn(Statement):
    """The last message, or the line of that bed and time, was wrong and is taken back."""

    kind: ClassVar[str] = "withdrawn"


@dataclass(frozen=True, slots=True, kw_only=True)
class Checked(Statement):
    """What a check of the system found; suction is positive, 0 is gravity (water seal only)."""

    kind: ClassVar[str] = "checked"
    seal_cm: float | None = None
    suction_cmh2o: int | None = None
    wall_mmhg: int | None = None
    air_leak: AirLeak | None = None
    leak_grade: int | None = None
    tidaling: bool | None = None
    fluid: Fluid | None = None
    suction_indicator: Literal["in_range", "not_in_range"] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Ordered(Statement):
    """The suction that the provider ordered, in cmH2O (positive; 0 is water seal only)."""

    kind: ClassVar[str] = "ordered"
    suction_cmh2o: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Incident(Statement):
    """Something that happened to the drain."""

    kind: ClassVar[str] = "incident"
    what: What | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked(Statement):
    """A query; `window` is a named span, a span back from now, or the moment since."""

    kind: ClassVar[str] = "asked"
    topic: Topic | None = None
    window: WindowName | timedelta | datetime | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Answered(Statement):
    """An answer to what the bot asked: yes, no, a choice, a bare value, or several of these."""

    kind: ClassVar[str] = "answered"
    answer: Literal["yes", "no"] | None = None
    choice: Choice | None = None
    level_ml: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Acknowledged(Statement):
    """A notice about the bed was seen, or an amendment was made."""

    kind: ClassVar[str] = "acknowledged"


@dataclass(frozen=True, slots=True, kw_only=True)
class Help(Statement):
    """How does this work?"""

    kind: ClassVar[str] = "help"


@dataclass(frozen=True, slots=True, kw_only=True)
class Unclear:
    """A thing to ask. `slot` is a slot of the kind, or `kind`.

    `choices` are the values that stand (none: it was not said). `readings` are the whole statements
    that go with them, in the same order; empty where the other slots do not depend on the choice.
    `statement` is the partial form: what is sure. `text` is the stretch of the message it is about.
    """

    slot: str
    text: str
    choices: tuple[str | int | float | datetime, ...] = ()
    readings: tuple[Statement, ...] = ()
    statement: Statement | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Parsed:
    """Everything that one message said, in the order said.

    `unread` are stretches with numbers that nobody here knows: they were left out beside what is whole.
    """

    text: str
    statements: tuple[Statement, ...] = ()
    unclear: tuple[Unclear, ...] = ()
    unread: tuple[str, ...] = ()
