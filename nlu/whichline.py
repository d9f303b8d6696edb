"""Which line a correction points at: a bare number that is its time, its level, or a bed.

Called by `sorting` and `righted`; what may be either is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import NamedTuple

from .corrections import LINE_WORDS
from .entered import ENTERED
from .items import FULL_HOUR, RECENT, Item
from .moments import BARE_REACH, LIST_REACH, REACH, since
from .numbers import Toks, word

FAR_OVER = 10
"""A level so many times what follows was not mistyped for it."""
LAST_HOUR, HUNDRED = 12, 100
COPULAS = frozenset({"is", "was", "s", "it's", "its", "read", "reads"})
"""Before "at" these say what a line is at."""
CONTRASTED = frozenset({"instead", "rather"})
LED = frozenset({"", "to"})
WENT = frozenset({"went", "gone", "landed", "ended", "filed"})
"""What was sent did so: "it went under bed 12 instead of bed 8"."""
PLACES = frozenset({"num", "bed", "time", "tube"})


class Said(NamedTuple):
    """What a correction says was wrong and what is right."""

    was: Item | None
    level: Item | None
    bed: Item | None
    to_bed: Item | None
    at: Item | None
    to_at: Item | None

    @property
    def levels(self) -> tuple[Item, ...]:
        """The wrong level and the right one, where they were said."""
        return tuple(i for i in (self.was, self.level) if i is not None)

    @property
    def times(self) -> tuple[Item, ...]:
        """The time of the wrong line and the right one, where they were said."""
        return tuple(i for i in (self.at, self.to_at) if i is not None)


def is_time_or_level(said: Said, items: tuple[Item, ...], arrived: datetime) -> bool:
    """ "the 1610 on bed 8 belongs to bed 10": the line of ten past four, or of 1,610 mL?

    A full hour is the time, and so is one right behind its bed: "bed 8 1610 should be bed 10".
    """
    told = [i for i in (said.was, said.level, said.at) if i is not None]
    if len(told) != 1 or not _is_either(told[0]):
        return False
    line = told[0]
    k = next((k for k, i in enumerate(items) if i.start == line.start), 0)
    before = [i for i in items[:k] if i.role != "tube"][-1:]
    behind_bed = any(i.label is not None and i.role in {"bed", "num"} for i in before)
    behind_bed &= items[k - 1].end == line.start
    full = all(not clock.minute for clock in line.clocks)
    told_when = behind_bed or is_named(line, items) or (full and line is said.at)
    return line.within(REACH if full else RECENT, arrived) and not told_when


def is_against_bed(said: Said, items: tuple[Item, ...], toks: Toks) -> bool:
    """ "sorry 411 not 215" where 215 is a bed, "2: not 10, 250": a level against what may be a bed."""
    was, level, bed, to_bed, _, _ = said
    of_it = was is not None and was.label is not None and was.lead not in LED
    if to_bed is not None and bed is None and of_it:
        return True  # "the 0720 line of 222 belongs to 223"
    if to_bed is not None and to_bed.role == "num" and was is not None:
        named = bed is not None and bed.role == "bed" and bed.start > to_bed.start
        return named or (bed is None and not to_bed.link)  # not "the 340 should be for 12"
    if bed is None or bed.role != "num" or not (bed.link == "not" or word(toks, bed.start - 2) in CONTRASTED):
        return False
    before = next((i for i in reversed(items) if i.end <= bed.start and i.role in PLACES), None)
    like = before is not None and before.role == "num" and before.label is None and not before.at
    apart = to_bed is None or bed.start != to_bed.end + 1 or said.at is None  # "bed 7 not 10, 1430"
    return like or (level is not None and (apart or level.link == "but"))


def is_time_denied(said: Said, items: tuple[Item, ...], arrived: datetime) -> bool:
    """ "9 was 640 at 1830 not 1900": of seven, or 1,900 mL? Right behind a time near it, either."""
    told = [i for i in (said.was, said.at) if i is not None and i.link == "not" and _is_either(i)]
    if not told or said.level is None:
        return False
    denied = told[0]
    time = next((i for i in reversed(items) if i.end <= denied.start and i.role in PLACES), None)
    if time is None or time is said.level or not (time.at or time.role == "time"):
        return False
    right, wrong = (i.when(arrived, LIST_REACH).sure for i in (time, denied))
    return right is not None and wrong is not None and abs(since(right, wrong)) <= RECENT * 2


def is_far_back(said: Said, items: tuple[Item, ...], arrived: datetime) -> bool:
    """ "5 1515 should read 460" at 0703, "that 1201 should be 830" at 1841: a line of then, or 1,515 mL?"""
    line, level = said.at, said.level
    if line is None or level is None or not _is_either(line) or is_named(line, items):
        return False
    found = line.when(arrived, LIST_REACH).sure
    full = all(not clock.minute for clock in line.clocks) or line.digits.startswith("0")
    other = (line.amount or 0) > FAR_OVER * (level.amount or 0)
    return found is not None and since(found, arrived) > (RECENT * 3 if full or other else RECENT)


def is_named(line: Item, items: tuple[Item, ...]) -> bool:
    """ "the 1201 line": whether a word for a line stands behind it."""
    behind = next((i for i in items if i.start >= line.end), None)
    return behind is not None and behind.role == "cue" and behind.value in LINE_WORDS


def is_other_bed(number: Item, levels: Sequence[Item], items: tuple[Item, ...], toks: Toks) -> bool:
    """ "entered 1050 on 12, meant 13": the bed, where nothing was told between one and the other.

    "the 1180 at 1107 on 19 should be 20" may be a line of 20 mL.
    """
    before = [i for i in items if i.end <= number.start and i.role in {"num", "bed", "time"}][-1:]
    placed = any(i.label is not None for i in before) and before[:1] != list(levels[:1])
    entered = not (ENTERED | {"meant"}).isdisjoint(toks.said[: number.start])
    entered &= word(toks, number.start - 1) != "be"  # "i put 1744 for bed 1, it should be 10"
    return placed and entered and is_far_less(number, levels)


def is_before_entered(time: Item, said: tuple[str, ...]) -> bool:
    """ "bed 24 1837 i wrote 640, meant 760": when the line was, before the number that was entered."""
    words = said[time.end :]
    return time.full_clock and any(w in ENTERED and k + 1 < len(words) for k, w in enumerate(words))


class Contrast(NamedTuple):
    """What stands behind "instead of", and what before it."""

    right: bool = False
    unsure: bool = False
    of_beds: bool = False


def contrast(cue: Item, items: tuple[Item, ...], toks: Toks) -> Contrast:
    """ "i wrote 1050 instead of 1120", "i put 640 on 6 instead of 2": behind what was entered comes what is
    right; "put the 1800 mark on 6 instead of 2" may be what is to be done."""
    said = toks.said[: cue.start]
    entered = next((k for k in reversed(range(len(said))) if said[k] in ENTERED | WENT), None)
    last = next((i for i in reversed(items) if i.end <= cue.start and i.role in {"num", "bed"}), None)
    if entered is None or last is None or "should" in said[:entered]:
        return Contrast()
    of_bed = last.role == "bed" or (last.label is not None and last.link in {"on", "for", "in"})
    if of_bed:
        mine = said[entered - 1 : entered] in {("i",), ("we",)} or said[entered] in WENT
        return Contrast(right=mine, unsure=not mine, of_beds=True)
    return Contrast(right=entered >= last.start - 1 - (said[entered + 1 : entered + 2] == ("as",)))


def is_typo(number: Item, toks: Toks) -> bool:
    """ "bed 20: 1420 was a typo, 580": a number that was typed, and no time of the line."""
    behind = toks.said[number.end + 1 : number.end + 3]
    return behind in {("a", "typo"), ("a", "mistake")} and number.digits[:1] != "0"


def is_far_less(number: Item, levels: Sequence[Item]) -> bool:
    """Whether it is far too small for the level that was told, and no digit was only left out of it."""
    was = levels[0] if levels else number
    typed = iter(was.digits)
    mistyped = all(digit in typed for digit in number.digits)
    return (was.amount or 0) >= FAR_OVER * max(1, number.amount or 0) and not mistyped


def is_hour(number: Item, items: tuple[Item, ...], toks: Toks) -> bool:
    """ "correct bed 22 at 3 to 1240": the bare hour is when the line was; "at 12 to 120" left out a digit."""
    told = number.lead == "at" or (number.lead == "level" and number.at)
    if not told or word(toks, number.start - 2) in COPULAS or not 0 < (number.amount or 0) <= LAST_HOUR:
        return False
    levels = (i for i in items if i.role == "num" and i is not number and (i.amount or 0) >= HUNDRED)
    return any(_is_no_slip(number, i) for i in levels)


def _is_no_slip(number: Item, level: Item) -> bool:
    typed = iter(level.digits)
    return len(level.digits) > len(number.digits) + 1 or any(digit not in typed for digit in number.digits)


def is_typed_over(number: Item, right: Sequence[Item], arrived: datetime) -> bool:
    """ "should be 1240 at 3 not 1340": a digit or two swapped ones off the level, hours ago."""
    return (
        len(right) == 1
        and not number.within(BARE_REACH, arrived)
        and _is_slip(number.digits, right[0].digits)
    )


def _is_slip(wrong: str, right: str) -> bool:
    if len(wrong) != len(right) or wrong.startswith("0"):
        return False
    apart = [k for k in range(len(wrong)) if wrong[k] != right[k]]
    return len(apart) == 1 or (len(apart) == 2 and sorted(wrong) == sorted(right))


def _is_either(number: Item) -> bool:
    """Whether it is written as a whole clock time and as a level."""
    bare = number.role == "num" and number.lead in LED and not (number.unit or number.at)
    return bare and len(number.digits) == FULL_HOUR and number.full_clock and number.digits[0] != "0"


def is_other_hour(number: Item, times: Sequence[Item]) -> bool:
    """ "was 340 at 3 not 4": at another hour, or another level."""
    bare = number.link == "not" and not (number.unit or number.clocklike) and bool(times)
    return bare and not times[-1].clocklike and times[-1].end + 1 == number.start


def is_full(item: Item) -> bool:
    """Whether it is a full hour, or led by a zero: of four digits surely a time."""
    return any(c.minute == 0 for c in item.clocks) or item.digits.startswith("0")


def may_be_retyped(item: Item, right: Item) -> bool:
    """ "1030 to 1005": a level typed again, or the time of the line; only full hours are surely times."""
    return not is_full(item) and right.lead in {"to", ""} and len(item.digits) == len(right.digits)
