"""Days and parts of the day in words: yesterday, last night, Monday, 3/4; `moments` finds the date."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any, TypeVar

from .numbers import Toks, after_hyphen, glued, is_digits, word
from .patterns.clockwords import DAYS, MONTHS, ORDINALS, PARTS, WEEKDAYS

Day = str | int | tuple[int, int] | tuple[int, int, int]
"""Today and the like, a day of the week, or month and day, perhaps with the year."""


Phrase = TypeVar("Phrase", bound=tuple[Any, ...])


def by_first_word(phrases: Iterable[Phrase]) -> dict[str, tuple[Phrase, ...]]:
    """Rows that begin with a phrase, by the first word of that phrase, in their order."""
    found: dict[str, tuple[Phrase, ...]] = {}
    for row in phrases:
        first = row[0][0]
        found[first] = (*found.get(first, ()), row)
    return found


_DAYS = by_first_word(DAYS)
_PARTS = by_first_word(PARTS)
_DATES = frozenset({*WEEKDAYS, *MONTHS, *ORDINALS, "sat", "on", "last", "the"})
FIRST_WORDS = frozenset({*_DAYS, *_PARTS, *_DATES})
"""A day or a part of it begins with one of these, or with digits."""

DATED = frozenset({*MONTHS, "/", "-"})
"""A date that begins with digits has one of these."""


def may_be_day(toks: Toks, i: int) -> bool:
    """Whether a day or a part of it may begin here."""
    first = word(toks, i)
    return first in FIRST_WORDS or (first[:1].isdecimal() and not toks.words.isdisjoint(DATED))


def day_words(toks: Toks, i: int) -> Iterator[tuple[int, Day | None, str]]:
    """The end, the day and the part of the day that words at a place say."""
    first = word(toks, i)
    for words, day, part in _DAYS.get(first, ()):
        if is_phrase(toks, i, words):
            yield i + len(words), day, part
            return
    end, part = part_of_day(toks, i)
    if part:
        yield end, None, part
    elif first in _DATES or (first[:1].isdecimal() and not toks.words.isdisjoint(DATED)):
        yield from _date(toks, i)


def part_of_day(toks: Toks, i: int) -> tuple[int, str]:
    """The end and the part of the day that words at a place say: "in the morning"."""
    for words, part in _PARTS.get(word(toks, i), ()):
        if is_phrase(toks, i, words):
            return i + len(words), part
    return i, ""


def _date(toks: Toks, i: int) -> Iterator[tuple[int, Day | None, str]]:
    start = i + 1 if word(toks, i) == "on" else i
    if word(toks, start) == "last" and word(toks, start + 1) in WEEKDAYS:
        start += 1
    text = word(toks, start)
    if text == "sat" and _is_saturday(toks, start + 1):
        yield start + 1, WEEKDAYS["saturday"], ""
    elif text in WEEKDAYS:
        end, part = start + 1, ""
        if word(toks, end) in {"night", "evening", "morning", "afternoon"}:
            end, part = end + 1, word(toks, end)
        yield end, WEEKDAYS[text], part
    elif text in MONTHS:
        yield from ((end, (MONTHS[text], day), "") for end, day, _ in _days_of_month(toks, start + 1))
    elif _is_slash_date(toks, start):
        yield start + 3, (int(word(toks, start)), int(word(toks, start + 2))), ""
    elif whole := _with_year(toks, start):
        yield whole[0], whole[1], ""
    else:
        yield from _day_first(toks, start)


def _is_saturday(toks: Toks, i: int) -> bool:
    """ "Sat 2200 bed 3 was 1085", "on sat 2200": where it leads, the day of a whole time, and no oxygen."""
    hour, led = word(toks, i), word(toks, i - 2) in {"", ".", ",", ";", "on"}
    return (
        led and is_digits(toks, i) and (len(hour) == 4 or (word(toks, i + 1) == ":" and glued(toks, i + 1)))
    )


def _day_first(toks: Toks, i: int) -> Iterator[tuple[int, Day | None, str]]:
    """ "3rd of March", "the third of March"; "3 March" is the third only with a sign of it ("17 mark")."""
    start = i + 1 if word(toks, i) == "the" else i
    for end, day, ordinal in _days_of_month(toks, start):
        month = end + (word(toks, end) == "of")
        if word(toks, month) in MONTHS and (ordinal or month > end):
            yield month + 1, (MONTHS[word(toks, month)], day), ""


def _days_of_month(toks: Toks, i: int) -> Iterator[tuple[int, int, bool]]:
    """The end and the day of "3", "3rd" or "twenty third", and whether it was an ordinal."""
    text = word(toks, i)
    if is_digits(toks, i):
        ordinal = word(toks, i + 1) in {"st", "nd", "rd", "th"} and glued(toks, i + 1)
        if len(text) <= 2 and 1 <= int(text) <= 31:
            yield i + 1 + ordinal, int(text), ordinal
        return
    if text in ORDINALS:
        yield i + 1, ORDINALS[text], True
    second = after_hyphen(toks, i + 1)
    tens = {"twenty": 20, "thirty": 30}.get(text, 0)
    if tens and 1 <= ORDINALS.get(word(toks, second), 0) <= (9 if tens == 20 else 1):
        yield second + 1, tens + ORDINALS[word(toks, second)], True


def _with_year(toks: Toks, i: int) -> tuple[int, tuple[int, int, int]] | None:
    """The end and the month, day and year of "2026-03-04" or "03/04/2026"; the T of a time is passed."""
    signs = word(toks, i + 1)
    whole = word(toks, i + 3) == signs and all(glued(toks, i + k) for k in range(1, 5))
    if signs not in {"-", "/"} or not whole:
        return None
    parts = [word(toks, i + k) for k in (0, 2, 4)]
    if not all(p.isdecimal() for p in parts):
        return None
    lengths = [len(p) for p in parts]
    if lengths[0] == 4 and max(lengths[1:]) <= 2:
        year, month, day = int(parts[0]), int(parts[1]), int(parts[2])
    elif lengths[2] == 4 and max(lengths[:2]) <= 2 and signs == "/":
        month, day, year = int(parts[0]), int(parts[1]), int(parts[2])
    else:
        return None
    end = i + 5 + (word(toks, i + 5) == "t" and glued(toks, i + 5))
    return (end, (month, day, year)) if 1 <= month <= 12 and 1 <= day <= 31 else None


def _is_slash_date(toks: Toks, i: int) -> bool:
    if not (is_digits(toks, i) and word(toks, i + 1) == "/" and is_digits(toks, i + 2)):
        return False
    month, day = word(toks, i), word(toks, i + 2)
    small_enough = len(month) <= 2 and len(day) <= 2 and glued(toks, i + 1) and glued(toks, i + 2)
    return small_enough and 1 <= int(month) <= 12 and 1 <= int(day) <= 31 and word(toks, i + 3) != "/"


def is_phrase(toks: Toks, i: int, words: tuple[str, ...]) -> bool:
    """Whether these words stand at a place."""
    return toks.said[i : i + len(words)] == words
