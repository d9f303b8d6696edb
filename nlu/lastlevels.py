"""Cues of what a canister or a tube ended with, told beside its end: "pulled at 1839, last 750".

Part of `endings`, which calls these where their words are in the message.
"""

from __future__ import annotations

from collections.abc import Callable

from .clock import clocks
from .numbers import Toks, is_digits, numbers, word
from .oldones import CANISTERS, FRESH, STOPS, TAKEN, Message, is_timed, passes_bed
from .patterns.levels import MILLILITRES
from .pipeline import Cue

ENDED = frozenset({"removed", "exchanged"})
SAYING = frozenset({"was", "is", "at", "of", ":", "=", "about"})
BEHIND = STOPS | {"when", "total", "so", "final"}
WHOSE = frozenset({"the", "his", "her", "we", "i", "it", "was"})
ENOUGH = 60
"""mL: "with 20" may be of the suction, "with 2" of sutures."""


def _last_of(said: Message) -> list[Cue]:
    """ "ct pulled at 1839 last 750", "changed 1640, last was 1210": what it showed, and no question."""
    found = []
    for cue in said.cues:
        end = _past(said.toks, cue.end, SAYING)
        if cue.value == "last" and _is_ended(said, cue.start) and _is_whole(said, end):
            found.append(Cue("old", "", cue.start, end))
    return found


def _with(said: Message) -> list[Cue]:
    """ "tube out 1100 with 1580": what was in its canister then."""
    toks = said.toks
    for k in range(1, len(toks)):
        if word(toks, k) == "with" and _is_ended(said, k) and _is_whole(said, k + 1, ENOUGH):
            return [Cue("old", "", k, k + 1)]
    return []


def _came_off(said: Message) -> list[Cue]:
    """ "canister out at 1270, new one on at 1855": what the one held that came off."""
    toks = said.toks
    fresh = [c.start for c in said.cues if c.value == "exchanged" and word(toks, c.start) in FRESH]
    for k in range(fresh[0] if fresh else 0):
        off = word(toks, k) in CANISTERS and word(toks, k + 1) in TAKEN and word(toks, k - 1) not in FRESH
        if off and word(toks, k + 2) in {"at", "with", "on"} and _is_whole(said, k + 3, ENOUGH):
            return [Cue("old", "", k, k + 3)]
    return []


def _full_with(said: Message) -> list[Cue]:
    """ "box full 1400, changed 1806", "canister hit 1800, new one on at 1830": what it held when changed."""
    toks = said.toks
    for k in range(1, len(toks)):
        full = word(toks, k) == "full" and not CANISTERS.isdisjoint(toks.said[max(0, k - 2) : k])
        if not full and word(toks, k) not in {"hit", "reached"}:
            continue
        end = max((n.end for n in numbers(toks, k + 1) if n.value >= ENOUGH), default=0)
        done = _past(toks, _past(toks, end, MILLILITRES), STOPS - {""} | {"so"})
        if end and any(c.value == "exchanged" and c.start == done for c in said.cues):
            return [Cue("old", "", k, k + 1)]
    return []


def _at_removal(said: Message) -> list[Cue]:
    """ "drain pulled 1430 at 790": behind its time, what it stood at, which can be no time."""
    toks = said.toks
    for k in range(2, len(toks)) if said.tells("removed") else ():
        led = word(toks, k) == "at" and _is_ended(said, k) and _is_whole(said, k + 1, ENOUGH)
        ended = next((c.end for c in said.cues if c.value == "removed"), k)
        timed = any(is_timed(toks, j) for j in range(ended, k))
        if led and timed and not clocks(toks, k + 1) and STOPS.isdisjoint(toks.said[ended:k]):
            return [Cue("old", "", k, k + 1)]
    return []


def _when_changed(said: Message) -> list[Cue]:
    """ "16 at 1210 when canister changed at 6:50am": what it held, and no question."""
    toks = said.toks
    if "?" in toks.words:
        return []
    for cue in said.cues:
        start = cue.start
        while start > 0 and (is_digits(toks, start - 1) or word(toks, start - 1) in MILLILITRES):
            start -= 1
        done = _past(toks, cue.end, WHOSE)
        changed = any(c.value in ENDED and done in {c.start, c.end - 1} for c in said.cues)
        led = start < cue.start and word(toks, start - 1) in SAYING | {"read", "had"}
        timed = any(is_timed(toks, k) for k in range(done, len(toks)))
        if word(toks, cue.start) == "when" and cue.label == "question" and changed and led:
            told = [Cue("old", "", start - 1, start)] if timed or not is_timed(toks, start) else []
            return [*told, Cue("filler" if told else "word", "when", cue.start, cue.end)]
    return []


def _is_ended(said: Message, k: int) -> bool:
    """Whether the last event told before is the end of what one bed has, not "new box on with 120"."""
    events = [c for c in said.cues if c.label in {"kind", "what"} and c.end <= k]
    last = events[-1] if events else None
    ended = last is not None and last.value in ENDED and word(said.toks, last.start) not in FRESH
    return ended and last is not None and not passes_bed(said, last.end, k)


def _is_whole(said: Message, k: int, least: int = 0) -> bool:
    """Whether a number of mL stands here that nothing makes another: not "last 24 h", "with 20 of suction";
    nor "out at 1850", which may say when."""
    toks = said.toks
    if word(toks, k - 1) == "at" and is_timed(toks, k):
        return False
    value, end = max(((n.value, n.end) for n in numbers(toks, k)), key=lambda n: n[1], default=(-1, k))
    unit = _past(toks, end, MILLILITRES)
    behind = word(toks, unit) in BEHIND or word(toks, unit) in {"at", "@"} or is_digits(toks, unit)
    return value >= least and behind


def _past(toks: Toks, k: int, words: frozenset[str]) -> int:
    while word(toks, k) in words:
        k += 1
    return k


LAST_LEVELS: tuple[tuple[str, Callable[[Message], list[Cue]]], ...] = (
    ("last", _last_of),
    ("with", _with),
    ("when", _when_changed),
    *((full, _full_with) for full in ("full", "hit", "reached")),
    *((out, _at_removal) for out in ("pulled", "removed", "out")),
    *((off, _came_off) for off in sorted(TAKEN)),
)
"""Each with the word that it cannot do without."""
