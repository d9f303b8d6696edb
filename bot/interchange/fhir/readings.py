"""Observations: one a level that was read, one a volume between two levels.

A level has no code of its own, so it is told in text; the volume to chart has one. `issued` is when this
version was made, so a late entry shows both times. A corrected level keeps its name, says what it was
and is `corrected`; one that was taken back is `entered-in-error` and keeps its value.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, tzinfo
from typing import Any, Literal

from bot.engine.entries import Reason
from bot.interchange.fhir import codes, names

Status = Literal["final", "corrected", "entered-in-error"]

_TEXTS = {
    "mark": "Level read on the chest drain canister",
    "final": "Final level of the chest drain canister, before disposal",
    "opening": "Opening level of the chest drain canister",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """A level as it stands now, with what a receiver must know of how it came to be."""

    entry: str
    kind: Literal["mark", "final", "opening"]
    level_ml: int
    at: datetime
    issued: datetime
    who: str
    status: Status
    notes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Volume:
    """A volume between two levels: standing, changed since it was first given out, or no longer true."""

    begin_entry: str
    end_entry: str
    begin: datetime
    end: datetime
    volume_ml: int
    at_least: bool
    issued: datetime
    status: Status
    notes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Tube:
    """Whose volume it is."""

    drain: str
    tube: str | None
    joined: tuple[str, ...]
    reason: Reason


def level_observation(reading: Reading, tube: Tube, zone: tzinfo) -> dict[str, Any]:
    """The Observation of a level."""
    return {
        "resourceType": "Observation",
        "id": names.level_id(reading.entry),
        "status": reading.status,
        "code": {"text": _TEXTS[reading.kind]},
        "effectiveDateTime": names.moment(reading.at, zone),
        "issued": names.moment(reading.issued, zone),
        "performer": [{"type": "Practitioner", "identifier": {"value": reading.who}}],
        "valueQuantity": codes.quantity_ml(reading.level_ml),
        **codes.site(tube.tube, tube.joined),
        **_notes(reading.notes),
        "device": names.reference(names.device_id(tube.drain), "Device"),
    }


def volume_observation(volume: Volume, tube: Tube, zone: tzinfo) -> dict[str, Any]:
    """The Observation of a volume, over the period between its two levels and derived from them."""
    levels = (volume.begin_entry, volume.end_entry)
    return {
        "resourceType": "Observation",
        "id": names.volume_id(*levels),
        "status": volume.status,
        "code": codes.volume_code(tube.tube, tube.joined, tube.reason),
        "effectivePeriod": {"start": names.moment(volume.begin, zone), "end": names.moment(volume.end, zone)},
        "issued": names.moment(volume.issued, zone),
        "valueQuantity": codes.quantity_ml(volume.volume_ml, at_least=volume.at_least),
        **codes.site(tube.tube, tube.joined),
        **_notes(volume.notes),
        "device": names.reference(names.device_id(tube.drain), "Device"),
        "derivedFrom": [names.reference(names.level_id(entry), "Observation") for entry in levels],
    }


def _notes(notes: tuple[str, ...]) -> dict[str, Any]:
    return {"note": [{"text": note} for note in notes]} if notes else {}
