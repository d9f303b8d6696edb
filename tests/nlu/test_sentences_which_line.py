"""Sentences that put a line right: which line they point at, and what is right of it."""

from __future__ import annotations

import pytest

from .saying import LETTERED, MORNING, reading

THIRTY = tuple(str(number) for number in range(201, 231))


@pytest.mark.parametrize(
    "text",
    [
        "the 1840 on bed 8 belongs to bed 10",
        "1830 was for bed 11 not bed 1",
        "the 1745 on 5 should be on 6",
        "move my 1830 from bed 5 to bed 6",
        "put the 1820 from bed 3 under bed 8",
        "9 was 640 at 1830 not 1900",
        "correction 9 640 at 1830, not 1900",
        "bed 21 at 1830 not 1815",
    ],
)
def test_a_number_that_is_a_time_or_a_level_is_asked(text: str) -> None:
    assert "mark" not in reading(text)
    assert reading(text).startswith("ask")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("the 1600 on bed 8 belongs to bed 10", "corrected bed=8 at=16:00 to_bed=10"),
        ("the 1600 line on bed 8 belongs to bed 10", "corrected bed=8 at=16:00 to_bed=10"),
        ("bed 8 1600 should be bed 10", "corrected bed=8 at=16:00 to_bed=10"),
        ("the 640 on bed 8 belongs to bed 10", "corrected bed=8 was_ml=640 to_bed=10"),
        ("the 1390 on bed 8 belongs to bed 10", "corrected bed=8 was_ml=1390 to_bed=10"),
        ("the 640 at 1600 on bed 8 belongs to bed 10", "corrected bed=8 at=16:00 was_ml=640 to_bed=10"),
        ("9 was 640 at 1830 not 460", "corrected bed=9 at=18:30 was_ml=460 level_ml=640"),
        ("bed 9 should be 1640 at 6pm not 1460", "corrected bed=9 at=18:00 was_ml=1460 level_ml=1640"),
    ],
)
def test_what_points_at_one_line_alone_is_read(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("the 18:00 line on bed 8 was at 18:20", "corrected bed=8 at=18:00 to_at=18:20"),
        ("6pm mark bed 8 was at 6:20pm", "corrected bed=8 at=18:00 to_at=18:20"),
        ("bed 21 at 18:30 not 1815", "corrected bed=21 at=18:15 to_at=18:30"),
        ("bed 22 mark was at 1825h not 1816", "corrected bed=22 at=18:16 to_at=18:25"),
        ("the 1830 line on bed 4 was at 6:35 pm", "ask kind"),
        ("the 1840 line on bed 6 was at 1900h", "ask kind"),
        ("the 19:00 line on bed 6 was at 1902", "ask kind"),
        ("the 1900 line on bed 6 was at 1050", "mark bed=6 at=19:00 level_ml=1050"),
        ("bed 9 CT at 18:30 not 1815", "ask kind"),
        ("bed 9 tube out at 18:30 not 1815", "ask kind; ask kind"),
        ("bed 21 at 18:30 not 640", "ask kind"),
    ],
)
def test_the_time_of_a_line_is_put_right_where_both_can_be_nothing_else(text: str, read: str) -> None:
    assert reading(text) == read


def test_in_the_morning_a_leading_nought_shows_a_time() -> None:
    assert reading("bed 21 at 0640 not 0600", arrived=MORNING) == "corrected bed=21 at=06:00 to_at=06:40"
    assert reading("5 1515 should read 460", arrived=MORNING) == "ask at"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 16 should be 1770 not 1400", "corrected bed=16 was_ml=1400 level_ml=1770"),
        ("16 was 690 not 1300", "corrected bed=16 was_ml=1300 level_ml=690"),
        ("sorry 6 is 650 not 1300", "corrected bed=6 was_ml=1300 level_ml=650"),
        ("9 640 not 1900", "ask level_ml"),
        ("13: not 490, 1425", "corrected bed=13 was_ml=490 level_ml=1425"),
        ("not 1390, 1750", "corrected was_ml=1390 level_ml=1750"),
        ("not 490, 1425", "corrected was_ml=490 level_ml=1425"),
        ("not 1830, 1845", "ask at"),
        ("not 640, 650, 660", "ask bed"),
        ("not 640", "ask kind"),
    ],
)
def test_like_is_set_against_like(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "sorry 411 not 215",
        "i meant 640 not 230",
        "should be 1125 not 220",
        "i meant 210 not 146",
        "not 215, 640",
    ],
)
def test_a_level_against_a_number_that_is_a_bed_is_asked(text: str) -> None:
    assert reading(text, THIRTY) == "ask kind"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("the 1180 at 1807 on 19 should be 20", "ask level_ml"),
        ("i wrote 260 for 14 at 1830, it should be 10", "ask level_ml"),
        ("entered 1050 on 12, meant 13", "corrected bed=12 was_ml=1050 to_bed=13"),
        ("2: not 10, 250", "ask kind"),
        ("12, not 13, 640", "ask kind"),
        ("correct 1 523 to 1345", "ask level_ml"),
    ],
)
def test_a_small_number_that_may_be_a_bed_is_asked(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("the 1829 on 8 was 1460, correct it", "corrected bed=8 at=18:29 level_ml=1460"),
        ("bed 8 was 640 at 1800, please correct that", "corrected bed=8 at=18:00 level_ml=640"),
        ("8 is 640 correct", "answered bed=8 answer=yes level_ml=640"),
        ("the 1540 at 6:35 pm on 6 should be 428", "corrected bed=6 at=18:35 was_ml=1540 level_ml=428"),
        ("18 16:45 should be bed 16", "corrected bed=18 at=16:45 to_bed=16"),
        ("correct 4 18:35 time to 18:39", "corrected bed=4 at=18:35 to_at=18:39"),
    ],
)
def test_a_line_is_put_right_by_whoever_says_so(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("i wrote 1050 instead of 1120 on bed 6", "corrected bed=6 was_ml=1050 level_ml=1120"),
        ("bed 6 should be 1050 instead of 1120", "corrected bed=6 was_ml=1120 level_ml=1050"),
        ("i put 640 on bed 6 instead of 2", "corrected bed=6 was_ml=640 to_bed=2"),
        ("put the 1800 mark on bed 6 instead of bed 2", "ask level_ml"),
        ("should be 22 instead of 1935", "ask kind"),
        ("bed 6 not 10 but 924", "ask kind"),
        ("bed 4 18:10 entered as 1100, should be 604", "corrected bed=4 at=18:10 was_ml=1100 level_ml=604"),
        ("bed 7 wrongly entered as 680, actual 1475", "corrected bed=7 was_ml=680 level_ml=1475"),
        ("bed 9: should be 1180, i typed 1669", "corrected bed=9 was_ml=1669 level_ml=1180"),
        ("bed 9 1837 i wrote 640, meant 760", "corrected bed=9 at=18:37 was_ml=640 level_ml=760"),
        ("typed 520 for bed 12 18:20, it's 700", "corrected bed=12 at=18:20 was_ml=520 level_ml=700"),
        ("i wrote 640 for bed 12 at 1800, it's up to 700", "ask level_ml"),
        ("i charted the 1800 mark on bed 24, meant bed 6", "corrected bed=24 at=18:00 to_bed=6"),
        ("bed 20: 1420 was a typo, 580", "corrected bed=20 was_ml=1420 level_ml=580"),
        ("bed 20: 1800 was a typo, 580", "ask at"),
        ("bed 4 1870 is wrong, 180 is right", "corrected bed=4 was_ml=1870 level_ml=180"),
        ("6 is right, 7 should be 340", "ask kind"),
    ],
)
def test_what_was_entered_is_wrong_and_right_is_what_it_turns_to(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("the 610 ml on bed 2 is bed 4's", "corrected bed=2 was_ml=610 to_bed=4"),
        ("bed 5 1850 line goes on bed 14", "corrected bed=5 at=18:50 to_bed=14"),
        ("bed 18 18:00: correction 770", "corrected bed=18 at=18:00 level_ml=770"),
        ("bed 18 18:00 770 correction 780", "ask level_ml"),
        ("rectify bed 19 18:16 to 580", "corrected bed=19 at=18:16 level_ml=580"),
        ("bed 11 18:16 says 1069 should say 520", "corrected bed=11 at=18:16 was_ml=1069 level_ml=520"),
        ("i misread the 6:35 pm on bed 10, it was 1180", "corrected bed=10 at=18:35 level_ml=1180"),
        ("bed 12 misread, it's 880", "answered bed=12 choice=misread level_ml=880"),
        ("bed 8 1835 entered in error", "withdrawn bed=8 at=18:35"),
        ("bed 8 640 charted in error", "ask at"),
        ("the 18:40 on bed 6 was taken at 1900", "corrected bed=6 at=18:40 to_at=19:00"),
        ("the 1840 on bed 6 was taken at 1900", "ask kind"),
    ],
)
def test_one_line_is_put_right_or_taken_back(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("suction order bed 8 20", "ordered bed=8 suction_cmh2o=20"),
        ("suction order for bed 8 is 20 cm", "ordered bed=8 suction_cmh2o=20"),
        ("suction order for bed 8 -20", "ordered bed=8 suction_cmh2o=20"),
        ("suction order bed 8 340", "ask level_ml"),
        ("suction bed 8 20", "ask suction_cmh2o"),
        (
            "bed 2B -20 suction, 90 wall, no leak",
            "checked bed=2B suction_cmh2o=20 wall_mmhg=90 air_leak=none",
        ),
        ("bed 2B -20 suction 100 wall", "checked bed=2B suction_cmh2o=20 wall_mmhg=100"),
        ("how many ml left in bed 3's box", "asked bed=3 topic=capacity"),
    ],
)
def test_a_value_is_of_the_check_beside_it(text: str, read: str) -> None:
    assert reading(text, (*LETTERED, "8")) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("total on bed 12 since 0015hrs", "asked bed=12 topic=total window=00:15"),
        ("total on bed 12 for the last 15 hrs", "asked bed=12 topic=total window=15h"),
        ("disregard the 0815hrs mark on bed 13, wrong patient", "withdrawn bed=13 at=08:15"),
        ("its 820 not 10 on bed 15", "ask kind"),
        ("should be 1875 instead of 10", "ask kind"),
        ("i put 1744 for bed 1, it should be 10", "ask level_ml"),
        ("bed 17: 1856 -> 1830", "ask level_ml"),
        ("17 > 640 > 1830", "mark bed=17 at=18:30 level_ml=640"),
        ("correct 1050 to 570 on bed 3 at 6:15 pm", "corrected bed=3 at=18:15 was_ml=1050 level_ml=570"),
        (
            "i had 1023 for bed 21 at 1818h, should be 635",
            "corrected bed=21 at=18:18 was_ml=1023 level_ml=635",
        ),
        ("bed 11 mark was at 1821 not 1200", "ask at"),
        ("ordered 10 cm suction on bed 17", "ordered bed=17 suction_cmh2o=10"),
        ("correct, thanks", "answered answer=yes"),
        ("no, wrong", "answered answer=no"),
        ("no wrong bed", "ask to_bed"),
    ],
)
def test_the_same_in_other_words(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_lettered_bed_before_a_span_is_no_amount_that_came_in_it() -> None:
    asked = "asked bed=CT2 topic=total window=8h"
    assert reading("how much on CT2 in the last 8 hours", LETTERED) == asked
    assert reading("CT2 200 in the last hour", LETTERED) == "drained bed=CT2 volume_ml=200"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("sorry bed 7 not 10, 1430", "ask kind"),
        ("7 not 8, 320 at 1900", "corrected bed=8 at=19:00 level_ml=320 to_bed=7"),
        ("bed 8 mark was at 1800 not 1632", "ask at"),
        ("12 was at 1040 not 1050", "corrected bed=12 was_ml=1050 level_ml=1040"),
    ],
)
def test_what_is_denied_beside_a_bed_may_be_a_level(text: str, read: str) -> None:
    assert reading(text) == read
