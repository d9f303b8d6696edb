"""What happened to several beds, read clause by clause where each names its bed.

"bed 4 340 at 0600 and pulled the tube on bed 9 at 0645": an event, an order and a finding are of the bed of
their own clause, wherever in it that bed is said, and their time is no time of another bed's line. Where a
typed message would be asked, only the clause that cannot be read is. Called by `read`; what only lists lines,
or leans on what was said before ("both"), is left as it was read.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import fields, replace
from itertools import compress

from .again import Again, Span
from .bedclauses import (
    HAPPENING,
    HEADS,
    Ends,
    beds_named,
    behind_joint,
    behind_stop,
    clauses,
    is_wordless,
    leans,
    segments,
)
from .clock import clocks
from .numbers import starts_number, word
from .somebody import names_bed
from .statements import (
    Answered,
    Asked,
    Away,
    Back,
    Checked,
    Corrected,
    Drained,
    Exchanged,
    Incident,
    Mark,
    Ordered,
    Placed,
    Removed,
    Statement,
    Unclear,
    Withdrawn,
)
from .verdict import WEIGHTY, Outcome, asks, in_doubt

MOST = 8
WAYS: tuple[Ends, ...] = (behind_stop, behind_joint)
"""How a message is parted: first by its sentences, then each of these by its clauses."""
SETTINGS = frozenset({"suction", "waterseal", "wall"})
OPENING = 2
"""Words or signs with which a clause says its bed at once: "bed 12"."""
OF_LINE = 2
"""Numbers of a line: its bed and its level."""
ASKING = frozenset({"?", "also"})
SPEAKER = frozenset({"i", "i'm", "im", "i've", "we", "we're"})
STAYING = frozenset({"stays", "stay", "remains", "leave", "staying", "unchanged"})
STAFF = "they"
OF_ALL = frozenset({"all", "both", "each"})
SWAPPED = ASKING | {"swapped"}
UNFIT = (Answered, Corrected, Withdrawn)
"""About what was told before."""
HAPPENED = (Removed, Exchanged, Placed, Away, Back, Incident)
DOUBTED = (*HAPPENED, *WEIGHTY, Ordered)
"""A finding may be told of all beds of a list, before or behind it."""
TIMED = (Mark, Drained, Checked)
"""What is read or found, at the time of a line beside it."""
OPENING_QUESTION = frozenset({"did", "has", "have", "is", "was", "are", "were", "do", "does", "can", "could"})
MANY_BEDS = frozenset({"beds", "rooms", "bays"})
OTHERS = frozenset({"other", "claimed", "foreign", "plan"})
"""Cues of what is no line: another device, a value of a patient, what is aimed at."""


def by_own_bed(again: Again, outcome: Outcome) -> Outcome:
    """What the clauses say, where each is whole and of one bed; else what the message was read as."""
    plain = HAPPENING.isdisjoint(cue.label for cue in again.meant.cues) and not asks(outcome)
    if plain or _leans(again):
        return outcome
    told = _parted(again, (0, len(again.toks)), outcome, WAYS)
    return tuple(
        in_doubt(s, again.text) if isinstance(s, Statement) and _is_astray(s, again) else s for s in told
    )


def _is_astray(said: Statement, again: Again) -> bool:
    if isinstance(said, HAPPENED):
        return _strays(said, again)
    return isinstance(said, Ordered | Checked) and _stays(said, again)


def _strays(said: Statement, again: Again) -> bool:
    """ "sorted 13 canister, old 1670; tube out 3": whether it happened to another bed; not "bed 3 and
    4 to CT"."""
    bed, value = said.spans.get("bed"), getattr(said, "what", said.kind)
    cues = [c for c in again.meant.cues if c.label in {"kind", "what"} and c.value == value]
    if bed is None or not cues:
        return False
    toks = again.toks
    place = next(k for k, t in enumerate(toks) if t.end > bed.start)
    spans = segments(toks)
    if any(start <= place < end and is_wordless(toks, start, end) for start, end in spans):
        return False
    for cue in cues:
        start, end = next((span for span in spans if span[0] <= cue.start < span[1]), (0, len(toks)))
        named = beds_named(again, (start, end))
        if not named or said.bed in named or start <= place:
            return False
    return True


def _stays(said: Statement, again: Again) -> bool:
    """ "suction 20 on 6 and 7, 8 stays as is": whether a bed that stays as it was has the others' setting."""
    toks, value = again.toks, said.spans.get("suction_cmh2o") or said.spans.get("wall_mmhg")
    if value is None or STAYING.isdisjoint(toks.words):
        return False
    own = [span for span in segments(toks) if said.bed in beds_named(again, span)]
    stays = any(not STAYING.isdisjoint(toks.said[start:end]) for start, end in own)
    return stays and not any(toks[start].start <= value.start < toks[end - 1].end for start, end in own)


def _parted(again: Again, span: Span, outcome: Outcome, ways: Sequence[Ends]) -> Outcome:
    """What a part of the message says, parted further where it names several beds."""
    if not ways:
        return outcome
    spans = list(clauses(again, span, ways[0]))
    if not 1 < len(spans) <= MOST:
        return _parted(again, span, outcome, ways[1:])
    parts = []
    for start, end in spans:
        told = again.outcome_without((0, start), (end, len(again.toks)))
        parts.append(_parted(again, (start, end), told, ways[1:]))
    whole = [_is_whole(part, again, of, several=len(ways) > 1) for part, of in zip(parts, spans, strict=True)]
    if _is_headed(again, spans, parts, outcome):
        return outcome
    if all(whole):
        return _joined(again, spans, parts, outcome)
    partly = asks(outcome) and not again.ward.voice and any(compress(parts, whole))
    told = _partly(again, spans, parts, whole) if partly else ()
    return told or tuple(_doubted(again, outcome, [*zip(spans, parts, whole, strict=True)]))


def _joined(again: Again, spans: Sequence[Span], parts: Sequence[Outcome], outcome: Outcome) -> Outcome:
    """What whole clauses say of several beds; the outcome where one of them may go on about another."""
    if len({bed for span in spans for bed in beds_named(again, span)}) < 2:
        return outcome
    if _goes_on(again, spans, parts):
        return outcome
    lined = [any(isinstance(s, Mark | Drained) for s in part) for part in parts]
    places = [(again.toks[start].start, again.toks[end - 1].end) for start, end in compress(spans, lined)]
    alone = _told(parts)
    if _is_told_more(alone, outcome):
        return tuple(_timed(s, alone, places) for s in _told([outcome]))
    told = tuple(_filled(s, outcome, places) for s in alone)
    return told if _are_timed_apart(told) else outcome


def _is_told_more(alone: Sequence[Statement], outcome: Outcome) -> bool:
    """ "no leaks: 3 280, 5 310": whether the whole says all that its clauses do, and what was found, too."""
    more = [s for s in _told([outcome]) if not any(_is_part(a, s) for a in alone)]
    beds = {a.bed for a in alone}
    found = all(isinstance(s, Checked) and s.bed in beds for s in more)
    return not asks(outcome) and found and len(more) + len(alone) == len(outcome)


def _goes_on(again: Again, spans: Sequence[Span], parts: Sequence[Outcome]) -> bool:
    """ "3 urine 210, 5 1340", "3 drained 20, 5 40": whether a bare number may be of what was told before."""
    before = False
    for span, part in zip(spans, parts, strict=True):
        if before and part and is_wordless(again.toks, *span):
            return True
        of_other = not OTHERS.isdisjoint(_labels(again, span))
        before |= of_other or any(isinstance(s, Drained) and s.volume_ml for s in _told([part]))
    return False


def _partly(again: Again, spans: Sequence[Span], parts: Sequence[Outcome], whole: Sequence[bool]) -> Outcome:
    """What whole clauses say, and what the others ask; nothing where these may be of the same bed."""
    told = _told(compress(parts, whole))
    odd = [span for span, is_whole in zip(spans, whole, strict=True) if not is_whole]
    beds = {s.bed for s in told}
    if any(s.at is None and isinstance(s, WEIGHTY) for s in told) or any(
        not beds.isdisjoint(beds_named(again, span)) or is_wordless(again.toks, *span) for span in odd
    ):
        return ()
    first = spans[0][0]
    plain = _is_label(again, first) or names_bed(again.toks, first)
    if odd[0] == spans[0] and not plain:
        return ()  # "1000 check: 5 ok, 6 ok, 7 seal 1": what it begins with may be of all
    made: list[Statement | Unclear] = []
    for span, part, is_whole in zip(spans, parts, whole, strict=True):
        asked = [replace(u, text=again.said(*span)) for u in part if isinstance(u, Unclear)]
        if not is_whole and not asked:
            return ()
        made += [*(s for s in part if isinstance(s, Statement)), *asked]
    return tuple(made)


def _doubted(
    again: Again, outcome: Outcome, clauses: Sequence[tuple[Span, Outcome, bool]]
) -> Iterator[Statement | Unclear]:
    """The outcome, where what the own clause of a bed does not say is asked: it may be of the next bed."""
    odd = {bed for span, part, whole in clauses if not whole for bed in _beds(again, span, part)}
    alone = [
        (_beds(again, span, part), {s.kind for s in _told([part])}) for span, part, whole in clauses if whole
    ]
    sure = [s for _, part, whole in clauses if whole for s in _told([part]) if s.at is not None]
    for said in outcome:
        if not isinstance(said, DOUBTED):
            yield said
            continue
        kinds = [told for beds, told in alone if said.bed in beds - odd]
        if kinds and all(said.kind not in told for told in kinds):
            yield in_doubt(said, again.text)
        elif any(s.at != said.at and replace(s, at=said.at) == said for s in sure):
            yield Unclear(slot="at", text=again.text, statement=replace(said, at=None))
        else:
            yield said


def _beds(again: Again, span: Span, part: Outcome) -> set[str | None]:
    return {*beds_named(again, span), *(s.bed for s in _told([part]))}


def _told(parts: Iterable[Outcome]) -> list[Statement]:
    return [s for part in parts for s in part if isinstance(s, Statement)]


def _leans(again: Again) -> bool:
    """Whether a clause is about what another says; "swapped the canister" is not, nor what is asked."""
    opens = word(again.toks, 0) in OPENING_QUESTION and "?" not in again.toks.words
    if opens or not again.toks.words.isdisjoint(MANY_BEDS):
        return True
    swapped = any(c.value == "exchanged" for c in again.meant.cues)
    besides = SWAPPED if swapped else ASKING
    if STAFF in again.toks.words and all(
        any(c.start == k + 1 and c.label in HEADS for c in again.meant.cues)
        for k, said in enumerate(again.toks.said)
        if said == STAFF
    ):
        besides |= {STAFF}  # "they pulled the tube on bed 9"
    if not again.toks.words.isdisjoint(OF_ALL):
        besides |= OF_ALL - frozenset(_telling(again))
    return leans(again.toks, besides)


def _telling(again: Again) -> Iterator[str]:
    """The words of what tells something: "all good otherwise" is of nothing that is told."""
    toks = again.toks
    told = {k for c in again.meant.cues if c.label in HAPPENING for k in range(c.start, c.end)}
    told |= {k for k in range(len(toks)) if starts_number(toks, k)}
    for start, end in segments(toks):
        if not told.isdisjoint(range(start, end)):
            yield from toks.said[start:end]


def _labels(again: Again, span: Span) -> set[str]:
    """What the cues of a clause are of."""
    return {c.label for c in again.meant.cues if span[0] <= c.start < span[1]}


def _is_label(again: Again, k: int) -> bool:
    return k in again.meant.labelled or word(again.toks, k) in (again.ward.index or ())


def _is_whole(part: Outcome, again: Again, span: Span, *, several: bool) -> bool:
    """Whether nothing is asked of a clause, and it is of one bed (or several) and puts nothing right; a bed
    alone asks nothing here."""
    asking = any(c.label == "ask" and span[0] <= c.start <= span[0] + OPENING for c in again.meant.cues)
    asking &= SPEAKER.isdisjoint(again.toks.said[span[0] : span[1]])  # "I'm picking up 4 tonight"
    unfit = UNFIT if asking or word(again.toks, span[1] - 1) == "?" else (*UNFIT, Asked)
    told = _told([part])
    if len(told) < len(part) or any(s.bed is None or isinstance(s, unfit) for s in told):
        return False
    labels = _labels(again, span)
    if not told and OTHERS.isdisjoint(labels):
        return sum(starts_number(again.toks, k) for k in range(*span)) < OF_LINE
    places = {s.spans["at"].start for s in told if "at" in s.spans}
    heads = told and clocks(again.toks, span[0]) and not _is_label(again, span[0])  # "1200 vitals. 7 1490 ml"
    timed = not heads or again.toks[span[0]].start in places
    several |= HAPPENING.isdisjoint(labels)
    return timed and (several or len({s.bed for s in told}) <= 1)


def _is_headed(again: Again, spans: Sequence[Span], parts: Sequence[Outcome], outcome: Outcome) -> bool:
    """ "tubes out: bed 9 at 1800 30, bed 11 at 1810 40": whether the whole was read so that what the message
    begins with is told of a later clause too, or is asked behind an order."""
    first = next((c for c in again.meant.cues if c.label in HEADS), None)
    if first is None or beds_named(again, (spans[0][0], first.start)):
        return False
    kind = "incident" if first.label == "what" else first.value
    for span, part in zip(spans[1:], parts[1:], strict=True):
        own = _labels(again, span)
        if not own.isdisjoint(HEADS):
            continue
        if first.label == "order" and not own.isdisjoint(SETTINGS):
            return any(isinstance(s, Unclear | Ordered) for s in outcome)
        beds, kinds = {s.bed for s in _told([part])}, {s.kind for s in _told([part])}
        if kind not in kinds and any(s.bed in beds and s.kind == kind for s in _told([outcome])):
            return True
    return False


def _are_timed_apart(told: Iterable[Statement]) -> bool:
    """Whether no line may have the time of another: each has its own, or none has."""
    lines = (s for s in told if isinstance(s, Mark) or (isinstance(s, Drained) and s.volume_ml))
    timed = [s.at is not None for s in lines]
    return all(timed) or not any(timed)


def _filled(said: Statement, outcome: Outcome, lines: Sequence[Span]) -> Statement:
    """The statement with what the whole said of it too: a list under one time, one that closes the shift."""
    if said.at is not None or isinstance(said, Ordered):
        return said
    return next((_timed(s, [said], lines) for s in _told([outcome]) if _is_part(said, s)), said)


def _timed(said: Statement, alone: Sequence[Statement], lines: Sequence[Span]) -> Statement:
    """What the whole says; a line that its own clause tells without a time has no time but that of a line."""
    place, own = said.spans.get("at"), [s.at for s in alone if _is_part(s, said)]
    if place is None or not own or any(own):
        return said
    of_line = any(start <= place.start < end for start, end in lines)
    shared = isinstance(said, TIMED) if of_line else isinstance(said, HAPPENED)
    return said if shared else replace(said, at=None)


def _is_part(said: Statement, whole: Statement) -> bool:
    """Whether both say the same, the whole perhaps that a line closes the shift or is only about so much."""
    if type(said) is not type(whole):
        return False
    slots = (f.name for f in fields(said) if f.name not in {"at", "spans"})
    return all(getattr(said, s) in {False, getattr(whole, s)} for s in slots)
