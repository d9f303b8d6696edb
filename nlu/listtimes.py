"""The times of a list of beds: of all rows, before the first or behind the last, or of a row of its own.

"lines at 0600: 36 - 1230, 37 - 88", "203 640, 205 310, all at 1900". Called by `rowwise`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import takewhile
from typing import NamedTuple

from .again import Again, Span
from .clock import clocks
from .items import FULL_HOUR
from .listrows import Row
from .numbers import Toks, is_digits, is_inside_number, starts_number, word
from .patterns.framing import AROUND, HEAD_ONLY, PARTS_OF_DAY
from .patterns.leads import TELLS

OF_ALL = frozenset({"all", "each", "both", "everyone", "everything"})
"""Beside a time these say that it is of every row."""
TAKEN = frozenset(
    {"taken", "done", "read", "marked", "recorded", "time", "timed", "were", "are", "same", "set"}
)
AT = frozenset({"at", "@", "for", "as", "of"})
IS_AT = frozenset({"is", "at", "@"})
BEFORE_TIME = frozenset({",", ";", "/", "-", ".", "(", "|"})
BEHIND_TIME = OF_ALL | {"lines", "marks", "levels", ")", "set", "round"}
DAYTIMES = PARTS_OF_DAY | {"arvo", "early", "late"}
HEADING = (
    AROUND
    | HEAD_ONLY
    | AT
    | DAYTIMES
    | frozenset(
        {
            ":",
            "-",
            ",",
            ".",
            ";",
            "/",
            "rds",
            "rnds",
            "rnd",
            "rd",
            "chest",
            "drain",
            "drains",
            "tube",
            "tubes",
            "ct",
            "cts",
            "levels",
        }
    )
    | frozenset(
        {"mark", "line", "level", "check", "set", "obs", "(", ")", "h", "wrap", "up", "endorse", "endorsing"}
    )
)
"""Words before a list, which tell nothing of it beside the time."""


class Shared(NamedTuple):
    """The time of all: where what is said of it begins, the time, where it ends, and what belongs to it."""

    start: int
    time: int
    end: int
    behind: int
    every: bool = False
    """Whether it is said to be of all."""
    kept: tuple[Span, ...] = ()
    """Words beside it that are said of each row: "eos 1900: 2 110, 5 130"."""

    def beside(self, start: int, end: int) -> Iterator[Span]:
        """What stands between two places without the words that are kept."""
        for kept, behind in self.kept:
            if start <= kept < end:
                yield start, kept
                start = behind
        yield start, end


@dataclass(frozen=True, slots=True)
class Times:
    """The rows of a list with their times."""

    toks: Toks
    rows: Sequence[Row]
    head: Shared | None
    trail: Shared | None
    holder: int
    """Where the row begins that the time behind the rows stands in."""
    own: frozenset[int]
    """Where the rows begin that have a time of their own."""
    leading: frozenset[int] = frozenset()
    """Those with one whole time of all rows right behind their beds."""
    rivals: frozenset[int] = frozenset()
    """Those of them that tell a line, so that a time behind the last row may be of that one alone."""

    def is_own(self, row: Row) -> bool:
        """Whether the row has a time of its own."""
        return row.start in self.own

    def bed_of(self, start: int) -> str:
        """The bed of the row that begins there."""
        return next(row.bed for row in self.rows if row.start == start)

    def may_be_of_next(self, row: Row) -> bool:
        """Whether a row beside it has its own time, which may be of both."""
        return bool(self.rivals) and not self.is_own(row)

    def may_be_times(self) -> bool:
        """ "4 at 645, 6 is 140 at 0600": whether a line behind its at may be the time of its bed."""
        if any(word(self.toks, row.line) in OF_ALL for row in self.rows):
            return True  # "beds 7 8 and 9 all at 910"
        led = (row for row in self.rows if not self.is_own(row) and self._led(row)[:1] in {("at",), ("@",)})
        return any(self._line(row) == row.line for row in led)

    def spans_beside(self, row: Row) -> Iterator[Span]:
        """What stands before and behind a row and is not of it, the "all" of the time among it."""
        first = self.rows[0].start
        if self.head is not None:
            yield from self.head.beside(0, first if self.is_own(row) else self.head.time)
            yield from self.head.beside(self.head.end, first)
        yield row.label_end, self._line(row)
        trail = self.trail if self._has_trail(row) else None
        if trail is not None and row.start == self.holder:
            yield from ((trail.start, trail.time), (trail.end, trail.behind))
            trail = None
        for start, end in ((first, row.start), (row.end, self.rows[-1].end)):
            if trail is not None and start <= trail.time < end:
                yield from ((start, trail.time), (trail.end, end))
            else:
                yield start, end

    def time_of(self, row: Row) -> int | None:
        """Where the time of all stands that is also of this row; nothing where it has another."""
        if row.start in self.leading:
            return row.line
        if self.trail is not None and self._has_trail(row):
            return self.trail.time
        timed = self.head is not None and self.head.time < self.head.end and not self.is_own(row)
        return self.head.time if timed and self.head is not None else None

    def _has_trail(self, row: Row) -> bool:
        of_all = self.trail is not None and (self.trail.every or not self.rivals)
        return row.start == self.holder or (of_all and not self.is_own(row) and row.start < self.holder)

    def _line(self, row: Row) -> int:
        """Where the line stands behind its bed: "5 @ 20" in a list with a whole time is no time, where each
        row has its at."""
        time = None if self.is_own(row) else self.time_of(row)
        leads = {self._led(other) for other in self.rows}
        line = row.line + len(self._led(row))
        either = time == line + 1 and is_whole(self.toks, line) and bool(clocks(self.toks, line))
        if time is None or not is_of_half(self.toks, time) or len(leads) > 1:
            return row.line
        return row.line if either or word(self.toks, line)[:1] == "0" else line  # "5 @1735 1652"

    def _led(self, row: Row) -> tuple[str, ...]:
        return tuple(takewhile(IS_AT.__contains__, self.toks.said[row.line : row.line + len(IS_AT)]))


def times_of(again: Again, rows: Sequence[Row]) -> Times:
    """The times of a list; behind a time for all before the rows the last one is of its row."""
    toks, head = again.toks, _before(again, rows[0].start)
    trail, holder = _trail(toks, rows)
    if trail is not None and not trail.every and head is not None and head.time < head.end:
        trail, holder = None, -1
    ends = [trail.start if trail and row.start == holder else row.end for row in rows]
    own = frozenset(row.start for row, end in zip(rows, ends, strict=True) if _has_own(toks, row, end))
    if head is not None and not DAYTIMES.isdisjoint(toks.said[: rows[0].start]):
        timed = [_own_time(toks, row) for row in rows if row.start in own] or [(trail or head).time]
        head = head if all(is_of_half(toks, k) for k in timed) else None  # "morning numbers: bed 2 210 at 3"
    return Times(toks, rows, head, trail, holder, own, _leading(toks, rows))


def _leading(toks: Toks, rows: Sequence[Row]) -> frozenset[int]:
    """ "2A 2300 1005 no leak, 2B 2300 340 swinging": where rows begin that have one time before each line."""
    times = {word(toks, row.line) for row in rows}
    plain = all(
        is_whole(toks, row.line)
        and clocks(toks, row.line)
        and is_digits(toks, row.line + 1)
        and row.line + 1 < row.end
        for row in rows
    )
    lines = [row.line + 1 for row in rows]
    told = any(not (is_whole(toks, k) and clocks(toks, k)) for k in lines)
    return frozenset(row.start for row in rows if plain and told and len(times) == 1)


def _trail(toks: Toks, rows: Sequence[Row]) -> tuple[Shared | None, int]:
    """The time of all behind a line, and where its row begins: only one that is said to be of all has lines
    behind it."""
    lines = False
    for row in reversed(rows):
        found = _behind(toks, row)
        if found is not None and (found.every or not lines):
            return found, row.start
        lines |= any(is_digits(toks, k) for k in range(row.line, row.end))
    return None, -1


def _behind(toks: Toks, row: Row) -> Shared | None:
    """The time behind the line of a row."""
    line = next((k for k in range(row.line, row.end) if word(toks, k) not in IS_AT), row.end)
    for k in range(line + 1, row.end):
        at, every = _lead(toks, k)
        whole = is_whole(toks, at)
        led = word(toks, at - 1) in OF_ALL | TAKEN | AT
        if at == line + 1 and is_whole(toks, line) and clocks(toks, line):
            continue  # "2 1006 1020"
        ends = [end for end, clock in clocks(toks, at) if led or whole or (at > k and clock.sure)]
        if ends and word(toks, at - 1) not in TELLS:  # "line at 2000 was 1200"
            end = max(ends)
            behind = next((j for j in range(end, row.end) if word(toks, j) not in BEHIND_TIME), row.end)
            every |= not OF_ALL.isdisjoint(toks.said[end:behind])
            lined = any(is_digits(toks, j) for j in range(line, k))  # "13 tube out 0540": of that alone
            if lined or every:
                return Shared(k, at, end, behind, every)
    return None


def _before(again: Again, first: int) -> Shared | None:
    """The time of all before the first row, where nothing else is told there."""
    toks = again.toks
    closing = tuple((c.start, c.end) for c in again.cues if c.start < first and c.label == "closing")
    found = ((k, end) for k in range(first) for end, _ in clocks(toks, k) if end <= first)
    time, end = max(found, key=lambda span: span[1] - span[0], default=(0, 0))
    kept = {k for span in (*closing, (time, end)) for k in range(*span)}
    beside = {word(toks, k) for k in range(first) if k not in kept}
    return Shared(0, time, end, first, kept=closing) if beside <= HEADING else None


def _lead(toks: Toks, k: int) -> tuple[int, bool]:
    """Where the time begins behind what leads it, and whether it is of all."""
    k += word(toks, k) in BEFORE_TIME
    start = k
    while word(toks, k) in OF_ALL | TAKEN | AT:
        k += 1
    return k, not OF_ALL.isdisjoint(toks.said[start:k])


def is_whole(toks: Toks, k: int) -> bool:
    """Whether four digits stand there."""
    return len(word(toks, k)) == FULL_HOUR and is_digits(toks, k)


def is_of_half(toks: Toks, k: int) -> bool:
    """Whether a time there shows by itself in which half of the day it is."""
    return is_whole(toks, k) or any(clock.part for _, clock in clocks(toks, k))


def _has_own(toks: Toks, row: Row, end: int) -> bool:
    """Whether a row says a time beside its line."""
    numbers = [k for k in range(row.line, end) if is_digits(toks, k) and not is_inside_number(toks, k - 1)]
    led = [k for k in numbers if word(toks, k - 1) in {"since", "at", "@"} and k - 1 > row.line]
    led = [k for k in led if word(toks, k - 2) not in IS_AT]
    told = len(numbers) > 1 or bool(led)  # "12 in theatre since 1820", "12 discharged at 5:05pm"
    return told and any(_is_time(toks, k) for k in numbers)


def _own_time(toks: Toks, row: Row) -> int:
    """Where the time of such a row stands."""
    return next(k for k in range(row.line, row.end) if is_digits(toks, k) and _is_time(toks, k))


def _is_time(toks: Toks, k: int) -> bool:
    shaped = is_whole(toks, k) or word(toks, k - 1) in {"at", "@"}
    shaped |= word(toks, k + 1) in {":", "am", "pm"}
    return shaped and bool(clocks(toks, k)) and starts_number(toks, k)
