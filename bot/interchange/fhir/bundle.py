"""One drain, or a unit's drains over a time span, as a FHIR R4 Bundle."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from bot.engine.ledger import Ledger
from bot.engine.values import Caution
from bot.interchange.fhir import names
from bot.interchange.fhir.readings import Tube, level_observation, volume_observation
from bot.interchange.fhir.records import readings, volumes
from bot.unit import Unit


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """A caution that stands at a bed, and its sentence."""

    bed: str
    caution: Caution
    sentence: str
    drains: tuple[str, ...]
    """The drains that it rests on."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Reach:
    """The time span of an export, ends included; None: no end on that side."""

    begin: datetime | None = None
    end: datetime | None = None

    def holds(self, moment: datetime) -> bool:
        """Whether the moment lies in it."""
        return (self.begin is None or self.begin <= moment) and (self.end is None or moment <= self.end)


ALL = Reach()


def fhir_bundle(
    unit: Unit,
    ledgers: Iterable[Ledger],
    cautions: Iterable[Standing],
    now: datetime,
    reach: Reach = ALL,
) -> dict[str, Any]:
    """The Bundle (collection): each drain as a Device, its levels and volumes as Observations, then the
    cautions of these drains as DetectedIssues. The levels that a volume within the span is derived from
    come with it. With nothing to tell there is no `entry`: FHIR knows no empty lists.
    """
    resources = [resource for ledger in ledgers for resource in _of_drain(unit, ledger, reach)]
    there = {each["id"] for each in resources}
    for standing in cautions:
        drains = tuple(each for each in standing.drains if names.device_id(each) in there)
        if drains:
            resources.append(_issue(standing, drains, unit, now))
    bundle = {
        "resourceType": "Bundle",
        "type": "collection",
        "timestamp": names.moment(now, unit.zone),
    }
    return {**bundle, "entry": list(map(names.entry_of, resources))} if resources else bundle


def _of_drain(unit: Unit, ledger: Ledger, reach: Reach) -> Iterator[dict[str, Any]]:
    tube = Tube(drain=ledger.drain, tube=ledger.tube, joined=ledger.joined, reason=ledger.reason)
    told = [each for each in volumes(ledger, unit.policy) if reach.holds(each.end)]
    needed = {entry for each in told for entry in (each.begin_entry, each.end_entry)}
    held = [each for each in readings(ledger) if reach.holds(each.at) or each.entry in needed]
    if not held:
        return
    yield _device(unit, ledger)
    for reading in sorted(held, key=lambda each: each.at):
        yield level_observation(reading, tube, unit.zone)
    for volume in sorted(told, key=lambda each: (each.end, each.begin)):
        yield volume_observation(volume, tube, unit.zone)


def _device(unit: Unit, ledger: Ledger) -> dict[str, Any]:
    """The drain: where it hangs, and whether it is still in. It is not the phone that told of it."""
    name = f"Bed {ledger.bed} {ledger.tube}" if ledger.tube else f"Bed {ledger.bed}"
    return {
        "resourceType": "Device",
        "id": names.device_id(ledger.drain),
        "identifier": [{"value": ledger.drain}],
        "status": "active" if ledger.is_open() else "inactive",
        "deviceName": [{"name": name, "type": "user-friendly-name"}],
        "type": {"text": "Chest drain with water-seal canister"},
        "location": {"display": f"{unit.name}, bed {ledger.bed}"},
    }


def _issue(standing: Standing, drains: tuple[str, ...], unit: Unit, now: datetime) -> dict[str, Any]:
    caution = standing.caution
    return {
        "resourceType": "DetectedIssue",
        "id": names.issue_id(standing.bed, caution),
        # FHIR observation status: preliminary is "incomplete or unverified"
        "status": "preliminary" if caution.if_right else "final",
        "code": {"text": caution.code},
        "severity": caution.severity.value,
        **_identified(caution, unit, now),
        "implicated": [names.reference(names.device_id(drain), "Device") for drain in drains],
        "detail": standing.sentence,
    }


def _identified(caution: Caution, unit: Unit, now: datetime) -> dict[str, Any]:
    if caution.begin is None or caution.end is None:
        return {"identifiedDateTime": names.moment(caution.end or caution.begin or now, unit.zone)}
    return {
        "identifiedPeriod": {
            "start": names.moment(caution.begin, unit.zone),
            "end": names.moment(caution.end, unit.zone),
        }
    }
