"""Lists of beds with any sign between bed and line and between the rows, and one time for all."""

from __future__ import annotations

import pytest

from .saying import LETTERED, reading

THREE = "mark bed=3 at=19:00 level_ml=440; mark bed=5 at=19:00 level_ml=1260; mark bed=8 at=19:00 level_ml=95"


@pytest.mark.parametrize(
    "text",
    [
        "3: 440 / 5: 1260 / 8: 95 all @1900",
        "3 - 440 / 5 - 1260 / 8 - 95 @1900",
        "3 440/5 1260/8 95 @1900",
        "3-440, 5-1260, 8-95 (1900)",
        "3:440 5:1260 8:95 1900",
        "3 = 440 | 5 = 1260 | 8 = 95. all taken at 1900",
        "3 -> 440, 5 -> 1260, 8 -> 95 1900 all",
        "3... 440; 5... 1260; 8... 95; all at 7pm",
        "3 is 440, 5 is 1260, 8 is 95 as of 1900",
        "3 @ 440, 5 @ 1260, 8 @ 95, all at 1900",
        "1900 - 3 - 440, 5 - 1260, 8 - 95",
        "lines at 1900: 3 - 440 / 5 - 1260 / 8 - 95",
        "1900 round\n3: 440\n5: 1260\n8: 95",
        "my lines for 1900: 3 - 440, 5 - 1260 and 8 - 95",
        "chest drains @1900 3/440, 5/1260, 8/95",
        "3 >> 440, then 5 >> 1260, then 8 >> 95 all same time 1900",
        "round @1900: 3 reads 440 plus 5 reads 1260 plus 8 reads 95",
        "3 sitting at 440 & then 5 sitting at 1260 & then 8 sitting at 95 1900hrs",
        "levels at 1900 3: 440 - 5: 1260 - 8: 95",
        "Early round: bed 3 440 ml, bed 5 1260 ml and bed 8 95 ml, all at 1900",
    ],
)
def test_each_row_has_the_time_of_all_whatever_sign_stands_between(text: str) -> None:
    assert reading(text) == THREE


@pytest.mark.parametrize(
    ("text", "said"),
    [
        (
            "3 - 440, 5 - L 210 R 95, 8 - 95 @1900",
            "mark bed=3 at=19:00 level_ml=440; mark bed=5 tube=left at=19:00 level_ml=210; "
            "mark bed=5 tube=right at=19:00 level_ml=95; mark bed=8 at=19:00 level_ml=95",
        ),
        (
            "3 - 440 / 5 off to CT / 8 - 95 @1900",
            "mark bed=3 at=19:00 level_ml=440; away bed=5 at=19:00; mark bed=8 at=19:00 level_ml=95",
        ),
        (
            "3 - 440, 5 tube out 1810 final 210, 8 - 95 @1900",
            "mark bed=3 at=19:00 level_ml=440; removed bed=5 at=18:10 level_ml=210; "
            "mark bed=8 at=19:00 level_ml=95",
        ),
        (
            "3: 440 / 5: nil / 8: about 95 @1900",
            "mark bed=3 at=19:00 level_ml=440; drained bed=5 at=19:00 volume_ml=0; "
            "mark bed=8 at=19:00 level_ml=95 about",
        ),
        (
            "3 1900 440 no leak, 5 1900 1260 swinging",
            "mark bed=3 at=19:00 level_ml=440; checked bed=3 at=19:00 air_leak=none; "
            "mark bed=5 at=19:00 level_ml=1260; checked bed=5 at=19:00 tidaling=True",
        ),
        (
            "arvo: bed 11 110 at 1800, bed 6 205 at 1800, bed 17 L 280 R 365 at 1800",
            "mark bed=11 at=18:00 level_ml=110; mark bed=6 at=18:00 level_ml=205; "
            "mark bed=17 tube=left at=18:00 level_ml=280; mark bed=17 tube=right at=18:00 level_ml=365",
        ),
        (
            "3 440, 5 1260, 13 tube out 1740 final 220",
            "mark bed=3 level_ml=440; mark bed=5 level_ml=1260; removed bed=13 at=17:40 level_ml=220",
        ),
        (
            "3 closing 440 / 5 closing 1260 @1855",
            "mark bed=3 at=18:55 level_ml=440 closing; mark bed=5 at=18:55 level_ml=1260 closing",
        ),
        (
            "5 - 20, 12 - 1180 @1900",
            "mark bed=5 at=19:00 level_ml=20; mark bed=12 at=19:00 level_ml=1180",
        ),
        (
            "3 - 440, 5 - 1260 all @1900, 5 off to CT",
            "mark bed=3 at=19:00 level_ml=440; mark bed=5 at=19:00 level_ml=1260; away bed=5 at=19:00",
        ),
    ],
)
def test_an_odd_row_is_read_as_it_would_be_alone(text: str, said: str) -> None:
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("3 - 440, 5 - 12o0, 8 - 95 @1900", "ask level_ml"),
        ("3 440/5 1260 or 1240/8 95 all at 1900", "ask level_ml"),
        ("3 440, 5 1260 i think, 8 95 @1900", "ask kind"),
        ("3: 440, 5: refused, 8: 95 @1900", "ask kind"),
        ("3 440, 5 urine 95, 8 95 @1900", "ask kind"),
    ],
)
def test_only_the_row_in_doubt_is_asked(text: str, said: str) -> None:
    sure = "mark bed=3 at=19:00 level_ml=440; mark bed=8 at=19:00 level_ml=95"
    assert reading(text) == f"{sure}; {said}"


def test_a_line_before_one_with_another_time_is_asked_for_its_time() -> None:
    said = "mark bed=5 at=18:55 level_ml=1260; mark bed=8 at=19:00 level_ml=95; ask at"
    assert reading("3 440, 5 1260 at 1855, 8 95 at 1900") == said


@pytest.mark.parametrize(
    "text",
    [
        "taking over 4-9, bed 6 line at 640 at 1900",
        "covering 4-9, 12-16 @1900",
        "3 - 5, 8 - 12, 9 - 440 @1900",
        "don't chart 3 - 440, 5 - 1260 @1900",
        "swap 3 - 440, 5 - 1260 @1900",
        "3 510, 4, 7 300, 9 med 410",
        "4 340, 6 410, 430",
        "bp 3 - 120/80, 5 - 110/60 @1900",
        "peg feeds 1900: 3 440, 5 1260, 8 95",
    ],
)
def test_what_may_be_no_list_of_lines_is_asked_as_a_whole(text: str) -> None:
    said = reading(text)
    assert "mark" not in said
    assert "ask" in said


def test_a_lettered_bed_begins_a_row_too() -> None:
    said = "mark bed=2A at=19:00 level_ml=505; mark bed=CT1 at=19:00 level_ml=90"
    assert reading("2A -> 505 / CT1 -> 90 all @1900", LETTERED) == said


@pytest.mark.parametrize(
    "heading",
    ["goals:", "due at 1900:", "yesterday's:", "last shift:", "not done:", "old lines:", "next due"],
)
def test_a_heading_claims_all_its_rows(heading: str) -> None:
    assert "mark" not in reading(f"{heading} 3 440, 5 1260 @1900").replace("ask", "")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "2:340/4:25. all taken at 1900",
            "mark bed=2 at=19:00 level_ml=340; mark bed=4 at=19:00 level_ml=25",
        ),
        (
            "3 now 640, 5 now 310 all 1900",
            "mark bed=3 at=19:00 level_ml=640; mark bed=5 at=19:00 level_ml=310",
        ),
        ("lines: 3 440, 5 260 @1900", "mark bed=3 at=19:00 level_ml=440; mark bed=5 at=19:00 level_ml=260"),
    ],
)
def test_a_time_of_all_is_never_left_out(text: str, read: str) -> None:
    assert reading(text) == read
