"""Lists of several beds, tubes and times, mix-ups that are told, and times that are of something else."""

from __future__ import annotations

import pytest

from .saying import MORNING, Channel, reading

GRID = (
    "mark bed=12 tube=left at=03:00 level_ml=340; mark bed=12 tube=right at=03:00 level_ml=120; "
    "mark bed=12 tube=left at=04:00 level_ml=360; mark bed=12 tube=right at=04:00 level_ml=130"
)
BEDS = (
    "mark bed=3 at=03:00 level_ml=310; mark bed=8 at=03:00 level_ml=715; "
    "mark bed=3 at=04:00 level_ml=320; mark bed=8 at=04:00 level_ml=730"
)


@pytest.mark.parametrize(
    "text",
    [
        "12 0300 L 340 R 120 0400 L 360 R 130",
        "12 0300 L 340 R 120, 0400 L 360 R 130",
        "12\n0300 L 340 R 120\n0400 L 360 R 130",
        "bed 12 at 0300 left 340 right 120, at 0400 left 360 right 130",
    ],
)
def test_a_time_before_the_lines_of_two_tubes_is_of_both(text: str) -> None:
    assert reading(text, arrived=MORNING) == GRID


@pytest.mark.parametrize(
    "text",
    ["12 left 0300 340 0400 360 right 0300 120 0400 130", "12 L 0300 340, 0400 360 R 0300 120, 0400 130"],
)
def test_a_tube_before_several_lines_is_of_all_of_them(text: str) -> None:
    assert sorted(reading(text, arrived=MORNING).split("; ")) == sorted(GRID.split("; "))


@pytest.mark.parametrize(
    "text",
    [
        "0300 3 310 8 715 0400 3 320 8 730",
        "at 0300 bed 3 310 bed 8 715, at 0400 bed 3 320 bed 8 730",
    ],
)
def test_a_time_before_the_lines_of_two_beds_is_of_both(text: str) -> None:
    assert reading(text, arrived=MORNING) == BEDS


@pytest.mark.parametrize(
    "text",
    [
        "bed 3 0300 310 0400 320 bed 8 0300 715 0400 730",
        "3: 0300 310, 0400 320; 8: 0300 715, 0400 730",
    ],
)
def test_a_bed_before_several_lines_is_of_all_of_them(text: str) -> None:
    assert sorted(reading(text, arrived=MORNING).split("; ")) == sorted(BEDS.split("; "))


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "0600 3 310, 8 715, 0630 12 640",
            "mark bed=3 at=06:00 level_ml=310; mark bed=8 at=06:00 level_ml=715; "
            "mark bed=12 at=06:30 level_ml=640",
        ),
        (
            "bed 3 310 at 0600, bed 8 715 at 0605",
            "mark bed=3 at=06:00 level_ml=310; mark bed=8 at=06:05 level_ml=715",
        ),
        (
            "0600 bed 3 310, 0605 bed 8 715",
            "mark bed=3 at=06:00 level_ml=310; mark bed=8 at=06:05 level_ml=715",
        ),
    ],
)
def test_a_time_behind_a_line_is_of_that_line_and_one_before_of_those_that_follow(
    text: str, read: str
) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    "text",
    [
        "i mixed up 12 and 13: 12 is 220, 13 is 1050",
        "swap that, 12 is 220 and 13 is 1050",
        "bed 3 was 610, bed 4 220 not the other way round",
        "*1050 bed 12",
        "12 1150 *1050",
        "12 no change since 610",
        "bed 12 nothing out since 610 at 2200",
        "bed 12 uo 300 at 0600 line 640",
        "12 bp 90/60 at 0630, line 640",
        "gave 20 lasix at 0600, bed 4 line 700",
        "bed 12 bp 90/50 at 0630 640 in box",
        "bed 12 morphine 0500, 640 now",
        "heard at handover that 12 was 640 at 0600",
        "report from amy: bed 12 340 @ 1900",
        "bed 12 640 next due 0745",
    ],
)
def test_where_lines_may_be_mixed_up_or_not_of_the_drain_nothing_is_accepted(text: str) -> None:
    assert reading(text, arrived=MORNING).startswith("ask ")


@pytest.mark.parametrize(
    "text",
    [
        "the 1050 was meant for 13",
        "the 1050 i sent for bed 12 belongs to 13",
        "bed 12 1050 was at 1800 not 1900",
    ],
)
def test_a_correction_whose_number_may_be_the_level_or_the_time_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("post op day 1 bed 12 640 at 0645", "mark bed=12 at=06:45 level_ml=640"),
        ("bed 12 pod 3 line 640", "mark bed=12 level_ml=640"),
        ("bed 12 vomited at 0600, drain at 820", "mark bed=12 level_ml=820"),
    ],
)
def test_a_day_that_is_counted_and_what_the_patient_did_leave_the_line_as_it_is(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 5 box change final 1650 at 0615, new one now reads 35",
            "exchanged bed=5 at=06:15 final_ml=1650; mark bed=5 level_ml=35",
        ),
        (
            "bed 7 changed the box at 0615, new one at 35",
            "exchanged bed=7 at=06:15; mark bed=7 level_ml=35",
        ),
        (
            "bed 7 changed the box at 0615 old 1910 new 35 at 0645",
            "exchanged bed=7 at=06:15 final_ml=1910; mark bed=7 at=06:45 level_ml=35",
        ),
        (
            "swapped canister bed 10 0630 old 1980 new at 0",
            "exchanged bed=10 at=06:30 final_ml=1980; mark bed=10 at=06:30 level_ml=0",
        ),
        ("new box on 7 since 0500, old 1890", "exchanged bed=7 at=05:00 final_ml=1890"),
        ("bed 7 in ct since 0500", "away bed=7 at=05:00"),
    ],
)
def test_what_the_new_canister_holds_was_read_since_it_was_changed(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 7 box cracked replaced with new, lost the old number",
            "exchanged bed=7; incident bed=7 what=damaged",
        ),
        ("bed 7 box replaced 0500 final 1890", "exchanged bed=7 at=05:00 final_ml=1890"),
        ("bed 7 box cracked, replaced", "ask kind"),
        ("bed 8 tubing replaced 1400", "ask level_ml"),
        ("bed 7 tubing replaced", "ask kind"),
        ("bed 7 dressing replaced, box 840", "mark bed=7 level_ml=840"),
    ],
)
def test_what_was_replaced_is_the_canister_only_where_it_is_named(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


TWO = "mark bed=4 tube=left level_ml=60; mark bed=4 tube=right level_ml=305"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 left 60 right 305, no leak", f"{TWO}; ask tube"),
        ("bed 4 suction 20 left 60 right 305", f"{TWO}; ask tube"),
        ("bed 4 left 60 right 305. suction 20, seal 2", f"{TWO}; ask tube"),
        (
            "bed 4 left 60 right 305, both no leak",
            "mark bed=4 tube=left level_ml=60; checked bed=4 tube=left air_leak=none; "
            "mark bed=4 tube=right level_ml=305; checked bed=4 tube=right air_leak=none",
        ),
        ("bed 4 left 60 right 305 no leak", f"{TWO}; checked bed=4 tube=right air_leak=none"),
        (
            "bed 4 left 60 right 305 left has small leak",
            f"{TWO}; checked bed=4 tube=left air_leak=present",
        ),
    ],
)
def test_what_stands_apart_from_the_lines_of_two_tubes_is_asked_for_its_tube(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


PAIR = "mark bed=12 at=03:00 level_ml=540; mark bed=12 at=04:00 level_ml=575"


@pytest.mark.parametrize(
    "text",
    [
        "12: 0300-540 0400-575",
        "bed 12 3am 540 4am 575",
        "bed 12 3am-540 4am-575",
        "bed 12 540 3am 575 4am",
        "bed 12 catch up 540 (0300) 575 (0400)",
        "12 catching up: 0300 540, 0400 575",
    ],
)
def test_pairs_of_a_catch_up_list_may_be_dashed_and_told_by_half_of_the_day(text: str) -> None:
    assert reading(text, arrived=MORNING) == PAIR


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("picked up 9 at 0500, line 830", "ask at"),
        ("i started at 0500. 9 830", "ask level_ml"),
        ("bed 9 830 total at 0600", "ask level_ml"),
        ("12 missed marks: 3 was 540, 4 was 575", "ask level_ml"),
        ("pt in 9 just came back from MRI, drain reading 830, was 810 when she left at 5", "ask kind"),
        ("sam has my beds", "ask kind"),
        ("bed 9 830 0600 dr lee aware", "mark bed=9 at=06:00 level_ml=830"),
        ("the lady in 9 is at 830 as of 0600", "mark bed=9 at=06:00 level_ml=830"),
        ("9 830 @0600 pt c/o pain 6/10", "mark bed=9 at=06:00 level_ml=830"),
        ("nurse before me left bed 4 at 1050", "ask level_ml"),
        (
            "my beds 0600: 3 at 310, 8 at 915",
            "mark bed=3 at=06:00 level_ml=310; mark bed=8 at=06:00 level_ml=915",
        ),
    ],
)
def test_who_did_something_when_is_no_time_of_a_line(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 lvl=470 t=0600", "mark bed=12 at=06:00 level_ml=470"),
        ("12 line drawn 470 0600 initials kb", "mark bed=12 at=06:00 level_ml=470"),
        ("12 last mark of the night 870", "mark bed=12 level_ml=870 closing"),
        ("8 was at 610 yesterday 2300", "mark bed=8 at=03-Mar-23:00 level_ml=610"),
        ("9 was 340 yest 2300", "mark bed=9 at=03-Mar-23:00 level_ml=340"),
        ("bed 9 910 bout 6", "mark bed=9 at=06:00 level_ml=910"),
        ("late entry for 0500 bed 9 580", "mark bed=9 at=05:00 level_ml=580"),
        ("late entry bed 9 580 for 0500", "mark bed=9 at=05:00 level_ml=580"),
        ("10 med 225 at 6am", "mark bed=10 tube=mediastinal at=06:00 level_ml=225"),
        ("we moved 3 into 17", "moved bed=3 to_bed=17"),
        ("12 line 640, moved to 14", "mark bed=12 level_ml=640; moved bed=12 to_bed=14"),
        (
            "12mn 340, 0400 520 bed 9",
            "mark bed=9 at=00:00 level_ml=340; mark bed=9 at=04:00 level_ml=520",
        ),
        ("bed 3 0600 med given", "ask level_ml"),
        ("12 drained 40 into the box", "drained bed=12 volume_ml=40"),
        ("bed 12 610 into 640", "ask level_ml"),
        ("12 540 6ish", "ask level_ml"),
    ],
)
def test_shorthand_of_the_night_is_read_where_it_says_one_thing(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    "text",
    [
        "i charted 5's number on 6, fix pls",
    ],
)
def test_a_line_on_another_bed_is_asked_and_never_a_move_a_level_or_a_time(text: str) -> None:
    assert reading(text, arrived=MORNING.replace(hour=3, minute=10)).startswith("ask ")


def test_a_line_with_no_change_beside_it_is_asked_in_a_row_of_beds() -> None:
    text = "0300 round: 5 415, 6 120 no change, 7 80"
    read = reading(text, arrived=MORNING.replace(hour=3, minute=10))
    assert read == "mark bed=5 at=03:00 level_ml=415; mark bed=7 at=03:00 level_ml=80; ask kind"


@pytest.mark.parametrize(
    "text", ["7 suction off 0500-0540 for mri, line 333", "7 off suction 0500 to 0540. line 333"]
)
def test_the_end_of_a_span_of_time_is_no_time_of_the_line_beside_it(text: str) -> None:
    assert reading(text, arrived=MORNING) == "ask kind"


@pytest.mark.parametrize(("text", "channel"), [("1 1 1 0", "text"), ("twelve twelve twelve", "voice")])
def test_a_number_that_is_said_three_times_is_asked_about(text: str, channel: Channel) -> None:
    assert reading(text, arrived=MORNING, channel=channel).startswith("ask level_ml")


@pytest.mark.parametrize(
    "text", ["bed 6 icd 4l0 at 1830", "bed 6 4l0 at 1830", "6 left 4l0 at 1830", "bed 6 1o50"]
)
def test_a_letter_inside_a_number_is_asked_about(text: str) -> None:
    assert reading(text).startswith("ask ")


def test_a_letter_before_its_number_is_a_side() -> None:
    told = "mark bed=6 tube=left at=18:30 level_ml=80; mark bed=6 tube=right at=18:30 level_ml=40"
    assert reading("6 L80 R40 1830") == told


@pytest.mark.parametrize("text", ["14 mark 220. xray at 1900 ok", "14 mark 220; physio at 1845"])
def test_the_time_of_a_remark_is_no_time_of_the_line_before_it(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    "text", ["14 mark 220. read at 1900", "14 mark 220. thanks. 1900", "14 mark 220. at 1900"]
)
def test_a_time_behind_its_line_is_its_own(text: str) -> None:
    assert reading(text) == "mark bed=14 at=19:00 level_ml=220"


@pytest.mark.parametrize("text", ["8 wall 80 was 60", "8 suction 20 was 10"])
def test_what_a_check_was_before_is_no_line(text: str) -> None:
    assert "mark" not in reading(text)
    assert "ask level_ml" in reading(text)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("7 430 1855 closing", "mark bed=7 at=18:55 level_ml=430 closing"),
        ("15 no more drainage since 4", "drained bed=15 volume_ml=0"),
        ("how many ml till 11 is full", "asked bed=11 topic=capacity"),
    ],
)
def test_which_line_closes_and_that_no_more_came(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_closing_before_a_time_and_its_line_is_of_that_line() -> None:
    told = "mark bed=7 at=06:00 level_ml=430; mark bed=7 at=06:55 level_ml=455 closing"
    assert reading("7: 0600 430 closing 0655 455", arrived=MORNING) == told


def test_two_lines_may_both_close_the_shift() -> None:
    said = "bed 14 end of shift line 500 at 1850, bed 15 end of shift line 1405 at 1852"
    first, last = "mark bed=14 at=18:50 level_ml=500 closing", "mark bed=15 at=18:52 level_ml=1405 closing"
    assert reading(said) == f"{first}; {last}"
