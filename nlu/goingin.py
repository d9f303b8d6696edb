"""Cues of a tube that went in: "chest drain in at 2140", "icd in, left side", "to one canister, in at 0320".

Called by `recast`. Where a tube "is in" says nothing new: "still has a drain in", "the drain in 9".
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from .clock import clocks
from .items import FULL_HOUR
from .numbers import Toks, is_digits, starts_number, word
from .patterns.leads import BED_WORDS, PUTS, TUBE_NAMES
from .patterns.nouns import TUBE
from .patterns.places import PLACES
from .pipeline import Cue, in_order

NOUNS = frozenset(TUBE.strip("()").replace("|", " ").split()) | {"drains", "icds", "pigtails"}
CANISTERS = frozenset(PLACES["canister"])
AT = frozenset({"at", "@"})
ADVERBS = frozenset({"just", "now", "finally"})
STOPS = frozenset({"", ",", ";", ".", "!", "and", "("})
BEHIND = STOPS | {"left", "right", "l", "r", "lt", "rt", "by", "today", "now", "just", "this", "overnight"}
"""Behind "drain in" these leave it an event."""
HOLDING = frozenset({"has", "have", "having", "with", "w", "still", "keeps", "keep", "leave", "same", "old"})
"""Before a tube that is in, these say that it has been there."""
GOINGS = frozenset({"left", "moved", "away"})
SIDED = TUBE_NAMES | {"sided", "side", "-", "chest", "second", "pigtail"}
WHOM = frozenset({"him", "her", "the", "patient", "pt"})
NAMING = frozenset({"a", "an", "the", "his", "her", "one", "two", "chest", "side", "sided"})


def with_going_in(cues: tuple[Cue, ...], toks: Toks, index: Mapping[str, str] | None) -> tuple[Cue, ...]:
    """The cues, with each tube that went in told as placed."""
    if toks.words.isdisjoint({"in", "into"}):
        return cues
    found = list(cues)
    for noun in cues:
        if noun.label == "tubeword" and word(toks, noun.end - 1) in NOUNS:
            found = _told(found, noun, toks, index)
    named = any(cue.label == "tubeword" for cue in cues) and CANISTERS.isdisjoint(toks.words)
    found = [_anew(cue, toks) if cue.label == "new" and named else cue for cue in found]
    found = [put for cue in found for put in (_put(cue, toks), cue) if put is not None]
    found = [put for cue in found for put in _put_into(cue, toks)]
    joined = any(cue.label == "join" for cue in cues) and not any(cue.label == "kind" for cue in cues)
    for k in list(_alone(toks))[:1] if joined else ():
        found = [*(c for c in found if c.start != k), Cue("kind", "placed", k, k + 1)]
    return in_order(found)


def _told(cues: list[Cue], noun: Cue, toks: Toks, index: Mapping[str, str] | None) -> list[Cue]:
    """The cues, this tube as placed where it went in; the "in" is then of the event, and not where it is."""
    end = noun.end
    while word(toks, end) in ADVERBS:
        end += 1
    if word(toks, end) != "in" or _goes_with(cues, noun, toks) or not _went_in(noun, end + 1, toks, index):
        return cues
    kept = [c for c in cues if c.end <= noun.start or c.start > end]
    placed = noun._replace(label="kind", value="placed")
    return [*kept, placed, Cue("filler", "", noun.end, end + 1)]


def _goes_with(cues: list[Cue], noun: Cue, toks: Toks) -> bool:
    """ "transferred to stepdown with the tube in at 0840": how somebody went, and when."""
    start = noun.start - (word(toks, noun.start - 1) in NAMING)
    start -= word(toks, start - 1) in NAMING
    went = any(c.value in GOINGS and c.label == "kind" and c.start < start for c in cues)
    return went and word(toks, start - 1) in {"with", "w"}


def _went_in(noun: Cue, i: int, toks: Toks, index: Mapping[str, str] | None) -> bool:
    if _is_timed(toks, i, index):
        return True
    start = noun.start
    while word(toks, start - 1) in NAMING | BEHIND - STOPS:
        start -= 1
    reason = word(toks, i) == "for" and not starts_number(toks, i + 1)
    return (reason or word(toks, i) in BEHIND) and word(toks, start - 1) not in HOLDING


def _is_timed(toks: Toks, i: int, index: Mapping[str, str] | None) -> bool:
    """ "in at 2140", "in 0440": when it went in, and no bed."""
    if word(toks, i) in AT:
        return bool(clocks(toks, i + 1))
    whole = is_digits(toks, i) and any(c.colon or len(word(toks, i)) == FULL_HOUR for _, c in clocks(toks, i))
    return whole and not (index and word(toks, i) in index)


def _anew(cue: Cue, toks: Toks) -> Cue:
    """ "pigtail fell out so new one put in": a tube, where no canister is named."""
    end = cue.end + (word(toks, cue.end) in {"was", "has", "been", "just"})
    put = word(toks, end) in PUTS | {"went"} and word(toks, end + 1) == "in"
    one = word(toks, cue.end - 1) == "one"
    return Cue("kind", "placed", cue.start, end + 2) if put and one else cue


def _put(cue: Cue, toks: Toks) -> Cue | None:
    """ "the team put a mediastinal in 4": a tube told by its name alone."""
    start = cue.start - (word(toks, cue.start - 1) in NAMING)
    named = cue.label == "place" and word(toks, cue.end) in {"in", "into"}
    put = named and start < cue.start and word(toks, start - 1) in PUTS
    return Cue("kind", "placed", start - 1, cue.start) if put else None


def _put_into(cue: Cue, toks: Toks) -> Iterator[Cue]:
    """ "the team put a left sided tube into bed 27", "the tube was put into bed 7 at 1730"."""
    if cue.label != "tubeword" or word(toks, cue.end - 1) not in NOUNS:
        yield cue
        return
    start, end = cue.start, cue.end
    while word(toks, start - 1) in SIDED:
        start -= 1
    anew = word(toks, start - 1) in {"a", "an", "another", "new"} and word(toks, end) in {"in", "into"}
    if anew and word(toks, start - 2) in PUTS and word(toks, end + 1) in BED_WORDS | WHOM:
        yield Cue("kind", "placed", start - 2, start)
        yield cue
        return
    verb = end + (word(toks, end) in {"was", "got"}) + 2 * (toks.said[end : end + 2] == ("has", "been"))
    put = verb > end and word(toks, verb) in PUTS and word(toks, verb + 1) == "into"
    yield Cue("kind", "placed", cue.start, verb + 1) if put and word(toks, verb + 2) in BED_WORDS else cue


def _alone(toks: Toks) -> Iterator[int]:
    """ "left and right tubes to one canister bed 14, in at 0320": when they went in."""
    return (
        k
        for k in range(len(toks))
        if word(toks, k) == "in" and word(toks, k + 1) in AT and clocks(toks, k + 2)
    )
