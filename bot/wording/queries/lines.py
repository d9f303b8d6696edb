"""The last line of a drain and the volumes to chart between lines."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime
from itertools import groupby

from bot.engine.values import Amendment, Canister, Charted, Interval, Level
from bot.wording import formats
from bot.wording.queries.view import View
from bot.wording.subtraction import differences_text, subtraction_text

NO_LINE = "no line yet"
NOTHING_YET = "First line: nothing charted yet."
TO_CHART = " To chart:"
ONE_TO_CHART = " Charted once, at the closing line; from line to line, not to chart:"

_KINDS = {"mark": "line", "final": "final level", "opening": "opening level"}

_KNOWN = {
    "line_fell": "told lower than the line before and kept",
    "over_capacity": "told over the capacity and kept",
    "jump": "told as a large step and kept",
    "duplicate": "told twice, counted once",
    "time_conflict": "told against another level of that minute",
}


def level_text(level: Level, view: View) -> str:
    """The level as it was read: "19:00 line 1,050 mL (Amy, 35 min ago)"."""
    about = "about " if level.about else ""
    told = f"{view.clock(level.at)} {_KINDS[level.kind]} {about}{formats.ml(level.level_ml)}"
    return f"{told} ({', '.join((view.who(level.who), view.ago(level.at), *_remarks(level)))})"


def last_text(level: Level, unread: Canister | None, view: View) -> str:
    """The same as the last that is known: after an exchange it says that it is of the canister before."""
    return level_text(level, view) if unread is None else f"{level_text(level, view)}; {_new(unread, view)}"


def _new(canister: Canister, view: View) -> str:
    """ "new canister since 15:00 at 0 mL" """
    since = f" since {view.clock(canister.opened_at)}" if canister.opened_at else ""
    return f"new canister{since} at {formats.ml(canister.opening_ml or 0)}"


def board_line(level: Level, unread: Canister | None, view: View) -> tuple[str, str]:
    """What stands on the canister now, and how old that is: "1,050 mL at 19:00", "35 min ago"."""
    read = f"{formats.ml(level.level_ml)} at {view.clock(level.at)}"
    if unread is None or unread.opened_at is None:
        return read, view.ago(level.at)
    new = f"{formats.ml(unread.opening_ml or 0)}, new canister at {view.clock(unread.opened_at)}"
    kind = "final level" if level.kind == "final" else "last line"
    return new, f"{view.ago(unread.opened_at)}; {kind} of the old one {read}"


def chart_text(interval: Interval, view: View) -> str:
    """What the step to this line charted: "Charted 130 mL (1,180 - 1,050 at 19:00)"."""
    told = f"Charted {formats.volume(interval.volume_ml, interval.at_least)}"
    return f"{told} ({subtraction_text(interval, view)}){_crossing(interval, view)}"


def uncharted_text(interval: Interval, view: View) -> str:
    """The same where only the closing line is charted: "130 mL since 19:00 (1,180 - 1,050), ..."."""
    since = f"since {view.clock(interval.begin.at)} ({differences_text(interval)})"
    volume = formats.volume(interval.volume_ml, interval.at_least)
    told = f"{volume[:1].upper()}{volume[1:]} {since}{_crossing(interval, view)}"
    return f"{told}, charted only at the closing line"


def step_text(interval: Interval, view: View) -> str:
    """One step to copy: "19:00-20:00 45 mL"; more than the shift's own part is named."""
    ends = view.stretch(interval.begin.at, interval.end.at)
    return f"{ends} {formats.volume(interval.volume_ml, interval.at_least)}{_crossing(interval, view)}"


def trend_text(interval: Interval, view: View) -> str:
    """One step of the trend; an hour's amount is a rate, a longer stretch's only an average."""
    minutes = formats.minutes_between(interval.begin.at, interval.end.at)
    told = step_text(interval, view)
    if minutes <= 0 or 45 <= minutes <= 75:
        return told
    rate = formats.ml_h(interval.volume_ml * 60 / minutes)
    return f"{told} (average {rate})" if minutes > 75 else told


def picture_text(url: str, until: datetime, view: View) -> str:
    """Where the trend can be seen, and how long: "Picture until 20:05: https://..."."""
    return f"Picture until {view.clock(until)}: {url}"


def amend_texts(amendments: Iterable[Amendment], view: View) -> tuple[str, ...]:
    """What to change on the chart, a line each; what one charted volume is split into is one line."""
    told: list[str] = []
    for replaces, group in groupby(amendments, key=lambda each: each.replaces):
        parts = tuple(group)
        if replaces and len(parts) > 1:
            told.append(_split_text(parts, view))
        else:
            told += [amend_text(each, view) for each in parts]
    return tuple(told)


def _split_text(parts: tuple[Amendment, ...], view: View) -> str:
    """ "Amend: 15:00-17:00 150 mL and 17:00-19:00 60 mL instead of 15:00-19:00 210 mL" """
    new = tuple(
        f"{view.stretch(each.begin, each.end)} {formats.volume(each.volume_ml, each.at_least)}"
        for each in parts
    )
    return f"Amend: {formats.listed(new)} instead of {_charted(parts[0].replaces, view)}"


def amend_text(amendment: Amendment, view: View) -> str:
    """What to change on the chart: "Amend: 15:00-19:00 210 to 165 mL"."""
    ends = view.stretch(amendment.begin, amendment.end)
    new = formats.volume(amendment.volume_ml, amendment.at_least)
    if amendment.withdrawn:
        return f"Amend: strike out {_charted(amendment.replaces, view)}"
    if not amendment.replaces:
        return f"Amend: add {ends} {new}"
    if [(old.begin, old.end) for old in amendment.replaces] == [(amendment.begin, amendment.end)]:
        return f"Amend: {ends} {formats.number(amendment.replaces[0].volume_ml, 0)} to {new}"
    return f"Amend: {ends} {new} instead of {_charted(amendment.replaces, view)}"


def _charted(replaced: tuple[Charted, ...], view: View) -> str:
    told = tuple(f"{view.stretch(old.begin, old.end)} {formats.ml(old.volume_ml)}" for old in replaced)
    return formats.listed(told)


def _crossing(interval: Interval, view: View) -> str:
    if interval.includes_before is None:
        return ""
    return f" (includes before {view.clock(interval.includes_before)})"


def _remarks(level: Level) -> tuple[str, ...]:
    return (
        *(("corrected",) if level.corrected else ()),
        *(("baseline",) if level.baseline and "line_fell" not in level.codes else ()),
        *(_KNOWN[code] for code in level.codes if code in _KNOWN),
    )
