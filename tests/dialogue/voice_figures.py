"""How many wrong numbers the ledger stops, and how often it asks needlessly: figures for `voice_confirm`.

    python -m tests.dialogue.voice_figures

The sentences are what recognisers wrote beside what was said (`tests/nlu/recognised_speech.tsv`). Each one
that is read as one line, right or wrong, is held against drains that drained steadily before it (20, 60 or
120 mL/h, to within a fifth) and whose true next line is the one that was said. The README quotes the table.
"""

from __future__ import annotations

import csv
import random
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

import nlu
from bot.dialogue.plausible import fits
from bot.engine.entries import Entry, Line, Opened, Payload
from bot.engine.ledger import Ledger, fold
from nlu.statements import Mark

HEARD = Path(__file__).parents[1] / "nlu" / "recognised_speech.tsv"
RATES_ML_H = (20, 60, 120)
ARRIVED = datetime(2026, 3, 4, 23, 30, tzinfo=UTC)
BEDS = tuple(str(number) for number in range(1, 25))


@dataclass(frozen=True, slots=True)
class Pair:
    """One sentence: the line that was said, and the line that was read from what was heard."""

    recogniser: str
    said: Mark
    heard: Mark

    @property
    def is_wrong(self) -> bool:
        """Whether the reader took another level, bed or time than was said."""
        return (self.said.bed, self.said.level_ml) != (self.heard.bed, self.heard.level_ml)


def pairs() -> Iterator[Pair]:
    """The sentences of which both what was said and what was heard are read as one line."""
    rows = (line for line in HEARD.read_text("utf-8").splitlines() if not line.startswith("#"))
    for row in csv.DictReader(rows, delimiter="\t"):
        said, heard = _mark(row["said"]), _mark(row["heard"])
        if said is not None and heard is not None:
            yield Pair(row["recogniser"], said, heard)


def _mark(text: str) -> Mark | None:
    parsed = nlu.parse(text, arrived=ARRIVED, beds=BEDS, channel="voice")
    match parsed.statements:
        case (Mark() as mark,) if not parsed.unclear:
            return mark
        case _:
            return None


def drain_before(level_ml: int, at: datetime, rate_ml_h: int, chance: random.Random) -> Ledger:
    """A drain whose line at this moment is that level, after four hours at about that rate."""
    steps = [round(rate_ml_h * chance.uniform(0.8, 1.2)) for _ in range(4)]
    levels, level = [], level_ml
    for step in steps:
        level -= step
        levels.append(max(level, 0))
    payloads: list[tuple[datetime, Payload]] = [(at - timedelta(hours=5), Opened(bed="1"))]
    payloads += [(at - timedelta(hours=back + 1), Line(level_ml=held)) for back, held in enumerate(levels)]
    return fold(
        Entry(drain="d", position=place, at=when, entered=when, who="", message="", payload=payload)
        for place, (when, payload) in enumerate(sorted(payloads, key=lambda each: each[0]), start=1)
    )


def figures() -> dict[int, Counter[str]]:
    """For each rate: right lines taken or asked, wrong levels taken or stopped."""
    found: dict[int, Counter[str]] = {rate: Counter() for rate in RATES_ML_H}
    for pair in pairs():
        for rate in RATES_ML_H:
            found[rate][_outcome(pair, rate)] += 1
    return found


def _outcome(pair: Pair, rate_ml_h: int) -> str:
    assert pair.said.level_ml is not None
    assert pair.heard.level_ml is not None
    ledger = drain_before(pair.said.level_ml, ARRIVED, rate_ml_h, random.Random(pair.said.level_ml))
    passes = fits(ledger, ARRIVED, pair.heard.level_ml)
    if pair.is_wrong:
        return "wrong, recorded" if passes else "wrong, stopped"
    return "right, recorded" if passes else "right, asked"


def table() -> str:
    """The figures as the README prints them."""
    rows = [
        "| a drain of | wrong lines read back before they count | wrong lines recorded | right lines asked |",
        "|---|---|---|---|",
    ]
    for rate, count in figures().items():
        stopped, let_pass = count["wrong, stopped"], count["wrong, recorded"]
        asked, right = count["right, asked"], count["right, asked"] + count["right, recorded"]
        rows.append(f"| {rate} mL/h | {stopped} of {stopped + let_pass} | {let_pass} | {asked} of {right} |")
    return "".join(f"{row}\n" for row in rows)


if __name__ == "__main__":
    print(table(), end="")
