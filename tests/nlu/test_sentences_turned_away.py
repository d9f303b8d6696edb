"""Sentences whose words look like a tube, an event, a correction or a level, and are another thing."""

from __future__ import annotations

import pytest

from .saying import LETTERED, reading


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("the line on the box in bed 9 is right at 1000 mils at 1845", "mark bed=9 at=18:45 level_ml=1000"),
        ("bed 9 we're right about 800 at 1845", "mark bed=9 at=18:45 level_ml=800 about"),
        ("bed 9 it's right by 800 at 1845", "mark bed=9 at=18:45 level_ml=800"),
        ("bed 9 right 800 at 1845", "mark bed=9 tube=right at=18:45 level_ml=800"),
        ("bed 10, mark 60 mils at 1830, just the one tube in this one", "mark bed=10 at=18:30 level_ml=60"),
        ("bed 10 new tube in at 1830 60 mils", "placed bed=10 at=18:30 level_ml=60"),
        (
            "bed 13 the line has come up to 510 mils and that was read at nineteen hundred hours",
            "mark bed=13 at=19:00 level_ml=510",
        ),
        ("bed 16 the 1800 should be 510", "corrected bed=16 at=18:00 level_ml=510"),
    ],
)
def test_a_remark_beside_a_dictated_line_leaves_its_bed_tube_and_kind(text: str, said: str) -> None:
    """ "right at a thousand" is no right tube, and "the one tube in this one" none that was placed."""
    assert reading(text, channel="voice") == said


@pytest.mark.parametrize(
    "text",
    [
        "correct bed nineteen the six pm to five sixty no five ninety",
        "change the six pm on bed nineteen to five sixty sorry five ninety",
        "correct bed nineteen eighteen hundred to 560, no, 590",
    ],
)
def test_a_right_level_told_twice_is_asked(text: str) -> None:
    """Which of the two is right, nobody but the nurse knows."""
    assert reading(text, channel="voice") == "ask level_ml"


def test_what_a_correction_says_was_wrong_stays_so() -> None:
    """ "to 560 not 590" and "from 590 to 560" name the wrong level."""
    for text in ("correct bed 19 1800 to 560 not 590", "correct bed 19 1800 from 590 to 560"):
        assert reading(text) == "corrected bed=19 at=18:00 was_ml=590 level_ml=560"


def test_a_bed_mended_by_the_name_of_a_tube_is_asked() -> None:
    """ "bed ct two, uh no, ct three" is no third tube of bed CT2."""
    said = reading("bed ct two, uh no, ct three, six hundred mils at nineteen hundred", LETTERED, "voice")
    assert said.startswith("ask")


def test_a_forecast_is_no_correction() -> None:
    """What the line should be by then is not read yet."""
    plans = (
        "I'll be marking bed 16 at eight, should be about 500 by then",
        "I'll read bed 16, should be 500",
    )
    assert {reading(plan, channel="voice") for plan in plans} == {"ask kind"}


@pytest.mark.parametrize(
    "text", ["put the 1900 on bed 9", "log the 1900 for bed 9", "put the 1830 under bed 9"]
)
def test_the_number_put_on_a_bed_may_be_the_time_of_its_line(text: str) -> None:
    """A level of 1,900 or the line of seven o'clock."""
    assert reading(text) == "ask level_ml"


def test_a_level_put_on_a_bed_is_its_line() -> None:
    """No clock time, or no word "the"."""
    assert reading("put the 850 on bed 9") == "mark bed=9 level_ml=850"


@pytest.mark.parametrize(
    "text",
    ["cancel the ct scan for bed 12", "cancel ct for 12", "cancel mri bed 12", "delete the ct order on 12"],
)
def test_what_was_booked_is_no_line_taken_back(text: str) -> None:
    """A scan, an order and a porter are cancelled too."""
    assert reading(text) == "ask kind"


def test_a_line_is_taken_back() -> None:
    """ "the CT line" is of the chest tube."""
    assert reading("cancel the CT line on 12") == "withdrawn bed=12"
    assert reading("cancel the 1800 for bed 12") == "withdrawn bed=12 at=18:00"


@pytest.mark.parametrize("none", ["no fresh blood", "no more blood", "no sign of blood", "no obvious blood"])
def test_blood_that_was_not_seen_is_no_look(none: str) -> None:
    """ "no fresh blood" is not sanguineous."""
    assert reading(f"bed 2 1330 at 1830, {none}") == "mark bed=2 at=18:30 level_ml=1330"


@pytest.mark.parametrize(
    "none", ["nil frank blood", "free of blood", "blood free", "don't see any blood", "worried about blood"]
)
def test_a_drain_without_blood_is_no_look(none: str) -> None:
    """The same in other words, before the line and behind it."""
    assert reading(f"bed 2 1330 at 1830, {none}") == "mark bed=2 at=18:30 level_ml=1330"


@pytest.mark.parametrize("text", ["bed 9 at 7 at 500", "i'm going to mark bed 16 at eight at 500"])
def test_of_two_numbers_behind_at_the_hour_is_no_level(text: str) -> None:
    """A line of 7 mL at five, or of 500 at seven."""
    assert reading(text, channel="voice").startswith("ask")
    assert reading("bed 9 at 500 at 7", channel="voice") == "mark bed=9 at=19:00 level_ml=500"


def test_fresh_blood_is_a_look() -> None:
    """The same words without the no."""
    said = reading("bed 2 1330 at 1830 fresh blood")
    assert said.endswith("checked bed=2 at=18:30 fluid=sanguineous")


def test_a_clot_that_was_not_seen_is_no_notice() -> None:
    """ "no clot seen" answers nothing; "18 seen" does."""
    assert reading("18 not draining since evening, milked, no clot seen") == "ask level_ml"
    assert reading("9 no blood seen") == "ask kind"
    assert reading("18 seen") == "acknowledged bed=18"
    assert reading("18 no clot seen, 300 at 1830") == "mark bed=18 at=18:30 level_ml=300"


@pytest.mark.parametrize(
    "text",
    [
        "bed eighteen suction was off found it at six put it back on",
        "bed eighteen tube kinked found it at six",
        "bed four changed it at nine",
        "bed four clamped it at eight",
    ],
)
def test_when_something_was_found_or_done_is_no_level(text: str) -> None:
    assert "level_ml=" not in reading(text, channel="voice")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 6 drain left in situ, line 340 at 1830", "mark bed=6 at=18:30 level_ml=340"),
        ("bed 6 drain left in for now, line 340 at 1830", "mark bed=6 at=18:30 level_ml=340"),
        ("tube left in bed 5 at 340", "mark bed=5 tube=left level_ml=340"),
        ("b12 eos ln 582", "mark bed=12 level_ml=582 closing"),
        ("5 ln 232 1830 asleep", "mark bed=5 at=18:30 level_ml=232"),
    ],
)
def test_a_drain_left_in_names_no_side_and_ln_is_a_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed seven hundred and five line two ten at five",
        "bed two hundred and five line two ten at five",
        "bed six hundred and twelve mark four fifty",
    ],
)
def test_a_bed_that_the_ward_has_not_is_not_cut_to_one_that_it_has(text: str) -> None:
    assert "bed=" not in reading(text, channel="voice")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("9 suction back to 20 at 1840", "checked bed=9 at=18:40 suction_cmh2o=20"),
        ("9 suction is back to 20", "checked bed=9 suction_cmh2o=20"),
        ("9 wall back to 90", "checked bed=9 wall_mmhg=90"),
        ("9 seal back up to 2", "checked bed=9 seal_cm=2"),
        ("9 swing is back", "checked bed=9 tidaling=True"),
        ("9 back to suction at 1840", "incident bed=9 at=18:40 what=suction_on"),
        ("9 back to ward 1840", "back bed=9 at=18:40"),
        ("pt in 9 back at 1840", "back bed=9 at=18:40"),
    ],
)
def test_what_is_looked_at_is_back_and_no_patient(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_number_behind_at_and_a_clock_time_beside_it_may_be_either() -> None:
    assert reading("4 at 640 1855").startswith("ask")
    assert reading("bed 4 is at 640 1855") == "mark bed=4 at=18:55 level_ml=640"
