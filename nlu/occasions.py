"""Cues that only say when something happened, or that it is put right: "during transfer", "now back down".

Called by `recast`.
"""

from __future__ import annotations

from .clock import clocks
from .items import FINDINGS
from .neighbours import number_follows
from .numbers import Toks, is_digits, word
from .patterns.asides import THINGS
from .patterns.leads import BED_WORDS
from .pipeline import Cue, with_found

OCCASIONS = frozenset({"during", "since", "after", "while", "whilst", "following", "with", "on"})
OWN = frozenset({"the", "a", "his", "her", "their", "this", "that"})
GOINGS = frozenset({"move", "transfer", "moving", "transferring", "transferred", "moved"})
HAPPENED = FINDINGS | {"what"}
ENDS = frozenset({"", ",", ".", ";", "!", "now", "again", "and", "the", "below", "where", "properly"})
WAY = "way"
"""Before "back" this says when a mishap was: "knocked over on the way back from ct"."""
BREAKS = ENDS - {"the", "below", "where", "properly", "again"}
"""Between what happened and "coming back" these begin something else."""
HOW = frozenset({"when", "as", "after", "because", "cos", "while", "since"})
ONTO = frozenset({"on", "onto", "against", "into", "over"})
IT = THINGS - {"seal", "pleural", "its", "chest"}
ON_THE_WAY = frozenset({"going", "coming", "heading", "returning", "leaving"})
PLACED = frozenset({"to", "into", "in", "from", "back", "over"})


FIXES = {
    "disconnected": ("reconnected", "reattached", "rejoined", "back together", "put back on", "back on"),
    "tipped": ("righted", "upright", "uprighted", "stood up", "upright again", "picked up", "stood back up"),
    "kinked": ("straightened", "unkinked", "freed", "released"),
    "raised": ("lowered",),
}
"""What happened, and how it is put right."""
SOON = frozenset(
    {"straight", "straightaway", "away", "right", "immediately", "instantly", "quickly", "promptly"}
)
SOON |= {"asap", "again", "now", "back", "up", "securely", "properly", "by", "me", "myself", "us", "on"}
FEW = frozenset({"a", "few", "couple", "of", "about", "half", "one", "two", "five", "ten", "the"})
LENGTHS = frozenset({"sec", "secs", "second", "seconds", "s", "min", "mins", "minute", "minutes", "moment"})
"""How soon it was put right."""
OF_ANY = ("fixed", "sorted", "put right", "put back", "back together", "put back together")
FIXED = frozenset(w.split()[0] for told in (OF_ANY, *FIXES.values()) for w in told)


def with_occasions(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, each move that is only when something else was so as a word that says nothing more of it."""
    cues = cues if FIXED.isdisjoint(toks.words) else with_found(cues, _fixed_then(cues, toks))
    happened = [c.end for c in cues if c.label in HAPPENED]
    mishaps = [c.end for c in cues if c.label == "what"]
    if not happened or not (len(mishaps) > 1 or any(c.label == "kind" for c in cues)):
        return cues
    if len(mishaps) > 1:
        cues = tuple(_fallen_on_it(c, mishaps, toks) for c in cues)
    return tuple(
        _on_the_way(
            _put_right(_meant(c, toks), min(happened), toks),
            mishaps if word(toks, c.start - 1) == WAY else happened,
            toks,
        )
        for c in cues
    )


def _fixed_then(cues: tuple[Cue, ...], toks: Toks) -> list[Cue]:
    """ "disconnected 0630, reconnected 0631": when it was put right, behind when it happened."""
    found = []
    gone = any(cue.value == "away" for cue in cues)
    for cue in cues:
        for k in range(cue.end, len(toks)) if cue.label == "what" and cue.value in FIXES else ():
            behind = _fixed(toks, k, (*FIXES[cue.value], *OF_ANY))
            lone = word(toks, k) == "back" and word(toks, k - 1) in {",", "and", "&", ";"} and not gone
            behind += behind == k and lone  # "disconnected at 1820, back at 1826": the tube, and nobody
            at = behind + (word(toks, behind) in {"at", "@", "by"})
            ends = [end for end, clock in clocks(toks, at) if clock.sure or clock.style == "24"]
            timed = any(clocks(toks, j) for j in range(cue.end, k))
            soon = _soon(toks, behind) if behind > k and _may_be_fixed(toks, k, cue) else 0
            if behind > k and timed and ends:
                found.append(Cue("filler", "", k, max(ends)))
            elif soon and (word(toks, soon) in {"", ".", ",", ";", "!", ")"}):
                found.append(Cue("filler", "", k - (word(toks, k - 1) == "but"), soon))
    return found


def _may_be_fixed(toks: Toks, k: int, what: Cue) -> bool:
    """ "came off at 2120 | reconnected", "tipped but | righted": not "to be righted"."""
    while word(toks, k - 1) in SOON | {"was", "were", "got", "now", "it", "i've", "all", "been", "then"}:
        k -= 1
    return (
        k == what.end
        or is_digits(toks, k - 1)
        or word(toks, k - 1) in {",", ";", ".", "and", "&", "but", "-"}
    )


def _soon(toks: Toks, k: int) -> int:
    """Where "straight away", "within a minute" ends that begins there; the same place where none does."""
    while word(toks, k) in SOON:
        k += 1
    if word(toks, k) in {"within", "in"}:
        end = k + 1
        while word(toks, end) in FEW or is_digits(toks, end):
            end += 1
        k = end + 1 if word(toks, end) in LENGTHS else k
    return k


def _fixed(toks: Toks, k: int, told: tuple[str, ...]) -> int:
    """Where the words end that tell it was put right; the same place where none do."""
    ends = (
        k + len(said) for said in map(tuple, map(str.split, told)) if toks.said[k : k + len(said)] == said
    )
    return max(ends, default=k)


def _on_the_way(cue: Cue, happened: list[int], toks: Toks) -> Cue:
    """ "knocked over coming back from theatre": when it happened, and nobody is told to be back."""
    if cue.value not in {"away", "back"}:
        return cue
    start = cue.start - (word(toks, cue.start) not in ON_THE_WAY)  # "coming back", "on the way back"
    before = max((end for end in happened if end <= start), default=len(toks))
    on_the_way = word(toks, start) in ON_THE_WAY | {WAY} and BREAKS.isdisjoint(toks.said[before:start])
    whole = on_the_way and before <= start
    return cue._replace(label="word", value="transfer", start=start) if whole else cue


def _fallen_on_it(cue: Cue, mishaps: list[int], toks: Toks) -> Cue:
    """ "went over when the pole fell on it": how the first came, and nothing more that happened."""
    before = max((end for end in mishaps if end <= cue.start), default=len(toks))
    how = before <= cue.start and not HOW.isdisjoint(toks.said[before : cue.start])
    it = cue.end + 1 + (word(toks, cue.end + 1) == "the")
    onto = word(toks, cue.end) in ONTO and word(toks, it) in IT
    fell = cue.label == "what" and how and onto and word(toks, cue.start - 1) not in THINGS
    return cue._replace(label="word", value="fell") if fell else cue


def _put_right(cue: Cue, happened: int, toks: Toks) -> Cue:
    """ "lifted above the chest, now back down": the box, and no patient who came back."""
    if cue.value != "back" or cue.start < happened or word(toks, cue.end - 1) != "back":
        return cue
    end = cue.end + (word(toks, cue.end) in {"down", "up", "upright", "below"})
    ends = word(toks, end) in ENDS and end > cue.end
    end += word(toks, end) in {"again", "now"}
    return cue._replace(label="word", value="righted", end=end) if ends else cue


def _meant(cue: Cue, toks: Toks) -> Cue:
    """ "during transfer to bed 9" tells of the bed as well."""
    if cue.value != "moved" or cue.end - cue.start > 1 or word(toks, cue.start) not in GOINGS:
        return cue
    before = cue.start - 1
    while word(toks, before) in OWN:
        before -= 1
    behind = word(toks, cue.end)
    going = behind in PLACED | BED_WORDS or number_follows(toks, cue.end)
    return (
        cue if going or word(toks, before) not in OCCASIONS else cue._replace(label="word", value="transfer")
    )
