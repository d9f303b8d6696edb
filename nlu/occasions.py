"""Cues that only say when something was found or happened: "lifted during transfer", "since the move".

Called by `recast`.
"""

from __future__ import annotations

from .items import FINDINGS
from .neighbours import number_follows
from .numbers import Toks, word
from .patterns.leads import BED_WORDS
from .pipeline import Cue

OCCASIONS = frozenset({"during", "since", "after", "while", "whilst", "following", "with", "on"})
OWN = frozenset({"the", "a", "his", "her", "their", "this", "that"})
GOINGS = frozenset({"move", "transfer", "moving", "transferring", "transferred", "moved"})
HAPPENED = FINDINGS | {"what"}
PLACED = frozenset({"to", "into", "in", "from", "back", "over"})


def with_occasions(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, each move that is only when something else was so as a word that says nothing more of it."""
    if GOINGS.isdisjoint(toks.words) or not any(c.label in HAPPENED for c in cues):
        return cues
    return tuple(_meant(cue, toks) for cue in cues)


def _meant(cue: Cue, toks: Toks) -> Cue:
    """ "during transfer to bed 9" tells of the bed as well."""
    if cue.value != "moved" or cue.end - cue.start > 1 or word(toks, cue.start) not in GOINGS:
        return cue
    before = cue.start - 1
    while word(toks, before) in OWN:
        before -= 1
    behind = word(toks, cue.end)
    going = behind in PLACED | BED_WORDS or number_follows(toks, cue.end)
    return (
        cue if going or word(toks, before) not in OCCASIONS else cue._replace(label="word", value="transfer")
    )
