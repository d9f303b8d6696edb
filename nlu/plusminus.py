"""Signs told with a plus or a minus: "(+) fluctuation, (-) bubbling", "+ tidaling, - leak", "swing + leak -".

A minus alone may be a dash. Beside a plus, which shows how the message is written, it says absent, and so it
does glued behind its sign, or where the clause ends with it ("leak- 1500", "leak -, seal 2"), if the message
has no dashes between its parts and goes on; else a sign with a minus is asked. Called by `polarity`.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from .items import Item
from .leaks import SIZES, STOPS, is_closed
from .numbers import Toks, glued, is_digits, word
from .yesno import SAID

ABSENT = {"leak": "none", "tidal": "no"}
SIGNS = frozenset({"+", "-"})
PLAIN = frozenset({"present", "yes"})
"""What a sign says where nothing else tells how it is."""


ROW = 3
"""So many dashes part the values of a message."""


class Mark(NamedTuple):
    """A plus or a minus, and the tokens that it takes with its brackets."""

    sign: str
    start: int
    end: int


def with_marks(items: Sequence[Item], toks: Toks, denied: str) -> tuple[list[Item], frozenset[int]]:
    """The pieces, each sign with its minus told as absent, and where the signs are of which a mark told all.

    `denied` is the role of one that must be asked.
    """
    found = list(items)
    signs = [k for k, i in enumerate(items) if i.role == "cue" and i.value in ABSENT]
    if not signs or SIGNS.isdisjoint(toks.words):
        return found, frozenset()
    marks = _of_one_way({k: items[k] for k in signs}, toks)
    for k, mark in marks.items():
        start, end = min(mark.start, items[k].start), max(mark.end, items[k].end)
        name = ABSENT[items[k].value] if mark.sign == "-" else items[k].name
        found[k] = items[k]._replace(name=name, start=start, end=end)
    for k in signs:
        loose = _before(items[k], toks) if not marks else None
        dash = word(toks, loose.start - 1) != "," and "+" not in toks.words if loose is not None else True
        bare = (items[k].value, items[k].name) == ("leak", "present") and items[k].end == len(toks)
        if loose is not None and loose.sign == "-" and (bare or not dash):
            found[k] = items[k].as_role(denied)  # "340, - leak": no dash stands behind a comma
    told = {} if marks else _with_minus(items, signs, toks)
    for k, absent in told.items():
        name, end = ABSENT[items[k].value], items[k].end + 1
        found[k] = items[k]._replace(name=name, end=end) if absent else items[k].as_role(denied)
    return found, frozenset(marks) | frozenset(told)


def _with_minus(items: Sequence[Item], signs: Sequence[int], toks: Toks) -> dict[int, bool]:
    """The signs with a minus right behind them, and whether each is told as absent, or may be so only."""
    ends = {items[k].end for k in signs if word(toks, items[k].end) == "-"}
    ends -= {item.start - 1 for item in items if item.value == "leakhow"}  # "air leak - continuous"
    parting = any(word(toks, k) == "-" and k not in ends and _is_dash(k, toks) for k in range(len(toks)))
    plain = [k for k in signs if items[k].end in ends and items[k].name in PLAIN]
    several = len(plain) > 1  # "tidaling - leak -"
    behind = {k: items[k] for k in plain if _may_have_minus(items[k], toks, several=several)}
    return {k: not parting and is_closed(item.end, toks) for k, item in behind.items()}


def _may_have_minus(item: Item, toks: Toks, *, several: bool) -> bool:
    """ "no leak - swinging", "small leak - told", "bubbling -20" have none, nor has "swinging - told"."""
    value = is_digits(toks, item.end + 1) and glued(toks, item.end + 1)
    said = item.end - item.start > 1 and word(toks, item.end - 1) in SAID  # "swing Y - bubble N"
    if word(toks, item.start) in SIZES or value or said:
        return False
    ends = item.end + 1 == len(toks)
    noun = item.value == "leak" or not word(toks, item.end - 1).removesuffix("swing").endswith("ing")
    return noun or several or ends or is_closed(item.end, toks)


def _is_dash(k: int, toks: Toks) -> bool:
    """Whether a dash may part what stands beside it: "33 - 160", "33-160", and no "suction -20"."""
    return not (glued(toks, k + 1) and not glued(toks, k))


def _of_one_way(signs: dict[int, Item], toks: Toks) -> dict[int, Mark]:
    """The marks before the signs, or those behind them, where a plus shows which; else none."""
    first, last = min(signs), max(signs)
    before = {k: mark for k, item in signs.items() if (mark := _before(item, toks))}
    behind = {k: mark for k, item in signs.items() if (mark := _behind(item, toks))}
    ends = {end for i in signs.values() for end in (i.end, i.end - (word(toks, i.end - 1) in SIGNS))}
    plain = any(m.sign == "+" and (m.start not in ends or glued(toks, m.end)) for m in before.values())
    if plain and last not in behind:
        return before
    closed = first not in before and any(m.sign == "+" for m in behind.values())
    every = closed and (len(behind) == len(signs) or all(_is_bracketed(m, toks) for m in behind.values()))
    return behind if every else {}


def _is_parted(toks: Toks) -> bool:
    """Whether dashes with a blank on either side part the values: "9 - 1205 - 1900 - swing +"."""
    dashes = (k for k, text in enumerate(toks.said) if text == "-")
    return sum(not (glued(toks, k) or glued(toks, k + 1)) for k in dashes) >= ROW


def _before(item: Item, toks: Toks) -> Mark | None:
    """The mark right before a sign, or the first word of its phrase."""
    if word(toks, item.start) in SIGNS:
        return Mark(word(toks, item.start), item.start, item.start + 1)
    start = item.start - 1
    if word(toks, start) == ")" and word(toks, start - 2) == "(":
        start -= 1
    if word(toks, start) not in SIGNS or (word(toks, start) == "-" and _is_parted(toks)):
        return None
    return Mark(word(toks, start), start - (start < item.start - 1), item.start)


def _behind(item: Item, toks: Toks) -> Mark | None:
    """ "leak (-),", "swing +": the mark that ends what is said of a sign; "leak +2" has a number."""
    if word(toks, item.end - 1) in SIGNS:
        return Mark(word(toks, item.end - 1), item.end - 1, item.end)
    if word(toks, item.end) in SIGNS and word(toks, item.end + 1) not in SIGNS | {"/"}:
        return None if is_digits(toks, item.end + 1) else Mark(word(toks, item.end), item.end, item.end + 1)
    if word(toks, item.end) in SIGNS and not glued(toks, item.end + 1):
        return Mark(word(toks, item.end), item.end, item.end + 1)  # "swing + / leak - / seal 2"
    bracketed = word(toks, item.end) == "(" and word(toks, item.end + 2) == ")"
    sign = word(toks, item.end + 1) if bracketed else ""
    if sign not in SIGNS or word(toks, item.end + 3) not in STOPS | {""}:
        return None
    return Mark(sign, item.end, item.end + 3)


def _is_bracketed(mark: Mark, toks: Toks) -> bool:
    return word(toks, mark.start) == "("
