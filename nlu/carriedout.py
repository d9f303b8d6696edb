"""Events told as carried out: "clamped at 1005 as per plan", "clamped 1815 as ordered".

A word for a plan or an order says otherwise that something lies ahead. Called by `recast`.
"""

from __future__ import annotations

from .numbers import Toks, word
from .pipeline import Cue

LINKS = frozenset({"as", "per"})
PLANNED = frozenset({"plan", "planned", "ordered", "order", "orders", "prescribed", "requested", "protocol"})
STOPS = frozenset({".", ";", "!", "but", "then"})
AHEAD = frozenset(
    {"clamp", "unclamp", "change", "swap", "remove", "pull", "move", "transfer", "exchange", "replace", "to"}
    | {"turn", "switch", "insert", "place", "discharge", "take", "put", "send"}
)
"""What begins with one of these is told to somebody, or planned."""
DONE = "done"


def with_carried_out(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, a plan or an order that an event followed as a word that says nothing more of it."""
    if LINKS.isdisjoint(toks.words):
        return cues
    found: list[Cue] = []
    for cue in cues:
        start = _start(cue, toks)
        if start < cue.start and _has_happened(start, found, toks):
            found = [c for c in found if c.end <= start]
            cue = Cue("word", DONE, start, cue.end)
        found.append(cue)
    return tuple(found)


def _start(cue: Cue, toks: Toks) -> int:
    """Where "as per plan", "as ordered" begins; the cue's own start where it is none of these."""
    start = cue.start
    if cue.label not in {"plan", "order"} or word(toks, cue.end - 1) not in PLANNED:
        return start
    while word(toks, start - 1) in LINKS:
        start -= 1
    return start


def _has_happened(start: int, before: list[Cue], toks: Toks) -> bool:
    """Whether an event is told before it in the same clause, and no word says that it lies ahead."""
    events = [c for c in before if c.label in {"what", "kind"} and c.value != "corrected"]
    if not events or any(c.label in {"plan", "neg", "no", "order"} for c in before):
        return False
    event = events[-1]
    stopped = any(word(toks, k) in STOPS for k in range(event.end, start))
    return not stopped and word(toks, event.start) not in AHEAD and word(toks, event.start - 1) not in AHEAD
