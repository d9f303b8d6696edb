"""Corrections: which line was wrong, and what is right."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

from .items import FULL_HOUR, RECENT, Item
from .moments import LIST_REACH, since
from .numbers import Toks, word
from .roles import is_event
from .sides import TOWARD, TURNS, Sides
from .statements import Corrected, Statement, Unclear

ENTERED = frozenset(
    {"entered", "put", "charted", "typed", "wrote", "recorded", "texted", "sent", "logged", "said"}
)
BUT_IT = frozenset({"it's", "its", "it", "that's", "thats", "really", "actually", "meant", "is", "was"})
BUT_REACH = 4
"""How many words behind "but" the right value comes."""
FAR_OVER = 10
"""A level so many times what follows was not mistyped for it."""
FALSE = frozenset({"wrong", "incorrect", "error", "typo", "mistyped", "mistake", "off"})
SAID_OF_IT = frozenset(
    {"that", "it", "was", "is", "that's", "thats", "a", "an", "in", "the", "my", "ml", "."}
)
NAMED_LEVELS = frozenset({"level", "old", "new", "opens"})
"""Cues before a number after which it can be nothing but a level."""
LINE_WORDS = frozenset({"level", "old"})


def is_correction(items: tuple[Item, ...], toks: Toks) -> bool:
    """Whether a correction is said anywhere."""
    if _is_not_but(items) or _rebedded(items, toks) or turn_behind(items, toks):
        return True
    if any(i.role == "cue" and i.value == "kind" and i.name == "corrected" for i in items):
        return not _is_unread(items)
    return any(i.role == "cue" and i.value == "neg" and _is_between(items, k) for k, i in enumerate(items))


def turn_behind(items: tuple[Item, ...], toks: Toks) -> int:
    """ "i put bed 8 260 but its 206": where it turns from what was entered to what is right, or nought."""
    said = toks.said
    if "but" not in said:
        return 0
    turn = next((k for k, w in enumerate(said) if w == "but" and set(said[k + 1 : k + 3]) & BUT_IT), 0)
    before = [i for i in items if i.role == "num" and i.end <= turn]
    after = [i for i in items if i.role == "num" and i.start > turn]
    placed = len(before) > (not any(i.role == "bed" for i in items))
    told = placed and len(after) == 1 and after[0].start <= turn + BUT_REACH
    return turn if told and ENTERED & set(said[:turn]) else 0


def without_told(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """The pieces of a correction without the words that only say that something was entered."""
    turn = turn_behind(items, toks)
    return tuple(
        i
        for i in items
        if i.value != "word" or not (word(toks, i.start) in ENTERED or (turn and i.start == turn))
    )


def _is_unread(items: tuple[Item, ...]) -> bool:
    """ "supposed to be around 900 but I haven't read it": what is denied last is that it was read."""
    denied = next((k for k, i in enumerate(items) if i.role == "cue" and i.value == "neg"), None)
    after = items[denied + 1 :] if denied is not None else ()
    return bool(after) and after[0].value == "level" and not any(i.role == "num" for i in after)


def _is_between(items: tuple[Item, ...], k: int) -> bool:
    """ "was for bed 14 not bed 12": two beds or two tubes with "not" between them."""
    before = [i for i in items[:k] if i.role in {"bed", "tube", "num", "time"}]
    after = [i for i in items[k + 1 :] if i.role in {"bed", "tube", "num", "time"}]
    if not (before and after):
        return False
    if before[-1].role == "bed" and after[0].role == "num" and after[0].label is not None:
        return after[0].link == "not" and not any(i.role == "num" for i in before)
    if before[-1].role != after[0].role:
        return False
    if before[-1].role == "num":
        return after[0].link == "not" and before[-1].end == items[k].start and before[-1].amount is not None
    return before[-1].role in {"bed", "tube"}


def _is_not_but(items: tuple[Item, ...]) -> bool:
    """ "bed 12 not 950, 905": nothing but where, and two numbers of which the first is denied."""
    said = [i for i in items if i.role not in {"sep", "bed", "tube", "time"} and i.value != "bed"]
    beds = [i for i in items if i.role == "bed"]
    if [i.value for i in said] == ["neg"] and len(beds) == 2 and items[-1].role == "bed":
        return said[0].end <= beds[0].start
    kinds = ["neg" if i.value == "neg" else i.role for i in said]
    return kinds == ["neg", "num", "num"] and items[-1].role == "num" and any(i.role == "bed" for i in items)


def _rebedded(items: tuple[Item, ...], toks: Toks) -> bool:
    """ "the bed 12 1900 mark was bed 13", "0600 mark on bed 13 belongs to bed 12": one line, another bed."""
    beds = [k for k, i in enumerate(items) if i.role == "bed"]
    if any(i.role == "cue" and i.value == "word" and i.name in {"belongs", "belonged"} for i in items):
        told = bool(beds) and word(toks, items[beds[-1]].start - 1) in {"to", "bed", "in"}
        return told or any(i.role in {"num", "time"} or i.value in LINE_WORDS for i in items)
    if len(beds) != 2 or len(items) != beds[1] + 1:
        return False
    said = [i for k, i in enumerate(items) if k not in beds]
    if sum(i.role in {"num", "time"} for i in said) != 1 or not any(i.value in LINE_WORDS for i in said):
        return False
    return _is_told_of(items[beds[1]], toks)


def _is_told_of(bed: Item, toks: Toks) -> bool:
    """ "it was bed 13", "belongs to 12": the bed that is right."""
    k = bed.start - 1
    while word(toks, k) in {"bed", "room", "rm", "for", "in", "to", "really", "the"}:
        k -= 1
    return word(toks, k) in {"was", "is", "its", "it's", "belongs", "belonged"} or (
        word(toks, k) == "s" and word(toks, k - 2) == "it"
    )


class Correction:
    """Sorts the pieces of a correction by side."""

    def __init__(self, items: tuple[Item, ...], arrived: datetime, text: str, toks: Toks) -> None:
        self.items = items
        self.arrived = arrived
        self.text = text
        self.toks = toks
        self.said = said = " ".join(t.text for t in toks)
        self.turned = self.negated = self.toward = False
        self.wrong_time = "wrong time" in said or "timing" in said
        self.beds, self.tubes, self.nums, self.times = Sides(), Sides(), Sides(), Sides()
        self.odd = self.doubted = False
        self.named_beds = any(i.role == "bed" for i in items)
        self.meant: Item | None = None
        self.turn = turn_behind(items, toks)

    def read(self, phrase: dict[int, str]) -> list[Statement | Unclear]:
        """The correction, or the question about it."""
        for k, item in enumerate(self.items):
            self.turned |= 0 < self.turn < item.start
            nxt = self.items[k + 1] if k + 1 < len(self.items) else None
            self._piece(item, nxt, phrase)
        if _ends_open(self.items, phrase) or self.said.endswith(" to"):
            self.odd = True
        return [self._made()]

    def _piece(self, item: Item, nxt: Item | None, phrase: dict[int, str]) -> None:
        match item.role:
            case "cue" if item.value == "kind" and item.name == "corrected":
                self.turned |= phrase.get(item.start, "") in TURNS
                self.toward = phrase.get(item.start, "") in TOWARD
            case "cue" if item.value == "neg":
                self.negated = True
            case "cue" if item.value == "timeword" and phrase.get(item.start, "").startswith("time"):
                self.wrong_time = True
            case "cue" if item.value == "filler" and phrase.get(item.start) == "to":
                self.turned = True
            case "bed":
                self.meant = item if self.toward else self.meant
                self._add(self.beds, item)
            case "tube":
                self._add(self.tubes, item)
            case "time":
                self._time(item, nxt)
            case "num" if phrase.get(item.start) != "one":  # "the 1030 one was really at 1045"
                self._number(item, nxt)
            case "bad" | "alt":
                self.odd = True
            case "sep" if item.value in {",", ";", "."}:
                self.negated = False

    def _add(self, sides: Sides, item: Item, *, line: bool = False) -> None:
        """A value on its side: "not 1050" and "from 890" were wrong, "to 980" and "should be" are right."""
        if self.negated or item.link in {"not", "from"} or item.lead == "from" or line:
            self.negated = False
            sides.was.append(item)
        elif self.turned or item.lead == "to" or item.link == "to" or self._is_right_bed(item):
            sides.now.append(item)
        else:
            sides.free.append(item)

    def _is_right_bed(self, item: Item) -> bool:
        if item.role == "tube":
            return not self.tubes.all and _is_told_of(item, self.toks)
        other = bool(self.beds.all) or self._belongs()
        return item.role == "bed" and other and _is_told_of(item, self.toks)

    def _names_line(self, nxt: Item | None) -> bool:
        return nxt is not None and nxt.role == "cue" and nxt.value in LINE_WORDS

    def _time(self, item: Item, nxt: Item | None) -> None:
        self._add(self.times, item, line=self._names_line(nxt))

    def _number(self, item: Item, nxt: Item | None) -> None:
        timely = (
            bool(item.clocks) and item.clocklike and not item.unit and item.within(LIST_REACH, self.arrived)
        )
        by_place = item.lead in {"at", "timeword"} or self._names_line(nxt) or item.amount is None
        if self._is_entered(item):
            self.nums.was.append(item)
        elif timely and self._is_line_of_pair(item):
            self._add(self.times, item, line=True)
        elif timely and self._is_retimed(item):
            self.times.now.append(item)
        elif timely and (by_place or self.wrong_time or self._names_its_line(item)):
            self._time(item, nxt)
        elif item.amount is None or item.negative or item.unit == "bad":
            self.odd = True
        elif item.label is not None and item.lead in {"", "to"} and not item.unit and self._wants_bed(item):
            where = word(self.toks, item.start - 1) in {"for", "on", "in"} and len(self.tubes.all) == 2
            self._add(self.beds, item, line=where)
        elif self._may_be_right_bed(item):
            self._right_bed(item)
        else:
            self._add(self.nums, item)

    def _is_entered(self, item: Item) -> bool:
        """ "entered 1050 on 12": the value that was told."""
        before = {word(self.toks, item.start - 1), word(self.toks, item.start - 2)}
        told = bool(before & ENTERED) or (item.start < self.turn and bool(self.beds.all))
        placed = item.label is not None and "wrong bed" in self.said  # "recorded 4 on the wrong bed, its 5"
        return told and item.amount is not None and not (self.turned or item.at or placed)

    def _is_line_of_pair(self, item: Item) -> bool:
        """ "change left to right for 12 1900": both tubes are said, and the number is the line's time."""
        full = any(c.minute == 0 for c in item.clocks) or item.digits.startswith("0")
        return len(self.tubes.all) == 2 and not self.times.all and full

    def _is_retimed(self, item: Item) -> bool:
        """ "2000 mark was at 1930": a second clock time within 2 h of the line's is when it was read."""
        if item.lead != "levelat" or len(self.times.all) != 1:
            return False
        line, now = (i.when(self.arrived, LIST_REACH).sure for i in (self.times.all[0], item))
        return line is not None and now is not None and abs(since(line, now)) <= RECENT

    def _names_its_line(self, item: Item) -> bool:
        """ "correct bed 12 1900 to 1005": a bare clock time before what is right is the time of the line."""
        if item.lead or self.turned or self.negated or self.times.all or self._is_retyped_level(item):
            return False
        later = [i for i in self.items if i.start > item.start]
        right = next((i for i in later if i.role == "num"), None)
        short = len(item.digits) == FULL_HOUR - 1 and item.digits[1:] != "00" and item.digits[0] != "0"
        if short and (right is None or (right.label is not None and right.link != "to")):
            return False  # "the 240 was for bed 7 not bed 6"
        if right is None:
            return any(i.role in {"bed", "tube"} for i in later)
        if right.link == "not" or any(
            i.role == "cue" and i.value == "neg" and i.start < right.start for i in later
        ):
            return False
        denied = any(i.link == "not" for i in later)
        if denied and any(i.role == "time" or (i.lead == "at" and i.clocklike) for i in later):
            return False  # "445 at 1900, not 455"
        self.doubted |= _may_be_retyped(item, right) and not denied
        return True

    def _is_retyped_level(self, item: Item) -> bool:
        """ "my 455 should be 445": three digits for three digits, of which neither begins a full hour."""
        right = next((i for i in self.items if i.start > item.start and i.role == "num"), None)
        both = [i for i in (item, right) if i is not None and not i.lead and i.amount and len(i.digits) == 3]
        alone = not any(i.role == "time" for i in self.items)
        return alone and len(both) == 2 and not any(i.digits[0] == "0" or i.digits[1:] == "00" for i in both)

    def _may_be_right_bed(self, item: Item) -> bool:
        """ "entered 1050 on 12, meant 13": behind a bed, and itself a bed of the unit."""
        plain = item.label is not None and not item.lead and not item.unit
        return plain and self.toward and len(self.beds.all) == 1 and bool(self.nums.all)

    def _right_bed(self, item: Item) -> None:
        """It is the bed if it is too small to be the level; else it is asked."""
        was = self.nums.all[0].amount or 0
        if was >= FAR_OVER * max(1, item.amount or 0):
            self.beds.now.append(item)
        else:
            self.odd = True

    def _wants_bed(self, item: Item) -> bool:
        other = self._belongs() or self.negated
        last = self.beds.all[-1] if self.beds.all else None
        if last is not None and item.link == "not" and last.end + 1 == item.start:
            return True  # "was for 7 not 6"
        return not self.beds.all or (len(self.beds.all) == 1 and not self.nums.all and other)

    def _belongs(self) -> bool:
        return any(
            i.role == "cue" and i.value == "word" and i.name in {"belongs", "belonged"} for i in self.items
        )

    # What comes of it

    def _place(self, sides: Sides, level: Item | None) -> tuple[Item | None, Item | None]:
        """Which of two beds (times, tubes) the wrong line has; with a right level, one alone is its.

        But not the bed right behind "I meant".
        """
        was, now = sides.pair(alone_is_wrong=True)
        if now is not None and now is self.meant:
            return was, now
        return (now, None) if was is None and level is not None else (was, now)

    def _made(self) -> Statement | Unclear:
        was, level = self.nums.pair(alone_is_wrong=self._is_rebedded())
        bed, to_bed = self._place(self.beds, level)
        if bed is None and to_bed is not None and any(t.start < to_bed.start for t in self.tubes.all):
            bed, to_bed = to_bed, None  # "that should be left tube, bed 19"
        at, to_at = self._place(self.times, level)
        tube_item, to_tube_item = self._place(self.tubes, level)
        tube, to_tube = (i.name if i else None for i in (tube_item, to_tube_item))
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
                return Unclear(
                    slot=slot, text=self.text, choices=found.values or found.nearest, statement=made
                )
        if self.doubted or self._may_be_time(level):
            return Unclear(slot="at", text=self.text, statement=replace(made, at=None))
        return self._doubted(made, bed) or made

    def _doubted(self, made: Corrected, bed: Item | None) -> Unclear | None:
        """What must be asked of a correction whose times are sure."""
        lost = self._wrong_without_right(made)
        if lost:
            return Unclear(slot=lost, text=self.text, statement=replace(made, level_ml=None))
        if self._may_be_levels(made) or self._may_be_of_event():
            return Unclear(slot="kind", text=self.text, statement=Corrected())
        crowded = any(s.crowded for s in (self.beds, self.nums, self.times))
        if self.odd or crowded or (bed is not None and not bed.known):
            return Unclear(slot="level_ml", text=self.text, statement=made)
        whole = made.at is not None and made.level_ml is not None
        paired = made.tube is not None and made.to_tube is not None
        told = self.turned or self.nums.all or self.times.all or paired or self._belongs()
        if made.bed is None and (whole or not told):
            return Unclear(slot="bed", text=self.text, statement=made)
        if not any((made.to_bed, made.to_tube, made.level_ml is not None, made.to_at)):
            return Unclear(slot="level_ml", text=self.text, statement=made)
        return None

    def _may_be_time(self, level: Item | None) -> bool:
        """ "1900 reading was really 1800": the right level, or the right time of that line."""
        denied = [i for i in self.nums.was if i.clocklike and i.within(RECENT, self.arrived)]
        beside = self.times.all or denied  # "the bed 6 line was 1830 not 1800"
        if level is None or level.unit or not level.full_clock or len(beside) != 1:
            return False
        line, now = (i.when(self.arrived, LIST_REACH).sure for i in (beside[0], level))
        return line is not None and now is not None and abs(since(line, now)) <= RECENT

    def _is_rebedded(self) -> bool:
        """ "385 for bed 4, should be bed 14": the number only says which line was wrong."""
        free, right = self.nums.free, self.beds.now or (self.beds.free if self.beds.was else [])
        return len(free) == 1 and bool(right) and free[0].start < right[0].start and len(self.beds.all) == 2

    def _may_be_levels(self, made: Corrected) -> bool:
        """ "13 not 12", "oops meant 14": small numbers with no word bed and nothing else said."""
        alone = not (self.nums.all or self.times.all or self.tubes.all)
        answers = any(i.role == "cue" and i.value == "no" for i in self.items)
        return alone and made.to_bed is not None and not self.named_beds and not answers

    def _may_be_of_event(self) -> bool:
        """ "the clamp on 12 was at 1400 not 1500": of an event, and no level."""
        named = any(i.unit or i.lead in NAMED_LEVELS for i in self.nums.all)
        return any(map(is_event, self.items)) and bool(self.nums.all) and not named

    def _wrong_without_right(self, made: Corrected) -> str:
        """ "bed 12 mark 1050 at 1900 - wrong bed": the slot that is wrong with no word of what is right."""
        if made.level_ml is not None and self._ends_wrong():
            return "level_ml"
        wrong = (("wrong bed", "to_bed"), ("wrong tube", "to_tube"))
        return next((slot for said, slot in wrong if said in self.said and getattr(made, slot) is None), "")

    def _ends_wrong(self) -> bool:
        """ "560 was wrong": the only number, and that it is wrong."""
        only = self.nums.all
        rest = {t.text for t in self.toks[only[-1].end :]} if len(only) == 1 else set()
        return bool(FALSE & rest) and rest <= FALSE | SAID_OF_IT


def _may_be_retyped(item: Item, right: Item) -> bool:
    """ "1030 to 1005": a level typed again, or the time of the line; only full hours are surely times."""
    full = any(c.minute == 0 for c in item.clocks) or item.digits.startswith("0")
    return not full and right.lead in {"to", ""} and len(item.digits) == len(right.digits)


def _ends_open(items: tuple[Item, ...], phrase: dict[int, str]) -> bool:
    """ "correct 1200 to": the right value never came."""
    last = phrase.get(items[-1].start, "")
    return last.endswith("to") or (last in TURNS and len(items) > 1)
