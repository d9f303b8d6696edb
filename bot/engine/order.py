"""The order in which entries happened, and which lines repeat another one. Called by `ledger` only; pure.

Order: by moment; within one moment a tip-over first (what is read with it cannot be trusted), then final
level, exchange, opening, mark, the rest, and the end of the drain last; then by when it was entered.
"""

from __future__ import annotations

from bisect import bisect_left, insort
from collections.abc import Iterable, Iterator, Mapping, Sequence
from datetime import datetime, timedelta
from itertools import groupby

from bot.engine.entries import (
    Entry,
    Exchanged,
    FinalLevel,
    Incident,
    Left,
    Line,
    Opened,
    Placed,
    Removed,
    What,
)

SAME_LINE = timedelta(minutes=5)

_Key = tuple[datetime, int, datetime, int, int]


def ordered(held: Mapping[str, Entry]) -> tuple[Entry, ...]:
    """The live entries in the order of what happened."""
    in_order = sorted(held.values(), key=lambda entry: _key(entry, held))
    last_ml: int | None = None
    result: list[Entry] = []
    for _, moment in groupby(in_order, key=lambda entry: entry.at):
        together = _old_canister_first(list(moment), last_ml)
        result.extend(together)
        last_ml = _level_after(together, last_ml)
    return tuple(result)


def late_place(live: Sequence[Entry], line: Entry, repeats: Mapping[str, str]) -> tuple[int, Entry] | None:
    """Where a late line comes among the live entries, and the line that counts before it.

    None where something that is no line and moves the levels stands at its moment, behind it, or between it
    and that line: then all may change.
    """
    place: int | None = None
    before: Entry | None = None
    key = _key(line, {})
    for index in range(len(live) - 1, -1, -1):
        entry = live[index]
        if place is not None and before is not None and entry.at < line.at:
            break
        if _moves_levels(entry):
            return None
        if place is None and _key(entry, {}) < key:
            place = index + 1
        if place is not None and before is None and isinstance(entry.payload, Line):
            before = None if entry.id in repeats else entry
    return None if place is None or before is None else (place, before)


def _moves_levels(entry: Entry) -> bool:
    """Whether it is no line and changes what a line behind it says."""
    match entry.payload:
        case FinalLevel() | Exchanged() | Placed() | Incident(what=What.TIPPED):
            return True
        case _:
            return False


def _key(entry: Entry, held: Mapping[str, Entry]) -> _Key:
    match entry.payload:
        case FinalLevel(exchange=str(name)) if name in held:
            exchange = held[name]
            return (exchange.at, _rank(exchange), exchange.entered, exchange.position, 0)
        case _:
            return (entry.at, _rank(entry), entry.entered, entry.position, 1)


def _rank(entry: Entry) -> int:
    match entry.payload:
        case Incident(what=What.TIPPED):
            return 0
        case FinalLevel():
            return 1
        case Exchanged():
            return 2
        case Placed() | Opened():
            return 3
        case Line():
            return 4
        case Removed() | Left():
            return 6
        case _:
            return 5


def _old_canister_first(together: list[Entry], last_ml: int | None) -> list[Entry]:
    """The entries of one moment, a line told before the exchange of that minute put before it.

    "Mark 1860 at 1900", then "changed it at 1900": the 1,860 was read on the old canister. Read on the new
    one it would chart 1,860 mL that nobody saw. A line below the one before it is on the new canister.
    """
    exchanges = [entry.position for entry in together if isinstance(entry.payload, Exchanged)]
    if not exchanges:
        return together
    old = [entry for entry in together if _read_before(entry, min(exchanges), last_ml)]
    tips = [entry for entry in together if _rank(entry) == 0]
    return [*tips, *old, *(entry for entry in together if entry not in old and entry not in tips)]


def _read_before(entry: Entry, exchange: int, last_ml: int | None) -> bool:
    match entry.payload:
        case Line(level_ml=level):
            return entry.position < exchange and last_ml is not None and level >= last_ml
        case _:
            return False


def _level_after(entries: Iterable[Entry], last_ml: int | None) -> int | None:
    for entry in entries:
        match entry.payload:
            case Line(level_ml=level) | FinalLevel(level_ml=level) | Exchanged(opening_ml=level):
                last_ml = level
            case Placed(opening_ml=int(level)):
                last_ml = level
            case _:
                pass
    return last_ml


def repeated_lines(live: Sequence[Entry]) -> dict[str, str]:
    """The lines that only repeat one told before them: id of the repeat -> id of the line that counts.

    Equal level, at most 5 min apart, on one canister, nothing else read between them.
    """
    repeats: dict[str, str] = {}
    for run in _runs(live):
        kept: list[tuple[datetime, str]] = []
        for line in sorted(run, key=lambda entry: entry.position):
            near = _within_reach(kept, line.at)
            if near is None:
                insort(kept, (line.at, line.id))
            else:
                repeats[line.id] = near
    return repeats


def _within_reach(kept: Sequence[tuple[datetime, str]], at: datetime) -> str | None:
    place = bisect_left(kept, (at, ""))
    near = [(abs(moment - at), name) for moment, name in kept[max(0, place - 1) : place + 1]]
    return min(near)[1] if near and min(near)[0] <= SAME_LINE else None


def _runs(live: Sequence[Entry]) -> Iterator[list[Entry]]:
    """Neighbouring lines of one level on one canister, at least two."""
    run: list[Entry] = []
    run_ml: int | None = None
    for entry in live:
        match entry.payload:
            case Line(level_ml=level) if level == run_ml:
                run.append(entry)
                continue
            case Line(level_ml=level):
                fresh: list[Entry] = [entry]
                run_ml = level
            case FinalLevel() | Exchanged() | Placed(opening_ml=int()) | Incident(what=What.TIPPED):
                fresh, run_ml = [], None
            case _:
                continue
        if len(run) > 1:
            yield run
        run = fresh
    if len(run) > 1:
        yield run
