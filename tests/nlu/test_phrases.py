"""The phrases of all cues: no group within a group, and few enough to be built in a moment."""

from __future__ import annotations

import re
from itertools import chain, product
from math import prod

import pytest

from nlu.phrasebook import phrases, stretches
from nlu.tokens import tokens

GROUP = re.compile(r"\(([^()]*)\)")
MOST_OF_ONE = 40_000
MOST = 150_000
PATTERNS = [(label, pattern) for label, patterns in phrases() for pattern in patterns if "(" in pattern]


def how_many(pattern: str) -> int:
    return prod(len(group.split("|")) for group in GROUP.findall(pattern))


@pytest.mark.parametrize(
    ("label", "pattern"), PATTERNS, ids=[f"{k} {label}" for k, (label, _) in enumerate(PATTERNS)]
)
def test_a_pattern_has_no_group_within_a_group_and_stands_for_few_phrases(label: str, pattern: str) -> None:
    assert not set("()|") & set(GROUP.sub("", pattern)), label
    assert how_many(pattern) <= MOST_OF_ONE, label


def written_out(pattern: str) -> list[tuple[str, ...]]:
    """The tokens of every text that a pattern stands for, in order."""
    parts = GROUP.split(pattern)
    options = [part.split("|") if place % 2 else [part] for place, part in enumerate(parts)]
    return [tuple(token.text for token in tokens("".join(chosen))) for chosen in product(*options)]


def test_the_stretches_of_a_pattern_put_together_are_what_it_stands_for() -> None:
    few = [pattern for _, pattern in PATTERNS if how_many(pattern) <= 200]
    assert len(few) > 100
    for pattern in (*few, "water seal", "the box(es|)", "(it is |)(a |)new (one|box)", "3(/4|) full"):
        put_together = product(*stretches(pattern))
        assert [tuple(chain.from_iterable(each)) for each in put_together] == written_out(pattern), pattern


def test_all_patterns_together_are_built_in_a_moment() -> None:
    assert sum(how_many(pattern) for _, pattern in PATTERNS) <= MOST
