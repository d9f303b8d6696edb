"""A message read sentence by sentence, where it cannot be read as a whole.

"fix bed 6 0600 to 304. bed 6 0700 is 330": each sentence names its bed and is whole, so that nothing of one
is needed to read the other. What is put right or taken back beside a line needs no stop, typed or dictated:
"bed 4 mark 540 at 2000 and delete the 1900 mark on bed 5". Called by `read` for messages that would be asked.
"""

from __future__ import annotations

from collections import Counter
from itertools import islice, pairwise

from .again import Again, Told, every
from .numbers import Toks, is_digits, starts_number, word
from .onebed import by_part
from .ownclauses import PLAIN
from .patterns.leads import FULL_STOPS, SHORT_BED_WORDS
from .statements import Asked, Corrected, Drained, Mark, Statement, Withdrawn

MOST = 8
MOST_JOINTS = 3
"""Behind so many places where a message may be cut in two, more is told than one thing that is put right."""
DENYING = frozenset({"dont", "don't", "not", "no", "never", "isn't", "wasn't", "isnt", "wasnt", "cant"})
BED_WORDS = SHORT_BED_WORDS | {"beds", "rooms"}
TITLES = frozenset({"dr", "mr", "mrs", "ms", "prof", "approx", "no"})
"""A dot behind these ends no sentence."""
REFERRING = frozenset(
    {"that", "those", "these", "this", "both", "all", "each", "instead", "above", "ignore", "no", "not"}
    | {
        "wait",
        "oops",
        "mean",
        "meant",
        "actually",
        "rather",
        "nope",
        "same",
        "too",
        "either",
        "sorry",
        "former",
    }
    | {"latter", "respectively", "other", "others", "them", "they", "were", "mistake", "scratch", "again"}
)
"""With one of these a sentence may be about the one before."""


RIGHTING = frozenset({"correct", "fix", "change", "amend"})
TAKING = frozenset({"delete", "cancel", "erase", "withdraw"})
SETTLING = RIGHTING | TAKING
LINES = frozenset({"mark", "line", "level", "reading"})


def by_sentence(again: Again) -> Told:
    """What the sentences say, each read alone; nothing where one is not whole or may be of another bed."""
    return _each_of_its_bed(again) or by_part(again)


def _each_of_its_bed(again: Again) -> Told:
    """What the sentences say that each name a bed."""
    toks = again.toks
    if FULL_STOPS.isdisjoint(toks.words):
        return ()
    return _each(again, [k for k in range(len(toks)) if _is_end(toks, k)])


def question_first(again: Again) -> Told:
    """What is asked where only what has no number, bed or event is told behind it: "... ? Radiology are on
    the phone."."""
    toks = again.toks
    end = max((k for k, said in enumerate(toks.said[:-1]) if said == "?"), default=-1) + 1
    behind = toks.said[end:]
    plain = (
        sum(map(str.isalpha, behind)) > 1
        and {c.label for c in again.cues if c.start >= end} <= PLAIN
        and BED_WORDS.isdisjoint(behind)
    )
    if not end or not plain or any(starts_number(toks, k) for k in range(end, len(toks))):
        return ()
    told = again.without((end, len(toks)))
    return told if all(isinstance(s, Asked) for s in told) else ()


def joined(again: Again) -> Told:
    """What is said on both sides of an "and": a line with its time, and what is put right or taken back."""
    toks = again.toks
    if toks.words.isdisjoint(SETTLING):
        return ()
    for k in islice((k for k in range(1, len(toks) - 1) if _is_joint(toks, k)), MOST_JOINTS):
        told = _each(again, [k])
        settled = sum(isinstance(s, Corrected | Withdrawn) for s in told)
        if settled == 1 and all(s.at is not None for s in told):
            return told
    return ()


def _is_joint(toks: Toks, k: int) -> bool:
    if word(toks, k) not in {"and", ","}:
        return False
    righted = word(toks, 0) in RIGHTING and not LINES.isdisjoint(toks.said[k:])
    return word(toks, k + 1) in SETTLING or (righted and word(toks, k + 1) in BED_WORDS)


def _each(again: Again, ends: list[int]) -> Told:
    """What is said between these places; nothing where a part may be about another, or two about one line."""
    toks = again.toks
    spans = [(start + 1, end) for start, end in pairwise([-1, *ends, len(toks)]) if end > start + 1]
    if not 1 < len(spans) <= MOST or not all(_stands_alone(toks, *span) for span in spans):
        return ()
    found = [s for told in every(again.part(*span) for span in spans) for s in told]
    return () if _contradicts(found) or not _all_timed(found) else tuple(found)


def _stands_alone(toks: Toks, start: int, end: int) -> bool:
    words = {word(toks, k) for k in range(start, end)}
    return names_own_bed(toks, start, end) and words.isdisjoint(REFERRING if start else DENYING)


def names_own_bed(toks: Toks, start: int, end: int) -> bool:
    """Whether a sentence says which bed by that word, or begins with a number: no other number may be it."""
    return is_digits(toks, start) or any(
        word(toks, k) in BED_WORDS and starts_number(toks, k + 1) for k in range(start, end - 1)
    )


def _is_end(toks: Toks, k: int) -> bool:
    glued = k + 1 < len(toks) and toks[k + 1].glued and word(toks, k) == "."
    return word(toks, k) in FULL_STOPS and not glued and word(toks, k - 1) not in TITLES


def _contradicts(found: list[Statement]) -> bool:
    """Whether two of them are about one line."""
    loose = [s.bed for s in found if isinstance(s, Corrected | Withdrawn) and s.at is None]
    if any(sum(s.bed == bed for s in found) > 1 for bed in loose):
        return True  # "bed 9 340 at 0600; bed 9 should be 360"
    lines = [s for s in found if isinstance(s, Mark | Drained | Corrected | Withdrawn)]
    return any(n > 1 for n in Counter((s.bed, s.tube, s.at) for s in lines).values())


def _all_timed(found: list[Statement]) -> bool:
    """Whether no line may have the time of another: each has its own, or none has."""
    timed = [s.at is not None for s in found if isinstance(s, Mark | Drained)]
    return all(timed) or not any(timed)
