"""Remarks without a number and without anybody: "pleasantly confused", "on sips", "heparin given".

What they are of is said by a word that is of no drain; beside it no word may be of one, of its line, or of
what was told. Called by `framed`, which leaves them out beside what is whole.
"""

from __future__ import annotations

from .again import Again, Span
from .numbers import Toks, is_digits, word
from .otherfigures import EVENTS, OURS, between
from .patterns.bareremarks import (
    AMID,
    BESIDE,
    BUSY,
    DENIED,
    EXCUSES,
    POLITE,
    REFUSED,
    REMARKED,
    WISHED,
    WISHING,
)
from .patterns.leads import BED_WORDS
from .patterns.numerals import NUMERALS
from .patterns.otherfigures import BODY
from .patterns.otherfigures import REFUSED as DOUBTED
from .patterns.ownclauses import BECAUSE, DOUBTFUL, WHEN
from .pipeline import Cue

LITTLE = frozenset({"a", "an", "to", "for", "o", "oh", "one"})
FEWEST = 2
"""Words of a remark."""
ENDS = frozenset({".", ";", "!"})
TELLING = REMARKED | WISHING | BUSY | AMID.keys() | {first for first, *_ in POLITE}
BARRED = (BECAUSE | WHEN | DOUBTFUL | REFUSED | DOUBTED | BED_WORDS | NUMERALS) - LITTLE


def bare_remarks(again: Again) -> list[Span]:
    """The clauses that are such remarks, in order."""
    toks = again.toks
    if toks.words.isdisjoint(TELLING):
        return []
    spans = list(between(toks, 0, len(toks), parts=False))
    found: list[Span] = []
    for k, (start, end) in enumerate(spans):
        if found and start < found[-1][1]:
            continue
        two = spans[k + 1][1] if k + 1 < len(spans) and word(toks, end) == "," else end
        for first, last in ((start, end), *between(toks, start, end, parts=True)):
            ends = (two, last) if last == end else (last,)
            whole = next((stop for stop in ends if _is_remark(again, first, stop)), 0)
            if whole:
                found.append((first, whole))
            if whole >= end and first == start:
                break
    return found


def _is_remark(again: Again, start: int, end: int) -> bool:
    toks = again.toks
    if word(toks, end) == "?" or any(
        is_digits(toks, k) or k in again.meant.labelled for k in range(start, end)
    ):
        return False
    return _is_of_nurse(toks.said[start:end]) or _is_of_what(again, start, end)


def _is_of_nurse(said: tuple[str, ...]) -> bool:
    """ "thanking you", "sorry was with another pt"; and of a patient "keen to go home"."""
    words = frozenset(said)
    wishes = words <= WISHED and not words.isdisjoint({"home", "discharge"}) and not words.isdisjoint(WISHING)
    amid = any(not words.isdisjoint(AMID[w]) for w in words & AMID.keys()) or not words.isdisjoint(BUSY)
    return said in POLITE or wishes or (words <= EXCUSES and amid)


def _is_of_what(again: Again, start: int, end: int) -> bool:
    """ "on sips", "back care given": of what no drain has."""
    toks, said = again.toks, frozenset(again.toks.said[start:end])
    if end - start < FEWEST or said.isdisjoint(REMARKED):
        return False
    if any(_is_barred(toks, k, said) for k in range(start, end)):
        return False
    stop = next((k for k in range(end, len(toks)) if word(toks, k) in ENDS), len(toks))
    cues = [c for c in again.cues if start <= c.start < stop and c.label in OURS]
    return not any(_may_be_ours(c, end, toks, said) for c in cues)


def _is_barred(toks: Toks, k: int, said: frozenset[str]) -> bool:
    """Whether a word may be of the drain, its line or what was told, beside the others."""
    text = word(toks, k)
    if text in DENIED:
        return word(toks, k + 1) not in REMARKED
    if text in {"left", "right"} and word(toks, k + 1) in BODY:
        return False
    return text in BARRED and said.isdisjoint(BESIDE.get(text, ()))


def _may_be_ours(cue: Cue, end: int, toks: Toks, said: frozenset[str]) -> bool:
    """A cue of the remark itself, or an event behind it in the same sentence."""
    if cue.start >= end:
        return cue.label in EVENTS
    words = toks.said[cue.start : cue.end]
    known = all(w in REMARKED or not said.isdisjoint(BESIDE.get(w, ())) or w in LITTLE for w in words)
    return not known
