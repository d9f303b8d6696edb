"""Numbers that only stand beside the level ("1050 (was 840)"), and beds named in a row: settled before roles.

A number that is told as what was before, or as the difference, is no second level of the drain; it is
kept as `context` and given no role. Called by `read` once what is not ours is settled.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import pairwise

from .followers import DIALLED
from .gains import CLIMBS, HOURLY, PREVIOUS, SO, STOPS, is_beside_line, is_span
from .items import Item
from .neighbours import phrase_of
from .nowadays import WORDS, told_now
from .numbers import Toks, word
from .patterns.leads import LEVEL_LEADS, MANY_LINES
from .renewed import CONTEXT, renewed
from .roles import CHECK_LIMITS
from .rules import there
from .runs import is_at, paired

ASKING = frozenset({"when", "who", "which", "where", "why", "how", "what"})
OF_BEDS = frozenset({"same", "ask"})
BEDS = frozenset({"beds", "rooms", "rms"})
TELLING_HOW = frozenset(
    {"report", "report given", "report for", "handover", "my beds", "all my beds"}
    | {"nearly full", "almost full", "near full", "slowing down", "slowing", "picking up"}
    | {"speeding up", "trending up", "trending down", "tapering off", "tapering", "giving report"}
    | {"next due", "getting worse", "getting better", "handing off"}
)
"""Beside a level these tell how it goes, and ask nothing."""
BESIDE_AGAIN = frozenset({"filler", "question", "ask", "bed", "mark_of_question", "repair", "no", "okay"})
"""With these alone, "again" asks to say it once more."""
TELLING = CLIMBS | HOURLY | PREVIOUS | {"(", "from", "which", "+", "more"} | SO
"""Without one of these, and without a word for the fluid, every number has a role of its own."""
OVER_TIME = frozenset({"fluid", "span", "window"})
ASKED = frozenset({"ask", "question"})
BESIDE_QUESTION = frozenset({"question", "mark_of_question"})
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
            if is_beside_line(found, k, toks):
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
    return any(map(is_span, after))


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
