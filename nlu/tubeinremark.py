"""A side or a letter that stands in a remark: it is asked whether the line or the event is of that tube.

"bed 18 700 at 2200, gave him the right dose": a line on the wrong tube is as bad as one of the wrong bed. A
tube that is told apart from its line stands alone there ("..., right side"). Used by `misgivings`.
"""

from __future__ import annotations

from collections.abc import Container, Iterable, Iterator

from .doubtwords import between_stops
from .items import EVENTS
from .numbers import Toks
from .patterns.asides import THINGS
from .patterns.numerals import is_number
from .pipeline import Cue
from .statements import Drained, Mark, Statement

_PLAIN = """
side sided only one just the is was are for of on in from this that his her both now here same pleural apical
basal anterior posterior mediastinal upper lower lateral left right l r lt rt first second and at i mean still
as well no number too also new
"""
PLAIN = THINGS | frozenset(_PLAIN.split())
"""Beside a tube these say nothing else."""
TELLING = EVENTS | {
    "kind",
    "what",
    "tubeword",
    "opens",
    "reason",
    "leak",
    "tidal",
    "fluid",
    "suction",
    "seal",
}
"""Labels of what an event is told with: "right chest tube placed" is no remark."""


def of_remarks(
    told: Iterable[Statement], meant: Iterable[Cue], toks: Toks, spoken: frozenset[int]
) -> Iterator[Statement]:
    """What is told of a tube that stands in a remark; `meant` are the cues of the message."""
    known = spoken.union(*(range(cue.start, cue.end) for cue in meant if cue.label in TELLING))
    for said in told:
        if _is_in_remark(said, toks, spoken if isinstance(said, Mark | Drained) else known):
            yield said


def _is_in_remark(said: Statement, toks: Toks, spoken: Container[int]) -> bool:
    """Whether its tube stands in a clause of its own, with words that were not understood."""
    span = said.spans.get("tube")
    if said.tube is None or span is None:
        return False
    place = next((k for k, t in enumerate(toks) if t.end > span.start), 0)
    start, end = between_stops(toks, place, place)
    others = [s for slot, s in said.spans.items() if slot not in {"tube", "kind"}]
    if any(toks[start].start <= s.start < toks[end - 1].end for s in others):
        return False
    unread = (toks.said[k] for k in range(start, end) if k not in spoken)
    return not PLAIN.issuperset(w for w in unread if w.isalpha() and not is_number(w))
