"""The words around a cue between stops and figures, and what of them says something of ours.

Called by `idle` and `idleevents`.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

from .neighbours import is_stop_among
from .numbers import Toks, is_digits, starts_number, word
from .patterns.idle import LITTLE, OBJECTS, OPENING
from .patterns.leads import BED_WORDS, LINES
from .patterns.ownclauses import HIMSELF, SPEAKER
from .pipeline import Cue

STOPS = frozenset({".", ",", ";", "!", "?", ":", "-", "(", ")", "\n"})
JOINTS = frozenset({"and", "but", "so", "because"})


class Stretch(NamedTuple):
    """Words between stops and figures, and whether figures stand right before or behind them."""

    start: int
    end: int
    behind_figures: bool
    before_figures: bool


def stretch_of(cue: Cue, toks: Toks, labelled: Mapping[int, tuple[int, str]]) -> Stretch:
    """The words around a cue, up to a stop, a number, or the words that begin a line."""
    inside = {k for start, (end, _) in labelled.items() for k in range(start, end)}
    start, end = cue.start, cue.end
    while start and not _ends(toks, start - 1, inside):
        start -= 1
    while end < len(toks) and not (_ends(toks, end, inside) or _begins_line(toks, end, inside)):
        end += 1
    before = start > 0 and _is_figure(toks, start - 1, inside)
    return Stretch(start, end, before, end < len(toks) and not is_stop(toks, end))


def is_stop(toks: Toks, k: int) -> bool:
    return is_stop_among(STOPS | JOINTS, toks, k)


def _is_figure(toks: Toks, k: int, inside: set[int]) -> bool:
    return k in inside or is_digits(toks, k) or (starts_number(toks, k) and word(toks, k) not in LITTLE)


def _ends(toks: Toks, k: int, inside: set[int]) -> bool:
    return is_stop(toks, k) or _is_figure(toks, k, inside)


def _begins_line(toks: Toks, k: int, inside: set[int]) -> bool:
    """ "bed 4", "the line for bed nine is", "line in 5"."""
    said = word(toks, k)
    if said in BED_WORDS:
        return _is_figure(toks, k + 1, inside)
    j = k + (said in {"the", "new"})
    if word(toks, j) not in LINES:
        return False
    near = (j + 1, j + 2, j + 3)
    return any(_is_figure(toks, n, inside) for n in near if n < len(toks))


def opens(stretch: Stretch, toks: Toks) -> bool:
    """Whether it stands apart from the figures before it, or begins with a subject of its own."""
    return not stretch.behind_figures or word(toks, stretch.start) in OPENING | HIMSELF | SPEAKER


def strange(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> list[str]:
    """The words around a cue that say something, and nothing of ours."""
    del cue
    return [
        word(toks, k)
        for k in range(stretch.start, stretch.end)
        if k not in taken and word(toks, k) not in LITTLE and word(toks, k)[0].isalpha()
    ]


def adjoins(cue: Cue, stretch: Stretch, toks: Toks) -> bool:
    """ "change bed 12", "12 340 wrong": whether only little words part it from figures."""
    behind = stretch.before_figures and all(word(toks, k) in LITTLE for k in range(cue.end, stretch.end))
    before = stretch.behind_figures and all(word(toks, k) in LITTLE for k in range(stretch.start, cue.start))
    return behind or before


def has_noun(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "the correct answer", "change the subject": what it is of stands right behind it."""
    return cue.end < stretch.end and cue.end not in taken and word(toks, cue.end) not in LITTLE


def objects(stretch: Stretch, toks: Toks) -> bool:
    """Whether something of a line is named there; "this thing", "that lot" are none."""
    return any(
        word(toks, k) in OBJECTS
        and (word(toks, k) not in {"this", "that"} or word(toks, k + 1) in OBJECTS | LITTLE | STOPS | {""})
        for k in range(stretch.start, stretch.end)
    )
