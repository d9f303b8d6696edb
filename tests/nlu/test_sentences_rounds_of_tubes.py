"""Rounds in which some beds have several tubes, and what is told of a bed before the lines of its tubes."""

from __future__ import annotations

import pytest

from .saying import BEDS, MORNING, reading

WARD = tuple(str(number) for number in range(201, 231))
FORTY = tuple(str(number) for number in range(1, 41))
CLOSING = (
    "mark bed=206 level_ml=260 closing; mark bed=211 tube=right level_ml=40 closing; mark bed=211 tube=left"
)
CLOSING += " level_ml=65 closing; mark bed=214 level_ml=160 closing"
BOTH = "mark bed=9 tube=left level_ml=60; mark bed=9 tube=right level_ml=310"
CABG = "mark bed=12 tube=left level_ml=210; mark bed=12 tube=right level_ml=95"


@pytest.mark.parametrize(
    ("text", "beds", "read"),
    [
        ("closing lines 206 260 / 211 R 40 L 65 / 214 160", WARD, CLOSING),
        ("206 260, 211 r 40 l 65, 214 160 end of shift", WARD, CLOSING),
        (
            "206 260 / 211 R 40 L 65 / 214 160 0600",
            WARD,
            CLOSING.replace(" closing", "").replace(" level", " at=06:00 level"),
        ),
        (
            "3 510 9 med 410 11 470",
            BEDS,
            "mark bed=3 level_ml=510; mark bed=9 tube=mediastinal level_ml=410; mark bed=11 level_ml=470",
        ),
        ("3 9 left 20 right", BEDS, "mark bed=3 tube=left level_ml=9; mark bed=3 tube=right level_ml=20"),
        ("3 left 9 right 20", BEDS, "mark bed=3 tube=left level_ml=9; mark bed=3 tube=right level_ml=20"),
        (
            "0600: 3 510, 9 med 410, 11 470",
            BEDS,
            "mark bed=3 at=06:00 level_ml=510; mark bed=9 tube=mediastinal at=06:00 level_ml=410; "
            "mark bed=11 at=06:00 level_ml=470",
        ),
        ("206 210, 211 165, 214 145", WARD, "mark bed=206 level_ml=210; mark bed=211 level_ml=165; mark "
         "bed=214 level_ml=145"),
        ("27 185 30 310", FORTY, "mark bed=27 level_ml=185; mark bed=30 level_ml=310"),
    ],
)  # fmt: skip
def test_every_number_of_a_round_has_its_place(text: str, beds: tuple[str, ...], read: str) -> None:
    assert reading(text, beds=beds, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "beds"),
    [
        ("3 510, 4 1420, 7, 9 med 410", BEDS),
        ("3 510, 4, 7 300, 9 med 410", BEDS),
        ("3 510, 9 med 410, 470", BEDS),
        ("3 510, 9 med, 11 470, 12 300", BEDS),
        ("3, 510 9 med 410 11 470", BEDS),
        ("510 3, med 9 410, 11 470", BEDS),
        ("9 410 med 300, 11 470, 3 200", BEDS),
        ("3 drained 510, 9 med 410, 11 470", BEDS),
        ("206 260 / 211 R 40 L / 214 160 / 219 1230", WARD),
        ("206 260 / 211 R 40 L 65 / 160 / 219 1230", WARD),
        ("206 210 211 165 214 145", WARD),
        ("206 210, 211 214, 219 145", WARD),
        ("27 185 310 30", FORTY),
        ("27 185 30 310 31", FORTY),
        ("4 0100 138/20, 0200 140/25", BEDS),
        ("11 483 / 9 left right 900 end of shift", BEDS),
        ("24 1210; 6 left 527 right", BEDS),
        ("5 570 / 9 R L 74 0600", BEDS),
        ("3 0 5 0 0600", BEDS),
        ("3 1 5 0 0600", BEDS),
    ],
)
def test_a_row_that_may_be_read_one_place_on_is_asked(text: str, beds: tuple[str, ...]) -> None:
    read = reading(text, beds=beds, arrived=MORNING)
    assert "ask " in read
    assert "mark" not in read


@pytest.mark.parametrize(
    "text",
    [
        "output 3 210, 4 310",
        "night total lines 3 210 4 310 0645",
        "bed 3 output 210, bed 4 310",
        "drained bed 3 210, bed 4 310",
        "totals 3 210, 4 310 at 0600",
        "night totals bed 3 210, bed 4 310",
        "drained bed 3 210",
    ],
)
def test_what_may_be_how_much_came_from_one_bed_may_be_so_of_the_next(text: str) -> None:
    read = reading(text, arrived=MORNING)
    assert "ask " in read
    assert "mark" not in read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 16 has a basal and an apical on the right. Right basal 55, right apical 20 at 0600",
            "mark bed=16 tube=right basal at=06:00 level_ml=55; "
            "mark bed=16 tube=right apical at=06:00 level_ml=20",
        ),
        ("bed 9 has two in, left 60 and right 310", BOTH),
        ("bed 9 has 2 drains: left 60, right 310", BOTH),
        ("bed 9 has a left and a right. left 60 right 310", BOTH),
        ("bed 9 has three in, left 60 and right 310", "ask bed; ask bed"),
        ("bed 9 has an apical and a basal on the right. left 60, right 310", "ask level_ml"),
        ("bed 9 left apical and basal 60", "ask level_ml"),
        ("bed 9 right basal apical 60", "ask level_ml"),
        ("bed 9 apical and basal y'd 310", "mark bed=9 tube=apical basal level_ml=310"),
        ("bed 12 post op CABG, L 210 R 95", "described bed=12 reason=cardiac; " + CABG),
        ("post op cabg bed 12 L 210 R 95", "described bed=12 reason=cardiac; " + CABG),
        ("bed 12 L 210 R 95, post op cabg", CABG + "; described bed=12 reason=cardiac"),
        (
            "bed 12 left for pneumothorax 210, right 95",
            "mark bed=12 tube=left level_ml=210; described bed=12 tube=left reason=air; "
            "mark bed=12 tube=right level_ml=95",
        ),
        ("12 bilateral drains L 210 R 95", CABG),
        ("bed 12 bilat: L 210, R 95", CABG),
        ("12 bilateral drains 330", "ask level_ml"),
        ("12 bilateral R 330", "ask level_ml"),
        ("12 L 210 R 95 bilateral leaks", "ask level_ml"),
        ("12 L 210 R 95 bilateral pneumothorax", CABG + "; described bed=12 reason=air"),
        (
            "bed 12 post op lobectomy, right 210",
            "mark bed=12 tube=right level_ml=210; described bed=12 tube=right reason=lung",
        ),
    ],
)
def test_what_is_said_of_a_bed_before_the_lines_of_its_tubes(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed thirty two hundred at six", "ask bed"),
        ("bed twenty one hundred", "ask bed"),
        ("bed thirty two hundred and ten at six", "ask bed"),
        ("bed thirty two two hundred at six", "mark bed=32 at=06:00 level_ml=200"),
        ("bed thirty mark two hundred at six", "mark bed=30 at=06:00 level_ml=200"),
        ("bed twelve two hundred at six", "mark bed=12 at=06:00 level_ml=200"),
    ],
)
def test_a_dictated_bed_may_end_before_the_hundred_or_before_its_ones(text: str, read: str) -> None:
    assert reading(text, beds=FORTY, channel="voice", arrived=MORNING) == read
