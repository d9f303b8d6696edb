"""A day that heads a catch-up list: "bed 7 last night: 2200 420, 0000 460", "today: 1500 420, 1600 460".

It is said of every time of the list. Called by `keyed`.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta
from itertools import pairwise

from .items import Clocks, Item
from .listed import listed
from .moments import LIST_REACH, since
from .numbers import Toks


def listed_of_day(items: tuple[Item, ...], toks: Toks, arrived: datetime) -> tuple[Item, ...]:
    """The pieces with the times of each list as times, of the day before them where one is said."""
    day = next((i for i in items if i.role == "time" and i.clocks[:1] and i.clocks[0].style == "date"), None)
    if day is None:
        return listed(items, toks, arrived)
    rest = tuple(i for i in items if i is not day)
    found = listed(rest, toks, arrived)
    times = [i for i in found if i.role == "time"]
    dated = {i.start: i._replace(clocks=_of_day(i, day)) for i in times}
    heads = found != rest and all(day.start < i.start for i in times)
    if not (heads and _are_in_order(list(dated.values()), arrived)):
        return listed(items, toks, arrived)
    return tuple(dated.get(i.start, i) for i in found)


def _of_day(time: Item, day: Item) -> Clocks:
    said = day.clocks[0]
    return Clocks([clock._replace(day=said.day, part=clock.part or said.part) for clock in time.clocks])


def _are_in_order(times: Sequence[Item], arrived: datetime) -> bool:
    """Whether each is one moment of that day, one after the other, and none to come."""
    moments = [i.when(arrived, LIST_REACH).sure for i in times]
    found = [m for m in moments if m is not None and since(m, arrived) >= timedelta(0)]
    return len(found) == len(times) and all(since(a, b) > timedelta(0) for a, b in pairwise(found))
