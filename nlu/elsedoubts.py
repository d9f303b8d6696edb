"""Clauses beside a line that doubt, hope, ask or forget something of a ward, and nothing of the reading.

"I think his daughter is visiting", "lost his glasses somewhere", "not confirmed if rehab has a place": such a
clause names what is of no line, or asks what somebody else will do, and holds no word for a drain, its line,
or how, when and where a line was read. Called by `framed`, typed only, which leaves them out where a message
would be asked; `misgivings` looks at the whole message after that.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from .again import Again, Span
from .neighbours import parted, phrase_of
from .numbers import Toks, is_digits, starts_number, word
from .patterns.asides import PATIENTS, RELATIVES
from .patterns.elsedoubts import (
    AHEAD,
    ASKING,
    CHECKING,
    HEDGED,
    LIFTED,
    LITTLE,
    MAY,
    NAMED,
    OURS,
    PARTS,
    SOMEBODY,
    UNSURE,
    WHO_COMES,
)
from .patterns.ofreading import OTHERS
from .patterns.ownclauses import DOUBTFUL, HIMSELF, OBJECTS
from .pipeline import Cue
from .somebody import GOES_ON_ABOUT, STOPS, is_behind_line

QUIET = frozenset(
    {"filler", "word", "other", "okay", "neg", "no", "plan", "order", "question", "yes", "repair", "nothing"}
    | {"mark_of_question", "help", "arrival", "about", "window", "weight"}
)
"""Labels of cues that tell nothing of a drain in such a clause."""
MIXED = frozenset(
    {"mixed", "mix", "wrong", "muddled", "swapped", "confused", "another", "mistake", "different"}
)
WHOM = PATIENTS | frozenset({"patient", "patients", "pt", "pts", "person", "people", "him", "names", "name"})
FEWEST = 2
"""Words of a clause."""
SMALL = frozenset({"a", "an", "one", "to", "for", "oh", "o", "and", "too"})
"""Number words that mostly are none."""
WRONG = frozenset({"supposed to be", "was wrong", "is wrong", "wrong", "error", "really", "actually"})
SUBJECTS = HIMSELF | RELATIVES | frozenset({"tomorrow", "later", "soon", "next", "tonight", "today"})
"""With one of these a hedge is of that, whatever else it says: "probably home tomorrow"."""
HEDGING = (
    MAY
    | HEDGED
    | frozenset({"think", "thinks", "thought", "reckon", "reckons", "doubt", "doubtful", "worried"})
)
COMPARED = frozenset(
    {"more", "less", "wrong", "different", "another", "mixed", "mix", "mistake", "mistaken", "error"}
)
"""With one of these a hedge may be of the number, or of whose it is."""
NEAR = 4
"""Words from a check to what is checked."""
HEDGED_THING = LIFTED | MAY | NAMED | LITTLE
STILL_DOUBTFUL = DOUBTFUL - LIFTED
POINTED_AT = NAMED | PARTS


def other_doubts(again: Again) -> Iterator[tuple[Span, bool]]:
    """The clauses that are of something else, with the stop before each, or behind the first; and whether
    it says when something will be."""
    toks = again.toks
    for start, end in _clauses(toks):
        said = toks.said[start:end]
        cues = [cue for cue in again.meant.cues if start <= cue.start < end]
        headed = word(toks, end) == ":"  # "lunch cover: 3 490, 9 660"
        if headed or len(said) < FEWEST or not is_of_something_else(said):
            continue
        numbers = [k for k in range(start, end) if starts_number(toks, k) and word(toks, k) not in SMALL]
        later = not AHEAD.isdisjoint(said)
        timed = [k for k in numbers if later and word(toks, k - 1) == "at" and k == end - 1]
        if timed == numbers and all(_is_quiet(c, toks) for c in cues):
            before = start > 0 and word(toks, start - 1) in STOPS
            stop = word(toks, end) == "?" or not before
            yield (start - before, end + (stop and word(toks, end) in STOPS)), bool(timed)


def is_of_something_else(said: Sequence[str]) -> bool:
    """ "pharmacy unsure about his warfarin", "no idea when the doctors are rounding"."""
    checked = {w for k, w in enumerate(said) if w in CHECKING and NAMED & set(said[k + 1 : k + 1 + NEAR])}
    owned = {w for a, w in pairwise(said) if a in {"his", "her"} and w in {"glasses", "specs", "phone"}}
    words = set(said) - checked - owned
    named = bool(words & NAMED or owned)
    checked |= {"second"} if checked and "nurse" in words else set()
    if words & OURS or words - checked & STILL_DOUBTFUL or _points(said):
        return False
    if (words & MIXED and words & WHOM) or is_bare(said):
        return False
    return named or _asks_of_somebody(said) or _may_come(said)


def is_bare(said: Sequence[str]) -> bool:
    """ "maybe his stoma", "or maybe at lunch": a hedge and what the line may be of, and nothing told of that;
    "unsure of his weight" says of what."""
    of = any(a in UNSURE and b in {"of", "about", "on", "re"} for a, b in pairwise(said))
    told = of or not SUBJECTS.isdisjoint(said)
    return not told and all(w in HEDGED_THING or w in OTHERS for w in said)


def _may_come(said: Sequence[str]) -> bool:
    """ "wife might visit later", "reg allegedly on the way"."""
    return said[0] in WHO_COMES and not MAY.isdisjoint(said) and not AHEAD.isdisjoint(said)


def _points(said: Sequence[str]) -> bool:
    """Whether "it" or "that" may be the line: "that curry" is none."""
    return any(
        w in OBJECTS and not (w in {"that", "this"} and not POINTED_AT.isdisjoint(said[k + 1 : k + 2]))
        for k, w in enumerate(said)
    )


def _asks_of_somebody(said: Sequence[str]) -> bool:
    """ "no idea when the doctors are rounding", "don't know if I'm on tomorrow": what somebody will do."""
    for k, w in enumerate(said):
        if w not in ASKING or HEDGED.isdisjoint(said[:k]):
            continue
        behind = said[k + 1 : k + 4]
        if not HIMSELF.isdisjoint(behind[:1]) or not (SOMEBODY.isdisjoint(behind) or AHEAD.isdisjoint(said)):
            return not AHEAD.isdisjoint(said)
    return False


def _is_quiet(cue: Cue, toks: Toks) -> bool:
    first, said = word(toks, cue.start), phrase_of(cue, toks)
    if cue.label == "amount":
        return first == "another" or (first == "lost" and word(toks, cue.end) in {"his", "her", "my", "the"})
    if cue.label == "out":
        return word(toks, cue.start - 1) == "make"
    wrong = cue.value == "corrected" and said in WRONG
    return wrong or cue.label in QUIET or (cue.value == "repeat" and first in {"repeat", "again"})


def _clauses(toks: Toks) -> Iterator[Span]:
    """The stretches of words between stops, cut also behind a line that is whole, and behind its "and"."""

    def is_stop(k: int) -> bool:
        return word(toks, k) in STOPS or (word(toks, k) in {"and", "but"} and is_digits(toks, k - 1))

    def is_cut(k: int) -> bool:
        behind = word(toks, k).isalpha() and word(toks, k) not in GOES_ON_ABOUT and is_digits(toks, k - 1)
        return behind or is_behind_line(toks, k)

    return parted(0, len(toks), is_stop, is_cut)
