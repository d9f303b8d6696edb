"""A message that seems whole beside figures of other things: "line 640 at 1900. flacc 2" has no bed 2.

Where a number of theirs was taken for ours, or the time of a line was lost with one of theirs, it is read
without them; where that is not whole, it is asked. Called by `read`.
"""

from __future__ import annotations

from .again import Again
from .framed import Frame, told_without
from .otherfigures import other_figures, takes_any, their_clauses
from .statements import Mark, Statement, Unclear
from .verdict import Outcome, in_doubt


def beside_figures(again: Again, outcome: Outcome) -> Outcome:
    """What is told beside clauses whose numbers are of other things, where nothing of it was read, or one of
    those numbers was taken for ours, or with one of their times that of a line was lost."""
    untimed = any(map(_is_untimed_line, outcome))
    clauses = their_clauses(again)
    taken = takes_any(again, outcome, clauses)
    if not clauses or (outcome and not (untimed or taken)):
        return ()
    frames = [Frame(*span, aside=True, of_somebody=True, timely=True) for span in other_figures(again)]
    told = told_without(again, frames) if frames else ()
    if told or not taken:
        return told
    theirs = [isinstance(said, Statement) and takes_any(again, (said,), clauses) for said in outcome]
    return tuple(
        in_doubt(said, again.text) if taken and isinstance(said, Statement) else said
        for said, taken in zip(outcome, theirs, strict=True)
    )


def leans_on_figures(again: Again, parted: Outcome, told: Outcome) -> bool:
    """ "19 825 at 1757; jp 20 ss", "8 mo old, at 1751 bed 9 was 192": whether parts that each have a bed take
    a number of another thing for one, or leave its time with it."""
    spans = their_clauses(again)
    untimed = any(map(_is_untimed_line, parted)) and not any(map(_is_untimed_line, told))
    return bool(spans) and (untimed or takes_any(again, parted, spans))


def _is_untimed_line(said: Statement | Unclear) -> bool:
    return isinstance(said, Mark) and said.at is None
