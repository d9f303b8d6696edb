"""Statements in the making: what one of them has so far, before its values are settled.

`gathering.py` fills them from the pieces of a reading.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from .items import Item
from .labels import tube_name
from .moments import is_same_time

SIDES = frozenset({"left", "right"})
OF_A_SIDE = frozenset({"apical", "basal", "anterior", "posterior", "upper", "lower", "lateral"})
"""Places that both sides have."""
OF_NONE = frozenset({"mediastinal", "pericardial"})
"""Places that have no side."""
OPPOSITES = (SIDES, {"apical", "basal"}, {"upper", "lower"}, {"anterior", "posterior"})
"""No tube is both of these."""
BOTH = frozenset({"and", "&", "+"})
AMOUNTS = ("level", "volume", "output", "same")
WITH_LEVELS = frozenset({"placed", "exchanged", "removed", "moved"})
"""Events of which a level may be part, or that name a second bed."""


@dataclass(slots=True)
class Draft:
    """One statement (a mark with checks: two) before its values are settled.

    `clashes` are the values that compete for a slot; `bad` the numbers that no rule can read.
    """

    kind: str = ""
    bed: Item | None = None
    again: Item | None = None
    """Its bed, named once more."""
    more_beds: list[Item] = field(default_factory=list)
    to_bed: Item | None = None
    tubes: list[Item] = field(default_factory=list)
    named: list[Item] = field(default_factory=list)
    """Each word for a tube, also one said before: "right apical and right basal"."""
    time: Item | None = None
    time_before: Item | None = None
    """The same time, said before: "the 3 o'clock one, 615 at 03:00"."""
    since: Item | None = None
    level: Item | None = None
    final: Item | None = None
    opening: Item | None = None
    volume: Item | None = None
    output: Item | None = None
    reason: Item | None = None
    weight: Item | None = None
    order: Item | None = None
    ordered: Item | None = None
    wants: Item | None = None
    joined: bool = False
    closing: bool = False
    same: Item | None = None
    about: bool = False
    checks: dict[str, Item] = field(default_factory=dict)
    whats: list[Item] = field(default_factory=list)
    bad: list[Item] = field(default_factory=list)
    denied: list[Item] = field(default_factory=list)
    clashes: dict[str, list[Item]] = field(default_factory=dict)
    shared_time: bool = False
    gushed: bool = False
    """Whether it is a tube just placed that an amount came from, or that amount: only the tube is timed."""
    either: list[Item] = field(default_factory=list)
    """The tubes of which it may be: asked, and no fault of the reading."""
    faults: int = 0
    came_back: bool = False
    """Whether it is told of somebody who came back with a tube: the time is of that."""
    inherited: bool = False
    """Whether its kind is that of the tube before: "left and right out"."""

    @property
    def has_amount(self) -> bool:
        """Whether a level or an amount is in it."""
        return bool(self.level or self.final or self.volume or self.output or self.same)

    @property
    def has_content(self) -> bool:
        """Whether it says anything beside which drain and when."""
        told = self.kind or self.has_amount or self.opening or self.checks or self.whats or self.reason
        return bool(
            told or self.weight or self.bad or self.denied or (self.order and (self.checks or self.ordered))
        )

    @property
    def has_timed_content(self) -> bool:
        """Whether it says something that its own time may be of: why a drain is in has no time of the day."""
        told = self.kind or self.has_amount or self.opening or self.checks or self.whats
        loose = self.shared_time or (self.time and all(clock.style == "date" for clock in self.time.clocks))
        return self.has_content and bool(told or loose or self.reason is None)

    @property
    def is_one_event(self) -> bool:
        """Whether it tells one thing that happened, and nothing else."""
        return bool(self.kind) + len(self.whats) == 1 and not (self.has_amount or self.checks)

    @property
    def passes_on(self) -> bool:
        """Whether what happened was of several: "left and right out", "changed both, left 980, right 640"."""
        first = self.named[0].start if self.named else 0
        each = self.final is not None and (self.time is None or self.time.end <= first)
        return self.kind == "removed" or (self.kind == "exchanged" and each)

    @property
    def is_of_two(self) -> bool:
        """Whether the names of its tube cannot be those of one; the places of tubes that are joined can."""
        if len(self.tubes) < len(SIDES):
            return False
        names = {tube.name for tube in self.tubes}
        return any(names >= both for both in (OPPOSITES[:1] if self.joined else OPPOSITES))

    @property
    def tube(self) -> str | None:
        """The name of its tube, side before place."""
        return tube_name([t.name for t in self.tubes]) if self.tubes else None

    def told_after(self, time: Item, last: Item | None, *, happened: bool) -> Draft | None:
        """What was said behind that time, taken out: "tipped at 0300, reads 560 now"; none if that is all.

        `last` is the piece before the next time: "new tube at 0957, 125 ml at 1100"; `happened` is an event
        told since: "box changed 1830, old 440, clamped at 1850"."""
        level = self.level
        read = last is not None and level is not None and last.start == level.start > time.start
        if self.kind == "placed" and read and not self.came_back:
            self.level = None
            return Draft(bed=self.bed, tubes=list(self.tubes), level=level)
        whats = [what for what in self.whats if what.start > time.start]
        if happened and whats and self.kind in WITH_LEVELS and whats[-1].name != "dislodged":
            self.whats = [what for what in self.whats if what not in whats]
            return Draft(bed=self.bed, tubes=list(self.tubes), whats=whats)
        amounts = {slot: said for slot in AMOUNTS if (said := getattr(self, slot)) is not None}
        behind = {slot: said for slot, said in amounts.items() if said.start > time.start}
        if whats and self.level is not None and self.level.start < whats[0].start:
            behind.pop("level", None)  # "1855: 1540. suction off 1700"
        lined = "level" in amounts and "level" not in behind  # "340 at 1800 suction 20, kinked 1830"
        first = whats[0].start if whats and lined else time.start
        checks = {name: check for name, check in self.checks.items() if check.start > first}
        kept = self.kind or len(amounts) + len(self.whats) + len(self.checks) > len(behind) + len(
            whats
        ) + len(checks)
        if self.kind in WITH_LEVELS or self.clashes or self.bad or not (kept and (behind or whats or checks)):
            return None
        for slot in behind:
            setattr(self, slot, None)
        self.whats = [what for what in self.whats if what not in whats]
        self.checks = {name: check for name, check in self.checks.items() if name not in checks}
        closing = self.closing and "level" in behind
        self.closing = self.closing and not closing
        return Draft(
            bed=self.bed, tubes=list(self.tubes), **behind, whats=whats, checks=checks, closing=closing
        )

    def is_timed_again(self, item: Item) -> bool:
        """Whether this is its time once more, and as plainly said."""
        first = self.time
        if first is None or not (first.sure_time or first.lead == "timeword"):
            return False
        return item.at and is_same_time(first.clocks, item.clocks)

    def is_changed_before(self, level: Item) -> bool:
        """ "old 1310, opened at 0, then 12 ml", "changed 1825, old 720, 40 at 1900": of the new canister."""
        told = self.opening or (self.time and level.label is None)
        return bool(told and self.final and self.kind == "exchanged")

    def ends_again(self, level: Item) -> bool:
        """ "line 640, tube out at 1810, 70 in the box": a last level, and there is one."""
        ended = self.kind == "removed" and self.level is not None and self.bed is not None
        return ended and level.lead in {"inside", "last", "old"}

    def is_of_both(self, tube: Item, joint: str) -> bool:
        """ "clamped left and right on bed 9": what happened was to both, with nothing else between them."""
        last, more = self.tubes[-1], self.kind or self.has_amount or self.checks or self.time
        first = bool(self.whats) and self.whats[-1].end <= self.tubes[0].start == last.start
        beside = tube.start - last.end == 1 and {last.name, tube.name} == SIDES
        return first and beside and joint in BOTH and not more

    def clash(self, slot: str, *items: Item | None) -> None:
        """Several values compete for a slot."""
        self.clashes.setdefault(slot, []).extend(i for i in items if i is not None)


def is_one_name(a: Item, b: Item) -> bool:
    """Whether a side and a place are one name: left apical."""
    return (a.name in SIDES) != (b.name in SIDES) and b.start - a.end <= 1


def each_tube(said: list[Item]) -> list[list[Item]]:
    """ "mediastinal and left pleural": two tubes; "left apical and basal": both of the left."""
    groups: list[list[Item]] = []
    for before, tube in zip([None, *said], said, strict=False):
        adjoins = before is not None and before.end == tube.start and before.name in SIDES
        if adjoins and tube.name not in SIDES:
            groups[-1].append(tube)
        elif groups and groups[-1][0].name in SIDES and tube.name in OF_A_SIDE and len(groups[-1]) > 1:
            groups.append([groups[-1][0], tube])
        else:
            groups.append([tube])
    return groups


def each_placed(draft: Draft) -> list[Draft]:
    """ "new drains, mediastinal and left pleural": two drains. Of which is what was in it?"""
    names = {tube.name for tube in draft.tubes if len(tube.name) > 1}
    several = len(names - SIDES) > 1 or (names & OF_NONE and names & SIDES)
    groups = each_tube(draft.named)
    if draft.kind != "placed" or draft.joined or names >= SIDES or not several or len(groups) == 1:
        return [draft]
    draft.faults += bool(draft.has_amount or draft.opening or draft.checks or draft.whats)
    return [replace(draft, tubes=group, named=group) for group in groups]


def each_side(draft: Draft) -> list[Draft]:
    """ "left and right clamped at 1830", "mediastinal and left pleural no leak": of each of the two; how much
    it was is never of both."""
    names = {tube.name for tube in draft.tubes}
    several = draft.is_of_two or bool(names & OF_NONE and names & SIDES)
    told = draft.kind == "removed" or (not draft.kind and (draft.whats or draft.checks or draft.same))
    lined = draft.level or draft.final or draft.volume or draft.output or draft.opening
    more = lined or draft.order or draft.ordered or draft.bad or draft.clashes
    if draft.joined or not (several and told) or more:
        return [draft]
    places = [tube for tube in draft.tubes if tube.name not in SIDES]
    shared = names >= SIDES and len(places) == 1
    groups = [[t, *places] for t in draft.tubes if t.name in SIDES] if shared else each_tube(draft.named)
    if len(groups) == 1:
        return [draft]
    return [replace(draft, tubes=g, whats=list(draft.whats), checks=dict(draft.checks)) for g in groups]
