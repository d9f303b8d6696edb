"""What cannot be so in a reading: a slot with two values, a number with no place, one line of two tubes.

What may be otherwise is a doubt, and in `judging`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .clockface import Clock
from .drafts import Draft
from .items import is_bare
from .roles import OF_PATIENT


def faults_of(draft: Draft) -> list[str]:
    """Why this statement cannot be as it is read; nothing where nothing speaks against it."""
    found = [f"{slot} has two values" for slot in draft.clashes]
    found += ["a number has no place" for _ in draft.bad]
    found += ["a number that may not be ours, or mends another slot"] * draft.faults
    if draft.level is not None and draft.kind in OF_PATIENT and is_bare(draft.level):
        found.append("an event that has no level")
    if draft.bed is None and not draft.clashes.get("bed") and draft.has_content:
        found.append("no bed was said")
    if draft.bed is not None and not draft.bed.known:
        found.append("the unit has no such bed")
    if draft.time is not None and not (draft.has_timed_content or _is_line_of_time(draft)):
        found.append("a time with nothing said of it")
    if draft.kind == "moved" and draft.to_bed is None:
        found.append("no bed to move to")
    if draft.since is not None:
        found += _of_since(draft)
    if draft.kind == "help" and (draft.level or draft.final) is not None:
        found.append("a call for help has no level")
    if draft.final is not None and not draft.kind:
        found.append("a final level of a canister that was not changed")
    if draft.level is not None and not draft.kind and draft.is_of_two:
        found.append("one line of two tubes")
    if draft.more_beds and draft.level is not None and not draft.level.lead:
        found.append("two beds with one level")
    if draft.more_beds and draft.again is not None:
        found.append("of a row of beds, one is named again")  # "15 and 20. 15 mark 20"
    if draft.kind == "placed" and draft.level is not None and draft.level.lead == "old":
        found.append("a tube that is new has no old level")
    if draft.opening is not None and not draft.kind:
        found.append("what a canister held at first, and none was changed or placed")
    if draft.wants is not None and not draft.has_content:
        found.append("no level was said")
    if draft.time is not None and len(draft.time.clocks) == 0:
        found.append("no such time")
    return found


def _of_since(draft: Draft) -> Iterator[str]:
    """What a time since which cannot be of: "at 1900 bed 12 in theatre since 1820" has two."""
    if draft.time is not None and (draft.checks or draft.whats or draft.kind == "away"):
        yield "a time, and a time since which"
    if draft.kind and draft.time is None:
        yield "an event has a time, and not a time since which"
    if draft.level is not None:
        yield "a line has a time, and not a time since which"


def _is_line_of_time(draft: Draft) -> bool:
    """ "the 0600 mark on 12": the line of that time, whose level is asked."""
    sure = draft.time is not None and draft.time.sure_time
    return sure and draft.bed is not None and draft.wants is not None


def same_line_twice(drafts: list[Draft]) -> list[str]:
    """Two levels of one drain at one time: one of them is not a level, or they are two drains."""
    seen: dict[tuple[str | None, str | None, tuple[Clock, ...]], Draft] = {}
    found: list[str] = []
    for draft in list(drafts):
        if draft.level is None or draft.kind:
            continue
        key = (draft.bed.label if draft.bed else None, draft.tube, draft.time.clocks if draft.time else ())
        first = seen.setdefault(key, draft)
        again = draft.time is not first.time  # "mark 650 at 2200, mark 650, 2200"
        same = again and first.level is not None and first.level.amount == draft.level.amount
        if first is not draft and not same:
            found.append("two levels of one drain at one time")
            first.clash("level", first.level, draft.level)
            drafts.remove(draft)
    return found


def same_as_another(drafts: list[Draft]) -> None:
    """ "3 at 470, 4 the same": no change, or the level of the bed before? It is asked."""
    for before, draft in pairwise(drafts):
        other = before.bed is not None and draft.bed is not None and before.bed.label != draft.bed.label
        if other and before.level is not None and draft.same is not None and draft.same.name == "alone":
            draft.clash("volume", draft.same)
