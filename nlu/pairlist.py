"""Catch-up lists behind words that only introduce them: "scrap of paper says bed 6: 0200 760, 0300 785".

Two pairs of time and line or more, up to the end of the message, of one bed: the words before the first,
beside its bed and tube, are left out where each of them only introduces a list. Called by `read`, for
typed messages that would be asked; as many lines must come as there are pairs.
"""

from __future__ import annotations

from collections.abc import Iterator

from .again import Again, Span, Told
from .items import FULL_HOUR
from .listed import VOLUMES
from .numbers import Toks, is_digits, word
from .patterns.leads import BED_WORDS
from .patterns.levels import MILLILITRES
from .statements import Mark

FEWEST = 2
STOPS = frozenset({",", ";", ".", "/", "and", "then", "&", "|"})
KEYS = frozenset({":", "-", "=", "at", "@", "was", "is"})
KEPT = frozenset({"side", "tubeword", "bed", "closing"})
_INTRODUCING = """
notes note paper scrap sheet pad list log book diary catchup catch catching up backfill backfilling
backlog late entries entry from my our the off of on says say reads read system was were is are down
offline wifi phone computer sorry hi hello hey all lines line marks mark levels level readings reading
here these times for with please pls so far got written wrote copied copying missed missing overnight
tonight today this morning shift during outage , . : - ok okay room rm bed
"""
_EXCUSING = """
slammed swamped busy hectic manic crazy mental run been feet short staffed delay delayed tied caught stuck
up an a admission admissions arrest code emergency i'm i've ive we've weve we're helping forgot
forgotten send text enter chart bc because cos cuz as since to in ! ; apologies crash rapid response very
so really just absolutely completely
"""
"""Why a list comes late."""
NETWORKS = frozenset({"signal", "reception", "wifi", "network", "service", "internet", "battery"})
INTRODUCING = frozenset(_INTRODUCING.split()) | frozenset(_EXCUSING.split())
"""Words that only introduce a list; any other may say of what the numbers are."""


def by_pairs(again: Again) -> Told:
    """The lines of such a list, nothing where the message is none."""
    toks = again.toks
    first = next((k for k in range(1, len(toks)) if is_digits(toks, k) and _pairs(toks, k) >= FEWEST), 0)
    if not first or not VOLUMES.isdisjoint(toks.words):
        return ()
    heading = tuple(_heading(again, first))
    said = [word(toks, k) for start, end in heading for k in range(start, end) if not _is_offline(toks, k)]
    if not INTRODUCING.issuperset(said):
        return ()
    told = again.without(*heading)
    lines = [s for s in told if isinstance(s, Mark) and s.at is not None]
    whole = len(lines) == len(told) == _pairs(toks, first) and len({s.bed for s in lines}) == 1
    return told if whole else ()


def _heading(again: Again, first: int) -> Iterator[Span]:
    """The words before the first pair that are neither of the bed nor of its tube."""
    toks = again.toks
    kept = {k for cue in again.meant.cues if cue.label in KEPT for k in range(cue.start, cue.end)}
    kept |= {k for k in range(first) if is_digits(toks, k) or word(toks, k) in BED_WORDS}
    kept |= {k for start, (end, _) in again.meant.labelled.items() for k in range(start, end)}
    start = 0
    for k in range(first + 1):
        if k in kept or k == first:
            if start < k:
                yield start, k
            start = k + 1


def _is_offline(toks: Toks, k: int) -> bool:
    """ "sorry no signal": why a list comes late."""
    signal = k + (word(toks, k) == "no")
    return word(toks, signal) in NETWORKS and word(toks, signal - 1) == "no"


def _pairs(toks: Toks, k: int) -> int:
    """How many pairs of time and line follow each other from there to the end, or 0."""
    count = 0
    while k < len(toks):
        end = _pair(toks, k)
        if not end:
            return 0
        count, k = count + 1, end
        while word(toks, k) in STOPS and k < len(toks):
            k += 1
    return count


def _pair(toks: Toks, k: int) -> int:
    """Where a time and its line end, in either order, or 0."""
    timed = _time(toks, k)
    if timed:
        line = _line(toks, timed + (word(toks, timed) in KEYS))
        if line:
            return line
    line = _line(toks, k)
    led = bool(line) and word(toks, line) in {"at", "@"}
    return _time(toks, line + 1) if led else 0


def _time(toks: Toks, k: int) -> int:
    if is_digits(toks, k) and word(toks, k + 1) == ":" and is_digits(toks, k + 2):
        return k + 3
    return k + 1 if is_digits(toks, k) and len(word(toks, k)) == FULL_HOUR else 0


def _line(toks: Toks, k: int) -> int:
    if not is_digits(toks, k) or word(toks, k + 1) == ":":
        return 0
    return k + 1 + (word(toks, k + 1) in MILLILITRES)
