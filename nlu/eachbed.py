"""A message of several beds read bed by bed, where it cannot be read as a whole.

"bed 13 drain out 1140 total 330, bed 14 drain out 1155 total 190", "506 tube pulled 0950 and 511 is off to
IR": what happened in one bed is whole, and so is what happened in the next. Called by `read` for messages
that would be asked. Each clause names its bed; one that leans on another (no word of its own, its time said
elsewhere, "both", "or") is left to that question.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from .again import Again, Span, Told, every
from .numbers import Toks, is_digits, starts_number, word
from .patterns.leads import SHORT_BED_WORDS
from .patterns.levels import MILLILITRES
from .statements import Asked, Corrected, Drained, Mark, Removed, Statement, Withdrawn

MOST = 6
JOINTS = frozenset({",", ";", ".", "and", "then", "&"})
_FOLLOWING = """
is off to died went gone moved transferred discharged dc home expired back tube drain chest new canister
chamber had has passed going
"""
FOLLOWING = frozenset(_FOLLOWING.split())
"""Behind a bare number these make it a bed: "and 511 is off to IR"."""
_LEANING = """
or both each all respectively same too either neither instead other others not don't dont isn't isnt wasn't
wasnt wait sorry mean meant actually if maybe swapped oops nope ignore scratch mistake again wrong they them
these those that mixed vice opposite switched think sure ? also ditto likewise correction should
"""
LEANING = frozenset(_LEANING.split())
"""With one of these, one clause may be about what another says."""
SIDES = frozenset({"left", "right", "l", "r", "lt", "rt", "mediastinal", "apical", "basal", "pleural"})
BOTH_TUBES = frozenset({"beds", "tubes", "drains", "y", "joined", "combined", "together"})
PAIR = 2
UNITS = MILLILITRES | {"h", "hr", "hrs", "am", "pm"}
WORDLESS = SHORT_BED_WORDS | UNITS | {"at", "a", "p", "m", "now"}


def by_clause(again: Again) -> Told:
    """What the clauses say, each of its own bed; nothing where one is not whole or may lean on another."""
    toks = again.toks
    if JOINTS.isdisjoint(toks.words) or _leans(toks):
        return ()
    ends = [k for k in range(1, len(toks) - 1) if _is_joint(toks, k, voice=again.ward.voice)]
    if not 0 < len(ends) < MOST:
        return ()
    clauses = [_clause(toks, start + 1, end) for start, end in pairwise([-1, *ends, len(toks)])]
    if any(_is_wordless(toks, *clause) for clause in clauses):
        return ()
    said = [s for told in every(_of_own_bed(again.part(*clause)) for clause in clauses) for s in told]
    return tuple(said) if len({s.bed for s in said}) == len(clauses) and _is_timed_apart(said) else ()


def by_tube(again: Again) -> Told:
    """What is said of two tubes, one of them taken out: the first clause names the bed for both, as typed."""
    toks = again.toks
    bed = _leading_bed(toks)
    joint = _joint_of_tubes(toks, bed) if bed else 0
    if not joint or _leans(toks) or not toks.words.isdisjoint(BOTH_TUBES):
        return ()
    read = (again.without(span) for span in ((joint, len(toks)), (bed, joint + 1)))
    said = tuple(s for told in every(read) for s in told)
    tubes = {s.tube for s in said if isinstance(s, Removed | Mark)}
    apart = len(said) == PAIR == len(tubes) and None not in tubes and len({s.bed for s in said}) == 1
    removed = sum(isinstance(s, Removed) for s in said)
    timed = all(s.at is not None for s in said) or (removed == PAIR and said[0].at is None)
    return said if apart and removed and timed else ()


def _joint_of_tubes(toks: Toks, bed: int) -> int:
    """The one joint before the name of another tube than the first; nought where there is none."""
    ends = [k for k in range(bed + 1, len(toks) - 1) if _is_tube(toks, k + 1) and word(toks, k) in JOINTS]
    if len(ends) != 1 or not _is_tube(toks, bed) or word(toks, bed) == word(toks, ends[0] + 1):
        return 0
    return ends[0]


def _leans(toks: Toks) -> bool:
    """Whether a word is about another clause; "before that at 0515" has a time of its own."""
    leaning = toks.words & LEANING
    if leaning != {"that"}:
        return bool(leaning)
    return not all(word(toks, k - 1) in {"before", "after"} for k, t in enumerate(toks) if t.text == "that")


def _leading_bed(toks: Toks) -> int:
    """Where the bed that opens the message ends; 0 where none does."""
    start = word(toks, 0) in SHORT_BED_WORDS
    return start + 1 if is_digits(toks, start) else 0


def _is_tube(toks: Toks, k: int) -> bool:
    return word(toks, k) in SIDES


def _is_joint(toks: Toks, k: int, *, voice: bool) -> bool:
    """Whether a clause that names its bed begins behind this word or sign."""
    if word(toks, k) not in JOINTS or (toks[k + 1].glued and word(toks, k) != ","):
        return False
    if word(toks, k + 1) in SHORT_BED_WORDS:
        return starts_number(toks, k + 2)
    return not voice and is_digits(toks, k + 1) and not FOLLOWING.isdisjoint(toks.said[k + 2 : k + 4])


def _clause(toks: Toks, start: int, end: int) -> Span:
    """Where a clause stands, without a second joint behind it: ", and bed 4"."""
    while end > start and word(toks, end - 1) in JOINTS:
        end -= 1
    return start, end


def _is_wordless(toks: Toks, start: int, end: int) -> bool:
    """Whether nothing is said there but a number."""
    return all(not t.is_word or t.text in WORDLESS for t in toks[start:end])


def _of_own_bed(told: Told) -> Told:
    """What a clause tells of one bed; nothing where it is of several, asks, or puts something right."""
    other = any(isinstance(s, Asked | Corrected | Withdrawn) for s in told)
    return () if other or len({s.bed for s in told}) > 1 else told


def _is_timed_apart(said: Sequence[Statement]) -> bool:
    """Whether no time may be of two beds: each is said behind its bed, and events without one come last."""
    untimed = [k for k, s in enumerate(said) if s.at is None]
    if not untimed or len(untimed) == len(said):
        return True
    if any(isinstance(said[k], Mark | Drained) for k in untimed) or untimed[0] < len(said) - len(untimed):
        return False
    return not any(_leads(s) for s in said if s.at is not None)


def _leads(said: Statement) -> bool:
    at, bed = said.spans.get("at"), said.spans.get("bed")
    return at is not None and bed is not None and at.start < bed.start
