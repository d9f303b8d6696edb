"""A letter typed for a word, where the words around leave no other: the "n" of "17 290 at 0200 n 18 is 60".

Alone, or behind a bed, an "n" is a no. Called by `pipeline`, for typed messages.
"""

from __future__ import annotations

from collections.abc import Sequence

from .tokens import Token

BED_WORDS = frozenset({"bed", "room", "rm"})
ONE_LINE = 2
"""Numbers of a line: its bed and its level."""


def plain(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens, with an "n" between a whole line and the next bed as "and"."""
    if not any(t.text == "n" for t in toks):
        return toks
    return [t._replace(text="and") if t.text == "n" and _joins(toks, k) else t for k, t in enumerate(toks)]


def _joins(toks: Sequence[Token], k: int) -> bool:
    """Whether a line stands before, and behind it a bed with what is said of it."""
    numbers = sum(t.is_digits for t in toks[:k])
    after = [t.text for t in toks[k + 1 :]]
    bed = bool(after) and (after[0].isdecimal() or after[0] in BED_WORDS)
    return numbers >= ONE_LINE and bed and sum(text.isdecimal() for text in after) >= ONE_LINE
