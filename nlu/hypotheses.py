"""A recogniser's other hypotheses: they count where they give a whole valid reading, never by confidence."""

from __future__ import annotations

from collections.abc import Sequence

from .statements import Parsed, Statement, Unclear
from .verdict import merged

BEDLESS = frozenset({"withdrawn", "corrected", "answered", "help", "asked"})


def weighed(own: Parsed, others: Sequence[Parsed]) -> Parsed:
    """What the first hypothesis says, in the light of the others."""
    valid = [o for o in others if _whole(o)]
    if not valid:
        return own
    if _whole(own):
        outcomes = list(dict.fromkeys(o.statements for o in (own, *valid)))
        if len(outcomes) == 1:
            return own
    elif any(len(u.choices) > 1 and u.readings for u in own.unclear):
        return own
    else:
        outcomes = list(dict.fromkeys(o.statements for o in valid))
        if len(outcomes) == 1:
            return Parsed(text=own.text, statements=outcomes[0])
    found = merged([tuple(o) for o in outcomes], own.text)
    return Parsed(
        text=own.text,
        statements=tuple(s for s in found if isinstance(s, Statement)),
        unclear=tuple(u for u in found if isinstance(u, Unclear)),
    )


def _whole(parsed: Parsed) -> bool:
    if not parsed.statements or parsed.unclear:
        return False
    return all(s.bed is not None or s.kind in BEDLESS for s in parsed.statements)
