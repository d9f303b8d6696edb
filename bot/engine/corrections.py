"""Entries as they hold now: withdrawn ones left out, corrections applied, late final levels in their place.

The first step of the fold; pure. Called by `ledger` only. The originals stay where they are.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from bot.engine.entries import Correction, Entry, Exchanged, FinalLevel, Line, Payload, Placed, Withdrawal


def withdrawn_ids(entries: Sequence[Entry]) -> frozenset[str]:
    """The ids of the entries that do not count, given all entries by position.

    A withdrawal that is itself withdrawn gives its target back. One that names a later entry, or none, is
    void.
    """
    places = {entry.id: entry.position for entry in entries}
    gone: set[str] = set()
    for entry in reversed(entries):
        if isinstance(entry.payload, Withdrawal) and entry.id not in gone:
            target = entry.payload.target
            if places.get(target, entry.position) < entry.position:
                gone.add(target)
    return frozenset(gone)


def effective_entries(entries: Sequence[Entry]) -> tuple[dict[str, Entry], frozenset[str]]:
    """Each live entry with its corrections applied, by id, and the ids of those that were corrected.

    Corrections and withdrawals are not among them.
    """
    gone = withdrawn_ids(entries)
    by_id = {entry.id: entry for entry in entries}
    live = [entry for entry in entries if entry.id not in gone]
    held = {entry.id: entry for entry in live if not isinstance(entry.payload, Correction | Withdrawal)}
    corrected: set[str] = set()
    for entry in live:
        if isinstance(entry.payload, Correction):
            target = _corrected_entry(entry, by_id)
            if target in held:
                held[target] = _corrected(held[target], entry.payload)
                corrected.add(target)
    return {key: _at_its_exchange(entry, held, by_id) for key, entry in held.items()}, frozenset(corrected)


def _corrected_entry(correction: Entry, by_id: Mapping[str, Entry]) -> str | None:
    """The entry that a correction is about in the end: to correct a correction is to correct the line."""
    entry: Entry | None = correction
    while entry is not None and isinstance(entry.payload, Correction):
        target = by_id.get(entry.payload.target)
        entry = target if target is not None and target.position < entry.position else None
    return entry.id if entry else None


def _corrected(entry: Entry, correction: Correction) -> Entry:
    payload = entry.payload
    if correction.level_ml is not None:
        payload = _with_level(payload, correction.level_ml)
    if isinstance(payload, Line | FinalLevel):
        # What was asked about the old level says nothing of the new one.
        kept = payload.accepted if correction.level_ml is None else ()
        payload = replace(payload, accepted=tuple(dict.fromkeys((*kept, *correction.accepted))))
    return replace(entry, payload=payload, at=correction.at or entry.at)


def _with_level(payload: Payload, level_ml: int) -> Payload:
    match payload:
        case Line() | FinalLevel():
            return replace(payload, level_ml=level_ml)
        case Exchanged() | Placed():
            return replace(payload, opening_ml=level_ml)
        case _:
            return payload


def _at_its_exchange(entry: Entry, held: Mapping[str, Entry], by_id: Mapping[str, Entry]) -> Entry:
    """A final level told later sits at the moment of its exchange, however late it came."""
    if not isinstance(entry.payload, FinalLevel) or entry.payload.exchange is None:
        return entry
    exchange = held.get(entry.payload.exchange) or by_id.get(entry.payload.exchange)
    return replace(entry, at=exchange.at) if exchange and exchange.at != entry.at else entry
