"""Rules that look for a sign in the pieces of a reading, each with what it cannot do without.

A rule about a word that was not understood says nothing of pieces among which there is none: it is not asked.
Used by `leftovers`, `unexplained` and `inclause`, and wherever such rules are written down for them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from functools import lru_cache
from typing import NamedTuple

from .items import Item
from .numbers import Toks

Pieces = tuple[Item, ...]
MOST = 1024
"""Sets of pieces for which is remembered which rules are asked."""


class Rule(NamedTuple):
    """What finds the signs, and the pieces of which one at least must be there for any: their roles, and
    what they are where they are cues."""

    find: Callable[[Pieces, Toks], Iterable[str]]
    needs: frozenset[str]
    said: frozenset[str] = frozenset()
    """The words of which one must be said as well; without any the rule needs none."""


class Rules(tuple[Rule, ...]):
    """Rules in the order in which they are asked, each found by what it needs: they are many."""

    needs: frozenset[str]
    asked: Callable[[frozenset[str]], tuple[Rule, ...]]
    """Those that may find something where these pieces are."""

    def __new__(cls, rules: Iterable[Rule]) -> Rules:
        """The rules, with all that they need."""
        found = super().__new__(cls, rules)
        found.needs = frozenset(need for rule in found for need in rule.needs)
        found.asked = lru_cache(MOST)(
            lambda pieces: tuple(r for r in found if not pieces.isdisjoint(r.needs))
        )
        return found


def there(items: Iterable[Item]) -> frozenset[str]:
    """The roles of the pieces, and what those are that are cues."""
    return frozenset([i.value if i.role == "cue" else i.role for i in items])


def asked(rules: Rules, items: Pieces, toks: Toks) -> list[Rule]:
    """The rules that may find something in these pieces, in their order."""
    pieces, words = there(items) & rules.needs, toks.words
    return [rule for rule in rules.asked(pieces) if not rule.said or not rule.said.isdisjoint(words)]


def signs(rules: Rules, items: Pieces, toks: Toks) -> list[str]:
    """One line for each sign that the rules find."""
    return [sign for rule in asked(rules, items, toks) for sign in rule.find(items, toks)]
