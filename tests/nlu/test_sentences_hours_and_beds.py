"""Numbers that could be a bed, an hour or a tube, and moments that are not the line's; common practice."""

from __future__ import annotations

from datetime import datetime

import pytest

from .saying import ARRIVED, BEDS, MORNING, reading

ROOMS = tuple(str(number) for number in range(201, 231))
CARDIAC = ("CT1", "CT2", "CT3", "CT4")


def told(text: str, beds: tuple[str, ...] = BEDS, arrived: datetime = ARRIVED) -> str:
    """What was read, or that nothing was taken: which slot is asked does not matter here."""
    read = reading(text, beds=beds, arrived=arrived)
    return "asked" if all(part.startswith("ask ") for part in read.split("; ")) else read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("201 215 640", "asked"),
        ("202 203 640", "asked"),
        ("201 640", "mark bed=201 level_ml=640"),
        ("201 215 at 1900", "mark bed=201 at=19:00 level_ml=215"),
        ("201 line 215 at 1850", "mark bed=201 at=18:50 level_ml=215"),
        ("next to 201, 640", "asked"),
        ("bed by 201 640", "asked"),
        ("on 201 640", "mark bed=201 level_ml=640"),
    ],
)
def test_a_level_that_is_a_bed_of_the_ward_is_asked(said: str, read: str) -> None:
    assert told(said, beds=ROOMS) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("ct1 to ct2 640", "asked"),
        ("ct1 to ct3", "asked"),
        ("ct1 to ct", "away bed=CT1"),
        ("ct1-4 640", "asked"),
        ("ct1 ct 2 640", "asked"),
        ("ct1 tube 2 640", "mark bed=CT1 tube=2 level_ml=640"),
        ("ct1 no 2 640", "asked"),
        ("ct1 each 320", "asked"),
        ("ct1 320, swinging with each breath", "mark bed=CT1 level_ml=320; checked bed=CT1 tidaling=True"),
    ],
)
def test_letters_of_beds_are_no_scan_and_no_tube(said: str, read: str) -> None:
    assert told(said, beds=CARDIAC) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("12 4 300, 5 330, 6 360", "asked"),
        ("12 0400 300, 5 330, 6 360", "asked"),
        ("12 0400 300, 14 330, 0600 360", "asked"),
        ("12 1400 200, 1500 210", "asked"),
        ("12: 0400 30, 0500 30, 0600 40, total 100", "asked"),
        ("12 12 640", "asked"),
        ("12 10 at 640", "asked"),
        ("9 at 545 at 640", "asked"),
        ("bed 10 to 12 640", "asked"),
        ("10 into 12", "asked"),
        ("bed 10 to bed 12", "moved bed=10 to_bed=12"),
        ("bed 10 to bed 12 0640", "moved bed=10 at=06:40 to_bed=12"),
        ("4 300, 5 330, 6 360", "; ".join(f"mark bed={k} level_ml={k * 30 + 180}" for k in (4, 5, 6))),
        (
            "12 0400 300, 14 0500 330",
            "mark bed=12 at=04:00 level_ml=300; mark bed=14 at=05:00 level_ml=330",
        ),
        (
            "12 left 640, 12 right 650",
            "mark bed=12 tube=left level_ml=640; mark bed=12 tube=right level_ml=650",
        ),
    ],
)
def test_an_hour_that_could_be_a_bed_is_asked(said: str, read: str) -> None:
    assert told(said, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("9 640 next due 0700", "asked"),
        ("9 640 at lights out", "asked"),
        ("9 640 at the beginning of the night", "asked"),
        ("9 640 last check", "asked"),
        ("9 640 at 0600, lights out", "mark bed=9 at=06:00 level_ml=640"),
        ("9 640 not 1900", "asked"),
        ("9 640 on the 2nd at 0600", "asked"),
        ("9 640 in 2 hours time", "asked"),
        ("9 640 12h", "asked"),
        ("9 640 at 0600+", "asked"),
        ("9 640 at midnight yesterday", "asked"),
        ("9 640 at midnight", "mark bed=9 at=00:00 level_ml=640"),
    ],
)
def test_a_time_of_something_else_or_of_no_hour_is_asked(said: str, read: str) -> None:
    assert told(said, arrived=MORNING) == read


def test_today_by_its_name_with_an_hour_to_come_is_not_a_week_ago() -> None:
    assert told("9 640 wednesday 2330", arrived=MORNING) == "asked"
    assert told("9 640 wednesday 0600", arrived=MORNING) == "mark bed=9 at=06:00 level_ml=640"
