"""An event that is only spoken of beside what is told: asked about, waited for, bidden or supposed.

"bed 8 640 at 1900, was bed 8 tube clamped?", "..., waiting to clamp it", "..., someone clamp bed 8 please",
"..., when we clamp it I'll text". What happened is told without such words. Used by `misgivings`, which asks.
"""

from __future__ import annotations

from collections.abc import Sequence

from .doubtwords import between_stops
from .numbers import Toks, word
from .pipeline import Cue
from .statements import Incident, Statement

_ASKING = """
was were is are has have had did do does should shall can could would will who why when how may might
"""
ASKING = frozenset(_ASKING.split())
_BEFORE_TO = """
waiting forgot forgotten want wants wanting need needs have has going about trying hoping plan plans planning
ready due supposed meant scheduled booked refused refusing declined declining unable likely remember like
allowed wait awaiting listed planned failed
"""
BEFORE_TO = frozenset(_BEFORE_TO.split())
BIDDEN = frozenset({"someone", "somebody", "anyone", "anybody", "please", "pls", "plz", "kindly"})
PLEASE = frozenset({"please", "pls", "plz"})
SUPPOSING = frozenset({"when", "once", "if", "unless", "until", "till", "before", "whenever"})
_TO_COME = "i'll ill will we'll he'll she'll call text let tell shout"
TO_COME = frozenset(_TO_COME.split())
NEXT = 3
"""A stop, and words behind it, that still say what a supposition is for."""
LIGHT = frozenset({"and", "but", "so", "also", "then", "ok", "okay", "hi", "hey", "just", "btw", "fyi", "oh"})


def is_only_spoken_of(said: Statement, cues: Sequence[Cue], toks: Toks) -> bool:
    """Whether each word of what happened stands where it is asked, bidden, supposed or still to come."""
    value = said.what if isinstance(said, Incident) else said.kind
    places = [c for c in cues if c.label in {"kind", "what"} and c.value == value]
    spoken_of = {between_stops(toks, c.start, c.end) for c in places if _is_spoken_of(c, toks)}
    return bool(places) and all(between_stops(toks, c.start, c.end) in spoken_of for c in places)


def _is_spoken_of(cue: Cue, toks: Toks) -> bool:
    start, end = between_stops(toks, cue.start, cue.end)
    while word(toks, start) in LIGHT:
        start += 1
    first = word(toks, start)
    if word(toks, end) == "?" and first in ASKING:
        return True
    to = cue.start - 1 - (word(toks, cue.start - 1) == "be")
    if word(toks, to) == "to" and (to < cue.start - 1 or word(toks, to - 1) in BEFORE_TO):
        return True  # "to be clamped", "waiting to clamp"
    verb = toks[cue.start]
    told = verb.text.endswith("ed") and verb.end - verb.start == len(verb.text)  # "clamp" is put as told
    said = toks.said[start:end]
    if first in BIDDEN and not told and not PLEASE.isdisjoint(said):
        return True
    behind = toks.said[start : end + NEXT]  # "when we clamp it, I'll text"
    return first in SUPPOSING and not told and not TO_COME.isdisjoint(behind)
