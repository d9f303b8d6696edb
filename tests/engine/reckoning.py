"""What the engine must find, reckoned again by brute force straight from the definitions, and slowly.

Shares no code with the engine but its types. Things of one minute are not told apart here, but a final level
and its exchange.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from typing import TypeAlias

from bot.engine.entries import (
    Correction,
    Entry,
    Exchanged,
    FinalLevel,
    Incident,
    Line,
    Payload,
    Placed,
    What,
    Withdrawal,
)
from bot.engine.policy import Schedule


@dataclass
class Happened:
    """One thing as it holds now: when, and what level."""

    entry: str
    kind: str
    at: datetime
    level_ml: int | None
    closing: bool = False
    told: int = 0


@dataclass
class Segment:
    """A stretch on one canister over which differences count."""

    open_ml: int
    read: list[Happened] = field(default_factory=list)


def alive(told: Sequence[Entry]) -> list[Entry]:
    """The entries that no live withdrawal names."""
    live: list[Entry] = []
    for entry in reversed(told):
        named = {each.payload.target for each in live if isinstance(each.payload, Withdrawal)}
        if entry.id not in named:
            live.insert(0, entry)
    return live


def happenings(told: Sequence[Entry]) -> list[Happened]:
    """All that happened, in order, the last live word on each level and time taken."""
    everything = {entry.id: entry for entry in told}
    found = []
    for entry in alive(told):
        kind = _kind(entry.payload)
        if kind is None:
            continue
        at, level = entry.at, _level(entry.payload)
        for word in alive(told):
            if isinstance(word.payload, Correction) and _root(word, everything) == entry.id:
                level = level if word.payload.level_ml is None else word.payload.level_ml
                at = word.payload.at or at
        closing = isinstance(entry.payload, Line) and entry.payload.closing
        found.append(Happened(entry.id, kind, at, level, closing, entry.position))
    exchanged = {one.entry: one.at for one in found}
    for one in found:
        payload = everything[one.entry].payload
        if isinstance(payload, FinalLevel) and payload.exchange:
            one.at = exchanged.get(payload.exchange, everything[payload.exchange].at)
    order = ["tip", "final", "exchange", "placed", "mark"]
    return sorted(found, key=lambda one: (one.at, order.index(one.kind), one.told))


def _kind(payload: Payload) -> str | None:
    match payload:
        case Line():
            return "mark"
        case FinalLevel():
            return "final"
        case Exchanged():
            return "exchange"
        case Placed():
            return "placed"
        case Incident(what=What.TIPPED):
            return "tip"
        case _:
            return None


def _level(payload: Payload) -> int | None:
    match payload:
        case Line(level_ml=level) | FinalLevel(level_ml=level):
            return level
        case Exchanged(opening_ml=level) | Placed(opening_ml=level):
            return level
        case _:
            return None


def _root(word: Entry, everything: dict[str, Entry]) -> str:
    while isinstance(word.payload, Correction):
        word = everything[word.payload.target]
    return word.id


def totals(told: Sequence[Entry]) -> dict[str, int]:
    """T(x) for each level: what the earlier segments held, and what its own has held up to it."""
    segments: list[Segment] = []
    tipped = False
    found: dict[str, int] = {}
    for one in happenings(told):
        match one.kind:
            case "tip":
                tipped = True
            case "exchange" | "placed" if one.level_ml is not None:
                tipped = tipped and one.kind != "exchange"
                segments.append(Segment(one.level_ml))
                found[one.entry] = _total(segments)
            case "mark" | "final" if one.level_ml is not None:
                fell = bool(segments) and one.level_ml < _last_ml(segments[-1])
                if not segments or tipped or fell:
                    segments.append(Segment(one.level_ml))
                segments[-1].read.append(one)
                found[one.entry] = _total(segments)
    return found


def _last_ml(segment: Segment) -> int:
    last = segment.read[-1].level_ml if segment.read else segment.open_ml
    assert last is not None
    return last


def _total(segments: Sequence[Segment]) -> int:
    return sum(_last_ml(segment) - segment.open_ml for segment in segments)


Cut: TypeAlias = tuple[int, bool]


def cut(levels: Sequence[Happened], schedule: Schedule, start: datetime) -> Cut:
    """The place of the line that a shift start is cut at (-1: none before it), and whether there was one."""
    closing = [
        (one.told, place)
        for place, one in enumerate(levels)
        if one.closing and abs(one.at - start) <= timedelta(hours=2)
    ]
    if closing:
        return max(closing)[1], True
    near = [
        (abs(one.at - start), one.at, -place)
        for place, one in enumerate(levels)
        if abs(one.at - start) <= schedule.grace
    ]
    if near:
        return -min(near)[2], True
    return max((place for place, one in enumerate(levels) if one.at < start), default=-1), False


def shift_starts(schedule: Schedule, begin: datetime, end: datetime) -> list[datetime]:
    """All shift starts of the days from the day before `begin` to the day after `end`, in UTC."""
    day = begin.astimezone(schedule.zone).date() - timedelta(days=2)
    starts = []
    while day <= end.astimezone(schedule.zone).date() + timedelta(days=2):
        starts += [
            datetime(day.year, day.month, day.day, start.hour, start.minute, tzinfo=schedule.zone).astimezone(
                UTC
            )
            for start in schedule.starts
        ]
        day += timedelta(days=1)
    return sorted(starts)
