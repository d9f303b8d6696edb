"""Rules that are many, found by what each of them needs: a word that is said, a piece that is there.

A set of them is a number with a bit for each. Used by `rules` and `narrated`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from functools import lru_cache
from typing import TypeVar

MOST = 1024
"""Sets of rules that are remembered as such."""
Rule = TypeVar("Rule")


def by_need(needs: Iterable[Iterable[str]]) -> Mapping[str, int]:
    """Of each thing that is needed, the set of the rules that need it; `needs` are those of each rule."""
    found: dict[str, int] = {}
    for k, needed in enumerate(needs):
        for each in needed:
            found[each] = found.get(each, 0) | 1 << k
    return found


def needing(sets: Mapping[str, int], there: Iterable[str]) -> int:
    """The set of the rules that need one of these things."""
    found = 0
    for each in there:
        found |= sets.get(each, 0)
    return found


def members(rules: Sequence[Rule]) -> Callable[[int], tuple[Rule, ...]]:
    """What finds the rules of a set, in their order."""
    return lru_cache(MOST)(lambda chosen: tuple(rule for k, rule in enumerate(rules) if chosen >> k & 1))
