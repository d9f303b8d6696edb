"""Events told as carried out: "clamped at 1005 as per plan", "clamped 1815 as ordered".

A word for a plan or an order says otherwise that something lies ahead. Called by `recast`.
"""

from __future__ import annotations

from .ahead import with_ahead
from .items import FINDINGS
from .lookedfor import without_sought
from .numbers import Toks, word
from .patterns.asides import STAFF, TITLES
from .pipeline import Cue, in_order, overlaps

LINKS = frozenset({"as", "per"})
PLANNED = frozenset({"plan", "planned", "ordered", "order", "orders", "prescribed", "requested", "protocol"})
ADVICE = frozenset({"advice", "instruction", "instructions", "recommendation"})
WORD_OF = frozenset({"on", "at", "per", "under", "with"})
AGREED = ADVICE | {
    "advised",
    "instructed",
    "directed",
    "discussed",
    "agreed",
    "told",
    "recommended",
    "asked",
    "wanted",
    "requested",
}
"""Behind an event, with an "as" before these, on whose word it was done."""
FORESEEN = frozenset({"expected", "anticipated", "hoped"})
"""What was found is as it was foreseen: "bubbling continuously as expected"."""
HAPPENING = FINDINGS | {"what", "kind"}
DRAWN = frozenset({"marked", "drew", "measured"})
"""A line was drawn: "marked 23 at 0900 as planned, 600"."""
HINTS = LINKS | ADVICE
STOPS = frozenset({".", ";", "!", "but", "then"})
HAD = frozenset({"had", "needed", "managed"})
MOVES = frozenset({"move", "transfer", "shift"})
CHANGES = frozenset({"change", "swap", "replace", "exchange"})
UNREAL = frozenset({"have", "would've", "if", "might've", "may", "almost", "nearly", "never", "not"})
"""Before "had to" these say that it was not so."""
BEGUN = frozenset({"started", "commenced", "starting", "begun", "began", "on"})
ENDED = frozenset({"over", "ended", "done", "finished", "complete", "completed", "stopped", "off"})
OF_BED = frozenset({"bed", "filler", "side", "place", "tubeword"})
"""Between a clamp trial and what became of it only the bed and the tube are named."""
AHEAD = frozenset(
    {"clamp", "unclamp", "change", "swap", "remove", "pull", "move", "transfer", "exchange", "replace", "to"}
    | {"turn", "switch", "insert", "place", "discharge", "take", "put", "send"}
)
"""What begins with one of these is told to somebody, or planned."""
DONE_TO = frozenset(
    {"started", "on", "off", "applied", "removed", "closed", "done", "ended", "over", "released"}
)
"""What ends with one of these has happened: "clamp trial started"."""


def with_carried_out(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, what lies ahead as plans, and a plan that an event followed as words that say nothing."""
    cues = _with_trials(cues, toks) if "trial" in toks.words else cues
    cues = cues if HAD.isdisjoint(toks.words) else _with_had_to(cues, toks)
    return without_sought(with_ahead(_carried_out(cues, toks), toks), toks)


def _carried_out(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    if HINTS.isdisjoint(toks.words):
        return cues
    found: list[Cue] = []
    agreed = _agreed(cues, toks)
    for cue in in_order([*cues, *agreed]):
        start = _start(cue, toks)
        if start < cue.start and _has_happened(start, found, toks):
            found = [c for c in found if c.end <= start]
            cue = Cue("filler", "", start, cue.end)
        if cue not in agreed:
            found.append(cue)
    return tuple(found)


def _with_had_to(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    done = [meant for cue in cues if (meant := _had_to(cue, cues, toks)) is not cue]
    return in_order([*(c for c in cues if not overlaps(c, done)), *done]) if done else cues


def _had_to(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue:
    """ "had to change the canister on bed 5", "we've had to move 13 into 20": it is done."""
    verb = word(toks, cue.end - 1)
    had = word(toks, cue.start) == "to" and word(toks, cue.start - 1) in HAD
    done = had and cue.label == "plan" and word(toks, cue.start - 2) not in UNREAL
    if done and verb in MOVES and not {"to", "into"}.isdisjoint(toks.said[cue.end :]):
        return Cue("kind", "moved", cue.start - 1, cue.end)
    box = cue.end + (word(toks, cue.end) in {"the", "his", "her", "out", "a"})
    if done and verb in CHANGES and any(c.label == "canister" and c.start == box for c in cues):
        return Cue("kind", "exchanged", cue.start - 1, cue.end)
    return cue


def _with_trials(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """ "clamp trial 4B basal started 0915", "clamp trial for 12 over": it began or ended."""
    found = list(cues)
    for trial in cues:
        if trial.value != "clamped" or word(toks, trial.end - 1) not in {"trial", "on"}:
            continue
        end = next(k for k in range(trial.end, len(toks) + 1) if word(toks, k) in {"", ",", *STOPS})
        k = next((k for k in range(trial.end, end) if word(toks, k) in BEGUN | ENDED), end)
        between = [c for c in cues if trial.end <= c.start < k]
        if k == end or any(c.label not in OF_BED for c in between) or word(toks, k - 1) in {"be", "to"}:
            continue
        value = "clamped" if word(toks, k) in BEGUN else "unclamped"
        ends = [c.end for c in found if c.start <= k < c.end]  # "started at"
        found = [c for c in found if c is not trial and not c.start <= k < c.end]
        found += [Cue("filler", "", j, j + 1) for end in ends for j in range(k + 1, end)]
        found += [trial._replace(value=value), Cue("filler", "", k, k + 1)]
    return in_order(found)


def _agreed(cues: tuple[Cue, ...], toks: Toks) -> list[Cue]:
    """Words for whose advice it was, as plans."""
    taken = {k for cue in cues for k in range(cue.start, cue.end)}
    said = (k for k, text in enumerate(toks.said) if text in AGREED and k not in taken)
    return [Cue("plan", "", k, k + 1) for k in said]


def _start(cue: Cue, toks: Toks) -> int:
    """Where "as per plan", "as ordered" begins; the cue's own start where it is none of these."""
    start = cue.start
    if cue.label == "order" and word(toks, start) == "per" and word(toks, start - 1) == "as":
        return start - 1  # "clamped as per reg"
    if cue.label not in {"plan", "order"} or word(toks, cue.end - 1) not in PLANNED | AGREED | FORESEEN:
        return start
    if word(toks, cue.end - 1) in ADVICE:
        return next((k for k in range(start - 1, start - 4, -1) if word(toks, k) in WORD_OF), start)
    while word(toks, start - 1) in LINKS:
        start -= 1
    by = start - 1 - (word(toks, start - 2) in TITLES)
    whose = word(toks, start - 1) in STAFF or word(toks, start - 2) in TITLES
    return by - 1 if whose and word(toks, by - 1) == "as" else start  # "as surgeon asked"


def _has_happened(start: int, before: list[Cue], toks: Toks) -> bool:
    """Whether an event is told before it in the same clause, and no word says that it lies ahead."""
    events = [c for c in before if c.label in HAPPENING and c.value != "corrected"]
    events += [c for c in before if c.label in {"level", "bed"} and word(toks, c.start) in DRAWN]
    if not events or any(c.label in {"plan", "neg", "no", "order"} for c in before):
        return False
    event = events[-1]
    stopped = any(word(toks, k) in STOPS for k in range(event.end, start))
    bidden = word(toks, event.start) in AHEAD and word(toks, event.end - 1) not in DONE_TO
    return not stopped and not bidden and word(toks, event.start - 1) not in AHEAD
