"""Questions of the whole unit: "does anyone have a leak", "which canisters are nearly full".

Called by `queries`. The words that say so stand in the clause that asks.
"""

from __future__ import annotations

from itertools import pairwise

from .items import Item
from .pipeline import Read
from .rules import there
from .topics import stretch

OF_ALL = frozenset({"capacity", "checks", "rate", "total", "last"})
"""Topics of one bed that may be asked of all beds at once, where the words say so."""
ANYONE = frozenset({"anyone", "anybody", "everyone", "everybody", "anyone's", "everyone's"})
WHICH = frozenset({"which", "all", "any", "every", "each", "who", "whole", "what"})
OF_US = frozenset(
    {
        "beds",
        "of",
        "rooms",
        "patients",
        "pts",
        "bed",
        "room",
        "patient",
        "pt",
        "canisters",
        "boxes",
        "bottles",
    }
    | {"chambers", "drains", "unit", "ward", "floor", "our", "ones", "box", "canister", "bottle"}
)
"""Behind one of those these are of all; "which tube is leaking" is of one bed."""
WHO = frozenset({"who", "whos", "who's"})
NEEDING = frozenset({"is", "needs", "need", "has", "have", "got", "getting"})
FOUND = frozenset({"leak", "tidal", "waterseal", "fluid", "suction", "wall"})
LOOKED = frozenset({"leaking", "bubbling", "swinging", "tidaling", "fill", "full"})
SPARE = frozenset({"spare", "tubing", "seen", "machine", "machines", "portable"})
"""With one of these a thing is looked for."""


def is_of_all(topic: str | None, items: tuple[Item, ...], read: Read) -> bool:
    """Whether a question that names no bed asks of every bed; "anyone got spare tubing" asks of none."""
    if topic not in OF_ALL:
        return False
    start, end = stretch(items, read)
    said = read.tokens.said[start:end]
    named = there(items) & FOUND or any(i.name == topic for i in items) or not LOOKED.isdisjoint(said)
    if not SPARE.isdisjoint(said):
        return False
    who = ((a in WHICH and b in OF_US) or (a in WHO and b in NEEDING) for a, b in pairwise(said))
    return bool(named) and (not ANYONE.isdisjoint(said) or any(who))
