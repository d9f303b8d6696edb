"""The hash chain of a drain's entries: each carries a SHA-256 over itself and the one before it.

Whoever alters, reorders or drops a row behind the program's back breaks the chain from there on;
`bot.store.verify` finds the first one. A chain proves order and content, not who held the pen: keep a
copy of its last values elsewhere to see a rewritten whole.
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence

from bot.engine.entries import Entry
from bot.store.codec import canonical, encode
from bot.store.moments import moment_text

START = "0" * 64
"""What the first entry of a drain is chained to."""


def link(before: str, entry: Entry, payload: str | None = None) -> str:
    """The hash of this entry after the one whose hash is `before`, in lower-case hex.

    `payload`: the entry's, as it is encoded, where it is at hand.
    """
    row = (
        entry.drain,
        entry.position,
        moment_text(entry.at),
        moment_text(entry.entered),
        entry.who,
        entry.message,
        entry.payload.kind,
        encode(entry.payload) if payload is None else payload,
    )
    return chained(before, row)


def chained(before: str, row: Sequence[object]) -> str:
    """The hash of a row behind the one whose hash is `before`: an entry of a drain, a message of a unit."""
    return hashlib.sha256(f"{before}\n{canonical(row)}".encode()).hexdigest()
