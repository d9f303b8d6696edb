"""Plain words for a bed or tube about which there is nothing to tell."""

from __future__ import annotations

from datetime import datetime

from bot.wording import formats
from bot.wording.gsm import gsm_only
from bot.wording.queries.view import View, place

_TOPICS = {
    "last": "last lines",
    "total": "totals",
    "due": "what is due",
    "checks": "last checks",
    "rate": "rates",
}


def unknown_bed(bed: str, unit: str) -> str:
    """The unit has no such bed."""
    return gsm_only(f"There is no bed {bed} in {unit}.")


def which_bed(topic: str) -> str:
    """The query needs a bed."""
    return f'Which bed? For example: "{topic} bed 12".'


def no_drain(bed: str) -> str:
    """No drain was ever told of in this bed."""
    return f"{place(bed, None)}: no drain recorded."


def unknown_tube(bed: str, tube: str, tubes: tuple[str | None, ...]) -> str:
    """The bed has no such tube, and which it has."""
    named = tuple(each for each in tubes if each)
    has = f"has {formats.listed(named)}" if named else "has one drain with no tube name"
    return gsm_only(f"Bed {bed} has no {tube} tube recorded; it {has}.")


def closed_drain(bed: str, tube: str | None, end: tuple[str, datetime], view: View) -> str:
    """The bed has no open drain, and how the last one ended ("removed" or "left") and when."""
    how, moment = end
    ended = "the patient left the unit" if how == "left" else "the last one was removed"
    return f"{place(bed, tube)}: no open drain, {ended} {view.clock(moment)}."


def moved_away(bed: str, tube: str | None, now_in: str) -> str:
    """The drain that was in this bed is in another one now."""
    return gsm_only(f"{place(bed, tube)}: no drain here now, it moved to bed {now_in}.")


def empty_unit(unit: str) -> str:
    """No bed of the unit has an open drain."""
    return gsm_only(f"{unit}: no open drains.")


def unit_topic(unit: str, topic: str, beds: int) -> str:
    """The head of a list over the unit's beds: "Ward 4, capacity, 6 beds with drains:"."""
    noun = "bed" if beds == 1 else "beds"
    return gsm_only(f"{unit}, {_TOPICS.get(topic, topic)}, {beds} {noun} with drains:")
