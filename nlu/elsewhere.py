"""Where on another ward a patient went: the "ward 7" and the "ICU bed 12" of "transferred to ICU bed 12".

No number of it is a bed or a line of this unit, and whoever went there has left. Called by `recast`.
"""

from __future__ import annotations

from collections.abc import Mapping

from .labels import bed_label
from .numbers import Toks, is_digits, word
from .pipeline import Cue

WARDS = frozenset({"ward", "unit", "floor", "level", "station", "wing", "tower", "block"})
"""Behind these stands which of them."""
UNITS = frozenset(
    {"icu", "itu", "hdu", "picu", "nicu", "ccu", "cvicu", "sicu", "micu", "cticu", "stepdown", "tele"}
)
"""Each has beds of its own."""
WINGS = frozenset({"north", "south", "east", "west", "n", "s", "e", "w", "tower"})
BEDS = frozenset({"bed", "room", "rm", "bay", "bd", "cubicle"})
BETWEEN = frozenset({"to", "into", "the", "on", "up", "down", "over", "our", "their"})
GOING = frozenset({"left", "moved", "away"})
MOST_DIGITS = 2
"""Of a ward or of its beds."""


def elsewhere(cues: tuple[Cue, ...], toks: Toks, index: Mapping[str, str] | None) -> tuple[Cue, ...]:
    """The cues, the name of another ward behind whoever went there as a word that says nothing."""
    if (WARDS | UNITS | WINGS).isdisjoint(toks.words):
        return cues
    for cue in cues:
        ends = _end(cue, toks, index) if cue.label == "kind" and cue.value in GOING | {"back"} else 0
        if ends:
            gone = cue._replace(value="left") if cue.value == "moved" else cue
            kept = [c for c in cues if c.end <= cue.start or c.start >= ends]
            return tuple(sorted([*kept, gone, Cue("filler", "", cue.end, ends)], key=lambda c: c.start))
    return cues


def _end(cue: Cue, toks: Toks, index: Mapping[str, str] | None) -> int:
    """Where the name of another ward ends that begins behind an event, or 0 where there is none."""
    k = cue.end
    while word(toks, k) in BETWEEN or (cue.value == "back" and word(toks, k) == "from"):
        k += 1
    if word(toks, cue.end - 1) in WARDS | UNITS and k == cue.end:
        k -= 1
    if word(toks, k) in WARDS:
        end = _number(toks, k + 1)
        return _with_bed(toks, end) if end else 0
    if word(toks, k) in UNITS:
        return _with_bed(toks, k + 1) if word(toks, k + 1) in BEDS else 0
    end = _number(toks, k)
    wing = word(toks, end)
    if not end or wing not in WINGS or word(toks, cue.end - 1) not in BETWEEN:
        return 0
    return 0 if bed_label(word(toks, k) + wing, index) else _with_bed(toks, end + 1)


def _number(toks: Toks, k: int) -> int:
    """Behind the number of a ward or of a bed, 0 where there is none."""
    k += word(toks, k) in {"number", "no", "#"}
    plain = is_digits(toks, k) and len(word(toks, k)) <= MOST_DIGITS and word(toks, k + 1) not in {":", "."}
    return k + 1 if plain else 0


def _with_bed(toks: Toks, end: int) -> int:
    """The end with a bed of that ward: "ward 7 bed 2", "ICU bed 12"."""
    k = end + (word(toks, end) in {",", "-"})
    return (_number(toks, k + 1) or end) if word(toks, k) in BEDS else end
