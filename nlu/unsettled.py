"""What of a correction can be the other way round: which number is wrong, which right, and of what sort.

"bed 3 was 350, amend the 1429", "correct 1010 920", "945 or 1805": asked. Called by `righted`, once the
pieces are sorted.
"""

from __future__ import annotations

from .entered import ENTERED
from .items import FULL_HOUR, Item
from .neighbours import phrase_of
from .numbers import Toks, word
from .whichline import Said

MENDING = frozenset({"amend", "fix", "correct", "change", "edit", "mend", "alter", "update"})
IT_IS = frozenset({"its", "it's", "is", "be"})
POINTING = frozenset({"the", "that", "my"})


def unsettled(said: Said, items: tuple[Item, ...], toks: Toks) -> bool:
    """Whether the values of a correction may stand the other way round."""
    level, at = said.level, said.at
    if level is not None and word(toks, level.end) == "?" and level.end + 1 < len(toks):
        return True  # "put 460 on 203, actually 480? at 1000"
    if "or" in toks.words and _is_between_values(items, toks):
        return True
    if level is None and said.to_at is not None and at is None and said.was is not None:
        return said.was.full_clock and not said.was.unit  # "1800 s/b 1753 hrs"
    if level is not None and at is not None and word(toks, at.start - 1) in IT_IS and at.role == "num":
        return True  # "its 1500, i read the wrong column, 1790"
    if said.was is None and level is not None and at is not None and _is_bare(at):
        after_tube = any(i.role == "tube" and i.end == at.start for i in items)
        if after_tube or (at.end == level.start and _is_led(items, toks)):
            return True  # "left 1032 should have been right 592", "correct bed 15 1010 920"
    return (level is not None and _is_pointed(level, items, toks)) or _is_retimed_behind(said, toks)


def _is_between_values(items: tuple[Item, ...], toks: Toks) -> bool:
    """ "945 or 1805": neither is said to be so."""
    values = [i for i in items if i.role in {"num", "time", "bed", "tube"}]
    places = [k for k in range(len(toks)) if word(toks, k) == "or"]
    return any(
        any(i.end == k for i in values) and any(i.start in {k + 1, k + 2} for i in values) for k in places
    )


def _is_bare(number: Item) -> bool:
    bare = number.role == "num" and not (number.lead or number.at or number.unit)
    full = number.digits.startswith("0") or all(not clock.minute for clock in number.clocks)
    return bare and len(number.digits) == FULL_HOUR and not full


def _is_led(items: tuple[Item, ...], toks: Toks) -> bool:
    """Whether it begins with a verb of putting right, and none says to what."""
    return bool(items) and phrase_of(items[0], toks).split()[-1:] in [[w] for w in MENDING]


def _is_pointed(level: Item, items: tuple[Item, ...], toks: Toks) -> bool:
    """ "was 350, please amend the 1429": the number that is to be put right is the wrong one."""
    led = word(toks, level.start - 1) in POINTING and word(toks, level.start - 2) in MENDING
    behind = [i for i in items if i.start >= level.end and i.role in {"num", "time"}]
    before = [i for i in items if i.end <= level.start and i.role == "num" and i.label is None]
    return led and bool(before) and not behind


def _is_retimed_behind(said: Said, toks: Toks) -> bool:
    """ "the 1075 was drawn at 1034, i put 1100": what was put may be the time, as the one before it is."""
    was, at = said.was, said.at
    if (
        was is None
        or at is None
        or was.unit
        or not was.full_clock
        or word(toks, was.start - 1) not in ENTERED
    ):
        return False
    return at.end <= was.start and bool(at.at)
