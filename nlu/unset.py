"""Signs that a number is the value of a check or of an order before it, and no line: "suction 216 30".

Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator

from .items import AMOUNTS, Item
from .numbers import Toks, is_digits, word
from .roles import CHECK_LIMITS
from .rules import Rule

MOST_OF_HOUR = 2
"""Digits of an hour."""
IT_IS = frozenset({"it", "it's", "its", "now", "currently"})
CHECKS = frozenset({"seal", "suction", "wall", "leakgrade"})


def _unset(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "water seal topped up to 2": a check without its value, and a number that may be it."""
    check: Item | None = None
    behind = -1
    for item in items:
        if behind == item.start and item.role in AMOUNTS and not (item.lead or item.unit):
            yield "the number may be of the check before its bed"  # "suction 216 30"
        behind = -1
        if item.role == "cue" and item.value in CHECKS:
            check = item
        elif item.role == "bed" and check is not None and item.start <= check.end + 1:
            behind, check = item.end, None
        elif item.role in {"check", "bed", "tube"} or (item.role == "cue" and item.value in {"level", "sep"}):
            check = None
        elif check is not None and (
            item.role in AMOUNTS or _is_hour(item) or _is_of_today(item, check, toks)
        ):
            yield "the number may be of the check before it"
            check = None


def _ordered(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "doctor wants 20", "suction order 20 and it's at 20", "currently at 20": a bare number may be the
    suction."""
    ordered = False
    for before, item in zip((None, *items), items, strict=False):
        ordered = (ordered or (item.role == "cue" and item.value == "order")) and item.role != "bed"
        small = item.role == "level" and (item.amount or 0) <= CHECK_LIMITS["suction"] and not item.unit
        said = before is not None and before.role == "cue" and before.value in {"level", "levelat"}
        it = before is not None and not IT_IS.isdisjoint(toks.said[max(0, before.start - 1) : before.end])
        if ordered and small and (it or not said):
            yield "the number may be what was ordered"


def _is_of_today(item: Item, check: Item, toks: Toks) -> bool:
    """ "leak grade 3 today": the value, and no hour of the day."""
    behind = item.role == "time" and item.start == check.end and is_digits(toks, item.start)
    return behind and len(word(toks, item.start)) <= MOST_OF_HOUR and word(toks, item.start + 1).isalpha()


def _is_hour(item: Item) -> bool:
    """ "seal ok at 2": an hour alone, which may be a value."""
    return item.role == "time" and item.amount is not None and len(item.digits) <= MOST_OF_HOUR


UNSET = (
    Rule(_unset, CHECKS),
    Rule(_ordered, frozenset({"order"})),
)
