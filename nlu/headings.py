"""A heading that only lists beds: "picked up 3, 5 and 9. 3 is 418, 5 is 242, 9 is 771".

Each bed of it is named again behind it with what is told of it, so that the heading tells nothing of its
own. Called by `read`, before any number has a role.
"""

from __future__ import annotations

from collections.abc import Sequence

from .items import Item
from .numbers import Toks, glued, word
from .patterns.leads import MANY_LINES
from .patterns.remarks import REMARKS

ENDS = frozenset({".", ";"})
SIGNS = ENDS | {":", "-"}
LISTED = frozenset({",", "and", "&", "+", "/"})
HEADINGS = REMARKS | frozenset(
    {"done", "picked", "up", "have", "having", "had", "got", "took", "taking", "over", "finished", "rounded"}
    | {"covering", "assigned", "patients", "pts", "mine", "beds", "looking", "following", "caring"}
)
"""Words of a heading, which tell nothing of the beds."""


def without_heading(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """The pieces, with beds that are only listed at the start, and told of behind it, as filling words."""
    end = _heading_end(items, toks)
    if not end:
        return items
    head, rest = [i for i in items if i.end <= end], [i for i in items if i.end > end]
    listed = [i.label for i in head if i.role in {"bed", "num"} and not _is_when(i)]
    if not listed or not rest or not all(_is_listed(i, toks) for i in head):
        return items
    again = [i.label for i in rest if i.role in {"bed", "num"} and i.label in listed and not i.lead]
    opens = next((i for i in rest if i.role != "sep" and i.value not in {"bed", "filler"}), None)
    if list(dict.fromkeys(again)) != listed or opens is None or opens.label != listed[0]:
        return items  # "9: 410, 10: 220. 9 has a leak"
    kept = (i if i.value == "closing" or _is_when(i) else Item("cue", i.start, i.end, "filler") for i in head)
    return (*kept, *rest)


def _heading_end(items: Sequence[Item], toks: Toks) -> int:
    """Where the first sentence or the first colon that stands alone is; nought where there is none."""
    if SIGNS.isdisjoint(toks.words):
        return 0
    colons = (
        k for k in range(len(toks)) if (word(toks, k) == ":" and not glued(toks, k + 1)) or _is_dash(toks, k)
    )
    stops = (i.start for i in items if i.role == "sep" and i.value in ENDS)
    return min([*colons, *stops], default=0)


def _is_dash(toks: Toks, k: int) -> bool:
    return word(toks, k) == "-" and not glued(toks, k) and not glued(toks, k + 1)


def _is_when(item: Item) -> bool:
    """ "beds 2 and 9 at midnight: 2 is 455, 9 is 1325": when all of them were read."""
    return item.at and bool(item.clocks) and item.role in {"time", "num"}


def _is_listed(item: Item, toks: Toks) -> bool:
    """Whether a piece may be of a list of beds: a label, a stop, when all were read, a word of no meaning."""
    if _is_when(item):
        return True
    match item.role:
        case "num":
            return item.label is not None and not (item.lead or item.at or item.unit)
        case "sep":
            return item.value in LISTED
        case "cue" if item.unread:
            return item.name in HEADINGS
        case "cue" if item.value == "level":
            return word(toks, item.end - 1) in MANY_LINES
        case "cue":
            return item.value in {"bed", "filler", "closing", "okay"}
        case role:
            return role == "bed"
