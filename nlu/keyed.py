"""A whole time that a sign sets apart from the level beside it: "2200: 715", "945 (2200)".

Without the sign either could be the time, and is asked. Called by `read`.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from itertools import pairwise

from .dayed import listed_of_day
from .headed import headed
from .items import NO_CLOCKS, Item
from .listed import has_plain_numbers, is_line
from .numbers import Toks, glued, word
from .parted import without_hours
from .rounds import in_rounds
from .runs import is_time
from .tubed import in_tubed_rounds

LED_BY = frozenset({"", "level"})
NUMBERED = frozenset({"num", "time", "bad", "bed"})


def with_plain_pairs(items: tuple[Item, ...], toks: Toks, arrived: datetime) -> tuple[Item, ...]:
    """The pieces, with the times and beds of lists, rounds and keyed lines as what they plainly are."""
    found = in_tubed_rounds(in_rounds(listed_of_day(items, toks, arrived), toks), toks)
    return without_hours(with_keyed_time(headed(found, toks, arrived), toks), toks, arrived)


def with_keyed_time(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """The pieces, with such a time as a time; only where there is one line, and no number but its bed."""
    if toks.words.isdisjoint({":", "("}) or not has_plain_numbers(items):
        return items
    head = next((i for k, i in enumerate(items) if _heads_tubes(items, k, toks)), None)
    if head is not None:
        return tuple(_as_time(i) if i is head else i for i in items)
    said = [i for i in items if i.role in {"num", "time", "bad", "bed", "tube"}]
    pair = next((p for p in pairwise(said) if _is_keyed(*p, toks) or _is_bracketed(*p, toks)), None)
    if pair is None or not _is_one_line(said, pair):
        return items
    time, level = sorted(pair, key=is_time, reverse=True)
    found = {
        time.start: _as_time(time),
        level.start: level._replace(clocks=NO_CLOCKS, label=None),
    }
    return tuple(found.get(i.start, i) if i.role == "num" else i for i in items)


def _as_time(item: Item) -> Item:
    return item._replace(role="time", lead="at", at=True, link="")


def _heads_tubes(items: Sequence[Item], k: int, toks: Toks) -> bool:
    """ "bed 4 1900: left 180, right 65": a time before the tubes of one bed, each with its level."""
    if not (_is_whole(items[k], LED_BY) and word(toks, items[k].end) == ":") or k + 1 == len(items):
        return False
    before = [i for i in items[:k] if i.role in NUMBERED]
    after = [i for i in items[k + 1 :] if i.role in NUMBERED]
    tubes = sum(i.role == "tube" for i in items[k + 1 :])
    bed = len(before) == 1 and (before[0].role == "bed" or before[0].label is not None)
    first = items[k + 1].role == "tube" and not glued(toks, items[k + 1].start)
    return bed and first and 0 < len(after) <= tubes and all(is_line(i) for i in after)


def _is_keyed(time: Item, level: Item, toks: Toks) -> bool:
    """ "2200: 715", "line 2200: 715"."""
    apart = word(toks, time.end) == ":" and level.start == time.end + 1 and not glued(toks, level.start)
    return apart and _is_whole(time, LED_BY) and is_line(level)


def _is_bracketed(level: Item, time: Item, toks: Toks) -> bool:
    """ "945 (2200)"."""
    inside = word(toks, time.start - 1) == "(" and word(toks, time.end) == ")" and time.start == level.end + 1
    return inside and _is_whole(time) and is_line(level)


def _is_whole(item: Item, leads: frozenset[str] = frozenset({""})) -> bool:
    return (
        item.role == "num" and is_time(item) and item.label is None and item.lead in leads and not item.unit
    )


def _is_one_line(said: Sequence[Item], pair: tuple[Item, Item]) -> bool:
    """Whether beside the pair there is just a bed, and perhaps its tube."""
    rest = [i for i in said if i not in pair and i.role != "tube"]
    return len(rest) == 1 and (rest[0].role == "bed" or (rest[0].role == "num" and rest[0].label is not None))
