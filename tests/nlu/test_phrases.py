"""The phrases of all cues: no group within a group, and few enough to be built in a moment."""

from __future__ import annotations

import re
from math import prod

import pytest

from nlu.pipeline import phrases

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


def test_all_patterns_together_are_built_in_a_moment() -> None:
    assert sum(how_many(pattern) for _, pattern in PATTERNS) <= MOST
