"""Digits that a sign or a blank joins to one number or parts into two: "3:44, 5:60" and "2 450, 20 1900".

Only the rest of the message tells a bed and its line from an hour with its minutes, or from a thousand with
its hundreds; where it does not, it is asked. So is a letter behind a bed that may end its label. Called by
`keyed` and `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime
from itertools import pairwise

from .items import AMOUNTS, FINDINGS, RECENT, Item
from .numbers import Toks, glued, is_digits, is_inside_number, word
from .patterns.leads import LABEL_LETTERS
from .rules import Rule

SIGNS = frozenset({"/", "-", "."})
HEADS = frozenset({"bed", "tube"})
STOPS = frozenset({",", ";", ".", "and", "&", "+", "then", "/"})
NOON, HOURS, MINUTES = 12, 24, 60
PAIR, MINUTE_DIGITS = 2, 2
PLACES = 3
"""Digits behind a thousand."""


def without_hours(items: tuple[Item, ...], toks: Toks, arrived: datetime) -> tuple[Item, ...]:
    """ "3:44, 5:60, 12:90": where a colon stands between bed and line, what may be a bed too is not the time
    of the others; but "12:340 18:30" and "19:00 5:60 12:90" tell a fresh one."""
    if ":" not in toks.words:
        return items
    lines = [nxt for i, nxt in pairwise(items) if _is_bed_of(i, nxt, toks)]
    if not lines:
        return items
    short = len(lines) > 1 and all(len(i.digits) < PLACES for i in lines)

    def fresh(time: Item) -> bool:
        listed = word(toks, time.start - 1) == "," and int(word(toks, time.start)) <= NOON  # "3:440, 5:55"
        return time.within(RECENT, arrived) and not (short or listed)

    return tuple(i.as_role("bad") if _is_pair(i, toks) and not fresh(i) else i for i in items)


def _is_bed_of(bed: Item, line: Item, toks: Toks) -> bool:
    joined = bed.end == line.start - 1 and _is_colon(toks, bed.end)
    return joined and line.role == "num" and bed.role in {"bed", "num"} and bed.label is not None


def _is_pair(item: Item, toks: Toks) -> bool:
    bare = item.role in {"time", "num"} and not (item.at or item.lead) and item.end == item.start + PLACES
    return bare and _is_colon(toks, item.start + 1) and word(toks, item.end - 1)[0] != "0"


def _bed_or_hour(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "12:340 3:44": of two, the second may be when the first was read."""
    lines = [(i, nxt) for i, nxt in pairwise(items) if i.role == "bed" and _is_colon(toks, i.end)]
    if len(lines) != PAIR:
        return
    bed, line = lines[1]
    hour, minute = word(toks, bed.end - 1), word(toks, line.start)
    if len(minute) == MINUTE_DIGITS and int(minute) < MINUTES and hour.isdecimal() and int(hour) < HOURS:
        yield "a bed and its line, or a time"


def _is_colon(toks: Toks, k: int) -> bool:
    return word(toks, k) == ":" and is_inside_number(toks, k)


def _thousand_or_bed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "2 450, 20 1900", "4, 2 191": a thousand with its hundreds is told of a bed before it or behind its
    word; else it may be a bed and its line. Nobody writes a line as in "1 050"."""
    for k, item in enumerate(items):
        if item.role not in AMOUNTS or not _is_blank_inside(item, toks):
            continue
        if _opens_row(items[:k], item) or _is_headed(items[:k], item, toks):
            yield "one number, or a bed and its line"


def _is_blank_inside(item: Item, toks: Toks) -> bool:
    rest = word(toks, item.start + 1)
    two = item.core == item.start + 2 and is_digits(toks, item.start) and is_digits(toks, item.start + 1)
    return two and len(word(toks, item.start)) == 1 and len(rest) == PLACES and rest[0] != "0"


def _opens_row(before: Sequence[Item], item: Item) -> bool:
    """Whether a row may begin there: first of all, behind the stop after a bed, or a finding, or behind
    "shift end". Elsewhere the reading as two numbers stands beside it."""
    if item.lead in {"level", "levelat", "new", "old"}:
        return False
    stopped = bool(before) and before[-1].role == "sep" and before[-1].value in STOPS
    last = before[-1 - stopped] if len(before) > stopped else None
    if last is None or last.role in HEADS:
        return last is None or stopped
    if stopped:
        return last.unread or last.value == "okay"  # "7 dry, 2 310"
    return last.role == "cue" and last.end == item.start and last.value in FINDINGS | {"closing"}


def _is_headed(before: Sequence[Item], item: Item, toks: Toks) -> bool:
    """ "shift end: 1 190 no leak, 2 720", behind a heading; "4: 1 190" has its bed there."""
    return word(toks, item.start - 1) == ":" and bool(before) and before[-1].role == "cue" and not item.lead


def _letter_of_bed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "12/A/340/1900", "12 A 340" where the unit has no such bed; not "12 b/l tubes", "12 a bit drowsy"."""
    named = (i for i in items if i.role not in {"cue", "sep"} or i.value == "kind")  # "8 d/c'd home"
    taken = {k for i in named for k in range(i.start, i.end)}
    for bed in items:
        k = bed.end + (word(toks, bed.end) in SIGNS and glued(toks, bed.end))
        if bed.role != "bed" or k in taken or word(toks, k) not in LABEL_LETTERS:
            continue
        behind = k + 1 + (word(toks, k + 1) in SIGNS and glued(toks, k + 1))
        if not word(toks, behind).isalpha() and word(toks, k + 1) != "'":
            yield "a letter behind the label"


def _afternoon_or_tube(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "9 m 200 p 40", "8 340 p 1830": two o'clock, or a line and more behind it?"""
    for time, level in pairwise(items):
        letter = word(toks, time.end - 1) in {"p", "a"} and not glued(toks, time.end - 1)
        bare = time.role == "time" and not time.at and len(word(toks, time.start)) >= PLACES
        if letter and bare and level.role == "level" and time.end == level.start:
            yield "a line and another tube, or a time"


EITHER_WAY = (
    Rule(_afternoon_or_tube, frozenset({"time"}), frozenset({"p", "a"})),
    Rule(_bed_or_hour, frozenset({"bed"}), frozenset({":"})),
    Rule(_thousand_or_bed, AMOUNTS),
)
LETTERED = Rule(_letter_of_bed, frozenset({"bed"}), LABEL_LETTERS)
