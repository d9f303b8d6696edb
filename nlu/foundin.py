"""In which of several tubes something was found, said behind it: "no leak on the right, left has a leak".

A finding is of the tube before it; where tubes were told with their lines, and a clause names one of them
last, the tube comes first. Called by `sentence`.
"""

from __future__ import annotations

from itertools import pairwise

from .items import FINDINGS, Item
from .numbers import Toks, word
from .rules import there

PLACING = frozenset({"on", "in", "from", "at", "of"})
ARTICLES = frozenset({"the", "his", "her"})


def with_tubes_first(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """The pieces, each finding behind the tube that it is of."""
    if not {"tube", "num", "sep"} <= (said := there(items)) or said.isdisjoint(FINDINGS):
        return items
    found = list(items)
    for k, item in enumerate(items):
        start = _clause(items, k)
        if item.role == "tube" and start and _is_told(items[:start], item) and _is_where(item, toks):
            found[start : k + 1] = [item, *items[start:k]]
    return tuple(found)


def _clause(items: tuple[Item, ...], k: int) -> int:
    """Where the clause begins that this piece ends, behind nothing but what was found; or nought."""
    start = k
    while start and items[start - 1].role == "cue" and items[start - 1].value in FINDINGS:
        start -= 1
    ends = k + 1 == len(items) or items[k + 1].role == "sep" or items[k + 1].unread
    return start if start < k and ends and items[start - 1].role == "sep" else 0


def _is_told(before: tuple[Item, ...], tube: Item) -> bool:
    """Whether several tubes were told before it with a line, and it is one of them."""
    named = {i.name for i, nxt in pairwise(before) if i.role == "tube" and nxt.role == "num"}
    return len(named) > 1 and tube.name in named


def _is_where(tube: Item, toks: Toks) -> bool:
    k = tube.start - 1
    while word(toks, k) in ARTICLES:
        k -= 1
    return word(toks, k) in PLACING
