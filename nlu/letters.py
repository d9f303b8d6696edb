"""Tubes of one bed told by their letters alone: "12 A 310 B 85 at 1200", "room 222: A 95, B 410".

Each letter stands alone behind the bed or a number, before a number; and no bed of the unit is named by that
number with a letter. Called by `recast`, for typed messages.
"""

from __future__ import annotations

from collections.abc import Mapping

from .numbers import Toks, is_digits, word
from .pipeline import Cue, with_found

LETTERS = frozenset("abcd")
BETWEEN = frozenset({",", ":", "-", "/", "and", "&"})
LINES = frozenset({"=", ":", "is", "at", "line", "level"})
"""What may stand between a letter and its line."""


def with_letters(cues: tuple[Cue, ...], toks: Toks, index: Mapping[str, str] | None) -> tuple[Cue, ...]:
    """The cues, with each such letter as the name of a tube."""
    if not {"a", "b"} <= toks.words:
        return cues
    places = [k for k in range(1, len(toks)) if word(toks, k) in LETTERS]
    if any(not _is_name(toks, k) for k in places) or [word(toks, k) for k in places][:2] != ["a", "b"]:
        return cues
    bed = _before(toks, places[0])
    labels = [key for key in index or () if key[:-1] == word(toks, bed) and key[-1:].isalpha()]
    if index is None or word(toks, bed) not in index or labels:
        return cues
    if any(word(toks, _line(toks, k)) in index for k in places):
        return cues  # "12 a 310 b 8": tube B, or bed 8?
    return with_found(cues, [Cue("place", word(toks, k).upper(), k, k + 1) for k in places])


def _is_name(toks: Toks, k: int) -> bool:
    """Whether the letter stands alone, behind a number and before one."""
    alone = not toks[k].glued and k + 1 < len(toks) and not toks[k + 1].glued
    return alone and is_digits(toks, _line(toks, k)) and is_digits(toks, _before(toks, k))


def _line(toks: Toks, k: int) -> int:
    """Where the number behind the letter stands."""
    return k + 1 + (word(toks, k + 1) in LINES)


def _before(toks: Toks, k: int) -> int:
    """Where the number before the letter stands."""
    return k - 1 - (word(toks, k - 1) in BETWEEN)
