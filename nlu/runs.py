"""Catch-up lists with nothing between their pairs: "6 2200 300 2300 340"."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .items import Item

FEWEST = 4
"""Numbers of two pairs: one pair needs nothing between it and the next."""
MINUTES = 24 * 60
NUMBERS = frozenset({"num", "time"})
HALVES = frozenset({"am", "pm"})
NOONS = frozenset({"noon", "midnight"})
PAIRING = frozenset({"", "-"})
"""What links the two numbers of a pair: "0300-540 0400-575"."""
LONGEST_GAP = 12 * 60
"""Minutes between two lines of one list."""


def paired(items: tuple[Item, ...]) -> tuple[Item, ...]:
    """The pieces with a comma between the pairs of such a list, where only one way to pair them stands."""
    if len([i for i in items if i.role in NUMBERS]) < FEWEST:
        return items
    lists = [_pairs(run) for run in _runs(items) if len(run) >= FEWEST]
    starts = {item.start for way in lists for item in way[2::2]} | set(_timed_pairs(items))
    if not starts:
        return items
    dashed = {item.start for way in lists for item in way[1::2]}
    found: list[Item] = []
    for item in items:
        if item.start in starts and item.role in {"num", "time"}:
            found.append(Item("sep", item.start, item.start, ","))
        found.append(item._replace(link="", negative=False) if item.start in dashed else item)
    return tuple(found)


def _timed_pairs(items: tuple[Item, ...]) -> Iterator[int]:
    """ "805 at 1800 915 at 1900": where the next line begins, which can be no bed."""
    for first, before, item, after in zip(items, items[1:], items[2:], items[3:], strict=False):
        if not (first.role == "num" and first.label is None):
            continue  # "6 at 4pm 180 at 5pm 210": which belongs to which?
        plain = (
            item.role == "num"
            and not (item.lead or item.at or item.link)
            and item.label is None
            and item.digits
        )
        if plain and is_at(before) and is_at(after) and before.end == item.start:
            yield item.start


def is_at(item: Item) -> bool:
    """Whether it is a clock time that was led by at."""
    return item.at and (item.role == "time" or (item.role == "num" and bool(item.clocks)))


def _runs(items: tuple[Item, ...]) -> Iterator[list[Item]]:
    """Bare numbers right behind each other."""
    run: list[Item] = []
    for item in items:
        plain = not (item.unit or item.lead or item.link not in PAIRING or item.at)
        if plain and (item.role == "num" or (item.role == "time" and is_time(item))):
            run.append(item)
            continue
        yield run
        run = []
    yield run


def _pairs(run: list[Item]) -> list[Item]:
    """The numbers of the pairs; none where the numbers can be paired in two ways, or in none."""
    ways = [way for first in (0, 1) for way in (_list(run[first:], 0), _list(run[first:], 1)) if way]
    if len(ways) != 1 or (len(ways[0]) < len(run) and run[0].label is None):
        return []
    return ways[0]


def _list(run: list[Item], clock: int) -> list[Item]:
    """The run, if it is pairs of which that one is the clock time; else nothing."""
    if len(run) < FEWEST or len(run) % 2:
        return []
    links = {item.link for item in run[1::2]}
    if len(links) > 1 or any(item.link for item in run[::2]):
        return []
    times, levels = run[clock::2], run[1 - clock :: 2]
    if not all(map(is_time, times)) or any(map(is_time, levels)):
        return []
    amounts = [item.amount for item in levels if item.amount is not None]
    if len(amounts) < len(levels) or amounts != sorted(amounts):
        return []
    return run if _ascend([minute_of_day(item) for item in times]) else []


def is_time(item: Item) -> bool:
    """Whether it is a whole clock time, of one half of the day."""
    if item.role == "time":
        clock = item.clocks[0]
        whole = clock.style == "24" or (clock.style in {"12", "hour"} and clock.part in HALVES | NOONS)
        return len(item.clocks) == 1 and whole and clock.day is None
    return item.full_clock


def minute_of_day(item: Item) -> int:
    """The minute of the day of such a time."""
    if item.role == "time":
        clock = item.clocks[0]
        hour = clock.hour if clock.part not in HALVES else clock.hour % 12 + 12 * (clock.part == "pm")
        return hour * 60 + clock.minute
    return int(item.digits[:2]) * 60 + int(item.digits[2:])


def _ascend(minutes: list[int]) -> bool:
    gaps = [(later - earlier) % MINUTES for earlier, later in pairwise(minutes)]
    return all(0 < gap <= LONGEST_GAP for gap in gaps) and sum(gaps) < MINUTES
