"""Ledgers taken up where they were left: most of a drain's entries were folded for the message before.

Nothing derived is stored, and nothing here can be out of date: a ledger is gone on from only while its
entries are, one by one, the first of those that are asked about; otherwise it is folded anew. A test holds
the two equal.
"""

from __future__ import annotations

from bot.engine.entries import Entry
from bot.engine.ledger import Ledger, fold
from bot.engine.shelf import Shelf

_LEFT: Shelf[tuple[tuple[Entry, ...], Ledger]] = Shelf()
"""Ledgers beside the entries that they were asked for with: theirs may be equal ones that were only tried."""


def resumed(entries: tuple[Entry, ...], capacity_ml: int) -> Ledger:
    """The ledger of these entries of one drain, given by position: what `fold` makes of them."""
    if not entries:
        return fold((), capacity_ml)
    key = (entries[0].drain, capacity_ml)
    known, ledger = _LEFT.find(key) or ((), None)
    if ledger is None or entries[: len(known)] != known:
        known, ledger = entries, fold(entries, capacity_ml)
    for entry in entries[len(known) :]:
        ledger = ledger.with_entry(entry)
    _LEFT.keep(key, (entries, ledger), len(entries))
    return ledger
