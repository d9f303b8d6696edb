"""Lines that are put right, taken back or denied, and lines told in pairs, in a nurse's own words."""

from __future__ import annotations

import pytest

from .saying import BEDS, reading

WITH_4B = (*BEDS, "4B")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("9 1815 was 1040 not 2040", "corrected bed=9 at=18:15 was_ml=2040 level_ml=1040"),
        ("fix 22: 445 at 1900, not 455", "corrected bed=22 at=19:00 was_ml=455 level_ml=445"),
        ("correct 9 1815: 1040 not 2040", "corrected bed=9 at=18:15 was_ml=2040 level_ml=1040"),
        (
            "i typed 990 for bed 9 at 1900 but it was 909",
            "corrected bed=9 at=19:00 was_ml=990 level_ml=909",
        ),
        ("it belongs to 4B", "corrected to_bed=4B"),
        ("that wasnt 4 it belongs to 4B", "corrected bed=4 to_bed=4B"),
        ("i recorded 4 on the wrong bed its 4B", "corrected bed=4 to_bed=4B"),
        ("12 1815 one was really 1040", "corrected bed=12 at=18:15 level_ml=1040"),
        ("change 12's 1800 time to 1830", "corrected bed=12 at=18:00 to_at=18:30"),
        ("the 240 was for bed 7 not bed 6", "corrected bed=6 was_ml=240 to_bed=7"),
        ("the 240 at 1800 was for 7 not 6", "corrected bed=6 at=18:00 was_ml=240 to_bed=7"),
        ("the 1800 was for bed 7 not bed 6", "corrected bed=6 at=18:00 to_bed=7"),
    ],
)
def test_a_correction_says_what_was_wrong_and_what_is_right(text: str, read: str) -> None:
    assert reading(text, WITH_4B) == read


@pytest.mark.parametrize(
    "text", ["correct bed 12 1030 to 1005", "correct 12 1815 to 1040", "the bed 6 line was 1830 not 1800"]
)
def test_a_number_that_may_be_the_level_or_the_time_of_its_line_is_asked(text: str) -> None:
    assert reading(text) == "ask at"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("never happened delete it", "withdrawn"),
        ("bed 22's 1800 line never happened delete it", "withdrawn bed=22 at=18:00"),
        ("that line never happened", "withdrawn"),
    ],
)
def test_a_line_that_never_happened_is_taken_back(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 12 mark 1050 didn't happen",
        "bed 12 mark 1050 at 1900 is not right",
        "bed 12 mark 1050 isn't right",
        "bed 12 mark 1050 at 1900 not correct",
        "bed 12 tipped, not true",
        "not bed 12, 13",
        "don't chart bed 12 1050 at 1900",
    ],
)
def test_what_is_denied_behind_the_line_is_never_told(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("put 22 down as 475 at 1815", "mark bed=22 at=18:15 level_ml=475"),
        ("bed 4 420 around 6", "mark bed=4 at=18:00 level_ml=420"),
        ("bed 4 420 about 1830", "mark bed=4 at=18:30 level_ml=420"),
        ("bed 4 around 420", "mark bed=4 level_ml=420 about"),
        ("bed 4 700 at 1800 after turning", "mark bed=4 at=18:00 level_ml=700"),
    ],
)
def test_a_line_is_put_down_with_its_time_and_what_it_was_read_after(text: str, read: str) -> None:
    assert reading(text) == read


TWO = "mark bed=8 at=18:00 level_ml=805; mark bed=8 at=19:00 level_ml=915"


@pytest.mark.parametrize(
    "text",
    [
        "8 805 at 1800 915 at 1900",
        "bed 8 evening - 1800 805, 1900 915",
        "bed 8 went from 805 at 1800 to 915 at 1900",
    ],
)
def test_two_lines_of_one_bed_are_told_in_pairs(text: str) -> None:
    assert reading(text) == TWO


def test_a_line_that_goes_to_another_bed_moves_nobody() -> None:
    assert reading("move bed 6's 1800 line to bed 7") == "corrected bed=6 at=18:00 to_bed=7"


def test_several_lines_are_not_taken_back_in_one() -> None:
    assert reading("delete both marks on 6") == "ask at"


def test_a_line_behind_two_times_is_of_one_of_them_or_of_now() -> None:
    assert reading("bed 6 away 1500, back 1640, line 240") == "ask kind"
    assert reading("bed 6 away 1500, back 1640, line 240 now") == (
        "away bed=6 at=15:00; back bed=6 at=16:40; mark bed=6 at=19:05 level_ml=240"
    )


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("suction back on 14 as of 1808", "incident bed=14 at=18:08 what=suction_on"),
        ("suction back on 20", "ask bed"),
        ("suction back on 20 for bed 12", "checked bed=12 suction_cmh2o=20"),
        ("bed 7 clamped for a shower 1830", "incident bed=7 at=18:30 what=clamped"),
    ],
)
def test_what_suction_is_back_on_may_be_the_bed(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_number_that_may_be_the_next_bed_is_asked() -> None:
    assert reading("8 805 at 1800 9 at 1900") == "ask at"
    assert reading("bed 8 moved from 12 at 1500 to 14 at 1900").startswith("ask ")
