"""The answer object: what the wire, the terminal and the tests get for one message.

Frozen values and their JSON; nothing is decided here. Volumes in mL, moments in the unit's zone.
"""

from __future__ import annotations

import json
from dataclasses import dataclass, fields
from datetime import datetime
from functools import cache
from typing import Any, Literal, TypeAlias

Status: TypeAlias = Literal["recorded", "told", "question", "refused"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Result:
    """What became of one statement."""

    status: Status
    bed: str | None = None
    tube: str | None = None
    kind: str
    entries: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Stretch:
    """A volume as it was charted before."""

    begin: datetime
    end: datetime
    volume_ml: int


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartRow:
    """A volume that this message makes chartable; with `replaces`, an earlier chart to amend."""

    bed: str
    tube: str | None = None
    volume_ml: int
    begin: datetime
    end: datetime
    shift: str
    to_chart: bool
    at_least: bool
    replaces: tuple[Stretch, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """A caution as it was told: its sentence, the rule that it rests on and whose that is."""

    code: str
    severity: str
    bed: str | None
    tube: str | None
    text: str
    rule: str
    source: str
    if_right: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Option:
    """One of the answers to a question: what to say, and what it means."""

    say: str
    label: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """A question that this message left open."""

    id: str
    bed: str | None
    tube: str | None
    slot: str
    text: str
    choices: tuple[Option, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """The whole answer to one message."""

    id: str
    status: Status
    reply: str
    speech: str
    segments: int
    results: tuple[Result, ...] = ()
    chart: tuple[ChartRow, ...] = ()
    cautions: tuple[Told, ...] = ()
    questions: tuple[Asked, ...] = ()

    def as_json(self) -> str:
        """The answer as JSON, with the names of the wire."""
        return _JSON.encode(self)


_WIRE_NAMES = {"begin": "from", "end": "to"}


def _plain(value: Any) -> Any:
    """A moment, or a part of the answer, as JSON can."""
    if isinstance(value, datetime):
        return value.isoformat()
    cls: Any = type(value)
    return {wire: getattr(value, name) for wire, name in _names(cls)}


_JSON = json.JSONEncoder(ensure_ascii=False, allow_nan=False, default=_plain)


@cache
def _names(cls: Any) -> tuple[tuple[str, str], ...]:
    """The fields of a part of the answer: each as it is called on the wire, and here."""
    return tuple((_WIRE_NAMES.get(each.name, each.name), each.name) for each in fields(cls))
