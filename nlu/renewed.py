"""Values that take the place of others in the same message: a check that was set right, the level of a
canister that was just changed, a tube that stays where another came out.

Settled before roles; called by `context`.
"""

from __future__ import annotations

from .items import Item
from .numbers import Toks, word
from .roles import CHECK_LIMITS

RENEWING = frozenset(
    {"turned", "topped", "increased", "adjusted", "reset", "fixed", "changed", "refilled", "filled", "raised"}
    | {"lowered", "decreased", "reduced", "added", "put"}
)
BETWEEN = RENEWING | frozenset(
    {
        "so",
        "i",
        "we",
        "it",
        "was",
        "but",
        "and",
        "water",
        "up",
        "down",
        "to",
        "now",
        "at",
        "back",
        "only",
        "low",
    }
)
STAYS = frozenset({"still", "stays", "stayed", "staying", "remains", "remaining"})
STAYING = STAYS | {"in", "place", "put", "there", "is", "the", "one", "side", "tube", "chest", "drain", "ct"}
KEPT = STAYS | {"left"}
LEFT_IN = frozenset({"left", "in"})
"""Of a tube that stays: "right left in place"."""
CONTEXT = "context"
RENEWED = RENEWING | {"now"}


def renewed(items: list[Item], toks: Toks) -> list[Item]:
    """The pieces, with what was replaced kept as context."""
    found = _as_ended(_without_staying(items, toks), toks)
    if toks.words.isdisjoint(RENEWED):
        return found
    for k, item in enumerate(found):
        if item.role in {"num", "bad"} and item.lead in CHECK_LIMITS:
            _set_right(found, k, toks)
    return found


def _set_right(items: list[Item], k: int, toks: Toks) -> None:
    """ "wall 60 so turned up to 90", "seal 1cm, added water to 2": what it is now."""
    old = items[k]
    at = next((j for j in range(k + 1, len(items)) if items[j].role == "num"), None)
    if at is None:
        return
    new = items[at]
    beds = {j for i in items[k:at] if i.role == "bed" or i.value == "bed" for j in range(i.start, i.end)}
    said = [word(toks, j) for j in range(old.end, new.start) if j not in beds]
    said = (
        said[1:] if beds and said[:1] in (["on"], ["in"], ["for"]) else said
    )  # "seal 1 on bed 4, filled to 2"
    while said and said[0] in {",", ";"}:
        said = said[1:]
    fits = new.figure is not None and new.figure <= CHECK_LIMITS[old.lead] and new.unit in {"", "cm", "mmhg"}
    was = word(toks, old.start - 1) == "was" and "now" in said  # "wall was 60 now 90"
    anew = was or bool(set(said) & RENEWING)
    if fits and said[-1:] in (["to"], ["at"], ["now"]) and set(said) <= BETWEEN and anew:
        items[k] = old.as_role(CONTEXT)
        items[at] = new._replace(lead=old.lead, link="", label=None, at=False)
        for j in range(k + 1, at):
            if items[j].role == "cue":
                items[j] = items[j]._replace(value="filler", name="")


def _as_ended(items: list[Item], toks: Toks) -> list[Item]:
    """ "box changed, was 1950": the level of the one that is gone."""
    if "was" not in toks.words:
        return items
    changed = next((k for k, i in enumerate(items) if i.role == "cue" and i.name == "exchanged"), None)
    if changed is None:
        return items
    told = any(i.role == "cue" and i.value in {"old", "new"} for i in items)
    behind = next((k for k, i in enumerate(items) if k > changed and i.role == "num" and not i.lead), None)
    if told or behind is None or word(toks, items[behind].start - 1) != "was" or items[behind].at:
        return items
    ended = items[behind]._replace(lead="old")
    return [*items[:behind], ended, *items[behind + 1 :]]


def _without_staying(items: list[Item], toks: Toks) -> list[Item]:
    """ "left chest tube out, right still in": of the tube that stays nothing more is told."""
    if toks.words.isdisjoint(KEPT):
        return items
    removed = next((k for k, i in enumerate(items) if i.role == "cue" and i.name == "removed"), None)
    stop = max((k for k, i in enumerate(items) if i.role == "sep"), default=0)
    if removed is None or stop < removed:
        return items
    rest = items[stop + 1 :]
    said = {word(toks, k) for i in rest[:1] for k in range(i.end, len(toks))}
    stays = said <= STAYING | KEPT and (said & STAYS or said >= LEFT_IN)
    if not rest or rest[0].role != "tube" or not stays:
        return items
    return [*items[:stop], *(Item("cue", i.start, i.end, "filler") for i in rest)]
