"""One immutable row of a drain's ledger, and what it can hold.

Everything else that the engine says is a function of these rows: nothing derived is stored. Levels
and volumes are whole millilitres; moments are aware and in UTC (subtracting two moments of one zone
is wall-clock arithmetic, wrong by an hour when the clocks change).
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime
from enum import StrEnum
from typing import ClassVar, Literal, TypeAlias


class Reason(StrEnum):
    """Why the tube is there; `general` until told. Chooses the rows of the policy."""

    GENERAL = "general"
    CARDIAC = "cardiac"
    LUNG = "lung"
    TRAUMA = "trauma"
    EFFUSION = "effusion"
    AIR = "air"


class What(StrEnum):
    """What can happen to a drain."""

    TIPPED = "tipped"
    DAMAGED = "damaged"
    DISCONNECTED = "disconnected"
    DISLODGED = "dislodged"
    RAISED = "raised"
    CLAMPED = "clamped"
    UNCLAMPED = "unclamped"
    KINKED = "kinked"
    SUCTION_OFF = "suction_off"
    SUCTION_ON = "suction_on"


@dataclass(frozen=True, slots=True, kw_only=True)
class Placed:
    """The tube was put in. `opening_ml` None: what the canister held is not known (a baseline is asked)."""

    kind: ClassVar[str] = "placed"
    bed: str
    tube: str | None = None
    opening_ml: int | None = None
    reason: Reason | None = None
    weight_kg: float | None = None
    joined: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Opened:
    """The drain's first word here without a placement: it was found in this bed."""

    kind: ClassVar[str] = "opened"
    bed: str
    tube: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Described:
    """A reason, a weight in kg, or the name of a tube that had none, told later."""

    kind: ClassVar[str] = "described"
    reason: Reason | None = None
    weight_kg: float | None = None
    tube: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """A level read on the canister, in mL. `accepted`: codes that the nurse was asked about and kept."""

    kind: ClassVar[str] = "mark"
    level_ml: int
    closing: bool = False
    about: bool = False
    accepted: tuple[str, ...] = ()
    told_ml: int | None = None
    """Set when an amount was told ("drained 210") and the line was reckoned from it."""
    moved_from: str | None = None
    """Entry that this replaces on another drain (a wrong bed or tube put right)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class FinalLevel:
    """The last level of a canister, in mL, read before it is thrown away; may come after the exchange."""

    kind: ClassVar[str] = "final"
    level_ml: int
    exchange: str | None = None
    """The exchange entry that it ends the canister of; None: told with or before the exchange or removal."""
    accepted: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Exchanged:
    """A new canister; it opens at `opening_ml` (0 unless told)."""

    kind: ClassVar[str] = "exchanged"
    opening_ml: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Removed:
    """The tube is out."""

    kind: ClassVar[str] = "removed"


@dataclass(frozen=True, slots=True, kw_only=True)
class Left:
    """The patient left the unit: closes the drain without a removal."""

    kind: ClassVar[str] = "left"


@dataclass(frozen=True, slots=True, kw_only=True)
class Moved:
    """The patient, and so the drain, went to another bed."""

    kind: ClassVar[str] = "moved"
    from_bed: str
    to_bed: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Away:
    """The patient is off the unit for a while; nothing is due until back."""

    kind: ClassVar[str] = "away"


@dataclass(frozen=True, slots=True, kw_only=True)
class Back:
    """The patient is back."""

    kind: ClassVar[str] = "back"


@dataclass(frozen=True, slots=True, kw_only=True)
class Checked:
    """A check of the system; None is "not looked at". Suction is positive, 0 is water seal only."""

    kind: ClassVar[str] = "checked"
    seal_cm: float | None = None
    suction_cmh2o: int | None = None
    wall_mmhg: int | None = None
    air_leak: Literal["none", "intermittent", "continuous", "present"] | None = None
    leak_grade: int | None = None
    tidaling: bool | None = None
    fluid: str | None = None
    suction_indicator: Literal["in_range", "not_in_range"] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Ordered:
    """The suction that the provider ordered, in cmH2O (positive; 0 is water seal only)."""

    kind: ClassVar[str] = "ordered"
    suction_cmh2o: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Incident:
    """Something that happened to the drain."""

    kind: ClassVar[str] = "incident"
    what: What


@dataclass(frozen=True, slots=True, kw_only=True)
class Correction:
    """The entry `target` was wrong: what is given here holds instead. The original stays."""

    kind: ClassVar[str] = "corrected"
    target: str
    level_ml: int | None = None
    at: datetime | None = None
    accepted: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Withdrawal:
    """The entry `target` does not count; `moved_to` names the entry on another drain that replaces it."""

    kind: ClassVar[str] = "withdrawn"
    target: str
    moved_to: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Seen:
    """Someone saw the cautions of this bed, or says that the amendments were made on the chart."""

    kind: ClassVar[str] = "acknowledged"
    amended: bool = False


Payload: TypeAlias = (
    Placed
    | Opened
    | Described
    | Line
    | FinalLevel
    | Exchanged
    | Removed
    | Left
    | Moved
    | Away
    | Back
    | Checked
    | Ordered
    | Incident
    | Correction
    | Withdrawal
    | Seen
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Entry:
    """One row: what happened (`payload`), when (`at`), and when, by whom and by which message entered."""

    drain: str
    position: int
    """1, 2, ... within its drain, in the order of recording."""
    at: datetime
    entered: datetime
    who: str
    message: str
    payload: Payload

    def __post_init__(self) -> None:
        if self.at.tzinfo is not UTC or self.entered.tzinfo is not UTC:
            raise ValueError("an entry's moments are in UTC")

    @property
    def id(self) -> str:
        """The entry's name, the same on every export: drain and position."""
        return f"{self.drain}-{self.position}"
