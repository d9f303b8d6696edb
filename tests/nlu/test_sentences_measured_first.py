"""What was measured before its bed, and what is right this time."""

from __future__ import annotations

import pytest

from .saying import BEDS, at, reading


@pytest.mark.parametrize(
    ("clock", "beds", "text", "read"),
    [
        (
            "1905",
            BEDS,
            "bp 98/60 bed 2, drain serosang no leak",
            "checked bed=2 air_leak=none fluid=serosanguineous",
        ),
        (
            "1905",
            BEDS,
            "bp 98/60 bed 2, 340 at 1830",
            "mark bed=2 at=18:30 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "foley 300 bed 2, drain 340 at 1830",
            "mark bed=2 at=18:30 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "1900 round, right beds this time: bed 2 380, bed 20 490",
            "mark bed=2 at=19:00 level_ml=380; mark bed=20 at=19:00 level_ml=490",
        ),
        (
            "1905",
            BEDS,
            "right this time: bed 2 380, bed 20 490 at 1900",
            "mark bed=2 at=19:00 level_ml=380; mark bed=20 at=19:00 level_ml=490",
        ),
        (
            "1905",
            BEDS,
            "bed 12 was converted to gravity at 1830",
            "checked bed=12 at=18:30 suction_cmh2o=0",
        ),
        (
            "1905",
            BEDS,
            "bed 12 dropped back to water seal 1830",
            "checked bed=12 at=18:30 suction_cmh2o=0",
        ),
        (
            "1905",
            BEDS,
            "team ordered bed 12 down to suction -10",
            "ordered bed=12 suction_cmh2o=10",
        ),
    ],
)
def test_the_bed_behind_what_was_measured_is_that_of_the_drain(
    clock: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert reading(text, beds=beds, arrived=at(clock)) == read


@pytest.mark.parametrize(
    ("clock", "beds", "text"),
    [
        ("1905", BEDS, "hr 110 bed 2, no leak"),
        ("1905", BEDS, "foley 300 bed 2, 340 at 1830"),
        ("1905", BEDS, "bed 2 left 120, right this time 380"),
        ("1905", BEDS, "bed 10 drained 5 oz"),
        ("1905", BEDS, "3 water seal ordered, suction 20 now"),
    ],
)
def test_an_amount_that_may_be_of_another_vessel_is_asked(
    clock: str, beds: tuple[str, ...], text: str
) -> None:
    told = reading(text, beds=beds, arrived=at(clock))
    assert "ask " in told or not told
