"""Beds, tubes and lines in rows: what speaks against the way in which a reading pairs them.

A row that is read one place on gives each bed or tube the line of its neighbour. Called by `judging`.
"""

from __future__ import annotations

from datetime import datetime
from itertools import pairwise

from .clockface import Clock
from .drafts import Draft
from .followers import DIALLED
from .items import FULL_HOUR, RECENT, Item, could_be_level, is_bare
from .moments import REACH, moment, since

IS_AT = 2
"""Words between a bed and its line: "is at"."""
PAIR = 2
"""Digits of the minutes."""
HOURS, MINUTES = 24, 60
LITTLE = 200
"""No vacuum at the wall is over it."""


def doubts_of_rows(drafts: list[Draft], arrived: datetime) -> list[str]:
    """What may be otherwise in a row."""
    found = ["a number may be a bed of the unit"] * sum(map(_is_bed_too, drafts))
    found += ["a number written as a time is no line"] * sum(map(_is_written_as_time, drafts))
    found += _headed_or_trailed(drafts, arrived)
    return [*found, *_doubts_of_several(drafts, arrived)] if len(drafts) > 1 else found


def _doubts_of_several(drafts: list[Draft], arrived: datetime) -> list[str]:
    """What may be otherwise where one stands beside another."""
    found = [d for first, nxt in pairwise(drafts) for d in _bed_or_hour(first, nxt, arrived)]
    found += ["a second value, or a bed with no line behind it"] * sum(
        _is_slashed(*d) for d in pairwise(drafts)
    )
    found += ["a bed and its line, or what it is set to"] * sum(_is_set_so(*two) for two in pairwise(drafts))
    found += ["what each tube is set to, or a line"] * sum(_is_side_set(*two) for two in pairwise(drafts))
    found += ["a line before its tube, or the bed of both"] * sum(_is_behind_none(d, drafts) for d in drafts)
    found += ["digits that may be one number"] * sum(_are_spaced(*two) for two in pairwise(drafts))
    found += ["a line, or the bed of what is told next"] * _next_beds(drafts)
    found += ["a line, or that of the bed before it"] * _read_one_on(drafts)
    found += ["a number behind a bed is its line, as behind the others"] * _lines_before_beds(drafts)
    found += ["its line and time are turned against those before"] * _turned(drafts)
    return found + ["when that was, of both beds, or a line of the last"] * sum(
        _is_when_of_both(*two) for two in pairwise(drafts)
    )


def _is_when_of_both(first: Draft, last: Draft) -> bool:
    """ "clamped beds 6 and 1 at 1800": told of both beds, and when."""
    level = last.level
    at = level is not None and level.lead == "at" and level.full_clock and last.time is None
    ahead = first.level is not None and first.bed is not None and first.level.end <= first.bed.start
    told = (first.kind or first.whats or first.checks) and not first.has_amount
    told = (told or ahead) and first.time is None  # "340 on 4 and 5 at 1800"
    if first.bed is None or last.bed is None or last.bed.start - first.bed.end > IS_AT:
        return False
    return bool(at and told and not (last.kind or last.whats or last.checks))


def _next_beds(drafts: list[Draft]) -> int:
    """ "3 410 0600, 5 285 0600, 9 gone to CT": beside lines of other beds, no line of 9 mL."""
    beds = {d.bed.label for d in drafts if d.bed is not None}
    apart = 0
    for draft in drafts if len(beds) > 1 else ():
        level = draft.level
        ends = {i.end for i in (draft.bed, draft.again, draft.time, *draft.tubes) if i is not None}
        apart += level is not None and level.label is not None and is_bare(level) and level.start not in ends
    return apart


def _read_one_on(drafts: list[Draft]) -> int:
    """ "1200: bed 1 at 505, bed 2 at 1115": bed 2 has not the line of bed 1; "36 is at 1230 37 is at 88"."""
    ends = {d.bed.end + 1: d.bed for d in drafts if d.bed is not None}
    lines = [(d.bed, d.level) for d in drafts if d.level is not None]
    before = sum(line.at and bed is not None and ends.get(line.start, bed) is not bed for bed, line in lines)
    return before + sum(
        line.label is not None and is_bare(line) and nxt.start <= line.end + IS_AT and _is_signed(nxt)
        for (_, line), (_, nxt) in pairwise(lines)
    )


def _is_signed(line: Item) -> bool:
    """ "is at 88", "37/88": whether what stands before it is what stands between a bed and its line."""
    return line.lead == "levelat" or line.link in {"/", "-", ":"}


def _are_spaced(first: Draft, nxt: Draft) -> bool:
    """ "3 1 5 0": 150 in bed 3, or a line in bed 3 and one in bed 5?"""
    line, bed = first.level, nxt.bed
    if line is None or bed is None or bed is first.bed or line.end != bed.start:
        return False
    return is_bare(line) and len(line.digits) == 1 and len(bed.label or "") == 1


def _is_behind_none(draft: Draft, drafts: list[Draft]) -> bool:
    """ "11 483 / 29 left right 900": where another line is behind its tube or bed, 29 is the next bed."""
    level, tubes = draft.level, draft.tubes
    if level is None or level.label is None or not tubes or not is_bare(level) or tubes[0].start != level.end:
        return False
    lines = [(d.level.start, d.tubes) for d in drafts if d.level is not None]
    return any(not tubes or tubes[-1].end == start for start, tubes in lines)


def _is_slashed(first: Draft, nxt: Draft) -> bool:
    """ "4 0100 138/20, 0200 140/25": 20 in a second tube, perhaps, and no bed 20."""
    line, bed = first.level, nxt.bed
    if line is None or bed is None or bed is first.bed or bed.link != "/" or bed.figure is None:
        return False
    return line.end < bed.start and not any(0 <= i.start - bed.end < 2 for i in (nxt.level, *nxt.tubes) if i)


def _is_set_so(first: Draft, nxt: Draft) -> bool:
    """ "9 / 340 / 20 / 90": a dial and the wall, perhaps, and no bed 20; "9/340 10/120" is a list."""
    line, bed, level = first.level, nxt.bed, nxt.level
    if line is None or bed is None or level is None or bed is first.bed or bed.lead == "bed":
        return False
    dialled = bed.figure in DIALLED and (level.amount or 0) <= LITTLE and is_bare(level)
    told = dialled and level.link == "/" and (bed.link == "/" or line.link != "/")
    if told and nxt.checks:
        nxt.clash("bed", bed)  # "9 340/20/90/no leak": of which bed is what was found?
    return told


def _is_side_set(first: Draft, nxt: Draft) -> bool:
    """ "left 20 right 10 suction": what both are set to, and no line of 20 mL."""
    level, suction = first.level, nxt.checks.get("suction")
    if level is None or suction is None or nxt.level is not None or not (first.tubes and nxt.tubes):
        return False
    return is_bare(level) and level.amount in DIALLED and not first.checks and suction.figure in DIALLED


def _is_written_as_time(draft: Draft) -> bool:
    """ "0100 L 138 R 20 0200 L 140": no line of 100 mL, and 01:38 on the left."""
    level = draft.level
    return level is not None and is_bare(level) and len(level.digits) == FULL_HOUR and level.digits[0] == "0"


def is_led_row(drafts: list[Draft], arrived: datetime) -> bool:
    """ "4 left 180 right 640 1900": right behind each its line, and then the fresh time."""
    ends = [{i.end for i in (d.bed, d.again, *d.tubes) if i is not None} for d in drafts]
    lines = [d.level for d in drafts if d.level is not None]
    time = drafts[-1].time if drafts else None
    if len(lines) < 2 or len(lines) < len(drafts) or time is None or not time.full_clock or time.lead:
        return False
    one = all(d.time is time and not d.kind for d in drafts) and time.within(RECENT, arrived)
    led = all(i.start in behind and is_bare(i) and not i.at for i, behind in zip(lines, ends, strict=True))
    return one and led and time.start > lines[-1].start and not any(i.full_clock for i in lines)


def is_timed_row(drafts: list[Draft]) -> bool:
    """ "4 @1410 80, 5 @1255 1400": beds, each with its time and line, of which one can be no other."""
    rows = [_in_order(draft) for draft in drafts]
    return len(rows) > 1 and all(rows) and any(time.sure_time or not line.clocklike for _, time, line in rows)


def _in_order(draft: Draft) -> tuple[Item, ...]:
    """Bed, time and line, where they stand so one right behind the other, the time with its at."""
    bed, time, line = draft.bed, draft.time, draft.level
    if bed is None or time is None or line is None or draft.kind or draft.shared_time:
        return ()
    near = 0 <= time.start - bed.end <= 1 and 0 <= line.start - time.end <= 1
    return (bed, time, line) if near and time.at and is_bare(line) and not line.at else ()


def _turned(drafts: list[Draft]) -> int:
    """How many have a line behind at and then a time, beside others with a time behind at."""
    turned = sum(
        d.level is not None and d.level.at and d.time is not None and 0 <= d.time.start - d.level.end <= 1
        for d in drafts
    )
    return turned if any(map(_in_order, drafts)) else 0


def _lines_before_beds(drafts: list[Draft]) -> int:
    """ "330 bed 3 300, bed 4 400": 330 at three, where the line of bed 4 stands behind its bed?"""
    lined = any(d.level is not None and d.bed is not None and d.level.start == d.bed.end for d in drafts)
    told = [(d.level, d.bed, d.time) for d in drafts if lined and d.level and d.bed and d.time]
    return sum(
        line.end <= bed.start and time.start == bed.end and time.loose_time and could_be_level(time)
        for line, bed, time in told
    )


def _is_bed_too(draft: Draft) -> bool:
    """ "no leak on 212 no leak 215": in a ward with such beds no quarter past two, and no line either."""
    bed, level, time = draft.bed, draft.level, draft.time
    ends = {i.end for i in (bed, *draft.tubes) if i is not None}
    loose = (
        [level] if level is not None and is_bare(level) and not level.at and level.start not in ends else []
    )
    loose += [time] if time is not None and not (time.sure_time or time.at or time.full_clock) else []
    return any(i.label is not None and len(i.digits) == FULL_HOUR - 1 for i in loose)


def faults_of_rows(drafts: list[Draft]) -> list[str]:
    """What cannot be so in a row."""
    if len(drafts) == 1:
        return []
    return _unlined(drafts) + [f for first, nxt in pairwise(drafts) for f in _for_each(first, nxt)]


def _headed_or_trailed(drafts: list[Draft], arrived: datetime) -> list[str]:
    """ "4 1500 left 180 right 640": is the time before the tubes with their lines, or behind them?"""
    lines = [(d.level, d.tubes) for d in drafts if d.level is not None]
    time = drafts[-1].time if lines else None
    if not lines or time is None or time.at or time.lead or time.sure_time:
        return []
    first, last = lines[0][0], lines[-1][1]
    before = all(is_bare(level) and [t.start for t in tubes[:1]] == [level.end] for level, tubes in lines)
    clock = first.possible(arrived) if first.full_clock else first.clocklike and first.within(RECENT, arrived)
    return ["a time before the tubes, or behind them"] * (before and last[-1].end == time.start and clock)


def may_be_next_bed(draft: Draft) -> bool:
    """ "4 340, 6 410, 430", "2 and 5 are 210 and 1340": what a list takes for a line, or a time, is a bed;
    not so right behind a bed: "bed 5 was 15 at 3 and 55 at 6"."""
    level, time = draft.level, draft.time
    if level is None or time is None or not is_bare(level):
        return False
    whole = time.full_clock or time.sure_time
    behind = draft.bed is not None and time.at and 0 <= level.start - draft.bed.end <= 1
    loose = (level.label is not None and not (whole or behind)) or (
        time.label is not None and time.loose_time
    )
    return loose or either_is_bed(draft, level)


def _bed_or_hour(before: Draft, draft: Draft, arrived: datetime) -> list[str]:
    """ "12 340 2 30": bed 2 with its line, or half past two, at which bed 12 was read?"""
    bed, level = draft.bed, draft.level
    if bed is None or level is None or before.level is None or before.time is not None or level.unit:
        return []
    beside = before.level.end == bed.start and bed.end == level.start and len(level.digits) == PAIR
    hour, minute = int(bed.figure or 0), level.amount or 0
    if not beside or draft.time is not None or not (0 < hour < HOURS and minute < MINUTES):
        return []
    values = moment(Clock(hour, minute, "12"), arrived, REACH).values
    return ["a bed and its line, or a time"] * any(abs(since(v, arrived)) <= RECENT for v in values)


def _for_each(draft: Draft, after: Draft) -> list[str]:
    """ "5 and 7: drained 290 and 60": a bare number behind what is of a row of beds is of one of them."""
    bare = after.level is not None and is_bare(after.level)
    return ["a number for each bed of a row"] * (bool(draft.more_beds) and bare and after.bed is draft.bed)


def _unlined(drafts: list[Draft]) -> list[str]:
    """ "left 60 right 305", "5 415, 6 120 no change": beside one with its line, what is bare behind another
    tube or bed is its line."""
    tubes = any(d.tubes and d.level is not None for d in drafts)
    beds = any(d.level is not None and d.bed is not None and d.level.start == d.bed.end for d in drafts)
    headed = any(
        d.time and d.bed and (d.time.sure_time or d.time.at) and d.time.start < d.bed.start for d in drafts
    )
    found: list[str] = []
    for draft in drafts:
        time, lined = draft.time, draft.level or draft.volume or draft.output
        if time is None or lined or draft.shared_time or time.sure_time or time.at or time.lead:
            continue
        of_bed = beds and draft.bed is not None and draft.bed.end == time.start
        behind = of_bed and (draft.same is not None or headed)
        behind |= tubes and any(t.end == time.start for t in draft.tubes)
        found += ["a number behind a tube or bed is its line"] * (behind and could_be_level(time))
    return found


def before_timed(drafts: list[Draft]) -> list[str]:
    """ "3 610, 4 220 at 0600, 5 90 at 0630": the first line may be of the time behind the second."""
    times = {d.time.start for d in drafts if d.time is not None and not d.shared_time}
    if len(times) < 2:
        return []
    pairs = pairwise(drafts)
    return ["the line may be of the time behind the next one" for d, nxt in pairs if _is_before(d, nxt)]


def _is_before(draft: Draft, after: Draft) -> bool:
    """Whether one is a line without a time, and the next a line with its time behind it."""
    if draft.level is None or draft.time is not None or draft.kind:
        return False
    if after.level is None or after.time is None or after.kind:
        return False
    return after.time.start > after.level.start


def either_is_bed(draft: Draft, level: Item) -> bool:
    """ "4 620 6": two bare numbers are beds of the unit, and nothing says which one is the bed."""
    bed = draft.bed
    if bed is None or bed.figure is None or bed.lead or level.label is None or level.lead:
        return False
    return bed.start > level.start or not (draft.wants or draft.time or draft.tubes or level.about)
