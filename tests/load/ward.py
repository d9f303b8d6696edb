"""A hospital with a past: many drains long removed, one open in every bed, and messages for now."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from sqlalchemy import Connection, insert

from bot.engine.entries import Entry, Line, Opened, Payload, Removed
from bot.store import open_store
from bot.store.chain import START
from bot.store.rows import entry_row
from bot.store.sealing import seal_the_rest
from bot.store.tables import berths, drains, entries, messages, replies

UNITS = 10
LAST_ML = 1000
_BATCH = 2000


@dataclass(frozen=True, slots=True, kw_only=True)
class Hospital:
    """Its beds in each unit; an open drain has so many hourly lines at most, a removed one twice as many."""

    beds: int = 20
    open_entries: int = 100
    number: int = 0
    """Of several hospitals in one process each has its own: drains are told apart by their ids alone."""


_USUAL = Hospital()


def unit_files(folder: Path, hospital: Hospital = _USUAL) -> tuple[Path, ...]:
    """The unit files of the hospital: a nurse each."""
    files = []
    for number in range(UNITS):
        file = folder / f"unit{number}.toml"
        file.write_text(
            f'name = "Unit {number}"\nid = "unit{number}"\nzone = "UTC"\nbeds = "1-{hospital.beds}"\n'
            f'people = [{{ id = "rn-{number}", name = "Amy", role = "nurse" }}]\n'
        )
        files.append(file)
    return tuple(files)


@dataclass(frozen=True, slots=True)
class Post:
    """The next message of a bed: a line that has risen, or every fourth time a question about it."""

    run: str
    number: int
    now: datetime

    @property
    def id(self) -> str:
        """Its webhook-id."""
        return f"load-{self.run}-{self.number}"

    @property
    def body(self) -> bytes:
        """The message's JSON."""
        place, round_ = self.number % (UNITS * _USUAL.beds), self.number // (UNITS * _USUAL.beds)
        bed = 1 + place // UNITS
        at = self.now - timedelta(minutes=530 - round_)
        said = f"bed {bed} mark {LAST_ML + round_} at {at:%H%M}"
        if (place + round_) % 4 == 3:
            said = f"what do I chart for bed {bed} this shift"
        return json.dumps({"sender": f"rn-{place % UNITS}", "text": said}).encode()


def fill(url: str, count: int, now: datetime, hospital: Hospital = _USUAL) -> None:
    """Give the database that many entries: of every bed one open drain, before it removed ones."""
    store = open_store(url)
    beds = UNITS * hospital.beds
    each_open = min(hospital.open_entries, max(1, count // beds))
    removed = max(0, count - beds * each_open) // (2 * hospital.open_entries)
    until = now - timedelta(hours=9)
    with store.connection() as connection:
        rows = _Rows(connection, beds, hospital.number)
        for number in range(removed):
            age = timedelta(days=10 * (removed - number) // beds + 10)
            rows.drain(number, 2 * hospital.open_entries, until - age, removed=True)
        for number in range(beds):
            rows.drain(removed + number, each_open, until, place=number)
        rows.write()
        seal_the_rest(connection)
    store.close()


class _Rows:
    """Rows on their way into the tables, in batches."""

    def __init__(self, connection: Connection, beds: int, hospital: int) -> None:
        self._connection = connection
        self._hospital = hospital
        self._beds = beds
        self._waiting: dict[str, list[dict[str, object]]] = {}
        self._count = 0

    def drain(
        self, number: int, size: int, until: datetime, *, removed: bool = False, place: int | None = None
    ) -> None:
        """A drain of one bed, with a line an hour up to that moment."""
        bed = (number if place is None else place) % self._beds
        unit, label = f"unit{bed % UNITS}", str(1 + bed // UNITS)
        name, message = f"{self._hospital:04x}{number:012x}", f"old-{number}"
        begin = until - timedelta(hours=size - 1)
        self._add(
            messages.name,
            {
                "id": message, "digest": "", "arrived": begin, "sender": f"rn-{bed % UNITS}", "unit": unit,
                "text": None, "channel": "text",
            },
        )  # fmt: skip
        self._add(replies.name, {"message": message, "reply": '{"status": "recorded"}'})
        self._add(drains.name, {"id": name, "unit": unit, "message": message})
        self._add(berths.name, {"drain": name, "unit": unit, "bed": label, "tube": None, "since": begin})
        before = START
        for position, payload in enumerate(_payloads(label, size, removed), start=1):
            at = begin + timedelta(hours=position - 1)
            entry = Entry(
                drain=name, position=position, at=at, entered=at, who=f"rn-{bed % UNITS}", message=message,
                payload=payload,
            )  # fmt: skip
            row = entry_row(entry, before)
            before = str(row["chain"])
            self._add(entries.name, row)
        self._count += size
        if self._count >= _BATCH:
            self.write()

    def write(self) -> None:
        """Insert what waits."""
        for table in (messages, replies, drains, berths, entries):
            rows = self._waiting.pop(table.name, [])
            if rows:
                self._connection.execute(insert(table), rows)
        self._count = 0

    def _add(self, table: str, row: dict[str, object]) -> None:
        self._waiting.setdefault(table, []).append(row)


def _payloads(bed: str, size: int, removed: bool) -> Iterator[Payload]:
    yield Opened(bed=bed, tube=None)
    for number in range(1, size - removed):
        ahead = size - number
        yield Line(level_ml=8 * number if removed else LAST_ML - min(4 * ahead, LAST_ML * ahead // size))
    if removed:
        yield Removed()


def this_minute() -> datetime:
    """The moment at which a run begins, in full minutes."""
    return datetime.now(UTC).replace(second=0, microsecond=0)
