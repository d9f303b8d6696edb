"""Signs, in dictation, that a word is another one that sounds like it, and its number another number.

"suction of" is suction off, "well ninety" the wall, "oh two two litres" oxygen. Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .items import AMOUNTS, Item
from .numbers import Toks, glued, is_digits, starts_number, word
from .patterns.leads import BED_WORDS, LINES
from .patterns.numerals import ONES, SCALES, TEENS, TENS
from .roles import CHECK_LIMITS
from .rules import Rule
from .runtogether import RUN_TOGETHER
from .soundalikes import eats_a_number

OH = frozenset({"oh", "o", "zero", "nought"})
ONE_DIGIT = frozenset(ONES) - OH
NOON, LARGEST = 12, 150
"""An hour; kg, more than almost all patients weigh."""
TUBES = frozenset({"tube", "drain"})


def _off(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed twelve suction of", "bed twelve of suction": off."""
    for item in items:
        said = item.role == "cue" and item.value == "suction" and item.end == len(toks)
        before = word(toks, item.start - 1) == "of" and word(toks, item.start) == "suction"
        if (said and word(toks, item.end - 1) == "of") or before:
            yield "suction of what, or off"


def _other_value(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed twelve well ninety": the wall; "wait eighty two": the weight."""
    starts = {i.end for i in items if i.role in {"bed", "check"}}
    for item in items:
        bare = item.role == "level" and not (item.unit or item.lead) and item.start - 1 in starts
        heard = word(toks, item.start - 1)
        wall = heard in {"well", "while"} and (item.amount or 0) <= CHECK_LIMITS["wall"]
        if bare and (wall or (heard in {"wait", "waits", "way"} and (item.amount or 0) <= LARGEST)):
            yield "the wall or the weight by its sound, or a line"


def _out(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed twelve tube about six": out at six."""
    for item in items:
        hour = item.role == "level" and item.about and 0 < (item.amount or 0) <= NOON and not item.unit
        if hour and word(toks, item.start - 1) == "about" and word(toks, item.start - 2) in TUBES:
            yield "a tube out, or a line"


def _led_by_nought(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed five oh two two litres": oxygen, and no line of 22 litres; "mark oh forty" lost its hundreds."""
    for item in items:
        if item.role not in AMOUNTS or word(toks, item.start + 1) == "point":
            continue
        led = word(toks, item.start) in OH and starts_number(toks, item.start + 1)
        if led or (word(toks, item.start - 1) in OH and not item.lead):
            yield "what stood before the nought was lost"


def _in_a_bed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "drain in four sixty": bed 4 with sixty, or 460?"""
    numbered = [i for i in items if i.role in {"num", "level"}]
    if len(numbered) == 1 and word(toks, numbered[0].start - 1) == "in":
        yield from ("a bed and its line, or a number" for i in numbered if i.role == "num" and not i.unit)


def _row(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed six seven eight all at four": three beds, or a line of 78?"""
    for bed, item in pairwise([i for i in items if i.role != "sep"]):
        digits = toks.said[item.start : item.end]
        start = item.start - (word(toks, item.start - 1) == "at")  # "at four five and six seven ten"
        bare = bed.role == "bed" and item.role == "level" and start == bed.end and not item.unit
        bare &= bed.end == bed.start + 1  # not "bed one eight five five", of 18 or of 1
        first = bed.role == "level" and item.role == "bed" and word(toks, bed.end) == "and"
        digits = toks.said[bed.start : bed.end] if first else digits  # "six seven and eight no leak"
        bare |= first and not (bed.lead or bed.unit)
        if bare and len(digits) == len(("seven", "eight")) and ONE_DIGIT.issuperset(digits):
            yield "beds in a row, or a line"


def _tubes(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "tube one twenty two eighty": of tube 2 as well? "tube for two eighty": of tube 4?"""
    for before, item in pairwise(items):
        if item.role != "level" or item.unit:
            continue
        if item.lead == "old" and toks.said[item.start : item.end] == ("one",):
            yield "the final line, or the old one"  # "tube out final one"
        counted = before.role == "tube" and before.name == "1" and "two" in toks.said[item.start : item.end]
        heard = before.value == "tubeword" and toks.said[before.end : item.start] in {("for",), ("too",)}
        if heard or (counted and item.end > item.start + 2):
            yield "another tube, or its line"


def _suction_hour(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "suction twenty six": 20 at six o'clock, for suction is set in steps of five."""
    timed = any(i.role == "time" for i in items)
    for item in items if not timed else ():
        odd = item.role == "check" and item.name == "suction" and not item.unit and (item.amount or 0) % 5
        if odd and item.end == item.start + 2 and word(toks, item.end - 1) in ONE_DIGIT:
            yield "a suction, or a suction and the hour"


def _un(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed twelve on swinging": not swinging, by its sound?"""
    beds = {i.end for i in items if i.role == "bed"}
    for item in items:
        behind_bed = item.role == "cue" and item.value == "tidal" and item.start - 1 in beds
        if behind_bed and word(toks, item.start - 1) in {"on", "un", "and"}:
            yield "swinging, or not"


def _sounds_lost(_: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "tube too level 40", "seventeen hundred and for", "at to in the morning": a number by its sound."""
    for k in range(1, len(toks)):
        text, before, after = word(toks, k), word(toks, k - 1), toks.said[k + 1 : k + 4]
        tube = text in {"too", "won"} and before in TUBES
        ended = text in {"for", "to", "too", "won", "ate"} and before == "and" and word(toks, k - 2) in SCALES
        hour = text in {"to", "too", "for", "ate", "won"} and before in {"at", "add"}
        hour &= after in HALF_DAYS or after[:1] in {("am",), ("pm",)} or after[:2] in {("a", "m"), ("p", "m")}
        if tube or ended or hour:
            yield "a number by its sound"


def _tube_and_nought(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "tube one zero fifteen thirty": the first tube with nothing in it, or ten."""
    for tube, item in pairwise(items):
        spelt = item.role == "level" and item.end == item.start + 2 and word(toks, item.start) in ONE_DIGIT
        if spelt and tube.role == "cue" and tube.value == "tubeword" and word(toks, item.end - 1) in OH:
            yield "a tube and nothing in it, or its line"


def _ten_as_then(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "at five to then", "mark then fifty", "mark three then bed six": ten, and no then."""
    small = {i.end for i in items if i.role in AMOUNTS and not i.unit and (i.amount or 0) < TWENTY}
    times = {i.end for i in items if i.role == "time"}
    for k in range(1, len(toks)):
        if word(toks, k) not in THENS:
            continue
        before, after = word(toks, k - 1), word(toks, k + 1)
        timed = before in {"at", "add"} or (before in {"to", "past"} and starts_number(toks, k - 2))
        timed |= k in times and after in LINES
        led = before in BED_WORDS | LINES | {"final", "drained", "reads"} and starts_number(toks, k + 1)
        led |= after == "hundred" or (before in {"is", "was"} and after in TENS)
        ends = (word(toks, k - 2), before) == ("hundred", "and") and after not in GOING_ON
        if timed or led or ends or k in small:
            yield "then may be ten"


def ends_in_ten(toks: Toks) -> bool:
    """ "bed nineteen was nine then": nothing that a message ends with is left out where it may be ten."""
    last = len(toks) - 1
    return word(toks, last) in THENS and starts_number(toks, last - 1)


def _by_sound(_: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "mark seven under", "at for ten", "drained none sixty", "final to ninety": a part of the number."""
    plain = RIGHTING.isdisjoint(toks.words)
    for k in range(1, len(toks)):
        text, before, after = word(toks, k), word(toks, k - 1), word(toks, k + 1)
        counted, behind = starts_number(toks, k + 1), starts_number(toks, k - 1)
        at = before in {"at", "add"} and text in TWO_OR_FOUR | {"won", "ate"}
        at &= counted or after in LINES | {"", "marks"}
        goes_on = after in {"", "and", "at"} or counted or word(toks, k - 2) not in BED_WORDS
        hundred = text in HUNDREDS and before in BELOW_TWENTY and goes_on
        twice = text in TWO_OR_FOUR and (after in TWO_OR_FOUR | {"ate"} or after in OH) and behind
        led = text in {"to", "too"} and counted and (before == "final" or (before in LED and plain))
        bed = text in TWO_OR_FOUR and before in TENS and after in {"is", "was", "mark"}
        eight = text == "ate" and (counted or behind) and eats_a_number(toks)
        oh = text in TWO_OR_FOUR and after in OH and starts_number(toks, k + 2)
        if hundred or at or twice or led or bed or eight or oh or (text in {"none", "nun"} and counted):
            yield "a part of the number by its sound"


def _letter_and_bed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "M8 mark 730": bed 8 by its sound, and no tube of it."""
    for tube in items:
        letter = tube.role == "tube" and tube.end == tube.start + 1 and len(word(toks, tube.start)) == 1
        if letter and is_digits(toks, tube.end) and glued(toks, tube.end):
            yield "a letter that may be of the bed"


def _bed_and_nought(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed two oh five mark 600" where there is no bed 205: no line of bed 2 at five."""
    for bed, time in pairwise(items):
        behind = bed.role == "bed" and time.role == "time" and time.start == bed.end == time.end - 2
        if behind and word(toks, time.start) in OH and word(toks, time.end) in LINES:
            yield "the bed may go on"


def _to_as_two(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "ten two eleven bed six 550": at ten to eleven, and no 211 in bed 10."""
    timed = {k for i in items if i.role == "time" or i.unit for k in range(i.start, i.end)}
    for k in range(len(toks) - 2):
        minutes = word(toks, k) in MINUTES and word(toks, k - 1) in BEFORE_TIME and k not in timed
        if minutes and word(toks, k + 1) in {"two", "too"} and word(toks, k + 2) in HOURS:
            yield "a time by its sound"


BELOW_TWENTY = ONES.keys() | TEENS.keys() | {"for", "ate", "won", "to", "too", "fife"}
TWO_OR_FOUR = frozenset({"to", "too", "for"})
LED = frozenset({"final", "mark", "line", "level", "reading", "was", "drained"})
RIGHTING = frozenset(
    {"correct", "correction", "change", "changed", "amend", "update", "fix", "edit", "should"}
)
RIGHTING |= {"make", "move", "up", "corrected", "revise", "adjust"}
GOING_ON = BED_WORDS | {"at", "left", "right", "the", "another", "", "no"}
"""Behind "and then" these go on with something else."""
THENS = frozenset({"then", "tin"})
HUNDREDS = frozenset({"under", "hunter", "hundreds", "hundredth"})
MINUTES = frozenset({"five", "ten", "twenty", "quarter"})
HOURS = ONE_DIGIT | {"ten", "eleven", "twelve"}
BEFORE_TIME = frozenset({"", "at", "add", "and", ",", "."})
TWENTY = 20
HALF_DAYS = {("in", "the", "morning"), ("in", "the", "afternoon"), ("in", "the", "evening")}
OTHER_WORDS = (
    Rule(_sounds_lost, AMOUNTS, frozenset({"too", "won", "for", "to", "ate"})),
    Rule(_ten_as_then, AMOUNTS | {"num"}, THENS),
    Rule(_by_sound, AMOUNTS | {"num", "bed"}, HUNDREDS | TWO_OR_FOUR | {"won", "ate", "none", "nun"}),
    Rule(_letter_and_bed, frozenset({"tube"})),
    Rule(_bed_and_nought, frozenset({"time"}), OH),
    Rule(_to_as_two, AMOUNTS, frozenset({"two", "too"})),
    Rule(_tube_and_nought, frozenset({"tubeword"}), OH),
    *RUN_TOGETHER,
    Rule(_off, frozenset({"suction"}), frozenset({"of"})),
    Rule(_other_value, frozenset({"level"}), frozenset({"well", "while", "wait", "waits", "way"})),
    Rule(_out, frozenset({"level"}), frozenset({"about"})),
    Rule(_led_by_nought, AMOUNTS, OH),
    Rule(_tubes, frozenset({"level"}), frozenset({"one", "two", "for", "too"})),
    Rule(_suction_hour, frozenset({"check"}), ONE_DIGIT),
    Rule(_in_a_bed, frozenset({"num"}), frozenset({"in"})),
    Rule(_row, frozenset({"level"}), ONE_DIGIT),
    Rule(_un, frozenset({"tidal"}), frozenset({"on", "un", "and"})),
)
