"""Signs in a row, each with its yes or no behind it: "swing yes bubble no", "leak no, swing yes".

The phrases of one sign alone would take the "no" of the sign before: "swing no bubble yes" has no "no bubble"
in it. Called by `leaks`.
"""

from __future__ import annotations

from .numbers import Toks, glued, is_digits, word
from .pipeline import Cue, in_order

TIDAL = frozenset(
    {"swing", "swinging", "swings", "tidal", "tidaling", "tidalling", "oscillation", "fluctuation"}
)
LEAK = frozenset({"bubble", "bubbles", "bubbling", "leak", "airleak"})
YES = frozenset({"yes", "y", "present"})
SAID = YES | {"no", "n", "nil", "none", "absent", "0"}
PAIR = 2
"""Fewest signs of a row."""


def with_signs_in_a_row(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, each sign of such a row with what is said behind it."""
    if SAID.isdisjoint(toks.words) or (TIDAL | LEAK).isdisjoint(toks.words):
        return cues
    row = _row(toks)
    if not row or not (any(yes for _, yes in row) if len(row) >= PAIR else _is_bubble(row[0][0], toks)):
        return cues
    start, end = row[0][0].start, row[-1][0].end
    kept = [c for c in cues if c.end <= start or c.start >= end]
    return in_order([*kept, *(cue for cue, _ in row)])


def _is_bubble(cue: Cue, toks: Toks) -> bool:
    """ "bubble no": alone it is of a leak only with what is said behind it."""
    return word(toks, cue.start) == "bubble"


def _row(toks: Toks) -> list[tuple[Cue, bool]]:
    """The first signs in a row, nothing but a comma between them."""
    found: list[tuple[Cue, bool]] = []
    k = 0
    while k < len(toks):
        pair = None if word(toks, k - 1) in SAID and not found else _pair(toks, k)
        if pair is not None:
            found.append(pair)
            k = pair[0].end + (word(toks, pair[0].end) in {",", "/", ";"})
        elif len(found) >= PAIR:
            break
        else:
            found, k = [], k + 1
    return found


def _is_none(toks: Toks, end: int) -> bool:
    """ "leak 0 swing y": a nought that ends there; not "leak 0 - 1", "leak 0.5"."""
    ranged = word(toks, end) in {"/", "-", "."} and (glued(toks, end) or is_digits(toks, end + 1))
    return not (ranged or is_digits(toks, end))


def _pair(toks: Toks, k: int) -> tuple[Cue, bool] | None:
    start = k
    k += word(toks, k) == "air" and word(toks, k + 1) == "leak"
    sign, said = word(toks, k), word(toks, k + 1)
    if sign not in TIDAL | LEAK or said not in SAID or (said == "0" and not _is_none(toks, k + 2)):
        return None
    yes = said in YES
    value = ("yes" if yes else "no") if sign in TIDAL else ("present" if yes else "none")
    return Cue("tidal" if sign in TIDAL else "leak", value, start, k + 2), yes
