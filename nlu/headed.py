"""Whole times before what they head: the tubes of a bed, or the beds of a round, each with its line.

"4 1900 left 180 right 640", "0100 4 138 6 20 0200 4 140 6 25". Called by `keyed`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from datetime import datetime
from itertools import pairwise

from .items import NO_CLOCKS, RECENT, Item
from .listed import has_plain_numbers, is_line
from .numbers import Toks, word
from .rounds import NOT_HEADS
from .runs import is_time, minute_of_day

SAID = frozenset({"num", "time", "bad", "bed", "tube"})
OF_TUBES = re.compile("(hb(t+l)+(b(t+l)+)*)+|bh(t+l)+(b(t+l)+)*|b(h(t+l)+)+")
"""Bed, head, tube and line, by their first letters; a tube of one word or more. In "9 1620, 5 L 210 R 95" the
first bed has its own line."""


def headed(items: tuple[Item, ...], toks: Toks, arrived: datetime) -> tuple[Item, ...]:
    """The pieces, with such times as times of what stands behind them, and the beds of rounds as beds."""
    said = [i for i in items if i.role in SAID]
    heads = [i for i in said if _is_head(i, toks)]
    if not heads or len(said) < len("bhtltl") or not has_plain_numbers(items):
        return items
    found = {i.start: i._replace(role="time", lead="at", at=True, link="") for i in heads}
    stops = {i.start for i in heads[1:]}
    if any(i.role == "tube" for i in said):
        fresh = len(heads) > 1 or _is_time_of(heads[0], said[-1], arrived)
        if not (fresh and _are_tubes_of_heads(said, heads)):
            return items
    elif of_beds := _rounds(said, heads):
        found |= of_beds
    elif of_beds := _each_timed(said, heads, arrived):
        found |= of_beds
        stops = {i.start for i in said[3::3]}
    else:
        return items
    return tuple(_settled(items, found, stops))


def _is_head(item: Item, toks: Toks) -> bool:
    plain = item.role in {"num", "time"} and item.label is None and item.lead in {"", "at"} and not item.unit
    return plain and is_time(item) and word(toks, item.start - 1) not in NOT_HEADS


def _is_time_of(head: Item, last: Item, arrived: datetime) -> bool:
    """Whether it is a fresh time, or the only one: else the last of the lines may be the time."""
    only = head.possible(arrived) and not (last.clocklike and last.possible(arrived))
    return only or head.within(RECENT, arrived)


def _are_tubes_of_heads(said: Sequence[Item], heads: Sequence[Item]) -> bool:
    """Whether it is a bed or more with its tubes, and right behind each tube its line."""
    row = "".join(_letter(last, item, heads) for last, item in zip((None, *said), said, strict=False))
    beds = [i.label for i, letter in zip(said, row, strict=True) if letter == "b"]
    each = len(beds) == 1 if len(heads) > 1 else len(set(beds)) == len(beds) > 0
    return each and row.count("l") > 1 and bool(OF_TUBES.fullmatch(row)) and _are_apart(heads)


def _letter(before: Item | None, item: Item, heads: Sequence[Item]) -> str:
    """What a piece is in such a row: tube, line, head, bed, or something else."""
    if item.role == "tube":
        return "t"
    if before is not None and before.role == "tube":
        return "l" if is_line(item) and item.start == before.end else "?"
    return "h" if item in heads else "b" if _is_bed(item) else "?"


def _rounds(said: Sequence[Item], heads: Sequence[Item]) -> dict[int, Item]:
    """ "0100 4 138 6 20 0200 4 140 6 25": the same beds behind each time, each with its line."""
    starts = [k for k, i in enumerate(said) if i in heads]
    groups = [said[k + 1 : end] for k, end in pairwise([*starts, len(said)])]
    beds = [[i.label for i in group[::2]] for group in groups]
    pairs = all(
        len(g) > 1 and len(g) % 2 == 0 and all(map(_is_bed, g[::2])) and all(map(is_line, g[1::2]))
        for g in groups
    )
    one = len(groups) > 1 and all(labels == beds[0] for labels in beds) and len(set(beds[0])) == len(beds[0])
    if starts[0] or not (pairs and one and _are_apart(heads)):
        return {}
    found = {i.start: i._replace(role="bed", link="") for group in groups for i in group[::2]}
    lines = [i for group in groups for i in group[1::2]]
    return found | {i.start: i._replace(clocks=NO_CLOCKS, label=None, link="") for i in lines}


def _each_timed(said: Sequence[Item], heads: Sequence[Item], arrived: datetime) -> dict[int, Item]:
    """ "7 650 0530 8 710 0545", "7 1845 88 8 1850 140": bed, line and time again and again, in one order.

    Where each line could be the time as well, only times that begin with nought show which is which.
    """
    beds = said[::3]
    lines, times = (said[1::3], said[2::3]) if said[2] in heads else (said[2::3], said[1::3])
    threes = len(beds) == len(lines) == len(times) > 1 and list(times) == list(heads)
    plain = all(map(_is_bed, beds)) and all(map(is_line, lines)) and len({i.label for i in beds}) == len(beds)
    told = all(map(_begins_with_nought, times)) or any(not i.possible(arrived) for i in lines)
    if not (threes and plain and told and all(i.possible(arrived) for i in times)):
        return {}
    found = {i.start: i._replace(role="bed", link="") for i in beds}
    return found | {i.start: i._replace(clocks=NO_CLOCKS, label=None, link="") for i in lines}


def _begins_with_nought(time: Item) -> bool:
    return time.role == "time" and minute_of_day(time) < 10 * 60


def _are_apart(heads: Sequence[Item]) -> bool:
    minutes = [minute_of_day(i) for i in heads]
    return len(set(minutes)) == len(minutes)


def _is_bed(item: Item) -> bool:
    return item.role == "bed" or (item.role == "num" and item.label is not None and not item.unit)


def _settled(items: Sequence[Item], found: dict[int, Item], stops: set[int]) -> Iterator[Item]:
    for item in items:
        if item.start in stops and item.role in SAID:
            yield Item("sep", item.start, item.start, ",")
        made = found.get(item.start, item)
        yield made if item.role in SAID else item
