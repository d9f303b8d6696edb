"""Clauses beside a whole line whose subject is somebody, and no drain: "he's been sitting up for breakfast".

What such a clause says is no part of the line, unless it holds something that may be of it: a number, a word
of the drain or of what it does, a doubt, an event. The bed that it names stays: "physio is with [bed 11] so I
read it: 380 mL at 8 am". Called by `framed`, which leaves them out where a message would be asked.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise
from typing import NamedTuple

from .again import Again, Span
from .clock import clocks
from .numbers import Toks, glued, is_digits, is_inside_number, word
from .patterns.background import (
    AMID,
    ARTICLES,
    DID,
    DOUBTFUL,
    HEDGES,
    HIMSELF,
    JOINTS,
    OTHERS,
    PATIENT,
    RUNNING,
    RUNNING_ON,
    SPEAKER,
    VERBS,
    WHEN,
)
from .patterns.leads import BED_WORDS, LINES
from .patterns.numerals import NUMERALS
from .pipeline import Cue
from .plainly import is_whole_clock
from .recast import with_cues

STOPS = frozenset({".", "?", ";", "!", ",", ":", "-", "(", ")"})
PLAIN = frozenset(
    {"filler", "word", "other", "okay", "bed", "plan", "neg", "no", "badunit", "claimed", "about", "span"}
    | {
        "window",
        "levelat",
        "order",
        "nothing",
        "help",
        "since",
        "foreign",
        "question",
        "litre",
        "timeword",
        "weight",
    }
)
"""Labels of cues that say nothing of a drain where there is no number and the subject is somebody."""
GOING = frozenset({"away", "back", "left", "moved", "acknowledged"})
"""Events that are nothing of a drain where it is no patient who goes."""
AT = frozenset(
    {"at", "@", "by", "for", "around", "about", "since", "until", "till", "from", "before", "after"}
)
SMALL = frozenset({"a", "an", "one", "oh", "to", "too", "for", "o", "and"})
"""Number words that mostly are none."""
SAYING = frozenset({"says", "said", "thinks", "told"})
HIMSELF_MOVED = frozenset({"himself", "herself", "themselves", "around", "about", "well", "freely", "chair"})
"""Behind "moved" these leave a patient in the bed."""
REST = frozenset({"sleep", "asleep", "rest", "normal", "himself", "herself", "usual", "baseline"})
"""Behind "back to" these are no place that a patient comes back from."""
WITH = frozenset(
    {"with", "gave", "giving", "give", "helped", "turned", "washed", "walked", "about", "for", "of"}
)
"""Behind these a number alone is the bed of somebody."""
UNITS = frozenset(
    {"%", "mg", "mcg", "ml", "l", "litres", "liters", "units", "x", "hours", "minutes", "mins", "h"}
)
DENYING = frozenset(
    {"not", "no", "isn't", "wasn't", "didn't", "hasn't", "haven't", "don't", "never", "nobody"}
)
OBJECTS = frozenset({"him", "her", "pt", "patient", "them"}) | HIMSELF
ONWARDS = frozenset({",", ";"})
TAKING = frozenset(
    {"took", "taken", "taking", "collected", "collecting", "fetched", "picked", "brought", "wheeled", "sent"}
    | {"came", "come", "coming", "called"}
)
LEAVING = frozenset(
    {"leaving", "leaves", "leave", "departing", "heading", "transferring", "discharging", "dc"}
)
LATER = frozenset({"later", "tomorrow", "soon", "afternoon", "tonight", "evening"})
GONE = frozenset(
    {"gone", "went", "left", "taken", "took", "moved", "came", "come", "returned", "transferred"}
)
LEFT = frozenset({"left", "lt", "l"})
THAT = frozenset({"that", "this", "which"})
DUE = "due"
THING = "thing"
MEANWHILE = frozenset({"when", "while", "whilst"})
"""Behind these the time is that of the line too: "when i went in at 1100 the line was 275"."""
LABS = frozenset(
    {"sent", "taken", "drawn", "done", "gas", "gases", "results", "pressure", "sugar", "sugars", "test"}
    | {"tests", "work", "cultures", "glucose", "were", "are"}
)
NAMED_BY = {
    "this": frozenset({"morning", "afternoon", "evening", "week", "weekend", "am", "pm"}),
    "chest": frozenset({"x", "xray", "film", "physio", "physiotherapy", "ct", "infection", "pain"}),
}
"""Words that are of no drain before these."""
DRESSINGS = frozenset({"dressing", "dressings", "dsg"})
OF_DRESSINGS = frozenset(
    {"changed", "change", "changing", "dry", "wet", "soaked", "clear", "clean", "replaced"}
)
"""Of a dressing these say nothing of the drain."""
OWNED = frozenset({"his", "her", "their", "the", "of", "asleep", "way"})
BEHIND_A_NUMBER = frozenset({"ml", "mls", "cc", "ccs", "am", "pm"})
STANDS = frozenset({"is", "was", "be", "been", "now", "still", "up", "down", "he's", "she's", "it's", "sits"})
OF_PEOPLE = frozenset({"of", "people", "staff"})
MILLILITRES = frozenset(
    {"mls", "ccs", "mils", "litres", "liters", "is", "was", "has", "hundreds", "beds", "rooms"}
)
MOST_OF_TIME = 4
"""Words of a time, at most."""
SUBJECT = 5
"""Words of a subject, at most: "the physio from the other team"."""


class Aside(NamedTuple):
    """A clause of somebody: what is left out of it, and whether it says when the line was."""

    clause: Span
    spans: tuple[Span, ...]
    timely: bool


class Clause(NamedTuple):
    """A clause, its beds, and where the words behind its joints begin."""

    start: int
    end: int
    begins: int
    beds: tuple[Span, ...]


def backgrounds(again: Again) -> list[Aside]:
    """The clauses that are of somebody, in order."""
    read = with_cues(again.read, again.ward.index)
    toks, beds = again.toks, _beds(again, read.labelled)
    found: list[Aside] = []
    who, goes_on = "", -1
    for start, end in _clauses(toks):
        clause = _clause(toks, start, end, beds)
        inside = [c for c in read.cues if clause.begins <= c.start < end]
        who = _subject(toks, clause) or (who if goes_on == start else "")
        told = who and _is_of_somebody(toks, clause, inside, who) and _keeps(toks, clause, beds, who)
        if not told and goes_on == start and _may_be_of_either(toks, clause, inside):
            return []
        if told or _is_how_it_runs(toks.said[clause.begins : end]):
            found.append(_aside(toks, clause, behind=goes_on == start))
            goes_on = end + (word(toks, end) in ONWARDS)
    return found


def _may_be_of_either(toks: Toks, clause: Clause, cues: list[Cue]) -> bool:
    """ "wife visiting and she went home": who went, the wife or the patient?"""
    goes = any(c.label == "kind" and c.value in GOING for c in cues)
    return goes and word(toks, clause.begins) in HIMSELF


def _aside(toks: Toks, clause: Clause, *, behind: bool) -> Aside:
    """What is left out: all but the bed, the stop before it, and a time that is the line's as well."""
    first = clause.start - (word(toks, clause.start - 1) == ",")
    joints = toks.said[clause.start : clause.begins]
    times = [(j - 1, end) for j, end in _times(toks) if clause.start < j < clause.end]
    own = tuple(times) if not MEANWHILE.isdisjoint(joints) and len(_times(toks)) == 1 else ()
    ends = [first, *(k for kept in sorted((*clause.beds, *own)) for k in kept), clause.end]
    spans = tuple((a, b) for a, b in zip(ends[::2], ends[1::2], strict=True) if a < b)
    when = not behind and not WHEN.isdisjoint(joints)
    return Aside((first, clause.end), spans, not own and (bool(times) or when))


def _times(toks: Toks) -> list[Span]:
    """Where the times stand that have an at before them."""
    found: list[Span] = []
    for k in range(1, len(toks)):
        ends = [end for end, _ in clocks(toks, k) if _is_whole_time(toks, k, end)]
        if word(toks, k - 1) in AT and ends:
            found.append((k, max(ends)))
    return found


def _clauses(toks: Toks) -> Iterator[Span]:
    """The clauses between stops, cut also before a joint, and before who does something behind a number."""
    start = 0
    for k in range(len(toks) + 1):
        stop = k == len(toks) or (word(toks, k) in STOPS and not _is_inside(toks, k))
        joint = _joins(toks, k) and not _joins(toks, k - 1)
        behind = is_digits(toks, k - 1) or word(toks, k - 1) in BEHIND_A_NUMBER
        cut = joint or (behind and (word(toks, k) in PATIENT | OTHERS or _is_line(toks, k)))
        if (stop or cut) and k > start:
            yield start, k
        if stop or cut:
            start = k + stop


def _is_line(toks: Toks, k: int) -> bool:
    """ "the line was", "line is": what is read begins there."""
    return word(toks, k + (word(toks, k) in ARTICLES)) in LINES


def _is_inside(toks: Toks, k: int) -> bool:
    """ "1,210", "x-ray": whether a sign is part of a number or of a word."""
    hyphen = word(toks, k) == "-" and glued(toks, k) and glued(toks, k + 1)
    return is_inside_number(toks, k) or (hyphen and not is_digits(toks, k - 1))


def _joins(toks: Toks, k: int) -> bool:
    """ "so he ...", "that was when i ..."."""
    if word(toks, k) == "was" and word(toks, k - 1) in THAT and word(toks, k + 1) in WHEN:
        return True
    when = word(toks, k + 1 + (word(toks, k + 1) == "was")) in WHEN
    return word(toks, k) in JOINTS or (word(toks, k) in THAT and when)


def _is_that(toks: Toks, k: int) -> bool:
    """ "after that he ..."."""
    return word(toks, k) in THAT and word(toks, k - 1) in WHEN


def _clause(toks: Toks, start: int, end: int, beds: tuple[Span, ...]) -> Clause:
    begins = start
    while begins < end and (word(toks, begins) in HEDGES or _joins(toks, begins) or _is_that(toks, begins)):
        begins += 1
    return Clause(start, end, begins, tuple(bed for bed in beds if start <= bed[0] < end))


def _beds(again: Again, labelled: Mapping[int, tuple[int, str]]) -> tuple[Span, ...]:
    """The beds that are named: by that word, by a label that is no mere number, or as who is meant."""
    toks, found = again.toks, []
    for k in range(len(toks)):
        named = word(toks, k - 1) in BED_WORDS
        if k in labelled:
            found.append((k - named, labelled[k][0]))
        elif is_digits(toks, k) and (named or _is_whom(toks, k, again.ward.index)):
            found.append((k - named, k + 1))
    return tuple(found)


def _is_whom(toks: Toks, k: int, index: Mapping[str, str] | None) -> bool:
    """ "sat with 222", "gave 222 his treatment", "207 had surgery": a bed and no number of anything."""
    whole = not glued(toks, k + 1) and not is_digits(toks, k + 1)
    if index is None or word(toks, k) not in index or not whole:
        return False
    heads = (k == 0 or word(toks, k - 1) in STOPS) and word(toks, k + 1) in VERBS
    return heads or (word(toks, k - 1) in WITH and word(toks, k + 1) not in UNITS)


def _keeps(toks: Toks, clause: Clause, beds: tuple[Span, ...], who: str) -> bool:
    """Whether the bed that a clause names is the only one, and no other number may be one."""
    denied = not DENYING.isdisjoint(toks.said[clause.start : clause.end])
    return not clause.beds or (len(beds) == 1 and who != THING and not denied)


def _is_of_somebody(toks: Toks, clause: Clause, cues: list[Cue], who: str) -> bool:
    """Whether nothing in a clause of somebody is doubtful."""
    taken = {k for bed in clause.beds for k in range(*bed)}
    if taken.issuperset(range(clause.begins, clause.end)) or _is_doubtful(toks, clause, taken):
        return False
    leaves = who == "patient" and not LEAVING.isdisjoint(toks.said[clause.begins : clause.end])
    if leaves and not any(c.label == "plan" for c in cues):
        return False
    taken_off = any(_takes_along(toks, k) for k in range(clause.begins, clause.end))
    if taken_off and not any(c.label == "plan" for c in cues):
        return False
    own = [c for c in cues if c.start not in taken and c.label not in PLAIN and c.value != DUE]
    return all(_says_nothing(c, toks) or _goes_nowhere(toks, c, cues, who) for c in own)


def _takes_along(toks: Toks, k: int) -> bool:
    """ "they came for him", "porter collected her": whom somebody takes along is away."""
    whom = word(toks, k + 1 + (word(toks, k + 1) in {"for", "up"}))
    return word(toks, k) in TAKING and whom in OBJECTS


def _says_nothing(cue: Cue, toks: Toks) -> bool:
    """ "gave him his meds", "did really well", "bloods sent": no amount, correction or look of a fluid."""
    said = word(toks, cue.start)
    if cue.value == "help" or (cue.label == "output" and word(toks, cue.end - 1) == "to"):
        return True  # "with the help of the aide", "coming to take him"
    return _is_of_lab(toks, cue.start) or (
        cue.end - cue.start == 1 and said in {"gave", "given", "giving", "really", "again"}
    )


def _is_how_it_runs(said: Sequence[str]) -> bool:
    """ "so it has slowed down": no number, and nothing that happened."""
    return not RUNNING.isdisjoint(said) and RUNNING_ON.issuperset(said)


def _subject(toks: Toks, clause: Clause) -> str:
    """Of whom a clause is: a patient, another, or a thing that something is told of; empty where nobody."""
    k = clause.begins
    first = word(toks, k)
    if first in SPEAKER | HIMSELF:
        return "patient" if first in HIMSELF else "other"
    if first in DID or (clause.start == 0 and first in AMID):
        return "nurse"
    bed = next((bed for bed in clause.beds if bed[0] == k), None)
    if bed is not None:
        return "patient" if word(toks, bed[1]) in VERBS else ""
    for j in range(k, min(k + SUBJECT, clause.end)):
        said = word(toks, j)
        if said in PATIENT:
            return "patient"
        if said in OTHERS:
            return "other"
        if said in VERBS and j > k:
            return THING
        if not (said.isalpha() or said == "-"):
            break
    return ""


def _is_doubtful(toks: Toks, clause: Clause, beds: set[int]) -> bool:
    said = {
        word(toks, k)
        for k in range(clause.begins, clause.end)
        if word(toks, k + 1) not in NAMED_BY.get(word(toks, k), ()) and not _is_of_lab(toks, k)
    }
    doubtful = DOUBTFUL - OF_DRESSINGS if said & DRESSINGS else DOUBTFUL
    right = word(toks, clause.end - 1) == "right" and word(toks, clause.end - 2) not in ARTICLES | {"all"}
    if said & doubtful or right or word(toks, clause.end) == "?":
        return True
    return any(
        _is_amount(toks, k) or _is_reported(toks, k)
        for k in range(clause.begins, clause.end)
        if k not in beds
    )


def _is_amount(toks: Toks, k: int) -> bool:
    """Whether a number there may be ours: it is no time behind its at, and counts no people ("two of us")."""
    said = word(toks, k)
    if not (is_digits(toks, k) or said in NUMERALS - SMALL) or _is_in_time(toks, k):
        return False
    behind = word(toks, k + 1)
    plural = behind[-1:] == "s" and len(behind) > len("his") and behind not in MILLILITRES
    counted = plural and not is_digits(toks, k)  # "two laps"
    return not (counted or behind in (OWNED if said == "half" else OF_PEOPLE))


def _is_in_time(toks: Toks, k: int) -> bool:
    near = (j for j in range(max(1, k - MOST_OF_TIME), k + 1) if word(toks, j - 1) in AT)
    near = (j for j in near if word(toks, j - 2) not in STANDS)  # "he is at 1100" may be a line
    return any(k < end and _is_whole_time(toks, j, end) for j in near for end, _ in clocks(toks, j))


def _is_whole_time(toks: Toks, k: int, end: int) -> bool:
    """ "at 0700", "at quarter to two", "at nine"; "at 500" may be a line."""
    return is_whole_clock(toks, k) or not any(is_digits(toks, j) for j in range(k, end))


def _is_reported(toks: Toks, k: int) -> bool:
    """ "she says": whatever was told before; "he says he feels better" is of him."""
    return word(toks, k) in SAYING and word(toks, k + 1) not in HIMSELF | ARTICLES


def _is_of_lab(toks: Toks, k: int) -> bool:
    """ "bloods", which the speller takes for blood, "blood gas"."""
    plural = toks[k].end - toks[k].start == len("bloods")
    return word(toks, k) == "blood" and (plural or word(toks, k + 1) in LABS)


def _goes_nowhere(toks: Toks, cue: Cue, cues: list[Cue], who: str) -> bool:
    """Whether what tells of a patient who comes or goes tells of somebody else, of later, or of sleep."""
    if cue.label == "side":
        kept = word(toks, cue.end) in OBJECTS and who == "other"  # "the doctor left him on it"
        return kept or word(toks, cue.start) not in LEFT or word(toks, cue.start - 1) in ARTICLES
    if cue.label != "kind" or cue.value not in GOING:
        return False
    if any(other.label == "plan" and other.start < cue.start for other in cues):
        return True
    if LATER & set(toks.said[cue.end : cue.end + 2]) and GONE.isdisjoint(toks.said[cue.start - 1 : cue.end]):
        return True  # "for a scan later"
    if word(toks, cue.start - 1) in ARTICLES and cue.end - cue.start == 1:
        return True  # "slept through the move"
    if cue.value == "away" and word(toks, cue.start - 1) in {"sat", "sitting", "up"}:
        return True  # "sat out for two hours"
    if cue.value == "moved" and HIMSELF_MOVED & set(toks.said[cue.end : cue.end + 3]):
        return True  # "he moved himself up the bed"
    if cue.value == "back" and REST & {word(toks, cue.end), word(toks, cue.end + 1)}:
        return True
    start = cue.start
    while start and word(toks, start - 1) not in JOINTS | STOPS:
        start -= 1
    before = {word(toks, k) for k in range(start + 1, cue.start)}
    behind = pairwise(toks.said[cue.start :])
    along = any(a == "with" and b in OBJECTS for a, b in behind)
    return who == "other" and not (before & OBJECTS or along)
