"""Volumes over a shift or a window, always with their real ends."""

from __future__ import annotations

from datetime import datetime, timedelta

from bot.engine.values import Shift, Sum
from bot.wording import formats
from bot.wording.queries.view import View

_NAMED = {
    "day": "This 24 h day so far",
    "last_day": "Last 24 h day",
    "24h": "Last 24 h",
    "placement": "In all",
}


def shift_label(shift: Shift, now: datetime) -> str:
    """What a shift is called: "Day shift", "Night shift so far" while it runs."""
    label = f"{shift.name.capitalize()} shift"
    return f"{label} so far" if shift.start <= now < shift.end else label


def window_label(window: str | timedelta | datetime, view: View) -> str:
    """What a window that is not a shift is called: "Last 24 h", "Last 4 h", "Since 15:00"."""
    if isinstance(window, timedelta):
        return f"Last {formats.length(window)}"
    if isinstance(window, datetime):
        return f"Since {view.clock(window)}"
    return _NAMED[window]


def sum_text(label: str, total: Sum, view: View, begin: datetime | None) -> str:
    """A sum with its label and real ends: "Day shift so far 380 mL, 07:00-19:00".

    `begin`: where the window was asked to begin, which is named when no line stands there; None
    for a sum since the first line or placement.
    """
    if total.volume_ml is None or total.begin is None or total.end is None:
        return f"{label}: {_no_sum(total, view, begin)}"
    ends = view.stretch(total.begin.at, total.end.at)
    told = f"{label} {formats.volume(total.volume_ml, total.at_least)}, {ends}"
    return told + boundary_note(total, view, begin)


def short_sum(total: Sum, view: View, begin: datetime) -> str:
    """A shift's sum in a few words, for a list: "shift 380 mL since 07:00", "shift: no line"."""
    if total.volume_ml is None or total.begin is None:
        return "shift: no line"
    since = f"since {view.clock(total.begin.at)}{boundary_note(total, view, begin)}"
    return f"shift {formats.volume(total.volume_ml, total.at_least)} {since}"


def boundary_note(total: Sum, view: View, begin: datetime | None) -> str:
    """What the nurse must know about where a sum begins and ends; empty when lines stand there."""
    notes = (_begin_note(total, view, begin) if begin else "", _end_note(total))
    told = "; ".join(note for note in notes if note)
    return f" ({told})" if told else ""


def _begin_note(total: Sum, view: View, begin: datetime) -> str:
    at = view.clock(begin)
    if "no_boundary_line" in total.flags:
        return f"includes before {at}"
    if "since_first_line" not in total.flags:
        return ""
    if "uncounted_before" in total.flags:
        return f"no line at {at}; what drained before its first line is not in it"
    return "from the opening level" if total.begin and total.begin.kind == "opening" else f"no line at {at}"


def sum_of_tubes(label: str, sums: tuple[Sum, ...]) -> str:
    """The tubes of a bed added up; where one of them has no sum, it says so.

    The tubes' own ends may differ, so the line of each tube stands before this one.
    """
    known = [each for each in sums if each.volume_ml is not None]
    if not known:
        return f"{label}, all tubes: no sum"
    volume = sum(each.volume_ml or 0 for each in known)
    told = f"{label}, all tubes {formats.volume(volume, any(each.at_least for each in known))}"
    missing = len(sums) - len(known)
    if not missing:
        return told
    return f"{told} ({missing} of {len(sums)} tubes without a sum)"


def _end_note(total: Sum) -> str:
    return "no closing line" if "no_closing_line" in total.flags else ""


def _no_sum(total: Sum, view: View, begin: datetime | None) -> str:
    """Of the first line of all it is said that none is before it; else which line was the last."""
    last = total.end or total.begin
    if last is None:
        return "no line"
    first = "since_first_line" in total.flags and "uncounted_before" not in total.flags
    if begin is None or first:
        return f"no line before {view.clock(last.at)}"
    return f"no line (last {view.clock(last.at)})"
