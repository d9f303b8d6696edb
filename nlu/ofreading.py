"""Clauses beside a line that are of the reading itself and put it in doubt: "hope I read the right box".

What a patient, a visitor or a doctor does beside a line changes nothing of it, whatever the words are. What
is said of how it was read may: by what light, from where, off what, by whom, on whose canister. There are
more ways to say so than can be listed, so here a clause need not be understood: it is doubtful where it
hedges and names nobody and nothing else, or where it tells of trouble with what a line is read on, by or
with. Used by `misgivings`, which asks.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Container, Iterable, Iterator, Sequence

from .again import Span
from .alarms import is_feared
from .doubtwords import Doubt
from .elsedoubts import is_bare, is_of_something_else
from .neighbours import HARD, stretches
from .numbers import Toks
from .patterns import ofreading as words
from .patterns.elsedoubts import TAKEN_FOR
from .patterns.misgivings import GONE, JOINTS, NOT_GONE
from .patterns.spelt import alternatives

STOPS = HARD | {",", "(", ")", "-", "\n"}
HEDGING = frozenset({"doubting", "seeing", "seeming", "tilted"})


def _any_of(lines: str) -> re.Pattern[str]:
    return re.compile(rf"(?<![\w'])(?:{alternatives(lines, words.SHORT)})(?![\w'])")


OUTRIGHT, SURE = _any_of(words.OUTRIGHT), _any_of(words.SURE)
JOINED = re.compile(rf"(?<![\w'])(?:{'|'.join(sorted(JOINTS))})(?![\w'])")


def doubts_of_reading(toks: Toks, told: frozenset[int], doubts: Sequence[Doubt]) -> Iterator[Doubt]:
    """The clauses beside what is told that are of the reading and put it in doubt."""
    hedges = [d for d in doubts if d.kind in HEDGING]
    for clause in stretches(STOPS, toks):
        unread = (toks.said[k] for k in range(*clause) if k not in told)
        plain = words.PLAIN.issuperset(w for w in unread if not w.isdigit())
        if plain and not _is_questioned(toks, clause):
            continue
        if kind := _doubt_of(toks, clause, told, hedges):
            yield Doubt(kind, *clause, clause)


def _is_questioned(toks: Toks, clause: Span) -> bool:
    """ "860 at 1840 ?time"; not "what's the total on 4? bed 5 mark 300"."""
    sign = clause[0] > 0 and toks.said[clause[0] - 1] == "?"
    return sign and not any(said.isdigit() for said in toks.said[slice(*clause)])


def _doubt_of(toks: Toks, clause: Span, told: Container[int], hedges: Iterable[Doubt]) -> str:
    """`outright`, where it puts the line in doubt whatever else it says; `reading`, where it hedges without
    another subject or tells of trouble with the reading; empty, where it leaves the line as it is. What is
    `told` is read from the clause itself."""
    text = "? " * _is_questioned(toks, clause) + " ".join(toks.said[slice(*clause)])
    if SURE.search(text) or is_feared(toks, *clause) or _is_over(toks.said[slice(*clause)]):
        return ""
    within = [k for k in range(*clause) if k in told]
    behind = range(within[-1] + 1 if within else clause[0], clause[1])
    beside = [toks.said[k] for k in behind]
    if is_of_something_else(beside[bool(within) and beside[:1] in (["and"], ["but"]) :]):
        return ""
    bare = is_bare(beside) and not TAKEN_FOR.isdisjoint(beside)
    others = not (bare or words.OTHERS.isdisjoint(beside))
    named = words.READ.intersection(beside)
    own = not others or bool(named)
    found = OUTRIGHT.search(text)
    if found and (own or words.OTHERS.isdisjoint(_beside(text, found))):
        return "outright"
    by_me = "read" in named and "i" in beside
    if named and (by_me or not others) and not words.TROUBLE.isdisjoint(beside):
        return "reading"
    if not others and not words.STRICT.isdisjoint(beside) and words.SOUND.isdisjoint(beside):
        return "reading"
    hedged = any(behind.start <= d.start and d.end <= clause[1] for d in hedges)
    return "reading" if hedged and own else ""


def _beside(text: str, found: re.Match[str]) -> list[str]:
    """The words around what was found, up to a word that joins: "light was off and I let him sleep"."""
    before = JOINED.split(text[: found.start()])[-1]
    return [*before.split(), *JOINED.split(text[found.end() :])[0].split()]


def _is_over(said: Collection[str]) -> bool:
    """ "foam settled", "wiped the smear off": what hid the line is gone."""
    hidden = not words.COVERS.isdisjoint(said)
    return hidden and not GONE.isdisjoint(said) and NOT_GONE.isdisjoint(said)
