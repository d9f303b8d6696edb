"""What is told beside a correction and has numbers of its own: none of them is what was wrong.

"correct bed 9 1817 to 260. drained 110 since", "9 now at 827, the 1721 should be 527", "tube out at 1128 with
1890 in the box, correct the 1228 to 1460". Called by `righted`, which then asks.
"""

from __future__ import annotations

from collections.abc import Sequence

from .items import Item
from .numbers import Toks
from .roles import is_event
from .sides import Sides

PRESENT = frozenset({"is", "now", "it's", "its", "currently"})


def tells_more(items: Sequence[Item], nums: Sides, times: Sides, toks: Toks) -> bool:
    """Whether more is told than what was wrong and what is right."""
    if any(i.lead == "since" for i in items if i.role in {"num", "time"}) or _happened_before(items):
        return True
    right = nums.now[0].start if nums.now else len(toks)
    stops = [i.start for i in items if i.role == "sep" and i.start > right]
    if any(i.lead == "levelat" and stops and i.start > stops[0] for i in times.now):
        return True  # "correct the 1800 to 1170. it's at 1251 now"
    numbers = sorted(nums.all, key=lambda i: i.start)
    if len(numbers) < len(("wrong", "right")):
        return False
    first, last = numbers[0], numbers[-1]
    if any(i.lead == "amount" and i.link != "not" for i in numbers[1:]) or _is_apart(last, items, nums):
        return True
    times_behind = [time.start for time in times.all if first.end <= time.start < last.start]
    own = [k for k in times_behind if any(i.role == "sep" and first.end <= i.start < k for i in items)]
    before = toks.said[max(0, first.start - 2) : first.start]
    present = first.lead == "levelat" and not PRESENT.isdisjoint(before)
    return bool(own) and (present or first.lead == "amount")


def _happened_before(items: Sequence[Item]) -> bool:
    """Whether an event is told before a stop, and behind it what is put right, each at its time."""
    ends = [i.start for i in items if i.role == "sep"]
    events = [i.start for i in items if is_event(i)]
    righted = [i.start for i in items if i.role == "cue" and i.name == "corrected"]
    between = [k for k in ends if events and righted and events[0] < k < righted[0]]
    timed = [i.start for i in items if i.role == "time" or (i.role == "num" and i.clocklike)]
    return bool(between and timed) and timed[0] < between[-1] < timed[-1]


def _is_apart(last: Item, items: Sequence[Item], nums: Sides) -> bool:
    """Whether a number that nothing calls wrong stands behind a stop: "to 235, 405 ml now"."""
    right = nums.now[0] if nums.now else None
    if right is None or last not in nums.free or last.start < right.end:
        return False
    return any(i.role == "sep" and right.end <= i.start < last.start for i in items)
