"""A line behind why its bed was not read in time: "couldn't get to bed 5 at nine, at ten past ten 730".

The time that was missed is of no line. What is left without it must be one whole line of that bed with a time
of its own. Called by `read`, for messages that would be asked.
"""

from __future__ import annotations

from collections.abc import Iterator

from .again import Again, Told
from .clock import clocks
from .neighbours import is_stop_among
from .numbers import Toks, numbers, starts_number, word
from .patterns.leads import BED_WORDS
from .statements import Checked, Mark

HINDERED = frozenset(
    {
        "couldn't",
        "couldnt",
        "missed",
        "skipped",
        "unable",
        "supposed",
        "meant",
        "due",
        "delayed",
        "didn't",
        "didnt",
        "wasn't",
    }
    | {"wasnt", "could", "held", "late", "behind"}
)
"""With one of these it is told that a line was not read when it should have been."""
WHEN = frozenset({"at", "for", "by", "@", "due"})
STOPS = frozenset({",", ".", ";", ":", "-", ")", "but"})
TELLING = frozenset({"kind", "what", "leak", "fluid", "tidal", "amount", "output", "same"})
"""Cues that tell of the drain: such a head is more than why."""
MOST_STOPS = 3


def hindered(again: Again) -> Told:
    """The line that was read later; nothing where the message is not so."""
    toks = again.toks
    if toks.words.isdisjoint(HINDERED):
        return ()
    bed = _bed(toks)
    if bed is None:
        return ()
    for end in _ends(toks, bed[1]):
        head = [*range(bed[0]), *range(bed[1], end)]
        if HINDERED.isdisjoint(word(toks, k) for k in head) or not _is_when(again, head):
            continue
        told = again.without((0, bed[0]), (bed[1], end))
        marks = [s for s in told if isinstance(s, Mark)]
        if len(marks) == 1 and marks[0].at is not None and all(isinstance(s, Mark | Checked) for s in told):
            return told
    return ()


def _bed(toks: Toks) -> tuple[int, int] | None:
    """Where the only bed that is said by its word begins and ends."""
    found = [k for k in range(len(toks)) if word(toks, k) in BED_WORDS and starts_number(toks, k + 1)]
    if len(found) != 1:
        return None
    k = found[0]
    ends = [n.end for n in numbers(toks, k + 1)]
    lettered = max(ends, default=k + 2)
    return k, lettered


def _ends(toks: Toks, begun: int) -> Iterator[int]:
    """The first stops behind the bed: the head ends at one of them."""
    stops = [k for k in range(begun, len(toks)) if is_stop_among(STOPS, toks, k)]
    yield from stops[:MOST_STOPS]


def _is_when(again: Again, head: list[int]) -> bool:
    """Whether the head tells nothing of the drain, and its only number is when the line was missed."""
    toks, inside = again.toks, set(head)
    if any(c.label in TELLING for c in again.cues if c.start in inside):
        return False
    begun = [k for k in head if starts_number(toks, k)]
    times = [(k, end) for k in begun[:1] for end, _ in clocks(toks, k) if word(toks, k - 1) in WHEN]
    return any(set(begun) <= set(range(k, end)) for k, end in times)
