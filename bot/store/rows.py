"""An entry as a row of the table, and the entry that a row holds.

What writes entries or looks at their rows calls it: ledgers, imports, the check of the chains.
"""

from __future__ import annotations

from typing import Any

from bot.engine.entries import Correction, Entry, Withdrawal
from bot.store.chain import link
from bot.store.codec import decode, encode
from bot.store.errors import LedgerError


def entry_row(entry: Entry, before: str, payload: str | None = None) -> dict[str, object]:
    """The columns of an entry that follows the one whose hash is `before`; `payload`: its own, encoded."""
    told = encode(entry.payload) if payload is None else payload
    return {
        "drain": entry.drain,
        "position": entry.position,
        "at": entry.at,
        "entered": entry.entered,
        "who": entry.who,
        "message": entry.message,
        "kind": entry.payload.kind,
        "payload": told,
        "target": target_of(entry),
        "chain": link(before, entry, told),
    }


def entry_of(row: Any) -> Entry:
    """The entry that a row of the table holds."""
    return Entry(
        drain=row.drain,
        position=row.position,
        at=row.at,
        entered=row.entered,
        who=row.who,
        message=row.message,
        payload=decode(row.kind, row.payload),
    )


def target_of(entry: Entry) -> int | None:
    """The position that a correction or withdrawal is about."""
    match entry.payload:
        case Correction(target=target) | Withdrawal(target=target):
            drain, _, position = target.rpartition("-")
            if drain != entry.drain:
                raise LedgerError("a correction is about an entry of its own drain")
            return int(position)
        case _:
            return None
