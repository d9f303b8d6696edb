"""Every value that a run of digits or number words can have, longest and shortest alike.

A phrase often has several ("three forty" is 340, or 3 and then 40): all are returned, and the
message as a whole decides. Nothing here knows what the number is for.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import NamedTuple

from .patterns.leads import BED_WORDS
from .patterns.levels import LITRES
from .patterns.numerals import HOMOPHONES, JOINED, NUMERALS, ONES, TEENS, TENS, ZEROS
from .tokens import Words, remembered

Toks = Words
FULL_HOUR = 4  # digits of an hour and its minutes
POINTING = frozenset(
    {
        "last",
        "that",
        "this",
        "the",
        "first",
        "second",
        "left",
        "right",
        "wrong",
        "old",
        "new",
        "earlier",
        "previous",
        "other",
        "mediastinal",
        "apical",
        "basal",
        "pleural",
        "anterior",
        "posterior",
    }
)
"""Before "one" these make it a word that points, not a number ("the left one")."""
TOP_PAIR = 30
"""Pairs are said for what a canister can hold ("nineteen fifty"); "sixty six thirty" is two numbers."""
LONGEST_SPELT = 4
_GOES_ON = NUMERALS | frozenset({".", ",", ":", "point", "-", "and"})
"""Digits with anything else behind them, and no digits, are one number and no more."""
_NUMBERED = NUMERALS | {"point"}


Value = int | Fraction
"""Whole numbers are `int`, which are quicker to make and to compare; the rest is exact too."""


class Number(NamedTuple):
    """A value that tokens up to `end` can have; `style` says how it was said.

    Styles: `plain`; `led` (a leading zero); `decimal`; `clock` ("10:50"); `joined` ("10 50");
    `money` ("$10.50"); `heard` (a homophone).
    """

    end: int
    value: Value
    style: str = "plain"


def word(toks: Toks, i: int) -> str:
    """The token at a place, or nothing past either end."""
    try:
        return toks.said[i]
    except IndexError:
        return ""


def glued(toks: Toks, i: int) -> bool:
    """Whether there is a token here with no space before it."""
    return i < len(toks) and toks[i].glued


def is_digits(toks: Toks, i: int) -> bool:
    """Whether the token at a place is a run of digits."""
    return i in toks.digits


def is_inside_number(toks: Toks, k: int) -> bool:
    """Whether a sign stands between digits without a space: "19:00"."""
    return is_digits(toks, k - 1) and is_digits(toks, k + 1) and glued(toks, k) and glued(toks, k + 1)


@remembered
def starts_number(toks: Toks, i: int) -> bool:
    """Whether a number may begin here."""
    text = word(toks, i)
    if not text:
        return False
    if text == "one" and word(toks, i - 1) in POINTING and word(toks, i + 1) not in _NUMBERED:
        return False
    if text in {"hundred", "thousand"}:
        alone = word(toks, i - 1) not in NUMERALS and not is_digits(toks, i - 1)
        alone &= (
            word(toks, i - 1) not in HOMOPHONES or word(toks, i - 2) not in BED_WORDS
        )  # "bed to hundred ten"
        return alone or is_own_scale(toks, i)
    if text[0].isdecimal() or text in NUMERALS:
        return text not in {"o", "ou", "oh"} or word(toks, after_hyphen(toks, i + 1)) in _NUMBERED
    if text in {"a", "an"}:
        return word(toks, i + 1) in {"hundred", "thousand"}
    if text == ".":
        return glued(toks, i + 1) and is_digits(toks, i + 1) and not glued(toks, i)
    if text == "point":
        return word(toks, i + 1) in ONES or word(toks, i + 1) in ZEROS or is_digits(toks, i + 1)
    return text == "$" and is_digits(toks, i + 1)


def is_own_scale(toks: Toks, i: int) -> bool:
    """ "bed twenty two thousand", "bed thirty two hundred": perhaps bed 32, and a hundred without its "a"."""
    return (
        word(toks, i) in {"hundred", "thousand"} and word(toks, i - 1) in ONES and word(toks, i - 2) in TENS
    )


@remembered
def numbers(toks: Toks, i: int) -> list[Number]:
    """Every number that can begin at a place, each end and value once."""
    if not starts_number(toks, i):
        return []
    found = _from_digits(toks, i) if word(toks, i)[0] in "0123456789.$" else _from_words(toks, i)
    return list(dict.fromkeys(found if "(" not in toks.words else (_twice(toks, n) for n in found)))


def _twice(toks: Toks, number: Number) -> Number:
    """ "forty-five (45)": the same number once more in brackets; "1800 (1800)" may be a line and its time."""
    inside = number.end + 1
    if len(word(toks, inside)) == FULL_HOUR and is_digits(toks, number.end - 1):
        return number
    if word(toks, number.end) != "(" or word(toks, inside + 1) != ")" or not is_digits(toks, inside):
        return number
    same = len(word(toks, inside)) < 6 and int(word(toks, inside)) == number.value
    return number._replace(end=inside + 2) if same else number


def heard_as_number(toks: Toks, i: int) -> list[Number]:
    """The numbers that begin with a word that sounds like a digit ("for ten" as four ten)."""
    value = HOMOPHONES.get(word(toks, i))
    if value is None:
        return []
    found = [Number(i + 1, value, "heard")]
    found += [Number(end, value * 100 + low, "heard") for end, low in _low_pair(toks, i + 1)]
    found += [n._replace(style="heard") for n in _digits_behind(toks, i + 1, value)]
    found += [Number(end, int(f"{value}{run}"), "heard") for end, run in _runs(toks, i + 1)]
    if word(toks, i + 1) == "hundred":
        found += [Number(e, value * 100 + v, "heard") for e, v in _and_below(toks, i + 2, 100)]
    return found


# Digits


def _from_digits(toks: Toks, i: int) -> Iterator[Number]:
    text = word(toks, i)
    if text == "$":
        yield from _money(toks, i + 1)
        return
    if text == ".":
        yield Number(i + 2, Fraction("0." + word(toks, i + 1)), "decimal")
        return
    if len(text) > 9:
        return
    alone = Number(i + 1, int(text), "led" if len(text) > 1 and text[0] == "0" else "plain")
    if not (word(toks, i + 1) in _GOES_ON or is_digits(toks, i + 1)):
        yield alone
        return
    point = _glued_tail(toks, i, ".")
    if point:
        yield from _decimal_digits(toks, i, point)
        return
    if _is_comma_of_litres(toks, i):
        yield from _decimal_digits(toks, i, word(toks, i + 2))
        return
    yield from _after_point(toks, i + 1, int(text))
    yield alone
    tail = _glued_tail(toks, i, ",")
    if len(tail) == 3 and len(text) == 1 and text != "0" and not _glued_tail(toks, i + 2, ","):
        yield Number(i + 3, int(text + tail))
        yield from _and_rest(toks, i + 3, int(text + tail))
    tail = _glued_tail(toks, i, ":")
    if len(tail) == 2 and len(text) <= 2 and text[0] != "0":
        yield Number(i + 3, int(text + tail), "clock")
    yield from _digits_joined(toks, i, text)
    yield from _scaled(toks, i + 1, int(text))


def _glued_tail(toks: Toks, i: int, sign: str) -> str:
    """The digits of "1,050" after the comma (or another sign), if all of it is glued."""
    if word(toks, i + 1) == sign and glued(toks, i + 1) and glued(toks, i + 2) and is_digits(toks, i + 2):
        return word(toks, i + 2)
    return ""


def _is_comma_of_litres(toks: Toks, i: int) -> bool:
    """ "1,25 L": with a comma for the point, as much of the world writes it."""
    return bool(_glued_tail(toks, i, ",")) and word(toks, i)[1:] == "" and word(toks, i + 3) in LITRES


def _decimal_digits(toks: Toks, i: int, tail: str) -> Iterator[Number]:
    value = Fraction(f"{word(toks, i)}.{tail}") if len(tail) < 9 else Fraction(0)
    yield Number(i + 3, value, "decimal")
    yield from _scaled(toks, i + 3, value)


def _money(toks: Toks, i: int) -> Iterator[Number]:
    """ "$10.50" is how a recogniser writes "ten fifty"."""
    head, tail = word(toks, i), _glued_tail(toks, i, ".")
    if len(tail) == 2 and len(head) <= 2:
        yield Number(i + 3, int(head + tail), "money")
    elif not tail:
        yield from (n._replace(style="money") for n in _from_digits(toks, i))


def _digits_joined(toks: Toks, i: int, text: str) -> Iterator[Number]:
    """ "10 50", "1 050", "1 0 5 0" and "10 fifty", as one number."""
    nxt = word(toks, i + 1)
    if text[0] != "0" and not glued(toks, i + 1):
        if is_digits(toks, i + 1) and (
            (len(text) <= 2 and len(nxt) == 2) or (len(text) == 1 and len(nxt) == 3)
        ):
            yield Number(i + 2, int(text + nxt), "joined")
        elif len(text) <= 2:
            yield from (Number(end, int(text) * 100 + low, "joined") for end, low in _low_pair(toks, i + 1))
    if len(text) == 1 and len(nxt) == 1:
        yield from _single_digits(toks, i)
    if len(text) in {3, 4}:
        yield from _and_rest(toks, i + 1, int(text))


def _and_rest(toks: Toks, i: int, hundreds: int) -> Iterator[Number]:
    """ "1,000 and 55", "1300 and 10", as one number."""
    if hundreds % 100 == 0 and word(toks, i) == "and" and len(word(toks, i + 1)) <= 2:
        yield from (Number(e, hundreds + v, "joined") for e, v in _below_hundred(toks, i + 1))


def _single_digits(toks: Toks, i: int) -> Iterator[Number]:
    end, run = i, ""
    while is_digits(toks, end) and len(word(toks, end)) == 1 and len(run) < 5:
        run += word(toks, end)
        end += 1
        if len(run) > 2:
            yield Number(end, int(run), "led" if run[0] == "0" else "joined")


# Words


def _from_words(toks: Toks, i: int) -> Iterator[Number]:
    text = word(toks, i)
    if text in {"a", "an", "hundred", "thousand"}:
        yield from _scaled(toks, i + (text in {"a", "an"}), 1)
        return
    if text == "point":
        yield from _after_point(toks, i, 0)
        return
    for end, value in small(toks, i):
        yield Number(end, value)
        yield from _scaled(toks, end, value)
        yield from _after_point(toks, end, value)
        if 0 < value < TOP_PAIR:
            yield from (Number(e, value * 100 + low) for e, low in _low_pair(toks, end))
            yield from _digits_behind(toks, end, value)
    yield from _spelt_digits(toks, i)


@remembered
def small(toks: Toks, i: int) -> list[tuple[int, int]]:
    """Whole numbers from 0 to 99 in words at a place, each with its end: twenty, twenty-five."""
    text = word(toks, i)
    if text in ZEROS:
        return [(i + 1, 0)]
    if text in ONES or text in TEENS or text in JOINED:
        return [(i + 1, ONES.get(text) or TEENS.get(text) or JOINED[text])]
    if text not in TENS:
        return []
    ones = i + 2 if word(toks, i + 1) == "-" else i + 1
    found = [(i + 1, TENS[text])]
    if word(toks, ones) in ONES:
        found.append((ones + 1, TENS[text] + ONES[word(toks, ones)]))
    return found


def after_hyphen(toks: Toks, i: int) -> int:
    """The place after a hyphen that glues two words, or the same place."""
    return i + 1 if word(toks, i) == "-" and glued(toks, i) and glued(toks, i + 1) else i


def _low_pair(toks: Toks, i: int) -> list[tuple[int, int]]:
    """The last two digits of a number said in pairs: fifty, oh five, forty five."""
    i = after_hyphen(toks, i)
    if word(toks, i) in ZEROS:
        j = after_hyphen(toks, i + 1)
        return [(j + 1, ONES[word(toks, j)])] if word(toks, j) in ONES else []
    return [(end, value) for end, value in small(toks, i) if value >= 10]


def _digits_behind(toks: Toks, i: int, value: int) -> Iterator[Number]:
    """ "ten 30" as 1030: a recogniser writes one number half in words."""
    said = word(toks, i)
    if len(said) == 2 and said.isdecimal() and not glued(toks, i) and not _goes_on(toks, i):
        yield Number(i + 1, value * 100 + int(said), "joined")


def _scaled(toks: Toks, i: int, value: Value) -> Iterator[Number]:
    """What "hundred" or "thousand" at a place makes of the number before it, with what follows."""
    at = after_hyphen(toks, i)
    if word(toks, at) == "hundred" and 0 < value < 100:
        yield from _sums(_and_below(toks, at + 1, 100), value * 100)
    if word(toks, at) == "thousand" and 0 < value < 10:
        yield from _sums(_and_below(toks, at + 1, 1000), value * 1000)


def _sums(parts: list[tuple[int, int]], base: Value) -> Iterator[Number]:
    for end, low in parts:
        whole = base + low
        yield Number(end, whole, "plain" if whole.denominator == 1 else "decimal")


def _and_below(toks: Toks, i: int, top: int) -> list[tuple[int, int]]:
    """Nothing more, or the rest of a number below `top`, with or without "and"."""
    rest = after_hyphen(toks, i)
    rest = after_hyphen(toks, rest + 1) if word(toks, rest) == "and" else rest
    found = [(i, 0), *_below_hundred(toks, rest)]
    if top == 1000:
        found += _hundreds(toks, rest + (word(toks, rest) == ","))
        found += _three_digits(toks, rest)
    return found


def _three_digits(toks: Toks, i: int) -> list[tuple[int, int]]:
    """ "1 thousand 287", as one number."""
    said = word(toks, i)
    whole = is_digits(toks, i) and len(said) == 3 and said[0] != "0" and not _goes_on(toks, i)
    return [(i + 1, int(said))] if whole else []


def _below_hundred(toks: Toks, i: int) -> list[tuple[int, int]]:
    if is_digits(toks, i):
        return [(i + 1, int(word(toks, i)))] if len(word(toks, i)) <= 2 and not _goes_on(toks, i) else []
    return [(end, value) for end, value in small(toks, i) if value]


def _goes_on(toks: Toks, i: int) -> bool:
    """ "nine hundred and 6:05 a.m.": digits that are the hour of a time, or the whole of a decimal."""
    return any(_glued_tail(toks, i, sign) for sign in (":", ".", ","))


def _hundreds(toks: Toks, i: int) -> list[tuple[int, int]]:
    start = i + 1 if word(toks, i) in {"a", "an"} else i
    count = ONES.get(word(toks, start), 0) or (1 if start > i else 0)
    at = start + 1 if word(toks, start) in ONES else start
    if not count or word(toks, at) != "hundred":
        return []
    return [(end, count * 100 + low) for end, low in _and_below(toks, at + 1, 100)]


def _after_point(toks: Toks, i: int, whole: int) -> Iterator[Number]:
    if word(toks, i) != "point":
        return
    end, run = i + 1, ""
    while len(run) < 4 and (digit := _digit(toks, end)):
        run += digit
        end += 1
    if run:
        yield Number(end, Fraction(f"{whole}.{run}"), "decimal")
    else:
        yield from (Number(e, Fraction(f"{whole}.{v}"), "decimal") for e, v in small(toks, i + 1) if v)


def _digit(toks: Toks, i: int) -> str:
    text = word(toks, i)
    if text in ZEROS:
        return "0"
    if text in ONES:
        return str(ONES[text])
    return text if is_digits(toks, i) and len(text) <= 2 else ""


def _spelt_digits(toks: Toks, i: int) -> Iterator[Number]:
    """Digit by digit, "one oh five oh"; and "oh seven oh five", "oh five", "zero seven thirty"."""
    for end, run in _runs(toks, i):
        if len(run) > 1:
            yield Number(end, int(run), "led" if run[0] == "0" else "spelt")


def _runs(toks: Toks, i: int) -> Iterator[tuple[int, str]]:
    """Each run of digits said one by one: "one", "one oh", "one oh five"."""
    end, run = i, ""
    while len(run) < LONGEST_SPELT and (digit := _digit(toks, end)) and not is_digits(toks, end):
        run += digit
        end = after_hyphen(toks, end + 1)
        yield end, run
