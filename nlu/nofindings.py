"""Signs that a finding, a reason or a weight was looked for, is of before, or is of something else.

"check for leak", "leak continuous earlier, now none", "no big leak", "mother had cabg", "birth weight 3 kg".
Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise, zip_longest

from .numbers import Toks, word
from .patterns.asides import RELATIVES
from .patterns.leads import TUBE_NAMES
from .rules import Pieces, Rule

FOUND = frozenset({"leak", "tidal", "fluid", "indicator"})
LOOKING = frozenset({"check", "checks", "checking", "checked", "looking", "looked", "watch", "monitor"})
LOOKING |= {"assess", "assessing", "assessed", "test", "testing", "tested", "monitoring", "watching", "r/o"}
FORMERLY = frozenset({"earlier", "previously", "before", "initially"})
KINDS = frozenset({"big", "large", "continuous", "constant", "intermittent", "significant", "major"})
KINDS |= {"huge", "bad", "worsening", "increased"}
OTHERS = frozenset(
    {"site", "wound", "incision", "dressing", "gauze", "skin", "stoma", "sputum", "eye", "eyes"}
)
BEFORE_CARE = frozenset({"for", "awaiting", "awaits", "pending", "needs", "refused", "refuses", "declined"})
CALLED_OFF = frozenset(
    {"cancelled", "canceled", "postponed", "consult", "resolved", "deferred", "refused", "clinic", "pending"}
    | {"team", "ward", "unit", "booked", "listed", "planned", "tmrw"}
)
JOINTS = frozenset({"knee", "joint", "elbow", "hip", "ear"})
NEXT_TO = frozenset({"to", "like", "not", "another", "other"})
SURGERY = frozenset({"cardiac", "lung"})
YEARS = range(1980, 2031)
OTHER_WEIGHTS = frozenset({"birth", "ideal", "goal", "target", "lifting", "lift", "lifts", "gained", "lost"})
OTHER_WEIGHTS |= {"gain", "loss", "up", "down"}
AGAIN = frozenset({"or", "now", "to", "then", "maybe", "was"})


def _looked_for(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "check for leak", "leak checked none", "r/o chyle": whether it is there."""
    for item in items:
        if item.role != "cue" or item.value not in FOUND:
            continue
        k = item.start - 1 - (word(toks, item.start - 1) in {"for", "air", "the", "out"})
        looked = word(toks, k) in LOOKING or (word(toks, k) == "for" and word(toks, k - 1) in LOOKING)
        looked = looked or toks.said[max(0, item.start - 3) : item.start] == ("r", "/", "o")
        present = item.value != "leak" or item.name != "none"
        seems = item.value == "fluid" and k == item.start - 1 and word(toks, k) in {"looking", "looked"}
        looked = looked and not seems
        if present and (looked or word(toks, item.end) in {"checked", "check", "tested"}):
            yield "what was only looked for"


def _formerly(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "leak earlier", "tidaling earlier, not now": of before."""
    for item in items:
        found = item.role == "cue" and item.value in FOUND and word(toks, item.end) in FORMERLY
        if found and word(toks, item.end + 1) not in {"and", "still"}:
            yield "a finding of before"


def _of_a_kind(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "no big leak", "not continuous leak": of that kind there is none; of another there may be."""
    for item in items:
        if item.value == "leak" and item.name == "none" and not KINDS.isdisjoint(toks.said[: item.end]):
            k = next((j for j in range(item.end - 1, -1, -1) if word(toks, j) in KINDS), -1)
            if word(toks, k - 1) in {"no", "not", "without"} and item.end - k <= len(LENGTHS):
                yield "what kind of leak there is none of"


LENGTHS = ("big", "air", "leak")


def _is_not(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "left swinging, right not": what the right is not stands with the left."""
    del toks
    for tube, no, nxt in zip_longest(items, items[1:], items[2:]):
        alone = no is not None and no.value == "neg" and (nxt is None or nxt.role == "sep")
        if tube.role == "tube" and alone:
            yield "what the one tube is not"


def _leaks(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "right leaking", "no leak but now leaking": of air, perhaps; "leaking around the site" is none."""
    for item in items if not any(i.name == "damaged" for i in items) else ():
        of_drain = item.unread and item.name in LEAKING and word(toks, item.start - 1) in OF_DRAIN
        if of_drain and OF_SKIN.isdisjoint(toks.said[item.end : item.end + len(LENGTHS)]):
            yield "what leaks may be air"


LEAKING = frozenset({"leaking", "leaks", "leaked"})
OF_DRAIN = TUBE_NAMES | {
    "now",
    "still",
    "drain",
    "tube",
    "it",
    "is",
    "was",
    "but",
    "started",
    "also",
    "keeps",
}
OF_SKIN = frozenset({"around", "round", "site", "dressing", "from", "at", "through", "onto", "skin", "out"})


def _of_suction(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "suction bubbling", "bubbling in suction chamber": as it should, and no leak."""
    for before, item in pairwise(items):
        bubbles = (
            item.value == "leak" and word(toks, item.end - 1).startswith("bubbl") and item.name != "none"
        )
        if bubbles and before.value == "suction" and before.end == item.start:
            yield "what bubbles there"
    for item in items:
        k = item.end + (word(toks, item.end) in {"in", "at"})
        k += word(toks, k) == "the"
        bubbles = (
            item.value == "leak" and word(toks, item.end - 1).startswith("bubbl") and item.name != "none"
        )
        there = k > item.end or word(toks, k + 1) in {"chamber", "control", "side"}
        if bubbles and there and word(toks, k) == "suction" and not word(toks, k + 1).isdigit():
            yield "what bubbles there"


def _of_others(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "site purulent", "purulent site", "swing bed": of something else."""
    for item in items:
        if item.role != "cue" or item.value not in FOUND:
            continue
        near = {word(toks, item.start - 1), word(toks, item.end)}
        swing = item.value == "tidal" and word(toks, item.start) == "swing" and word(toks, item.end) == "bed"
        if swing or (item.value == "fluid" and not OTHERS.isdisjoint(near)):
            yield "a finding of something else"


def _mended_leak(items: Pieces, _: Toks) -> Iterator[str]:
    """ "no leak i mean leak", "no leak yes leak": there is one, or none."""
    for none, mending, leak in zip(items, items[1:], items[2:], strict=False):
        both = none.value == leak.value == "leak" and none.name == "none" != leak.name
        if both and (mending.role == "repair" or mending.value in {"repair", "yes"}):
            yield "a leak, or none"


def _either_fluid(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "bloody or serous", "dark red to serous": which of them it is now."""
    said = [i for i in items if i.role == "cue" and i.value == "fluid"]
    for before, after in pairwise(said):
        between = toks.said[before.end : after.start]
        if "or" in between or (
            between == ("to",) and before.name in {"dark_red", "bright_red", "sanguineous"}
        ):
            yield "which fluid it is"


def _graded(items: Pieces, _: Toks) -> Iterator[str]:
    """ "bed 9 2 leak", "bed 9 340 2 leak": the grade of it, and neither a line nor a bed."""
    for before, item, leak in zip(items, items[1:], items[2:], strict=False):
        beside = before.end == item.start and item.end == leak.start and leak.value == "leak"
        bare = item.role in {"level", "bed"} and not (item.lead or item.unit) and leak.name != "none"
        behind = before.role in {"bed", "level"}  # the word for a bed would stand between
        if beside and bare and behind and len(item.digits) == 1 and (item.figure or 0) <= MOST_GRADE:
            yield "a grade of the leak, or a line"


MOST_GRADE = 7
"""How far the scales of air leaks go. Common practice, no source."""
WEIGHED = frozenset({"kg", "kgs", "kilo", "kilos", "old", "yo"})
"""Behind these whoever is named lies in the bed: "12 kg kid, effusion"."""


def _of_kin(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "mother had cabg", "for cabg", "lobectomy cancelled", "knee effusion": no reason for a drain here."""
    placed = any(i.value == "kind" for i in items)
    for item in items:
        if item.role != "cue" or item.value != "reason":
            continue
        before, behind = toks.said[max(0, item.start - 3) : item.start], word(toks, item.end)
        near = word(toks, item.start - 1)
        planned = item.name in SURGERY and near in BEFORE_CARE and not placed
        kin = any(w in RELATIVES and w0 not in WEIGHED for w0, w in pairwise(("", *before)))
        kin |= "next" in before and "to" in before
        absent = near in {"neg", "negative"}  # "xray neg PTX"
        if planned or kin or absent or behind in CALLED_OFF or near in JOINTS:
            yield "a reason of another, or of another time"


def _year(items: Pieces, _: Toks) -> Iterator[str]:
    """ "cabg 2019": the year, and no line."""
    for before, item in pairwise(items):
        bare = item.role == "level" and not (item.lead or item.unit) and item.amount in YEARS
        if bare and before.value == "reason" and before.end == item.start:
            yield "a year, or a line"


def _weighed_again(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "wt 80 or 82", "wt was 80 now 82": the weight, and no line."""
    said = [i for i in items if i.role not in {"sep", "time", "cue"}]
    for before, item in pairwise(said):
        between = toks.said[before.end : item.start]
        bare = item.role == "level" and not item.unit and before.role == "weight"
        if bare and between and (AGAIN | {"is", "now", "at", "it's"}).issuperset(between):
            yield "the weight again, or a line"


def _other_weight(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "birth weight 3 kg", "lifting 2 kg", "weigh at 7": not what the patient weighs now."""
    for item in items:
        if item.role != "weight":
            continue
        at = word(toks, item.start - 1) == "at" and word(toks, item.end) not in {"kg", "kgs", "kilos", "kilo"}
        if at or not OTHER_WEIGHTS.isdisjoint(toks.said[max(0, item.start - 3) : item.start]):
            yield "another weight"


def _up_to(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "leak up to 3", "leak up from 1": how large it is, and no line of 3."""
    for before, item in pairwise(
        [i for i in items if not (i.unread or i.role == "time") and i.value != "levelat"]
    ):
        leak = before.value == "leak" and item.role in {"level", "bed", "time"} and not item.unit
        graded = item.role == "level" and not item.lead and word(toks, item.start - 1) not in {",", ";", "."}
        if leak and graded and before.name != "none" and (item.amount or 0) <= LARGEST:
            yield "how large the leak is, or a line"
        led = item.lead in {"levelat", "from", "to"} and word(toks, item.start - 1) in {"to", "from"}
        if leak and led and (item.amount or 0) <= LARGEST:
            yield "how large the leak is, or a line"


LARGEST = 10


def _spilled(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "spilled 100 of it": how much is lost, and no line."""
    for item in items:
        k = item.start - 1
        while word(toks, k) in {"about", "around", "roughly", "approx", "maybe", "~", "at", "least"}:
            k -= 1
        if item.role in {"level", "volume"} and word(toks, k) in SPILLED:
            yield "how much was spilled"


SPILLED = frozenset({"spilled", "spilt", "spill", "spilling"})


def _fluids(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "fluids 100", "fluids at 75": what runs in."""
    for item in items:
        at = item.start - 1 - (word(toks, item.start - 1) in {"at", "@"})
        if item.role == "level" and word(toks, at) == "fluids" and item.lead in {"", "at"}:
            yield "fluids that run in"


def _swing_by(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "swing by bed 16 when free": a visit, and no column that swings."""
    for item in items:
        if item.value == "tidal" and word(toks, item.start) == "swing" and word(toks, item.end) in VISITING:
            yield "a visit, and no finding"


VISITING = frozenset({"by", "past", "round", "around", "over", "through"})
NO_FINDINGS = (
    Rule(_swing_by, frozenset({"tidal"}), VISITING),
    Rule(_looked_for, FOUND, LOOKING | {"o"}),
    Rule(_formerly, FOUND, FORMERLY),
    Rule(_is_not, frozenset({"neg"})),
    Rule(_leaks, frozenset({"word"}), LEAKING),
    Rule(_of_a_kind, frozenset({"leak"}), KINDS),
    Rule(_of_suction, frozenset({"leak"}), frozenset({"suction"})),
    Rule(_of_others, FOUND, OTHERS | {"bed"}),
    Rule(_mended_leak, frozenset({"leak"})),
    Rule(_graded, frozenset({"leak"})),
    Rule(_either_fluid, frozenset({"fluid"}), frozenset({"or", "to"})),
    Rule(_of_kin, frozenset({"reason"})),
    Rule(_year, frozenset({"reason"})),
    Rule(_weighed_again, frozenset({"weight"})),
    Rule(_other_weight, frozenset({"weight"})),
    Rule(_up_to, frozenset({"leak"})),
    Rule(_fluids, frozenset({"level"}), frozenset({"fluids"})),
    Rule(_spilled, frozenset({"level", "volume"}), SPILLED),
)
