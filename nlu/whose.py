"""Whose a number is: what stands in its clause may name another device, another line or a count.

A cue that leads a number ("put out", "up to") says what sort of number it is, and not of which device.
Called by `leftovers`, for typed messages by way of `inclause`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .items import AMOUNTS, Item
from .numbers import Toks, word
from .patterns.asides import PATIENTS, PERSONS, RELATIVES, STAFF, THINGS
from .patterns.remarks import REMARKS
from .rules import Rule, Rules

OURS = frozenset({"level", "tubeword", "canister", "old", "new", "opens"})
SEVERAL = frozenset({"tubes", "drains", "canisters", "boxes", "chambers", "bottles", "cts"})
PLACING = frozenset({"on", "in", "of", "for", "from"})
PEOPLE = PERSONS | PATIENTS | RELATIVES | STAFF | REMARKS
COMPARING = frozenset({"more", "less", "higher", "lower", "extra", "above", "below", "up", "over"})
NEAR = 3
"""Words behind "of" among which the fluid may be named: "of thin straw fluid"."""


def behind_another(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "ng put out 250", "o2 up to 4 L": another device was named, and none of ours behind it."""
    device: Item | None = None
    for item in clause:
        if item.role == "foreign":
            device = item
        elif item.role in AMOUNTS and device is not None and item.lead != "inside":
            yield f"{word(toks, device.start)!r} may be what the number is of"
        elif item.role == "tube" or (item.role == "cue" and item.value in OURS):
            device = device if device is not None and device.end == item.start else None


def of_another(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "gave 5 of oxy": an amount of something that was not understood."""
    for item in clause:
        if item.role in AMOUNTS and word(toks, item.end) == "of":
            behind = [i for i in clause if item.end < i.start <= item.end + NEAR]
            if any(_is_strange(i) for i in behind) and not any(_is_fluid(i) for i in behind):
                yield "the amount may be of something else"


def on_a_bed(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "biliary on 10 drained 90": what is on the bed was named, and not understood."""
    told = any(i.role in AMOUNTS for i in clause)
    for before, item in pairwise(i for i in clause if not (i.role == "cue" and i.value == "bed")):
        placed = word(toks, before.end) in PLACING and item.role == "bed"
        of_ours = word(toks, before.start - 1) in THINGS  # "box full on bed 12"
        if told and placed and not of_ours and _is_strange(before):
            yield f"{before.name!r} may be what the number is of"


def another_line(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "fem line at 90", "line placed at 1830": a line that is not drawn on a canister."""
    for before, item in pairwise(clause):
        if before.end != item.start:
            continue
        if word(toks, item.start) == "line" and item.value == "level" and _is_strange(before):
            yield f"{before.name!r} may be another line"
        event = item.role == "cue" and item.value == "kind" and item.name in {"placed", "removed"}
        if event and before.value == "level" and word(toks, before.end - 1) in {"line", "lines"}:
            yield "another line may have been placed or removed"


def counted(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "back with 2 tubes joined": how many there are is no level."""
    for item in clause:
        behind = {word(toks, item.end), word(toks, item.end + 1) if word(toks, item.end) == "chest" else ""}
        if item.role == "level" and not item.lead and not item.unit and behind & SEVERAL:
            yield "how many there are is no level"


def compared(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "a hundred more than last time": a difference, and no level."""
    for item in clause:
        compares = word(toks, item.end) in COMPARING and word(toks, item.end + 1) != "or"
        if item.role == "level" and compares:
            yield "how much more is no level"


def out_of_a_tube(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "nil from left, 40 from right": what came from a tube is an amount, where no word calls it a line."""
    for item, tube in pairwise(clause):
        came = word(toks, item.end) == "from" and tube.role == "tube" and tube.start <= item.end + 2
        if item.role == "level" and item.lead in {"", "at", "from"} and came:
            yield "what came from a tube is an amount"


def _is_strange(item: Item) -> bool:
    return item.role == "foreign" or (item.unread and item.name not in PEOPLE)


def _is_fluid(item: Item) -> bool:
    return item.role == "check" or (item.role == "cue" and item.value in {"fluid", "output", "tubeword"})


WHOSE = Rules(
    (
        Rule(behind_another, frozenset({"foreign"})),
        Rule(on_a_bed, frozenset({"word", "foreign"})),
        Rule(of_another, frozenset({"word", "foreign"})),
        Rule(another_line, frozenset({"level"})),
        Rule(compared, frozenset({"level"})),
        Rule(out_of_a_tube, frozenset({"tube"})),
        Rule(counted, frozenset({"tubeword", "canister"})),
    )
)
