"""Signs that a bed, an hour or a tube was read as the level beside it, or the other way about.

On a ward of beds 201 to 230 the 215 of "201 215 640" is a bed as well as a level; where the beds are CT1 and
CT2 the "ct 2" of "ct1 ct 2 640" is a bed and no tube. Called by `leftovers` through `mixups`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .clauses import NUMBERS, clauses
from .followers import DIALLED
from .items import EVENTS, FINDINGS, FULL_HOUR, Item, is_bare
from .numbers import Toks, glued, is_digits, word
from .rules import Rule

HOURS = 24
LINES = frozenset({"level", "levelat"})
HAPPENED = EVENTS | {"canister", "tubeword"}
HALF_DAY = 12
ENDS = frozenset({".", ";", "\n"})
HOLDS = frozenset({"has", "is", "at", "@", "reads", "now", "had", "was", "mark", "line", "level"})
""" "23 has 430", "23 is at 430": what stands between a bed and its line."""
HALF_HOUR = 30
BESIDE = frozenset({"beside", "near", "by", "opposite", "behind"})
ACROSS = frozenset({("next", "to"), ("next", "bed"), ("across", "from"), ("close", "to")})
BED_WORDS = frozenset({"bed", "room", "rm", "the", "from"})
MOVES = frozenset({"to", "in", "into", "moved"})
TOTALS = frozenset({"total", "tot", "sum", "totals", "totalling", "altogether"})


def _small_level(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "201 215 640", "CT1-4 640", "12 10 at 640": the second is a bed or an hour, and no level."""
    beds = {i.label for i in items if i.role == "bed"}
    for bed, level, time in zip(items, items[1:], items[2:], strict=False):
        if (bed.role, level.role, time.role) != ("bed", "level", "time"):
            continue
        small = (level.label is not None and level.label not in beds) or (level.amount or 0) <= HOURS
        bare = is_bare(level) and level.lead != "levelat" and small
        short = time.at and level.label is not None and len(time.digits) == FULL_HOUR - 1
        loose = time.amount is not None and (time.loose_time or short)
        if bare and loose and time.start - (time.at and word(toks, level.end) == "at") == level.end:
            yield "a bed or an hour, and no level"


def _twice(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "12 12 640", "12: 12 640": the bed said again, or a time or a tube?"""
    for first, again in pairwise(i for i in items if i.role != "sep"):
        said = word(toks, first.start)
        bare = first.role in {"bed", "cue"} and said.isdecimal() and again.role == "bed" and not again.lead
        if bare and word(toks, again.start) == said and again.start <= first.end + 1:
            yield "a number said twice"


def _named_again(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "14 1745 at 1858, 14 tipped at 1800", "5 870 at 1850, 14 clamped": a bed, and no line of 14 mL."""
    beds = {i.label for i in items if i.role == "bed"}
    first = next((i.start for i in items if i.role == "level"), len(toks))
    for stop, level, told in zip(items, items[1:], items[2:], strict=False):
        bare = level.role == "level" and is_bare(level) and not level.lead and first < level.start
        again = level.label in beds and told.role in {"cue", "tube"} and told.value not in LINES
        other = level.label is not None and told.value in HAPPENED and told.start == level.end
        other &= told.name != "suction_on" or level.amount not in DIALLED  # "20 back on suction"
        if bare and stop.role == "sep" and (again or other):
            yield "a bed named again, and no level"


def _opens_a_sentence(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "tube out 11:20. 23 has 430ml at 15:00": bed 23 and its line, and no line of 23 mL behind its time."""
    for stop, level, line in zip(items, items[1:], items[2:], strict=False):
        opens = stop.role == "sep" and stop.value in ENDS and level.start == stop.end
        small = level.role == "level" and level.label is not None and is_bare(level) and not level.lead
        told = line.role == "level" and set(toks.said[level.end : line.start]) <= HOLDS
        if opens and small and told and (line.start > level.end or line.unit):
            yield "the bed of a new sentence, and no level"


def _bed_and_line(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """Dictated "6 25 at 1400. 2 back from CT": bed 6 and its line, before the bed of what is told next."""
    first = next((i for i in items if i.role not in {"cue", "sep"}), None)
    if first is None or first.role != "level" or first.unit or first.lead:
        return
    apart = first.end - first.start == 2 and not glued(toks, first.start + 1)
    digits = apart and is_digits(toks, first.start) and is_digits(toks, first.start + 1)
    stops = [i.start for i in items if i.role == "sep"]
    if digits and any(i.role == "bed" and stops and i.start > stops[0] for i in items):
        yield "a bed and its line, or a line of the next bed"


def _moved_when(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 10 to bed 12 640", "10 into 12": when the patient moved, or a line there?"""
    beds = [i for i in items if i.role == "bed"]
    for before, item in pairwise(items):
        loose = item.role == "time" and item.loose_time and item.amount is not None
        moved = (
            len(beds) > 1
            and before == beds[-1]
            and not MOVES.isdisjoint(toks.said[beds[0].end : before.start + 1])
        )
        into = {before.role, item.role} == {"bed", "level"} and word(toks, item.start - 1) == "into"
        if (loose and moved and item.start == before.end) or into:
            yield "when someone moved, or a line"


def _was_a_bed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 10 was 12": its line was 12, or it was bed 12?"""
    for bed, item in pairwise(items):
        bare = bed.role == "bed" and item.role == "level" and item.label is not None and not item.unit
        if bare and item.known and toks.said[bed.end : item.start] == ("was",) and item.end == len(toks):
            yield "the bed that it was, or its line"


def _named_alike(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "ct one moved to ct two": both are beds by such a name, and the one is no tube of the other."""
    tubes = any(i.role == "tube" and word(toks, i.start) == "ct" for i in items)
    for item in items if tubes else ():
        if item.role == "bed" and word(toks, item.start - 1) == "ct":
            yield "a bed by its letters, or what they stand for"


def _half_a_label(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "CT1 to CT2 640", "CT1 ct 2 640": the bed CT2, and no scan and no tube beside a line."""
    letters = {
        text for i in items if i.role == "bed" for text in toks.said[i.start : i.end] if text.isalpha()
    }
    for item, after in pairwise((*items, None)):
        if item is None:
            continue
        tube = item.role == "tube" and word(toks, item.start) in letters and item.name.isdecimal()
        place = item.role == "cue" and item.value == "kind" and word(toks, item.end - 1) in letters
        number = after is not None and after.start == item.end and after.role in NUMBERS
        if tube or (
            place and number and is_digits(toks, item.end) and len(word(toks, item.end)) < FULL_HOUR - 1
        ):
            yield "a bed by its letters, or what they stand for"


def _no_number(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "CT1 no 2 640": the second tube, and not the answer no with 2640 behind it."""
    bed = any(i.role == "bed" for i in items)
    for no, number in pairwise(items):
        split = (
            number.end - number.start > 1
            and is_digits(toks, number.start)
            and is_digits(toks, number.end - 1)
        )
        if bed and no.role == "cue" and no.value == "no" and number.role in NUMBERS | {"num"} and split:
            yield "the number of a tube, or a level"


def _to_each(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "9 each 320": of each tube, though none was named."""
    one = sum(i.role == "bed" for i in items) == 1 and sum(i.role == "tube" for i in items) < 2
    for item in items if one else ():
        if item.role in NUMBERS and "each" in {word(toks, item.start - 1), word(toks, item.end)}:
            yield "a number of each tube"


def _beside_a_bed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "next to 9, 640", "bed by 9 640": another bed than the one that is named."""
    for item in items:
        k = item.start
        while word(toks, k - 1) in BED_WORDS and toks.said[k - 2 : k] not in ACROSS:
            k -= 1
        near = word(toks, k - 1) in BESIDE or toks.said[max(0, k - 2) : k] in ACROSS
        if item.role == "bed" and near and any(i.role in NUMBERS for i in items):
            yield "a bed beside the one that is named"


def _hour_or_bed(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "12 0400 300, 5 330, 6 360": the hours of a list, and no beds five and six."""
    parts = [part for part in clauses(items, frozenset({",", ";"})) if part]
    for before, part in pairwise(parts):
        timed = next((k for k, i in enumerate(before) if i.role == "time" and not i.at), None)
        first = part[0]
        untimed = first.role == "bed" and not first.lead and not any(i.role == "time" for i in part)
        if timed is None or not untimed or (first.amount or HOURS) > HALF_DAY:
            continue
        hours = {(c.hour + 1) % HALF_DAY for c in before[timed].clocks}
        if any(i.role in NUMBERS for i in before[timed:]) and (first.amount or 0) % HALF_DAY in hours:
            yield "the hour after the one before, or a bed"


def _hours_as_beds(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "12 4 300, 5 330, 6 360": the hours of a list of bed 12, and no beds four, five and six."""
    beds = [i for i in items if i.role == "bed" and not i.lead]
    for first, hour, following in zip(beds, beds[1:], beds[2:], strict=False):
        hours = hour.amount or 0
        rising = following.amount == hours + 1 and first.amount != hours - 1
        if first.end == hour.start and rising:
            yield "the hours of a list, or beds"


def _whose_next(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "12 0400 300, 14 330, 0600 360": the last line is of the list of 12, or of 14?"""
    parts = [{i.role for i in part} for part in clauses(items, frozenset({",", ";"})) if part]
    for first, other, last in zip(parts, parts[1:], parts[2:], strict=False):
        listed = {"bed", "time", "level"} <= first and {"bed", "level"} <= other and {"time", "level"} <= last
        if listed and "time" not in other and "bed" not in last:
            yield "the line is of either bed"


def _levels_as_times(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "12 1400 200, 1500 210": hours of the day before and their levels, and no levels of 1400 and 1500."""
    if any(i.role == "cue" for i in items):
        return
    pairs = [
        (a, b) for a, b in pairwise(items) if a.role == "level" and b.role == "time" and a.end == b.start
    ]
    hours = [a for a, b in pairs if a.full_clock and is_bare(a) and b.loose_time and b.amount is not None]
    alone = len(hours) == sum(i.role in NUMBERS for i in items)
    if len(hours) > 1 and alone and all((i.amount or 1) % 100 in {0, HALF_HOUR} for i in hours):
        yield "hours and levels the other way about"


def _summed(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "0400 30, 0500 30, 0600 40, total 100": what came in each hour, and no levels."""
    levels = [i.amount or 0 for i in items if i.role == "level"]
    if any(i.role == "tube" for i in items):
        return
    sums = {i.amount for i in items if i.role == "output"}
    if len(levels) > 1 and sum(levels) in sums:
        yield "what came in each hour"


def _before_all(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "both at AE30 bed 22 mark 680 bed 15 mark 270", "12md 12 315, 15 410": it may be of both beds."""
    beds = [i.start for i in items if i.role == "bed"]
    lost = len(beds) > 1 and any(i.role == "bad" and i.end <= beds[0] for i in items)
    yield from ["a number before all beds was not understood"] * lost


def _of_a_ward(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "the fella on ward 3 who lost 900": the number of a ward, and no bed 3."""
    for item in items:
        if item.role == "bed" and word(toks, item.start - 1) in WARDS and not item.lead:
            yield "a ward, and no bed"


def _lettered(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "9 suction a 20 b 10": the tube b behind the tube a, and no bed 10."""
    for item in items:
        before = {word(toks, item.start), word(toks, item.start - 1)}
        plain = item.role == "bed" and item.label == word(toks, item.end - 1) and "b" in before
        if plain and "a" in toks.said[: item.start] and is_digits(toks, toks.said.index("a") + 1):
            yield "a tube by its letter, or a bed"


def _as_well(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "left 200, right as well": as much there, or its line to come?"""
    lined = any(i.role == "level" for i in items)
    for item in items if lined else ():
        side = item.role == "tube" or (item.unread and item.name in {"left", "right"})
        behind = toks.said[item.end : item.end + 2]
        alone = not any(i.role == "level" and i.start > item.end for i in items)
        if side and alone and (behind == ("as", "well") or behind[:1] in TOO):
            yield "what is so of the other tube as well"


TOO = frozenset({("too",), ("also",), ("likewise",), ("ditto",)})
WARDS = frozenset({"ward", "unit", "floor", "wing"})


def _read_as(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "5 is 690, resident read it as 640": a line, and no twenty to seven."""
    for item in items:
        if item.role == "time" and not item.sure_time and toks.said[item.start - 2 : item.start] == IT_AS:
            yield "what it was read as is no time"


def _beside_time(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "4 on gravity, 155 at 0630": behind a finding, right before its time, a bare number is the line."""
    for found, stop, item, time in zip(items, items[1:], items[2:], items[3:], strict=False):
        led = stop.role == "sep" and (found.role == "check" or found.value in FINDINGS)
        bare = (
            item.role == "time" and item.amount is not None and not (item.at or item.lead or item.sure_time)
        )
        if led and bare and time.role == "time" and time.at and time.start == item.end + 1:
            yield "a number right before a time is no time"


def _for_this(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "for 910 read 870": what was wrong, and what is right; no line of ten past nine."""
    for wrong, right in pairwise(i for i in items if i.role not in {"sep", "cue"}):
        read = right.start == wrong.end + 1 and word(toks, wrong.end) == "read"
        if read and word(toks, wrong.start - 1) == "for" and wrong.role in {"time", "level"}:
            yield "a number for which another is to be read"


def _put_same(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "kindly put same in bed 8": the entry, and not that nothing came."""
    for item in items:
        if item.value == "same" and word(toks, item.start - 1) in PUT:
            yield "the same entry, or the same line"


PUT = frozenset({"put", "enter", "chart", "record", "log", "add", "write", "place"})


def _of_both(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "8 640 no leak, 10 220 small leak, both 1600": when both were read, and no line of the second."""
    several = sum(i.role == "bed" for i in items) > 1
    for item in items if several else ():
        all_of = word(toks, item.start - 1) in OF_ALL or word(toks, item.start - 2) in OF_ALL
        if item.role == "level" and all_of and item.full_clock and not item.unit:
            yield "a number of both is when they were read"


OF_ALL = frozenset({"both", "all"})
IT_AS = ("it", "as")


def _drain_of_a_number(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 5, drain 3 at 2100": the drain of that number, or its line?"""
    for tube, item in pairwise(items):
        numbered = (
            tube.role == "tube" and is_digits(toks, tube.end - 1) and word(toks, tube.end - 2) == "drain"
        )
        timed = item.role in {"level", "time"} and item.at and item.full_clock and not item.unit
        if numbered and timed and not any(i.role == "level" and i is not item for i in items):
            yield "the drain of that number, or its line"


BEDLIKE = (
    Rule(_drain_of_a_number, frozenset({"tube"}), frozenset({"drain"})),
    Rule(_before_all, frozenset({"bad"})),
    Rule(_as_well, frozenset({"tube", "word"}), frozenset({"well", "too", "also", "likewise", "ditto"})),
    Rule(_of_a_ward, frozenset({"bed"}), WARDS),
    Rule(_lettered, frozenset({"bed"}), frozenset({"b"})),
    Rule(_small_level, frozenset({"level"})),
    Rule(_twice, frozenset({"bed"})),
    Rule(_named_again, frozenset({"sep"})),
    Rule(_opens_a_sentence, frozenset({"sep"})),
    Rule(_bed_and_line, frozenset({"level"})),
    Rule(_moved_when, frozenset({"bed"}), frozenset({"to", "into", "in"})),
    Rule(_named_alike, frozenset({"tube"}), frozenset({"ct"})),
    Rule(_half_a_label, frozenset({"kind", "tube"}), frozenset({"ct"})),
    Rule(_was_a_bed, frozenset({"level"}), frozenset({"was"})),
    Rule(_no_number, frozenset({"no"})),
    Rule(_to_each, NUMBERS, frozenset({"each"})),
    Rule(_beside_a_bed, frozenset({"bed"}), BESIDE | {"next", "across", "close"}),
    Rule(_hour_or_bed, frozenset({"sep"})),
    Rule(_hours_as_beds, frozenset({"bed"})),
    Rule(_whose_next, frozenset({"sep"})),
    Rule(_levels_as_times, frozenset({"time"})),
    Rule(_summed, frozenset({"output"}), TOTALS),
    Rule(_of_both, frozenset({"level"}), OF_ALL),
    Rule(_for_this, frozenset({"level"}), frozenset({"read"})),
    Rule(_put_same, frozenset({"same"}), PUT),
    Rule(_read_as, frozenset({"time"}), frozenset({"as"})),
    Rule(_beside_time, frozenset({"sep"}), frozenset({"at", "@"})),
)
