"""Words of doubt, denial and cancellation in a message, each with the clause that it stands in.

What such words reach is said by `misgivings`; what a clause is in doubt of without them by `ofreading`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import NamedTuple

from .again import Span
from .neighbours import HARD, is_stop_among
from .numbers import Toks, word
from .patterns import misgivings as said_so

KINDS = tuple(
    (name, re.compile(rf"(?<![\w']){'(?:' + pattern + ')'}(?![\w'])"))
    for name, pattern in (
        ("rough", said_so.ROUGH),
        ("seeming", said_so.SEEMING),
        ("seeing", said_so.SEEING),
        ("tilted", said_so.TILTED),
        ("another", said_so.ANOTHER),
        ("elsewhere", said_so.ELSEWHERE),
        ("doubting", said_so.DOUBTING),
        ("cancelled", said_so.CANCELLED),
        ("taking back", said_so.TAKING_BACK),
    )
)
STOPS = HARD | {",", "(", ")", "-"}


class Doubt(NamedTuple):
    """Words of doubt, and the clause that they stand in."""

    kind: str
    start: int
    end: int
    clause: Span


def doubts_in(toks: Toks) -> Iterator[Doubt]:
    """Those of a message, kind by kind."""
    said = toks.said[: len(toks)]
    starts, at = dict[int, int](), 0
    for k, w in enumerate(said):
        starts[at] = k
        at += len(w) + 1
    joined = " ".join(said)
    taken = set[int]()
    for kind, pattern in KINDS:
        for match in pattern.finditer(joined):
            start = starts.get(match.start())
            if start is None or start in taken:
                continue
            end = start + match.group().count(" ") + 1
            taken |= set(range(start, end))
            yield Doubt(kind, start, end, clause_of(toks, start, end))


def clause_of(toks: Toks, start: int, end: int) -> Span:
    """From one stop or joining word to the next."""
    while start and not is_stop(toks, start - 1) and word(toks, start - 1) not in said_so.JOINTS:
        start -= 1
    while end < len(toks) and not is_stop(toks, end) and not _joins(toks, end):
        end += 1
    return start, end


def _joins(toks: Toks, k: int) -> bool:
    last = k + 1 >= len(toks) or is_stop(toks, k + 1)
    since_when = word(toks, k) == "since" and word(toks, k + 1) in said_so.LIGHT
    return word(toks, k) in said_so.JOINTS and not (last or since_when)


def is_stop(toks: Toks, k: int) -> bool:
    """Whether a stop, a bracket or a dash with a blank stands there."""
    hyphen = word(toks, k) == "-" and toks[k].glued and k + 1 < len(toks) and toks[k + 1].glued
    return is_stop_among(STOPS, toks, k) and not hyphen


def between_stops(toks: Toks, start: int, end: int) -> Span:
    """From one such stop to the next."""
    while start and not is_stop(toks, start - 1):
        start -= 1
    while end < len(toks) and not is_stop(toks, end):
        end += 1
    return start, end


def sentence_of(toks: Toks, start: int, end: int) -> Span:
    """From one hard stop to the next."""
    while start and not (word(toks, start - 1) in HARD and is_stop(toks, start - 1)):
        start -= 1
    while end < len(toks) and not (word(toks, end) in HARD and is_stop(toks, end)):
        end += 1
    return start, end
