"""Values of checks that stand behind their bed: "wall suction on bed 10 is 90" is no level."""

from __future__ import annotations

from collections.abc import Iterator

from .followers import DIALLED
from .items import Item
from .numbers import Toks
from .patterns.leads import OF_BED
from .roles import CHECK_LIMITS, CHECK_UNITS

LEADING = frozenset(
    {"is", "was", "reads", "read", "reading", "at", "now", "=", ":", "up", "down", "shows", "showing"}
)
"""One of these leads the value behind the bed."""
SAYING = frozenset({"is", "s", "was", "reads", "shows", "up", "down"})
BETWEEN = LEADING | frozenset(
    {"set", "to", "on", "still", "currently", "-", "minus", "about", "around", "back", "up", "down", "turned"}
    | {"'", "s", "only", "just"}
)
TURNS = frozenset({"up", "down", "turned"})
ONLY = TURNS | {"only", "just", "still"}
NAMING = frozenset({"what", "order", "leak", "waterseal", *CHECK_LIMITS})
DEEP = 10
"""cm: more is no depth of a seal."""


def with_checks_of_beds(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """The pieces, each number that is led behind the bed of a check as the value of that check."""
    if NAMING.isdisjoint([i.value for i in items]) or not any(map(_name, items)):
        return items
    found, turned = list(items), set[int]()
    for at, bed, value in _places(items, toks):
        name = _name(items[at])
        over = (items[value].figure or 0) > CHECK_LIMITS[name]
        bare = items[bed].end == items[value].start and not _is_ordered(items[at], items[value])
        if over and (bare or items[at].value == "what" or toks.said[items[at].end] not in OF_BED):
            continue  # "good seal bed 10 is 340"
        if items[at].value == "waterseal":
            if (items[value].figure or 0) > DEEP or items[value].start == items[bed].end:
                continue  # "water seal bed 10 340"
            found[at] = items[at]._replace(value="seal", name="")
        if items[at].value == "what":
            found[at] = items[at]._replace(value="suction", name="")
        if items[bed].role == "num":
            found[bed] = items[bed]._replace(role="bed", lead="")
        found[value] = items[value]._replace(lead=name, role="bad" if over or bare else "num")
        turned |= {k for k in range(bed + 1, value) if items[k].unread or items[k].value == "suction"}
    return tuple(i for k, i in enumerate(found) if k not in turned)


def _places(items: tuple[Item, ...], toks: Toks) -> Iterator[tuple[int, int, int]]:
    """Where a check stands, its bed right behind it, and the number that is led behind that."""
    for at in range(len(items)):
        bed = at + 1 + (_at(items, at + 1).value == "bed")
        value = bed + 1
        while _is_between(_at(items, value), _at(items, value + 1)):
            value += 1
        if _name(items[at]) and _is_bed(_at(items, bed), toks) and _is_led(items, at, value, toks):
            yield at, bed, value


def _is_between(item: Item, after: Item) -> bool:
    """A time, the word for a reading or a turn: "suction on bed 10 at 1900 was 20", "on 8 down to 10"."""
    if (item.unread and item.name in ONLY) or (item.value == "suction" and after.role == "num"):
        return True  # "suction on 8 down to -10": the minus is of the suction, too
    timed = item.role == "time" or (item.role == "num" and item.full_clock and after.role == "num")
    return timed or item.value in {"level", "levelat"}


def _is_led(items: tuple[Item, ...], at: int, value: int, toks: Toks) -> bool:
    bed = next(i for i in items[at + 1 :] if i.value != "bed")
    number = _at(items, value)
    timed = items[value - 1] if items[value - 1].role in {"time", "num"} else bed
    words = set(toks.said[timed.end : number.start])
    own = not number.unit or _name(items[at]) in CHECK_UNITS.get(number.unit, ())
    led = number.role == "num" and number.lead in {"", "at", "levelat", "level", "to"} and own
    if "was" in words and not TURNS.isdisjoint(words):
        return False  # "was down to 60, now at 90": how it was
    said = LEADING if bed.role == "bed" and items[at].value != "what" else SAYING
    alone = bed.role == "bed" and bed.end == number.start  # "wall suction bed 10 90"
    alone |= words in ({"-"}, {"minus"}) and _is_ordered(items[at], number)  # "suction order for bed 3 -20"
    return led and (alone or bool(words & said)) and words <= BETWEEN


def _is_ordered(order: Item, number: Item) -> bool:
    """ "suction order bed 8 20": what suction is set to; "suction bed 8 20" may be a line."""
    return order.value == "order" and number.amount in DIALLED


def _is_bed(item: Item, toks: Toks) -> bool:
    """A bed, or a bare label that the check is said to be on: "suction on 10 is 20"."""
    bare = item.role == "num" and item.label is not None and not item.unit
    return item.role == "bed" or (bare and toks.said[item.start - 1] in OF_BED)


def _name(item: Item) -> str:
    """Which check a cue names that has a number behind it, or nothing."""
    if item.role != "cue":
        return ""
    if item.value in {"what", "order"} and item.name in {"suction_on", "suction"}:
        return "suction"
    if item.value == "leak" and item.name == "present":
        return "leakgrade"
    if item.value == "waterseal":
        return "seal"
    return item.value if item.value in CHECK_LIMITS else ""


def _at(items: tuple[Item, ...], k: int) -> Item:
    return items[k] if k < len(items) else Item("", 0, 0)
