"""Whether a word of a body, an injury or a team says why a drain is in: "bed 12 is a post op heart".

"Irritating his heart", "was air hungry", "thoracic surgery rounding", "a stab in the dark": such a word is in
many remarks, and what a drain is in for sets its thresholds. So it tells that only in a clause whose words
are all understood, where nothing happened that it may be the reason for; elsewhere it is a word of a remark.
Called by `recast`, last.
"""

from __future__ import annotations

from .neighbours import begins_at, ends_at, phrase_of
from .numbers import Toks, glued, is_digits, starts_number, word
from .patterns.clockwords import WEEKDAYS
from .pipeline import Cue

_WEAK = """
heart valve cardiac bypass cabbage lung wedge air hemo pneumo trauma traumatic injury stab stabbed stabbing
mva mvc rta rtc
"""
WEAK = frozenset(_WEAK.split()) | {
    "cardiac surgery",
    "thoracic surgery",
    "heart surgery",
    "lung surgery",
    "pleural fluid",
    "car accident",
}
STOPS = frozenset({".", ",", ";", "!", "?", ":", "-", "(", ")", "\n", "=", "/", "but"})
_SILENT = """
a an is was s 's it's its he's she's he she that's this who we us our to the for from of at on in into and
with had has have got having as due secondary because post op postop day pod s/p sp p fresh new pt patient
chest case admitted admit came come comes here transferred transfer side sided left right tube drain one
ward unit kg ' old yo male female m f lady man gentleman kid kiddo child baby boy girl woman y/o year years
y / # yesterday today tonight morning he'd reason type after following diagnosis dx hx s p single double
triple x please pls thanks btw fyi um uh er ok okay well
"""
SILENT = frozenset(_SILENT.split()) | WEEKDAYS.keys()
"""Words that stand around a reason and say nothing else."""
UNDERSTOOD = frozenset(
    {
        "bed",
        "filler",
        "side",
        "place",
        "tubeword",
        "kind",
        "what",
        "level",
        "levelat",
        "ml",
        "reason",
        "weight",
    }
    | {"arrival", "timeword", "opens", "join", "canister", "suction", "waterseal", "seal", "cm", "leak"}
    | {"tidal", "fluid", "no", "drained", "amount", "output", "since", "wall", "new", "closing", "about"}
)
"""Labels of cues that tell something of a drain, so that nothing else is told there."""
RUNNING = frozenset({"placed", "exchanged"})
FRESH = frozenset({"new", "fresh"})
"""Before what somebody had done these say who came."""
OWNED = frozenset({"the", "his", "her", "my", "their"})
OPERATED = frozenset({"repair", "replacement", "transplant"})
UNSAFE = frozenset({"and", "with", "the", "his", "her", "for", "to"})


def with_reasons(cues: tuple[Cue, ...], toks: Toks, *, voice: bool) -> tuple[Cue, ...]:
    """The cues, with each weak word of a reason that does not say why a drain is in as a word; dictated, air
    may be half of a leak."""
    weak = [cue for cue in cues if cue.label == "reason" and phrase_of(cue, toks) in WEAK]
    weak = [cue for cue in weak if not (voice and phrase_of(cue, toks) == "air")]
    stray = {cue.start for cue in weak if not _is_told(cue, cues, toks)}
    if not stray:
        return cues
    return tuple(
        Cue("word", phrase_of(c, toks), c.start, c.end) if c.label == "reason" and c.start in stray else c
        for c in cues
    )


def _is_told(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> bool:
    if word(toks, cue.start - 1) in FRESH or word(toks, cue.end) in OPERATED:
        return True
    if word(toks, cue.start - 1) in OWNED and word(toks, cue.start - 2) not in {
        "is",
        "s",
        "was",
        "he's",
        "she's",
    }:
        return False  # "close to the heart"
    start, end = _clause(cue, toks)
    inside = [c for c in cues if start <= c.start < end]
    known = {k for c in inside if c.label in UNDERSTOOD for k in range(c.start, c.end)}
    placed = any(c.value == "placed" for c in cues)
    near = any(
        c.value == "placed" for c in inside
    )  # "chest tube inserted left at 0140 trauma opening level 150"
    around = range(max(start, cue.start - 1), min(end, cue.end + 1)) if near else range(start, end)
    if not all(k in known or _says_nothing(toks, k) for k in around):
        return False
    happened = any(c.label in {"kind", "what"} and c.value not in RUNNING for c in inside)
    before = cue.start - 1 - (word(toks, cue.start - 1) in {"a", "an"})
    if happened and not placed and word(toks, before) in UNSAFE:
        return False  # "7 left at 1003 with the drain and a valve", "off suction for a valve"
    drained = placed or any(c.label == "tubeword" for c in inside)
    return drained or phrase_of(cue, toks) != "air"


def _clause(cue: Cue, toks: Toks) -> tuple[int, int]:
    return begins_at(STOPS, toks, cue.start), ends_at(STOPS, toks, cue.end)


def _says_nothing(toks: Toks, k: int) -> bool:
    prefix = word(toks, k).isalpha() and is_digits(toks, k + 1) and glued(toks, k + 1)  # "CT5"
    letter = len(word(toks, k)) == 1 and is_digits(toks, k - 1) and glued(toks, k)  # "12B"
    return prefix or letter or word(toks, k) in SILENT or is_digits(toks, k) or starts_number(toks, k)
