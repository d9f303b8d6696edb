"""Dictated times of what a nurse is about to do: "i'm doing the rest now", "Hannah's taking over at nine".

A recogniser sets no stop behind the line, so such a time may be taken for its own. Called by `read`.
"""

from __future__ import annotations

from .again import Again, Told
from .framed import NO_REPORT
from .numbers import word
from .ownclauses import own_clauses
from .patterns.smalltalk import NAMES
from .statements import Mark
from .verdict import Outcome


def without_now(again: Again, outcome: Outcome) -> Told:
    """What is dictated without "i'm doing the rest now", "Hannah's taking over at nine": no times of it."""
    toks = again.toks
    said = [s.spans.get("at") for s in outcome if isinstance(s, Mark)]
    timed = {
        k
        for span in said
        if span is not None
        for k, t in enumerate(toks)
        if span.start <= t.start and t.end <= span.end
    }
    now = {k for k in timed if word(toks, k) == "now"}
    if not now and NAMES.isdisjoint([text.removesuffix("'s") for text in toks.words]):
        return ()
    spans = [
        clause.clause
        for clause in (own_clauses(again, timed) if timed else ())
        if now & set(range(*clause.clause))
        or (
            clause.clause[0]
            and timed & set(range(*clause.clause))
            and word(toks, clause.clause[0]).removesuffix("'s") in NAMES
        )
    ]
    told = again.without(*spans) if spans else ()
    return () if any(isinstance(s, NO_REPORT) for s in told) else told
