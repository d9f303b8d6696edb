"""What was given out to chart in the past and is no longer so: for the handoff, the summary and the exports.

Most entries only add a volume at the end. Those that can change an earlier one (corrections, withdrawals,
late entries, late final levels, a line told to be closing) are replayed one by one; the cost is one fold
each, so it is linear where entries come in order.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from bot.engine.amend import amendments
from bot.engine.entries import Correction, Entry, FinalLevel, Line, Seen, Withdrawal
from bot.engine.ledger import fold
from bot.engine.policy import Policy
from bot.engine.values import Amendment, Charted, Interval
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
        if latest is not None and (entry.at <= latest or _reaches_back(entry)):
            yield place
        if not isinstance(entry.payload, Correction | Withdrawal):
            latest = entry.at if latest is None else max(latest, entry.at)


def standing_amendments(entries: Sequence[Entry], policy: Policy) -> tuple[Amendment, ...]:
    """What charts must be changed to, since someone last said that they were amended.

    Each holds now, and names what it replaces as it was first given out; a volume that was changed and
    then changed back needs nothing.
    """
    begin = max((place for place, entry in enumerate(entries) if _says_amended(entry)), default=-1)
    open_: tuple[Amendment, ...] = ()
    for place in disturbing(entries):
        if place > begin:
            open_ = _merged(open_, _changes(entries, place, policy))
    return open_


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


def _reaches_back(entry: Entry) -> bool:
    match entry.payload:
        case Correction() | Withdrawal() | FinalLevel(exchange=str()) | Line(closing=True):
            return True
        case _:
            return False


def _says_amended(entry: Entry) -> bool:
    return isinstance(entry.payload, Seen) and entry.payload.amended


def _changes(entries: Sequence[Entry], place: int, policy: Policy) -> tuple[Amendment, ...]:
    before = fold(entries[:place], policy.capacity_ml)
    after = fold(entries[: place + 1], policy.capacity_ml)
    return tuple(each for each in amendments(before, after, policy.schedule) if each.replaces)


def _merged(open_: tuple[Amendment, ...], new: tuple[Amendment, ...]) -> tuple[Amendment, ...]:
    """The amendments after a further change: what it replaces of them falls away, with its own past kept."""
    earlier = {(each.begin, each.end): each for each in open_}
    gone = {(old.begin, old.end) for each in new for old in each.replaces}
    added = tuple(replace(each, replaces=_first_given(each, earlier)) for each in new)
    kept = tuple(each for each in open_ if (each.begin, each.end) not in gone)
    return (*kept, *(each for each in added if not _restored(each)))


def _first_given(
    amendment: Amendment, earlier: dict[tuple[datetime, datetime], Amendment]
) -> tuple[Charted, ...]:
    """The volumes that this one replaces as they stood on the chart before any change."""
    found: dict[tuple[datetime, datetime], Charted] = {}
    for old in amendment.replaces:
        before = earlier.get((old.begin, old.end))
        for charted in before.replaces if before else (old,):
            found[(charted.begin, charted.end)] = charted
    return tuple(found[key] for key in sorted(found))


def _restored(amendment: Amendment) -> bool:
    now = Charted(begin=amendment.begin, end=amendment.end, volume_ml=amendment.volume_ml)
    return amendment.replaces == (now,)


def _volumes(entries: Sequence[Entry], policy: Policy) -> dict[tuple[str, str], Interval]:
    ledger = fold(entries, policy.capacity_ml)
    return {(each.begin.entry, each.end.entry): each for each in intervals(ledger, policy.schedule)}


def _told(interval: Interval) -> tuple[object, ...]:
    return (interval.begin.at, interval.end.at, interval.volume_ml, interval.at_least)
