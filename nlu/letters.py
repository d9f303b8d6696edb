"""Tubes of one bed told by their letters alone: "12 A 310 B 85 at 1200", "room 222: A 95, B 410".

Each letter stands alone behind the bed or a number, before a number; and no bed of the unit is named by that
number with a letter. Called by `recast`, for typed messages.
"""

from __future__ import annotations

from collections.abc import Mapping

from .numbers import Toks, is_digits, word
from .patterns.leads import SHORT_BED_WORDS
from .pipeline import Cue, Read, with_found

LETTERS = frozenset("abcd")
OF_ARTICLE = frozenset(
    {"bit", "little", "lot", "small", "large", "new", "good", "line", "level", "mark", "reading", "fresh"}
    | {"slight", "big", "full", "quick", "late", "total", "further", "few", "couple", "different", "second"}
)
"""Before these an "a" is an article, however it was typed."""
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


def with_capital(cues: tuple[Cue, ...], read: Read, index: Mapping[str, str] | None) -> tuple[Cue, ...]:
    """The cues, with a capital letter right behind the bed as a tube: "6 A pulled 1810", "CT6 A stays"."""
    toks = read.tokens
    for k in range(1, len(toks) - 1) if index is not None and not LETTERS.isdisjoint(toks.words) else ():
        at = toks[k].start
        lone = word(toks, k) in LETTERS and read.text[at : at + 1].isupper() and not toks[k].glued
        bed = word(toks, k - 1) in (index or ()) and (k == 1 or word(toks, k - 2) in SHORT_BED_WORDS)
        bed |= any(end == k for end, _ in read.labelled.values())
        named = any(key[-1:].isalpha() and key[:-1] == word(toks, k - 1) for key in index or ())
        verb = word(toks, k + 1).isalpha() and word(toks, k + 1) not in LETTERS | OF_ARTICLE
        if lone and bed and verb and not named:
            return with_found(cues, [Cue("place", word(toks, k).upper(), k, k + 1)])
    return cues


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
