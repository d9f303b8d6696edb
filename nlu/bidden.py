"""Cues of orders told in sentences: "consultant saw 3 and asked for suction of 15", "doctor says put 25 on".

Whoever wants it was named before, and what they want is what the suction is to be set to. Called by `recast`.
"""

from __future__ import annotations

from .beside import PROVIDERS
from .neighbours import ends_at, phrase_of
from .numbers import Toks, is_digits, starts_number, word
from .patterns.asides import RELATIVES, TITLES
from .patterns.leads import BED_WORDS
from .pipeline import Cue, in_order, overlaps, with_found

TEAMS = PROVIDERS | {"doctors", "docs", "round", "rounds", "sho", "spr", "icu", "anaesthetist", "intensivist"}
TEAMS |= {
    "thoracic",
    "cardiothoracic",
    "trauma",
    "surgical",
    "prof",
    "professor",
    "boss",
    "chief",
    "cardiothoracics",
}
WANTING = frozenset({"wants", "want", "wanted", "wanting", "asked", "asking", "asks", "requested", "like"})
ASKED = frozenset({"asked", "asking", "asks"})
SAYING = frozenset({"says", "said", "told", "asked"})
PRONOUNS = frozenset({"he", "she", "they", "who", "they're", "he's", "she's", "and", "they'd"})
PRONOUNS |= {"he'd", "she'd", "they've"}
HELPERS = frozenset({"now", "just", "has", "have", "is", "are", "would", "also", "still", "then", "really"})
SETTING = frozenset(
    {"put", "turn", "set", "drop", "increase", "decrease", "keep", "leave", "bring", "reduce"}
)
SETTING |= {"lower", "place", "start", "raise", "go"}
TOLD = frozenset({"to", "us", "me", "we", "should", "that"})
BEHIND = frozenset({"for", "us", "me", "to", "have"})
SUCTION = frozenset({"suction", "sxn", "suct", "dial", "seal", "waterseal"})
INSTEAD = frozenset({"instead"})
STOPS = frozenset({".", ";", "!", "but"})
CONNECTING = frozenset({"on", "to", "at", "back", "up", "down"})


def bidden(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, each such order told as one, and what is to be done to the suction as its setting."""
    if not INSTEAD.isdisjoint(toks.words) and any(c.label == "order" for c in cues):
        cues = tuple(_not_this(cue, toks) for cue in cues)
    if (WANTING | SAYING).isdisjoint(toks.words):
        return cues
    if SUCTION.isdisjoint(toks.words):
        return _to_minus(cues, toks)
    told = [o for o in (_order(k, toks) for k in range(1, len(toks))) if o is not None]
    orders = [*told, *(c for c in cues if c.label == "order")]
    orders = [o for k, o in enumerate(orders) if not overlaps(o, orders[:k])]
    found = [c for c in cues if not overlaps(c, orders)]
    for order in orders:
        found = [_set_to(c, order, toks) for c in found]
    return in_order([*found, *orders])


def _to_minus(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """ "thoracic says go down to minus ten on bed 9": what is negative is the suction, not named."""
    for k in range(1, len(toks)):
        end = k + 1
        while word(toks, end) in TOLD:
            end += 1
        by = word(toks, k) in SAYING and word(toks, k - 1) in TEAMS and word(toks, end) in SETTING
        first = end + 1
        while by and (word(toks, end) in SETTING | CONNECTING | BED_WORDS or is_digits(toks, end)):
            first = end + 1 if is_digits(toks, end) else first
            end += 1
        minus = word(toks, end) in {"minus", "-"} and starts_number(toks, end + 1)
        if by and minus and first <= end:
            suction = [Cue("suction", "", first, end)] if first < end else []
            return with_found(cues, [Cue("order", "", k - 1, k + 1), *suction])
    return cues


def _not_this(cue: Cue, toks: Toks) -> Cue:
    """ "wants 14 on 10 of suction instead of 20": what it was before, and nothing that is put right."""
    before = phrase_of(cue, toks) == "instead of" and is_digits(toks, cue.end)
    return Cue("claimed", "", cue.start, cue.end + 1) if before else cue


def _order(k: int, toks: Toks) -> Cue | None:
    if SUCTION.isdisjoint(toks.said[k : ends_at(STOPS, toks, k)]):
        return None
    if word(toks, k) in SAYING and word(toks, k - 1) in TEAMS:
        end = k + 1
        while word(toks, end) in TOLD:
            end += 1
        if word(toks, end) in SETTING:
            return Cue("order", "", k - 1, end + 1)
    return _wish(k, toks) if word(toks, k) in WANTING else None


def _wish(k: int, toks: Toks) -> Cue | None:
    """ "they want", "and asked for": of somebody who orders, and of nobody else that was named since."""
    start = k
    while word(toks, start - 1) in HELPERS:
        start -= 1
    asks = word(toks, k) not in ASKED or word(toks, k + 1) == "for"
    by = start - 1
    would = word(toks, k) != "like" or start < k or word(toks, by).endswith("'d")
    named = word(toks, by - 1) in TITLES and word(toks, by).isalpha()  # "dr shah has asked for"
    if not (asks and would and (named or word(toks, by) in PRONOUNS)):
        return None
    who = by if named else max((j for j in range(start) if word(toks, j) in TEAMS), default=-1)
    others = any(word(toks, j) in RELATIVES | {"pt", "patient"} for j in range(who + 1, start))
    if others or (who < 0 and word(toks, by) not in {"they", "they'd", "they've"}):
        return None
    end = k + 1
    while word(toks, end) in BEHIND:
        end += 1
    return Cue("order", "", start if start < k else k, end)


def _set_to(cue: Cue, order: Cue, toks: Toks) -> Cue:
    """ "put 25 on suction", "suction back at 20": what it is to be set to, and nothing that was done."""
    if not order.end <= cue.start < ends_at(STOPS, toks, order.end):
        return cue
    if cue.label == "suction" and word(toks, cue.end - 1) in SUCTION | {"to"}:
        end = cue.end
        while word(toks, end) in SETTING | CONNECTING | {"be", "come", "reduced", "increased", "turned"}:
            end += 1
        return cue._replace(end=end) if starts_number(toks, end) else cue
    if cue.value == "back" and word(toks, cue.start - 1) in SUCTION:
        return cue._replace(label="filler", value="")
    if cue.value == "suction_on":
        return cue._replace(label="suction", value="")
    return cue
