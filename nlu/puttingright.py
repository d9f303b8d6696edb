"""A line that was wrong, put right in any order and any words: "right on paper (340) and wrong here (430)".

What is wrong and what is right is told by the words beside each value, where every word of its clause is one
that a nurse puts a line right with, and the clauses without a value hold nothing doubtful. Called by `read`
for typed messages that would be asked.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import timedelta
from itertools import pairwise
from typing import NamedTuple

from .again import Again
from .corrections import MOVING
from .entered import ENTERED
from .entities import Value, may_be_clock, values
from .items import FINDINGS
from .moments import since
from .numbers import Toks, is_digits, word
from .patterns.puttingright import (
    BY_ME,
    BY_OTHERS,
    DENIED_BEFORE,
    DOUBTFUL,
    ENTERED_BEFORE,
    GIVEN_BEFORE,
    LIKELY_RIGHT,
    MEANT_BEFORE,
    MENDING,
    MISTYPED_BEHIND,
    NEUTRAL,
    POINTED,
    PUT_BEFORE,
    PUT_TO,
    RIGHT_BEHIND,
    SENT_AT,
    SLIPS,
    TYPED_BEFORE,
    WRONG_BEHIND,
)
from .roles import EVENTS
from .statements import Corrected, Span
from .verdict import Outcome

STOPS = frozenset({".", ",", ";", "!", "?", "(", ")", ":", "-"})
JOINTS = frozenset({"and", "but", "so", "when", "where", "cos", "because", "since", "bc", "as"})
ANSWERS = frozenset({"yes", "yeah", "yep", "no", "nope", "nah", "correct", "confirmed", "confirm", "ok", "y"})
BEFORE_PLACE = frozenset({"for", "on", "in", "under", "at", "of", "by"})
BED_LED = frozenset({"on", "for", "in", "under", "from"})
TOLD_LED = frozenset({"its", "it's", "is", "was", "not", "meant", "be", "than"})
LONG_LABEL = 3
MISTIMED = timedelta(hours=4)
TIMELY = frozenset({"time", "times", "retime", "hrs", "taken", "late", "clock", "when"})
OF_A_CHANGE = frozenset(
    {"out", "swap", "swapped", "replace", "replaced", "change", "changed", "switch", "move"}
)
OF_A_CHANGE |= {"moved", "shift", "went", "goes", "go"}
OF_TIME = frozenset({"time", "times", "timed", "retime", "late", "clock", "watch"})
MOST_WORDS = 60
PAIR = 2

_MENDED = """
not never digit digits retime is was instead rather than wrong meant typo mistake slip put sent wrote typed
said had entered charted logged texted from change correct correction fix amend edit update alter replace
replaced told gave swap make should shd shoud ought out misread really called send belongs belong goes
"""
MENDED = frozenset(_MENDED.split())
"""Without one of these nothing is put right."""


class Side(NamedTuple):
    """What is wrong and what is right of one sort."""

    was: Value | None = None
    now: Value | None = None
    sure: bool = False
    """Whether words of denial or of putting right stand beside them, and not only what was sent."""
    said: bool = False
    """Whether both have such words of their own."""
    only: bool = False
    """Whether what is right was said alone: "goes to the posterior one"."""

    @property
    def changes(self) -> bool:
        """Whether something of this sort is put right."""
        return self.only or (self.was is not None and self.now is not None)


class Words(NamedTuple):
    """What the words beside a value say of it."""

    denied: bool
    entered: bool
    put_from: bool
    pointed: bool
    meant: bool
    right: bool

    @property
    def wrong(self) -> bool:
        """Whether they say that it was wrong."""
        return self.denied or self.entered or self.put_from


class Told(NamedTuple):
    """What is wrong and what is right of each sort."""

    bed: Side
    tube: Side
    num: Side
    time: Side


def put_right(again: Again) -> Outcome:
    """The correction that a message is; nothing where it is none, or may be more than one."""
    toks = again.toks
    said = " ".join(toks.said[: len(toks)])
    if len(toks) > MOST_WORDS or (MENDED.isdisjoint(toks.words) and not SLIPS.search(said)):
        return ()
    if DOUBTFUL.search(said) or _asks(toks) or (BY_ME.search(said) and BY_OTHERS.search(said)):
        return ()
    found = values(again)
    if not found or _is_answer(toks, found):
        return ()
    made = [each for told in _sorted(toks, found) if (each := _made(again, told)) is not None]
    return tuple(made[:1]) if made and all(each == made[0] for each in made) else ()


def _is_answer(toks: Toks, found: Sequence[Value]) -> bool:
    """ "yes 340 not 430": what was asked is answered, and no bed is said."""
    return word(toks, 0) in ANSWERS and not any(v.sort == "bed" for v in found)


def _asks(toks: Toks) -> bool:
    """A question that bids nothing: "can somebody change what i put?" bids."""
    if "?" not in toks.words:
        return False
    return not any(word(toks, k) in {"can", "could"} for k in range(toks.said.index("?")))


def _sorted(toks: Toks, found: tuple[Value, ...]) -> Iterator[tuple[Value, ...]]:
    """The values, and again with bare numbers taken for beds, or for times, where the words allow it."""
    yield found
    placed = {v.end for v in found if v.sort == "bed"}
    behind = tuple(v._replace(sort="time") if v.at is not None and v.start in placed else v for v in found)
    if behind != found and sum(v.sort == "num" for v in behind) == PAIR:
        yield behind  # "typed 640 when it was 460, bed 4 1830"
    as_beds = tuple(_as_bed(toks, v) for v in found)
    if any(v.sort == "num" for v in as_beds):  # "i put bed 5 120 but its 12": 12 mL, perhaps
        as_beds = tuple(_as_bed(toks, v) if word(toks, v.start - 1) in BED_LED else v for v in found)
    beds = sum(v.sort == "bed" for v in as_beds)
    entered = bool(placed) and not toks.words.isdisjoint(ENTERED | MOVING)
    bedded = as_beds != found and beds <= PAIR and entered
    if bedded:
        yield as_beds
    timed = any(v.sort == "time" for v in found) or not TIMELY.isdisjoint(toks.words)
    for each in (found, as_beds)[: PAIR if bedded else 1] if timed else ():
        told = tuple(v._replace(sort="time") if v.sort == "num" and v.at is not None else v for v in each)
        if told != each and not any(v.sort == "num" for v in told) and _are_near(told):
            yield told


def _are_near(found: Sequence[Value]) -> bool:
    """Whether two times are as far apart as a line is mistimed."""
    moments = sorted(v.at for v in found if v.sort == "time" and v.at is not None)
    return len(moments) > 1 and since(moments[0], moments[-1]) <= MISTIMED


def _as_bed(toks: Toks, value: Value) -> Value:
    """ "meant 3 when i said bed 5", "put on 212": a bare number as the bed that it may be."""
    short = len(value.text) < LONG_LABEL or word(toks, value.start - 1) in BED_LED | TOLD_LED
    bed = value.sort == "num" and value.label is not None and short
    return value._replace(sort="bed", text=value.label or "") if bed else value


def _made(again: Again, found: tuple[Value, ...]) -> Corrected | None:
    toks = again.toks
    sides = {sort: _side(toks, found, sort) for sort in ("bed", "tube", "num", "time")}
    told = [side for side in sides.values() if side is not None]
    if len(told) < len(sides) or not _is_plain(again, found):
        return None
    return _corrected(again, found, Told(*told))


def _corrected(again: Again, found: tuple[Value, ...], told: Told) -> Corrected | None:
    bed, tube, num, time = told
    changed = [side for side in (bed, tube, num, time) if side.changes]
    if not changed or (len(changed) > 1 and not _are_told_apart(changed)):
        return None
    if tube.only and num.changes:
        return None  # "i meant left 640 not 460"
    if num.only and len(changed) > 1:
        return None
    level, was = (num.now, num.was) if num.changes else (None, num.now)
    if not _is_sure_of_time(again.toks, time, num):
        return None
    if _may_be_times(again, was, level, time) or any(_may_be_beds(v, found) for v in (was, level)):
        return None
    line, right = (time.was, time.now) if time.changes else (time.now, None)
    of_tube, to_tube = (tube.was, tube.now) if tube.changes else (tube.now, None)
    of_bed, to_bed = (bed.was, bed.now) if bed.changes else (bed.now, None)
    return Corrected(
        bed=_text(of_bed),
        to_bed=_text(to_bed),
        tube=_text(of_tube),
        to_tube=_text(to_tube),
        was_ml=int(was.text) if was else None,
        level_ml=int(level.text) if level else None,
        at=line.at if line else None,
        to_at=right.at if right else None,
        spans=_spans(again.toks, was_ml=was, level_ml=level, at=line, to_at=right),
    )


def _is_sure_of_time(toks: Toks, time: Side, num: Side) -> bool:
    """ "the mark at 1700 was the left", "bed 8 at 1830 not 1815": where nothing shows a time, a level."""
    said = [v for v in (time.was, time.now) if v is not None]
    if not said or not OF_TIME.isdisjoint(toks.words):
        return True
    if not time.changes:
        return said[0].sure or num.now is not None or word(toks, said[0].start - 1) not in {"at", "@"}
    denied = time.was is not None and word(toks, time.was.start - 1) == "not"
    return all(v.sure for v in said) or (denied and any(v.sure for v in said))


def _are_told_apart(changed: Sequence[Side]) -> bool:
    """ "bed 4 at 1800 is 340 and bed 6 at 1805 is 410" may be two; "bed 6 not 4, 340 not 410" is one."""
    if not all(side.sure for side in changed):
        return False
    order = sorted((v.start, k) for k, side in enumerate(changed) for v in side[:2] if v is not None)
    turns = sum(a[1] != b[1] for a, b in pairwise(order))
    return turns == len(changed) - 1 or all(side.said for side in changed)


def _text(value: Value | None) -> str | None:
    return value.text if value is not None else None


def _spans(toks: Toks, **said: Value | None) -> dict[str, Span]:
    return {slot: Span(toks[v.start].start, toks[v.end - 1].end) for slot, v in said.items() if v}


def _may_be_times(again: Again, was: Value | None, level: Value | None, time: Side) -> bool:
    """ "change 1830 to 640", "the 300 on bed 7": the line of then, or of so many mL?"""
    arrived, toks = again.ward.arrived, again.toks
    timed = time.was is not None or time.now is not None
    if was is not None and not timed and not _is_entered(toks, was):
        short = len(was.text) == LONG_LABEL
        pointed = not short or word(toks, was.start - 1) in {"the", "that", "my"}
        if pointed and may_be_clock(was, arrived, 6 if short else 12) and not _is_denied(toks, was):
            return True
    bare = [v for v in (was, level) if v is not None and may_be_clock(v, arrived, 4) and v.at is not None]
    return len(bare) == PAIR or (bool(bare) and bare[0] is level and timed and not _is_entered(toks, was))


def _is_denied(toks: Toks, number: Value) -> bool:
    """ "not 1830": beside what is right it is a level as that is."""
    return word(toks, number.start - 1) in {"not", "than", "of", "never"}


def _is_entered(toks: Toks, number: Value | None) -> bool:
    """ "i had 1830": what was sent is a level."""
    if number is None:
        return False
    said = " ".join(toks.said[: number.start]) + " "
    behind = " ".join(toks.said[number.end : len(toks)])
    mistyped = MISTYPED_BEHIND.match(behind) is not None and number.text[-2:] != "00"
    return mistyped or TYPED_BEFORE.search(said) is not None or ENTERED_BEFORE.search(said) is not None


def _may_be_beds(number: Value | None, found: Sequence[Value]) -> bool:
    """Whether a bare level is a bed of the unit as well: a short one, or where no bed is said by its word."""
    named = any(v.sort == "bed" for v in found)
    return number is not None and number.label is not None and (len(number.text) < LONG_LABEL or not named)


def _side(toks: Toks, found: Sequence[Value], sort: str) -> Side | None:
    """What is wrong and what is right of one sort; nothing where the words do not say it, or say it twice."""
    mine = [v for v in found if v.sort == sort]
    kinds = list(dict.fromkeys(map(_what, mine)))
    if not mine:
        return Side()
    if len(kinds) == 1 and sort == "num":
        return _only_number(toks, found, mine[0])
    if len(kinds) == 1:
        before = _beside(toks, found, sort, mine[0])[0]
        alone = sort == "tube" and len(mine) == 1 and GIVEN_BEFORE.search(before) is not None
        return Side(now=mine[0], only=alone, sure=alone)
    if len(kinds) > PAIR or len(mine) > PAIR + 1:
        return None
    said = [_said_of(toks, found, sort, v) for v in mine]
    wrong = [v for v, words in zip(mine, said, strict=True) if words.wrong]
    right = [v for v, words in zip(mine, said, strict=True) if words.right or words.meant]
    if not wrong and sort != "num" and len(right) == 1:
        wrong = [v for v, words in zip(mine, said, strict=True) if words.pointed and v not in right]
    names = [set(map(_what, each)) for each in (wrong, right)]
    if len(names[0]) != 1 or names[0] & names[1]:
        return None
    now = next(v for v in mine if _what(v) not in names[0])
    denied = any(words.denied for words in said)
    meant = any(words.meant for words in said)
    first = now.start < wrong[0].start
    alone = _is_told_first(toks, found, now) if first else denied
    if not (names[1] or (alone and not (first and denied))):
        return None
    return Side(wrong[0], now, denied or meant, bool(names[0] and names[1]))


def _only_number(toks: Toks, found: Sequence[Value], number: Value) -> Side:
    """ "misread the scale. bed 4 reads 340": beside a slip, what is right; else what names a line."""
    words = _said_of(toks, found, "num", number)
    slip = SLIPS.search(" ".join(toks.said[: len(toks)])) is not None
    led = SLIPS.search(" ".join(toks.said[: number.start])) is not None and len(found) == PAIR
    right = slip and not words.wrong and (words.right or words.meant or led)
    placed = sum(v.sort == "bed" for v in found) == 1 and len({v.sort for v in found}) == len(found)
    right &= placed and number.label is None and (number.at is None or number.unit)
    return Side(now=number, only=right, sure=right)


def _is_told_first(toks: Toks, found: Sequence[Value], number: Value) -> bool:
    """ "recheck bed 4: 495, i had 690": right behind its bed, and what can be no time and no bed."""
    placed = number.start - (word(toks, number.start - 1) == ":") in {v.end for v in found if v.sort == "bed"}
    return placed and number.sort == "num" and number.at is None and number.label is None


def _what(value: Value) -> object:
    return value.at if value.sort == "time" else value.text


def _said_of(toks: Toks, found: Sequence[Value], sort: str, value: Value) -> Words:
    """What the words beside a value say of it."""
    before, behind = _beside(toks, found, sort, value)
    mending = not MENDING.isdisjoint(toks.words)
    denied = DENIED_BEFORE.search(before) is not None
    apart = RIGHT_BEHIND.match(behind) is not None
    before, behind = (text.replace("@ ", "").replace(" @", "") for text in (before, behind))
    denied = denied or WRONG_BEHIND.match(behind) is not None
    entered = ENTERED_BEFORE.search(before) is not None
    entered &= sort != "time" or SENT_AT.search(before) is None
    meant = not denied and MEANT_BEFORE.search(before) is not None
    put_to = mending and PUT_TO.search(before) is not None
    return Words(
        denied=denied,
        entered=entered and not meant,
        put_from=mending and not (put_to or meant) and PUT_BEFORE.search(before) is not None,
        pointed=POINTED.search(before) is not None,
        meant=meant or put_to or apart,
        right=LIKELY_RIGHT.search(before) is not None and not (denied or entered),
    )


def _beside(toks: Toks, found: Sequence[Value], sort: str, value: Value) -> tuple[str, str]:
    """The words before and behind a value, with `@` for those of other sorts and what leads to them."""
    other = {k: v for v in found if v.sort != sort for k in range(v.start, v.end)}
    led = {v.start - 1 for v in other.values() if word(toks, v.start - 1) in BEFORE_PLACE}
    mine = {k for v in found if v.sort == sort for k in range(v.start, v.end)}

    def said(start: int, end: int) -> str:
        words = ["#" if k in mine else "@" if k in other else word(toks, k) for k in range(start, end)]
        kept = [w for k, w in zip(range(start, end), words, strict=True) if k not in led]
        return " ".join(w for k, w in enumerate(kept) if w != "@" or kept[k - 1 : k] != ["@"])

    return said(0, value.start) + " ", said(value.end, len(toks))


def _is_plain(again: Again, found: Sequence[Value]) -> bool:
    """Whether clauses with a value hold only words of a correction, and the others nothing that happened."""
    toks = again.toks
    valued = {k for v in found for k in range(v.start, v.end)}
    happened = {k for c in again.meant.cues if _happens(c.label, c.value) for k in range(c.start, c.end)}
    for start, end in _clauses(toks):
        words = [k for k in range(start, end) if k not in valued]
        if len(words) < end - start:
            if not all(word(toks, k) in NEUTRAL for k in words) or (happened & {*words}) - _worded(toks):
                return False
        elif any(k in happened or is_digits(toks, k) for k in words):
            return False
    return True


def _worded(toks: Toks) -> set[int]:
    """Where a word stands that also says that a line is put right: "340 is out", "swap it"."""
    return {k for k, w in enumerate(toks.said[: len(toks)]) if w in OF_A_CHANGE}


def _happens(label: str, value: str) -> bool:
    return label == "what" or label in FINDINGS or (label == "kind" and value in EVENTS)


def _clauses(toks: Toks) -> Iterator[tuple[int, int]]:
    start = 0
    for k in range(len(toks) + 1):
        if k == len(toks) or word(toks, k) in STOPS | JOINTS:
            if k > start:
                yield start, k
            start = k + 1
