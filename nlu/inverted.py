"""Signs that a message asks by the order of its words behind its bed: "bed 9 has the canister been changed".

Recognisers write no question mark, and typed ones are often left out; "bed 9 the canister has been changed"
tells it. What begins with such a word is found in `asking`. Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator

from .clauses import NUMBERS, happens
from .items import FINDINGS, Item
from .numbers import Toks, word
from .rules import Rule

BEING = frozenset({"is", "was", "are", "were"})
HAVING = frozenset({"has", "have", "had"})
DOING = frozenset({"do", "does", "did", "can", "could", "should", "would", "shall", "will"})
WHO = frozenset({"he", "she", "they", "we", "i", "you", "it", "anyone", "anybody", "someone", "somebody"})
OF_WHAT = frozenset({"that", "this", "there"})
THE = frozenset({"the", "his", "her", "their", "my", "your"})
THINGS = frozenset(
    {"canister", "box", "bottle", "chamber", "unit", "drain", "drains", "tube", "tubes", "chest", "suction"}
    | {"mark", "line", "level", "reading", "leak", "seal", "output", "patient", "pt", "fluid", "wall", "old"}
)
BEEN = frozenset({"been", "got", "gone"})
REACH = 4
"""Words between "has" and "been" at most."""


def _inverted(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 9 was the canister changed", "has it been clamped", "is it 340", "do you have 340"."""
    ends = {i.end + (word(toks, i.end) == ",") for i in items if i.role == "bed"}
    starts = [k for k in ends if _asks(toks, k)]
    had = any(word(toks, k) in HAVING for k in starts)
    for item in items if starts else ():
        told = item.role in NUMBERS | {"num", "check"} or happens(item) or (had and item.value in FINDINGS)
        if told and item.start > starts[0]:
            yield "a question by its order tells nothing"


def _asks(toks: Toks, k: int) -> bool:
    """Whether what stands behind the bed has its subject behind its verb."""
    verb, who = word(toks, k), word(toks, k + 1)
    thing = who in THE and word(toks, k + 2) in THINGS
    if verb in BEING:
        return who in WHO | OF_WHAT or thing
    if verb in HAVING:
        been = not BEEN.isdisjoint(toks.said[k + 2 : k + 2 + REACH])
        return been and (who in WHO | OF_WHAT or thing)
    return verb in DOING and (who in WHO or thing)


INVERTED = (
    Rule(_inverted, NUMBERS | {"num", "check", "kind", "what", "same"} | FINDINGS, BEING | HAVING | DOING),
)
