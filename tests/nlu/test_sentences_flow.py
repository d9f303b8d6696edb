"""How much came, and what the canister reads: the words between the two as nurses type them."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading


@pytest.mark.parametrize(
    "text",
    [
        "right nil, left 60 bed 9",
        "bed 9 nothing from right, left 60",
        "bed 22 l 90 r nil 1900",
        "17 hrly 35",
        "bed 17 hourly 35",
        "bed 4 20 in drain this hr",
        "bed 4 240 in the box last 2 hours",
        "12 draining well",
        "12 still draining ok",
        "4 draining 60",
        "12 mark 340, blood 300 in",
        "12 340 at the first, 610 the 2nd",
        "12 340 was 620",
        "12 340 is 630",
        "12 340 urine at 1810",
        "12 340 foley at 1810",
        "12 640 at 0700 urine",
        "12 640 at 7 urine",
        "12 640 0700 urine",
        "12 640 1900 foley",
        "12 340 plus 610",
        "12 340 from 610",
        "12 340 another one 210",
    ],
)
def test_what_may_be_an_amount_or_a_remark_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 at 560, up 40", "mark bed=4 level_ml=560"),
        ("bed 4 560, up 40", "mark bed=4 level_ml=560"),
        ("bed 5 at 340, thats 60 more", "mark bed=5 level_ml=340"),
        ("bed 5 mark 915 qh 110", "mark bed=5 level_ml=915"),
        ("bed 5 340 (60 this hour)", "mark bed=5 level_ml=340"),
        ("bed 5 60 this hour, level 340", "mark bed=5 level_ml=340"),
        ("21 unchanged at 480", "mark bed=21 level_ml=480"),
        ("21 hasn't moved, 480", "mark bed=21 level_ml=480"),
        ("gush of 250 out of 13 when turned", "drained bed=13 volume_ml=250"),
        ("bed 15 0 output", "drained bed=15 volume_ml=0"),
        ("2 drained nothing", "drained bed=2 volume_ml=0"),
        ("bed 7 temp 37.8 640 in drain", "mark bed=7 level_ml=640"),
        ("12 draining?", "asked bed=12 topic=total"),
    ],
)
def test_what_stands_beside_the_line_leaves_it_whole(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("text", ["bed 12 at 1900 up 40", "12 at 1830, up 300", "bed 12 1900 up 60"])
def test_a_number_behind_a_clock_time_and_up_is_asked(text: str) -> None:
    assert reading(text) == "ask level_ml"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "20 0500 90 out 0600 40 out",
            "drained bed=20 at=05:00 volume_ml=90; drained bed=20 at=06:00 volume_ml=40",
        ),
        ("20 in canister 1640", "mark bed=20 level_ml=1640"),
        ("12 in box 340", "mark bed=12 level_ml=340"),
    ],
)
def test_an_amount_at_its_time_is_none_of_the_line(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    "text",
    [
        "20 put out 90 the 1st hr and 40 the 2nd",
        "20 1400 prev 1640 now",
        "20 on to second column",
        "22 admitted from er with ct 400 out in er",
    ],
)
def test_one_of_several_amounts_or_what_was_charted_elsewhere_is_asked(text: str) -> None:
    assert reading(text, arrived=MORNING).startswith("ask ")


@pytest.mark.parametrize(
    "text",
    [
        "12 chart 1840 bed 12",
        "12 1840 for bed 12",
        "12 1730 bed 12",
        "20 bed 20 at 1830",
        "beds 4 and 9: 4 is 1830 and 9 is 700",
        "2 missed marks: 3 was 1830, 4 was 115",
        "12 gave report on 14",
    ],
)
def test_a_bed_that_is_named_again_or_gave_a_report_is_no_level(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12 12 at 1830", "mark bed=12 at=18:30 level_ml=12"),
        ("12 340 bed 12", "mark bed=12 level_ml=340"),
        ("12 mark 1840 bed 12", "mark bed=12 level_ml=1840"),
    ],
)
def test_a_line_that_is_told_is_none_of_the_bed_named_again(text: str, read: str) -> None:
    assert reading(text) == read


def test_when_somebody_came_back_is_no_level_of_a_new_tube() -> None:
    assert "level_ml=430" not in reading("bed 5 back 430 w new R pigtail")
    assert reading("bed 5 back 430") == "ask at"


def test_a_dictated_question_about_another_bed_tells_no_amount() -> None:
    said = "bed 12 how much did 9 put out this shift"
    assert reading(said, channel="voice") == "ask volume_ml"
    assert reading("how much did 9 put out", channel="voice") == "asked bed=9 topic=total"
