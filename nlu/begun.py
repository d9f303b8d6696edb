"""A "right" that a message only begins with, and no side: "right, bed 9 740", or that says that a number is.

Called by `leftovers`, and by `turnedaway` for "that is the right one".
"""

from __future__ import annotations

from collections.abc import Iterator

from .items import Item
from .numbers import Toks, starts_number, word
from .pipeline import Cue

BEGUN = "right may be no side, but a word to begin with"
BEGINS = frozenset({"bed", "level", "levelat", "canister"})
GOES_ON = frozenset({"the", "there's", "theres", "i", "i've", "we", "we've", "my", "taking", "so", ",", "at"})
"""Behind a right with which somebody begins to speak."""


OWNERS = frozenset({"the", "on", "in", "his", "her", "their", "a", "from", "for"})

KNOCKING = frozenset(
    {"knocked", "kicked", "tipped", "pulled", "yanked", "ripped", "tugged", "popped", "pushed", "tripped"}
)
WAYS = frozenset({"out", "off", "apart", "through"})
OWNED = frozenset({"his", "her", "the", "their", "its", "whole"})
TUBES = frozenset({"drain", "tube", "box", "canister", "bottle", "tubing", "line"})


def begun(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """Typed "right, bed 9 740": with a comma behind it, a word to begin with."""
    stopped = len(items) > 2 and items[1].role == "sep" and items[0].role == "tube"
    if stopped and _is_alone(items[0], toks) and any(map(_is_bed, items[2:])):
        yield BEGUN


def begun_aloud(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "okay right bed twelve mark ...", "right the line in 4 is ...", "right at seven bed 2 is at ..."."""
    yield from _inside(items, toks)
    said = [i for i in items[:3] if i.role != "sep"]
    if len(said) < 2 or said[0].role != "tube" or not _is_alone(said[0], toks):
        return
    if any(i.role == "tube" for i in items[1:]):
        return  # "right mark 10 and left mark 470"
    begins = said[1].role == "time" or (said[1].role == "cue" and said[1].value in BEGINS)
    if begins or _is_bed(said[1]) or word(toks, said[0].end) in GOES_ON:
        yield BEGUN


def _inside(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "quick one from me, right bed twelve ...": behind other words, and before every number."""
    tubes = [k for k, i in enumerate(items) if i.role == "tube"]
    k = tubes[0] if len(tubes) == 1 else 0
    ahead = any(i.role not in {"cue", "sep"} for i in items[:k])
    if (
        k
        and word(toks, items[k].start - 1) not in OWNERS
        and not ahead
        and _is_alone(items[k], toks)
        and _is_bed(items[min(k + 1, len(items) - 1)])
    ):
        yield BEGUN


def _is_alone(tube: Item, toks: Toks) -> bool:
    return tube.end - tube.start == 1 and word(toks, tube.start) == "right"


def _is_bed(item: Item) -> bool:
    return item.role == "bed" or (item.role == "cue" and item.value == "bed")


POINTING = frozenset({"that's", "thats", "is"})
WHOSE = frozenset({"bed", "patient", "pt", "room"})
FIGURES = frozenset({"one", "number", "line", "level", "reading", "figure", "value"})


def is_all_the_way(cue: Cue, toks: Toks) -> bool:
    """ "knocked his drain right over", "pulled the tube right out": wholly, and no right tube."""
    tube, whose = word(toks, cue.start - 1), word(toks, cue.start - 2)
    done = not KNOCKING.isdisjoint(toks.said[: cue.start])
    way = word(toks, cue.end) == "over" or (word(toks, cue.end) in WAYS and whose in OWNED)
    return done and way and tube in TUBES


def is_what_is_so(cue: Cue, toks: Toks) -> bool:
    """ "was 340 at 6, that is the right one": of the number, and of no tube."""
    ends, the = word(toks, cue.end + 1), word(toks, cue.start - 1) == "the"
    if the and word(toks, cue.end) in WHOSE and ends in {"", ".", "!", ",", "but"}:
        return True  # "7 is the right bed but the level should be 252"
    last = word(toks, cue.end) in FIGURES and ends in {"", ".", "!"}
    pointed = the and word(toks, cue.start - 2) in POINTING
    this = word(toks, cue.start - 2) != "is" or word(toks, cue.start - 3) == "that"
    told = any(starts_number(toks, k) for k in range(cue.start))
    return last and pointed and this and told and "left" not in toks.words
