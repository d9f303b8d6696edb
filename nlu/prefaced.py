"""Cues of what a sentence says beside its line and tells nothing of it: "could you put down 1010 for bed 21".

"she forgot to mention that ...", "I have been asked to write that ...", "first, ... second, ...". Called by
`recast`; `others` asks whether a sign of question only ends a request.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterator
from itertools import accumulate

from .numbers import Toks, is_digits
from .patterns import prefaces
from .patterns.leads import BED_WORDS
from .pipeline import Cue, with_found


def _words(pattern: str) -> re.Pattern[str]:
    return re.compile(rf"(?<![\w'])(?:{pattern})(?![\w'])")


PREFACES = tuple(map(_words, prefaces.PREFACES))
ASKED, THEN, COMING, IT_ROSE, OPEN_AGAIN = map(
    _words, (prefaces.ASKED, prefaces.THEN, prefaces.COMING, prefaces.IT_ROSE, prefaces.OPEN_AGAIN)
)
RIGHT_DOWN, ON_VALVE, SET_BACK, BACK_ON, BY_WHEN = map(
    _words, (prefaces.RIGHT_DOWN, prefaces.ON_VALVE, prefaces.SET_BACK, prefaces.BACK_ON, prefaces.BY_WHEN)
)
MUCH_THE_SAME, BACK_LATER = map(re.compile, (prefaces.MUCH_THE_SAME, prefaces.BACK_LATER))
NOTHING_IN = re.compile(prefaces.NOTHING_IN)
STANDS = re.compile(prefaces.STANDS)
MEANT_WELL, NUMBERED, HEADING = map(re.compile, (prefaces.MEANT_WELL, prefaces.NUMBERED, prefaces.HEADING))
LEAST = 3
"""Digits of a line."""


def prefaced(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, with each such preface as a word that says nothing."""
    stands = not (toks.words.isdisjoint(prefaces.PUTS_RIGHT) or toks.words.isdisjoint(prefaces.FINE))
    first = not toks.words.isdisjoint(prefaces.FIRST)
    if not (first or stands):
        return cues
    said = _Said(toks)
    found = [*said.prefaces(), *said.of_line(), *said.told()] if first else []
    found += said.stands() if stands else ()
    return with_found(cues, found) if found else cues


def is_request(toks: Toks) -> bool:
    """ "could you put down 1010 for bed 21?": what is to be written, and nothing that is asked."""
    said = " ".join(toks.said[: len(toks)])
    return _has_line(toks) and said.count("?") == 1 and ASKED.search(said) is not None


def _has_line(toks: Toks) -> bool:
    lined = any(is_digits(toks, k) and len(toks.said[k]) >= LEAST for k in range(len(toks)))
    return lined and not BED_WORDS.isdisjoint(toks.words) and prefaces.RIGHTING.isdisjoint(toks.words)


class _Said:
    """The words of a message in one line, and which word stands where in it."""

    def __init__(self, toks: Toks) -> None:
        self.toks = toks
        self.text = " ".join(toks.said[: len(toks)])
        self.ends = list(accumulate(len(text) + 1 for text in toks.said[: len(toks)]))

    def prefaces(self) -> Iterator[Cue]:
        """What only leads to what is told."""
        taken = 0
        for pattern in PREFACES:
            for match in pattern.finditer(self.text):
                cue = self._cue(match, "filler")
                if cue.start >= taken:
                    taken = cue.end
                    yield cue
        plain = [MEANT_WELL, HEADING, COMING, RIGHT_DOWN]
        plain += [NOTHING_IN] * ("nothing" in self.toks.words)
        plain += [BY_WHEN] * ("beds" in self.toks.words)
        plain += [BACK_LATER] * (not prefaces.GONE.isdisjoint(self.toks.words))
        plain += [ON_VALVE] * (not prefaces.OURS.isdisjoint(self.toks.words))
        for pattern in plain:
            yield from (self._cue(match, "filler", group=1) for match in pattern.finditer(self.text))

    def of_line(self) -> Iterator[Cue]:
        """Where a line is to be written down, or comes first or second."""
        if not _has_line(self.toks):
            return
        yield from (self._cue(match, "filler") for match in ASKED.finditer(self.text))
        for pattern in (NUMBERED, MUCH_THE_SAME):
            yield from (self._cue(match, "filler", group=1) for match in pattern.finditer(self.text))

    def stands(self) -> Iterator[Cue]:
        """What is right as it is beside what is put right: "the 0500 is fine", "7 is the right bed but"."""
        return (self._cue(m, "filler", group=m.lastindex or 0) for m in STANDS.finditer(self.text))

    def told(self) -> Iterator[Cue]:
        """What the words tell here: "the bottle then showed 345", "it went to 720", "it is open again"."""
        words = self.toks.words
        yield from (self._cue(match, "level", group=1) for match in THEN.finditer(self.text))
        if prefaces.OF_OTHERS.isdisjoint(words) and not prefaces.OURS.isdisjoint(words):
            yield from (self._cue(match, "levelat", group=1) for match in IT_ROSE.finditer(self.text))
        if not words.isdisjoint({"clamped", "clamp"}):
            for match in OPEN_AGAIN.finditer(self.text):
                yield self._cue(match, "what", "unclamped", group=match.lastindex or 0)
        if "suction" in words:
            yield from (self._cue(match, "suction", group=1) for match in SET_BACK.finditer(self.text))
        if {"suction", "off"} <= words:
            for match in BACK_ON.finditer(self.text):
                yield self._cue(match, "what", "suction_on", group=1)

    def _cue(self, match: re.Match[str], label: str, value: str = "", *, group: int = 0) -> Cue:
        start, end = match.span(group)
        end = start + len(match.group(group).rstrip())
        return Cue(label, value, bisect_right(self.ends, start), bisect_right(self.ends, end - 1) + 1)
