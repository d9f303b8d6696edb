"""When all lines of a message were read, told once: before the first bed, or in a clause behind the last.

"okay seven p m, bed one's at 280, ...", "..., that was 1900", "..., both of them half past six". Used by
`retold`.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from .again import Again
from .bedclauses import LEANING
from .clock import clocks
from .listtimes import DAYTIMES, HEADING, is_of_half
from .neighbours import is_stop_among
from .numbers import Toks, glued, is_digits, starts_number, word

STOPS = frozenset({",", ";", ".", "-"})
JOINTS = frozenset({"and", "then", "plus", "but"})
OF_ALL = frozenset({"both", "all", "them", "those", "these", "each", "everything", "everyone"})
_READ = "took taken read did done checked marked timed drew looked time time's went"
READ = frozenset(_READ.split())
THAT = frozenset({"that", "that's", "thats", "that'd", "it", "it'd", "they", "this"})
UNSAID = frozenset({"it", "was", "is", "they", "were", "this"})
LED = frozenset({"at", "for", "from", "around", "of"})
_BEHIND = """
i we is was were are as my so just by the lines readings two be round it'd that'd time's
"""
BEHIND = OF_ALL | READ | THAT | LED | frozenset(_BEHIND.split())
"""Words of a clause that only says when all was read."""
_BEFORE = "i've we've i have got here's that's thats here these right"
BEFORE = HEADING | frozenset(_BEFORE.split())
REPAIRS = LEANING - {"these", "those", "that", "all", "both", "each", "them"} | {
    "make",
    "change",
    "before",
    "after",
}
COUNTING = frozenset({"my", "all", "these", "our", "the", "those"})
"""Before a number these say how many beds come."""
DATED = frozenset(
    {"yesterday", "last", "tomorrow", "closing", "end", "start", "ago", "from", "to", "goal", "due"}
)
TUBES = frozenset({"drains", "tubes", "sides", "lines"})


class Time(NamedTuple):
    """The time of all: where the words around it begin and end, and the time itself."""

    start: int
    at: int
    end: int
    led: bool = True
    whole: bool = True
    """Whether it can be no line: "read at 420"."""
    beds: int = 0
    """How many beds are said to come; nought where none is said."""


def time_before(again: Again, first: int) -> Time | None:
    """The time of all before the first bed, where only it and how many beds come is told there."""
    toks = again.toks
    found = [(k, end) for k in range(first) for end, clock in clocks(toks, k) if end <= first]
    start, end = max(found, key=lambda span: span[1] - span[0], default=(0, 0))
    beds = heading(again, [k for k in range(first) if not start <= k < end], start if found else -1)
    if beds is None or not found:
        return None
    sure = any(c.sure or c.part or c.style == "24" for _, c in clocks(toks, start))
    led = word(toks, start - 1) in LED or (sure and is_stop_among(STOPS, toks, end))
    return Time(0, start, end, led, beds=beds)


def heading(again: Again, places: Sequence[int], time: int) -> int | None:
    """How many beds are said to come by the words at these places, nought where it is not said; nothing
    where they tell more: "okay, so my two are ..."."""
    toks = again.toks
    counts = [k for k in places if (starts_number(toks, k) or is_digits(toks, k)) and not _is_said(toks, k)]
    if len(counts) > 1 or any(word(toks, k - 1) not in COUNTING for k in counts):
        return None
    words = {word(toks, k) for k in places if k not in counts and not _is_said(toks, k)}
    closing = any(c.label == "closing" and c.start < max(places) for c in again.cues) if places else False
    if closing or not words <= BEFORE or words & (DATED - {"from", "to"} | REPAIRS):
        return None
    timed = time >= 0 and (word(toks, 0) in GREETINGS or is_of_half(toks, time))
    if words & DAYTIMES and not timed:
        return None
    said = word(toks, counts[0]) if counts else "0"
    return int(said) if said.isdecimal() else NUMBERS.index(said) if said in NUMBERS else None


def _is_said(toks: Toks, k: int) -> bool:
    """ "quick one for seven o'clock", "two drains on bed four": a number that counts no beds."""
    one = word(toks, k) == "one" and word(toks, k - 1) in {"quick", "last", "next", "this"}
    return one or (word(toks, k) in {"two", "2", "three", "3"} and word(toks, k + 1) in TUBES)


GREETINGS = frozenset({"morning", "evening", "afternoon"})
NUMBERS = ("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")


def time_behind(toks: Toks, last: int) -> Time | None:
    """The time of all behind the last line: a clause that tells no more than that."""
    size = len(toks) - (word(toks, len(toks) - 1) in {".", "!"})
    for k in range(last + 1, size):
        if not (is_stop_among(STOPS, toks, k) or word(toks, k) == "and"):
            continue
        start = k + 1
        while word(toks, start) in JOINTS | STOPS:
            start += 1
        at = start
        while word(toks, at) in BEHIND and not any(end == size for end, _ in clocks(toks, at)):
            at += 1
        ends = [clock for end, clock in clocks(toks, at) if end == size]
        said = frozenset(toks.said[start:at])
        if not ends or (glued(toks, at) and at == start):
            continue
        sure = any(c.sure or c.part or c.style == "24" for c in ends) or is_of_half(toks, at)
        stopped = not JOINTS & set(toks.said[k:start])
        if (said & UNSAID and said <= UNSAID | LED) or not (stopped or said & (OF_ALL | READ | THAT)):
            continue  # "it was 1850": of which line? "two hundred and twenty two hundred"
        if sure or (said & LED and said & (OF_ALL | READ)):
            whole = sure or any(c.style == "hour" for c in ends)
            return Time(k, at, size, led=not said & THAT or bool(said & LED), whole=whole)
    return None
