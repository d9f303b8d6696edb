"""The ledgers as a CSV that opens in a spreadsheet: one row an entry, with the volume that it charts.

Local times stand beside their offset from UTC. A cell that a spreadsheet would take for a formula is
guarded with an apostrophe (OWASP, CSV injection). Lossless is the JSONL export, not this one.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, fields
from datetime import datetime, tzinfo

from bot.engine.entries import Correction, Entry, FinalLevel, Line, Withdrawal
from bot.engine.ledger import Ledger
from bot.engine.values import Interval
from bot.engine.volumes import intervals
from bot.store.codec import encode
from bot.unit import Unit

_FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n")

Cell = str | int | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One entry as a row; the field names are the column heads. Volumes and levels in mL."""

    unit: str
    bed: str | None
    tube: str | None
    drain: str
    entry: str
    kind: str
    happened: str
    happened_offset: str
    entered: str
    entered_offset: str
    who: str
    status: str
    level_ml: int | None = None
    told_ml: int | None = None
    volume_ml: int | None = None
    volume_from: str | None = None
    volume_from_offset: str | None = None
    at_least: str = ""
    shift: str | None = None
    shift_start: str | None = None
    about_entry: str | None = None
    told: str = ""


COLUMNS = tuple(field.name for field in fields(Row))


def csv_text(
    unit: Unit, ledgers: Iterable[Ledger], holds: Callable[[datetime], bool] = lambda _: True
) -> str:
    """The whole table with its heads, lines ended by CR LF (RFC 4180); only entries whose moment `holds`."""
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow(COLUMNS)
    for ledger in ledgers:
        writer.writerows(_cells(row) for row in rows(unit, ledger, holds))
    return out.getvalue()


def rows(unit: Unit, ledger: Ledger, holds: Callable[[datetime], bool] = lambda _: True) -> Iterator[Row]:
    """The drain's entries in the order of recording, corrections applied to the rows that they are about."""
    steps = {step.end.entry: step for step in intervals(ledger, unit.policy.schedule)}
    repeats = dict(ledger.duplicates)
    for entry in ledger.entries:
        held = ledger.effective(entry.id) or entry
        if holds(held.at):
            yield _row(unit, ledger, entry, steps.get(entry.id), repeats)


def guarded(cell: Cell) -> Cell:
    """The cell so that no spreadsheet takes it for a formula."""
    return f"'{cell}" if isinstance(cell, str) and cell.startswith(_FORMULA) else cell


def _row(unit: Unit, ledger: Ledger, entry: Entry, step: Interval | None, repeats: dict[str, str]) -> Row:
    zone, held = unit.zone, ledger.effective(entry.id)
    at = held.at if held is not None else entry.at
    begin = step.begin.at if step else None
    return Row(
        unit=unit.name,
        bed=ledger.bed_at(at),
        tube=ledger.tube,
        drain=entry.drain,
        entry=entry.id,
        kind=entry.payload.kind,
        happened=_local(at, zone),
        happened_offset=_offset(at, zone),
        entered=_local(entry.entered, zone),
        entered_offset=_offset(entry.entered, zone),
        who=entry.who,
        status=_status(ledger, entry, repeats),
        level_ml=_level(held or entry),
        told_ml=_level(entry),
        volume_ml=step.volume_ml if step else None,
        volume_from=_local(begin, zone) if begin else None,
        volume_from_offset=_offset(begin, zone) if begin else None,
        at_least="yes" if step and step.at_least else "",
        shift=step.shift.name if step else None,
        shift_start=_local(step.shift.start, zone) if step else None,
        about_entry=getattr(entry.payload, "target", None) or repeats.get(entry.id),
        told=encode(entry.payload),
    )


def _status(ledger: Ledger, entry: Entry, repeats: dict[str, str]) -> str:
    if isinstance(entry.payload, Correction | Withdrawal):
        return ""
    held = ledger.effective(entry.id)
    if held is None:
        return "withdrawn"
    if entry.id in repeats:
        return "repeat"
    return "corrected" if held != entry else "stands"


def _level(entry: Entry) -> int | None:
    return entry.payload.level_ml if isinstance(entry.payload, Line | FinalLevel) else None


def _local(moment: datetime, zone: tzinfo) -> str:
    return f"{moment.astimezone(zone):%Y-%m-%d %H:%M:%S}"


def _offset(moment: datetime, zone: tzinfo) -> str:
    """The offset as a text: "UTC-05:00" (a bare "-05:00" would be taken for a formula)."""
    return f"UTC{moment.astimezone(zone).isoformat()[-6:]}"


def _cells(row: Row) -> list[Cell]:
    return [guarded(getattr(row, name)) for name in COLUMNS]
