"""What the old canister held, as cues: "bottle changed, had 1505 in it", "old box off 4 with 1655 in it".

Part of `endings`, which calls these where their words are in the message, and uses what else is here.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from itertools import pairwise
from typing import NamedTuple, TypeAlias

from .clock import clocks
from .numbers import Toks, is_digits, numbers, starts_number, word
from .patterns.leads import SHORT_BED_WORDS
from .patterns.levels import MILLILITRES
from .patterns.places import PLACES
from .pipeline import Cue

STOPS = frozenset({"", ",", ";", ".", "!", "and", "then"})
CANISTERS = frozenset(PLACES["canister"])
FRESH = frozenset({"new", "old", "fresh", "same"})
PARTS = (
    ("three", "quarter"),
    ("three", "quarters"),
    ("three", "-", "quarters"),
    ("3", "/", "4"),
    ("half",),
    ("halfway",),
)
NEARLY = frozenset({"nearly", "almost", "about", "is", "was", "over", "around", "past", "at"})
HELD = frozenset({"had", "with", "contained", "held", "was"})
"""Before a number these say what the canister held that was changed."""
TAKEN = frozenset({"off", "down", "out"})
CHANGES = frozenset({"changed", "swapped", "replaced", "switched", "exchanged", "change", "swap", "put"})
CHANGED = frozenset({"changed", "swapped", "replaced", "exchanged"})
OF_BED = SHORT_BED_WORDS | {"of", "in", "on", "for", "room"}
NEAR = 3
"""Words of "in it now"."""
UNKNOWN = frozenset({"unknown", "unk", "unrecorded", "unreadable", "no", "without"})
Labelled: TypeAlias = Mapping[int, tuple[int, str]]


class Message(NamedTuple):
    """The words and cues of a message, and its beds."""

    cues: tuple[Cue, ...]
    toks: Toks
    beds: Labelled
    """Labels of the unit that are more than a number: where each starts, its end, the label."""

    def tells(self, *values: str) -> bool:
        """Whether one of these events is told."""
        return any(c.label == "kind" and c.value in values for c in self.cues)


def passes_bed(said: Message, start: int, end: int) -> bool:
    """Whether another bed is begun between: "tube out of 13 at 1140, bed 14 total 330"."""
    return any(
        word(said.toks, k) in SHORT_BED_WORDS and word(said.toks, k - 1) in STOPS
        for k in range(start + 1, end)
    )


def is_timed(toks: Toks, k: int) -> bool:
    """Whether a time that can be nothing else stands here, perhaps behind "at"."""
    k += word(toks, k) in {"at", "@"}
    return any(clock.sure or clock.colon or clock.style == "24" for _, clock in clocks(toks, k))


def _this_one(said: Message) -> list[Cue]:
    """ "old was 1850, and this one 30": of the canister that is there now."""
    toks, found = said.toks, []
    olds = [c.end for c in said.cues if c.label == "old"]
    for k in range(1, len(toks)) if olds and said.tells("exchanged") else ():
        end = k + 2 + (word(toks, k + 2) in {"is", "at", "on", "reads"})
        this_one = word(toks, k) == "this" and word(toks, k + 1) == "one"
        if this_one and olds[0] < k and starts_number(toks, end):
            found.append(Cue("new", "", k, end))
    return found


def _unknown(said: Message) -> list[Cue]:
    """ "unknown final, 1830", "old level unknown": a number there is no final level."""
    toks, found = said.toks, []
    for cue in said.cues:
        start = cue.start - (word(toks, cue.start - 1) in UNKNOWN)
        end = cue.end + (word(toks, cue.end) in {"is", "was"})
        end = end + 1 if word(toks, end) in UNKNOWN else cue.end
        if cue.label == "old" and end - start > cue.end - cue.start:
            found.append(Cue("filler", "", start, end))
    return found


def _part_full(said: Message) -> list[Cue]:
    """ "box nearly three quarters, changed it": how full it was, beside what was in it in millilitres."""
    toks, found = said.toks, []
    whole = said.tells("exchanged") and any(c.label == "old" for c in said.cues)
    for k in range(1, len(toks)) if whole else ():
        part = next((p for p in PARTS if toks.said[k : k + len(p)] == p), ())
        end = k + len(part) + (word(toks, k + len(part)) == "full")
        if part and word(toks, k - 1) in NEARLY | CANISTERS and word(toks, end) in STOPS | {"so"}:
            found.append(Cue("filler", "", k, end))
    return found


def _in_old(said: Message) -> list[Cue]:
    """ "bottle changed at 0915, had 1505 in it": what the one held that was changed; "new bottle at 0915, had
    1505 in it" may be of either."""
    toks = said.toks
    changed = [c for c in said.cues if c.value in {"exchanged", "removed"}]
    held = _held(said, changed[0].end) if len(changed) == 1 else []
    before = [c.label for c in said.cues if held and (c.start < held[0] or c.label == "old")]
    if not held or not {"old", "new", "opens"}.isdisjoint(before):
        return []
    if FRESH.isdisjoint(toks.said[: held[0]]):
        return [Cue("old", "", k, k + 1) for k in held]
    inside = [c for c in said.cues if c.label == "inside" and c.start > held[0]]
    return [Cue("word", "had", held[0], held[0] + 1), *(c._replace(label="filler") for c in inside[:1])]


def _held(said: Message, start: int, ends_too: frozenset[str] = frozenset()) -> list[int]:
    """Where the "had" of "had 1505 in it" stands, of the same bed; "with 20 suction" is none."""
    toks = said.toks
    for k in range(start, len(toks)):
        ends = [n.end for n in numbers(toks, k + 1)] if word(toks, k) in HELD else []
        end = max(ends, default=0)
        told = (
            word(toks, end) in MILLILITRES | {"in", "inside"} | ends_too
            and "now" not in toks.said[end : end + NEAR]
        )
        if word(toks, k) in {"was", "had"} and word(toks, end) not in {"in", "inside"}:
            # "changed at 1820. was 1,950. new one reading 10"
            it = word(toks, k - 1) in {"it", "which", "("} or (
                word(toks, k) == "was" and word(toks, k - 1) in STOPS
            )
            it &= word(toks, end) in STOPS | {")"}
            timed = it and any(is_timed(toks, j) for j in range(start, k))
            told = timed or (told and word(toks, k) == "had")
        if ends and told and not passes_bed(said, start, k):
            return [k]
    return []


def _old_off(said: Message) -> list[Cue]:
    """ "old box off bed 4 at 1530 with 1655 in it": changed, and what it held."""
    toks = said.toks
    for cue in said.cues:
        words = toks.said[cue.start : cue.end]
        thing = (
            cue.label == "old" and words[0] == "old" and not (words[-1] == "drain" and "out" in toks.words)
        )
        behind = word(toks, cue.end + 1) in SHORT_BED_WORDS | STOPS | {"at", "@"} or is_digits(
            toks, cue.end + 1
        )
        if thing and behind and word(toks, cue.end) in TAKEN:
            placed = said.tells("placed") and words[-1] == "one" and not said.tells("exchanged")
            if placed:  # "new chest tube placed left, old one out": which of the tubes is not told
                return [Cue("plan", "", cue.start, cue.end), Cue("kind", "removed", cue.end, cue.end + 1)]
            changed = Cue("kind", "exchanged", cue.start, cue.end + 1)
            return [changed, *(Cue("old", "", k, k + 1) for k in _held(said, cue.end + 2, STOPS))]
    return []


def _the_new(said: Message) -> list[Cue]:
    """ "the new bottle of bed 6 shows 35": what it shows, and no second change of it."""
    toks, found = said.toks, []
    alone = len([c for c in said.cues if c.label in {"kind", "old"}]) == 1 and CHANGES.isdisjoint(toks.words)
    for k, cue in enumerate(said.cues if alone else ()):
        named = cue.value == "exchanged" and word(toks, cue.start) in {"new", "fresh"}
        after = next((c for c in said.cues[k + 1 :] if c.label not in {"filler", "bed", "tubeword"}), None)
        shows = after is not None and after.label in {"level", "levelat"}
        end = cue.end - 1 - (word(toks, cue.end - 1) == "on")
        if not (named and shows) or word(toks, cue.start - 1) != "the" or word(toks, end) not in CANISTERS:
            continue
        between = range(cue.end, after.start) if after is not None else range(0)
        if all(word(toks, k) in OF_BED or starts_number(toks, k) or toks[k].glued for k in between):
            found.append(cue._replace(label="canister", value=""))
    return found


def _old_removed(said: Message) -> list[Cue]:
    """ "new box on, old one removed": that canister is gone and no tube; of a new drain it is asked."""
    for old, removed in pairwise(said.cues):
        beside = old.label == "old" and removed.value == "removed" and old.end == removed.start
        changed = [c for c in said.cues if c.value == "exchanged"]
        if beside and changed and word(said.toks, old.start) in {"old", "the"}:
            drain = any("drain" in said.toks.said[c.start : c.end] for c in changed)
            gone = old if drain else removed
            return [Cue("plan" if drain else "filler", "", gone.start, gone.end)]
    return []


def _changed_alone(said: Message) -> list[Cue]:
    """ "14 changed at 1640, final 1345": behind a bed, beside what was in it last, the canister."""
    if said.tells("exchanged", "removed", "placed") or not any(c.label == "old" for c in said.cues):
        return []
    taken = {k for cue in said.cues for k in range(cue.start, cue.end)}
    ends = (
        {end for end, _ in said.beds.values()}
        | {1}
        | {k + 2 for k, token in enumerate(said.toks) if token.text in SHORT_BED_WORDS}
    )
    return [
        Cue("kind", "exchanged", k, k + 1)
        for k, token in enumerate(said.toks)
        if token.text in CHANGED and k not in taken and k in ends
    ][:1]


OLD_ONES: tuple[tuple[str, Callable[[Message], list[Cue]]], ...] = (
    *((part, _part_full) for part in sorted({part[-1] for part in PARTS})),
    ("new", _the_new),
    ("this", _this_one),
    ("removed", _old_removed),
    ("off", _old_off),
    ("down", _old_off),
    ("out", _old_off),
    *((unknown, _unknown) for unknown in sorted(UNKNOWN)),
    *((said, _in_old) for said in sorted(HELD)),
    *((said, _changed_alone) for said in sorted(CHANGED)),
)
"""Each with the word that it cannot do without."""
