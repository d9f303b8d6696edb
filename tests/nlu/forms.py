"""Plain forms of a message filled with drawn values: each filling is read as meant, or asked.

A form is what is typed, with the names of drawn values in braces, and what it means in the words
of `tests.nlu.saying`, slots in any order: `("{b} at {l}, {t}", "mark bed={b} level_ml={l} at={m}")`. Values
that could be something else (a line that is a clock time, a small one that is a bed) are drawn as often.
"""

from __future__ import annotations

import random
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from functools import cache
from statistics import fmean
from typing import Literal, NamedTuple, TypeAlias
from zoneinfo import ZoneInfo

import nlu
from nlu.statements import Parsed
from tests.nlu.aloud import aloud
from tests.nlu.saying import SHIFTS, Channel, asked_slots, plain

Verdict: TypeAlias = Literal["read", "asked", "wrong"]
ZONE = ZoneInfo("America/New_York")
HOURS = ((19, 4), (7, 3), (14, 32), (2, 17), (18, 41), (6, 55), (11, 8))
ARRIVALS = tuple(datetime(2026, 11, 3, hour, minute, tzinfo=ZONE) for hour, minute in HOURS)
"""At both changes of shift, before and after them, and in between."""
NUMBERED = tuple(map(str, range(1, 25)))
WARDS = (
    NUMBERED,
    NUMBERED,
    tuple(f"{n}{c}" for n in range(1, 13) for c in "AB"),
    tuple(map(str, range(201, 231))),
)
AGO = (1, 2, 4, 6, 9, 11, 14, 19, 24, 34, 47, 62, 64, 71, 94, 118, 124, 152, 184, 200, 236)
"""Minutes before the arrival."""
SIDES = (("left", "left"), ("right", "right"), ("L", "left"), ("R", "right"))
OTHER = {"left": "right", "right": "left", "L": "R", "R": "L"}
SUCTIONS = (10, 15, 20, 25, 30, 40)
STYLES = ("hhmm", "hhmm", "hhmm", "colon", "ampm", "hrs", "h")


class Form(NamedTuple):
    """What is typed, and what it means: one of these, statement by statement."""

    text: str
    meant: tuple[str, ...]


@dataclass(frozen=True)
class Filling:
    """A form with its values."""

    text: str
    meant: tuple[Counter[str], ...]
    arrived: datetime
    beds: tuple[str, ...]

    def read(self, channel: Channel) -> Parsed:
        """What it is read as."""
        return nlu.parse(self.text, arrived=self.arrived, beds=self.beds, shifts=SHIFTS, channel=channel)

    def verdict(self, channel: Channel = "text") -> Verdict:
        """`read` as meant; `asked`, where nothing was accepted that was not meant; else `wrong`."""
        parsed = self.read(channel)
        told = _bag([plain(statement, self.arrived.date()) for statement in parsed.statements])
        if not any(told <= meant for meant in self.meant):
            return "wrong"
        return "read" if told in self.meant and not asked_slots(parsed) else "asked"


def form(text: str, *meant: str) -> Form:
    """A form and its meanings, each with its statements parted by `; `."""
    return Form(text, meant)


def forms(table: Mapping[str, Iterable[str]]) -> list[Form]:
    """A form of each text, which means what it is under."""
    return [form(text, meant) for meant, texts in table.items() for text in texts]


def fillings(form: Form, count: int, channel: Channel = "text") -> Iterator[Filling]:
    """So many of a form, the same at each run; in `voice` its values are as a recogniser writes them."""
    rng = random.Random(form.text)
    for _ in range(count):
        arrived = rng.choice(ARRIVALS)
        beds = rng.choice(WARDS)
        moments = dict(zip(("t", "t2", "t3"), _moments(rng, arrived), strict=True))
        values = _values(rng, arrived, beds, moments)
        said = aloud(rng, values, moments) if channel == "voice" else values
        meant = tuple(_bag(words.format_map(values).split("; ")) for words in form.meant)
        yield Filling(form.text.format_map(said), meant, arrived, beds)


@cache
def held(form: Form, count: int, channel: Channel = "text") -> tuple[tuple[str, ...], float]:
    """The fillings that are accepted as something else, and the share of those that are read."""
    told = [(each.text, each.verdict(channel)) for each in fillings(form, count, channel)]
    return tuple(text for text, verdict in told if verdict == "wrong"), _share([v for _, v in told])


def share_read(forms: Iterable[Form], count: int, channel: Channel = "text") -> float:
    """The share of so many fillings of each form that are read."""
    return fmean(held(each, count, channel)[1] for each in forms)


def _share(verdicts: list[Verdict]) -> float:
    return verdicts.count("read") / len(verdicts)


def _bag(statements: list[str]) -> Counter[str]:
    return Counter(" ".join(sorted(statement.split())) for statement in statements)


def _values(
    rng: random.Random, arrived: datetime, beds: tuple[str, ...], moments: dict[str, datetime]
) -> dict[str, str | int]:
    values: dict[str, str | int] = dict(zip(("b", "b2", "b3"), rng.sample(beds, 3), strict=True))
    lines = [_line(rng) for _ in range(4)]
    values |= zip(("l", "l2", "l3", "w"), lines, strict=True)
    rising = sorted(rng.sample(range(5, 1950), 3))
    values |= zip(("u", "u2", "u3"), rising, strict=True)
    for name, moment in moments.items():
        values[name] = _clock(rng, moment)
        values[name.replace("t", "m")] = moment.strftime(
            "%H:%M" if moment.date() == arrived.date() else "%d-%b-%H:%M"
        )
    typed, side = rng.choice(SIDES)
    values |= {"s": typed, "s2": OTHER[typed], "S": side, "S2": OTHER[side]}
    return values | {
        "su": rng.choice((10, 15, 20, 25, 30, 40)),
        "se": rng.choice((1, 2, 3)),
        "new": rng.choice((0, 10, 40)),
    }


def _line(rng: random.Random) -> int:
    step = rng.choice((1, 5, 10, 10))
    return rng.randrange(5, 1950) // step * step or step


def _moments(rng: random.Random, arrived: datetime) -> list[datetime]:
    """The latest first; many of whole hours."""
    found: set[datetime] = set()
    while len(found) < 3:
        moment = arrived - timedelta(minutes=rng.choice(AGO))
        found.add(moment.replace(minute=rng.choice((0, moment.minute // 5 * 5, moment.minute))))
    return sorted(found, reverse=True)


def _clock(rng: random.Random, moment: datetime) -> str:
    match rng.choice(STYLES):
        case "colon":
            return f"{moment:%H:%M}"
        case "ampm":
            return f"{moment:%I:%M%p}".lstrip("0").lower().replace(":00", "")
        case "hrs":
            return f"{moment:%H%M}hrs"
        case "h":
            return f"{moment:%H%M}h"
    return f"{moment:%H%M}"
