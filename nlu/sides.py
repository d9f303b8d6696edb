"""What a correction says was wrong and what is right: the words that turn, and the values by side."""

from __future__ import annotations

from dataclasses import dataclass, field
from itertools import pairwise

from .drafts import SIDES
from .items import Item
from .labels import tube_name
from .numbers import Toks, word

TURNS = frozenset(
    {
        "should be",
        "s / b",
        "should have been",
        "should have put",
        "should have said",
        "should have gone to",
        "should have gone on",
        "should have gone in",
        "should read",
        "should say",
        "meant",
        "i meant",
        "was actually",
        "actually was",
        "is actually",
        "supposed to be",
        "was supposed to be",
        "supposed to say",
        "supposed to read",
        "was supposed to say",
        "was supposed to read",
        "should've been",
        "should have read",
        "that should be",
        "it should be",
        "that should have been",
        "was really",
        "that should read",
        "has to be",
        "actually",
        "make it",
        "make that",
        "correct to",
        "really",
    }
)
TOWARD = frozenset(
    {
        "should be",
        "s / b",
        "should have been",
        "should have put",
        "should have said",
        "should have gone to",
        "should have gone on",
        "should have gone in",
        "meant",
        "i meant",
        "supposed to be",
        "was supposed to be",
        "should've been",
        "that should be",
        "it should be",
        "that should have been",
        "make it",
        "make that",
    }
)


FIGURES = frozenset(
    {"one", "number", "value", "level", "figure", "reading", "line", "mark", "time", "amount"}
)


@dataclass(slots=True)
class Sides:
    """The values of one sort: said to be wrong, said to be right, or neither."""

    was: list[Item] = field(default_factory=list)
    now: list[Item] = field(default_factory=list)
    free: list[Item] = field(default_factory=list)

    @property
    def crowded(self) -> bool:
        """Whether more was said than one wrong and one right value."""
        return len(self.was) > 1 or len(self.now) > 1 or len(self.free) > 1 or len(self.all) > 2

    @property
    def all(self) -> list[Item]:
        """Every value."""
        return [*self.was, *self.free, *self.now]

    def deny(self, item: Item) -> None:
        """One more wrong value; the same bed, named before, is that one: "bed 8 ... goes to bed 18 not 8"."""
        again = item.role in {"bed", "num"} and item.label is not None
        self.free = [i for i in self.free if not (again and i.role == "bed" and i.label == item.label)]
        self.was.append(item)

    def pair(self, *, alone_is_wrong: bool) -> tuple[Item | None, Item | None]:
        """The wrong and the right value; one that stands alone belongs to the side given."""
        was, now = self.was[:1], self.now[:1]
        for item in self.free:
            if now and not was:
                was = [item]
            elif was and not now:
                now = [item]
            elif alone_is_wrong:
                was = [item]
            else:
                now = [item]
        return (was[0] if was else None), (now[0] if now else None)


def whole_tubes(items: tuple[Item, ...]) -> tuple[Item, ...]:
    """ "was right pleural not left": a side and a place that touch are one tube."""
    found: list[Item] = []
    for item in items:
        last = found[-1] if found else None
        touching = last is not None and last.role == item.role == "tube" and last.end == item.start
        if last is not None and touching and (last.name in SIDES) != (item.name in SIDES):
            found[-1] = last._replace(end=item.end, name=tube_name([last.name, item.name]))
        else:
            found.append(item)
    return tuple(found)


def is_contrast(tube: Item, toks: Toks) -> bool:
    """ "right level wrong time", "right number, wrong bed": no tube."""
    if tube.role != "tube" or word(toks, tube.start) != "right":
        return False
    behind = [w for w in toks.said[tube.end + 1 : tube.end + 3] if w not in {",", "but"}]
    figure = word(toks, tube.start - 1) == "the" and word(toks, tube.end) in FIGURES
    return behind[:1] == ["wrong"] or (figure and _is_wrong_figure(toks.said[: tube.start]))


def _is_wrong_figure(said: tuple[str, ...]) -> bool:
    """ "i gave the wrong number, the right one is 430": it is right, and of no side."""
    return any(wrong == "wrong" and what in FIGURES for wrong, what in pairwise(said))
