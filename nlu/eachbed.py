"""A message of several beds read bed by bed, where it cannot be read as a whole.

"bed 13 drain out 1140 total 330, bed 14 drain out 1155 total 190", "506 tube pulled 0950 and 511 is off to
IR": what happened in one bed is whole, and so is what happened in the next. Called by `apart` for messages
that would be asked. Each clause names its bed; one that leans on another (no word of its own, its time said
elsewhere, "both", "or") is left to that question.
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

from .numbers import Toks, is_digits, starts_number, word
from .patterns.leads import SHORT_BED_WORDS
from .statements import Asked, Corrected, Drained, Mark, Removed, Statement, Withdrawn
from .verdict import Outcome

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
UNITS = frozenset({"h", "hr", "hrs", "ml", "mls", "cc", "mils", "am", "pm"})
WORDLESS = SHORT_BED_WORDS | UNITS | {"at", "a", "p", "m", "now"}


def by_clause(text: str, toks: Toks, outcome: Callable[[str], Outcome], *, voice: bool) -> Outcome:
    """What the clauses say, each of its own bed; nothing where one is not whole or may lean on another."""
    if JOINTS.isdisjoint(toks.words) or _leans(toks):
        return ()
    ends = [k for k in range(1, len(toks) - 1) if _is_joint(toks, k, voice=voice)]
    if not 0 < len(ends) < MOST:
        return ()
    found: list[tuple[Statement, ...]] = []
    for start, end in pairwise([-1, *ends, len(toks)]):
        said = _whole(text, toks, start + 1, end, outcome)
        if not said:
            return ()
        found.append(said)
    return tuple(s for said in found for s in said) if _are_apart(found) else ()


def by_tube(text: str, toks: Toks, outcome: Callable[[str], Outcome], *, voice: bool) -> Outcome:
    """What is said of two tubes, one of them taken out: the first clause names the bed for both, as typed."""
    bed = 0 if voice else _leading_bed(toks)
    ends = [k for k in range(bed + 1, len(toks) - 1) if _is_tube(toks, k + 1) and word(toks, k) in JOINTS]
    if not bed or len(ends) != 1 or not _is_tube(toks, bed) or word(toks, bed) == word(toks, ends[0] + 1):
        return ()
    if _leans(toks) or not toks.words.isdisjoint(BOTH_TUBES):
        return ()
    named = text[: toks[bed - 1].end]
    clause = named + " " * (toks[ends[0]].end - len(named)) + text[toks[ends[0]].end :]
    read = (*outcome(text[: toks[ends[0]].start]), *outcome(clause))
    said = [s for s in read if isinstance(s, Removed | Mark)]
    tubes = [s.tube for s in said]
    apart = len(said) == len(read) and len({s.bed for s in said}) == 1 and None not in tubes
    removed = sum(isinstance(s, Removed) for s in said)
    timed = all(s.at is not None for s in said) or (removed == len(said) == PAIR and said[0].at is None)
    return tuple(said) if apart and removed and timed and len(said) == PAIR == len(set(tubes)) else ()


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


def _whole(
    text: str, toks: Toks, start: int, end: int, outcome: Callable[[str], Outcome]
) -> tuple[Statement, ...]:
    """What a clause says at its place in the message, if it says anything and nothing of it is asked."""
    while end > start and word(toks, end - 1) in JOINTS:
        end -= 1  # ", and bed 4": two joints side by side
    if start >= end or all(not t.is_word or t.text in WORDLESS for t in toks[start:end]):
        return ()
    read = outcome(" " * toks[start].start + text[toks[start].start : toks[end - 1].end])
    said = tuple(s for s in read if isinstance(s, Statement) and s.bed is not None)
    return said if len(said) == len(read) and not any(isinstance(s, Asked) for s in said) else ()


def _are_apart(found: list[tuple[Statement, ...]]) -> bool:
    """Whether each clause is of one bed, and none has the bed or the time of another."""
    beds = [{s.bed for s in said} for said in found]
    several = any(len(own) > 1 for own in beds) or len(frozenset[str | None]().union(*beds)) < len(beds)
    said = [s for clause in found for s in clause]
    righted = any(isinstance(s, Corrected | Withdrawn) for s in said)
    return not several and not righted and _is_timed_apart(said)


def _is_timed_apart(said: list[Statement]) -> bool:
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
