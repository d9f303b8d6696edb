"""Where a way goes on from a number: as a bed, a level or a time, with the unit and the cue behind it.

What a number can be is found in `places`; here it becomes the next piece of a way. Called by `lattice`.
"""

from __future__ import annotations

from collections.abc import Iterator

from .followers import CHECKS, followed_by, may_be_bed
from .fractions import BEGINNING
from .ground import Ground
from .items import Item
from .neighbours import is_negative, is_of_number_before, is_spaced_letter, is_tainted, may_follow
from .numbers import Toks, heard_as_number, is_digits, starts_number, word
from .patterns.leads import LEVEL_LEADS
from .ways import Step, Way


def number_steps(ground: Ground, i: int, way: Way) -> list[Step]:
    """Each way on from a number that begins here, as whatever it can be; none where there is none."""
    if way.lead == "bed" or _is_b(ground, i):
        start = i + 1 if _is_b(ground, i) else i
        beds = list(bed_steps(ground, start, way, cued=True))
        if beds:
            return beds
    begins = starts_number(ground.toks, i) or word(ground.toks, i) in BEGINNING
    found = list(_bare(ground, i, way) if begins else _lettered(ground, i, way))
    if ground.voice and (way.lead == "at" or way.lead in LEVEL_LEADS) and starts_number(ground.toks, i + 1):
        found += misheard(ground, i, way)
    return found


def bed_steps(ground: Ground, i: int, way: Way, *, cued: bool) -> Iterator[Step]:
    """Each way on from a bed's label; `cued` after the word bed, where one that the unit lacks counts too."""
    for end, label, known in ground.places.labels(i, voice=ground.voice, cued=cued):
        if known or not is_spaced_letter(ground.toks, i, end):
            bed = Item("bed", i, end, label=label, known=known, link=ground.link(i))
            yield end, way.with_item(bed)


def misheard(ground: Ground, i: int, way: Way) -> Iterator[Step]:
    """Each way on from words that a recogniser writes for a number: "to fifty five"."""
    for number in heard_as_number(ground.toks, i):
        behind = ground.cues.get(number.end)
        counted = behind is not None and behind.label == "ml"
        end = behind.end if behind is not None and counted else number.end
        item = Item("num", i, end, amount=int(number.value), lead=way.lead, at=way.at, core=number.end)
        yield end, way.with_item(item._replace(unit="ml" if counted else ""))


def _is_b(ground: Ground, i: int) -> bool:
    return word(ground.toks, i) in {"b", "bed", "rm"} and starts_number(ground.toks, i + 1)


def _lettered(ground: Ground, i: int, way: Way) -> Iterator[Step]:
    """A label that begins with letters, without the word bed: CT4."""
    if word(ground.toks, i).isalpha() and ground.index is not None and len(word(ground.toks, i)) <= 4:
        for end, label, _ in ground.places.labels(i):
            yield end, way.with_item(Item("bed", i, end, label=label, link=ground.link(i)))


def _bare(ground: Ground, i: int, way: Way) -> Iterator[Step]:
    after = way.items[-1] if way.items else None
    for item in ground.places.measured(i):
        if _cuts(ground, way, item):
            continue
        whole = _completed(ground, item, i, way)
        if after is not None and after.end == i and not may_follow(after, whole):
            continue
        if is_of_number_before(ground.toks, i, after, ground.index):
            continue
        way = _next_pair(way, whole, ground.toks)
        end, led = followed_by(whole, ground.toks, ground.cues)
        alone = led.lead in CHECKS and not whole.lead and may_be_bed(whole, way.items, ground.toks)
        if not (alone and way.items):
            yield end, way.with_item(led)
        if alone:
            yield whole.end, way.with_item(whole)
    if way.lead in {"", "to", "from"} and not way.at:
        yield from _longer_labels(ground, i, way)


def _cuts(ground: Ground, way: Way, item: Item) -> bool:
    """Whether the pieces before and this one are one number cut in two."""
    for before in reversed(way.items[-5:]):
        if before.role not in {"num", "bad", "time", "sep"}:
            return False
        if before.role != "sep" and ground.places.ends(before.start) & {item.end, item.core}:
            return True
    return False


def _next_pair(way: Way, item: Item, toks: Toks) -> Way:
    """ "1500=300 1600=340": each sign of equality makes a pair of its own; "corr 219 1300 = 310" has one."""
    sign = word(toks, item.end)
    if not (sign == "=" or (sign == ":" and item.label is not None)):
        return way
    before = way.items[-1] if way.items else None
    paired = before is not None and before.role in {"num", "time"} and before.end == item.start
    if not paired or any(each.name == "corrected" for each in way.items):
        return way
    return way._replace(items=(*way.items, Item("sep", item.start, item.start, ",")))


def _longer_labels(ground: Ground, i: int, way: Way) -> Iterator[Step]:
    """A label with letters or a dash, without the word bed: 12a, 3-B; or with its two sides behind it."""
    voice = ground.voice
    for end, label, known in ground.places.labels(i, voice=voice, cued=voice):
        pieced = (
            voice and end == i + 2 and is_digits(ground.toks, i + 1) and len(word(ground.toks, i + 1)) == 2
        )
        if known and (not label.isdecimal() or pieced or ground.places.is_before_sides(i, end)):
            yield end, way.with_item(Item("bed", i, end, label=label, link=ground.link(i)))


def _completed(ground: Ground, item: Item, i: int, way: Way) -> Item:
    label = None
    for end, text, known in ground.places.labels(i):
        if known and end == item.end and not item.unit and (ground.voice or word(ground.toks, i) != "one"):
            label = text
    return Item(
        "bad" if item.role == "bad" or _is_unsound(ground, i, item.end, way) else "num",
        *item[1:6],
        label=label,
        known=item.known,
        clocks=item.clocks,
        lead=way.lead,
        at=way.at or word(ground.toks, i - 1) == "@",
        link=ground.link(i),
        unit=item.unit,
        negative=is_negative(ground.toks, i),
        about=way.about or item.about,
        figure=item.figure,
        digits=item.digits,
        core=item.core,
    )


def _is_unsound(ground: Ground, start: int, end: int, way: Way) -> bool:
    broken = start - 1 in ground.broken or end in ground.broken
    return broken or is_tainted(ground.toks, start, way.items[-1] if way.items else None)
