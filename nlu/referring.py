"""Cues of what refers to another moment, person or amount, and is no line of now.

"same as at six", "no output since", "on water seal since 2000, 240 at 2200", "per CT surg", "about 30/hr".
Part of `narrated`, which calls these before any other rule.
"""

from __future__ import annotations

from collections.abc import Iterator

from .clock import clocks
from .goings import Rule, past
from .numbers import Toks, is_digits, numbers, starts_number, word
from .oldones import Message
from .patterns.asides import STAFF
from .patterns.leads import BED_WORDS
from .patterns.levels import MILLILITRES
from .patterns.narrated import WHOSE
from .pipeline import Cue

ENDS = frozenset({"", ",", ".", ";", "!", "and", ")"})
STATES = frozenset({"waterseal", "suction", "seal"})
TEAMS = frozenset({"ct", "cts", "thoracic", "cardiothoracic", "cardiac", "trauma"})
SURGEONS = frozenset({"surg", "surgery", "surgeon", "surgeons", "team", "fellow", "pa", "np", "attending"})
BY = frozenset({"per", "by", "with", "via"})
MOVING = frozenset({"moved", "moving", "shifted", "turned", "lowered", "raised"})
WHEN = frozenset({"when", "while", "as", "after", "whilst"})
HOURS = frozenset({"hr", "hour", "h", "hrs", "hourly"})
ABOUT = frozenset({"about", "approx", "roughly", "around", "so", "thats", "that's", "averaging", "avg", "is"})
ABOUT |= {"~", "running", "at", "now"}
CAME = frozenset({"came", "drained", "ran", "poured"})
ACROSS = frozenset({"over", "through", "across", "down"})
PLACES = frozenset({"icu", "itu", "hdu", "theatre", "ed", "er", "recovery", "pacu", "cvicu", "sicu", "ccu"})
AT = frozenset({"at", "@", ":", "pm", "am"})
HERE = frozenset({"ward", "us", "here", "floor", "unit"})
RUNNING = frozenset({"draining", "running", "flowing", "swinging", "bubbling"})
HOW = frozenset({"continuous", "constant", "intermittent", "persistent"})
WINGS = frozenset({"north", "south", "east", "west", "tower"})
FITTINGS = frozenset({"port", "connector", "connection", "adaptor", "adapter", "canister", "box", "bottle"})
FITTINGS |= {"chamber", "unit", "socket", "regulator", "wall", "y", "clamp"}
UNDER = frozenset({"under", "underneath", "beneath", "behind", "around", "between"})
TUBES = frozenset({"chest", "tube", "drain", "ct", "icd", "icc", "tubes", "drains", "any", "further"})
OF_LINES = frozenset(
    {"canister", "box", "bottle", "chamber", "tube", "drain", "ct"}
    | {"line", "level", "mark", "output", "drainage", "volume", "suction", "leak", "big", "more"}
)
DRY = frozenset(
    {"was", "is", "a", "bit", "dry", "low", "so", "i", "we", "and", "then", "has", "chamber", "'s", "it"}
)
DRY |= {"had", "evaporated", "got", "just", "been", "down"}
FILLED = frozenset({"filled", "refilled", "topped"})
LARGEST = 7
"""Columns of a leak meter at most. Common practice, no source."""
SCALES = frozenset({"7", "5", "4", "seven", "five", "four"})


def _same_as_at(said: Message) -> Iterator[Cue]:
    """ "the same as at six": since when, and not when."""
    toks = said.toks
    for cue in said.cues:
        end = cue.end + (word(toks, cue.end) == "as")
        as_at = cue.label == "same" and word(toks, end - 1) == "as" and word(toks, end) == "at"
        if as_at and starts_number(toks, end + 1):
            yield cue._replace(value="", end=end + 1)


def _same_as_then(said: Message) -> Iterator[Cue]:
    """ "3 120, same as 0600": behind its line, how it was at another time."""
    toks = said.toks
    for cue in said.cues:
        behind = word(toks, cue.start - 1) == "," and is_digits(toks, cue.start - 2)
        if cue.label == "same" and word(toks, cue.end - 1) == "as" and behind:
            ends = [end for end, clock in clocks(toks, cue.end) if clock.sure or clock.style == "24"]
            if ends and word(toks, max(ends)) in ENDS and not starts_number(toks, max(ends) + 1):
                yield Cue("filler", "", cue.start, max(ends))


def _since_then(said: Message) -> Iterator[Cue]:
    """ "stopped swinging at 0500, no output since": since what was told before, up to now."""
    toks = said.toks
    for cue in said.cues:
        end = cue.end + (word(toks, cue.end) == "since")
        ends = word(toks, end - 1) == "since" and word(toks, end) in ENDS
        if cue.label == "same" and not cue.value and ends:
            yield cue._replace(value="since", end=end)


def _in_a_state_since(said: Message) -> Iterator[Cue]:
    """ "on water seal since 2000, no leak, 240 at 2200": how long it has been so, beside a line."""
    toks = said.toks
    for cue in said.cues:
        ends = [end for end, _ in clocks(toks, cue.end + 1)] if word(toks, cue.end) == "since" else []
        end = max(ends, default=0)
        timed = any(word(toks, k) in {"at", "@"} and clocks(toks, k + 1) for k in range(end, len(toks)))
        if end and cue.label in STATES and timed and word(toks, end) not in {"at", "@"}:
            yield Cue("filler", "", cue.end, end)


def _per_surgeons(said: Message) -> Iterator[Cue]:
    """ "clamped per CT surg at 1400": who said so, and no chest tube."""
    toks = said.toks
    for k in range(1, len(toks) - 1):
        who = word(toks, k) in TEAMS and word(toks, k + 1) in SURGEONS and word(toks, k - 1) in BY
        other = (c for c in said.cues if c.start < k + 2 and c.end > k and c.label != "tubeword")
        if who and not any(other):
            yield Cue("word", "surgeon", k, k + 2)


def _moved_the_bed(said: Message) -> Iterator[Cue]:
    """ "tipped over when the porter moved the bed at 1425": how it came, and nobody moved to a bed."""
    toks = said.toks
    happened = next((c.end for c in said.cues if c.label == "what"), len(toks))
    for k in range(happened, len(toks) - 2):
        verb = past(toks, k + 1, WHOSE | STAFF | {"we", "i", "they", "was", "were", "being"})
        bed = past(toks, verb + 1, WHOSE)
        moved = word(toks, k) in WHEN and word(toks, verb) in MOVING and word(toks, bed) in BED_WORDS
        if not moved:
            continue
        at = bed + 1 + (word(toks, bed + 1) in {"at", "@"})
        timed = at > bed + 1 or any(c.style == "24" for _, c in clocks(toks, at))
        if timed or word(toks, bed + 1) in ENDS:
            yield Cue("filler", "", k, bed + 1)


def _an_hour(said: Message) -> Iterator[Cue]:
    """ "drain at 555, about 30/hr": how fast it runs, behind the line."""
    toks = said.toks
    for k in range(3, len(toks)):
        ends = [n.end for n in numbers(toks, k)] if starts_number(toks, k) else []
        end = max(ends, default=k)
        end += word(toks, end) in MILLILITRES
        per = word(toks, end) in {"/", "an", "per", "a", "each", "every"} and word(toks, end + 1) in HOURS
        start = k
        while word(toks, start - 1) in ABOUT:
            start -= 1
        told = any(is_digits(toks, j) for j in range(1, start)) or "that's" in toks.said[start:k]
        stop = word(toks, start - 1) in {",", ";", "-", ".", "("} or "that's" in toks.said[start:k]
        if ends and per and told and stop and word(toks, end + 2) in ENDS and start < k:
            yield Cue("filler", "", start, end + 2)


def _came_over(said: Message) -> Iterator[Cue]:
    """ "tubing cleared, 75 came over": how much came, and no line."""
    toks = said.toks
    for k in range(1, len(toks) - 1):
        counted = is_digits(toks, k - 1) or word(toks, k - 1) in MILLILITRES
        if word(toks, k) in CAME and word(toks, k + 1) in ACROSS and counted:
            yield Cue("amount", "", k, k + 2)


def _came_to_us(said: Message) -> Iterator[Cue]:
    """ "bed 16 transferred ICU to ward", "transferred in from 5 west": who came, or who left?"""
    toks = said.toks
    for cue in said.cues:
        start = past(toks, cue.end, frozenset({"in", "over", "up", "down", "here"}))
        number = start + 1 + (word(toks, start + 1) in {"ward", "unit", "level", "the"})
        ends = [n.end for n in numbers(toks, number) if word(toks, n.end) in WINGS]
        if cue.value in {"moved", "left"} and word(toks, start) == "from" and ends:
            yield Cue("word", "transferred", cue.start, cue.end)
            yield Cue("filler", "", start, max(ends) + 1)
            continue
        first = past(toks, cue.end, frozenset({"from"}) | PLACES)
        here = word(toks, first) == "to" and word(toks, past(toks, first + 1, WHOSE)) in HERE
        from_there = word(toks, cue.end - 1) in PLACES or first > cue.end
        if (cue.value == "left" and from_there and here) or _is_sent_from(cue, toks):
            yield Cue("word", "transferred", cue.start, cue.end)


def _is_sent_from(cue: Cue, toks: Toks) -> bool:
    """ "transferred from HDU at 1050", "moved 1050 from ICU"; not "from ICU to bed 3"."""
    words, end = toks.said[cue.start : cue.end], cue.end
    if cue.value not in {"moved", "left"} or words[0] not in {"transferred", "moved"}:
        return False
    if "from" in words:
        return words[-1] in PLACES
    while end < len(toks) and word(toks, end) != "from" and (clocks(toks, end) or word(toks, end) in AT):
        end += 1
    whence = word(toks, end) == "from" and word(toks, end + 1) in PLACES
    return whence and word(toks, end + 2) != "to"


def _runs_again(said: Message) -> Iterator[Cue]:
    """ "tubing kinked under him, sorted, draining again 1450": when it was put right."""
    toks = said.toks
    happened = next((c.end for c in said.cues if c.value == "kinked"), len(toks))
    for k in range(happened, len(toks) - 1):
        again = word(toks, k) in RUNNING and word(toks, k + 1) == "again"
        at = k + 2 + (word(toks, k + 2) in {"at", "@", "by"})
        ends = [end for end, clock in clocks(toks, at) if clock.sure or clock.style == "24"]
        if again and ends and not any(clocks(toks, j) for j in range(happened, k)):
            yield Cue("filler", "", k, max(ends))


def _graded_so(said: Message) -> Iterator[Cue]:
    """ "leak now continuous 5/7", "air leak is continuous five out of seven": how, and how large."""
    toks = said.toks
    for cue in said.cues:
        k = past(toks, cue.end, HOW | {"now", "is", "still"}) if cue.label in {"leak", "leakhow"} else 0
        found = numbers(toks, k) if word(toks, k - 1) in HOW else ()
        graded = [n.end for n in found if 0 < n.value <= LARGEST and n.style == "plain"]
        of = max(graded, default=0)
        of += (word(toks, of) == "out") + (word(toks, of + (word(toks, of) == "out")) in {"of", "/"})
        if graded and of > max(graded) and word(toks, of) in SCALES:
            how = "intermittent" if word(toks, k - 1) == "intermittent" else "continuous"
            if k - 1 > cue.start:
                yield Cue("leak", how, cue.start, k - 1)
            yield Cue("leakgrade", "", k - 1, k)


def _for_a_trial(said: Message) -> Iterator[Cue]:
    """ "clamped at five for a trial": what for."""
    toks = said.toks
    happened = next((c.end for c in said.cues if c.value == "clamped"), len(toks))
    for k in range(happened, len(toks) - 1):
        end = past(toks, k + 1, frozenset({"a", "clamp", "clamping", "the"}))
        if word(toks, k) == "for" and word(toks, end) == "trial" and word(toks, end + 1) in ENDS:
            yield Cue("filler", "", k, end + 1)


def _no_output(said: Message) -> Iterator[Cue]:
    """ "no CT output x3h", "nil chest drain output": nothing came, and nobody asks how much."""
    toks = said.toks
    for k in range(len(toks) - 2):
        end = past(toks, k + 1, TUBES)
        if (
            word(toks, k) in {"no", "nil", "zero"}
            and end > k + 1
            and word(toks, end) in {"output", "drainage"}
        ):
            yield Cue("same", "", k, end + 1)


def _no_such_change(said: Message) -> Iterator[Cue]:
    """ "reconnected, no resp change": how the patient is, and nothing to put right."""
    toks = said.toks
    for k in range(1, len(toks) - 2):
        other = word(toks, k + 1).isalpha() and word(toks, k + 1) not in OF_LINES
        changed = word(toks, k) == "no" and word(toks, k + 2) in {"change", "changes"}
        if changed and other and not starts_number(toks, k + 1) and word(toks, k + 3) in ENDS:
            yield Cue("filler", "", k, k + 3)


def _filled_it(said: Message) -> Iterator[Cue]:
    """ "water seal was dry so I filled it to two centimetres": how deep it is now."""
    toks = said.toks
    for cue in said.cues:
        verb = past(toks, cue.end, DRY)
        to = past(toks, verb + 1, frozenset({"it", "that", "this", "up", "back", "again"}))
        filled = cue.label == "seal" and word(toks, verb) in FILLED and word(toks, to) == "to"
        if filled and verb > cue.end and starts_number(toks, to + 1):
            yield cue._replace(end=to + 1)


def _out_of_a_port(said: Message) -> Iterator[Cue]:
    """ "chest tube pulled out of the suction port", "removed tubing from under the patient": nothing of the
    chest is out."""
    toks = said.toks
    for cue in said.cues:
        of = past(toks, cue.end, frozenset({"out", "tubing", "away"}))
        where = past(toks, of + 1, WHOSE | {"suction", "wall", "y"})
        port = word(toks, of) in {"of", "from"} and word(toks, where) in FITTINGS
        under = word(toks, of) == "from" and word(toks, of + 1) in UNDER
        if cue.value == "removed" and (port or under):
            yield Cue("word", "turned", cue.start, cue.end)


def _back_there(said: Message) -> Iterator[Cue]:
    """ "bed 21 back to HDU 1050": who goes back there has left, and nobody is back here."""
    ends = {c.end: c for c in said.cues if c.value == "back"}
    for cue in said.cues:
        if cue.value == "left" and word(said.toks, cue.start) == "to" and cue.start in ends:
            yield cue._replace(start=ends[cue.start].start)


REFERRING: tuple[tuple[frozenset[str], Rule], ...] = (
    (frozenset({"same"}), _same_as_at),
    (frozenset({"same"}), _same_as_then),
    (frozenset({"since"}), _since_then),
    (frozenset({"since"}), _in_a_state_since),
    (SURGEONS, _per_surgeons),
    (MOVING, _moved_the_bed),
    (HOURS, _an_hour),
    (ACROSS, _came_over),
    (HERE | WINGS | PLACES, _came_to_us),
    (frozenset({"back"}), _back_there),
    (FITTINGS | UNDER, _out_of_a_port),
    (frozenset({"again"}), _runs_again),
    (HOW, _graded_so),
    (frozenset({"trial"}), _for_a_trial),
    (frozenset({"output", "drainage"}), _no_output),
    (frozenset({"change", "changes"}), _no_such_change),
    (FILLED, _filled_it),
)
"""Each rule with the words of which it needs one."""
