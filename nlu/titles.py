"""What a list of beds is headed with, and its time: "Rounds 0200", "night numbers 2am:", alone in their line.

The words for what it is a list of are left out there, and its time is when all were read. A "ward round" or
anybody else's is no list of lines. Called by `pipeline`, for typed messages.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from .patterns.leads import BED_WORDS
from .tokens import Token, text_at

NAMED = frozenset(
    {"round", "rounds", "numbers", "nos", "hourlies", "hourly", "drains", "readings", "figures"}
)
AROUND = NAMED | {
    "my",
    "the",
    "our",
    "night",
    "nights",
    "day",
    "evening",
    "morning",
    "drain",
    "for",
    "at",
    "@",
}
CLOCK = frozenset({"am", "pm", "a.m", "p.m", "hrs", "hr", "hours", "h", "midnight", "noon", ":", "."})
BREAK, COLON = "\n", ":"
BULLETS = frozenset({"-", "*", "\u2022", "."})
FEWEST = 2
"""Rows of a list; and numbers of a row, its bed and its level."""


def untitled(toks: Sequence[Token], text: str) -> Sequence[Token]:
    """The tokens without the words that a list of beds is headed with."""
    if BREAK not in text.strip():
        return toks
    breaks = [k for k, t in enumerate(toks) if text[t.start] == BREAK]
    end = breaks[0] if breaks else 0
    if end <= 0 or not _is_title(toks[:end]) or sum(_opens_row(toks, k) for k in breaks) < FEWEST:
        return toks
    rows = (toks[k:after] for k, after in pairwise([*breaks, len(toks)]))
    if any(sum(t.is_digits for t in row) > FEWEST for row in rows):
        return toks  # "4 340 0800": a time of its own
    return [t for k, t in enumerate(toks) if k >= end or t.text not in AROUND]


def _is_title(head: Sequence[Token]) -> bool:
    said = {t.text for t in head if not t.is_digits}
    digits = [k for k, t in enumerate(head) if t.is_digits]
    one = bool(digits) and digits[-1] - digits[0] <= 2 and len(digits) <= FEWEST
    return one and not NAMED.isdisjoint(said) and said <= AROUND | CLOCK


def _opens_row(toks: Sequence[Token], k: int) -> bool:
    """A bed, behind the break and maybe a bullet."""
    k += 1 + (text_at(toks, k + 1) in BULLETS)
    return text_at(toks, k) in BED_WORDS or text_at(toks, k).isdecimal()
