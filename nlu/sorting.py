"""The pieces of a correction, sorted: what it says was wrong, and what is right."""

from __future__ import annotations

from datetime import datetime

from .corrections import LINE_WORDS, MOVING, belongs, is_how_far, is_told_of, pointed
from .entered import ENTERED, is_misread, is_retimed, turn_behind
from .items import FULL_HOUR, NEAR, RECENT, Item, is_now
from .moments import LIST_REACH, since
from .neighbours import phrase_of
from .numbers import Toks, word
from .retiming import is_denied_time, is_retold
from .sides import FIGURES, TOWARD, TURNS, Sides, is_contrast, whole_tubes
from .whichline import (
    Contrast,
    contrast,
    is_before_entered,
    is_far_less,
    is_full,
    is_hour,
    is_other_bed,
    is_other_hour,
    is_typed_over,
    is_typo,
    may_be_retyped,
)

PLACED = frozenset({"on", "for", "in", "under"})
SAID_FALSE = frozenset(
    {"was wrong", "is wrong", "wrong", "was a typo", "was a mistake", "is a typo", "is a mistake"}
)
POINTING = frozenset({"the", "that", "my"})
LINES_SAID = frozenset({"one", "mark", "line", "reading", "entry"})
COUNTS = frozenset({"two", "three", "2", "3"})
BEFORE_COUNTS = frozenset({"the", "these", "those", "my", "them"})
VERBS = frozenset(
    {"read", "reads", "measured", "measures", "marked", "shows", "showing", "see", "says", "said"}
)
"""Last in a cue of a level, these tell how it was read and name no line."""
PAIR = 2
"""Two values; and words between a level and the end of its time: 340 at 1800."""
LONG_LABEL = 3
HOURS = 13
TOO_MANY = frozenset({"extra", "a", "an", "one", "another", "missed", "missing", "dropped", "added"})
CONTRASTS = frozenset({"instead of", "rather than"})
"""Before what is wrong, behind what is right: "754 instead of 745"."""
IN_THE_LOG = frozenset({("i", "had"), ("you", "have"), ("you", "had"), ("we", "had")})
MEANT = frozenset({"meant", "i meant"})


class Sorted:
    """The pieces of a correction by side."""

    def __init__(self, items: tuple[Item, ...], arrived: datetime, text: str, toks: Toks) -> None:
        self.items = items = whole_tubes(tuple(i for i in items if not is_contrast(i, toks)))
        self.arrived = arrived
        self.text = text
        self.toks = toks
        self.said = said = " ".join(t.text for t in toks)
        self.turned = self.negated = self.toward = False
        self.wrong_time = "wrong time" in said or any(_is_timeword(i, toks) for i in items)
        self.wrong_time |= any(f"same {name}" in said for name in FIGURES - {"time", "one"})
        self.beds, self.tubes, self.nums, self.times = Sides(), Sides(), Sides(), Sides()
        self.odd = self.doubted = False
        self.named_beds = any(i.role == "bed" for i in items)
        self.meant: Item | None = None
        self.turn = turn_behind(items, toks)
        self.pointed = pointed(items, toks)
        self.retold = is_retold(items, toks)
        self.contrast = Contrast()
        self.moves = any(i.name == "corrected" and word(toks, i.start) in MOVING for i in items)

    def piece(self, item: Item, nxt: Item | None) -> None:
        phrase = phrase_of(item, self.toks)
        match item.role:
            case "cue" if item.value == "kind" and item.name == "corrected" and phrase not in CONTRASTS:
                self.turned |= phrase in TURNS
                self.toward = phrase in TOWARD
                self._said_false(phrase)
                self._meant_before(item, nxt, phrase)
            case "cue" if item.value == "neg" or (item.name == "corrected" and phrase in CONTRASTS):
                self.contrast = contrast(item, self.items, self.toks) if item.value != "neg" else Contrast()
                self.odd |= self.contrast.unsure
                self.turned, self.negated = self.turned or self.contrast.right, not self.contrast.right
            case "cue" if item.value == "filler" and phrase == "to":
                self.turned = True
            case "bed":
                self.meant = item if self.toward or item is self.pointed else self.meant
                self._add(self.beds, item)
            case "tube":
                self.odd |= item.name == "lower" and word(self.toks, item.start - 1) == "be"
                self._add(self.tubes, item)
            case "time" if self.wrong_time or not is_now(item):  # "looked at it again just now"
                self._time(item, nxt)
            case "num" if phrase != "one" and not (
                self._is_a_digit(item) or self._is_both(item, phrase)
            ):  # "the 1030 one was at 1045"
                self._number(item, nxt)
            case "bad" | "alt":
                self.odd = True
            case "sep" if item.value in {",", ";", "."}:
                self.negated = False
        if item.role in {"num", "time"}:
            self.toward = False  # "make that 638 for bed 4": the bed of that line

    def _meant_before(self, item: Item, nxt: Item | None, phrase: str) -> None:
        """ "4B I meant. 80 at 1930": what stands alone before it is right."""
        for sides in (self.beds, self.nums) if phrase in MEANT and (nxt is None or nxt.role == "sep") else ():
            if sides.free and sides.free[-1].end == item.start and len(self.nums.all) < PAIR:
                self.meant = sides.free[-1]
                sides.now.append(sides.free.pop())

    def _is_a_digit(self, item: Item) -> bool:  # "extra zero on bed 5, should be 340"
        zero = item.amount == 0 and word(self.toks, item.start - 1) in TOO_MANY
        return zero or (bool(self.nums.now) and is_how_far(item, self.toks))

    def _is_both(self, item: Item, phrase: str) -> bool:  # "i had the two mixed up"
        return phrase in COUNTS and word(self.toks, item.start - 1) in BEFORE_COUNTS

    def _said_false(self, phrase: str) -> None:
        """ "515 was wrong, 551": the only number before it is the wrong one."""
        if phrase in SAID_FALSE and len(self.nums.all) == len(self.nums.free) == 1:
            self.nums.was.append(wrong := self.nums.free.pop())
            self.doubted |= wrong.full_clock and word(self.toks, wrong.start - 1) == "at"

    def _add(self, sides: Sides, item: Item, *, line: bool = False) -> None:
        """A value on its side: "not 1050" and "from 890" were wrong, "to 980" and "should be" are right."""
        if self.negated or item.link in {"not", "from"} or item.lead == "from" or line:
            self.negated = False
            sides.deny(item)
        elif self.turned or item.lead == "to" or item.link == "to" or self._is_told_right(sides, item):
            sides.now.append(item)
        else:
            sides.free.append(item)

    def _is_told_right(self, sides: Sides, item: Item) -> bool:
        """ "that 340 is bed 4 but the time was 1845", "wrong bed, it was 6"."""
        if not is_told_of(item, self.toks):
            return False
        if sides is self.beds:
            return self._is_right_bed(item)
        if sides is self.tubes:
            return not self.tubes.all
        return self.wrong_time and item.clocklike

    def _is_right_bed(self, item: Item) -> bool:
        alone = not (self.nums.all or self.times.all) and self.items[-1] is item  # "that was for bed 6"
        alone |= item is self.pointed or "wrong bed" in self.said
        return bool(self.beds.all) or belongs(self.items) or alone

    def _names_line(self, nxt: Item | None) -> bool:  # "the 1900 mark", not "to 1150 i read the wrong column"
        named = nxt is not None and nxt.role == "cue" and nxt.value in LINE_WORDS
        return nxt is not None and named and word(self.toks, nxt.end - 1) not in VERBS

    def _time(self, item: Item, nxt: Item | None) -> None:
        first = self.retold and not self.times.all  # "the 18:40 on bed 6 was taken at 1900"
        self._add(self.times, item, line=first or self._names_line(nxt))

    def _number(self, item: Item, nxt: Item | None) -> None:
        told = item.start < self.turn or (bool(self.nums.all) and (item.amount or HOURS) < HOURS)
        of_line = is_hour(item, self.items, self.toks)
        hour = (item.lead == "at" and told) or of_line
        near = of_line or item.within(LIST_REACH, self.arrived)
        timely = bool(item.clocks) and (item.clocklike or hour) and not item.unit and near
        by_place = item.lead in {"at", "timeword"} and not self._is_at_level(item)
        by_place |= of_line or self._names_line(nxt) or item.amount is None or self._is_the_one_from(item)
        if self._is_entered(item, nxt):
            timed = timely and self.wrong_time and item.full_clock
            (self.times if timed else self.nums).was.append(item)  # "wrong time, i put 1800"
        elif self._is_bed_of_line(item, nxt):
            self._add(self.beds, item)
        elif timely and self._is_line_of_pair(item):
            self._add(self.times, item, line=True)
        elif timely and self._is_retimed(item):
            self.times.now.append(item)
        elif is_other_hour(item, self.times.all):
            self.odd = True
        elif timely and self._is_denied_time(item):
            self.times.was = [item]
            self.times.free = [i for i in self.times.free if not self._is_same(i, item)]
        elif timely and not self._is_level_retimed(item) and (by_place or self._is_time_of_line(item)):
            self._time(item, nxt)
        elif item.amount is None or item.negative or item.unit == "bad":
            self.odd = True
        elif self._may_be_bed(item) and self._wants_bed(item):
            where = word(self.toks, item.start - 1) in {"for", "on", "in"} and len(self.tubes.all) == PAIR
            self.meant = item if self.toward or item is self.pointed else self.meant
            self._add(self.beds, item, line=where)
        elif item.label and not item.unit and word(self.toks, item.start - 1) in PLACED and self.beds.all:
            self._placed(item)
        elif self._may_be_right_bed(item):
            self._right_bed(item)
        else:
            self._add(self.nums, item)

    def _placed(self, item: Item) -> None:
        """ "charted 5's number on 6": the other bed, and no level; "was supposed to be on 6" is right."""
        if self.turned:
            self._add(self.beds, item)
        else:
            self.odd = True

    def _is_the_one_from(self, item: Item) -> bool:
        """ "the one from 1500 should be 754"."""
        line, of = word(self.toks, item.start - 2), word(self.toks, item.start - 1)
        return of in {"from", "of"} and line in LINES_SAID and item.full_clock

    def _is_at_level(self, item: Item) -> bool:
        """ "i meant bed 3 at 415": three digits, and no other number that may be the level."""
        others = [i for i in self.items if i.role in {"num", "time"} and i is not item and not i.label]
        alone = item.lead == "at" and len(item.digits) == FULL_HOUR - 1 and not others
        self.doubted |= alone and item.within(NEAR, self.arrived)
        return alone

    def _is_time_of_line(self, item: Item) -> bool:
        return self.wrong_time or self._names_its_line(item)

    def _is_level_retimed(self, item: Item) -> bool:
        """ "change the time of the 340 on 12 to 1845": beside a time in full, three digits are the level."""
        loose = not item.lead or (item.lead == "timeword" and word(self.toks, item.start - 1) in POINTING)
        short = len(item.digits) == FULL_HOUR - 1 and loose and not item.link
        full = any(i is not item and (i.full_clock or (i.role == "time" and i.clocklike)) for i in self.items)
        return self.wrong_time and short and full

    def _is_entered(self, item: Item, nxt: Item | None) -> bool:
        """ "entered 1050 on 12": the value that was told."""
        before = {word(self.toks, item.start - 1), word(self.toks, item.start - 2)}
        if item.full_clock and self._names_line(nxt) and not before.isdisjoint(POINTING):
            return False  # "i put the 1800 line on bed 17, should be bed 16"
        placed = word(self.toks, item.start - 1) in PLACED | {"at"}
        if self.moves or placed or is_retimed(self.items, self.turn):
            return False  # "the mark i sent for 1930", "put on 11"
        told = (
            bool(before & ENTERED)
            or self.toks.said[max(0, item.start - 2) : item.start] in IN_THE_LOG
            or (word(self.toks, item.start - 1) == "as" and item.start < self.turn)
            or (
                item.start < self.turn
                and bool(self.beds.all)
                and not is_before_entered(item, self.toks.said[: self.turn])
            )
        )
        last = word(self.toks, item.start - 1) in ENTERED and word(self.toks, item.start - 2) in {"i", "we"}
        if last and self.nums.now and not item.unit and not item.at:
            return True  # "should be 1180, i typed 1669"
        told |= is_misread(item, self.toks)
        placed = item.label is not None and "wrong bed" in self.said  # "recorded 4 on the wrong bed, its 5"
        return told and item.amount is not None and not (self.turned or item.at or placed)

    def _is_bed_of_line(self, item: Item, nxt: Item | None) -> bool:
        """ "412 1900 was 650 not 640": a label that looks like a time, right before the time of its line."""
        if self.contrast.of_beds and item.label is not None and not (item.unit or item.lead):
            return True  # "i put 640 on 6 instead of 2"
        alone = item.label is not None and not (item.lead or item.at or item.unit or self.beds.all)
        timed = nxt is not None and (nxt.role == "time" or (nxt.role == "num" and nxt.full_clock))
        timed |= item is self.items[0] and self._is_only_label(item)
        bed = alone and not self.turned and timed and item.clocklike and not item.full_clock
        return bed or is_retimed(self.items, self.turn)

    def _is_only_label(self, item: Item) -> bool:
        """ "219 closing is 18 not 15": one bed of the unit, and what its line was and is."""
        others = [i for i in self.items if i.role == "num" and i is not item]
        return len(others) > 1 and all(i.label is None for i in others)

    def _is_line_of_pair(self, item: Item) -> bool:
        """ "change left to right for 12 1900": both tubes are said, and the number is the line's time."""
        return len(self.tubes.all) == 2 and not self.times.all and is_full(item)

    def _is_retimed(self, item: Item) -> bool:
        """ "2000 mark was at 1930": a second clock time within 2 h of the line's is when it was read."""
        read = item.lead == "levelat" or (item.lead == "level" and item.at)  # "was really read at 1830"
        if read and len(self.nums.free) == 1 and not self.times.all:
            return item.full_clock and self._is_denied_behind(item)
        short = len(item.digits) == FULL_HOUR - 1 and not any(c.colon for c in item.clocks)
        if not read or short or len(self.times.all) != 1:
            return False  # "should be up to 700"
        line, now = (i.when(self.arrived, LIST_REACH).sure for i in (self.times.all[0], item))
        return line is not None and now is not None and abs(since(line, now)) <= RECENT

    def _is_denied_behind(self, item: Item) -> bool:
        """ "430 was at 1830 not 1900": beside a level, two clock times are when it was read and when not."""
        later = [i for i in self.items if i.start > item.start and i.role in {"num", "time"}]
        return len(later) == 1 and later[0].link == "not" and later[0].full_clock

    def _opens_pair(self, item: Item) -> bool:
        """ "time is 1845, and the level 430 not 1430": denied right behind a level that is right."""
        return any(i.start < item.start and i.start > self.times.now[-1].start for i in self.nums.all)

    def _is_same(self, one: Item, other: Item) -> bool:
        """Whether both say one moment: "the 1900 mark was at 1845, not 1900"."""
        return one.when(self.arrived, LIST_REACH) == other.when(self.arrived, LIST_REACH)

    def _is_denied_time(self, item: Item) -> bool:
        """ "was taken at 1845 not 1900": behind the right time, the wrong one."""
        if not (self.negated or item.link == "not") or is_typed_over(item, self.nums.now, self.arrived):
            return False
        if is_denied_time(self.items, self.toks):
            return True
        if self.times.was:
            return all(self._is_same(i, item) for i in self.times.was)
        return bool(self.times.now) and item.full_clock and not item.unit and not self._opens_pair(item)

    def _names_its_line(self, item: Item) -> bool:
        """ "correct bed 12 1900 to 1005": a bare clock time before what is right is the time of the line."""
        if item.lead or self.turned or self.negated or self.times.all or self._is_retyped_level(item):
            return False
        if self.nums.was and self.nums.was[0].link == "not" and not self.nums.free:
            return False  # "not 490, 1425"
        if is_typo(item, self.toks):
            self.doubted |= is_full(item) or item.within(RECENT, self.arrived)
            return False
        later = [i for i in self.items if i.start > item.start]
        right = next((i for i in later if i.role == "num"), None)
        told = [i for i in later if i.role == "time" and i.at]
        if told and (told[0].start == item.end + 1 or (right is not None and right.link == "to")):
            return False  # "the 1540 at 6:35 pm", "correct 1050 to 570 at 6:15 pm"
        if right is None and not any(i.role in {"bed", "tube"} for i in later):
            return False
        short = len(item.digits) == FULL_HOUR - 1 and item.digits[1:] != "00" and item.digits[0] != "0"
        timed = right is not None and right.at and right.clocklike
        if right is not None and timed and (short or right.end <= item.end + PAIR):
            return False  # "correction: bed 5 340 at 1800"
        if right is not None and not (right.lead or right.link or item.within(RECENT, self.arrived)):
            self.doubted |= right.full_clock and right.within(RECENT, self.arrived)  # "7 not 8 320 1900"
        if short and (right is None or (right.label is not None and right.link != "to")):
            return False  # "the 240 was for bed 7 not bed 6"
        other = right is not None and right.label is not None and (right.link != "to" or belongs(self.items))
        if right is None or other:  # "the 1050 was meant for 13": a level may name it too
            self.doubted |= not is_full(item) and not item.within(RECENT, self.arrived)
        if right is None:
            return True
        if [i.link for i in later if i.role == "num"] == ["not", "but"]:
            return True  # "1300 was not 45 but 54"
        if right.link == "not" or any(
            i.role == "cue" and i.value == "neg" and i.start < right.start for i in later
        ):
            return False
        denied = any(i.link == "not" for i in later)
        if denied and any(i.role == "time" or (i.lead == "at" and i.clocklike) for i in later):
            return False  # "445 at 1900, not 455"
        self.doubted |= may_be_retyped(item, right) and not denied
        return True

    def _is_retyped_level(self, item: Item) -> bool:
        """ "my 455 should be 445": three digits for three digits, of which neither begins a full hour."""
        right = next((i for i in self.items if i.start > item.start and i.role == "num"), None)
        found = [i for i in (item, right) if i is not None and i.lead in {"", "to"} and i.amount]
        both = [i for i in found if len(i.digits) == FULL_HOUR - 1]
        alone = not any(i.role == "time" for i in self.items)
        return alone and len(both) == 2 and not any(i.digits[0] == "0" or i.digits[1:] == "00" for i in both)

    def _may_be_right_bed(self, item: Item) -> bool:
        """ "entered 1050 on 12, meant 13", "219 should be 18", "412 should be 413": itself a bed."""
        placed = word(self.toks, item.start - 1) in PLACED or self.negated or item.link == "not"
        plain = item.label is not None and not (item.lead or item.unit or placed)
        if not plain or len(self.beds.all) >= PAIR:
            return False
        turned = self.turned or item.link == "to"
        return (self.toward and bool(self.nums.all)) or (turned and self._is_like_bed(item))

    def _is_like_bed(self, item: Item) -> bool:
        """Whether it is as long as the bed that was said; of short ones, where no other number is there."""
        label = self.beds.all[0].label or "" if self.beds.all else ""
        if len(label) >= LONG_LABEL:
            return len(label) == len(item.digits)
        others = [i for i in self.items if i.role in {"num", "time"} and i not in (item, *self.beds.all)]
        read = any(i.value in LINE_WORDS for i in self.items) or "should read" in self.said
        return bool(label) and not (others or read)

    def _right_bed(self, item: Item) -> None:
        """It is the bed if one was said and it is too small to be the level; else it is asked.

        "put 120 for 8 but its 12": a digit too many, or the other bed?
        """
        beside = self.beds.all and is_other_bed(item, self.nums.all, self.items, self.toks)
        if beside or ("wrong bed" in self.said and is_far_less(item, self.nums.all)):
            self.beds.now.append(item)
        else:
            self.odd = True

    def _may_be_bed(self, item: Item) -> bool:
        led = item.lead in {"", "to"} or (self.moves and "from" in {item.lead, item.link})
        return item.label is not None and led and not item.unit

    def _wants_bed(self, item: Item) -> bool:
        if self._may_be_right_bed(item):
            return False
        other = belongs(self.items) or self.negated
        last = self.beds.all[-1] if self.beds.all else None
        if last is not None and item.link == "not" and last.end + 1 == item.start:
            return True  # "was for 7 not 6"
        if last is not None and self.moves and item.link == "to":
            return True  # "move my 0300 from 5 to 6"
        return not self.beds.all or (len(self.beds.all) == 1 and not self.nums.all and other)


def _is_timeword(item: Item, toks: Toks) -> bool:
    return item.role == "cue" and item.value == "timeword" and "tim" in phrase_of(item, toks)
