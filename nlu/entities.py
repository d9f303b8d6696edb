"""The beds, tubes, times and numbers of a typed message, by what stands right beside each.

Called by `puttingright` for messages that would be asked: a number that may be of two sorts is told so.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import NamedTuple

from .again import Again
from .clock import clocks
from .labels import bed_label
from .moments import LIST_REACH, moment, since
from .numbers import Toks, glued, is_digits, is_inside_number, word
from .patterns.leads import SHORT_BED_WORDS
from .patterns.levels import MILLILITRES
from .wall import written

HOURS = frozenset({"h", "hr", "hrs", "hours"})
HALVES = frozenset({"am", "pm"})
OTHER_UNITS = frozenset(
    {"cm", "cmh", "mm", "mmhg", "kg", "%", "l", "mg", "mcg", "x", "min", "mins", "th", "nd"}
)
LINES = frozenset({"line", "mark", "one", "reading", "entry", "level"})
TUBE_WORDS = frozenset({"tube", "drain", "side", "one", "chest", "box"})
SIDES = {"left": "left", "right": "right", "l": "left", "r": "right", "lt": "left", "rt": "right"}
PLACES = {w: w for w in ("anterior", "posterior", "apical", "basal", "mediastinal", "pleural", "lateral")}
TUBE_LETTERS = frozenset("abcd")
TUBE_NUMBERS = frozenset("1234")
OF_FIGURE = frozenset(
    {"is", "was", "level", "number", "figure", "reading", "value", "line", "mark", "time", "bed"}
)
OF_FIGURE |= {"on", "now", "way"}
COPULAS = frozenset({"is", "was", "it's", "its", "that's", "thats", "are", "it", "be", "got"})
FOUR, MINUTES, DAY_HOURS = 4, 60, 24


class Value(NamedTuple):
    """A value: its words, its sort (bed, tube, time, num), and what it says."""

    start: int
    end: int
    sort: str
    text: str
    at: datetime | None = None
    """When a time was; and of a bare number of four digits when it would be as a time."""
    unit: bool = False
    label: str | None = None
    sure: bool = False
    """Whether a time can be nothing else: "18:40", "0640", "6 pm", and not "at 1840"."""


def values(again: Again) -> tuple[Value, ...] | None:
    """All of them in order; nothing where a number is of another measure, or cannot be read."""
    found: list[Value] = []
    toks, k = again.toks, 0
    labels = written(toks, again.ward.index)
    while k < len(toks):
        value = _bed(again, k, labels) or _tube(toks, k) or _time(again, k) or _number(again, k)
        if value is None and is_digits(toks, k):
            return None
        if value is not None:
            found.append(value)
        k = value.end if value is not None else k + 1
    sided = _sided(toks, found)
    return None if sided is None else tuple(sided)


def _bed(again: Again, k: int, labels: Mapping[int, tuple[int, str]]) -> Value | None:
    toks = again.toks
    end, label = labels.get(k, (0, ""))
    if not end and is_digits(toks, k) and (word(toks, k - 1) in SHORT_BED_WORDS or word(toks, k - 1) == "#"):
        end, label = k + 1, bed_label(word(toks, k), again.ward.index) or ""
    if not end or not label or word(toks, end) in MILLILITRES | HALVES:
        return None
    start = k - (word(toks, k - 1) in SHORT_BED_WORDS | {"#"})
    return Value(start, _owned(toks, end), "bed", label, label=label)


def _owned(toks: Toks, end: int) -> int:
    """ "bed 8's", "bed 8s"."""
    if word(toks, end) == "s" and glued(toks, end):
        return end + 1
    return end + 2 if word(toks, end) == "'" and word(toks, end + 1) == "s" else end


def _time(again: Again, k: int) -> Value | None:
    """ "18:40", "6:40 pm", "1840 hrs", "0640", "at 1840", "the 1840 line"."""
    toks = again.toks
    if not is_digits(toks, k):
        return None
    end = k + 1
    if is_inside_number(toks, end) and word(toks, end) in {":", "."} and len(word(toks, end + 1)) == 2:
        end += 2
    suffixed = word(toks, end) in HALVES | HOURS
    digits = word(toks, k)
    full = len(digits) == FOUR and end == k + 1
    shown = word(toks, k + 1) == ":" and end > k + 1
    led = full and (digits[0] == "0" or word(toks, k - 1) in {"at", "@"} or word(toks, end) in LINES)
    if not (shown or led or (suffixed and (full or word(toks, end) in HALVES))):
        return None
    at = _moment(again, k, end + suffixed)
    while word(toks, end) in HALVES | HOURS:
        end += 1
    sure = shown or suffixed or digits[0] == "0"
    return Value(k, end, "time", digits, at, sure=sure) if at is not None else None


def _moment(again: Again, k: int, end: int) -> datetime | None:
    found = [(stop, clock) for stop, clock in clocks(again.toks, k) if stop >= end]
    return moment(max(found)[1], again.ward.arrived, LIST_REACH).sure if found else None


def _number(again: Again, k: int) -> Value | None:
    toks = again.toks
    if not is_digits(toks, k):
        return None
    digits, end = word(toks, k), k + 1
    if word(toks, end) == "," and is_inside_number(toks, end) and len(word(toks, end + 1)) == 3:
        digits, end = digits + word(toks, end + 1), end + 2
    if is_inside_number(toks, end) or word(toks, end) in OTHER_UNITS | HOURS or len(digits) > FOUR:
        return None
    unit = word(toks, end) in MILLILITRES
    label = bed_label(digits, again.ward.index) if again.ward.index and not unit else None
    whole = len(digits) == FOUR and int(digits[:2]) < DAY_HOURS and int(digits[2:]) < MINUTES
    at = _moment(again, k, k + 1) if whole and not unit and end == k + 1 else None
    return Value(k, end + unit, "num", digits, at, unit, label)


def _tube(toks: Toks, k: int) -> Value | None:
    name, behind = word(toks, k), word(toks, k + 1)
    if name in PLACES:
        return Value(k, k + 1, "tube", name)
    if name in {"tube", "drain"} and (behind in TUBE_LETTERS or (behind in TUBE_NUMBERS)):
        return Value(k, k + 2, "tube", behind.upper())
    return Value(k, k + 1, "side", SIDES[name]) if name in SIDES else None


def _sided(toks: Toks, found: list[Value]) -> list[Value] | None:
    """The same with the sides among the words left and right: beside a tube or a bed, or where both are said;
    nothing where such a word may be a side."""
    sides = {v.text for v in found if v.sort == "side"}
    beds = {k for v in found if v.sort == "bed" for k in (v.start, v.end)}
    told = []
    for value in found:
        if value.sort != "side":
            told.append(value)
        elif len(sides) > 1 or word(toks, value.end) in TUBE_WORDS or not beds.isdisjoint(value[:2]):
            told.append(value._replace(sort="tube"))
        elif word(toks, value.start) != "right" or not _is_correct(toks, value):
            return None
    return told


def _is_correct(toks: Toks, right: Value) -> bool:
    """ "the right level", "that is right", "right is 340": no side."""
    return word(toks, right.end) in OF_FIGURE or word(toks, right.start - 1) in COPULAS


def may_be_clock(value: Value, arrived: datetime, hours: float) -> bool:
    """Whether a bare number of three or four digits may be a time of the last hours."""
    if value.unit or len(value.text) not in {FOUR - 1, FOUR} or int(value.text[-2:]) >= MINUTES:
        return False
    half = MINUTES * DAY_HOURS // (1 if len(value.text) == FOUR else 2)
    said = int(value.text[:-2]) * MINUTES + int(value.text[-2:])
    return (arrived.hour * MINUTES + arrived.minute - said) % half <= hours * MINUTES


def is_recent(value: Value, arrived: datetime, hours: float = 4) -> bool:
    """Whether a bare number may be a time of the last hours."""
    return value.at is not None and since(value.at, arrived).total_seconds() <= hours * 3600
