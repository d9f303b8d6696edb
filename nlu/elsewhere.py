"""Where on another ward a patient went: the "ward 7" and the "ICU bed 12" of "transferred to ICU bed 12".

No number of it is a bed or a line of this unit, and whoever went there has left. Called by `recast`.
"""

from __future__ import annotations

from collections.abc import Mapping

from .labels import bed_label
from .numbers import Toks, is_digits, numbers, word
from .patterns.levels import VOLUMES
from .pipeline import Cue, with_found

WARDS = frozenset({"ward", "unit", "floor", "level", "station", "wing", "tower", "block"})
"""Behind these stands which of them."""
UNITS = frozenset(
    {"icu", "itu", "hdu", "picu", "nicu", "ccu", "cvicu", "sicu", "micu", "cticu", "stepdown", "tele"}
)
"""Each has beds of its own."""
WINGS = frozenset({"north", "south", "east", "west", "n", "s", "e", "w", "tower"})
BEDS = frozenset({"bed", "room", "rm", "bay", "bd", "cubicle"})
BETWEEN = frozenset({"to", "into", "the", "on", "up", "down", "over", "our", "their"})
KINDS = frozenset(
    {
        "high",
        "care",
        "dependency",
        "intensive",
        "acute",
        "general",
        "male",
        "female",
        "medical",
        "surgical",
        "private",
        "step",
        "post",
        "op",
        "main",
        "another",
    }
    | {"other", "normal", "cardiac", "thoracic", "respiratory", "paeds", "pediatric", "icu", "hdu"}
)
"""Before the word ward these say which it is."""
OUTINGS = frozenset(
    {"cath", "theatre", "theater", "ot", "or", "ct", "mri", "dialysis", "ir", "recovery", "angio"}
)
ROOMS = frozenset({"lab", "room", "suite", "scan"})
HOSPITALS = frozenset({"hospital", "hosp", "clinic", "rehab", "hospice", "facility"})
MOST_NAMES = 4
OF_A_LINE = VOLUMES | {":", ".", "am", "pm"}
"""Behind a number these make it a time or a line."""
GOING = frozenset({"left", "moved", "away"})
MOST = 60
"""Of a ward or of its beds no number is larger; common practice, no source."""
PLACES = WARDS | UNITS | WINGS | OUTINGS | HOSPITALS
"""Without one of these nobody went anywhere else."""


def elsewhere(cues: tuple[Cue, ...], toks: Toks, index: Mapping[str, str] | None) -> tuple[Cue, ...]:
    """The cues, the name of another ward as part of what tells that somebody went there."""
    if PLACES.isdisjoint(toks.words):
        return cues
    for cue in cues:
        if cue.value == "moved" and word(toks, cue.end) in OUTINGS and _is_place(toks, cue.end):
            end = cue.end + 1 + (word(toks, cue.end + 1) in ROOMS)
            return with_found(cues, [Cue("kind", "away", cue.start, end)])  # "transferred to cath lab"
        unit = cue.end - 1
        led = cue.value == "left" and word(toks, unit) in UNITS and unit > cue.start
        if led and bed_label(word(toks, unit) + word(toks, cue.end), index):
            return with_found(cues, [cue._replace(value="moved", end=unit)])  # "moved to HDU 2"
        ends = _end(cue, toks, index) if cue.label == "kind" and cue.value in GOING | {"back"} else 0
        if ends:
            gone = cue._replace(value="left" if cue.value == "moved" else cue.value)
            bed = cue.end + 2 * _is_of_bed(cue, toks)
            parts = [gone, Cue("filler", "", bed, ends)] if bed > cue.end else [gone._replace(end=ends)]
            return with_found(cues, parts)
    return cues


def _is_place(toks: Toks, k: int) -> bool:
    """ "transferred to theatre"; not "moved to CT3", which is a bed."""
    return word(toks, k - 1) == "to" and not word(toks, k + 1)[:1].isdecimal()


def _end(cue: Cue, toks: Toks, index: Mapping[str, str] | None) -> int:
    """Where the name of another ward ends that begins behind an event, or 0 where there is none."""
    k = cue.end
    k += 2 * _is_of_bed(cue, toks)
    while word(toks, k) in BETWEEN or (cue.value == "back" and word(toks, k) == "from"):
        k += 1
    if word(toks, cue.end - 1) in WARDS | UNITS and k == cue.end:
        k -= 1
    kind = k
    while word(toks, k) in KINDS or (word(toks, k) in {"-", "down"} and word(toks, kind) == "step"):
        k += 1
    if word(toks, k) in WARDS:
        end = ward_number(toks, k + 1) or (k > kind and k + 1)
        return _with_bed(toks, end) if end else 0
    k = kind
    if word(toks, k) in UNITS:
        if bed_label(word(toks, k) + word(toks, k + 1), index):
            return 0  # "shifted bed 5 into HDU2": a bed of this unit
        moved = cue.value in {"moved", "left"}  # "now in ICU", "moved to HDU 3"
        named = word(toks, k + 1) in BEDS or moved
        return ((moved and ward_number(toks, k + 1)) or _with_bed(toks, k + 1)) if named else 0
    if cue.value == "moved" and (end := _hospital(toks, k)):
        return end
    end = ward_number(toks, k)
    wing = word(toks, end)
    if (
        not end
        or wing not in WINGS
        or word(toks, end + 1) == "side"
        or word(toks, cue.end - 1) not in BETWEEN
    ):
        return 0
    return 0 if bed_label(word(toks, k) + wing, index) else _with_bed(toks, end + 1)


def _is_of_bed(cue: Cue, toks: Toks) -> bool:
    """ "transferred bed 13 to the step-down unit"; of "sent to ICU bed 12" the bed is there."""
    return cue.end - cue.start == 1 and word(toks, cue.end) in BEDS and is_digits(toks, cue.end + 1)


def _hospital(toks: Toks, k: int) -> int:
    """Behind a hospital that is named, "Royal Hospital", 0 where there is none."""
    names = next((j for j in range(k, k + MOST_NAMES) if not word(toks, j).isalpha()), k + MOST_NAMES)
    return next((j + 1 for j in range(k, names) if word(toks, j) in HOSPITALS), 0)


def ward_number(toks: Toks, k: int) -> int:
    """Behind the number of a ward or of a bed, 0 where there is none."""
    k += word(toks, k) in {"number", "no", "#"}
    ends = [n.end for n in numbers(toks, k) if n.style == "plain" and n.value <= MOST]
    return max((end for end in ends if word(toks, end) not in OF_A_LINE), default=0)


def _with_bed(toks: Toks, end: int) -> int:
    """The end with a bed of that ward: "ward 7 bed 2", "ICU bed 12"."""
    k = end + (word(toks, end) in {",", "-"})
    return (ward_number(toks, k + 1) or end) if word(toks, k) in BEDS else end
