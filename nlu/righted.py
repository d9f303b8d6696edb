"""What a correction comes to, once its pieces are sorted: the line that is wrong and what is right."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from .besideright import tells_more
from .corrections import LINE_WORDS, belongs, is_no_line, points_at_tube
from .items import FINDINGS, RECENT, Item
from .moments import LIST_REACH, since
from .neighbours import phrase_of
from .numbers import is_digits, word
from .patterns.leads import BED_WORDS
from .retiming import is_bare
from .roles import CHECK_LIMITS, OF_PATIENT, is_event
from .sides import TURNS, Sides
from .sorting import Sorted
from .statements import Corrected, Mark, Span, Statement, Unclear
from .unsettled import unsettled
from .whichline import Said, is_against_bed, is_far_back, is_time_denied, is_time_or_level

FALSE = frozenset({"wrong", "incorrect", "error", "typo", "mistyped", "mistake", "off"})
SAID_OF_IT = frozenset(
    {"that", "it", "was", "is", "that's", "thats", "a", "an", "in", "the", "my", "ml", "."}
)
POINTING = frozenset(
    {"the", "that", "my", "last", "previous", "earlier", "put", "entered", "sent", "charted", "was"}
)
"""Before the level these tell of a line that was sent."""
SLIPPED = frozenset({"sorry", "oops", "whoops", "apologies", "no", "wait", "actually", "mean", "meant"})
OVER = SLIPPED | {"scratch", "rather", "strike"}
CHANGED = frozenset({"change", "chg"})
TURNED = frozenset({"to", "from", "into", "should", "not", "instead", "than", "was", "wrong", "=", ">"})
"""Without one of these a change may be of the canister."""
OPEN = (TURNS - {"actually", "really"}) | {"that was", "need to correct", "to correct", "i need to correct"}
"""Behind these comes what is right."""
VALUES = frozenset({"num", "bed", "tube", "time", "bad", "alt", "other", "foreign"})
LOW = range(100, 1000)
HALTING = frozenset({"hang", "hold", "wait", "moment", "sec", "second", "minute", "brb", "later"})
"""Behind all values these say that more was to come."""
LOOKING = frozenset({"mark", "marking", "read", "check", "checking", "recheck", "measure"})
BUT_NOT = frozenset({"not", "than", "was", "from", "instead", "should", "meant"})
NAMED_LEVELS = frozenset({"level", "old", "new", "opens"})
"""Cues before a number after which it can be nothing but a level."""

SIDED = frozenset({"tube", "drain", "side", "one", "box", "canister"})
"""Behind "right" these say that it is a side."""


class Correction(Sorted):
    """A correction whose pieces are sorted by side."""

    def read(self) -> list[Statement | Unclear]:
        """The correction, or the question about it."""
        for k, item in enumerate(self.items):
            if 0 < self.turn < item.start:
                self.toward, self.turned = self.toward or not self.turned, True
            nxt = self.items[k + 1] if k + 1 < len(self.items) else None
            self.piece(item, nxt)
        self.odd |= self._ends_open()
        return [self._made()]

    def _ends_open(self) -> bool:
        """ "correct 1200 to": the right value never came."""
        last = phrase_of(self.items[-1], self.toks)
        changed = any(i.name == "corrected" and phrase_of(i, self.toks) in CHANGED for i in self.items)
        if changed and TURNED.isdisjoint(self.toks.words):
            return True  # "19 chg - 1890": the box, maybe
        unsaid = last.endswith("to") or last == "change" or self.said.endswith(" to") or self._is_unturned()
        return unsaid or self._breaks_off() or (last in TURNS and len(self.items) > 1 and self.meant is None)

    def _breaks_off(self) -> bool:
        """ "500 at 2130. Correction... hang on": what it was to be put right to never came."""
        values = [i.end for i in self.items if i.role in VALUES]
        last = max(values, default=0)
        points = [i.start for i in self.items if phrase_of(i, self.toks) in OPEN]
        rest = self.toks.said[last : len(self.toks)]
        if points and phrase_of(self.items[-1], self.toks) in OPEN - {"that was"}:
            points = []  # "340 at 1900, i meant"
        halts = not HALTING.isdisjoint(rest) and {"when", "if"}.isdisjoint(rest)
        return halts or (bool(values) and min(points, default=0) >= last)

    def _is_unturned(self) -> bool:
        """ "340 at 1900 should be higher": what is right is no value."""
        turns = [k for k, i in enumerate(self.items) if i.name == "corrected" and self._turns(i)]
        after = self.items[turns[-1] + 1 :] if turns and turns[-1] else ()
        return bool(after) and all(i.unread for i in after)

    def _turns(self, item: Item) -> bool:
        return item.role == "cue" and phrase_of(item, self.toks) in TURNS

    def _place(self, sides: Sides, level: Item | None) -> tuple[Item | None, Item | None]:
        """Which of two beds (times, tubes) the wrong line has; with a right level or time, one alone is its.

        But not the bed right behind "I meant".
        """
        was, now = sides.pair(alone_is_wrong=True)
        if now is not None and now is self.meant:
            return was, now
        return (now, None) if was is None and level is not None else (was, now)

    def _made(self) -> Statement | Unclear:
        was, level = self.nums.pair(alone_is_wrong=self._is_rebedded())
        bed, to_bed = self._place(self.beds, level or next(iter(self.times.now), None))
        if bed is None and to_bed is not None and self._only_says_where(to_bed, was, level):
            bed, to_bed = to_bed, None
        at, to_at = self._place(self.times, level)
        if at is None and to_at is not None and to_bed is not None and self._is_of_line(to_at):
            at, to_at = to_at, None
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
            spans=self._spans(bed=bed, to_bed=to_bed, was_ml=was, level_ml=level, at=at, to_at=to_at),
        )
        for slot, found in zip(("at", "to_at"), moments, strict=True):
            if found is not None and found.sure is None:
                return Unclear(
                    slot=slot, text=self.text, choices=found.values or found.nearest, statement=made
                )
        said = Said(was, level, bed, to_bed, at, to_at)
        return self._either_way(made, said) or self._doubted(made, bed) or made

    def _either_way(self, made: Corrected, said: Said) -> Unclear | None:
        """What must be asked because a number can be of two sorts: a time, a bed or a level."""
        was, level, bed, to_bed, at, _ = said
        retold = self.retold and any(is_bare(i, self.toks) for i in said.times)
        if retold or is_against_bed(said, self.items, self.toks):
            return Unclear(slot="kind", text=self.text, statement=Corrected())
        again = level is not None and bed is not None and _is_bed_again(level, bed)
        again |= self._may_be_to(bed, level) or any(self._is_apart(i, bed) for i in said.levels)
        again |= unsettled(said, self.items, self.toks)
        if again or self._is_when(level, was) or self._may_be_its_time(was, at):
            return Unclear(slot="level_ml", text=self.text, statement=replace(made, level_ml=None))
        righted = level is not None or to_bed is not None or made.to_tube is not None
        untold = bed is not None and was is None and righted and _may_be_wrong_level(at)
        untold |= is_time_denied(said, self.items, self.arrived)
        untold |= was is None and is_far_back(said, self.items, self.arrived)
        if self.doubted or untold or self._may_be_time(level) or self._may_be_times(was, level):
            return Unclear(slot="at", text=self.text, statement=replace(made, at=None))
        if (to_bed is not None or made.to_tube) and is_time_or_level(said, self.items, self.arrived):
            return Unclear(slot="at", text=self.text, statement=replace(made, was_ml=None, level_ml=None))
        return None

    def _only_says_where(self, bed: Item, was: Item | None, level: Item | None) -> bool:
        """ "that should be left tube, bed 19", "meant 2B 870, not 780": the line's bed, and no other one."""
        return any(t.start < bed.start for t in self.tubes.all) or not (was is None or level is None)

    def _spans(self, **said: Item | None) -> dict[str, Span]:
        """Where each value stands in the message."""
        places = ((slot, self.toks[i.start], self.toks[i.end - 1]) for slot, i in said.items() if i)
        return {slot: Span(first.start, last.end) for slot, first, last in places}

    def _doubted(self, made: Corrected, bed: Item | None) -> Unclear | None:
        """What must be asked of a correction whose times are sure."""
        if (made.bed and made.bed == made.to_bed) or (made.tube and made.tube == made.to_tube):
            return Unclear(slot="level_ml", text=self.text, statement=Corrected())
        told = self._told_over(made) or self._told_here(made)
        if told is not None:
            return told
        lost = self._wrong_without_right(made)
        if lost:
            return Unclear(slot=lost, text=self.text, statement=replace(made, level_ml=None))
        if self._may_be_levels(made):
            return self._bed_or_level(made)
        other = self._may_be_of_event() or self._may_be_of_another()
        if other or self._may_be_of_a_patient() or self._may_be_right():
            return Unclear(slot="kind", text=self.text, statement=Corrected())
        crowded = any(s.crowded for s in (self.beds, self.nums, self.times))
        if self.odd or crowded or (bed is not None and not bed.known):
            return Unclear(slot="level_ml", text=self.text, statement=made)
        whole = made.at is not None and made.level_ml is not None
        paired = made.tube is not None and made.to_tube is not None
        named = bool(self.turned or self.nums.all or self.times.all or paired or self.beds.now)
        named |= belongs(self.items)
        if made.bed is None and (whole or not named):
            return Unclear(slot="bed", text=self.text, statement=made)
        if not any((made.to_bed, made.to_tube, made.level_ml is not None, made.to_at)):
            return Unclear(slot="level_ml", text=self.text, statement=made)
        return None

    def _told_over(self, made: Corrected) -> Unclear | None:
        """ "to 560, no, 590": the right level told twice; "be about 500 by then" is a forecast."""
        planned = any(i.value == "plan" for i in self.items) and not self.toks.words.isdisjoint(LOOKING)
        if planned or ("by", "then") in pairwise(self.toks.said):
            return Unclear(slot="kind", text=self.text, statement=Statement(bed=made.bed))
        if len(self.nums.all) < 2 or self.turn:
            return None
        first, last = sorted(self.nums.all, key=lambda i: i.start)[:2]
        between = self.toks.said[first.end : last.start]
        late = any(i.role == "time" for i in self.items if i.end <= first.start) or self.toks.said[
            first.start - 1
        ] in {"to", "be"}
        if not late or OVER.isdisjoint(between) or not BUT_NOT.isdisjoint(between):
            return None
        choices = tuple(i.amount for i in (first, last) if i.amount is not None)
        return Unclear(
            slot="level_ml",
            text=self.text,
            choices=choices,
            statement=replace(made, was_ml=None, level_ml=None),
        )

    def _told_here(self, made: Corrected) -> Unclear | None:
        """ "bed 4 mark 340 at 1330. Sorry, that was bed 5": the line comes with the words that mend it."""
        line = max((i.end for i in (*self.nums.all, *self.times.all)), default=0)
        after = self.toks.said[line:]
        level = made.was_ml if made.was_ml is not None else made.level_ml
        whole = level is not None and (made.at is not None or "." in after)
        beds = [i for i in self.beds.all if i.end <= line]
        if whole and len(beds) == 2 and "meant" in self.toks.said[beds[0].end : beds[1].start]:
            choices = tuple(i.label for i in beds if i.label)  # "bed 6, I meant bed 16, is 420 at 1900"
            told = Mark(tube=made.tube, level_ml=level, at=made.at)
            return Unclear(slot="bed", text=self.text, choices=choices, statement=told)
        if not whole or SLIPPED.isdisjoint(after) or not POINTING.isdisjoint(self.toks.said[:line]):
            return None
        for slot, wrong, right in (("bed", made.bed, made.to_bed), ("tube", made.tube, made.to_tube)):
            sides = self.beds if slot == "bed" else self.tubes
            places = [i.start for i in sides.all]
            if wrong and right and len(places) == 2 and min(places) < line <= max(places):
                told = Mark(bed=made.bed, tube=made.tube, level_ml=level, at=made.at)
                told = replace(told, bed=None) if slot == "bed" else replace(told, tube=None)
                return Unclear(slot=slot, text=self.text, choices=(wrong, right), statement=told)
        return None

    def _is_of_line(self, time: Item) -> bool:
        """ "I wrote 3B but meant 3A for the 0100": the time of the line that is put right."""
        return "for" in self.toks.said[max(0, time.start - 2) : time.start]

    def _is_apart(self, number: Item | None, bed: Item | None) -> bool:
        """ "bed 4 was 1 040 not 1 004", "correct 1 523 to 1345": digits apart, one maybe the bed."""
        if number is None or number.end - number.start != 2 or not is_digits(self.toks, number.end - 1):
            return False
        return bed is not None or number is self.nums.all[0]

    def _is_when(self, level: Item | None, was: Item | None) -> bool:
        """ "line at 2000 was not 150": when the line was, and what it was is not said."""
        if level is None or was is None or level.unit or not level.full_clock:
            return False
        between = self.toks.said[level.end : was.start]
        at = level.start and self.toks.said[level.start - 1] == "at"
        return bool(at) and between in {("was", "not"), ("is", "not"), ("wasn't",), ("wasnt",), ("isn't",)}

    def _may_be_its_time(self, was: Item | None, at: Item | None) -> bool:
        """ "the mark at 1600 was the right tube not the left": of four o'clock, or of 1,600 mL?"""
        if was is None or at is not None or was.unit or not was.full_clock:
            return False
        return word(self.toks, was.start - 1) == "at"

    def _may_be_times(self, was: Item | None, level: Item | None) -> bool:
        """ "1050 was at 1800 not 1900": both are clock times of the last hours, and no word says a level."""
        both = [i for i in (was, level) if i is not None and i.full_clock and not i.unit]
        named = any(i.lead in NAMED_LEVELS for i in both)
        lately = all(i.within(RECENT, self.arrived) for i in both)
        if level is not None and level.at:  # "mark was at 1421 not 1200"
            lately |= level.within(RECENT, self.arrived)
        return len(both) == 2 and not named and lately

    def _may_be_time(self, level: Item | None) -> bool:
        """ "1900 reading was really 1800", "eighteen thirty": the right level, or the right time of it."""
        denied = [i for i in self.nums.was if i.clocklike and i.within(RECENT, self.arrived)]
        beside = self.times.all or denied  # "the bed 6 line was 1830 not 1800"
        if level is None or level.unit or len(beside) != 1:
            return False
        if beside[0].at and beside[0].start == level.end + 1:
            return False  # "should be 1640 at 1800": that time is its own
        if not (level.full_clock or level.spoken_clock or any(clock.colon for clock in level.clocks)):
            return False
        line, now = (i.when(self.arrived, LIST_REACH).sure for i in (beside[0], level))
        return line is not None and now is not None and abs(since(line, now)) <= RECENT

    def _may_be_to(self, bed: Item | None, level: Item | None) -> bool:
        """ "correct that two six forty", "correct bed six two seven": to 640, to 7, and no bed 2, no 27."""
        word_of_bed = bed is None or word(self.toks, bed.start - 1) in BED_WORDS
        of_bed = bed is not None and not word_of_bed and word(self.toks, bed.start) == "two"
        of_level = level is not None and word(self.toks, level.start) == "two" and level.start > 0
        behind = bed is not None and level is not None and level.start == bed.end
        return (of_bed and bed is not None and bed.end - bed.start == 1) or (of_level and behind)

    def _is_rebedded(self) -> bool:
        """ "385 for bed 4, should be bed 14", "160 was right not left", "that 340 is bed 4 but the time was
        1845": it says which line was wrong."""
        timed = (self.wrong_time or self.turned or self.times.was) and not self.nums.now
        free, right = self.nums.free, self.times.now if timed else []
        right = right or ([self.meant] if self.meant is not None else [])
        names = len(free) == 1 and bool(right) and free[0].start < right[0].start
        beside = len(free) == 1 and self._is_of_line(free[0])  # "bed 9 not bed 8 for the 505"
        names |= beside and bool(self.beds.was) and len(self.beds.all) == 2
        names |= points_at_tube(self.items, self.toks)
        given = belongs(self.items) and bool(self.beds.now or self.tubes.now)  # "the 540 belongs to bed 11"
        return names or given or self.moves or any(map(self._only_names, (self.beds, self.tubes)))

    def _only_names(self, sides: Sides) -> bool:
        """Whether the one number stands before the right one of two beds, or of two tubes."""
        free, right = self.nums.free, sides.now or (sides.free if sides.was else [])
        return len(free) == 1 and bool(right) and free[0].start < right[0].start and len(sides.all) == 2

    def _may_be_levels(self, made: Corrected) -> bool:
        """ "13 not 12", "oops meant 14": small numbers with no word bed and nothing else said."""
        alone = not (self.nums.all or self.times.all or self.tubes.all)
        answers = any(i.role == "cue" and i.value == "no" for i in self.items)
        named = self.named_beds or "wrong bed" in self.said
        return alone and made.to_bed is not None and not named and not answers

    def _bed_or_level(self, made: Corrected) -> Unclear:
        """ "Oops meant 14": bed 14, or a line of 14 mL?"""
        right, wrong = made.to_bed or "", made.bed or "0"
        if not (right.isdecimal() and wrong.isdecimal()):
            return Unclear(slot="kind", text=self.text, statement=Corrected())
        level = Corrected(level_ml=int(right), was_ml=int(wrong) if made.bed else None)
        return Unclear(slot="kind", text=self.text, choices=("to_bed", "level_ml"), readings=(made, level))

    def _may_be_of_event(self) -> bool:
        """ "the clamp on 12 was at 1400 not 1500": of an event, and no level."""
        named = any(i.unit or i.lead in NAMED_LEVELS for i in self.nums.all)
        went = any(is_event(i) and i.name in OF_PATIENT for i in self.items)
        paired = len(self.tubes.all) > 1  # "right clamped not left"
        return (went or (any(map(is_event, self.items)) and not named)) and (bool(self.nums.all) or paired)

    def _may_be_of_a_patient(self) -> bool:
        """ "move bed 5 1800 to bed 6": who moved then, or whose the line of that time is."""
        named = any(i.value in LINE_WORDS for i in self.items) or not POINTING.isdisjoint(self.toks.said)
        return self.moves and not named

    def _may_be_right(self) -> bool:
        """ "that 640 on 7 was right": it was no mistake, or of the right tube?"""
        right = [i for i in self.items if i.role == "tube" and i.name == "right"]
        bare = any(
            word(self.toks, i.start - 1) != "the" and word(self.toks, i.end) not in SIDED for i in right
        )
        return bare and points_at_tube(self.items, self.toks)

    def _may_be_of_another(self) -> bool:
        """ "suction should be 20", "no, that was the foley", "due a change": of something else."""
        asks = any(i.role == "cue" and i.value == "ask" and i.name == "due" for i in self.items)
        denied = any(i.role == "cue" and i.value == "neg" for i in self.items)
        asks |= denied and any(i.lead == "amount" for i in self.nums.all)  # "never drained 200"
        asks |= tells_more(self.items, self.nums, self.times, self.toks)
        looked = FINDINGS | CHECK_LIMITS.keys()  # "5 clear, 9 has the leak", "suction should be 20 not 10"
        asks |= any(i.role == "cue" and i.value in looked for i in self.items)
        return asks or any(is_no_line(i) or i.role == "foreign" for i in self.items)

    def _wrong_without_right(self, made: Corrected) -> str:
        """ "bed 12 mark 1050 at 1900 - wrong bed": the slot that is wrong with no word of what is right."""
        if made.level_ml is not None and self._ends_wrong():
            return "level_ml"
        wrong = (("wrong bed", "to_bed"), ("wrong tube", "to_tube"))
        said = self.said.replace("time wrong ", "")  # "time wrong bed 23: 1806 not 1758"
        return next((slot for what, slot in wrong if what in said and getattr(made, slot) is None), "")

    def _ends_wrong(self) -> bool:
        """ "560 was wrong": the only number, and that it is wrong."""
        only = self.nums.all
        rest = {t.text for t in self.toks[only[-1].end :]} if len(only) == 1 else set()
        if rest and word(self.toks, only[-1].start - 1) == "be":
            return False  # "0300 should be 513 typo"
        return bool(FALSE & rest) and rest <= FALSE | SAID_OF_IT


def _may_be_wrong_level(at: Item | None) -> bool:
    """ "correct bed 6 600 to 640": a line of 600 that should be 640, or the line of six?"""
    if at is None or at.at or at.lead or at.unit:
        return False
    return at.amount in LOW and at.digits[:1] != "0"


def _is_bed_again(level: Item, bed: Item) -> bool:
    """ "6 right at 0700 should have been 6 left": the bed once more, and no level."""
    return (
        level.label is not None
        and level.label == bed.label
        and not (level.unit or level.lead in NAMED_LEVELS)
    )
