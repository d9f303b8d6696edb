"""The reader against general readers of numbers and of times, on the same phrases: how exact, how quick.

They are given the phrase alone; ours reads it in its sentence, bed and all. Silently wrong is what counts
most: a phrase that is not read can be asked about. Whoever is not installed is named and left out
(`pip install words2num text2num dateparser parsedatetime recurrent`).
"""

from __future__ import annotations

import importlib
import importlib.util
import time
import warnings
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import datetime
from datetime import time as clock_time
from typing import Any
from zoneinfo import ZoneInfo

from num2words import num2words

import nlu

ARRIVED = datetime(2026, 3, 4, 19, 5, tzinfo=ZoneInfo("America/New_York"))
BEDS = tuple(str(number) for number in range(1, 25))

LEVELS: Mapping[str, int] = {
    "1050": 1050, "1,050": 1050, "1050 ml": 1050, "1 050 ml": 1050, "1.05 L": 1050, "1050cc": 1050,
    "0": 0, "one thousand fifty": 1050, "one thousand and fifty": 1050, "a thousand and fifty": 1050,
    "ten fifty": 1050,
    "ten-fifty": 1050, "ten hundred and fifty": 1050, "one oh five oh": 1050, "one zero five zero": 1050,
    "twelve hundred": 1200, "fifteen hundred mils": 1500, "one point two liters": 1200, "three forty": 340,
    "three hundred forty": 340, "three hundred and forty": 340, "eight eighty": 880, "six fifty": 650,
    "two oh five": 205, "nineteen hundred": 1900, "forty": 40, "zero": 0, "seven hundred five": 705,
    "one liter fifty": 1050, "half a liter": 500,
}  # fmt: skip
"""What a nurse says or a recogniser writes for a level, in mL."""

TIMES: Mapping[str, str] = {
    "1900": "19:00", "1845": "18:45", "0730": "07:30", "18:45": "18:45", "6:45 pm": "18:45",
    "645 pm": "18:45",
    "7pm": "19:00", "7 p.m.": "19:00", "7p": "19:00", "1900h": "19:00", "1900 hours": "19:00",
    "noon": "12:00",
    "12 pm": "12:00", "quarter past six pm": "18:15", "quarter to seven pm": "18:45",
    "half past six pm": "18:30", "ten to seven pm": "18:50", "nineteen hundred": "19:00",
    "nineteen hundred hours": "19:00", "eighteen forty five": "18:45", "oh seven hundred": "07:00",
    "six forty-five pm": "18:45", "twenty past five pm": "17:20", "1700": "17:00", "0030": "00:30",
    "00:05": "00:05", "6 p.m": "18:00", "six pm": "18:00", "now": "19:05", "five minutes ago": "19:00",
}  # fmt: skip
"""And for a time, sent at 19:05."""

Read = Callable[[str], object]


@dataclass(frozen=True, slots=True)
class Score:
    """Of the phrases, how many were read rightly, wrongly without a word, and not; and how long one took."""

    right: int
    wrong: int
    unread: int
    each_us: float


def readers() -> None:
    """Print the tables."""
    warnings.simplefilter("ignore")  # the others have views on formats and zones
    print("levels: right, silently wrong, not read; us a phrase (ours: the whole sentence)")
    _table(LEVELS, {"nlu": our_level, **_known(_LEVEL_READERS)})
    in_words = {num2words(number): number for number in (*range(100), *range(100, 2501, 7))}
    print(f"\n{len(in_words)} numbers of 0-2,500 as num2words says them")
    _table(in_words, {"nlu": our_level, **_known(_LEVEL_READERS)})
    print("\ntimes, sent at 19:05")
    _table(TIMES, {"nlu": our_time, **_known(_TIME_READERS)})
    if importlib.util.find_spec("tests.nlu.bench") is not None:
        print()
        importlib.import_module("tests.nlu.bench").main()


def score(phrases: Mapping[str, object], read: Read) -> Score:
    """How a reader does on these phrases."""
    begin = time.perf_counter()
    found = [_told(read, phrase) for phrase in phrases]
    each_us = 1e6 * (time.perf_counter() - begin) / len(phrases)
    right = sum(one == wanted for one, wanted in zip(found, phrases.values(), strict=True))
    unread = sum(one is None for one in found)
    return Score(right, len(found) - right - unread, unread, each_us)


def _told(read: Read, phrase: str) -> object:
    try:
        return read(phrase)
    except Exception:  # noqa: BLE001 - each has errors of its own; all mean that it was not read
        return None


def _table(phrases: Mapping[str, object], named: Mapping[str, Read]) -> None:
    for name, read in named.items():
        score(dict(list(phrases.items())[:3]), read)  # what is built at the first call
        found = score(phrases, read)
        print(
            f"{name:>14}  {found.right:>4} {found.wrong:>4} {found.unread:>4}  {found.each_us:>8.0f} us",
            flush=True,
        )


def our_level(phrase: str) -> int | None:
    """The level that is read, when nothing is asked."""
    return getattr(_only(f"bed 12 mark {phrase}"), "level_ml", None)


def our_time(phrase: str) -> str | None:
    """The time that is read, when nothing is asked."""
    at = getattr(
        _only(f"bed 12 mark 340 {phrase}" if phrase in _AS_IT_IS else f"bed 12 mark 340 at {phrase}"),
        "at",
        None,
    )
    return f"{at:%H:%M}" if isinstance(at, datetime) else None


_AS_IT_IS = frozenset({"now", "five minutes ago"})


def _only(text: str) -> object:
    parsed = nlu.parse(text, arrived=ARRIVED, beds=BEDS, shifts=(clock_time(7), clock_time(19)))
    return parsed.statements[0] if len(parsed.statements) == 1 and not parsed.unclear else None


def _known(makers: Mapping[str, Callable[[], Read]]) -> dict[str, Read]:
    found: dict[str, Read] = {}
    for name, make in makers.items():
        try:
            found[name] = make()
        except ImportError:
            print(f"{name:>14}  is not installed here")
    return found


def _words2num() -> Read:
    read: Read = importlib.import_module("words2num").w2n
    return read


def _text2num() -> Read:
    read: Any = importlib.import_module("text_to_num").text2num
    return lambda phrase: read(phrase, "en")


def _dateutil() -> Read:
    parse: Any = importlib.import_module("dateutil.parser").parse
    return lambda phrase: f"{parse(phrase, default=ARRIVED):%H:%M}"


def _dateparser() -> Read:
    parse: Any = importlib.import_module("dateparser").parse
    base = {"RELATIVE_BASE": ARRIVED.replace(tzinfo=None), "PREFER_DATES_FROM": "past"}
    return lambda phrase: f"{found:%H:%M}" if (found := parse(phrase, settings=base)) else None


def _parsedatetime() -> Read:
    calendar: Any = importlib.import_module("parsedatetime").Calendar()

    def read(phrase: str) -> str | None:
        moment, known = calendar.parseDT(phrase, sourceTime=ARRIVED.replace(tzinfo=None))
        return f"{moment:%H:%M}" if known else None

    return read


def _recurrent() -> Read:
    event: Any = importlib.import_module("recurrent").RecurringEvent

    def read(phrase: str) -> str | None:
        found = event(now_date=ARRIVED.replace(tzinfo=None)).parse(phrase)
        return f"{found:%H:%M}" if isinstance(found, datetime) else None

    return read


_LEVEL_READERS: Mapping[str, Callable[[], Read]] = {"words2num": _words2num, "text2num": _text2num}
_TIME_READERS: Mapping[str, Callable[[], Read]] = {
    "dateutil": _dateutil,
    "dateparser": _dateparser,
    "parsedatetime": _parsedatetime,
    "recurrent": _recurrent,
}
