"""What stands beside a place of a message: links, signs, a number further on."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Set
from itertools import pairwise

from .items import Item
from .lengths import length
from .numbers import Toks, glued, is_digits, is_inside_number, is_own_scale, starts_number, word
from .patterns.asides import RELATIVES
from .patterns.leads import BED_WORDS, DANGLING, GLUED_BEFORE, HESITATION, LINKS
from .pipeline import Cue

HARD = frozenset({".", ";", "!", "?"})
"""Stops that end a sentence."""
BEFORE_NUMBERS = frozenset(
    {"-", "at", "to", "minus", "is", "of", ":", "=", "about", "around", "roughly", "approx", "approximately"}
    | {"~", "maybe", "almost", "nearly", "only", "just", "another", "a", "further", "total", "up", "like"}
)


DENIALS = frozenset({"not", "isn't", "isnt", "wasn't", "wasnt", "ain't", "aint", "quite", "looking"})
ENDS = frozenset({"", ".", ",", ";", "!", "?", "pls", "please", "sorry"})
SIDES = frozenset({"l", "r", "left", "right", "lt", "rt"})
ARROWS = frozenset({"\u2192", "\u21d2"})
LEAVERS = frozenset(
    {"i", "he", "she", "they", "we", "who", "just", "has", "have", "had", "already"}
    | {"rn", "nurse", "doctor", "physio", "porter", "porters", "transport", "team", "surgeon", "registrar"}
    | RELATIVES
)
"""Whoever left: behind these "left" is no side."""


LIMBS = frozenset(
    {"arm", "leg", "hand", "foot", "shoulder", "hip", "knee", "ankle", "wrist", "groin", "elbow", "thigh"}
    | {"ear", "eye", "calf", "heel", "buttock"}
)
"""Of these a patient has two, and no drain is in them."""
OF_RT = frozenset({"is", "was", "has", "had", "will", "giving", "treatment", "treatments", "neb", "nebs"})
"""Behind "rt", without a number, these are of a respiratory therapist."""
LYING = frozenset(
    {"above", "hanging", "lying", "laying", "sitting", "standing", "unattended", "dangling", "under"}
    | {"propped", "upright", "behind", "beside"}
)
LEFT_THERE = frozenset(
    {"drain", "tube", "box", "canister", "bottle", "chamber", "system", "unit", "was", "got", "been", "it"}
)
"""Behind these "left" may be no side."""
TITLES = frozenset({"dr", "drs", "doctor", "mr", "mrs", "ms", "miss", "prof"})
SIGNED = frozenset({"nurse", "rn", "sister", "by", "per", "initials", "signed"})
"""Behind these a letter that ends what is told is of a name."""
ARTICLES = frozenset({"the", "his", "her", "a", "their"})


def is_left_there(toks: Toks, start: int) -> bool:
    """ "drain left above chest", "box left on the bed": where it was, and no side."""
    if word(toks, start) != "left" or word(toks, start - 1) not in LEFT_THERE:
        return False
    behind = word(toks, start + 1)
    return behind in LYING or (behind in {"on", "in"} and word(toks, start + 2) in ARTICLES)


def is_initial(toks: Toks, k: int) -> bool:
    """ "18 order sxn -10 Dr R", "18 340 RN L", "r/v 1840": a letter of a name or a short word, no side."""
    other = word(toks, k + 2)
    if word(toks, k + 1) == "/" and glued(toks, k + 2) and len(other) == 1 and other.isalpha():
        return other not in SIDES
    who = word(toks, k - 1 - (word(toks, k - 1) == "."))
    ends = word(toks, k + 1) in ENDS
    return who in TITLES or (who in SIGNED and ends)


def is_scan(item: Item, toks: Toks) -> bool:
    """ "CT on 8 done at 0610": a scan, and no chest tube."""
    return toks.said[item.start : item.end] == ("ct",) and "done" in toks.words


def phrase_of(piece: Item | Cue, toks: Toks) -> str:
    """The words of a piece, or of a cue."""
    return " ".join(toks.said[piece.start : piece.end])


def is_setting(toks: Toks, i: int) -> bool:
    """ "suction on 20", "on at 20", "to suction of -20": a setting; "suction on at 1900" is an event."""
    of = word(toks, i) == "of"
    i += of or word(toks, i) == "at"
    i += word(toks, i) in {"-", "minus"}
    if of:
        return starts_number(toks, i)
    if is_digits(toks, i):
        return len(word(toks, i)) <= 2 and word(toks, i + 1) not in {":", "am", "pm", "min", "mins"}
    return word(toks, i - 1) != "at" and starts_number(toks, i)


def is_day_number(toks: Toks, i: int) -> bool:
    """ "post lobectomy day 1": which day after it."""
    return is_digits(toks, i) and len(word(toks, i)) == 1 and word(toks, i + 1) not in {":", "ml"}


def number_follows(toks: Toks, i: int) -> bool:
    """Whether a number comes next, little words aside."""
    while word(toks, i) in BEFORE_NUMBERS:
        i += 1
    return starts_number(toks, i)


def is_negative(toks: Toks, i: int) -> bool:
    """Whether the number here has a minus before it, and not a dash between two numbers."""
    before = word(toks, i - 1)
    if before in {"minus", "negative"}:
        return True
    chained = is_digits(toks, i - 2) or word(toks, i - 2) in SIDES  # "L-340"
    chained |= len(word(toks, i - 2)) == 1 and glued(toks, i - 2) and is_digits(toks, i - 3)  # "7B-260"
    return before == "-" and glued(toks, i) and not (glued(toks, i - 1) and chained)


def is_stop_among(stops: Set[str], toks: Toks, k: int) -> bool:
    """Whether one of these stops stands there, and is no sign within a number: "19:00", "1,210"."""
    return word(toks, k) in stops and not is_inside_number(toks, k)


def is_dash(toks: Toks, k: int) -> bool:
    """Whether a dash stands there that parts two clauses: "-5" and "2-3" have none."""
    return word(toks, k) == "-" and not glued(toks, k + 1)


def stretches(stops: Set[str], toks: Toks) -> Iterator[tuple[int, int]]:
    """The stretches of words between these stops, without empty ones."""
    ends = [-1, *(k for k in range(len(toks)) if is_stop_among(stops, toks, k)), len(toks)]
    return ((before + 1, end) for before, end in pairwise(ends) if end > before + 1)


def parted(
    start: int, last: int, is_stop: Callable[[int], bool], is_cut: Callable[[int], bool]
) -> Iterator[tuple[int, int]]:
    """The stretches from one place to another, without empty ones: a stop is in none, at a cut one begins."""
    for k in range(start, last + 1):
        stop = k == last or is_stop(k)
        if stop or is_cut(k):
            if k > start:
                yield start, k
            start = k + stop


def begins_at(stops: Set[str], toks: Toks, k: int) -> int:
    """Where the clause begins that goes on before `k`: behind the last of these stops."""
    while k and not is_stop_among(stops, toks, k - 1):
        k -= 1
    return k


def ends_at(stops: Set[str], toks: Toks, k: int) -> int:
    """Where the clause ends that `k` is in: at the next of these stops, or with the message."""
    while k < len(toks) and not is_stop_among(stops, toks, k):
        k += 1
    return k


def link_before(toks: Toks, i: int) -> str:
    """The word that links the number here to the one before, or nothing."""
    before, i = word(toks, i - 1), i - 1
    if before in BED_WORDS:
        before, i = word(toks, i - 1), i - 1
    if before in ARROWS or (before == ">" and word(toks, i - 1) in {"-", "="}):
        return "to"
    if before == "-" and glued(toks, i + 1) and word(toks, i - 1) in SIDES:
        return ""
    return "to" if before == "onto" else before if before in LINKS else ""


def is_spaced_letter(toks: Toks, i: int, end: int) -> bool:
    """ "12 L" is bed 12 and the left tube; "12L" would be a label."""
    last = word(toks, end - 1)
    return end > i + 1 and len(last) == 1 and last.isalpha() and not glued(toks, end - 1)


def may_follow(before: Item, after: Item) -> bool:
    """Whether two numbers can stand side by side: one must be a time or a bed, or the first no volume."""
    decimal = before.role == "bad" and before.figure is not None and before.figure != int(before.figure)
    if decimal or before.role in {"bed", "tube", "cue", "sep", "time"} or before.label is not None:
        return True
    next_bed = bool(after.digits) and after.label is not None  # "27 185 30 310", as "3 185 4 310"
    return bool(before.clocks or after.clocks or next_bed) and before.role != "bad"


def kind_lead(toks: Toks, i: int, kind: str) -> str:
    """What leads the number behind an event whose phrase ends here: "moved to", "out at"."""
    last = word(toks, i - 1)
    if last in {"bed", "room"} and word(toks, i - 2) == "from":
        return "from"
    if last in {"bed", "room"}:
        timed = kind == "back" and word(toks, i + 1) == ":"
        return "" if kind == "corrected" or timed or word(toks, i) == "from" else "bed"
    if last == "from":
        return "from"
    if last in {"to", "into"} or (last == "in" and kind == "moved"):
        return "to"
    if last == "at":
        return "newat" if kind == "exchanged" else "at"
    return ""


def is_suffix(toks: Toks, i: int, before: Item | None) -> bool:
    """Whether "a.m." stands behind a number that was taken for no time: it is never dropped."""
    if word(toks, i) not in {"a", "p"} or before is None or before.end != i:
        return False
    return word(toks, i + 1 + (word(toks, i + 1) == ".")) == "m"


def dangles(toks: Toks, i: int, before: Item | None) -> bool:
    """Whether a word that must belong to the number before it was left over."""
    behind = word(toks, i) in DANGLING and before is not None and before.end == i
    return behind and not is_past_length(toks, i)


def is_of_number_before(toks: Toks, i: int, before: Item | None, index: Mapping[str, str] | None) -> bool:
    """Whether a "thousand" here goes on with the number before it; the "a" between may be that of 12A.

    But only where the unit has a 12 as well: else nobody knows which letter was left out.
    """
    label = before.label or "" if before is not None and before.role == "bed" and before.end == i else ""
    bed = len(word(toks, i - 1)) == 1 and index is not None and label[:-1] in index
    bed |= bool(label) and is_own_scale(toks, i)
    return word(toks, i) in {"hundred", "thousand"} and starts_number(toks, i - 1) and not bed


def is_past_length(toks: Toks, i: int) -> bool:
    """ "trend 9 past 6h", "clamped x 4h": the word before a length of time, and no minutes past an hour."""
    return word(toks, i) in {"past", "x"} and length(toks, i + 1)[1] is not None


def is_tainted(toks: Toks, i: int, before: Item | None) -> bool:
    """Whether a sign or an unknown word is glued before the number: "%50", "N64"."""
    stuck = before is not None and before.value == "word" and before.end == i and toks[i].glued
    letter = word(toks, i - 1)
    stray = toks[i].glued and len(letter) == 1 and letter.isalpha() and letter not in GLUED_BEFORE
    return letter == "%" or stuck or stray


def is_adverb(toks: Toks, start: int, end: int) -> bool:
    """ "he left at the same time", "right at the top": a side is followed by its value, hesitation aside."""
    if word(toks, start) == "left" and word(toks, start - 1) in LEAVERS:
        gone = word(toks, start - 2) in {"before", "when", "after", "until", "once"}  # "before he left 720"
        return gone or not number_follows(toks, end) or word(toks, end) == "at"  # "when she left at 1"
    if word(toks, start) == "right" and word(toks, start - 1) in DENIALS and word(toks, end) in ENDS:
        return True  # "1050 is not right"
    if word(toks, end) in LIMBS or _is_therapist(toks, start, end):
        return True
    if end - start > 1 or word(toks, end) != "at":
        return False
    end += 1
    while word(toks, end) in HESITATION:
        end += 1
    return not starts_number(toks, end)


def _is_therapist(toks: Toks, start: int, end: int) -> bool:
    """ "RT is giving him a neb", "trach care done by RT"; "rt is 340" is of the right."""
    does = word(toks, end) in OF_RT and not number_follows(toks, end + 1)
    by = word(toks, start - 1) in {"by", "per"} and not number_follows(toks, end)
    return word(toks, start) == "rt" and (does or by)


def is_written_clock(toks: Toks, i: int) -> bool:
    """ "01:00", "13:45": hour and minutes of two digits each, nothing between them and the colon."""
    both = is_digits(toks, i) and is_digits(toks, i + 2) and word(toks, i + 1) == ":"
    whole = both and glued(toks, i + 1) and glued(toks, i + 2)
    return whole and len(word(toks, i)) == len(word(toks, i + 2)) == len("00")


def phrases_in(pattern: re.Pattern[str], toks: Toks) -> Iterator[tuple[int, int]]:
    """Where each match of a pattern over the words, a blank between them, begins and ends."""
    text = " ".join(toks.said[: len(toks)])
    for match in pattern.finditer(text):
        start, last = (text[:place].count(" ") for place in match.span())
        yield start, last + 1
