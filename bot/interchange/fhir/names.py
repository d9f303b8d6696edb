"""Names that stay the same in every export, so that a receiver can match what it has already.

A resource's id is made of the drain and the positions of its entries. Its address in the bundle is a
`urn:uuid` made from that id (RFC 4122 section 4.3), which other resources of the bundle refer to.
"""

from __future__ import annotations

import hashlib
from datetime import datetime, tzinfo
from typing import Any
from uuid import NAMESPACE_URL, UUID, uuid5

from bot.engine.values import Caution

_NAMESPACE: UUID = uuid5(NAMESPACE_URL, "penline:fhir")


def device_id(drain: str) -> str:
    """The drain's own name."""
    return f"drain-{drain}"


def level_id(entry: str) -> str:
    """The name of a line, final level or opening level: that of its entry."""
    return f"level-{entry}"


def volume_id(begin_entry: str, end_entry: str) -> str:
    """The name of the volume between two levels of one drain."""
    return f"volume-{begin_entry}-{end_entry.rpartition('-')[2]}"


def issue_id(bed: str, caution: Caution) -> str:
    """The name of a caution: its rule, on its drain or bed, over its stretch; while its reading is still
    asked about it is another one."""
    parts = (caution.key, bed if caution.drain is None else "", caution.begin, caution.end)
    told = "|".join(part.isoformat() if isinstance(part, datetime) else str(part or "") for part in parts)
    if caution.if_right:
        told += "|if right"
    return f"issue-{hashlib.sha256(told.encode()).hexdigest()[:32]}"


def address(resource_id: str) -> str:
    """Where the resource is found in the bundle."""
    return f"urn:uuid:{uuid5(_NAMESPACE, resource_id)}"


def reference(resource_id: str, kind: str) -> dict[str, Any]:
    """A reference to another resource of the bundle."""
    return {"reference": address(resource_id), "type": kind}


def entry_of(resource: dict[str, Any]) -> dict[str, Any]:
    """The resource as an entry of the bundle."""
    return {"fullUrl": address(resource["id"]), "resource": resource}


def moment(when: datetime, zone: tzinfo) -> str:
    """A FHIR dateTime or instant: the unit's local time, to the second, with its offset."""
    return when.astimezone(zone).isoformat(timespec="seconds")
