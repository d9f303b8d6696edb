"""What a number is of, where a word that was not understood says it: "vanc level 14", "14 of them".

A word of the trade right before a number calls it a level or an amount; the word before that may say that it
is of something else: a drug, a dog, a floor. Called by `leftovers` for typed messages; in dictation any such
word is a reason to ask.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .clauses import is_strange
from .items import AMOUNTS, EVENTS, FINDINGS, Item
from .numbers import Toks, glued, word
from .patterns.asides import CALLED, DONE_TO
from .patterns.ownclauses import ROOM
from .rules import Pieces, Rule

NAMING = frozenset({"level", "levelat", "amount", "output", "out", "canister", "tubeword"})
"""Cues that say what a number is, behind a word that may say of what."""
ENDING = frozenset({"old", "new", "opens"})
FINALS = frozenset({"final", "last", "closing"})
DONE = ("ed", "ing", "ly", "est")
"""So a word ends that says what was done, or how: "rechecked level 340", "actually level 340"."""
_HOW = """
saw took got had gave drew drawn read reread wrote put made did do see seen take get give write chart post
record log enter add note mark send sent texted next current actual true real right correct proper final
official usual present same evening midnight noon shift hour hours hourly daily nightly early late old
second third fourth catheter drain former prior initial baseline starting end ending start todays
today's tonights tonight's yesterdays yesterday's mornings morning's nights night's days day's overnight fresh
"""
HOW = frozenset(_HOW.split())
"""Words before "level" and "line" that say which, when or by whom it was told, and not of what."""
OF_BLOOD = frozenset({"k", "na", "ca", "cl", "mg", "mag", "phos", "gent", "feed", "be", "hb", "lithium"})
HEADS = frozenset({"level", "levels", "reading", "readings", "output"})
THEM = frozenset({"them", "those", "these", "which", "whom", "em"})
HAVING = frozenset({"has", "have", "had", "got", "wants", "likes", "needs", "takes", "hes", "he's", "she's"})
BESIDE = frozenset(
    ["by", "beside", "near", "to", "under", "behind", "at", "on", "below", "from", "for", "in", "with"]
)
"""Before a thing these say where or what for something is."""
THINGS = (ROOM - {"theatre", "pharmacy", "kitchen", "switchboard", "laundry"}) | frozenset(
    {"blanket", "blankets", "pillow", "pillows", "sheet", "sheets", "gown", "towel", "floor", "bedrail"}
    | {"siderail", "couch", "sofa", "recliner", "gurney", "stretcher", "crutches", "cart", "desk", "frame"}
)
"""What stands or lies there and is no drain."""
IS = frozenset({"is", "was", "are", "got", "has", "been", "just", "a", "the", "his", "her", "my", "looks"})
HIT = frozenset({"canister", "tubeword"})
JOINING = frozenset({"on", "till", "but", "the", "found", "finds", "of", "for", "in", "so", "then", "re"})
"""Right before a bed these are no thing that has a number."""
LEADING = frozenset({"on", "in", "for", "at", "of", "the", "my", "mark", "line", "level"})
ZONES = frozenset({"utc", "gmt", "zulu"})
OTHER = {"left": "right", "right": "left"}
NIL = frozenset({"nothing", "none", "nil", "dry", "zero", "zilch"})
ENDS = frozenset({"", ",", ".", ";", "!", "yet", "still", "today", "tonight", "so"})
PATIENT = frozenset({"pt", "patient", "pts"})
GAINED = frozenset(
    {
        "by",
        "gain",
        "gained",
        "loss",
        "lost",
        "positive",
        "negative",
        "off",
        "up",
        "down",
        "plus",
        "minus",
        "over",
    }
)
GAIN_REACH = 3
HOLDERS = frozenset({"canister", "canisters", "box", "boxes", "bottle", "bottles", "unit", "chamber"})
SIZES = frozenset({"size", "sized", "capacity", "model", "type"})
SEEN = frozenset({"bubbles", "clots", "leaks", "kinks", "loops", "connections", "swings"})
FEW = 30
"""Of these more are not counted."""
SHORT = 2
"""Digits of the number of a theatre or a floor."""
PLACED = frozenset({"away", "back", "left", "moved"})


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


def _gained(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "weight gain of 2 kg", "off by 4 kg", "positive 3 kg": how much more, and not what somebody weighs."""
    for item in items:
        before = toks.said[max(0, item.start - GAIN_REACH) : item.start]
        if item.role == "weight" and not GAINED.isdisjoint(before):
            yield "how much more or less somebody weighs"


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


OF_WHAT_ALOUD = (
    Rule(_level_of_blood, AMOUNTS, OF_BLOOD),
    Rule(_glued_letter, frozenset({"tube"})),
    Rule(_level_of_what, NAMING, HEADS),
    Rule(_of_them, AMOUNTS, THEM),
    Rule(_numbered_place, frozenset({"kind"})),
    Rule(_gained, frozenset({"weight"}), GAINED),
    Rule(_sized, AMOUNTS, HOLDERS | SIZES | SEEN),
    Rule(_of_a_thing, frozenset({"word"}), THINGS),
)
OF_WHAT = (
    Rule(_level_of_blood, AMOUNTS, OF_BLOOD),
    Rule(_numbered_thing, frozenset({"word"})),
    Rule(_glued_letter, frozenset({"tube"})),
    Rule(_of_what, NAMING),
    Rule(_came_out, AMOUNTS),
    Rule(_ended_with, ENDING | {"closing", "kind", "level"}),
    Rule(_of_them, AMOUNTS, THEM),
    Rule(_had, frozenset({"level"}), HAVING),
    Rule(_numbered_place, frozenset({"kind"})),
    Rule(_sized, AMOUNTS, HOLDERS | SIZES | SEEN),
    Rule(_of_another_zone, frozenset({"time"}), ZONES),
    Rule(_other_side, frozenset({"tube"}), NIL),
    Rule(_of_patient, frozenset({"level"}), PATIENT),
    Rule(_gained, frozenset({"weight"}), GAINED),
    Rule(_of_a_thing, frozenset({"word"}), THINGS),
)
