"""A unit's ledgers from their entries alone: drains, chains, and where each drain may be found, made anew.

The messages behind them come as ids only, so that each stays used for ever: sent again, it is refused rather
than recorded twice. Questions, notices and texts are in a backup, not here.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import datetime

from sqlalchemy import Connection, insert
from sqlalchemy.exc import DataError, IntegrityError

from bot.engine.entries import Entry, Moved, Opened, Placed
from bot.store.chain import START
from bot.store.claims import one_at_a_time
from bot.store.errors import LedgerError
from bot.store.rows import entry_row
from bot.store.sealing import seal_the_rest
from bot.store.tables import berths, drains, entries, messages, replies

DIGEST = "imported"
"""Of a message that came without its body: no body that is sent has this digest."""

_BATCH = 500


def import_entries(connection: Connection, unit: str, told: Iterable[Entry], reply: str) -> int:
    """How many entries were added, as the ledgers of this unit; each drain's must begin at 1 and lack none.

    `reply`: the answer object (JSON) that is kept for their messages. LedgerError: none of them is to stay.
    """
    one_at_a_time(connection, unit)
    desk = _Import(connection, unit, reply)
    try:
        for entry in told:
            desk.take(entry)
        desk.finish()
    except UnicodeEncodeError as wrong:
        raise LedgerError("an entry holds half a character") from wrong
    except (IntegrityError, DataError) as wrong:
        raise LedgerError(
            "a drain or a message of it is here already, or hangs on one that is not"
        ) from wrong
    return desk.count


@dataclass(slots=True)
class _Import:
    """What was taken so far."""

    connection: Connection
    unit: str
    reply: str
    count: int = 0
    _last: dict[str, tuple[int, str]] = field(default_factory=dict)
    _messages: set[str] = field(default_factory=set)
    _tubes: dict[str, str | None] = field(default_factory=dict)
    _berths: list[tuple[datetime, dict[str, object]]] = field(default_factory=list)
    _rows: list[dict[str, object]] = field(default_factory=list)

    def take(self, entry: Entry) -> None:
        """Add an entry behind the one before it."""
        position, before = self._last.get(entry.drain, (0, START))
        if entry.position != position + 1:
            raise LedgerError(f"{entry.drain}-{position + 1} is missing")
        self._message(entry)
        if position == 0:
            drain = {"id": entry.drain, "unit": self.unit, "message": entry.message}
            self.connection.execute(insert(drains), drain)
        self._berth(entry)
        row = entry_row(entry, before)
        self._last[entry.drain] = (entry.position, str(row["chain"]))
        self._rows.append(row)
        self.count += 1
        if len(self._rows) == _BATCH:
            self._write()

    def finish(self) -> None:
        """Write what waits, and where the drains may be found, in the order in which it was told."""
        self._write()
        if self._berths:
            told = sorted(self._berths, key=lambda each: each[0])
            self.connection.execute(insert(berths), [row for _, row in told])
        seal_the_rest(self.connection)

    def _message(self, entry: Entry) -> None:
        if entry.message in self._messages:
            return
        self._messages.add(entry.message)
        row = {
            "id": entry.message,
            "digest": DIGEST,
            "arrived": entry.entered,
            "sender": entry.who,
            "unit": self.unit,
            "text": None,
            "channel": "text",
        }
        self.connection.execute(insert(messages), row)
        self.connection.execute(insert(replies), {"message": entry.message, "reply": self.reply})

    def _berth(self, entry: Entry) -> None:
        match entry.payload:
            case Placed(bed=bed, tube=tube) | Opened(bed=bed, tube=tube):
                self._tubes[entry.drain] = tube
            case Moved(to_bed=bed):
                tube = self._tubes.get(entry.drain)
            case _:
                return
        row: dict[str, object] = {"drain": entry.drain, "unit": self.unit, "bed": bed, "tube": tube}
        row["since"] = entry.at
        self._berths.append((entry.entered, row))

    def _write(self) -> None:
        if self._rows:
            self.connection.execute(insert(entries), self._rows)
            self._rows.clear()
