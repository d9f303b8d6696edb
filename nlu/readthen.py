"""A line told with its time or the bed before it: "line at 2000 was 150", "marked 10 at 1600, it's 640".

Called by `plainly`.
"""

from __future__ import annotations

from collections.abc import Iterator

from .clock import clocks
from .items import FULL_HOUR
from .numbers import Toks, is_digits, numbers, starts_number, word
from .patterns.leads import LINES, OF_BED, TELLS
from .patterns.places import PLACES
from .pipeline import Cue

BED_WORDS = frozenset({"bed", "room", "rm", "bay", "#"})
BEFORE_BED = BED_WORDS | {
    "",
    ",",
    ";",
    ".",
    "!",
    "-",
    "and",
    "ok",
    "okay",
    "so",
    "then",
    "hi",
    "hey",
    "hello",
}
"""What stands before a bed that opens its clause."""
CANISTERS = frozenset(PLACES["canister"]) | frozenset(PLACES["tubeword"])
READ = frozenset(
    {"read", "marked", "measured", "drew", "drawn", "took", "taken", "recorded", "noted", "checked"}
)
AT = frozenset({"at", "@"})
STOPS = frozenset({",", ";", ".", "!", "?", "but", "and"})
ON = frozenset({"on", "to", "near", "past"})
"""What stands at a mark of the scale."""
SHOWED = TELLS | {"read", "shows", "showed"}
MOST_BETWEEN = 200
"""mL between two lines: "line at 1230 was 1180" may tell both. Common practice, no source."""
ONTO = frozenset({"on", "onto", "over", "into", "against"})
LONGEST_LABEL = 3
"""Words of a bed's label, at most."""
LABEL_DIGITS = 2
MOST_OF_TIME = 4
"""Tokens of a time: at, 19, :, 05."""


def is_whole_clock(toks: Toks, i: int) -> bool:
    """Whether a time stands here that is written whole: 1858, 18:58, 7 pm."""
    digits = len(word(toks, i)) == FULL_HOUR and is_digits(toks, i)
    return any(clock.sure or clock.colon or (digits and clock.style == "24") for _, clock in clocks(toks, i))


def was_at_time(cue: Cue, toks: Toks) -> bool:
    """ "bed 5 line at 2000 was 150", "the mark at 2000 in 5 was 150": behind its time, what the line was."""
    if word(toks, cue.start) not in SHOWED:
        return False
    near = range(max(0, cue.start - MOST_OF_TIME - LONGEST_LABEL), cue.start)
    return any(word(toks, k) in LINES and _shown(toks, k) == cue.start for k in near)


def has_time(cue: Cue, toks: Toks) -> bool:
    """ "line" in "line at 2000 was 150": the at behind it is of its time, and no level."""
    line = cue.end - 1
    k = _shown(toks, line) if word(toks, line) in LINES else 0
    return k > 0 and not _may_be_time(toks, k + 1) and not _has_fallen(toks, line + 2, k + 1)


def _shown(toks: Toks, line: int) -> int:
    """Where "was" stands in "line at 2000 [in 5] was 150", or 0."""
    if word(toks, line + 1) not in AT:
        return 0
    found = [(end, c) for end, c in clocks(toks, line + 2) if c.sure or c.colon or c.style == "24"]
    end = max((end for end, _ in found), default=len(toks))
    k = end
    if word(toks, k) in OF_BED | BED_WORDS:
        k = next((j for j in range(end, end + LONGEST_LABEL + 1) if word(toks, j) in SHOWED), k)
    return k if word(toks, k) in SHOWED and starts_number(toks, k + 1) else 0


def _may_be_time(toks: Toks, k: int) -> bool:
    """ "line at 1900 was 1850": which of the two is the time?"""
    end = max((n.end for n in numbers(toks, k)), default=k)
    return any(c.style == "24" and e == end for e, c in clocks(toks, k))


def _has_fallen(toks: Toks, then: int, now: int) -> bool:
    """ "line at 1230 was 1180": which may be the line, and the one before it."""
    longest = [max(numbers(toks, k), key=lambda n: n.end, default=None) for k in (then, now)]
    first, last = (n.value if n is not None else 0 for n in longest)
    return 0 <= first - last <= MOST_BETWEEN


def is_fallen_on(cue: Cue, toks: Toks) -> bool:
    """ "the pole fell on it at 1325": when that was, and no level of it."""
    it = toks.said[cue.start : cue.end] == ("it", "at") and word(toks, cue.start - 1) in ONTO
    return it and is_whole_clock(toks, cue.end)


def is_particle(toks: Toks, k: int) -> bool:
    """ "340 at 1900 na po": already, and politely; "na 140" and "340 po" alone are of something else."""
    said, before = word(toks, k), word(toks, k - 1)
    if said == "na":
        return (is_digits(toks, k - 1) or before in {"ml", "cc", "am", "pm"}) and not starts_number(
            toks, k + 1
        )
    lined = not LINES.isdisjoint(toks.words) and word(toks, k + 1) in STOPS | {""}
    timed = before in {"am", "pm"} and word(toks, k + 1) in STOPS | {"", "maam", "sir"}
    return said == "po" and (before in {"na", ",", "yes", "opo"} or lined or timed)


def is_of_bed_read(cue: Cue, toks: Toks) -> bool:
    """ "marked 10 at 1600, it's 640", "read 18 once I got in: 460 at 1515": whose line it is."""
    k = cue.end
    label = is_digits(toks, k) and len(word(toks, k)) <= LABEL_DIGITS and not BED_WORDS & toks.words
    if word(toks, cue.start) not in READ | {"did"} or k - cue.start > 1 or not label:
        return False
    if word(toks, k + 1) in AT and is_whole_clock(toks, k + 2):
        return any(_is_lone_level(toks, j) for j in range(k + 3, len(toks)))
    levels = (j for j in range(k + 2, len(toks)) if is_digits(toks, j) and word(toks, j + 1) in AT)
    return not is_digits(toks, k + 1) and any(is_whole_clock(toks, j + 2) for j in levels)


def _is_lone_level(toks: Toks, k: int) -> bool:
    """A number that is told as a line and has no time of its own; "at 1110 around 645" may be either."""
    told = word(toks, k - 1) in STOPS | TELLS | {"it's", "its", ":", "-"}
    return is_digits(toks, k) and told and word(toks, k + 1) not in AT


def is_marking(cue: Cue, toks: Toks) -> bool:
    """ "exactly on the 1100 mark at 2300": the mark on the scale at which the fluid stands."""
    scale = word(toks, cue.start - 2) == "the" and word(toks, cue.start - 3) in ON
    number = is_digits(toks, cue.start - 1) and cue.end - cue.start == 1
    return scale and number and word(toks, cue.end) in AT and is_whole_clock(toks, cue.end + 1)


def of_chest(toks: Toks, ends: set[int], taken: set[int]) -> Iterator[Cue]:
    """ "12 chest 880 at 1815": its chest drain."""
    for k, text in enumerate(toks.said):
        bed = k in ends or follows_bed(toks, k)
        if text == "chest" and k not in taken and bed and is_digits(toks, k + 1):
            yield Cue("tubeword", "", k, k + 1)


def follows_bed(toks: Toks, k: int) -> bool:
    """ "13 says", "bed two oh one says", "the canister in nineteen says"."""
    start = k
    while start > 0 and starts_number(toks, start - 1):
        start -= 1
    before = word(toks, start - 1)
    return start < k and (before in BEFORE_BED or (before in OF_BED and word(toks, start - 2) in CANISTERS))
