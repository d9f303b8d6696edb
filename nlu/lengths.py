"""Lengths of time, "20 min" or "an hour and a half", in minutes; not which moment they lead to."""

from __future__ import annotations

from .numbers import Number, Toks, Value, numbers, word
from .patterns.clockwords import HOUR_WORDS, MINUTE_WORDS
from .tokens import remembered

MEASURES = frozenset({*MINUTE_WORDS, *HOUR_WORDS})
"""Every length of time has one of these."""
COUNTED = frozenset({"plain", "led", "decimal"})
"""How the number of a length is said."""
HUNDRED = 100
PAIR = 2
"""Digits of a length with a leading 0: "02 hrs"."""
MOST_IN_WORDS = 240
"""Whoever speaks of more minutes says hours."""


def less_minutes(toks: Toks, i: int) -> tuple[int, int] | None:
    """The end and the minutes of "minus 20 min", or none."""
    if word(toks, i) not in {"-", "minus"}:
        return None
    end, minutes = length(toks, i + 1)
    return None if minutes is None else (end, minutes)


@remembered
def length(toks: Toks, i: int) -> tuple[int, int | None]:
    """The end and the minutes of a length of time."""
    if toks.words.isdisjoint(MEASURES):
        return i, None
    if word(toks, i) == "half" and word(toks, i + 1) in {"an", "a"} and word(toks, i + 2) in HOUR_WORDS:
        return i + 3, 30
    if word(toks, i) == "half" and word(toks, i + 1) in HOUR_WORDS:
        return i + 2, 30
    quarters = _quarters(toks, i)
    if quarters is not None:
        return quarters
    found = _counted(toks, i)
    if found is None:
        return i, None
    end, minutes, in_hours = found
    if in_hours and word(toks, end) == "and" and word(toks, end + 1) == "a" and word(toks, end + 2) == "half":
        return end + 3, minutes + 30
    rest = end + 1 if word(toks, end) == "and" else end
    more = _counted(toks, rest) if in_hours else None
    if more is not None and not more[2]:
        return more[0], minutes + more[1]
    return end, minutes


def _quarters(toks: Toks, i: int) -> tuple[int, int] | None:
    """ "a quarter of an hour", "three quarters of an hour", "quarter hour"."""
    start = i + 1 if word(toks, i) in {"a", "three", "3"} else i
    if word(toks, start) not in {"quarter", "quarters"}:
        return None
    end = start + 1
    end += word(toks, end) == "of"
    end += word(toks, end) in {"an", "a"}
    minutes = 45 if word(toks, i) in {"three", "3"} else 15
    return (end + 1, minutes) if word(toks, end) in HOUR_WORDS else None


def _is_count(number: Number, toks: Toks, i: int) -> bool:
    """Whether a length can be told so: "a hundred and twenty", never in pairs or digit by digit; "0015hrs"
    is a time."""
    if word(toks, i)[0] == "0" and len(word(toks, i)) > PAIR:
        return False
    in_words = "hundred" in toks.said[i : number.end] and number.value <= MOST_IN_WORDS
    whole = number.value < HUNDRED or number.end == i + 1 or in_words
    return number.style in COUNTED and whole


def _counted(toks: Toks, i: int) -> tuple[int, int, bool] | None:
    """ "20 min" or "an hour": end, minutes, whether it was hours."""
    options: list[tuple[int, Value]] = [(n.end, n.value) for n in numbers(toks, i) if _is_count(n, toks, i)]
    if word(toks, i) in {"a", "an", "the"}:
        options.append((i + 1, 1))
    for end, count in sorted(options, key=lambda o: o[0], reverse=True):
        if (
            word(toks, end) == "and"
            and word(toks, end + 1) == "a"
            and word(toks, end + 2) == "half"
            and (word(toks, end + 3) in HOUR_WORDS)
        ):
            return end + 4, int(count * 60) + 30, True
        if word(toks, end) in MINUTE_WORDS:
            return (end + 1, int(count), False) if count == int(count) else None
        if word(toks, end) in HOUR_WORDS:
            return end + 1, int(count * 60), True
    return None
