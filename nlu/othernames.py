"""Words for other things than a drain: drugs, foods, films, scores. Used by `accounts` and what asks it."""

from __future__ import annotations

from .numbers import Toks, word
from .patterns.otherfigures import DRUG_ENDINGS, DRUGS, NAMES, PAIRS
from .tokens import remembered


def is_drug(said: str) -> bool:
    """Whether it is given, by its name or what that ends with."""
    return said in DRUGS or said.removesuffix("s") in DRUGS or said.endswith(DRUG_ENDINGS)


@remembered
def is_name(toks: Toks, k: int) -> bool:
    """Whether a word for another thing stands there, alone or with the one beside it."""
    if word(toks, k) in NAMES or is_drug(word(toks, k)):
        return True
    return (word(toks, k), word(toks, k + 1)) in PAIRS or (word(toks, k - 1), word(toks, k)) in PAIRS


def names_in(toks: Toks) -> frozenset[int]:
    """Where such words stand in a message."""
    return _all_of(toks, 0)


@remembered
def _all_of(toks: Toks, _: int) -> frozenset[int]:
    return frozenset(k for k in range(len(toks)) if is_name(toks, k))
