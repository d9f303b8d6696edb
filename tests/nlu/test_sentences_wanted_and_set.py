"""What suction somebody wants, how it was set, and what only looks like a line or an event of it."""

from __future__ import annotations

import pytest

from .saying import BEDS, at, reading


@pytest.mark.parametrize(
    ("clock", "beds", "text", "read"),
    [
        (
            "1905",
            BEDS,
            "team wants bed 12 down to -10",
            "ordered bed=12 suction_cmh2o=10",
        ),
        (
            "1905",
            BEDS,
            "team want 12 up to 20",
            "ordered bed=12 suction_cmh2o=20",
        ),
        (
            "1905",
            BEDS,
            "team wants bed 12 at 20",
            "ordered bed=12 suction_cmh2o=20",
        ),
        (
            "1905",
            BEDS,
            "team ordered bed 12 down to suction -10",
            "ordered bed=12 suction_cmh2o=10",
        ),
        (
            "1905",
            BEDS,
            "Dr Patel: bed 12 suction to -10",
            "ordered bed=12 suction_cmh2o=10",
        ),
        (
            "1905",
            BEDS,
            "Dr Patel: bed 12 340 at 1830",
            "mark bed=12 at=18:30 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "water seal ordered for bed 9",
            "ordered bed=9 suction_cmh2o=0",
        ),
        (
            "1905",
            BEDS,
            "weaned bed 12 to water seal at 1830",
            "checked bed=12 at=18:30 suction_cmh2o=0",
        ),
        (
            "1905",
            BEDS,
            "bed 12 weaned to water seal 1830",
            "checked bed=12 at=18:30 suction_cmh2o=0",
        ),
        (
            "1905",
            BEDS,
            "dropped bed 12 to water seal 1830",
            "checked bed=12 at=18:30 suction_cmh2o=0",
        ),
        (
            "1905",
            BEDS,
            "dropped bed 12 to 10 of suction at 1830",
            "checked bed=12 at=18:30 suction_cmh2o=10",
        ),
        (
            "1905",
            BEDS,
            "weaned bed 12 suction from 20 to 10 at 1830",
            "checked bed=12 at=18:30 suction_cmh2o=10",
        ),
        (
            "1905",
            BEDS,
            "dropped bed 12 box, water seal lost",
            "incident bed=12 what=tipped",
        ),
        (
            "1905",
            BEDS,
            "bed 12 canister 1900 out, new in at 1830",
            "exchanged bed=12 at=18:30 final_ml=1900",
        ),
        (
            "1905",
            BEDS,
            "bed 12 drainage maroon",
            "checked bed=12 fluid=dark_red",
        ),
    ],
)
def test_what_is_wanted_is_ordered_and_what_was_set_is_so(
    clock: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert reading(text, beds=beds, arrived=at(clock)) == read


@pytest.mark.parametrize(
    ("clock", "beds", "text"),
    [
        ("1905", BEDS, "team want bed 12 up to 200"),
        ("1905", BEDS, "wife wants bed 12 up to 20"),
        ("1905", BEDS, "did the team want 12 up to 20"),
        ("1905", BEDS, "need to wean bed 12 to water seal"),
        ("1905", BEDS, "bed 12 not weaned to water seal yet"),
        ("1905", BEDS, "bed 12 bubbling in chamber 2"),
        ("1905", BEDS, "bed 12 box out 1900, new one in at 1830"),
        ("1905", BEDS, "bed 12 wearing a maroon gown"),
    ],
)
def test_a_wish_and_a_plan_are_asked(clock: str, beds: tuple[str, ...], text: str) -> None:
    told = reading(text, beds=beds, arrived=at(clock))
    assert "ask " in told or not told
