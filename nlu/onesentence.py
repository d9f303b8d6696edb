"""The one sentence of a typed message that is whole: it stands, and only the others are asked about.

"bed 6 340 at 1850. xray shows 2 cm apical gap": the line is told. Nothing of the others may be about it: no
word that refers, denies, doubts or puts right, no bed, no number near its own, and no time that could be its.
Called by `read`, where the whole message would be asked.
"""

from __future__ import annotations

from collections.abc import Sequence

from .again import Again, Span, Told
from .apart import DENYING, REFERRING
from .bedclauses import LEANING
from .clock import clocks
from .entered import ENTERED
from .framed import NO_REPORT
from .neighbours import stretches
from .numbers import is_digits, starts_number
from .patterns.leads import BED_WORDS
from .patterns.otherfigures import REFUSED
from .patterns.ownclauses import DENIALS, OBJECTS, OF_WHAT_WAS_TOLD
from .statements import Checked, Corrected, Described, Statement, Unclear, Withdrawn
from .strangers import FAR, GOING, amounts_of, may_name
from .verdict import Outcome

STOPS = frozenset({".", ";", "!", "\n"})
BARRED = REFERRING | DENYING | LEANING | REFUSED | DENIALS | OBJECTS | OF_WHAT_WAS_TOLD | ENTERED
BARRED |= BED_WORDS | GOING | {"=", "off", "out", "home"}
HAPPENING = frozenset({"kind", "what", "order"})
"""Cues of what may have happened to the same drain."""
MOST = 4
"""Sentences: in a longer message more is told than a line and a remark."""


def one_sentence(again: Again, asked: Outcome) -> Outcome:
    """What it tells, and the question about the others; nothing where one of them may be of it."""
    toks = again.toks
    spans = list(stretches(STOPS, toks))
    if not 1 < len(spans) <= MOST or any(_is_corrected(u) for u in asked):
        return ()
    told = [again.part(*span) for span in spans]
    whole = [k for k, each in enumerate(told) if each]
    if len(whole) != 1 or not _stands(told[whole[0]]):
        return ()
    others = [span for k, span in enumerate(spans) if k != whole[0]]
    if any(_may_be_of(again, told[whole[0]], span) for span in others):
        return ()
    return (*told[whole[0]], *(Unclear(slot="kind", text=again.said(*span)) for span in others))


def _is_corrected(said: Statement | Unclear) -> bool:
    statement = said.statement if isinstance(said, Unclear) else said
    return isinstance(statement, Corrected | Withdrawn)


def _stands(told: Told) -> bool:
    """Whether it is a report of one bed, and no question or correction of one."""
    return len({s.bed for s in told}) == 1 and not any(isinstance(s, NO_REPORT) for s in told)


def _may_be_of(again: Again, told: Told, span: Span) -> bool:
    """Whether a sentence may say something of what another tells."""
    toks, said = again.toks, again.toks.said[slice(*span)]
    numbers = [int(w) for w in said if w.isdecimal()]
    spelt = any(starts_number(toks, k) and not is_digits(toks, k) for k in range(*span))
    timed = any(s.at is None and not isinstance(s, Checked | Described) for s in told)
    timely = timed and any(clocks(toks, k) for k in range(*span))
    labels = any(k in again.meant.labelled for k in range(*span)) or said[0].isdecimal()
    happened = any(span[0] <= cue.start < span[1] and cue.label in HAPPENING for cue in again.cues)
    unknown = any(map(may_name, said)) and not happened
    return not (unknown and BARRED.isdisjoint(said)) or spelt or timely or labels or _is_near(told, numbers)


def _is_near(told: Told, numbers: Sequence[int]) -> bool:
    """Whether a number may be another value of one that is told, or one that was not told yet."""
    amounts = [a for s in told for a in amounts_of(s)]
    return any(a is None or (a <= FAR * n and n <= FAR * a) for a in amounts for n in numbers)
