"""What a dial or gauge reads: "dial reads 20, wall gauge says 85", "wall's only 60" is of these, and no line.

Called by `recast`, once the cues have their meaning.
"""

from __future__ import annotations

from .neighbours import number_follows
from .numbers import Toks, word
from .pipeline import Cue
from .roles import CHECK_LIMITS

SHOWS = frozenset({"reads", "read", "reading", "shows", "showing", "says", "measures", "measuring"})
HARDLY = frozenset({"only", "just", "still"})
BETWEEN = SHOWS | HARDLY
AT = frozenset({"at", "on"})
MEASURES = frozenset({"seal", "suction", "wall"})
BEFORE = frozenset({"on", "to", "with", "off", "at"})
"""Behind these it is where the drain is connected: "canister on wall suction reads 340"."""


def read_off(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, that of a check as one with the words behind it that say what it shows."""
    if BETWEEN.isdisjoint(toks.words):
        return cues
    longer = {cue: end for cue in cues if cue.label in MEASURES and (end := _end(cue, toks)) > cue.end}
    if not longer:
        return cues
    inside = {k for cue, end in longer.items() for k in range(cue.end, end)}
    return tuple(cue._replace(end=longer.get(cue, cue.end)) for cue in cues if cue.start not in inside)


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
