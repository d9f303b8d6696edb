"""What an accepted reading would leave unexplained although it could change it: then it is asked.

`leftovers` looks at what stands right beside a number. Here the whole message counts;
what its own clause alone tells is found in `inclause`. Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .asking import ASKED_ABOUT, ASKING, AUXILIARY, asking, doubted
from .clauses import NUMBERS, clauses, happens, is_strange
from .items import Item, is_now
from .numbers import Toks, glued, is_digits, word
from .patterns.asides import DONE_TO, STAFF
from .rules import Rule
from .unset import MOST_OF_HOUR
from .weighty import is_closing

LOOKS = frozenset({"look", "peek", "glance"})
"""With somebody of the staff before it, when that was is not when the line was read."""
DRAWN = frozenset({"drawn", "drew", "took", "taken", "done", "seen", "charted", "logged"})
IT = frozenset({"it", "that", "this", "at", "@", "about", "around"})
DETERMINERS = frozenset({"my", "the", "that", "this", "your", "her", "his"})
HAPPENED = frozenset({"happen", "happened", "true", "right", "real", "accurate", "corrected", "mine", "ours"})
LOOSE = frozenset({"out", "new", "opens", "old"})
"""These tell something of a drain beside its own words only."""
PAIR = 2
"""Words of what is typed with one space: 9 14, 1 340."""
HOUR = 2
"""Digits of an hour."""


def _elsewhere(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "done with 12, going home": the bed was told of something that was not understood."""
    parts = list(clauses(items))
    for clause in parts:
        if not any(is_closing(i) for i in clause) or any(i.role == "bed" for i in clause):
            continue
        of_bed = next((c for c in parts if any(i.role == "bed" for i in c)), ())
        told = any(i.role == "level" or is_closing(i) for i in of_bed)
        if not told and any(is_strange(i, toks) for i in of_bed):
            yield "the event may be of somebody else"


def _taken_back(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "bed 12 mark 1800 didn't happen", "12 tipped, not true": what is told is denied behind it."""
    for before, item in pairwise(i for i in items if i.value != "bed"):
        denied = before.role == "cue" and before.value == "neg"
        if denied and item.role == "bed":
            bare = [i for i in items if i.role == "level" and i.label is not None and not i.lead]
            yield from ("the bed is denied, and the number may be the right one" for _ in bare)
        if denied and item.role == "cue" and (item.name in HAPPENED or item.value == "yes"):
            yield from ("what was told is denied" for i in items if i.role in NUMBERS or happens(i))


def _moved_line(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "move bed 6's 1800 line to bed 7", "move my 0300 from 5 to 6": a line goes there, and no patient."""
    moved = any(i.role == "cue" and i.value == "kind" and i.name == "moved" for i in items)
    for item, after in pairwise(items):
        if moved and item.role == "cue" and item.value == "level" and after.role in {"bed", "cue"}:
            yield "a line is moved, and nobody"
        event = item.role == "cue" and item.name == "moved"
        if event and after.role == "time" and word(toks, after.start - 1) in DETERMINERS:
            yield "a line is moved, and nobody"


def _ranges(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "beds 2 to 4 no leak": several beds, and no move."""
    moved = any(i.role == "cue" and i.value == "kind" for i in items)
    ranged = "beds" in toks.words and not moved
    yield from ("a range of beds" for i in items if ranged and i.role == "bed" and i.link == "to")


def _spaced(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "2 9 14 all same", "1 20 2 30": several beds, and no time."""
    for item in items:
        spaced = item.role == "time" and item.end - item.start == PAIR and toks[item.start].is_digits
        bare = spaced and toks[item.end - 1].is_digits and not (item.at or item.lead)
        led = word(toks, item.end - 1).startswith("0")  # "7 05"
        if bare and not (item.sure_time or led):
            yield "the numbers may be two beds, or a bed and its line"


def _apart(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 2 1 tube": bed 21, or the first tube of bed 2?"""
    for item in items:
        digits = item.role == "bed" and item.end - item.start == PAIR and toks[item.end - 1].is_digits
        if digits and toks[item.start].is_digits and not glued(toks, item.end - 1):
            yield "two digits of a bed, or two numbers"


def _mended_bed(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "21 at 640, i mean bed 22": the number before may be the bed that was said wrongly."""
    mended = next((k for k, i in enumerate(items) if i.role == "repair"), len(items))
    bed_behind = any(i.role == "bed" for i in items[mended:])
    if bed_behind and not any(i.role == "bed" for i in items[:mended]):
        bare = [i for i in items[:mended] if i.role == "level" and i.label is not None and not i.lead]
        yield from ("the number may be the bed that was mended" for _ in bare)


def _summed(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "6 total 7-7": behind the word for a sum stands no bed, where a bare number may be the bed."""
    led = any(i.role == "bed" and i.lead == "output" for i in items)
    yield from ("the bare number may be the bed" for i in items if led and i.role == "level" and not i.lead)


def _timed_apart(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "line 840, dr rounded at 1400", "840, turned 0600": the time may be of what was done then."""
    lined = any(i.role in NUMBERS for i in items) or sum(i.role == "time" for i in items) > 1
    for clause in list(clauses(items))[1:]:
        times = [i for i in clause if i.role == "time" and i.lead not in {"since", "timeword"}]
        times = [i for i in times if lined or not is_now(i)]  # "was kinked, sorted now"
        own = [i for i in clause if not _is_of_a_word(i, clause, toks)]
        told = any(i.role in {"bed", "tube", "check", *NUMBERS} or _is_fact(i) for i in own)
        if not times or told:
            continue
        strange = any(
            is_strange(i, toks) and i.end <= times[0].start and not _is_drawn(i, times[0], toks)
            for i in clause
        )
        looked = not LOOKS.isdisjoint(toks.said[clause[0].start : times[0].start])
        somebody = looked and any(i.unread and i.name in STAFF and i.end <= times[0].start for i in clause)
        if strange or somebody or _said_before(times[0], toks) in DONE_TO:
            yield "the time may be of something else"


def _is_of_a_word(item: Item, clause: tuple[Item, ...], toks: Toks) -> bool:
    """ "antibiotics started at 0910", "new sitter at 0910": whether it tells what another thing did."""
    loose = item.role == "tube" or (item.role == "cue" and item.value in LOOSE)
    beside = (i for i in clause if i.end == item.start or i.start == item.end)
    return loose and any(i is not item and is_strange(i, toks) for i in beside)


def _is_fact(item: Item) -> bool:
    return item.role == "cue" and item.value not in {"word", "filler", "about", "time", "timeword"}


def _is_drawn(verb: Item, time: Item, toks: Toks) -> bool:
    """ "320, drawn 1850", "430, took it 1h ago": of the line."""
    return verb.name in DRAWN and all(word(toks, k) in IT for k in range(verb.end, time.start))


def _keyed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 3 9: 410, 10: 430": what a colon sets apart from the number behind it is an hour or a bed."""
    for before, item, after in zip((None, *items), items, items[1:], strict=False):
        colon = word(toks, item.end) == ":" and glued(toks, item.end) and after.start == item.end + 1
        bare = colon and not (item.lead or item.unit or glued(toks, after.start))
        if bare and item.role == "level" and item.label is not None and after.role == "time":
            yield "a number before a colon is no level"
        if bare and item.role == "bed" and before is not None and before.role == "bed":
            yield "an hour of the bed before it, or a bed"


def _said_before(item: Item, toks: Toks) -> str:
    k = item.start - 1
    while word(toks, k) in {"at", "@", "around", "about"}:
        k -= 1
    return word(toks, k)


def _hours(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "output 15-16 30": a range of hours, and no amount and time."""
    for k in range(1, len(toks) - 1):
        first, sign, last = toks[k - 1], toks[k], toks[k + 1]
        dashed = sign.text == "-" and sign.glued and last.glued and first.is_digits and last.is_digits
        dashed = dashed and "-" not in {word(toks, k - 2), word(toks, k + 2)}  # "2026-03-04"
        if dashed and len(first.text) == len(last.text) == HOUR and int(last.text) == int(first.text) + 1:
            yield from ("a range of hours" for i in items if i.role in NUMBERS)


def _emptied(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "emptied the drain bag, 340": what was in it, or the line now?"""
    said = [i for i in items if i.role != "sep"]
    for verb, box, level in zip(said, said[1:], said[2:], strict=False):
        emptied = verb.name == "emptied" and box.role == "cue" and box.value in {"canister", "tubeword"}
        emptied &= all(word(toks, k) in DETERMINERS for k in range(verb.end, box.start))
        if emptied and level.role == "level" and level.lead in {"", "at"}:
            yield "what was emptied, or the line"


def _headed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "8: 12 605, 17 1160": at eight, or of bed 8?"""
    if len(items) < len(("8:", "12", "605")):
        return
    head, bed, line = items[:3]
    hour = 0 < len(head.digits) <= MOST_OF_HOUR and head.role in {"bed", "num", "level", "time"}
    parted = hour and word(toks, head.end) == ":" and not glued(toks, head.end + 1)
    pair = (bed.start, line.start) == (head.end + 1, bed.end)
    plain = pair and all(i.digits and not i.unit for i in (bed, line))
    listed = sum(i.role == "bed" for i in items) > 1
    if parted and plain and listed and not any(i.role == "time" for i in items[1:]):
        yield "an hour before a list, or a bed"


UNEXPLAINED = (
    Rule(_headed, frozenset({"bed"}), frozenset({":"})),
    Rule(_emptied, frozenset({"level"}), frozenset({"emptied"})),
    Rule(asking, ASKED_ABOUT, ASKING | AUXILIARY),
    Rule(_hours, NUMBERS, frozenset({"-"})),
    Rule(doubted, frozenset({"question"})),
    Rule(_taken_back, frozenset({"neg"})),
    Rule(_moved_line, frozenset({"kind"})),
    Rule(_elsewhere, frozenset({"kind"})),
    Rule(_keyed, frozenset({"bed", "time"}), frozenset({":"})),
    Rule(_timed_apart, frozenset({"sep"})),
    Rule(_summed, frozenset({"bed"})),
    Rule(_ranges, frozenset({"bed"}), frozenset({"beds"})),
    Rule(_mended_bed, frozenset({"repair"})),
)
"""One line for each sign, anywhere in the message, that its numbers and events tell nothing."""


def _nought(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "1000 0 mL": at 10:00 nothing, or a number with its last digit apart."""
    for time, level in pairwise(items):
        bare = time.role == "time" and not (time.at or time.lead) and is_digits(toks, time.start)
        if bare and level.role == "level" and level.digits == "0" and level.start == time.end:
            yield "nothing at that time, or one number in two parts"


def _half(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "leak was 4/7 this am, 2/7 now": a digit behind a slash is no line."""
    leaks = any(i.role == "cue" and i.value in {"leak", "leakgrade"} for i in items)
    for item in items if leaks else ():
        k = item.start
        joined = word(toks, k - 1) == "/" and glued(toks, k - 1) and glued(toks, k)
        single = len(item.digits) == 1 and len(word(toks, k - 2)) == 1 and is_digits(toks, k - 2)
        if item.role == "level" and joined and single and not item.lead:
            yield "half of what a slash joins"


SPACED = (
    Rule(_half, frozenset({"leak", "leakgrade"}), frozenset({"/"})),
    Rule(_nought, frozenset({"level"})),
    Rule(_apart, frozenset({"bed"})),
    Rule(_spaced, frozenset({"time"})),
)
"""Of typed messages only: recognisers write one number in parts."""
