"""What an earlier chart must be changed to: the difference that an entry makes to volumes already charted."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from itertools import takewhile
from operator import is_

from bot.engine.entries import (
    Correction,
    Entry,
    Exchanged,
    FinalLevel,
    Incident,
    Line,
    Placed,
    Seen,
    What,
    Withdrawal,
)
from bot.engine.ledger import Ledger, fold
from bot.engine.past import reaches_back
from bot.engine.policy import ChartBy, Schedule
from bot.engine.shelf import Shelf
from bot.engine.values import Amendment, Charted, GivenOut, Interval
from bot.engine.volumes import charted

_Held = dict[GivenOut, Interval]


def amendments(
    before: Ledger, after: Ledger, schedule: Schedule, chart_by: ChartBy = "mark"
) -> tuple[Amendment, ...]:
    """What now holds where something else was charted, in order; none when nothing charted has changed.

    Both ledgers are of one drain. A volume that only came to be chartable is not an amendment.
    """
    held, holds = map(_held, unlike(*(charted(each, schedule, chart_by) for each in (before, after))))
    stale = [interval for key, interval in held.items() if key not in holds]
    return _amended(stale, [interval for key, interval in holds.items() if key not in held])


def outstanding(ledger: Ledger, schedule: Schedule, chart_by: ChartBy = "mark") -> tuple[Amendment, ...]:
    """What the chart still has to be changed to, until someone says that it was amended.

    The chart is taken to hold what was given out, as it was given out: several corrections of one volume
    come out as one amendment, and a correction taken back as none. Cost: two folds per entry that reaches
    back since the last "amended" and since this ledger was last asked about.
    """
    reach = _reach(ledger)
    since, reaching = reach.seen, reach.back if chart_by == "mark" else reach.counting
    turns = tuple(turn for turn in reaching if turn >= since)
    if not turns:
        return ()
    key = (ledger.drain, ledger.capacity_ml, schedule, chart_by, since)
    memory = _REMEMBERED.find(key) or _Memory()
    asked = memory.asked
    if asked is None or asked.entries != ledger.entries:
        steps, asked = _gone_on(memory, _Past(ledger, schedule, chart_by, asked), turns)
        _REMEMBERED.keep(key, _Memory(steps, asked), len(ledger.entries))
    return asked.found


def unlike(
    before: Sequence[Interval], after: Sequence[Interval]
) -> tuple[Sequence[Interval], Sequence[Interval]]:
    """The two without the volumes that both begin with: the very same ones, up to a volume of some length
    (those of no length may come again)."""
    count = sum(takewhile(bool, map(is_, before, after)))
    while count and before[count - 1].begin.at == before[count - 1].end.at:
        count -= 1
    return before[count:], after[count:]


@dataclass(frozen=True, slots=True)
class _Step:
    """What was on the chart, and what held, when there were only these entries: the last reaches back, or
    none does."""

    entries: tuple[Entry, ...]
    chart: _Held
    known: _Held

    def begins(self, entries: tuple[Entry, ...]) -> bool:
        """Whether those entries go on from here."""
        return entries[: len(self.entries)] == self.entries


@dataclass(frozen=True, slots=True)
class _Asked:
    """A ledger's entries, its volumes and its amend list, as it was asked about."""

    entries: tuple[Entry, ...]
    holds: _Held
    found: tuple[Amendment, ...]


@dataclass(frozen=True, slots=True)
class _Memory:
    """The last steps of a drain's amend list, the newest first, and the ledger that was asked about last.

    Nothing is taken from it unless its entries are the ledger's own, or the first of them.
    """

    steps: tuple[_Step, ...] = ()
    asked: _Asked | None = None

    def step_of(self, entries: tuple[Entry, ...], first: int) -> _Step:
        """The step to go on from."""
        known = (step for step in self.steps if step.begins(entries))
        return next(known, _Step(entries[:first], {}, {}))


_REMEMBERED: Shelf[_Memory] = Shelf()
"""Of each drain (and schedule, and way to chart) what is known since the chart was said to be amended."""


@dataclass(frozen=True, slots=True)
class _Past:
    """The volumes of a drain after its first so many entries."""

    ledger: Ledger
    schedule: Schedule
    chart_by: ChartBy
    asked: _Asked | None

    def volumes(self, count: int) -> _Held:
        """What was charted then: reckoned from those entries alone, unless they were asked about just now."""
        entries = self.ledger.entries[:count]
        if self.asked is not None and self.asked.entries == entries:
            return self.asked.holds
        whole = count == len(self.ledger.entries)
        ledger = self.ledger if whole else fold(entries, self.ledger.capacity_ml)
        return _held(charted(ledger, self.schedule, self.chart_by))


def _gone_on(memory: _Memory, past: _Past, turns: tuple[int, ...]) -> tuple[tuple[_Step, ...], _Asked]:
    """The last steps up to a ledger of which the entries of these indexes reach back, and its amend list."""
    entries, steps = past.ledger.entries, memory.steps
    step = memory.step_of(entries, turns[0])
    for turn in turns[bisect_left(turns, len(step.entries)) :]:
        step = _stepped(past, step, turn)
        steps = (step, *steps[:1])
    holds = step.known if len(step.entries) == len(entries) else past.volumes(len(entries))
    chart = step.chart | {key: interval for key, interval in holds.items() if key not in step.known}
    stale = [interval for key, interval in chart.items() if key not in holds]
    fresh = [interval for key, interval in holds.items() if key not in chart]
    return steps, _Asked(entries, holds, _amended(stale, fresh))


def _stepped(past: _Past, step: _Step, turn: int) -> _Step:
    """The next step, at the entry of that index."""
    known = step.known
    was = known if known and turn == len(step.entries) else past.volumes(turn)
    chart = step.chart | {key: interval for key, interval in was.items() if key not in known}
    now = past.volumes(turn + 1)
    return _Step(past.ledger.entries[: turn + 1], chart | _charted_afresh(was, now), now)


def _held(given_out: Iterable[Interval]) -> _Held:
    return {interval.given_out: interval for interval in given_out}


def _charted_afresh(was: _Held, now: _Held) -> _Held:
    """New volumes of this entry that no charted one stood in the way of."""
    stale = [interval for key, interval in was.items() if key not in now]
    fresh = {key: interval for key, interval in now.items() if key not in was}
    return {key: interval for key, interval in fresh.items() if not _overlapping(interval, stale)}


def _amended(stale: Sequence[Interval], fresh: Sequence[Interval]) -> tuple[Amendment, ...]:
    if not stale:
        return ()
    found = _of_stretches([_amendment(interval, _overlapping(interval, stale)) for interval in fresh])
    struck = [_struck(interval) for interval in stale if not _overlapping(interval, fresh)]
    changed = [amendment for amendment in found if amendment.replaces]
    return tuple(sorted((*changed, *struck), key=lambda one: (one.begin, one.end)))


def _of_stretches(found: Sequence[Amendment]) -> list[Amendment]:
    """What holds at one moment (the new canister's first line, read as it was connected) is told with the
    stretch that ends there: alone it would be a volume that nobody charts."""
    moments = [one for one in found if one.begin == one.end and one.replaces]
    hosts = {one.end for one in found if one.begin < one.end and one.replaces}
    told = [one for one in found if one not in moments or one.end not in hosts]
    return [
        replace(one, volume_ml=one.volume_ml + sum(each.volume_ml for each in moments if each.end == one.end))
        if one.replaces and one.begin < one.end
        else one
        for one in told
    ]


def _amendment(interval: Interval, replaced: Sequence[Interval]) -> Amendment:
    return Amendment(
        begin=interval.begin.at,
        end=interval.end.at,
        volume_ml=interval.volume_ml,
        at_least=interval.at_least,
        shift=interval.shift,
        replaces=tuple(_charted(one) for one in replaced),
    )


def _struck(interval: Interval) -> Amendment:
    return Amendment(
        begin=interval.begin.at,
        end=interval.end.at,
        volume_ml=0,
        at_least=False,
        shift=interval.shift,
        replaces=(_charted(interval),),
        withdrawn=True,
    )


def _charted(interval: Interval) -> Charted:
    return Charted(begin=interval.begin.at, end=interval.end.at, volume_ml=interval.volume_ml)


def _overlapping(interval: Interval, others: Sequence[Interval]) -> list[Interval]:
    """Those that share a stretch with it; a volume of no length belongs to the stretch that ends there."""
    begin, end = interval.begin.at, interval.end.at
    near = (one for one in others if one.begin.at <= end and begin <= one.end.at)
    return [one for one in near if _overlap(interval, one)]


def _overlap(one: Interval, other: Interval) -> bool:
    begin, end = max(one.begin.at, other.begin.at), min(one.end.at, other.end.at)
    if begin < end or (one.begin.at, one.end.at) == (other.begin.at, other.end.at):
        return True
    is_moment = one.begin.at == one.end.at or other.begin.at == other.end.at
    return is_moment and begin == end and min(one.begin.at, other.begin.at) < begin


@dataclass(frozen=True, slots=True)
class _Reach:
    """The indexes of the entries that could change what was charted before them, and of all that count (any
    line may move where a shift is cut); `seen`: how many there were when the chart was said to be amended."""

    count: int = 0
    seen: int = 0
    latest: datetime | None = None
    back: tuple[int, ...] = ()
    counting: tuple[int, ...] = ()


def _reach(ledger: Ledger) -> _Reach:
    return ledger.once("reach", lambda before: _reached(before or _Reach(), ledger.entries))


def _reached(before: _Reach, entries: Sequence[Entry]) -> _Reach:
    """The same with the entries that have come since."""
    seen, latest = before.seen, before.latest
    back, counting = list(before.back), list(before.counting)
    for index in range(before.count, len(entries)):
        entry = entries[index]
        if isinstance(entry.payload, Seen) and entry.payload.amended:
            seen = index + 1
        if _counts(entry):
            counting.append(index)
            if reaches_back(entry) or (latest is not None and entry.at <= latest):
                back.append(index)
        latest = entry.at if latest is None else max(latest, entry.at)
    return _Reach(len(entries), seen, latest, tuple(back), tuple(counting))


def _counts(entry: Entry) -> bool:
    match entry.payload:
        case Correction() | Withdrawal():
            return True
        case Line() | FinalLevel() | Exchanged() | Placed(opening_ml=int()) | Incident(what=What.TIPPED):
            return True
        case _:
            return False
