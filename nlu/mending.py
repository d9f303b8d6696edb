"""Words of repair: what was said just before them is mended by what follows, and both are looked at.

"bed twelve, no, thirteen", "mark 720 bed 10 actually make that bed 12". Called by `scope`.
"""

from __future__ import annotations

from collections.abc import Iterator

from .items import Item
from .neighbours import phrase_of
from .numbers import Toks

REPAIR = "repair"
MENDING = frozenset({"correction", "make that", "scratch that", "strike that"})
TOLD_LEADS = frozenset({"level", "levelat"})


def _mends(items: list[Item], k: int, toks: Toks) -> bool:
    """ "correction"; in "mark 720 bed 10 actually make that bed 12" the "actually" is one with it."""
    if k + 1 < len(items) and phrase_of(items[k], toks) == "actually":
        return items[k + 1].value == "repair" or _mends(items, k + 1, toks)
    return items[k].value == "kind" and phrase_of(items[k], toks) in MENDING


def _opens(items: list[Item], k: int, toks: Toks) -> bool:
    """ "bed 5 correction 340 at 1800", "bed 5 18:00: correction 340": of which line was said before, and
    what follows is no bed."""
    after = [i for i in items[k + 1 :] if i.role != "sep"]
    bare = bool(after) and after[0].role == "num" and after[0].label is None
    times = [i for i in items[:k] if i.role == "time" or (i.role == "num" and any(c.colon for c in i.clocks))]
    bare &= not times or (len(after) == len(times) == 1 and phrase_of(items[k], toks) == "correction")
    return bare and all(i.role in {"bed", "sep"} or i.value == "bed" or i in times for i in items[:k])


def _is_of_two(items: list[Item], k: int, toks: Toks) -> bool:
    """ "mark two fifteen actually two fifty", "bed 3 actually bed 5": said of what stands just before."""
    if not 0 < k < len(items) - 1 or phrase_of(items[k], toks) != "actually":
        return False
    told = items[:k]
    before, after = items[k - 1], next((i for i in items[k + 1 :] if i.value != "bed"), items[k])
    if before.role == after.role == "bed":
        return not any(i.role in {"num", "time"} for i in told)
    if not {before.role, after.role} <= {"num", "time"}:
        return False
    led = any(i.lead in TOLD_LEADS for i in told[:-1])
    timed = led and (before.role == "time" or before.at)
    return timed or (before.role == after.role == "num" and before.lead in TOLD_LEADS)


def repaired(items: list[Item], toks: Toks) -> Iterator[Item]:
    """ "bed twelve, no, thirteen": a word of repair with something before it and something after."""
    said = False
    for k, item in enumerate(items):
        mends = (_mends(items, k, toks) and not _opens(items, k, toks)) or _is_of_two(items, k, toks)
        repairs = item.role == "cue" and (item.value in {"repair", "no"} or mends)
        if repairs and item.value == "no" and _answers(items, k):
            repairs = False
        if repairs and said and any(i.role in {"num", "bed", "time", "tube"} for i in items[k + 1 :]):
            yield item.as_role(REPAIR)
        else:
            yield item
        said |= item.role in {"num", "time"} or item.role == "bed"


def _answers(items: list[Item], k: int) -> bool:
    """ "12 no 1050": only a bed before, and behind it what can be no bed: a "no" to what was asked."""
    before, after = [i for i in items[:k] if not _quiet(i)], [i for i in items[k + 1 :] if not _quiet(i)]
    if len(before) != 1 or len(after) != 1 or not (before[0].role == "bed" or before[0].label is not None):
        return False
    return after[0].role == "num" and after[0].label is None


def _quiet(item: Item) -> bool:
    return item.role == "sep" or (item.role == "cue" and item.value in {"bed", "level", "word"})
