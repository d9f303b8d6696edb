"""The clauses of a message, and the rules that look for their signs in one clause at a time.

Called by `leftovers`, and by the modules whose rules are about a clause.
"""

from __future__ import annotations

from collections.abc import Iterator

from .items import AMOUNTS, Item
from .numbers import Toks, glued
from .patterns.asides import PATIENTS, STAFF
from .patterns.remarks import REMARKS
from .rules import Rules, asked

ENDS = frozenset({",", ";", ".", "!", "but", "then", "and", "&", "also", "plus", "|"})
NUMBERS = AMOUNTS | {"bad"}
HARMLESS = REMARKS | STAFF | PATIENTS


def of_clauses(rules: Rules, items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """One line for each sign that the rules find in a clause."""
    needed = asked(rules, items, toks)
    for clause in clauses(items) if needed else ():
        for rule in needed:
            yield from rule.find(clause, toks)


def clauses(items: tuple[Item, ...], stops: frozenset[str] = ENDS) -> Iterator[tuple[Item, ...]]:
    """The stretches between stops."""
    found: list[Item] = []
    for item in items:
        if item.role == "sep" and item.value in stops:
            yield tuple(found)
            found = []
        else:
            found.append(item)
    yield tuple(found)


def happens(item: Item) -> bool:
    """Whether the piece says that something happened, or that nothing changed."""
    return item.role == "cue" and item.value in {"kind", "what", "same"}


def is_strange(item: Item, toks: Toks) -> bool:
    """Whether it was not understood, and is no remark, no person and no letter of a label."""
    unread = item.unread and item.name not in HARMLESS
    return unread and not (glued(toks, item.start) and len(item.name) == 1)
