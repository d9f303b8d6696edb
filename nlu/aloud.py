"""What somebody who dictates says beside a line and of no drain: "he's grumpy today", "i'll be back later".

Such a clause has a subject of its own and holds nothing doubtful: no number, no word of a line, a bed or a
tube, no doubt, nothing that happens to a drain. It is left out where the message would be asked, and what is
left must be whole. Called by `read`, for dictated messages.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence, Set

from .again import Again, Span, Told
from .numbers import Toks, is_digits, is_inside_number, starts_number, word
from .patterns.aloud import (
    AHEAD,
    CANISTERS,
    DOUBTFUL,
    JOINTS,
    MYSELF,
    OPENING,
    OTHERS,
    PLANS,
    QUIET,
    THINGS,
)
from .patterns.leads import BED_WORDS
from .patterns.numerals import FRACTIONS, HOMOPHONES, NUMERALS
from .pipeline import Cue
from .sentences import BEHIND
from .statements import Answered, Asked, Corrected, Withdrawn

STOPS = frozenset({".", ",", ";", "!", "?", ":", "-"})
SMALL = frozenset({"a", "an", "oh"})
"""Number words that mostly are none."""
FEWEST = 2
"""Words of a clause."""
LEADING = frozenset(
    {"in", "on", "of", "for", "to", "from", "by", "near", "at", "with", "the", "his", "her", "a"}
)
"""Before a bed these go on to it."""
OF_LINE = frozenset({"it", "that", "this", "them", "it's"})
"""What somebody did with one of these may have been done to the line."""
PREFIXES = frozenset({"ct", "c", "bed", "number", "no"})
"""Between the word for a bed and its label."""
GOING = frozenset({"away", "back", "left", "moved"})
COUNTING = (NUMERALS | FRACTIONS.keys()) - SMALL
"""With one of these a clause has a number."""
NO_REPORT = (Answered, Asked, Corrected, Withdrawn)


def without_remarks(again: Again) -> Told:
    """What the message tells without what is said beside it; nothing where that is not whole."""
    spans = list(_remarks(again))
    told = again.without(*spans) if spans else ()
    return () if any(isinstance(s, NO_REPORT) for s in told) else told


def _remarks(again: Again) -> Iterator[Span]:
    toks, last = again.toks, 0
    claimed = {k for c in again.cues if c.label == "claimed" for k in range(c.start, c.end)}
    for k in range(len(toks)):
        if k < last or not _opens(toks, k, claimed):
            continue
        end = _end(toks, k)
        if end - k >= FEWEST and not _is_doubtful(again, k, end, claimed):
            yield k, end
            last = end


def _opens(toks: Toks, k: int, claimed: set[int]) -> bool:
    """Whether a clause with a subject of its own begins there, and no word before it is left open."""
    if word(toks, k) not in OPENING and not word(toks, k).endswith(("'s", "'ll", "'re", "'ve", "'m")):
        return False
    before = k - 1
    while word(toks, before) in JOINTS:
        before -= 1
    said = word(toks, before)
    ended = said in STOPS or is_digits(toks, before) or said in BEHIND or before in claimed
    return before < 0 or ended


def _end(toks: Toks, start: int) -> int:
    """Where the clause ends: at a stop, or before the word for a bed that begins a line."""
    for k in range(start + 1, len(toks)):
        if word(toks, k) in STOPS and not is_inside_number(toks, k):
            return k
        if _is_bed(toks, k) and word(toks, k - 1) not in LEADING and k - start >= FEWEST:
            return k
    return len(toks)


def _is_bed(toks: Toks, k: int) -> bool:
    """ "bed four", "room CT 2"; "the room is dark" names none."""
    return word(toks, k) in BED_WORDS and (
        starts_number(toks, k + 1) or word(toks, k + 1) in HOMOPHONES or word(toks, k + 1) in PREFIXES
    )


def _is_doubtful(again: Again, start: int, end: int, claimed: set[int]) -> bool:
    """Whether something of the clause may be of the line beside it, or of its drain."""
    toks = again.toks
    said = toks.said[start:end]
    words = {w.removesuffix("'s") for w in said}
    numbers = (word(toks, k) for k in range(start, end) if k not in claimed)
    if any(w.isdecimal() or w in COUNTING for w in numbers):
        return True
    if any(len(w) == 1 and w.isalpha() and w not in {"a", "i"} for w in words):
        return True  # "a m", and the letter of a tube
    harmless = {"hour"} if words & PLANS else set()
    if (words & DOUBTFUL) - harmless or any(_is_bed(toks, k) for k in range(start, end)):
        return True
    own = not MYSELF.isdisjoint(said)
    done = not OF_LINE.isdisjoint(said) and PLANS.isdisjoint(said)
    if own and (done or any(w.endswith("n't") for w in said)):
        return True
    return any(not _says_nothing(c, words, said, own=own) for c in again.cues if start <= c.start < end)


def _says_nothing(cue: Cue, words: Set[str], said: Sequence[str], *, own: bool) -> bool:
    """Whether a cue of such a clause is of no drain: the nurse goes, or it is a dressing that was changed."""
    if cue.label in QUIET:
        return True
    if cue.value in GOING:
        return bool(words & AHEAD) or (own and OTHERS.isdisjoint(said))
    if cue.value == "exchanged":
        return bool(words & THINGS) and CANISTERS.isdisjoint(words)
    return cue.label == "neg" and not own
