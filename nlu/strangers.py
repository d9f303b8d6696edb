"""Clauses beside a whole line whose numbers are of what nobody here knows: "hcg 12", "3 zorbs at 1930".

No list holds every drug, device and visitor. Typed, beside lines and events that are whole without it, a
clause need not be understood to be left out: a word in it names something, none is a word of a reading, of
doubt or of a correction, no cue in it is of a drain, and its numbers could be no other value of what is told.
Called by `read`, last of all.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence, Set
from itertools import pairwise

from spacy.lang.en.stop_words import STOP_WORDS

from . import framed
from .again import Again, Span, Told
from .entered import ENTERED
from .framed import Frame
from .items import FULL_HOUR
from .neighbours import is_stop_among
from .numbers import Toks, glued, is_digits, word
from .otherfigures import OURS
from .othernames import names_in
from .patterns.clockwords import HOUR_WORDS, MINUTE_WORDS
from .patterns.leads import BED_WORDS
from .patterns.numerals import NUMERALS
from .patterns.ofreading import READ, TROUBLE
from .patterns.otherfigures import BODY, HALVES, REFUSED
from .patterns.ownclauses import DENIALS, OBJECTS, OF_THE_LINE, OF_WHAT_WAS_TOLD
from .pipeline import Cue
from .readthen import is_whole_clock
from .somebody import is_behind_line
from .statements import Checked, Described, Drained, Exchanged, Mark, Placed, Removed, Statement

STOPS = frozenset({".", ",", ";", "!", "?", "(", ")", "\n", "→"})
JOINTS = frozenset({"and", "&", "also", "/", "+"})
"""Between these, what is told and what is not may stand side by side."""
NAMING = frozenset({"the", "my", "your", "her", "that", "this"})
VESSELS = frozenset({"canister", "tubeword"})
CHEST = frozenset({"chest", "pleural", "thoracic", "intercostal", "thoracostomy", "pen", "marker"})
"""Of these a drain or a line is ours."""
AT = frozenset({"at", "@"})
NEAR = 4
"""Words from a bed to its line."""
SHORTEST = 2
"""Letters of a word that may name something."""
FAR = 3
"""So many times larger or smaller a number must be, to be no other value of a line."""
SIDES = frozenset({"left", "right", "l", "r", "lt", "rt"})
ANY = frozenset({"question", "ask", "amount", "weight"})
"""Labels of cues that say nothing of a drain by themselves, where no question is asked."""
UNTOLD = frozenset({"word", "other", "claimed"})
TUBES = frozenset({"side", "place", "join", "plan", "neg", "no", "yes"})
HELD = frozenset(
    {"bottle", "bottles", "box", "boxes", "number", "level", "levels", "drain", "drains", "fluid"}
)
BARRED = REFUSED | READ | DENIALS | OBJECTS | OF_THE_LINE | OF_WHAT_WAS_TOLD | ENTERED
BARRED |= frozenset({"=", "wait", "hold", "correcting", "should", "would", "could"})
BARRED -= frozenset(
    {"rate", "hourly", "per", "second", "test", "plan", "planned", "report", "double", "less"}
)
PLAIN = STOP_WORDS | BARRED | HOUR_WORDS | MINUTE_WORDS | HALVES | NUMERALS | TROUBLE
"""Words that name nothing."""


def is_strange(said: str) -> bool:
    """Whether a word may name something that is not known here."""
    return said.isalpha() and len(said) >= SHORTEST and said not in PLAIN


def beside_strangers(again: Again) -> Told:
    """What is told beside such clauses; nothing where it is not whole, or one of them may be of it."""
    spans = list(_clauses(again))
    if not spans:
        return ()
    strange = [Frame(*span, aside=True, of_somebody=True) for span in spans]
    taken = {k for span in spans for k in range(*span)}
    others = [f for f in framed.frames(again) if taken.isdisjoint(range(f.start, f.end))]
    ways = dict.fromkeys((tuple(strange), (*others, *strange)))
    told = next(filter(None, (framed.told_without(again, way) for way in ways)), ())
    if sum(isinstance(s, Mark) for s in told) > 1:
        return ()  # of a list a line may be lost
    alone = told and not any(_may_be_value(said, again.toks, span) for said in told for span in spans)
    return told if alone else ()


def _clauses(again: Again) -> Iterator[Span]:
    """Those of which every number is of something that is not known: whole ones, or what is joined to one."""
    toks = again.toks
    for span in _between(toks, (0, len(toks)), joined=False):
        if _is_of_another(again, *span):
            yield span
            continue
        yield from (part for part in _between(toks, span, joined=True) if _is_of_another(again, *part))


def _between(toks: Toks, span: Span, *, joined: bool) -> Iterator[Span]:
    """The stretches between stops, or within a clause between its joints and behind a line that is whole."""
    start, last = span
    for k in range(start, last + 1):
        stop = k == last or (_is_joint(toks, k) if joined else _is_stop(toks, k))
        cut = not stop and joined and is_behind_line(toks, k)
        if (stop or cut) and k > start:
            yield start, k
        if stop or cut:
            start = k + stop


def _is_stop(toks: Toks, k: int) -> bool:
    dash = word(toks, k) == "-" and not glued(toks, k + 1)
    return dash or is_stop_among(STOPS, toks, k)


def _is_joint(toks: Toks, k: int) -> bool:
    return word(toks, k) in JOINTS and (word(toks, k).isalpha() or not glued(toks, k + 1))


def _is_of_another(again: Again, start: int, end: int) -> bool:
    toks = again.toks
    if not any(is_digits(toks, k) for k in range(start, end)) or word(toks, end) == "?":
        return False
    inside = [cue for cue in again.cues if start <= cue.start < end]
    others = {k for cue in inside if cue.label == "other" for k in range(cue.start, cue.end)}
    others |= names_in(toks) & frozenset(range(start, end))
    if any(k in again.meant.labelled or _is_barred(toks, k, others) for k in range(start, end)):
        return False
    if _may_be_line(again, start, end):
        return False
    cued = {k for cue in inside if cue.label not in UNTOLD for k in range(cue.start, cue.end)}
    named = any(k not in cued and is_strange(word(toks, k)) for k in range(start, end))
    return (named or bool(others)) and not any(_is_ours(cue, toks, start, others) for cue in inside)


def _may_be_line(again: Again, start: int, end: int) -> bool:
    """ "florp 7 210", "0900 florp 340": whether its last number may be a line of a bed or a time there."""
    toks, beds = again.toks, again.ward.index or ()
    numbers = [k for k in range(start, end) if is_digits(toks, k)]
    for k, last in pairwise(numbers):
        bed = word(toks, k) in beds and k - start < NEAR - 1
        level = (
            len(word(toks, last)) > 1 and last - k <= NEAR and (last == end - 1 or word(toks, last + 1) in AT)
        )
        if level and (bed or is_whole_clock(toks, k)):
            return True
    return False


def _is_barred(toks: Toks, k: int, others: Set[int]) -> bool:
    """Whether a word there is of a reading, names a bed, the side of a tube, or "the 1900": a line by its
    number."""
    said = word(toks, k)
    if is_digits(toks, k):
        counted = word(toks, k + 1) in HOUR_WORDS or is_strange(word(toks, k + 1))
        return word(toks, k - 1) in NAMING and not counted
    if said in BARRED:
        return not (said in HELD and k - 1 in others)  # "urine bottle 300"
    if said in BED_WORDS:
        return is_digits(toks, k + 1) or (not word(toks, k + 1).isalpha() and is_digits(toks, k + 2))
    return said in SIDES and word(toks, k + 1) not in BODY and not (glued(toks, k) or is_digits(toks, k - 1))


def _is_ours(cue: Cue, toks: Toks, start: int, others: Set[int]) -> bool:
    """Whether a cue may be of a drain: not "vanc level 14", "spare boxes", "a stump drain"."""
    k = cue.start - 1
    theirs = k in others or (cue.label in VESSELS and k >= start and is_strange(word(toks, k)))
    if cue.label in VESSELS | {"level"} and theirs and word(toks, k) not in CHEST:
        return False
    if cue.label == "ml":
        return not others
    return cue.label in TUBES or cue.label in OURS - ANY


def _may_be_value(said: Statement, toks: Toks, span: Span) -> bool:
    """ "340 at 1900. gah 360": whether a number of a short clause may be another value of what was told."""
    numbers = [word(toks, k) for k in range(*span) if is_digits(toks, k)]
    words = [word(toks, k) for k in range(*span) if word(toks, k).isalpha()]
    if len(words) > len(numbers) or len(numbers) > 1:
        return False
    amounts = _amounts(said)
    near = any(a is None or (a <= FAR * int(n) and int(n) <= FAR * a) for n in numbers for a in amounts)
    return near or any(len(n) == FULL_HOUR for n in numbers)


def _amounts(said: Statement) -> Sequence[int | None]:
    """The levels and volumes that it may have; None for one that was not told."""
    if isinstance(said, Mark | Placed | Removed):
        return (said.level_ml,)
    if isinstance(said, Exchanged):
        return (said.final_ml, said.opening_ml)
    if isinstance(said, Drained):
        return (said.volume_ml,)
    return () if isinstance(said, Checked | Described) else (None,)
