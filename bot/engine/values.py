"""What the engine computes: frozen values, in whole mL and UTC moments. No rules here, only words.

Made by `ledger`, `shifts`, `windows`, `amend`, `admit`, `cautions`, `forecast` and `due`; read by
dialogue, wording, interchange and notices.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from itertools import pairwise
from operator import attrgetter
from typing import Final, Literal, TypeAlias

GivenOut: TypeAlias = tuple[datetime, datetime, int, bool, datetime]
"""From when, until when, how much in mL, whether at least, and when the shift starts that charts it."""

AT: Final = attrgetter("at")
"""The moment of a level, an entry or a point: what they are looked up by."""


class Severity(StrEnum):
    """FHIR DetectedIssue severity; shown as URGENT, CAUTION, NOTE."""

    HIGH = "high"
    MODERATE = "moderate"
    LOW = "low"


@dataclass(frozen=True, slots=True, kw_only=True)
class Level:
    """One level in its place on the ledger: what was read, and the drain's total there.

    `total_ml` is T(x): everything since the first line or placement, across canisters. `at_least`
    is true when a canister before it has no final level (or was tipped), so that the total is a lower bound.
    """

    entry: str
    at: datetime
    entered: datetime
    who: str
    level_ml: int
    total_ml: int
    at_least: bool
    canister: int
    kind: Literal["mark", "final", "opening"]
    closing: bool = False
    about: bool = False
    baseline: bool = False
    """True when nothing is charted up to this level: a first line, a fall, a line after a tip-over."""
    codes: tuple[str, ...] = ()
    """`line_fell`, `duplicate`, `over_capacity`, `jump`, ...: what is known about this reading."""
    corrected: bool = False
    gaps: int = 0
    """How many stretches of unknown volume lie before it: where two differ, the sum is "at least"."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Canister:
    """One canister of the drain, from the exchange (or placement) that opened it to the one that ended it.

    `opening_ml` None: it was found in use. `final` None: no final level told (yet), or tipped over.
    """

    index: int
    opened_by: str | None = None
    opened_at: datetime | None = None
    opening_ml: int | None = None
    closed_by: str | None = None
    closed_at: datetime | None = None
    final: Level | None = None
    tipped: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Shift:
    """One shift of the unit, [start, end) in UTC; `name` is day, evening or night."""

    start: datetime
    end: datetime
    name: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Boundary:
    """The line that a shift start (or the end of a window) is cut at.

    how: `closing` (told to be the closing line), `near` (the nearest within the grace) or `earlier` (the
    last one before it, flagged `no_boundary_line`: the cut is not where it should be).
    """

    level: Level
    start: datetime
    how: Literal["closing", "near", "earlier"]

    @property
    def lined(self) -> bool:
        """True when there was a line at that moment, false when an earlier one stands in."""
        return self.how != "earlier"


@dataclass(frozen=True, slots=True, kw_only=True)
class Interval:
    """Between two neighbouring levels: the volume to chart, V(a, b) = T(b) - T(a)."""

    begin: Level
    end: Level
    volume_ml: int
    at_least: bool
    shift: Shift
    """The shift that charts it."""
    includes_before: datetime | None = None
    """Set when it crosses an unlined shift start, which it then names."""
    between: tuple[Level, ...] = ()
    """The levels between the two: none of neighbours, those of a shift that is charted as a whole."""

    @property
    def given_out(self) -> GivenOut:
        """The volume as a chart holds it, whichever levels it lies between: a final level told later may be
        its new beginning at the same moment."""
        return self.begin.at, self.end.at, self.volume_ml, self.at_least, self.shift.start

    @property
    def subtractions(self) -> tuple[tuple[int, int], ...]:
        """The later and the earlier level of each canister, in mL, in order: the differences add up to it."""
        found: list[tuple[int, int]] = []
        for before, level in pairwise((self.begin, *self.between, self.end)):
            earlier = level.level_ml - (level.total_ml - before.total_ml)
            if level.baseline:
                continue
            if found and found[-1][0] == earlier and before.canister == level.canister:
                found[-1] = (level.level_ml, found[-1][1])
            else:
                found.append((level.level_ml, earlier))
        return tuple(found)


@dataclass(frozen=True, slots=True, kw_only=True)
class Sum:
    """A volume over a shift or a window, with its real ends. `volume_ml` None: no two lines, so no sum."""

    volume_ml: int | None
    begin: Level | None
    end: Level | None
    at_least: bool = False
    running: bool = False
    flags: tuple[str, ...] = ()
    """`no_boundary_line` (start taken from an earlier line), `since_first_line` (no line at the start),
    `uncounted_before` (what drained before that first line is in no sum of this shift), `no_closing_line`
    (end taken from an earlier line)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Amendment:
    """What an earlier chart must be changed to: these volumes now hold where `replaces` was charted."""

    begin: datetime
    end: datetime
    volume_ml: int
    at_least: bool
    shift: Shift
    replaces: tuple[Charted, ...] = ()
    withdrawn: bool = False
    """True when no volume holds there any more: strike out what was charted (`volume_ml` is then 0)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Charted:
    """A volume as it was given out before a correction or a late line."""

    begin: datetime
    end: datetime
    volume_ml: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Caution:
    """Something to look at: which rule of whose, what was measured, and over which stretch.

    `value` and `limit` share `unit` (mL, mL/h, mL/kg/h, cm, cmH2O, mmHg, min, or empty). `drain` None: it
    rests on the sum of the bed's open drains. `key` is the same for the same standing caution, so that it
    can be told as "still".
    """

    code: str
    severity: Severity
    rule: str
    source: str
    drain: str | None = None
    tube: str | None = None
    value: float | None = None
    limit: float | None = None
    unit: str = ""
    comparison: Literal["over", "at_least", "under", "at_most", ""] = ""
    hours: int | None = None
    begin: datetime | None = None
    end: datetime | None = None
    detail: str = ""
    """One word that the sentence needs: a fluid, a leak, a mark's neighbour."""
    average: bool = False
    if_right: bool = False

    @property
    def key(self) -> str:
        """Names the standing caution: the rule on the drain, or on the bed."""
        return f"{self.rule}:{self.drain or 'bed'}"


@dataclass(frozen=True, slots=True, kw_only=True)
class Doubt:
    """Why a reading is asked about before it is recorded.

    code: `line_fell` (below `before`, or above `after`, on one canister), `over_capacity`, `jump`,
    `time_conflict` (another level at the same minute: `before`), `long_silence` (over 14 h since `before`),
    `removed` (the drain was closed before that moment).
    """

    code: str
    before: Level | None = None
    after: Level | None = None
    limit: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Forecast:
    """When the canister reaches a level at the recent rate; None in `at` where the rate is 0 or unknown."""

    level_ml: int
    rate_ml_h: float | None
    at: datetime | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Due:
    """Something that is expected: a line, the closing line, a check."""

    what: Literal["line", "closing", "check"]
    drain: str
    at: datetime
    overdue: bool
