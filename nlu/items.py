"""The pieces that a message is read as: numbers with all they can be, times, beds, tubes, cues."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime, timedelta
from typing import NamedTuple

from .clockface import Clock
from .moments import LIST_REACH, Moment, distinct, moment, since
from .numbers import FULL_HOUR as FULL_HOUR

NEAR = timedelta(minutes=60)
RECENT = timedelta(hours=2)
AMOUNTS = frozenset({"level", "volume", "output"})
"""Roles of a number of millilitres."""
EVENTS = frozenset({"kind", "what"})
"""Cues of what happened to a drain or its patient."""
WHOLE = frozenset({"24", "12"})
"""Styles of a time that shows an hour and its minutes."""
MEASURED = "measured"
"""The name of what is measured of a patient and of its value: "hr 104"."""
NUMBERLESS = "numberless"
"""The name of what is told of another thing that has no number: "dressing reinforced", "on bipap,"."""
FINDINGS = frozenset({"leak", "tidal", "fluid", "indicator", "waterseal"})
"""Cues of what is found at a drain, beside settings and levels."""


class Clocks(tuple[Clock, ...]):
    """All the times that one piece can say, with the moments already found; of one message only."""

    memo: dict[tuple[datetime, int, timedelta], Moment]

    sure: bool
    """Whether one of them can be nothing but a time."""
    whole: bool
    """Whether one of them is sure, or of a form that shows an hour and its minutes."""

    def __new__(cls, found: Iterable[Clock]) -> Clocks:
        """The times, with no moment found yet."""
        times = super().__new__(cls, found)
        times.memo = {}
        times.sure = True in [c.sure for c in times]
        times.whole = times.sure or not WHOLE.isdisjoint([c.style for c in times])
        return times

    def when(self, arrived: datetime, reach: timedelta) -> Moment:
        """The moments that they can be; the clocks of one number never disagree in kind."""
        key = (arrived, arrived.fold, reach)
        known = self.memo.get(key)
        if known is None:
            found = [moment(clock, arrived, reach) for clock in self]
            if len(found) == 1:
                return self.memo.setdefault(key, found[0])
            values = distinct(v for m in found for v in m.values)
            known = self.memo[key] = Moment(values, distinct(v for m in found for v in m.nearest))
        return known


NO_CLOCKS = Clocks(())


def is_now(item: Item) -> bool:
    """Whether a piece says the moment of the message, and no other time."""
    return item.role == "time" and all(c.style == "now" for c in item.clocks)


def is_of_now(item: Item) -> bool:
    """Whether a piece says a day or this moment, and no time of anything that is told: "tonight"."""
    return item.role == "time" and all(c.style in {"now", "date"} for c in item.clocks)


class Item(NamedTuple):
    """One piece: tokens `start` to `end`. Roles:

    `num` (a number not yet given a role), `bed`, `tube`, `level`, `volume`, `output`, `time`,
    `check`, `cue`, `sep`, `bad` (a number that no rule can read).
    `lead` is the cue that the number stands behind, `link` the word between it and the number before.
    """

    role: str
    start: int
    end: int
    value: str = ""
    name: str = ""
    amount: int | None = None
    label: str | None = None
    known: bool = True
    clocks: Clocks = NO_CLOCKS
    lead: str = ""
    at: bool = False
    link: str = ""
    unit: str = ""
    negative: bool = False
    about: bool = False
    figure: float | None = None
    digits: str = ""
    core: int = -1

    def as_role(self, role: str) -> Item:
        """The same piece in another role."""
        return Item(role, *self[1:])

    def named(self, role: str, name: str) -> Item:
        """The same piece in another role, by its name."""
        return Item(role, self.start, self.end, self.value, name, *self[5:])

    def when(self, arrived: datetime, reach: timedelta) -> Moment:
        """The moments that it can be as a time."""
        return self.clocks.when(arrived, reach) if self.clocks else Moment()

    def within(self, span: timedelta, arrived: datetime) -> bool:
        """Whether it could be a time at most so far back."""
        values = self.when(arrived, LIST_REACH).values
        return any(abs(since(v, arrived)) <= span for v in values)

    def possible(self, arrived: datetime) -> bool:
        """Whether there is a moment that it could be as a time."""
        return bool(self.when(arrived, LIST_REACH).values)

    @property
    def unread(self) -> bool:
        """Whether it is a word that was not understood."""
        return self.role == "cue" and self.value == "word"

    @property
    def sure_time(self) -> bool:
        """Whether it can be nothing but a time."""
        return self.clocks.sure

    @property
    def loose_time(self) -> bool:
        """Whether it is a time only for want of another place."""
        return self.role == "time" and not (self.sure_time or self.at or self.lead or self.full_clock)

    @property
    def clocklike(self) -> bool:
        """Whether it shows an hour and minutes, or is a 24-hour form: a lone "7" is not."""
        return self.clocks.whole and (self.end - self.start > 1 or len(self.digits) > 2)

    @property
    def full_clock(self) -> bool:
        """Whether it is written as a whole clock time: 1900."""
        return len(self.digits) == FULL_HOUR and self.clocklike

    @property
    def spoken_clock(self) -> bool:
        """Whether it is said as a whole clock time: twenty two thirty, eighteen hundred."""
        return not self.digits and self.clocklike and any(c.style == "24" for c in self.clocks)


def is_bare(item: Item) -> bool:
    """Whether nothing but its place says that it is a level."""
    return not item.unit and (item.lead in {"", "at", "levelat"} or (item.lead == "level" and item.at))


def could_be_level(item: Item) -> bool:
    """Whether it is a number of mL, and not written as a time alone."""
    return item.amount is not None and not item.digits.startswith("0")
