"""Catch-up lists with nothing between their pairs are read only where one way to pair them stands."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from .saying import ARRIVED, MORNING, reading

HOURS = st.tuples(st.integers(10, 18), st.integers(2, 8)).map(
    lambda two: list(range(two[0], min(20, two[0] + two[1])))
)
"""Full hours up to the arrival at 19:05."""


@given(HOURS, st.data())
def test_each_level_goes_with_the_time_beside_it(hours: list[int], data: st.DataObject) -> None:
    levels = sorted(data.draw(st.lists(st.integers(100, 999), min_size=len(hours), max_size=len(hours))))
    time_first = data.draw(st.booleans())
    pairs = [(f"{hour}00", str(level)) for hour, level in zip(hours, levels, strict=True)]
    said = " ".join(" ".join(pair if time_first else pair[::-1]) for pair in pairs)
    wanted = "; ".join(f"mark bed=6 at={time[:2]}:00 level_ml={level}" for time, level in pairs)
    read = reading(f"bed 6 {said}", arrived=ARRIVED)
    assert read == wanted or read.startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "6 1700 370 1800 385 1900 399",
            "mark bed=6 at=17:00 level_ml=370; mark bed=6 at=18:00 level_ml=385; "
            "mark bed=6 at=19:00 level_ml=399",
        ),
        (
            "15 hrly: 1700 170 1800 285",
            "mark bed=15 at=17:00 level_ml=170; mark bed=15 at=18:00 level_ml=285",
        ),
        ("bed 6 370 1800 385 1900", "mark bed=6 at=18:00 level_ml=370; mark bed=6 at=19:00 level_ml=385"),
        (
            "one more for 23 lines 1700: 170, 1800: 285",
            "mark bed=23 at=17:00 level_ml=170; mark bed=23 at=18:00 level_ml=285",
        ),
        ("bed 6 1700 385 1800 370", "ask level_ml"),
        ("bed 6 1700 300 1800 340", "mark bed=6 at=17:00 level_ml=300; mark bed=6 at=18:00 level_ml=340"),
        ("bed 6 1800 300 1700 340", "ask level_ml"),
        ("bed 6 1700 1010 1800 1040", "ask level_ml"),
    ],
)
def test_a_list_of_an_evening(text: str, read: str) -> None:
    assert reading(text, arrived=ARRIVED) == read


def test_a_list_over_midnight() -> None:
    read = reading("6 2300 340 0000 360 0100 380", arrived=MORNING)
    assert read.count("mark bed=6") == 3
