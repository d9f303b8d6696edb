"""Checks that are denied: "no ongoing leak", "isn't swinging", "bubbling not seen".

The phrases of `patterns.checks` hold the usual ways to say no. Any other denial turns round the check right
behind it where nothing else can be meant; else what was denied is asked, and never read as present.
"""

from __future__ import annotations

from .items import Item
from .neighbours import phrase_of
from .numbers import Toks, word
from .plusminus import with_marks

TURNED = {"leak": "none", "tidal": "no"}
"""A sign, and what is told where there is none of it."""
NONE = frozenset(TURNED.items())
LOOKED_AT = frozenset({*TURNED, "fluid"})
TURNING = frozenset(
    {"no", "not", "no longer", "isn't", "is not", "isnt", "wasn't", "wasnt", "was not", "doesn't", "doesnt"}
    | {"didn't", "didnt", "did not", "hasn't", "hasnt", "has not", "without", "not yet", "never", "not been"}
)
KEEPING = frozenset(
    {"visible", "ongoing", "obvious", "active", "audible", "apparent", "current", "further", "new", "more"}
    | {"significant", "evident", "detectable", "been", "definite", "clear", "real", "noted", "sign", "signs"}
)
"""What may stand between a denial and its sign without changing either."""
LOOKING = frozenset(
    {"check", "checked", "checking", "look", "looked", "looking", "assess", "assessed", "test", "tested"}
    | {"tried", "try", "listen", "listened", "watch", "watched", "examine", "examined"}
)
"""Where nobody looked, nothing was found: neither that it leaks nor that it does not."""
DEGREE = frozenset({"as", "so", "that", "very", "too", "really", "quite", "looking", "all"})
"""Between a denial and the look of the fluid: "not as bloody"."""
STOPS = frozenset({",", ";", ".", "!", "but", "then", "and", "&", "also"})
FRESH = frozenset(
    {"fresh", "frank", "more", "further", "new", "obvious", "visible", "active", "gross", "overt"}
)
FRESH |= {"evident", "any", "sign", "signs", "of", "evidence", "red", "old", "bright", "significant", "real"}
"""Between "no" and the blood that was not seen."""
PAST = frozenset({"was", "were", "from", "previously", "been"})
PRESENT = frozenset({"now", "to"})
"""Before the look of the fluid: what it was, and what it is."""
SHORT = frozenset({"n", "y"})
DENIED = "denied"


def turned(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """The pieces with every sign that is denied told as absent, or denied."""
    if LOOKED_AT.isdisjoint([i.value for i in items]):
        return items
    found, marked = with_marks(items, toks, DENIED)
    for k, item in enumerate(found):
        if is_fluid(item):
            _colour(found, k, toks)
        if k in marked:
            continue
        if _is_sign(item) and _is_present(item):
            _turn(found, k, toks)
        elif _is_sign(item) and _is_twice_denied(found, k, toks):
            found[k] = item.as_role(DENIED)
        elif _is_sign(item) and _ends_denied(found, k):
            found = [i.as_role(DENIED) if _is_sign(i) else i for i in found]
    return tuple(found)


def _turn(items: list[Item], k: int, toks: Toks) -> None:
    before = [j for j in _clause_before(items, k) if not _keeps(items[j], toks)]
    nearest = before[-1] if before else None
    if nearest is not None and _is_denial(items[nearest]):
        looked = {toks[j].text for j in range(items[nearest].start, items[k].start)} & LOOKING
        if phrase_of(items[nearest], toks) in TURNING and not looked:
            items[nearest] = items[nearest]._replace(value="filler")
            items[k] = items[k]._replace(name=TURNED[items[k].value])
        else:
            items[k] = items[k].as_role(DENIED)
    elif _is_lost(toks, items[k].start):
        items[k] = items[k]._replace(name=TURNED[items[k].value])
    elif (
        any(_is_denial(items[j]) for j in before)
        or _has_minus(toks, items[k].start)
        or _is_other_half(items, k)
        or _is_denied_after(items, k, toks)
    ):
        items[k] = items[k].as_role(DENIED)


def _is_lost(toks: Toks, k: int) -> bool:
    """ "lost the tidaling", "lost its swing": it was there, and is no more."""
    k -= 1
    while word(toks, k) in {"the", "its", "it's", "his", "her", "their", "that", "all"}:
        k -= 1
    return word(toks, k) in {"lost", "losing", "loses"} and word(toks, k - 1) not in TURNING


def _colour(items: list[Item], k: int, toks: Toks) -> None:
    """ "not bloody" is asked; in "was bloody, now serous" only what it is now is told."""
    near = [j for j in _clause_before(items, k) if not _keeps(items[j], toks)]
    before = [j for j in near if word(toks, items[j].start) not in DEGREE]
    denial = items[before[-1]] if before else None  # "no blood" is no finding, and settled elsewhere
    if denial is not None and denial.value == "neg" and phrase_of(denial, toks) in TURNING:
        items[k] = items[k].as_role(DENIED)
        return
    _unbloodied(items, k, toks)
    past = word(toks, items[k].start - 1) in PAST
    if past and any(is_fluid(i) and word(toks, i.start - 1) in PRESENT for i in items[k + 1 :]):
        items[k] = items[k]._replace(value="filler")


def _is_unseen(toks: Toks, k: int) -> bool:
    """ "denies blood", "haven't seen any blood", "worried about blood": none that was there."""
    looked = word(toks, k) in {"seen", "see", "seeing", "noticed", "noted"}
    denied = not (TURNING | {"haven't", "havent", "don't", "dont"}).isdisjoint(toks.said[max(0, k - 2) : k])
    worried = word(toks, k) in {"about", "for"} and word(toks, k - 1) in {"worried", "concerned", "watching"}
    return word(toks, k) in {"denies", "denied"} or (looked and denied) or worried


def _unbloodied(items: list[Item], k: int, toks: Toks) -> None:
    """ "no fresh blood": none was seen, which is no finding of it."""
    start = items[k].start
    while word(toks, start - 1) in FRESH:
        start -= 1
    shown = start < items[k].start or items[k].end - items[k].start > 1
    denied = shown and word(toks, start - 1) in {"no", "nil", "without", "zero", "0"}
    of = word(toks, items[k].start - 1) == "of" and word(toks, items[k].start - 2) in {"free", "clear"}
    if denied or of or word(toks, items[k].end) == "free" or _is_unseen(toks, start - 1):
        items[k] = items[k]._replace(value="filler")
        if denied and word(toks, start - 1) == "nil":
            items[:k] = [i._replace(value="filler") if i.start == start - 1 else i for i in items[:k]]


def _is_twice_denied(items: list[Item], k: int, toks: Toks) -> bool:
    kept = k > 0 and _is_kept(items[k - 1], items[k], toks)
    return kept or (k + 1 < len(items) and _is_denied_anew(items[k], items[k + 1], toks))


def _is_denied_anew(none: Item, after: Item, toks: Toks) -> bool:
    """ "no leak no longer": twice denied, so that it may be there again."""
    return _is_denial(after) and after.start == none.end and phrase_of(after, toks) in {"no longer", "not"}


def _is_kept(before: Item, none: Item, toks: Toks) -> bool:
    """ "hasn't lost tidaling", "never stopped swinging": it may go on."""
    ended = word(toks, none.start) in {"lost", "stopped", "stopping", "ceased"}
    return ended and before.role == "cue" and before.value == "neg" and before.end == none.start


def _clause_before(items: list[Item], k: int) -> list[int]:
    start = next((j + 1 for j in range(k - 1, -1, -1) if _is_stop(items[j])), 0)
    return list(range(start, k))


def _is_other_half(items: list[Item], k: int) -> bool:
    """ "no leak or tidaling": none of either, or a swing?"""
    if k < 2 or not (items[k - 1].role == "cue" and items[k - 1].value == "or"):
        return False
    return _is_sign(items[k - 2]) and (items[k - 2].value, items[k - 2].name) in NONE


def _is_denied_after(items: list[Item], k: int, toks: Toks) -> bool:
    """ "leak not seen", "leak n", "tidal +/-": what stands behind it may say that it is not there."""
    if word(toks, items[k].end) == "+" and word(toks, items[k].end + 1) in {"/", "-"}:
        return True
    if word(toks, items[k].end) in {"/", "\u00b1"} and word(toks, items[k].end + 1) in {"", "-"}:
        return True
    if word(toks, items[k].end) in {":", "=", "-", "("} and word(toks, items[k].end + 1) in SHORT | {
        "-",
        "neg",
    }:
        return True
    if k + 1 >= len(items) or items[k + 1].start != items[k].end:
        return False
    return _is_denial(items[k + 1]) or word(toks, items[k + 1].start) in SHORT


def _has_minus(toks: Toks, i: int) -> bool:
    """ "(-) leak"."""
    return word(toks, i - 1) == ")" and word(toks, i - 2) in {"-", "neg", "no", "0", "n"}


def _ends_denied(items: list[Item], k: int) -> bool:
    """ "tidal no bubble no": to which sign the first "no" belongs is not said."""
    after = items[k + 1 :]
    alone = bool(after) and _is_denial(after[0]) and (len(after) == 1 or _is_stop(after[1]))
    return alone and any(_is_sign(i) for i in items[:k])


def _is_sign(item: Item) -> bool:
    return item.role == "cue" and item.value in TURNED


def is_fluid(item: Item) -> bool:
    """Whether it tells the look of the fluid."""
    return item.role == "cue" and item.value == "fluid"


def _is_present(item: Item) -> bool:
    return (item.value, item.name) not in NONE


def _is_denial(item: Item) -> bool:
    return item.role == "cue" and item.value in {"no", "neg"}


def _is_stop(item: Item) -> bool:
    return item.role == "sep" and item.value in STOPS


def _keeps(item: Item, toks: Toks) -> bool:
    return item.role == "cue" and item.end - item.start == 1 and word(toks, item.start) in KEEPING
