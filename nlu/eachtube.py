"""What is said of two tubes of a bed, read tube by tube where it cannot be read as a whole.

"4 left out 1140 final 330, right 190 at 1155": the first clause names the bed for both. Called by `read` for
typed messages that would be asked.
"""

from __future__ import annotations

from .again import Again, Told, every
from .bedclauses import leans
from .numbers import Toks, is_digits, word
from .patterns.leads import SHORT_BED_WORDS
from .statements import Mark, Removed

JOINTS = frozenset({",", ";", ".", "and", "then", "&"})
SIDES = frozenset({"left", "right", "l", "r", "lt", "rt", "mediastinal", "apical", "basal", "pleural"})
BOTH_TUBES = frozenset({"beds", "tubes", "drains", "y", "joined", "combined", "together"})
PAIR = 2


def by_tube(again: Again) -> Told:
    """What is said of two tubes, one of them taken out: the first clause names the bed for both, as typed."""
    toks = again.toks
    bed = _leading_bed(toks)
    joint = _joint_of_tubes(toks, bed) if bed else 0
    if not joint or leans(toks) or not toks.words.isdisjoint(BOTH_TUBES):
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


def _leading_bed(toks: Toks) -> int:
    """Where the bed that opens the message ends; 0 where none does."""
    start = word(toks, 0) in SHORT_BED_WORDS
    return start + 1 if is_digits(toks, start) else 0


def _is_tube(toks: Toks, k: int) -> bool:
    return word(toks, k) in SIDES
