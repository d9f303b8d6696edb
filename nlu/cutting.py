"""Numbers and times that one way through a message has cut in two: "ten fifty" as ten and fifty."""

from __future__ import annotations

from .clock import clocks, length
from .items import Item
from .numbers import Toks, is_digits, numbers

WHOLE = frozenset({"num", "level", "volume", "output", "time", "bad", "alt", "check", "weight", "claimed", "denied"})


def cuts(items: tuple[Item, ...], toks: Toks, voice: bool) -> list[str]:
    """One line for each piece that a longer number or time at its place would have taken in."""
    ends = {i.end for i in items}
    return [
        "a number or time is cut in two"
        for item in items
        if (item.role in WHOLE or _is_bare_bed(item, toks, voice)) and _is_cut(item, ends, toks)
    ]


def _is_bare_bed(item: Item, toks: Toks, voice: bool) -> bool:
    """A bed without the word bed; typed digits side by side ("12 50") are two numbers all the same."""
    return item.role == "bed" and item.figure is not None and (voice or not is_digits(toks, item.start))


def _is_cut(item: Item, ends: set[int], toks: Toks) -> bool:
    longer = {n.end for n in numbers(toks, item.start)} | {end for end, _ in clocks(toks, item.start)}
    if item.role != "time":
        end, minutes = length(toks, item.start)
        longer |= {end} if minutes is not None else set()
    return any(end > item.end and end in ends for end in longer)
