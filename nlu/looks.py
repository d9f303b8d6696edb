"""What the fluid looks like, where a recogniser may have written another word for it; dictation only.

Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .clauses import clauses, is_strange
from .items import FINDINGS, Item
from .numbers import Toks, word
from .patterns.numerals import HOMOPHONES
from .polarity import is_fluid

LEAKS = ("air", "ear", "hair", "lea", "lee", "lic", "lak", "tid", "tit", "tie", "bub")
"""How the words begin that a recogniser writes for a leak, bubbles or tidaling."""
_FOUND = """
swi swe swa wing sing ring dub pub bab ser cer sar sir cir sang san stra mil pur pos bud flu osc sea see
ceil suc sec tal
"""
FOUND = tuple(_FOUND.split())
"""The same for what else is found and how a drain is set."""
FLUIDS = frozenset({"fluid", "fluids"})
WHOSE = frozenset({"she's", "he's", "it's", "she", "he", "they're"})
"""Behind the look of the fluid these begin what else was found: "serosang, she's swinging"."""
TURNING = frozenset({"gone", "went", "turned", "turning", "getting", "become", "became", "looks"})
"""Between the fluid and its look: "fluid's gone milky"."""
TURNS_TO = frozenset({"fluid", "context"})
"""Behind such a word these make it no event: "gone serous", "gone from 990 to 1050"."""


def half_understood(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "serous and bonus mark 980", "Sarah's fluid": what the fluid looked like was not understood whole."""
    for k, (before, item) in enumerate(pairwise(items)):
        if before.unread and is_fluid(item) and before.name not in TURNING:
            yield "a word before the look of the fluid"
        told = item.unread and item.name not in WHOSE
        if is_fluid(before) and (told or (item.role == "sep" and _is_led(items[k + 2 : k + 4]))):
            yield "a word behind the look of the fluid"
    if any(i.unread and (word(toks, i.end) in FLUIDS or _of_fluid(i, toks)) for i in items):
        yield "a word that may be the look of the fluid"


def lost_finding(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "no leak, tied link well": of what was found beside it, in a clause of its own; "no early"."""
    for before, clause in pairwise(clauses(items)):
        found = bool(before) and (before[-1].role == "check" or before[-1].value in FINDINGS)
        whole = bool(clause) and all(i.unread and is_strange(i, toks) for i in clause)
        if found and whole and clause[0].start == before[-1].end + 1 and _sounds_like_one(clause):
            yield "what was found may be lost"
    for item in items:
        k = item.end + (word(toks, item.end) in {"is", "at"})
        if item.role == "cue" and item.value == "seal" and word(toks, k) in HOMOPHONES:
            yield "how deep the seal is may be lost"  # "seal is at to"
    for no, item in pairwise(items):
        denied = no.role == "cue" and no.value in {"no", "neg"} and no.end == item.start
        if denied and item.unread and item.name.startswith(LEAKS):
            yield "what is denied may be a leak or a swing"


def _sounds_like_one(clause: tuple[Item, ...]) -> bool:
    """ "tied link well" begins as tidaling does; "specimen sent", "watching telly" are remarks."""
    return any(item.name.startswith(LEAKS + FOUND) for item in clause)


def _of_fluid(item: Item, toks: Toks) -> bool:
    """ "fluid is buddy"; "fluid gone milky" goes on."""
    if item.name in TURNING:
        return False
    before = word(toks, item.start - 1)
    return before in FLUIDS or (before in {"is", "was", "looks"} and word(toks, item.start - 2) in FLUIDS)


def _is_led(items: tuple[Item, ...]) -> bool:
    """A word that was not understood, and then a line."""
    return len(items) > 1 and items[0].unread and items[1].role == "cue" and items[1].value == "level"
