"""Numbers that only stand beside the level ("1050 (was 840)"), and beds named in a row: settled before roles.

A number that is told as what was before, or as the difference, is no second level of the drain; it is
kept as `context` and given no role. Called by `read` once what is not ours is settled.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import pairwise

from .followers import DIALLED
from .items import Item
from .neighbours import phrase_of
from .nowadays import WORDS, told_now
from .numbers import Toks, glued, word
from .patterns.leads import LEVEL_LEADS, MANY_LINES, RANGING
from .renewed import CONTEXT, renewed
from .roles import CHECK_LIMITS
from .rules import there
from .runs import is_at, paired

BEFORE = frozenset({"was", "from", "previously", "previous", "prev", "prior", "before", "last", "old"})
BEFORE_CLIMB = BEFORE | {"+", "up", "at"}
CLIMBS = frozenset({"went", "gone", "up", "rose", "risen", "climbed", "increased", "moved", "jumped"})
SO = frozenset({"thats", "that's", "so", "ie", "="})
REFERRING = frozenset({"which", "that", "this"})
OVER = frozenset({"span", "window", "since"})
"""Behind a number: over which time it came."""
ASKING = frozenset({"when", "who", "which", "where", "why", "how", "what"})
OF_BEDS = frozenset({"same", "ask"})
BEDS = frozenset({"beds", "rooms", "rms"})
HOURLY = frozenset({"hrly", "hourly", "hrlies", "hourlies", "qh"})
IN_BRACKETS = frozenset(
    {"more", "out", "up", "ml", "mls", "this", "last", "past", "the", "in", "hour", "hr", "shift"}
)
"""Behind a number in brackets: over which time so much more came."""
TELLING_HOW = frozenset(
    {"report", "report given", "report for", "handover", "my beds", "all my beds"}
    | {"nearly full", "almost full", "near full", "slowing down", "slowing", "picking up"}
    | {"speeding up", "trending up", "trending down", "tapering off", "tapering", "giving report"}
    | {"next due", "getting worse", "getting better", "handing off"}
)
"""Beside a level these tell how it goes, and ask nothing."""
STOPS = frozenset({",", "and", "&", "+", "/"})
BESIDE_AGAIN = frozenset({"filler", "question", "ask", "bed", "mark_of_question", "repair", "no", "okay"})
"""With these alone, "again" asks to say it once more."""
PREVIOUS = frozenset({"prev", "previous"})
TELLING = CLIMBS | HOURLY | PREVIOUS | {"(", "from", "which", "+", "more"} | SO
"""Without one of these, and without a word for the fluid, every number has a role of its own."""
OVER_TIME = frozenset({"fluid", "span", "window"})
ASKED = frozenset({"ask", "question"})
BESIDE_QUESTION = frozenset({"question", "mark_of_question"})
PLUSSED = 2
"""Pieces before a number that is so much more: the plus, and what it is more than."""
COMPARED = frozenset({"from", "since", "than", "on", "over", "in"})
"""Behind a number that is so much more or less than another."""
WHICH = frozenset({"the", "my", "that"})
FOUND = frozenset({"leak", "tidal", "seal", "fluid"})
BELOW = frozenset({"-", "minus", "negative"})
"""Without one of these no number is below nothing."""
SWITCHED = frozenset({"suction_on", "suction_off"})


def in_context(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """The pieces, with numbers of no role of their own marked so, and beds in a row taken as beds."""
    found = list(paired(_risen(_without_ones(items, toks), toks)))
    pieces = there(found)
    beside = not toks.words.isdisjoint(TELLING) or not pieces.isdisjoint(OVER_TIME)
    for k, item in enumerate(found) if beside else ():
        if item.role == "num" and item.amount is not None:
            if (
                _in_brackets(item, toks)
                or _is_rise(found, k, toks)
                or _is_start(found, k, toks)
                or _is_gain(found, k, toks)
                or _is_plus(found, k, toks)
                or _is_previous(found, k, toks)
                or _is_difference(found, k, toks)
                or _is_of_one_hour(found, k, toks)
                or _is_over_time(found, k)
            ):
                found[k] = item.as_role(CONTEXT)
                if word(toks, item.start - 2) == "which" and k and found[k - 1].value == "question":
                    found[k - 1] = found[k - 1]._replace(value="filler")
            elif _is_of_fluid_over_time(found, k):
                found[k] = item._replace(lead="amount")
    found = renewed(_below_nothing(found, toks), toks)
    if "from" in toks.words:
        found = _set_anew(found)
    if not pieces.isdisjoint(ASKED):
        found = _full([_last_lines(item, k, found, toks) for k, item in enumerate(found)], toks)
        found = list(_not_asking(found, toks))
    if not toks.words.isdisjoint(WORDS):
        found = list(told_now(found, toks))
    if "again" in toks.words:
        found = list(_told_again(found, toks))
    if not pieces.isdisjoint(OF_BEDS):
        found = _beds_in_a_row(found)
    if not toks.words.isdisjoint(BEDS):
        found = _listed_beds(found, toks)
    beside = CONTEXT in [i.role for i in found]
    return tuple(_as_right_value(found, toks) if beside else found)


def _without_ones(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "forgot the 3 o'clock one": the line of that time, and no number; "one of mine" is some bed."""
    if "one" not in toks.words:
        return items
    items = tuple(i for i in items if not _is_some_one(i, toks))
    ones = {
        item.start
        for before, item in pairwise(items)
        if item.role == "num" and word(toks, item.start) == "one" and item.end - item.start == 1
        if before.role == "time" and before.end == item.start and word(toks, before.start - 1) in WHICH
    }
    return tuple(i for i in items if i.start not in ones)


def _is_some_one(item: Item, toks: Toks) -> bool:
    alone = item.role == "num" and word(toks, item.start) == "one" and not (item.lead or item.unit)
    return alone and word(toks, item.start + 1) == "of"


def _below_nothing(items: list[Item], toks: Toks) -> list[Item]:
    """ "seal 2, -20, no leak", "-20 cmH2O": below nothing is suction, beside a finding or by its unit."""
    if toks.words.isdisjoint(BELOW):
        return items
    found = any(i.value in FOUND if i.role == "cue" else i.lead in {"seal", "wall"} for i in items)
    units = {"", "cm"} if found else {"cm"}
    if any(i.lead == "suction" or i.value == "suction" or i.name in SWITCHED for i in items):
        return items
    sucked = [i.role == "num" and i.negative and i.amount in DIALLED and i.lead in {"", "at"} for i in items]
    return [
        i._replace(lead="suction", label=None)
        if s and i.unit in units and word(toks, i.end) not in COMPARED
        else i
        for i, s in zip(items, sucked, strict=True)
    ]


def _set_anew(items: list[Item]) -> list[Item]:
    """ "suction from 20 to 10": what a check was, and what it is."""
    found = list(items)
    for k, (item, nxt) in enumerate(pairwise(items)):
        checks = item.role == nxt.role == "num" and item.lead in CHECK_LIMITS and nxt.link == "to"
        if checks and not nxt.unit and item.link == "from":
            found[k] = item.as_role(CONTEXT)
            found[k + 1] = nxt._replace(lead=item.lead, link="", label=None)
    return found


def _last_lines(item: Item, k: int, items: list[Item], toks: Toks) -> Item:
    """ "last 3 marks 19": how many lines are asked for."""
    asks = k > 0 and items[k - 1].value == "ask" and items[k - 1].name == "last"
    if asks and item.role == "num" and not item.unit and word(toks, item.end) in MANY_LINES:
        return Item("cue", item.start, item.end, "ask", "history")
    return item


def _full(items: list[Item], toks: Toks) -> list[Item]:
    """ "nearly full 1950", "395 at 1900, slowing down": beside a level it tells how it goes."""
    levels = any(i.role == "num" and (i.label is None or i.lead in LEVEL_LEADS) for i in items)
    levels &= not any(i.role == "cue" and i.value in BESIDE_QUESTION for i in items)
    closes = "last" if "closing" in [i.value for i in items] else ""  # "my last one, 12, closing 235"
    asks = [levels and i.value == "ask" and _tells_how(i, closes, toks) for i in items]
    return [i._replace(value="filler", name="") if a else i for i, a in zip(items, asks, strict=True)]


def _tells_how(item: Item, closes: str, toks: Toks) -> bool:
    return item.name == closes or phrase_of(item, toks) in TELLING_HOW


def _not_asking(items: list[Item], toks: Toks) -> Iterator[Item]:
    """ "on its side when I came in": behind what happened, such a word asks nothing."""
    told = False
    for item in items:
        asks = item.role == "cue" and item.value == "question" and word(toks, item.start) in ASKING
        yield item._replace(value="word", name="when") if asks and told else item
        told = (told or _tells(item)) and item.role != "sep"


def _told_again(items: Iterable[Item], toks: Toks) -> Iterator[Item]:
    """ "9 clamped again": beside what happened or was not understood, such a word asks nothing."""
    found = list(items)
    told = any(i.lead if i.role == "num" else i.role == "cue" and i.value not in BESIDE_AGAIN for i in found)
    for item in found:
        lone = item.name == "repeat" and item.end - item.start == 1 and word(toks, item.start) == "again"
        yield item._replace(value="word", name="again") if lone and told else item


def _tells(item: Item) -> bool:
    return item.role == "cue" and item.value in {
        "kind",
        "what",
        "amount",
        "level",
        "same",
        "leak",
        "tidal",
        "fluid",
    }


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


def _is_over_time(items: list[Item], k: int) -> bool:
    """ "60 this hour, level 340": how much came, beside the level that has a cue of its own."""
    item, after = items[k], items[k + 1 : k + 2]
    if item.lead or item.at or item.full_clock or not any(map(_is_span, after)):
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
    so = (word(toks, item.end) in {"more", "extra", "up"} and _is_so(toks, at)) or (
        up and _is_so(toks, at - 1)
    )
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
    changed = any(i.role == "cue" and i.value in {"kind", "new", "opens"} for i in items)
    ends = all(i.role == "sep" and i.value in STOPS for i in items[k + 1 : k + 2])
    return said and ends and not changed and _is_below_line(items, k)


def _is_below_line(items: list[Item], k: int) -> bool:
    """Whether a bare number of the bed before it may be the line that stands now."""
    lines = [i for i in items[:k] if i.role == "num" and i.label is None and not i.full_clock]
    lines = [i for i in lines if i.lead in {"", "at", "level", "levelat"}]
    return len(lines) == 1 and (lines[0].amount or 0) >= (items[k].amount or 0)


def _is_so(toks: Toks, at: int) -> bool:
    return word(toks, at) in SO or (word(toks, at) in {"is", "makes"} and word(toks, at - 1) in REFERRING)


def _is_difference(items: list[Item], k: int, toks: Toks) -> bool:
    """ "1050 at 1900, thats 45 in the hr": reckoned from the line before it, and nothing beside it."""
    item, after = items[k], items[k + 1 : k + 2]
    at = item.start - 1
    so = _is_so(toks, at)
    over = any(i.role == "cue" and i.value in OVER for i in after) or word(toks, item.end) == "since"
    over |= item.lead == "amount"  # "so 60 out"
    if not so or not over:
        return False
    lines = (i for i in items[:k] if i.role == "num" and (i.label is None or i.lead in LEVEL_LEADS))
    return any((i.amount or 0) > (item.amount or 0) for i in lines)


def _is_start(items: list[Item], k: int, toks: Toks) -> bool:
    """ "from 840 to 1050 at 1900", "went from 840 to 1050": where it was before."""
    item, nxt = items[k], _next_amount(items, k)
    if item.link != "from" or item.lead in CHECK_LIMITS or nxt is None:
        return False
    moved = item.label and nxt.label and word(toks, item.start - 2) in CLIMBS  # from bed to bed
    if word(toks, nxt.start - 1) != "to" or nxt.start != item.end + 1 or moved:
        return False
    if (nxt.amount or 0) < (item.amount or 0):
        return False
    climbs, ranged = (word(toks, item.start - 2) in words for words in (CLIMBS, RANGING))
    timed = word(toks, nxt.end) in {"at", "@"} and any(i.role in {"num", "time"} for i in items[k + 2 :])
    return climbs or (timed and not (ranged or item.at))


def _risen(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "from 840 at 1500 to 1050 at 1900": two lines, each with its time."""
    if "from" not in toks.words:
        return items
    for k, (first, then, last, now) in enumerate(zip(items, items[1:], items[2:], items[3:], strict=False)):
        led = word(toks, first.start - 1) == "from" and word(toks, last.start - 1) == "to"
        led &= first.label is None and last.label is None  # "moved from 12 at 1500 to 14"
        if led and is_at(then) and is_at(now) and 0 <= (first.amount or -1) <= (last.amount or -1):
            lines = (i._replace(lead="levelat", link="", label=None) for i in (first, last))
            stop = Item("sep", last.start, last.start, ",")
            return (*items[:k], next(lines), then, stop, next(lines), now, *items[k + 4 :])
    return items


def _is_of_fluid_over_time(items: list[Item], k: int) -> bool:
    """ "300 mls of blood last hour": so much came, and no level."""
    item, after = items[k], items[k + 1 : k + 4]
    if item.lead or item.unit not in {"ml", "litre"} or not after or after[0].value != "fluid":
        return False
    return any(map(_is_span, after))


def _is_of_one_hour(items: list[Item], k: int, toks: Toks) -> bool:
    """ "mark 915 hrly 110": how much came in the hour, beside the level that has a cue of its own."""
    item = items[k]
    hourly = word(toks, item.start - 1) in HOURLY and not (item.lead or item.full_clock)
    return hourly and _is_beside_level(item, items)


def _is_beside_level(item: Item, items: list[Item]) -> bool:
    """Whether there is a level with a cue of its own beside it."""
    return any(i.role == "num" and i.lead in {"level", "levelat"} for i in items if i is not item)


def _is_span(item: Item) -> bool:
    return item.role == "cue" and item.value in {"span", "window"}


def _next_amount(items: list[Item], k: int) -> Item | None:
    after = next((i for i in items[k + 1 :] if i.role != "cue"), None)
    return after if after is not None and after.role == "num" and after.amount is not None else None


def _as_right_value(items: list[Item], toks: Toks) -> Iterator[Item]:
    """What follows "from 840 to" or "up by 60 to" is the level, and neither a bed nor a second value."""
    after = False
    for item in items:
        value = item.role == "num" and item.lead not in CHECK_LIMITS and word(toks, item.start - 1) == "to"
        yield item._replace(lead="levelat", link="", label=None) if after and value else item
        after = item.role == CONTEXT or (after and item.role == "cue")


def _beds_in_a_row(items: list[Item]) -> list[Item]:
    """ "2, 5, 9 all unchanged", "12 and 14 totals": numbers that are all beds, and one thing said of them."""
    last = next((k for k, i in enumerate(items) if i.role == "cue" and i.value in OF_BEDS), None)
    if last is None:
        return items
    k, beds = last - 1, []
    while k >= 0 and _in_a_row(items[k]):
        beds += [k] if items[k].role == "num" else []
        k -= 1
    row = sum(i.role in {"num", "bed"} for i in items[k + 1 : last])
    if row < 2 or any(i.role == "sep" and i.value not in STOPS for i in items[k + 1 : last]):
        return items
    if not any(i.role == "sep" for i in items[k + 1 : last]):
        return items
    return [i.as_role("bed") if j in beds else i for j, i in enumerate(items)]


def _listed_beds(items: list[Item], toks: Toks) -> list[Item]:
    """ "beds 1, 2 and 3 all no leak": behind the plural, numbers with a stop between each are all beds."""
    first = next((k for k, i in enumerate(items) if word(toks, i.start) in BEDS), len(items)) + 1
    last = first
    while last < len(items) and (items[last].role == "sep" or _in_a_row(items[last])):
        last += 1
    row = items[first:last]
    while row and row[-1].role not in {"num", "bed"}:
        row.pop()
    behind = items[first + len(row) : first + len(row) + 1]
    ends = not any(i.role in {"num", "bad"} for i in behind)
    stops = [i.role == "sep" and i.value in STOPS for i in row]
    if len(row) < len(("1", ",", "2")) or not ends or any(s is not bool(k % 2) for k, s in enumerate(stops)):
        return items
    return [i.as_role("bed") if i in row and i.role == "num" else i for i in items]


def _in_a_row(item: Item) -> bool:
    if item.role in {"bed", "sep"} or (item.role == "cue" and item.value in {"bed", "filler", "question"}):
        return True
    return item.role == "num" and item.label is not None and not item.lead and not item.unit
