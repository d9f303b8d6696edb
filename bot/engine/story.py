"""What the entries of a drain tell beside its levels: whose it is, where it was, since when and until when.

`ledger.fold` walks it once over the live entries.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime

from bot.engine.entries import Away, Back, Described, Entry, Left, Moved, Opened, Placed, Reason, Removed


@dataclass(slots=True)
class Story:
    """What the entries other than levels say: whose drain, where, since when, until when."""

    tube: str | None = None
    joined: tuple[str, ...] = ()
    beds: list[tuple[datetime, str]] = field(default_factory=list)
    placed_at: datetime | None = None
    reason: Reason = Reason.GENERAL
    weight_kg: float | None = None
    closed_at: datetime | None = None
    removed: bool = False
    away: bool = False
    back_at: datetime | None = None

    def take(self, entry: Entry) -> None:
        """Go on with the next entry, in the order of what happened."""
        match entry.payload:
            case Placed() | Opened():
                self._found(entry, entry.payload)
            case Described(reason=reason, weight_kg=weight_kg, tube=tube):
                self._described(reason, weight_kg)
                self.tube = self.tube or tube
            case Moved(from_bed=origin, to_bed=bed):
                self._moved(entry.at, origin, bed)
            case Removed() | Left():
                self.closed_at, self.removed = entry.at, isinstance(entry.payload, Removed)
            case Away():
                self.away = True
            case Back():
                self.away, self.back_at = False, entry.at
            case _:
                pass

    def _found(self, entry: Entry, payload: Placed | Opened) -> None:
        self.tube = payload.tube if self.tube is None else self.tube
        self.beds.append((entry.at, payload.bed))
        if isinstance(payload, Placed):
            self.placed_at = self.placed_at or entry.at
            self.joined = payload.joined or self.joined
            self._described(payload.reason, payload.weight_kg)

    def _described(self, reason: Reason | None, weight_kg: float | None) -> None:
        self.reason = reason or self.reason
        self.weight_kg = weight_kg or self.weight_kg

    def _moved(self, at: datetime, origin: str, bed: str) -> None:
        if not self.beds:
            self.beds.append((at, origin))
        self.beds.append((at, bed))
