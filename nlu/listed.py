"""Catch-up lists whose times are plain: full hours in order, evenly apart, and none to come.

"bed 4: 1500 1010, 1600 1030, 1700 1045": were it levels first, hours that came out even would be chance.
In such a list the times are taken as times before any number gets its role. Called by `read`; `runs` has the
rest.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime, timedelta
from itertools import chain, pairwise

from .items import NO_CLOCKS, RECENT, Item
from .moments import LIST_REACH, since
from .numbers import Toks
from .rules import there
from .runs import FEWEST, HALVES, NUMBERS, is_time, minute_of_day

STEPS = frozenset({30, 60, 90, 120, 180, 240, 360})
"""Minutes between two lines of a round. Common practice, no source."""
HOUR, DAY = 60, 24 * 60
INNER = frozenset({"/", "|"})
OUTER = frozenset({",", ";", "/", "|", "and", "&", "then"})
DASHES = frozenset({"", "-", "/"})
LED = frozenset({"", "level", "levelat"})
LED_TIMES = frozenset({"", "at", "level", "timeword"})
UNITS = frozenset({"", "ml", "litre"})
NO_LIST = frozenset({"out", "same", "neg", "plan", "or", "order", "kind", "what"})
"""Cues beside which a row of numbers may be something else than lines."""
OTHER_LEADS = frozenset({"seal", "suction", "wall", "weight", "leakgrade", "amount", "output"})
NO_LISTS = NO_LIST | OTHER_LEADS
VOLUMES = frozenset(
    {"hourly", "hrly", "hrlies", "hourlies", "qh", "outputs", "output", "volumes", "drainage"}
)
LINES = frozenset({"level", "levelat"})
MOST = 2000
"""What a canister holds, mL: so much did not drain in the few hours of one list."""


def listed(items: tuple[Item, ...], toks: Toks, arrived: datetime) -> tuple[Item, ...]:
    """The pieces, with the times of each such list as times and a comma before each further pair."""
    if len([i for i in items if i.role in NUMBERS]) < FEWEST or not has_plain_numbers(items):
        return items
    flow = not VOLUMES.isdisjoint(toks.words) and not any(i.value in LINES for i in items)
    found: dict[int, Item | None] = {}
    stops: set[int] = set()
    rows = [list(_of_each_bed(run)) for run in plain_runs(items)]
    parts = [part for row in rows for part in row]
    rounds = {id(part) for row in rows if _is_one_round(row, arrived) for part in row}
    for run in parts:
        inside = {i.start for i in run}
        bed = any(i.role == "bed" or (i.label is not None and i.start not in inside) for i in items)
        pairs = [_line_of(run)] if id(run) in rounds else _pairs(run, arrived, bed=bed)
        if flow and sum(level.amount or 0 for _, level in pairs) <= MOST:
            continue
        _settle(
            run,
            [(time, level._replace(lead="level")) for time, level in pairs] if flow else pairs,
            found,
            stops,
        )
    beds = [bed for bed in map(_next_bed, parts) if bed is not None] if found else []
    found |= {bed.start: bed.as_role("bed") for bed in beds}
    stops |= {bed.start for bed in beds}
    return tuple(_settled(items, found, stops)) if found else items


def _next_bed(run: list[Item]) -> Item | None:
    """The bed with which a run begins that another bed's lines stand before."""
    first = run[0] if run else None
    odd = sum(i.role != "sep" for i in run) % 2 == 1
    begins = first is not None and first.role == "num" and first.label is not None and len(run) > 1 and odd
    return first if begins and first is not None and not first.lead else None


def has_plain_numbers(items: Sequence[Item]) -> bool:
    """Whether nothing is told beside it of which a number may be."""
    pieces = there(items)
    first = next((k for k, i in enumerate(items) if i.role in {"num", "time", "bed"}), 0)
    mended = any(i.role in {"repair", "foreign", "claimed", "denied"} for i in items[first:])
    led = any(i.lead in OTHER_LEADS for i in items)
    return pieces.isdisjoint(NO_LISTS) and not (mended or led)


def plain_runs(items: Sequence[Item], stops: frozenset[str] = OUTER) -> Iterator[list[Item]]:
    """Numbers and times with nothing but stops between them, the stops among them."""
    run: list[Item] = []
    for item in items:
        if item.role in {"num", "time"} or (run and item.role == "sep" and item.value in stops):
            run.append(item)
            continue
        yield run
        run = []
    yield run


def _of_each_bed(run: list[Item]) -> Iterator[list[Item]]:
    """ "3 2000 410 2100 425 5 2000 90": a run, parted where behind a level the next bed stands."""
    numbers = [i for i in run if i.role != "sep"]
    threes = zip(numbers, numbers[1:], numbers[2:], strict=False)
    begins = {
        bed.start
        for before, bed, time in threes
        if bed.label is not None
        and not bed.lead
        and is_time(time)
        and not is_time(before)
        and not is_time(bed)
    }
    part: list[Item] = []
    for item in run:
        if item.start in begins and item.role != "sep" and part:
            yield part
            part = []
        part.append(item)
    yield part


def _is_one_round(row: list[list[Item]], arrived: datetime) -> bool:
    """ "5 0600 290 7 0600 60": whether each part is a bed, the same whole time, and a number that is none."""
    threes = [[i for i in part if i.role != "sep"] for part in row]
    if len(row) < len(("one bed", "the next")) or any(
        len(three) != len(("bed", "at", "level")) for three in threes
    ):
        return False
    beds, times, levels = zip(*threes, strict=True)
    whole = all(map(is_time, times)) and len({minute_of_day(t) for t in times}) == 1
    if not whole or times[0].when(arrived, LIST_REACH).sure is None or all(map(is_time, levels)):
        return False
    named = all(b.label is not None and not (b.lead or b.unit) for b in beds)
    bare = not any(t.unit or t.lead not in LED_TIMES for t in times)
    return named and bare and all(_are_levels([level]) for level in levels)


def _line_of(part: list[Item]) -> tuple[Item, Item]:
    """The time and the level of such a part."""
    _, time, level = (i for i in part if i.role != "sep")
    return time, level


def _pairs(run: list[Item], arrived: datetime, *, bed: bool) -> list[tuple[Item, Item]]:
    """Each time of the run with its level; none where that is not plain, or no `bed` was said."""
    numbers = [i for i in run if i.role != "sep"]
    if len(numbers) % 2 and numbers[0].label is not None and not numbers[0].lead:
        numbers, bed = numbers[1:], True  # "12: 1700 610, 1800 640"
    if not bed or len(numbers) < FEWEST or len(numbers) % 2 or not is_regular(run, numbers):
        return []
    firsts, lasts = numbers[::2], numbers[1::2]
    for times, levels in ((firsts, lasts), (lasts, firsts)):
        if _are_times(times, arrived) and _are_levels(levels) and not _are_times_too(levels, arrived):
            return list(zip(times, levels, strict=True))
    return []


def is_regular(run: list[Item], numbers: list[Item]) -> bool:
    """Whether the same signs stand within every pair, and a pair is never parted by more than these."""
    stops = {i.start: i.value for i in run if i.role == "sep"}
    inner = {
        tuple(v for at, v in stops.items() if a.start < at < b.start)
        for a, b in zip(numbers[::2], numbers[1::2], strict=True)
    }
    return len(inner) == 1 and all(v in INNER for v in chain(*inner))


def _are_times(times: list[Item], arrived: datetime) -> bool:
    """Whether these are moments in order, none to come, and whole hours evenly apart or plainly times."""
    if not all(map(is_time, times)) or any(
        i.unit or i.lead not in {"", "at", "level", "timeword"} for i in times
    ):
        return False
    moments = [i.when(arrived, LIST_REACH).sure for i in times]
    if not _ascend(moments):
        return False
    if all(_is_plain(i) for i in times):
        return True
    gaps = _gaps(times)
    even = len(gaps) == 1 and gaps <= STEPS
    full = all(minute_of_day(i) % HOUR == 0 for i in times)
    return even and (full or (len(times) > 2 and all(minute_of_day(i) % 30 == 0 for i in times)))


def _ascend(moments: Sequence[datetime | None]) -> bool:
    found = [m for m in moments if m is not None]
    return len(found) == len(moments) and all(since(a, b) > timedelta(0) for a, b in pairwise(found))


def _gaps(times: list[Item]) -> set[int]:
    return {(minute_of_day(b) - minute_of_day(a)) % DAY for a, b in pairwise(times)}


def _is_plain(item: Item) -> bool:
    """Whether it is written as nothing but a time: 4pm, 16:00."""
    clock = item.clocks[0]
    return item.role == "time" and (clock.colon or clock.part in HALVES or clock.sure)


def _are_levels(levels: list[Item]) -> bool:
    amounts = [i.amount for i in levels if i.amount is not None]
    plain = all(
        i.role == "num" and i.lead in LED and i.unit in UNITS and i.link in DASHES and not i.at
        for i in levels
    )
    return plain and len(amounts) == len(levels) and amounts == sorted(amounts)


def _are_times_too(levels: list[Item], arrived: datetime) -> bool:
    """Whether the levels could be the times as well: of a round, or of the last two hours."""
    if any(i.unit for i in levels) or not all(map(is_time, levels)):
        return False
    moments = [i.when(arrived, LIST_REACH).sure for i in levels]
    if not _ascend(moments):
        return False
    if len(levels) == len(("one line", "the next")):
        return True
    return len(_gaps(levels)) == 1 and (levels[-1].within(RECENT, arrived) or _gaps(levels) <= STEPS)


def _settle(
    run: list[Item], pairs: list[tuple[Item, Item]], found: dict[int, Item | None], stops: set[int]
) -> None:
    """Takes note of what becomes of the pieces of one list."""
    for k, (time, level) in enumerate(pairs):
        first, last = sorted((time.start, level.start))
        found[time.start] = time._replace(
            role="time", lead="at", at=True, link="", label=None, negative=False
        )
        found[level.start] = level._replace(link="", negative=False, label=None, clocks=NO_CLOCKS)
        found |= {i.start: None for i in run if i.role == "sep" and first < i.start < last}
        if k:
            stops.add(first)


def _settled(items: Sequence[Item], found: dict[int, Item | None], stops: set[int]) -> Iterator[Item]:
    parted = False
    for item in items:
        made = found.get(item.start, item)
        if made is None or (item.role == "sep" and item.start in found):
            continue
        if item.start in stops and not parted:
            yield Item("sep", item.start, item.start, ",")
        parted = made.role == "sep"
        yield made


def is_line(item: Item) -> bool:
    """Whether it is a number that may be a line and is no whole time."""
    plain = item.role == "num" and item.amount is not None and item.unit in UNITS and item.lead in LED
    return plain and not (is_time(item) or item.negative or item.link)
