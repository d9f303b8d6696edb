"""Clauses beside a line that only tell what lies ahead: "tube coming out tomorrow", "going for CT at 2000".

With a day or a time that is still to come nothing in them has happened. Called by `framed`, which leaves them
out beside what is whole, for typed messages.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta
from itertools import pairwise

from .again import Again, Span
from .checkbefore import checks_before
from .numbers import Toks, is_digits, starts_number, word
from .otherfigures import between
from .patterns.leads import BED_WORDS
from .readthen import is_whole_clock

DAYS = (("tomorrow",), ("in", "the", "morning"), ("in", "am"), ("next", "shift"), ("next", "week"))
"""With one of these it is of a day to come."""
_PLANS = """
going gonna will plan plans planned planning booked scheduled due want wants wanted hoping hope aiming
expected moving coming transferring slot i'll we'll
"""
PLANS = frozenset(_PLANS.split())
TO_COME = frozenset({"come", "be", "go", "have"})
HANGING = frozenset(
    {"if", "unless", "until", "till", "once", "when", "or", "?", "not", "no", "yesterday", "was"}
)
"""With one of these it hangs on something, or may be told otherwise."""
SKEW, SOON = timedelta(minutes=5), timedelta(hours=6)
LENGTHS = frozenset({"min", "mins", "minutes", "hr", "hrs", "hour", "hours"})


def not_of_now(again: Again) -> Iterator[Span]:
    """The clauses of how a check was before, and those of what is still to come."""
    yield from checks_before(again)
    yield from plans_ahead(again)


def plans_ahead(again: Again) -> Iterator[Span]:
    """Each clause behind another that tells only what is still to come."""
    toks = again.toks
    for start, end in between(toks, 0, 0 if again.ward.voice else len(toks), parts=False):
        said = toks.said[start:end]
        own = start > 0 and HANGING.isdisjoint(said) and BED_WORDS.isdisjoint(said) and end - start > 1
        if not own or any(k in again.meant.labelled for k in range(start, end)):
            continue
        day = _is_of_a_day(said) and not any(starts_number(toks, k) for k in range(start, end))
        if day or (_is_planned(said) and _is_to_come(toks, start, end, again.ward.arrived)):
            yield start, end


def _is_of_a_day(said: tuple[str, ...]) -> bool:
    return any(said[k : k + len(day)] == day for day in DAYS for k in range(len(said)))


def _is_planned(said: tuple[str, ...]) -> bool:
    """ "going for CT", "for theatre", "to come out": what will be; "clamped at 2000 for CT" is not."""
    to_come = any(a == "to" and b in TO_COME for a, b in pairwise(said))
    return said[0] == "for" or to_come or not PLANS.isdisjoint(said)


def _is_to_come(toks: Toks, start: int, end: int, arrived: datetime) -> bool:
    """Whether its one number is a whole time within the next hours, or how long it is till then."""
    numbers = [k for k in range(start, end) if starts_number(toks, k)]
    if len(numbers) != 1:
        return False
    k = numbers[0]
    if word(toks, k - 1) == "in" and word(toks, k + 1) in LENGTHS:
        return True
    if not (is_digits(toks, k) and is_whole_clock(toks, k)) or word(toks, k + 1) in LENGTHS:
        return False
    hour, minute = divmod(int(word(toks, k)), 100)
    since = timedelta(hours=arrived.hour, minutes=arrived.minute)
    return SKEW < (timedelta(hours=hour, minutes=minute) - since) % timedelta(days=1) <= SOON
