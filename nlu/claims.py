"""Numbers of what is not ours: beside "urine", "bp" or an age a number is claimed, and never a line.

Called by `scope`, before any number gets its role.
"""

from __future__ import annotations

from .items import EVENTS, FULL_HOUR, MEASURED, NUMBERLESS, Item
from .neighbours import phrase_of
from .numbers import Toks, glued, word
from .patterns.ofwhat import GAIN_REACH, GAINED
from .patterns.otherfigures import COLLECTORS, DRUGS
from .renewed import CONTEXT

CLAIMED = "claimed"
SAYS = frozenset({"num", "bad"})
STRONG = frozenset({",", ";", ".", "!", "but", "then"})
OURS = frozenset(
    {
        "level",
        "levelat",
        "tubeword",
        "canister",
        "seal",
        "suction",
        "wall",
        "leak",
        "tidal",
        "old",
        "new",
        "opens",
        "kind",
        "what",
        "amount",
        "closing",
    }
)
DAYS = frozenset({"day", "pod"})
"""With one of these, a phrase takes the number of a day."""
AGES = frozenset({"yo", "y / o", "old"})
"""So a phrase ends behind an age: "71 yo", "8 month old"."""
PER_CENT = 100
MOST_DAYS = 60
CLAIMABLE = frozenset({"", "at", "amount", "output"})
DOSES = frozenset({"mg", "mcg", "g", "meq", "grams", "gram", "units"})
CAME = frozenset({"out", "amount"})
WHENCE = frozenset({"of", "from", "in", "into", "via"})
HAVING = frozenset({"has", "have", "had", "he's", "she's", "got"})
"""Before a device these tell that a patient has it, and the number before them is of something else."""
FEWEST_TOLD = 2
"""Numbers of a line: its bed or its level, and its time."""
DRESSINGS = frozenset({"dressing", "dressings", "drsg", "dsg"})
"""What has no number of its own."""
DRESSED = frozenset({"changed", "change", "done", "intact", "dry", "reinforced", "redone", "cdi"})
SOAKED = frozenset(
    {"wet", "soaked", "soaking", "saturated", "weighed", "weighs", "weight", "grams", "gm", "g"}
)
"""With one of these a dressing may have been weighed."""
MEASURING = (
    COLLECTORS | DRUGS | {"drain", "tube", "tap", "vac", "bag", "bags", "output", "loss", "ebl", "blood"}
)
"""With one of these another thing may have the millilitres before it: "1816 good air entry" has none."""
BREATHING = frozenset({"bipap", "cpap", "hfnc", "hfno", "niv", "vent"})
ACCOMPANIED = frozenset({"on", "with", "w"})
"""Before a device: what a patient is on or has, behind the time of a line; "1816 - dinner came", too."""
OWNERS = frozenset({"his", "her", "their", "the", "a", "pts", "patients"})


def claimed(items: list[Item], toks: Toks) -> list[Item]:
    """Numbers beside "urine", "bp", "foley" are not ours, up to the next word that is ours."""
    reasoned = any(i.role == "cue" and i.value == "reason" for i in items)  # "pod 1 heart" tells one
    for k, cue in enumerate(items):
        if cue.role != "cue" or cue.value != "other":
            continue
        is_day = not DAYS.isdisjoint(phrase_of(cue, toks).split())
        if is_day and not _is_day_number(items, k):
            items[k] = cue.as_role("foreign")
            continue
        if k and _is_age(items[k - 1], cue, toks):
            items[k - 1], items[k] = items[k - 1].as_role(CLAIMED), cue._replace(value="filler")
            continue
        measured = k + 1 < len(items) and items[k + 1].name == MEASURED  # "hr 104"
        own = k > 0 and not measured and _is_its_number(items, k, toks)
        if own:
            items[k - 1] = items[k - 1].as_role(CLAIMED)
        timed = False
        for j in range(k + 1, len(items)) if not measured else ():
            if _ends_claim(items, j, toks) or _is_ours(items[j], own) or (own and items[j].role == "bed"):
                break
            if (timed and items[j].role in SAYS) or items[j].value == "other":
                break
            timed |= own and (items[j].role == "time" or _is_clock_after(items[j], own))
            if items[j].role == "time" and j == k + 1 and all(c.style == "date" for c in items[j].clocks):
                items[j], own = items[j].as_role(CLAIMED), True  # "pain 4/10"
            if items[j].role in SAYS and _is_on_saturday(cue, items[j], toks):
                items[j] = items[j]._replace(role="bad", lead="at")
                break
            if items[j].role in SAYS and not _is_clock_after(items[j], own):
                items[j], own = items[j].as_role(CONTEXT if is_day and reasoned else CLAIMED), True
                if is_day:
                    break  # "pod 2 640 0645": which day it is, and no more
        own |= measured
        if not own:
            _claim_before(items, k, toks)
        said = cue._replace(name=MEASURED if measured else cue.name if own else _numberless(items, k, toks))
        of_none = is_day if own else _is_dressed(items, k, toks)
        items[k] = said._replace(value="filler") if of_none else said.as_role("foreign")
    return items


def _is_dressed(items: list[Item], k: int, toks: Toks) -> bool:
    """ "dressing changed, 720": in a clause of its own, of which no number can be."""
    ends = k + 1 < len(items) and items[k + 1].role == "sep"
    first, last = word(toks, items[k].start), word(toks, items[k].end - 1)
    return ends and first in DRESSINGS and last in DRESSED


def _numberless(items: list[Item], k: int, toks: Toks) -> str:
    """The name of what has no number before its stop: "3 dressing reinforced, 145", "on bipap, 240"."""
    stop = next((j for j in range(k + 1, len(items)) if items[j].role == "sep"), len(items) - 1)
    plain = items[stop].value in STRONG and all(i.unread for i in items[k + 1 : stop])
    plain &= all(i.value not in EVENTS for i in items)  # "tube out 1735, dressing on, 180"
    dressing = word(toks, items[k].start) in DRESSINGS and SOAKED.isdisjoint(toks.words)
    breathing = word(toks, items[k].start) in BREATHING and word(toks, items[k].start - 1) == "on"
    return NUMBERLESS if plain and (dressing or (breathing and stop == k + 1)) else items[k].name


def without_gains(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "weight gain of 2 kg", "off by 4 kg", "positive 3 kg": how much more, and not what somebody weighs."""
    if GAINED.isdisjoint(toks.words):
        return items
    before = {i.start: toks.said[max(0, i.start - GAIN_REACH) : i.start] for i in items if i.unit == "kg"}
    gained = {k for k, said in before.items() if not GAINED.isdisjoint(said) and said[-1] != "to"}
    return tuple(i.as_role(CLAIMED) if i.start in gained else i for i in items)


def without_doses(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "gave 5 mg of morphine": beside what was given, how much of it."""
    beside = [None, *items], [*items[1:], None]
    return tuple(
        i.as_role(CLAIMED) if i.role == "bad" and word(toks, i.end - 1) in DOSES and _is_given(near) else i
        for i, *near in zip(items, *beside, strict=False)
    )


def _is_given(near: list[Item | None]) -> bool:
    """Whether a word that was not understood, or another matter, stands beside it."""
    return any(i is not None and (i.unread or i.value == "other") for i in near)


def _claim_before(items: list[Item], k: int, toks: Toks) -> None:
    """ "450 foley", "450 out of his foley": the number before a device is its own."""
    place = _place_before(items, k, toks)
    takes = place >= 0 and items[place].role in SAYS and items[place].lead in CLAIMABLE
    takes &= not (items[place].at and word(toks, items[k].start - 1) in OWNERS)  # "at 0941 the pump beeps"
    takes &= not _is_had(items[place].end, items[k].start, toks)
    beside = word(toks, items[k].start) in DRESSINGS or word(toks, items[k].start - 1) in ACCOMPANIED
    dry = MEASURING.isdisjoint(toks.said[items[k].start : items[k].end])
    beside |= (word(toks, items[k].start - 1) == "-" or dry) and len(items[place].digits) == FULL_HOUR
    takes &= ":" not in toks.said[items[place].start : items[place].end]  # "794 18:36 ate"
    takes &= not (beside and _is_behind_line(items, place))  # "480 2200 on o2"
    if takes and not _is_only_bed(items, place) and not _is_of_line(items, place):
        items[place] = items[place].as_role(CLAIMED)
        items[place + 1 : k] = [i._replace(value="filler") for i in items[place + 1 : k]]


def _is_had(start: int, end: int, toks: Toks) -> bool:
    """ "1820 he has a foley": what a patient has, behind the time of a line; not "450 he has out of it"."""
    return word(toks, end - 1) in {"a", "an"} and not HAVING.isdisjoint(toks.said[start:end])


def _ends_claim(items: list[Item], j: int, toks: Toks) -> bool:
    return (items[j].role == "sep" and items[j].value in STRONG) or _opens_a_line(items, j, toks)


def _opens_a_line(items: list[Item], j: int, toks: Toks) -> bool:
    """ "foley emptied - 12 340 at 1900": behind a dash a bed begins, with its line."""
    item = items[j]
    dash = word(toks, item.start - 1) == "-" and not (glued(toks, item.start - 1) or glued(toks, item.start))
    bed = item.role == "bed" or (item.value == "bed" and item.role == "cue") or item.label is not None
    told = sum(i.role in SAYS or i.role == "time" for i in items[j:])
    return dash and bed and told >= FEWEST_TOLD


def _is_behind_line(items: list[Item], k: int) -> bool:
    """ "780 1500 dressing cdi", "seven twenty at three dressing changed": a time with its line before it."""
    line = items[k - 1] if k > 0 else None
    told = line is not None and line.role == "num" and line.label is None
    return told and (items[k].clocklike or items[k].at)


def _is_age(number: Item, cue: Item, toks: Toks) -> bool:
    """ "71 yo", "8 month old": the patient's, and behind it the line may be told."""
    said = phrase_of(cue, toks)
    aged = said in AGES or said.split()[-1] in AGES
    return aged and number.role in SAYS and number.lead in CLAIMABLE and number.end == cue.start


def _place_before(items: list[Item], k: int, toks: Toks) -> int:
    """Where the number before a device stands: "450 she put out of her foley", "450 came from his ng"."""
    start = items[k].start - 1
    while word(toks, start) in OWNERS:
        start -= 1
    verb = items[k - 1]
    came = verb.role == "cue" and (verb.value in CAME or verb.name == "came")
    return k - 2 if k > 1 and came and word(toks, start) in WHENCE else k - 1


def _is_on_saturday(cue: Item, number: Item, toks: Toks) -> bool:
    """ "340 sat 2200": no saturation is that high."""
    beside = number.start - cue.end <= 1 and phrase_of(cue, toks) == "sat"
    return beside and word(toks, cue.end) != "up" and (number.amount or 0) > PER_CENT


def _is_day_number(items: list[Item], k: int) -> bool:
    """ "pod 2", "post op day 1": behind a word for a day stands one small number."""
    after = items[k + 1] if k + 1 < len(items) else None
    return after is None or after.role not in SAYS or (after.amount or 0) <= MOST_DAYS


def _is_of_line(items: list[Item], k: int) -> bool:
    """ "mark 540 at 1900 vitals stable", "12 540 at 1900 urine": the time right behind a line is its own."""
    line, time = items[k - 1] if k else None, items[k]
    if line is None or line.role != "num" or not (time.at and time.clocklike):
        return False
    return line.lead in {"level", "levelat"} or (line.label is None and line.end + 1 == time.start)


def _is_only_bed(items: list[Item], k: int) -> bool:
    """ "19 cxr done, back": a label at the start, where no other bed is said."""
    first = not any(i.role != "cue" for i in items[:k]) and not any(i.role == "bed" for i in items)
    return first and items[k].label is not None and not items[k].unit


def _is_ours(item: Item, own: bool) -> bool:
    """A word of the drain; "wound vac canister 150": the canister of a thing with no number is its own."""
    if item.role == "num" and item.lead == "inside":  # "temp 37.8 640 in drain"
        return own
    chest = item.unread and item.name == "chest"  # "ng 340 chest 1280"
    return chest or (item.role == "cue" and item.value in OURS and (own or item.value != "canister"))


def _is_its_number(items: list[Item], k: int, toks: Toks) -> bool:
    """ "500 ml bolus at 0300": the number before is its own where the one behind is the time; and so it is
    in "300 in the urine bag 180 in the drain"."""
    before, cue = items[k - 1], items[k]
    after = next((i for i in items[k + 1 :] if i.role in SAYS or i.role == "time"), None)
    between = toks.said[before.end : cue.start]
    if between[:1] == ("in",) and OWNERS.issuperset(between[1:]) and after is not None:
        return before.role in SAYS and before.lead in CLAIMABLE and after.lead == "inside"
    adjoins = before.role in SAYS and before.end == cue.start and before.lead in CLAIMABLE
    return (
        adjoins and before.unit != "" and after is not None and (after.role == "time" or after.lead == "at")
    )


def _is_clock_after(item: Item, own: bool) -> bool:
    written = len(item.digits) == FULL_HOUR and item.digits[0] == "0"
    return own and item.lead == "at" and (item.clocklike or written)
