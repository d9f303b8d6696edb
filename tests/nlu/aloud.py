"""Drawn values of a form as a recogniser writes what is said: in digits, in words of many styles, or both."""

from __future__ import annotations

import random
from collections.abc import Mapping
from datetime import datetime

from num2words import num2words

LINES = ("l", "l2", "l3", "w", "u", "u2", "u3")
BEDS = ("b", "b2", "b3")
LINE_STYLES = ("digits", "digits", "comma", "full", "short", "pair", "spelt")
CLOCK_STYLES = ("digits", "colon", "half", "half", "military", "words", "past")
HALVES = {"a": ("a.m.", "am", "a m"), "p": ("p.m.", "pm", "p m")}
HUNDRED = 100


def aloud(
    rng: random.Random, values: Mapping[str, str | int], moments: Mapping[str, datetime]
) -> dict[str, str | int]:
    """The same values as they may be said and written."""
    said = dict(values)
    said |= {name: _bed(rng, str(values[name])) for name in BEDS}
    said |= {name: _line(rng, int(values[name])) for name in LINES}
    said |= {name: _clock(rng, moment) for name, moment in moments.items()}
    return said | {"s": values["S"], "s2": values["S2"]}


def _words(number: int) -> str:
    return str(num2words(number)).replace(",", "").replace("-", " ")


def _low(number: int) -> str:
    return "hundred" if number == 0 else f"oh {_words(number)}" if number < 10 else _words(number)


def _bed(rng: random.Random, label: str) -> str:
    if not label.isdecimal() or rng.random() < 0.5:
        return label
    number = int(label)
    pair = f"{_words(number // HUNDRED)} {_low(number % HUNDRED)}" if number > HUNDRED else ""
    return pair if pair and rng.random() < 0.5 else _words(number).replace(" and ", " ")


def _line(rng: random.Random, level: int) -> str:
    style = rng.choice(LINE_STYLES)
    head, tail = divmod(level, HUNDRED)
    match style:
        case "comma":
            return f"{level:,}"
        case "full":
            return _words(level)
        case "short":
            return _words(level).replace(" and ", " ")
        case "pair" if level >= HUNDRED and (tail or head > 9):
            return f"{_words(head)} {_low(tail)}" if head % 10 or tail else _words(level)
        case "spelt" if level >= HUNDRED:
            return " ".join("oh" if digit == "0" else _words(int(digit)) for digit in str(level))
    return str(level)


def _clock(rng: random.Random, moment: datetime) -> str:
    hour, minute = moment.hour, moment.minute
    twelve = hour % 12 or 12
    half = rng.choice(HALVES["a" if hour < 12 else "p"])
    match rng.choice(CLOCK_STYLES):
        case "digits":
            return f"{moment:%H%M}"
        case "colon":
            return f"{moment:%H:%M}"
        case "military":
            first = "zero zero" if hour == 0 else f"oh {_words(hour)}" if hour < 10 else _words(hour)
            return f"{first} {_low(minute)}"
        case "words":
            return f"{_words(twelve)} {_low(minute) if minute else ''} {half}".replace("  ", " ")
        case "past" if minute in {5, 10, 15, 20, 25, 30}:
            part = {15: "quarter", 30: "half"}.get(minute) or _words(minute)
            return f"{part} past {_words(twelve)} {half}"
    return f"{twelve}:{minute:02} {half}" if minute else f"{twelve} {half}"
