"""Catch-up lists as they are written: colons in the times, tubes by short names, days."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "4: 00:00 138, 01:00 140, 02:00 143, 03:00 144",
            "mark bed=4 at=00:00 level_ml=138; "
            "mark bed=4 at=01:00 level_ml=140; "
            "mark bed=4 at=02:00 level_ml=143; "
            "mark bed=4 at=03:00 level_ml=144",
        ),
        (
            "4 mediastinal: 00:00 138, 01:00 140, 02:00 143, 03:00 144",
            "mark bed=4 tube=mediastinal at=00:00 level_ml=138; "
            "mark bed=4 tube=mediastinal at=01:00 level_ml=140; "
            "mark bed=4 tube=mediastinal at=02:00 level_ml=143; "
            "mark bed=4 tube=mediastinal at=03:00 level_ml=144",
        ),
        (
            "4: 138 00:00, 140 01:00, 143 02:00, 144 03:00",
            "mark bed=4 at=00:00 level_ml=138; "
            "mark bed=4 at=01:00 level_ml=140; "
            "mark bed=4 at=02:00 level_ml=143; "
            "mark bed=4 at=03:00 level_ml=144",
        ),
        (
            "4: 23:00 138; 00:00 140; 01:00 143; 02:00 144; 03:00 145",
            "mark bed=4 at=03-Mar-23:00 level_ml=138; "
            "mark bed=4 at=00:00 level_ml=140; "
            "mark bed=4 at=01:00 level_ml=143; "
            "mark bed=4 at=02:00 level_ml=144; "
            "mark bed=4 at=03:00 level_ml=145",
        ),
        (
            "4 00:00 138, 01:00 140, 6 00:00 20, 01:00 25",
            "mark bed=4 at=00:00 level_ml=138; "
            "mark bed=4 at=01:00 level_ml=140; "
            "mark bed=6 at=00:00 level_ml=20; "
            "mark bed=6 at=01:00 level_ml=25",
        ),
        ("4 00:00 138 01:00 140", "mark bed=4 at=00:00 level_ml=138; mark bed=4 at=01:00 level_ml=140"),
        ("4 mark 10:50", "ask bed"),
        ("4 00:00 138 or 140, 01:00 142, 02:00 143", "ask level_ml; ask kind; ask kind"),
    ],
)
def test_times_with_a_colon_in_a_list_are_no_levels(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("9 med: 225", "mark bed=9 tube=mediastinal level_ml=225"),
        ("9 med was 225 at 1900", "mark bed=9 tube=mediastinal at=19:00 level_ml=225"),
        (
            "catching up 9 med: 1500 270, 1600 290, 1700 300, 1800 310",
            "mark bed=9 tube=mediastinal at=15:00 level_ml=270; "
            "mark bed=9 tube=mediastinal at=16:00 level_ml=290; "
            "mark bed=9 tube=mediastinal at=17:00 level_ml=300; "
            "mark bed=9 tube=mediastinal at=18:00 level_ml=310",
        ),
        (
            "9 med 1500 270, 1600 290",
            "mark bed=9 tube=mediastinal at=15:00 level_ml=270; "
            "mark bed=9 tube=mediastinal at=16:00 level_ml=290",
        ),
        ("9 med given at 1500", "ask level_ml"),
        ("9 pain med 1500", ""),
    ],
)
def test_med_right_behind_a_bed_and_before_a_line_is_a_tube(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("Sat 2200 bed 3 was 1085", "mark bed=3 at=28-Feb-22:00 level_ml=1085"),
        ("bed 3 1085 on sat 22:00", "mark bed=3 at=28-Feb-22:00 level_ml=1085"),
        ("bed 3 sat 96 line 340", "mark bed=3 level_ml=340"),
        ("sat 96% on 2 L, bed 3 340 at 1900", "ask kind"),
    ],
)
def test_sat_before_a_whole_time_is_a_day(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "4 0100 L 138 R 20 0200 L 140 R 25",
            "mark bed=4 tube=left at=01:00 level_ml=138; "
            "mark bed=4 tube=right at=01:00 level_ml=20; "
            "mark bed=4 tube=left at=02:00 level_ml=140; "
            "mark bed=4 tube=right at=02:00 level_ml=25",
        ),
        (
            "4 0100 L138 R20",
            "mark bed=4 tube=left at=01:00 level_ml=138; mark bed=4 tube=right at=01:00 level_ml=20",
        ),
        (
            "4 0100 left 138 right 20, 0200 left 140 right 25, 0300 left 145 right 30",
            "mark bed=4 tube=left at=01:00 level_ml=138; "
            "mark bed=4 tube=right at=01:00 level_ml=20; "
            "mark bed=4 tube=left at=02:00 level_ml=140; "
            "mark bed=4 tube=right at=02:00 level_ml=25; "
            "mark bed=4 tube=left at=03:00 level_ml=145; "
            "mark bed=4 tube=right at=03:00 level_ml=30",
        ),
        (
            "0100 4 138 6 20 0200 4 140 6 25",
            "mark bed=4 at=01:00 level_ml=138; "
            "mark bed=6 at=01:00 level_ml=20; "
            "mark bed=4 at=02:00 level_ml=140; "
            "mark bed=6 at=02:00 level_ml=25",
        ),
        (
            "0100 bed 4 138 bed 6 20 0200 bed 4 140 bed 6 25",
            "mark bed=4 at=01:00 level_ml=138; "
            "mark bed=6 at=01:00 level_ml=20; "
            "mark bed=4 at=02:00 level_ml=140; "
            "mark bed=6 at=02:00 level_ml=25",
        ),
        (
            "0100 4 138 6 20 0200 6 25 4 140",
            "mark bed=4 at=01:00 level_ml=138; "
            "mark bed=6 at=01:00 level_ml=20; "
            "mark bed=6 at=02:00 level_ml=25; "
            "mark bed=4 at=02:00 level_ml=140",
        ),
        ("4 0138 0300", "ask level_ml"),
        ("4 1.2L at 0600", "mark bed=4 at=06:00 level_ml=1200"),
    ],
)
def test_whole_times_head_the_tubes_of_a_bed_and_the_beds_of_a_round_again_and_again(
    text: str, read: str
) -> None:
    assert reading(text, arrived=MORNING) == read
