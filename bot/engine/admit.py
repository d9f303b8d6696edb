"""Why a reading is asked about before it is recorded. Values only: the dialogue asks, and may be told that
it is right.

A doubt is found by looking at the ledger as it would be with the reading in it, so late lines, exchanges
and tip-overs need no rules of their own.
"""

from __future__ import annotations

from bisect import bisect_left
from datetime import datetime, timedelta
from itertools import islice, takewhile

from bot.engine.entries import Correction, Entry, Exchanged, Line
from bot.engine.ledger import Ledger
from bot.engine.order import SAME_LINE
from bot.engine.policy import Policy
from bot.engine.values import AT, Doubt, Level

LONG_SILENCE = timedelta(hours=14)
_HOUR = timedelta(hours=1)


def doubts(
    ledger: Ledger, told: Entry, policy: Policy, exchange: Exchanged | None = None
) -> tuple[Doubt, ...]:
    """The reasons to ask about what would be recorded next, most telling first; none when it can be recorded.

    `told`: a line, a final level, or a correction: then what it makes of its line is judged. A reading that
    only repeats a line is never in doubt (see `duplicate_of`). `exchange`: what is recorded with a final
    level, so that lines behind it were read on the new canister.
    """
    match told.payload:
        case Correction(target=target):
            return _doubts_of(ledger.with_entry(told), target, policy)
        case Line(level_ml=level_ml) if _repeats(ledger, told, level_ml):
            return ()
        case _:
            held = ledger.with_entry(told)
            if exchange is not None:
                held = held.with_entry(
                    held.next_entry(exchange, told.at, told.entered, told.who, told.message)
                )
            found = _doubts_of(held, told.id, policy)
            return (*_silence(ledger, told.at), *found)


def duplicate_of(ledger: Ledger, level_ml: int, at: datetime) -> Level | None:
    """The line of that level at most 5 min away with nothing else read between, on the canister that was
    there then: the reading is already marked."""
    return _repeated_by(ledger, ledger.next_entry(Line(level_ml=level_ml), at, at), level_ml)


def read_on_which(ledger: Ledger, changed: datetime, final_ml: int | None) -> Level | None:
    """The line behind an exchange told late that may still have been read on the old canister.

    It is no lower than the old canister stood: at its final level (mL), or at the line before where none is
    told. A lower one was read on the new canister; with another exchange between, it was read on that one's.
    """
    behind = ledger.level_after(changed)
    before = ledger.level_before(changed)
    stood_ml = final_ml if final_ml is not None else before.level_ml if before else 0
    if behind is None or not 0 < stood_ml <= behind.level_ml:
        return None
    between = (entry for entry in ledger.live if changed <= entry.at <= behind.at)
    return None if any(isinstance(entry.payload, Exchanged) for entry in between) else behind


def _repeats(ledger: Ledger, told: Entry, level_ml: int) -> bool:
    """The same of a line as it would be recorded: that ledger is needed next.

    Where another level was read at that very moment, it is judged as if it had been entered then.
    """
    first = bisect_left(ledger.live, told.at, key=AT)
    beside = takewhile(lambda entry: entry.at == told.at, islice(ledger.live, first, None))
    levels = {entry.payload.level_ml for entry in beside if isinstance(entry.payload, Line)}
    if levels <= {level_ml}:
        return _repeated_by(ledger, told, level_ml) is not None
    return duplicate_of(ledger, level_ml, told.at) is not None


def _repeated_by(ledger: Ledger, told: Entry, level_ml: int) -> Level | None:
    at = told.at
    near = [ledger.level_before(at), *ledger.levels_at(at), ledger.level_after(at)]
    if not any(level and level.level_ml == level_ml and abs(level.at - at) <= SAME_LINE for level in near):
        return None
    repeated = dict(ledger.with_entry(told).duplicates).get(told.id)
    return ledger.level_of(repeated) if repeated else None


def _doubts_of(ledger: Ledger, entry_id: str, policy: Policy) -> tuple[Doubt, ...]:
    """`ledger` already holds the reading."""
    place = ledger.place_of(entry_id)
    if place is None:
        return ()
    level = ledger.levels[place]
    before = ledger.levels[place - 1] if place else None
    after = ledger.levels[place + 1] if place + 1 < len(ledger.levels) else None
    conflict = _conflict(ledger, level)
    return (
        *_capacity(level, policy),
        *(conflict or (*_fall(before, level, after), *_jump(before, level, after, policy))),
        *_closed(ledger, level),
    )


def _capacity(level: Level, policy: Policy) -> tuple[Doubt, ...]:
    over = level.level_ml > policy.capacity_ml
    return (Doubt(code="over_capacity", limit=policy.capacity_ml),) if over else ()


def _conflict(ledger: Ledger, level: Level) -> tuple[Doubt, ...]:
    """Another level read in the same minute: one of the two is wrong."""
    others = [
        one
        for one in ledger.levels_at(level.at)
        if one.canister == level.canister and one.kind == level.kind and one.level_ml != level.level_ml
    ]
    return (Doubt(code="time_conflict", before=others[0]),) if others else ()


def _fall(before: Level | None, level: Level, after: Level | None) -> tuple[Doubt, ...]:
    if "line_fell" in level.codes:
        return (Doubt(code="line_fell", before=before),)
    if after and after.canister == level.canister and "line_fell" in after.codes:
        return (Doubt(code="line_fell", after=after),)
    return ()


def _jump(before: Level | None, level: Level, after: Level | None, policy: Policy) -> tuple[Doubt, ...]:
    """More than the unit believes for the time that passed, at least one hour: to it, or from it on."""
    to_it = _limit_jumped(before, level, policy)
    from_it = _limit_jumped(level, after, policy)
    if to_it is not None:
        return (Doubt(code="jump", before=before, limit=to_it),)
    return (Doubt(code="jump", after=after, limit=from_it),) if from_it is not None else ()


def _limit_jumped(begin: Level | None, end: Level | None, policy: Policy) -> float | None:
    if begin is None or end is None:
        return None
    limit = policy.jump_ml * max(1.0, (end.at - begin.at) / _HOUR)
    return limit if end.total_ml - begin.total_ml > limit else None


def _silence(ledger: Ledger, at: datetime) -> tuple[Doubt, ...]:
    last = ledger.last
    if last is None or at - last.at <= LONG_SILENCE:
        return ()
    return (Doubt(code="long_silence", before=last, limit=LONG_SILENCE / _HOUR),)


def _closed(ledger: Ledger, level: Level) -> tuple[Doubt, ...]:
    """A line later than the end of the drain; the final level of the end itself is no doubt."""
    closed = ledger.closed_at
    return (
        (Doubt(code="removed", before=ledger.level_before(closed)),) if closed and level.at > closed else ()
    )
