"""Numbers that say how much more or less a line is than another, or what it was before: "1050 (+210)".

Such a number is no second level of the drain. Called by `context`.
"""

from __future__ import annotations

from .items import Item
from .numbers import Toks, glued, word
from .patterns.leads import LEVEL_LEADS, RANGING
from .roles import CHECK_LIMITS

BEFORE = frozenset({"was", "from", "previously", "previous", "prev", "prior", "before", "last", "old"})
BEFORE_CLIMB = BEFORE | {"+", "up", "at"}
CLIMBS = frozenset({"went", "gone", "up", "rose", "risen", "climbed", "increased", "moved", "jumped"})
SO = frozenset({"thats", "that's", "so", "ie", "="})
REFERRING = frozenset({"which", "that", "this"})
OVER = frozenset({"span", "window", "since"})
"""Behind a number: over which time it came."""
MOVED = frozenset({"pt", "patient", "him", "her", "them"})
HOURLY = frozenset({"hrly", "hourly", "hrlies", "hourlies", "qh"})
IN_BRACKETS = frozenset(
    {"more", "out", "up", "ml", "mls", "this", "last", "past", "the", "in", "hour", "hr", "shift"}
)
"""Behind a number in brackets: over which time so much more came."""
STOPS = frozenset({",", "and", "&", "+", "/"})
PREVIOUS = frozenset({"prev", "previous"})
ENDED = frozenset({"exchanged", "removed", "placed"})
PLUSSED = 2
"""Pieces before a number that is so much more: the plus, and what it is more than."""


def is_beside_line(items: list[Item], k: int, toks: Toks) -> bool:
    """Whether the number there only stands beside the line: what it was before, how much it rose."""
    return (
        (_in_brackets(items[k], toks) and not _is_changed(items))
        or _is_rise(items, k, toks)
        or _is_start(items, k, toks)
        or _is_gain(items, k, toks)
        or _is_plus(items, k, toks)
        or _is_previous(items, k, toks)
        or _is_difference(items, k, toks)
        or _is_of_one_hour(items, k, toks)
        or _is_over_time(items, k)
    )


def _in_brackets(item: Item, toks: Toks) -> bool:
    """ "1050 (+210)", "1050 (was 840)", "1050 (up 60)"."""
    start = item.start - 1
    while word(toks, start) in BEFORE_CLIMB:
        start -= 1
    end = item.end
    while word(toks, end) in IN_BRACKETS:
        end += 1
    told = start < item.start - 1 or end > item.end
    return told and word(toks, start) == "(" and word(toks, end) == ")"


def _is_changed(items: list[Item]) -> bool:
    """ "new box at 1825 (old 1720)": what ended beside it is no line of before."""
    return any(i.role == "cue" and i.name in ENDED for i in items)


def _is_over_time(items: list[Item], k: int) -> bool:
    """ "60 this hour, level 340": how much came, beside the level that has a cue of its own."""
    item, after = items[k], items[k + 1 : k + 2]
    if item.lead or item.at or item.full_clock or not any(map(is_span, after)):
        return False
    of_bed = item.label is None or any(i.role == "bed" for i in items)
    return of_bed and _is_beside_level(item, items)


def _is_rise(items: list[Item], k: int, toks: Toks) -> bool:
    """ "up by 60 to 1050", "up 60 to 1050", "1050, up 60 from 990": how much it rose."""
    item = items[k]
    at = item.start - 1
    at -= word(toks, at) == "by"
    nxt = _next_amount(items, k)
    if word(toks, at) not in CLIMBS or word(toks, item.end) != "to" or nxt is None:
        return False
    return not (word(toks, at) == "moved" and item.label and nxt.label)  # from bed to bed


def _is_gain(items: list[Item], k: int, toks: Toks) -> bool:
    """ "now 560, up 40", "at 340, that's 60 more": how much more it is than before."""
    item = items[k]
    at = item.start - 1 - (word(toks, item.start - 1) == "by")
    up = word(toks, at) == "up" and word(toks, item.end) != "to"
    more = word(toks, item.end) in {"more", "extra", "up"} and _is_so(toks, at)
    so = (more and not _is_than_number(toks, item.end)) or (up and _is_so(toks, at - 1))
    before = next((i for i in reversed(items[:k]) if i.role not in {"cue", "sep"}), None)
    if not (up or so) or before is None or before.role != "num" or before.lead == "amount":
        return False
    sure = so or before.unit or before.lead in {"level", "levelat"} or not before.clocklike
    return bool(sure) and before.label is None and (before.amount or 0) > (item.amount or 0)


def _is_plus(items: list[Item], k: int, toks: Toks) -> bool:
    """ "320 +40 1900", "320 at 1900, +40": how much more it is, where no sum is written: "320 + 40"."""
    item, plus = items[k], items[k].start - 1
    written = word(toks, plus) == "+" and glued(toks, item.start) and not glued(toks, plus)
    if not written or item.lead or item.unit or item.clocklike or k < PLUSSED:
        return False
    before, after = items[k - 2], items[k + 1 : k + 2]
    behind = before.role in {"sep", "time"} or (before.role == "num" and before.lead not in CHECK_LIMITS)
    ends = all(i.role in {"sep", "time"} or (i.role == "num" and i.full_clock) for i in after)
    return behind and ends and word(toks, item.end) not in {"=", "+"} and _is_below_line(items, k)


def _is_previous(items: list[Item], k: int, toks: Toks) -> bool:
    """ "320 at 1900, prev 280": the line before, where no canister was changed."""
    said = word(toks, items[k].start - 1) in PREVIOUS and not items[k].unit
    changed = _is_changed(items) or any(i.role == "cue" and i.value in {"new", "opens"} for i in items)
    ends = all(i.role == "sep" and i.value in STOPS for i in items[k + 1 : k + 2])
    return said and ends and not changed and _is_below_line(items, k)


def _is_below_line(items: list[Item], k: int) -> bool:
    """Whether a bare number of the bed before it may be the line that stands now."""
    lines = [i for i in items[:k] if i.role == "num" and i.label is None and not i.full_clock]
    lines = [i for i in lines if i.lead in {"", "at", "level", "levelat"}]
    return len(lines) == 1 and (lines[0].amount or 0) >= (items[k].amount or 0)


def _is_than_number(toks: Toks, k: int) -> bool:
    """ "60 more than 1800": than the line of that time, or than that line?"""
    return word(toks, k + 1) == "than" and word(toks, k + 2 + (word(toks, k + 2) == "@")).isdecimal()


def _is_so(toks: Toks, at: int) -> bool:
    return word(toks, at) in SO or (word(toks, at) in {"is", "makes"} and word(toks, at - 1) in REFERRING)


def _is_difference(items: list[Item], k: int, toks: Toks) -> bool:
    """ "1050 at 1900, thats 45 in the hr": reckoned from the line before it, and nothing beside it; not
    "was 310 at 0700 so 60 since"."""
    item, after = items[k], items[k + 1 : k + 2]
    if word(toks, item.end) == "since" and not word(toks, item.end + 1).isalnum():
        return False
    at = item.start - 1
    so = _is_so(toks, at)
    over = any(i.role == "cue" and i.value in OVER for i in after) or word(toks, item.end) == "since"
    over |= item.lead == "amount"  # "so 60 out"
    if not so or not over:
        return False
    lines = (i for i in items[:k] if i.role == "num" and (i.label is None or i.lead in LEVEL_LEADS))
    return any((i.amount or 0) > (item.amount or 0) for i in lines)


def _is_beside_level(item: Item, items: list[Item]) -> bool:
    """Whether there is a level with a cue of its own beside it."""
    return any(i.role == "num" and i.lead in {"level", "levelat"} for i in items if i is not item)


def is_span(item: Item) -> bool:
    return item.role == "cue" and item.value in {"span", "window"}


def _next_amount(items: list[Item], k: int) -> Item | None:
    after = next((i for i in items[k + 1 :] if i.role != "cue"), None)
    return after if after is not None and after.role == "num" and after.amount is not None else None


def _is_start(items: list[Item], k: int, toks: Toks) -> bool:
    """ "from 840 to 1050 at 1900", "went from 840 to 1050": where it was before."""
    item, nxt = items[k], _next_amount(items, k)
    if item.link != "from" or item.lead in CHECK_LIMITS or nxt is None:
        return False
    who = item.start - 2 - (word(toks, item.start - 2) in MOVED)
    moved = item.label and nxt.label and word(toks, who) in CLIMBS  # from bed to bed
    if word(toks, nxt.start - 1) != "to" or nxt.start != item.end + 1 or moved:
        return False
    if (nxt.amount or 0) < (item.amount or 0):
        return False
    climbs, ranged = (word(toks, item.start - 2) in words for words in (CLIMBS, RANGING))
    timed = word(toks, nxt.end) in {"at", "@"} and any(i.role in {"num", "time"} for i in items[k + 2 :])
    return climbs or (timed and not (ranged or item.at))


def _is_of_one_hour(items: list[Item], k: int, toks: Toks) -> bool:
    """ "mark 915 hrly 110": how much came in the hour, beside the level that has a cue of its own."""
    item = items[k]
    hourly = word(toks, item.start - 1) in HOURLY and not (item.lead or item.full_clock)
    return hourly and _is_beside_level(item, items)
