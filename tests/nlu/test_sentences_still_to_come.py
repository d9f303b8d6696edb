"""What lies ahead: left out beside what is whole, and never told as done."""

from __future__ import annotations

import pytest

from .saying import BEDS, at, reading


@pytest.mark.parametrize(
    ("clock", "beds", "text", "read"),
    [
        (
            "1905",
            BEDS,
            "bed 9 340 at 1830, going for CT at 2000",
            "mark bed=9 at=18:30 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "bed 9 340 at 1830, going home tomorrow",
            "mark bed=9 at=18:30 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "bed 9 340 at 1830, tube to come out at 2000",
            "mark bed=9 at=18:30 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "bed 9 340 at 1830, surgery want it clamped at 2000",
            "mark bed=9 at=18:30 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "bed 9 340 at 1830, clamp trial tomorrow",
            "mark bed=9 at=18:30 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "bed 9 clamped at 1800, for removal tomorrow",
            "incident bed=9 at=18:00 what=clamped",
        ),
        (
            "1905",
            BEDS,
            "bed 9 no leak, clamp trial in the morning",
            "checked bed=9 air_leak=none",
        ),
        (
            "1905",
            BEDS,
            "bed 9 changed box at 1830, old 1900, suction off in the morning",
            "exchanged bed=9 at=18:30 final_ml=1900",
        ),
        (
            "0905",
            BEDS,
            "bed 9 clamped at 6 in the morning",
            "incident bed=9 at=06:00 what=clamped",
        ),
        (
            "0905",
            BEDS,
            "bed 9 340 at 6 in the morning",
            "mark bed=9 at=06:00 level_ml=340",
        ),
        (
            "1505",
            BEDS,
            "bed 9 to CT this afternoon",
            "away bed=9",
        ),
        (
            "0905",
            BEDS,
            "bed 9 went home this morning",
            "left bed=9",
        ),
        (
            "0905",
            BEDS,
            "handoff for next shift",
            "asked topic=handoff",
        ),
        (
            "0905",
            BEDS,
            "bed 9 tube out at 0830 please chart it",
            "removed bed=9 at=08:30",
        ),
        (
            "0905",
            BEDS,
            "bed 9 tube dislodged please come",
            "incident bed=9 what=dislodged",
        ),
    ],
)
def test_what_is_still_to_come_leaves_the_rest_whole(
    clock: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert reading(text, beds=beds, arrived=at(clock)) == read


@pytest.mark.parametrize(
    ("clock", "beds", "text"),
    [
        ("1905", BEDS, "bed 9 340 at 1830, clamped at 2000 for CT"),
        ("1905", BEDS, "bed 9 340 at 1830, clamped in 10 min"),
        ("1905", BEDS, "bed 9 340 at 1830, tube out tomorrow if under 200"),
        ("1905", BEDS, "bed 9 tube out tomorrow"),
        ("1905", BEDS, "bed 9 340 at 1830, 360 in the morning"),
        ("1905", BEDS, "bed 9 suction off in the morning"),
        ("1905", BEDS, "bed 9 tube out in the morning"),
        ("1905", BEDS, "bed 9 going home in the morning"),
        ("0905", BEDS, "bed 9 to theatre this evening"),
        ("0905", BEDS, "bed 9 going home this evening"),
        ("0905", BEDS, "bed 9 tube out next shift"),
        ("0905", BEDS, "bed 9 tube out please"),
        ("0905", BEDS, "bed 9 box change please"),
        ("0905", BEDS, "bed 9 suction off please"),
    ],
)
def test_what_is_still_to_come_has_not_happened(clock: str, beds: tuple[str, ...], text: str) -> None:
    told = reading(text, beds=beds, arrived=at(clock))
    assert "ask " in told or not told
