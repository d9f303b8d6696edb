"""A dial and the wall behind a slash are no bed and its line, and a number before a leak is its grade."""

from __future__ import annotations

import pytest

from .saying import BEDS, at, reading


@pytest.mark.parametrize(
    ("clock", "beds", "text", "read"),
    [
        (
            "1905",
            BEDS,
            "bed 9 340/10 620",
            "mark bed=9 level_ml=340; mark bed=10 level_ml=620",
        ),
        (
            "1905",
            BEDS,
            "9/340 10/620",
            "mark bed=9 level_ml=340; mark bed=10 level_ml=620",
        ),
        (
            "1905",
            BEDS,
            "9/340/10/620",
            "mark bed=9 level_ml=340; mark bed=10 level_ml=620",
        ),
        (
            "1905",
            BEDS,
            "9 340/10 620/12 90",
            "mark bed=9 level_ml=340; mark bed=10 level_ml=620; mark bed=12 level_ml=90",
        ),
        (
            "1905",
            BEDS,
            "9 340 small leak",
            "mark bed=9 level_ml=340; checked bed=9 air_leak=present",
        ),
        (
            "1905",
            BEDS,
            "9 340 no leak, 3 120 leak",
            "mark bed=9 level_ml=340; checked bed=9 air_leak=none; mark bed=3 level_ml=120; "
            "checked bed=3 air_leak=present",
        ),
    ],
)
def test_beds_and_lines_stay_a_list(clock: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert reading(text, beds=beds, arrived=at(clock)) == read


@pytest.mark.parametrize(
    ("clock", "beds", "text"),
    [
        ("1905", BEDS, "9 340/20/90/no leak"),
        ("1905", BEDS, "rm 9 / 340 / 20 / 90"),
        ("1905", BEDS, "bed 9 340, 20/90"),
        ("1905", BEDS, "bed 9 2 leak"),
        ("1905", BEDS, "bed 9 340 2 leak"),
        ("1905", BEDS, "obs for 9 same as last"),
    ],
)
def test_what_may_be_a_setting_is_asked(clock: str, beds: tuple[str, ...], text: str) -> None:
    told = reading(text, beds=beds, arrived=at(clock))
    assert "ask " in told or not told
