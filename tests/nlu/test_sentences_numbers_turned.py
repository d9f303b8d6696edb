"""Numbers that would be read as something else: ranges, a misheard "to", a labelled time, telegrams."""

from __future__ import annotations

import pytest

from .saying import ARRIVED, CHANNELS, Channel, reading

LATER = ARRIVED.replace(hour=20, minute=0)
LINE = "mark bed=12 at=19:00 level_ml=340"


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    "told",
    [
        "somewhere from 710 to 730",
        "anywhere from 710 to 730",
        "anything from 710 to 730",
        "between 710 and 730",
        "around 710 to 730",
        "710 or so to 730",
        "from 710 up to 730",
        "reads from 710 to 730",
        "from 710 mL to 730 mL",
    ],
)
def test_a_range_is_asked_in_every_wording(told: str, channel: Channel) -> None:
    assert reading(f"bed 12 line {told} at 1830", channel=channel).startswith("ask")


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("bed 12 from 840 to 1050 at 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 went from 840 to 1050 at 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 line went from 60 to 75 at 1830", "mark bed=12 at=18:30 level_ml=75"),
    ],
)
def test_what_it_rose_to_is_the_line(text: str, told: str) -> None:
    assert reading(text) == told


@pytest.mark.parametrize(
    "text",
    [
        "at 6 40 pm, level to seventy five for room 18",
        "at 6:40 pm level is to seventy five for room 18",
        "room 18 at 6:40 pm level to seventy five",
        "bed 12 is to hundred and fifteen milliliters at 1830",
        "hourly reading for bed 12 is to hundred and fifteen milliliters at 1830",
        "the line for bed 12 is to fifteen milliliters at 1830",
        "bed 12 mark to forty at eighteen thirty",
    ],
)
def test_a_dictated_to_before_a_number_is_asked(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask")


@pytest.mark.parametrize("text", ["bed 12 line is up to 115 mL at 1830", "bed 12 came up to 115 mL at 1830"])
def test_what_it_came_up_to_is_the_line(text: str) -> None:
    assert reading(text, channel="voice") == "mark bed=12 at=18:30 level_ml=115"


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    "text",
    [
        "bed 12 it's 340 time of reading 1900",
        "bed 12 340 time of mark 1900",
        "time of reading 1900 bed 12 340",
        "bed 12 340 time read 1900",
        "bed 12 340 time of the line 1900",
    ],
)
def test_a_labelled_time_is_no_level(text: str, channel: Channel) -> None:
    assert reading(text, channel=channel, arrived=LATER) == LINE


@pytest.mark.parametrize(
    "text",
    [
        "that was 45 minutes ago, bed 12 was 340",
        "that was 45 min ago bed 12 line 340",
        "that was three quarters of an hour ago bed 12 mark 340",
        "bed 12 line 340 that was 45 minutes ago",
    ],
)
def test_when_it_was_is_no_correction_before_the_line_either(text: str) -> None:
    assert reading(text, arrived=ARRIVED.replace(minute=45)) == LINE


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("12 1340 1900 leak 0 swing y seal 2", "seal_cm=2 air_leak=none tidaling=True"),
        ("12 - 1340 - 1900 - seal 2 - sxn 20 - swing +", "seal_cm=2 suction_cmh2o=20 tidaling=True"),
        ("12 1340 1900 swing + leak -", "air_leak=none tidaling=True"),
        ("12 1340 1900 leak -, swing +", "air_leak=none tidaling=True"),
        ("12 1340 1900, swing y, leak 0", "air_leak=none tidaling=True"),
    ],
)
def test_a_line_in_telegram_style_is_read_with_its_checks(text: str, told: str) -> None:
    assert reading(text, arrived=LATER) == (
        f"mark bed=12 at=19:00 level_ml=1340; checked bed=12 at=19:00 {told}"
    )


@pytest.mark.parametrize(
    "text", ["12 1340 1900 leak -", "12 1340 1900 swing +/-", "12 1340 1900 swing -", "12 leak 0-1 swing y"]
)
def test_a_minus_behind_a_sign_never_says_that_it_is_there(text: str) -> None:
    said = reading(text, arrived=LATER)
    assert "ask" in said
    assert "present" not in said


@pytest.mark.parametrize("text", ["12 1830 1900 sxn 20", "12 1830 1900 seal 2 no leak"])
def test_where_a_line_is_asked_the_check_has_none_of_its_numbers_as_its_time(text: str) -> None:
    assert reading(text, arrived=LATER) == "ask at; ask level_ml"


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("bed 14 weighs 14 kg, line at 1900 is 1850", "described bed=14 weight_kg=14; ask level_ml"),
        ("order from pulm: bed 15 to gravity, no suction", "ordered bed=15 suction_cmh2o=0"),
        ("bed 15 on gravity, no suction", "checked bed=15 suction_cmh2o=0"),
        ("bed 5 220 1820 he has a central line", "mark bed=5 at=18:20 level_ml=220"),
        ("his heart rate is fine - 12 340 at 1900", LINE),
        ("bed 12 340 at 1845, physio came 20 min ago", "mark bed=12 at=18:45 level_ml=340"),
        ("bed 14 drain goes with him, nothing to chart", "ask kind"),
    ],
)
def test_what_stands_beside_takes_and_adds_nothing(text: str, told: str) -> None:
    assert reading(text, arrived=LATER) == told


@pytest.mark.parametrize("text", ["foley - bed 12 340 at 1900", "good urine output - bed 9 515 at 1830"])
def test_a_line_behind_a_dash_is_never_swallowed_by_what_is_not_ours(text: str) -> None:
    assert reading(text, arrived=LATER) != ""


def test_the_same_tube_is_not_the_same_line() -> None:
    assert "drained" not in reading("12 back from IR at 1840 with the same tube in place, line 215")


def test_the_time_of_an_event_is_not_left_out_with_who_came_along() -> None:
    told = "bed 9 has gone down to CT with the porter and a staff nurse escort at 1840"
    assert reading(f"{told}, drain kept below chest height on the trolley") == "away bed=9 at=18:40"


@pytest.mark.parametrize("channel", CHANNELS)
def test_whether_a_bed_has_a_line_is_no_line(channel: Channel) -> None:
    assert reading("has bed 12 got a line for 1900", channel=channel) == "ask level_ml"


def test_midnight_is_never_left_out_as_a_remark() -> None:
    text = "at midnight bed 14 was reading 18 hundred the supply room is a mess"
    said = reading(text, channel="voice", arrived=ARRIVED.replace(hour=0, minute=6))
    assert said.startswith("ask") or "at=00:00" in said
