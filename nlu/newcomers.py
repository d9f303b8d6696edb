"""Cues of a patient who came with a drain: "fresh heart into 8 at 1830, one mediastinal tube".

Called by `recast`. What makes somebody new is a cue of its own; how many tubes came is no number of ours.
"""

from __future__ import annotations

from collections.abc import Iterator

from .clock import clocks
from .neighbours import phrase_of
from .numbers import Toks, is_digits, word
from .patterns.leads import BED_WORDS
from .pipeline import Cue, in_order

FRESH = frozenset({"fresh"})
ANEW = FRESH | {"new"}
NEW_ONES = frozenset({"new one", "a new one", "the new one"})
COUNTED = frozenset({"one", "two", "three"})
SINGLE = frozenset({"bed", "room", "rm", "tube", "drain", "number", "no", "#", "side"})
"""Behind these such a word names a bed or a tube."""
FRENCH = frozenset({"fr", "french", "f", "ch"})
THINNEST, THICKEST = 6, 40
"""French gauge of chest tubes. Common practice, no source."""
WITH = frozenset({"with", "w", "has", "had", "got"})
UNSURE = frozenset({"may", "might", "could", "maybe"})
"""With one of these nobody knows whether there is a drain: "new pt, may need a drain"."""
MOST = 4
"""Nobody has more tubes. Common practice, no source."""
OPERATIONS = frozenset(
    {"lobectomy", "thoracotomy", "pneumonectomy", "segmentectomy", "wedge", "vats", "decortication"}
    | {"bullectomy", "resection"}
)
AFTER = frozenset({"post", "after", "following", "for", "s", "status"})
NAMING = frozenset({"side", "place"})
FROM = frozenset({"theatre", "theater", "or", "ot", "pacu", "recovery", "surgery", "ed", "er", "icu", "itu"})
BEGINNING = frozenset({"level", "levelat", "opens", "canister", "inside"})
TOLD = frozenset({"amount", "output", "level", "levelat", "old", "canister", "kind", "what"})
"""Where one of these is told, a new one may be a canister, and a line of somebody is no arrival."""


def with_newcomers(cues: tuple[Cue, ...], toks: Toks, *, voice: bool) -> tuple[Cue, ...]:
    """The cues, with who is new told as such, and how many tubes there are said by no number."""
    cues = cues if OPERATIONS.isdisjoint(toks.words) else tuple(_of_operations(cues, toks))
    if voice or not any(cue.label == "tubeword" or cue.value == "placed" for cue in cues):
        return cues
    told = {cue.label for cue in cues}
    if "plan" in told and UNSURE.isdisjoint(toks.words) and _is_to_have_one(cues):
        return tuple(cue for cue in cues if cue.label != "arrival")
    found = _came_into(cues, toks) if "reason" in told else []
    if not found:
        came = TOLD.isdisjoint(told) and "reason" in told
        found = [part for cue in cues for part in (_arrived(cue, toks) if came else (cue,))]
    label = "timeword" if any(cue.label == "arrival" for cue in found) else "arrival"
    found += [Cue(label, "", k, k + 1) for k in range(len(toks)) if _has_arrived(k, toks)]
    if any(cue.label == "arrival" for cue in found):
        found += [Cue("opens", "behind", k, k + 2) for k in range(len(toks)) if _is_at_arrival(k, toks)]
        found = [c for c in found if c.label != "filler" or not _is_at_arrival(c.start, toks)]
    starts = {cue.start: cue for cue in cues}
    kinds = {cue.value for cue in cues if cue.label == "kind"}
    counts = {k: k + 1 for k in range(len(toks)) if _is_count(k, starts, toks)}
    if "placed" in kinds:
        counts |= {k: k + 2 for k in range(len(toks)) if _is_size(k, toks)}
    if not counts:
        return in_order(found)
    found = [cue for cue in found if cue.start not in counts]
    found += [Cue("filler", "", k, end) for k, end in counts.items()]
    return in_order(found)


def _of_operations(cues: tuple[Cue, ...], toks: Toks) -> Iterator[Cue]:
    """ "right lower lobectomy": where it was done, and no drain."""
    starts = {cue.start: cue for cue in cues}
    for cue in cues:
        nxt = cue
        while nxt.label in NAMING and nxt.end in starts:
            nxt = starts[nxt.end]
        of_lung = nxt.label == "reason" and word(toks, nxt.end - 1) in OPERATIONS
        of_lung &= word(toks, nxt.start) not in AFTER  # "a tube on the left post lobectomy"
        yield cue._replace(label="filler", value="") if of_lung and cue.label in NAMING else cue


def _arrived(cue: Cue, toks: Toks) -> Iterator[Cue]:
    """ "fresh heart", "fresh gsw", "new one": somebody is new, and the drain is one that came with them."""
    if cue.label == "reason" and word(toks, cue.start - 1) in FRESH:
        yield Cue("arrival", "", cue.start - 1, cue.start)
    if cue.label == "reason" and word(toks, cue.start) in FRESH and cue.end - cue.start > 1:
        yield Cue("arrival", "", cue.start, cue.start + 1)
        yield cue._replace(start=cue.start + 1)
    elif cue.label == "new" and phrase_of(cue, toks) in NEW_ONES:
        yield cue._replace(label="arrival", value="")
    else:
        yield cue


def _came_into(cues: tuple[Cue, ...], toks: Toks) -> list[Cue]:
    """ "fresh heart into 6 at 1830, canister at 60", "new valve back from theatre to bed 9": who came to a
    bed is new there, and what is in the canister is what it began with; nothing where nobody came."""
    if not any(c.label in BEGINNING or c.value == "back" for c in cues):
        return []
    for why in cues:
        start = why.start - (word(toks, why.start) not in FRESH)
        if why.label != "reason" or word(toks, start) not in ANEW:
            continue
        end = _behind_why(why, cues, toks)
        back = next((c.end for c in cues if c.value == "back" and c.start == end), end)
        whence = word(toks, end) == "from" and word(toks, end + 1) in FROM
        came = word(toks, start) in FRESH and (back > end or whence)
        if came or word(toks, back) in {"into", "to"}:
            kept = [c for c in cues if not end <= c.start < back and c.start not in {start, why.start}]
            way = max(back, end + 2 * whence)
            kept += [Cue("filler", "", end, way)] * (way > end)
            return [*kept, Cue("arrival", "into", start, start + 1), why._replace(start=start + 1)]
    return []


def _behind_why(why: Cue, cues: tuple[Cue, ...], toks: Toks) -> int:
    """Where what they had ends, and the bed behind it: "fresh VATS lobectomy bed 4 from PACU"."""
    ends = {c.start: c.end for c in cues if c.label == "reason"}
    end = why.end
    while end in ends:
        end = ends[end]
    bed = end + (word(toks, end) in BED_WORDS)
    return bed + 1 if bed > end and is_digits(toks, bed) else end


def _is_to_have_one(cues: tuple[Cue, ...]) -> bool:
    """ "new pt coming to 18, will have a R chest tube": the drain is to come."""
    told = [cue.label for cue in cues if cue.label in {"plan", "tubeword"} or cue.value == "placed"]
    return told[:1] == ["plan"]


def _has_arrived(k: int, toks: Toks) -> bool:
    """ "pt arrived 0350 from OR": when somebody came."""
    at = k + 1 + (word(toks, k + 1) in {"at", "@"})
    return (
        word(toks, k) in {"arrived", "admitted", "received"}
        and is_digits(toks, at)
        and bool(clocks(toks, at))
    )


def _is_at_arrival(k: int, toks: Toks) -> bool:
    """ "340 in canister on arrival": what it held when its patient came."""
    return word(toks, k) in {"on", "at"} and word(toks, k + 1) == "arrival"


def _is_size(k: int, toks: Toks) -> bool:
    """ "pigtail left 14fr", "28 french": how thick the tube is."""
    said, behind = word(toks, k), word(toks, k + 1)
    size = said.isdecimal() and THINNEST <= int(said[:4]) <= THICKEST and behind in FRENCH
    return size and word(toks, k - 1) not in SINGLE | {""}


def _is_how_many_joined(k: int, starts: dict[int, Cue], toks: Toks) -> bool:
    """ "new tubes, two joined into one box", "2 of them Y'd together", "had 2 chest tubes Y'd"."""
    if word(toks, k) not in COUNTED - {"one"} and word(toks, k) not in {"2", "3", "4"}:
        return False
    end = k + 1 + 2 * (toks.said[k + 1 : k + 3] == ("of", "them"))
    if end in starts and starts[end].label == "tubeword":
        end = starts[end].end
    return end in starts and starts[end].label == "join"


def _is_count(k: int, starts: dict[int, Cue], toks: Toks) -> bool:
    """ "one mediastinal tube", "with 2 left drains", "2 mediastinal tubes y'd", "two joined": how many."""
    said, before = word(toks, k), word(toks, k - 1)
    if _is_how_many_joined(k, starts, toks):
        return before not in SINGLE
    end = k + 1
    while end in starts and starts[end].label in NAMING:
        end = starts[end].end
    tube = starts.get(end)
    if tube is None or before in SINGLE or not (tube.label == "tubeword" or tube.value == "placed"):
        return False
    if end == k + 1 and tube.value != "placed":  # "two drains in at 1840"
        return False
    several = word(toks, tube.end - 1).endswith("s")
    if said.isdecimal():
        joined = tube.end in starts and starts[tube.end].label == "join"
        return 1 < int(said[:4]) <= MOST and several and (before in WITH or joined)
    return said == "one" or (said in COUNTED and several)
