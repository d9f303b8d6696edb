"""Every way to cut a message into pieces: beds, tubes, numbers, times, cues.

One pass from left to right carries the ways that are still open ("three forty five" may be 345, or
340 and 5). What cannot be is dropped at once; what remains is judged as a whole in `roles`.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from .claims import CLAIMED
from .cuesteps import cue_steps
from .fractions import litres
from .ground import Ground
from .items import MEASURED, Item
from .neighbours import dangles, is_suffix, is_written_clock
from .numbers import Toks, glued, heard_as_number, is_digits, starts_number, word
from .numbersteps import bed_steps, number_steps
from .others import other_word
from .patterns.leads import LEVEL_LEADS
from .pipeline import Cue, Read
from .ways import Step, Way, followed

WIDEST = 24
OWNED = frozenset(
    {"tubeword", "canister", "level", "levelat", "ask", "side", "place", "seal", "suction", "what", "kind"}
)
WORK = 800
"""Ways times tokens: what a long message may cost."""
SEVERAL = 3
LONG = 24
"""A longer message with too many ways is asked as a whole, and not followed to its end."""


class Lattice:
    """The ways to cut one message; `overfull` when there were too many to follow."""

    def __init__(self, read: Read, index: Mapping[str, str] | None, *, voice: bool) -> None:
        self.ground = Ground(read, index, voice=voice)
        self.toks: Toks = read.tokens
        self.overfull = False
        self.widest = max(2, min(WIDEST, WORK // max(1, len(read.tokens))))

    def ways(self) -> list[tuple[Item, ...]]:
        """Every way through the whole message."""
        open_ways: dict[int, list[Way]] = {0: [Way()]}
        size = len(self.toks)
        for i in range(size):
            if self.overfull and size > LONG:
                return []
            for way in self._kept(open_ways.pop(i, [])):
                for end, longer in self._steps(i, way):
                    open_ways.setdefault(end, []).append(longer)
        return [way.items for way in self._kept(open_ways.get(size, []))]

    def _kept(self, ways: list[Way]) -> list[Way]:
        if len(ways) <= self.widest:
            return ways
        kept, overfull = followed(ways, self.widest, self.toks, voice=self.ground.voice)
        self.overfull |= overfull
        return kept

    def _steps(self, i: int, way: Way) -> Iterable[Step]:
        ground, toks = self.ground, self.toks
        cue = ground.cues.get(i)
        if cue is not None and cue.label == CLAIMED:
            return [(cue.end, way.with_item(Item(CLAIMED, i, cue.end, name=MEASURED)))]
        if i in ground.written and not (way.at and word(toks, i) != "side"):
            end, label = ground.written[i]
            known = ground.index is not None and label.lower() in ground.index
            bed = Item("bed", i, end, label=label, known=known, link=ground.link(i))
            return [(end, way.with_item(bed))]
        if way.lead == "bed" and is_digits(toks, i) and ground.places.labels(i):
            return bed_steps(ground, i, way, cued=True)
        number = way.items[-1] if way.items and way.items[-1].role == "num" else None
        if cue is not None and cue.label == "other" and i + 1 in ground.claims:
            return cue_steps(ground, cue, way)  # "at 1900 hr 104"
        if is_suffix(toks, i, number):
            return []
        owner = self._owners(i, way)
        if owner:
            return owner
        times = self._times(i, way)
        timed: list[Step] = []
        if times and (cue is None or max(t.end for t in times) >= cue.end):
            timed = [(t.end, way.with_time(t)) for t in times]
            if cue is not None or not starts_number(toks, i) or self._is_in_list(i, way):
                return timed
        if (
            cue is not None
            and not (ground.voice and way.lead == "bed" and heard_as_number(toks, i))
            and not self._is_article(cue)
        ):
            return cue_steps(ground, cue, way)
        found = number_steps(ground, i, way)
        if not found and starts_number(toks, i):
            found = [(i + 1, way.with_item(Item("bad", i, i + 1, lead=way.lead)))]
        elif not found and not dangles(toks, i, number):
            found = [other_word(toks, i, way, voice=ground.voice)]
        return timed + found

    def _is_in_list(self, i: int, way: Way) -> bool:
        """ "00:00 138, 01:00 140, 02:00 143": of several such times none is a level."""
        toks = self.toks
        if self.ground.voice or way.lead in LEVEL_LEADS or not is_written_clock(toks, i):
            return False
        return sum(is_written_clock(toks, k) for k in range(len(toks))) >= SEVERAL

    def _owners(self, i: int, way: Way) -> list[Step]:
        """ "12's chest tube": what owns something is a bed."""
        if "s" not in self.toks.words:
            return []
        behind = self.ground.cues.get(i + 2)
        k = i + 1 + (glued(self.toks, i + 1) and word(self.toks, i + 1).isalpha())  # 4B's
        owns = word(self.toks, k) == "'" and word(self.toks, k + 1) == "s"
        apart = starts_number(self.toks, i + 2) and not glued(self.toks, i + 2)  # not "10s0"
        named = apart if behind is None else behind.label in OWNED
        owns |= word(self.toks, i + 1) == "s" and named
        owns &= is_digits(self.toks, i)
        return list(bed_steps(self.ground, i, way, cued=False)) if owns else []

    def _is_article(self, cue: Cue) -> bool:
        """ "a thousand", "a liter", "litre and a half": the word belongs to the number."""
        if cue.label == "litre" and cue.end - cue.start == 1:
            return bool(litres(self.toks, cue.start))
        if cue.label != "filler" or word(self.toks, cue.start) not in {"a", "an"} or cue.end - cue.start > 1:
            return False
        return bool(self.ground.places.measured(cue.start))

    def _times(self, i: int, way: Way) -> list[Item]:
        if way.lead == "leakgrade" and word(self.toks, i + 1) == "/":
            return []
        span = self.ground.places.span(i, asks=self.ground.asks)
        if span is not None:
            return [span]
        sure = self.ground.places.sure_clocks(i)
        link = self.ground.link(i) if sure else ""
        return [
            Item("time", i, end, clocks=found, lead=way.lead, at=way.at, link=link)
            for end, found in sure.items()
        ]
