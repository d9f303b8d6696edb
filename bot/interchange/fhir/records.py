"""From a ledger to what the Observations say: readings and volumes with their status and history."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime

from bot.engine.entries import Correction, Entry, FinalLevel, Line, Withdrawal
from bot.engine.ledger import Ledger
from bot.engine.past import Outdated, originals, outdated
from bot.engine.policy import Policy
from bot.engine.values import Interval, Level
from bot.engine.volumes import intervals
from bot.interchange.fhir.readings import Reading, Status, Volume

_KNOWN = {
    "line_fell": "lower than the line before on the same canister; kept by the nurse, no volume up to it",
    "over_capacity": "over the capacity of the canister; kept by the nurse",
    "jump": "a large step for the time elapsed; kept by the nurse",
    "time_conflict": "another level was told for the same minute",
    "tipped": "read on a canister that was tipped over; no volume up to it",
}


def readings(ledger: Ledger) -> Iterator[Reading]:
    """Every level that was ever told of the drain, standing or taken back, by position."""
    levels = {level.entry: level for level in ledger.levels}
    for entry, changes in originals(ledger.entries):
        level = levels.get(entry.id)
        if level is not None:
            yield _standing(level, entry, changes)
        elif isinstance(entry.payload, Line | FinalLevel):
            yield _not_counted(ledger, entry, entry.payload, changes)


def volumes(ledger: Ledger, policy: Policy) -> Iterator[Volume]:
    """Every volume that stands, and every one that was given out and is no longer so."""
    past = {_key(old.interval): old for old in outdated(ledger.entries, policy)}
    for interval in intervals(ledger, policy.schedule):
        yield _volume(interval, past.pop(_key(interval), None))
    for old in past.values():
        yield _gone(old)


def _standing(level: Level, entry: Entry, changes: tuple[Entry, ...]) -> Reading:
    remarks = (
        "approximate" if level.about else "",
        "closing line of the shift" if level.closing else "",
        "baseline: no volume up to it" if level.baseline and "line_fell" not in level.codes else "",
        *(_KNOWN[code] for code in level.codes if code in _KNOWN),
    )
    return Reading(
        entry=entry.id,
        kind=level.kind,
        level_ml=level.level_ml,
        at=level.at,
        issued=_issued(entry, changes),
        who=entry.who,
        status="corrected" if level.corrected else "final",
        notes=tuple(note for note in (*remarks, *_past(entry, changes)) if note),
    )


def _not_counted(
    ledger: Ledger, entry: Entry, payload: Line | FinalLevel, changes: tuple[Entry, ...]
) -> Reading:
    """A level that was taken back, or one that only repeats another line."""
    now = ledger.effective(entry.id)
    held = now.payload if now is not None and isinstance(now.payload, Line | FinalLevel) else payload
    repeat = dict(ledger.duplicates).get(entry.id)
    status: Status = "entered-in-error" if now is None else "corrected" if now != entry else "final"
    notes = (f"repeats {repeat}; counted once",) if repeat else ()
    return Reading(
        entry=entry.id,
        kind="mark" if isinstance(payload, Line) else "final",
        level_ml=held.level_ml,
        at=now.at if now is not None else entry.at,
        issued=_issued(entry, changes),
        who=entry.who,
        status=status,
        notes=(*notes, *_past(entry, changes)),
    )


def _volume(interval: Interval, old: Outdated | None) -> Volume:
    crossing = interval.includes_before
    notes = (f"includes what drained before {crossing.isoformat()}",) if crossing else ()
    was = (f"was {old.interval.volume_ml} mL until {old.until.isoformat()}",) if old else ()
    issued = max(interval.begin.entered, interval.end.entered)
    return Volume(
        begin_entry=interval.begin.entry,
        end_entry=interval.end.entry,
        begin=interval.begin.at,
        end=interval.end.at,
        volume_ml=interval.volume_ml,
        at_least=interval.at_least,
        issued=max(issued, old.until) if old else issued,
        status="corrected" if old else "final",
        notes=(*notes, *was),
    )


def _gone(old: Outdated) -> Volume:
    begin, end = old.interval.begin, old.interval.end
    return Volume(
        begin_entry=begin.entry,
        end_entry=end.entry,
        begin=begin.at,
        end=end.at,
        volume_ml=old.interval.volume_ml,
        at_least=old.interval.at_least,
        issued=old.until,
        status="entered-in-error",
        notes=("replaced by other volumes of this drain",),
    )


def _key(interval: Interval) -> tuple[str, str]:
    return (interval.begin.entry, interval.end.entry)


def _issued(entry: Entry, changes: tuple[Entry, ...]) -> datetime:
    return max(each.entered for each in (entry, *changes))


def _past(entry: Entry, changes: tuple[Entry, ...]) -> tuple[str, ...]:
    """What was told first, and each change with who and when."""
    if not changes:
        return ()
    level = entry.payload.level_ml if isinstance(entry.payload, Line | FinalLevel) else None
    told = f"told as {level} mL at {entry.at.isoformat()}" if level is not None else ""
    return (told, *(_change(change) for change in changes)) if told else tuple(map(_change, changes))


def _change(change: Entry) -> str:
    by = f"by {change.who} {change.entered.isoformat()}"
    match change.payload:
        case Correction(level_ml=level, at=at):
            parts = (f"{level} mL" if level is not None else "", at.isoformat() if at else "")
            return f"corrected to {' at '.join(part for part in parts if part)} {by}"
        case Withdrawal(moved_to=str(other)):
            return f"moved to {other} {by}"
        case _:
            return f"withdrawn {by}"
