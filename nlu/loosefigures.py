"""Numbers of what only stands beside a line or an event: "off to CT, we've had 4 crash calls", "who is 71".

A level that no word of a drain leads to is one where it stands with what it is of: its bed, its tube, the
event. In a clause of other words it may be their number. Called by `strayfigures`, for what is typed.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .items import AMOUNTS, EVENTS, FINDINGS, Item, is_now
from .neighbours import is_dash, is_stop_among
from .numbers import Toks, word
from .patterns.alongside import AMONG
from .patterns.asides import RELATIVES
from .patterns.leads import BED_WORDS, LINES
from .patterns.levels import MILLILITRES
from .patterns.ownclauses import DRAINS, HIMSELF, SPEAKER
from .rules import Pieces, Rule

STOPS = frozenset({".", ",", ";", "!", "?", "(", ")"})
JOINTS = frozenset({"and", "&", "but", "so", "plus", "then"})
NUMBERED = AMOUNTS | {"bed", "num", "time"}
PEOPLE = frozenset(
    {"patients", "pts", "people", "nurses", "visitors", "porters", "doctors", "staff", "kids", "children"}
)
COMING = frozenset({"came", "went", "shut", "shuts", "opened", "opens", "closed", "rang", "starts", "ate"})
"""What comes, goes or begins has a time of its own."""
TELLING = EVENTS | FINDINGS | {"level", "levelat", "closing", "suction", "wall", "seal", "dial"}
PERSON = frozenset({"nurse", "patient", "pt", "visitor", "porter", "aide", "doctor", "student"})
COUNTING = frozenset({"have", "has", "got", "only", "and", "&", "just", "with", "for", "or"})
OF_BEDS = frozenset({"us", "his", "her", "our", "my", "your", "their"})
_PLAINLY = """
at now is was it it's its then of with in the on currently still about around approx last final total has
had there there's showing shows reads says stood standing sitting sits been up to from ended ending finished
end ends by a an so far return arrival admission removal transfer only just already this time for when since
today tonight overnight hour hr mls out off left right both each per old new one first second level marked
drained output put amount volume pt patient he she
"""
PLAINLY = frozenset(_PLAINLY.split())
"""Words beside a level that say nothing of what else it may be."""
HELD = DRAINS | LINES | MILLILITRES | {"tube", "tubes", "chest", "drains", "fluid", "blood"}


def _of_people(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "who is 71", "11 patients", "7 of his people", "4 more days": how old, or how many."""
    for item in items:
        if item.role not in NUMBERED or item.unit:
            continue
        behind, next_to = word(toks, item.end), word(toks, item.end + 1)
        before = (word(toks, item.start - 2), word(toks, item.start - 1))
        of_whom = behind == "of" and next_to in OF_BEDS & AMONG
        more = behind == "more" and next_to.endswith("s") and next_to not in MILLILITRES | HELD
        beds = "beds" in (behind, next_to) and behind.isalpha()
        one = behind in PERSON and before[1] in COUNTING and word(toks, item.start) == "1"
        back = before == ("back", "in") and any(i.role == "bed" and i is not item for i in items)
        one |= back and item.role == "bed"  # "12 340 1850. Back in 10": minutes, perhaps
        counted = behind in PEOPLE or of_whom or more or beds or one or before == ("there", "are")
        if counted or before in {("who", "is"), ("who", "was")}:
            yield "how many of whom, or how old"


def _beside_event(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "tube out at 1840. He's read 200 pages": a level in a clause of words that are of no drain."""
    for item in items:
        if item.role != "level" or item.unit or not _is_unled(item, toks):
            continue
        start, end = _clause(item, toks)
        inside = [i for i in items if start <= i.start < end and i is not item]
        if any(i.role in {"bed", "tube", "time"} or (i.role == "cue" and i.value in EVENTS) for i in inside):
            continue
        read = {"read"} if word(toks, item.start - 1) == "read" else set()
        words = {w for w in toks.said[start : item.start] + toks.said[item.end : end] if w[:1].isalpha()}
        if len(words) > 1 and words.isdisjoint(HELD - read) and words - PLAINLY - read:
            yield "the level may be of what stands beside it"


def _time_of_words(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "suction 20, came on at 7", "closing 340. Foley came out at noon": when something else was."""
    for item in items:
        if item.role != "time" or is_now(item):
            continue
        start, end = _clause(item, toks)
        inside = [i for i in items if start <= i.start < end and i is not item]
        if any(i.role not in {"cue", "sep", "foreign"} for i in inside):
            continue
        said = set(toks.said[start : item.start])
        told = any(i.role == "cue" and i.value in TELLING for i in inside)
        went_in = {("went", "in"), ("came", "in")} & set(pairwise(toks.said[start:end]))  # a tube, perhaps
        if said & COMING and not (told or went_in) and said.isdisjoint(HELD | SPEAKER | BED_WORDS):
            yield "the time may be of something else"


def _is_unled(item: Item, toks: Toks) -> bool:
    """Whether no word of a line leads to it: "he's read 200 pages", "both sons are coming up at 8"."""
    read = word(toks, item.start - 1) == "read" and word(toks, item.start - 2) in HIMSELF
    start, end = _clause(item, toks)
    people = RELATIVES | {f"{w}s" for w in RELATIVES}
    return not item.lead or read or not people.isdisjoint(toks.said[start:end])


def _clause(item: Item, toks: Toks) -> tuple[int, int]:
    """Where its clause begins and ends."""
    start, end = item.start, item.end
    while start > 0 and not _is_end(toks, start - 1):
        start -= 1
    while end < len(toks) and not _is_end(toks, end):
        end += 1
    return start, end


def _is_end(toks: Toks, k: int) -> bool:
    return is_dash(toks, k) or is_stop_among(STOPS, toks, k) or word(toks, k) in JOINTS


OF_PEOPLE = Rule(_of_people, NUMBERED)
BESIDE_EVENT = Rule(_beside_event, EVENTS | {"check", "volume"})
TIME_OF_WORDS = Rule(_time_of_words, frozenset({"time"}))
