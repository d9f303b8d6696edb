"""Thousands with a comma, a bed behind its tube, so much of suction, and how a drain has been going."""

from __future__ import annotations

import pytest

from .saying import BEDS, at, reading

WARD = tuple(str(number) for number in range(201, 231))


@pytest.mark.parametrize(
    ("clock", "beds", "text", "read"),
    [
        (
            "2000",
            BEDS,
            "yes 1,020",
            "answered answer=yes level_ml=1020",
        ),
        (
            "2000",
            BEDS,
            "yes 1,005",
            "answered answer=yes level_ml=1005",
        ),
        (
            "2000",
            BEDS,
            "misread, 1,020",
            "answered choice=misread level_ml=1020",
        ),
        (
            "2000",
            BEDS,
            "3 1,020, 4 1,005",
            "mark bed=3 level_ml=1020; mark bed=4 level_ml=1005",
        ),
        (
            "2000",
            WARD,
            "last line on 201,202",
            "asked bed=201 topic=last; asked bed=202 topic=last",
        ),
        (
            "1905",
            WARD,
            "RIGHT PLEURAL 202 LINE 660 AT 1800",
            "mark bed=202 tube=right pleural at=18:00 level_ml=660",
        ),
        (
            "1905",
            BEDS,
            "mediastinal 12 line 660 at 1800",
            "mark bed=12 tube=mediastinal at=18:00 level_ml=660",
        ),
        (
            "1905",
            BEDS,
            "right 12 left 66 bed 9",
            "mark bed=9 tube=right level_ml=12; mark bed=9 tube=left level_ml=66",
        ),
        (
            "1905",
            BEDS,
            "CT surgery ordered 10 of suction for 14",
            "ordered bed=14 suction_cmh2o=10",
        ),
        (
            "1905",
            BEDS,
            "20 of suction ordered for 14",
            "ordered bed=14 suction_cmh2o=20",
        ),
        (
            "1905",
            BEDS,
            "ordered 14 of suction for 10",
            "ordered bed=10 suction_cmh2o=14",
        ),
        (
            "1905",
            BEDS,
            "20 of suction on 14, no leak",
            "checked bed=14 suction_cmh2o=20 air_leak=none",
        ),
        (
            "1905",
            BEDS,
            "Bed 15 560 mls at 1850, two paracetamol given and she's much brighter",
            "mark bed=15 at=18:50 level_ml=560",
        ),
        (
            "1905",
            BEDS,
            "bed 3 845 on the box at 1855, foley 350 emptied",
            "mark bed=3 at=18:55 level_ml=845",
        ),
        (
            "2000",
            WARD,
            "show me how 217's output has been going over the last 6 hours",
            "asked bed=217 topic=trend window=6h",
        ),
        (
            "2000",
            BEDS,
            "how's 9 been going the past 3 hours",
            "asked bed=9 topic=trend window=3h",
        ),
        (
            "2000",
            BEDS,
            "how much has 9 been doing over the last 4 hours",
            "asked bed=9 topic=total window=4h",
        ),
        (
            "2000",
            BEDS,
            "how has 9 been draining over the last 4 hours",
            "asked bed=9 topic=total window=4h",
        ),
    ],
)
def test_each_number_has_its_place(clock: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert reading(text, beds=beds, arrived=at(clock)) == read


@pytest.mark.parametrize(
    ("clock", "beds", "text"),
    [
        ("2000", BEDS, "yes 1,02"),
        ("2000", BEDS, "yes 1,0200"),
        ("2000", BEDS, "3 940,0700"),
        ("1905", BEDS, "right 12 660 at 1800"),
        ("1905", BEDS, "left 12 1800"),
        ("1905", BEDS, "right pleural 12 no leak"),
        ("1905", BEDS, "20 of suction for 14 please"),
        ("1905", BEDS, "20 of suction on 14 and 9"),
        ("1905", BEDS, "surgeon ordered 20 of suction for 24 hours"),
        ("1905", BEDS, "bed 15 two paracetamol"),
        ("1905", BEDS, "bed 3 20 on the box at 1855"),
        ("1905", WARD, "bed 203 on the box at 1855"),
    ],
)
def test_a_number_that_may_be_another_is_asked(clock: str, beds: tuple[str, ...], text: str) -> None:
    told = reading(text, beds=beds, arrived=at(clock))
    assert "ask " in told or not told
