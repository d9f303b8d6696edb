"""Every entry of the ledgers, one JSON object a line, and back: nothing is lost."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator

from bot.engine.entries import Entry
from bot.store.codec import canonical, decode, encode
from bot.store.errors import LedgerError
from bot.store.moments import moment_of, moment_text

_KEYS = frozenset({"drain", "position", "at", "entered", "who", "message", "kind", "payload"})


def entry_lines(entries: Iterable[Entry]) -> Iterator[str]:
    """One canonical JSON line an entry, in the order given, moments in UTC."""
    return (_line(entry) for entry in entries)


def entries_of(lines: Iterable[str]) -> Iterator[Entry]:
    """The entries that `entry_lines` wrote; blank lines are skipped.

    Raises LedgerError, naming the line, on anything else.
    """
    for number, line in enumerate(lines, start=1):
        if line.strip():
            try:
                yield _entry(line)
            except (KeyError, TypeError, ValueError, LedgerError) as wrong:
                raise LedgerError(f"line {number}: {wrong}") from wrong


def _line(entry: Entry) -> str:
    return canonical(
        {
            "drain": entry.drain,
            "position": entry.position,
            "at": moment_text(entry.at),
            "entered": moment_text(entry.entered),
            "who": entry.who,
            "message": entry.message,
            "kind": entry.payload.kind,
            "payload": json.loads(encode(entry.payload)),
        }
    )


def _entry(line: str) -> Entry:
    held = json.loads(line)
    if not isinstance(held, dict) or set(held) != _KEYS:
        raise ValueError(f"expected the keys {', '.join(sorted(_KEYS))}")
    if type(held["position"]) is not int:
        raise TypeError(f"position {held['position']!r} is not a whole number")
    for key in ("drain", "who", "message", "kind"):
        if type(held[key]) is not str:
            raise TypeError(f"{key} {held[key]!r} is not text")
    return Entry(
        drain=held["drain"],
        position=held["position"],
        at=moment_of(held["at"]),
        entered=moment_of(held["entered"]),
        who=held["who"],
        message=held["message"],
        payload=decode(held["kind"], canonical(held["payload"])),
    )
