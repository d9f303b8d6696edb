"""How much was spilled, how long it was clamped and what both sides are set to are no lines."""

from __future__ import annotations

import pytest

from .saying import BEDS, at, reading


@pytest.mark.parametrize(
    ("clock", "beds", "text", "read"),
    [
        (
            "1905",
            BEDS,
            "bed 9 box tipped and spilled, 340 at 1830",
            "mark bed=9 at=18:30 level_ml=340; incident bed=9 at=18:30 what=tipped",
        ),
        (
            "1905",
            BEDS,
            "bed 9 left suction 20 right water seal",
            "checked bed=9 tube=left suction_cmh2o=20; checked bed=9 tube=right suction_cmh2o=0",
        ),
        (
            "1905",
            BEDS,
            "bed 9 clamped 20 min",
            "incident bed=9 what=clamped",
        ),
        (
            "1905",
            BEDS,
            "bed 9 clamped 340",
            "mark bed=9 level_ml=340; incident bed=9 what=clamped",
        ),
        (
            "1905",
            BEDS,
            "bed 9 clamped, 20 in the box",
            "mark bed=9 level_ml=20; incident bed=9 what=clamped",
        ),
        (
            "1905",
            BEDS,
            "bed 9 suction on 20",
            "checked bed=9 suction_cmh2o=20",
        ),
    ],
)
def test_a_line_beside_an_event_stays_one(clock: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert reading(text, beds=beds, arrived=at(clock)) == read


@pytest.mark.parametrize(
    ("clock", "beds", "text"),
    [
        ("1905", BEDS, "bed 9 spilled 100 of it"),
        ("1905", BEDS, "bed 9 box tipped, spilled about 100"),
        ("1905", BEDS, "bed 9 left 20 right 10 suction"),
        ("1905", BEDS, "bed 9 left 340 right 120 at 1830, suction 20"),
        ("1905", BEDS, "bed 9 clamped 20"),
        ("1905", BEDS, "bed 9 suction off 20"),
    ],
)
def test_what_may_be_no_line_is_asked(clock: str, beds: tuple[str, ...], text: str) -> None:
    told = reading(text, beds=beds, arrived=at(clock))
    assert "ask " in told or not told
