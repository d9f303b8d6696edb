"""Cues of what is asked about a bed in general: "how is bed 4", "any concerns with 9", "brief me on 12".

Nothing but such words and the bed is said; with a number, an event or a finding it is another message.
Part of `narrated`, which calls this.
"""

from __future__ import annotations

from collections.abc import Iterator

from .goings import Rule
from .numbers import is_digits, numbers, word
from .oldones import Message
from .patterns.leads import BED_WORDS
from .pipeline import Cue

_GENERAL = """
wrong concern concerns issue issues problem problems worries alert alerts caution cautions news updates going
happening tell brief fill run rundown know new anything something story up
"""
GENERAL = frozenset(_GENERAL.split())
"""One of these asks for all that there is to know."""
_OPENERS = """
any anything what's whats what how how's hows is everything tell brief fill run give can could please hey hi
so and news
"""
OPENERS = frozenset(_OPENERS.split())
HOW = frozenset({"how", "how's", "hows", "ok", "okay", "alright"})
"""These ask how it stands by now."""
_BEFORE = """
any is there what's whats what i should need to you me through give a the with in for about on from patient pt
please can could hi hey and so everything all worry , . ... that worth it
"""
BEFORE = GENERAL | HOW | frozenset(_BEFORE.split())
_BEHIND = """
? . ! please pls doing going getting on now today tonight overnight so far this shift morning afternoon
evening ok okay alright looking then i should know need to at all
"""
MARKS = frozenset({"?", ".", "!"})
BEHIND = frozenset(_BEHIND.split())


def _on_a_bed(said: Message) -> Iterator[Cue]:
    """ "Anything I should know about bed 4?": the handover of it; "how is bed 4": its last line."""
    toks = said.toks
    start = next((k for k in range(len(toks)) if word(toks, k) not in BEFORE), 0)
    bed = start + (word(toks, start) in BED_WORDS)
    label = max((n.end for n in numbers(toks, bed)), default=0) if not is_digits(toks, bed) else bed + 1
    end = said.beds[bed][0] if bed in said.beds else label
    if start == 0 or end == 0:
        return
    before, behind = toks.said[:start], toks.said[end : len(toks)]
    if not BEHIND.issuperset(behind) or before[0] not in OPENERS or before[-1] in {".", ","}:
        return
    if not GENERAL.isdisjoint(before):
        topic = "handoff"
    elif not HOW.isdisjoint((*before, *behind)):
        topic = "last"
    else:
        return
    yield Cue("ask", topic, 0, start)
    if not MARKS.issuperset(behind):
        yield Cue("filler", "", end, len(toks))


ON_A_BED: tuple[tuple[frozenset[str], Rule], ...] = ((GENERAL | HOW, _on_a_bed),)
