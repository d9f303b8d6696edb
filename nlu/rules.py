"""Rules that look for a sign in the pieces of a reading, each with what it cannot do without.

A rule about a word that was not understood says nothing of pieces among which there is none: it is not asked.
Used by `leftovers`, `unexplained` and `inclause`, and wherever such rules are written down for them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from typing import NamedTuple

from .byneed import by_need, members, needing
from .items import Item
from .numbers import Toks

Pieces = tuple[Item, ...]


class Rule(NamedTuple):
    """What finds the signs, and the pieces of which one at least must be there for any: their roles, and
    what they are where they are cues."""

    find: Callable[[Pieces, Toks], Iterable[str]]
    needs: frozenset[str]
    said: frozenset[str] = frozenset()
    """The words of which one must be said as well; without any the rule needs none."""


class Rules(tuple[Rule, ...]):
    """Rules in the order in which they are asked, each found by what it needs: they are many."""

    by_piece: Mapping[str, int]
    by_word: Mapping[str, int]
    wordless: int
    """Those that need no word."""
    of: Callable[[int], tuple[Rule, ...]]

    def __new__(cls, rules: Iterable[Rule]) -> Rules:
        """The rules, with all that they need."""
        found = super().__new__(cls, rules)
        found.by_piece = by_need(rule.needs for rule in found)
        found.by_word = by_need(rule.said for rule in found)
        found.wordless = sum(1 << k for k, rule in enumerate(found) if not rule.said)
        found.of = members(found)
        return found


def there(items: Iterable[Item]) -> frozenset[str]:
    """The roles of the pieces, and what those are that are cues."""
    return frozenset(_kinds(items))


def _kinds(items: Iterable[Item]) -> list[str]:
    return [i.value if i.role == "cue" else i.role for i in items]


def asked(rules: Rules, items: Pieces, toks: Toks) -> Sequence[Rule]:
    """The rules that may find something in these pieces, in their order."""
    worded = rules.wordless | needing(rules.by_word, toks.words)
    return rules.of(worded & needing(rules.by_piece, _kinds(items)))


def signs(rules: Rules, items: Pieces, toks: Toks) -> list[str]:
    """One line for each sign that the rules find."""
    return [sign for rule in asked(rules, items, toks) for sign in rule.find(items, toks)]
