"""Signs, in dictation, that a number is another one: its first or last digit was written as a word.

"at six fifty for" may be 654, "bed 20 two 60" bed 22. Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .clauses import NUMBERS
from .clock import clocks
from .items import AMOUNTS, Item, is_now
from .numbers import Toks, heard_as_number, numbers, starts_number, word
from .patterns.leads import BED_WORDS, LINES
from .patterns.numerals import HOMOPHONES, ONES, SCALES, TENS
from .rules import Rule

BREAKING = frozenset({"", ",", ".", ";", "!", "at", "@", "tea", "t"})
HUNDREDS = frozenset({"100", "1000"})
ROUND = frozenset(map(str, range(20, 100, 10)))


def half_in_digits(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 20 two 60": bed 20 with 260, or bed 22 with 60?"""
    for bed, item in pairwise(items):
        tens = bed.role == "bed" and word(toks, item.start - 1) in ROUND and item.role == "level"
        if tens and word(toks, item.start) in ONES and word(toks, item.start + 1) not in SCALES:
            yield "the number may begin with the end of the bed"


def first_digit(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "line for 20", "is for sixty": the word before the number may be the four of 420, and work of its own.

    "put 12 down for 40" has it; and where it was read as the digit, the number alone is as likely.
    """
    for item in items:
        if item.role not in AMOUNTS:
            continue
        before = item.start - 1
        four = word(toks, item.start) == "for"
        end = max(item.core, item.start + 1)
        joined = any(n.end == end > before + 1 for n in heard_as_number(toks, before))
        joined |= word(toks, before) == "for" and item.digits in HUNDREDS  # "mark for 100"
        if four or (joined and word(toks, before) != "to" and word(toks, before - 1) != "down"):
            yield "the word before the number may be its first digit"


def last_digit(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "at six fifty for.", "six hundred and for tea": a word that sounds like a digit, with no work."""
    for item in items:
        k = item.end + (word(toks, item.end) == "and")
        heard = item.role in NUMBERS | {"time"} and word(toks, k) in HOMOPHONES
        if heard and word(toks, k + 1) in BREAKING:
            yield "the word behind the number may be its last digit"


def _breaks_off(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed twenty for stands at ten": bed 24; "to point one five litres": 2.15, and no 150 mL."""
    for item in items:
        tens = item.role == "bed" and word(toks, item.end - 1) in TENS
        if tens and word(toks, item.end) in HOMOPHONES and word(toks, item.end + 1) not in BED_WORDS | LINES:
            yield "the bed may go on"
        pointed = item.role in NUMBERS and word(toks, item.start) == "point"
        if pointed and not (item.unit and word(toks, item.start - 1) not in {"", *HOMOPHONES}):
            yield "what stood before the point was lost"


def _bed_goes_on(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed seven hundred and five line 210" on a ward that has none: perhaps no bed 5 either."""
    for bed, rest in pairwise(items):
        if bed.role == "bed" and rest.role == "bad" and word(toks, bed.end) in SCALES:
            yield "a bed whose number goes on"


def _said_again(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "line six six forty", "line six um six forty": the number begun again, and no 6 at twenty to seven."""
    for item, time in pairwise([i for i in items if i.role != "cue" or i.value not in {"filler", "yes"}]):
        if item.role not in AMOUNTS or time.role != "time" or time.at or time.lead or item.unit:
            continue
        short = item.amount is not None and (item.amount < HUNDRED or not item.amount % HUNDRED)
        first, again = word(toks, item.start), word(toks, time.start)
        same = first == again or (len(first) == 1 and first.isdigit() and again.startswith(first))
        told_twice = item.amount == time.amount  # "six four zero six forty"
        parts = toks.said[item.start : item.end]
        told_twice |= toks.said[time.start : time.start + len(parts)] == parts  # "550 5:55"
        if (short and not time.spoken_clock and same) or told_twice:
            yield "a number begun again, or a time behind it"


def _in_other_words(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "fourteen hundred one four zero zero": 1,400 told again, and no 1,401 at four."""
    for item, time in pairwise(items):
        if item.role not in AMOUNTS or time.role != "time" or time.start != item.end or time.at:
            continue
        for k in range(item.start + 1, item.end):
            first = {n.value for n in numbers(toks, item.start) if n.end == k}
            again = {n.value for n in numbers(toks, k) if n.end == time.end}
            if first & again:
                yield "a number told again in other words"


def _twice_in_bed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed one one one fifty": bed 11 with 150, or bed 1 with 1,150?"""
    for bed, item in pairwise(items):
        digits = toks.said[bed.start : bed.end]
        alike = bed.role == "bed" and len(digits) == 2 and len({*digits, word(toks, item.start)}) == 1
        if alike and item.role in AMOUNTS | {"time"} and item.start == bed.end:
            yield "where the bed ends"


def _hour_and_level(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed six quarter past six forty": forty at a quarter past six, or six forty at a quarter past?"""
    for time, item in pairwise(items):
        joined = time.role == "time" and item.role in AMOUNTS and item.start == time.end and not item.lead
        alone = joined and time.at and (time.amount or 0) < TEN and word(toks, time.end - 1) in ONES
        if alone and word(toks, item.start) == word(toks, time.end - 1):
            yield "a number begun again behind an hour"  # "at one one thirty"
        if joined and word(toks, time.end - 2) in {"to", "past", "til"} and (item.amount or 0) < HUNDRED:
            yield "the hour may be the first digit of the number"


def _hour_mended(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "at eighteen uh nineteen": one hour or the next, and no 18:19."""
    for item in items:
        said = toks.said[item.start : item.end]
        halting = item.role == "time" and len(said) > 2 and not HALTING.isdisjoint(said[1:-1])
        if halting and any(clock.minute % 5 for clock in item.clocks):
            yield "an hour that was mended, or its minutes"


def _parts_in_digits(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 20 4 50": bed 20 with 450, or bed 24 with 50; "bed 6 60 40", "bed 4 4 440": no four digits."""
    for bed, item in pairwise(items):
        parts = toks.said[item.start : item.end]
        joined = item.role in AMOUNTS and len(parts) > 1 and all(part.isdigit() for part in parts)
        if not joined or item.start != bed.end:
            continue
        ends_bed = bed.role == "bed" and word(toks, bed.end - 1)[-2:] in ROUND and len(parts[0]) == 1
        sizes = len(parts[0]), len(parts[1])
        odd = (sizes == (1, 3) and parts[1][0] != "0") or (sizes == (2, 2) and parts[0] in ROUND - {"20"})
        if ends_bed or odd:
            yield "parts of two numbers"


def _lone_digit(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed twelve eight six forty": bed 12A with 640, or a line of 8 at twenty to seven?"""
    for item, time in pairwise(items):
        if item.role != "level" or time.role != "time" or item.end != time.start or item.unit:
            continue
        eleven = word(toks, item.start) == "eleven" and not item.lead  # "level six forty"
        short = (item.amount or 0) < TEN or eleven
        joined = short and not (time.at or time.lead)
        two = word(toks, time.start) in TENS and word(toks, time.start + 1) in ONES
        told = (
            time.full_clock
            or is_now(time)
            or (two and any(c.style == "ago" for c in time.clocks))
            or (not item.lead and time.spoken_clock)
        )
        if joined and not told:
            yield "one digit alone is the end of a label, or a line"


def _digit_by_digit(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "two five oh nine oh five": 25 at five past nine, or 250? "one oh five oh six": 10 at 05:06?"""
    for item, time in pairwise(items):
        singly = item.role in AMOUNTS and {*ONES, *OH}.issuperset(toks.said[item.start : item.end])
        if singly and time.role == "time" and item.end == time.start and word(toks, time.start) in OH:
            yield "a nought between two numbers"
        ends = time.role == "time" and item.end == time.start and word(toks, item.end - 1) in OH
        of_both = ends and item.end == item.start + 2 and word(toks, time.start) in ONES
        if of_both and not (time.at or time.lead):
            yield "a nought inside a number"  # "three oh five past six"
        spare = (
            word(toks, item.end - 2) not in OH or item.end > item.start + 3
        )  # "three oh oh six thirty" has two for its own
        if ends and singly and spare and any(end == time.end for end, _ in clocks(toks, item.end - 1)):
            yield "a nought of the number, or of the time"


def _and_an_hour(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "eleven hundred and six": 1,106, or 1,100 at six? Recognisers write "and" for "at"."""
    timed = any(i.role == "time" for i in items)
    for item in items if not timed else ():
        ends = toks.said[item.end - 3 : item.end]
        if (
            item.role == "level"
            and not item.lead
            and ends[:2] == ("hundred", "and")
            and ends[2:]
            and ends[2] in HOURS
        ):
            yield "the hour, or the end of the number"


def _tens_behind_digit(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed six bed six forty", "off the floor six forty": forty, or six forty?"""
    for k, item in enumerate(items):
        first = word(toks, item.start)
        tens = item.role in AMOUNTS and not item.lead and (first in TENS or first in ROUND)
        digit = item.start - 1
        while digit > 0 and word(toks, digit) in BREAKS:
            digit -= 1
        if not tens or word(toks, digit) not in {*ONES, *DIGITS}:
            continue
        before = next((i for i in reversed(items[:k]) if i.role != "sep"), None)
        of_bed = before is not None and before.role == "bed" and before.end == digit + 1
        told = [i.label for i in items[:k] if i.role == "bed" and i is not before]
        heard = before is not None and "b" in {word(toks, before.start), word(toks, before.start - 1)}
        fresh = of_bed and before is not None and before.label not in told and not heard
        tube = before is not None and before.role == "tube"
        if (
            not fresh and not tube and (of_bed or digit == item.start - 1)
        ):  # "bed six forty", "tube two forty": asked, or the bed and forty
            yield "the number may begin with the digit before it"


def _out(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed six out six forty", "six forty out", "forty mils out": how much came out, or the line?"""
    for item in items:
        bare = item.role == "level" and (not item.lead or (item.lead == "at" and not item.unit))
        ends = word(toks, item.end) == "out" and not word(toks, item.end + 1).isalnum()
        if bare and (ends or (not item.unit and word(toks, item.start - 1) == "out")):
            yield "what came out, or the line"


def _and_a_bed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "beds six and seven six forty", "tubes one and two six forty": bed 7 as well, and no seven o'clock."""
    for bed, item in pairwise([i for i in items if i.role != "sep"]):
        row = bed.role in {"bed", "tube"} or (
            bed.role == "level" and not (bed.lead or bed.unit) and (bed.amount or 0) <= MOST_BEDS
        )
        joined = row and word(toks, bed.end) in {"and", "&"} and item.start <= bed.end + 1
        small = (item.amount or MOST_BEDS + 1) <= MOST_BEDS or (item.known and item.label is not None)
        small |= bed.role != "level" and word(toks, bed.end + 1) in {*ONES, *TEENS, *SHORT}
        if joined and small and item.role in NUMBERS | {"time"} and not (item.unit or item.sure_time):
            yield "another bed, or a time or level"


def _value_or_bed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "suction and 20 no leak", "seal and 2": "at" heard as "and", or another bed."""
    for item in items:
        joined = item.role == "bed" and word(toks, item.start - 1) in {"and", "&"}
        if joined and word(toks, item.start - 2) in {"seal", "suction", "wall", "dial"}:
            yield "the value of a check, or a bed"


def _sounding(_: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "now leak" is "no leak" by its sound, "swing in six forty" swinging and the line."""
    said = toks.said[: len(toks)]
    if any(pair in ALIKE for pair in pairwise(said)):
        yield "a finding by its sound"


ALIKE = frozenset({("now", "leak"), ("know", "leak"), ("swing", "in"), ("title", "in"), ("now", "swing")})
SHORT = frozenset(map(str, range(1, 13)))
TEENS = frozenset({"ten", "eleven", "twelve"})
MOST_BEDS = 30
"""On most wards no bed has a greater number."""


def _undone(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed six on clamped", "bed six and clamped": unclamped, by its sound."""
    beds = {i.end for i in items if i.role == "bed"}
    for event in items:
        heard = event.role == "cue" and event.value == "what" and word(toks, event.start) == "clamped"
        before = event.start - 1
        if heard and (word(toks, before) in UN or (word(toks, before) == "and" and before in beds)):
            yield "clamped, or unclamped"


def _moved_or_line(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed six two seven": a line of 27, or bed six to seven?"""
    for bed, item in pairwise(items):
        parts = toks.said[item.start : item.end]
        bare = bed.role == "bed" and item.role == "level" and item.start == bed.end and not item.unit
        if bare and len(parts) == 2 and parts[0] == "two" and parts[1] in ONES:
            yield "to another bed, or a level"


def _of_next_words(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "six forty one more time", "six forty two rib fractures", "six forty six ish": 640, or 641?"""
    for item in items:
        if item.role not in AMOUNTS:
            continue
        last = word(toks, item.end - 1) in ONES and word(toks, item.end - 2) in {*TENS, *SCALES}
        named = any(i.role == "cue" and i.value == "reason" and i.start == item.end for i in items)
        of_one = word(toks, item.end) in OF_ONE and not _is_hour_of_day(toks, item.end)
        if last and (named or of_one):
            yield "the last digit may be of the words behind it"
    for level, time in pairwise(items):
        ends = level.role in AMOUNTS and word(toks, level.end - 1) in {*TENS, *SCALES}
        hour = time.role == "time" and time.start == level.end and word(toks, time.start) in ONES
        if ends and hour and word(toks, time.start + 1) in DAYS:
            yield "an hour, or the last digit of the number"  # "two ninety five last night"


DAYS = frozenset({"last", "tonight", "today", "this", "yesterday"})


def _is_hour_of_day(toks: Toks, i: int) -> bool:
    """ "two ninety five last night at eleven": the day of a time that is told whole."""
    day = word(toks, i) == "last" and word(toks, i + 1) in {"night", "evening"}
    return day and word(toks, i + 2) == "at" and starts_number(toks, i + 3)


OF_ONE = frozenset({"more", "last", "other", "final", "quick", "ish", "thing", "things"})
DIGITS = frozenset("123456789")
BREAKS = frozenset({",", "-", ":", ".", "comma", "colon", "dash"})
UN = frozenset({"on", "an", "in", "own"})
OH = frozenset({"oh", "o", "zero", "0"})
HOURS = frozenset({*ONES, "eleven", "twelve"} - {"five"})
TEN = 10
HUNDRED = 100
HALTING = frozenset({"uh", "um", "er", "erm"})
HEARD = (
    Rule(_said_again, AMOUNTS),
    Rule(_in_other_words, frozenset({"time"})),
    Rule(_twice_in_bed, frozenset({"bed"})),
    Rule(_parts_in_digits, AMOUNTS),
    Rule(_digit_by_digit, frozenset({"time"}), OH),
    Rule(_and_an_hour, frozenset({"level"}), frozenset({"hundred"})),
    Rule(_lone_digit, frozenset({"time"})),
    Rule(_tens_behind_digit, AMOUNTS, frozenset(TENS) | ROUND),
    Rule(_of_next_words, AMOUNTS, frozenset(ONES)),
    Rule(_out, frozenset({"level"}), frozenset({"out"})),
    Rule(_and_a_bed, frozenset({"bed", "tube", "level"}), frozenset({"and", "&"})),
    Rule(_value_or_bed, frozenset({"bed"}), frozenset({"and", "&"})),
    Rule(_sounding, frozenset({"leak", "tidal"}), frozenset({"now", "know", "in"})),
    Rule(_undone, frozenset({"what"}), UN | {"and"}),
    Rule(_moved_or_line, frozenset({"level"}), frozenset({"two"})),
    Rule(_hour_and_level, frozenset({"time"}), frozenset({"to", "past", "til", "at"})),
    Rule(_hour_mended, frozenset({"time"}), HALTING),
    Rule(_bed_goes_on, frozenset({"bad"}), frozenset(SCALES)),
    Rule(_breaks_off, NUMBERS | {"bed"}, frozenset({*HOMOPHONES, "point"})),
    Rule(half_in_digits, frozenset({"level"}), frozenset(ONES)),
    Rule(last_digit, NUMBERS | {"time"}, frozenset(HOMOPHONES)),
    Rule(first_digit, AMOUNTS, frozenset(HOMOPHONES)),
)
