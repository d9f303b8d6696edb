"""Lists of beds with no word for a bed: "9: 410, 10: 220", "9 410, 10 220, 11 90 at 0700".

Where one bed is named by that word, such numbers may be hours of it, and are left as they are. Called by
`read`, before any number has a role.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise, takewhile

from .items import NO_CLOCKS, Item
from .numbers import Toks, glued, is_digits, word

STOPS = frozenset({",", ";", "and", "&", "."})
DOUBTING = frozenset({"bed", "other", "plan", "neg", "output", "amount", "out", "suction", "seal", "wall"})
"""Beside one of these the numbers may be something else."""
FEWEST = 3
"""So many pairs with a space between show that their first numbers are beds; with a colon, two."""


JOINING = frozenset({"and", "&", ",", "+"})
EACH = frozenset({"both", "each"})


def with_line_of_each(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "8 and 9 both 340 at 1900", "8, 9 and 10 all 340": the pieces, with the number as the line of each bed
    of the row that opens the message."""
    if toks.words.isdisjoint(EACH | {"all"}):
        return items
    row = list(takewhile(_is_of_row, items))
    beds = [i for i in row if i.role in {"num", "bed"}]
    line = next(iter(items[len(row) :]), None) if beds and beds[-1].label is not None else None
    if line is None or line.role != "num":
        line, beds = (beds[-1], beds[:-1]) if beds else (None, [])
    of_all = len(beds) > len(EACH)
    if line is None or len(beds) < len(EACH) or any(i.label is None for i in beds) or not _is_line(line):
        return items
    if line.label is not None and not any(i.role == "time" or i.full_clock for i in items):
        return items  # "8 and 9 both 10"
    said = {word(toks, line.start - 1), word(toks, line.end), word(toks, beds[0].start - 1)}
    if said.isdisjoint(EACH | ({"all"} if of_all else set())):
        return items
    of = {i.start: i.as_role("bed") for i in beds} | {line.start: line._replace(lead="levelat", label=None)}
    return tuple(of.get(i.start, i) if i.role in {"num", "bed"} else i for i in items)


def _is_of_row(item: Item) -> bool:
    plain = item.role in {"num", "bed"} and not (item.unit or item.at or item.lead not in {"", "bed"})
    return plain or (item.role == "sep" and item.value in JOINING) or item.value in {"bed", "filler"}


def with_beds(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """The pieces, with the first number of each pair of such a list as its bed."""
    if any(i.role == "bed" or i.value in DOUBTING for i in items):
        return items
    first = next((k for k, i in enumerate(items) if _may_be_bed(i)), None)
    pairs = [k for k in range(len(items) - 1) if _may_be_bed(items[k]) and _is_line(items[k + 1])]
    colons = [k for k in pairs if _is_colon(items[k], items[k + 1], toks)]
    spaced = [k for k in pairs if items[k].end == items[k + 1].start]
    told = any(items[k + 1].label is None and not items[k + 1].clocklike for k in spaced)
    for beds, least in ((colons, FEWEST - 1), (spaced if told else [], FEWEST)):
        if len(beds) >= least and beds[0] == first and _are_apart(beds, items):
            few = 2 * sum(items[k + 1].label is not None for k in beds) < len(beds)
            return tuple(_in_pair(k, i, beds, few_labels=few) for k, i in enumerate(items))
    return items


def _in_pair(k: int, item: Item, beds: Sequence[int], *, few_labels: bool) -> Item:
    """The bed of a pair, or its line, which is no bed itself: "206 210, 211 165, 214 145"."""
    if k in beds:
        return item.as_role("bed")
    if k - 1 not in beds:
        return item
    return item._replace(clocks=NO_CLOCKS, label=None if few_labels else item.label)


def _may_be_bed(item: Item) -> bool:
    bare = item.role == "num" and not (item.lead or item.at or item.unit)
    return bare and item.label is not None and item.known


def _is_line(item: Item) -> bool:
    plain = item.role == "num" and item.amount is not None and item.unit in {"", "ml"}
    return plain and not (item.lead or item.at or item.digits.startswith("0"))


def _is_colon(label: Item, line: Item, toks: Toks) -> bool:
    """ "9: 410", where 9:41 is a time."""
    sign = word(toks, label.end) == ":" and glued(toks, label.end)
    return (
        sign and line.start == label.end + 1 and not glued(toks, line.start) and is_digits(toks, line.start)
    )


def _are_apart(beds: Sequence[int], items: Sequence[Item]) -> bool:
    """Whether they are different beds, one pair after the other."""
    labels = [items[k].label for k in beds]
    behind = all(b == a + 3 and items[b - 1].value in STOPS for a, b in pairwise(beds))
    return len(set(labels)) == len(labels) and behind
