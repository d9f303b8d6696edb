"""Numbers and times that one way through a message has cut in two: "ten fifty" as ten and fifty."""

from __future__ import annotations

from itertools import pairwise

from .clock import clocks
from .items import MEASURED, Item
from .lengths import length
from .measures import is_thousands
from .numbers import Toks, glued, is_digits, is_inside_number, numbers, small, word
from .tokens import remembered

WHOLE = frozenset(
    {"num", "level", "volume", "output", "time", "bad", "alt", "check", "weight", "claimed", "denied"}
)


def cuts(items: tuple[Item, ...], toks: Toks, voice: bool) -> list[str]:
    """One line for each piece that a longer number or time at its place would have taken in."""
    ends = {i.end for i in items} | {i.core for i in items}
    trailing = _trailing_beds(items) if voice else 0
    return ["a bare number right after a number is no bed"] * trailing + [
        "a number or time is cut in two"
        for item in items
        if (
            item.name != MEASURED
            and ((item.role in WHOLE or _is_bare_bed(item)) and _is_cut(item, ends, toks, voice))
        )
        or (item.role == "bed" and _is_half(item, ends, toks))
    ]


def cut_lengths(items: tuple[Item, ...], toks: Toks) -> list[str]:
    """One line for each bed that is half of a length of time: "the last 24h on bed 12"."""
    lengths = (length(toks, i.start) for i in items if i.role == "bed")
    ends = (end for end, minutes in lengths if minutes is not None and word(toks, end - 1) != "m")
    return ["a length of time is cut in two" for _ in ends]


def _trailing_beds(items: tuple[Item, ...]) -> int:
    """Dictated "one ten five": nothing says that the five is a bed."""
    pairs = pairwise(items)
    return sum(_is_bare_bed(item) and last.role in WHOLE and last.end == item.start for last, item in pairs)


def _is_half(item: Item, ends: set[int], toks: Toks) -> bool:
    """A bed "twenty" that another piece follows which is just the "seven" of twenty-seven."""
    start = item.end - 1
    return any(end > item.end and end in ends for end, _ in small(toks, start))


def _is_bare_bed(item: Item) -> bool:
    """A bed without the word bed; typed digits side by side ("12 50") are two numbers all the same."""
    return item.role == "bed" and item.figure is not None


def _is_cut(item: Item, ends: set[int], toks: Toks, voice: bool) -> bool:
    if _is_group(item, toks) or _takes_the_hour(item, toks) or _takes_the_minutes(item, toks):
        return True
    if _furthest(toks, item.start) <= item.end:
        return False
    longer = {
        end
        for end, clock in clocks(toks, item.start)
        if (clock.sure and not _is_bed_and_time(item, end, toks, voice))
        or item.role != "bed"
        or (clock.colon and not voice and glued(toks, item.end))
    }
    pointed = word(toks, item.end) == "point"
    if item.role != "bed" or voice or pointed or not is_digits(toks, item.start):
        found = numbers(toks, item.start)
        typed = not voice and is_digits(toks, item.start)
        longer |= {
            n.end for n in found if not typed or n.style != "joined" or is_thousands(toks, item.start, n)
        }
    if item.role != "time":
        end, minutes = length(toks, item.start)
        longer |= {end} if minutes is not None and word(toks, end - 1) != "m" else set()
    return any(end > item.end and end in ends for end in longer)


def cuts_thousand(items: tuple[Item, ...], toks: Toks) -> bool:
    """ "yes 1,020": a glued comma before "020" parts no two beds, nor bed and line; "940,0700" is two."""
    commas = [
        i.start for i in items if i.role == "sep" and i.value == "," and is_inside_number(toks, i.start)
    ]
    return any(word(toks, k + 1).startswith("0") and len(word(toks, k + 1)) <= len("020") for k in commas)


def _is_bed_and_time(item: Item, end: int, toks: Toks, voice: bool) -> bool:
    """ "8 10am", typed: ten past eight, or bed 8 at ten."""
    typed = item.role == "bed" and not voice and is_digits(toks, item.start)
    return typed and any(e == end and clock.sure for e, clock in clocks(toks, item.end))


@remembered
def _furthest(toks: Toks, i: int) -> int:
    """The last place at which any number, time or length of time that begins here ends."""
    ends = (*(end for end, _ in clocks(toks, i)), *(n.end for n in numbers(toks, i)), length(toks, i)[0])
    return max(ends)


def _takes_the_hour(item: Item, toks: Toks) -> bool:
    """ "18 06:45": digits apart, and the last are the hour of a time with a colon."""
    apart = item.end - item.start > 1 and is_digits(toks, item.end - 1) and not glued(toks, item.end - 1)
    colon = word(toks, item.end) == ":" and is_digits(toks, item.end + 1)
    return apart and colon and glued(toks, item.end) and glued(toks, item.end + 1)


def _takes_the_minutes(item: Item, toks: Toks) -> bool:
    """ "07:00 19": digits apart, and the first are the minutes of a time with a colon."""
    start = item.start
    colon = word(toks, start - 1) == ":" and is_digits(toks, start - 2) and glued(toks, start)
    apart = item.end - start > 1 and is_digits(toks, start + 1) and not glued(toks, start + 1)
    return colon and apart and glued(toks, start - 1)


def _is_group(item: Item, toks: Toks) -> bool:
    """ "440,020" is one number, however odd, and no list of two."""
    comma = max(item.core, item.start + 1)
    if word(toks, comma) != ",":
        return False
    tail = word(toks, comma + 1)
    return (
        is_digits(toks, comma - 1)
        and glued(toks, comma)
        and glued(toks, comma + 1)
        and tail.isdecimal()
        and len(tail) == 3
    )
