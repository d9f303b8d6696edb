"""Cues of two tubes of a bed that are told together: "L and R out at 1830", "left and right tubes both out".

Part of `narrated`, which calls these.
"""

from __future__ import annotations

from collections.abc import Iterator

from .goings import Rule
from .neighbours import SIDES
from .numbers import Toks, word
from .oldones import Message, is_timed
from .pipeline import Cue

JOINTS = frozenset({"and", "&", "+", "/"})
LEFT = frozenset({"l", "left", "lt"})
TUBES = frozenset({"chest", "pleural", "tube", "tubes", "drain", "drains", "icd", "icds", "cts", "pigtails"})
BEING = frozenset({"both", "now", "are", "were", "all", "have", "been", "came", "just"})
ENDS = frozenset({"", ".", ",", ";", "!", "by", "this", "today", "now"})


def _both_out(said: Message) -> Iterator[Cue]:
    """ "L and R out at 1830", "left and right tubes both out": both were taken out; "out 340" is how much."""
    toks = said.toks
    for k, text in enumerate(toks.said):
        if text != "out" or not (ENDS & {word(toks, k + 1)} or is_timed(toks, k + 1)):
            continue
        start = k
        while word(toks, start - 1) in BEING:
            start -= 1
        while word(toks, start - 1) in TUBES:
            start -= 1
        if _are_two(toks, start) and not said.tells("removed") and "?" not in toks.words:
            yield Cue("kind", "removed", start, k + 1)


def _are_two(toks: Toks, end: int) -> bool:
    """Whether the names of the two sides end there, joined: "left and right", "the L & the R"."""
    sides = [word(toks, k) in LEFT for k in range(end - 3, end) if word(toks, k) in SIDES]
    return len(sides) > 1 and sides[0] != sides[-1] and word(toks, end - 2) in JOINTS


TWO_SIDES: tuple[tuple[frozenset[str], Rule], ...] = ((frozenset({"out"}), _both_out),)
"""Each rule with the words of which it needs one."""
