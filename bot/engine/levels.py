"""Levels in their place: each with the drain's total there, across canisters. Called by `ledger` only; pure.

One walk over the live entries in order. A new segment begins at an exchange, at a tip-over and at a line
below the one before it; nothing is ever subtracted from the total, and what could not be measured is
counted as a gap, which makes every sum across it "at least".
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace

from bot.engine.entries import Entry, Exchanged, FinalLevel, Incident, Line, Placed, What
from bot.engine.values import Canister, Level


@dataclass(slots=True)
class Walk:
    """The state of the walk: what is known of the canister in use, and all levels so far."""

    repeats: Mapping[str, str]
    closing: frozenset[str]
    corrected: frozenset[str]
    levels: list[Level] = field(default_factory=list)
    canisters: list[Canister] = field(default_factory=lambda: [Canister(index=0)])
    final_missing: list[str] = field(default_factory=list)
    total_ml: int = 0
    gaps: int = 0
    reference_ml: int | None = None
    """The last level of the canister in use (or what it opened at); None: nothing read on it yet."""
    waiting: bool = False
    """Placed, and what the canister held then is not known."""

    def onward(self, entry: Entry) -> Walk:
        """The walk one entry further; this one stays where it is."""
        closes = isinstance(entry.payload, Line) and entry.payload.closing
        walk = replace(
            self,
            closing=self.closing | {entry.id} if closes else self.closing,
            levels=list(self.levels),
            canisters=list(self.canisters),
        )
        walk.take(entry)
        return walk

    def between(self, before: str, told: Sequence[Entry], repeats: Mapping[str, str]) -> Walk:
        """The walk with a late line, the first of `told`, behind the level of the entry `before`; all that
        follows are lines, or leave the levels as they are. It is walked until it comes out as it was."""
        count = next(place for place, level in enumerate(self.levels) if level.entry == before) + 1
        last, line = self.levels[count - 1], told[0]
        closes = isinstance(line.payload, Line) and line.payload.closing
        walk = replace(
            self,
            repeats=repeats,
            closing=self.closing | {line.id} if closes else self.closing,
            levels=self.levels[:count],
            total_ml=last.total_ml,
            gaps=last.gaps,
            reference_ml=last.level_ml,
        )
        for entry in told:
            walk.take(entry)
            place = len(walk.levels) - 2
            if place >= count and walk.levels[-1] == self.levels[place]:
                return replace(
                    walk,
                    levels=[*walk.levels[:-1], *self.levels[place:]],
                    total_ml=self.total_ml,
                    gaps=self.gaps,
                    reference_ml=self.reference_ml,
                )
        return walk

    def take(self, entry: Entry) -> None:
        """Go one entry on."""
        match entry.payload:
            case Line():
                if entry.id not in self.repeats:
                    self._read(entry, entry.payload)
            case FinalLevel():
                self._read(entry, entry.payload)
            case Exchanged():
                self._exchange(entry, entry.payload)
            case Placed():
                self._place(entry, entry.payload)
            case Incident(what=What.TIPPED):
                self._tip()
            case _:
                pass

    def _read(self, entry: Entry, payload: Line | FinalLevel) -> None:
        before, level, codes = self.reference_ml, payload.level_ml, payload.accepted
        canister = self.canisters[-1]
        baseline = not self.levels or canister.tipped
        if canister.tipped:
            codes = _with(codes, "tipped")
            self.gaps += bool(self.levels)
        elif before is not None and level < before:
            baseline, codes = True, _with(codes, "line_fell")
            self.gaps += 1
        elif before is not None:
            self.total_ml += level - before
            codes = tuple(code for code in codes if code != "line_fell")
        self.reference_ml = level
        self._add(entry, payload, baseline=baseline, codes=codes)
        if isinstance(payload, FinalLevel) and not canister.tipped:
            self.canisters[-1] = replace(canister, final=self.levels[-1])

    def _exchange(self, entry: Entry, payload: Exchanged) -> None:
        if not self._end_is_known():
            self.final_missing.append(entry.id)
        if not self._end_is_known() or self.canisters[-1].tipped:
            self.gaps += bool(self.levels) or self.waiting
        self._next_canister(entry, payload.opening_ml)
        if not self.levels:
            self._add(entry, payload, baseline=True, codes=())

    def _end_is_known(self) -> bool:
        """True when a final level could tell nothing more: there is one, or the canister tipped over."""
        canister = self.canisters[-1]
        return canister.tipped or (canister.final is not None and canister.final is self.levels[-1])

    def _place(self, entry: Entry, payload: Placed) -> None:
        if payload.opening_ml is None:
            self.waiting = not self.levels
        elif self.levels:
            self.gaps += not self._end_is_known()
            self._next_canister(entry, payload.opening_ml)
        else:
            self.reference_ml = payload.opening_ml
            self.canisters[-1] = replace(
                self.canisters[-1], opened_by=entry.id, opened_at=entry.at, opening_ml=payload.opening_ml
            )
            self._add(entry, payload, baseline=True, codes=())

    def _tip(self) -> None:
        self.canisters[-1] = replace(self.canisters[-1], tipped=True)

    def _next_canister(self, entry: Entry, opening_ml: int) -> None:
        known = self.canisters[-1].final if self._end_is_known() else None
        self.canisters[-1] = replace(self.canisters[-1], closed_by=entry.id, closed_at=entry.at, final=known)
        self.canisters.append(
            Canister(index=len(self.canisters), opened_by=entry.id, opened_at=entry.at, opening_ml=opening_ml)
        )
        self.reference_ml = opening_ml

    def _add(
        self,
        entry: Entry,
        payload: Line | FinalLevel | Exchanged | Placed,
        *,
        baseline: bool,
        codes: tuple[str, ...],
    ) -> None:
        line = payload if isinstance(payload, Line) else None
        level_ml = payload.level_ml if isinstance(payload, Line | FinalLevel) else payload.opening_ml
        self.levels.append(
            Level(
                entry=entry.id,
                at=entry.at,
                entered=entry.entered,
                who=entry.who,
                level_ml=level_ml or 0,
                total_ml=self.total_ml,
                at_least=self.gaps > 0,
                canister=len(self.canisters) - 1,
                kind="mark" if line else "final" if isinstance(payload, FinalLevel) else "opening",
                closing=entry.id in self.closing,
                about=line is not None and line.about,
                baseline=baseline,
                codes=codes,
                corrected=entry.id in self.corrected,
                gaps=self.gaps,
            )
        )


def walked(live: Sequence[Entry], repeats: Mapping[str, str], corrected: frozenset[str]) -> Walk:
    """The walk after all live entries, given which lines repeat others and which entries were corrected."""
    closing = {repeats.get(e.id, e.id) for e in live if isinstance(e.payload, Line) and e.payload.closing}
    walk = Walk(repeats=repeats, closing=frozenset(closing), corrected=corrected)
    for entry in live:
        walk.take(entry)
    return walk


def _with(codes: tuple[str, ...], code: str) -> tuple[str, ...]:
    return codes if code in codes else (*codes, code)
