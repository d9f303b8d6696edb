"""What all ways of one message are cut from: its words, its cues, and what can be read at each place.

Laid out once by `lattice`; the ways themselves are followed in `cuesteps` and `numbersteps`.
"""

from __future__ import annotations

from collections.abc import Mapping

from .claims import CLAIMED
from .cuesense import asks
from .neighbours import link_before
from .numbers import Toks
from .pipeline import Read
from .places import Places


class Ground:
    """A message as it was read, of one thread."""

    def __init__(self, read: Read, index: Mapping[str, str] | None, *, voice: bool) -> None:
        self.toks: Toks = read.tokens
        self.cues = {cue.start: cue for cue in read.cues}
        self.claims = {cue.start for cue in read.cues if cue.label == CLAIMED}
        self.theatre = {c.end - 1 for c in read.cues if c.label == "kind" and c.end - c.start > 1}
        self.broken = read.broken
        self.index = index
        self.voice = voice
        self.asks = any(asks(cue, read.tokens) for cue in read.cues)
        self.places = Places(read.tokens, index, voice)
        self.written = read.labelled

    def link(self, i: int) -> str:
        """The word that links a number here to the one before; the "or" of "back from OR" links none."""
        link = link_before(self.toks, i)
        return "" if link == "or" and i - 1 in self.theatre else link
