"""Dictated by somebody who thinks while speaking, and numbers that run into the next ones."""

from __future__ import annotations

import pytest

import nlu

from .saying import ARRIVED, BEDS, CHANNELS, LETTERED, Channel, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 19 mark four six oh cc at three uh, thirty five pm", "mark bed=19 at=15:35 level_ml=460"),
        ("bed twenty er four mark three hundred at nineteen hundred", "mark bed=24 at=19:00 level_ml=300"),
        ("bed three mark 1,000 uh mils at nineteen um hundred", "mark bed=3 at=19:00 level_ml=1000"),
        ("bed twelve um ten fifty um nineteen hundred", "mark bed=12 at=19:00 level_ml=1050"),
        ("fifteen uh hundred bed twelve mark 1 8 4 1", "mark bed=12 at=15:00 level_ml=1841"),
        ("bed twelve is off to um the er", "away bed=12"),
    ],
)
def test_a_hesitation_inside_a_number_does_not_end_it(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("bed twenty um two fifty at nineteen hundred", "ask bed"),
        ("bed twelve mark ten um, fifty seven pm", "ask level_ml"),
    ],
)
def test_where_it_may_have_ended_there_it_is_asked(text: str, asked: str) -> None:
    assert reading(text, channel="voice") == asked


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 15 mark twelve ninety five twenty minutes ago", "mark bed=15 at=18:45 level_ml=1295"),
        ("bed seven mark 10:40 37 minutes ago", "mark bed=7 at=18:28 level_ml=1040"),
        ("bed two mark one sixty two three minutes ago", "mark bed=2 at=19:02 level_ml=162"),
        ("bed two mark five hundred a hundred and twenty minutes ago", "mark bed=2 at=17:05 level_ml=500"),
    ],
)
def test_minutes_ago_are_never_counted_in_pairs_or_digit_by_digit(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    "text",
    [
        "bed two mark one hundred fifty seven minutes ago",
        "bed two mark ninety five minutes ago",
        "bed two mark six forty four minutes ago",
    ],
)
def test_where_the_minutes_begin_in_two_places_the_level_is_asked(text: str) -> None:
    assert reading(text, channel="voice") == "ask level_ml"


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 5 mark 1 thousand 900", "mark bed=5 level_ml=1900"),
        ("bed 5 mark 2 thousand and 135 at 1900", "mark bed=5 at=19:00 level_ml=2135"),
        ("bed 5 mark a thousand nine hundred and 6:05 pm", "mark bed=5 at=18:05 level_ml=1900"),
    ],
)
def test_a_thousand_in_words_goes_on_in_digits_but_not_in_a_time(
    text: str, read: str, channel: Channel
) -> None:
    assert reading(text, channel=channel) == read


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "wall suction on bed 10 is 90 and the dial is on 20",
            "checked bed=10 suction_cmh2o=20 wall_mmhg=90",
        ),
        ("seal on bed 10 is at 2", "checked bed=10 seal_cm=2"),
        (
            "suction on bed 10 is 20 and the mark is 340",
            "mark bed=10 level_ml=340; checked bed=10 suction_cmh2o=20",
        ),
        ("suction on 10 is 20", "checked bed=10 suction_cmh2o=20"),
        ("suction on bed 10 at 1900 was 20", "checked bed=10 at=19:00 suction_cmh2o=20"),
        ("air leak on bed 10 is 3", "checked bed=10 air_leak=present leak_grade=3"),
        ("suction back on bed 12 at 7", "incident bed=12 at=19:00 what=suction_on"),
        ("bed 10 suction on, bed 11 is 20", "incident bed=10 what=suction_on; mark bed=11 level_ml=20"),
        (
            "suction on bed 10, 340 at 1900",
            "mark bed=10 at=19:00 level_ml=340; incident bed=10 at=19:00 what=suction_on",
        ),
        ("wall suction good on bed 10, mark is 340", "mark bed=10 level_ml=340"),
    ],
)
def test_what_is_told_behind_the_bed_of_a_check_is_its_value(text: str, read: str, channel: Channel) -> None:
    assert reading(text, channel=channel) == read


@pytest.mark.parametrize("text", ["wall suction on bed 10 is 340", "seal bed 10 2", "suction bed 10 20"])
def test_a_number_that_may_be_of_the_check_or_a_line_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize("channel", CHANNELS)
def test_gravity_and_the_depth_of_the_seal_are_told_in_one_breath(channel: Channel) -> None:
    told = "checked bed=2 at=19:00 seal_cm=2 suction_cmh2o=0"
    text = "bed 2 mark 700 at 1900 suction to gravity seal 2"
    assert reading(text, channel=channel) == f"mark bed=2 at=19:00 level_ml=700; {told}"


@pytest.mark.parametrize(
    "text",
    [
        "the nineteen hundred mark on bed ten should have been eighteen thirty",
        "correct bed nine nineteen hundred to 18:30",
    ],
)
def test_a_spoken_clock_time_beside_that_of_the_line_may_be_the_level_or_the_right_time(text: str) -> None:
    assert reading(text, channel="voice") == "ask at"


def test_who_says_like_before_a_level_does_not_guess_it() -> None:
    assert reading("um bed nine uh mark like nine forty at nineteen hundred", channel="voice") == (
        "mark bed=9 at=19:00 level_ml=940"
    )


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 chest tube five seventy at nineteen hundred", "mark bed=12 at=19:00 level_ml=570"),
        ("bed 12 chest tube 1,188 at nineteen hundred", "mark bed=12 at=19:00 level_ml=1188"),
        ("bed 12 chest tube one three five at nineteen hundred", "mark bed=12 at=19:00 level_ml=135"),
        ("bed 12 chest tube one point four liters", "mark bed=12 level_ml=1400"),
        ("bed 12 tube one three forty at nineteen hundred", "mark bed=12 tube=1 at=19:00 level_ml=340"),
        (
            "bed 12 tube one 340 tube two 120",
            "mark bed=12 tube=1 level_ml=340; mark bed=12 tube=2 level_ml=120",
        ),
        ("bed 12 chest tube two seventy at nineteen hundred", "ask level_ml"),
        ("bed 12 chest tube one three five oh at nineteen hundred", "ask level_ml"),
    ],
)
def test_a_digit_of_the_level_is_no_number_of_a_tube(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed five mark fifteen hundred and nineteen hundred", "mark bed=5 at=19:00 level_ml=1500"),
        ("bed one canister is at $13.66 at nineteen hundred", "mark bed=1 at=19:00 level_ml=1366"),
        ("bed twenty line five hundred 29 minutes ago", "mark bed=20 at=18:36 level_ml=500"),
        ("bed three mark 845 forty eight minutes uh ago", "mark bed=3 at=18:17 level_ml=845"),
    ],
)
def test_numbers_that_touch_are_parted_where_only_one_place_makes_sense(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


def test_a_label_at_the_end_breaks_nothing_off() -> None:
    text = "mark four ninety at six fifty pm on bed two A"
    assert reading(text, beds=LETTERED, channel="voice") == "mark bed=2A at=18:50 level_ml=490"


def test_where_a_doubt_alone_speaks_against_another_bed_the_bed_is_asked() -> None:
    arrived = ARRIVED.replace(hour=13, minute=48)
    assert (
        reading("twenty three one oh five thirteen forty five", channel="voice", arrived=arrived) == "ask bed"
    )


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed five mark a thousand one hundred and twenty two hundred", "ask level_ml"),
        ("bed five mark eleven twenty two hundred", "ask level_ml"),
        ("bed five mark eleven twenty oh two hundred", "mark bed=5 at=02:00 level_ml=1120"),
    ],
)
def test_a_twenty_may_be_of_the_level_or_of_the_hour(text: str, read: str) -> None:
    assert reading(text, channel="voice", arrived=ARRIVED.replace(hour=2)) == read


@pytest.mark.parametrize(
    "remark",
    [
        "surgeon notified",
        "sitting up in chair",
        "deep breathing well",
        "doctor smith is aware",
        "ambulating in the hall",
    ],
)
def test_what_is_said_behind_a_whole_dictated_line_says_nothing_of_it(remark: str) -> None:
    text = f"bed four mark three forty at nineteen hundred {remark}"
    assert reading(text, channel="voice") == "mark bed=4 at=19:00 level_ml=340"


@pytest.mark.parametrize(
    "text",
    [
        "bed four mark three forty at nineteen thirty fife looks fine",
        "bed four mark three forty at nineteen hundred minus the irrigation",
        "bed four mark three forty at nineteen hundred from the foley",
        "bed four mark three forty at nineteen hundred do not record that",
        "bed four mark three forty at nineteen hundred other patient",
        "bed four mark three forty at nineteen hundred big air lick",
        "bed four mark three forty at nineteen hundred should be higher",
    ],
)
def test_what_takes_a_dictated_line_back_is_no_remark(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask ")


@pytest.mark.parametrize(
    "text",
    [
        "bed 4 mark 340 at 1900 don't chart it",
        "bed 4 mark 340 at 1900, do not record that",
        "bed 4 mark 340 at 1900. dont write that down",
        "bed 4 mark 340 at 1900 minus the flush",
        "bed 4 mark 340 at 1900 from the foley",
        "bed 4 mark one thousand and a half",
        "bed 4 mark 340 at 1900 should be higher",
    ],
)
def test_what_takes_a_typed_line_back_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize("told", ["family updated", "md updated", "updated the team"])
def test_who_was_updated_puts_no_line_right(told: str) -> None:
    assert reading(f"bed 4 mark 340 at 1900 {told}") == "mark bed=4 at=19:00 level_ml=340"


def test_three_beds_in_one_breath_are_read_though_each_number_could_be_cut() -> None:
    text = "at 19:00 bed six 17 78 bed 23 nine three zero bed nineteen 7 4 4"
    lines = ("bed=6 at=19:00 level_ml=1778", "bed=23 at=19:00 level_ml=930", "bed=19 at=19:00 level_ml=744")
    assert reading(text, channel="voice") == "; ".join(f"mark {line}" for line in lines)


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("bed 3 actually bed 5 mark 340 at 1900", "ask bed"),
        ("bed 4 is at 485 actually 765 at 1900", "ask level_ml"),
        ("bed 8 mark 485 at 6:55 pm actually 6 pm", "ask at"),
        ("bed 9 mark 1000 at 1800 actually 1825 hours", "ask at"),
    ],
)
def test_who_says_actually_mends_what_was_just_said(text: str, asked: str, channel: Channel) -> None:
    assert reading(text, channel=channel) == asked


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 1900 actually 445", "corrected bed=12 level_ml=445 at=19:00"),
        ("bed 4 1800 line actually bed 5", "corrected bed=4 at=18:00 to_bed=5"),
        ("bed 10 1800 mark actually at 1820", "corrected bed=10 at=18:00 to_at=18:20"),
    ],
)
def test_a_line_of_before_is_put_right_with_actually(text: str, read: str) -> None:
    assert set(reading(text).split()) == set(read.split())


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 mark 340 at 1900 will recheck in an hour", "mark bed=4 at=19:00 level_ml=340"),
        ("bed 4 mark 340 at 1900 will mark again at 2000", "mark bed=4 at=19:00 level_ml=340"),
        ("bed 4 will mark 360 at 2000", "ask kind"),
        ("bed 4 mark 340 at 1900 will check if that's right", "ask kind"),
    ],
)
def test_when_the_next_line_is_read_says_nothing_of_this_one(text: str, read: str, channel: Channel) -> None:
    assert reading(text, channel=channel) == read


@pytest.mark.parametrize(
    "text", ["bed CT uh one is at five forty at 1840", "bed um CT one is at five forty at 1840"]
)
def test_a_hesitation_inside_a_label_is_none_of_it(text: str) -> None:
    assert reading(text, beds=LETTERED, channel="voice") == "mark bed=CT1 at=18:40 level_ml=540"


CORRECTED = "corrected bed=9 at=18:00 level_ml=1170"


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "fix bed nine eighteen hundred to eleven seventy and bed 12 mark thirteen twenty five at 1900",
            {CORRECTED, "mark bed=12 at=19:00 level_ml=1325"},
        ),
        (
            "bed 12 mark 1325 at 1900 and correct bed 9 1800 to 1170",
            {CORRECTED, "mark bed=12 at=19:00 level_ml=1325"},
        ),
        (
            "bed 4 mark 540 at 1900 and delete the 1800 mark on bed 5",
            {"mark bed=4 at=19:00 level_ml=540", "withdrawn bed=5 at=18:00"},
        ),
    ],
)
def test_what_is_put_right_or_taken_back_beside_a_line_is_read_apart(
    text: str, read: set[str], channel: Channel
) -> None:
    said = nlu.parse(text, arrived=ARRIVED, beds=BEDS, channel=channel)
    assert not said.unclear
    assert {" ".join(sorted(part.split())) for part in reading(text, channel=channel).split("; ")} == {
        " ".join(sorted(part.split())) for part in read
    }


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    "text",
    [
        "correct bed 9 1800 to 1170 and bed 12 1325",
        "correct bed 9 1800 to 1170 and bed 12 mark 1325",
        "correct bed 9 1800 to 1170 and bed 12 1800 to 1325",
        "bed 4 mark 540 at 1900 and delete the 1900 mark on bed 4",
        "bed 4 mark 540 at 1900 and delete that",
        "bed 4 mark 540 and delete the 1800 mark on bed 5",
        "bed 4 mark 540 at 1900 and remove the tube in bed 5",
        "delete the 1800 mark on bed 5 and bed 4 mark 540 at 1900",
    ],
)
def test_where_both_may_be_put_right_or_taken_back_it_is_asked(text: str, channel: Channel) -> None:
    assert "ask " in reading(text, channel=channel)
