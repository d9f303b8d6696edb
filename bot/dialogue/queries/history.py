"""The query for a drain's rows: everything that was told, and what replaced it."""

from __future__ import annotations

from bot.dialogue.queries.desk import Desk
from bot.dialogue.queries.where import Found
from bot.engine.entries import Entry, Withdrawal
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
    told = history_row(entry, changes, desk.view, _moved(desk, entry, changes))
    return f"{ledger.tube}: {told}" if ledger.tube and len(found.drains) > 1 else told


def _moved(desk: Desk, entry: Entry, changes: tuple[Entry, ...]) -> dict[str, str]:
    """The bed and tube where a line is that was moved, by the id of its row there."""
    found = {}
    for change in changes:
        if isinstance(change.payload, Withdrawal) and change.payload.moved_to is not None:
            there = desk.ledger(change.payload.moved_to.rpartition("-")[0])
            if (bed := there.bed_at(entry.at)) is not None:
                name = place(bed, there.tube)
                found[change.payload.moved_to] = f"{name[:1].lower()}{name[1:]}"
    return found
