"""What is said of all rows of a list at once: a heading that claims them, and when all were read.

"goals: 3 440, 5 1260 @0900" tells no line, and "all taken at 2300" is never left out. Called by `read` and
`framed`.
"""

from __future__ import annotations

from itertools import pairwise

from .again import Again
from .listrows import rows_of
from .listtimes import AT, OF_ALL, TAKEN
from .numbers import Toks, word
from .statements import Drained, Mark, Unclear
from .verdict import Outcome

CLAIMING = frozenset(
    {"goal", "goals", "target", "targets", "due", "plan", "plans", "planned", "expected", "expect", "todo"}
    | {"limit", "limits", "max", "yesterday's", "yesterdays", "prev", "previous", "old", "outstanding"}
    | {"pending", "missing", "missed", "estimated", "estimates", "parameters", "params", "aim", "aims"}
)
"""In a heading these say that what follows was not read now."""
CLAIMED = frozenset({("not", "done"), ("to", "do"), ("last", "shift"), ("do", "not"), ("day", "before")})
FEWEST = 2
SAID_OF_ALL = OF_ALL | TAKEN | AT | {"marked", "measured", "checked", "lines", "levels", "marks", "readings"}


def asked_of_all(again: Again, outcome: Outcome) -> Outcome:
    """The outcome with each line asked where a heading claims the rows of a list; nothing where none does."""
    toks = again.toks
    if toks.words.isdisjoint(CLAIMING) and toks.words.isdisjoint({"shift", "not", "do", "day"}):
        return ()
    rows = rows_of(again)
    if len(rows) < FEWEST or not _is_claimed(toks, rows[0].start):
        return ()
    asked = (_asked(s, again.text) if isinstance(s, Mark | Drained) else s for s in outcome)
    return tuple(asked)


def _is_claimed(toks: Toks, end: int) -> bool:
    head = toks.said[:end]
    due = any(text in CLAIMING and word(toks, k + 1) != "to" for k, text in enumerate(head))
    return due or not CLAIMED.isdisjoint(pairwise(head))


def _asked(said: Mark | Drained, text: str) -> Unclear:
    return Unclear(slot="kind", text=text, choices=(said.kind,), statement=said)


def is_of_all(toks: Toks, start: int, end: int) -> bool:
    """ "all taken at 2300": whether a clause is a time of what was told before it."""
    said = toks.said[start:end]
    words = {text for text in said if text.isalpha()}
    return bool(words & (OF_ALL | TAKEN)) and words <= SAID_OF_ALL and any(map(str.isdecimal, said))
