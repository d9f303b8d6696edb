"""The phrases of every cue, written out as they are needed: those that begin with a word once it is said.

A pattern ("(the |)box(es|) changed") stands for many phrases, all patterns for more than a hundred thousand.
To write them all out would take most of a start, and a phrase can only stand where its first word does.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from functools import cache
from itertools import chain, pairwise, product
from threading import Lock
from typing import TypeAlias, cast

from spacy.matcher import PhraseMatcher
from spacy.strings import StringStore
from spacy.tokens import Doc

from .patterns import cues, other, queries
from .tokens import tokens

Choice: TypeAlias = tuple[tuple[str, ...], ...]
Stretches: TypeAlias = tuple[Choice, ...]
_CHOICE = re.compile(r"\(([^()]*)\)")
_STRETCH = re.compile(r"(?:\([^()]*\)|[^\s()])+")
_AROUND = frozenset({"what", "kind"})


class PhraseBook:
    """Every pattern, by the words that its phrases begin with; what was written out is in the matcher."""

    def __init__(self) -> None:
        said = {label: tuple(map(stretches, told)) for label, told in phrases()}
        self.words = frozenset(
            w for told in said.values() for pattern in told for c in pattern for f in c for w in f
        )
        """Every word of a phrase."""
        self.joints = frozenset(
            pair for label in told_around(said) for pattern in said[label] for pair in side_by_side(pattern)
        )
        """Each two words that stand side by side in some phrase of an event."""
        self._begun = _by_first_word(said)
        self._unwritten = set(self._begun)
        self._lock = Lock()

    def write_out(self, said: Iterable[str], matcher: PhraseMatcher, strings: StringStore) -> None:
        """Have all phrases in the matcher that begin with one of these words."""
        if self._unwritten.isdisjoint(said):
            return
        with self._lock:
            for first in self._unwritten.intersection(said):
                for label, found in self._beginning_with(first, strings).items():
                    matcher.add(label, cast("list[Doc]", found))
                self._unwritten.discard(first)

    def _beginning_with(self, first: str, strings: StringStore) -> dict[str, list[tuple[int, ...]]]:
        """The phrases of each label that begin with a word, each under the first label that has it: as the
        hashes of their words, as the matcher itself keeps them, since a document of each would take long."""
        label_of: dict[tuple[int, ...], str] = {}
        for label, pattern in self._begun[first]:
            hashed = [[tuple(strings[w] for w in form) for form in choice] for choice in pattern]
            for chosen in product(*hashed):
                label_of.setdefault(tuple(chain.from_iterable(chosen)), label)
        found: dict[str, list[tuple[int, ...]]] = {}
        for phrase, label in label_of.items():
            found.setdefault(label, []).append(phrase)
        return found


def _by_first_word(said: Mapping[str, Iterable[Stretches]]) -> dict[str, list[tuple[str, Stretches]]]:
    """The patterns in their order, cut to the phrases that begin with a word, by that word."""
    begun: dict[str, list[tuple[str, Stretches]]] = {}
    for label, told in said.items():
        for pattern in told:
            for k, choice in enumerate(pattern):
                firsts: dict[str, list[tuple[str, ...]]] = {}
                for form in filter(None, choice):
                    firsts.setdefault(form[0], []).append(form)
                for first, forms in firsts.items():
                    begun.setdefault(first, []).append((label, (tuple(forms), *pattern[k + 1 :])))
                if () not in choice:
                    break
    return begun


def stretches(pattern: str) -> Stretches:
    """What can stand in each stretch of a pattern between two spaces that no choice is part of: no token
    reaches over one."""
    return tuple(map(_choice, _STRETCH.findall(pattern)))


@cache
def _choice(stretch: str) -> Choice:
    """The tokens of each form that a stretch has, in order."""
    parts = _CHOICE.split(stretch)
    options = [part.split("|") if k % 2 else [part] for k, part in enumerate(parts)]
    forms = ("".join(chosen) for chosen in product(*options))
    return tuple(tuple(token.text for token in tokens(form)) for form in forms)


def told_around(labels: Iterable[str]) -> Iterator[str]:
    """The labels of what may be told around a bed or the name of a tube: "changed bed 12 chamber"."""
    return (label for label in labels if label.partition(":")[0] in _AROUND)


def side_by_side(pattern: Iterable[Choice]) -> Iterator[tuple[str, str]]:
    """Each two words that stand side by side in some form of a pattern."""
    before: set[str] = set()
    for stretch in pattern:
        said = [form for form in stretch if form]
        yield from product(before, {form[0] for form in said})
        yield from (pair for form in said for pair in pairwise(form))
        before = {form[-1] for form in said} | (before if len(said) < len(stretch) else set())


def phrases() -> Iterator[tuple[str, tuple[str, ...]]]:
    """Every pattern of every cue, by its label."""
    for table in (
        cues.CHECKS,
        cues.INCIDENTS,
        cues.LEVELS,
        cues.PLACES,
        other.OTHER,
        cues.EVENTS,
        cues.ANSWERS,
        queries.QUERIES,
    ):
        yield from table.items()
