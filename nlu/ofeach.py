"""What is said of each behind what was found: "no leak on either", "tidaling both"; "on 20" behind a line.

Called by `recast`, once the cues have their meaning.
"""

from __future__ import annotations

from .followers import DIALLED
from .items import FINDINGS
from .numbers import Toks, is_digits, word
from .patterns.leads import PAUSES, TUBE_NAMES
from .patterns.levels import MILLILITRES
from .pipeline import Cue, in_order

EACH = frozenset({"both", "either", "each", "all", "any", "bilat", "bilaterally"})
ALL = frozenset({"each", "all", "any"})
"""These are of any number of tubes or beds."""
TIMES = frozenset({"2", "3", "4"})
"""Behind an x these say of how many."""
LINE = 3
"""Digits of a line that is no bed and no setting."""
OF_NUMBER = MILLILITRES | {":", "am", "pm", "is", "was", "at", "has", "had"}
"""Behind the number these make it no setting."""
ENDS = frozenset({"", ".", ",", ";", "!", "and", "&"})
LINKS = frozenset({"on", "in", "for", "at", "from", "of", "with", "to"})
NOUNS = frozenset(
    {"side", "sides", "tube", "tubes", "drain", "drains", "of", "them", "ct", "cts", "one", "chest"}
    | {"beds", "patients", "pts", "way", "ways"}
)
SETTINGS = frozenset({"suction", "wall", "seal"})
SIGNS = frozenset({"-", "=", ":"})
FOUND = FINDINGS | SETTINGS


def of_each(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, with one for each place that says that what was found before it is of each."""
    if "on" in toks.words:
        cues = _with_dials(cues, toks)
    if toks.words.isdisjoint(EACH | {"x"}):
        return cues
    found = [c for c in cues if c.label in FOUND]
    said = [each for k in range(1, len(toks)) if (each := _each(k, toks)) and _is_behind(each, found, toks)]
    kept = [c for c in cues if not any(each.start <= c.start < each.end for each in said)]
    return in_order([*kept, *said])


def _with_dials(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """ "both on 20, no leak", "9 400 at 2000, on 20, no leak": what they are set to, and no bed."""
    dials = [
        Cue("suction", "", k, k + 1)
        for k in range(1, len(toks) - 1)
        if word(toks, k) == "on" and _is_dialled(k + 1, toks) and _is_of_line(k - 1, toks)
        if not any(c.start == k + 2 and c.label in {"kind", "what"} for c in cues)
    ]
    kept = [c for c in cues if c.start not in {dial.start for dial in dials}]
    return in_order([*kept, *dials])


def _is_of_line(k: int, toks: Toks) -> bool:
    """Whether it is said of both, or behind a stop once a line was told, no other one coming."""
    lines = [j for j in range(len(toks)) if is_digits(toks, j) and len(word(toks, j)) >= LINE]
    told = bool(lines) and lines[0] < k and lines[-1] < k
    if (tube := k - (word(toks, k) == "is")) and word(toks, tube) in TUBE_NAMES:
        begins = word(toks, tube - 1 - (word(toks, tube - 1) == "the")) in PAUSES | {"and", "but"}
        return told and begins  # "left 180, right 65 at 1800, left is on 20"
    every = word(toks, k) in {"both", "all"} or word(toks, k - 1) == "all"  # "all three on 20"
    return every or (word(toks, k) in PAUSES and told)


def _is_dialled(k: int, toks: Toks) -> bool:
    number = word(toks, k)
    headed = word(toks, k + 1) == ":" and "all" in toks.said[max(0, k - 3) : k]  # "all three on 20: 3 280"
    plain = headed or word(toks, k + 1) not in OF_NUMBER
    return number.isdecimal() and int(number[:4]) in DIALLED and plain


def _each(k: int, toks: Toks) -> Cue | None:
    """The words of each that stand there: "on both sides", "x2"; its value is of how many."""
    if word(toks, k) == "x" and word(toks, k + 1) in TIMES:
        return Cue("each", word(toks, k + 1), k, k + 2)
    if word(toks, k) not in EACH or (word(toks, k) == "any" and word(toks, k - 1) not in LINKS):
        return None
    start, end = k, k + 1
    while word(toks, start - 1) in LINKS:
        start -= 1
    while word(toks, end) in NOUNS:
        end += 1
    return Cue("each", "" if word(toks, k) in ALL else "2", start, end)


def _is_behind(each: Cue, found: list[Cue], toks: Toks) -> bool:
    """Whether a finding ends there; "no leak both tidaling" may say it of the next, "all night" of none."""
    bare = each.end - each.start == 1
    if bare and (any(c.start == each.end for c in found) or is_digits(toks, each.end)):
        return False
    if word(toks, each.start) == "all" and word(toks, each.end) not in ENDS:
        return False
    told = any(c.end == each.start and c.label in FINDINGS for c in found)
    return told or _is_value(each.start, found, toks)


def _is_value(k: int, found: list[Cue], toks: Toks) -> bool:
    """ "suction 20 both", "20 of suction on both": whether a setting with its number ends there."""
    settings = [c for c in found if c.label in SETTINGS]
    behind = next((c for c in settings if c.end == k), None)
    if behind is not None:
        j = behind.start - (word(toks, behind.start - 1) == "of")
        return is_digits(toks, j - 1)
    j = k - 1
    if not is_digits(toks, j):
        return False
    while word(toks, j - 1) in SIGNS:
        j -= 1
    return any(c.end == j for c in settings)
