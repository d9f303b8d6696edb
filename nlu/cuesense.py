"""What a cue says by the words around it: nothing of its own, a place, a question."""

from __future__ import annotations

from collections.abc import Container, Mapping

from .items import FULL_HOUR
from .neighbours import number_follows
from .numbers import Toks, is_digits, starts_number, word
from .patterns.leads import LINES, PUTS
from .patterns.together import ASKING
from .pipeline import Cue
from .ways import Way

LATELY = frozenset({"last", "past", "previous"})
HALTS = frozenset({"um", "uh", "er", "erm", "uhm"})


def says_nothing(cue: Cue, way: Way, toks: Toks, *, voice: bool) -> bool:
    """A cue that leaves the number behind it to the cue before."""
    match cue.label:
        case "negative" | "side":  # a left that is no tube's: "box left on the bed"
            return True
        case "level":
            return _is_of_number(cue, way, toks)
        case "okay":
            return voice and bool(way.lead)
        case "since":
            return word(toks, cue.start) == "between" and bool(way.lead)
        case "amount" | "output":
            return way.lead in {"old", "new", "opens"}
        case "timeword":
            return cue.end - cue.start == 1 and word(toks, cue.end) == "ml"
    return False


def _is_of_number(cue: Cue, way: Way, toks: Toks) -> bool:
    """ "it's at the 90 line at 1752": the line that the number before it says."""
    last = way.items[-1] if way.items else None
    if last is None or last.role != "num" or last.lead != "levelat" or last.end != cue.start:
        return False
    timed = word(toks, cue.end) in {"at", "@"} or not number_follows(toks, cue.end)
    return timed and word(toks, last.start - 1) == "the" and word(toks, cue.start) in LINES | {"marked"}


def is_place_at(cue: Cue, toks: Toks) -> bool:
    """ "at the connector": where, and no level."""
    the = cue.label == "levelat" and word(toks, cue.end - 1) == "the"
    return the and not number_follows(toks, cue.end)


def is_last_line(cue: Cue, toks: Toks) -> bool:
    """ "last reading 1740": no question; "what was the line at 2000 on bed 5" is one."""
    named = cue.value == "last" and word(toks, cue.end - 1) in LINES and word(toks, cue.start) not in ASKING
    return named and number_follows(toks, cue.end)


def is_place(cue: Cue, toks: Toks, cues: Mapping[int, Cue], labelled: Container[int]) -> bool:
    """ "the drain in 9", "drain in the last shift": where or when it is, not that it went in."""
    if word(toks, cue.start) in PUTS or word(toks, cue.end - 2) in PUTS | {"went"}:
        return False  # "popped a drain in 9", "chest tube put in bed 14"
    k = cue.end
    while word(toks, k) in HALTS:
        k += 1
    nxt = cues.get(k)
    is_bed = k in labelled or (nxt is not None and nxt.label == "bed")
    late = word(toks, k + (word(toks, k) == "the")) in LATELY
    return word(toks, cue.end - 1) == "in" and (starts_number(toks, k) or is_bed or late)


def is_time_of_all(cue: Cue, toks: Toks) -> bool:
    """ "3 340, 7 505 all 1900": the last number, behind a word for all of them."""
    last = word(toks, cue.end) if is_digits(toks, cue.end) else ""
    every = cue.end - cue.start == 1 and word(toks, cue.start) in {"all", "both", "each"}
    return every and len(last) == FULL_HOUR and not any(t.is_digits for t in toks[cue.end + 1 :])


def asks(cue: Cue, toks: Toks) -> bool:
    """Whether it asks: a length of time beside it is a window."""
    return cue.label in {"ask", "question"} or (cue.label == "output" and word(toks, cue.start) == "total")
