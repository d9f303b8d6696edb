"""A heading that only says which tubes a bed has: "16 has a left and a right. Left 55, right 20 at 0600".

Each tube is named again behind it with its line, so that the heading tells nothing of its own. Called by
`sentence`, before any number has a role; `headings` has lists of beds.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import zip_longest

from .drafts import SIDES
from .headings import HEADINGS
from .items import Item
from .numbers import Toks, glued, word
from .patterns.leads import PAUSES
from .rules import there

SIGNS = frozenset({":", "-"})
QUIET = frozenset({"bed", "filler", "tubeword", "closing", "okay"})
LINKING = frozenset({"filler", "tubeword", "level", "levelat"})
"""Between a tube and its line: "the left one is at 120"."""
SAID = HEADINGS | frozenset({"situ", "them", "chest", "side", "sides", "one", "each", "two", "pleural"})
TWO_SIDED = frozenset({"bilateral", "bilat", "bilaterally", "bilats"})
EACH = frozenset({"each", "both"})
MOST = 4
"""Nobody has more tubes. Common practice, no source."""


def without_tubes(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """The pieces, with what only says which tubes there are, or how many, as filling words."""
    if "tube" not in there(items):
        return items
    items = _without_bilateral(tuple(_without_both(i, toks) for i in items))
    k = next((k for k in range(2, len(items)) if _ends_heading(items, k, toks)), 0)
    head, rest = items[:k], items[k:]
    beds = [i for i in head if i.role == "bed" or (i.role == "num" and i.label is not None)][:1]
    told = [i for i in head if i not in beds and i.role in {"num", "tube"}]
    names, named = {i.name for i in told if i.role == "tube"}, {i.name for i in rest if i.role == "tube"}
    counts = [i for i in told if i.role == "num"]
    side = names - named
    sided = sum(i.name in side for i in told) == len(named) and not SIDES & named
    if len(side) == 1 and side <= SIDES and sided:  # "a right apical and a right basal"
        rest = tuple(i._replace(name=f"{min(side)} {i.name}") if i.role == "tube" else i for i in rest)
        names = names - side
    if not (beds and told and names <= named) or len(names) == 1 or len(counts) > 1:
        return items
    lines = _lines(rest)
    each = not EACH.isdisjoint(toks.said[: rest[0].start])
    counted = all(i.amount == lines or (each and i.amount == 1) for i in counts)
    if lines < 2 or not counted or not all(_is_quiet(i) for i in head):
        return items
    quiet = (Item("cue", i.start, i.end, "filler") if i in told else i for i in head)
    return (*quiet, *rest)


def _without_both(item: Item, toks: Toks) -> Item:
    """ "both pleurals still going": of the two together, and no part of the name of either."""
    both = item.role == "tube" and item.name not in SIDES and word(toks, item.start - 1) == "both"
    return Item("cue", item.start, item.end, "filler") if both else item


def _without_bilateral(items: tuple[Item, ...]) -> tuple[Item, ...]:
    """ "12 bilateral drains R 330 L 820": where both sides have their line, no third tube."""
    two_sided = {i.name for i in items if i.role == "tube"} >= SIDES and _lines(items) >= len(SIDES)
    if not two_sided:
        return items
    return tuple(
        Item("cue", i.start, i.end, "filler") if i.unread and i.name in TWO_SIDED else i for i in items
    )


def _ends_heading(items: Sequence[Item], k: int, toks: Toks) -> bool:
    """Whether a stop, or a sign that stands alone, parts what is before this place from a tube behind it."""
    at = items[k].start
    at -= word(toks, at - 1) == "the"
    sign = word(toks, at - 1) in SIGNS and not glued(toks, at)
    stop = items[k - 1].role == "sep" and items[k - 1].value in PAUSES
    return (stop or sign) and items[k].role == "tube"


def _lines(rest: Sequence[Item]) -> int:
    """How many tubes have their line right behind them; nought where one has none."""
    rest = [i for i in rest if i.role != "cue" or i.value not in LINKING]
    behind = [nxt for i, nxt in zip_longest(rest, rest[1:]) if _ends_name(i, nxt)]
    lines = [nxt for nxt in behind if nxt is not None and nxt.role == "num" and nxt.amount is not None]
    names = [i.name for i, nxt in zip_longest(rest, rest[1:]) if _ends_name(i, nxt)]
    first = behind[: len(lines)] == lines and set(names[len(lines) :]) <= set(names[: len(lines)])
    return len(lines) if first else 0


def _ends_name(item: Item, nxt: Item | None) -> bool:
    return item.role == "tube" and (nxt is None or nxt.role != "tube")


def _is_quiet(item: Item) -> bool:
    match item.role:
        case "num":
            return item.label is not None or (item.amount is not None and item.amount <= MOST)
        case "cue":
            return item.value in QUIET or (item.unread and item.name in SAID)
        case role:
            return role in {"bed", "tube", "sep"}
