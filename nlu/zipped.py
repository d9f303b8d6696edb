"""Beds in a row and then their lines in the same order: "5 and 7 at 0600: 290 and 60".

Each bed is read with its own line and without those of the others; only where each is whole, and as many
lines came as beds, is that what was said. Called by `read`, for typed messages that would be asked.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from .items import FULL_HOUR
from .numbers import Toks, glued, is_digits, word
from .statements import Mark, Statement
from .verdict import Outcome

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
TWO = 2
HOURS = 24
"""A number up to this one that stands behind "at" may be an hour."""
MOST = 8


def zipped(
    text: str, toks: Toks, index: Mapping[str, str] | None, outcome: Callable[[str], Outcome]
) -> Outcome:
    """The line of each bed; nothing where the message is no such list, or one of them is not whole."""
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
    found: list[Statement] = []
    for bed, line in zip(beds, lines, strict=True):
        told = outcome(_alone(text, toks, (beds, bed), (lines, line)))
        if len(told) != 1 or not isinstance(told[0], Mark) or not _is_of(told[0], toks, bed, line):
            return ()
        found.append(told[0])
    same_time = len({s.at for s in found}) == 1
    return tuple(found) if same_time else ()


def _is_of(mark: Mark, toks: Toks, bed: int, line: int) -> bool:
    return (mark.bed, mark.level_ml) == (word(toks, bed).lstrip("0"), int(word(toks, line)))


def _runs(toks: Toks) -> list[list[int]]:
    """The runs of numbers with a comma or an "and" between, a time for all left out."""
    runs: list[list[int]] = []
    for k in range(len(toks)):
        if not is_digits(toks, k) or _is_time(toks, k):
            continue
        last = runs[-1][-1] if runs else k
        joined = 0 < k - last - 1 <= TWO and JOINERS.issuperset(toks.said[last + 1 : k])
        if joined:
            runs[-1].append(k)
        else:
            runs.append([k])
    return runs


def _is_time(toks: Toks, k: int) -> bool:
    """Whether it is a time with its at, or a part of "19:00"."""
    whole = len(word(toks, k)) == FULL_HOUR
    led = whole and (word(toks, k - 1) in AT or word(toks, k)[0] == "0")
    return led or any(_is_clock_sign(toks, j) for j in (k - 1, k + 1))


def _is_clock_sign(toks: Toks, k: int) -> bool:
    between = is_digits(toks, k - 1) and is_digits(toks, k + 1)
    return word(toks, k) == ":" and between and glued(toks, k) and glued(toks, k + 1)


def _alone(text: str, toks: Toks, *rows: tuple[list[int], int]) -> str:
    """The message with one number of each row alone, at its place."""
    for row, kept in rows:
        start, end = toks[row[0]].start, toks[row[-1]].end
        one = toks[kept]
        text = (
            text[:start]
            + " " * (one.start - start)
            + text[one.start : one.end]
            + " " * (end - one.end)
            + text[end:]
        )
    for token in toks:
        if token.text in ORDERED:
            text = text[: token.start] + " " * (token.end - token.start) + text[token.end :]
    return text
