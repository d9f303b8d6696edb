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
    BEFORE_LINE,
    BROKEN,
    CANISTERS,
    COUNTED,
    DOUBTFUL,
    JOINTS,
    MYSELF,
    OPENING,
    OTHERS,
    PLANS,
    QUIET,
    THINGS,
)
from .patterns.asides import RELATIVES, STAFF
from .patterns.leads import BED_WORDS
from .patterns.numerals import FRACTIONS, HOMOPHONES, NUMERALS
from .patterns.smalltalk import NAMES
from .pipeline import Cue
from .sentences import BEHIND
from .statements import Answered, Asked, Corrected, Mark, Withdrawn
from .verdict import Outcome

STOPS = frozenset({".", ",", ";", "!", "?", ":", "-"})
SMALL = frozenset({"a", "an", "oh"})
"""Number words that mostly are none."""
MOST_CUT_SHORT = 4
"""Words of a denial that the word for a bed may cut in two."""
FEWEST = 2
"""Words of a clause."""
OF_LINE = frozenset({"it", "that", "this", "them", "it's"})
"""What somebody did with one of these may have been done to the line."""
PREFIXES = frozenset({"ct", "c", "bed", "number", "no"})
"""Between the word for a bed and its label."""
PEOPLE = NAMES | RELATIVES | STAFF - {"they", "he", "she", "ct"}
"""Whoever of these goes is in no bed."""
NOT = frozenset({"not", "no", "never", "nobody"})
AT_FIRST = frozenset({"repair"})
"""Where nothing was said before, "hang on" mends nothing."""
GOING = frozenset({"away", "back", "left", "moved"})
COUNTING = (NUMERALS | FRACTIONS.keys()) - SMALL
"""With one of these a clause has a number."""
NO_REPORT = (Answered, Asked, Corrected, Withdrawn)


def without_remarks(again: Again) -> Told:
    """What the message tells without what is said beside it; nothing where that is not whole."""
    spans = list(_remarks(again))
    told = again.without(*spans) if spans else ()
    return () if any(isinstance(s, NO_REPORT) for s in told) else told


def without_now(again: Again, outcome: Outcome) -> Told:
    """The same without "i'm doing the rest now", "Hannah's taking over at nine": no time of a line."""
    toks = again.toks
    said = [s.spans.get("at") for s in outcome if isinstance(s, Mark)]
    timed = {
        k
        for span in said
        if span is not None
        for k, t in enumerate(toks)
        if span.start <= t.start and t.end <= span.end
    }
    now = {k for k in timed if word(toks, k) == "now"}
    spans = [
        (start, end)
        for start, end in (_remarks(again, timed) if timed else ())
        if now & set(range(start, end))
        or (start and timed & set(range(start, end)) and word(toks, start).removesuffix("'s") in NAMES)
    ]
    told = again.without(*spans) if spans else ()
    return () if any(isinstance(s, NO_REPORT) for s in told) else told


def _remarks(again: Again, timed: Set[int] = frozenset()) -> Iterator[Span]:
    """Each such clause; the numbers of `timed` places are no doubt of it."""
    toks, last = again.toks, 0
    claimed = {k for c in again.cues if c.label == "claimed" for k in range(c.start, c.end)} | timed
    for k in range(len(toks)):
        if k < last or not _opens(toks, k, claimed):
            continue
        end = _end(toks, k)
        if end - k >= FEWEST and not _is_doubtful(again, k, end, claimed):
            yield k, end
            last = end


def _opens(toks: Toks, k: int, claimed: set[int]) -> bool:
    """Whether a clause with a subject of its own begins there, and no word before it is left open."""
    if k == 0:
        return True
    if word(toks, k) not in OPENING and not word(toks, k).endswith(("'s", "'ll", "'re", "'ve", "'m")):
        return False
    before = k - 1
    while word(toks, before) in JOINTS:
        before -= 1
    said = word(toks, before)
    ended = said in STOPS or is_digits(toks, before) or said in BEHIND or before in claimed
    ended |= said == "m" and word(toks, before - 1) in {"a", "p"}
    return before < 0 or ended


def _end(toks: Toks, start: int) -> int:
    """Where the clause ends: at a stop, or before what a line begins with: "she's asleep | on bed 12"."""
    for k in range(start + 1, len(toks)):
        if word(toks, k) in STOPS and not is_inside_number(toks, k):
            return k
        if _is_bed(toks, k):
            while k > start and word(toks, k - 1) in BEFORE_LINE:
                k -= 1
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
    if any(_is_number(toks, k) for k in range(start, end) if k not in claimed):
        return True
    if any(len(w) == 1 and w.isalpha() and w not in {"a", "i"} for w in words):
        return True  # "a m", and the letter of a tube
    if start == 0 and words & {"midnight", "midday"}:
        return True  # "at midnight | bed 14 was reading 18 hundred"
    harmless = {"hour"} if words & PLANS else set()
    if (words & DOUBTFUL) - harmless or any(_is_bed(toks, k) for k in range(start, end)):
        return True
    denied = any(w in NOT or w.endswith("n't") for w in said)
    if denied and end < len(toks) and word(toks, end) not in STOPS and len(said) < MOST_CUT_SHORT:
        return True  # "she's not | in bed 4"
    own = not MYSELF.isdisjoint(said)
    done = not OF_LINE.isdisjoint(said) and PLANS.isdisjoint(said)
    if own and (done or (denied and start)):
        return True
    return any(
        not _says_nothing(c, words, said, own=own, first=not start)
        for c in again.cues
        if start <= c.start < end
    )


def _is_number(toks: Toks, k: int) -> bool:
    """Whether a number stands there that may be ours; "ninety three years" and "day two" are none."""
    if not (is_digits(toks, k) or word(toks, k) in COUNTING):
        return False
    end = k
    while starts_number(toks, end) or word(toks, end) in COUNTING:
        end += 1
    return word(toks, end) not in COUNTED and word(toks, k - 1) != "day"


def _says_nothing(cue: Cue, words: Set[str], said: Sequence[str], *, own: bool, first: bool) -> bool:
    """Whether a cue of such a clause is of no drain: the nurse goes, or it is a dressing that was changed."""
    if cue.label in QUIET or (cue.label in AT_FIRST and first):
        return True
    if cue.value in GOING:
        mine = own or said[0].removesuffix("'s") in PEOPLE
        return bool(words & AHEAD) or (mine and OTHERS.isdisjoint(said[1:]))
    if cue.value == "damaged":
        return bool(words & BROKEN) and CANISTERS.isdisjoint(words)
    if cue.value == "exchanged":
        return bool(words & THINGS) and CANISTERS.isdisjoint(words)
    return cue.label == "neg" and not own
