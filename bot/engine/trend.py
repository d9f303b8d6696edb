"""What a picture of a drain's trend shows: the total over time, with everything that bears on reading it.

The same levels and volumes as everywhere else, cut to a window; nothing is reckoned anew. Drawn by `wording`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from bot.engine.entries import Entry, Exchanged, FinalLevel, Line
from bot.engine.ledger import Ledger
from bot.engine.policy import Schedule
from bot.engine.shifts import shift_after, shift_at
from bot.engine.values import Caution, Interval, Level, Shift
from bot.engine.volumes import intervals


@dataclass(frozen=True, slots=True, kw_only=True)
class Struck:
    """A level that does not count any more: corrected to another, or withdrawn.

    `total_ml` is where it would have stood; None where nothing is left to measure it by.
    """

    at: datetime
    level_ml: int
    total_ml: int | None
    how: Literal["corrected", "withdrawn"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Ceiling:
    """The total at which a canister is full, over the time that it was in use."""

    begin: datetime
    end: datetime
    total_ml: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Trend:
    """One drain from `begin` to `end`. `levels` begin with the last one before the window, if any."""

    drain: str
    tube: str | None
    begin: datetime
    end: datetime
    levels: tuple[Level, ...]
    steps: tuple[Interval, ...]
    shifts: tuple[Shift, ...]
    """Those that start within the window."""
    exchanges: tuple[datetime, ...]
    struck: tuple[Struck, ...]
    ceilings: tuple[Ceiling, ...]
    cautions: tuple[Caution, ...]
    capacity_ml: int


def trend_of(
    ledger: Ledger,
    schedule: Schedule,
    begin: datetime,
    end: datetime,
    cautions: Iterable[Caution] = (),
    *,
    volumes: bool = True,
) -> Trend:
    """The drain's trend in that window. Of the cautions those of this drain, or of its bed as a whole.

    Without `volumes` there are no steps: enough for a small picture, and half the work.
    """
    steps = intervals(ledger, schedule) if volumes else ()
    shown = [level for level in ledger.levels if begin <= level.at <= end]
    before = ledger.level_before(begin)
    first = before.at if before is not None else begin
    return Trend(
        drain=ledger.drain,
        tube=ledger.tube,
        begin=begin,
        end=end,
        levels=(*((before,) if before is not None else ()), *shown),
        steps=tuple(each for each in steps if first <= each.begin.at and begin < each.end.at <= end),
        shifts=tuple(_shifts(schedule, begin, end)),
        exchanges=tuple(entry.at for entry, _ in ledger.of_kind(Exchanged) if begin <= entry.at <= end),
        struck=tuple(each for each in _struck(ledger) if begin <= each.at <= end),
        ceilings=tuple(_ceilings(ledger, begin, end)),
        cautions=tuple(each for each in cautions if each.drain in (None, ledger.drain)),
        capacity_ml=ledger.capacity_ml,
    )


def _shifts(schedule: Schedule, begin: datetime, end: datetime) -> Iterator[Shift]:
    shift = shift_at(schedule, begin)
    if shift.start < begin:
        shift = shift_after(schedule, shift)
    while shift.start <= end:
        yield shift
        shift = shift_after(schedule, shift)


def _struck(ledger: Ledger) -> Iterator[Struck]:
    for entry in ledger.entries:
        if isinstance(entry.payload, Line | FinalLevel):
            held = ledger.effective(entry.id)
            if held is None:
                yield _struck_level(ledger, entry, entry.payload.level_ml, "withdrawn")
            elif _is_another(entry, held):
                yield _struck_level(ledger, entry, entry.payload.level_ml, "corrected")


def _is_another(entry: Entry, held: Entry) -> bool:
    """Whether the level as it holds now is another one; a final level sits at its exchange anyhow."""
    moved = isinstance(entry.payload, Line) and held.at != entry.at
    return moved or getattr(held.payload, "level_ml", None) != getattr(entry.payload, "level_ml", None)


def _struck_level(
    ledger: Ledger, entry: Entry, level_ml: int, how: Literal["corrected", "withdrawn"]
) -> Struck:
    near = ledger.level_of(entry.id) or ledger.level_before(entry.at) or ledger.level_after(entry.at)
    total = None if near is None else near.total_ml + level_ml - near.level_ml
    return Struck(at=entry.at, level_ml=level_ml, total_ml=total, how=how)


def _ceilings(ledger: Ledger, begin: datetime, end: datetime) -> Iterator[Ceiling]:
    """Of each canister that was in use in the window and is not known to have been tipped over."""
    last_of = {level.canister: level for level in ledger.levels}
    for canister in ledger.canisters:
        level = last_of.get(canister.index)
        first = max(canister.opened_at or begin, begin)
        last = min(canister.closed_at or end, end)
        if level is not None and not canister.tipped and first < last:
            full = level.total_ml - level.level_ml + ledger.capacity_ml
            yield Ceiling(begin=first, end=last, total_ml=full)
