"""What the sentences of a typed message say alone, where each is whole: the whole message says the same.

"12 left 640, 12 right 650. bed 7 560 at 1900": read as a whole, the numbers of one sentence may find places
in another. A time, or that a line closes the shift, may be told once for all; no level, bed, tube or event
may. Where the whole would be asked, sentences that each name a bed of their own are told. Called by `read`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import fields, replace

from .again import Again, Span, moved
from .apart import REFERRING, names_own_bed
from .bedclauses import LEANING
from .neighbours import stretches
from .numbers import Toks, is_digits, starts_number, word
from .ownclauses import PLAIN
from .statements import (
    Answered,
    Asked,
    Checked,
    Corrected,
    Drained,
    Help,
    Mark,
    Statement,
    Unclear,
    Withdrawn,
)
from .verdict import Outcome, asks

STOPS = frozenset({".", ";", "!", "\n"})
LEAN = (REFERRING | LEANING) - {"no", "not"}
OF_BEFORE = frozenset({"it", "himself", "herself", "themselves", "itself", "one", "there"})
UNFIT = (Answered, Asked, Corrected, Help, Withdrawn)
"""About what was told elsewhere."""
READ = (Mark, Drained, Checked)
SHARED = frozenset({"at", "closing", "spans"})
MOST = 6


def sentencewise(again: Again, outcome: Outcome, read: Callable[[str], Outcome]) -> Outcome:
    """The outcome, or what the sentences say that it leaves out or tells of another bed; `read` is how a text
    is read."""
    spans = list(stretches(STOPS, again.toks))
    if not 1 < len(spans) <= MOST or any(isinstance(s, UNFIT) for s in outcome):
        return outcome
    parted = _parts(again, spans, read)
    if parted is None or (asks(outcome) and not all(p and names_own_bed(again.toks, *s) for s, p in parted)):
        return outcome
    spans = [span for span, _ in parted]
    parts = [[moved(said, again.toks[span[0]].start) for said in part] for span, part in parted]
    told = [said for part in parts for said in part]
    leans = any(_leans(again.toks, span) for span in spans[1:])
    if asks(outcome):
        return outcome if leans or not _are_apart(parts) else tuple(told)
    whole = [s for s in outcome if isinstance(s, Statement)]
    if _agree(told, whole, headed=":" in again.toks.words):
        return outcome
    return (Unclear(slot="kind", text=again.text),) if leans else tuple(_filled(told, whole))


def _parts(
    again: Again, spans: Sequence[Span], read: Callable[[str], Outcome]
) -> list[tuple[Span, Sequence[Statement]]] | None:
    """The sentences and what each says alone, one that is not whole together with the one before it; None
    where one is not whole even so."""
    several = sum(names_own_bed(again.toks, *span) for span in spans) > 1
    parts: list[tuple[Span, Sequence[Statement]]] = []
    for span in spans:
        part = _alone(again, span, read)
        if part is None and parts and several and not names_own_bed(again.toks, *span):
            span = (parts.pop()[0][0], span[1])  # "changed at 0600, old 1980. now 60"
            part = _alone(again, span, read) if span != (spans[0][0], spans[-1][1]) else None
        if part is None:
            return None
        parts.append((span, part))
    return parts


def _are_apart(parts: Sequence[Sequence[Statement]]) -> bool:
    """Whether no sentence is of a bed of another, and no line may have the time of another's."""
    beds = [{said.bed for said in part} for part in parts]
    timed = [said.at is not None for part in parts for said in part if not isinstance(said, Checked)]
    return sum(map(len, beds)) == len(set().union(*beds)) and (all(timed) or not any(timed))


def _leans(toks: Toks, span: Span) -> bool:
    """Whether a sentence may be about the one before: asked where both readings differ."""
    return not LEAN.isdisjoint(toks.said[slice(*span)]) or word(toks, span[0]) in {"no", "not"}


def _alone(again: Again, span: Span, read: Callable[[str], Outcome]) -> Sequence[Statement] | None:
    """What a sentence says, nothing where it has no number; None where it is not whole, or not alone."""
    toks = again.toks
    if not any(is_digits(toks, k) or starts_number(toks, k) for k in range(*span)):
        tells = any(span[0] <= cue.start < span[1] and cue.label not in PLAIN for cue in again.cues)
        return None if tells or not OF_BEFORE.isdisjoint(toks.said[slice(*span)]) else ()
    said = read(again.said(*span))
    told = [s for s in said if isinstance(s, Statement) and s.bed is not None and not isinstance(s, UNFIT)]
    return told if told and len(told) == len(said) else None


def _agree(told: Sequence[Statement], whole: Sequence[Statement], *, headed: bool) -> bool:
    """Whether the whole says all that the sentences do, and more only of what was found under a heading."""
    left = list(whole)
    for said in told:
        same = next((s for s in left if _is_same(said, s)), None)
        if same is None or _has_time_of_event(said, same, told):
            return False
        left.remove(same)
    return all(isinstance(s, Checked) for s in left) if headed else not left


def _is_same(said: Statement, whole: Statement) -> bool:
    """Whether both say the same; what is told without a time may share one, and a heading that it closes."""
    if _values(said) != _values(whole) or said.at not in {None, whole.at}:
        return False
    closes = isinstance(said, Mark) and isinstance(whole, Mark) and said.closing != whole.closing
    return not closes or (said.at is None and getattr(whole, "closing", False))


def _has_time_of_event(said: Statement, whole: Statement, told: Sequence[Statement]) -> bool:
    """ "bed 4 changed at 0600. bed 5 340": when something happened to another bed is no time of a line."""
    if said.at is not None or whole.at is None or not isinstance(said, READ):
        return False
    own = [s for s in told if s.at == whole.at]
    events = {s.bed for s in own if not isinstance(s, READ)}
    return bool(events - {said.bed}) and all(s.bed in events for s in own)


def _values(said: Statement) -> tuple[object, ...]:
    return (said.kind, *(getattr(said, f.name) for f in fields(said) if f.name not in SHARED))


def _filled(told: Sequence[Statement], whole: Sequence[Statement]) -> Iterator[Statement]:
    """What the sentences say, with a time that the whole message tells for it, or that a line closes."""
    for said in told:
        same = next((s for s in whole if _is_same(said, s) and not _has_time_of_event(said, s, told)), said)
        closing = isinstance(said, Mark) and isinstance(same, Mark) and same.closing
        filled = replace(said, at=same.at, spans=same.spans)
        yield replace(filled, closing=closing or filled.closing) if isinstance(filled, Mark) else filled
