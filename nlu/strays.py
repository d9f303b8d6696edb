"""A correction or a question that only the words of a remark make: asked, or left out beside what is whole.

"12 455 at 1806, possible typo": no other value is said, so nothing is put right. "Took 13 off suction when
housekeeping unplugged things": who tells what was done asks nothing. "Is it true we're getting a new
manager?" is of no drain. Called by `read` with what was read.
"""

from __future__ import annotations

from collections.abc import Sequence

from .again import Span
from .neighbours import begins_at, ends_at, phrase_of
from .numbers import Toks, is_digits, word
from .patterns.idle import LITTLE
from .patterns.leads import LINES, MANY_LINES
from .patterns.ofreading import OTHERS
from .patterns.ownclauses import DRAINS
from .pipeline import Cue, Read
from .statements import Asked, Corrected, Statement, Unclear
from .verdict import as_a_whole

STOPS = frozenset({".", ",", ";", "!", "?", "(", ")", "\n", "-", "and", "but"})
WRONG = frozenset(
    {"wrong", "error", "typo", "was wrong", "is wrong", "wrong number", "in error", "is a typo", "was a typo"}
    | {"wrong bed", "wrong time", "wrong tube", "wrong mark", "really", "actually", "was a mistake"}
)
"""With one of these something is put right where another value is said, or whose it is."""
_POINTING = """
it that this my mine earlier before last previous first old i sorry me should meant put wrote sent typed
entered instead actually make fix correct amend change update edit entry line mark message one read misread
looked charted logged gave them those which again column swapped transposed apologies apols previously value
reading
"""
POINTING = frozenset(_POINTING.split())
"""With one of these the clause is of a line that was sent."""
DONE = frozenset({"took", "turned", "switched", "put", "pulled", "moved", "swapped", "unplugged", "knocked"})
"""Who begins so tells what happened."""
OF_DRAIN = (
    DRAINS | LINES | MANY_LINES | frozenset({"total", "rate", "trend", "output", "due", "chart", "last"})
)
OF_UNIT = frozenset({"me", "repeat", "open", "beds", "handoff"})
FEWEST = 2
"""Numbers of what stands whole beside a remark."""


def without_strays(outcome: Sequence[Statement | Unclear], read: Read) -> tuple[Statement | Unclear, ...]:
    """What was read, with what only a remark tells asked or left out."""
    toks = read.tokens
    kept = tuple(s for s in outcome if not (isinstance(s, Asked) and _is_of_other(s, outcome, read)))
    asked = bool(kept) and all(isinstance(s, Asked) for s in kept)
    if asked and _is_told(toks):
        return tuple(as_a_whole(s, read.text) for s in kept if isinstance(s, Statement))
    return tuple(
        as_a_whole(s, read.text) if isinstance(s, Corrected) and _rights_nothing(s, read) else s for s in kept
    )


def _is_told(toks: Toks) -> bool:
    """ "took 18 off suction ...", "it's what was scribbled on the sheet": a telling, and no question."""
    pointed = word(toks, 0) in {"it's", "its", "that's", "thats"} and word(toks, 1) == "what"
    return "?" not in toks.words and (pointed or word(toks, 0) in DONE)


def _rights_nothing(said: Corrected, read: Read) -> bool:
    """Whether no other value is said, and all words of a correction are in remarks."""
    if said.level_ml is None or any((said.was_ml, said.to_bed, said.to_tube, said.to_at)):
        return False
    cues = [cue for cue in read.cues if cue.value == "corrected"]
    return bool(cues) and all(_is_remarked(cue, read.tokens) for cue in cues)


def _is_remarked(cue: Cue, toks: Toks) -> bool:
    """ "lunch was wrong again", "possible typo": apart from all figures, and of no line that was sent."""
    start, end = _clause(cue, toks)
    said = [word(toks, k) for k in range(start, end) if not cue.start <= k < cue.end]
    if phrase_of(cue, toks) not in WRONG or any(is_digits(toks, k) for k in range(start, end)):
        return False
    strange = [w for w in said if w not in LITTLE | POINTING]
    behind = sum(is_digits(toks, k) for k in range(start)) > FEWEST
    return bool(strange) or (behind and POINTING.isdisjoint(said))


def _clause(cue: Cue, toks: Toks) -> Span:
    return begins_at(STOPS, toks, cue.start), ends_at(STOPS, toks, cue.end)


def _is_of_other(said: Asked, outcome: Sequence[Statement | Unclear], read: Read) -> bool:
    """ "12 455 at 1806, is it true we're getting a new manager?": of no drain, beside what is whole."""
    if said.topic in OF_UNIT or all(isinstance(s, Asked | Unclear) for s in outcome):
        return False
    toks = read.tokens
    asking = [_clause(c, toks) for c in read.cues if c.label in {"question", "ask"}]
    words = [{word(toks, k) for k in range(*clause)} for clause in asking]
    return bool(words) and all(
        w & OTHERS and w.isdisjoint(OF_DRAIN) and not any(map(str.isdecimal, w)) for w in words
    )
