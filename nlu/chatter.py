"""Clauses beside whole lines that are of no drain: another bed's cannula, whom to call, who has which beds.

Each number of such a clause is accounted for by what is not ours: a dose, a score, a time of something else,
the bed that is talked about. Called by `framed`, which leaves them out where a message would be asked.
"""

from __future__ import annotations

from collections.abc import Container, Iterable, Iterator, Set
from typing import NamedTuple

from .again import Again, Span
from .bedclauses import LEANING
from .items import FULL_HOUR
from .measured import NAMES
from .numbers import Toks, glued, is_digits, word
from .patterns.chatter import (
    ACTIVE,
    CALLS,
    COVERS,
    DOUBTFUL,
    DRUGS,
    HANDING,
    LOTS,
    RESTING,
    RESTS,
    SCORES,
    UNITS,
    UNTIL,
    WHEN,
)
from .patterns.leads import BED_WORDS
from .patterns.levels import LITRES, MILLILITRES
from .patterns.numerals import NUMERALS
from .pipeline import Cue

PLAIN = frozenset({"filler", "word", "other", "okay", "bed", "plan", "neg", "badunit", "claimed", "about"})
"""Labels of cues that say nothing of a drain."""
ASKS = frozenset({"question", "mark_of_question"})
OF_CALLS = PLAIN | {"order", "output", "amount", "span", "ml", "ask"}
OXYGEN = frozenset({"o", "o2", "oxygen", "hfnc", "nc", "nrb", "mask", "weaned", "sats", "spo2"})
UP_TO = frozenset({"up", "to"})
JOINTS = frozenset({"and", "&", ",", "/", "+"})
PLACING = frozenset({"in", "for", "on"})
LEADING = frozenset({"at", "of", "on", "is", "up", "to"})
HALVES = frozenset({"am", "pm", "a", "p"})
MEASURES = SCORES | DRUGS | NAMES
LED = frozenset({"is", "has", "needs", "needing", "refused", "refusing", "asking"})
DUE = "due"
SMALL = frozenset({"a", "an", "one", "oh", "to", "for", "o", "and", "point"})
"""Number words that mostly are none."""
SHORT = 3
"""Digits of a number that is no hour."""
HOURS = 24


class Clause(NamedTuple):
    """A clause: its place, its words, and the labels of its cues."""

    start: int
    end: int
    words: Set[str]
    labels: Set[str]
    beds: Container[str] = frozenset()


def is_chatter(toks: Toks, cues: tuple[Cue, ...], span: tuple[int, int], beds: Container[str]) -> bool:
    """Whether a clause tells nothing of a drain, and none of its numbers can be ours."""
    start, end = span
    inside = [c for c in cues if start <= c.start < end and not _says_nothing(c, toks)]
    words = {w for w in toks.said[start:end] if w.isalpha()}
    clause = Clause(start, end, words, {c.label for c in inside} - _of_oxygen(words), beds)
    if _is_call(toks, clause) or _is_wondering(clause):
        return True
    if words & DOUBTFUL or words & LEANING - {"is", "not"} or words & (NUMERALS - SMALL):
        return False
    numbers = [k for k in range(start, end) if is_digits(toks, k)]
    if not numbers:
        return _is_remark(clause)
    real = words - UNITS - BED_WORDS - UNTIL - JOINTS - HALVES - {"ml", "h", "hrs", "now", "not"}
    claimed = {k for c in inside if c.label == "claimed" for k in range(c.start, c.end)}
    own = all(k in claimed or _is_of_other(toks, k, clause) for k in numbers)
    return bool(real) and clause.labels <= PLAIN and own


def asides(again: Again, clauses: Iterable[Span]) -> list[Span]:
    """The clauses that are chatter, and no measure of one bed before the number of another."""
    toks = again.toks
    found = list(_chatter(again, clauses))
    inside = {k for start, end in found for k in range(start, end)}
    last = max((k for k in range(len(toks)) if is_digits(toks, k) and k not in inside), default=0)
    return [(s, e) for s, e in found if s > last or MEASURES.isdisjoint(toks.said[s:e])]


def _chatter(again: Again, clauses: Iterable[Span]) -> Iterator[Span]:
    """Each clause that is, alone or with the one behind: "Jess has", "bed 2 and 16"."""
    toks, first = again.toks, -1
    for start, end in clauses:
        first = start if first < 0 else first
        if word(toks, end - 1) in COVERS and word(toks, end) in BED_WORDS:
            continue
        heads = word(toks, end) == ":"  # "bed 3 hourly: 0500 390"
        if not heads and is_chatter(toks, again.cues, (first, end), again.ward.index or ()):
            yield first, end
        first = -1


def is_timed(toks: Toks, start: int, end: int) -> bool:
    """Whether a time is told there, which may be that of a line that has none."""
    return any(is_digits(toks, k) and _is_time(toks, k) for k in range(start, end))


def _is_call(toks: Toks, clause: Clause) -> bool:
    """ "doc wants call if more than 100/h": whom to call and when, and nothing that was read."""
    said = toks.said[clause.start : clause.end]
    called = bool(clause.words & CALLS) and not WHEN.isdisjoint(said) and any(map(str.isdecimal, said))
    return called and clause.labels <= OF_CALLS and not clause.words & BED_WORDS


def _says_nothing(cue: Cue, toks: Toks) -> bool:
    """ "meds due at 2000", "o2 up to 4L": cues that beside nothing of ours say nothing."""
    return cue.value == DUE or UP_TO.issuperset(toks.said[cue.start : cue.end])


def _of_oxygen(words: Set[str]) -> Set[str]:
    """The labels that say nothing beside oxygen: its litres."""
    return {"litre"} if words & OXYGEN else set()


def _is_wondering(clause: Clause) -> bool:
    """ "does that seem like a lot to you guys": asked of nobody here."""
    return (
        bool(clause.words & LOTS)
        and clause.labels <= PLAIN | ASKS
        and not clause.words & (DOUBTFUL | NUMERALS) - SMALL
    )


def _is_remark(clause: Clause) -> bool:
    """ "handing over to Mel now", "just back from lunch": of whoever writes."""
    handing = bool(clause.words & HANDING) and clause.labels <= PLAIN | {"window", "closing"}
    rested = bool(clause.words & RESTS) and clause.words <= RESTS | RESTING
    return handing or rested


def _is_of_other(toks: Toks, k: int, clause: Clause) -> bool:
    before, after = word(toks, k - 1), word(toks, k + 1)
    if before == "o" and word(toks, k) == "2" and glued(toks, k):
        return True
    if before in {".", "/", ":", "-"} and glued(toks, k) and is_digits(toks, k - 2):
        return _is_of_other(toks, k - 2, clause)  # "12:45", "0.5"
    if before in DRUGS | SCORES or (before in LEADING and word(toks, k - 2) in DRUGS | SCORES):
        return k > clause.start
    if _is_time(toks, k):
        return bool(clause.words & ACTIVE) and not clause.words & MILLILITRES
    if after in UNITS or (before == "x" and k > clause.start):
        return True
    if after == "of" and word(toks, k + 2) in DRUGS:
        return True
    if "litre" not in clause.labels and after in LITRES and clause.words & OXYGEN:
        return True
    return _is_bed(toks, k, clause)


def _is_time(toks: Toks, k: int) -> bool:
    """ "till 12:45", "at 1800", "see you at 7"."""
    if word(toks, k - 1) == ":" and glued(toks, k) and is_digits(toks, k - 2):
        k -= 2
    said = word(toks, k)
    minutes = word(toks, k + 1) == ":" and is_digits(toks, k + 2)
    whole = minutes or len(said) == FULL_HOUR or word(toks, k + 1) in HALVES
    shaped = whole or len(said) < SHORT
    return shaped and (word(toks, k - 1) in UNTIL or (whole and (minutes or int(said[:2]) < HOURS)))


def _is_bed(toks: Toks, k: int, clause: Clause) -> bool:
    """ "bed 2 and 16", "cannula in 17", "6 is desatting": the bed that is talked about."""
    before, after = word(toks, k - 1), word(toks, k + 1)
    longer = is_digits(toks, k + 1) or (after in {".", ":", "/"} and glued(toks, k + 1))
    if longer or word(toks, k) not in clause.beds:
        return False
    if k > clause.start and before in BED_WORDS:
        return True
    if before in JOINTS and k - 2 >= clause.start and is_digits(toks, k - 2):
        return _is_bed(toks, k - 2, clause)
    if any(is_digits(toks, j) for j in range(clause.start, k)):
        return False  # "14 has 20"
    leading = k == clause.start and after in LED
    return leading or (k > clause.start and before in PLACING | COVERS)
