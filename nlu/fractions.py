"""Litres told in parts: "three quarters of a litre", "1 1/2 L", "a litre and a half".

A part that is no whole number of millilitres, and one that is not told whole ("a litre and a bit"), is a
number that no rule can read. Called by `measures`.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from .items import Item
from .numbers import Toks, Value, after_hyphen, glued, is_digits, numbers, word
from .patterns.clockwords import HOUR_WORDS, MINUTE_WORDS, PAST, TO
from .patterns.leads import MOST_LITRES
from .patterns.levels import LITRES
from .patterns.numerals import FRACTIONS, NUMERALS, ONES
from .tokens import remembered

SPELT = LITRES - {"l"}
ARTICLES = frozenset({"a", "an"})
BEGINNING = ARTICLES | SPELT | frozenset(FRACTIONS) | {"one"}
"""Words that are no number, and begin an amount."""
COUNTED = frozenset({"a", "another", "further", "full", "whole"})
"""Behind these a litre is one litre, without its number."""
TOLD = LITRES | frozenset(FRACTIONS)
"""Without one of these nothing is told in parts of a litre."""
OF_TIME = PAST | TO | HOUR_WORDS | MINUTE_WORDS | ARTICLES
"""Before these a half or a quarter is one of an hour."""
LOOSE = frozenset({"bit", "little", "some", "something", "change", "odd", "more", "drop"})
"""How much over a litre nobody said."""


@remembered
def litres(toks: Toks, i: int) -> list[Item]:
    """Each amount in litres that is told with a part of one, or as one without its number."""
    if toks.words.isdisjoint(TOLD):
        return []
    found = dict(_litres(toks, i))
    end = max(found, default=0)
    return [_item(i, end, found[end])] if found else _of_another(toks, i)


def is_with_part(toks: Toks, i: int) -> bool:
    """Whether a whole number here goes on with a part: "1 1/2 L"; the number alone may be a bed."""
    return is_digits(toks, i) and bool(_part(toks, i + 1)) and not glued(toks, i + 1)


def _of_another(toks: Toks, i: int) -> list[Item]:
    """ "three quarters full": a part of what nobody knows the whole of."""
    if word(toks, i) not in ONES and not is_digits(toks, i):
        return []
    parts = [end for end, _ in _part(toks, i) if word(toks, end - 1) in FRACTIONS]
    return [_item(i, end, None) for end in parts if word(toks, end) not in OF_TIME | {"of"}]


def _item(i: int, end: int, litres: Fraction | None) -> Item:
    amount = None if litres is None else litres * 1000
    if amount is None or amount.denominator != 1:
        return Item("bad", i, end, unit="litre")
    return Item("num", i, end, amount=int(amount), unit="litre", figure=float(amount))


def _litres(toks: Toks, i: int) -> Iterator[tuple[int, Fraction | None]]:
    for end, part in _part(toks, i):
        if litre := _litre(toks, end, signed=_is_signed(toks, i)):
            yield litre, part
    for end, whole in _whole(toks, i):
        if whole > MOST_LITRES:
            continue
        linked = word(toks, end) in {"and", "&"}
        link = end + (linked or word(toks, end) == "-")
        for after, part in _part(toks, link) if linked or _is_signed(toks, link) else ():
            if litre := _litre(toks, after, signed=_is_signed(toks, link)):
                yield litre, whole + part
        if litre := _litre(toks, end, signed=False):
            yield from _and_part(toks, litre, whole)
    if word(toks, i) in SPELT and word(toks, i - 1) in COUNTED:
        yield i + 1, Fraction(1)
    if word(toks, i) in SPELT:
        yield from _and_part(toks, i + 1, Fraction(1))


def _and_part(toks: Toks, i: int, whole: Value) -> Iterator[tuple[int, Fraction | None]]:
    """ "a litre | and a quarter", "2 litres | and a bit"."""
    if word(toks, i) not in {"and", "&", "plus"}:
        return
    parts = [(end, part) for end, part in _part(toks, i + 1) if word(toks, end) not in OF_TIME]
    yield from ((end, whole + part) for end, part in parts)
    loose = i + 1 + (word(toks, i + 1) in ARTICLES)
    if word(toks, loose) in LOOSE:
        yield loose + 1, None


def _whole(toks: Toks, i: int) -> list[tuple[int, Value]]:
    if word(toks, i) in ARTICLES:
        return [(i + 1, 1)]
    return [(n.end, n.value) for n in numbers(toks, i) if n.style == "plain" and n.value.denominator == 1]


def _litre(toks: Toks, i: int, *, signed: bool) -> int:
    """The end of "of a litre", "litres", "-litre", behind digits of "L"; or 0."""
    i = after_hyphen(toks, i)
    k = i + (word(toks, i) == "of")
    k += word(toks, k) in ARTICLES
    if word(toks, k) in SPELT or (signed and word(toks, i) == "l"):
        return max(k, i) + 1
    return 0


def _part(toks: Toks, i: int) -> list[tuple[int, Fraction]]:
    """A part of a whole: a half, quarter, three quarters, 3/4."""
    over = word(toks, i + 1) == "/" and glued(toks, i + 1) and glued(toks, i + 2) and is_digits(toks, i)
    if over and is_digits(toks, i + 2) and len(word(toks, i)) == len(word(toks, i + 2)) == 1:
        above, below = int(word(toks, i)), int(word(toks, i + 2))
        return [(i + 3, Fraction(above, below))] if 0 < above < below else []
    count, k = _count(toks, i)
    k += word(toks, k) == "-" and glued(toks, k)
    return [(k + 1, count * FRACTIONS[word(toks, k)])] if word(toks, k) in FRACTIONS else []


def _is_signed(toks: Toks, i: int) -> bool:
    """Whether the part is written in digits or with one sign."""
    return is_digits(toks, i) or (i < len(toks) and toks[i].end - toks[i].start == 1)


def _count(toks: Toks, i: int) -> tuple[int, int]:
    """How many of them, and where the word for the part stands."""
    text = word(toks, i)
    if text in ARTICLES:
        return 1, i + 1
    if text in ONES:
        return ONES[text], i + 1
    if is_digits(toks, i) and len(text) == 1 and word(toks, i + 1) not in NUMERALS:
        return int(text), i + 1
    return 1, i
