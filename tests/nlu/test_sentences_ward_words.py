"""Words of the ward as a recogniser writes them, and digits that it sets apart."""

from __future__ import annotations

import pytest

from tests.nlu.saying import LETTERED, Channel, reading

LINE = "mark bed=12 level_ml=410"
AT_SIX = "mark bed=12 at=18:00 level_ml=410"


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("log bed 12 mark as 410", LINE),
        ("drain level bed 12 as four hundred ten at 6 pm", AT_SIX),
        ("bed 12 as at 410", LINE),
        ("twelve as at four ten", LINE),
        ("checked bed 12 at 1800 line as 410", AT_SIX),
        ("bed 12 fluid as up to the 410 line", LINE),
        ("bed 12 his at 410", LINE),
        ("12s at 410 mls as of 6 pm", AT_SIX),
        ("bed 12 lion 410 at 6 pm", AT_SIX),
        ("bed 12 lying is 410", LINE),
        ("got the lying at 410 for bed 12 at 6 pm", AT_SIX),
        ("the lyon reads 410 in bed 12", LINE),
        ("bed 12 marc 410 done at 6 pm", AT_SIX),
        ("bed 12 canister reeds 410", LINE),
        ("chess tube in bed 12 is at 410", LINE),
        ("test drain bed 12 reads 410 at 6 pm", AT_SIX),
        ("bed 12 can a stir is at 410", LINE),
        ("bed 12 battle is at 410 at 1800", AT_SIX),
        ("there's 410 mls in the banister for bed 12", LINE),
        ("bed 12 line 410 take in at 6 pm", AT_SIX),
        ("bed 12 line four ten read at eighteen hundred", AT_SIX),
        ("bed 12 line 410 milli liters that 6 pm", AT_SIX),
        ("bed 12 line 410 an hour a go", "mark bed=12 at=18:05 level_ml=410"),
        ("bed 12 line 410 at half passed 6", "mark bed=12 at=18:30 level_ml=410"),
        ("bed 12 roughly 410 on the canister at eighteen hundred", f"{AT_SIX} about"),
        ("bed 12 approximately, 410 in the canister", f"{LINE} about"),
        ("end of ship mark for bed 12 is 410", f"{LINE} closing"),
        ("bed 12 line 410, no leak, title ing", f"{LINE}; checked bed=12 air_leak=none tidaling=True"),
        ("mark me down 410 for bed 12 at 6 pm", AT_SIX),
        ("thoracic drain bed 12 level 410", LINE),
        ("bed 12 current levels 410 cc", LINE),
        ("tub in bed 12 marked at 410", LINE),
        ("bed 12 the labels is 410", LINE),
        ("the right train on bed 12 reads 410", "mark bed=12 tube=right level_ml=410"),
        ("bed 12 market 410", LINE),
        ("bed 12 mark, as 410 done add 6 pm", AT_SIX),
        ("hourly mark for bed 12 is 410", LINE),
        ("line on bed twelve is four hundred ten", LINE),
    ],
)
def test_a_misheard_word_beside_its_number_is_what_was_said(said: str, wanted: str) -> None:
    """ "lion" for line, "as" for is, "chess tube"."""
    assert reading(said, channel="voice") == wanted


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("bed 12 340 as of 6 pm", "mark bed=12 at=18:00 level_ml=340"),
        ("bed 12 340 as at 1800", "ask level_ml"),
        ("bed 12 mark 1850 read at 1900", "ask level_ml"),
        ("bed 12 mark 340, read at 420", "ask level_ml"),
        ("patient in bed 12 lying on left side line 340", "mark bed=12 level_ml=340"),
        ("bed 12 not bad 340", "ask kind"),
        ("bed 12 a bit 340", "ask level_ml"),
        ("bed 12 suction at 10-20", "ask suction_cmh2o"),
        ("bed 12 mark 340-350", "ask level_ml"),
        ("1 540 please", "ask bed"),
        ("3 90", "answered level_ml=390"),
        ("both at AE30 bed 22 mark 680 bed 15 mark 270", "ask level_ml"),
    ],
)
def test_a_word_with_its_own_work_stays(said: str, wanted: str) -> None:
    """ "a bit" is no bed, "lying on" no line."""
    assert reading(said, channel="voice") == wanted


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("bed 3 line 80 bet 9 line 40", "mark bed=3 level_ml=80; mark bed=9 level_ml=40"),
        ("line in bed 3 is 80 and in bit ten it's 40", "mark bed=3 level_ml=80; mark bed=10 level_ml=40"),
        ("lines are 80 on bed 3 and 40 on bit ten", "mark bed=3 level_ml=80; mark bed=10 level_ml=40"),
        ("bed 3 line 80 bad too line 40", "mark bed=3 level_ml=80; mark bed=2 level_ml=40"),
        (
            "bed four mark three forty at nineteen hundred bad five mark two ten",
            "mark bed=4 at=19:00 level_ml=340; mark bed=5 at=19:00 level_ml=210",
        ),
        ("bed 3 line 80 bed 9 is a bit better", "ask level_ml"),
    ],
)
def test_another_bed_may_be_misheard_where_one_was_named(said: str, wanted: str) -> None:
    """ "bed 3 line 80 bet 9 line 40"."""
    assert reading(said, channel="voice") == wanted


@pytest.mark.parametrize(
    ("said", "beds", "wanted"),
    [
        ("bed 2:24 mark 340", ("223", "224"), "mark bed=224 level_ml=340"),
        ("bed 9-A line is 240", ("9", "9A", "9B"), "mark bed=9A level_ml=240"),
        ("bed 9-A line is 240", ("9", "10"), "ask bed"),
        ("bed nine a line is 240", ("9", "10"), "mark bed=9 level_ml=240"),
    ],
)
def test_a_label_may_have_a_sign_inside(said: str, beds: tuple[str, ...], wanted: str) -> None:
    """ "bed 2:24", "bed 9-A"."""
    assert reading(said, beds=beds, channel="voice") == wanted


@pytest.mark.parametrize("said", ["bad c t 1 line 340", "bit CT one line 340", "med CT1 line 340"])
def test_a_misheard_bed_may_have_letters(said: str) -> None:
    """ "bad c t 1"."""
    assert reading(said, beds=LETTERED, channel="voice") == "mark bed=CT1 level_ml=340"


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("bed 12 line 340 at o 8 hundred", "mark bed=12 at=08:00 level_ml=340"),
        ("bed 12 line 340 at 08 hundred hours", "mark bed=12 at=08:00 level_ml=340"),
        ("bed 12 line 340 at oh 815", "mark bed=12 at=08:15 level_ml=340"),
        ("bed 12 line 340 at 2-15 p.m.", "mark bed=12 at=14:15 level_ml=340"),
        ("bed 12 line 340 at 17-45 hours", "mark bed=12 at=17:45 level_ml=340"),
        ("bed 12 line 340 at 17-45.", "mark bed=12 at=17:45 level_ml=340"),
        ("bed 12 line 340 at 5-45 in the afternoon", "mark bed=12 at=17:45 level_ml=340"),
        ("bed 12 line 340 that O-830 hours", "mark bed=12 at=08:30 level_ml=340"),
        ("bed 12 line 340 suction at 20-25", "ask suction_cmh2o; ask suction_cmh2o"),
        ("bed 12 line 1-0-9-0 at 6 pm", "mark bed=12 at=18:00 level_ml=1090"),
        ("bed 12 line 1,000 and 55 at 6 pm", "mark bed=12 at=18:00 level_ml=1055"),
        ("room 2 1,550 at 6:04 pm", "mark bed=2 at=18:04 level_ml=1550"),
    ],
)
def test_digits_set_apart_are_one_number(said: str, wanted: str) -> None:
    """ "2-15 pm", "o 8 hundred"."""
    assert reading(said, channel="voice") == wanted


@pytest.mark.parametrize("channel", ["text", "voice"])
@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("the 1800 mark for bed 6 is 690", "mark bed=6 at=18:00 level_ml=690"),
        ("for the 1800 mark bed 6 is 690", "mark bed=6 at=18:00 level_ml=690"),
        ("for the 1330 mark bed 16 is 1510", "mark bed=16 at=13:30 level_ml=1510"),
        ("1800 line on 12 was 340", "mark bed=12 at=18:00 level_ml=340"),
        ("1800 mark bed 12 340", "ask level_ml"),
        ("bed 12 1800 line bed 14 is 300", "ask level_ml"),
        ("12 at the 1800 mark", "mark bed=12 level_ml=1800"),
        ("bed 21 it's at the 90 line at 1752", "mark bed=21 at=17:52 level_ml=90"),
        ("bed 21 is at the 90 mark", "mark bed=21 level_ml=90"),
        ("bed 3 at the 1800 line 340", "ask level_ml"),
    ],
)
def test_a_line_is_called_by_its_time_or_its_level(said: str, wanted: str, channel: Channel) -> None:
    """ "the 1800 mark" is one of that time where its bed has another number."""
    assert reading(said, channel=channel) == wanted


@pytest.mark.parametrize("channel", ["text", "voice"])
@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("record a line of 640 on bed 9", "mark bed=9 level_ml=640"),
        ("bed 9 has an a line", ""),
        ("put an a line in bed 9", ""),
    ],
)
def test_a_line_that_is_drawn_is_no_arterial_one(said: str, wanted: str, channel: Channel) -> None:
    """ "record a line of 640"."""
    assert reading(said, channel=channel) == wanted
