"""Amounts, rates, times and lengths of time as a chart writes them.

A space before the unit, a comma at 1,000 and over, no trailing zero, a leading zero, never cc (ISMP
error-prone abbreviations list 2021; Joint Commission Do-Not-Use list); the 24-hour clock (Nursing
Associate's Handbook of Clinical Skills).
"""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta, tzinfo
from functools import lru_cache

_WEEKDAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_MOST_PLACES = 3
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def number(value: float, places: int = 1) -> str:
    """The number as it is charted: 1,050; 0.5; 2, never 2.0. Rounded half up to `places` decimals."""
    scale = 10**places
    scaled = int(abs(value) * scale + 0.5)
    whole, part = divmod(scaled, scale)
    decimals = f".{part:0{places}d}".rstrip("0") if part else ""
    sign = "-" if value < 0 and scaled else ""
    return f"{sign}{whole:,}{decimals}"


def ml(volume_ml: float) -> str:
    """An amount or a level in whole millilitres: "1,050 mL"."""
    return f"{number(volume_ml, 0)} mL"


def volume(volume_ml: float, at_least: bool) -> str:
    """A volume in mL, "at least" where a canister's end is not known."""
    return f"at least {ml(volume_ml)}" if at_least else ml(volume_ml)


def ml_h(rate_ml_h: float) -> str:
    """A rate in whole millilitres an hour: "130 mL/h"."""
    return f"{number(rate_ml_h, 0)} mL/h"


def quantity(value: float, unit: str) -> str:
    """A measured value with its unit; whole for mL and mL/h, else to one decimal."""
    places = 0 if unit in {"mL", "mL/h", "min"} else 1
    return f"{number(value, places)} {unit}".rstrip()


def beyond(value: float, unit: str, limit: float, comparison: str) -> str:
    """A measured value that meets a rule, so exact that it is seen to meet it: "100.4 mL/h", over 100."""
    places = 0 if unit in {"mL", "mL/h", "min"} else 1
    while places < _MOST_PLACES and not _meets(round(value, places), limit, comparison):
        places += 1
    return f"{number(value, places)} {unit}".rstrip()


def _meets(value: float, limit: float, comparison: str) -> bool:
    match comparison:
        case "over":
            return value > limit
        case "at_least":
            return value >= limit
        case "under":
            return value < limit
        case "at_most":
            return value <= limit
        case _:
            return True


def difference(later_ml: int, earlier_ml: int) -> str:
    """The subtraction as it is shown: "1,180 - 1,050"."""
    return f"{number(later_ml, 0)} - {number(earlier_ml, 0)}"


def day(moment: datetime, zone: tzinfo) -> str:
    """The date in the unit's zone, with no month and day to confuse: "Tue 3 Mar"."""
    local = moment.astimezone(zone)
    return f"{_WEEKDAYS[local.weekday()]} {local.day} {_MONTHS[local.month - 1]}"


def clock(moment: datetime, zone: tzinfo, now: datetime) -> str:
    """The time of day in the unit's zone: "19:00"; "Tue 3 Mar 19:00" when it is not the day of `now`.

    A local time that the autumn change repeats carries its zone's letters ("01:30 EDT").
    """
    when, told = _local(moment, zone)
    if when == _local(now, zone)[0]:
        return told
    return f"{day(moment, zone)} {told}"


def _local(moment: datetime, zone: tzinfo) -> tuple[date, str]:
    """The day and the time of day there."""
    return _at(moment.astimezone(UTC), zone)


@lru_cache(maxsize=1024)  # a reply tells few moments, and they come again in the next one
def _at(moment: datetime, zone: tzinfo) -> tuple[date, str]:
    """The same of a moment in UTC: two of one zone that are an hour apart can be equal."""
    local = moment.astimezone(zone)
    told = f"{local.hour:02d}:{local.minute:02d}"
    if local.replace(fold=0).utcoffset() != local.replace(fold=1).utcoffset():
        told += f" {local.tzname()}"
    return local.date(), told


def stretch(begin: datetime, end: datetime, zone: tzinfo, now: datetime) -> str:
    """Two moments, the day said once where both share it: "15:00-19:00", "Tue 3 Mar 15:00-19:00"."""
    if _local(begin, zone)[0] == _local(end, zone)[0]:
        return f"{clock(begin, zone, now)}-{clock(end, zone, end)}"
    return f"{clock(begin, zone, now)} to {clock(end, zone, now)}"


def minutes_between(begin: datetime, end: datetime) -> int:
    """Whole elapsed minutes; in UTC, so that a clock change between them does not count."""
    return round((end.astimezone(UTC) - begin.astimezone(UTC)).total_seconds() / 60)


def length(span: timedelta) -> str:
    """A length of time: "45 min", "60 min", "2 h", "2 h 30 min", "3 days" from 72 h on."""
    minutes = round(span.total_seconds() / 60)
    hours, rest = divmod(minutes, 60)
    if minutes <= 90:
        return f"{minutes} min"
    if hours >= 72:
        return f"{hours // 24} days"
    return f"{hours} h {rest} min" if rest else f"{hours} h"


def elapsed(begin: datetime, end: datetime) -> str:
    """The length of time between two moments."""
    return length(end.astimezone(UTC) - begin.astimezone(UTC))


def listed(words: tuple[str, ...], last: str = "and") -> str:
    """Words in a row: "a", "a and b", "a, b and c"."""
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} {last} {words[-1]}"


def capital(text: str) -> str:
    """The text with a capital, as it begins a sentence."""
    return f"{text[:1].upper()}{text[1:]}"
