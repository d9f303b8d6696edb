"""Corrections and withdrawals: which line was wrong, and what is right."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime

from .items import Item
from .labels import tube_name
from .moments import LIST_REACH
from .statements import Corrected, Statement, Unclear, Withdrawn

TURNS = frozenset({
    "should be", "should have been", "should read", "should say", "meant", "i meant", "was actually", "actually was",
    "is actually", "supposed to be", "was supposed to be", "should've been", "should have read", "that should be",
    "it should be", "that should have been", "was really", "that should read", "has to be", "actually", "make it",
    "make that", "correct to", "really",
})
LINE_WORDS = frozenset({"level", "old"})


@dataclass(slots=True)
class Sides:
    """The values of each sort that were wrong (`was`) and that are right (`now`)."""

    was: list[Item] = field(default_factory=list)
    now: list[Item] = field(default_factory=list)

    def add(self, item: Item, *, wrong: bool) -> None:
        """One more value."""
        (self.was if wrong else self.now).append(item)


def is_correction(items: tuple[Item, ...]) -> bool:
    """Whether a correction is said anywhere."""
    return any(i.role == "cue" and i.value == "kind" and i.name == "corrected" for i in items)


def is_withdrawal(items: tuple[Item, ...]) -> bool:
    """Whether a line or message is taken back."""
    return any(i.role == "cue" and i.value == "kind" and i.name == "withdrawn" for i in items)


class Correction:
    """Sorts the pieces of a correction by side."""

    def __init__(self, items: tuple[Item, ...], arrived: datetime, text: str, said: str) -> None:
        self.items = items
        self.arrived = arrived
        self.text = text
        self.turned = self.negated = False
        self.wrong_time = "wrong time" in said or "timing" in said
        self.beds, self.tubes, self.nums, self.times = Sides(), Sides(), Sides(), Sides()
        self.odd = False
        self.has_turn = any(self._turn(i, said) for i in items)

    def _turn(self, item: Item, said: str) -> bool:
        return item.role == "cue" and item.value == "kind" and item.name == "corrected"

    def read(self, phrase: dict[int, str]) -> list[Statement | Unclear]:
        """The correction, or the question about it."""
        for k, item in enumerate(self.items):
            nxt = self.items[k + 1] if k + 1 < len(self.items) else None
            self._piece(item, nxt, phrase)
        return [self._made()]

    def _piece(self, item: Item, nxt: Item | None, phrase: dict[int, str]) -> None:
        match item.role:
            case "cue" if item.value == "kind" and item.name == "corrected":
                self.turned |= phrase.get(item.start, "") in TURNS
            case "cue" if item.value == "neg":
                self.negated = True
            case "cue" if item.value == "filler" and phrase.get(item.start) == "to":
                self.turned = True
            case "bed":
                self._side(self.beds, item)
            case "tube":
                self._side(self.tubes, item)
            case "time":
                self._time(item, nxt)
            case "num":
                self._number(item, nxt)
            case "bad" | "alt":
                self.odd = True
            case "sep" if item.value in {",", ";", "."}:
                self.negated = False

    def _wrong(self, item: Item) -> bool:
        if self.negated or item.link in {"not", "from"} or item.lead == "from":
            self.negated = False
            return True
        return not (self.turned or item.lead == "to" or item.link == "to")

    def _side(self, sides: Sides, item: Item) -> None:
        sides.add(item, wrong=self._wrong(item))

    def _time(self, item: Item, nxt: Item | None) -> None:
        self.times.add(item, wrong=self._wrong(item) or bool(self._names_line(nxt)))

    def _names_line(self, nxt: Item | None) -> bool:
        return nxt is not None and nxt.role == "cue" and nxt.value in LINE_WORDS

    def _number(self, item: Item, nxt: Item | None) -> None:
        timely = bool(item.clocks) and item.clocklike and not item.unit and item.within(LIST_REACH, self.arrived)
        by_place = item.lead in {"at", "timeword"} or self._names_line(nxt) or item.amount is None
        before_to = nxt is not None and nxt.role == "num" and nxt.lead == "to" and item.lead == ""
        if timely and (by_place or self.wrong_time or (before_to and self._sure_line(item))):
            self._time(item, nxt)
        elif item.amount is None or item.negative or item.unit == "bad":
            self.odd = True
        elif item.label is not None and item.lead in {"", "to"} and not item.unit and self._wants_bed(nxt):
            self._side(self.beds, item)
        else:
            self._side(self.nums, item)

    def _sure_line(self, item: Item) -> bool:
        return any(c.minute == 0 for c in item.clocks)

    def _wants_bed(self, nxt: Item | None) -> bool:
        return not self.beds.was or (len(self.beds.was) == 1 and not self.nums.now and self._belongs())

    def _belongs(self) -> bool:
        return any(i.role == "cue" and i.value == "word" and i.name in {"belongs", "belonged"} for i in self.items)

    # What comes of it

    def _made(self) -> Statement | Unclear:
        bed, to_bed = _pair(self.beds, single_is_was=True)
        tube, to_tube = _pair_of_tubes(self.tubes)
        was, level = _pair(self.nums, single_is_was=False)
        at, to_at = _pair(self.times, single_is_was=True)
        moments = [i.when(self.arrived, LIST_REACH) if i else None for i in (at, to_at)]
        made = Corrected(
            bed=bed.label if bed else None,
            to_bed=to_bed.label if to_bed else None,
            tube=tube,
            to_tube=to_tube,
            was_ml=was.amount if was else None,
            level_ml=level.amount if level else None,
            at=moments[0].sure if moments[0] else None,
            to_at=moments[1].sure if moments[1] else None,
        )
        for slot, found in zip(("at", "to_at"), moments, strict=True):
            if found is not None and found.sure is None:
                return Unclear(slot=slot, text=self.text, choices=found.values or found.nearest, statement=made)
        crowded = any(len(s.was) > 1 or len(s.now) > 1 for s in (self.beds, self.nums, self.times))
        if self.odd or crowded or (bed is not None and not bed.known):
            return Unclear(slot="level_ml", text=self.text, statement=made)
        if not any((made.to_bed, made.to_tube, made.level_ml is not None, made.to_at)):
            return Unclear(slot="level_ml", text=self.text, statement=made)
        return made


def _pair(sides: Sides, *, single_is_was: bool) -> tuple[Item | None, Item | None]:
    """The wrong and the right value; one alone is the line's (bed, time) or the right one (a level)."""
    was, now = list(sides.was), list(sides.now)
    if single_is_was and not was and now:
        was, now = [now[0]], now[1:]
    if not single_is_was and was and not now:
        was, now = was[:-1], [was[-1]]
    if single_is_was and len(was) == 2 and not now:
        was, now = was[:1], was[1:]
    return (was[0] if was else None), (now[0] if now else None)


def _pair_of_tubes(sides: Sides) -> tuple[str | None, str | None]:
    was, now = [i.name for i in sides.was], [i.name for i in sides.now]
    if now and not was:
        was, now = now, []
    if len(was) == 2 and not now and set(was) == {"left", "right"}:
        # "was the left tube not the right": the last one named is the denied one.
        return was[1], was[0]
    return (tube_name(was) if was else None), (tube_name(now) if now else None)


def withdrawn(items: tuple[Item, ...], arrived: datetime, text: str) -> Statement | Unclear:
    """What is taken back: the last message, or the line of that bed and time."""
    beds = list(dict.fromkeys(i.label for i in items if i.role == "bed"))
    tubes = [i.name for i in items if i.role == "tube"]
    times = [i for i in items if i.role == "time" or (i.role == "num" and i.clocklike and i.within(LIST_REACH, arrived))]
    nums = [i for i in items if i.role == "num" and i not in times]
    if not beds and len(nums) == 1 and nums[0].label is not None:
        beds, nums = [nums[0].label], []
    made = Withdrawn(bed=beds[0] if beds else None, tube=tube_name(tubes) if tubes else None)
    if len(beds) > 1 or any(i.role == "bed" and not i.known for i in items):
        return Unclear(slot="bed", text=text, choices=tuple(b for b in beds if b), statement=made)
    if len(times) > 1 or nums:
        return Unclear(slot="at", text=text, statement=made)
    if times:
        found = times[0].when(arrived, LIST_REACH)
        if found.sure is None:
            return Unclear(slot="at", text=text, choices=found.values or found.nearest, statement=made)
        return Withdrawn(bed=made.bed, tube=made.tube, at=found.sure)
    return made
