"""One message read at five past seven in the evening, and what was read as one line of plain words."""

from __future__ import annotations

from dataclasses import fields
from datetime import date, datetime, time, timedelta
from typing import Any, Literal, TypeAlias
from zoneinfo import ZoneInfo

import nlu
from nlu.statements import Parsed, Statement

Channel: TypeAlias = Literal["text", "voice"]
CHANNELS: tuple[Channel, ...] = ("text", "voice")
ARRIVED = datetime(2026, 3, 4, 19, 5, tzinfo=ZoneInfo("America/New_York"))
BEDS = tuple(str(number) for number in range(1, 25))
LETTERED = ("1", "2", "2A", "2B", "3", "CT1", "CT2", "CT3")
SHIFTS = (time(7), time(19))
TODAY = ARRIVED.date()
MORNING = ARRIVED.replace(hour=6, minute=55)
QUIET = {"spans", "closing", "about"}


def at(clock: str) -> datetime:
    """That time of the day of `ARRIVED`, in four digits."""
    return ARRIVED.replace(hour=int(clock[:2]), minute=int(clock[2:]))


def reading(
    text: str,
    beds: tuple[str, ...] = BEDS,
    channel: Channel = "text",
    arrived: datetime = ARRIVED,
) -> str:
    """Every statement with its slots, then the slot of every question."""
    parsed = nlu.parse(text, arrived=arrived, beds=beds, shifts=SHIFTS, channel=channel)
    return "; ".join([*(plain(s) for s in parsed.statements), *asked_slots(parsed)])


def asked_slots(parsed: Parsed) -> list[str]:
    """The slots that are asked about."""
    return [f"ask {unclear.slot}" for unclear in parsed.unclear]


def plain(statement: Statement, today: date = TODAY) -> str:
    """One statement with its slots; a time of another day has its date."""
    values = {f.name: getattr(statement, f.name) for f in fields(statement) if f.name not in QUIET}
    words = [f"{slot}={_shown(value, today)}" for slot, value in values.items() if value not in (None, ())]
    marks = [slot for slot in ("closing", "about") if getattr(statement, slot, False)]
    return " ".join([statement.kind, *words, *marks])


def _shown(value: Any, today: date) -> str:
    match value:
        case datetime():
            same = value.date() == today
            return value.strftime("%H:%M") if same else value.strftime("%d-%b-%H:%M")
        case timedelta():
            return f"{value // timedelta(hours=1)}h"
        case float():
            return f"{value:g}"
        case tuple():
            return "+".join(value)
    return str(value)
