"""What a number is of, where a word that was not understood says it: "vanc level 14", "14 of them".

A word of the trade right before a number calls it a level or an amount; the word before that may say that it
is of something else: a drug, a dog, a floor. Called by `leftovers`; dictated, where nobody says a stop, fewer
words say so.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .clauses import is_strange
from .items import AMOUNTS, EVENTS, FINDINGS, Item
from .numbers import Toks, glued, word
from .patterns.asides import CALLED, DONE_TO
from .patterns.ofwhat import (
    BESIDE,
    DONE,
    ENDING,
    ENDS,
    FEW,
    FINALS,
    HAVING,
    HEADS,
    HIT,
    HOLDERS,
    HOW,
    IS,
    JOINING,
    LEADING,
    NAMING,
    NIL,
    OF_BLOOD,
    OTHER,
    PATIENT,
    PLACED,
    RIGHT,
    SEEN,
    SHORT,
    SIZES,
    THEM,
    THINGS,
    ZONES,
)
from .rules import Pieces, Rule


def _of_what(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "vanc level 14", "the dog drained 30": what the level or the amount is of."""
    for k, item in enumerate(items):
        if item.role not in AMOUNTS:
            continue
        cue = next((i for i in reversed(items[:k]) if i.role == "cue" and i.value in NAMING), None)
        if cue is None or not all(i.role == "cue" and not i.unread for i in items[items.index(cue) + 1 : k]):
            continue
        before = items[items.index(cue) - 1] if items.index(cue) else None
        if before is not None and before.end == cue.start and _may_be_of(before, toks):
            yield f"{before.name!r} may say what the level is of"


def _level_of_blood(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "k level 4", "gent level 2": of the blood, though the word says nothing elsewhere."""
    for item in items:
        level = item.start - 1 - (word(toks, item.start - 1) in {"is", "was", "=", ":", "at"})
        told = item.role in AMOUNTS and word(toks, level) in HEADS
        if told and word(toks, level - 1) in OF_BLOOD:
            yield "what the level is of"


def _came_out(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "the goat 14 out": what came out of what."""
    for before, item in pairwise(items):
        out = word(toks, item.end) == "out" and item.role in AMOUNTS
        if out and before.end == item.start and _may_be_of(before, toks):
            yield f"{before.name!r} may say what came out"
        if out and any(i.role in {"foreign", "claimed"} for i in items[: items.index(item)]):
            yield "what came out may be of something else"
    for item, behind in pairwise(items):
        counted = item.role == "volume" and item.lead == "amount" and not item.unit
        if counted and behind.start == item.end and _may_be_of(behind, toks):
            yield f"{behind.name!r} may say of what it was so much"


def _ended_with(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "old goat 14", "final goat 14": what ended with it."""
    for cue, strange, item in zip(items, items[1:], items[2:], strict=False):
        ends = cue.role == "cue" and (cue.value in ENDING or word(toks, cue.start) in FINALS)
        beside = cue.end == strange.start and strange.end == item.start
        if ends and beside and item.role in AMOUNTS and _may_be_of(strange, toks):
            yield f"{strange.name!r} may say what ended"


def _of_them(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "has grandchildren, 14 of them": a count."""
    for item in items:
        if item.role in AMOUNTS and word(toks, item.end) == "of" and word(toks, item.end + 1) in THEM:
            yield "how many of them"


def _has_more(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "off to CT at 1840, porter has 2 more": what somebody has still to do."""
    for item in items:
        counted = item.role == "volume" and not item.unit and (item.amount or 0) <= FEW
        if counted and word(toks, item.end) in {"more", "others"} and word(toks, item.start - 1) in HAVING:
            yield "how many somebody has"


def _had(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "has stairs at home, 14": with nothing that makes it a line, how many."""
    for k, item in enumerate(items):
        bare = item.role == "level" and not (item.lead or item.unit) and items[k - 1].role == "sep" and k > 1
        if not bare or any(i.role == "time" for i in items):
            continue
        start = max((i.end for i in items[: k - 1] if i.role in {"sep", "bed"}), default=0)
        had = any(i.unread and i.start >= start for i in items[: k - 1])
        if had and not HAVING.isdisjoint(toks.said[start : items[k - 1].start]):
            yield "how many somebody has, or the line"


def _numbered_place(items: Pieces, _: Toks) -> Iterator[str]:
    """ "gone to theatre 2 at 0910", "to MRI 2": the number of a place, or a line."""
    for before, item in pairwise(items):
        went = before.role == "cue" and before.value == "kind" and before.name in PLACED
        bare = item.role == "level" and not (item.lead or item.unit) and len(item.digits) <= SHORT
        if went and bare and before.end == item.start:
            yield "the number of a place, or a line"


def _sized(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "new 2000 ml canister", "canister is 2000 ml size": how much it holds; "3 bubbles": how many."""
    for item in items:
        if item.role not in AMOUNTS:
            continue
        sized = item.unit and (word(toks, item.end) in HOLDERS or word(toks, item.end) in SIZES)
        few = not item.unit and (item.amount or 0) <= FEW and word(toks, item.end) in SEEN
        if sized or few:
            yield "how much it holds, or how many of them"


def _numbered_thing(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "line on locker 4 is 340", "locker number 4": the number of a thing, and no bed."""
    for k, bed in enumerate(items[1:], 1):
        before = items[k - 1]
        if before.name == "number" and k > 1 and before.unread:
            before = items[k - 2]
        bare = bed.role == "bed" and bed.lead != "bed" and items[k - 1].end == bed.start
        led = word(toks, before.start - 1) in LEADING or before is not items[k - 1]
        if bare and led and before.name not in JOINING and _may_be_of(before, toks):
            yield f"{before.name!r} may say what the number is of"


def _glued_letter(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "M8 mark 730": a label that the unit has not, and no mediastinal tube of bed 8."""
    for tube, bed in pairwise(items):
        beside = tube.role == "tube" and bed.role == "bed" and tube.end == bed.start
        if beside and len(word(toks, tube.start)) == 1 and glued(toks, bed.start):
            yield "a label, or a tube and a bed"


def _of_another_zone(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "340 at 18:45 utc": the time of another zone."""
    for item in items:
        if item.role == "time" and word(toks, item.end) in ZONES:
            yield "a time of another zone"


def _other_side(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "right drained 35, left nothing": what the other tube gave was told too."""
    told = {i.name for i in items if i.role == "tube"}
    same = any(i.role == "cue" and i.value == "same" for i in items)
    for k, side in enumerate(toks.said):
        behind = word(toks, k + 1) in NIL and word(toks, k + 2) in ENDS
        before = toks.said[max(0, k - 2) : k] in {(nil, "from") for nil in NIL} and word(toks, k + 1) in ENDS
        if side in OTHER and OTHER[side] in told and side not in told and not same and (behind or before):
            yield "what the other tube gave"


def _of_patient(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "PT 14, INR 1.3, bed 10": of a patient, or of the blood; no line."""
    for item in items:
        led = item.role == "level" and word(toks, item.start - 1) in PATIENT and not item.unit
        if led and any(i.role == "bed" and i.start > item.start for i in items):
            yield "which patient it is, or what was measured of one"


def _of_a_thing(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "the blanket is bloody", "clamped the chair": of another thing, unless that did it to a drain."""
    if any(i.role == "cue" and i.value in HIT for i in items):
        return
    for before, item in pairwise(items):
        near = all(word(toks, k) in IS for k in range(before.end, item.start))
        first = near and _is_thing(before, toks) and (_happens(item) or item.role == "check")
        first = first and word(toks, item.end) not in {"it", "itself"}  # "pillow kinked it"
        if first or (near and _happens(before) and _is_thing(item, toks)):
            yield "it may be of another thing"


def _happens(item: Item) -> bool:
    return item.role == "cue" and item.value in EVENTS | FINDINGS


def _is_thing(item: Item, toks: Toks) -> bool:
    """Whether it is such a thing, and not where something is: "by the chair"."""
    led = word(toks, item.start - 1) in {"the", "a", "his", "her", "their"}
    return item.unread and item.name in THINGS and word(toks, item.start - 1 - led) not in BESIDE


def _turned(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "bed 4 turned 85": how old somebody is now; "checked at 340": when, or the line?"""
    lines = [i for i in items if i.role in AMOUNTS and not i.unit]
    for item in lines:
        checked = toks.said[max(0, item.start - 2) : item.start] in {("checked", "at"), ("looked", "at")}
        if word(toks, item.start - 1) == "turned" or (checked and item.clocks and len(lines) == 1):
            yield "how old somebody is, or when it was looked at"


def _beside_line(items: Pieces, toks: Toks) -> Iterator[str]:
    """Behind a whole line of one bed: "60 more" is how much it rose, "280 left" how much may come yet, and
    "7 2 hours ago" another bed."""
    lines = [i for i in items if i.role in AMOUNTS or i.loose_time]
    several = len({i.label for i in items if i.role == "bed"}) > 1
    tubed = any(i.role == "tube" for i in items)
    for line, item in pairwise(() if several else lines):
        apart = any(i.role == "sep" and i.end == item.start for i in items)
        bare = line.role in {"level", "time"} and not (item.unit or item.lead == "level")
        more = item.role == "volume" and word(toks, item.end) in {"more", "extra"}
        left = word(toks, item.end) == "left" and RIGHT.isdisjoint(toks.words)
        bed = item.role == "level" and item.label is not None and not (item.lead or line.label or tubed)
        if bare and (more or (apart and (left or bed))):
            yield "what stands beside the line"


def _may_be_of(item: Item, toks: Toks) -> bool:
    """Whether it is a thing by its name, and not what was done, how or by whom."""
    plain = is_strange(item, toks) and item.name.isalpha() and len(item.name) > 1
    where = word(toks, item.start - 1) == "the" and word(toks, item.start - 2) in BESIDE
    return plain and not (where or item.name in HOW | DONE_TO | CALLED or item.name.endswith(DONE))


def _level_of_what(items: Pieces, toks: Toks) -> Iterator[str]:
    """Dictated "vanc level 14"; "ate half of lunch mark 340" has a stop that nobody said."""
    heads = {i.end for i in items if i.role == "cue" and word(toks, i.end - 1) in HEADS}
    heads |= {i.end for i in items if i.role == "cue" and word(toks, i.start) in HEADS}
    said = [i for i in items if i.role != "cue" or i.value not in NAMING or i.end in heads]
    yield from _of_what(tuple(said), toks) if heads else ()


BOTH = (
    Rule(_beside_line, frozenset({"sep", "volume"})),
    Rule(_turned, AMOUNTS, frozenset({"turned", "checked", "looked"})),
    Rule(_level_of_blood, AMOUNTS, OF_BLOOD),
    Rule(_glued_letter, frozenset({"tube"})),
    Rule(_of_them, AMOUNTS, THEM),
    Rule(_has_more, frozenset({"volume"}), HAVING),
    Rule(_numbered_place, frozenset({"kind"})),
    Rule(_sized, AMOUNTS, HOLDERS | SIZES | SEEN),
    Rule(_of_a_thing, frozenset({"word"}), THINGS),
)
OF_WHAT_ALOUD = (*BOTH, Rule(_level_of_what, NAMING, HEADS))
OF_WHAT = (
    *BOTH,
    Rule(_numbered_thing, frozenset({"word"})),
    Rule(_of_what, NAMING),
    Rule(_came_out, AMOUNTS),
    Rule(_ended_with, ENDING | {"closing", "kind", "level"}),
    Rule(_had, frozenset({"level"}), HAVING),
    Rule(_of_another_zone, frozenset({"time"}), ZONES),
    Rule(_other_side, frozenset({"tube"}), NIL),
    Rule(_of_patient, frozenset({"level"}), PATIENT),
)
"""Typed, where a stop is a stop."""
