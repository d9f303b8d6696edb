"""A word of degree before a number changes nothing but how sure it is: "suction on about 20" is no line.

Rules look at the word before a number. Where one behind "about", "roughly", "only" or "just" was read as
something else than a time, or not at all, the message is read once more without these words: what is not read
then is not accepted. Called by `read`.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import replace

from .again import Span
from .neighbours import number_follows
from .numbers import Toks, starts_number, word
from .pipeline import Read
from .statements import Asked, Drained, Mark, Statement, Unclear
from .verdict import Outcome

DEGREES = frozenset({"only", "just", "still", "merely", "barely", "exactly", "precisely"})
STOPS = frozenset({"", ",", ".", ";", ":", "!", "("})
"""Behind these no word before a hedge says what the number is of."""
IS = frozenset({"is", "it's", "its", "we're", "were", "he's", "she's", "at", "'s", "was", "now"})
"""Behind these "right about 800" tells no side."""
TIMES = frozenset({"at", "to_at", "window"})
NOT_HEDGED = TIMES | {"bed", "to_bed"}
"""To these a hedge may lead: "340 around 1900", "rang about 8"."""
ONE = 1


class Hedges:
    """The words of degree before numbers of a message, and what was read of these numbers."""

    def __init__(self, read: Read, meant: Read, outcome: Sequence[Statement | Unclear]) -> None:
        toks = read.tokens
        words = list(_hedges(read))
        places = [toks[end].start for _, end in words]
        told = [said for said in outcome if isinstance(said, Statement) and not isinstance(said, Asked)]
        self.said = [said for said in told if _is_read_of(said, places)]
        loose = {p for p in places if not any(s.start <= p < s.end for t in told for s in t.spans.values())}
        self.said = told if loose else self.said
        idle = [cue for cue in meant.cues if cue.label == "filler" and cue.end - cue.start > ONE]
        # "roughly 500, can't see it under the bed"
        words += [(cue.start, cue.end) for cue in idle if cue not in read.cues]
        self.places = [(toks[start].start, toks[end - 1].end) for start, end in words]

    def blanked(self, text: str) -> str:
        """The message with blanks for each; nothing where none stands before what was read."""
        for start, end in self.places if self.said else ():
            text = text[:start] + " " * (end - start) + text[end:]
        return text if self.said else ""

    def agreed(self, outcome: Outcome, plain: Outcome) -> Outcome:
        """What was read, if it is read without these words too; else what is read then, its numbers
        estimates where they were."""
        if all(_sure(said) in plain for said in self.said):
            return outcome
        numbers = {_number(said) for said in self.said if isinstance(said, Mark | Drained) and said.about}
        return tuple(_estimated(said) if _number(said) in numbers - {None} else said for said in plain)


def _hedges(read: Read) -> Iterator[Span]:
    """The words of each that stands right before a number."""
    toks = read.tokens
    for cue in read.cues:
        if cue.label == "about" and number_follows(toks, cue.end) and word(toks, cue.start - 1) not in STOPS:
            right = word(toks, cue.start - 1) == "right" and word(toks, cue.start - 2) in IS
            yield cue.start - (right or word(toks, cue.start - 1) == "just"), cue.end
    if not DEGREES.isdisjoint(toks.words):
        yield from ((k, k + 1) for k in range(len(toks)) if _is_degree(toks, k))


def _is_degree(toks: Toks, k: int) -> bool:
    return word(toks, k) in DEGREES and starts_number(toks, k + 1)


def _is_read_of(said: Statement, places: Collection[int]) -> bool:
    """Whether a value of it, and no time, begins at one of these places."""
    spans = [span for slot, span in said.spans.items() if slot not in NOT_HEDGED]
    return any(span.start <= place < span.end for span in spans for place in places)


def _sure(said: Statement) -> Statement:
    return replace(said, about=False) if isinstance(said, Mark | Drained) else said


def _estimated(said: Statement | Unclear) -> Statement | Unclear:
    return replace(said, about=True) if isinstance(said, Mark | Drained) else said


def _number(said: Statement | Unclear) -> int | None:
    if isinstance(said, Drained):
        return said.volume_ml
    return said.level_ml if isinstance(said, Mark) else None
