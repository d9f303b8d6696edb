"""What follows a time and is always taken with it: a.m., o'clock, hours, in the morning."""

from __future__ import annotations

from .clockface import Clock
from .days import FIRST_WORDS, part_of_day
from .numbers import Toks, glued, is_digits, word
from .patterns.clockwords import AMPM, HOUR_WORDS

_HOURS = frozenset({*AMPM, "a", "p", "o'clock", "oclock", "o", *HOUR_WORDS})
"""What says of which half of the day an hour is, or that it is one, begins with one of these."""
EITHER = frozenset({"am", "pm", "afternoon"})
"""Of "quarter to twelve pm" these may be of noon or of the quarter hour before it."""


def suffixed(toks: Toks, i: int, clock: Clock) -> tuple[int, Clock]:
    """The end of the time with all that follows it, and what it says then."""
    end = i
    if word(toks, i) in _HOURS:
        end, clock = _meridiem(toks, i, clock)
        end, clock = _hours_word(toks, end, clock)
        if not clock.part:
            end, clock = _meridiem(toks, end, clock)
    stop, part = part_of_day(toks, end) if word(toks, end) in FIRST_WORDS else (end, "")
    if part and not (word(toks, end) == "at" and is_digits(toks, end + 2)):
        end, clock = stop, _with_part(clock, part)
    if clock.crossed and clock.part in EITHER:
        clock = clock._replace(part="")
    return end, clock


def _with_part(clock: Clock, part: str) -> Clock:
    if clock.part in {"am", "pm"} and part not in {"am", "pm"}:
        return clock._replace(sure=True)
    return clock._replace(part=part, sure=True)


def _meridiem(toks: Toks, i: int, clock: Clock) -> tuple[int, Clock]:
    text = word(toks, i)
    if text in AMPM:  # a dot behind "pm" ends the sentence
        return i + 1, clock._replace(part=AMPM[text], sure=True)
    if text not in {"a", "p"}:
        return i, clock
    m = i + 2 if word(toks, i + 1) == "." else i + 1
    if word(toks, m) == "m":
        return _skip_dot(toks, m + 1), clock._replace(part=text + "m", sure=True)
    if glued(toks, i) or text == "p":
        return _skip_dot(toks, i + 1), clock._replace(part=text + "m", sure=True)
    return i, clock


def _skip_dot(toks: Toks, i: int) -> int:
    return i + 1 if word(toks, i) == "." and (glued(toks, i) or word(toks, i - 1) == "m") else i


def _hours_word(toks: Toks, i: int, clock: Clock) -> tuple[int, Clock]:
    text = word(toks, i)
    if sign := _o_clock(toks, i):
        return (sign, clock._replace(sure=True)) if clock.minute == 0 or clock.sure else (i, clock)
    if text == "h" and clock.style != "past" and (glued(toks, i) or clock.style == "24"):
        return i + 1, clock._replace(style="24", sure=True)
    if text == "hr" and clock.style == "12" and is_digits(toks, i + 1):
        return i, clock  # "915 hr 110": the heart rate
    if text in HOUR_WORDS and clock.style in {"24", "12"}:
        return i + 1, clock._replace(style="24", sure=True)
    return i, clock


def _o_clock(toks: Toks, i: int) -> int:
    """The end of "o'clock" in its spellings, or 0."""
    if word(toks, i) in {"o'clock", "oclock"}:
        return i + 1
    last = i + 1 + (word(toks, i + 1) == "'")
    return last + 1 if word(toks, i) == "o" and word(toks, last) == "clock" else 0
