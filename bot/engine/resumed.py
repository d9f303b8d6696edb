"""Ledgers taken up where they were left: most of a drain's entries were folded for the message before.

Nothing derived is stored, and nothing here can be out of date: a ledger is gone on from only while its
entries are, one by one, the first of those that are asked about; otherwise it is folded anew. A test holds
the two equal.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from bot.engine.entries import Entry
from bot.engine.ledger import Ledger, fold

MOST = 512
"""So many drains, those asked about last, are at hand: a few tens of MB where each has a hundred lines."""


@dataclass(slots=True)
class _Left:
    """A ledger as it was left."""

    ledger: Ledger | None = None


def resumed(entries: tuple[Entry, ...], capacity_ml: int) -> Ledger:
    """The ledger of these entries of one drain, given by position: what `fold` makes of them."""
    if not entries:
        return fold((), capacity_ml)
    left = _left(entries[0].drain, capacity_ml)
    ledger = left.ledger  # read once: another thread may be asking about the same drain
    if ledger is None or entries[: len(ledger.entries)] != ledger.entries:
        ledger = fold(entries, capacity_ml)
    for entry in entries[len(ledger.entries) :]:
        ledger = ledger.with_entry(entry)
    left.ledger = ledger
    return ledger


@lru_cache(maxsize=MOST)
def _left(_drain: str, _capacity_ml: int) -> _Left:
    """Where the ledger of this drain was left."""
    return _Left()
