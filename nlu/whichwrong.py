"""An answer that says that the earlier line was wrong, in any order: "it was the earlier one that was wrong".

Every word of the message is one of a few; where another stands beside them, it may be more than an answer.
Called by `sentence`.
"""

from __future__ import annotations

from .numbers import Toks, starts_number, word
from .statements import Answered

EARLIER = frozenset({"earlier", "previous", "prior", "old", "older"})
LINES = frozenset(
    {"one", "one's", "ones", "mark", "line", "reading", "entry", "level", "reading's", "number"}
)
WRONG = frozenset({"wrong", "incorrect", "off", "bad", "misread", "mistake", "mistaken", "typo", "error"})
LATER = frozenset({"new", "latest", "current", "second", "this", "last", "first"})
NO = frozenset({"no", "nope", "nah"})
YES = frozenset({"yes", "yeah", "yep"})
PLAIN = frozenset(
    {"it", "it's", "its", "is", "was", "the", "that", "that's", "thats", "a", "an", "s", "'", "i", "think"}
    | {"oh", "sorry", "um", "uh", "so", "just", "actually", ","}
    | {".", "!", "-", "which", "been", "were", "please", "thanks", "my"}
)
"""Beside these the answer says nothing."""
STOPS = frozenset({",", ".", ";", "-", "("})
OPENING = STOPS | {"because", "bc", "cos", "cuz", "as", "since"}
WHO = frozenset(
    {
        "i",
        "i'd",
        "we",
        "he",
        "she",
        "they",
        "somebody",
        "someone",
        "it",
        "the",
        "his",
        "her",
        "my",
        "must",
        "misread",
        "read",
    }
)
"""Behind a stop these begin what was the reason."""
DOUBTFUL = EARLIER | LATER | NO | YES | {"not", "this", "that", "same", "both", "canister", "box", "?"}
ALL = EARLIER | LINES | WRONG | PLAIN | NO | YES
WHICH = frozenset({"first", "second", "1st", "2nd"})


def earlier_wrong(toks: Toks) -> Answered | None:
    """That the line before was wrong, where the message says that and no more."""
    if EARLIER.isdisjoint(toks.words) or WRONG.isdisjoint(toks.words):
        return None
    said = toks.said[: _reason(toks)]
    if EARLIER.isdisjoint(said) or WRONG.isdisjoint(said) or not set(said) <= ALL:
        return None
    no, yes = not NO.isdisjoint(said), not YES.isdisjoint(said)
    return Answered(choice="earlier_wrong", answer=None if no == yes else "no" if no else "yes")


def _reason(toks: Toks) -> int:
    """Where the reason begins: ", i must have read the scale upside down"; the end where none is told.

    A number, a bed or another line in it may be what is answered.
    """
    opening = (k for k in range(1, len(toks)) if word(toks, k) in OPENING)
    for k in opening:
        behind = set(toks.said[k + 1 : len(toks)])
        plain = behind.isdisjoint(DOUBTFUL) and not any(starts_number(toks, j) for j in range(k, len(toks)))
        if plain and (word(toks, k) not in STOPS or word(toks, k + 1) in WHO):
            return k
    return len(toks)


def is_either(toks: Toks) -> bool:
    """ "the second one's wrong": what is wrong was said, and not which of the two is chosen."""
    if WRONG.isdisjoint(toks.words) or WHICH.isdisjoint(toks.words):
        return False
    return (ALL | LATER).issuperset(toks.said[: len(toks)])
