"""What was looked for and is not told as found: "checked tubing for kinks, none", "looked for kinks, nil".

Called by `carriedout`, once the cues have their meaning.
"""

from __future__ import annotations

from .numbers import Toks, is_digits, starts_number, word
from .patterns.leads import BED_WORDS
from .pipeline import Cue, in_order

LOOKING = frozenset(
    {"checked", "checking", "looked", "looking", "check", "examined", "inspected", "assessed"}
)
SOUGHT = frozenset({"kinked", "clamped", "damaged", "disconnected"})
OF_TUBING = frozenset(
    {"the", "all", "tubing", "tube", "tubes", "line", "lines", "drain", "it", "for", "any", "his", "her"}
    | {"and", "or", "clots", "clot", "loops", "everything", "whole", "length", "circuit", "kinks", "clamps"}
    | {"kink", "kinking", "breaks", "cracks", "on", "in", "s", "'"}
)
"""Between the look and what was looked for, and behind that."""
NONE = frozenset({"none", "nil", "no", "nothing", "not"})
OF_NONE = frozenset({"found", "seen", "noted", "there", "any", "kinks", "obvious", "visible", "nil", "kink"})
ENDS = frozenset({"", ",", ".", ";", "!", "but", "and"})
MOST = 10


def without_sought(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, what was only looked for saying that there is nothing to tell of it."""
    if LOOKING.isdisjoint(toks.words) or "for" not in toks.words:
        return cues
    for k, text in enumerate(toks.said):
        end = _sought_end(toks, k) if text in LOOKING else k
        sought = [c for c in cues if c.label == "what" and c.value in SOUGHT and k < c.start < end]
        if sought and not _is_found(toks, end):
            return _left_out(cues, sought, toks, (k, end))
    return cues


def _left_out(
    cues: tuple[Cue, ...], sought: list[Cue], toks: Toks, stretch: tuple[int, int]
) -> tuple[Cue, ...]:
    """The cues, those of the look as nothing; where it was stays."""
    inside = set(range(*stretch))
    kept = [c for c in cues if c.start not in inside or c.label == "bed"]
    told = {k for c in kept for k in range(c.start, c.end)} | {c.start for c in sought}
    of_look = (k for k in inside - told if word(toks, k).isalpha() and not _is_place(toks, k))
    found = [Cue("nothing", "", c.start, c.start + 1) for c in sought]
    found += [Cue("filler", "", k, k + 1) for k in of_look]
    return in_order([*kept, *found])


def _sought_end(toks: Toks, k: int) -> int:
    """Where "checked the tubing for kinks and clots, none seen" ends; the same place if it is no look."""
    end = k + 1
    while (word(toks, end) in OF_TUBING or _is_place(toks, end)) and end < k + MOST:
        end += 1
    if "for" not in toks.said[k:end]:
        return k
    none = end + (word(toks, end) in {",", "-", ".", ";"})
    if word(toks, none) not in NONE:
        return end
    none += 1
    while word(toks, none) in OF_NONE:
        none += 1
    return none if word(toks, none) in ENDS else end


def _is_place(toks: Toks, k: int) -> bool:
    """Whether the bed is named here."""
    lettered = is_digits(toks, k - 1) and word(toks, k) != "s" and k < len(toks) and toks[k].glued
    return is_digits(toks, k) or word(toks, k) in BED_WORDS or lettered


def _is_found(toks: Toks, end: int) -> bool:
    """ "checked for kinks and found one", "checked for kinks, one under him"."""
    behind = toks.said[end : end + 4]
    one = word(toks, end) in {"-", ",", ":", "and"} and starts_number(toks, end + 1)
    return "found" in behind or "yes" in behind or "got" in behind or (one and not is_digits(toks, end + 1))
