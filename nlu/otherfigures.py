"""Clauses whose numbers are another thing's: "had 2 percocet at 5", "flacc 2", "cxr at 0600", "she is 64".

A word of another thing is their subject, and `accounts` says of each number what of it it is. Called by
`framed`, which leaves them out beside lines that are whole, each with its own time, and by `read`, so that no
number of them is ever one of ours.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import cast

from .accounts import LITTLE, Accounts, Span
from .again import Again
from .neighbours import is_dash, is_stop_among, parted
from .numbers import Toks, glued, is_digits, word
from .patterns.leads import BED_WORDS
from .patterns.ofreading import PLAIN
from .patterns.otherfigures import (
    CHANGED_THINGS,
    COLLECTORS,
    COUNTED,
    DRUGS,
    FOOD,
    FREE,
    GAVE,
    NAMES,
    RANGES,
    REPLACED,
    SAY_AGE,
    SEXES,
    SUBJECTS,
    UNITS,
    VESSELS,
)
from .patterns.ownclauses import OTHERS
from .pipeline import Cue
from .somebody import GOES_ON_ABOUT, is_behind_line
from .statements import Statement
from .verdict import Outcome

STOPS = frozenset({".", ",", ";", "!", "?", "(", ")", "\n"})
JOINTS = frozenset({"and", "&", "also"})
_OURS = """
level canister tubeword seal suction wall leak tidal fluid old new opens kind what closing same weight
repair or leakgrade ask question amount volume withdrawn corrected
"""
OURS = frozenset(_OURS.split())
"""Labels of cues with which a clause may be of a drain."""
COMES = frozenset({"away", "back", "left"})
AT = frozenset({"at", "@"})
ENDS = frozenset({".", ";", "!"})
TELLING = NAMES | RANGES.keys() | SAY_AGE | SUBJECTS | UNITS | COUNTED | SEXES | {"/", "-", "i", "we"}
"""One of these is said where there is such a clause."""
EVENTS = frozenset({"what", "kind"})
DRAINS = frozenset({"drain", "line", "tube", "box", "bottle", "canister", "mark", "level", "chamber"})
OF_LINE = 3
"""Numbers of a line: its bed, its level, its time."""
OF_MEASURE = frozenset({"is", "are", "was", "at", "on", "of", "his", "her", "still"})
FEWEST = 2
"""Words and signs of a clause."""
_CLAUSES = ("clauses of other figures", 0)


def other_figures(again: Again) -> list[Span]:
    """The clauses whose numbers are all of other things, and of whom nothing that follows may be."""
    return [span for span in _found(again) if not _may_share(again, *span)]


def values_told(again: Again) -> Iterator[Span]:
    """Dictated "sats are ninety five", "bp 110 over 70": what is measured of a patient, with its name."""
    ends = {cue.end: cue.start for cue in again.meant.cues if cue.label == "other"}
    for cue in again.meant.cues:
        start = cue.start if cue.label == "claimed" else 0
        while start and start not in ends and word(again.toks, start - 1) in OF_MEASURE:
            start -= 1
        if start:
            yield ends.get(start, start), cue.end


def their_clauses(again: Again) -> Sequence[Span]:
    """The same, and those of which something that follows may be; looked for where a word or the number of
    numbers tells of one."""
    toks = again.toks
    many = len(toks.digits) > OF_LINE
    return _found(again) if many or not toks.words.isdisjoint(TELLING) else []


def takes_any(again: Again, outcome: Outcome, spans: Sequence[Span]) -> bool:
    """Whether a word of these clauses is in a statement: "turned at 6 and 8" as a line of bed 6."""
    places = [place for said in outcome if isinstance(said, Statement) for place in said.spans.values()]
    theirs = [again.toks[k].start for span in spans for k in range(*span)]
    return any(place.start <= start < place.end for place in places for start in theirs)


def _found(again: Again) -> Sequence[Span]:
    """The clauses of a message, looked for once."""
    if _CLAUSES not in again.toks.memo:
        again.toks.memo[_CLAUSES] = tuple(_clauses(again))
    return cast("tuple[Span, ...]", again.toks.memo[_CLAUSES])


def _clauses(again: Again) -> Iterator[Span]:
    toks = again.toks
    if PLAIN.issuperset(w for w in toks.words if w.isalpha()):
        return  # a list of beds and lines, and nothing else
    for span in between(toks, 0, len(toks), parts=False):
        parts = [span] if _is_of_another(again, *span) else list(between(toks, *span, parts=True))
        last = 0
        for start, _ in parts:
            ends = (end for _, end in reversed(parts) if start < end and _is_of_another(again, start, end))
            end = next(ends, 0) if start >= last else 0
            if end:
                last = _end_of_replaced(toks, start, end)
                yield start, last


def _end_of_replaced(toks: Toks, start: int, end: int) -> int:
    """ "mg 0.74, replaced": what was done about a blood value is of it."""
    done = word(toks, end) == "," and word(toks, end + 1) in {"replaced", "repleted", "replacing"}
    done &= end + 2 >= len(toks) or _is_stop(toks, end + 2)
    return end + 2 if done and not REPLACED.isdisjoint(toks.said[start:end]) else end


def between(toks: Toks, start: int, last: int, *, parts: bool) -> Iterator[Span]:
    """Those between stops; their `parts` also between joining words, and behind a line that is whole."""

    def is_stop(k: int) -> bool:
        return _is_stop(toks, k) or (parts and word(toks, k) in JOINTS)

    def is_cut(k: int) -> bool:
        ends = word(toks, k) in BED_WORDS and k + len(("bed", "2")) == last
        bed = ends and is_digits(toks, k + 1)  # "bp 98/60 | bed 2, no leak"
        return parts and (bed or is_behind_line(toks, k) or _is_behind_level(toks, k))

    return parted(start, last, is_stop, is_cut)


def _is_behind_level(toks: Toks, k: int) -> bool:
    """ "at 1043 bed 4 was 276 | room temp 22": a line that ends with its level, and another word."""
    level = is_digits(toks, k - 1) and word(toks, k - 2) in {"was", "is"}
    return level and word(toks, k).isalpha() and word(toks, k) not in GOES_ON_ABOUT


def _is_stop(toks: Toks, k: int) -> bool:
    colon = word(toks, k) == ":" and not glued(toks, k + 1) and is_digits(toks, k - 1)
    return is_dash(toks, k) or colon or is_stop_among(STOPS, toks, k)


def _is_of_another(again: Again, start: int, end: int) -> bool:
    """Whether each number there is of another thing, and no word may be of a drain or its line."""
    toks = again.toks
    if end - start < FEWEST or word(toks, end) in {"?", ":"}:
        return False
    if not any(is_digits(toks, k) for k in range(start, end)):
        return False
    if any(k in again.meant.labelled for k in range(start, end)):
        return False
    clause = Accounts(toks, (start, end), again.cues, again.ward.index or ())
    if not clause.are_whole():
        return False
    return not any(_is_ours(cue, clause) for cue in again.cues if start <= cue.start < end)


def _is_ours(cue: Cue, clause: Accounts) -> bool:
    """Whether a cue there may be of a drain, and is not of a number or of another thing."""
    toks, known = clause.toks, clause.own | clause.heads
    said = toks.said[cue.start : cue.end]
    if (
        cue.label not in OURS
        or (FREE | LITTLE).issuperset(said)
        or known.issuperset(range(cue.start, cue.end))
    ):
        return False
    if cue.label == "amount" and GAVE.issuperset(said):
        return clause.said.isdisjoint(DRUGS | FOOD)
    if cue.label == "fluid":
        return clause.said.isdisjoint(COLLECTORS)
    if cue.label == "kind" and cue.value == "exchanged":
        return clause.said.isdisjoint(CHANGED_THINGS)
    return not (cue.label == "kind" and cue.value in COMES and word(toks, clause.start) in OTHERS)


def _may_share(again: Again, start: int, end: int) -> bool:
    """ "12: foley 640 at 1800, 700 at 1900", "foley 250. unclamped", "14 visitors, 60 at 1900": whether what
    follows may be of the same vessel, or of a bed that is named there."""
    toks, beds = again.toks, again.ward.index or ()
    vessel = not VESSELS.isdisjoint(toks.said[start:end])
    reach = (
        len(toks) if vessel else next((k for k in range(end, len(toks)) if word(toks, k) in ENDS), len(toks))
    )
    if any(cue.label in EVENTS and end <= cue.start < reach for cue in again.cues):
        return True  # "saw him at 5 and clamped"
    labels = any(word(toks, k) in beds for k in range(start, end) if is_digits(toks, k))
    behind = (k for k in range(end, len(toks)) if is_digits(toks, k) and word(toks, k - 1) not in AT)
    k = next(behind, None)
    if k == end + 1 and word(toks, end) in BED_WORDS and word(toks, k + 1) in STOPS:
        k = next(behind, None)  # "foley 300 bed 2, 340 at 1830": of the same vessel, perhaps
        if k is not None and word(toks, k - 1) in DRAINS:
            return False
    if k is None or not (vessel or labels) or word(toks, k - 1) in BED_WORDS:
        return False
    return not (k in again.meant.labelled or word(toks, k) in beds)
