"""Reads one message: cut into pieces every way, give every number every role, judge, and settle."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, time
from typing import Literal, NamedTuple

from . import hypotheses
from .again import Again
from .alongside import alongside, left_out
from .apart import by_sentence, joined, question_first
from .asking import opens_aloud
from .besidefigures import beside_figures, leans_on_figures
from .circumstances import with_time_behind
from .eachtube import by_tube
from .framed import framed
from .hedged import Hedges
from .hindered import hindered
from .items import Item
from .labels import bed_index
from .lattice import LONG, Lattice
from .listmarks import without_list_marks
from .misgivings import doubted
from .nextup import without_now
from .nothing import is_of_another_device
from .notrighted import without_unmade
from .ofall import asked_of_all
from .onesentence import one_sentence
from .otherfigures import takes_any, their_clauses
from .otherwords import ends_in_ten
from .ownbeds import by_own_bed
from .pairlist import by_pairs
from .pipeline import Read, pipeline
from .puttingright import put_right
from .recast import with_cues
from .retold import retold
from .rowwise import by_row
from .sentence import Sentence, Ward, pieces
from .sentencewise import sentencewise
from .shiftstart import asked_when
from .statements import Checked, Corrected, Mark, Parsed, Statement, Unclear
from .strangers import beside_strangers
from .strays import without_strays
from .telegram import by_field
from .verdict import (
    WITH_LEVEL,
    Outcome,
    Reading,
    Unjudged,
    as_a_whole,
    asks,
    judged_once,
    settled,
    standing_best,
    untimed_asked,
)
from .ways import hopeful
from .zipped import zipped

LONGEST = 2000
MANY = 400
WORK = 2000
"""Readings times tokens: what a long message may cost."""

AGAIN_DICTATED = (joined, retold, framed, by_row, hindered)
"""How a message that would be asked is read again; its stops are those of the recogniser."""
AGAIN_TYPED = (
    put_right,
    by_field,
    by_sentence,
    question_first,
    joined,
    by_tube,
    zipped,
    framed,
    by_pairs,
    by_row,
    retold,
    hindered,
    beside_strangers,
    alongside,
)


class Hypothesis(NamedTuple):
    """Another thing that a recogniser may have heard, with its confidence."""

    text: str
    confidence: float = 0.0


def parse(  # noqa: PLR0913 - the contract of the reader, all by keyword
    text: str,
    *,
    arrived: datetime,
    beds: Sequence[str] | None = None,
    shifts: Sequence[time] = (),
    capacity_ml: int | None = None,
    alternatives: Sequence[tuple[str, float]] = (),
    channel: Literal["text", "voice"] = "text",
) -> Parsed:
    """Everything that the message says, and what to ask.

    `arrived` is aware, in the unit's zone; `beds` the unit's labels (None: any label that looks like
    one); `shifts` the starts of its shifts, for "on nights"; `alternatives` are other hypotheses of a
    recogniser, best first. `capacity_ml` never decides: a level over it is read as said, and asked about
    by the engine, which knows the canister; a time that was guessed from it would hide a full one.
    """
    del capacity_ml
    index = bed_index(tuple(beds)) if beds is not None else None
    ward = Ward(arrived, index, channel == "voice" or bool(alternatives), tuple(shifts))
    own = _parsed(text, ward)
    if not alternatives:
        return own
    return hypotheses.weighed(own, [_parsed(other[0], ward) for other in alternatives])


def _parsed(text: str, ward: Ward) -> Parsed:
    """What a message says as a whole; where that is asked, what it says part by part, if each is whole."""
    if len(text) > LONGEST:
        return Parsed(text=text, unclear=(Unclear(slot="kind", text=text),))
    said = text if ward.voice else without_list_marks(text)
    again, told = _whole(said, ward)
    read = again.read
    hedges = Hedges(read, again.meant, told)
    if plain := hedges.blanked(said):
        told = tuple(_of_text(u, plain, said) for u in hedges.agreed(told, _whole(plain, ward)[1]))
    told = doubted(told, read, again.meant.cues)
    outcome = asked_when(told, read.tokens, ward.arrived, ward.shifts, text)
    if ward.voice and not any(isinstance(s, Statement) for s in outcome) and is_of_another_device(read):
        outcome = (Unclear(slot="kind", text=text),)
    return Parsed(
        text=text,
        statements=tuple(s for s in outcome if isinstance(s, Statement)),
        unclear=tuple(u for u in (_of_text(u, said, text) for u in outcome) if isinstance(u, Unclear)),
        unread=left_out(again, outcome),
    )


def _whole(text: str, ward: Ward) -> tuple[Again, Outcome]:
    """A message and what it says, but for its doubts."""
    read = pipeline().read(text, voice=ward.voice)
    again = Again(read, with_cues(read, ward.index, voice=ward.voice), ward, _outcome)
    told = _told(again)
    if not ward.voice:
        told = sentencewise(again, told, lambda sentence: _whole(sentence, ward)[1])
    return again, without_strays(without_unmade(_once(told), again), read)


def _of_text(told: Statement | Unclear, read: str, text: str) -> Statement | Unclear:
    """What is asked of all that was read is asked of all that was said."""
    return replace(told, text=text) if isinstance(told, Unclear) and told.text == read else told


def _once(outcome: Outcome) -> Outcome:
    """ "mark 650 at 2200, mark 650, 2200": what is dictated twice is told once."""
    return tuple(s for k, s in enumerate(outcome) if not isinstance(s, Mark) or s not in outcome[:k])


def _told(again: Again) -> Outcome:
    told = _read_again(again, _outcome_of(again.meant, again.ward))
    parted = by_own_bed(again, told)
    return told if parted != told and leans_on_figures(again, parted, told) else parted


def _read_again(again: Again, outcome: Outcome) -> Outcome:
    """The outcome of the whole message, or what it says read otherwise where that would be asked."""
    ward = again.ward
    if asked := asked_of_all(again, outcome):
        return asked
    if not asks(outcome):
        own = (without_now if ward.voice else with_time_behind)(again, outcome)
        return own or beside_figures(again, outcome) or outcome
    if ward.voice and (opens_aloud(again.toks) or ends_in_ten(again.toks)):
        return outcome
    found = (way(again) for way in (AGAIN_DICTATED if ward.voice else AGAIN_TYPED))
    whole = (t for t in found if t and not (_is_line_instead(t, outcome) or _is_less(t, outcome)))
    told = next((t for t in whole if not takes_any(again, t, their_clauses(again))), ())
    beside = () if told or ward.voice else one_sentence(again, outcome)
    return asked_of_all(again, told) or told or beside or outcome


def _is_less(told: Outcome, asked: Outcome) -> bool:
    """ "bed 8 600, bed 17 1240, bed 99 90": whether the whole says all that its parts do, and more."""
    whole = [s for s in asked if isinstance(s, Statement)]
    parts = [s for s in told if isinstance(s, Statement)]
    return len(parts) < len(whole) and all(s in whole for s in parts)


def _is_line_instead(told: Outcome, asked: Outcome) -> bool:
    """ "put the 1800 from bed 3 under bed 8": what is asked of a correction is no line of its own."""
    righted = [u.statement for u in asked if isinstance(u, Unclear) and isinstance(u.statement, Corrected)]
    moved = len(righted) == len(asked) == 1 and righted[0].to_bed is not None
    return moved and all(isinstance(s, Mark) for s in told)


def _outcome(read: Read, ward: Ward) -> Outcome:
    return _outcome_of(with_cues(read, ward.index, voice=ward.voice), ward)


def _outcome_of(read: Read, ward: Ward) -> Outcome:
    """What is said by a message whose cues are as they are meant."""
    text = read.text
    if not read.tokens:
        return ()
    lattice = Lattice(read, ward.index, voice=ward.voice)
    ways = lattice.ways()
    if lattice.overfull and not ways:
        return (Unclear(slot="kind", text=text),)
    found, overfull = _found(ways, read, ward)
    if overfull and not lattice.overfull and len(read.tokens) <= LONG:
        kept, cut = hopeful(ways, read.tokens, voice=ward.voice)
        if len(kept) < len(ways):
            found, overfull = _found(kept, read, ward)
            found = [judged_once(reading) for reading in found]
            overfull = overfull or standing_best(found)[0].rank[0] >= cut
    if (overfull or lattice.overfull) and len(read.tokens) > LONG:
        return (Unclear(slot="kind", text=text),)
    overfull |= lattice.overfull
    outcome = settled(found, text, strict=ward.voice)
    if overfull and any(isinstance(s, Statement) for s in outcome):
        return (Unclear(slot="kind", text=text),)
    if not asks(outcome):
        return outcome
    return _all_asked(untimed_asked(outcome, text), text, voice=ward.voice)


def _found(ways: Sequence[tuple[Item, ...]], read: Read, ward: Ward) -> tuple[list[Reading | Unjudged], bool]:
    """The readings of the ways, and whether there were too many to look at."""
    many = max(8, min(MANY, WORK // len(read.tokens)))
    found: list[Reading | Unjudged] = []
    overfull = False
    for way in ways:
        for reading, too_many in Sentence(read, ward, pieces(way, read.tokens, ward.arrived)).readings():
            found.append(reading)
            overfull |= too_many
            if overfull and len(read.tokens) > LONG:
                return found, True
        if len(found) > many:
            return found, True
    return found, overfull


def _all_asked(outcome: Outcome, text: str, *, voice: bool) -> Outcome:
    """What stands beside an unreadable number of the same bed is asked too; in dictation, of any bed."""
    asked = [u for u in outcome if isinstance(u, Unclear) and (voice or not _is_of_a_tube(u))]
    beds = {u.statement.bed if u.statement is not None else None for u in asked}
    doubtful = beds if voice else beds - {None}
    return tuple(
        as_a_whole(s, text) if isinstance(s, WITH_LEVEL) and (s.bed in doubtful or None in doubtful) else s
        for s in outcome
    )


def _is_of_a_tube(asked: Unclear) -> bool:
    """Whether only the tube is asked of which something was found: the lines stand."""
    return asked.slot == "tube" and isinstance(asked.statement, Checked)
