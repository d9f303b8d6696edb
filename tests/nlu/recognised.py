"""Sentences that offline recognisers really wrote, beside what was said, and how the reader stands to them.

`python -m tests.nlu.recognised` prints exact, asked and wrong by recogniser.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import nlu
from nlu.forms import parsed_form
from tests.nlu.corpus import Form, verdict

ZONE = ZoneInfo("America/New_York")
BEDS = tuple(str(bed) for bed in range(1, 41))
HERE = Path(__file__).parent


@dataclass(frozen=True, slots=True)
class Heard:
    """One sentence as spoken and as written."""

    recogniser: str
    said: str
    heard: str

    def read(self) -> Form:
        """What the reader makes of it, ten minutes after the time that was said."""
        hour, minute = map(int, WANTED[self.said][0].split(":"))
        arrived = datetime(2026, 3, 4, hour, minute, tzinfo=ZONE)
        form: Form = json.loads(
            json.dumps(parsed_form(nlu.parse(self.heard, arrived=arrived, beds=BEDS, channel="voice")))
        )
        return form

    def verdict(self) -> str:
        """`exact`, `asked` or `wrong`; asking about a sentence that was no report is exact."""
        wanted = WANTED[self.said][1]
        found = verdict(self.read(), [{"statements": wanted, "asked": []}])
        return "exact" if found == "asked" and not wanted else found


def sentences() -> Iterator[Heard]:
    """All that were recorded."""
    lines = (HERE / "recognised_speech.tsv").read_text("utf-8").splitlines()
    for line in lines[2:]:
        recogniser, _, _, said, heard = line.split("\t")
        yield Heard(recogniser, said, heard)


def _at(time: str) -> str:
    return f"2026-03-04T{time}:00-05:00"


def _mark(bed: str, level_ml: int, time: str, **more: Any) -> list[Form]:
    return [{"kind": "mark", "bed": bed, "level_ml": level_ml, "at": _at(time), **more}]


# What was said: when the message arrived, and what it must be read as.
WANTED: dict[str, tuple[str, list[Form]]] = {
    "how much did bed twelve drain since seven am": (
        "10:00",
        [{"kind": "asked", "topic": "total", "bed": "12", "window": _at("07:00")}],
    ),
    "delete the last reading for bed three": ("10:00", [{"kind": "withdrawn", "bed": "3"}]),
    "correct bed twelve mark to ten sixty": ("19:10", [{"kind": "corrected", "bed": "12", "level_ml": 1060}]),
    "bed two is at eight hundred and fifty mils at noon": ("12:10", _mark("2", 850, "12:00")),
    "bed twelve mark ten fifty at nineteen hundred": ("19:10", _mark("12", 1050, "19:00")),
    "bed twelve changed canister at eighteen twenty new mark zero": (
        "18:30",
        [{"kind": "exchanged", "bed": "12", "at": _at("18:20")}, *_mark("12", 0, "18:20")],
    ),
    "bed twelve air leak on coughing suction minus twenty centimetres": (
        "18:30",
        [{"kind": "checked", "bed": "12", "air_leak": "intermittent", "suction_cmh2o": 20}],
    ),
    "bed three serosanguinous mark nine eighty at oh three hundred": (
        "03:10",
        [
            *_mark("3", 980, "03:00"),
            {"kind": "checked", "bed": "3", "fluid": "serosanguineous", "at": _at("03:00")},
        ],
    ),
    "bed three right mark six fifty at nineteen thirty": ("19:40", _mark("3", 650, "19:30", tube="right")),
    "bed thirty mark thirty at thirteen thirty": ("13:40", _mark("30", 30, "13:30")),
    "bed sixteen mark one oh five oh at nineteen oh five": ("19:10", _mark("16", 1050, "19:05")),
    "bed six four hundred and forty mils twenty minutes ago": ("19:10", _mark("6", 440, "18:50")),
    "bed seventeen mark nineteen fifty at nineteen fifty": ("20:00", _mark("17", 1950, "19:50")),
    "bed seven tube b mark one twenty at seven fifteen pm": ("19:20", _mark("7", 120, "19:15", tube="B")),
    "bed nine serous fluid no air leak": (
        "19:20",
        [{"kind": "checked", "bed": "9", "fluid": "serous", "air_leak": "none"}],
    ),
    "bed four mark three forty at oh seven hundred": ("07:10", _mark("4", 340, "07:00")),
    "bed forty mark eleven hundred and ten an hour ago": ("19:10", _mark("40", 1110, "18:10")),
    "bed five mark four ten at quarter past seven pm": ("19:20", _mark("5", 410, "19:15")),
    "bed eleven mark one point two litres at eighteen hundred": ("18:10", _mark("11", 1200, "18:00")),
    "bed eight mark seven thirty at seven thirty in the morning": ("07:40", _mark("8", 730, "07:30")),
    "the patient in twelve is comfortable and family is at the bedside": ("19:10", []),
    "potassium was four point one at six": ("19:10", []),
    "call the doctor about bed five": ("19:10", []),
    "bed twelve pain score is seven out of ten": ("19:10", []),
    "bed four weight seventy two kilos": ("19:10", [{"kind": "described", "bed": "4", "weight_kg": 72.0}]),
}


def main() -> None:
    """Print the tally by recogniser."""
    tally: dict[str, Counter[str]] = {}
    for each in sentences():
        found = each.verdict()
        for name in (each.recogniser, "all"):
            tally.setdefault(name, Counter())[found] += 1
    for name, counts in sorted(tally.items()):
        print(f"{name:45} " + "  ".join(f"{v} {counts[v]:3}" for v in ("exact", "asked", "wrong")))


if __name__ == "__main__":
    main()
