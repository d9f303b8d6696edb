"""Rates: always with the stretch that they were measured over, an average called an average."""

from __future__ import annotations

from bot.engine.rates import Rate
from bot.wording import formats
from bot.wording.queries.view import View

UNKNOWN = "no rate: it takes two lines at least 45 min apart"
UNKNOWN_TOGETHER = "no rate: it takes lines of all tubes in the same 15 min, twice"
NOT_KNOWN = "not known yet"
"""The same in a list, under the word rate."""
RECENT = 4
"""How many of the last hours are told one by one."""


def rate_words(rate: Rate, view: View) -> str:
    """ "45 mL/h (18:00-19:00, 20 min ago)"; of a longer stretch the average, which says so."""
    least = "at least " if rate.at_least else ""
    over = f"({view.stretch(rate.begin, rate.end)}, {view.ago(rate.end)})"
    if rate.average:
        return f"average {least}{formats.ml_h(rate.value)} {over}, the last hour alone not known"
    return f"{least}{formats.ml_h(rate.value)} {over}"


def short_rate(rate: Rate) -> str:
    """ "45 mL/h", "average 52 mL/h"."""
    least = "at least " if rate.at_least else ""
    return f"{'average ' if rate.average else ''}{least}{formats.ml_h(rate.value)}"


def hours_words(rates: tuple[Rate, ...], recent: Rate, view: View) -> str:
    """The hours before the recent one, the latest last: "Before: 16:00-17:00 35 mL/h"."""
    earlier = tuple(each for each in rates if each.end <= recent.begin)[-RECENT:]
    told = (f"{view.stretch(each.begin, each.end)} {short_rate(each)}" for each in earlier)
    return f"Before: {', '.join(told)}" if earlier else ""
