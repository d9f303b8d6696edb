"""Signs that the value of a check stands in a wrong place: the bed before it, an hour, what it was before.

"9 suction at least 20" is of bed 9 and no bed 20; "wall 60 now 90" has no line of 90; "suction on at 7" no
suction of 7. Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .followers import DIALLED
from .items import FINDINGS, Item
from .numbers import Toks, is_digits, starts_number, word
from .rules import Pieces, Rule

CUES = frozenset({"suction", "wall", "seal", "dial", "leakgrade"})
OF_BED = frozenset({"bed", "room", "rm", "in", "on", "for", "of", "bay", "b"})
SUCTIONS = frozenset({"suction", "sxn", "suct"})
READS = frozenset({"now", "at", "reads", "reading", "then", "showing", "shows", "gauge", "currently", ","})
MOST = 200
"""A line under this may be the value of a wall or a dial instead."""
HOURS = 12
LINE_DIGITS = 3
ROUND = frozenset({5, 10})
"""Suctions that are set, and hours as well."""
SEALS = 3
"""cm: a seal over this is rather an hour."""
GRADES = 5
"""A grade over this is rather an hour."""
SHORT = frozenset({"low", "short", "under", "below", "less", "too", "high", "over"})
DENIED = frozenset({"not", "longer", "isn't", "isnt", "wasn't", "wasnt", "never"})
LIGHT = frozenset({"on", "to", "at", "in", "a", "the", "water", "straight", "gravity", "seal"})
TURNED = frozenset({"set", "turned", "dialed", "dialled", "adjusted", "titrated", "reset"})


def _bed_before(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "9 suction at least 20", "9 wall clock 7": the first number is the bed, and what is behind is none."""
    numbers = [i for i in items if i.role in {"bed", "check", "level", "num", "time"}]
    first = numbers[0] if numbers else None
    if first is None or first.start or first.label is None or not first.known or first.unit:
        return
    if first.role != "check" and not (first.role == "level" and word(toks, first.end) in CUES):
        return
    beds = [i for i in numbers if i.role == "bed"]
    led = first.role == "level" and any(i.lead == "bed" for i in beds)  # "9 suction a 20 b 10"
    bare = [i for i in beds if i.lead != "bed" and word(toks, i.start - 1) not in OF_BED]
    if led or (first.role == "check" and bare):
        yield "either number may be the bed"


def _line_of_check(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "wall 60 now 90", "suction 20 at 80", "set 20 reads 10": what it is now, and no line."""
    said = [i for i in items if i.role not in {"sep", "time", "tube"} and i.value not in {"level", "levelat"}]
    for before, item in pairwise(said):
        bare = item.role == "level" and item.lead in {"", "at", "levelat", "level"} and not item.unit
        tubes = [i.start for i in items if i.role == "tube"]  # "suction left 20 right 10"
        aside = any(before.end <= k < item.start for k in tubes) and any(k < before.start for k in tubes)
        small = item.amount is not None and item.amount <= MOST and before.name in {"suction", "wall"}
        between = toks.said[before.end : item.start]
        moved = before.role == "check" and bool({"now", "reads", "reading", "then"} & set(between))
        if bare and before.role == "check" and (small or moved) and (aside or READS.issuperset(between)):
            yield "what the check is now, or a line"


def _behind_values(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "90 wall 20 suction": each value is before its word."""
    for before, cue, item in zip(items, items[1:], items[2:], strict=False):
        led = before.role == "level" and cue.role == "cue" and cue.value in CUES
        close = led and before.end == cue.start and cue.end == item.start and item.role == "check"
        own = word(toks, item.end) in CUES and not starts_number(toks, item.end + 1)
        if close and own and before.start > 0:
            yield "which value is of which check"


def _from_what(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "suction up from 20", "suction <20": what it was before, or over and under which it is."""
    for item in items:
        if (
            item.role == "check"
            and word(toks, item.start - 1) in {"<", ">"}
            and word(toks, item.start - 2) not in {"-", "="}
        ):
            yield "under or over which value"
        if item.role == "check" and word(toks, item.start - 1) == "from" and item.name != "leakgrade":
            yield "what the check was before"


def _at_hour(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "suction on at 7", "seal at 7", "wall at 7": an hour; "suction at 10" is a value."""
    for item in items:
        at = item.role == "check" and word(toks, item.start - 1) == "at" and not item.unit and item.amount
        if not at or (item.amount or 0) > HOURS:
            continue
        odd = {"suction": item.amount not in ROUND, "seal": (item.amount or 0) > SEALS, "wall": True}
        odd["leakgrade"] = (item.amount or 0) > GRADES
        if odd.get(item.name, False):
            yield "a value, or the hour"


def _short_of(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "seal 2 cm low", "seal low by 1": how much it is short, and not where it stands."""
    for item in items:
        if item.role == "check" and item.name == "seal":
            k = item.end + (word(toks, item.end) in {"cm", "cms"})
            if word(toks, k) in SHORT or word(toks, item.start - 1) == "by":
                yield "how much the seal is short"


def _denied(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "not gravity", "no longer gravity", "not on water seal": on suction, and not the opposite."""
    for item in items:
        k = item.start - 1
        while word(toks, k) in LIGHT:
            k -= 1
        seal = item.value == "waterseal" and "suction" not in toks.said[item.start : item.end]
        if seal and word(toks, k) in DENIED and "no suction" not in " ".join(toks.said[k : item.end]):
            yield "the seal is denied"


def _was_on(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "5 off suction now, was 20", "on water seal, was on 20": what its suction was, and no line."""
    sealed = next((i.end for i in items if i.value == "waterseal"), 0)
    for item in items:
        bare = item.role == "level" and not item.unit and item.amount in DIALLED
        k = item.start - 1 - (word(toks, item.start - 1) in {"on", "at"})
        if bare and 0 < sealed < item.start and word(toks, k) == "was":
            yield "what the suction was before, or a line"


def _other_tube(items: Pieces, _: Toks) -> Iterator[str]:
    """ "right suction left water seal": each tube has its own setting."""
    for before, cue, tube, item in zip(items, items[1:], items[2:], items[3:], strict=False):
        sides = before.role == tube.role == "tube" and before.name != tube.name
        if sides and {cue.value, item.value} == {"suction", "waterseal"}:
            yield "which tube is on suction"


def _no_order(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "no suction order": nothing was ordered, or no suction was."""
    for before, item in pairwise(items):
        none = before.value == "waterseal" and word(toks, before.start) == "no"
        if none and item.value == "order" and before.end == item.start:
            yield "no order, or an order of none"


def _set_to(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "set to 20", "set at 20": a setting, and no bed or line."""
    for item in items:
        k = item.start - 1 - (word(toks, item.start - 1) in {"to", "at"})
        set_so = k < item.start - 1 and word(toks, k) in TURNED
        if set_so and item.role in {"bed", "level"} and not item.unit:
            yield "what was set"


def _of_before(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "suction 20 earlier", "suctioned 20", "suction 20 same": of before, of the patient, or unchanged."""
    for before, item in zip((None, *items), items, strict=False):
        if item.role == "check" and word(toks, item.end) in {"earlier", "previously"}:
            yield "a check of before"
        if item.role == "check" and "suctioned" in toks.said[max(0, item.start - 2) : item.start]:
            yield "the patient was suctioned"
        same = item.role == "cue" and item.value == "same" and word(toks, item.start) in {"same", "unchanged"}
        if same and before is not None and before.role == "check":
            yield "what is the same"


def _was_set(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "wall 90 on bed 14, was 80", "leak grade 3 on 14, was 2 earlier": what it was before."""
    checks = [i.start for i in items if i.role == "check"]
    lined = any(i.role == "cue" and i.value in {"level", "levelat"} for i in items)
    for item in items if not lined else ():
        k = item.start - 1 - (word(toks, item.start - 1) in {"at", "only"})
        bare = item.role in {"bed", "level"} and not item.unit and word(toks, k) in {"was", "were"}
        if bare and checks and min(checks) < item.start and (item.amount or 0) <= MOST:
            yield "what it was before"


def _off_and_on(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "suction off then on", "suction off on": how it is at the end."""
    for item in items:
        if item.value == "what" and item.name == "suction_off":
            k = item.end + (word(toks, item.end) in {"then", "and", ",", "&", "/"})
            k += word(toks, k) in {"now", "then"}
            on = word(toks, k + (word(toks, k) == "back")) == "on"
            told = any(i.name == "suction_on" for i in items)
            timed = any(i.role == "check" and i.start == k + 3 and _is_time_behind(i, items) for i in items)
            if on and timed and word(toks, k + 2) == "at":  # "tubing off, back on at 20 now"
                yield "which of the two the time is of"
            if on and not told and not (starts_number(toks, k + 1) or word(toks, k + 1) in OF_BED):
                yield "how the suction is at the end"


def _is_time_behind(check: Item, items: Pieces) -> bool:
    return any(i.role == "time" and i.start == check.end for i in items)


def _grade_of_a_day(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "leak's a 3 tonight", "seal 2 cm, 3 this am": how large it is or was, and no hour."""
    said = [i for i in items if i.role != "sep" and i.value != "filler"]
    for leak, time in pairwise(said):
        was = word(toks, time.start - 1 - (word(toks, time.start - 1) == "a")) == "was"
        small = len(word(toks, time.start)) <= 1 + was and is_digits(toks, time.start)
        checked = leak.value == "leak" or leak.role == "check"
        if checked and time.role == "time" and small and word(toks, time.start + 1) in DAYTIMES:
            yield "how large the leak is, or when"


def _line_or_when(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "suction 20, 415 this am", "no leak, 415 this morning": behind a stop a line, or when."""
    lined = any(i.role in {"level", "volume"} for i in items)
    for found, stop, time in zip(items, items[1:], items[2:], strict=False):
        bare = word(toks, time.start).isdecimal() and word(toks, time.start + 1) in DAYTIMES
        three = time.role == "time" and bare and len(word(toks, time.start)) == LINE_DIGITS
        checked = found.role == "check" or found.value in FINDINGS
        if three and not time.at and stop.role == "sep" and checked and not lined:
            yield "a line, or when"


def _of_next_bed(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "9 leak, 10 none", "no leak in 9 leak in 10", "9 to seal 10 to suction": the next bed."""
    for item in items:
        if item.role != "check" or item.unit or item.name not in LARGEST:
            continue
        large = (item.amount or 0) > LARGEST[item.name] and word(toks, item.end) not in {"cm", "cms"}
        said = word(toks, item.start - 1) in {"at", "is", "reads", "reading", "gauge"}  # "wall set at 100"
        ordered = item.name in {"wall", "seal"} and any(
            i.value == "order" and i.end < item.end for i in items if not said
        )
        if (large and item.name != "wall") or word(toks, item.start - 1) == "in" or ordered:
            yield "a value, or the next bed"


def _too_much(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "canister on 80 suction": more than any dial shows, and no line."""
    for item in items:
        if item.role == "level" and item.lead == "suction" and word(toks, item.end) in SUCTIONS:
            yield "what the suction is set to, or a line"


def _dialled(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "still at 20, wall 95": what the dial is at, or the line?"""
    for item, stop, wall, value in zip(items, items[1:], items[2:], items[3:], strict=False):
        beside = stop.role == "sep" and wall.role == "cue" and wall.value == "wall" and value.role == "check"
        bare = item.role == "level" and item.lead in {"at", "levelat"} and not item.unit
        if beside and bare and item.amount in DIALLED and word(toks, item.start - 1) in {"at", "on"}:
            yield "what the suction is at, or the line"


DAYTIMES = frozenset({"tonight", "today", "this", "overnight", "last"})
LARGEST = {"leakgrade": 7, "seal": 5, "wall": 0}
"""The largest grade of a leak, and cm of a seal, that is seen."""
CHECKED = frozenset({"check"})
SET_BEFORE = (
    Rule(_bed_before, CHECKED),
    Rule(_of_next_bed, CHECKED),
    Rule(_line_of_check, CHECKED),
    Rule(_dialled, CHECKED, frozenset({"at", "on"})),
    Rule(_too_much, frozenset({"level"}), SUCTIONS),
    Rule(_behind_values, CHECKED),
    Rule(_from_what, CHECKED, frozenset({"from", "<", ">"})),
    Rule(_at_hour, CHECKED, frozenset({"at"})),
    Rule(_short_of, CHECKED, SHORT | {"by"}),
    Rule(_was_on, frozenset({"waterseal"}), frozenset({"was"})),
    Rule(_denied, frozenset({"waterseal"}), DENIED),
    Rule(_other_tube, frozenset({"waterseal"})),
    Rule(_no_order, frozenset({"waterseal"}), frozenset({"order", "orders"})),
    Rule(_set_to, frozenset({"bed", "level"}), TURNED),
    Rule(_of_before, CHECKED, frozenset({"earlier", "previously", "suctioned", "same", "unchanged"})),
    Rule(_grade_of_a_day, CHECKED | {"leak"}, DAYTIMES),
    Rule(_line_or_when, CHECKED | FINDINGS, DAYTIMES),
    Rule(_was_set, CHECKED, frozenset({"was", "were"})),
    Rule(_off_and_on, frozenset({"what"}), frozenset({"on"})),
)
