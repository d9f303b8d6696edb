"""Capacity and forecast, what is due, the last check, and who is asking."""

from __future__ import annotations

from datetime import datetime

from bot.engine.entries import Checked, Entry, Ordered
from bot.engine.values import Due, Forecast, Level
from bot.wording import formats
from bot.wording.gsm import gsm_only
from bot.wording.queries.rows import check_words, suction_words
from bot.wording.queries.view import View, place

NOTHING_SAID = "Nothing was said to you here before."
_DUE = {"line": "line", "closing": "closing line", "check": "check"}
_DO = {
    "nurse": "You can read and write its beds, and correct lines of this and the previous shift.",
    "charge": "You can read and write its beds, and correct any line.",
    "reader": "You can read its beds.",
}


def room_text(where: str, last: Level, in_use: tuple[int, bool], capacity_ml: int, view: View) -> str:
    """The room left: "Bed 12: room for 950 mL (line 1,050 of 2,000 at 19:00)".

    `in_use`: the level of the canister in use, and whether it is new, with no line read on it yet.
    """
    level_ml, new = in_use
    room, full = max(capacity_ml - level_ml, 0), formats.number(capacity_ml, 0)
    level = formats.number(level_ml, 0)
    since = "new canister, no line on it yet" if new else f"line {level} of {full} at {view.clock(last.at)}"
    return f"{where}: room for {formats.ml(room)} ({since})."


def forecast_text(
    forecasts: tuple[Forecast, ...], level_ml: int, capacity_ml: int, average: bool, view: View
) -> str:
    """When the canister is three quarters full and full at the recent rate, or why that is not known."""
    ahead = tuple(each for each in forecasts if each.level_ml > level_ml)
    if not ahead:
        return "It is full."
    rate, past = ahead[0].rate_ml_h, "Three quarters or more full. " if len(ahead) < len(forecasts) else ""
    if rate is None:
        return f"{past}No recent rate, so no forecast."
    at_rate = f"At the recent {'average ' if average else ''}{formats.ml_h(rate)}"
    if all(each.at is None for each in ahead):
        return f"{past}{at_rate} it does not fill soon."
    told = tuple(f"{_mark(each.level_ml, capacity_ml)} {_at(each.at, view)}" for each in ahead)
    return f"{past}{at_rate}: {', '.join(told)}."


def tipped_text(where: str) -> str:
    """A canister that was tipped over: its level says nothing of the room left."""
    return f"{where}: the canister was tipped over, so the room left and the forecast are not known."


def due_text(due: Due, view: View) -> str:
    """One thing that is expected: "line due 20:00", "check overdue since 16:00 (3 h)"."""
    if due.overdue:
        return f"{_DUE[due.what]} overdue since {view.clock(due.at)} ({formats.elapsed(due.at, view.now)})"
    return f"{_DUE[due.what]} due {view.clock(due.at)}"


def check_text(entry: Entry, view: View) -> str:
    """A check with its time and who made it: "18:00 seal 2 cm, no air leak (Amy)"."""
    found = check_words(entry.payload) if isinstance(entry.payload, Checked) else ()
    return f"{view.clock(entry.at)} {', '.join(found) or 'nothing told'} ({view.who(entry.who)})"


def ordered_text(entry: Entry, view: View) -> str:
    """The suction that is ordered: "Ordered suction 20 cmH2O (08:10)"."""
    order = suction_words(entry.payload.suction_cmh2o) if isinstance(entry.payload, Ordered) else ""
    return f"Ordered {order} ({view.clock(entry.at)})"


def me_text(name: str, role: str, unit: str, until: datetime | None, view: View) -> tuple[str, ...]:
    """Who the sender is here and what that role may do."""
    ends = f", until {view.clock(until)}" if until else ""
    return (gsm_only(f"You are {name}, {role}, {unit}{ends}."), _DO[role])


NOTHING_DUE = "Nothing is due."


def nothing_due(where: str) -> str:
    """Nothing is expected."""
    return f"{where}: nothing due."


def away_text(bed: str) -> str:
    """The patient is off the unit, so nothing is due."""
    return f"{place(bed, None)}: patient away, nothing due until back."


def _mark(level_ml: int, capacity_ml: int) -> str:
    return "full" if level_ml >= capacity_ml else f"three quarters ({formats.ml(level_ml)})"


def _at(moment: datetime | None, view: View) -> str:
    return f"about {view.clock(moment)}" if moment else "not in sight"
