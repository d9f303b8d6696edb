"""Since when something is as it was found, told behind it: "410 at 1845, water seal since 1500, no leak".

Beside a line with its own time it was found so then; since when is in no slot. Called by `sentence`.
"""

from __future__ import annotations

from itertools import pairwise

from .items import FINDINGS, Item
from .roles import CHECK_LIMITS
from .rules import there

TIMES = frozenset({"time", "num"})


def without_since(items: tuple[Item, ...]) -> tuple[Item, ...]:
    """The pieces, with such a time and the word before it as words that say nothing."""
    if "since" not in there(items) or not any(_is_own_time(i) for i in items):
        return items
    since = {
        k + 1
        for k, (found, word) in enumerate(pairwise(items))
        if word.value == "since" and word.role == "cue" and found.end == word.start and _is_found(found)
    }
    since = {k for k in since if k + 1 < len(items) and _is_when(items[k + 1], items[k])}
    told = since | {k + 1 for k in since}
    return tuple(Item("cue", i.start, i.end, "filler") if k in told else i for k, i in enumerate(items))


def _is_own_time(item: Item) -> bool:
    timed = item.role == "time" or (item.role == "num" and item.at and item.clocklike)
    return timed and item.lead not in {"since", "from"}


def _is_found(item: Item) -> bool:
    return (item.role == "cue" and item.value in FINDINGS) or (
        item.role == "num" and item.lead in CHECK_LIMITS
    )


def _is_when(time: Item, since: Item) -> bool:
    return time.role in TIMES and time.start == since.end and bool(time.clocks) and not time.unit
