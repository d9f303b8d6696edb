"""Every way to cut a message into pieces: beds, tubes, numbers, times, cues.

One pass from left to right carries the ways that are still open ("three forty five" may be 345, or
340 and 5). What cannot be is dropped at once; what remains is judged as a whole in `roles`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from .clock import clocks
from .cuesense import asks, is_last_line, is_place, is_place_at, is_time_of_all, says_nothing
from .followers import CHECKS, followed_by, is_found_of, may_be_bed
from .fractions import BEGINNING, is_with_part, litres
from .items import Item
from .labels import tube_label
from .neighbours import (
    dangles,
    is_adverb,
    is_day_number,
    is_negative,
    is_of_number_before,
    is_setting,
    is_spaced_letter,
    is_suffix,
    is_tainted,
    kind_lead,
    link_before,
    may_follow,
    number_follows,
)
from .numbers import Toks, glued, heard_as_number, is_digits, numbers, starts_number, word
from .others import other_word
from .patterns.leads import LEADS, LEVEL_LEADS, MAY_BE_ARTICLE, TUBE_NAMES
from .patterns.leads import MANY_LINES as MANY
from .pipeline import Cue, Read
from .places import Places
from .ways import Way, about, followed

Step = tuple[int, Way]
"""A way made longer, and where it goes on."""
WIDEST = 24
DIAL_STEP = 5
"""Suction is set in steps of so many cmH2O. Common practice, no source."""
OWNED = frozenset(
    {"tubeword", "canister", "level", "levelat", "ask", "side", "place", "seal", "suction", "what", "kind"}
)
WORK = 800
"""Ways times tokens: what a long message may cost."""
LONG = 24
"""A longer message with too many ways is asked as a whole, and not followed to its end."""


class Lattice:
    """The ways to cut one message; `overfull` when there were too many to follow."""

    def __init__(self, read: Read, index: Mapping[str, str] | None, *, voice: bool) -> None:
        self.toks: Toks = read.tokens
        self.cues = {cue.start: cue for cue in read.cues}
        self.theatre = {c.end - 1 for c in read.cues if c.label == "kind" and c.end - c.start > 1}
        self.broken = read.broken
        self.index = index
        self.voice = voice
        self.asks = any(asks(cue, read.tokens) for cue in read.cues)
        self.overfull = False
        self.widest = max(2, min(WIDEST, WORK // max(1, len(read.tokens))))
        self.places = Places(read.tokens, index, voice)
        self.written = read.labelled

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
        kept, overfull = followed(ways, self.widest, self.toks, voice=self.voice)
        self.overfull |= overfull
        return kept

    def _steps(self, i: int, way: Way) -> Iterable[Step]:
        if i in self.written and not (way.at and word(self.toks, i) != "side"):
            end, label = self.written[i]
            known = self.index is not None and label.lower() in self.index
            bed = Item("bed", i, end, label=label, known=known, link=self._link(i))
            return [(end, way.with_item(bed))]
        if way.lead == "bed" and is_digits(self.toks, i) and self.places.labels(i):
            return self._beds(i, way, cued=True)
        number = way.items[-1] if way.items and way.items[-1].role == "num" else None
        if is_suffix(self.toks, i, number):
            return []
        owner = self._owners(i, way)
        if owner:
            return owner
        cue = self.cues.get(i)
        times = self._times(i, way)
        timed: list[Step] = []
        if times and (cue is None or max(t.end for t in times) >= cue.end):
            timed = [(t.end, way.with_time(t)) for t in times]
            if cue is not None or not starts_number(self.toks, i):
                return timed
        if (
            cue is not None
            and not (self.voice and way.lead == "bed" and heard_as_number(self.toks, i))
            and not self._is_article(cue)
        ):
            return self._cue(cue, way)
        found = self._numbers(i, way)
        if not found and starts_number(self.toks, i):
            found = [(i + 1, way.with_item(Item("bad", i, i + 1, lead=way.lead)))]
        elif not found and not dangles(self.toks, i, number):
            found = [other_word(self.toks, i, way, voice=self.voice)]
        return timed + found

    def _owners(self, i: int, way: Way) -> list[Step]:
        """ "12's chest tube": what owns something is a bed."""
        if "s" not in self.toks.words:
            return []
        behind = self.cues.get(i + 2)
        k = i + 1 + (glued(self.toks, i + 1) and word(self.toks, i + 1).isalpha())  # 4B's
        owns = word(self.toks, k) == "'" and word(self.toks, k + 1) == "s"
        apart = starts_number(self.toks, i + 2) and not glued(self.toks, i + 2)  # not "10s0"
        named = apart if behind is None else behind.label in OWNED
        owns |= word(self.toks, i + 1) == "s" and named
        owns &= is_digits(self.toks, i)
        return list(self._beds(i, way, cued=False)) if owns else []

    def _is_article(self, cue: Cue) -> bool:
        """ "a thousand", "a liter", "litre and a half": the word belongs to the number."""
        if cue.label == "litre" and cue.end - cue.start == 1:
            return bool(litres(self.toks, cue.start))
        if cue.label != "filler" or word(self.toks, cue.start) not in {"a", "an"} or cue.end - cue.start > 1:
            return False
        return bool(self.places.measured(cue.start))

    def _link(self, i: int) -> str:
        """The word that links a number here to the one before; the "or" of "back from OR" links none."""
        link = link_before(self.toks, i)
        return "" if link == "or" and i - 1 in self.theatre else link

    def _cuts(self, way: Way, item: Item) -> bool:
        """Whether the pieces before and this one are one number cut in two."""
        for before in reversed(way.items[-5:]):
            if before.role not in {"num", "bad", "time", "sep"}:
                return False
            if before.role != "sep" and self.places.ends(before.start) & {item.end, item.core}:
                return True
        return False

    def _times(self, i: int, way: Way) -> list[Item]:
        if way.lead == "leakgrade" and word(self.toks, i + 1) == "/":
            return []
        span = self.places.span(i, asks=self.asks)
        if span is not None:
            return [span]
        return [
            Item("time", i, end, clocks=found, lead=way.lead, at=way.at, link=self._link(i))
            for end, found in self.places.sure_clocks(i).items()
        ]

    def _cue(self, cue: Cue, way: Way) -> Iterable[Step]:
        if cue.label == "filler":
            return self._filler(cue, way)
        item = Item("cue", cue.start, cue.end, cue.label, cue.value)
        if cue.label == "tubeword":
            return self._tubeword(cue, way, item)
        found = [(cue.end, self._with_cue(cue, way, item))]
        if cue.value == "suction_on" and self._is_odd_setting(cue.end):
            found.append((cue.end, way.with_item(item)))
        if cue.label == "ask" and is_last_line(cue, self.toks) and self.places.labels(cue.end):
            found.append((cue.end, way.with_item(item)))
        return found

    def _is_odd_setting(self, i: int) -> bool:
        """ "suction back on 14": perhaps the bed, as a dial is hardly set to that; "on 20" is no bed."""
        number = word(self.toks, i)
        odd = number.isdecimal() and int(number) % DIAL_STEP > 0
        return odd and any(known for _, _, known in self.places.labels(i))

    def _with_cue(self, cue: Cue, way: Way, item: Item) -> Way:
        match cue.label:
            case "side" if is_adverb(self.toks, cue.start, cue.end):
                return way.with_item(Item("cue", cue.start, cue.end, "word", cue.value))
            case "side" | "place":
                tube = item._replace(role="tube", value="", name=cue.value)
                return way.with_item(tube, way.lead, at=way.at)
            case "level" if word(self.toks, cue.end - 1) in MANY and number_follows(self.toks, cue.end):
                return way.with_item(item)
            case "litre" if word(self.toks, cue.start) == "l":
                return way.with_item(item._replace(role="tube", value="", name="left"))
            case "window" if cue.value == "day" and is_day_number(self.toks, cue.end):
                return way.with_item(item._replace(value="other", name=""))
            case "about" if self._is_of_time(cue, way):
                return way.after_at()
            case "about":
                return about(way, cue, self.toks)
            case "what" if cue.value == "suction_on" and is_setting(self.toks, cue.end):
                return way.with_item(item._replace(value="suction", name=""), "suction")
            case "ask" if is_last_line(cue, self.toks):
                return way.with_item(item._replace(value="last", name=""), "last")
            case "seal" if word(self.toks, cue.start - 1) == "to" and not number_follows(self.toks, cue.end):
                return way.with_item(item._replace(value="waterseal"))
            case "kind" if cue.value == "placed" and is_place(cue, self.toks, self.cues):
                place = item._replace(value="tubeword", name="")
                nxt = self.cues.get(cue.end)
                return way.with_item(place, "bed" if nxt is not None and nxt.label == "bed" else "")
            case "kind":
                return self._with_event(cue, way, item)
            case "leak" if cue.value == "present":
                return way.with_item(item, "leakgrade")
            case "level" | "levelat" if way.lead in {"old", "new", "opens", "amount", "output"}:
                return way._replace(at=way.at or cue.label == "levelat")
        if cue.label == "same" and word(self.toks, cue.end - 1) in {"since", "as"}:
            return way.with_item(item, "since")
        if says_nothing(cue, way, self.toks, voice=self.voice) or is_place_at(cue, self.toks):
            return way
        at = word(self.toks, cue.end - 1) in {"at", "@", "the"}
        lead = cue.value if cue.label == "order" else LEADS.get(cue.label, "")
        return way.with_item(item, lead, at=at)

    def _is_of_time(self, cue: Cue, way: Way) -> bool:
        """ "420 around 6": behind the level, about when it was read."""
        last = way.items[-1] if way.items else None
        level = last is not None and last.role == "num" and last.label is None and last.end == cue.start
        around = word(self.toks, cue.end - 1) in {"around", "about", "abt", "~"}
        return level and around and not (self.voice or way.lead) and bool(clocks(self.toks, cue.end))

    def _with_event(self, cue: Cue, way: Way, item: Item) -> Way:
        """An event, and the tube that its phrase names: "pulled the left tube"."""
        found = way
        for k in range(cue.start, cue.end) if cue.value in {"removed", "placed"} else ():
            if word(self.toks, k) in TUBE_NAMES and cue.end - cue.start > 1:
                found = found.with_item(Item("tube", k, k + 1, name=word(self.toks, k)))
        fresh = any(word(self.toks, k) in {"new", "fresh"} for k in range(cue.start, cue.end))
        item = item._replace(unit="new" if fresh else "")
        return found.with_item(item, kind_lead(self.toks, cue.end, cue.value))

    def _filler(self, cue: Cue, way: Way) -> Iterator[Step]:
        text = word(self.toks, cue.start)
        if len(text) == 1 and glued(self.toks, cue.start) and is_digits(self.toks, cue.start - 1):
            return  # the letter of "22A" is no article
        may_be_heard = self.voice and starts_number(self.toks, cue.end)
        if cue.end - cue.start == 1 and text in {"at", "and", "add", "to", "from", "into"}:
            yield from self._joining(cue.start, text, way)
            told = any(item.value == "kind" for item in way.items)  # "correct the mark to ten oh five"
            if may_be_heard and text == "to" and way.lead in LEVEL_LEADS and not told:
                yield from self._misheard(cue.start, way)  # "mark to fifty five"
        elif way.lead in {"seal", "leakgrade"} and text in {"for", "on"} and self.places.labels(cue.end):
            yield cue.end, way._replace(lead="")
        elif way.lead == "level" and text in {"for", "in", "on"}:
            yield cue.end, way._replace(lead="")
            if may_be_heard:
                yield from self._misheard(cue.start, way)
        elif may_be_heard and way.lead in LEVEL_LEADS and heard_as_number(self.toks, cue.start):
            yield cue.end, way
            yield from self._misheard(cue.start, way)
        elif way.lead == "bed" and text in {"is", "was", "in", "on", "has", "had"}:
            yield cue.end, way._replace(lead="")
        elif is_time_of_all(cue, self.toks):
            yield cue.end, way.after_at()
        elif text == "both" and is_found_of(cue, self.cues):
            yield cue.end, way.with_item(Item("cue", cue.start, cue.end, "both"), way.lead, at=way.at)
        else:
            yield cue.end, way

    def _joining(self, i: int, text: str, way: Way) -> Iterator[Step]:
        if text == "at":
            yield i + 1, way.after_at()
        elif text in {"to", "from", "into"}:
            yield i + 1, way._replace(lead=way.lead or ("from" if text == "from" else "to"))
        elif text == "and":
            yield from self._and(i, way)
        else:
            yield i + 1, way.after_at() if self.voice and starts_number(self.toks, i + 1) else way

    def _and(self, i: int, way: Way) -> Iterator[Step]:
        yield i + 1, way.with_item(Item("sep", i, i + 1, "and"))
        if self.voice and way.items and not way.lead and clocks(self.toks, i + 1):
            yield i + 1, way.after_at()

    def _tubeword(self, cue: Cue, way: Way, item: Item) -> Iterator[Step]:
        for end, label, known in self.places.labels(cue.start):
            if known and end > cue.end and not self._is_after(way, "bed"):
                yield end, way.with_item(Item("bed", cue.start, end, label=label))
                if way.lead == "bed":
                    return
        found = tube_label(self.toks, cue.end)
        if found is not None and way.lead != "bed" and not self._is_after(way, "tube"):
            yield found[0], way.with_item(Item("tube", cue.start, found[0], name=found[1]))
            level = found[0] in self.cues and self.cues[found[0]].label in {"level", "levelat"}
            if found[1] == "A" and not level and word(self.toks, found[0]) in MAY_BE_ARTICLE:
                yield cue.end, way.with_item(item, way.lead, at=way.at)
            typed = not self.voice and not word(self.toks, found[0]).startswith("0")
            longer = any(number.end > found[0] for number in numbers(self.toks, cue.end))
            if (typed or not longer) and not is_with_part(self.toks, cue.end):
                return
        yield cue.end, way.with_item(item, way.lead, at=way.at)

    @staticmethod
    def _is_after(way: Way, role: str) -> bool:
        """ "left tube 2": a tube with a side has no number too."""
        return bool(way.items) and way.items[-1].role == role

    # Numbers

    def _numbers(self, i: int, way: Way) -> list[Step]:
        if way.lead == "bed" or self._is_b(i):
            start = i + 1 if self._is_b(i) else i
            beds = list(self._beds(start, way, cued=True))
            if beds:
                return beds
        begins = starts_number(self.toks, i) or word(self.toks, i) in BEGINNING
        found = list(self._bare(i, way) if begins else self._lettered(i, way))
        if self.voice and (way.lead == "at" or way.lead in LEVEL_LEADS) and starts_number(self.toks, i + 1):
            found += self._misheard(i, way)
        return found

    def _is_b(self, i: int) -> bool:
        return word(self.toks, i) in {"b", "bed", "rm"} and starts_number(self.toks, i + 1)

    def _beds(self, i: int, way: Way, *, cued: bool) -> Iterator[Step]:
        for end, label, known in self.places.labels(i, voice=self.voice, cued=cued):
            if known or not is_spaced_letter(self.toks, i, end):
                bed = Item("bed", i, end, label=label, known=known, link=self._link(i))
                yield end, way.with_item(bed)

    def _lettered(self, i: int, way: Way) -> Iterator[Step]:
        """A label that begins with letters, without the word bed: CT4."""
        if word(self.toks, i).isalpha() and self.index is not None and len(word(self.toks, i)) <= 4:
            for end, label, _ in self.places.labels(i):
                yield end, way.with_item(Item("bed", i, end, label=label, link=self._link(i)))

    def _misheard(self, i: int, way: Way) -> Iterator[Step]:
        for number in heard_as_number(self.toks, i):
            item = Item("num", i, number.end, amount=int(number.value), lead=way.lead, at=way.at)
            yield number.end, way.with_item(item)

    def _bare(self, i: int, way: Way) -> Iterator[Step]:
        after = way.items[-1] if way.items else None
        for item in self.places.measured(i):
            if self._cuts(way, item):
                continue
            whole = self._completed(item, i, way)
            if after is not None and after.end == i and not may_follow(after, whole):
                continue
            if is_of_number_before(self.toks, i, after, self.index):
                continue
            way = self._next_pair(way, whole)
            end, led = followed_by(whole, self.toks, self.cues)
            alone = led.lead in CHECKS and not whole.lead and may_be_bed(whole, way.items, self.toks)
            if not (alone and way.items):
                yield end, way.with_item(led)
            if alone:
                yield whole.end, way.with_item(whole)
        if way.lead in {"", "to", "from"} and not way.at:
            yield from self._longer_labels(i, way)

    def _next_pair(self, way: Way, item: Item) -> Way:
        """ "1500=300 1600=340": each sign of equality makes a pair of its own."""
        before = way.items[-1] if way.items else None
        paired = before is not None and before.role in {"num", "time"} and before.end == item.start
        sign = word(self.toks, item.end)
        if not paired or not (sign == "=" or (sign == ":" and item.label is not None)):
            return way
        return way._replace(items=(*way.items, Item("sep", item.start, item.start, ",")))

    def _longer_labels(self, i: int, way: Way) -> Iterator[Step]:
        """A label with letters or a dash, without the word bed: 12a, 3-B."""
        for end, label, known in self.places.labels(i):
            if known and not label.isdecimal():
                yield end, way.with_item(Item("bed", i, end, label=label, link=self._link(i)))

    def _completed(self, item: Item, i: int, way: Way) -> Item:
        label = None
        for end, text, known in self.places.labels(i):
            if known and end == item.end and not item.unit and (self.voice or word(self.toks, i) != "one"):
                label = text
        return item._replace(
            label=label,
            lead=way.lead,
            at=way.at or word(self.toks, i - 1) == "@",
            about=way.about or item.about,
            link=self._link(i),
            negative=is_negative(self.toks, i),
            role="bad" if item.role == "bad" or self._is_unsound(i, item.end, way) else "num",
        )

    def _is_unsound(self, start: int, end: int, way: Way) -> bool:
        broken = start - 1 in self.broken or end in self.broken
        return broken or is_tainted(self.toks, start, way.items[-1] if way.items else None)
