"""Lines that are taken back, lessened or given to another device behind them, typed or dictated."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .behind import READ_OFF
from .items import AMOUNTS, Item
from .neighbours import ARTICLES, phrase_of
from .numbers import Toks, word
from .rules import Rule

RECORDING = frozenset(
    {
        "record",
        "chart",
        "write",
        "log",
        "save",
        "enter",
        "count",
        "document",
        "note",
        "keep",
        "use",
        "include",
    }
    | {"put", "send", "add", "file", "store", "trust"}
    | {"recording", "charting", "logging", "entering", "counting", "documenting", "sending"}
)
DENIED = frozenset({"sent", "said", "wrote", "typed", "entered", "charted", "reported"})
LESSENING = frozenset({"minus", "less", "excluding", "plus", "including", "includes", "counting"})
PARTS = frozenset(("and", "a", part) for part in ("half", "quarter", "third", "bit"))
""" "one thousand and a half": of what?"""


def _unrecorded(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "mark 340 at 1900 don't chart it", "I never sent that": what was told is not to be recorded."""
    for item in items:
        denied = item.role == "cue" and item.value == "neg"
        said = {word(toks, item.end), *toks.said[item.start : item.end]}
        untold = word(toks, item.end) in DENIED and word(toks, item.end + 1) == "that"
        if denied and (untold or said & RECORDING) and _is_told(items, item):
            yield "what was told is not to be recorded, or was not told"


def _is_told(items: tuple[Item, ...], before: Item) -> bool:
    return any(i.role in AMOUNTS and i.end <= before.start for i in items)


def _lessened(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "340 at 1900 minus the flush": the number is not what the canister shows."""
    for item in items:
        ends = item.role in AMOUNTS or (item.role == "time" and any(i.role in AMOUNTS for i in items))
        if ends and word(toks, item.end) in LESSENING:
            yield "something is taken from the number, or added to it"
        if ends and toks.said[item.end : item.end + 3] in PARTS:  # "640 at six and a half"
            yield "a part of what the number counts"


def _of_device(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "mark 340 at 1900 from the foley": of another device."""
    for before, item in pairwise(items):
        k = item.start - 1
        while word(toks, k) in ARTICLES:
            k -= 1
        of = word(toks, k) == "from" and before.role in AMOUNTS | {"time"}
        if item.role == "foreign" and of and phrase_of(item, toks) not in READ_OFF:
            yield f"{word(toks, item.start)!r} may be what the number came from"


TAKEN_BACK = (
    Rule(_unrecorded, frozenset({"neg"}), RECORDING | DENIED),
    Rule(_lessened, AMOUNTS | {"time"}, LESSENING | {"and"}),
    Rule(_of_device, frozenset({"foreign"}), frozenset({"from"})),
)
