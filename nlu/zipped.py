"""Beds in a row and then their lines in the same order: "5 and 7 at 0600: 290 and 60".

Each bed is read with its own line and without those of the others; only where each is whole, and as many
lines came as beds, is that what was said. Called by `read`, for typed messages that would be asked.
"""

from __future__ import annotations

from collections.abc import Iterator

from .again import Again, Span, Told, every
from .items import FULL_HOUR
from .numbers import Toks, is_digits, is_inside_number, word
from .statements import Mark, Statement

JOINERS = frozenset({",", "and", "&", "+", "/", "n"})
AT = frozenset({"at", "@", "by"})
BETWEEN = frozenset(
    {
        ":",
        "are",
        "is",
        "were",
        "read",
        "reads",
        "reading",
        "marks",
        "lines",
        "levels",
        "=",
        "mark",
        "level",
        "at",
    }
)
ORDERED = frozenset({"respectively", "resp", "respectfully"})
SIDES = frozenset({"left", "right", "l", "r", "tube", "tubes", "apical", "basal", "mediastinal", "both"})
SIGNS = AT | BETWEEN | ORDERED
"""Between the beds and their lines stands one of these, or behind both."""
PLURAL = frozenset({"beds", "rooms"})
"""With one of these a blank joins the numbers of a row."""
TWO = 2
HOURS = 24
"""A number up to this one that stands behind "at" may be an hour."""
MOST = 8


def zipped(again: Again) -> Told:
    """The line of each bed; nothing where the message is no such list, or one of them is not whole."""
    toks, index = again.toks, again.ward.index
    if (JOINERS | PLURAL).isdisjoint(toks.words) or SIGNS.isdisjoint(toks.words):
        return ()
    runs = [run for run in _runs(toks) if len(run) >= TWO]
    if len(runs) != TWO or not SIDES.isdisjoint(toks.words):
        return ()
    beds, lines = runs
    between = set(toks.said[beds[-1] + 1 : lines[0]])
    led = bool(between & AT) and all(int(word(toks, k)) > HOURS for k in lines)
    apart = led or bool(between & BETWEEN) or not ORDERED.isdisjoint(toks.words)
    labelled = index is not None and all(word(toks, k) in index for k in beds)
    if not (apart and labelled) or len(beds) != len(lines) or len(beds) > MOST:
        return ()
    found = [s for told in every(_lines(again, beds, lines)) for s in told]
    return tuple(found) if len({s.at for s in found}) == 1 else ()


def _lines(again: Again, beds: list[int], lines: list[int]) -> Iterator[Told]:
    """What each bed and its own number say; nothing where that is not the line of this bed."""
    toks = again.toks
    ordered = [(k, k + 1) for k, token in enumerate(toks) if token.text in ORDERED]
    for bed, line in zip(beds, lines, strict=True):
        told = again.without(*_others(beds, bed), *_others(lines, line), *ordered)
        yield told if len(told) == 1 and _is_of(told[0], toks, bed, line) else ()


def _others(row: list[int], kept: int) -> tuple[Span, Span]:
    """The numbers of a row before the one that is kept and behind it."""
    return (row[0], kept), (kept + 1, row[-1] + 1)


def _is_of(told: Statement, toks: Toks, bed: int, line: int) -> bool:
    said = (word(toks, bed).lstrip("0"), int(word(toks, line)))
    return isinstance(told, Mark) and (told.bed, told.level_ml) == said


def _runs(toks: Toks) -> list[list[int]]:
    """The runs of numbers with a comma or an "and" between, a time for all left out."""
    runs: list[list[int]] = []
    fewest = 0 if not toks.words.isdisjoint(PLURAL) else 1
    for k in range(len(toks)):
        if not is_digits(toks, k) or _is_time(toks, k):
            continue
        last = runs[-1][-1] if runs else k
        joined = runs and fewest <= k - last - 1 <= TWO and JOINERS.issuperset(toks.said[last + 1 : k])
        if joined:
            runs[-1].append(k)
        else:
            runs.append([k])
    return runs


def _is_time(toks: Toks, k: int) -> bool:
    """Whether it is a time with its at, or a part of "19:00"."""
    whole = len(word(toks, k)) == FULL_HOUR
    led = whole and (word(toks, k - 1) in AT or word(toks, k)[0] == "0")
    return led or any(word(toks, j) == ":" and is_inside_number(toks, j) for j in (k - 1, k + 1))
