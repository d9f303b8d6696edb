"""A message that would be asked as a whole, read again: some of its words, each at its place.

Whoever sees that a message falls into parts, or that words only stand around it, asks here what is left
without the others: `apart`, `eachtube`, `zipped` and `framed`, called by `read` one after the other. What was
asked the first time is answered only by what is whole: every statement names its bed, and nothing is asked.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace
from functools import cached_property

from . import statements
from .claims import CLAIMED
from .measured import measured
from .numbers import starts_number, word
from .patterns.leads import SHORT_BED_WORDS
from .pipeline import Cue, Read, pipeline
from .sentence import Ward
from .statements import Statement, Unclear
from .verdict import Outcome

Told = tuple[Statement, ...]
"""What is whole; nothing where it is not."""
Span = tuple[int, int]
"""The first word or sign of some, and the one behind them."""


def every(read: Iterable[Told]) -> list[Told]:
    """All that is read, in order; none where one is not whole, and then no more is read."""
    found: list[Told] = []
    for told in read:
        if not told:
            return []
        found.append(told)
    return found


class Again:
    """A message as it was read the first time, its cues as they are meant (`meant`), and how a part of it
    is read (`outcome`)."""

    def __init__(self, read: Read, meant: Read, ward: Ward, outcome: Callable[[Read, Ward], Outcome]) -> None:
        self.text = read.text
        self.read = read
        self.meant = meant
        self.toks = read.tokens
        self.ward = ward
        self._outcome = outcome

    @cached_property
    def cues(self) -> tuple[Cue, ...]:
        """The cues that were said, those of other measures as such."""
        return measured(self.read.cues, self.toks)

    @cached_property
    def claimed(self) -> frozenset[int]:
        """The places of what is a value of another measure: "rr 22"."""
        return frozenset([k for c in self.cues if c.label == CLAIMED for k in range(c.start, c.end)])

    def part(self, start: int, end: int) -> Told:
        """What the words from one place to another say alone."""
        return self.without((0, start), (end, len(self.toks)))

    def without(self, *spans: Span) -> Told:
        """What the message says without these words."""
        outcome = self.outcome_without(*spans)
        told = tuple(s for s in outcome if isinstance(s, Statement) and s.bed is not None)
        return told if len(told) == len(outcome) else ()

    def outcome_without(self, *spans: Span, at: int | None = None, parting: Iterable[int] = ()) -> Outcome:
        """The same with what it asks; nothing where no bed can be left. Before the word `at` an "at" is
        written, in place of the sign or the blank that stands there, and commas for the signs `parting`."""
        left_out = [span for span in spans if span[0] < span[1]]
        if any(self._leaves_verb(*span) for span in left_out):
            return ()
        if not self._may_name_bed(left_out) or any(self._is_behind_dash(start) for start, _ in left_out):
            return ()
        text = self._blanked(left_out, parting).rstrip(" ,;")
        place = self.toks[at].start - 1 if at is not None else 0
        if at is not None:
            text = f"{text[: max(place, 0)]}@{text[place + 1 :]}"
        outcome = self._outcome(pipeline().read(text, voice=self.ward.voice), self.ward)
        if at is not None and any(_is_no_time(said, place + 1) for said in outcome):
            return ()
        if place >= 0:
            return outcome
        return tuple(moved(said, -1) if isinstance(said, Statement) else said for said in outcome)

    def told(self, said: Iterable[str | Span]) -> Told:
        """What these say one behind the other, words or places of letters in the message, where each value
        keeps its place; nothing where it asks or names no bed."""
        outcome = self.outcome_of(said)
        told = tuple(s for s in outcome if isinstance(s, Statement) and s.bed is not None)
        return told if len(told) == len(outcome) else ()

    def outcome_of(self, said: Iterable[str | Span]) -> Outcome:
        """The same with what it asks."""
        text, places = "", []
        for each in said:
            if isinstance(each, str):
                text += each
                continue
            places.append((len(text), each[0] - len(text)))
            text += self.text[each[0] : each[1]]
        outcome = self._outcome(pipeline().read(text, voice=self.ward.voice), self.ward)
        return tuple(_placed(s, places) if isinstance(s, Statement) else s for s in outcome)

    def said(self, start: int, end: int) -> str:
        """These words as they stand in the message."""
        return self.text[self.toks[start].start : self.toks[end - 1].end]

    def _blanked(self, spans: Iterable[Span], parting: Iterable[int]) -> str:
        """The message with blanks for these words and commas for these signs, so that all keeps its place."""
        text = self.text
        for k in parting:
            text = f"{text[: self.toks[k].start]},{text[self.toks[k].start + 1 :]}"
        for start, end in spans:
            first, last = self.toks[start].start, self.toks[end - 1].end
            text = text[:first] + " " * (last - first) + text[last:]
        return text

    def _is_behind_dash(self, start: int) -> bool:
        """ "leak - told the doctor": without what follows, the dash behind the sign would be a minus."""
        signs = (cue.end for cue in self.cues if cue.label in {"leak", "tidal"})
        return start - 1 in signs and word(self.toks, start - 1) == "-"

    def _leaves_verb(self, start: int, end: int) -> bool:
        """ "line 640, the spinal drain is at 10 | and gave 12": whether what it did would be left."""
        joined = start < end and word(self.toks, end) in {"and", "&"}
        return joined and any(cue.start == end + 1 and cue.label == "amount" for cue in self.cues)

    def _may_name_bed(self, spans: Iterable[Span]) -> bool:
        """Whether a number or a word for a bed is left; a bed whose label has digits needs one."""
        toks, labels = self.toks, self.ward.index
        if labels is None or not all(any(map(str.isdecimal, label)) for label in labels):
            return True
        out = {k for start, end in spans for k in range(start, end)}
        left = (k for k in range(len(toks)) if k not in out)
        return any(starts_number(toks, k) or word(toks, k) in SHORT_BED_WORDS for k in left)


def _is_no_time(said: Statement | Unclear, place: int) -> bool:
    """ "8 clamped 1853, 20 1830 1900": whether the time of all was read as a line beside one of them."""
    spans = said.spans if isinstance(said, Statement) else {}
    return any(slot != "at" and span.start <= place < span.end for slot, span in spans.items())


def moved(said: Statement, by: int) -> Statement:
    """The same with its values so many places behind where they stood."""
    spans = {slot: statements.Span(at.start + by, at.end + by) for slot, at in said.spans.items()}
    return replace(said, spans=spans)


def _placed(said: Statement, places: Iterable[Span]) -> Statement:
    """The same with its values at their place in the message; what was added has none there."""
    spans = {}
    for slot, at in said.spans.items():
        shift = next((shift for start, shift in reversed([*places]) if start <= at.start), None)
        if shift is not None:
            spans[slot] = statements.Span(at.start + shift, at.end + shift)
    return replace(said, spans=spans)
