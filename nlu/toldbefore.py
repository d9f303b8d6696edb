"""Lines that were told before and are only spoken of: "the 1750 i put on the right", "the one at 0215".

Such a number is no new line, and where a line went nobody moved. Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator

from .entered import ENTERED
from .goings import past
from .items import AMOUNTS
from .numbers import Toks, word
from .patterns.leads import LINES
from .rules import Pieces, Rule

POINTING = frozenset({"the", "that", "my", "your"})
WHO = frozenset({"i", "we", "you", "he", "she", "they"})
GAVE = ENTERED | {"gave", "told", "reported"}
READ = frozenset({"read", "took", "checked", "drew", "marked", "did", "saw", "measured", "looked", "got"})
NOUNS = LINES | {"one", "entry", "number", "value", "figure", "message"}


def _put_before(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "the 1750 i put on the right is the left one's": told before, and no line of now."""
    for item in items:
        pointed = item.role in AMOUNTS and word(toks, item.start - 1) in POINTING
        if pointed and word(toks, item.end) in WHO and word(toks, item.end + 1) in GAVE:
            yield "a line that was told before"


def _read_at(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "i read it at 1800": when, or the line?"""
    lines = [i for i in items if i.role in AMOUNTS]
    for item in lines:
        it = toks.said[max(0, item.start - 2) : item.start] in {("it", "at"), ("it", "@")}
        timely = item.full_clock and not item.unit
        if it and timely and len(lines) == 1 and word(toks, item.start - 3) in READ:
            yield "when it was read, or the line"


def _line_went(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "the one at 0215 went to bed 19": a line did, and nobody."""
    for item in items:
        if item.role != "cue" or item.name != "moved":
            continue
        k = next((k for k in range(item.start - 1, -1, -1) if word(toks, k) in {",", ".", ";"}), -1) + 1
        said = toks.said[k : item.start]
        named = not NOUNS.isdisjoint(said) and not POINTING.isdisjoint(said)
        if named and not any(i.role == "bed" and k <= i.start < item.start for i in items):
            yield "a line went there, and nobody"


def _judged(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "mark is 20, the 1817 is rubbish", "so 1555 was off": a number that is said to be wrong."""
    if any(i.name in {"withdrawn", "corrected"} for i in items):
        return
    for item in items:
        k = past(toks, item.end, BEING)
        if item.role in {"time", *AMOUNTS} and k > item.end and word(toks, k) in WRONG:
            yield "a number that is said to be wrong"


def _time_wrong(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "timestamp off. 1255 pls": the right time, or a line?"""
    for k in range(len(toks) - 1):
        end = past(toks, k + 1, BEING)
        told = word(toks, k) in TIMES and word(toks, end) in WRONG
        if told and any(i.role in AMOUNTS and i.full_clock and not i.unit for i in items):
            yield "the right time, or the line"


BEING = frozenset(
    {"is", "was", "were", "are", "just", "all", "totally", "completely", "a", "an", "way", "so"}
)
WRONG = frozenset(
    [
        "wrong",
        "off",
        "rubbish",
        "nonsense",
        "garbage",
        "crap",
        "bogus",
        "incorrect",
        "typo",
        "mistake",
        "error",
    ]
)
TIMES = frozenset({"time", "times", "timestamp", "timestamps", "clock"})
TOLD_BEFORE = (
    Rule(_put_before, AMOUNTS, WHO),
    Rule(_read_at, AMOUNTS, frozenset({"it"})),
    Rule(_judged, AMOUNTS | {"time"}, WRONG),
    Rule(_time_wrong, AMOUNTS, TIMES),
    Rule(_line_went, frozenset({"kind"}), NOUNS),
)
