"""A clause beside a whole line that only says that it is right: "absolutely sure", "right bed, right tube".

Its words answer, deny, put right or name a tube elsewhere; behind a bed, its level and its time they do none
of that. Every word of such a clause is one of certainty, so that "not sure", "confirmed by phone" and
"correct it" are none. Called by `recast`, typed only.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .again import Span
from .doubtwords import STOPS, is_stop
from .numbers import Toks, is_digits, word
from .pipeline import Cue, in_order

_CERTAIN = """
sure confirmed error correct right certain certainly definitely definately defo def deffo positive verified
checked rechecked mistake doubt question same really
"""
CERTAIN = frozenset(_CERTAIN.split())
"""One of these is what such a clause says."""
_AROUND = """
absolutely totally completely very quite dead 100 % percent hundred double triple re - checkd twice two 2 3
time times x by me myself i i've ive i'm im have with rn rns nurse nurses charge another other us we we've
it it's its that that's thats this is was one the and no a any without errors mistakes doubts concerns
worries issues about yes yep yeah bed patient pt person tube side band wristband armband name id number
reading figure level line value own eyes good just all again check know
"""
AROUND = frozenset(_AROUND.split())
ABSENT = frozenset({"mistake", "mistakes", "doubt", "doubts", "question", "error", "errors", "concerns"})
ABSENT |= {"worries", "issues"}
WITHOUT = frozenset({"no", "without"})
ALONE = frozenset({"confirmed", "definitely", "certain", "positive", "verified", "rechecked"})
"""These say it by themselves."""
SAID_FOR_SURE = frozenset(
    {"defo", "def", "deffo", "definitely", "definately", "absolutely", "certainly", "sure"}
)
WHOSE = frozenset({"bed", "patient", "pt", "person", "number", "name"})
"""Behind "right" these make it no side."""
SIDED = frozenset({"tube", "side", "one", "band", "drain"})
IDIOMS = (
    ("spot", "on"),
    ("bang", "on"),
    ("dead", "on"),
    ("on", "the", "money"),
    ("for", "sure"),
    ("for", "certain"),
    ("hand", "on", "heart"),
    ("trust", "me"),
    ("i", "swear"),
    ("i'd", "swear"),
    ("i", "promise"),
    ("clear", "as", "day"),
    ("at", "eye", "level"),
    ("in", "good", "light"),
    ("not", "a", "typo"),
    ("no", "typo"),
    ("not", "a", "mistake"),
    ("not", "a", "misread"),
    ("not", "a", "guess"),
    ("not", "guessing"),
    ("no", "guesswork"),
    ("not", "an", "error"),
)
"""What else says so."""
PUTTING = frozenset({"correct", "right", "same"})
"""At the start of a clause these put something right, name a tube or tell that nothing came."""
ASKS = frozenset({("is", "it"), ("is", "that"), ("is", "this"), ("was", "it"), ("was", "that")})
COUNTED = frozenset({"two", "twice", "2", "double", "3", "triple"})
WHOLE = 3
"""Numbers of a whole line: its bed, its level and its time."""
OF_CERTAINTY = CERTAIN | AROUND
HINTS = CERTAIN | {"check"} | {max(idiom, key=len) for idiom in IDIOMS}
"""Without one of these nothing says so."""


def with_certainty(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, with each clause that only says that a line is right as words that say nothing."""
    if len(toks.digits) < WHOLE or HINTS.isdisjoint(toks.words):
        return cues
    spans = list(_assured(toks))
    if not spans:
        return cues
    inside = {k for span in spans for k in range(*span)}
    kept = [cue for cue in cues if inside.isdisjoint(range(cue.start, cue.end))]
    return in_order([*kept, *(Cue("filler", "", *span) for span in spans)])


def _assured(toks: Toks) -> Iterator[Span]:
    clauses = list(_clauses(toks))
    figures = [k for k in range(len(toks)) if _is_figure(toks, k)]
    placed = checked = False
    for start, end in clauses:
        said = toks.said[start:end]
        if not _is_certain(said, placed=placed, checked=checked):
            placed = checked = False
            continue
        placed |= any(a == "right" and b in WHOSE for a, b in pairwise(said))
        checked |= not {"checked", "rechecked"}.isdisjoint(said)
        ends = end == len(toks) or word(toks, end) in STOPS - {"?"}  # "the 1815 one was really 1040"
        if ends and sum(not start <= k < end for k in figures) >= WHOLE:
            yield start, end


def _clauses(toks: Toks) -> Iterator[Span]:
    """The stretches of words between stops, figures and a joining word."""
    start = 0
    for k in range(len(toks) + 1):
        stop = k == len(toks) or is_stop(toks, k) or _is_figure(toks, k)
        joint = word(toks, k) == "and" and (k == 0 or _is_figure(toks, k - 1) or k == start)
        if (stop or joint) and k > start:
            yield start, k
        if stop or joint:
            start = k + 1


def _is_figure(toks: Toks, k: int) -> bool:
    """Whether a number stands there that counts no checks: "100 % sure", "checked 2 times"."""
    counted = word(toks, k + 1) in {"%", "percent", "sure", "times", "time", "x", "rns", "nurses", "rn"}
    return is_digits(toks, k) and not (counted and word(toks, k) in {"100", "2", "3"})


def _is_certain(said: tuple[str, ...], *, placed: bool, checked: bool) -> bool:
    """Whether all words are of certainty; `placed` behind "right bed", `checked` behind "rechecked"."""
    rest, idiom = _without_idioms(said)
    if idiom:
        return all(w in OF_CERTAINTY and w != "not" for w in rest) and not {"right", "same"} & set(rest)
    words = set(said)
    counted = "check" in words and not words.isdisjoint(COUNTED)  # "I check two time"
    if not words <= OF_CERTAINTY or said[:2] in ASKS or not (counted or words & CERTAIN):
        return False
    if not all(said[k - 1] in WITHOUT | {"a", "any"} for k in range(len(said)) if said[k] in ABSENT):
        return False
    if "no" in words and words.isdisjoint(ABSENT):
        return False
    if said == ("same",):
        return checked
    if len(said) == 1:
        return not words.isdisjoint(ALONE)
    if "right" in words:
        return _is_no_side(said, placed=placed)
    return said[0] not in PUTTING and not (words <= {"same", "again", "the", "it", "is", "it's", "one"})


def _without_idioms(said: tuple[str, ...]) -> tuple[tuple[str, ...], bool]:
    """The words around "spot on", "not a typo", and whether there are such."""
    for idiom in IDIOMS:
        for k in range(len(said) - len(idiom) + 1):
            if said[k : k + len(idiom)] == idiom:
                return (*said[:k], *said[k + len(idiom) :]), True
    return said, False


def _is_no_side(said: tuple[str, ...], *, placed: bool) -> bool:
    behind = {b for a, b in zip(said, (*said[1:], ""), strict=True) if a == "right"}
    if behind & SIDED - {"one"}:
        return placed or not behind.isdisjoint(WHOSE)
    return not SAID_FOR_SURE.isdisjoint(said) or not behind.isdisjoint(WHOSE)
