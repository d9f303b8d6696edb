"""Rows of beds or tubes and their lines, and which number of such a row is the time, or a bed."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading

WARD = ("204", "212", "215")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "4 1900 left 180 right 65",
            "mark bed=4 tube=left at=19:00 level_ml=180; mark bed=4 tube=right at=19:00 level_ml=65",
        ),
        (
            "bed 4 closing 1900 left 180 right 640",
            "mark bed=4 tube=left at=19:00 level_ml=180 closing; "
            "mark bed=4 tube=right at=19:00 level_ml=640 closing",
        ),
        (
            "1900 4 left 180 right 640",
            "mark bed=4 tube=left at=19:00 level_ml=180; mark bed=4 tube=right at=19:00 level_ml=640",
        ),
        (
            "bed 4 1500 left 180 right 65",
            "mark bed=4 tube=left at=15:00 level_ml=180; mark bed=4 tube=right at=15:00 level_ml=65",
        ),
        (
            "4 1900 left apical 80 left basal 40 right 110",
            "mark bed=4 tube=left apical at=19:00 level_ml=80; "
            "mark bed=4 tube=left basal at=19:00 level_ml=40; "
            "mark bed=4 tube=right at=19:00 level_ml=110",
        ),
        (
            "1900 4 left 180 right 65, 5 left 30 right 45",
            "mark bed=4 tube=left at=19:00 level_ml=180; "
            "mark bed=4 tube=right at=19:00 level_ml=65; "
            "mark bed=5 tube=left at=19:00 level_ml=30; "
            "mark bed=5 tube=right at=19:00 level_ml=45",
        ),
        (
            "4 340 left 120 right 1855",
            "mark bed=4 tube=left at=18:55 level_ml=340; mark bed=4 tube=right at=18:55 level_ml=120",
        ),
        (
            "4 left 180 right 65 1900",
            "mark bed=4 tube=left at=19:00 level_ml=180; mark bed=4 tube=right at=19:00 level_ml=65",
        ),
        (
            "4 left closing 180, right 640",
            "mark bed=4 tube=left level_ml=180 closing; mark bed=4 tube=right level_ml=640",
        ),
        ("4 1500 left 180 right 640", "ask level_ml"),
        ("4 1500 left 120 right 1855", "ask level_ml"),
        ("4 620 left 120 right 640", "ask level_ml"),
        ("4 since 1500 left 180 right 65", "ask level_ml"),
    ],
)
def test_a_time_before_the_tubes_of_a_bed_is_of_all_their_lines(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "4 645 6 140 at 7, 6 still bubbling",
            "mark bed=4 at=19:00 level_ml=645; "
            "mark bed=6 at=19:00 level_ml=140; "
            "checked bed=6 at=19:00 air_leak=present",
        ),
        ("4 340, 6 410, 430", "ask at"),
        ("bed 4 410 5, 430 6", "ask level_ml"),
        ("bed 4 5 410, 6 430", "ask level_ml"),
        ("4 340, 6 410, 8 430", "mark bed=4 level_ml=340; mark bed=6 level_ml=410; mark bed=8 level_ml=430"),
        ("bed 4 at 5 410, at 6 430", "mark bed=4 at=17:00 level_ml=410; mark bed=4 at=18:00 level_ml=430"),
        ("bed 4 0400 12, 0500 18", "mark bed=4 at=04:00 level_ml=12; mark bed=4 at=05:00 level_ml=18"),
        ("bed 4 410 at 5, 430 at 6", "mark bed=4 at=17:00 level_ml=410; mark bed=4 at=18:00 level_ml=430"),
    ],
)
def test_a_bed_between_lines_is_not_read_as_a_line_of_the_bed_before(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("2 and 5 are 210 and 1340 at 0600", "ask level_ml"),
        ("bed four at five four ten and at six four thirty", "ask level_ml"),
        ("bed two 340 and six", "mark bed=2 at=06:00 level_ml=340"),
    ],
)
def test_dictated_beds_in_a_row_are_not_a_bed_and_its_hour(text: str, read: str) -> None:
    assert reading(text, channel="voice", arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "11 1175 at 7, 12 380 at 7, 14 90",
            "mark bed=11 at=19:00 level_ml=1175; "
            "mark bed=12 at=19:00 level_ml=380; "
            "mark bed=14 at=19:00 level_ml=90",
        ),
        (
            "11 1175 at 6, 12 380 at 7, 14 90 same time",
            "mark bed=11 at=18:00 level_ml=1175; "
            "mark bed=12 at=19:00 level_ml=380; "
            "mark bed=14 at=19:00 level_ml=90",
        ),
        (
            "11 1175 at 6, 12 380 same time, 14 90 at 7",
            "mark bed=11 at=18:00 level_ml=1175; "
            "mark bed=12 at=18:00 level_ml=380; "
            "mark bed=14 at=19:00 level_ml=90",
        ),
        (
            "11 1175 at 6, 12 380 at 7, at the same time 14 was 90",
            "mark bed=11 at=18:00 level_ml=1175; "
            "mark bed=12 at=19:00 level_ml=380; "
            "mark bed=14 at=19:00 level_ml=90",
        ),
        (
            "11 1175 at 6, 12 380 at 7, 14 90",
            "mark bed=11 at=18:00 level_ml=1175; mark bed=12 at=19:00 level_ml=380; mark bed=14 level_ml=90",
        ),
    ],
)
def test_the_same_time_is_the_one_told_last_and_a_time_told_for_each_is_one(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "no leak 212 no leak 215 204 leaking with cough",
            "checked bed=212 air_leak=none; "
            "checked bed=215 air_leak=none; "
            "checked bed=204 air_leak=intermittent",
        ),
        ("no leak 212, swinging 215", "checked bed=212 air_leak=none; checked bed=215 tidaling=True"),
        ("no leak on 212 no leak 215", "checked bed=212 air_leak=none; checked bed=215 air_leak=none"),
        ("no leak 204", "checked bed=204 air_leak=none"),
        ("bed 212 no leak 215", "ask kind"),
        ("212 340, 215 410, 430", "ask at"),
        (
            "212 left 215 right 85",
            "mark bed=212 tube=left level_ml=215; mark bed=212 tube=right level_ml=85",
        ),
        ("212 340 215 410", "mark bed=212 level_ml=340; mark bed=215 level_ml=410"),
    ],
)
def test_what_was_found_before_its_bed_is_of_that_bed_and_no_bed_of_the_ward_is_a_time(
    text: str, read: str
) -> None:
    assert reading(text, beds=WARD) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bloody 4, serous 6", "checked bed=4 fluid=sanguineous; checked bed=6 fluid=serous"),
        (
            "no leak 4, swinging well, 340 at 1900",
            "mark bed=4 at=19:00 level_ml=340; checked bed=4 at=19:00 air_leak=none tidaling=True",
        ),
        ("4 swinging 6 no leak 8 swinging", "checked bed=4 tidaling=True; ask bed"),
    ],
)
def test_what_was_found_behind_its_bed_stays_there(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "4 left 180 right 640 1900",
            "mark bed=4 tube=left at=19:00 level_ml=180; mark bed=4 tube=right at=19:00 level_ml=640",
        ),
        (
            "4 tube 1 80, tube 2 640, 1900",
            "mark bed=4 tube=1 at=19:00 level_ml=80; mark bed=4 tube=2 at=19:00 level_ml=640",
        ),
        ("4 140 6 645 1900", "mark bed=4 at=19:00 level_ml=140; mark bed=6 at=19:00 level_ml=645"),
        ("4 645, 6 630. 1900.", "mark bed=4 at=19:00 level_ml=645; mark bed=6 at=19:00 level_ml=630"),
        (
            "4 645 1900, 6 140 1855, 9 88 1850",
            "mark bed=4 at=19:00 level_ml=645; "
            "mark bed=6 at=18:55 level_ml=140; "
            "mark bed=9 at=18:50 level_ml=88",
        ),
        (
            "4 1900 645 6 1855 140 9 1850 88",
            "mark bed=4 at=19:00 level_ml=645; "
            "mark bed=6 at=18:55 level_ml=140; "
            "mark bed=9 at=18:50 level_ml=88",
        ),
        ("4 1855 6 640 1900", "ask level_ml"),
        ("4 645 1900 6 640 1855", "ask level_ml"),
        ("4 left 640 1900", "ask level_ml"),
        ("4 left 180 right 640 1500", "ask level_ml"),
    ],
)
def test_a_fresh_time_behind_a_row_is_of_each_line_though_the_last_of_them_could_be_a_time(
    text: str, read: str
) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "3 410 no leak, 5 285 small leak, 9 1130 no leak, all 0600",
            "mark bed=3 at=06:00 level_ml=410; "
            "checked bed=3 at=06:00 air_leak=none; "
            "mark bed=5 at=06:00 level_ml=285; "
            "checked bed=5 at=06:00 air_leak=present; "
            "mark bed=9 at=06:00 level_ml=1130; "
            "checked bed=9 at=06:00 air_leak=none",
        ),
        (
            "3 410 0600, 5 285 0600, 9 gone to CT",
            "mark bed=3 at=06:00 level_ml=410; mark bed=5 at=06:00 level_ml=285; away bed=9",
        ),
        (
            "3 closing 410 5 closing 285 0645",
            "mark bed=3 at=06:45 level_ml=410 closing; mark bed=5 at=06:45 level_ml=285 closing",
        ),
        (
            "3 sits at 410, 5 sits at 285 (0600)",
            "mark bed=3 at=06:00 level_ml=410; mark bed=5 at=06:00 level_ml=285",
        ),
        ("bed 9 0400 12, 0500 18", "mark bed=9 at=04:00 level_ml=12; mark bed=9 at=05:00 level_ml=18"),
        ("3 410 small leak, 2", "mark bed=3 level_ml=410; checked bed=3 air_leak=present leak_grade=2"),
        (
            "3 410 leak 2, 5 285",
            "mark bed=3 level_ml=410; checked bed=3 air_leak=present leak_grade=2; mark bed=5 level_ml=285",
        ),
    ],
)
def test_the_next_bed_of_a_row_is_no_line_and_no_grade_of_a_leak(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read
