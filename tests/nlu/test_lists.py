"""Catch-up lists of full hours that stand evenly apart: a time and a level each, of every bed and tube."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from .saying import ARRIVED, MORNING, reading


def lines(bed: str, *pairs: str) -> str:
    """The lines of one bed: "17:00 610"."""
    return "; ".join(
        f"mark bed={bed} at={at} level_ml={level}" for at, level in (pair.split() for pair in pairs)
    )


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "sorry been slammed. 12: 1700 610, 1800 640. 14: 1700 220, 1800 235",
            f"{lines('12', '17:00 610', '18:00 640')}; {lines('14', '17:00 220', '18:00 235')}",
        ),
        (
            "bed 6 left: 1700 300, 1800 320; right: 1700 90, 1800 95",
            "mark bed=6 tube=left at=17:00 level_ml=300; mark bed=6 tube=left at=18:00 level_ml=320; "
            "mark bed=6 tube=right at=17:00 level_ml=90; mark bed=6 tube=right at=18:00 level_ml=95",
        ),
        (
            "bed 8 hourly marks 4pm 1020 5pm 1060 6pm 1110 7pm 1195",
            lines("8", "16:00 1020", "17:00 1060", "18:00 1110", "19:00 1195"),
        ),
        ("2 backlog: 0900 44, 1100 47, 1300 49", lines("2", "09:00 44", "11:00 47", "13:00 49")),
        ("bed 9 - 1500 1010 / 1600 1030 / 1700 1045", lines("9", "15:00 1010", "16:00 1030", "17:00 1045")),
        ("bed 3: 1600-300 1700-320 1800-355", lines("3", "16:00 300", "17:00 320", "18:00 355")),
        ("bed 8 1700/300 1800/340 1900/360", lines("8", "17:00 300", "18:00 340", "19:00 360")),
        ("2: 1600 = 400, 1700 = 430, 1800 = 450", lines("2", "16:00 400", "17:00 430", "18:00 450")),
        ("bed 8 readings 5pm 300ml 6pm 340ml", lines("8", "17:00 300", "18:00 340")),
        ("15: 1730 400, 1800 415, 1830 440", lines("15", "17:30 400", "18:00 415", "18:30 440")),
        (
            "3) 1700 410, 1800 425  5) 1700 90, 1800 95",
            f"{lines('3', '17:00 410', '18:00 425')}; {lines('5', '17:00 90', '18:00 95')}",
        ),
        ("5 1800 290 7 1800 60", f"{lines('5', '18:00 290')}; {lines('7', '18:00 60')}"),
        ("6 300 1700, 340 1800", lines("6", "17:00 300", "18:00 340")),
    ],
)
def test_a_list_of_full_hours(text: str, read: str) -> None:
    assert reading(text, arrived=ARRIVED) == read


def test_hourly_numbers_that_no_canister_could_hold_together_are_lines() -> None:
    read = reading("bed 11 hourlies 0300 720, 0400 735, 0500 760, 0600 770", arrived=MORNING)
    assert read == lines("11", "03:00 720", "04:00 735", "05:00 760", "06:00 770")


@pytest.mark.parametrize(
    "text",
    [
        "12 hourlies 1600 44, 1700 47, 1800 49",  # what drained in each hour
        "12 outputs 1600 44 1700 47 1800 49",
        "12 drained 1600 44, 1700 47, 1800 49",
        "12 ketones 1600 120, 1700 130, 1800 140",
        "12 goal 1600 120, 1700 130, 1800 140",
        "12 bp 1600 120, 1700 130, 1800 140",
        "12 suction 1600 20 1700 20",
        "12 1600 44, 1700 47, 1800 42",  # they fall
        "12 1600 44, 1700 47, 2100 49",  # that hour is still to come
        "12 1600 120, 1700 130, sorry 140, 1800 150",
        "12 1600 120, 1700 130, 1800 140 not sure",
        "12 1600 120, 1700 130, 1800 140?",
        "12: 1600 1700, 1700 1800, 1800 1900",  # either may be the hours
        "12 1700 1805 1800 1850",  # or two lines of the last hours
        "12 and 14 1600 100 1700 120",  # of which?
        "12 1600 100 1700 120 1800",
        "1600 100 1700 120 1800 130",  # of which bed?
    ],
)
def test_a_list_that_may_be_something_else_is_asked(text: str) -> None:
    read = reading(text, arrived=ARRIVED)
    assert "ask " in read
    assert "mark" not in read


@given(st.lists(st.integers(20, 999), min_size=3, max_size=6).map(sorted), st.booleans())
def test_it_matters_not_which_of_a_pair_comes_first(levels: list[int], time_first: bool) -> None:
    pairs = [(f"{19 - len(levels) + k}00", str(level)) for k, level in enumerate(levels)]
    said = ", ".join(" ".join(pair if time_first else pair[::-1]) for pair in pairs)
    wanted = lines("6", *(f"{time[:2]}:00 {level}" for time, level in pairs))
    assert reading(f"bed 6: {said}", arrived=ARRIVED) == wanted
