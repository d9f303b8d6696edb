"""Which number is the bed, the level, the time: candidates by the words around, and every whole assignment.

A number keeps all the roles that its cue, unit and place allow; hard rules drop what cannot be. What
stands is weighed per statement in `judging`.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime

from .followers import DIALLED
from .items import FULL_HOUR, RECENT, Item, is_now
from .leading import found_before
from .trail import Trail

MOST = 48
LONG = 24
"""A longer message with too many assignments is asked as a whole."""
WORK = 1200
"""Assignments times pieces: what a long message may cost."""
CHECK_LIMITS = {"seal": 30, "suction": 60, "wall": 300, "leakgrade": 10}
CHECK_UNITS = {"cm": ("seal", "suction"), "mmhg": ("wall",)}
LEVEL_NAMES = frozenset({"old", "new", "opens", "last"})
ALTERNATIVE = frozenset({"or", "vs", "versus", "-", "/", "to", "\u00b1"})
EVENTS = frozenset({"placed", "exchanged", "removed", "moved", "away", "back", "left"})
UNDOES = {"unclamped": "clamped", "suction_on": "suction_off", "back": "away"}
LEVELLESS = frozenset({"away", "back", "left"})
"""Right behind these, a clock time that lies ahead is a time all the same, and asked."""
OF_PATIENT = LEVELLESS | {"moved"}
"""Events of whoever lies in the bed: they have no level."""
OFF = "off"
TIMED = frozenset({"away", "left", "clamped", "unclamped", "suction_on", "suction_off", OFF})
OFTEN_TIMED = frozenset(
    {"clamped", "unclamped", "back", "moved", "tipped", "disconnected", "dislodged", "damaged", "kinked"}
)
SLOTTED = frozenset({"bed", "level", "volume", "output", "time", "check", "tube"})
MOST_WEIGHT = 400
"""Kilograms: nobody weighs more; "weighs 780 in nappies" is no weight of the patient."""


def assignments(items: tuple[Item, ...], arrived: datetime) -> tuple[list[tuple[Item, ...]], bool]:
    """Every way to give each number of the pieces one role; and whether there were too many."""
    cues = {i.value for i in items if i.role == "cue"}
    asks = bool(cues & {"question", "mark_of_question"})
    first = Trail(arrived, asks=asks, sums=asks or "ask" in cues, paired=_paired(items), lined=_lined(items))
    trails, overfull = [first], False
    most = max(4, min(MOST, WORK // max(1, len(items))))
    for item in items:
        if item.role in {"num", "bad"}:
            trails = [t.grown(i) for t in trails for i in _options(item, t)]
        else:
            trails = [t.grown(item) for t in trails]
        if len(trails) > most:
            trails, overfull = trails[:most], True
            if len(items) > LONG:
                break  # asked as a whole: what the rest would say does not matter
    return [t.items for t in trails], overfull


def _paired(items: tuple[Item, ...]) -> frozenset[int]:
    beds = (k for k in range(len(items) - 1) if items[k].role == "num" or items[k].label is not None)
    beside = [items[k].start for k in beds if _is_paired(items, k)]
    return frozenset((*beside, *found_before(items)))


def _lined(items: tuple[Item, ...]) -> frozenset[int]:
    rows = zip(items, items[1:], items[2:], strict=False)
    return frozenset(
        a.start
        for a, b, c in rows
        if a.role == c.role == "num" and b.value == "level" and a.end == b.start and b.end == c.start
    )


def _is_paired(items: tuple[Item, ...], k: int) -> bool:
    """Whether a number, or the line of a bed, follows at once: "12 1050", "marked 23 just now 905"."""
    a, b = items[k], items[k + 1]
    if a.role == "num" and b.role in {"num", "tube"} and a.end == b.start:
        return True
    if a.label is None:
        return False
    plain = b.role == "num" and b.label is None
    if plain and b.at and not b.lead.startswith("l") and b.unit in {"ml", "litre"}:
        return True  # "marked 31 at 865 mL"
    last = items[k + 2] if k + 2 < len(items) else None
    if last is None:
        return False
    led = b.value == last.lead == "level" or (b.value == "closing" and last.role == "num")
    if led and a.end == b.start:
        return True  # "12 mark 340 14 mark 220", "3 closing 410 5 closing 285"
    return is_now(b) and last.role == "num" and last.label is None and not last.lead


def _options(item: Item, trail: Trail) -> Iterator[Item]:
    if item.role == "bad":
        yield (_check(item) if item.amount is None and item.lead == "seal" else None) or item
        return
    found = list(_candidates(item, trail))
    yield from found or [item.as_role("bad")]


def _candidates(item: Item, trail: Trail) -> Iterator[Item]:
    if item.lead == "leakgrade" and item.start in trail.paired and trail.items[-1].role == "sep":
        item = item._replace(lead="")  # "5 285 small leak, 9 1130"
    other = _alternative(item, trail)
    if other is not None:
        yield other
        of_check = other.name in CHECK_LIMITS
        ranged = item.link == "-" and other.name == "bed"  # "beds 2-4"
        if item.link not in {"-", "/"} or trail.mending or of_check or ranged:
            return
    if item.unit in {"bad", "lb"}:
        return
    if item.unit == "kg" and item.lead == "amount":  # "lost 2 kg"
        return
    if item.unit == "kg" or item.lead == "weight":
        if (item.figure or 0) <= MOST_WEIGHT:
            yield item.as_role("weight")
        return
    check = _check(_ordered_beside(_with_check_before(item, trail), trail))
    if check is not None:
        yield check
        if trail.asks:
            yield from _bed(item)
        return
    if item.unit in {"cm", "mmhg"} or item.negative:
        return
    yield from _led(item, trail)


def _led(item: Item, trail: Trail) -> Iterator[Item]:
    """The roles that the cue before it allows."""
    match item.lead:
        case "amount":
            yield from _amount(item, "volume")
            if trail.sums and not trail.bed:
                yield from _bed(item)
        case "output":
            yield from _amount(item, "output")
            if trail.level and item.at and item.clocklike:
                yield from _time(item)  # "330 total at 1400"
            if not trail.bed:
                yield from _bed(item)
        case "old" | "new" | "opens" | "last":
            yield from _named(item, trail)
            starts_at = item.lead in {"new", "opens"} and len(item.digits) >= FULL_HOUR
            if starts_at and item.clocklike and item.possible(trail.arrived):
                yield from _time(item)
        case "inside":
            yield from _level(item, "inside")
        case "level" | "levelat":
            yield from _marked(item, trail)
        case "timeword" | "since":
            yield from _time(item)
            if item.link == "between" and not trail.sums and not trail.level:
                yield from _level(item)
        case "to" | "from":
            yield from _bed(item)
            yield from _level(item)
            yield from _time(item)
        case "at" | "newat":
            yield from _at(item, trail)
        case _:
            yield from _bare(item, trail)


def _at(item: Item, trail: Trail) -> Iterator[Item]:
    """The time or the level behind an at."""
    yield from _time(item)
    told = trail.time and any(map(is_event, trail.items))  # "back 1630 at 620": it has its time
    if item.unit == "ml":  # "chest tube 1720 at 515 ml"
        told |= any(i.role == "time" and i.full_clock for i in trail.items)
    then = _in_event(trail) or (trail.items[-1:] and _says_when(item, trail, trail.items[-1]))
    if not told and item.possible(trail.arrived) and item.clocklike and then:
        return
    if not trail.level and (told or not trail.time):
        yield from _level(item)


def _named(item: Item, trail: Trail) -> Iterator[Item]:
    """The level of the canister that is named; in "old canister 10 1705, changed at 1830" the bed."""
    yield from _level(item, item.lead)
    if item.lead == "old" and item.start in trail.paired and not any(i.role == "bed" for i in trail.items):
        yield from _bed(item)


def _marked(item: Item, trail: Trail) -> Iterator[Item]:
    """What stands behind the word for a line: its level; in "mark 12 left apical 85" the bed."""
    plain = item.lead == "level" and not (trail.bed or item.at or item.unit)
    if plain and item.start in trail.paired:
        yield from _bed(item)
    yield from _level(item)
    yield from _time(item) if item.at else ()


def is_event(item: Item) -> bool:
    """Whether it tells that something happened to a drain or its patient."""
    return item.role == "cue" and (item.value == "what" or (item.value == "kind" and item.name in EVENTS))


def _in_event(trail: Trail) -> bool:
    """ "died at 1740": behind an event, "at" says when."""
    for item in reversed(trail.items):
        if item.role == "sep" or (item.role == "cue" and item.value in {"level", "levelat", "new", "opens"}):
            return False
        if item.role == "bed" and item.link == "to":
            return True
        if item.role == "cue" and item.value in {"kind", "what"}:
            return is_event(item)
        if item.role == "cue" and item.value == "arrival":
            return True
    return False


def _alternative(item: Item, trail: Trail) -> Item | None:
    """ "1050 or 1060", "1200-1300": a second value for the slot of the number before."""
    if trail.mending:
        return _mended(item, trail)
    last = next((i for i in reversed(trail.items) if i.role not in {"cue", "sep"}), None)
    between = last is not None and last.link == "between"
    if item.link in {"to", "into"} and _has_moved_since(trail, last):
        return None  # "12 line 640, moved to 14"
    if item.link == "to" and item.lead in {"level", "levelat"} and last is not None and last.role == "time":
        return None  # dictated "at 6 40 pm, level to seventy five": of the level that the word names
    if item.link == "to" and item.lead == "levelat" and last is not None and last.role == "tube":
        return None  # "right basal is up to 1300"
    if item.negative or (item.link not in ALTERNATIVE and not between):
        return None
    if last is None or last.role not in SLOTTED or (item.link in {"to", "/"} and last.role == "bed"):
        return None
    if item.link == "-" and last.role == "bed" and item.label is None:
        return None
    if last.role == "tube" and item.lead in {"level", "levelat"}:
        return None  # "7 right up to 400"
    return item._replace(role="alt", name=last.name if last.role == "check" else last.role)


def _has_moved_since(trail: Trail, last: Item | None) -> bool:
    """Whether a move is the last thing told."""
    start = last.start if last is not None else 0
    return any(i.role == "cue" and i.name == "moved" and i.start > start for i in trail.items)


def _mended(item: Item, trail: Trail) -> Item | None:
    """ "ten fifty, no, ten sixty": the value after a word of repair competes with the one before it."""
    last = next((i for i in reversed(trail.items) if i.role in SLOTTED), None)
    if last is None:
        return None
    when = item.at and item.full_clock and not trail.time
    if when and last.role == "level" and not (last.full_clock or last.lead):
        return None  # "225 sorry dark in here, at 0215"
    can = {"bed": item.label is not None, "time": bool(item.clocks)}.get(last.role, item.amount is not None)
    return item._replace(role="alt", name=last.name if last.role == "check" else last.role) if can else None


def _with_check_before(item: Item, trail: Trail) -> Item:
    """ "seal topped up, now 2 cm": the centimetres of the check that was named."""
    if item.unit != "cm" or item.lead in CHECK_LIMITS:
        return item
    named = [i.value for i in trail.items if i.role == "cue" and i.value in {"seal", "suction"}]
    return item._replace(lead=named[-1]) if len(set(named)) == 1 else item


def _ordered_beside(item: Item, trail: Trail) -> Item:
    """ "4 dial 20, ordered 10": beside what it is set to, what was ordered, where the bed is said."""
    last = trail.items[-1] if trail.items else None
    ordered = last is not None and last.value == "order" and last.end == item.start - item.negative
    if not ordered or item.lead or item.unit:
        return item
    if item.negative and item.figure in DIALLED:
        return item._replace(lead="suction")  # "surgeon wants -10"
    told = any(i.role == "check" and i.name == "suction" for i in trail.items)
    return item._replace(lead="suction") if told and any(i.role == "bed" for i in trail.items) else item


def _check(item: Item) -> Item | None:
    name = item.lead
    if item.unit in CHECK_UNITS:
        names = CHECK_UNITS[item.unit]
        name = (
            name if name in names else names[0] if len(names) == 1 and name in {"", "at", "suction"} else ""
        )
    elif item.unit:
        return None
    if name not in CHECK_LIMITS or item.figure is None or item.figure > CHECK_LIMITS[name]:
        return None
    whole = name == "seal" or item.figure == int(item.figure)
    return item._replace(role="check", name=name) if whole else None


def _bare(item: Item, trail: Trail) -> Iterator[Item]:
    if item.unit in {"ml", "litre"}:
        yield from _level(item)
        return
    before = trail.items[-1] if trail.items else None
    if _may_be_bed(item, trail, before):
        yield from _bed(item)
        if _is_next_of_beds(trail) or (trail.sums and not trail.bed and len(item.digits) == FULL_HOUR - 1):
            return  # "sbar on 411" asks for a bed, and at no time
    if _says_when(item, trail, before):
        yield from _time(item)
        return
    if not trail.level and trail.fits("level"):
        yield from _promised(item, trail) or _level(item)
    ranges = item.link == "-" and trail.level and len(item.digits) < FULL_HOUR  # "200-250"
    clock = item.clocklike and not ranges and item.possible(trail.arrived)
    if not trail.time and trail.fits("time") and clock:
        yield from _time(item)
    if trail.time and trail.level and before is not None and before.role == "time" and item.clocklike:
        yield item._replace(role="bad", lead="at")


def _says_when(item: Item, trail: Trail, before: Item | None) -> bool:
    """ "expired 1510", "clamped 1400": right behind an event that has no level, a clock time says when."""
    if before is not None and before.role == "bed":  # "rip bed 19 1430"
        before = next((i for i in reversed(trail.items[:-1]) if i.value != "bed"), None)
        before = before if before is not None and before.name in TIMED else None
    event = before is not None and before.role == "cue" and before.value in {"kind", "what", *_off(before)}
    if not event or before is None or not item.clocklike:
        return False
    four = len(item.digits) == FULL_HOUR
    if not item.possible(trail.arrived):
        return four and before.name in LEVELLESS
    return (four and (before.name in TIMED or _undoes_timed(before, trail))) or (
        before.name in OFTEN_TIMED and item.within(RECENT, trail.arrived)
    )


def _off(cue: Item) -> frozenset[str]:
    """ "3 off suction 1327": when it was taken off, as with an event."""
    return frozenset({cue.value}) if cue.name == OFF else frozenset()


def _undoes_timed(event: Item, trail: Trail) -> bool:
    """ "to CT 1500 back 1545": what undoes an event that has its time has one too."""
    undone = UNDOES.get(event.name)
    told = [k for k, i in enumerate(trail.items) if undone and i.role == "cue" and i.name == undone]
    return bool(told) and any(i.role == "time" for i in trail.items[told[-1] :])


def _promised(item: Item, trail: Trail) -> list[Item]:
    """ "final level of the old canister, bed 3, was 85": the level that was announced before the bed."""
    for before in reversed(trail.items):
        if before.value == "kind" or (before.role != "cue" and before.role not in {"bed", "tube"}):
            return []
        if before.role == "cue" and before.value in LEVEL_NAMES:
            return [led._replace(lead=before.value) for led in _level(item, before.value)]
    return []


def _is_next_of_beds(trail: Trail) -> bool:
    """ "beds 18 and 19"."""
    last = trail.items[-2:]
    return (
        len(last) == 2 and last[0].role == "bed" and last[1].role == "sep" and last[1].value in {"and", "&"}
    )


def _may_be_bed(item: Item, trail: Trail, before: Item | None) -> bool:
    if item.label is None or item.at or item.about:
        return False
    if before is not None and (
        before.role == "bed" or (before.role == "cue" and before.start in trail.paired)
    ):
        return True
    if trail.bed and trail.level and item.start in trail.paired:
        # "12 1050 14 220"
        return before is not None and before.role in {"level", "time"}
    if before is not None and before.role in {"level", "tube"} and item.link in {"in", "on", "for"}:
        return not trail.bed
    tubed = bool(trail.items) and {i.role for i in trail.items} == {"tube"}
    if tubed and item.known and item.start in trail.lined:
        return True  # "right pleural 12 line 660"
    return not trail.bed and not (before is not None and before.role in {"tube", "level"})


def _bed(item: Item) -> Iterator[Item]:
    if item.label is not None and not item.unit:
        yield item.as_role("bed")


def _level(item: Item, name: str = "") -> Iterator[Item]:
    if item.amount is not None:
        yield item.named("level", name)


def _amount(item: Item, role: str) -> Iterator[Item]:
    if item.amount is not None:
        yield item.as_role(role)


def _time(item: Item) -> Iterator[Item]:
    if item.clocks:
        yield item.as_role("time")
