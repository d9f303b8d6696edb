"""Spoken and written times: what the tokens at a place can say, before any day is known.

Digits are read here and nowhere else ("1900" is never a year). A `Clock` says what was said;
`moments` finds which moment that is.
"""

from __future__ import annotations

from collections.abc import Iterator

from .clockface import Clock, Style
from .days import FIRST_WORDS, Day, by_first_word, day_words, is_phrase, may_be_day
from .lengths import MEASURES, length, less_minutes
from .numbers import Toks, after_hyphen, glued, is_digits, small, starts_number, word
from .patterns.clockwords import (
    AGO,
    AT,
    HOUR_WORDS,
    MINUTE_WORDS,
    NOON,
    NOW,
    PAST,
    TO,
)
from .patterns.numerals import NUMERALS, ONES, TENS, ZEROS
from .suffixes import suffixed
from .tokens import remembered

Found = tuple[int, Clock]
_NOW = by_first_word((phrase,) for phrase in NOW)
STARTS = (
    FIRST_WORDS
    | NUMERALS
    | frozenset({*_NOW, *NOON, "a", "an", "about", "half", "quarter", "top", "point", ".", "$"})
)
"""A time begins with one of these, or with digits."""
MOVING = frozenset(
    {"moved", "move", "moving", "transferred", "transfer", "shifted", "swapped", "relocated", "from"}
)
"""Behind these "10 to 5" is from one bed or setting to another."""
LONGEST_AGO = 48 * 60
"""Minutes: "two eighty three hours ago" is no 83 hours ago."""
RANGE = frozenset({"to", "till", "til"})
LEAST_TENS = 10
"""Between two hours these say a range: "six to seven"."""
_LINKS = frozenset({*PAST, *TO})
_UNTOLD = frozenset({"half", "top"})
_LINKED = _LINKS | _UNTOLD
"""Without one of these no minutes are told before or after an hour."""


@remembered
def clocks(toks: Toks, i: int) -> list[Found]:
    """Every time that can begin at a place, with its end; a suffix that is there is always taken."""
    text = word(toks, i)
    if not text or not (text in STARTS or text[0].isdecimal()):
        return []
    return list(dict.fromkeys(_whole(toks, i)))


def _now(toks: Toks, i: int) -> int:
    """The end of "right now" and the like, or 0."""
    return next((i + len(p) for (p,) in _NOW[word(toks, i)] if is_phrase(toks, i, p)), 0)


def _whole(toks: Toks, i: int) -> Iterator[Found]:
    now = _now(toks, i) if word(toks, i) in _NOW else 0
    if now and not (less_minutes(toks, now)):
        yield now, Clock(style="now", sure=True)
    if not toks.words.isdisjoint(MEASURES):
        yield from _ago(toks, i)
    for end, core in _core(toks, i):
        yield _with_suffix(toks, end, core)
    if may_be_day(toks, i):
        yield from _dated(toks, i)


def _dated(toks: Toks, i: int) -> Iterator[Found]:
    """ "yesterday 2300", "last night at 11", "in the afternoon at 7", "3/4 0700"."""
    for start, day, part in day_words(toks, i):
        if i == 0 and day is None and start == 1 and word(toks, 1) in {",", "!"}:
            return  # "morning, 22 is at 1315": a greeting
        at = start
        while word(toks, at) in AT:
            at += 1
        alone = True
        for end, core in _core(toks, at):
            stop, clock = _with_suffix(toks, end, core)
            alone = False
            yield stop, _with_day(clock, day, part)
        if alone and day is not None:
            yield start, Clock(style="date", day=day, part=part, sure=True)


def _with_day(clock: Clock, day: Day | None, part: str) -> Clock:
    if clock.part and part and clock.part != part and clock.part not in {"am", "pm"}:
        return clock._replace(style="odd", sure=True)
    kept = clock.part or part
    return clock._replace(day=clock.day if day is None else day, part=kept, sure=True)


# What follows a time


def _with_suffix(toks: Toks, i: int, clock: Clock) -> Found:
    end, clock = suffixed(toks, i, clock)
    return _with_day_after(toks, end, clock)


def _with_day_after(toks: Toks, i: int, clock: Clock) -> Found:
    after = i + 1 if word(toks, i) == "," else i
    if not may_be_day(toks, after):
        return i, clock
    found = next(day_words(toks, after), None) if clock.day is None else None
    if (
        found is None
        or found[1] is None
        or (isinstance(found[1], tuple) and _core_after_date(toks, found[0]))
    ):
        return i, clock
    return found[0], _with_day(clock, found[1], found[2])


def _core_after_date(toks: Toks, i: int) -> bool:
    """Whether the date is that of the next time: "1050 3/4 0700"."""
    return any(True for _ in _core(toks, i))


# The time itself


def _core(toks: Toks, i: int) -> Iterator[Found]:
    text = word(toks, i)
    if not text:
        return
    if text in NOON:
        yield i + 1, _noon(text)
    elif text[0].isdecimal():
        yield from _digits(toks, i)
    else:
        yield from _words(toks, i)
    if not toks.words.isdisjoint(NOON):
        yield from _twelve_named(toks, i)
    if not toks.words.isdisjoint(_LINKED):
        yield from _minutes_past(toks, i)


def _noon(text: str) -> Clock:
    return Clock(hour=NOON[text], style="24", part="noon" if NOON[text] else "midnight", sure=True)


def _twelve_named(toks: Toks, i: int) -> Iterator[Found]:
    """ "12:00 noon", "12 o'clock midnight", "0000 midnight": the hour, and once more by its name."""
    hour = word(toks, i)
    colon = word(toks, i + 1) == ":" and word(toks, i + 2) == "00" and glued(toks, i + 1)
    end = i + 3 if colon else i + 1
    oclock = word(toks, end) in {"o'clock", "oclock"}
    named = word(toks, end + oclock)
    twelve = hour in {"12", "twelve"} and (colon or oclock)
    if named in NOON and (twelve or hour == f"{NOON[named]:02}00" or (colon and hour == f"{NOON[named]:02}")):
        yield end + oclock + 1, _noon(named)


def _digits(toks: Toks, i: int) -> Iterator[Found]:
    text = word(toks, i)
    if text == "12" and word(toks, i + 1) in {*NOON, "mn"}:
        yield i + 2, _noon("midnight" if word(toks, i + 1) == "mn" else word(toks, i + 1))
        return
    if len(text) in {3, 4}:
        yield from _checked(i + 1, int(text[:-2]), int(text[-2:]), "24" if len(text) == 4 else "12", text)
    if len(text) <= 2:
        yield from _hour_and_minutes(toks, i, text)
        sign = word(toks, i + 1)
        if not (sign in {":", "."} and glued(toks, i + 1) and glued(toks, i + 2) and is_digits(toks, i + 2)):
            yield from _hour_alone(i + 1, int(text), text)


def _hour_alone(end: int, hour: int, text: str) -> Iterator[Found]:
    if hour <= 24:
        led = len(text) == 2 and text[0] == "0"
        yield end, Clock(hour=hour, style="24" if hour > 12 or led else "hour")


def _hour_and_minutes(toks: Toks, i: int, text: str) -> Iterator[Found]:
    sign, tail = word(toks, i + 1), word(toks, i + 2)
    if sign in {":", ".", "h", ";"} and len(tail) == 2 and tail.isdecimal() and glued(toks, i + 1):
        if not glued(toks, i + 2) and sign != "h":
            return
        end = i + 3
        seconds = word(toks, end + 1)
        if sign == ":" and word(toks, end) == ":" and seconds.isdecimal() and len(seconds) == 2:
            end += 2 * (glued(toks, end) and glued(toks, end + 1))  # "19:00: 12 340" is of bed 12
        style: Style = "24" if sign == "h" else "12"
        for stop, clock in _checked(end, int(text), int(tail), style, text):
            yield stop, clock._replace(sure=sign == "h", colon=sign != "h")
    elif sign == "h" and tail.isdecimal() and len(tail) == 2:
        yield from _checked(i + 3, int(text), int(tail), "12", text)
    elif len(sign) == 2 and sign.isdecimal() and not glued(toks, i + 1):
        yield from _checked(i + 2, int(text), int(sign), "12", text)
    elif not glued(toks, i + 1):
        for end, minute in _minute_words(toks, i + 1):
            yield from _checked(end, int(text), minute, "12", text)
        if sign == "hundred" and text != "0":
            yield from _checked(i + 2, int(text), 0, "24", text)


def _checked(end: int, hour: int, minute: int, style: Style, text: str = "") -> Iterator[Found]:
    """The time, if there is one of that hour and minute; an hour over 12 or a leading zero: 24-hour."""
    if minute > 59 or hour > 24 or (hour == 24 and minute):
        return
    led = text[:1] == "0"
    yield end, Clock(hour, minute, "24" if hour > 12 or led else style, sure=led and len(text) == 4)


def _words(toks: Toks, i: int) -> Iterator[Found]:
    text = word(toks, i)
    if text in ZEROS:
        yield from _led_by_zero(toks, i)
        return
    for end, hour in small(toks, i):
        if hour == 12 and word(toks, end) in NOON:
            yield end + 1, _noon(word(toks, end))
        if not 1 <= hour <= 24:
            continue
        yield end, Clock(hour=hour, style="24" if hour > 12 else "hour")
        if word(toks, end) == "hundred":
            yield end + 1, Clock(hour=hour, style="24")
            rest = end + 2 if word(toks, end + 1) == "and" else end + 1
            for stop, minute in _minute_words(toks, rest):
                yield from _checked(stop, hour, minute, "24")
        for stop, minute in _minute_words(toks, end):
            yield from _checked(stop, hour, minute, "12")
    if text in ONES:
        yield from _four_spelt(toks, i)


def _minute_words(toks: Toks, i: int) -> list[tuple[int, int]]:
    i = after_hyphen(toks, i)
    if word(toks, i) in ZEROS:
        j = after_hyphen(toks, i + 1)
        if word(toks, j) in ONES:
            return [(j + 1, ONES[word(toks, j)])]
        if is_digits(toks, j) and len(word(toks, j)) == 1:
            return [(j + 1, int(word(toks, j)))]
        return [(j + 1, 0)] if word(toks, j) in ZEROS else []
    if is_digits(toks, i):
        return [(i + 1, int(word(toks, i)))] if len(word(toks, i)) == 2 else []
    return [(end, value) for end, value in small(toks, i) if 10 <= value <= 59]


def _led_by_zero(toks: Toks, i: int) -> Iterator[Found]:
    """ "oh seven hundred", "oh seven oh five", "oh seven thirty", "zero hundred", "oh oh thirty"."""
    j = after_hyphen(toks, i + 1)
    hour = ONES.get(word(toks, j), 0)
    if word(toks, i + 1) == "hundred":
        yield i + 2, Clock(hour=0, style="24", sure=True)
        return
    if not hour and word(toks, j) not in ZEROS:
        return
    if hour:
        yield j + 1, Clock(hour=hour, style="24")
    if word(toks, j + 1) == "hundred":
        yield j + 2, Clock(hour=hour, style="24", sure=True)
    for end, minute in [*_minute_words(toks, j + 1), *_spelt_minutes(toks, j + 1)]:
        yield from ((e, c._replace(sure=True)) for e, c in _checked(end, hour, minute, "24"))


def _spelt_minutes(toks: Toks, i: int) -> list[tuple[int, int]]:
    """ "oh two two seven": the minutes digit by digit."""
    tens, ones = ONES.get(word(toks, i), 0), word(toks, i + 1)
    if not tens or not (ones in ONES or ones in ZEROS):
        return []
    return [(i + 2, tens * 10 + ONES.get(ones, 0))]


def _four_spelt(toks: Toks, i: int) -> Iterator[Found]:
    """ "one nine three zero", digit by digit."""
    run = ""
    for k in range(4):
        text = word(toks, i + k)
        run += "0" if text in ZEROS else str(ONES.get(text, ""))
    if len(run) == 4:
        yield from _checked(i + 4, int(run[:2]), int(run[2:]), "24")


# Before and after the hour, and back from now


def _minutes_past(toks: Toks, i: int) -> Iterator[Found]:
    """ "quarter past seven", "ten to eight", "20 min past 8", "half past noon", "ten past"."""
    end, minutes = (i, 0) if toks.words.isdisjoint(_LINKS) else _minutes(toks, i)
    if not minutes:
        if not toks.words.isdisjoint(_UNTOLD):
            yield from _half_hour(toks, i)
            yield from _top_of_hour(toks, i)
        return
    counted = word(toks, end - 1) in MINUTE_WORDS
    end = after_hyphen(toks, end)
    link = word(toks, end)
    moved = link == "to" and word(toks, i - 1) in MOVING and not counted  # from one to another
    cut = link == "to" and not counted and word(toks, i - 1) in (TENS if minutes < LEAST_TENS else {"bed"})
    if moved or cut or (link == "of" and minutes % 5 and not counted):
        return  # "bed twenty nine to five seventeen": no nine to five
    if link in PAST or link in TO:
        sign = 1 if link in PAST else -1
        whole = False
        for stop, hour in _core_hour(toks, after_hyphen(toks, end + 1)):
            whole = True
            if {word(toks, stop - 1), word(toks, stop)} & HOUR_WORDS:
                if not (counted or hour.hour > 12) or link not in PAST:
                    continue  # "9 past 6h": a length of time
                stop += word(toks, stop) in HOUR_WORDS
            if word(toks, stop) == ":" and glued(toks, stop + 1) and is_digits(toks, stop + 1):
                continue  # "bed 2 and 16 till 12:45"
            ranged = link in RANGE and minutes % 5 and not counted and (hour.hour - minutes) % 12 in {1, 2}
            yield stop, Clock(style="odd", sure=True) if ranged else _shifted(hour, sign * minutes)
        if not whole and link in PAST and minutes < 60 and word(toks, end + 1) in {"", ".", ",", ";"}:
            yield end + 1, Clock(style="past", back=minutes, sure=True)


def _half_hour(toks: Toks, i: int) -> Iterator[Found]:
    """ "half seven" is 6:30 to some and 7:30 to others."""
    if word(toks, i) == "half":
        for end, _ in _core_hour(toks, i + 1):
            yield end, Clock(style="odd", sure=True)


def _top_of_hour(toks: Toks, i: int) -> Iterator[Found]:
    start = i + 1 if word(toks, i) == "the" else i
    if is_phrase(toks, start, ("top", "of", "the", "hour")):
        yield start + 4, Clock(style="past", back=0, sure=True)


def _minutes(toks: Toks, i: int) -> tuple[int, int]:
    start = i + 1 if word(toks, i) == "a" else i
    text = word(toks, start)
    if text == "one" and not starts_number(toks, start):
        return i, 0  # "I'll do that one after"
    if text in {"quarter", "half"}:
        link = word(toks, after_hyphen(toks, start + 1))
        linked = link in PAST or (text == "quarter" and link in TO)
        return (start + 1, 15 if text == "quarter" else 30) if linked else (i, 0)
    if is_digits(toks, start) and len(text) <= 2:
        end, value = start + 1, int(text)
    else:
        end, value = max(small(toks, start), default=(start, 0))
    if word(toks, end) in MINUTE_WORDS:
        end += 1
    return (end, value) if 0 < value < 60 else (i, 0)


def _core_hour(toks: Toks, i: int) -> Iterator[tuple[int, Clock]]:
    text = word(toks, i)
    if text in NOON:
        yield i + 1, _noon(text)
    elif is_digits(toks, i) and len(text) <= 2:
        yield from _hour_alone(i + 1, int(text), text)
    elif text not in ZEROS:
        for end, hour in small(toks, i):
            yield from _hour_alone(end, hour, str(hour))
            if word(toks, end) == "hundred" and hour <= 24:
                yield end + 1, Clock(hour=hour, style="24")
    if is_digits(toks, i) and len(text) == 4 and text.endswith("00"):
        yield from _checked(i + 1, int(text[:2]), 0, "24", text)


def _shifted(hour: Clock, minutes: int) -> Clock:
    total = hour.hour * 60 + minutes
    if hour.style == "hour" and total < 60:
        total += 720
    total %= 1440
    style: Style = "24" if hour.style == "24" else "12"
    part = "" if hour.part in {"noon", "midnight"} else hour.part
    crossed = style == "12" and hour.hour == 12 and minutes < 0
    return Clock(total // 60, total % 60, style, part=part, sure=True, crossed=crossed)


def _ago(toks: Toks, i: int) -> Iterator[Found]:
    """ "20 min ago", "half an hour ago", "an hour and a half ago", "2 hrs 10 min back", "now - 1hour"."""
    start = i + 1 if word(toks, i) in {"about", "the"} else i
    end, minutes = length(toks, start)
    if minutes is not None and minutes <= LONGEST_AGO and word(toks, end) in AGO:
        yield end + 1, Clock(style="ago", back=minutes, sure=True)
    if word(toks, i) == "now" and (less := less_minutes(toks, i + 1)):
        yield less[0], Clock(style="ago", back=less[1], sure=True)
