"""Signs in a row, each with its yes or no behind it: "swing yes bubble no", "leak no, swing yes".

The phrases of one sign alone would take the "no" of the sign before: "swing no bubble yes" has no "no bubble"
in it. A colon joins even one sign with its no: "tidal: no". So is the suction told: "suction nil", "sxn: WS".
Called by `leaks`.
"""

from __future__ import annotations

from typing import NamedTuple

from .numbers import Toks, glued, is_digits, word
from .pipeline import Cue, in_order

TIDAL = frozenset(
    {"swing", "swinging", "swings", "tid", "tidal", "tidaling", "tidalling", "oscillation", "fluctuation"}
)
LEAK = frozenset({"bubble", "bubbles", "bubbling", "leak", "airleak"})
YES = frozenset({"yes", "y", "present"})
SAID = YES | {"no", "n", "nil", "none", "absent", "0"}
JOINING = frozenset({":", "="})
"""Between a sign and what is said of it."""
PARTING = frozenset({",", "/", ";", "|", ".", "-"})
"""Between two signs, one such sign at most."""
ENDS = frozenset({",", ";", ".", ""})
SUCTION = frozenset({"suction", "sxn"})
NO_SUCTION = frozenset({"nil", "none", "ws"})
GOING_ON = frozenset({"change", "changes", "needed", "ordered", "yet", "since", "issues", "until"})
LETTERS = {"t": "tidal", "s": "tidal", "l": "leak", "b": "leak"}
SIGNS = frozenset({"+", "-"})
CLOSING = PARTING | JOINING | {"", ")"}
HOW = {
    "int": "intermittent",
    "intermittent": "intermittent",
    "occ": "intermittent",
    "occasional": "intermittent",
    "cont": "continuous",
    "continuous": "continuous",
    "constant": "continuous",
}
"""Behind a colon: how a leak goes on."""
PAIR = 2
"""Fewest signs of a row."""


class Told(NamedTuple):
    """A sign with what is said of it, whether that is a yes, and whether a colon joins the two."""

    cue: Cue
    yes: bool
    joined: bool


def with_signs_in_a_row(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, each sign of such a row with what is said behind it."""
    if not LETTERS.keys().isdisjoint(toks.words) and not SIGNS.isdisjoint(toks.words):
        cues = _with_letters(cues, toks)
    if "bubble" in toks.words:
        cues = in_order([*cues, *(_bubble(k) for k in range(len(toks)) if _is_signed(toks, k))])
    if not NO_SUCTION.isdisjoint(toks.words):
        cues = _with_no_suction(cues, toks)
    if (SAID | HOW.keys()).isdisjoint(toks.words) or (TIDAL | LEAK).isdisjoint(toks.words):
        return cues
    row = _row(toks, 0)
    while row:
        start, end = row[0].cue.start, row[-1].cue.end
        if _is_plain(row, toks):
            kept = [c for c in cues if c.end <= start or c.start >= end]
            cues = in_order([*kept, *(told.cue for told in row)])
        row = _row(toks, end)
    return cues


def _with_no_suction(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, each "suction nil", "sxn: WS" and "95/ 2300/ WS" as told without suction."""
    spans = [span for k in range(len(toks)) if (span := _no_suction(toks, k))]
    if not spans:
        return cues
    kept = [c for c in cues if all(c.end <= start or c.start >= end for start, end in spans)]
    return in_order([*kept, *(Cue("waterseal", "", *span) for span in spans)])


def _no_suction(toks: Toks, k: int) -> tuple[int, int] | None:
    """Where such a word stands with its suction; "ws 2" is how high the seal is, and in "with suction nil
    leak" the nil is of the leak."""
    said, behind = word(toks, k), word(toks, k + 1)
    before = k - 1 - (word(toks, k - 1) in JOINING)
    if said not in NO_SUCTION or (behind in CLOSING and is_digits(toks, k + 2)):
        return None
    if word(toks, before) in SUCTION:
        plain = before < k - 1 or behind not in TIDAL | LEAK | {"air"}
        return (before, k + 1) if plain and not is_digits(toks, k + 1) and behind not in GOING_ON else None
    alone = said == "ws" and word(toks, k - 1) in CLOSING and k > 0 and behind in CLOSING
    return (k, k + 1) if alone else None


def _with_letters(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, "+T -L" and "S+ B-" as what they stand for, where both stand with a sign."""
    found = [cue for k in range(len(toks)) if (cue := _letter(toks, k))]
    signed = sum(len(toks[k].text) == 1 and toks[k].is_word and _has_sign(toks, k) for k in range(len(toks)))
    if {cue.label for cue in found} != {"tidal", "leak"} or not len(found) == signed == PAIR:
        return cues
    kept = [c for c in cues if all(c.end <= f.start or c.start >= f.end for f in found)]
    return in_order([*kept, *found])


def _letter(toks: Toks, k: int) -> Cue | None:
    """A letter with its sign before or behind it, and blanks or stops around the two; in "L- 340" it is of a
    tube."""
    label = LETTERS.get(word(toks, k))
    if label is None:
        return None
    before, behind = _has_sign(toks, k, behind=False), _has_sign(toks, k, before=False)
    if before == behind or is_digits(toks, k + 1 + behind):
        return None
    start, end = (k - 1, k + 1) if before else (k, k + 2)
    there = word(toks, start if before else end - 1) == "+"
    told = {"tidal": ("no", "yes"), "leak": ("none", "present")}[label][there]
    return Cue(label, told, start, end)


def _has_sign(toks: Toks, k: int, *, before: bool = True, behind: bool = True) -> bool:
    """Whether a plus or a minus is glued to a letter on its one side, and to nothing on its other."""
    ahead = word(toks, k - 1) in SIGNS and glued(toks, k) and not (k > 1 and glued(toks, k - 1))
    after = word(toks, k + 1) in SIGNS and glued(toks, k + 1) and not glued(toks, k + 2)
    return (before and ahead) or (behind and after)


def _bubble(k: int) -> Cue:
    return Cue("leak", "present", k, k + 1)


def _is_signed(toks: Toks, k: int) -> bool:
    """ "bubble -", "bubble +": only with its sign it is of a leak."""
    return word(toks, k) == "bubble" and word(toks, k + 1) in {"+", "-"} and not is_digits(toks, k + 2)


def _is_plain(row: list[Told], toks: Toks) -> bool:
    """Whether each no is of the sign before it: one yes or a colon shows it, and so does a "nil" behind all
    signs; "bubble no" alone is of a leak only so, and "tidal no bubble no" may be a no of the next."""
    if all(word(toks, told.cue.end) in ENDS for told in row):
        return True  # "swinging no, bubbling no"
    if len(row) < PAIR:
        return row[0].joined or word(toks, row[0].cue.start) == "bubble"
    return any(told.yes or told.joined for told in row) or all(
        word(toks, told.cue.end - 1) in {"nil", "none", "absent"} for told in row
    )


def _row(toks: Toks, k: int) -> list[Told]:
    """The first signs in a row from a place on, nothing but a comma between them."""
    found: list[Told] = []
    while k < len(toks):
        told = None if word(toks, k - 1) in SAID and not found else _pair(toks, k)
        if told is not None:
            found.append(told)
            k = told.cue.end + (word(toks, told.cue.end) in PARTING)
        elif len(found) >= PAIR or (found and (found[0].joined or word(toks, found[0].cue.end) in ENDS)):
            break
        else:
            found, k = [], k + 1
    return found


def _is_none(toks: Toks, end: int) -> bool:
    """ "leak 0 swing y": a nought that ends there; not "leak 0 - 1", "leak 0.5"."""
    ranged = word(toks, end) in {"/", "-", "."} and (glued(toks, end) or is_digits(toks, end + 1))
    return not (ranged or is_digits(toks, end))


def _pair(toks: Toks, k: int) -> Told | None:
    start = k
    k += word(toks, k) == "air" and word(toks, k + 1) == "leak"
    sign, joined = word(toks, k), word(toks, k + 1) in JOINING
    k += joined
    said = word(toks, k + 1)
    if joined and sign in LEAK and said in HOW:
        return Told(Cue("leak", HOW[said], start, k + 2), yes=True, joined=True)
    if sign not in TIDAL | LEAK or said not in SAID or (said == "0" and not _is_none(toks, k + 2)):
        return None
    if word(toks, k + 2) == "/" and glued(toks, k + 2) and word(toks, k + 3) in SAID:
        return None  # "swing: y/n"
    yes = said in YES
    value = ("yes" if yes else "no") if sign in TIDAL else ("present" if yes else "none")
    return Told(Cue("tidal" if sign in TIDAL else "leak", value, start, k + 2), yes, joined)
