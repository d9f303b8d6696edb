"""What a clause beside a line may say of the drain and change nothing: where it stands, who looked at it.

Or what will be done with it later. Called by `ownclauses`.
"""

from __future__ import annotations

from collections.abc import Sequence

from .numbers import Toks, is_digits, word
from .patterns.leads import LINES
from .patterns.ownclauses import (
    AHEAD,
    ARTICLES,
    DRAINS,
    JOINTS,
    LABS,
    LATENESS,
    LOOKING,
    NAMED_BY,
    NAMING,
    OBJECTS,
    PAST,
    PLANS,
    RUNNING,
    RUNNING_ON,
    SETTLED,
    STANDS,
    TAKING,
    TODO,
    WHOM,
)
from .somebody import Clause

ABOUT_TIME = frozenset(
    {"at", "@", "about", "around", "approx", "approximately", "taken", "measured", "read", "checked", "drawn"}
    | {"done", "recorded", "seen", "just", "am", "pm", ":", "by", "as", "of", "which", "this", "was", "that"}
)
"""With a time these say only when it was."""
IT = frozenset({"it", "it's", "that"})
ROSE = frozenset({"jumped", "climbed", "rose", "went", "came", "shot", "increased"})
_ROSE_WHEN = """
up a bit lot because cause cos when after since as i we he she just only turned turning repositioned
repositioning rolled rolling sat sitting stood standing got getting out of bed him her them the side over
coughed coughing walked walking mobilised mobilized mobilising ambulated ambulating in chair with physio for
"""
ROSE_WHEN = ROSE | frozenset(_ROSE_WHEN.split())
LYING = frozenset({"lying", "laying", "leaning", "sitting", "sat", "line", "rolled", "slept"})
ON_IT = LYING | frozenset(
    {"he", "she", "he's", "she's", "patient", "was", "is", "had", "been", "on", "it", "onto"}
)
ON_IT |= {"the", "tube", "tubing", "just", "over", "because", "as", "where"}
KINKED = frozenset({"kinked", "kink", "kinks", "kinking"})
CHANGED = frozenset({"changed", "swapped", "exchanged", "replaced", "change", "swap"})
GETTING_FULL = IT | frozenset(
    {"was", "is", "getting", "nearly", "almost", "so", "because", "pretty", "quite", "very"}
)
BEING = frozenset({"be", "being", "having", "get", "getting", "have", "taking", "take", "pulling", "coming"})
SOON = AHEAD | {"later", "soon", "shortly", "afternoon", "due", "planned", "planning", "hoping"}
SOON |= PLANS | {"he'll", "she'll", "they'll", "it'll", "we're"}
EVERYTHING = DRAINS | {"everything"}
OF_STANDING = SETTLED | DRAINS | JOINTS
LOOKED_AT = DRAINS | LINES | {"tube"}


def is_settled(said: Sequence[str]) -> bool:
    """ "drain kept below the chest", "box went with him": it is where it should be.

    "New canister connected" tells an exchange, and "the new one is working" none.
    """
    words = set(said) - ({"new"} if {"working", "functioning"} & set(said) else set())
    return bool(words & EVERYTHING and words & STANDS) and words <= OF_STANDING


def is_how_it_runs(said: Sequence[str]) -> bool:
    """ "so it has slowed down": no number, and nothing that happened."""
    return not RUNNING.isdisjoint(said) and RUNNING_ON.issuperset(said)


def is_why(toks: Toks, said: Sequence[str]) -> bool:
    """ "it jumped because i turned him", "tubing was kinked, she was lying on it", "canister changed, it was
    getting full": how something came about, in a clause of nothing but such words."""
    if not said:
        return False
    if said[0] in IT and not ROSE.isdisjoint(said[1:2]):
        return ROSE_WHEN.issuperset(said[1:])
    lying = not LYING.isdisjoint(said) and not KINKED.isdisjoint(toks.words) and ON_IT.issuperset(said)
    full = said[-1] == "full" and not CHANGED.isdisjoint(toks.words) and GETTING_FULL.issuperset(said[:-1])
    return lying or (full and said[0] in IT)


def says_what(toks: Toks, clause: Clause) -> bool:
    """ "this is from yesterday: bed 3 ...", "this one is urine": what is told behind it, perhaps."""
    said = toks.said[clause.begins : clause.end]
    return said[0] in OBJECTS and PAST.isdisjoint(said[1:2]) and not LATENESS.issuperset(said)


def takes_along(toks: Toks, k: int) -> bool:
    """ "they came for him", "porter collected her": whom somebody takes along is away."""
    whom = word(toks, k + 1 + (word(toks, k + 1) in {"for", "up"}))
    return word(toks, k) in TAKING and whom in WHOM


def is_of_lab(toks: Toks, k: int) -> bool:
    """ "bloods", which the speller takes for blood, "blood gas"."""
    plural = toks[k].end - toks[k].start == len("bloods")
    return word(toks, k) == "blood" and (plural or word(toks, k + 1) in LABS)


def is_told_of(toks: Toks, k: int) -> bool:
    """Whether a word that may be of the drain changes nothing here: "heart rate", "looked at the box"."""
    said, before = word(toks, k), word(toks, k - 1)
    named = word(toks, k + 1) in NAMED_BY.get(said, ()) or before in NAMING.get(said, ())
    unsent = (
        said in LINES and before == "no" and word(toks, k - 2) == "be"
    )  # "there will be no lines from me"
    return named or unsent or is_of_lab(toks, k) or is_looked_at(toks, k)


def is_looked_at(toks: Toks, k: int) -> bool:
    """ "i looked at the box", "checked her drain": whoever looks at a drain changes nothing."""
    if word(toks, k) not in LOOKED_AT:
        return False
    k -= 1 + (word(toks, k - 1) == "chest")
    while word(toks, k) in ARTICLES | {"at", "on", "in", "into", "over"}:
        k -= 1
    return word(toks, k) in LOOKING


def is_only_when(toks: Toks, clause: Clause) -> bool:
    """ "at about 1830", "taken at 0645": when the line was read."""
    said = toks.said[clause.start : clause.end]
    timed = any(is_digits(toks, k) for k in range(clause.start, clause.end))
    return timed and all(text in ABOUT_TIME or text.isdecimal() for text in said)


def is_still_to_do(toks: Toks, clause: Clause, doubtful: frozenset[str]) -> bool:
    """ "i'll change bed 5's canister", "they take it out tomorrow if ...": what has not happened."""
    inside = set(range(clause.begins, clause.end)) - {k for bed in clause.beds for k in range(*bed)}
    said = {word(toks, k) for k in inside}
    if not said & SOON or not said & TODO or any(is_digits(toks, k) for k in inside):
        return False
    todo = TODO if said & BEING else TODO - {w for w in TODO if w.endswith("ed")}
    return not said & (doubtful - DRAINS - todo - {"if", "plan", "planned", "it"})
