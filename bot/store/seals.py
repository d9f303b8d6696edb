"""The seal of a message: a SHA-256 over it, its reply, each row that it wrote and its unit's seal before it.

Whoever alters a text or a reply, or takes away what a message recorded, the end of a ledger too, breaks its
seal; `bot.store.verify` finds the first. It proves as much as the chain of a drain's entries, and no more.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from bot.store.chain import START, chained
from bot.store.codec import canonical
from bot.store.moments import plain

SEALED: Mapping[str, tuple[str, ...]] = {
    "acknowledgements": ("notice", "who", "at"),
    "drains": ("id", "unit"),
    "entries": ("drain", "position", "chain"),
    "notices": ("unit", "bed", "drain", "code", "text", "unconfirmed", "queued_at", "about"),
    "questions": (
        "id", "unit", "sender", "bed", "drain", "slot", "asked_at", "text", "said", "choices", "danger",
    ),
    "settlements": ("question", "outcome", "at"),
    "tellings": ("unit", "key", "sender", "at"),
}  # fmt: skip
"""The columns that count, in their order, of what a message writes. A seal is for ever: a later column is not
added here, but sealed in a table of its own."""

_MESSAGE = ("id", "digest", "arrived", "sender", "unit", "text", "channel")


def row_text(table: str, row: Mapping[str, object]) -> str:
    """A row that a message wrote, as it is sealed."""
    return canonical([table, *(plain(row[name]) for name in SEALED[table])])


def seal(before: str | None, message: Mapping[str, object], reply: str | None, rows: Iterable[str]) -> str:
    """The seal, in lower-case hex, behind the one `before` (None: it is its unit's first).

    `message` by its columns; `rows` are `row_text`s, whose order does not matter.
    """
    return chained(before or START, [*(plain(message[name]) for name in _MESSAGE), reply, sorted(rows)])
