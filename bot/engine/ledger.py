"""The ledger of one drain: its entries in order, corrections applied, and the levels with their totals.

`fold` makes it from the entries; nothing derived is stored anywhere. It never raises on odd entries: a
ledger that looks wrong is kept and told about. Cost: a sort (nearly in order already) and one walk; a ledger
that only goes on (`with_entry`) is walked on from where it stands, and one with a late line from there.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Callable, Hashable, Iterable, Mapping
from dataclasses import dataclass, field, replace
from datetime import datetime
from typing import Any, TypeAlias, TypeVar

from bot.engine.corrections import effective_entries
from bot.engine.entries import (
    Checked,
    Entry,
    FinalLevel,
    Incident,
    Left,
    Line,
    Ordered,
    Payload,
    Reason,
    Removed,
    Seen,
)
from bot.engine.levels import Walk, walked
from bot.engine.order import SAME_LINE, late_place, ordered, repeated_lines
from bot.engine.story import Story
from bot.engine.values import AT, Canister, Level

P = TypeVar("P", bound=Payload)
T = TypeVar("T")


@dataclass(frozen=True, slots=True, kw_only=True)
class Ledger:
    """All that is known of one drain. `entries` by position, `live` in the order of what happened.

    `levels` are the lines, the final levels, and the opening of the first canister where no line came
    before it; each with the total there. `final_missing` names the exchanges whose old canister has no
    final level; `end_unknown` is true when the drain was removed without one. `duplicates` pairs a line
    that only repeats another with the one that counts.
    """

    drain: str = ""
    tube: str | None = None
    joined: tuple[str, ...] = ()
    capacity_ml: int = 2000
    entries: tuple[Entry, ...] = ()
    live: tuple[Entry, ...] = ()
    levels: tuple[Level, ...] = ()
    canisters: tuple[Canister, ...] = ()
    final_missing: tuple[str, ...] = ()
    duplicates: tuple[tuple[str, str], ...] = ()
    beds: tuple[tuple[datetime, str], ...] = ()
    """Where the drain was, from when on; the first one also holds before its moment."""
    placed_at: datetime | None = None
    first_at: datetime | None = None
    """The first line here (or opening level)."""
    reason: Reason = Reason.GENERAL
    weight_kg: float | None = None
    closed_at: datetime | None = None
    """Removed, or the patient left."""
    end_unknown: bool = False
    away: bool = False
    back_at: datetime | None = None
    _held: Mapping[str, Entry] = field(default_factory=dict, repr=False, compare=False)
    _walk: Walk | None = field(default=None, repr=False, compare=False)
    _awaited: frozenset[str] = field(default=frozenset(), repr=False, compare=False)
    """What final levels name as their exchange and is not there."""
    _reckoned: dict[Hashable, Any] = field(default_factory=dict, repr=False, compare=False)
    _reckoned_before: Mapping[Hashable, Any] = field(default_factory=dict, repr=False, compare=False)
    _tried: dict[Entry, Ledger] = field(default_factory=dict, repr=False, compare=False)
    """The ledger with one more entry, as it was last asked for."""

    @property
    def bed(self) -> str | None:
        """The bed that it is in now."""
        return self.beds[-1][1] if self.beds else None

    @property
    def last(self) -> Level | None:
        """The last level that happened."""
        return self.levels[-1] if self.levels else None

    @property
    def unread(self) -> Canister | None:
        """The canister in use, while nothing was read on it and the last level is of the one before it."""
        last, used = self.last, self.canisters[-1] if self.canisters else None
        return None if last is None or used is None or last.canister == used.index else used

    @property
    def closed_by(self) -> Entry | None:
        """What closed it: the removal, or that its patient left; none while it is open."""
        closing = (entry for entry in reversed(self.live) if isinstance(entry.payload, Left | Removed))
        return None if self.closed_at is None else next(closing)

    def bed_at(self, moment: datetime) -> str | None:
        """The bed that it was in then; before the first word of it, the bed that it was first in."""
        place = bisect_right(self.beds, moment, key=lambda berth: berth[0])
        return self.beds[max(place - 1, 0)][1] if self.beds else None

    def level_before(self, moment: datetime) -> Level | None:
        """The last level before that moment, none at it."""
        place = bisect_left(self.levels, moment, key=AT)
        return self.levels[place - 1] if place else None

    def level_after(self, moment: datetime) -> Level | None:
        """The first level after that moment, none at it."""
        place = bisect_right(self.levels, moment, key=AT)
        return self.levels[place] if place < len(self.levels) else None

    def levels_at(self, moment: datetime) -> tuple[Level, ...]:
        """The levels read in the minute of that moment."""
        minute = moment.replace(second=0, microsecond=0)
        place = bisect_left(self.levels, minute, key=AT)
        found: list[Level] = []
        while place < len(self.levels) and self.levels[place].at.replace(second=0, microsecond=0) == minute:
            found.append(self.levels[place])
            place += 1
        return tuple(found)

    def level_of(self, entry_id: str) -> Level | None:
        """The level that an entry reported; none for a repeat, or where none counts."""
        place = self.place_of(entry_id)
        return None if place is None else self.levels[place]

    def place_of(self, entry_id: str) -> int | None:
        """Where among `levels` the level that an entry reported is; none where there is none."""
        entry = self._held.get(entry_id)
        if entry is None:
            return None
        place = bisect_left(self.levels, entry.at, key=AT)
        while place < len(self.levels) and self.levels[place].at == entry.at:
            if self.levels[place].entry == entry_id:
                return place
            place += 1
        return None

    def find(self, entry_id: str) -> Entry | None:
        """The entry of that id as it was recorded; none when it is not on this ledger."""
        number = entry_id.rpartition("-")[2]
        if not number.isdecimal():
            return None
        place = bisect_left(self.entries, int(number), key=lambda entry: entry.position)
        found = self.entries[place : place + 1]
        return found[0] if found and found[0].id == entry_id else None

    def effective(self, entry_id: str) -> Entry | None:
        """The entry as it holds now, corrections applied; none when withdrawn, or not on this ledger."""
        return self._held.get(entry_id)

    def is_open(self, moment: datetime | None = None) -> bool:
        """True while the drain is in (at that moment)."""
        return self.closed_at is None or (moment is not None and moment < self.closed_at)

    def with_entry(self, entry: Entry) -> Ledger:
        """The ledger as it would be with one more entry; what is recorded was mostly tried just before."""
        found = self._tried.get(entry)
        if found is None:
            found = _gone_on(self, entry) if _goes_on(self, entry) else _slipped_in(self, entry)
            found = found or fold((*self.entries, entry), self.capacity_ml)
            self._tried.clear()
            self._tried[entry] = found
        return found

    def once(self, key: Hashable, reckon: Callable[[T | None], T]) -> T:
        """What is reckoned of this ledger: once, as neither ever changes.

        `reckon` is handed the same of the ledger that this one goes on from: one entry less, all of whose
        live entries and levels are still the first here; None where there is none, or nobody asked.
        """
        if key not in self._reckoned:
            self._reckoned[key] = reckon(self._reckoned_before.get(key))
        found: T = self._reckoned[key]
        return found

    def next_entry(
        self, payload: Payload, at: datetime, now: datetime, who: str = "", message: str = ""
    ) -> Entry:
        """An entry as it would be recorded next, to ask "what if" with."""
        return Entry(
            drain=self.drain or "0" * 16,
            position=self.entries[-1].position + 1 if self.entries else 1,
            at=at,
            entered=now,
            who=who,
            message=message,
            payload=payload,
        )

    def of_kind(self, kind: type[P]) -> tuple[tuple[Entry, P], ...]:
        """The live entries of one kind with their payloads, in the order of what happened."""

        def reckon(before: _OfKind[P] | None) -> _OfKind[P]:
            count, known = before or (0, ())
            new = self.live[count:]
            found = tuple((entry, entry.payload) for entry in new if isinstance(entry.payload, kind))
            return len(self.live), (*known, *found) if found else known

        return self.once(("kind", kind.kind), reckon)[1]


_OfKind: TypeAlias = tuple[int, tuple[tuple[Entry, P], ...]]


def _goes_on(ledger: Ledger, entry: Entry) -> bool:
    """Whether the entry only comes behind all others, and changes nothing of what they say."""
    if not _is_next(ledger, entry):
        return False
    match entry.payload:
        case Line(level_ml=level):
            return entry.at > ledger.live[-1].at and not _may_repeat(ledger, entry.at, level)
        case Checked() | Ordered() | Seen() | Incident():
            return entry.at > ledger.live[-1].at
        case _:
            return False


def _is_next(ledger: Ledger, entry: Entry) -> bool:
    """Whether it is the next of an open drain on which something is told, and no other entry names it."""
    if not ledger.live or entry.id in ledger._awaited or entry.drain != ledger.drain:
        return False
    return ledger.closed_at is None and entry.position > ledger.entries[-1].position


def _may_repeat(ledger: Ledger, at: datetime, level_ml: int) -> bool:
    for earlier in reversed(ledger.live):
        if at - earlier.at > SAME_LINE:
            return False
        if isinstance(earlier.payload, Line) and earlier.payload.level_ml == level_ml:
            return True
    return False


def _gone_on(ledger: Ledger, entry: Entry) -> Ledger:
    """The ledger with an entry that only goes on: walked from where it stands, which `fold` would come to."""
    assert ledger._walk is not None
    walk = ledger._walk.onward(entry)
    return replace(
        ledger,
        entries=(*ledger.entries, entry),
        live=(*ledger.live, entry),
        levels=tuple(walk.levels),
        canisters=tuple(walk.canisters),
        first_at=walk.levels[0].at if walk.levels else None,
        _held={**ledger._held, entry.id: entry},
        _walk=walk,
        _reckoned={},
        _reckoned_before=ledger._reckoned,
        _tried={},
    )


def _slipped_in(ledger: Ledger, entry: Entry) -> Ledger | None:
    """The ledger with a late line among lines of one canister: walked from there, which `fold` would come to.

    None where it may change more than the levels from its place on.
    """
    if not isinstance(entry.payload, Line) or not _is_next(ledger, entry):
        return None
    assert ledger._walk is not None
    known = ledger._walk.repeats
    found = late_place(ledger.live, entry, known)
    if found is None:
        return None
    place, before = found
    live = (*ledger.live[:place], entry, *ledger.live[place:])
    repeats = repeated_lines(live)
    repeated = entry.id in repeats
    if (repeated and entry.payload.closing) or len(repeats) != len(known) + repeated:
        return None
    if any(repeats.get(repeat) != counts for repeat, counts in known.items()):
        return None
    walk = ledger._walk.between(before.id, live[place:], repeats)
    return replace(
        ledger,
        entries=(*ledger.entries, entry),
        live=live,
        levels=tuple(walk.levels),
        duplicates=tuple(repeats.items()),
        _held={**ledger._held, entry.id: entry},
        _walk=walk,
        _reckoned={},
        _reckoned_before={},
        _tried={},
    )


def fold(entries: Iterable[Entry], capacity_ml: int = 2000) -> Ledger:
    """The ledger of these entries, given in any order; they are of one drain (others are left out)."""
    rows = sorted(entries, key=lambda entry: entry.position)
    rows = [row for row in rows if row.drain == rows[0].drain]
    held, corrected = effective_entries(rows)
    live = ordered(held)
    repeats = repeated_lines(live)
    walk = walked(live, repeats, corrected)
    story = Story()
    for entry in live:
        story.take(entry)
    return Ledger(
        drain=rows[0].drain if rows else "",
        tube=story.tube,
        joined=story.joined,
        capacity_ml=capacity_ml,
        entries=tuple(rows),
        live=live,
        levels=tuple(walk.levels),
        canisters=tuple(walk.canisters),
        final_missing=tuple(walk.final_missing),
        duplicates=tuple(repeats.items()),
        beds=tuple(story.beds),
        placed_at=story.placed_at,
        first_at=walk.levels[0].at if walk.levels else None,
        reason=story.reason,
        weight_kg=story.weight_kg,
        closed_at=story.closed_at,
        end_unknown=story.removed and (walk.canisters[-1].final is None),
        away=story.away,
        back_at=story.back_at,
        _held=held,
        _walk=walk,
        _awaited=_awaited(held),
    )


def _awaited(held: Mapping[str, Entry]) -> frozenset[str]:
    finals = (entry.payload for entry in held.values() if isinstance(entry.payload, FinalLevel))
    return frozenset(final.exchange for final in finals if final.exchange and final.exchange not in held)
