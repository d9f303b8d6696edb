"""What is said behind a finding, and whether it makes it doubtful: "swinging grand", "swinging maybe".

What was found at a drain is told whole by its own words. Behind them people say how it went, whom they
told and what was done: none of that changes it, unless it hedges, tells that it ended, or names what else
it was found at. Called by `subjects`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .items import AMOUNTS, FINDINGS, Item
from .numbers import Toks, word
from .roles import is_event

_DOUBTING = """
maybe perhaps possibly probably think thinks thought guess suppose supposed supposedly apparently
allegedly reportedly seems seem seemed suspect suspected query questionable doubtful unsure uncertain
sure hard difficult unclear assume assuming presumably might could would should can cant can't cannot
doubt if unless until till whether either except instead than never says said say reports reported
according heard reckon reckons mentioned claims claimed complains handover handed
"""
_ENDED = """
less fewer reduced subsided disappeared vanished ceased petered dwindled resolved eased died faded
finished ended lessened decreasing decreased hardly barely scarcely rarely seldom sometimes once nearly
almost stopped stopping previously formerly
"""
DOUBTING = frozenset(_DOUBTING.split())
ENDED = frozenset(_ENDED.split())
PLACING = frozenset(
    {"from", "in", "at", "on", "around", "round", "out", "of", "into", "through", "via", "off", "over", "to"}
    | {"near", "inside", "like", "under", "behind", "down"}
)
"""Behind these stands where it was found."""
OWNED = frozenset({"the", "a", "an", "his", "her", "their", "its", "your"})
_WELL = """
grand fab brill perfect brilliant lovely away rightly champion fantastic since after during before every each
all lekker mooi la lah lor leh po na ha eh sent told
"""
WELL = frozenset(_WELL.split())

"""Right behind a swing or a leak these are no thing that swings or leaks."""
DONE = frozenset({"sent", "every", "each", "all", "away"})
LIMBS = frozenset(
    {"leg", "legs", "arm", "arms", "foot", "feet", "hand", "hands", "head", "hip", "hips", "punches", "fists"}
    | {"door", "doors", "gate"}
)
OVER = frozenset({"fixed", "sorted", "sealed", "resolved", "repaired", "settled"})
OVER_HELPERS = frozenset({"is", "was", "now", "has", "been", "got", "all"})
ABSENT = frozenset({"none", "no"})
ALSO = frozenset({"and", "&", "for", "plus", "also", "too"})
TRIALS = frozenset({"trial", "test", "check", "assessment", "challenge", "study"})
"""Behind the word for a leak these say that one was looked for."""
HEDGES = frozenset({"maybe", "perhaps", "possibly", "probably"})


def without_harmless(clause: tuple[Item, ...], toks: Toks) -> list[Item]:
    """The clause without the words behind a finding that were not understood and change nothing of it."""
    found = [i for i in clause if i.role == "cue" and i.value in FINDINGS]
    if not found or any(map(is_event, clause)):
        return list(clause)
    said = toks.said[found[0].end : clause[-1].end]
    if any(_is_unsure(i) for i in clause if i.start >= found[0].end):
        return list(clause)
    if not DOUBTING.isdisjoint(said) or not ENDED.isdisjoint(said):
        return list(clause)
    return [i for i in clause if i.start < found[0].end or not i.unread or _may_be_its(i, found, toks)]


def _is_unsure(item: Item) -> bool:
    """ "serous after walk 340": a number that may be a line."""
    return item.role in AMOUNTS or (item.role == "time" and not (item.sure_time or item.at))


def _may_be_its(item: Item, found: list[Item], toks: Toks) -> bool:
    """Whether it may be where or what it was found at."""
    return _is_placed(item, toks) or _is_named(item, found, toks)


def _first(k: int, toks: Toks) -> int:
    """Where the words before a place end, those left out that only say whose it is."""
    while word(toks, k - 1) in OWNED:
        k -= 1
    return k


def _is_placed(item: Item, toks: Toks) -> bool:
    """ "bubbling from his nose": where else it was found."""
    return word(toks, _first(item.start, toks) - 1) in PLACING


def _is_named(item: Item, found: list[Item], toks: Toks) -> bool:
    """ "bloody nose", "bubbling soup": what stands right behind a finding may be what it is of."""
    start = _first(item.start, toks)
    before = next((f for f in found if f.end == start), None)
    if before is None:
        return False
    well = WELL - DONE if before.value == "fluid" else WELL  # "blood sent" may be a sample
    return not (item.name in well or item.name.endswith("ly"))


def doubted(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "swinging maybe", "swinging his legs": no sure finding, or none of a drain."""
    for item in items:
        if item.role != "cue" or item.value not in FINDINGS:
            continue
        after = item.end
        while word(toks, after) in OWNED:
            after += 1
        if item.name not in ABSENT and _is_over(item.end, toks):
            yield "what was found may be over"
        if word(toks, item.end) in TRIALS and item.value == "leak" and not _is_denied(items):
            yield "what was looked for, and not what was found"
        if item.value == "tidal" and word(toks, after) in LIMBS:
            yield "what the patient swings"
        if not HEDGES.isdisjoint({word(toks, item.end), word(toks, item.start - 1)}):
            yield "a finding that is only supposed"


def _is_denied(items: tuple[Item, ...]) -> bool:
    """ "leak check done, no bubbling": what was found is told."""
    return any(i.value == "leak" and i.name in ABSENT for i in items)


def _is_over(k: int, toks: Toks) -> bool:
    """ "leak fixed", "leak sorted by tightening it": it may be gone."""
    while word(toks, k) in OVER_HELPERS:
        k += 1
    return word(toks, k) in OVER


def of_next(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 4 swinging and 5", "same for 5": bed 5 as well, or its line?"""
    for before, item in pairwise(i for i in items if i.role != "sep"):
        found = before.role == "cue" and before.value in FINDINGS | {"same", "unchanged"}
        bed = item.label is not None and item.known
        bare = item.role == "level" and bed and not (item.lead or item.unit)
        if found and bare and word(toks, item.start - 1) in ALSO:
            yield "the same of that bed, or a line"
