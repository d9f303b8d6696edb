"""A query in the words that a nurse would ask it with, to be shown where a reply offers more."""

from __future__ import annotations

from datetime import datetime, timedelta, tzinfo

from bot.wording.gsm import gsm_only
from bot.wording.queries.view import tube_to_say

_TOPICS = {"open": "open questions", "due": "what's due", "beds": "list beds"}

WINDOWS = {
    "shift": "this shift",
    "last_shift": "last shift",
    "day": "today",
    "last_day": "yesterday",
    "24h": "last 24 h",
    "placement": "since placement",
}
"""What each window is called."""

_OF_A_BED = frozenset({"last", "total", "rate", "capacity", "checks", "chart", "trend"})
"""Asked without a bed, these say that every bed is meant."""


def asking_words(
    topic: str,
    bed: str | None,
    tube: str | None,
    window: str | timedelta | datetime | None,
    zone: tzinfo,
    *,
    at: datetime | None = None,
) -> str:
    """The query in words: "history bed 7 left", "chart bed 12 last shift", "list beds"."""
    where = f"bed {bed}" if bed else "all beds" if topic in _OF_A_BED else ""
    when = f"as of {at.astimezone(zone):%H%M}" if at is not None else _window(window, zone)
    parts = (_TOPICS.get(topic, topic), where, tube_to_say(tube), when)
    return gsm_only(" ".join(part for part in parts if part))


def _window(window: str | timedelta | datetime | None, zone: tzinfo) -> str:
    match window:
        case None:
            return ""
        case timedelta():
            return f"last {round(window.total_seconds() / 3600)} h"
        case datetime():
            return f"since {window.astimezone(zone):%H%M}"
        case named:
            return WINDOWS[named]
