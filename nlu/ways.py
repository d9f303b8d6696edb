"""One way to cut a message, while it is being cut."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from .cutting import cuts
from .items import FULL_HOUR, Item
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
    if len(hopeful) > widest:
        timed = set(map(id, _with_times([way.items for way in hopeful])))
        hopeful = [way for way in hopeful if id(way.items) in timed]
    return hopeful[:widest], len(hopeful) > widest


def hopeful(
    ways: Sequence[tuple[Item, ...]], toks: Toks, *, voice: bool
) -> tuple[list[tuple[Item, ...]], int]:
    """The whole ways that cut few numbers in two or leave few unread, and how many the others do at least."""
    cut = [len(cuts(way, toks, voice)) + (0 if voice else _unreadable(way)) for way in ways]
    most = min(cut) + HOPELESS
    return _with_times([way for way, count in zip(ways, cut, strict=True) if count < most]), most


def _with_times(ways: list[tuple[Item, ...]]) -> list[tuple[Item, ...]]:
    """The ways without those that leave a number open which is a time in another, and can be nothing else."""
    times = {(i.start, i.end) for way in ways for i in way if i.role == "time"}
    return [w for w in ways if not any(_is_only_time(i) and (i.start, i.end) in times for i in w)] or ways


def _is_only_time(item: Item) -> bool:
    """ "0300", as a number that is not yet a time: it can be nothing else."""
    return item.role == "num" and len(item.digits) == FULL_HOUR and item.digits[0] == "0" and not item.label


CLAIMING = frozenset({"other", "neg", "plan", "no", "repair", "kind"})
"""Beside these a number may be none of ours, or be taken back."""


def _unreadable(way: tuple[Item, ...]) -> int:
    """The numbers of one way that no rule can read, where nothing else may claim them."""
    claimed = any(i.role == "cue" and i.value in CLAIMING for i in way)
    return 0 if claimed else sum(i.role == "bad" for i in way)
