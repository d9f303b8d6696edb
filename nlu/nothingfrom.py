"""Cues of a bed from which nothing came: "nil out from 17 since the last mark", "nothing from 17 this hour".

With since when, or over how long, behind it, the number is the bed; "nil out from 17" alone may be since a
line, and "no change from 310 since 1800" is. Part of `narrated`, which calls these.
"""

from __future__ import annotations

from collections.abc import Iterator

from .goings import Rule, past
from .neighbours import ends_at
from .numbers import Toks, is_digits, starts_number, word
from .oldones import Message
from .patterns.leads import BED_WORDS
from .pipeline import Cue
from .readthen import is_whole_clock

NONE = frozenset({"nil", "no", "nothing", "none", "zero", "nada", "zilch", "0"})
CAME = frozenset({"out", "output", "drainage", "drained", "further", "more", "else", "new", "extra"})
FROM = frozenset({"from", "of", "off"})
OVER = frozenset({"this", "so", "in", "over", "during", "all", "overnight", "tonight", "today"})
LASTS = frozenset({"hour", "hr", "shift", "far", "last", "past", "morning", "evening", "night", ""})
STOPS = frozenset({",", ";", ".", "!"})
LONGEST_LABEL = 3
"""Digits of a bed."""


def _nothing_from(said: Message) -> Iterator[Cue]:
    """ "nil out from 17 since the last mark", "nothing further from 17 this shift": that bed."""
    toks = said.toks
    for k, text in enumerate(toks.said):
        came = past(toks, k + 1, CAME)
        bed = came + 1 + (word(toks, came) == "out" and word(toks, came + 1) == "of")
        named = word(toks, bed) in BED_WORDS
        end = said.beds[bed][0] if bed in said.beds else bed + named + 1
        label = bed in said.beds or (is_digits(toks, end - 1) and len(word(toks, end - 1)) <= LONGEST_LABEL)
        none = text in NONE and (came > k + 1 or text == "nothing")
        since = word(toks, end) == "since" and not _names_line(toks, end + 1)
        lasting = word(toks, end) in OVER and not LASTS.isdisjoint(toks.said[end : end + 3])
        if none and label and word(toks, came) in FROM and (since or lasting):
            yield Cue("same", "", k, came)
            if not (named or bed in said.beds):
                yield Cue("bed", "", came, bed)


def _names_line(toks: Toks, k: int) -> bool:
    """ "since the line at 340": up to the next stop a number stands that is no whole time."""
    end = ends_at(STOPS, toks, k)
    return any(starts_number(toks, j) and not is_whole_clock(toks, j) for j in range(k, end))


NOTHING_FROM: tuple[tuple[frozenset[str], Rule], ...] = ((FROM, _nothing_from),)
"""Each rule with the words of which it needs one."""
