"""Signs that a time is of something else than the line beside it: of what somebody did, of another device.

"12 vomited at 0600, drain at 640": the line is of now, or of six? Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .clauses import NUMBERS, clauses
from .items import EVENTS, FINDINGS, FULL_HOUR, Item, is_now
from .neighbours import is_scan
from .numbers import Toks, word
from .patterns.asides import PERSONS
from .patterns.leads import FULL_STOPS
from .patterns.numerals import ONES
from .patterns.remarks import REMARKS
from .rules import Rule

PLAIN = frozenset({"word", "filler", "about", "time", "timeword", "bed", "opens"})
NURSES = frozenset({"i", "we"})
VISITS = frozenset(
    {"went", "got", "looked", "checked", "popped", "came", "saw", "walked", "visited", "nipped"}
)
"""What a nurse does who goes to look at a drain."""
DAYS = frozenset({"now", "date"})
NOT = frozenset({"not", "isn't", "isnt", "wasn't", "wasnt"})
QUARTER = 15
SPANS = frozenset({"-", "to", "til", "till", "until"})
HALVES = frozenset({"am", "pm"})
SWITCHED = frozenset({"suction_on", "suction_off"})


def _since_level(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "nothing out since 610 at 2200": since that level, or since ten past six?"""
    same = any(i.role == "cue" and i.value == "same" for i in items)
    times = [i for i in items if i.role == "time"]
    whole = all(i.full_clock or i.sure_time for i in times)  # "430 at 1400. 9B nil out since 1300"
    for item in items if same else ():
        after = word(toks, item.start - 1) in {"since", "from"}
        loose = item.role == "time" and item.amount is not None and not item.sure_time
        odd = len(item.digits) < FULL_HOUR and any(clock.minute % QUARTER for clock in item.clocks)
        if after and loose and ((len(times) > 1 and not whole) or odd):
            yield "since that level, or since that time"


def _timed_first(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "12 vomited at 0600, drain at 640", "picked up 9 at 1300, line 330": of what was done then."""
    parts = list(clauses(items))
    if len(parts) < 2:
        return
    first = parts[0]
    times = [i for i in first if i.role == "time" and i.lead not in {"since", "timeword"}]
    told = any(i.role in NUMBERS | {"check"} for i in first)
    told |= any(i.role == "cue" and not (i.value in PLAIN or is_scan(i, toks)) for i in first)
    if not times or told:
        return
    done = [i for i in first if i.role == "foreign" or _is_doing(i, toks)]
    if _is_visit(first, done, toks):
        return
    if any(i.end <= times[0].start for i in done):
        yield "the time may be of what was done then"


def _is_visit(first: tuple[Item, ...], done: list[Item], toks: Toks) -> bool:
    """ "I went in to bed 12 at 1830 and the box was showing 640": when the nurse was there, and read it."""
    begins = word(toks, min((i.start for i in first), default=0))
    at_bed = any(i.role == "bed" for i in first) and all(i.role == "cue" and i.name in VISITS for i in done)
    who = begins in NURSES or word(toks, min((i.start for i in first), default=0) - 1) in NURSES
    return at_bed and who


def _is_doing(item: Item, toks: Toks) -> bool:
    """A word for what somebody did, "i started at" among them."""
    if item.role != "cue":
        return False
    began = item.value == "opens" and word(toks, item.start - 1) in PERSONS
    return began or (item.value == "word" and item.name not in REMARKS)


def _timed_of_another(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "uo 300 at 0600, line 640": the only time is that of another device's number."""
    said = [i for i in items if i.role != "cue" or i.value != "filler"]
    alone = sum(i.role == "time" for i in items) == 1 and any(i.role == "level" for i in items)
    for before, item in pairwise(said) if alone else ():
        if (
            item.role == "time"
            and before.role in {"claimed", "foreign"}
            and item.lead not in {"since", "timeword"}
        ):
            yield "the time may be of the number that is not ours"


def _from_when(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "suction off 0500-0540 for mri, line 333": when the line was read was not said."""
    for clause, after in pairwise(clauses(items)):
        ends = [i for a, i in pairwise(clause) if a.role == i.role == "time" and _spans(a, i, toks)]
        levels = [i for i in after if i.role == "level"]
        if ends and levels and not any(i.role == "time" for i in after):
            yield "the end of a span of time is no time of the line beside it"


def _of_a_remark(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "14 mark 220. xray at 1900 ok": when that was, and no time of the line before it."""
    for clause, after in pairwise(clauses(items, FULL_STOPS)):
        lined = {"level"} == {i.role for i in clause} & {"level", "time"}
        time = next((k for k, i in enumerate(after) if i.role == "time"), None)
        if not lined or time is None or any(i.role in NUMBERS for i in after):
            continue
        if any(i.role == "foreign" or (i.unread and i.name not in REMARKS) for i in after[:time]):
            yield "the time may be of what is told behind the line"


def _spans(first: Item, last: Item, toks: Toks) -> bool:
    """Whether the first time and the last are the ends of a span."""
    return last.start == first.end + 1 and word(toks, first.end) in SPANS


def _time_it_is(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "it's 1120 now and it reads 365": what the clock shows, where another number is told as the line."""
    told = any(i.role == "level" and i.lead in {"level", "levelat"} and not i.at for i in items)
    for item in items:
        shown = item.role == "level" and item.full_clock and word(toks, item.end) == "now"
        if told and shown and word(toks, item.start - 1) in {"it's", "its", "s", "is"}:
            yield "the time that it is"


def _at_twice(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "mark bed 16 at eight at 500": a line of 8 at five, or of 500 at eight?"""
    hours = [i for i in items if i.role == "level" and i.amount in range(1, 13) and not i.unit]
    times = [i for i in items if i.role == "time" and (i.amount or 0) > LATEST and not i.sure_time]
    if hours and times and all(word(toks, i.start - 1) == "at" for i in (*hours, *times)):
        yield "which of the two is the time"
    for first, last in pairwise(items) if times else ():
        either = first.role == "level" and first.lead == "at" and bool(first.clocks) and not first.unit
        loose = last in times and not (last.full_clock or last.spoken_clock)
        if either and loose and not first.full_clock and word(toks, last.start - 1) == "at":
            yield "which of the two is the time"  # "9 at 545 at 640"


def _found_at(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "off suction at 1800, back at 1830": when it was so, and no line of 1800."""
    whole = any(i.role == "time" and i.at and i.full_clock for i in items)
    for found, item in pairwise(items) if whole else ():
        cue = found.role == "cue" and (found.value in FINDINGS or found.value == "what")
        bare = item.role == "level" and item.lead == "at" and item.full_clock and not item.unit
        if cue and bare and item.start == found.end + 1 and word(toks, found.end) == "at":
            yield "when something was found, or a line"


def _is_due(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "9 640 next due 0700", "9 640, due at 0600": when a line is due, and not when this one was read."""
    for line, time in pairwise([i for i in items if i.role in {"level", "time"}]):
        due = "due" in toks.said[max(line.end, time.start - DUE_WITHIN) : time.start]
        if line.role == "level" and time.role == "time" and due:
            yield "when a line is due"


def _at_an_hour_unsaid(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "9 640 at lights out", "9 640 last check": of a moment whose hour was not said, and not of now."""
    if any(i.role == "time" for i in items):
        return
    for line in [i for i in items if i.role == "level"]:
        name = line.end + 1 + (word(toks, line.end + 1) in {"the", "my", "his", "her", "our"})
        when = word(toks, line.end) in {"at", "on", "from", "before", "after", "around", "by"}
        last = word(toks, line.end + (word(toks, line.end) == "at")) == "last"
        before = word(toks, line.end + 2) == "before" and word(toks, line.end) in {"the", "that"}
        if toks.said[line.end : line.end + 2] == ("last", "time") or before:
            yield "a line of before"  # "640 the day before"
        if word(toks, line.end + (word(toks, line.end) == "at")) in VAGUE:
            yield "an hour that is no number"  # "at sixish"
        if (when and word(toks, name) in OCCASIONS) or (last and "check" in toks.said[name - 1 : name + 1]):
            yield "a moment whose hour was not said"


def _then(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "710 then 630": one line and then another, or half past six?"""
    for line, time in pairwise([i for i in items if i.role != "sep"]):
        bare = line.role == "level" and time.loose_time and time.amount is not None
        if bare and toks.said[line.end : time.start] == ("then",):
            yield "another line, or the time"


def _not_then(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "9 640 not 1900": of seven, or 1900 mL? "9 should be 640 not 1900" sets like against like."""
    righted = any(i.role == "cue" and i.name in {"corrected", "misread"} for i in items)
    for before, item in pairwise([i for i in items if i.role != "cue"]) if not righted else ():
        timed = item.full_clock and (item.amount or 1) % 100 in {0, 30} and not item.unit
        loose = before.role in {"num", "level"} and not before.full_clock
        led = word(toks, before.start - 1) in {"was", "is", "sorry", "oops"}
        if item.link == "not" and timed and loose and not led:
            yield "a time or a level that is not so"


def _denied(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed one's at 180, that wasn't oh seven hundred": when it was not, and not when it was."""
    times = [i for i in items if i.role == "time" and not all(c.style in DAYS for c in i.clocks)]
    for before, item in pairwise(items) if len(times) == 1 else ():  # not "meant 0630, not 0700"
        denied = before.role == "cue" and before.value == "neg" and word(toks, before.start) in NOT
        if denied and item in times and item.start - before.end <= 1:
            yield "the time when it was not"


def _day_of_month(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "9 640 on the 2nd at 1900": a day, and not the second of two choices."""
    lined = sum(i.role in NUMBERS | {"num"} for i in items) > 1
    for item in items if lined else ():
        day = item.value == "choice" and word(toks, item.end - 1) in {"st", "nd", "rd", "th"}
        if day and word(toks, item.start - 1) == "on":
            yield "a day of the month"


def _of_a_span(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "9 640 in 2 hours time", "9 640 12h": a time to come, or how much came in a shift."""
    for item in items:
        to_come = item.role == "cue" and item.value == "span" and word(toks, item.end) in {"time", "times"}
        before = word(toks, item.start - 1)
        said = toks.said[item.start : item.end]
        shift = item.role == "time" and not item.at and said in SHIFTS
        an_hour = item.role == "time" and before in {"/", "per"} and said in HOURS
        if to_come or (shift and before.isdecimal()) or an_hour:
            yield "a span of time, and no hour"


def _on_which_side(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "9 640 at 1900+", "at >1900", "at midnight yesterday": before it or after it, one or the other."""
    for item in items:
        said = toks.said[item.start : item.end]
        midnight = "midnight" in said and "yesterday" in said
        later = word(toks, item.end) == "+" and not word(toks, item.end + 1).isalnum()
        compared = item.full_clock and word(toks, item.start - 1) in {">", "<"}
        if item.role == "time" and (midnight or later or compared):
            yield "before the time that is said, or after it"


def _of_a_scan(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "450 ct at 6": when the scan was."""
    for line, scan, time in zip(items, items[1:], items[2:], strict=False):
        named = line.role == "level" and scan.value == "tubeword" and word(toks, scan.end - 1) == "ct"
        if named and time.role == "time" and time.at:
            yield "when the scan was"


def _of_a_leak(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "9 480 leak 200": how great it is, or two o'clock?"""
    for item in items:
        short = item.role == "time" and not (item.sure_time or item.at or item.full_clock)
        if short and item.lead == "leakgrade":
            yield "a time, or how great the leak is"


def _set_at(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "back in bed, suction on 1130 at 20": what the suction is set to, and no line of 20."""
    for event, time, item in zip(items, items[1:], items[2:], strict=False):
        on = event.value == "what" and event.name == "suction_on" and time.role == "time"
        if on and item.role == "level" and item.at and not item.unit and (item.amount or 0) <= STRONGEST:
            yield "what the suction is set to"


STRONGEST = 40
"""cmH2O; no unit sets more. Common practice, no source."""
DUE_WITHIN = 3
SHIFTS = frozenset({("12", "h"), ("8", "h"), ("12h",), ("8h",)})
"""So long is a shift."""
HOURS = frozenset((str(hours), "h") for hours in range(1, 25))
""" "120 / 1h"."""
OCCASIONS = frozenset(
    {"lights", "beginning", "bedtime", "lunch", "lunchtime", "dinner", "supper", "visiting", "turnover"}
    | {"break", "hour", "half"}
)
"""Moments of a day on a ward at which no clock is looked at."""
VAGUE = frozenset(f"{hour}ish" for hour in (*ONES, "ten", "eleven", "twelve", "noon", "midnight"))


def _taken_at(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "the 2000 reading was taken at 1930": when it was read, and no line of 1930."""
    timed = any(i.role == "time" for i in items)
    for item in items if timed else ():
        if item.role != "level" or item.unit or not item.full_clock:
            continue
        if word(toks, item.start - 1) == "at" and word(toks, item.start - 2) in TAKEN:
            yield "when it was taken"


TAKEN = frozenset({"taken", "done", "drawn", "timed", "recorded"})
LATEST = 24
"""No hour is a greater number."""


def _perhaps_ahead(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "tube out in am", "410 going home in the am": this morning, or the next one?"""
    for item in items:
        k = item.end + (item.role == "volume" and word(toks, item.end) == "out")
        the = word(toks, k + 1) == "the"
        event = item.role == "volume" or (item.role == "cue" and item.value in EVENTS)
        if event and word(toks, k) == "in" and word(toks, k + 1 + the) in HALVES:
            yield "this morning, or the next one"


def _over_which_time(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "4 30 from 5 to 6": how much came in that hour, and nobody who moved."""
    for line, first, last in zip(items, items[1:], items[2:], strict=False):
        amount = (
            line.role in {"level", "volume"} and first.start == line.end + 1 and last.start == first.end + 1
        )
        if amount and word(toks, line.end) == "from" and word(toks, first.end) in SPANS:
            yield "how much came in that time"


def _off_or_on(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "suction off on 1845": off, and on again then?"""
    for event, time in pairwise(items):
        switched = event.name in SWITCHED and word(toks, event.end) in {"on", "off"}
        gap = 1 + (word(toks, time.start - 1) == "at")
        if switched and time.role == "time" and time.start == event.end + gap:
            yield "off then, or on"


def _of_both(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "320 jp 30 1845", "320 urine 200 at 6": the time behind another device may be of the line as well."""
    timed = any(i.role == "time" for i in items)
    lined = any(i.role == "level" for i in items)
    for item in [i for i in items if i.role == "claimed"][1:]:
        hour = word(toks, item.start - 1) == "at" and bool(item.clocks) and (item.amount or 0) <= LATEST
        if (item.full_clock or hour) and not item.unit and not timed and lined:
            yield "the time behind another device may be of the line too"


def _now_of_other(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "lights off now. bed 3 left 320 right 110 at 1850": what else is so now, beside a timed line."""
    timed = any(i.role == "time" and not is_now(i) for i in items)
    for part in clauses(items, FULL_STOPS | {","}) if timed else ():
        said = [i for i in part if not (is_now(i) or i.role == "sep")]
        told = any(i.role != "cue" or i.value not in PLAIN for i in said)
        if not told and any(map(is_now, part)):
            yield "what is so now is something else"


def _now_or_then(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "it's 160 now, two hours ago he had 500 of saline": a line of now, or of the time behind it?"""
    for level, now, sep in zip(items, items[1:], items[2:], strict=False):
        if not (level.role == "level" and is_now(now) and sep.role == "sep"):
            continue
        behind = items[items.index(sep) :]
        told = {i.role for i in behind} | {i.value for i in behind if i.role == "cue"}
        if "time" in told and told.isdisjoint({"level", "volume", "kind", "bed"}):
            yield "the time now, or the one behind"


def _dangling(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "640 at 5 to", "640 at ten past": minutes before or after an hour that was not said."""
    for item in items:
        timed = item.role == "time" and item.at and len(item.digits) < FULL_HOUR
        if timed and word(toks, item.end) in {"to", "past", "til"} and word(toks, item.end + 1) in ENDING:
            yield "minutes of an hour that was not said"


def _up_to(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "300 up to 350", at ten past three: from what, or when."""
    for item in items:
        bare = item.role == "time" and not (item.sure_time or item.at or item.lead)
        if bare and toks.said[item.end : item.end + 2] in {("up", "to"), ("down", "to")}:
            yield "what it was before, or when"


ENDING = frozenset({"", ",", ".", ";", "!", "and"})
AT_TWICE = Rule(_at_twice, frozenset({"time"}), frozenset({"at"}))
DANGLING = Rule(_dangling, frozenset({"time"}), frozenset({"to", "past", "til"}))
OTHER_TIMES = (
    Rule(_of_a_scan, frozenset({"time"}), frozenset({"ct"})),
    Rule(_found_at, FINDINGS | {"what"}, frozenset({"at"})),
    Rule(_up_to, frozenset({"time"}), frozenset({"up", "down"})),
    Rule(_set_at, frozenset({"what"})),
    Rule(_of_a_leak, frozenset({"leak"})),
    Rule(_is_due, frozenset({"time"}), frozenset({"due"})),
    Rule(_at_an_hour_unsaid, frozenset({"level"}), OCCASIONS | VAGUE | {"last", "before"}),
    Rule(_then, frozenset({"time"}), frozenset({"then"})),
    Rule(_not_then, frozenset({"num", "level"}), frozenset({"not"})),
    Rule(_day_of_month, frozenset({"choice"})),
    Rule(_of_a_span, frozenset({"span", "time"}), frozenset({"time", "times", "h", "8h", "12h"})),
    Rule(_on_which_side, frozenset({"time"}), frozenset({"+", ">", "<", "midnight"})),
    Rule(_perhaps_ahead, EVENTS | {"volume"}, HALVES),
    Rule(_over_which_time, frozenset({"level", "volume"}), frozenset({"from"})),
    Rule(_off_or_on, frozenset({"what"}), frozenset({"on", "off"})),
    Rule(_now_of_other, frozenset({"time"}), frozenset({"now"})),
    Rule(_denied, frozenset({"neg"}), NOT),
    Rule(_now_or_then, frozenset({"time"}), frozenset({"now"})),
    Rule(_of_both, frozenset({"claimed"})),
    Rule(_time_it_is, frozenset({"level"}), frozenset({"now"})),
    Rule(_taken_at, frozenset({"level"}), frozenset({"at"})),
    Rule(_of_a_remark, frozenset({"sep"})),
    Rule(_from_when, frozenset({"sep"})),
    Rule(_since_level, frozenset({"same"})),
    Rule(_timed_first, frozenset({"sep"})),
    Rule(_timed_of_another, frozenset({"claimed", "foreign"})),
)
