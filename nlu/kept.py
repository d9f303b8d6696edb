"""Whether all numbers that were said are in some statement: nothing is dropped in silence."""

from __future__ import annotations

from collections.abc import Iterator

from .drafts import Draft
from .items import Item, is_of_now

NUMBERS = frozenset({"level", "volume", "output", "check", "weight", "time"})


def dropped(items: tuple[Item, ...], drafts: list[Draft]) -> Iterator[str]:
    """One line for each number with a role that no statement of the reading has."""
    kept = {item.start for draft in drafts for item in _said(draft) if item is not None}
    for item in items:
        if item.role in NUMBERS and item.start not in kept and not is_of_now(item):  # "now 60 at 1900"
            yield f"a {item.role} that is in no statement"


def _said(draft: Draft) -> tuple[Item | None, ...]:
    """The pieces of a draft, and nothing where it has none."""
    return (
        draft.time,
        draft.time_before,
        draft.since,
        draft.level,
        draft.final,
        draft.opening,
        draft.volume,
        draft.output,
        draft.weight,
        draft.ordered,
        *draft.checks.values(),
        *draft.bad,
        *draft.denied,
        *(i for c in draft.clashes.values() for i in c),
    )
