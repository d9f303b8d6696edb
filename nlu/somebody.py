"""The clauses of a message: where each begins and ends, which bed it names and whom it is of.

Typed, a clause ends at a stop and before a joining word; dictated, where no stop can be trusted, it begins
with whom it is of behind what may end a line, and ends before what a line begins with: "she's asleep | on bed
12". Used by `ownclauses`.
"""

from __future__ import annotations

from collections.abc import Container, Iterator, Mapping
from typing import NamedTuple

from .again import Again, Span
from .items import FINDINGS
from .neighbours import is_stop_among
from .numbers import Toks, glued, is_digits, is_inside_number, starts_number, word
from .patterns.leads import BED_WORDS, LINES
from .patterns.levels import MILLILITRES
from .patterns.numerals import HOMOPHONES
from .patterns.ownclauses import (
    AMID,
    ARTICLES,
    BECAUSE,
    BEFORE_LINE,
    DID,
    GOING_ON,
    HEDGES,
    HIMSELF,
    JOINTS,
    OPENING,
    OTHERS,
    PATIENT,
    SPEAKER,
    VERBS,
    WANTED,
    WANTING,
    WHEN,
)
from .readthen import is_whole_clock
from .sentences import BEHIND

STOPS = frozenset({".", "?", ";", "!", ",", ":", "-", "(", ")"})
SHORTENED = ("'s", "'ll", "'re", "'ve", "'m")
TOLD = FINDINGS | {"kind", "what", "same", "since", "reason"}
OF_FINDING = frozenset({"one", "it", "some", "any", "that", "that's", "this", "those", "there", "there's"})
"""Behind what was found these may be it: "no leak the other nurse found one"."""
THAT = frozenset({"that", "this", "which"})
BEHIND_A_NUMBER = MILLILITRES | {"am", "pm"}
PREFIXES = frozenset({"ct", "c", "bed", "number", "no"})
"""Between the word for a bed and its label."""
WITH = frozenset(
    {"with", "gave", "giving", "give", "helped", "turned", "washed", "walked", "about", "for", "of"}
)
"""Behind these a number alone is the bed of somebody."""
HALVES = frozenset({"am", "pm", "h", "hrs", "hr", "hours"})
GOES_ON_ABOUT = (
    HALVES
    | MILLILITRES
    | {"of", "from", "via", "in", "out", "through", "into", "by", "for", "to", "on", "or", "if", "x", "l"}
    | {"r", "left", "right", "at", "as", "is", "was", "with", "w", "not", "no"}
)
"""Behind a line and its time these may be of either."""
PLACING = frozenset({"in", "into", "to", "on", "at", "by", "from", "the", "see", "saw", "read", "did"})
SUBJECTS = PATIENT | OTHERS
BEFORE_NUMBERS = WITH | PREFIXES | PLACING
UNITS = frozenset(
    {"%", "mg", "mcg", "ml", "l", "litres", "liters", "units", "x", "hours", "minutes", "mins", "h"}
)
ONWARDS = frozenset({",", ";"})
MOST_OF_SUBJECT = 5
"""Words of a subject, at most: "the physio from the other team"."""
THING, HEAD, NURSE, SPEAKS, IS_PATIENT, OTHER = "thing", "head", "nurse", "speaker", "patient", "other"


class Clause(NamedTuple):
    """A clause, its beds, where the words behind its joints begin, and whom it is of: nobody where empty."""

    start: int
    end: int
    begins: int
    beds: tuple[Span, ...]
    who: str


def clauses(again: Again, claimed: Container[int], labelled: Mapping[int, tuple[int, str]]) -> list[Clause]:
    """The clauses in order; `claimed` are numbers that are of something else, `labelled` the beds."""
    toks, beds, voice = again.toks, _beds(again, labelled), again.ward.voice
    spans = _dictated(toks, _ended(again, claimed)) if voice else _typed(toks)
    found = []
    for start, end in spans:
        begins = start
        while begins < end and (
            word(toks, begins) in HEDGES or _joins(toks, begins) or _is_that(toks, begins)
        ):
            begins += 1
        clause = Clause(start, end, begins, tuple(bed for bed in beds if start <= bed[0] < end), "")
        found.append(clause._replace(who=subject(toks, clause, voice=voice)))
    return found


def _ended(again: Again, claimed: Container[int]) -> set[int]:
    """Where what is told may end: claimed numbers, and what was found or happened, with no "it" behind it."""
    toks = again.toks
    last = max((k for k in range(len(toks)) if word(toks, k) in OF_FINDING), default=0)
    found = (cue.end - 1 for cue in again.meant.cues if cue.label in TOLD and cue.end > last)
    return {*found, *(k for k in range(len(toks)) if k in claimed)}


def names_bed(toks: Toks, k: int) -> bool:
    """ "bed four", "room CT 2"; "the room is dark" names none."""
    return word(toks, k) in BED_WORDS and (
        starts_number(toks, k + 1) or word(toks, k + 1) in HOMOPHONES or word(toks, k + 1) in PREFIXES
    )


def subject(toks: Toks, clause: Clause, *, voice: bool) -> str:
    """Of whom a clause is: a patient, another, or a thing that something is told of; empty where nobody."""
    k = clause.begins
    first = word(toks, k)
    if first in SPEAKER | HIMSELF:
        return IS_PATIENT if first in HIMSELF else SPEAKS
    if first in DID or (clause.start == 0 and first in AMID):
        return NURSE
    wants = first in WANTING and not WANTED.isdisjoint(toks.said[k : clause.end])
    if (first in GOING_ON or wants) and word(toks, k - 1) == "and":
        return OTHER
    if clause.beds and clause.beds[0][0] == k:
        return IS_PATIENT if word(toks, clause.beds[0][1]) in VERBS else ""
    for j in range(k, min(k + MOST_OF_SUBJECT, clause.end)):
        said = word(toks, j)
        if said in PATIENT:
            return IS_PATIENT
        if said.removesuffix("'s") in OTHERS:
            return OTHER
        if said in VERBS and j > k:
            return THING
        if not (said.isalpha() or said == "-"):
            break
    if not BECAUSE.isdisjoint(toks.said[clause.start : k]):
        return THING
    if voice and clause.start == 0:
        return HEAD
    return THING if voice and _opens(first) else ""


def _beds(again: Again, labelled: Mapping[int, tuple[int, str]]) -> tuple[Span, ...]:
    """The beds that are named: by that word, by a label that is no mere number, or as who is meant."""
    toks, found = again.toks, []
    for k in range(len(toks)):
        named = word(toks, k - 1) in BED_WORDS
        if k in labelled:
            found.append((k - named, labelled[k][0]))
        elif is_digits(toks, k) and (named or _is_whom(toks, k, again.ward.index or ())):
            found.append((k - named, k + 1))
    return tuple(found)


def _is_whom(toks: Toks, k: int, index: Container[str]) -> bool:
    """ "sat with 222", "gave 222 his treatment", "207 had surgery": a bed and no number of anything."""
    if word(toks, k) not in index or glued(toks, k + 1) or is_digits(toks, k + 1):
        return False
    heads = (k == 0 or word(toks, k - 1) in STOPS) and word(toks, k + 1) in VERBS
    return heads or (word(toks, k - 1) in WITH and word(toks, k + 1) not in UNITS)


def _typed(toks: Toks) -> Iterator[Span]:
    """Those between stops, cut also before a joint, and before who does something behind a number."""
    start = 0
    for k in range(len(toks) + 1):
        stop = k == len(toks) or (word(toks, k) in STOPS and not _is_inside(toks, k))
        joint = _joins(toks, k) and not _joins(toks, k - 1)
        tells = k > start and word(toks, start) in WHEN and word(toks, k - 1) not in BEFORE_NUMBERS
        joint |= tells and names_bed(toks, k) and word(toks, k + 2) in VERBS  # "once he left bed 3 is ..."
        behind = is_digits(toks, k - 1) or word(toks, k - 1) in BEHIND_A_NUMBER
        cut = joint or (behind and (word(toks, k) in SUBJECTS or _is_line(toks, k)))
        cut |= is_behind_line(toks, k)
        if (stop or cut) and k > start:
            yield start, k
        if stop or cut:
            start = k + stop


def is_behind_line(toks: Toks, k: int) -> bool:
    """ "665 ml 0800 | amb in hall": whether a line and its time end there, and nothing goes on about them."""
    before = k - 1 - (word(toks, k - 1) in HALVES)
    if before not in toks.digits or not word(toks, k).isalpha() or word(toks, k) in GOES_ON_ABOUT:
        return False
    start = before - 2 * (word(toks, before - 1) == ":" and glued(toks, before))
    time = before < k - 1 or is_whole_clock(toks, start)
    level = start - 1
    while word(toks, level) in MILLILITRES | {"at", "@"}:
        level -= 1
    return time and is_digits(toks, level)


def _dictated(toks: Toks, claimed: Container[int]) -> Iterator[Span]:
    """Those between stops, cut also where one opens behind a line, and where a line begins."""
    lines = {_line_begins(toks, k) for k in range(len(toks)) if names_bed(toks, k)}
    start = 0
    for k in range(len(toks) + 1):
        stop = k == len(toks) or is_stop_among(STOPS, toks, k)
        if (stop or k in lines or _opens_behind(toks, k, claimed)) and k > start:
            yield start, k
            start = k
        if stop:
            start = k + 1


def _line_begins(toks: Toks, k: int) -> int:
    while word(toks, k - 1) in BEFORE_LINE:
        k -= 1
    return k


def _opens(said: str) -> bool:
    return said in OPENING or said.endswith(SHORTENED)


def _opens_behind(toks: Toks, k: int, claimed: Container[int]) -> bool:
    """Whether a clause with a subject of its own begins there, and no word before it is left open: behind a
    number, or what was found ("bright red | i've called the team")."""
    first = k
    while word(toks, first) in JOINTS:
        first += 1
    before = k - 1
    said = word(toks, before)
    ended = is_digits(toks, before) or said in BEHIND or before in claimed
    ended |= said == "m" and word(toks, before - 1) in {"a", "p"}
    return ended and _opens(word(toks, first))


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
    caring = word(toks, k) == "after" and word(toks, k - 1) in {"looking", "look"}
    caring |= word(toks, k) == "since" and is_digits(toks, k + 1)  # "clamped since 1800 by order of the team"
    return (word(toks, k) in JOINTS and word(toks, k - 1) != "at" and not caring) or (
        word(toks, k) in THAT and when
    )


def _is_that(toks: Toks, k: int) -> bool:
    """ "after that he ...", "so that we can watch him"."""
    return word(toks, k) in THAT and (word(toks, k - 1) in WHEN or toks.said[k - 1 : k + 1] == ("so", "that"))
