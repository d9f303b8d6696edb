"""What a dial or gauge reads: "dial reads 20, wall gauge says 85", "wall's only 60" is of these, and no line.

Called by `recast`, once the cues have their meaning.
"""

from __future__ import annotations

from collections.abc import Iterator

from .items import FULL_HOUR
from .neighbours import number_follows
from .numbers import Toks, glued, starts_number, word
from .pipeline import Cue, in_order, with_found
from .roles import CHECK_LIMITS
from .shortened import DIALLED

SHOWS = frozenset({"reads", "read", "reading", "shows", "showing", "says", "measures", "measuring"})
HARDLY = frozenset({"only", "just", "still"})
BETWEEN = SHOWS | HARDLY
SWITCHED = frozenset({"suction_on"})
AT = frozenset({"at", "on"})
MEASURES = frozenset({"seal", "suction", "wall"})
MINUS = frozenset({"-", "minus", "negative"})
BEFORE = frozenset({"on", "to", "with", "off", "at"})
"""Behind these it is where the drain is connected: "canister on wall suction reads 340"."""


def read_off(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, that of a check as one with the words behind it that say what it shows."""
    if not (MINUS.isdisjoint(toks.words) or BETWEEN.isdisjoint(toks.words)) and _is_of_suction(cues):
        cues = with_found(cues, list(_negative(cues, toks)))
    cues = _with_minus(cues, toks) if "-" in toks.words else cues
    if BETWEEN.isdisjoint(toks.words):
        return cues
    longer = {cue: end for cue in cues if cue.label in MEASURES and (end := _end(cue, toks)) > cue.end}
    if not longer:
        return cues
    inside = {k for cue, end in longer.items() for k in range(cue.end, end)}
    return tuple(cue._replace(end=longer.get(cue, cue.end)) for cue in cues if cue.start not in inside)


def _with_minus(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, with the minus before what a suction is set to as one of it: "back on suction 0640 -20"."""
    if not any(cue.label == "suction" or cue.value in SWITCHED for cue in cues):
        return cues
    told = {cue.end for cue in cues if cue.label in MEASURES}
    found = [k for k in range(1, len(toks) - 1) if _is_minus(k, toks) and k not in told]
    starts = {k - (word(toks, k - 1) in AT): k + 1 for k in found}
    kept = [cue for cue in cues if cue.start not in starts]
    return in_order([*kept, *(Cue("suction", "", start, end) for start, end in starts.items())])


def _is_minus(k: int, toks: Toks) -> bool:
    """Whether a minus stands there right before a round number of cmH2O, and is no dash: not "bed 4 -20"."""
    if word(toks, k - 1).isdecimal() and len(word(toks, k - 1)) < FULL_HOUR:
        return False
    apart = word(toks, k) == "-" and not glued(toks, k) and glued(toks, k + 1)
    return apart and word(toks, k + 1) in DIALLED and not glued(toks, k + 2)


def _is_of_suction(cues: tuple[Cue, ...]) -> bool:
    return any(c.label in MEASURES or c.value in SWITCHED for c in cues)


def _negative(cues: tuple[Cue, ...], toks: Toks) -> Iterator[Cue]:
    """ "suction back on, reading minus twenty", "still -20 on bed 29, wall 95": what the dial shows."""
    set_to = {k for c in cues if c.label in MEASURES for k in range(c.start, c.end + 1)}
    for k in range(1, len(toks)):
        start = k
        while word(toks, start - 1) in BETWEEN | AT | {"now"}:
            start -= 1
        shown = start < k and not BETWEEN.isdisjoint(toks.said[start:k]) and start not in set_to
        if word(toks, k) in MINUS and shown and starts_number(toks, k + 1):
            yield Cue("suction", "", start, k)


def _end(cue: Cue, toks: Toks) -> int:
    """Where the words end behind a check that its number follows; where it ends where none do."""
    end = cue.end
    while word(toks, end) in BETWEEN:
        end += 1
    end += end > cue.end and word(toks, end) in AT
    number = word(toks, end)
    may = not number.isdecimal() or int(number[:4]) <= CHECK_LIMITS[cue.label]
    may = may and number_follows(toks, end) and BEFORE.isdisjoint(toks.said[cue.start - 1 : cue.start + 1])
    return end if may else cue.end
