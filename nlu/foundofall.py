"""What was found of all beds of a list, said before it or in the plural behind it: "no leaks: 3 280, 5 310".

A finding is put to the bed at hand, which there is the first or the last one; it is of each whose line came,
where nothing else was told of it. Called by `sharing`.
"""

from __future__ import annotations

from collections.abc import Sequence

from .drafts import Draft
from .items import Item
from .numbers import Toks, word
from .patterns.leads import BED_WORDS

HEADS = frozenset({":", ".", ","})
OF_ALL = frozenset({"all", "both", "any", "anywhere", "each", "everyone", "leaks", "none", "neither"})
PLURAL = frozenset({"leaks"})
FEWEST = 2


def share_found(drafts: Sequence[Draft], toks: Toks) -> None:
    """Such findings in the draft of each line."""
    lines = [d for d in drafts if d.level is not None and d.bed is not None]
    if len({d.bed.label for d in lines if d.bed}) < FEWEST:
        return
    first, last = lines[0].bed, lines[-1].level
    if first is None or last is None:
        return
    head = first.start - (word(toks, first.start - 1) in BED_WORDS)
    stop = word(toks, head - 1)
    said = set(toks.said[:head])
    ahead = stop == ":" or (stop in HEADS and bool(OF_ALL & said)) or bool({"all", "both"} & said)
    found = {n: c for n, c in lines[0].checks.items() if ahead and c.end <= head}
    found |= {n: c for n, c in lines[-1].checks.items() if c.start >= last.end and _is_plural(c, toks)}
    for draft in lines if found else ():
        for name, item in found.items():
            draft.checks.setdefault(name, item)


def _is_plural(found: Item, toks: Toks) -> bool:
    said, parted = toks.said[found.start : found.end], word(toks, found.start - 1) in HEADS
    return said[0] in {"neither", "none"} or (parted and not PLURAL.isdisjoint(said))
