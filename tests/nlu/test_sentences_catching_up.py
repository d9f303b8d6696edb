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
        ("4 mark 10:50", "ask level_ml"),
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
        ("sat 96% on 2 L, bed 3 340 at 1900", "mark bed=3 at=19:00 level_ml=340"),
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


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 7 today: 1500 420, 1600 460",
            "mark bed=7 at=15:00 level_ml=420; mark bed=7 at=16:00 level_ml=460",
        ),
        (
            "bed 7 this afternoon: 1500 420, 1600 460",
            "mark bed=7 at=15:00 level_ml=420; mark bed=7 at=16:00 level_ml=460",
        ),
        (
            "bed 7 yesterday: 0800 420, 0900 460",
            "mark bed=7 at=03-Mar-08:00 level_ml=420; mark bed=7 at=03-Mar-09:00 level_ml=460",
        ),
        (
            "today bed 7: 1500 420, 1600 460, 1700 475",
            "mark bed=7 at=15:00 level_ml=420; "
            "mark bed=7 at=16:00 level_ml=460; "
            "mark bed=7 at=17:00 level_ml=475",
        ),
        (
            "12 today: 1500 420, 1600 460",
            "mark bed=12 at=15:00 level_ml=420; mark bed=12 at=16:00 level_ml=460",
        ),
        ("bed 7 yesterday 420 at 0800, 460 at 0900", "ask at"),
        ("bed 7 today: 2000 420, 2100 460", "ask level_ml"),
        ("bed 7 1500 420 this afternoon", "ask level_ml"),
        ("bed 7 420 1500 this afternoon", "mark bed=7 at=15:00 level_ml=420"),
        ("bed 7 610 yesterday 2300", "mark bed=7 at=03-Mar-23:00 level_ml=610"),
    ],
)
def test_the_day_before_a_list_is_of_each_of_its_times(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "11 L 310 R 95 at 0400, L 330 R 100 at 0500",
            "mark bed=11 tube=left at=04:00 level_ml=310; "
            "mark bed=11 tube=right at=04:00 level_ml=95; "
            "mark bed=11 tube=left at=05:00 level_ml=330; "
            "mark bed=11 tube=right at=05:00 level_ml=100",
        ),
        (
            "4 310 6 95 at 0400, 4 330 6 100 at 0500",
            "mark bed=4 at=04:00 level_ml=310; "
            "mark bed=6 at=04:00 level_ml=95; "
            "mark bed=4 at=05:00 level_ml=330; "
            "mark bed=6 at=05:00 level_ml=100",
        ),
        (
            "bed 4 310, bed 6 95 at 0400. bed 4 330, bed 6 100 at 0500",
            "mark bed=4 at=04:00 level_ml=310; "
            "mark bed=6 at=04:00 level_ml=95; "
            "mark bed=4 at=05:00 level_ml=330; "
            "mark bed=6 at=05:00 level_ml=100",
        ),
        ("4 310, 6 95 at 0400, 8 330, 9 100 at 0500", "ask level_ml"),
        ("11 L 310 R 95 at 0400, L 330 at 0500", "ask level_ml"),
        ("11 L 310 at 0330 R 95 at 0400, L 330 R 100 at 0500", "ask level_ml"),
    ],
)
def test_the_same_drains_again_with_their_time_behind_them_are_of_that_time(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "4 at 645 and 6 at 140 at 0600",
            "mark bed=4 at=06:00 level_ml=645; mark bed=6 at=06:00 level_ml=140",
        ),
        ("4 at 645, 6 is 140 at 0600", "ask level_ml"),
        ("bed 2 was 610 at 2300, forgot to send", "mark bed=2 at=03-Mar-23:00 level_ml=610"),
        ("bed 2 is 610 at 2300", "mark bed=2 at=03-Mar-23:00 level_ml=610"),
        (
            "bed 2 was 610 at 2300 and is 640 at 0600",
            "mark bed=2 at=03-Mar-23:00 level_ml=610; mark bed=2 at=06:00 level_ml=640",
        ),
        ("bed 2 was 610 at 2300 should be 630", "corrected bed=2 at=03-Mar-23:00 was_ml=610 level_ml=630"),
        ("4 at 645, 6 at 140", "ask level_ml"),
        ("4 at 645 and 6 at 140 at 7", "ask level_ml"),
        ("4 at 0645 and 6 at 140 at 0600", "ask level_ml"),
        ("bed 2 610 at 2300", "ask level_ml"),
    ],
)
def test_beside_a_whole_time_behind_its_at_a_short_number_is_the_line(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("17 line is at 1215, read at 1855", "mark bed=17 at=18:55 level_ml=1215"),
        ("17 mark 640, read at 1855", "mark bed=17 at=18:55 level_ml=640"),
        ("9 225 ish sorry dark in here, at 1855", "mark bed=9 at=18:55 level_ml=225 about"),
        (
            "9 at 1600 was 18 and at 1700 was 22, didn't send at the time",
            "mark bed=9 at=16:00 level_ml=18; mark bed=9 at=17:00 level_ml=22",
        ),
        ("9 yesterday 1900 was 612 if that helps", "mark bed=9 at=03-Mar-19:00 level_ml=612"),
        ("what a morning. 9 590 at 1300", "mark bed=9 at=13:00 level_ml=590"),
        ("what a shift, 9 590 at 1800", "mark bed=9 at=18:00 level_ml=590"),
        ("17 1215 read at 1855", "ask level_ml"),
        ("17 line at 1215, reads 1300", "ask level_ml"),
        ("9 225 sorry 235 at 1855", "ask level_ml"),
        ("9 line 225, correction, at 1855", "ask level_ml"),
        ("9 340 at 1500 didn't send it", "mark bed=9 at=15:00 level_ml=340"),
        ("9 590 at 1800 if it holds", "ask kind"),
        ("what was the line on 9", "asked bed=9 topic=last"),
    ],
)
def test_when_a_line_was_read_or_why_it_comes_late_is_no_other_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "7 650 0530 8 710 0545 9 90 0600",
            "mark bed=7 at=05:30 level_ml=650; "
            "mark bed=8 at=05:45 level_ml=710; "
            "mark bed=9 at=06:00 level_ml=90",
        ),
        ("7 650 0600 8 710 0600", "mark bed=7 at=06:00 level_ml=650; mark bed=8 at=06:00 level_ml=710"),
        ("7 650 0530, 8 710 0545", "mark bed=7 at=05:30 level_ml=650; mark bed=8 at=05:45 level_ml=710"),
        ("7 650 2230 8 640 2245", "ask level_ml"),
    ],
)
def test_each_bed_with_its_line_and_a_time_that_could_be_no_line(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("13 at 6: 410, at 5: 395", "mark bed=13 at=18:00 level_ml=410; mark bed=13 at=17:00 level_ml=395"),
        ("13 1800 410, 1700 395", "mark bed=13 at=18:00 level_ml=410; mark bed=13 at=17:00 level_ml=395"),
        (
            "13 18:00 410, 17:00 395, 16:00 380",
            "mark bed=13 at=18:00 level_ml=410; "
            "mark bed=13 at=17:00 level_ml=395; "
            "mark bed=13 at=16:00 level_ml=380",
        ),
        ("13 410 now, 395 at 1700", "mark bed=13 at=19:05 level_ml=410; mark bed=13 at=17:00 level_ml=395"),
        ("13 at 6: 395, at 5: 410", "ask level_ml"),
        ("13 410 at 1800, 430 at 1700", "ask level_ml"),
        ("13 1800 1750, 1745 1700", "ask level_ml"),
    ],
)
def test_a_list_told_backwards_is_a_list(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "12 ant 870 post 340",
            "mark bed=12 tube=anterior level_ml=870; mark bed=12 tube=posterior level_ml=340",
        ),
        (
            "12 ant: 870, post: 340 at 1900",
            "mark bed=12 tube=anterior at=19:00 level_ml=870; "
            "mark bed=12 tube=posterior at=19:00 level_ml=340",
        ),
        (
            "12 L ant 870 L post 340",
            "mark bed=12 tube=left anterior level_ml=870; mark bed=12 tube=left posterior level_ml=340",
        ),
        ("12 post 340", "ask level_ml"),
        ("12 post op 340", "ask level_ml"),
    ],
)
def test_short_names_of_two_places_are_tubes_where_both_are_said(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("for the shift 12 is 340", "ask level_ml"),
        ("shift total 12 is 340", "ask level_ml"),
        ("for the shift 12 is 340 at 1900", "mark bed=12 at=19:00 level_ml=340"),
        ("closing for the shift 12 is 340", "mark bed=12 level_ml=340 closing"),
        ("shift total 12", "asked bed=12 topic=total window=shift"),
        ("6 ct 1500", "ask level_ml"),
        ("6 ct 1500 swinging", "ask kind"),
        ("6 ct 340", "mark bed=6 level_ml=340"),
        ("6 ct 1500 at 1900", "mark bed=6 at=19:00 level_ml=1500"),
        ("6 ct 1500 ml", "mark bed=6 level_ml=1500"),
    ],
)
def test_how_much_came_in_a_shift_or_when_a_scan_was_is_no_line(text: str, read: str) -> None:
    assert reading(text) == read
