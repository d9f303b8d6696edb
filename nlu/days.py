"""Days and parts of the day in words: yesterday, last night, Monday, 3/4; `moments` finds the date."""

from __future__ import annotations

from collections.abc import Iterator

from .numbers import Toks, glued, is_digits, word
from .patterns.clockwords import DAYS, MONTHS, PARTS, WEEKDAYS

Day = str | int | tuple[int, int]


def day_words(toks: Toks, i: int) -> Iterator[tuple[int, Day | None, str]]:
    """The end, the day and the part of the day that words at a place say."""
    for words, day, part in DAYS:
        if is_phrase(toks, i, words):
            yield i + len(words), day, part
            return
    for words, part in PARTS:
        if is_phrase(toks, i, words):
            yield i + len(words), None, part
            return
    yield from _date(toks, i)


def _date(toks: Toks, i: int) -> Iterator[tuple[int, Day | None, str]]:
    start = i + 1 if word(toks, i) == "on" else i
    if word(toks, start) == "last" and word(toks, start + 1) in WEEKDAYS:
        start += 1
    text = word(toks, start)
    if text in WEEKDAYS:
        end, part = start + 1, ""
        if word(toks, end) in {"night", "evening", "morning", "afternoon"}:
            end, part = end + 1, word(toks, end)
        yield end, WEEKDAYS[text], part
    elif text in MONTHS and is_digits(toks, start + 1) and 1 <= int(word(toks, start + 1)[:3]) <= 31:
        ordinal = word(toks, start + 2) in {"st", "nd", "rd", "th"} and glued(toks, start + 2)
        yield start + 2 + ordinal, (MONTHS[text], int(word(toks, start + 1))), ""
    elif _is_slash_date(toks, start):
        yield start + 3, (int(word(toks, start)), int(word(toks, start + 2))), ""


def _is_slash_date(toks: Toks, i: int) -> bool:
    if not (is_digits(toks, i) and word(toks, i + 1) == "/" and is_digits(toks, i + 2)):
        return False
    month, day = word(toks, i), word(toks, i + 2)
    small_enough = len(month) <= 2 and len(day) <= 2 and glued(toks, i + 1) and glued(toks, i + 2)
    return small_enough and 1 <= int(month) <= 12 and 1 <= int(day) <= 31 and word(toks, i + 3) != "/"


def is_phrase(toks: Toks, i: int, words: tuple[str, ...]) -> bool:
    """Whether these words stand at a place."""
    return word(toks, i) == words[0] and all(word(toks, i + k) == w for k, w in enumerate(words))


def phrase_end(toks: Toks, i: int, phrases: tuple[tuple[str, ...], ...]) -> int:
    """The end of the first of the phrases that stands at a place, or 0."""
    return next((i + len(p) for p in phrases if is_phrase(toks, i, p)), 0)
