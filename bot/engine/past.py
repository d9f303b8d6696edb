"""What was told and given out in the past, and what became of it: for the history and the exports.

Most entries only add a volume at the end. Those that can change an earlier one (corrections, withdrawals,
late entries, late final levels, a line told to be closing) are replayed one by one; the cost is one fold
each, so it is linear where entries come in order.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime

from bot.engine.entries import Correction, Entry, FinalLevel, Line, Withdrawal
from bot.engine.ledger import fold
from bot.engine.policy import Policy
from bot.engine.values import Interval
from bot.engine.volumes import intervals


@dataclass(frozen=True, slots=True, kw_only=True)
class Outdated:
    """A volume that was given out once: as it was last, and when an entry made it untrue."""

    interval: Interval
    until: datetime


def originals(entries: Sequence[Entry]) -> tuple[tuple[Entry, tuple[Entry, ...]], ...]:
    """Each entry that is not about another one, with the later entries about it in the order of recording.

    A correction of a correction belongs to the entry that the first one was about.
    """
    roots: dict[str, str] = {}
    about: dict[str, list[Entry]] = {}
    first: list[Entry] = []
    for entry in entries:
        if isinstance(entry.payload, Correction | Withdrawal):
            roots[entry.id] = roots.get(entry.payload.target, entry.payload.target)
            about.setdefault(roots[entry.id], []).append(entry)
        else:
            first.append(entry)
    return tuple((entry, tuple(about.get(entry.id, ()))) for entry in first)


def disturbing(entries: Sequence[Entry]) -> Iterator[int]:
    """The places (0, 1, ...) of the entries that can change what was charted before them."""
    latest: datetime | None = None
    for place, entry in enumerate(entries):
        if latest is not None and (entry.at <= latest or reaches_back(entry)):
            yield place
        if not isinstance(entry.payload, Correction | Withdrawal):
            latest = entry.at if latest is None else max(latest, entry.at)


def outdated(entries: Sequence[Entry], policy: Policy) -> tuple[Outdated, ...]:
    """Every volume that was given out and is not so any more (between two levels that no longer are
    neighbours, or with another volume), each once, as it was last."""
    held: dict[tuple[str, str], Outdated] = {}
    for place in disturbing(entries):
        before, after = (_volumes(entries[:end], policy) for end in (place, place + 1))
        for key, interval in before.items():
            if key not in after or _told(after[key]) != _told(interval):
                held[key] = Outdated(interval=interval, until=entries[place].entered)
    return tuple(held.values())


def reaches_back(entry: Entry) -> bool:
    """True for what is about the past whenever it comes; a closing line can move a volume on."""
    match entry.payload:
        case Correction() | Withdrawal() | FinalLevel(exchange=str()) | Line(closing=True):
            return True
        case _:
            return False


def _volumes(entries: Sequence[Entry], policy: Policy) -> dict[tuple[str, str], Interval]:
    ledger = fold(entries, policy.capacity_ml)
    return {(each.begin.entry, each.end.entry): each for each in intervals(ledger, policy.schedule)}


def _told(interval: Interval) -> tuple[object, ...]:
    return (interval.begin.at, interval.end.at, interval.volume_ml, interval.at_least)
