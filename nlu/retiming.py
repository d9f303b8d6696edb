"""A line read at another time than was told: "the 18:00 line on bed 8 was at 18:20", "8 at 18:20 not 1800".

Called by `corrections`, which takes it for a correction, and by `righted`, which asks where a bare number may
be the level: "the 1830 line on bed 4 was at 6:35 pm".
"""

from __future__ import annotations

from .clockface import Clock
from .items import FULL_HOUR, Item
from .numbers import Toks, word

DAY = 24 * 60
WITHIN = 240
"""Minutes that a line may have been read earlier or later than was told."""
SHORT = 3
"""Digits of a number that is a level sooner than a time: 640."""
WAS = frozenset({"was", "were"})
PLAIN = frozenset({"level", "levelat", "bed", "filler", "timeword"})


def is_retold(items: tuple[Item, ...], toks: Toks) -> bool:
    """Whether it tells nothing but the time of a line, and behind "was" another one within four hours."""
    if WAS.isdisjoint(toks.words) or "not" in toks.words:
        return False
    if any(i.role in {"bad", "alt"} or (i.role == "cue" and i.value not in PLAIN) for i in items):
        return False
    told = [k for k, i in enumerate(items) if i.role in {"num", "time"} and not _is_bed(i)]
    if len(told) != 2 or told[1] != len(items) - 1:
        return False
    line, read = items[told[0]], items[told[1]]
    named = items[told[0] + 1].value == "level" and items[told[0] + 1].end > line.end
    named |= word(toks, read.start - 2) == "taken" and word(toks, line.start - 1) in {"the", "my"}
    was = any(w in WAS for w in toks.said[line.end : read.start])
    return named and was and read.at and _is_near(line, read)


def is_denied_time(items: tuple[Item, ...], toks: Toks) -> bool:
    """ "bed 8 at 18:20 not 1800": nothing but two times of a bed, of which one can be nothing else."""
    told = [k for k, i in enumerate(items) if i.role in {"num", "time"} and not _is_bed(i)]
    if "not" not in toks.words or len(told) != 2 or told[1] != len(items) - 1:
        return False
    said = [i.value for i in items if i.role == "cue"]
    if not set(said) <= PLAIN | {"neg"} or said.count("neg") != 1:
        return False
    right, wrong = items[told[0]], items[told[1]]
    denied = items[told[1] - 1].value == "neg" and items[told[1] - 1].start == right.end
    sure = not (is_bare(right, toks) and is_bare(wrong, toks))
    beds = [i for i in items if i.label is not None and i not in (right, wrong)]
    led = right.at or right.lead == "timeword"
    return denied and led and sure and len(beds) == 1 and _is_near(right, wrong)


def is_bare(number: Item, toks: Toks) -> bool:
    """Whether it is written without a colon, a.m., hours or a leading 0: it may be a level as well.

    Not what is "taken at 1900".
    """
    digits = word(toks, number.start)
    taken = word(toks, number.start - 2) == "taken" and word(toks, number.start - 1) == "at"
    return number.end == number.start + 1 and digits.isdecimal() and digits[0] != "0" and not taken


def _is_bed(item: Item) -> bool:
    return item.role == "num" and item.label is not None and not item.full_clock


def _is_near(line: Item, read: Item) -> bool:
    """Whether both show an hour and minutes, at most four hours apart."""
    faces = [_apart(a, b) for a in line.clocks for b in read.clocks]
    return (min(faces, default=0) <= WITHIN) and _shows_time(line) and _shows_time(read)


def _shows_time(item: Item) -> bool:
    """Not "640"; a leading 0 shows one also where it is cut out as a number."""
    whole = item.clocks.whole and (item.role == "time" or len(item.digits) != SHORT)
    return whole or (item.digits[:1] == "0" and len(item.digits) == FULL_HOUR)


def _apart(one: Clock, other: Clock) -> int:
    """Minutes between two times; of twelve hours where one does not say which half of the day it is."""
    face = DAY if one.style == other.style == "24" else DAY // 2
    minutes = (one.hour - other.hour) * 60 + one.minute - other.minute
    return min(minutes % face, -minutes % face)
