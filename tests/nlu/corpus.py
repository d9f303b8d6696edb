"""Messages with what each must be read as, and how a reading compares with that.

A line of a corpus is one JSON object: the message, when and where it arrived, and `want` (or `want_any`):
the statements, and the slots one of which must be asked (`*`: any). Used by the tests of the reader.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, time
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import nlu
from nlu.forms import parsed_form

HERE = Path(__file__).parent
Form = dict[str, Any]


@dataclass(frozen=True, slots=True)
class Case:
    """One message of a corpus."""

    name: str
    line: Form

    def read(self) -> Form:
        """What the reader makes of it, as the command line prints it."""
        zone = ZoneInfo(self.line["zone"])
        arrived = datetime.fromisoformat(self.line["arrived"])
        parsed = nlu.parse(
            self.line["text"],
            arrived=arrived.astimezone(zone) if arrived.tzinfo else arrived.replace(tzinfo=zone),
            beds=tuple(self.line["beds"]),
            shifts=(time(7), time(19)),
            alternatives=tuple(
                nlu.Hypothesis(other["text"], other.get("confidence") or 0.0)
                for other in self.line.get("alternatives", ())
            ),
            channel=self.line.get("channel", "text"),
        )
        form: Form = json.loads(json.dumps(parsed_form(parsed)))
        return form

    def wanted(self) -> list[Form]:
        """The readings that are right."""
        wanted: list[Form] = self.line.get("want_any") or [self.line["want"]]
        return wanted


def cases(name: str) -> Iterator[Case]:
    """The messages of one corpus."""
    for number, line in enumerate((HERE / f"{name}.jsonl").read_text("utf-8").splitlines(), start=1):
        yield Case(f"{name}:{number}", json.loads(line))


def verdict(got: Form, wanted: list[Form]) -> str:
    """`exact`, `asked` (something that need not be, or another slot), or `wrong`."""
    return min((_verdict(got, want) for want in wanted), key=["exact", "asked", "wrong"].index)


def _verdict(got: Form, want: Form) -> str:
    told, right = _bag(got["statements"]), _bag(want["statements"])
    if told - right:
        return "wrong"
    if want["asked"]:
        slots = {each["slot"] for each in got["unclear"]}
        return "exact" if slots & set(want["asked"]) or (slots and "*" in want["asked"]) else "asked"
    return "exact" if told == right and not got["unclear"] else "asked"


def _bag(statements: list[Form]) -> Counter[tuple[tuple[str, str], ...]]:
    return Counter(_plain(statement) for statement in statements)


def _plain(statement: Form) -> tuple[tuple[str, str], ...]:
    kept = {slot: _value(slot, value) for slot, value in statement.items() if _counts(statement, slot, value)}
    return tuple(sorted(kept.items()))


def _counts(statement: Form, slot: str, value: object) -> bool:
    said = value is not None and value != [] and (value is not False or slot == "tidaling")
    return said and not (slot == "about" and statement["kind"] == "drained")


def _value(slot: str, value: object) -> str:
    if isinstance(value, str) and slot in {"at", "to_at", "window"} and "T" in value:
        return datetime.fromisoformat(value).astimezone(UTC).isoformat()
    if isinstance(value, list):
        return str(sorted(value))
    return str(float(value)) if isinstance(value, int | float) and not isinstance(value, bool) else str(value)
