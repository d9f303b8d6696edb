"""Withdrawals: which line or message is taken back."""

from __future__ import annotations

from datetime import datetime

from .corrections import LINE_WORDS
from .items import RECENT, Item
from .labels import tube_name
from .moments import LIST_REACH
from .statements import Statement, Unclear, Withdrawn

MANY = frozenset({"both", "all", "every", "each"})


def is_withdrawal(items: tuple[Item, ...]) -> bool:
    """Whether a line or message is taken back."""
    return any(i.role == "cue" and i.value == "kind" and i.name == "withdrawn" for i in items)


def _may_be_level(item: Item, items: tuple[Item, ...], arrived: datetime) -> bool:
    """ "disregard 1050": the level of the line, or its time; a full hour or a recent one is the time."""
    if item.role == "time" or item.lead in {"at", "timeword"} or item.within(RECENT, arrived):
        return False
    after = next((i for i in items if i.start >= item.end), None)
    line = after is not None and after.role == "cue" and after.value in LINE_WORDS
    return not line and not item.digits.startswith("0") and all(c.minute for c in item.clocks)


def _bed_among(times: list[Item]) -> Item | None:
    """ "cancel 418 1900", "the last one on 405": where labels look like times, the number that is one."""
    found = [i for i in times if i.role == "num" and i.label is not None and not (i.at or i.lead)]
    told = len(times) > 1 or any(i.link in {"on", "for", "in"} for i in found)
    return found[0] if told and len(found) == 1 else None


def withdrawn(items: tuple[Item, ...], arrived: datetime, text: str) -> Statement | Unclear:
    """What is taken back: the last message, or the line of that bed and time."""
    beds = list(dict.fromkeys(i.label for i in items if i.role == "bed"))
    tubes = [i.name for i in items if i.role == "tube"]
    times = [
        i
        for i in items
        if i.role == "time" or (i.role == "num" and i.clocklike and i.within(LIST_REACH, arrived))
    ]
    nums = [i for i in items if i.role == "num" and i not in times]
    if not beds and len(nums) == 1 and nums[0].label is not None:
        beds, nums = [nums[0].label], []
    if not beds and not nums and (bed := _bed_among(times)) is not None:
        beds, times = [bed.label], [i for i in times if i is not bed]
    made = Withdrawn(bed=beds[0] if beds else None, tube=tube_name(tubes) if tubes else None)
    if any(i.role in {"foreign", "claimed"} for i in items):
        return Unclear(slot="kind", text=text, statement=made)  # "cancel the breakfast tray for 12"
    if len(beds) > 1 or any(i.role == "bed" and not i.known for i in items):
        return Unclear(slot="bed", text=text, choices=tuple(b for b in beds if b), statement=made)
    lines = any(i.role == "cue" and i.value in LINE_WORDS for i in items)
    if "take back" in text.lower() and not lines:  # back to theatre?
        return Unclear(slot="kind", text=text, statement=Statement(bed=made.bed))
    if any(i.role == "bad" for i in items):
        return Unclear(slot="at" if beds else "bed", text=text, statement=made)
    many = MANY & set(text.lower().split())  # "delete both marks on 6"
    if many or len(times) > 1 or nums or any(_may_be_level(i, items, arrived) for i in times):
        return Unclear(slot="at", text=text, statement=made)
    if times:
        found = times[0].when(arrived, LIST_REACH)
        if found.sure is None:
            return Unclear(slot="at", text=text, choices=found.values or found.nearest, statement=made)
        return Withdrawn(bed=made.bed, tube=made.tube, at=found.sure)
    return made
