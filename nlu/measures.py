"""Numbers with their units, as pieces: millilitres of everything that can be a volume."""

from __future__ import annotations

from collections.abc import Iterator

from .clock import clocks
from .clockface import Clock
from .days import by_first_word
from .fractions import is_with_part, litres
from .items import NO_CLOCKS, Clocks, Item
from .lengths import length
from .numbers import Number, Toks, Value, glued, is_digits, numbers, starts_number, word
from .patterns.clockwords import AGO, HOUR_WORDS
from .patterns.cues import CHECKS, LEVELS
from .patterns.leads import BED_WORDS
from .patterns.levels import LITRES, MILLILITRES, VOLUMES

_BAD = frozenset(p for p in LEVELS["badunit"] if " " not in p)
_KG = frozenset(CHECKS["kg"])
_LB = frozenset({"lb", "lbs", "pounds", "pound"})
TIME_LETTERS = frozenset({"a", "p", "h", "am", "pm", "hr", "hrs", "hours"})
GLUED_OK = frozenset({"ish", "and", "at", "l", "r", "left", "right", "b", "to"})
_BEHIND = TIME_LETTERS | GLUED_OK | VOLUMES
LARGEST = 99_999
MOST_JOINED = 3000
"""No canister holds so much: "9 945" is two numbers."""
OF_A_SIDE = frozenset({"tube", "drain", "chest", "pleural", "sided", "side", "icd", "icc", "ct"})
"""Behind an L these make it a side."""


def _pieces(phrase: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(
        p
        for w in phrase
        for p in {
            "cmh2o": ("cmh", "2", "o"),
            "h2o": ("h", "2", "o"),
            "cmh20": ("cmh", "20"),
            "h20": ("h", "20"),
        }.get(w, (w,))
    )


def _pressures() -> dict[str, tuple[tuple[tuple[str, ...], str], ...]]:
    """The units of pressure as tokens, by the first of them, the longest first."""
    rows = [(_pieces(tuple(p.split())), name) for name in ("mmhg", "cm") for p in CHECKS[name]]
    return by_first_word(sorted(rows, key=lambda row: len(row[0]), reverse=True))


_PRESSURES = _pressures()
_UNITS = frozenset({*VOLUMES, *_BAD, *_KG, *_LB, *_PRESSURES, "c", "m", "cubic"})
"""A unit begins with one of these."""


def measured(toks: Toks, i: int, *, voice: bool) -> Iterator[Item]:
    """Each number at a place, with its unit and the times that the same words can be."""
    if word(toks, i) == "one" and not starts_number(toks, i):
        return
    parts = litres(toks, i)
    yield from parts
    if parts and not is_with_part(toks, i):
        return
    by_end: dict[int, list[Number]] = {}
    for number in numbers(toks, i):
        by_end.setdefault(number.end, []).append(number)
    times: dict[int, list[Clock]] = {}
    for end, clock in clocks(toks, i):
        times.setdefault(end, []).append(clock)
    for end in sorted({*by_end, *times}):
        unsure = [c for c in times.get(end, ()) if not c.sure]
        loose = Clocks(unsure) if unsure else NO_CLOCKS
        joined = not voice and not loose and all(n.style == "joined" for n in by_end.get(end, ()))
        if joined and not any(is_thousands(toks, i, n) for n in by_end.get(end, ())):
            continue  # typed "85 11": two numbers
        if end in by_end or loose:
            item = _item(toks, i, end, by_end.get(end, []), loose, voice=voice)
            yield item
            if item.unit == "litre" and item.amount and not voice and _may_be_of_left(item, toks):
                yield item._replace(end=end, amount=int(item.figure or 0), unit="", clocks=loose)


def _item(toks: Toks, i: int, end: int, found: list[Number], loose: Clocks, *, voice: bool) -> Item:
    unit, after = _unit(toks, end)
    if unit in {"", "ml", "litre"} and _per_hour(toks, after):
        unit = "bad"
    usable = [n for n in found if voice or n.style not in SPOKEN_ONLY or is_thousands(toks, i, n)]
    number = usable[0] if usable else None
    role = "bad" if _stray_letter(toks, i, end) and not unit else "num"
    amount = None if number is None else _millilitres(toks, i, number, unit)
    if unit == "litre" and number is not None:
        amount, after = _with_rest(toks, after, amount)
    if amount is not None and amount > LARGEST:
        amount, role = None, "bad"
    if unit == "bad" or (
        number is not None and number.style == "decimal" and unit in {"", "ml"} and not loose
    ):
        role = "bad" if unit != "" or amount is None else role
    figure = float(number.value) if number is not None else None
    return Item(
        role,
        i,
        after,
        core=end,
        amount=amount,
        clocks=NO_CLOCKS if unit else loose,
        unit=unit,
        figure=figure,
        digits=toks[i].text if toks[i].is_digits and end == i + 1 else "",
        about=word(toks, after) == "ish",
    )


SIDES = frozenset({"l", "r"})
BEFORE_BED = frozenset({"", ",", ";", ".", ":", "-", "/", "and", "&"})


def _may_be_of_left(item: Item, toks: Toks) -> bool:
    """ "1 L 1050": a litre, or the left tube of bed 1 at 1,050 mL."""
    apart = item.end == item.core + 1 and word(toks, item.core) == "l" and not glued(toks, item.core)
    if not (apart and is_digits(toks, item.start) and is_digits(toks, item.end)):
        return False
    before = word(toks, item.start - 1)
    if not toks.words.isdisjoint(BED_WORDS):
        return before in BED_WORDS
    listed = before.isdecimal() and (item.start == 1 or not SIDES.isdisjoint(toks.said[: item.start]))
    return listed or before in BEFORE_BED


STOPS = frozenset({",", ";"})
SPOKEN_ONLY = frozenset({"clock", "money", "heard", "joined"})


def is_thousands(toks: Toks, i: int, number: Number) -> bool:
    """Whether typed digits are one number: "1 050", as much of the world writes it; "3 80" is two."""
    joined = number.style == "joined" and toks[i].is_digits and len(word(toks, number.end - 1)) == 3
    apart = word(toks, i - 1) in STOPS and not word(toks, number.end - 1).startswith("0")
    return joined and number.value < MOST_JOINED and not apart  # "9 610, 2 635"


def _stray_letter(toks: Toks, i: int, end: int) -> bool:
    """A letter inside or glued behind a number ("1o50", "105o") makes it unreadable."""
    if not toks[end - 1].is_digits or not glued(toks, end):
        return _glued_before(toks, i)
    text = word(toks, end)
    if not text.isalpha() or text in _BEHIND or len(text) > 3:
        return _glued_before(toks, i)
    return len(text) <= 2 and text not in {"cm", "kg", "mm", "oz"}


def _glued_before(toks: Toks, i: int) -> bool:
    """Whether a letter that looks like a digit is glued before it: "l050", "o75"."""
    return glued(toks, i) and word(toks, i - 1) in {"o", "i", "s", "oo"} and toks[i].is_digits


def _unit(toks: Toks, i: int) -> tuple[str, int]:
    text = word(toks, i)
    if text not in _UNITS:
        return "", i
    if text in MILLILITRES:
        return "ml", i + 1
    if spelt := _spelt_ml(toks, i):
        return "ml", spelt
    if text in LITRES:
        side = text == "l" and is_digits(toks, i + 1) and glued(toks, i + 1)  # "1900 L80 R40"
        side |= text == "l" and word(toks, i + 1) in OF_A_SIDE and not glued(toks, i)  # "5 L tube 110"
        return ("", i) if side or _is_of_gas(toks, i + 1) else ("litre", i + 1)
    if text in _KG:
        return "kg", i + 1
    if text in _LB:
        return "lb", i + 1
    for pieces, name in _PRESSURES.get(text, ()):
        if all(word(toks, i + k) == w for k, w in enumerate(pieces)):
            return name, i + len(pieces)
    return ("bad", i + 1) if text in _BAD else ("", i)


def _is_of_gas(toks: Toks, i: int) -> bool:
    """ "on 2L nc", "5 l o2": of oxygen."""
    return word(toks, i) == "nc" or (word(toks, i) == "o" and word(toks, i + 1) == "2")


def _spelt_ml(toks: Toks, i: int) -> int:
    """The end of "c c", "c c's", "M.L." or "cubic centimeters", or 0."""
    if word(toks, i) == "cubic" and word(toks, i + 1).startswith("centimet"):
        return i + 2
    dotted = word(toks, i + 1) == "."
    last = i + 1 + dotted
    if (word(toks, i), word(toks, last).removesuffix("'s")) not in {("c", "c"), ("m", "l")}:
        return 0
    return last + 1 + (dotted and word(toks, last + 1) == "." and glued(toks, last + 1))


def _per_hour(toks: Toks, i: int) -> bool:
    """ "50 mL/h", "50 an hour": a rate, neither a level nor an amount."""
    link, hour = word(toks, i), word(toks, i + 1)
    if link == "ml" and hour == "/":
        link, hour = hour, word(toks, i + 2)
    if hour in {"kg", "kilo"} and link in {"/", "per"}:
        return True  # "640 ml/kg": what was given
    if hour not in HOUR_WORDS or link not in {"/", "per", "an", "every", "each"}:
        return False
    return word(toks, length(toks, i)[0]) not in AGO


def _millilitres(toks: Toks, i: int, number: Number, unit: str) -> int | None:
    value: Value = number.value * 1000 if unit == "litre" else number.value
    if value.denominator != 1:
        return None
    apart = number.end > i + 1  # "3 0 5 0": 50 in bed 3, or in bed 30?
    led = number.style == "led" and toks[i].is_digits and (apart or len(word(toks, i)) > 2)
    if led and unit not in {"ml", "litre"}:
        return None
    if number.style == "decimal" and unit != "litre":
        return None
    return int(value)


def _with_rest(toks: Toks, after: int, amount: int | None) -> tuple[int | None, int]:
    """ "one liter and fifty mils", "1 L 200 ml"."""
    start = after + 1 if word(toks, after) == "and" else after
    if amount is None or amount % 1000:
        return amount, after
    for rest in sorted(numbers(toks, start), reverse=True):
        unit, end = _unit(toks, rest.end)
        if unit == "ml" and rest.value < 1000 and rest.value.denominator == 1:
            return amount + int(rest.value), end
    return amount, after
