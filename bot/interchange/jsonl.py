"""Every entry of the ledgers, one JSON object a line, and back: nothing is lost.

The first line says what the file is. The last says how many entries of how many drains it holds, and the
SHA-256 of all lines before it, each with its line feed: a file that was cut, or changed by hand, is seen.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Iterator

from bot.engine.entries import Entry
from bot.store.codec import canonical, decode, encode
from bot.store.errors import LedgerError
from bot.store.moments import moment_of, moment_text

_KEYS = frozenset({"drain", "position", "at", "entered", "who", "message", "kind", "payload"})
_HEAD = canonical({"penline": "entries", "version": 2})


def entry_lines(entries: Iterable[Entry]) -> Iterator[str]:
    """The file's lines: its head, one canonical line an entry in the order given, moments in UTC; its end."""
    sums = _Sums()
    sums.add(_HEAD)
    yield _HEAD
    for entry in entries:
        line = _line(entry)
        sums.add(line, entry.drain)
        yield line
    yield sums.end


class Exported:
    """The entries that `entry_lines` wrote, to be gone through once; blank lines are skipped.

    Raises LedgerError, naming the line, on anything else. `whole`, afterwards: whether the end was there, and
    right; a file without a head is one of before there were ends, and may have been cut.
    """

    def __init__(self, lines: Iterable[str]) -> None:
        self._lines = ((number, line.strip()) for number, line in enumerate(lines, start=1))
        self.whole = False

    def __iter__(self) -> Iterator[Entry]:
        headed, sums = False, _Sums()
        for number, line in self._lines:
            if not line:
                continue
            if self.whole:
                raise LedgerError(f"line {number}: after the end")
            if line == _HEAD and not sums.lines:
                headed = True
                sums.add(line)
            elif headed and '"sha256"' in line and line == sums.end:
                self.whole = True
            else:
                entry = _read(number, line)
                sums.add(line, entry.drain)
                yield entry
        if headed and not self.whole:
            raise LedgerError("the file ends too early")
        if not sums.lines:
            raise LedgerError("the file is empty")


class _Sums:
    """What the end of a file says of the lines before it."""

    def __init__(self) -> None:
        self.lines = 0
        self._entries = 0
        self._drains: set[str] = set()
        self._hash = hashlib.sha256()

    def add(self, line: str, drain: str | None = None) -> None:
        """One more line; of an entry of that drain."""
        self.lines += 1
        self._hash.update(f"{line}\n".encode())
        if drain is not None:
            self._entries += 1
            self._drains.add(drain)

    @property
    def end(self) -> str:
        """The end, were it to come now."""
        told = {"entries": self._entries, "drains": len(self._drains), "sha256": self._hash.hexdigest()}
        return canonical(told)


def _read(number: int, line: str) -> Entry:
    try:
        return _entry(line)
    except (KeyError, TypeError, ValueError, RecursionError, LedgerError) as wrong:
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
    if isinstance(held, dict) and "sha256" in held:
        raise ValueError("the lines before are not those that were exported, or some are missing")
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
