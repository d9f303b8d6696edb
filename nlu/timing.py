"""The time that the statements of one message share, and those that have none of it.

Called by `sharing`, once every draft has its bed.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

from .drafts import Draft
from .items import Item, is_now
from .moments import is_same_time
from .roles import UNDOES

PASSING = frozenset({"tipped", "disconnected", "kinked", "raised", "damaged"})


def share_times(drafts: list[Draft], stops: Sequence[Item]) -> None:
    """Gives the only time of the message, or of a sentence, to what was told without one."""
    _now_of_next(drafts)
    now_of_findings(drafts, stops)
    times = {d.time.start: d.time for d in drafts if d.time is not None}
    if any("time" in d.clashes for d in drafts):
        return
    if len({_first_said(time, times.values()).start for time in times.values()}) > 1:
        _share_behind_groups(drafts)
        _share_in_sentences(drafts, [s.start for s in stops if s.value != ","])
    elif times:
        _share(drafts, next(iter(times.values())), stops)


def _first_said(time: Item, times: Iterable[Item]) -> Item:
    """The first of these that says the same time: "11 90 at 7, 12 380 at 7"."""
    same = (t for t in times if is_same_time(t.clocks, time.clocks) and is_same_time(time.clocks, t.clocks))
    return next(same, time)


def _now_of_next(drafts: list[Draft]) -> None:
    """ "dumped 200, now 860 at 1845", "kinked at 1745, dumped 120, now 680": the now is of the line right
    behind it, or that has its own time."""
    for draft, after in pairwise(drafts):
        now, level = draft.time, after.level
        if now is None or level is None or draft.shared_time or draft.level is not None:
            continue
        if now.end == level.start and is_now(now):
            draft.time, own = None, after.time is not None and not after.shared_time
            after.time, after.shared_time = (after.time if own else now), False


def now_of_findings(drafts: list[Draft], stops: Sequence[Item]) -> None:
    """ "it was kinked under him, swinging again now": the now is of what is found since."""
    for draft in drafts:
        now, mishaps = draft.time, {w.name for w in draft.whats}
        if now is None or not mishaps or not mishaps <= PASSING or draft.kind or not draft.checks:
            continue
        told = draft.whats[-1].end
        only = not (draft.level or draft.volume or draft.shared_time)
        if only and is_now(now) and any(told <= s.start < now.start for s in stops):
            draft.time = None


def _share(drafts: list[Draft], only: Item, stops: Sequence[Item]) -> None:
    for k, draft in enumerate(drafts):
        if draft.time is not None or (draft.gushed and draft.volume is not None):
            continue
        own = (
            _is_undone(draft, drafts[k + 1 :])
            or _is_after_exchange(draft, only, drafts)
            or _is_told_apart(draft, only, drafts, stops)
            or _is_before_event(draft, only, drafts, stops)
            or _is_before_now(draft, only)
        )
        if not own:
            draft.time, draft.shared_time = only, True


def _share_behind_groups(drafts: list[Draft]) -> None:
    """ "L 310 R 95 at 0400, L 330 R 100 at 0500": the same drains again, each time their time behind."""
    groups: list[list[Draft]] = [[]]
    for draft in drafts:
        groups[-1].append(draft)
        if draft.time is not None:
            groups.append([])
    told = [[(d.bed.label if d.bed else None, d.tube) for d in group] for group in groups[:-1]]
    again = len(told) > 1 and all(len(set(drains)) > 1 and drains == told[0] for drains in told)
    lines = all(d.level is not None and not d.kind for d in drafts)
    behind = all(g[-1].time and g[-1].level and g[-1].level.start < g[-1].time.start for g in groups[:-1])
    if again and lines and behind and not groups[-1]:
        for group in groups[:-1]:
            for draft in group[:-1]:
                draft.time, draft.shared_time = group[-1].time, True


def _share_in_sentences(drafts: list[Draft], ends: list[int]) -> None:
    """ "9 left 430 right 110 at 0700. changed the box at 0630": both lines are of their sentence's time."""
    timed = [d for d in drafts if d.time is not None and not d.shared_time and d.level is not None]
    of_all = _time_of_all(drafts, [d for d in timed if not (d.kind or d.whats)], ends)
    for draft in drafts:
        told = draft.level or draft.volume or draft.same
        if draft.time is not None or told is None or draft.kind or draft.whats:
            continue
        near = [d for d in timed if d.time is not None and _sentence(d.time, ends) == _sentence(told, ends)]
        near = [d for d in near if not ((d.kind or d.whats) and is_other_bed(d, draft))]
        behind = all(d.time.start < told.start for d in near if d.time is not None)
        if of_all is not None and (behind or of_all.start > told.end):
            draft.time, draft.shared_time = of_all, True
        elif len({d.time.start for d in near if d.time}) == 1 and not any(d.kind or d.whats for d in near):
            draft.time, draft.shared_time = near[0].time, True


def _time_of_all(drafts: list[Draft], timed: list[Draft], ends: list[int]) -> Item | None:
    """ "1830 lines: bed 3 440. bed 5 tipped at 1810. bed 8 95", "... all read at 1830": the time of lines
    that stands before the first bed, where others stand behind their lines, or in a sentence of its own."""
    told = [(d.time, d.level) for d in timed if d.time is not None and d.level is not None]
    beds = [d.bed.start for d in drafts if d.bed is not None]
    if len(set(beds)) < len(("one", "another")):
        return None
    heads = {time.start: time for time, _ in told if time.start < min(beds)}
    behind = all(level.end <= time.start for time, level in told if time.start not in heads)
    lasts = {
        time.start: time
        for time, level in told
        if level.end <= time.start > max(beds) and _sentence(time, ends) > _sentence(level, ends)
    }
    found = [t for t in (heads if behind else lasts).values() if not is_now(t)] or list(lasts.values())
    apart = [t for t in found if t.at or t.start in lasts or t.end < min(beds)]
    return apart[0] if len(apart) == 1 else None


def is_other_bed(event: Draft, draft: Draft) -> bool:
    """ "3 440, 5 tube out 1810 final 210, 8 95 at 1900": an event of another bed has its own time."""
    return event.bed is not None and draft.bed is not None and event.bed.label != draft.bed.label


def _sentence(item: Item, ends: list[int]) -> int:
    return sum(end <= item.start for end in ends)


def _is_before_event(draft: Draft, time: Item, drafts: list[Draft], stops: Sequence[Item]) -> bool:
    """ "bed 10 reads 430. box changed at 0630": a line has not the time of an event of the next sentence."""
    level = draft.level
    if level is None or draft.kind or draft.whats or level.start > time.start:
        return False
    events = [d for d in drafts if d.time is time and not d.shared_time and (d.kind or d.whats)]
    if any(d.kind == "exchanged" and d.final is not None for d in events) and level.lead != "new":
        return True  # "box is at 780, old one 1990 changed at 1100"
    return bool(events) and any(level.end <= s.start < time.start and s.value != "," for s in stops)


def _is_before_now(draft: Draft, time: Item) -> bool:
    """ "box changed, old 1290, now at 20": what it reads now, and it was changed before."""
    final = draft.final if draft.kind == "exchanged" else None
    return final is not None and final.start < time.start and is_now(time)


def _is_undone(draft: Draft, later: list[Draft]) -> bool:
    """ "suction off, back on at 1855": the time of what undoes an event is not its own."""
    told = {draft.kind, *(w.name for w in draft.whats)}
    return any(UNDOES.get(name) in told for d in later for name in (d.kind, *(w.name for w in d.whats)))


def _is_told_apart(draft: Draft, time: Item, drafts: list[Draft], stops: Sequence[Item]) -> bool:
    """ "bed 5 tube out at 1345. bed 7 moved to 10", "bed 9 back 0640, bed 10 340": an event of one bed and
    what is told of another have not one time."""
    timed = [d for d in drafts if d.time is time and not d.shared_time and d.bed is not None]
    beds = [d.bed for d in timed if d.bed is not None]
    event = draft.kind or draft.whats or all(d.kind or d.whats for d in timed)
    if draft.bed is None or not event or draft.bed.label in {b.label for b in beds}:
        return False
    if any(time.start < bed.start for bed in beds):
        return False  # "1340: bed 7 tipped, bed 8 clamped"
    behind = draft.bed.start > time.start
    first, last = (time.end, draft.bed.start) if behind else (draft.bed.end, time.start)
    apart = behind or not (draft.kind or draft.whats) or _differs(draft, timed)
    return any(first <= s.start < last and (apart or s.value != ",") for s in stops)


def _differs(draft: Draft, timed: list[Draft]) -> bool:
    """ "bed 13 tube out, bed 14 off to CT at 1000": another event, which has its own time."""
    return all((d.kind or d.whats) and _events(d) != _events(draft) for d in timed)


def _events(draft: Draft) -> set[str]:
    return {draft.kind, *(what.name for what in draft.whats)}


def _is_after_exchange(draft: Draft, time: Item, drafts: list[Draft]) -> bool:
    """ "changed the box at 0615, new one reads 35", "changed 2230, old 1290, its at 20": read since, and not
    when it was changed."""
    level = draft.level
    if level is None or not level.amount or draft.kind or level.start <= time.start:
        return False
    changed = [d for d in drafts if d.kind == "exchanged" and d.time is time and not is_other_bed(d, draft)]
    ended = any(d.final is not None and d.final.start < level.start for d in changed)
    return bool(changed) and (level.name == "new" or ended)
