"""Rules that look for a sign in the pieces of a reading, each with what it cannot do without.

A rule about a word that was not understood says nothing of pieces among which there is none: it is not asked.
Used by `leftovers`, `unexplained` and `inclause`, and wherever such rules are written down for them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import NamedTuple

from .items import Item
from .numbers import Toks

Pieces = tuple[Item, ...]


class Rule(NamedTuple):
    """What finds the signs, and the pieces of which one at least must be there for any: their roles, and
    what they are where they are cues."""

    find: Callable[[Pieces, Toks], Iterable[str]]
    needs: frozenset[str]


class Rules(tuple[Rule, ...]):
    """Rules in the order in which they are asked, each found by what it needs: they are many."""

    by_need: Mapping[str, tuple[int, ...]]

    def __new__(cls, rules: Iterable[Rule]) -> Rules:
        """The rules, with the places of those that need a piece."""
        found = super().__new__(cls, rules)
        needs = frozenset(need for rule in found for need in rule.needs)
        found.by_need = {n: tuple(k for k, rule in enumerate(found) if n in rule.needs) for n in needs}
        return found


def there(items: Iterable[Item]) -> frozenset[str]:
    """The roles of the pieces, and what those are that are cues."""
    return frozenset([i.value if i.role == "cue" else i.role for i in items])


def asked(rules: Rules, items: Pieces) -> list[Rule]:
    """The rules that may find something in these pieces, in their order."""
    places = {place for piece in there(items) for place in rules.by_need.get(piece, ())}
    return [rules[place] for place in sorted(places)]


def signs(rules: Rules, items: Pieces, toks: Toks) -> list[str]:
    """One line for each sign that the rules find."""
    return [sign for rule in asked(rules, items) for sign in rule.find(items, toks)]
