"""Events that close or change a drain: told whole, or asked.

A tube that is out, a patient who left, a canister that was changed: what follows is counted
differently. A word that was not understood right beside a short phrase for one of them may say that
it is of something else ("passed gas", "nj tube out"), so the message is asked.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .items import AMOUNTS, Item
from .numbers import Toks, word
from .patterns.asides import STAFF
from .patterns.nouns import CAN, TUBE
from .patterns.ownclauses import HIMSELF

CLOSING = frozenset({"removed", "left", "exchanged", "moved", "placed"})
STAYS = frozenset({"still", "stays", "stay", "stayed", "staying", "remains", "remain", "remaining", "kept"})
NOT_PERSONS = frozenset({"canister", "tubeword", "fluid", "amount", "output", "leak"})
NOUNS = frozenset(w for p in (CAN, TUBE) for phrase in p.strip("()").split("|") for w in phrase.split())
HAPPENING = frozenset({"got", "gotten", "getting"})
MEANWHILE = frozenset({"while", "whilst", "when"})
OF_TUBE = frozenset({"but", "is", "it", "it's", "its", "tube", "drain", "though", ","})
OF_PLACE = frozenset({"", ",", ".", ";", "place", "situ", "there", "position"})
ASIDE = frozenset(
    {
        "without",
        "today",
        "ok",
        "fine",
        "well",
        "successfully",
        "uneventfully",
        "easily",
        "peacefully",
        "again",
        "emergency",
        "urgent",
        "emergent",
        "surgical",
        "request",
    }
)


def weighty(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """One line for each such event with a word beside it that was not understood."""
    for before, item in pairwise(items):
        touching = before.end == item.start
        doer = word(toks, before.start) in STAFF or word(toks, before.start - 1) in STAFF
        if touching and not doer and _is_unread(before) and is_closing(item) and _starts_open(item, toks):
            yield f"{before.name!r} may say what was {item.name}"
        if touching and is_closing(before) and _is_unread(item) and _ends_open(before, toks):
            yield f"{item.name!r} may say what was {before.name}"
        if touching and before.value == "choice" and before.role == "cue" and is_closing(item):
            yield "which of several"  # "first tube out"
        if touching and is_closing(before) and _is_of_a_thing(before, item):
            yield "an event that is of a thing"
        if touching and is_closing(before) and item.role == "cue" and item.value == "order":
            yield "an order for an event is no event"

    yield from _pulled(items, toks)
    yield from _thrown(items, toks)
    yield from _staying(items, toks)


def _pulled(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "the tube got pulled out": by whom, or by what? Taken out, or dislodged."""
    for item in items:
        said = {t.text for t in toks[max(0, item.start - 1) : item.end + 1]}
        if is_closing(item) and item.name == "removed" and "out" in said and said & HAPPENING:
            yield "taken out, or dislodged"
        past_out = item.end + (word(toks, item.end) == "out")
        by_chance = word(toks, item.end - 1) in {"pulled", "out"} and _is_meanwhile(toks, past_out)
        if is_closing(item) and item.name == "removed" and (by_chance or _is_still_in(toks)):
            yield "pulled, and perhaps not out"  # "tube pulled when he rolled", "but still in"


def _is_meanwhile(toks: Toks, k: int) -> bool:
    return word(toks, k) in MEANWHILE or (word(toks, k) == "as" and word(toks, k + 1) in HIMSELF)


def _is_still_in(toks: Toks) -> bool:
    """ "pulled but still in, sutures ok": not "stitch still in"."""
    pairs = [k for k in range(1, len(toks)) if toks.said[k : k + 2] == ("still", "in")]
    return any(word(toks, k - 1) in OF_TUBE and word(toks, k + 2) in OF_PLACE for k in pairs)


def _thrown(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "threw the old canister away": a lone "away" is of a patient only right behind a bed, tube or time."""
    for before, item in pairwise(items):
        lone = item.role == "cue" and item.name == "away"
        if lone and word(toks, item.start) == "away" and before.role == "cue" and before.value != "bed":
            yield "something else may have gone away"
        place = item.role == "cue" and item.name == "away" and word(toks, item.start) == "in"
        if place and before.role in AMOUNTS:
            yield "where something was lost is no going away"


def _staying(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "left tube out, right stays": not every tube that is named is out."""
    out = any(is_closing(i) and i.name == "removed" for i in items)
    ends = {i.end for i in items if i.role == "tube"}
    named = {i.name for i in items if i.role == "tube" and i.start not in ends}  # "left pleural" is one
    if out and len(named) > 1 and any(t.text in STAYS for t in toks):
        yield "one tube is out and another stays"
    tubes = [i for i in items if i.role == "tube"]
    behind = [i for i in items if tubes[1:] and i.start > tubes[-1].start]
    told = any(i.role == "cue" and i.value == "suction" for i in behind)
    if out and told and not any(map(is_closing, behind)):
        yield "one tube is out and another is told of"  # "l drain d/c r to sxn"


def _is_of_a_thing(event: Item, after: Item) -> bool:
    """ "expired canister", "discharged 60 from the tube": nobody left."""
    return event.name == "left" and after.role == "cue" and after.value in NOT_PERSONS


def is_closing(item: Item) -> bool:
    """Whether it is an event that closes or changes a drain."""
    return item.role == "cue" and item.value == "kind" and item.name in CLOSING


def _is_unread(item: Item) -> bool:
    return item.unread and item.name not in ASIDE


def _starts_open(item: Item, toks: Toks) -> bool:
    """Whether the phrase begins with the noun or is a lone verb: the word before may qualify it."""
    return item.end - item.start == 1 or word(toks, item.start) in NOUNS


def _ends_open(item: Item, toks: Toks) -> bool:
    """Whether the phrase ends with the noun or is a lone verb: the word behind may be what it is of."""
    short = 2 if item.name == "left" else 1
    return item.end - item.start <= short or word(toks, item.end - 1) in NOUNS
