""" "640 at start of shift", "640 when I came on": a line of a moment that has no clock time, and not of now.

Right after a shift began it may be of now. Called by `read`.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, time, timedelta

from .numbers import Toks
from .shiftwords import begun
from .statements import Mark, Statement, Unclear

_SHIFT = r"(?:the |my |our |this |last |day |night )*(?:shift|nights|days)"
_CHANGE = r"(?:handover|handoff|report|hand over|changeover|shift change)"
_BEGINNING = re.compile(
    rf"(?<![\w'])(?:(?:start|beginning|begin) of {_SHIFT}|(?:at|from|on|during) {_CHANGE}"
    r"|when (?:i|we) (?:first )?(?:came on|started|took over|got here|got in|arrived|clocked in))(?![\w'])"
)
WORDS = frozenset(
    {"start", "beginning", "begin", "when", "handover", "handoff", "report", "hand", "changeover", "shift"}
)
JUST = timedelta(minutes=45)
"""So near to the start of a shift what was read then was read just now. Common practice, no source."""


def asked_when(
    outcome: Sequence[Statement | Unclear], toks: Toks, arrived: datetime, starts: Sequence[time], text: str
) -> tuple[Statement | Unclear, ...]:
    """The outcome, with a line asked when it was where only the start of a shift says so.

    The choice is the start of the shift at hand.
    """
    if WORDS.isdisjoint(toks.words) or not _BEGINNING.search(" ".join(toks.said[: len(toks)])):
        return tuple(outcome)
    last, following = begun(arrived, starts or DEFAULT)
    if arrived - last <= JUST or following - arrived <= JUST:
        return tuple(outcome)
    return tuple(_asked(said, last, text) for said in outcome)


def _asked(said: Statement | Unclear, last: datetime, text: str) -> Statement | Unclear:
    if not isinstance(said, Mark) or said.at is not None:
        return said
    whole = replace(said, at=last)
    return Unclear(slot="at", text=text, choices=(last,), readings=(whole,), statement=said)


DEFAULT = (time(7), time(19))
