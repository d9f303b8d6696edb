"""Values told apart from what they are of: "Hb sent, 9.2", "morphine given at 1340, 5 mg", "extubated 2040".

A comma between a blood value and its name, or between a drug and its dose, would leave the number alone; an
hour without its "at" behind what was done to a patient would too. Each is put as one. Called by `pipeline`,
for typed messages.
"""

from __future__ import annotations

from collections.abc import Sequence

from .described import said_so, shortly
from .tokens import Token

SENT = r"(?:sent|checked|done|back|repeated|taken|drawn|resulted)"
UNITS = r"(?:mg|mgs|mcg|mcgs|g|gm|gram|grams|units|iu|ug|tabs|tab|tablets|puffs|meq|mmol)"
TIME = r"(?:at |@ )?\d{1,4}(?: : \d\d)?(?: (?:am|pm|h|hrs|hours))?"
BLOOD = r"(?:prbcs?|rbcs?|ffp|plts?|platelets|blood|packed|cryo|cells)"
DONE = frozenset({"extubated", "intubated", "reintubated", "walked", "ambulated", "medicated", "sedated"})
DONE |= {"fed", "bathed", "showered", "weighed"}
"""What was done to a patient, and never to a drain."""
FULL_HOUR = 4
TOLD = (
    said_so(rf"[a-z]+ (?P<x>{SENT}(?: and {SENT})? ,)(?= \d+ \. \d+(?: |$))"),
    said_so(rf"(?:given|administered)(?: {TIME})? (?P<x>,)(?= \d+(?: \. \d+)? {UNITS}(?: |$))"),
    said_so(rf"\d+ (?P<x>u)(?= {BLOOD}(?: |$))", "units"),
)
STARTS = frozenset({"sent", "checked", "done", "back", "repeated", "taken", "drawn", "resulted", "u"})
STARTS |= {"given", "administered"} | DONE
"""Where none of these words is, there is nothing to look for."""


def plain(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens, each value beside what it is of."""
    if STARTS.isdisjoint([t.text for t in toks]):
        return toks
    toks = shortly(toks, TOLD)
    return [each for k in range(len(toks)) for each in _with_at(toks, k)]


def _with_at(toks: Sequence[Token], k: int) -> Sequence[Token]:
    """ "extubated 2040, level 410": the word, with an "at" of no width before its hour."""
    token, behind = toks[k], toks[k + 1] if k + 1 < len(toks) else None
    timed = behind is not None and behind.is_digits and len(behind.text) == FULL_HOUR and not behind.glued
    if token.text not in DONE or not timed:
        return (token,)
    return token, Token("at", token.end, token.end, glued=True)
