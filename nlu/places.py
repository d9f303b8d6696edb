"""What can be read at each place of one message, found once: many ways pass the same place."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from . import labels, measures
from .clock import clocks
from .clockface import Clock
from .items import FULL_HOUR, Clocks, Item
from .lengths import MEASURES, length
from .numbers import Toks, glued, is_digits, numbers, word
from .patterns.clockwords import AGO
from .patterns.leads import MOST_LITRES, PAUSES, SPAN_BEFORE

NO_TIMES: Mapping[int, Clocks] = MappingProxyType({})
DAY = 24 * 60
JOINS = frozenset({",", "/", "and", "&"})
RIGHT = frozenset({"r", "rt", "right"})
ROUGHLY = frozenset(
    {"maybe", "about", "approx", "approximately", "around", "roughly", "like", "nearly", "almost"}
)
LONGEST_SPAN = 72 * 60
"""Minutes; what is longer is no length of time that a nurse asks about: 1900 hours."""


@dataclass(slots=True)
class Places:
    """The numbers, times and labels at the places of a message; of one message and one thread."""

    toks: Toks
    index: Mapping[str, str] | None
    voice: bool
    _labels: dict[tuple[int, bool, bool], list[labels.Found]] = field(default_factory=dict)
    _measures: dict[int, list[Item]] = field(default_factory=dict)
    _clocks: dict[int, dict[int, Clocks]] = field(default_factory=dict)
    _ends: dict[int, frozenset[int]] = field(default_factory=dict)

    def measured(self, i: int) -> list[Item]:
        """Each number, with its unit and the times that the same words can be."""
        if i not in self._measures:
            found = measures.measured(self.toks, i, voice=self.voice)
            self._measures[i] = [self._without_left(item) for item in found]
        return self._measures[i]

    def _without_left(self, item: Item) -> Item:
        """ "R 300 L 120", "12L 340": no canister holds so many litres; the L is the left tube."""
        if item.unit != "litre" or word(self.toks, item.core) != "l" or (item.figure or 0) < MOST_LITRES:
            return item
        if glued(self.toks, item.end) and is_digits(self.toks, item.end):
            return item
        loose = Clocks(c for end, c in clocks(self.toks, item.start) if end == item.core and not c.sure)
        amount, digits = int(item.figure or 0), self.toks[item.start].text
        return item._replace(role="num", end=item.core, unit="", amount=amount, clocks=loose, digits=digits)

    def labels(self, i: int, *, voice: bool = False, cued: bool = False) -> list[labels.Found]:
        """Each bed label; `cued` after the word bed, where one that the unit lacks counts too."""
        key = (i, voice, cued)
        if key not in self._labels:
            self._labels[key] = list(labels.beds(self.toks, i, self.index, voice=voice, cued=cued))
        return self._labels[key]

    def is_before_sides(self, i: int, end: int) -> bool:
        """ "3 L 210 R 95": no three litres, but a bed that begins a clause, and both of its tubes."""
        begins = i == 0 or word(self.toks, i - 1) in PAUSES
        left = word(self.toks, end) == "l" and is_digits(self.toks, end + 1)
        left &= len(word(self.toks, end + 1)) < FULL_HOUR  # "12, 2 L 1850": that may be its time
        behind = end + 2 + (word(self.toks, end + 2) in JOINS)
        return begins and left and word(self.toks, behind) in RIGHT and is_digits(self.toks, behind + 1)

    def sure_clocks(self, i: int) -> Mapping[int, Clocks]:
        """The times that can be nothing else, by their ends."""
        times = clocks(self.toks, i)
        if not times:
            return NO_TIMES
        if i not in self._clocks:
            found: dict[int, list[Clock]] = {}
            heads = self._is_heading(i)
            for end, clock in times:
                if clock.sure or heads or self._is_colon(clock, i):
                    found.setdefault(end, []).append(clock if clock.sure else clock._replace(sure=True))
            self._clocks[i] = {end: Clocks(cs) for end, cs in found.items()}
        return self._clocks[i]

    def _is_colon(self, clock: Clock, i: int) -> bool:
        return clock.colon and not self.voice and word(self.toks, i + 1) == ":"

    def _is_heading(self, i: int) -> bool:
        """ "1900: bed 12 340, bed 14 220": four digits and a colon at the very start are a time."""
        if i:
            return False
        said = word(self.toks, i)
        four = len(said) == FULL_HOUR and said.isdecimal() and word(self.toks, 1) == ":"
        return four and not glued(self.toks, 2) and not self.labels(i)

    def ends(self, i: int) -> frozenset[int]:
        """Where a number or time that begins here can end; typed digits side by side ("12 50") are two."""
        if i not in self._ends:
            typed = not self.voice and is_digits(self.toks, i)
            found = {end for end, clock in clocks(self.toks, i) if clock.sure or not typed}
            found |= set() if typed else {n.end for n in numbers(self.toks, i)}
            self._ends[i] = frozenset(found)
        return self._ends[i]

    def _is_led(self, i: int) -> bool:
        """ "suction off 0010h": a time, and no length of one."""
        return len(word(self.toks, i)) == FULL_HOUR

    def _before_length(self, i: int) -> str:
        """The word before a length of time, what makes it a rough one aside: "off for maybe 10 min"."""
        rough = i
        while word(self.toks, rough - 1) in ROUGHLY:
            rough -= 1
        led = rough < i and word(self.toks, rough - 1) in {"for", "over", "within"}
        return word(self.toks, rough - 1 if led else i - 1)

    def span(self, i: int, *, asks: bool) -> Item | None:
        """A length of time that is not a moment: "over 2 hours", "last 8h"."""
        if self.toks.words.isdisjoint(MEASURES):
            return None
        before = self._before_length(i)
        this = before == "this" and word(self.toks, i) in {"hour", "hr"}
        end, minutes = length(self.toks, i)
        day = minutes == DAY and self.toks[i].is_digits and before not in {"at", "@"}
        if before not in SPAN_BEFORE and not asks and not this and not day:
            return None
        if minutes is None and before in {"last", "past", "this"} and word(self.toks, i) in {"hour", "hr"}:
            end, minutes = i + 1, 60
        if minutes is None or minutes > LONGEST_SPAN or (self.toks[i].is_digits and self._is_led(i)):
            return None
        if word(self.toks, end) in AGO:
            return None
        return Item("cue", i, end, "span", str(minutes))
