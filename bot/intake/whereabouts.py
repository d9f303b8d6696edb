"""Which unit a message is about. Most people are on one list; for the others the words must tell.

A bed is never guessed: bed 12 of one ward is not bed 12 of another, so what two units could mean is asked.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Collection
from dataclasses import dataclass, replace
from typing import TypeAlias

from bot.intake.incoming import Incoming
from bot.store import Book
from bot.unit import Unit

BedsNamed: TypeAlias = Callable[[Incoming, Unit], Collection[str]]
"""The beds that a message names, as that unit would read it."""


@dataclass(frozen=True, slots=True)
class Place:
    """The unit that a message is about (None: it may be several), and the message without the unit's name."""

    unit: Unit | None
    incoming: Incoming


def place(incoming: Incoming, units: tuple[Unit, ...], book: Book, beds_named: BedsNamed) -> Place:
    """Where the message belongs, of the sender's units (at least one)."""
    if len(units) == 1:
        return Place(units[0], incoming)
    for unit in units:
        rest = _after_name(incoming.text, unit)
        if rest is not None:
            return Place(unit, replace(incoming, text=rest, digest=incoming.body_digest))
    named = {unit.id: frozenset(beds_named(incoming, unit)) for unit in units}
    if any(named.values()):
        fitting = [unit for unit in units if named[unit.id] and named[unit.id] <= set(unit.beds)]
    else:
        fitting = [unit for unit in units if _asked(incoming, unit, book)]
    return Place(fitting[0] if len(fitting) == 1 else None, incoming)


def _after_name(text: str, unit: Unit) -> str | None:
    """What follows the unit's name at the start of the text."""
    names = f"{re.escape(unit.name)}|{re.escape(unit.id)}"
    found = re.match(rf"\s*(?:{names})\b[\s,:.]*(?=\S)", text, re.IGNORECASE)
    return None if found is None else text[found.end() :]


def _asked(incoming: Incoming, unit: Unit, book: Book) -> bool:
    """Whether an answer without a bed can be one to this unit's question."""
    book.unit = unit.id
    return any(not question.lapsed(incoming.arrived) for question in book.unsettled(sender=incoming.sender))
