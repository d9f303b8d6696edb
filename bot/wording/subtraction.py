"""How a volume to chart was computed: the levels of each canister, subtracted. Pure."""

from __future__ import annotations

from bot.engine.values import Interval
from bot.wording import formats
from bot.wording.queries.view import View


def subtraction_text(interval: Interval, view: View) -> str:
    """ "1,180 - 1,050 at 19:00"; "400 - 360 and 50 - 0, new canister since the line at 07:00"."""
    differences = differences_text(interval)
    clock = view.clock(interval.begin.at)
    if interval.begin.canister == interval.end.canister:
        return f"{differences} at {clock}"
    return f"{differences}, new canister since the line at {clock}"


def differences_text(interval: Interval) -> str:
    """The subtractions alone: "1,180 - 1,050"."""
    found = tuple(formats.difference(later, earlier) for later, earlier in interval.subtractions)
    return formats.listed(found)
