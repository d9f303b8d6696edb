"""What comes later, told behind a line that is whole: "305 @1900, will check again at 2000".

It is no part of the line, and nothing that happened. Called by `scope`.
"""

from __future__ import annotations

from .items import EVENTS, FINDINGS, FULL_HOUR, Item
from .renewed import CONTEXT

COMING = frozenset(
    {"will", "will be", "i'll", "we'll", "we will", "going to", "gonna", "will mark", "plan to", "planning"}
)
"""Behind these stands what comes; "might be at 1800" is of what was."""
NEXT = frozenset({"next due", "next mark due"})
"""With a time behind them, behind a line, these ask nothing."""
LINES = frozenset({"level", "levelat"})
SAYS = frozenset({"num", "bad"})
TELLS = frozenset({"same", "amount", "output", "out", "neg", "no", "repair", "or", "order", *FINDINGS})
"""With one of these such a clause tells more than what comes."""
CONDITIONS = frozenset({"if", "unless", "once", "until"})
"""What is told behind these hangs on something."""


def is_of_later(items: list[Item], k: int, start: int, end: int, *, due: bool = False) -> bool:
    """Whether the clause of a word for what comes, at `k`, is only of later; it is then left out.

    `start` and `end` are those of the clause. Right behind a whole line it begins with that word. What is
    `due` needs no at before its time.
    """
    behind = _behind_line(items, k)
    first = k if behind else start
    told = any(i.role in {"bed", "tube"} or i.value in TELLS for i in items[first:end])
    times = [j for j in range(first, end) if items[j].role in {*SAYS, "time"} and not _is_one(items[j])]
    if told or len(times) > 1 or not (behind or (times and _has_line(items[:first], due))):
        return False
    if any(i.value in EVENTS for i in items[first:end]) and not behind:
        return False
    if any(not (_is_when(items[j]) or (due and items[j].full_clock)) for j in times):
        return False
    if due:
        items[k] = items[k]._replace(value="filler", name="")
    for j in range(first, end):
        items[j] = _left_out(items[j], words=behind)
    return True


def _behind_line(items: list[Item], k: int) -> bool:
    """ "740 at 0700 will need changing": whether a line that was told whole ends here, with its time."""
    if k < len(("level", "time")):
        return False
    level, time = items[k - 2], items[k - 1]
    timed = (time.at and _is_clock(time)) or time.sure_time
    return level.role == "num" and time.role in {"num", "time"} and time.end == items[k].start and timed


def _has_line(items: list[Item], due: bool) -> bool:
    """Whether a line is told there with its time, which what is `due` does not ask for."""
    lines = any(i.role == "num" and (i.label is None or i.lead in LINES) for i in items)
    return lines and (due or any(i.role == "time" or (i.at and i.clocks) for i in items))


def _is_when(item: Item) -> bool:
    return _is_clock(item) and (item.at or item.role == "time") and not item.unit


def _is_clock(item: Item) -> bool:
    """Whether it can be a time; one that begins with a nought can be nothing else."""
    return bool(item.clocks) or (len(item.digits) == FULL_HOUR and item.digits[0] == "0")


def _is_one(item: Item) -> bool:
    """ "i'll do the next one at 0745"."""
    return item.amount == 1 and not (item.digits or item.unit or item.at)


def _left_out(item: Item, *, words: bool) -> Item:
    """The piece as one that says nothing."""
    if item.role in {*SAYS, "time"}:
        return item.as_role(CONTEXT)
    if words and item.role == "cue" and item.value in {*EVENTS, "word"}:
        return item._replace(value="filler", name="")
    return item


def condition_end(items: list[Item], k: int) -> int:
    """The end of what hangs on "if 4 goes to CT, 5 moves to 4": behind a comma it goes on."""
    ends = (j for j, i in enumerate(items) if j > k and i.role == "sep" and i.value in {".", ";", "!"})
    return next(ends, len(items))
