"""What is so now or today in a remark beside a line: "calmer today, line 900 at 0900", "giving report now".

Such a word is no time of the line, where that has one of its own. Called by `context`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import takewhile

from .items import Item, is_now, is_of_now
from .numbers import Toks, word
from .patterns.ownclauses import DOUBTFUL
from .patterns.remarks import REMARKS
from .runs import is_at

WORDS = frozenset({"now", "today", "tonight"})
GOING = frozenset({"off", "home", "out", "gone", "away", "up", "down"})
"""With one of these something may have happened now."""
JOINED = frozenset({"together", "rejoined"})
OF_REMARK = frozenset({"word", "filler"})


def told_now(items: list[Item], toks: Toks) -> Iterator[Item]:
    """ "745 at 2000 drawing labs now": beside a line with its time, of what else is done."""
    timed, lined, before = False, False, None
    for k, item in enumerate(items):
        of_remark = before is not None and (
            before.role == "foreign" or (before.role == "cue" and before.value in OF_REMARK)
        )
        told = is_now(item) and ((timed and of_remark) or (lined and of_remark and _is_plain_now(items, k)))
        told |= is_of_now(item) and word(toks, item.start) in WORDS and _is_of_clause(items, k, toks)
        told |= is_of_now(item) and word(toks, item.start) == "today" and _is_of_operation(items, k)
        yield item._replace(role="cue", value="word", name="now") if told else item
        timed = (timed or is_at(item)) and item.role != "sep"
        lined = (lined or is_at(item)) and (item.role != "sep" or item.value == ",")
        before = item


def _is_plain_now(items: list[Item], k: int) -> bool:
    """ "340 at 0700, giving report now": what is done now is no number and nothing of the drain."""
    before = items[k - 1]
    behind = takewhile(lambda i: i.role != "sep", items[k + 1 :])
    return (before.value == "filler" or before.name in REMARKS) and not any(i.role == "num" for i in behind)


def _is_of_operation(items: list[Item], k: int) -> bool:
    """ "lobectomy today, placed at 1330": when he was operated on, beside a time of the clock."""
    before = items[k - 1] if k else items[k]
    operated = before.role == "cue" and before.value == "reason" and before.end == items[k].start
    return operated and any(is_at(i) and i.clocklike for j, i in enumerate(items) if j != k)


def _is_of_clause(items: list[Item], k: int, toks: Toks) -> bool:
    """ "much calmer today, ...": a clause of words that were not understood, beside a whole time."""
    before = list(takewhile(lambda i: i.role != "sep", reversed(items[:k])))
    behind = list(takewhile(lambda i: i.role != "sep", items[k + 1 :]))
    apart = len(before) + len(behind) + 1 < len(items)
    said = [*before, *behind]
    bed = [i for i in said if i.role == "bed" or (i.role == "num" and i.label is not None and not i.lead)]
    start = next((i.end for i in reversed(items[:k]) if i.role == "sep"), 0)
    end = next((i.start for i in items[k:] if i.role == "sep"), len(toks))
    quiet = {
        j for i in said if i.value in {"nothing", "okay"} for j in range(i.start, i.end)
    }  # "upright now"
    if any(toks.said[j] in DOUBTFUL | GOING for j in range(start, end) if j not in quiet):
        return False
    words = [i for i in said if i.unread or i.value in {"nothing", "okay"}]
    joined = not before and word(toks, items[k].start - 1) in JOINED  # "back together now"
    whole = len(bed) + len(words) + sum(i.role == "cue" and i.value == "bed" for i in said) == len(said)
    event = any(i.role == "cue" and i.value in {"what", "kind"} for i in items)
    timed = any(
        is_at(i) or i.sure_time or (event and i.full_clock)
        for j, i in enumerate(items)
        if j != k and not is_of_now(i)
    )  # "clamp off, 1850, upright now"
    return apart and whole and (bool(words) or joined) and len(bed) <= 1 and timed
