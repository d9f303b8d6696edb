"""Rounds: beds and their lines, side by side: "1900: 3 1475, 7 620, 10 1015 and 24 90".

Three pairs and more of a bed of the unit and a number that is none can be nothing else; so many bare numbers
would have too many readings to follow. Called by `read`.
"""

from __future__ import annotations

from collections.abc import Sequence

from .items import NO_CLOCKS, Item
from .listed import DASHES, LED, LINES, OUTER, UNITS, VOLUMES, has_plain_numbers, is_regular, plain_runs
from .numbers import Toks, word
from .runs import is_time

FEWEST = 6
"""Numbers of three pairs: of two, other readings are followed."""
FEWEST_HEADED = 2
NOT_HEADS = frozenset({"from", "since", "to", "till", "until", "by", "before", "after"})
HEADS = frozenset({"", "level", "at", "timeword"})


def in_rounds(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """The pieces, with the beds of such a round as beds."""
    if len([i for i in items if i.role in {"num", "bed"}]) < 2 * FEWEST_HEADED + 1:
        return items
    if any(i.role == "bad" for i in items) or not has_plain_numbers(items):
        return items
    if not VOLUMES.isdisjoint(toks.words) and not any(i.value in LINES for i in items):
        return items  # what came from each, perhaps
    found: dict[int, Item] = {}
    for run in plain_runs(items, OUTER | {"."}):
        inside = {i.start for i in run}
        timed = any(i.start not in inside and _is_when(i) for i in items)
        found |= _settled(run, _is_first(run, items), timed)
    settled = [found.get(i.start, i) if i.role != "sep" else i for i in items]
    return _with_head(settled, toks)


def _with_head(items: list[Item], toks: Toks) -> tuple[Item, ...]:
    """ "2200 bed 3 410 bed 5 90": a whole time before beds that each have one number is of them all."""
    said = [i for i in items if i.role in {"num", "time", "bed", "tube"}]
    head, rest = said[:1], said[1:]
    plain = head and head[0].role == "num" and head[0].label is None and is_time(head[0])
    if not plain or head[0].lead not in HEADS or word(toks, head[0].start - 1) in NOT_HEADS:
        return tuple(items)
    beds, lines = rest[::2], rest[1::2]
    pairs = len(beds) == len(lines) >= FEWEST_HEADED and all(i.role == "bed" for i in beds)
    if not pairs or len({i.label for i in beds}) < len(beds) or not _are_lines(lines, items):
        return tuple(items)
    of = {i.start: i._replace(clocks=NO_CLOCKS) for i in lines}
    of[head[0].start] = head[0]._replace(role="time", lead="at", at=True)
    return tuple(of.get(i.start, i) if i.role == "num" else i for i in items)


def _is_when(item: Item) -> bool:
    """Whether it is the time of the whole round."""
    return item.role == "time" or (item.role == "num" and item.label is None and is_time(item))


def _is_first(run: list[Item], items: Sequence[Item]) -> bool:
    """Whether no bed was said before it, of which its first number could be the line."""
    before = items[: next((k for k, i in enumerate(items) if run and i is run[0]), 0)]
    return not any(i.role == "bed" or i.label is not None for i in before)


def _settled(run: list[Item], first: bool, timed: bool) -> dict[int, Item]:
    """What becomes of the pieces of a run, by where they start; nothing where it is no round."""
    numbers = [i for i in run if i.role != "sep"]
    head: list[Item] = []
    if len(numbers) % 2 and first and numbers[0].label is None and is_time(numbers[0]):
        head, numbers = numbers[:1], numbers[1:]
    if len(numbers) < FEWEST or len(numbers) % 2 or not is_regular(run, numbers):
        return {}
    beds, lines = numbers[::2], numbers[1::2]
    labels = {i.label for i in beds}
    if None in labels or len(labels) < len(beds) or not (_are_beds(beds) and _are_lines(lines, run)):
        return {}
    if not (head or timed) and all(map(is_time, lines)):
        return {}  # "3 1900, 8 1930, 9 2000": when each is due, perhaps
    found = {i.start: i._replace(role="time", lead="at", at=True) for i in head}
    found |= {i.start: i._replace(role="bed", link="", negative=False) for i in beds}
    plain = [i._replace(link="", negative=False, label=None) for i in lines]
    return found | {i.start: i._replace(clocks=NO_CLOCKS) if head or timed else i for i in plain}


def _are_beds(beds: list[Item]) -> bool:
    return all(i.role == "num" and is_of_round(i) for i in beds)


def is_of_round(bed: Item) -> bool:
    """Whether a piece may be a bed of a round: nothing else is said of its number."""
    plain = bed.label is not None and bed.known and not (bed.unit or bed.at or bed.about)
    return bed.role == "bed" or (bed.role == "num" and plain and bed.lead in HEADS)


def _are_lines(lines: list[Item], run: list[Item]) -> bool:
    """Whether each is a number that is no bed; where stops part the pairs, a small one may be among them."""
    plain = all(
        i.role == "num" and i.amount is not None and i.unit in UNITS and i.lead in LED and not i.at
        for i in lines
    )
    linked = any(i.link not in DASHES for i in lines)
    labels = sum(i.label is not None for i in lines)
    parted = sum(i.role == "sep" for i in run) >= len(lines) - 1
    return plain and not linked and (not labels or (parted and labels * 2 < len(lines)))
