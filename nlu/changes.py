"""What was changed, where the word alone does not say it: "changed 7, old one 1495", "box full, changed".

Beside the level of an old one, or behind a canister that was full, it is the canister. Called by `recast`.
"""

from __future__ import annotations

from collections.abc import Iterator, Set

from .clauses import clauses
from .items import Item
from .neighbours import number_follows
from .numbers import Toks, is_digits, word
from .patterns.leads import BED_WORDS
from .patterns.places import PLACES
from .pipeline import Cue, in_order

CANISTERS = frozenset(PLACES["canister"])
STOPS = frozenset({",", ";", ".", "!", "and", "but", "then"})
ENDED = frozenset({"old", "prev", "previous", "final"})
OF_CANISTER = frozenset(
    {"and", "so", "in", "of", "for", "on", "at", "bed", "room", "full", ",", "was", "got", "is"}
)
OF_FULL = OF_CANISTER | {"it", "i", "we", "has", "been", "have", "just", "now", "then", "already", "."}
OF_FULL |= {
    "ml",
    "mls",
    "therefore",
    "hence",
    "almost",
    "nearly",
    "very",
    "completely",
    "had",
    "became",
    "to",
}
"""Between a canister that was full and what was done to it; no denial, and no plan."""
FULL = "full"
BEHIND_CHANGE = frozenset({"at", "@", "by", ",", "yesterday", "overnight", "today", "last", "this"})
FRESH = frozenset({"new", "fresh"})
FEW = 3
"""Words and signs of ", it was" behind a change."""
FAR = 8
"""Words and signs between the canister and what was done to it."""
CHANGED = frozenset({"changed", "switched", "replaced", "swap"})
_TUBES = """
the his her left right l r lt rt side sided chest tube drain ct tube's drain's # pleural mediastinal apical
basal anterior posterior upper lower pigtail
"""
TUBES = frozenset(_TUBES.split())
"""Words for a tube before the canister that it drains into."""
OF_CHANGE = frozenset(
    {"bed", "room", "rm", "on", "for", "at", "the", "left", "right", "l", "r", "h", "hrs", "pm", "am"}
    | {"yesterday", "overnight", "today", "this", "last", "night", "morning", "evening", "afternoon"}
)
"""Between "changed" and the old one these name the bed and the time."""


def with_changes(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """ "changed 7 at 0535, old one 1495": beside the level of an old one, what was changed is a canister."""
    if CHANGED.isdisjoint(toks.words):
        return cues
    olds = [c.start for c in cues if c.label == "old" and not ENDED.isdisjoint(toks.said[c.start : c.end])]
    if any(c.value == "exchanged" for c in cues):
        return cues
    happened = {j for c in cues if c.label == "what" for j in range(c.start, c.end)}
    for k, text in enumerate(toks.said):
        if text in CHANGED and (
            _is_box_of_bed(toks, k)
            or _box_of_tube(toks, k)
            or _is_behind_box(toks, k)
            or _is_full_one(toks, k)
            or (olds and _is_changed_one(toks, k, olds, happened))
        ):
            box = _box_of_tube(toks, k)
            at = {k, box} if box else {k}
            kept = [c for c in cues if at.isdisjoint(range(c.start, c.end))]
            kept += [Cue("canister", "", box, box + 1)] * (box > 0)
            kept += [Cue("filler", "", box + 1, box + 2)] * (box > 0 and word(toks, box + 1) == "at")
            return in_order([*kept, Cue("kind", "exchanged", k, k + 1)])
    return cues


def _is_changed_one(toks: Toks, k: int, olds: list[int], happened: Set[int]) -> bool:
    between = [t.text for t in toks[k + 1 : olds[0]] if not (t.glued and t.text in "abcd")]  # "6A"
    plain = set(filter(str.isalpha, between)) <= OF_CHANGE and not STOPS & set(between) - {","}
    return (plain and _is_bed(toks, k + 1)) or _is_of_canister(toks, k, happened)


def _is_box_of_bed(toks: Toks, k: int) -> bool:
    """ "changed 13 canister", "replaced 12A box"."""
    start = k + 1 + (word(toks, k + 1) in BED_WORDS)
    end = next((j for j in range(start, start + FEW) if word(toks, j) in CANISTERS), start)
    return end > start and is_digits(toks, start) and all(toks[j].glued for j in range(start + 1, end))


def _box_of_tube(toks: Toks, k: int) -> int:
    """Where the canister of a tube stands that was changed: "changed the left pleural canister"; else 0."""
    j = k + 1
    while word(toks, j) in TUBES or (len(word(toks, j)) == 1 and word(toks, j).isalnum() and j > k + 1):
        j += 1
    named = not TUBES.difference({"the", "his", "her"}).isdisjoint(toks.said[k + 1 : j])
    return j if named and word(toks, j) in CANISTERS else 0


def _is_behind_box(toks: Toks, k: int) -> bool:
    """ "box 12 changed, 1880"; not "box 12 changed sides"."""
    ends = word(toks, k + 1) in BEHIND_CHANGE | STOPS | {""} or is_digits(toks, k + 1)
    return ends and is_digits(toks, k - 1) and word(toks, k - 2) in CANISTERS


def _is_of_canister(toks: Toks, k: int, happened: Set[int]) -> bool:
    """ "canister full at 1990, changed at 0655", "box tipped and changed at 0610"; not "changed to 20"."""
    if word(toks, k + 1) not in BEHIND_CHANGE and not is_digits(toks, k + 1):
        return False
    for j in range(k - 1, max(-1, k - FAR), -1):
        if word(toks, j) in CANISTERS:
            return True
        if not (is_digits(toks, j) or word(toks, j) in OF_CANISTER or j in happened):
            return False
    return False


def _is_bed(toks: Toks, k: int) -> bool:
    """Whether a number stands there, perhaps behind a word for a bed."""
    return number_follows(toks, k + (word(toks, k) in {"bed", "room", "rm", "on", "for", "@"}))


def _is_full_one(toks: Toks, k: int) -> bool:
    """ "box of bed 22 it is full, i changed, was 1990"; not "box full of bubbles", "full, to be changed"."""
    if FULL not in toks.words or word(toks, k) == "swap":
        return False
    ends = word(toks, k + 1) in BEHIND_CHANGE | STOPS | {""} or is_digits(toks, k + 1)
    start = k - 1
    while start >= 0 and (word(toks, start) in OF_FULL or is_digits(toks, start)):
        start -= 1
    full = FULL in toks.said[start + 1 : k] and toks.said[k - 2 : k] != ("to", "be")
    return ends and full and word(toks, start) in CANISTERS


def changed_what(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 7 changed, it was 1875": a line, or what an old one held; "new can, 20" may have no bed."""
    for clause in clauses(items):
        boxed = any(i.value == "canister" for i in clause)
        if boxed and any(i.unread and i.name in CHANGED for i in clause):
            yield "a canister that may have been changed"
    for place, item in enumerate(items):
        changed = item.name == "exchanged" or (item.unread and item.name in CHANGED)
        if not changed and word(toks, item.start) not in FRESH:
            continue
        behind = [i for i in items[place + 1 :] if i.role != "sep"]
        if not behind:
            return
        near = behind[0].start - item.end
        wished = item.name == "exchanged" and word(toks, item.start) == "change"
        if wished and any(i.role == "level" and word(toks, i.start - 1) == "to" for i in behind):
            yield "a canister, or a line to be put right"  # "change the box 10 line to 340"
        was = item.unread and item.name in CHANGED and word(toks, behind[0].start - 1) in {"was", "had"}
        if was and behind[0].role == "level" and near <= FEW:
            yield "what was changed, and what was in it"
        fresh = place == 0 and item.name == "exchanged" and word(toks, item.start) in FRESH
        alone = fresh and len(behind) == 1 and behind[0].role == "bed" and word(toks, item.end) == ","
        if alone and word(toks, behind[0].start - 1) not in BED_WORDS:
            yield "the bed, or what the new one is at"
        beds = [i for i in behind if i.role == "bed"]
        if len(beds) > 1 and word(toks, item.start) in FRESH and word(toks, beds[-1].start - 1) == "is":
            yield "the next bed, or what the new one is at"  # "new bottle bed 7 is 10 now"
