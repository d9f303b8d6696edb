"""What is said beside a line and has nothing to do with its number, and what looks like it; from memory."""

from __future__ import annotations

import pytest

from .saying import reading

LINE = "mark bed=9 at=18:40 level_ml=450"


@pytest.mark.parametrize(
    "said",
    [
        "9 450 at 1840 wow", "9 450 at 1840 thanks love", "Priya here, 9 450 at 1840", "9 450 at 1840 phew",
        "hey hun, 9 450 at 1840", "9 450 at 1840 he's sitting up in the chair",
        "9 450 at 1840 i'm heading to the next room", "9 450 at 1840 will keep an eye on it",
        "9 450 at 1840 call me if you need me", "9 450 at 1840 dressing is dry and intact",
        "9 450 at 6:40 vitals are stable", "9 450 at 1840 that's it for now",
        "9 450 at 1840 thank you so much", "yeah so 9 450 at 1840",
    ],
)  # fmt: skip
def test_small_talk_says_nothing_of_the_number(said: str) -> None:
    assert reading(said) == LINE


@pytest.mark.parametrize(
    "said",
    [
        "bed nine four fifty at eighteen forty family is at the bedside",
        "bed nine four fifty at eighteen forty she is resting",
        "bed nine mark four fifty at eighteen forty that's it for now",
        "bed nine four fifty at six forty vitals are stable",
        "bed nine four fifty at eighteen forty call me if you need me",
        "yeah so bed nine mark four fifty at eighteen forty",
    ],
)
def test_a_recogniser_writes_no_stop_before_the_next_sentence(said: str) -> None:
    assert reading(said, channel="voice") == LINE


@pytest.mark.parametrize(
    "said",
    [
        "9 450 i'm not sure", "9 450 he thinks", "9 450 i'm guessing", "9 450 i'm told", "9 450 she said",
        "9 450 we have in the foley", "9 450 patient has voided", "9 450 she sat up and drank it all",
        "9 450 let me recheck", "9 450 i'll double check it", "9 450 will check again", "9 450 pt is at 400",
        "9 450 call me if you think it is off", "9 cup tipped over", "9 tipped over, the cup",
    ],
)  # fmt: skip
def test_what_may_go_on_about_the_number_is_asked_or_not_told(said: str) -> None:
    assert reading(said) == "" or reading(said).startswith("ask ")


@pytest.mark.parametrize(
    "said",
    [
        "9 tipped over damn", "Maria in 9 tipped the canister", "9 tipped, he caught his foot",
        "9s box tipped when he reached for his socks",
    ],
)  # fmt: skip
def test_who_was_there_and_how_it_came_is_no_other_thing_that_fell(said: str) -> None:
    assert reading(said) == "incident bed=9 what=tipped"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("drew a line on 9 at 450 just now", "mark bed=9 at=19:05 level_ml=450"),
        ("can u put 450 down for bed 9", "mark bed=9 level_ml=450"),
        ("put 450 down for 9", "mark bed=9 level_ml=450"),
        ("put 9 down for ct", "away bed=9"),
        ("put in a line on 9 at 1840", ""),
        ("9 big leak all of a sudden", "checked bed=9 air_leak=present"),
    ],
)
def test_a_line_that_is_drawn_and_what_is_put_down_for_a_bed_are_of_the_level(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("start of shift 9 450", "mark bed=9 level_ml=450"),
        ("start of my shift: 9 450, 14 310", "mark bed=9 level_ml=450; mark bed=14 level_ml=310"),
        ("9 450 start of shift", "mark bed=9 level_ml=450"),
        ("9 baseline 450 at 1840", "mark bed=9 at=18:40 level_ml=450"),
        ("9 450 baseline for my shift", "mark bed=9 level_ml=450"),
        ("9 drained 340 since start of shift", "drained bed=9 volume_ml=340"),
        ("9 from start of shift to now 340", "ask level_ml"),
        ("9 bp baseline 120", "ask level_ml"),
        ("9 baseline hr 80", "ask level_ml"),
    ],
)
def test_the_line_of_the_start_of_a_shift_is_a_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "said", ["9 735 at 1500. bed mark 250 at 1500", "9 735 at 1500. Bed, mark 250 at 1500"]
)
def test_a_second_line_of_a_bed_without_its_number_is_not_of_the_first_bed(said: str) -> None:
    assert reading(said).startswith("ask ")


@pytest.mark.parametrize("said", ["patient in bed 9 pulled his chest drain out", "9 pulled out her pigtail"])
def test_what_a_patient_pulled_is_dislodged_and_not_removed(said: str) -> None:
    assert reading(said) == "incident bed=9 what=dislodged"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 9 1845: left 180, right 65",
            "mark bed=9 tube=left at=18:45 level_ml=180; mark bed=9 tube=right at=18:45 level_ml=65",
        ),
        ("bed 9 1845: right 65", "mark bed=9 tube=right at=18:45 level_ml=65"),
        ("bed 9 1900: left 180, right 2000", "ask level_ml"),
        ("bed 9 1845: left 180, 65", "ask level_ml"),
        (
            "bed 9 1900 left 180 right 65",
            "mark bed=9 tube=left at=19:00 level_ml=180; mark bed=9 tube=right at=19:00 level_ml=65",
        ),
        (
            "9 suction 20 but the indicator isnt in range",
            "checked bed=9 suction_cmh2o=20 suction_indicator=not_in_range",
        ),
    ],
)
def test_a_time_before_the_tubes_of_one_bed_is_of_each(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("said", ["beds 5 and 7: suction 20 and 15", "5 and 7 seal 2 and 1"])
def test_a_value_of_each_of_two_beds_is_not_given_to_both(said: str) -> None:
    assert reading(said).startswith("ask ")


def test_a_value_of_both_beds_is_theirs() -> None:
    read = reading("5 and 7: no leak, suction 20")

    assert (
        read == "checked bed=5 suction_cmh2o=20 air_leak=none; checked bed=7 suction_cmh2o=20 air_leak=none"
    )


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("chest tube in bed 9 at 1420", "ask level_ml"),
        ("drain in bed 9 at 1420", "ask level_ml"),
        ("chest tube in bed 9 at 340", "mark bed=9 level_ml=340"),
        ("chest tube in bed 9 is at 1420", "mark bed=9 level_ml=1420"),
        ("chest tube in bed 9 at 1420 ml", "mark bed=9 level_ml=1420"),
        ("chest tube in bed 9 at 1420 at 1900", "mark bed=9 at=19:00 level_ml=1420"),
    ],
)
def test_a_tube_in_a_bed_at_a_whole_time_may_have_been_put_in_then(text: str, read: str) -> None:
    assert reading(text) == read
