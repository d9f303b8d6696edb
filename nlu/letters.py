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


def with_lettered(cues: tuple[Cue, ...], read: Read, index: Mapping[str, str] | None) -> tuple[Cue, ...]:
    """The cues, with letters that name tubes as such; nothing where the unit is not known."""
    if index is None or LETTERS.isdisjoint(read.tokens.words):
        return cues
    bed, end = _first_bed(read, index)
    if not bed or _is_lettered(bed, index):
        return cues
    capital = _capital(read, end, plain=bed.isdecimal())
    return _each(with_found(cues, capital) if capital else cues, read.tokens, end, index)


def _each(cues: tuple[Cue, ...], toks: Toks, end: int, index: Mapping[str, str]) -> tuple[Cue, ...]:
    """The cues, with each letter before a number as the name of a tube; `end` is that of the bed."""
    if not {"a", "b"} <= toks.words:
        return cues
    places = [k for k in range(1, len(toks)) if word(toks, k) in LETTERS]
    if any(not _is_name(toks, k) for k in places) or [word(toks, k) for k in places][:2] != ["a", "b"]:
        return cues
    together = all(is_digits(toks, _before(toks, k)) for k in places[1:])
    if end > places[0] or not together:
        return cues
    if any(word(toks, _line(toks, k)) in index for k in places):
        return cues  # "12 a 310 b 8": tube B, or bed 8?
    return with_found(cues, [Cue("place", word(toks, k).upper(), k, k + 1) for k in places])


def _first_bed(read: Read, index: Mapping[str, str]) -> tuple[str, int]:
    """The label of the bed that the message begins with, and where it ends."""
    k = int(word(read.tokens, 0) in SHORT_BED_WORDS)
    if k in read.labelled:
        end, label = read.labelled[k]
        return label.lower(), end
    return (word(read.tokens, k), k + 1) if word(read.tokens, k) in index else ("", 0)


def _is_lettered(bed: str, index: Mapping[str, str]) -> bool:
    """Whether a bed of the unit is named by that label with a letter: 12A."""
    return any(key[-1:].isalpha() and key[:-1] == bed for key in index)


def _capital(read: Read, k: int, *, plain: bool) -> list[Cue]:
    """The tube of a capital letter right behind the bed, which is a number alone where it is `plain`.

    "6 A pulled 1810", "CT6 A stays".
    """
    toks = read.tokens
    if k >= len(toks) - 1 or word(toks, k) not in LETTERS or toks[k].glued:
        return []
    capital = read.text[toks[k].start : toks[k].start + 1].isupper()
    told = word(toks, k + 1).isalpha() and word(toks, k + 1) not in LETTERS | OF_ARTICLE
    told |= not plain and is_digits(toks, k + 1)  # "CT6 A 468"
    return [Cue("place", word(toks, k).upper(), k, k + 1)] if capital and told else []


def _is_name(toks: Toks, k: int) -> bool:
    """Whether the letter stands alone before a number."""
    alone = not toks[k].glued and k + 1 < len(toks) and not toks[k + 1].glued
    return alone and is_digits(toks, _line(toks, k))


def _line(toks: Toks, k: int) -> int:
    """Where the number behind the letter stands."""
    return k + 1 + (word(toks, k + 1) in LINES)


def _before(toks: Toks, k: int) -> int:
    """Where the number before the letter stands."""
    return k - 1 - (word(toks, k - 1) in BETWEEN)
