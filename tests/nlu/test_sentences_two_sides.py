"""Two tubes of a bed that are told together: what happened or was found is of each."""

from __future__ import annotations

import pytest

from .saying import BEDS, at, reading


@pytest.mark.parametrize(
    ("clock", "beds", "text", "read"),
    [
        (
            "1905",
            BEDS,
            "bed 9 left and right clamped at 1830",
            "incident bed=9 tube=left at=18:30 what=clamped; incident bed=9 tube=right at=18:30 what=clamped",
        ),
        (
            "1905",
            BEDS,
            "bed 9 left and right both swinging, no leak",
            "checked bed=9 tube=left air_leak=none tidaling=True; checked bed=9 tube=right "
            "air_leak=none tidaling=True",
        ),
        (
            "1905",
            BEDS,
            "bed 9 left and right pleural tubes out at 1830",
            "removed bed=9 tube=left pleural at=18:30; removed bed=9 tube=right pleural at=18:30",
        ),
        (
            "1905",
            BEDS,
            "clamped left and right on bed 9 at 1830",
            "incident bed=9 tube=left at=18:30 what=clamped; incident bed=9 tube=right at=18:30 what=clamped",
        ),
        (
            "1905",
            BEDS,
            "bed 9 left and right clamped, right unclamped at 1850",
            "incident bed=9 tube=left what=clamped; incident bed=9 tube=right what=clamped; "
            "incident bed=9 tube=right at=18:50 what=unclamped",
        ),
        (
            "1905",
            BEDS,
            "bed 9 left upper and right lower no leak",
            "checked bed=9 tube=left upper air_leak=none; checked bed=9 tube=right lower air_leak=none",
        ),
        (
            "1905",
            BEDS,
            "bed 9 left and right apical no leak",
            "checked bed=9 tube=left apical air_leak=none; checked bed=9 tube=right apical air_leak=none",
        ),
        (
            "1905",
            BEDS,
            "bed 9 apical and basal clamped at 1830",
            "incident bed=9 tube=apical at=18:30 what=clamped; incident bed=9 tube=basal "
            "at=18:30 what=clamped",
        ),
        (
            "1905",
            BEDS,
            "bed 9 mediastinal and left pleural no leak",
            "checked bed=9 tube=mediastinal air_leak=none; checked bed=9 tube=left pleural air_leak=none",
        ),
        (
            "1905",
            BEDS,
            "clamped left, right 340 bed 9",
            "incident bed=9 tube=left what=clamped; mark bed=9 tube=right level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "bed 9 L and R out at 1830",
            "removed bed=9 tube=left at=18:30; removed bed=9 tube=right at=18:30",
        ),
        (
            "1905",
            BEDS,
            "bed 9 left and right tubes both out",
            "removed bed=9 tube=left; removed bed=9 tube=right",
        ),
        (
            "1905",
            BEDS,
            "bed 9 left and right chest drains both out at 1830",
            "removed bed=9 tube=left at=18:30; removed bed=9 tube=right at=18:30",
        ),
        (
            "1905",
            BEDS,
            "9 l and r out @1830",
            "removed bed=9 tube=left at=18:30; removed bed=9 tube=right at=18:30",
        ),
        (
            "1905",
            BEDS,
            "bed 9 left 210 and right out at 1830",
            "mark bed=9 tube=left at=18:30 level_ml=210; removed bed=9 tube=right at=18:30",
        ),
        (
            "1905",
            BEDS,
            "bed 9 left and right nil out",
            "drained bed=9 tube=left volume_ml=0; drained bed=9 tube=right volume_ml=0",
        ),
    ],
)
def test_what_is_told_of_two_tubes_is_of_each(
    clock: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert reading(text, beds=beds, arrived=at(clock)) == read


@pytest.mark.parametrize(
    ("clock", "beds", "text"),
    [
        ("1905", BEDS, "bed 9 left or right clamped"),
        ("1905", BEDS, "bed 9 left and right 340"),
        ("1905", BEDS, "bed 9 clamped left and right is at 340"),
        ("1905", BEDS, "bed 9 clamped left and right tomorrow"),
        ("1905", BEDS, "bed 9 left and right out 340"),
        ("1905", BEDS, "bed 9 left and right out at 340"),
        ("1905", BEDS, "bed 9 left and right out at 7"),
        ("1905", BEDS, "bed 9 L and R out 340 and 120"),
        ("1905", BEDS, "bed 9 L and R to come out at 2000"),
        ("1905", BEDS, "are left and right out on bed 9"),
        ("1905", BEDS, "bed 9 L and R out tomorrow"),
        ("1905", BEDS, "bed 9 l and r not out yet"),
    ],
)
def test_an_amount_of_two_tubes_is_asked(clock: str, beds: tuple[str, ...], text: str) -> None:
    told = reading(text, beds=beds, arrived=at(clock))
    assert "ask " in told or not told
