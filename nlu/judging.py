"""How well a reading stands: its faults (what cannot be so) and its doubts (what may be otherwise).

The hard rules of the ward about bare numbers are here: a level before a time within 2 h, a lone
number after "at", pairs of a catch-up list.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import pairwise

from .drafts import Draft
from .faults import faults_of, same_as_another, same_line_twice
from .inrows import (
    before_timed,
    doubts_of_rows,
    either_is_bed,
    faults_of_rows,
    is_led_row,
    is_timed_row,
    may_be_next_bed,
)
from .items import FULL_HOUR, NEAR, RECENT, Item, could_be_level, is_bare, is_now
from .moments import LIST_REACH, REACH, since, soon
from .roles import OF_PATIENT

LONG_PAST = timedelta(hours=6)
"""A bare number that is a time further back than that says no time at which something was found."""
JUST = timedelta(minutes=15)  # not told from now; common practice, no source
NAMED = frozenset({"new", "opens", "inside"})
EITHER_BED = "either number may be the bed"
"""With this doubt nothing of the message is accepted, a finding or an order neither."""
PLAIN_TIME = frozenset({"placed", "exchanged", "removed"})


@dataclass(frozen=True, slots=True)
class Standing:
    """Why a reading is weak; the fewer reasons the better."""

    faults: tuple[str, ...] = ()
    doubts: tuple[str, ...] = ()

    def with_faults(self, more: list[str]) -> Standing:
        """With more that speaks against it."""
        return Standing((*self.faults, *more), self.doubts)


def standing(drafts: list[Draft], arrived: datetime) -> Standing:
    """What speaks against a reading."""
    faults: list[str] = []
    doubts: list[str] = []
    listed = is_list(drafts)
    rises = listed and _rising(drafts, arrived)
    row = is_led_row(drafts, arrived) or is_timed_row(drafts)
    for draft in drafts:
        faults += faults_of(draft)
        if draft.bed is not None and len(drafts) > 1 and not (draft.has_content or draft.time):
            faults.append("a bed of which nothing was said")
        if not (rises or row):
            doubts += _doubts(draft, arrived)
        doubts += _volume_or_time(draft, drafts, arrived)
        if not rises:
            doubts += _event_or_line(draft, drafts, arrived)
            doubts += _then_or_now(draft, drafts, arrived)
    doubts += [] if rises else before_timed(drafts)
    doubts += [d for first, nxt in pairwise(drafts) for d in _before_change(first, nxt)]
    doubts += [d for first, nxt in pairwise(drafts) for d in _after_change(first, nxt)]
    doubts += doubts_of_rows(drafts, arrived)
    if listed and not rises and all(d.level is None or is_bare(d.level) for d in drafts):
        doubts.append("a list whose bare numbers do not rise")
        _time_of_checks_asked(drafts)
    faults += faults_of_rows(drafts)
    faults += same_line_twice(drafts)
    same_as_another(drafts)
    return Standing(tuple(faults), tuple(doubts))


def is_list(drafts: list[Draft]) -> bool:
    """Whether it is a catch-up list: two lines or more of one drain, each with its own time."""
    marks = [d for d in drafts if d.level is not None and not d.kind]
    own = {d.time.start for d in marks if d.time is not None and not d.shared_time}
    beds = {d.bed.label for d in marks if d.bed is not None}
    return len(marks) >= 2 and len(own) == len(marks) and len(beds) <= 1 and len({d.tube for d in marks}) == 1


def _time_of_checks_asked(drafts: list[Draft]) -> None:
    """ "815 now, was 760 at 5, no leak": beside lines that are asked, when it was seen is asked too."""
    times = [d.time for d in drafts if d.time is not None]
    for draft in drafts:
        if draft.checks and "time" not in draft.clashes:
            draft.clash("time", *times)


def _is_latest_first(drafts: list[Draft], arrived: datetime) -> bool:
    """ "13 at 6: 410, at 5: 395": a list told backwards, each time behind its at or written whole."""
    times = [d.time for d in drafts if d.time is not None]
    told = len(times) == len(drafts) and all(t.at or t.sure_time or t.full_clock for t in times)
    told &= not any(d.checks for d in drafts)  # "815 now, was 760 at 5, no leak": found when?
    moments = [t.when(arrived, LIST_REACH).sure for t in times] if told else []
    return bool(moments) and all(a and b and a > b for a, b in pairwise(moments))


def _rising(drafts: list[Draft], arrived: datetime) -> bool:
    """Whether times and levels of a list agree in order, and a bare pair is time first or has its signs."""
    last_at, last_level = None, -1
    if any(may_be_next_bed(d) for d in drafts):
        return False
    if _is_latest_first(drafts, arrived):
        drafts = drafts[::-1]
    starts = [d.level.start for d in drafts if d.level is not None]
    inner = [d for d in drafts if d.bed is not None and min(starts) < d.bed.start < max(starts)]
    if inner and len({d.bed.start for d in drafts if d.bed is not None}) < len(drafts):
        return False
    for draft in drafts:
        if draft.level is None or draft.time is None or draft.level.amount is None:
            continue
        at = draft.time.when(arrived, LIST_REACH).sure
        if at is None or (last_at is not None and since(last_at, at) <= timedelta(0)):
            return False
        if draft.level.amount < last_level:
            return False
        last_at, last_level = at, draft.level.amount
    return True


def _doubts(draft: Draft, arrived: datetime) -> list[str]:
    found: list[str] = []
    level = draft.level or draft.final
    time = draft.time
    if (
        time is not None
        and not time.sure_time
        and time.lead in {"", "level", "levelat", "from", "to"}
        and not draft.shared_time
    ):
        found += _bare_time(draft, time, level, arrived)
    if (
        time is not None
        and level is not None
        and not draft.shared_time
        and _is_old_bare(level, time, arrived)
    ):
        found.append("bare numbers, and the second is no time within 2 h")
    if time is not None and level is None and draft.same is not None and _is_short_at(time):
        found.append("what it is unchanged at, or when")
    if time is not None and _is_its_line(draft, time):
        found.append("a number behind its bed, or behind the word for a closing line, is the line")
    if time is not None and level is not None and _is_day_of_other(time, level, arrived):
        found.append("the day is of the clock time beside it")
    if time is not None and level is not None and time.lead in {"level", "levelat"} and not time.at:
        found += ["a number behind the word for a line is a level"] * any(
            c.day is not None for c in time.clocks
        )
    if level is not None and (is_bare(level) or level.lead in NAMED) and not draft.kind:
        found += _bare_level(draft, level, time, arrived)
    if (
        level is not None
        and is_bare(level)
        and draft.kind in PLAIN_TIME
        and not _stood_at(level, time, arrived)
    ):
        found.append("a bare number may be a level or a time")
    return found


def _is_old_bare(level: Item, time: Item, arrived: datetime) -> bool:
    """ "9 415 0300" at seven: with no word between, a time that long ago may be another number misheard."""
    zero = time.sure_time and all(c.style == "24" and not (c.colon or c.day or c.part) for c in time.clocks)
    bare = zero and not (time.at or time.lead) and is_bare(level) and level.end == time.start
    return bare and not time.within(RECENT, arrived)


def _is_short_at(time: Item) -> bool:
    """ "unchanged at 640": three digits behind an at."""
    return time.lead == "at" and len(time.digits) == FULL_HOUR - 1 and could_be_level(time)


def _volume_or_time(draft: Draft, drafts: list[Draft], arrived: datetime) -> list[str]:
    """ "5 220 1820 drained the bath": how much came may be the time, and the other number the line."""
    volume = draft.volume
    if volume is None or volume.unit or not (volume.full_clock and volume.within(RECENT, arrived)):
        return []
    beside = [i for d in drafts for i in (d.level, d.time) if i is not None and i.end == volume.start]
    return ["how much came, or when"] * any(i.loose_time or is_bare(i) for i in beside)


def _stood_at(level: Item, time: Item | None, arrived: datetime) -> bool:
    """ "pulled the drain in 29 at 1500, it was at 150": behind its whole time, what the line was."""
    if time is None or level.lead != "levelat" or time.end >= level.start:
        return False
    whole = time.sure_time or (time.at and time.full_clock)
    return whole and not (level.full_clock and level.possible(arrived))


def _is_day_of_other(time: Item, level: Item, arrived: datetime) -> bool:
    """ "610 yesterday 2300", "2200 420 last night": the day is of the whole time, the other is the line."""
    loose = [c for c in time.clocks if c.day is not None and c.style == "12" and not c.colon]
    behind = level.end == time.start and level.possible(arrived)
    before = level.start == time.end and not any(c.part for c in loose)
    return bool(loose) and (before or behind) and level.full_clock and not level.lead


def _bare_time(draft: Draft, time: Item, level: Item | None, arrived: datetime) -> list[str]:
    if time.lead:
        return ["a number after a level cue is no time"]
    if level is None:
        told = _is_level_told(draft, time) and time.clocklike and time.within(RECENT, arrived)
        told |= draft.kind == "placed" and time.within(RECENT, arrived) and any(c.colon for c in time.clocks)
        told |= draft.opening is not None and len(time.digits) == 4 and time.possible(arrived)
        if draft.same is not None and could_be_level(time) and not time.within(RECENT, arrived):
            return ["a bare number may be a level or a time"]
        bare = time.loose_time or not (time.at or time.lead or time.within(LONG_PAST, arrived))
        behind_bed = draft.bed is not None and draft.bed.end == time.start and bare
        if draft.bed and draft.whats and draft.whats[0].start < draft.bed.start:
            behind_bed &= not any(c.colon for c in time.clocks)  # dictated "suction on bed 21 11:04"
        found = draft.whats or draft.checks
        if behind_bed and found and could_be_level(time):
            return ["a number behind a bed is its line"]  # "bed 9 340, both tubes no leak"
        if draft.kind in PLAIN_TIME and could_be_level(time) and not told:
            return ["a bare number may be a level or a time"]
        return []
    ends = level.lead == "old" and level.full_clock and time.end <= level.start
    ends &= not (level.at or time.at or time.lead)
    if ends and level.within(RECENT, arrived) and not (time.sure_time or time.within(RECENT, arrived)):
        return ["the level could be the time, and the time the level"]  # "CT out - 320 final - 1850"
    if level.lead == "at" and not level.unit and time.start > level.start:
        return [] if time.within(RECENT, arrived) and not level.within(RECENT, arrived) else ["bare numbers"]
    if not is_bare(level):
        old = level.unit == "litre" and time.loose_time and not time.within(RECENT, arrived)
        return ["the line, or when it was"] * (old and could_be_level(time))  # "9 410 2l"
    if level.lead == "at" and any(what.end <= time.start for what in draft.whats):
        return [] if not level.within(NEAR, arrived) else ["a number that is a time within the hour"]
    if level.lead in {"level", "levelat"} and time.start < level.start and time.clocklike:
        told = time.within(RECENT, arrived) and not level.within(RECENT, arrived)
        return [] if told else ["bare numbers, and the first is no time within 2 h"]
    whole = level.lead == "levelat" and len(time.digits) == FULL_HOUR > len(level.digits)  # "is at 640, 1820"
    ok = time.start > level.start and time.within(RECENT, arrived)
    ok = ok and (whole or not level.within(RECENT, arrived))
    return [] if ok else ["bare numbers, and the second is no time within 2 h"]


def _is_its_line(draft: Draft, time: Item) -> bool:
    """ "17 end of shift 150 serous", "chest drain on 7 at 300, dark red": no hour of the night."""
    bare = not (draft.kind or draft.whats or draft.has_amount or time.full_clock or time.sure_time)
    told = could_be_level(time) and len(time.digits) == FULL_HOUR - 1
    checks = [c.start for c in draft.checks.values()]
    first = bool(checks) and draft.bed is not None and draft.bed.start < time.start < min(checks)
    return bare and told and first and (draft.closing or time.at)


def _is_level_told(draft: Draft, time: Item) -> bool:
    """Whether another number is the level that the bare one could be."""
    opened = draft.opening is not None and draft.opening is not time
    return opened or draft.gushed or draft.final is not None


def _bare_level(draft: Draft, level: Item, time: Item | None, arrived: datetime) -> list[str]:
    if either_is_bed(draft, level):
        return [EITHER_BED]
    if time is None and _is_line_of(level, draft) and level.possible(arrived):
        return ["the line of that time, or its level"]
    past = level.within(LONG_PAST, arrived) and not (level.at or level.full_clock)
    if time is None and draft.whats and draft.whats[0].start == level.end and past:
        return ["the line, or when that happened"]  # "3 410 tipped"
    behind_bed = draft.bed is not None and draft.bed.end == level.start and bool(draft.checks)
    if time is None and behind_bed and not level.full_clock and level.within(RECENT, arrived):
        return ["the line, or when that was found"]  # "5 640 no leak" at 18:57
    if time is not None and (
        _is_at_level(level, time, arrived) or _is_whole_before(draft.bed, level, time, arrived)
    ):
        return ["the level could be the time, and the time the level"]
    if time is not None and draft.shared_time and _is_told_for_all(time, level):
        return []
    if time is None or draft.shared_time:
        at = (
            level.at
            or level.lead == "new"
            or (len(level.digits) == 4 and level.digits[0] != "0" and not draft.wants and not draft.closing)
            or (level.spoken_clock and not (level.lead or draft.wants or draft.closing))
        )
        near = _near(level, arrived) or (level.lead in {"at", "level"} and level.within(NEAR, arrived))
        return ["a lone number that is a time within the hour"] if at and near else []
    if is_now(time) and len(level.digits) == FULL_HOUR and level.lead in {"", "at", "levelat"}:
        if not level.within(RECENT, arrived):
            return []
        if "fluid" in draft.checks:
            draft.clash("time", time, level)  # "fluid bloody 1800 serosang now"
        return ["a clock time, and what is now"]
    led = level.lead in {"level", "levelat"} and time.start > level.start and time.at
    if _is_bare_pair(level, time) and level.within(RECENT, arrived):
        return ["the first number may be the time"]
    if led or time.sure_time or time.within(RECENT, arrived):
        return []
    return ["the level could be the time"] if _near(level, arrived) else []


def _is_told_for_all(time: Item, level: Item) -> bool:
    """ "4 at 645 and 6 at 140 at 0600", "left 1855, right 740 at 1900": no line there is a time."""
    sure = time.at and time.sure_time and not level.full_clock
    bare = not (level.at or level.lead or level.spoken_clock)
    return sure or (bare and (time.at or time.sure_time or time.start <= 1))


def _is_bare_pair(level: Item, time: Item) -> bool:
    """ "645 1900": two numbers side by side and no word that says what they are; 0700 is no level."""
    alone = (
        not time.sure_time
        and not (level.lead or level.at or time.lead or time.at)
        and level.end == time.start
    )
    written = time.end - time.start == 1 and any(c.style == "24" and not c.colon for c in time.clocks)
    return alone and written


def _is_whole_before(bed: Item | None, level: Item, time: Item, arrived: datetime) -> bool:
    """ "4 at 615, 1900", "1900 bed 9 at 634", "9 at 1600, 634": the whole clock time may be when it was."""
    whole = level.possible(arrived) and (level.full_clock or (level.spoken_clock and level.lead != "levelat"))
    hour = level.lead == "levelat" and time.at and time.start > level.end and len(time.digits) < FULL_HOUR - 1
    old = hour and time.within(RECENT, arrived) and not level.within(LONG_PAST, arrived)
    if not whole or old or time.sure_time or not could_be_level(time):
        return False  # old: "is at 1720 at 6", sent at 6:10
    loose = not (time.full_clock or time.spoken_clock)
    if not (loose or level.within(2 * RECENT, arrived) or not time.within(RECENT, arrived)):
        return False
    heads = bed is not None and level.end <= bed.start < time.start and time.at
    behind = time.at and time.end <= level.start <= time.end + 1 and not time.spoken_clock
    led = level.lead in {"level", "levelat"}
    beside = time.start - level.end <= 1 and not led  # not "at 1505 as at 1900"
    later = level.digits > time.digits or (beside and level.within(2 * RECENT, arrived))
    return heads or behind or ((loose or later) and (level.at or level.lead == "at"))


def _is_at_level(level: Item, time: Item, arrived: datetime) -> bool:
    """ "1630 at 455": a clock time of the last hours, and what stands "at" it is no fresher one."""
    if level.lead or not level.full_clock:
        return False
    short = time.lead == "at" and len(time.digits) == FULL_HOUR - 1 and not time.digits.startswith("0")
    if short and time.end == level.start and level.within(RECENT, arrived):
        return True  # "4 at 640 1855"
    plain = short and time.start > level.start and not any(c.sure or c.colon for c in time.clocks)
    return plain and level.within(2 * RECENT, arrived) and not time.within(NEAR, arrived)


def _event_or_line(draft: Draft, drafts: list[Draft], arrived: datetime) -> list[str]:
    """ "back 1630 at 620": behind an event, such a number may say when that was, and "at" the line."""
    level, time = draft.level, draft.time
    if level is None or time is None or level.lead or time.lead != "at" or time.start < level.start:
        return []
    if time.sure_time:
        return []  # "4 1745 at 1858hrs, 4 tipped over"
    event = any(d.whats or d.kind in OF_PATIENT for d in drafts)
    clock = event and level.full_clock and level.possible(arrived)
    return ["the level may be the time of the event"] if clock and len(time.digits) < FULL_HOUR else []


def _then_or_now(draft: Draft, drafts: list[Draft], arrived: datetime) -> list[str]:
    """ "away 1500, back 1640, line 240": read on the return, or now, where these are not one moment."""
    if draft.level is None or draft.time is not None or draft.kind or draft.closing:
        return []
    label = draft.bed.label if draft.bed else None
    before = [d for d in drafts if d.time and d.time.start < draft.level.start and d.kind in OF_PATIENT]
    beside = {d.time.start for d in before if d.time and d.bed and d.bed.label == label}
    last = max((d.time for d in before if d.time), key=lambda t: t.start, default=None)
    one = last is not None and last.within(JUST, arrived)
    return ["the line may be of that time, or of now"] if len(beside) > 1 and not one else []


def _before_change(draft: Draft, after: Draft) -> list[str]:
    """ "bed 18 1990 changed it at 0655": the last level of the old canister, or a line of the new one?"""
    line = draft.level is not None and not draft.kind and draft.level.name != "new"
    bare_change = after.kind == "exchanged" and after.final is None
    beds = [d.bed.label for d in (draft, after) if d.bed is not None]
    one = len(set(beds)) == 1 and draft.tube == after.tube and draft.time is after.time
    return ["a line, or the last level of the old one"] * (line and bare_change and one)


def _after_change(draft: Draft, after: Draft) -> list[str]:
    """ "changed at 1825, old 720, 40": what the new one is at, or another number of the old one?"""
    level, time = after.level, after.time
    changed = draft.kind == "exchanged" and draft.final is not None and draft.opening is None
    if level is None or after.kind or level.lead or level.unit or level.name:
        return []
    loose = time is None or after.shared_time or time is draft.time
    return ["the new canister, or the old one"] * (changed and loose and after.bed is draft.bed)


def _is_line_of(level: Item, draft: Draft) -> bool:
    """ "bed 12 1900 mark": the number stands before the only word for a line."""
    before = draft.wants is not None and draft.wants.start >= level.end
    return before and not level.lead and level.full_clock


def _near(level: Item, arrived: datetime) -> bool:
    """Whether it is also a clock time within 60 minutes of arrival."""
    if not level.clocklike:
        return False
    if any(abs(since(v, arrived)) <= NEAR for v in level.when(arrived, REACH).values):
        return True
    return any(timedelta(0) < since(arrived, v) <= NEAR for c in level.clocks for v in soon(c, arrived))
