"""The drafts of one reading, and what was found at a drain: leak, seal, suction, the look of the fluid.

The part of `gathering` that takes what a check found; the rest of the pieces it takes itself.
"""

from __future__ import annotations

from .drafts import Draft
from .items import Item
from .patterns.leads import PAUSES

LINE = frozenset({"bed", "tube", "level", "volume", "output", "time"})
"""Pieces of a line, behind which it is told what was found."""
SEEN = frozenset({"leak", "tidal", "fluid"})
FLUIDS = ("bright_red", "dark_red", "chylous", "purulent", "sanguineous", "serosanguineous", "serous")


class Findings:
    """Drafts, with what was found put in the one at hand."""

    def __init__(self) -> None:
        self.drafts = [Draft()]
        self.of_each: str | None = None
        """Behind "both" or "all": of how many what follows was found."""
        self.line: Item | None = None
        self.behind, self.parted = 0, True
        """From where on what is found stands behind the last line, and whether a stop parts them."""

    @property
    def now(self) -> Draft:
        """The draft at hand."""
        return self.drafts[-1]

    def open(self, draft: Draft | None = None) -> Draft:
        """A new draft (or this one), the next pieces being of it."""
        self.drafts.append(draft or Draft())
        return self.now

    def check(self, slot: str, item: Item) -> None:
        """What was found, of the tube at hand; behind "both", of each of two that were named."""
        for draft in self._named(self.of_each) or [self.now]:
            self._found(draft, slot, item)

    def _named(self, many: str | None) -> list[Draft]:
        """The drafts of the tubes that were named, or of the beds, if they are so many."""
        if many is None:
            return []
        tubes: dict[str | None, Draft] = {d.tube: d for d in self.drafts if d.tube is not None}
        each = tubes or {d.bed.label: d for d in self.drafts if d.bed is not None}
        return list(each.values()) if many in {"", str(len(each))} else []

    def find(self, item: Item) -> None:
        """What a cue says was found."""
        match item.value:
            case "leak":
                self.leak(item)
            case "leakhow":
                self.how(item)
            case "waterseal":
                self.waterseal(item)
            case "each":
                self.each(item.name, whole=item.end > item.start + 1)
            case _:
                self.check(item.value, Item("check", item.start, item.end, value=item.name))

    def follow(self, item: Item) -> None:
        """Where the line ends that the findings stand behind, and of how many tubes or beds they are."""
        if item.value == "both":
            self.of_each = item.name
            if any(c.end == item.start for slot, c in self.now.checks.items() if slot in SEEN):
                self.each(item.name)  # "swinging both, nil leak"
        elif item.role in {"bed", "tube"}:
            self.of_each = None
        if item.role in LINE:
            self.line, self.behind, self.parted = item, item.end, False
        elif item.role == "sep" and item.value in PAUSES and not self.parted:
            self.behind, self.parted = item.end, True

    def each(self, many: str, *, whole: bool = False) -> None:
        """ "no leak on either", "tidaling both": what was found last is of each; "right no leak either" is of
        the right."""
        beside = self.line is not None and self.line.role == "tube" and not (self.parted and whole)
        if self.line is None or self.line.role == "bed" or beside:
            return
        found = {n: c for n, c in self.now.checks.items() if c.start >= self.behind}
        for draft in self._named(many):
            for slot, item in found.items() if draft is not self.now else ():
                self._found(draft, slot, item)

    def _found(self, draft: Draft, slot: str, item: Item) -> None:
        if slot == "suction" and draft.order is not None and draft.ordered is None:
            draft.ordered = item
            return
        if slot == "suction" and draft.ordered is not None and self._is_ordered_again(draft, item):
            return
        old = draft.checks.get(slot)
        if slot == "fluid" and old is not None:
            draft.checks[slot] = min(old, item, key=lambda i: FLUIDS.index(i.value))
            return
        if slot == "suction" and old is not None and old.value == "waterseal":
            draft, old = (self.open() if draft.time else draft), None
        if old is not None and (old.value, old.figure) != (item.value, item.figure):
            draft.clash(slot, old, item)
        draft.checks[slot] = item

    @staticmethod
    def _is_ordered_again(draft: Draft, item: Item) -> bool:
        """ "wants 16 off suction, please put the order in as water seal": ordered once, and not yet so."""
        order, ordered = draft.order, draft.ordered
        if order is None or ordered is None:
            return False
        return ordered.end <= order.start < item.start and ordered.figure == item.figure

    def waterseal(self, item: Item) -> None:
        """On water seal: no suction, where none was told or what is told is no order."""
        set_to, order = self.now.checks.get("suction"), self.now.order
        if set_to and set_to.figure and order and set_to.end <= order.start < item.start:
            self.now.ordered = Item("check", item.start, item.end, value="waterseal", figure=0.0)
            return  # "suction 20, ordered water seal": how it is, and how it is to be
        if set_to is None or (set_to.figure and order is None):
            self.check("suction", Item("check", item.start, item.end, value="waterseal", figure=0.0))

    def leak(self, item: Item) -> None:
        """An air leak; of two words for one, the one that says more."""
        old = self.now.checks.get("leak")
        lined = old is not None and self.line is not None and self.line.start >= old.end
        if old is not None and lined and {old.value, item.name} == {"none", "present"}:
            self.now.clash("leak", old, Item("check", item.start, item.end, value=item.name))
            return  # "no leak bed 3 280, leak bed 5 310"
        if old is not None and (old.value == "present" or item.name == "present"):
            kept = old.value if item.name == "present" else item.name
            self.now.checks["leak"] = Item("check", old.start, item.end, value=kept)
            return
        self.check("leak", Item("check", item.start, item.end, value=item.name))

    def how(self, item: Item) -> None:
        """ "bubbling in the seal constantly": how the leak that was told goes on."""
        draft = self.now
        old = draft.checks.get("leak")
        if old is None and "leakgrade" in draft.checks:  # "air leak grade 2 w cough"
            draft.checks["leak"] = Item("check", item.start, item.end, value=item.name)
        elif old is None or old.value == "none":
            draft.faults += 1
        elif old.value == "present" or old.value == item.name:
            draft.checks["leak"] = Item("check", old.start, item.end, value=item.name)
        else:
            draft.clash("leak", old, Item("check", item.start, item.end, value=item.name))
