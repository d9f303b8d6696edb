"""One way to give the numbers of a message their roles, while it is being followed. Called by `roles`."""

from __future__ import annotations

from datetime import datetime
from typing import NamedTuple

from .items import Item

RESETS = frozenset(
    {
        "kind",
        "level",
        "levelat",
        "old",
        "new",
        "opens",
        "amount",
        "output",
        "seal",
        "suction",
        "wall",
        "tubeword",
        "canister",
        "what",
        "leak",
        "closing",
    }
)


class Trail(NamedTuple):
    """One assignment so far, and what the clause at hand already has."""

    arrived: datetime
    items: tuple[Item, ...] = ()
    bed: bool = False
    level: bool = False
    time: bool = False
    order: str = ""
    asks: bool = False
    sums: bool = False
    paired: frozenset[int] = frozenset()
    """Where a number begins that another one follows at once."""
    lined: frozenset[int] = frozenset()
    """Where one begins that the word for a line and another one follow: "12 line 660"."""

    @property
    def mending(self) -> bool:
        """Whether a word of repair is the last thing said, commas left out: "ten, correction, twenty"."""
        for item in reversed(self.items):
            if item.role != "sep":
                return item.role == "repair"
        return False

    def grown(self, item: Item) -> Trail:
        """This assignment and one more piece."""
        items = (*self.items, item)
        match item.role:
            case "bed":
                return Trail(self.arrived, items, True, False, False, *self[5:])
            case "level" | "volume" | "output":
                order = self._ordered(item, "LT", self.time)
                return Trail(self.arrived, items, self.bed, True, self.time, order, *self[6:])
            case "time":
                order = self._ordered(item, "TL", self.level)
                return Trail(self.arrived, items, self.bed, self.level, True, order, *self[6:])
            case "sep":
                return Trail(self.arrived, items, False, False, False, *self[5:])
            case "tube":
                return Trail(self.arrived, items, self.bed, False, *self[4:])
            case "cue" if item.value in RESETS:
                return Trail(self.arrived, items, self.bed, False, *self[4:])
        return Trail(self.arrived, items, *self[2:])

    def _ordered(self, item: Item, first: str, second: bool) -> str:
        """Which of a bare level and a bare time came first: every pair of a message agrees."""
        if item.lead or item.unit or not second or self.order:
            return self.order
        return "LT" if first == "TL" else "TL"

    def fits(self, role: str) -> bool:
        """Whether a bare level or time here keeps to the order of the pairs before."""
        if role == "level":
            return not (self.time and self.order == "LT")
        return not (self.level and self.order == "TL")
