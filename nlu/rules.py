"""Rules that look for a sign in the pieces of a reading, each with what it cannot do without.

A rule about a word that was not understood says nothing of pieces among which there is none: it is not asked.
Called by `leftovers`, `unexplained` and `subjects`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import NamedTuple

from .items import Item
from .numbers import Toks

Pieces = tuple[Item, ...]


class Rule(NamedTuple):
    """What finds the signs, and the pieces of which one at least must be there for any: their roles, and
    what they are where they are cues."""

    find: Callable[[Pieces, Toks], Iterable[str]]
    needs: frozenset[str]


def there(items: Iterable[Item]) -> frozenset[str]:
    """The roles of the pieces, and what those are that are cues."""
    return frozenset([i.value if i.role == "cue" else i.role for i in items])


def asked(rules: Iterable[Rule], items: Pieces) -> list[Rule]:
    """The rules that may find something in these pieces."""
    pieces = there(items)
    return [rule for rule in rules if not rule.needs.isdisjoint(pieces)]


def signs(rules: Iterable[Rule], items: Pieces, toks: Toks) -> list[str]:
    """One line for each sign that the rules find."""
    return [sign for rule in asked(rules, items) for sign in rule.find(items, toks)]
