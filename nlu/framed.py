"""A message without what only stands around its lines: who writes, how many beds come, that they go home.

"Nights here. Bed 2 455, bed 3 1010 at 0700. Off home now", "my three at 1900: bed 1 210, ...". Such a
clause tells nothing of a line, but its words could; so it is left out only where the whole message would be
asked, and what is left must be whole. Called by `read`; dictated, only what `ownclauses` finds is left out.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime, timedelta
from itertools import pairwise
from typing import NamedTuple

from .adjuncts import plain_end
from .again import Again, Told
from .asking import OF_FINDINGS
from .bareremarks import bare_remarks
from .behind import (
    DOUBTING,
    FEWEST,
    LINKING,
    is_a_time,
    is_behind_at,
    is_counted,
    is_time_before,
    is_told_again,
    names_next,
)
from .brief import HOURLY as EVERY_HOUR
from .chatter import asides, is_timed
from .circumstances import circumstances, is_same_event
from .elsedoubts import other_doubts
from .entered import ENTERED
from .items import FULL_HOUR
from .neighbours import is_stop_among, parted
from .numbers import Toks, glued, is_digits, starts_number, word
from .ofall import is_of_all
from .otherfigures import other_figures, values_told
from .ownclauses import own_clauses
from .patterns.chatter import STARTS
from .patterns.framing import (
    AROUND,
    BEFORE_COUNT,
    BREAKS,
    COUNTED,
    COUNTS,
    FAREWELL,
    GOES_HOME,
    HEAD_ONLY,
    LEADING,
    MOVING,
    PARTS_OF_DAY,
    SELF,
)
from .patterns.leads import BED_WORDS
from .patterns.ownclauses import DOUBTFUL
from .plansahead import not_of_now
from .somebody import STOPS
from .soundalikes import eats_a_number
from .statements import Answered, Asked, Checked, Corrected, Described, Mark, Withdrawn

NO_REPORT = (Answered, Asked, Corrected, Withdrawn)
AT = frozenset({"at", "@"})
LED = frozenset({"level", "levelat", "closing", "amount", "output"})
"""Cues that make a number a line, wherever they stand."""
NEXT = frozenset({"next", "nxt"})
LINES = frozenset({"one", "mark", "line", "reading", "check", "level", "read", "set", "round", "due", "lot"})
OF_NEXT = NEXT | LINES | AT | {"is", "by", "around", "will", "be", "the"}
BEFORE_TIME = COUNTS.keys() | AROUND
BEHIND = AROUND | FAREWELL
SOON = timedelta(hours=6)
SKEW = timedelta(minutes=5)
COUNTING = BEFORE_COUNT | COUNTED
OFTEN = frozenset({"on", "the", "hour", "half", "hourly", "hourlies", "hrly", "every", "readings", "numbers"})
MOST_OF_AN_HOUR = 300
"""mL that may come from one drain hour after hour; common practice, no source."""
LABEL = 2
"""Digits of a bed or of how many come; a line has more."""
HALVES = frozenset({"am", "pm"})
ALSO = frozenset({"and", "&", "so", "but"})
HOURLY = frozenset({"min", "mins", "m", "h", "hr", "hrs", "hrly", "hourly"})
OPENING = NEXT | STARTS


class Frame(NamedTuple):
    """A clause that only stands around lines; `lines` is how many lines or beds it says will come."""

    start: int
    end: int
    lines: int = 0
    aside: bool = False
    """Whether it is of something else than the nurse, with numbers of its own."""
    of_somebody: bool = False
    """Whether somebody is its subject, and no drain."""
    timely: bool = False
    """Whether it says when something was, so that each line must have its own time."""
    own_time: bool = False
    """Whether a time in it can be of nothing else: "suction 20, was 10 this am"."""

    def has_time(self, toks: Toks) -> bool:
        """Whether a time in it may be that of what is told beside it."""
        return self.aside and not self.own_time and is_timed(toks, self.start, self.end)


CUT = {("same", "as"), ("nil", "by")}
"""Between these no clause begins: "same as when I took over", "nil by mouth"."""
SWAPPED = frozenset({("way", "round"), ("way", "around"), ("vice", "versa")})
"""What is told before "other way round" is told wrong."""


def framed(again: Again) -> Told:
    """The lines that the message tells without what stands around them; nothing where it is not so."""
    around = tuple(frames(again))
    of_somebody = tuple(frame for frame in around if frame.of_somebody)
    ways = dict.fromkeys((of_somebody, around))
    told = next(filter(None, (told_without(again, way) for way in ways if way)), ())
    return told or _told_amid(again, of_somebody)


def _told_amid(again: Again, beside: Sequence[Frame]) -> Told:
    """What happened, without why and amid what it did: "clamped 14 at 1410 so the lytics can sit"."""
    reasons = tuple(Frame(*span, 0, True, True, timely) for span, timely in circumstances(again))
    within = {k for frame in reasons for k in range(frame.start, frame.end)}
    whole = tuple(f for f in beside if within.isdisjoint(range(f.start, f.end)))
    ways = dict.fromkeys((reasons, reasons + whole)) if reasons else ()
    told = next(filter(None, (told_without(again, way) for way in ways)), ())
    happened = any(not isinstance(s, Mark | Described) for s in told)
    return told if happened and all(is_same_event(s, again) for s in told) else ()


def told_without(again: Again, frames: Sequence[Frame]) -> Told:
    """What is told without these, where it is whole and nothing that is left out may be of it."""
    toks, voice = again.toks, again.ward.voice
    if any(
        toks.said[max(0, f.start - 1) : f.start + 1] in CUT
        or not SWAPPED.isdisjoint(pairwise(toks.said[f.start : f.end]))
        or _is_line(toks, f)
        or is_counted(toks, f.start, f.end)
        or _has_tubes_behind(toks, f)
        or is_told_again(toks, f.start, f.end)
        or _is_another_one(toks, f)
        or (f.aside and names_next(toks, f.start, f.end))
        or (voice and _may_be_number(toks, f))
        or _leads_on(toks, f)
        or is_a_time(toks.said[f.start : f.end])
        for f in frames
    ):
        return ()
    told = again.without(*((frame.start, frame.end) for frame in frames))
    marks = [s for s in told if isinstance(s, Mark)]
    if any(is_behind_at(toks, f.end, m.spans.get("level_ml")) for f in frames for m in marks):
        return ()
    named = any(cue.label in LED for cue in again.cues)
    if any(_is_bare_behind(toks, f) for f in frames) and any(m.at is None for m in marks) and not named:
        return ()
    plain = bool(told) and not any(isinstance(s, NO_REPORT) for s in told)
    plain &= all(frame.of_somebody for frame in frames)
    if not plain and not (marks and all(isinstance(s, Mark | Checked | Described) for s in told)):
        return ()
    if any(f.has_time(toks) for f in frames) and any(
        s.at is None and not isinstance(s, Checked | Described) for s in told
    ):
        return ()
    whole = _agrees(told, toks, frames, voice=voice) and not _may_be_of_each_hour(marks, toks, voice=voice)
    return told if whole else ()


def _is_bare_behind(toks: Toks, frame: Frame) -> bool:
    """ "has grandchildren, 85": how many, maybe, where nothing else makes a number a line."""
    k = frame.end + (word(toks, frame.end) in STOPS)
    return is_digits(toks, k) and (word(toks, k + 1) in STOPS or k + 1 == len(toks))


def _has_tubes_behind(toks: Toks, frame: Frame) -> bool:
    """ "bed 21 decort, 2 tubes y'd together 410": how many that bed has, and no bed 2."""
    k = frame.end + (word(toks, frame.end) == ",")
    return is_digits(toks, k) and word(toks, k + 1 + (word(toks, k + 1) == "chest")) in {"tubes", "drains"}


def _is_line(toks: Toks, frame: Frame) -> bool:
    """ "36 is at 1230 and 37 is at 88": what a bed is at is no time of the nurse, and "all
    taken at 2300" is one of theirs."""
    if is_of_all(toks, frame.start, frame.end) or is_time_before(toks.said[frame.start : frame.end]):
        return True
    led = is_digits(toks, frame.start - 1) and word(toks, frame.start) in {"is", "was"}
    return led and any(map(str.isdecimal, toks.said[frame.start : frame.end]))


def _is_another_one(toks: Toks, frame: Frame) -> bool:
    """ "tube out at 1830, the feeding one", "tube clamped, the PEG": which one it was."""
    start = frame.start + (word(toks, frame.start) in STOPS)
    named = word(toks, start + 2) == "one" or frame.end - start == len(("the", "PEG"))
    return named and word(toks, start - 1) in STOPS and word(toks, start) in {"the", "his", "her"}


def _leads_on(toks: Toks, frame: Frame) -> bool:
    """ "bed 4 covering for bed 7, 340", "the 1750 | i put on the right": it says of what the rest is told."""
    bed = word(toks, frame.end) in BED_WORDS or is_digits(toks, frame.end)
    mine = is_digits(toks, frame.start - 1) and word(toks, frame.start) == "i"
    return (mine and word(toks, frame.start + 1) in ENTERED) or (bed and word(toks, frame.end - 1) in LEADING)


def _may_be_number(toks: Toks, frame: Frame) -> bool:
    """Dictated "at fife o'clock", "bed ate 50": a number or a time by its sound, and nothing to leave out."""
    said = toks.said[frame.start : frame.end]
    if said[:1] in {("then",), ("under",), ("tin",)} and starts_number(toks, frame.start - 1):
        return True
    return not {"o'clock", "oclock"}.isdisjoint(said) or ("ate" in said and eats_a_number(toks))


def _may_be_of_each_hour(marks: Sequence[Mark], toks: Toks, *, voice: bool) -> bool:
    """ "hourlies 1600 44, 1700 47": how much came in each hour, perhaps."""
    hourly = not voice and any(text in EVERY_HOUR for text in toks.said)
    return hourly and all((mark.level_ml or 0) <= MOST_OF_AN_HOUR for mark in marks)


def frames(again: Again) -> Iterator[Frame]:
    """All clauses that may only stand around lines."""
    toks = again.toks
    of_somebody = own_clauses(again)
    for clause in of_somebody:
        yield from (Frame(*span, 0, True, True, clause.timely) for span in clause.spans)
    yield from (Frame(*span, 0, True, True, True) for span in other_figures(again))
    yield from (Frame(*span, 0, True, True, False, True) for span in not_of_now(again))
    if again.ward.voice:
        yield from (Frame(*span, 0, True, True) for span in values_told(again))
        return  # its stops are those of the recogniser
    for start, end in bare_remarks(again):
        yield Frame(start, end, aside=True, of_somebody=True, timely="midnight" in toks.said[start:end])
    yield from _bracketed(again)
    yield from (Frame(*span, 0, True, True, timely) for span, timely in other_doubts(again))
    whole = {k for clause in of_somebody for k in range(*clause.clause)}
    beside = [span for span in asides(again, _clauses(toks)) if whole.isdisjoint(range(*span))]
    for start, end in beside:
        before = start > 0 and word(toks, start - 1) in STOPS
        yield Frame(start - before, end + (not before and word(toks, end) in STOPS), aside=True)
    yield from _of_nurses(toks, {k for start, end in beside for k in range(start, end)} | whole, again)


def _bracketed(again: Again) -> Iterator[Frame]:
    """ "320 (post turn) 1900": in brackets, words that may not be of the line, and no name of anything."""
    toks = again.toks
    for start in (k for k in range(len(toks)) if word(toks, k) == "("):
        end = next((k for k in range(start, len(toks)) if word(toks, k) == ")"), start)
        said = toks.said[start + 1 : end]
        plain = all(map(str.isalpha, said)) and DOUBTFUL.isdisjoint(said) and plain_end(toks, start + 1) > end
        told = any(cue.start < end and cue.end > start for cue in again.cues)
        if (
            len(said) >= FEWEST
            and plain
            and not told
            and said[0] not in LINKING
            and DOUBTING.isdisjoint(said)
        ):
            yield Frame(start, end + 1, of_somebody=True)


def _of_nurses(toks: Toks, told: set[int], again: Again) -> Iterator[Frame]:
    """Those of who writes, how many beds come and what is next; `told` is what others tell of."""
    arrived = again.ward.arrived
    numbers = [k for k in range(len(toks)) if is_digits(toks, k) and k not in told]
    if not numbers:
        return
    yield from _how_often(toks)
    counts = not toks.words.isdisjoint(COUNTS)
    for start, end in _clauses(toks):
        if start in told:
            continue
        count = _count(toks, start, end) if counts else 0
        digits = [k for k in range(start, end) if is_digits(toks, k)]
        said = {word(toks, k) for k in range(start, end)}
        later = start > numbers[-1] or (digits[-1:] == numbers[-1:] and _is_next(toks, start, end, arrived))
        if later and digits:
            yield Frame(start - (word(toks, start - 1) in STOPS), end)
            continue
        if (
            count
            and start <= numbers[0] + 2
            and _is_around((said - COUNTS.keys() - COUNTING) | {"my"}, later=False)
        ):
            yield Frame(start, end + (word(toks, end) in STOPS), count)
            continue
        head = end <= numbers[0]
        if head and said & HEAD_ONLY:  # "apologies. bed 8 ..."
            said = said - HEAD_ONLY | {"my"}
        asks = start == 0 and word(toks, 0) in OF_FINDINGS and word(toks, end) not in STOPS
        if not (asks or digits or COUNTS.keys() & said) and _is_around(said, later=later):
            stop = word(toks, end) in STOPS if head else word(toks, start - 1) in STOPS
            yield Frame(start, end + stop) if head else Frame(start - stop, end)


def _how_often(toks: Toks) -> Iterator[Frame]:
    """ "q1h", "hourly" before a list: how often is read, and no number of it."""
    for k in range(len(toks) - 3):
        if word(toks, k) == "q" and is_digits(toks, k + 1) and is_digits(toks, k - 1):
            yield Frame(k, k + 2 + (word(toks, k + 2) in HOURLY))
        elif word(toks, k) == "q" and is_digits(toks, k + 1) and word(toks, k + 2) in HOURLY:
            yield Frame(k, k + 3)
        elif word(toks, k) in OFTEN and is_digits(toks, k - 1):
            end = next((j for j in range(k, len(toks)) if word(toks, j) not in OFTEN), k)
            yield from [Frame(k, end)] * (word(toks, end) == ":" or word(toks, k) in EVERY_HOUR)


def _clauses(toks: Toks) -> Iterator[tuple[int, int]]:
    """The clauses between stops, also cut before a bed, before the time of a head and before what is next."""
    return parted(0, len(toks), lambda k: is_stop_among(STOPS, toks, k), lambda k: _begins(toks, k))


def _begins(toks: Toks, k: int) -> bool:
    """Whether a bed, a time for all or what is next begins there."""
    said = word(toks, k)
    if said in BED_WORDS and (is_digits(toks, k + 1) or (is_digits(toks, k + 2) and glued(toks, k + 2))):
        return True
    if is_digits(toks, k - 1) and (said in OPENING or (said in ALSO and word(toks, k + 1) in SELF)):
        return True
    return (said in AT and _is_time_of_all(toks, k)) or (said in AROUND and _is_time_ahead(toks, k))


def _is_time_of_all(toks: Toks, k: int) -> bool:
    """ "my three at 1900": a time behind how many will come, before any line."""
    if word(toks, k - 1) not in BEFORE_TIME or is_digits(toks, k - 1) or not is_digits(toks, k + 1):
        return False
    return not any(is_digits(toks, j) and len(word(toks, j)) > LABEL for j in range(k))


def _is_time_ahead(toks: Toks, k: int) -> bool:
    """ "0600 hourlies:", "6am numbers:": whether the message begins with a time that ends there."""
    whole = k == 1 and len(word(toks, 0)) == FULL_HOUR
    return is_digits(toks, 0) and (whole or (word(toks, 1) in HALVES and k == len(("6", "am"))))


def _count(toks: Toks, start: int, end: int) -> int:
    """How many beds or lines a clause says will come: "my three for report", "4 beds for you"."""
    counts = [k for k in range(start, end) if word(toks, k) in COUNTS]
    if len(counts) != 1 or word(toks, counts[0] - 1) in BED_WORDS:
        return 0
    k = counts[0]
    before, after = word(toks, k - 1) if k > start else "", word(toks, k + 1) if k + 1 < end else ""
    bed = word(toks, end) == ":" and word(toks, end + 1) in BED_WORDS
    named = after in COUNTED or (before in BEFORE_COUNT and (after or bed or not is_digits(toks, k)))
    headed = before in BEFORE_COUNT and word(toks, end) in AT
    return COUNTS[word(toks, k)] if named or headed else 0


def _is_around(said: set[str], *, later: bool) -> bool:
    """Whether these words of a clause say nothing of a line."""
    known = said <= (BEHIND if later else AROUND)
    return bool(said) and known and all(not said.isdisjoint(MOVING[w] - {w}) for w in said & MOVING.keys())


def _is_next(toks: Toks, start: int, end: int, arrived: datetime) -> bool:
    """ "next mark at 2000", "i leave at 1930": when something is due, which is a time to come."""
    said = [word(toks, k) for k in range(start, end)]
    words = {w for w in said if not w.isdecimal()}
    numbers = [w for w in said if w.isdecimal()]
    following = said[0] in NEXT and words <= OF_NEXT
    going = bool(words & (SELF | BREAKS)) and _is_around(words - {"@"}, later=True)
    if not (following or going) or len(numbers) != 1 or len(numbers[0]) != FULL_HOUR:
        return False
    hour, minute = divmod(int(numbers[0]), 100)
    since = timedelta(hours=arrived.hour, minutes=arrived.minute)
    return SKEW < (timedelta(hours=hour, minutes=minute) - since) % timedelta(days=1) <= SOON


def _agrees(told: Told, toks: Toks, frames: Sequence[Frame], *, voice: bool) -> bool:
    """Whether so many lines came as were said, it is the nurse who goes, and no part of a day was lost."""
    marks = [s for s in told if isinstance(s, Mark)]
    beds = {mark.bed for mark in marks}
    if any(f.lines and f.lines not in {len(beds), len(marks)} for f in frames):
        return False
    said = {word(toks, k) for f in frames if not f.aside for k in range(f.start, f.end)}
    if GOES_HOME & said and not SELF & said and len(beds) <= 1:
        return False
    beside = {k for f in frames if f.aside for k in range(f.start, f.end)}
    own = [k for k in range(len(toks)) if is_digits(toks, k) and k not in beside]
    if not own:
        return all(f.of_somebody for f in frames)  # all that is left was told in words
    first, last = min(own), max(own)
    timed = any(word(toks, f.start) == "q" or (first < f.start < last and not f.aside) for f in frames)
    timed |= any(f.timely or f.has_time(toks) for f in frames)
    if timed and not all(s.at or isinstance(s, Checked) for s in (marks or told)):
        return False
    ahead = {word(toks, k) for f in frames if f.start < first and not voice for k in range(f.start, f.end)}
    return PARTS_OF_DAY.isdisjoint(ahead) or all(_is_written(mark, toks) for mark in marks)


def _is_written(mark: Mark, toks: Toks) -> bool:
    """Whether its time stands there in full, so that no part of the day is needed for it."""
    if mark.at is None:
        return False
    return mark.at.strftime("%H%M") in toks.words
