"""Signs, in dictation, of a time and a number that run together, or of which a word was heard for another.

"at eighteen forty two forty" is 240 at 18:40 or 40 at 18:42; behind "quarter past sex" the time was lost.
Called by `leftovers`, by way of `otherwords`.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime
from itertools import pairwise

from .clauses import NUMBERS
from .clock import clocks
from .items import AMOUNTS, FULL_HOUR, NEAR, Item, is_now
from .numbers import Toks, numbers, word
from .patterns.leads import BED_WORDS
from .patterns.numerals import ONES, TEENS, TENS
from .rules import Rule

MINUTES = frozenset({*TENS, *TEENS})
OF_LEVEL = frozenset({*TENS, "hundred"})
HOURS = 24
_OF_LINE = """
line mark marked level reading reads is was are it it's its s 's now still sits sitting canister box bottle
chamber drain tube output total shows old new one final remains about around right nearly just up
"""
OF_LINE = frozenset(_OF_LINE.split())
"""Before "at" these lead to a level."""
NOON, MINUTES_OF_HOUR, TWENTY = 12, 60, 20
PAIR = 2
PAST_OR_TO = frozenset({"past", "to"})
NOUGHTS = frozenset({"oh", "o", "zero"})
MOST, LARGEST = 2000, 4000
"""mL that most canisters hold, and the largest; common practice, no source."""
SOUNDS = frozenset({"then", "tin", "sick", "sex", "fife"})
"""Heard for ten, six and five."""
ENDING = frozenset({"", ",", ".", ";", "!", "at", "@", "pm", "am", "o'clock"})
CLOCKS = frozenset({"clock", "o'clock", "oclock"})
OF_A_TIME = frozenset({"o'clock", "oclock", "clock", "pm", "past", "quarter", "half"})
BEFORE_LEVEL = frozenset({"at", "is", "mark", "line", "level", "was"})


def _behind_time(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "at eighteen forty two forty": 240 at 18:40, or 40 at 18:42?"""
    for time, item in pairwise(items):
        joined = time.role == "time" and item.role in AMOUNTS and item.start == time.end and not item.lead
        tens = word(toks, time.end - 1) in TENS and word(toks, item.start) in ONES
        rest = rest_of(toks, item.start) if joined and tens else set()
        if item.core in rest and word(toks, item.start + 1) not in {"hundred", "thousand"}:
            yield "where the minutes end"
        last = time.end - 1
        ones = joined and word(toks, last) in ONES and word(toks, last - 1) in TENS and last > time.start + 1
        if ones and any(n.end == item.core for n in numbers(toks, last)):
            yield "where the minutes end"  # "at six thirty four ten"
        hour = joined and time.end == time.start + 1 and not (time.digits or is_now(time))
        if hour and word(toks, item.start) in MINUTES and item.core in rest_of(toks, item.start):
            yield "where the minutes end"  # "at eleven twenty eight twenty"
        teens = joined and time.end == time.start + 2 and word(toks, time.end - 1) in TEENS
        if teens and any(n.end == item.core and n.value < MOST for n in numbers(toks, time.end - 1)):
            yield "where the minutes end"  # "at seven ten fifty"


def _behind_level(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "At thirteen fifty five fifty": 550 at 13:50, 50 at 13:55, or 1,350 at 5:50?"""
    for level, time in pairwise(items):
        if level.role not in AMOUNTS or time.role != "time" or time.start != level.end or time.lead:
            continue
        tens = word(toks, level.end - 1) in TENS and word(toks, time.start) in ONES
        if tens and any(end == time.end for end, _ in clocks(toks, level.end - 1)):
            yield "where the level ends"  # "three hundred and twenty five past six"
        if tens and level.clocks and time.end in rest_of(toks, time.start):
            yield "where the level ends"
        if not level.digits and _ends_elsewhere(level, time, toks):
            yield "where the level ends"  # "mark eleven twenty two hundred"
        hours = {c.hour for c in level.clocks} if word(toks, level.start - 1) == "at" else set()
        if hours and min(hours) > NOON and not time.sure_time and not level.unit:
            yield "the level could be the time, and the time the level"  # "at fourteen ten six forty"


def _half_in_digits(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "at eleven hundred 70 milliliters": 1,170, or 70 mL at eleven?"""
    if any(i.role == "time" for i in items):
        return
    for level in items:
        words = [toks[k].is_digits for k in range(level.start, max(level.core, level.start))]
        mixed = level.role in AMOUNTS and any(words) and not words[0]
        if mixed and word(toks, level.start - 1) == "at" and clocks(toks, level.start):
            yield "where the level begins"


def _behind_bed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed twenty three ten bed 24 ...": bed 20 with 310, or bed 23 with ten; "twenty eight two two six": so
    much is in no canister; "bed thirteen one three four oh": 13 told twice, or 1,340?"""
    for bed, level in pairwise(items):
        last = word(toks, bed.end - 1)
        if bed.role != "bed" or level.role not in AMOUNTS or level.start != bed.end or level.digits:
            continue
        listed = word(toks, level.core) in BED_WORDS
        tens = last in TENS and word(toks, level.start) in ONES and level.core in rest_of(toks, level.start)
        ones = last in ONES and word(toks, bed.end - 2) in TENS
        ones &= any(n.end == level.core for n in numbers(toks, bed.end - 1))
        again = last in ONES and word(toks, bed.start) in ONES and bed.end - bed.start > 1
        again &= word(toks, level.start) in ONES and any(
            i.role == "bed" and i.end == bed.start for i in items
        )
        if (listed and (tens or ones)) or (tens and (level.amount or 0) > LARGEST) or again:
            yield "where the bed ends"


def _parted_by_comma(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "sitting at nine, two one mils": 921, or nine and 21?"""
    for first, stop, nxt in zip(items, items[1:], items[2:], strict=False):
        comma = stop.role == "sep" and stop.value == "," and stop.start == first.end and nxt.start == stop.end
        spelt = word(toks, nxt.start) in ONES and word(toks, nxt.start + 1) in {*ONES, "oh"}
        if comma and spelt and first.role in AMOUNTS | {"time"} and word(toks, first.end - 1) in ONES:
            yield "where the level begins"


def _hundred_and(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "at five hundred and 520": 500 at twenty past five, or 520 at five?"""
    for time, level in pairwise(i for i in items if i.role != "sep"):
        spoken = time.role == "time" and word(toks, time.end - 1) == "hundred" and time.end == time.start + 2
        joined = level.role in AMOUNTS and level.clocks and word(toks, level.start - 1) == "and"
        if spoken and joined and level.start == time.end + 1 and word(toks, time.start) in ONES:
            yield "the level could be the time, and the time the level"


def _and_tens(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "a thousand one hundred and twenty two hundred": 1,120 at two, or 1,100 at 22:00?"""
    for level, time in pairwise(i for i in items if i.role != "sep"):
        linked = level.role in AMOUNTS and time.role == "time" and word(toks, level.end) == "and"
        if not linked or time.start != level.end + 1 or word(toks, time.start) not in TENS:
            continue
        longer = any(n.end == time.start + 1 for n in numbers(toks, level.start))
        if longer and any(end == time.end for end, _ in clocks(toks, time.start + 1)):
            yield "where the level ends"


def _where_parted(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "four hundred and nine oh five", "four fifty nine oh five": 400 or 450 at five past nine?"""
    for level, time in pairwise(i for i in items if i.role != "sep"):
        joined = level.role in AMOUNTS and time.role == "time" and time.start == level.end
        if not joined or time.at or time.lead:
            continue
        for k in {n.end for n in numbers(toks, level.start) if n.end < time.end} - {level.end}:
            start = k + (word(toks, k) == "and")
            split = k > level.end and not PAST_OR_TO.isdisjoint(toks.said[time.start : time.end])
            split |= (k < level.end) != (word(toks, k) in NOUGHTS)  # "three oh oh six thirty" has two noughts
            if split and any(end == time.end for end, _ in clocks(toks, start)):
                yield "where the level ends"


def hours_behind_and(items: tuple[Item, ...], toks: Toks, arrived: datetime) -> Iterator[str]:
    """ "mark 400 and 7" at ten past seven: 407, or 400 at seven? Recognisers write "and" for "at"."""
    timed = any(i.role == "time" for i in items)
    for item, after in zip(items, (*items[1:], None), strict=True):
        if item.role not in AMOUNTS or item.unit:
            continue
        end = max(item.core, item.start + 1)
        if after is not None and after.role == "time" and word(toks, end) == "and":
            ends = item.digits and not (item.amount or 1) % 100 and after.end == end + 2  # "400 and nine"
            hour = end + 1 if ends and word(toks, end + 1) in ONES else 0
        else:
            hour = end - 1 if not timed and end - 2 > item.start and word(toks, end - 2) == "and" else 0
        said = toks.said[item.start : end]
        split = (
            end == item.start + 2 and said[0].isdecimal() and len(said[1]) == len("570") and item.lead == "at"
        )
        if split and _is_hour_before(toks, item.start, arrived):  # "at 2 570" at a quarter past two
            yield "the first digits may be the hour"
        alone = (
            not (timed or item.digits) and end > item.start + 2 and said[-1] in ONES and said[-2] in OF_LEVEL
        )
        hour = hour or (alone and said[-1] != "five") * (end - 1)  # "five twenty six": 520 at six
        if hour and _is_hour_before(toks, hour, arrived):
            yield "the end of the number may be the hour"


def to_or_two(items: tuple[Item, ...], toks: Toks, arrived: datetime) -> Iterator[str]:
    """ "at twenty two ten" at a quarter to ten: at twenty to ten? So is "twenty to twenty" at 22:20."""
    now = arrived.hour * MINUTES_OF_HOUR + arrived.minute
    for item in items:
        said = toks.said[item.start : item.end]
        if item.role != "time" or len(said) < PAIR + 1 or said[0] != "twenty" or item.within(NEAR, arrived):
            continue
        low = {n.value for n in numbers(toks, item.start + 2) if n.end == item.end and n.style == "plain"}
        hours = {int(value) for value in low}
        if said[1] in {"two", "too"}:
            ages = {(now - hour * MINUTES_OF_HOUR + TWENTY) % (NOON * MINUTES_OF_HOUR) for hour in hours}
        elif said[1] == "to":
            ages = {(now - 22 * MINUTES_OF_HOUR - minute) % (2 * NOON * MINUTES_OF_HOUR) for minute in hours}
        else:
            continue
        if ages and min(ages) <= MINUTES_OF_HOUR:
            yield "twenty two, or twenty to"


def _is_hour_before(toks: Toks, k: int, arrived: datetime) -> bool:
    """Whether one word is an hour that began at most an hour ago."""
    now = arrived.hour * MINUTES_OF_HOUR + arrived.minute
    hours = [clock.hour for end, clock in clocks(toks, k) if end == k + 1 and clock.style == "hour"]
    return any((now - hour * MINUTES_OF_HOUR) % (NOON * MINUTES_OF_HOUR) <= MINUTES_OF_HOUR for hour in hours)


def _ends_elsewhere(level: Item, time: Item, toks: Toks) -> bool:
    """ "Six forty four minutes ago": whether the word between them can be of either."""
    longer = level.end == level.start + 1 and word(toks, time.start) in MINUTES
    shorter = level.end == level.start + 2 and word(toks, level.end - 1) in TENS
    ends = {end for end, _ in clocks(toks, time.start + 1)} if longer else set()
    ends |= {end for end, _ in clocks(toks, time.start - 1)} if shorter else set()
    return time.end in ends


def rest_of(toks: Toks, start: int) -> set[int]:
    """Where the numbers end that begin behind this word."""
    return {n.end for n in numbers(toks, start + 1)}


def _lost_time(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "at sick o'clock bed 5 180", "and fife pm": a word of a time that is in none."""
    if not any(i.role in NUMBERS for i in items):
        return
    told = {k for i in items if i.role == "time" for k in range(i.start, i.end)}
    for k in range(len(toks)):
        heard = bool({word(toks, k - 1), word(toks, k + 1)} & SOUNDS) or word(toks, k) in CLOCKS
        heard |= word(toks, k) in {"half", "quarter"} and word(toks, k + 1) in {"past", "to"}
        if word(toks, k) in OF_A_TIME and k not in told and heard:
            yield "a time that was lost"


def _heard_number(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "seven hundred and then at six", "at six then": ten, heard as another word."""
    for item in items:
        if item.role not in NUMBERS | {"time"}:
            continue
        k = item.end + (word(toks, item.end) == "and")
        if word(toks, k) in SOUNDS and word(toks, k + 1) in ENDING:
            yield "the word behind the number may be its end"
        before = any(i.role in {"bed", "time"} and i.end == item.start - 1 for i in items)
        short = len(item.digits) <= PAIR  # "at 4 pm then 590": no number begins with ten and 590
        short &= word(toks, item.start) not in ONES  # nor with ten and "seven twenty"
        if before and short and word(toks, item.start - 1) == "then" and item.role in AMOUNTS:
            yield "the word before the number may be its beginning"


def _four_as_for(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "line twenty for six oh five": 24 at 6:05; "bed twenty i mean for": bed 24."""
    for item, after in pairwise(items):
        heard = word(toks, item.end) == "for"
        tens = item.role in AMOUNTS and word(toks, item.end - 1) in TENS and after.role == "time"
        if heard and ((tens and after.start == item.end + 1) or item.role == "repair"):
            yield "a four by its sound"


def _at_as_eight(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "eight seventeen forty five bed three 960": at a quarter to six, and no bed 8."""
    beds = [i for i in items if i.role == "bed"]
    first = beds[0] if len(beds) > 1 else None
    if first is None or first.start or word(toks, 0) not in {"eight", "8"}:
        return
    level = next((i for i in items if i.start == first.end), None)
    if level is not None and level.role in AMOUNTS and level.clocks and not (level.unit or level.lead):
        yield "a bed by the sound of at"


def _lost_hundreds(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "mark hundred thirty": how many hundreds was lost."""
    for item in items:
        hundred = item.role in AMOUNTS and word(toks, item.start) == "hundred"
        if hundred and item.end > item.start + 1 and word(toks, item.start - 1) in BEFORE_LEVEL:
            yield "how many hundreds"


SEEN = frozenset({"checked", "check", "seen", "found", "looked", "done"})
"""Before "at" these lead to a time."""


def at_comma(items: tuple[Item, ...], toks: Toks, arrived: datetime) -> Iterator[str]:
    """ "checked at 1,138 no leak" at 11:50: a time with a comma, or a level; no "line at 1,138"."""
    levels = [i for i in items if i.role in AMOUNTS or i.role in {"time", "bad"}]
    for level in levels if len(levels) == 1 and word(toks, levels[0].start - 1) in {"at", "@"} else ():
        digits = "".join(toks.said[level.start : level.end]).replace(",", "")
        comma = (
            toks.said[level.start + 1 : level.end][:1] == (",",)
            and len(digits) == FULL_HOUR
            and digits.isdecimal()
        )
        hour, minute = (int(digits[:2]), int(digits[2:])) if comma else (HOURS, 0)
        if hour >= HOURS or minute >= MINUTES_OF_HOUR or word(toks, level.start - 2) in OF_LINE:
            continue
        then = arrived.replace(hour=hour, minute=minute, second=0, microsecond=0)
        if abs(then - arrived) <= NEAR or word(toks, level.start - 2) in SEEN:
            yield "a time with a comma, or a level"


BY_THE_HOUR = (hours_behind_and, to_or_two, at_comma)
"""What is looked at beside the moment of arrival."""
RUN_TOGETHER = (
    Rule(_behind_time, frozenset({"time"}), frozenset(TENS)),
    Rule(_behind_level, frozenset({"time"}), frozenset(TENS)),
    Rule(_half_in_digits, AMOUNTS, frozenset({"hundred"})),
    Rule(_behind_bed, frozenset({"bed"}), frozenset({*TENS, *ONES})),
    Rule(_and_tens, frozenset({"time"}), frozenset(TENS)),
    Rule(_where_parted, frozenset({"time"}), frozenset(ONES)),
    Rule(_parted_by_comma, AMOUNTS, frozenset({","})),
    Rule(_hundred_and, AMOUNTS, frozenset({"hundred"})),
    Rule(_lost_time, NUMBERS, SOUNDS | CLOCKS | {"half", "quarter"}),
    Rule(_four_as_for, AMOUNTS | {"repair"}, frozenset({"for"})),
    Rule(_heard_number, NUMBERS | {"time"}, SOUNDS),
    Rule(_at_as_eight, frozenset({"bed"}), frozenset({"eight", "8"})),
    Rule(_lost_hundreds, AMOUNTS, frozenset({"hundred"})),
)
