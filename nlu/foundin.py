"""In which of several tubes something was found or happened, said behind it: "no leak on the right".

A finding or an event is of the tube before it; where a clause names another tube behind it ("left tube out at
1810, clamped the right at 1820"), the tube comes first. Called by `sentence`.
"""

from __future__ import annotations

from itertools import pairwise

from .items import FINDINGS, Item
from .numbers import Toks, word
from .rules import there

PLACING = frozenset({"on", "in", "from", "at", "of"})
ARTICLES = frozenset({"the", "his", "her"})
EVENTS = frozenset({"kind", "what"})
TOLD = FINDINGS | EVENTS
PARTING = frozenset({"-", "/", "+", "then", "and", ";", ",", "."})


def with_tubes_first(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """The pieces, each finding behind the tube that it is of, and each event that a clause opens with."""
    if "tube" not in (said := there(items)) or said.isdisjoint(TOLD):
        return items
    found = list(items)
    for k, item in enumerate(items):
        if item.role != "tube" or (k and items[k - 1].role == "tube"):
            continue
        end = next((j for j in range(k, len(items)) if items[j].role != "tube"), len(items))
        start = _clause(items, k, end)
        if start and _is_told(items[:start], item) and _is_where(item, toks):
            found[start:end] = [*items[k:end], *items[start:k]]
        elif _is_opened(items, k, toks):
            found[k - 1 : end] = [*items[k:end], items[k - 1]]
    return tuple(found)


def _is_opened(items: tuple[Item, ...], k: int, toks: Toks) -> bool:
    """Whether a clause opens with what happened to this tube, and another one was told of before it."""
    event = items[k - 1]
    if k == 0 or event.role != "cue" or event.value not in EVENTS:
        return False
    between = set(toks.said[event.end : items[k].start])
    parted = word(toks, event.start - 1) in PARTING or (k > 1 and items[k - 2].role == "sep")
    last = next((i for i in reversed(items[: k - 1]) if i.role == "tube"), None)
    return parted and between <= ARTICLES | {"on"} and last is not None and last.name != items[k].name


def _clause(items: tuple[Item, ...], k: int, end: int) -> int:
    """Where the clause begins that this tube ends, behind nothing but what was found; or nought."""
    start = k
    while start and items[start - 1].role == "cue" and items[start - 1].value in FINDINGS:
        start -= 1
    ends = end == len(items) or items[end].role == "sep" or items[end].unread
    return start if start < k and ends and items[start - 1].role == "sep" else 0


def _is_told(before: tuple[Item, ...], tube: Item) -> bool:
    """Whether several tubes were told before it with a line, and it is one of them; or only another one was:
    "left tube out at 1810, final 220. no leak on the right"."""
    lined = {i.name for i, nxt in pairwise(before) if i.role == "tube" and nxt.role == "num"}
    named = {i.name for i in before if i.role == "tube"}
    return (len(lined) > 1 and tube.name in lined) or (bool(named) and tube.name not in named)


def _is_where(tube: Item, toks: Toks) -> bool:
    k = tube.start - 1
    while word(toks, k) in ARTICLES:
        k -= 1
    return word(toks, k) in PLACING
