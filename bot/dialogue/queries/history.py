"""The query for a drain's rows: everything that was told, and what replaced it."""

from __future__ import annotations

from bot.dialogue.queries.desk import Desk
from bot.dialogue.queries.where import Found
from bot.engine.entries import Entry
from bot.engine.ledger import Ledger
from bot.engine.past import originals
from bot.wording.queries.history import history_row
from bot.wording.queries.view import place

HEAD = "history, newest first"


def history(desk: Desk, found: Found) -> tuple[str, ...]:
    """The rows of the drains, the latest first, a page at a time."""
    rows = [
        (entry.at, entry.position, _row(desk, found, ledger, entry, changes))
        for ledger in found.drains
        for entry, changes in originals(ledger.entries)
    ]
    rows.sort(key=lambda row: row[:2], reverse=True)
    head = f"{place(found.bed, desk.query.tube)} {HEAD}:"
    return desk.page(head, tuple(told for _, _, told in rows))


def _row(desk: Desk, found: Found, ledger: Ledger, entry: Entry, changes: tuple[Entry, ...]) -> str:
    told = history_row(entry, changes, desk.view)
    return f"{ledger.tube}: {told}" if ledger.tube and len(found.drains) > 1 else told
