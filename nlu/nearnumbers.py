"""Words that may be a misheard number or letter: beside a value such a word may be the rest of it.

"bed twenty fife", "mark three forty sex", "bed nine bee": what was lost changes the number, so it is asked.
Any other word beside a value that its own word leads says nothing of it. Called by `leftovers`, for dictated
messages.
"""

from __future__ import annotations

from functools import lru_cache

from rapidfuzz.distance import OSA

from .behind import DOUBTING, LINKING
from .items import Item, is_now
from .labels import letter_of
from .numbers import Toks, word
from .patterns.asides import ASIDES
from .patterns.clockwords import AGO, HOUR_WORDS, MINUTE_WORDS, PAST, TO
from .patterns.clockwords import AMPM as HALVES
from .patterns.leads import BED_WORDS
from .patterns.numerals import HOMOPHONES, NUMERALS
from .patterns.plainwords import PLAIN_WORDS
from .patterns.smalltalk import NAMES
from .roles import is_event

NUMBERED = frozenset({"level", "volume", "output", "check", "alt", "num"})
_OF_DAY = "morning afternoon evening night tonight noon midnight today yesterday"
OF_DAY = frozenset(_OF_DAY.split())
OF_DAY |= HALVES.keys() | AGO | MINUTE_WORDS | HOUR_WORDS | PAST | TO
"""Behind a number these say that some of it is a time."""
NOTICES = frozenset({"alert", "alarm", "warning", "notice", "caution", "message", "notification", "flag"})
NOUNS = frozenset({"tubeword", "canister"})
LETTER = 2
"""A word so short may be a letter."""
SHORT, LONG = 4, 6
"""Letters of a word that is near a number with one letter changed, or with two."""


@lru_cache(maxsize=4096)
def may_be_number(text: str) -> bool:
    """Whether a word that was not understood may be a number, a letter or a part of one."""
    if text in PLAIN_WORDS:
        return False
    if (
        len(text) <= LETTER
        or not text.isalpha()
        or text in HOMOPHONES
        or len(letter_of(text, voice=True)) == 1
    ):
        return True
    reach = 1 if len(text) <= SHORT else 2 if len(text) <= LONG else 3
    return any(OSA.distance(text, number, score_cutoff=reach) <= reach for number in NUMERALS)


def says_nothing(items: tuple[Item, ...], k: int, toks: Toks) -> bool:
    """Whether the words between this piece and the next say nothing of the value among them.

    "the gentleman in bed 26", "bed 9 resting, line 540", "540 mils, talk later": the bed is called a bed, and
    the number of the line a line, with its unit, or of a time that is sure.
    """
    before, item = items[k], items[k + 1]
    if any(i.role == "cue" and i.name == "withdrawn" for i in items):
        return all(_is_plain(i) for i in (before, item) if i.unread)
    if item.role == "bed":
        called = word(toks, item.start - 1) in BED_WORDS
        return before.unread and called and (_is_led_line(items, k + 1) or _is_event_near(items, k + 1))
    if before.role == "bed":
        seen = item.name in NOTICES and any(i.role == "cue" and i.name == "acknowledged" for i in items[:k])
        return _is_plain(item) and (seen or _is_led_line(items, k + 1) or _is_event_near(items, k + 1))
    if before.role == "level":
        named = item.name in NAMES and not before.unit  # "five forty Kate": five forty eight?
        return _is_led(before) and not named and _is_remark(items, k + 1)
    if item.role == "time":
        told = any(is_event(i) or (i.role == "level" and _is_led(i)) for i in items[:k])
        plain = _is_plain(before) or before.name in ASIDES
        return told and plain and not is_now(item) and (item.sure_time or item.at)
    whole = before.full_clock or before.spoken_clock
    sure = before.sure_time or (whole and any(map(is_event, items[:k])))  # "clamped since 1800 for the trial"
    return before.role == "time" and sure and _is_remark(items, k + 1)


def is_told_later(items: tuple[Item, ...], strange: Item) -> bool:
    """ "new line, she's asleep in bed 24, her mark is 340": the line comes later, behind its own word."""
    levels = [i for i in items if i.role == "level"]
    later = [i for i in levels if i.start > strange.end and _is_led(i)]
    return len(levels) == len(later) == 1 and _is_plain(strange)


def _is_plain(item: Item) -> bool:
    return item.unread and item.name not in DOUBTING | OF_DAY and not may_be_number(item.name)


def _is_led(level: Item) -> bool:
    return level.lead in {"level", "levelat"} or level.unit == "ml"


def _is_led_line(items: tuple[Item, ...], k: int) -> bool:
    """Whether the next number is a level that its own word leads, with nothing strange between them."""
    rest = items[k:]
    level = next((n for n, i in enumerate(rest) if i.role in NUMBERED or i.role in {"time", "bad"}), 0)
    return level > 0 and rest[level].role == "level" and _is_led(rest[level]) and not rest[level - 1].unread


def _is_event_near(items: tuple[Item, ...], k: int) -> bool:
    """ "bed 7 vomited and pulled his tube out": whether an event is told before any other number or stop."""
    rest = items[k:]
    event = next((n for n, i in enumerate(rest) if not (i.unread or i.role == "tube" or i.value in NOUNS)), 0)
    return event > 0 and is_event(rest[event]) and rest[event].name not in {"away", "back"}


def _is_remark(items: tuple[Item, ...], k: int) -> bool:
    """Whether all that follows up to a stop is plain words, and does not go on about the number."""
    for n, item in enumerate(items[k:]):
        if item.role == "sep":
            return True
        if not _is_plain(item) or (n == 0 and item.name in LINKING):
            return False
    return True
