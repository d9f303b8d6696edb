"""One way to cut a message, while it is being cut."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from .cutting import cuts
from .items import Item
from .neighbours import number_follows
from .numbers import Toks, word
from .pipeline import Cue


class Way(NamedTuple):
    """One way to have cut the message so far."""

    items: tuple[Item, ...] | tuple[()] = ()
    lead: str = ""
    at: bool = False
    about: bool = False

    def with_item(self, item: Item, lead: str = "", *, at: bool = False) -> Way:
        """This way and one more piece."""
        return Way((*self.items, item), lead, at)

    def after_at(self) -> Way:
        """This way, and the word at."""
        lead = "" if self.lead in {"bed", "to", "from"} else self.lead
        return self._replace(lead=lead or "at", at=True)

    def with_time(self, item: Item) -> Way:
        """This way and a time; a length of time leaves the cue before it in force."""
        return self.with_item(item) if item.role == "time" else self.with_item(item, self.lead, at=self.at)


Step = tuple[int, Way]
"""A way made longer, and where it goes on."""


def about(way: Way, cue: Cue, toks: Toks) -> Way:
    """The way with the number before ("1050 give or take") or the next one said to be approximate."""
    last = way.items[-1] if way.items else None
    said = word(toks, cue.start)
    touching = last is not None and last.end == cue.start - (word(toks, cue.start - 1) == "-")
    of_next = last is not None and last.label is not None and said != "ish" and number_follows(toks, cue.end)
    if last is not None and last.role == "num" and said in BEHIND and touching and not of_next:
        return way._replace(items=(*way.items[:-1], last._replace(about=True)))
    return way._replace(about=True)


BEHIND = frozenset(
    {
        "give",
        "more",
        "or",
        "approx",
        "approximately",
        "roughly",
        "est",
        "estimated",
        "ish",
        "approximate",
        "maybe",
    }
)
HOPELESS = 2
"""A way that cuts so many more numbers in two than another will not stand against it."""


def followed(ways: list[Way], widest: int, toks: Toks, *, voice: bool) -> tuple[list[Way], bool]:
    """The ways to follow further, and whether one that might have stood had to be let go."""
    cut = {id(way): len(cuts(way.items, toks, voice)) for way in ways}
    ranked = sorted(ways, key=lambda way: cut[id(way)])
    hopeful = [way for way in ranked if cut[id(way)] < cut[id(ranked[0])] + HOPELESS]
    return hopeful[:widest], len(hopeful) > widest


def hopeful(
    ways: Sequence[tuple[Item, ...]], toks: Toks, *, voice: bool
) -> tuple[list[tuple[Item, ...]], int]:
    """The whole ways that cut few numbers in two, and how many the others cut at least."""
    cut = [len(cuts(way, toks, voice)) for way in ways]
    most = min(cut) + HOPELESS
    return [way for way, count in zip(ways, cut, strict=True) if count < most], most
