"""Rounds in which some beds have several tubes: "206 210, 211 R 265 L 60, 214 145".

Every number of such a row has its place: a bed of the unit, then its one line, or each of its tubes with a
line right behind it. Where one has none the row may be read one place on, and is left as it is. Called by
`keyed`; rounds without a tube are in `rounds`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from .items import NO_CLOCKS, Item
from .listed import INNER, LED, LINES, OUTER, UNITS, VOLUMES, has_plain_numbers
from .numbers import Toks
from .rounds import is_of_round
from .runs import is_at, is_time

NUMBERS = frozenset({"num", "time", "bed", "tube"})
STOPS = OUTER | {".", "+"}
FEWEST = 3
"""Lines: of two, all readings are followed."""
ROUND = re.compile("h?(b(l|(t+l)+))+h?|(b(l|(t+l)+)h)+|(bl?(t+lh)*)+")
"""Letters of a row: bed, tube, line, and a time of all, of each bed or of each line."""
ONE_BED = re.compile("b(t+l){2,}h|bh(t+l){2,}|hb(t+l){2,}")
"""The tubes of one bed, each with its line, and their time."""
WHOLE = re.compile("([01][0-9]|2[0-3])[0-5][0-9]")


def in_tubed_rounds(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """The pieces, with the beds and lines of such a round as what they are."""
    if not any(i.role == "tube" for i in items) or not has_plain_numbers(items):
        return items
    if not VOLUMES.isdisjoint(toks.words) and not any(i.value in LINES for i in items):
        return items
    if (plain := _of_one_bed(items)) is not None:
        return plain
    run = max(_runs(items), key=len, default=[])
    said = [i for i in run if i.role in NUMBERS]
    letters = _letters(said)
    if len(said) < sum(i.role in NUMBERS - {"time"} for i in items) or not _is_round(said, letters, run):
        return items
    found = {i.start: _settled(i, letter) for i, letter in zip(said, letters, strict=True)}
    return tuple(found.get(i.start, i) if i.role in NUMBERS else i for i in items)


def _of_one_bed(items: tuple[Item, ...]) -> tuple[Item, ...] | None:
    """ "8 med 310 pleural 95 at 1800, dark blood in the med": what was found of one comes last."""
    last = max((k for k, i in enumerate(items) if i.role in NUMBERS - {"tube"}), default=0)
    if not any(i.role == "tube" for i in items[last + 1 :]):
        return None
    said = [i for i in max(_runs(items[: last + 1]), key=len, default=[]) if i.role in NUMBERS]
    letters = _letters(said)
    if not ONE_BED.fullmatch(letters) or len(said) < sum(i.role in NUMBERS for i in items[: last + 1]):
        return None
    found = {i.start: _settled(i, letter) for i, letter in zip(said, letters, strict=True)}
    return tuple(found.get(i.start, i) if i.role in NUMBERS else i for i in items)


def _runs(items: Sequence[Item]) -> Iterator[list[Item]]:
    """Beds, tubes, numbers and times with nothing but stops between them, the stops among them."""
    run: list[Item] = []
    for item in items:
        if item.role in NUMBERS or (run and item.role == "sep" and item.value in STOPS):
            run.append(item)
        elif item.value != "bed":
            yield run
            run = []
    yield run


def _letters(said: Sequence[Item]) -> str:
    """What each piece is in such a row; a question mark where it has no place."""
    row = ""
    for item in said:
        row += _letter(row, item)
    return row


def _letter(row: str, item: Item) -> str:
    before = row[-1:]
    if item.role == "tube":
        return "t"
    if before in {"b", "t"}:
        return "l" if _is_line(item) else "?"
    if _is_when(item):
        return "h"
    return "b" if is_of_round(item) else "?"


def _is_when(item: Item) -> bool:
    """Whether it is a time, or is written as a whole one."""
    whole = item.role == "num" and item.label is None and not item.unit and bool(WHOLE.fullmatch(item.digits))
    return item.role == "time" or is_at(item) or whole


def _is_line(item: Item) -> bool:
    plain = item.role == "num" and item.amount is not None and item.unit in UNITS and item.lead in LED
    return plain and not (item.at or item.negative)


def _is_round(said: Sequence[Item], letters: str, run: Sequence[Item]) -> bool:
    """Whether every piece has its place, every bed is there once, and nothing else can be meant."""
    beds = [i.label for i, letter in zip(said, letters, strict=True) if letter == "b"]
    lines = [i for i, letter in zip(said, letters, strict=True) if letter == "l"]
    if len(lines) < FEWEST or len(beds) < 2 or len(set(beds)) < len(beds) or not ROUND.fullmatch(letters):
        return False
    if "h" not in letters and all(map(is_time, lines)):
        return False
    return not _is_parted_within(said, letters, run) and _are_no_beds(said, letters, run)


def _is_parted_within(said: Sequence[Item], letters: str, run: Sequence[Item]) -> bool:
    """Whether a comma stands between a bed or tube and what is its own."""
    stops = [i.start for i in run if i.role == "sep" and i.value not in INNER]
    own = [(a, b) for a, b, of in zip(said, said[1:], letters, strict=False) if of in "bt"]
    return any(a.start < stop < b.start for a, b in own for stop in stops)


def _are_no_beds(said: Sequence[Item], letters: str, run: Sequence[Item]) -> bool:
    """Whether no line may be a bed: behind a tube none is, behind a bed a few where stops part the beds."""
    loose = [b for b, of in zip(said[1:], letters, strict=False) if of == "b" and b.role == "num"]
    labels = sum(i.label is not None for i in loose)
    parted = sum(i.role == "sep" for i in run) >= letters.count("b") - 1
    return not labels or (parted and labels * 2 < letters.count("l"))


def _settled(item: Item, letter: str) -> Item:
    match letter:
        case "b":
            return item._replace(role="bed", link="", negative=False)
        case "l":
            return item._replace(link="", label=None, clocks=NO_CLOCKS)
        case "h" if item.clocks:
            return item._replace(role="time", lead="at", at=True, link="")
    return item
