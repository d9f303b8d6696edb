"""Short words with two letters swapped or a vowel lost: "teh", "adn", "bed 8 lne 350", "the old oen 1795".

What is written is no word of English, no short form of a ward ("nad", "ptu", "ogt") and near to no numeral;
longer words are put right by `spelling`. Called by `pipeline`, for typed messages.
"""

from __future__ import annotations

from collections.abc import Sequence

from .patterns.leads import BED_WORDS
from .patterns.numerals import NUMERALS
from .tokens import Token, text_at

WRITTEN = {
    "hte": "the",
    "teh": "the",
    "adn": "and",
    "wsa": "was",
    "aws": "was",
    "ahs": "has",
    "ahd": "had",
    "ofr": "for",
    "hsi": "his",
    "hre": "her",
    "hmi": "him",
    "yuo": "you",
    "oyu": "you",
    "nwe": "new",
    "enw": "new",
    "odl": "old",
    "bxo": "box",
    "obx": "box",
    "wth": "with",
    "neds": "needs",
    "xry": "xray",
    "jst": "just",
    "wnt": "went",
    "tht": "that",
    "ths": "this",
    "hav": "have",
    "ovr": "over",
    "whn": "when",
    "drk": "dark",
    "tme": "time",
    "dwn": "down",
    "snd": "send",
    "sde": "side",
    "hlf": "half",
    "otu": "out",
    "uot": "out",
    "imn": "min",
    "mni": "min",
    "aog": "ago",
    "gao": "ago",
    "lal": "all",
    "edn": "end",
    "erd": "red",
    "epn": "pen",
    "htis": "this",
    "sya": "say",
    "awy": "way",
    "becuase": "because",
    "becasue": "because",
    "beacuse": "because",
}
BEDS = frozenset({"bde", "ebd"})
"""Before digits these are a bed wherever they stand."""
LINES = frozenset({"lne"})
"""Where a number may be told in words these could be of it."""
LEAKS = frozenset({"lak", "lek", "elak", "leka"})
LEAKING = frozenset({"no", "nil", "any", "air", "small", "tiny", "slight", "large", "big", "intermittent"})
ONES = frozenset({"oen", "noe"})
WHICH = frozenset({"old", "odl", "new", "nwe", "enw", "full", "other", "previous", "last", "next"})
"""Before these a "one" stands for what was told of, and is no number."""
AIR = frozenset({"iar", "ari"})
NONE = frozenset({"none", "nil", "neg", "negative", "grade"})
BEHIND = {
    "sel": ("seal", frozenset({"is", "at", "ok"})),
    "sal": ("seal", frozenset[str]()),
    "wll": ("wall", frozenset({"reads", "suction", "gauge"})),
}
"""What these are of where a number of theirs, or such a word, stands behind them."""
OF_LAST = frozenset({"shift", "night", "line", "mark", "reading", "level", "hour", "check", "one", "evening"})
LENGTH = 3
TYPOS = WRITTEN.keys() | BEDS | LINES | LEAKS | ONES | AIR | BEHIND.keys() | {"lst"}


def plain(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens with such words put right."""
    if TYPOS.isdisjoint({t.text for t in toks}):
        return toks
    return [t._replace(text=_meant(toks, k)) if t.text in TYPOS else t for k, t in enumerate(toks)]


def _meant(toks: Sequence[Token], k: int) -> str:
    word, before, behind = toks[k].text, text_at(toks, k - 1), text_at(toks, k + 1)
    alone = not toks[k].glued and not (behind and behind.isalnum() and toks[k + 1].glued)
    if word in BEDS:
        return "bed" if behind.isdecimal() else word
    if word in LINES:
        numbered = before in BED_WORDS or before in NUMERALS or behind in NUMERALS
        return "line" if alone and not numbered else word
    if word in BEHIND:
        meant, told = BEHIND[word]
        return meant if behind in told or (behind.isdecimal() and len(behind) <= LENGTH) else word
    if word == "lst":
        return "last" if behind in OF_LAST else word  # "lst his swing" is lost
    if word in AIR:
        return "air" if behind in LEAKS | {"leak", "leaks"} else word
    if word in LEAKS:
        return "leak" if before in LEAKING or behind in NONE else word
    if word in ONES:
        return "one" if before in WHICH and behind not in NUMERALS else word
    return WRITTEN[word]
