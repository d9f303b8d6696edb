"""What is said of all rows of a list at once: a heading that claims them, and when all were read.

"goals: 3 440, 5 1260 @0900" tells no line, and "all taken at 2300" is never left out. Called by `read` and
`framed`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from .again import Again
from .clock import clocks
from .listrows import rows_of
from .listtimes import AT, HEADING, OF_ALL, TAKEN
from .numbers import Toks, word
from .roles import CHECK_LIMITS
from .somebody import names_bed
from .statements import Drained, Mark
from .verdict import Outcome, in_doubt

CLAIMING = frozenset(
    {"goal", "goals", "target", "targets", "due", "plan", "plans", "planned", "expected", "expect", "todo"}
    | {"limit", "limits", "max", "yesterday's", "yesterdays", "prev", "previous", "old", "outstanding"}
    | {"pending", "missing", "missed", "estimated", "estimates", "parameters", "params", "aim", "aims"}
)
"""In a heading these say that what follows was not read now."""
CLAIMED = frozenset({("not", "done"), ("to", "do"), ("last", "shift"), ("do", "not"), ("day", "before")})
FEWEST = 2
OTHERS = frozenset({"other", "claimed"})
"""Cues of another device, and of what is measured of a patient."""
OF_IT = frozenset(
    {"output", "outputs", "totals", "total", "amounts", "volumes", "bags", "settings", "not", "for"}
)
SAID_OF_ALL = OF_ALL | TAKEN | AT | {"marked", "measured", "checked", "lines", "levels", "marks", "readings"}
MAY_CLAIM = CLAIMING | {"shift", "not", "do", "day"}


def asked_of_all(again: Again, outcome: Outcome) -> Outcome:
    """The outcome with each line asked where a heading claims the rows of a list; nothing where none does."""
    toks = again.toks
    lines = [s for s in outcome if isinstance(s, Mark | Drained)]
    several = len({line.bed for line in lines}) >= FEWEST
    if not several and toks.words.isdisjoint(MAY_CLAIM):
        return ()
    rows = rows_of(again)
    if len(rows) >= FEWEST and _is_claimed(toks, rows[0].start):
        return tuple(in_doubt(s, again.text) if isinstance(s, Mark | Drained) else s for s in outcome)
    if not several:
        return ()
    first = rows[0].start if len(rows) >= FEWEST else next(_named(toks), 0)
    if not first or not (_is_claimed(toks, first) or _is_of_another(again, first, lines)):
        return ()
    return tuple(in_doubt(s, again.text) if isinstance(s, Mark | Drained) else s for s in outcome)


def _is_claimed(toks: Toks, end: int) -> bool:
    head = toks.said[:end]
    due = any(text in CLAIMING and word(toks, k + 1) != "to" for k, text in enumerate(head))
    return due or not CLAIMED.isdisjoint(pairwise(head))


def _named(toks: Toks) -> Iterator[int]:
    """Where beds are named by that word: "target for seven o'clock, bed one's at 180, ..."."""
    return (k for k in range(len(toks)) if names_bed(toks, k))


def _is_of_another(again: Again, first: int, lines: Sequence[Mark | Drained]) -> bool:
    """Whether nothing is told before the first bed but what the numbers are of, and when: "urine at seven:",
    "wall suctions at seven, bed one's at 90, bed two's at 100"."""
    toks = again.toks
    heads = [c for c in again.meant.cues if c.end <= first and (c.label in OTHERS or c.label in CHECK_LIMITS)]
    if not heads:
        return False
    times = {j for k in range(first) for end, _ in clocks(toks, k) if end <= first for j in range(k, end)}
    named = {k for c in heads for k in range(c.start, c.end)} | times
    if not {word(toks, k) for k in range(first) if k not in named} <= HEADING | OF_IT:
        return False
    most = min((CHECK_LIMITS[c.label] for c in heads if c.label in CHECK_LIMITS), default=None)
    told = [s.level_ml if isinstance(s, Mark) else s.volume_ml for s in lines]
    return most is None or all((ml or 0) <= most for ml in told)


def is_of_all(toks: Toks, start: int, end: int) -> bool:
    """ "all taken at 2300": whether a clause is a time of what was told before it."""
    said = toks.said[start:end]
    words = {text for text in said if text.isalpha()}
    return bool(words & (OF_ALL | TAKEN)) and words <= SAID_OF_ALL and any(map(str.isdecimal, said))
