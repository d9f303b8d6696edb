"""Who took a tube out: "tube out at 1300, he pulled it himself" is no removal, it was dislodged.

Nor is it out where it was only pulled somewhere: "he pulled the drain in bed 6 up onto the bed". Called by
`narrated`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .neighbours import HARD, begins_at
from .numbers import Toks, is_digits, word
from .oldones import Message
from .patterns.asides import RELATIVES, STAFF
from .patterns.leads import BED_WORDS
from .patterns.numerals import NUMERALS
from .pipeline import Cue

HIMSELF = frozenset({"himself", "herself", "themself", "themselves", "hisself", "themselfs"})
TAKING = frozenset(
    {"pulled", "took", "removed", "yanked", "ripped", "did", "got", "had", "taken", "tugged", "out"}
)
TAKEN = frozenset(
    {
        "it",
        "the",
        "his",
        "her",
        "own",
        "tube",
        "drain",
        "chest",
        "out",
        "off",
        "by",
        "one",
        "that",
        "icc",
        "ct",
    }
    | {"pigtail", "completely", "all", "right", "left", "and", "for", "was", "is", "been", "on", "purpose"}
)
"""Between what was done and "himself" these may stand."""
ACCIDENTS = frozenset({"accident", "accidentally", "accidently"})
PATIENT = HIMSELF | {"pt", "patient", "him", "her"}
STOPS = frozenset({".", ",", ";", "!", "?", "(", ")", "and", "but", "so", "because", "then", "when", "after"})
TEAM = STAFF - {"they", "he", "she", "ct"}
OUT = frozenset({"took", "pulled", "taken"})
OUTSIDERS = RELATIVES - {"present"} | {
    "cleaner",
    "porter",
    "porters",
    "visitors",
    "nephew",
    "niece",
    "grandmother",
    "parents",
}
WHOSE = frozenset({"the", "his", "her", "a"})
PULLED = frozenset({"pulled", "took", "taken", "removed", "yanked", "ripped", "tugged"})
FAR = 8
"""Words between what was pulled and where to."""
TO = frozenset({"on", "onto", "to", "over", "higher", "beside", "next", "with"})
NEARER = frozenset({"closer", "nearer", "towards", "toward", "along", "onto"})


def by_himself(said: Message) -> Iterator[Cue]:
    """ "he pulled it himself", "drain pulled by pt": what was told as taken out came out by accident."""
    toks = said.toks
    for k in range(1, len(toks)):
        start = _taken_from(toks, k)
        if start:
            yield from _came_out(said, start - 1, k)


def _came_out(said: Message, start: int, end: int) -> Iterator[Cue]:
    """What he did, and what the same sentence told before it, "tube out at 1300, he pulled it"."""
    first = start
    while first > 0 and word(said.toks, first - 1) not in HARD:
        first -= 1
    out = [c for c in said.cues if c.start < end and c.value in {"removed", "dislodged"}]
    told = [c for c in out if c.start >= first] or out[-1:]
    here = [c for c in told if c.start >= start]
    before = [c for c in told if c.start < start and not _is_another(said.toks, c.end, start, end)]
    for k, cue in enumerate([*before, *here]):
        yield (
            cue._replace(label="what", value="dislodged")
            if k == 0
            else cue._replace(label="filler", value="")
        )


def _is_another(toks: Toks, told: int, start: int, end: int) -> bool:
    """Whether another bed is named behind an event: "3 tube out, 6 pulled it himself"."""
    numbered = any(is_digits(toks, k) or word(toks, k) in NUMERALS for k in range(start, end))
    return numbered or not BED_WORDS.isdisjoint(toks.said[told:end])


def by_accident(said: Message) -> Iterator[Cue]:
    """ "tube out accidentally 0630": it was dislodged."""
    for cue in said.cues:
        behind = cue.end + (word(said.toks, cue.end) == "by")
        if cue.value == "removed" and word(said.toks, behind) in ACCIDENTS:
            yield cue._replace(label="what", value="dislodged", end=behind + 1)


def pulled_along(said: Message) -> Iterator[Cue]:
    """ "pulled the drain in bed 6 up onto the bed": it was moved, and is not out."""
    toks = said.toks
    for cue in said.cues:
        if cue.value == "removed" and "pulled" in toks.said[cue.start : cue.end]:
            near = range(cue.end, min(len(toks), cue.end + FAR))
            if any(
                word(toks, k) in NEARER or (word(toks, k) == "up" and word(toks, k + 1) in TO) for k in near
            ):
                yield Cue("word", "turned", cue.start, cue.end)


def by_others(said: Message) -> Iterator[Cue]:
    """ "husband pulled the drain out", "drain pulled by wife": nobody who takes a tube out as is meant."""
    toks = said.toks
    for before, cue in pairwise((Cue("", "", 0, 0), *said.cues)):
        if (before.value, cue.value) == ("dislodged", "removed") and cue.start - before.end <= 1:
            yield cue._replace(label="filler", value="")  # "patient pulled drain out": told once
        inside = not PULLED.isdisjoint(toks.said[cue.start : cue.end])
        verb = cue.start - (0 if inside else 1 + (word(toks, cue.start - 1) in WHOSE))
        if cue.value != "removed" or not (inside or word(toks, verb) in PULLED):
            continue
        who = verb - 1 - (word(toks, verb - 1) in {"just", "has", "had"})
        by = cue.end + (word(toks, cue.end) == "out")
        agent = by + 1 + (word(toks, by + 1) in WHOSE)
        if _is_outsider(toks, who) or (word(toks, by) == "by" and _is_outsider(toks, agent)):
            yield cue._replace(label="what", value="dislodged")


def _is_outsider(toks: Toks, k: int) -> bool:
    """ "his sister", but not the "sister" of a ward."""
    if word(toks, k) == "sister":
        return word(toks, k - 1) in {"his", "her", "pts", "s"}
    himself = word(toks, k) in {"he", "she"} and TEAM.isdisjoint(toks.words)
    return himself or word(toks, k) in OUTSIDERS


def took_it_out(said: Message) -> Iterator[Cue]:
    """ "12's tube is gone, the surgeon took it out at 1830": the tube that was named before, by the team."""
    toks = said.toks
    for k in range(1, len(toks) - 2):
        out = word(toks, k) in OUT and toks.said[k + 1 : k + 3] == ("it", "out")
        things = [c for c in said.cues if c.label in {"tubeword", "canister"} and c.end <= k]
        by = word(toks, k - 1 - (word(toks, k - 1) in {"just", "has", "have"}))
        if out and things and things[-1].label == "tubeword" and by in TEAM | {"we", "i", "they"}:
            yield Cue("kind", "removed", k, k + 3)


def _taken_from(toks: Toks, k: int) -> int:
    """Where his clause begins, and 1 more, if the patient is who did it: no doctor "pulled it himself"."""
    if word(toks, k) not in PATIENT:
        return 0
    start = k - 1 - (word(toks, k - 1) == "the")
    if word(toks, start) != "by" and word(toks, k) not in HIMSELF:
        return 0
    while start > 0 and word(toks, start) in TAKEN and word(toks, start) not in TAKING:
        start -= 1
    while start > 0 and word(toks, start) == "out":
        start -= 1
    while start > 0 and word(toks, start) in TAKEN:
        start -= 1
    if word(toks, start) not in TAKING:
        return 0
    start = begins_at(STOPS, toks, start)
    return start + 1 if TEAM.isdisjoint(toks.said[start:k]) else 0


def is_how_it_parted(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> bool:
    """ "disconnected at 0933. She yanked it": how it came apart, and no more than that."""
    apart = any(other.value == "disconnected" and other.end <= cue.start for other in cues)
    ends = word(toks, cue.end) == "it" and not word(toks, cue.end + 1).isalnum()
    return apart and ends and cue.end - cue.start == 1
