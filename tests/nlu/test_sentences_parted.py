"""Digits that a sign or a blank joins or parts, letters of beds and names, and a number with one word."""

from __future__ import annotations

import pytest

from .saying import reading

HALF_PAST = "mark bed={} at=18:30 level_ml={}"


@pytest.mark.parametrize(
    "text", ["3:44, 5:60, 12:90", "3:44 5:60 12:90", "3:44; 5:60; 12:90", "3:44/5:60/12:90"]
)
def test_a_bed_with_a_colon_is_not_the_time_of_the_others(text: str) -> None:
    assert reading(text) == "mark bed=3 level_ml=44; mark bed=5 level_ml=60; mark bed=12 level_ml=90"


@pytest.mark.parametrize("text", ["12:90, 3:44", "12:340 3:44", "3:440, 5:55", "3:44, 5:60"])
def test_a_bed_and_its_line_or_a_time_is_asked(text: str) -> None:
    assert reading(text) == "ask level_ml"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12:340 18:30", HALF_PAST.format(12, 340)),
        ("12: 340 18:30", HALF_PAST.format(12, 340)),
        ("18:30 5:160 12:190", f"{HALF_PAST.format(5, 160)}; {HALF_PAST.format(12, 190)}"),
        ("3:44, 12:90 at 18:30", f"{HALF_PAST.format(3, 44)}; {HALF_PAST.format(12, 90)}"),
        ("at 18:30 3:44, 12:90", f"{HALF_PAST.format(3, 44)}; {HALF_PAST.format(12, 90)}"),
    ],
)
def test_a_fresh_time_beside_beds_with_colons_is_a_time(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "2 450, 20 1900",
        "2 450 bed 20 1900",
        "2 450; 20 1900",
        "4, 2 191",
        "4 ok, 2 191",
        "7 dry, 2 310",
        "4; 2 191",
        "12, 2 150 ml",
    ],
)
def test_a_bed_and_its_line_are_not_a_thousand_and_its_hundreds(text: str) -> None:
    assert reading(text).startswith("ask")


@pytest.mark.parametrize(
    ("text", "channel", "read"),
    [
        ("1 050 bed 12", "text", "mark bed=12 level_ml=1050"),
        ("12, 1 050", "text", "mark bed=12 level_ml=1050"),
        ("bed 12 line 2 150", "text", "mark bed=12 level_ml=2150"),
        ("level 2 150 bed 12", "text", "mark bed=12 level_ml=2150"),
        ("2 450, 20 90", "text", "mark bed=2 level_ml=450; mark bed=20 level_ml=90"),
        ("ten fifty in bed twenty", "voice", "mark bed=20 level_ml=1050"),
        ("10 50 in bed 20", "voice", "mark bed=20 level_ml=1050"),
    ],
)
def test_a_number_that_a_blank_parts_is_read(text: str, channel: str, read: str) -> None:
    assert reading(text, channel="voice" if channel == "voice" else "text") == read


@pytest.mark.parametrize(
    "text",
    ["12/A/340/1900", "12/B/340/1900", "12 A 340 1900", "12.A.340", "bed 12/A 340 at 1900", "12-a-340-1900"],
)
def test_a_letter_behind_a_bed_is_not_left_out(text: str) -> None:
    assert reading(text) == "ask level_ml"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12/L/340/1900", "mark bed=12 tube=left at=19:00 level_ml=340"),
        ("12 a bit drowsy, 340", "mark bed=12 level_ml=340"),
        ("18 order sxn -10 Dr R", "ordered bed=18 suction_cmh2o=10"),
        ("18 ordered suction 20 per Dr L", "ordered bed=18 suction_cmh2o=20"),
        ("18 340 1900 Dr. L aware", "mark bed=18 at=19:00 level_ml=340"),
        ("18 340 1900 RN L", "mark bed=18 at=19:00 level_ml=340"),
        ("18 R 340 Dr L aware", "mark bed=18 tube=right level_ml=340"),
        ("18 340 R", "mark bed=18 tube=right level_ml=340"),
        ("18 order sxn -10 R", "ordered bed=18 tube=right suction_cmh2o=10"),
    ],
)
def test_the_letter_of_a_name_is_no_side(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("text", ["5 ok", "ok 5", "noted 5", "5 noted", "17 sorry", "sorry, 17", "5 thanks"])
def test_a_number_that_may_be_a_bed_that_was_seen_is_asked(text: str) -> None:
    assert reading(text) == "ask kind"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("5", "answered level_ml=5"),
        ("340 ok", "answered level_ml=340"),
        ("sorry 340", "answered level_ml=340"),
        ("5 ml thanks", "answered level_ml=5"),
        ("seen 5", "acknowledged bed=5"),
        ("yes 5", "answered bed=5 answer=yes"),
    ],
)
def test_a_number_that_can_be_nothing_else_is_an_answer(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("text", ["bed 5 220 1820 drained the kettle", "5 220 1820 drained the bath"])
def test_an_amount_that_may_be_the_time_is_asked(text: str) -> None:
    assert reading(text) == "ask volume_ml"


@pytest.mark.parametrize(
    "text",
    [
        "6 330 each",
        "6 330 each side",
        "9 410 2l",
        "9 2l 410",
        "9 m 200 p 40",
        "8 340 p 1830",
        "9 410 r/v 1840",
    ],
)
def test_a_number_that_is_of_two_or_a_time_is_asked(text: str) -> None:
    assert reading(text) == "ask level_ml"


@pytest.mark.parametrize(
    ("text", "read"),
    [("4 60 o/n", "ask level_ml"), ("y/n", "ask answer"), ("4 n", "answered bed=4 answer=no")],
)
def test_the_n_of_overnight_is_no_no(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("text", ["9 drain", "9 tube", "9 lost drain"])
def test_a_bed_and_its_drain_is_no_line(text: str) -> None:
    assert reading(text) == "ask kind"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("8 6 p 340", "mark bed=8 at=18:00 level_ml=340"),
        ("8 at 6 p 340", "mark bed=8 at=18:00 level_ml=340"),
        ("9 1.2l 1840", "mark bed=9 at=18:40 level_ml=1200"),
        ("9 1.2l 630", "mark bed=9 at=18:30 level_ml=1200"),
        ("6 and 14 330 each", "mark bed=6 level_ml=330; mark bed=14 level_ml=330"),
        ("9 R 40 at 2 p", "mark bed=9 tube=right at=14:00 level_ml=40"),
        ("340 in the drain", "answered level_ml=340"),
    ],
)
def test_its_near_opposites_are_read(text: str, read: str) -> None:
    assert reading(text) == read
