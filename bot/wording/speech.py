"""A reply as a voice should say it: numbers, times and units in words.

A speech synthesiser left to itself reads "1,050 mL" as "one comma zero fifty M L" and "19:00" as a bet
on its locale. Called with a finished reply; changes no meaning and drops no caution.
"""

from __future__ import annotations

import re
from functools import lru_cache

# fmt: off
_ONES = (
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
    "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
)
_TENS = ("zero", "ten", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
# fmt: on
_ORDINALS = {
    "one": "first",
    "two": "second",
    "three": "third",
    "five": "fifth",
    "eight": "eighth",
    "nine": "ninth",
    "twelve": "twelfth",
}
_UNITS = {
    "mL/kg/h": ("milliliter per kilogram an hour", "milliliters per kilogram an hour"),
    "mL/kg": ("milliliter per kilogram", "milliliters per kilogram"),
    "mL/h": ("milliliter an hour", "milliliters an hour"),
    "mL": ("milliliter", "milliliters"),
    "cmH2O": ("centimeter of water", "centimeters of water"),
    "cm": ("centimeter", "centimeters"),
    "mmHg": ("millimeter of mercury", "millimeters of mercury"),
    "kg": ("kilogram", "kilograms"),
    "min": ("minute", "minutes"),
    "h": ("hour", "hours"),
    "%": ("percent", "percent"),
}
_DAYS = {
    "Mon": "Monday",
    "Tue": "Tuesday",
    "Wed": "Wednesday",
    "Thu": "Thursday",
    "Fri": "Friday",
    "Sat": "Saturday",
    "Sun": "Sunday",
}
_MONTHS = {
    "Jan": "January",
    "Feb": "February",
    "Mar": "March",
    "Apr": "April",
    "May": "May",
    "Jun": "June",
    "Jul": "July",
    "Aug": "August",
    "Sep": "September",
    "Oct": "October",
    "Nov": "November",
    "Dec": "December",
}
_NUMBER = r"\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?"
_BEGINS = r"(?=[\dA-Zmc]|\ -\ )"
"""What any of them begins with: most letters of a reply begin none, and are passed over quickly."""
_TOKEN = re.compile(
    rf"""
    {_BEGINS}(?:
    (?P<date>\b(?:{"|".join(_DAYS)})\ \d{{1,2}}\ (?:{"|".join(_MONTHS)})\b)
  | (?P<times>\b\d\d:\d\d-\d\d:\d\d\b)
  | (?P<time>\b\d\d:\d\d\b)
  | (?P<measure>(?<![\w.])(?:{_NUMBER})\ (?:{"|".join(map(re.escape, _UNITS))})(?!\w))
  | (?P<minus>(?<=\d)\ -\ (?=\d))
  | (?P<label>\b(?:[A-Z]{{1,3}}\d+|\d+[A-Z])\b)
  | (?P<number>(?<![\w.])(?:{_NUMBER})(?![\w]))
  | (?P<bare_unit>(?<![\w/])(?:mL/kg/h|mL/kg|mL/h|mL|cmH2O|mmHg)(?!\w))
  | (?P<urgent>\b(?:URGENT|CAUTION|NOTE)\b)
  | (?P<glued>\d+)
  | (?P<letters>\b(?:CT|SBAR|ATLS|NSW|ACI|BTS|BARC|EAST|RCEM)\b)
    )
    """,
    re.VERBOSE,
)
_ADDRESS = re.compile(r"https?://\S+")
_STOPS = re.compile(r"([.?:])\. ")
"""A line's own stop and the one that takes the place of its end."""


def spoken(reply: str) -> str:
    """The reply in words for a voice: "one thousand fifty milliliters at nineteen hundred"."""
    said = _TOKEN.sub(lambda found: _worded(found.lastgroup, found[0]), _ADDRESS.sub("see the text", reply))
    return " ".join(_STOPS.sub(r"\1 ", said.replace("\n", ". ")).split())


def in_words(value: int) -> str:
    """A whole number from 0 up in words, without "and": 1,050 is "one thousand fifty"."""
    if value < 20:
        return _ONES[value]
    if value < 100:
        tens, ones = divmod(value, 10)
        return f"{_TENS[tens]}-{_ONES[ones]}" if ones else _TENS[tens]
    for size, name in ((1_000_000, "million"), (1_000, "thousand"), (100, "hundred")):
        if value >= size:
            count, rest = divmod(value, size)
            return f"{in_words(count)} {name}" + (f" {in_words(rest)}" if rest else "")
    raise AssertionError(value)


def digit_by_digit(value: int) -> str:
    """A number read back on request, so that fifteen and fifty cannot be mistaken: "one zero five zero"."""
    return " ".join(_ONES[int(digit)] for digit in str(value))


def time_in_words(hhmm: str) -> str:
    """A 24-hour time as a nurse says it: "oh seven hundred", "nineteen thirty", "zero hundred"."""
    hour, minute = (int(part) for part in hhmm.split(":"))
    hours = "zero" if hour == 0 else f"oh {_ONES[hour]}" if hour < 10 else in_words(hour)
    if minute == 0:
        return f"{hours} hundred"
    return f"{hours} {'oh ' + _ONES[minute] if minute < 10 else in_words(minute)}"


@lru_cache(maxsize=4096)  # most of a reply was in the last one: beds, levels, times
def _worded(kind: str | None, text: str) -> str:
    """What a part of a reply is in words, by what it is."""
    match kind:
        case "date":
            return _date(text)
        case "times":
            return " to ".join(time_in_words(part) for part in text.split("-"))
        case "time":
            return time_in_words(text)
        case "measure":
            return _measure(text)
        case "minus":
            return " minus "
        case "label":
            return _label(text)
        case "number":
            return _number(text)
        case "glued":
            return f" {in_words(int(text))} "
        case "bare_unit":
            return _UNITS[text][1]
        case "urgent":
            return text.capitalize()
    return " ".join(text)


def _number(written: str) -> str:
    whole, _, decimals = written.replace(",", "").partition(".")
    words = in_words(int(whole))
    return f"{words} point {' '.join(_ONES[int(digit)] for digit in decimals)}" if decimals else words


def _measure(text: str) -> str:
    amount, _, unit = text.partition(" ")
    one, many = _UNITS[unit]
    return f"{_number(amount)} {one if amount == '1' else many}"


def _label(label: str) -> str:
    parts = re.findall(r"\d+|[A-Z]", label)
    return " ".join(in_words(int(part)) if part.isdigit() else part for part in parts)


def _date(text: str) -> str:
    weekday, month_day, month = text.split(" ")
    return f"{_DAYS[weekday]} {_MONTHS[month]} {_ordinal(int(month_day))}"


def _ordinal(value: int) -> str:
    stem, dash, last = in_words(value).rpartition("-")
    regular = last[:-1] + "ieth" if last.endswith("y") else last + "th"
    return f"{stem}{dash}{_ORDINALS.get(last, regular)}"
