"""Signs, in dictation, that a number is another one: its first or last digit was written as a word.

"at six fifty for" may be 654, "bed 20 two 60" bed 22. Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .clauses import NUMBERS
from .items import AMOUNTS, Item
from .numbers import Toks, heard_as_number, word
from .patterns.leads import BED_WORDS, LINES
from .patterns.numerals import HOMOPHONES, ONES, SCALES, TENS
from .rules import Rule

BREAKING = frozenset({"", ",", ".", ";", "!", "at", "@", "tea", "t"})
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
        if four or (joined and word(toks, before) != "to" and word(toks, before - 1) != "down"):
            yield "the word before the number may be its first digit"


def last_digit(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "at six fifty for.", "six hundred and for tea": a word that sounds like a digit, with no work."""
    for item in items:
        k = item.end + (word(toks, item.end) == "and")
        heard = item.role in NUMBERS | {"time"} and word(toks, k) in HOMOPHONES
        if heard and word(toks, k + 1) in BREAKING:
            yield "the word behind the number may be its last digit"


def before_all(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "both at AE30 bed 22 mark 680 bed 15 mark 270": what was not understood is of both beds."""
    beds = [i.start for i in items if i.role == "bed"]
    lost = len(beds) > 1 and any(i.role == "bad" and i.end <= beds[0] for i in items)
    yield from ["a number before all beds was not understood"] * lost


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


HEARD = (
    Rule(_bed_goes_on, frozenset({"bad"}), frozenset(SCALES)),
    Rule(before_all, frozenset({"bad"})),
    Rule(_breaks_off, NUMBERS | {"bed"}, frozenset({*HOMOPHONES, "point"})),
    Rule(half_in_digits, frozenset({"level"}), frozenset(ONES)),
    Rule(last_digit, NUMBERS | {"time"}, frozenset(HOMOPHONES)),
    Rule(first_digit, AMOUNTS, frozenset(HOMOPHONES)),
)
