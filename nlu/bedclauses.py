"""Where the clauses of a typed or dictated message begin that each name a bed, by stops or by joining words.

Used by `ownbeds`. What stands between two of them belongs to the one before.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from itertools import pairwise
from typing import TypeAlias

from .again import Again, Span
from .clock import clocks
from .labels import beds
from .numbers import Toks, glued, is_digits, word
from .patterns.leads import OF_BED, SHORT_BED_WORDS
from .patterns.levels import MILLILITRES
from .patterns.numerals import NUMERALS
from .somebody import names_bed

Ends: TypeAlias = Callable[[Again, int], int]
"""Where a clause begins that a word or sign at a place parts from the one before; nought where none does."""

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
WORDLESS = SHORT_BED_WORDS | MILLILITRES | {"h", "hr", "hrs", "am", "pm", "at", "a", "p", "m", "now"}
STOPS = frozenset({";", ".", "!", "?"})
JOINTS = STOPS | {",", "-", "and", "then", "&", "also", "plus", "+"}
PARTING = JOINTS | {"/"}
HEADS = frozenset({"kind", "what", "order"})
"""Cues of what happened, and of what is to be."""
LEADING = HEADS | {"ask"}
HAPPENING = HEADS | {"same", "other", "claimed", "suction", "waterseal", "seal", "wall", "leak", "tidal"}
HAPPENING |= {"fluid", "ask"}
"""Cues of what is more than a line."""
FRESH = frozenset({"new", "fresh"})
TURNED = frozenset({"suction", "wall", "seal", "waterseal"})
"""Cues that may stand behind their number: "20 suction"."""
NO_BED = frozenset({"dial", "grade", "pain", "bp", "hr", "one", "it", "is", "still", "now", "sits", "up"})
"""Behind these a number is none of a bed."""
UNITS = MILLILITRES | {"cm", "hrs", "h", "am", "pm", "a", "p"}
"""Behind these a number is another's."""
MEASURED = (
    MILLILITRES
    | {"cm", "x", "%", "/", ":", ".", "mmhg", "kg", "min", "mins", "minutes", "hours", "hrs", "h", "am", "pm"}
    | {"hr", "hour", "hourly", "litre", "litres", "liter", "liters", "l", "lpm"}
)
"""Before these a number is an amount or a time, and no bed."""
NO_LABEL = MEASURED | {"in", "out", "more", "less", "since", "over", "ago", "of", ""}
NO_LABEL |= {"tubes", "drains", "mediastinals", "pleurals", "apicals", "basals"}
NO_LABEL |= {"patients", "pts", "beds", "times"}
"""Before these a number that opens a clause is none of a bed."""
GOING = frozenset({"to", "into"})
ASKED = frozenset({"what", "what's", "whats", "how", "when", "when's"})
"""With these a question begins."""
VERBS = frozenset({"is", "has", "does", "did"})
"""Behind these a number is the bed that is asked about."""
SHORT = 2
"""A number of so many digits may be half a time: "at 19 20", or the grade of a leak."""
NEAR = 3
"""So near behind an event its bed stands: "pulled the tube on bed 8"."""
SET = frozenset({"suction", "waterseal", "seal", "wall", "leak", "leakgrade"})
ENDING = HAPPENING - SET - LEADING
"""Cues behind which a clause may begin."""
OPENING = LEADING | {"same"}
"""Cues whose number follows, "suction back on 20"."""


def behind_stop(again: Again, k: int) -> int:
    """Where a sentence begins: behind a stop, a slash or a dash that stands alone."""
    toks = again.toks
    stops = word(toks, k) in STOPS and _parts(toks, k)
    return k + 1 if stops or _is_apart(toks, k) else 0


def behind_joint(again: Again, k: int) -> int:
    """Where a clause begins: behind a stop or a joining word, or without one behind a number or a cue."""
    toks = again.toks
    if is_joint(toks, k):
        return k + 1
    ended = is_digits(toks, k - 1) or word(toks, k - 1) in UNITS or word(toks, k - 1) in NUMERALS
    ended = ended or _is_of_half_day(toks, k - 1) or _is_behind_cue(again, k)
    return k if ended and _begins(again, k) else 0


def _is_behind_cue(again: Again, k: int) -> bool:
    """Whether a cue ends there that may be the last of a clause, or an order begins."""
    return any(
        (c.end == k and c.label in ENDING)
        or (c.start == k and (c.label == "order" or word(again.toks, k) in ASKED))
        for c in again.meant.cues
    )


def _begins(again: Again, k: int) -> bool:
    """ "340 bed 4", "0600hrs 12 no leak", "2 cm pulled the tube on 8": whether another clause begins."""
    toks, cues = again.toks, again.meant.cues
    if toks[k].glued or any(start < k < end for start, (end, _) in again.meant.labelled.items()):
        return False
    if names_bed(toks, k):
        return True
    if k in again.meant.labelled or _may_be_bed(again, k):
        end = again.meant.labelled[k][0] if k in again.meant.labelled else k + 1
        short = is_digits(toks, k - 1) and len(word(toks, k - 1)) <= SHORT
        tells = any(c.start == end and c.label in HAPPENING - TURNED for c in cues)
        graded = is_digits(toks, k - 1) and len(word(toks, k)) == 1 and not names_bed(toks, k - 1)
        graded &= any(c.start == end and c.label == "leak" and c.value != "none" for c in cues)
        return (tells or word(toks, end) in FOLLOWING) and not (short or graded)  # "340 2 leak"
    if _may_be_bed(again, k - 1):
        return False  # "14 moved to 9"
    led = [c for c in cues if c.start == k and c.label in OPENING and c.value != "moved"]
    return any(beds_named(again, (k, c.end + NEAR)) for c in led)


def _may_be_bed(again: Again, k: int) -> bool:
    if k in again.claimed:
        return False  # "rr 22 sats 94"
    return may_be_label(again, k) or any(end == k + 1 for end, _ in again.meant.labelled.values())


def may_be_label(again: Again, k: int) -> bool:
    """Whether the number there could be a bed of the unit."""
    index = again.ward.index
    return is_digits(again.toks, k) and (index is None or word(again.toks, k) in index)


def _is_apart(toks: Toks, k: int) -> bool:
    apart = word(toks, k) in {"/", "-"} and not toks[k].glued
    return apart and not glued(toks, k + 1)


def is_joint(toks: Toks, k: int) -> bool:
    """Whether a stop or a joining word parts two clauses there."""
    return word(toks, k) in JOINTS and _parts(toks, k)


def segments(toks: Toks) -> list[Span]:
    """What stands between two stops or joining words, with or without a bed."""
    joints = [-1, *(k for k in range(len(toks)) if is_joint(toks, k)), len(toks)]
    return [(before + 1, end) for before, end in pairwise(joints)]


def _is_of_half_day(toks: Toks, k: int) -> bool:
    """ "2 p.m. with 90 in it": no stop."""
    if word(toks, k) != ".":
        return False
    inside = word(toks, k - 1) in {"p", "a"} and word(toks, k + 1) == "m"
    behind = word(toks, k - 1) == "m" and word(toks, k - 2) in {".", "p", "a"}
    return inside or behind


def _parts(toks: Toks, k: int) -> bool:
    """No sign inside a number parts two clauses, and no minus."""
    said = word(toks, k)
    if said in {"-", "+"}:
        return not glued(toks, k + 1)
    if _is_of_half_day(toks, k):
        return False
    inside = said in {",", "."} and glued(toks, k + 1)
    return not (inside and is_digits(toks, k - 1) and is_digits(toks, k + 1))


def clauses(again: Again, span: Span, ends: Ends) -> Iterator[Span]:
    """The clauses in a part of the message that name a bed, each with those behind it that name none; none
    where it is not parted."""
    toks, (first, last) = again.toks, span
    begun = [begins for k in range(first + 1, last - 1) if (begins := ends(again, k))]
    if not begun:
        return
    starts = [first, *dict.fromkeys(begun)]
    bounds = [_stripped(toks, *bound) for bound in pairwise([*starts, last])]
    named = [start for start, end in bounds if beds_named(again, (start, end))]
    for start, behind in pairwise([first, *named[1:], last]) if named else ():
        start, end = _stripped(toks, start, behind)
        if end > start:
            yield start, end


def _stripped(toks: Toks, start: int, end: int) -> Span:
    """A clause without the signs and joining words around it; what is asked keeps its sign."""
    while end > start and word(toks, end - 1) in PARTING - {"?"} and not _is_sign(toks, end - 1):
        end -= 1
    while start < end and word(toks, start) in PARTING and not glued(toks, start + 1):
        start += 1
    return start, end


def _is_sign(toks: Toks, k: int) -> bool:
    """ "leak-": a sign of its own."""
    return word(toks, k) in {"-", "+"} and toks[k].glued


def beds_named(again: Again, span: Span) -> set[str]:
    """Which beds a clause names: by that word, a label of the ward, or a number that may be one."""
    toks, index, labelled = again.toks, again.ward.index, again.meant.labelled
    start, end = span[0], min(span[1], len(toks))
    opening = {start, *(behind for behind, _ in clocks(toks, start))} if not again.ward.voice else set()
    found = set()
    moves = any(c.value == "moved" for c in again.meant.cues)
    for k in range(start, end):
        if moves and word(toks, k - 1 - (word(toks, k - 1) in SHORT_BED_WORDS)) in GOING:
            continue  # "moved to 6": no bed that anything else is of
        if k in labelled:
            found.add(labelled[k][1])
        elif names_bed(toks, k):
            found.add(_label(again, k + 1))
        elif _may_be_bed(again, k) and (
            (k in opening and k + 1 < end and _opens(again, k)) or (k > start and _is_placed(again, k))
        ):
            found.add((index or {}).get(word(toks, k), word(toks, k)))
    return found


def _label(again: Again, k: int) -> str:
    """The label behind the word for a bed, the longest that the unit has: "bed two fourteen"."""
    toks, ward = again.toks, again.ward
    said = [each for each in beds(toks, k, ward.index, voice=ward.voice, cued=True) if each[2]]
    return max(said)[1] if said else word(toks, k)


def _opens(again: Again, k: int) -> bool:
    """ "9 to CT", "9 suction 20": whether the number that a clause opens with is a bed; not "2 tubes"."""
    turned = next((c.end for c in again.meant.cues if c.start == k + 1 and c.label in TURNED), 0)
    return word(again.toks, k + 1) not in NO_LABEL and (not turned or is_digits(again.toks, turned))


def _is_placed(again: Again, k: int) -> bool:
    """ "dr wants 9 on suction", "changed 9 box": whether it is a bed by what is before it; not "back 9"."""
    toks, cues = again.toks, again.meant.cues
    if word(toks, k + 1) in MEASURED:
        return False
    led = [c for c in cues if c.end == k and c.label in LEADING and not c.value.startswith("suction")]
    if any(c.label in {"order", "ask"} for c in led) or _is_behind_of(again, k):
        return True
    if word(toks, k - 1) in VERBS and any(c.label == "ask" for c in cues):
        return True
    more = word(toks, k + 1).isalpha() and word(toks, k + 1) not in PARTING
    return more and any(word(toks, c.start) not in FRESH for c in led)


def _is_behind_of(again: Again, k: int) -> bool:
    """ "pulled the tube on 9"; not "suction back on 20", "the new one on 20"."""
    toks, cues = again.toks, again.meant.cues
    last = max((c.end for c in cues if c.label in SET and c.end <= k), default=0)
    set_to = last and not any(is_digits(toks, j) or word(toks, j) in PARTING for j in range(last, k))
    inside = any(c.start < k <= c.end and c.label in HAPPENING for c in cues)
    return word(toks, k - 1) in OF_BED and word(toks, k - 2) not in NO_BED and not (inside or set_to)


def leans(toks: Toks, besides: frozenset[str] = frozenset()) -> bool:
    """Whether a word is about another clause, besides these; "before that at 0515" has a time of its own."""
    leaning = (toks.words & LEANING) - besides
    if leaning != {"that"}:
        return bool(leaning)
    return not all(word(toks, k - 1) in {"before", "after"} for k, t in enumerate(toks) if t.text == "that")


def is_wordless(toks: Toks, start: int, end: int) -> bool:
    """Whether nothing is said there but a number."""
    return all(not t.is_word or t.text in WORDLESS or t.text in NUMERALS for t in toks[start:end])
