"""What is in another device is no line, what is in the box of a bed is, and so much this hour came."""

from __future__ import annotations

import pytest

from .saying import BEDS, at, reading


@pytest.mark.parametrize(
    ("clock", "beds", "text", "read"),
    [
        (
            "1905",
            BEDS,
            "bed 9 340 at 1830, 200 ml out of the foley",
            "mark bed=9 at=18:30 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "340 in 9's box, foley 200",
            "mark bed=9 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "340 in 9, foley out",
            "mark bed=9 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "340 in bed 9's box at 1900",
            "mark bed=9 at=19:00 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "there's 340 ml in bed 9's box at 1900",
            "mark bed=9 at=19:00 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "theres 340 in 9",
            "mark bed=9 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "bed 9 15 ml this hour",
            "drained bed=9 volume_ml=15",
        ),
        (
            "1905",
            BEDS,
            "bed 9 only 15 this hour",
            "drained bed=9 volume_ml=15",
        ),
        (
            "1905",
            BEDS,
            "bed 9 0 this hour",
            "drained bed=9 volume_ml=0",
        ),
        (
            "1905",
            BEDS,
            "BED 9 IS 1250",
            "mark bed=9 level_ml=1250",
        ),
        (
            "1905",
            BEDS,
            "Bed 9 340 at 1830, IS 1250 x10",
            "mark bed=9 at=18:30 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "bed 9 fluid at 340",
            "mark bed=9 level_ml=340",
        ),
    ],
)
def test_what_is_in_its_box_is_its_line_and_what_is_in_another_is_none(
    clock: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert reading(text, beds=beds, arrived=at(clock)) == read


@pytest.mark.parametrize(
    ("clock", "beds", "text"),
    [
        ("1905", BEDS, "340 in 9's foley"),
        ("1905", BEDS, "bed 9 340 in the foley at 1900"),
        ("1905", BEDS, "300 in bed 9's JP"),
        ("1905", BEDS, "bed 9 200 via NG"),
        ("1905", BEDS, "there are 2 tubes in 9"),
        ("1905", BEDS, "bed 9 340 this hour"),
        ("1905", BEDS, "15 this hour bed 9"),
        ("1905", BEDS, "bed 9 IS 1250"),
        ("1905", BEDS, "bed 9 fluids at 75"),
        ("1905", BEDS, "bed 12 drained 50 an hour"),
    ],
)
def test_what_may_be_of_another_is_asked(clock: str, beds: tuple[str, ...], text: str) -> None:
    told = reading(text, beds=beds, arrived=at(clock))
    assert "ask " in told or not told
