"""What is asked, was not looked for, is of another place or of no line: never told as read."""

from __future__ import annotations

import pytest

from .saying import BEDS, Channel, reading


@pytest.mark.parametrize(
    "text",
    [
        "is 12 at -20",
        "was bed 12 really 1100 at 1800",
        "is bed 12 really 1100",
        "what happened when 3 tipped over at 1700",
        "bed 11 didnt check for leak",
        "11 not checked for leak",
        "pt from 6 is in 16 now",
        "mark 300 at 1800 for the pt who was in 21, hes in 2 now",
        "bed 2 1 tube 340 at 1800",
        "5 sitting at 330, IS got to 1250 this am",
        "bed 11 tube got pulled out",
        "pt that was in 21 is now in 2, line 300",
        "bed 23 no wait that was the foley, mark 300",
    ],
)
def test_a_typed_message_like_this_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    "text",
    [
        "is bed nine at nine forty",
        "is bed nine tidaling",
        "was bed twelve really eleven hundred at fifteen hundred",
        "bed eleven didn't check for a leak",
        "okay so right bed twenty is at one sixty five",
        "Right, bed 12, mark 300 at seven",
        "bed twenty three wait no that was the foley mark three hundred",
        "bed eleven the tube got pulled out",
    ],
)
def test_so_is_a_dictated_one(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("19 weighs 62 not 68 kg", "described bed=19 weight_kg=62"),
        ("bed 12 suction is 20 not 10", "checked bed=12 suction_cmh2o=20"),
        ("12 seal 2 not 1", "checked bed=12 seal_cm=2"),
        ("bed 12 1050 not 1500", "corrected bed=12 was_ml=1500 level_ml=1050"),
    ],
)
def test_a_check_or_weight_that_is_put_right_is_no_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("no leak when checked on 4", "checked bed=4 air_leak=none"),
        ("tube got pulled on 11 at 1800", "removed bed=11 at=18:00"),
        ("how much did 2 drain in the last shift", "asked bed=2 topic=total window=last_shift"),
        ("pt was in 21 now in 2", "moved bed=21 to_bed=2"),
    ],
)
def test_what_is_told_beside_such_words_is_told(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "two on 8: apical 20, basal 145, both 1900",
        "right, bed 9 740 at 1905",
        "6 left sided pain, chest tube 340 at 1900",
        "swapped the canister on 10 at 1830 forgot to read the old 1 sorry",
        "got a new box for 21, not hooked up yet, old still 1720 at 1900",
        "cancel the breakfast tray for 12",
        "bed 1 second unit of blood up at 1910, 300 in",
        "bed 12 mark 870 at 1900 for bed 14",
        "5 cont air leak still, on 20",
        "12 seal ok at 2, swing present, no bubbling",
        "lunch cover: 3 490 9 660 10 1290 all 1900",
        "6 right at 1800 shd have been 6 left",
        "4 1835 1900",
        "4 635 1900",
    ],
)
def test_a_word_beside_the_number_may_turn_it(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("6 left sided chest tube 340 at 1900", "mark bed=6 tube=left at=19:00 level_ml=340"),
        ("bed 12 872 at 1900, no drama", "mark bed=12 at=19:00 level_ml=872"),
        ("12 no 340", "answered bed=12 answer=no level_ml=340"),
        ("HELP 12s box just got knocked over", "incident bed=12 what=tipped"),
        ("8 395 at 1900, slowing down", "mark bed=8 at=19:00 level_ml=395"),
        ("evening, 22 is at 315 as of 1900", "mark bed=22 at=19:00 level_ml=315"),
        ("canister on 11 is cracked at the bottom", "incident bed=11 what=damaged"),
        ("21 chest tube sitting around 240 at quarter to seven", "mark bed=21 at=18:45 level_ml=240 about"),
        ("swapped the drain unit on 17 final 1790", "exchanged bed=17 final_ml=1790"),
        ("5 slowing down", "asked bed=5 topic=trend"),
        ("end of shift 17 1415 at 1900 giving report", "mark bed=17 at=19:00 level_ml=1415 closing"),
        ("shift total 5?", "asked bed=5 topic=total window=shift"),
    ],
)
def test_a_remark_beside_it_does_not(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_sign_that_is_denied_twice_is_not_told_as_absent() -> None:
    assert "air_leak=none" not in reading("bed 15 no leak no longer, bubbling again")


def test_nothing_of_a_bed_is_accepted_beside_a_number_of_it_that_is_asked() -> None:
    """Typed as dictated: where one number of a drain is in doubt, the others may be its."""
    assert reading("bed 9 340 at 1800 and 3500 or 350 at 1900").startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed ten on four liters nasal cannula sats ninety three", ""),
        (
            "bed nine tubing came apart at the connector at eighteen thirty five",
            "incident bed=9 at=18:35 what=disconnected",
        ),
        ("total for bed four over the last six hours", "asked bed=4 topic=total window=6h"),
        ("you know bed eleven yeah mark ten ninety five at six pm", "mark bed=11 at=18:00 level_ml=1095"),
        ("yes bed eleven mark ten ninety five", "mark bed=11 level_ml=1095"),
        ("yes bed eleven ten ninety five", "answered bed=11 answer=yes level_ml=1095"),
        ("bed twelve never drained two hundred that was bed ten", "ask kind"),
    ],
)
def test_what_is_said_aloud_around_it_is_no_part_of_it(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("18 roughly 160 at 1900 dark in there", "mark bed=18 at=19:00 level_ml=160 about"),
        ("6 1340 1900 pt refusing turn", "mark bed=6 at=19:00 level_ml=1340"),
        ("5 mark 1230 @1900 kinda a lot but surgeon knows", "mark bed=5 at=19:00 level_ml=1230"),
        ("9 is on 1165 now", "mark bed=9 at=19:05 level_ml=1165"),
        ("12 540 at 1900 obs stable", "mark bed=12 at=19:00 level_ml=540"),
        ("hi day shift signing off 4 chest tube 620 at 1900", "mark bed=4 at=19:00 level_ml=620"),
        ("12 line 745 at 1900 drawing labs now", "mark bed=12 at=19:00 level_ml=745"),
        ("12 745 at 1900 pt sleeping now", "mark bed=12 at=19:00 level_ml=745"),
        ("4 640 at 1900 urine", "ask level_ml"),
        ("4 640 at 1900 bolus", "ask level_ml"),
        ("4 640 at 1900 jug", "ask level_ml"),
        ("4 640 at 1900 of feed", "ask level_ml"),
        ("4 640 at 1900 i think", "ask kind"),
        ("9 is on 20 now", "ask level_ml"),
    ],
)
def test_what_is_said_behind_a_whole_line_is_a_remark_or_a_device(text: str, read: str) -> None:
    assert reading(text) == read


def test_final_marks_are_closing_lines_and_no_final_of_a_canister() -> None:
    lines = "mark bed=3 at=19:00 level_ml=340 closing; mark bed=7 at=19:00 level_ml=505 closing"
    assert reading("final marks: 3 340, 7 505 all 1900") == lines


def test_should_be_with_a_stroke_is_a_correction() -> None:
    assert reading("12 1800 s/b 1045") == "corrected bed=12 at=18:00 level_ml=1045"
    assert reading("12 s/b 1005") == reading("12 should be 1005") == "corrected bed=12 level_ml=1005"


@pytest.mark.parametrize(
    "told", ["3 340, 7 505, both 1900", "3 340 7 505 all 1900", "3 340, 7 505 each 1900 no leaks"]
)
def test_the_last_number_behind_all_or_both_is_when(told: str) -> None:
    lines = "mark bed=3 at=19:00 level_ml=340; mark bed=7 at=19:00 level_ml=505"
    assert reading(told).startswith(lines)


@pytest.mark.parametrize("text", ["1 20 6 30", "1 20 6 30 3 40", "12 340 6 30"])
def test_a_bed_and_its_line_that_may_be_a_time_are_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


def test_a_bed_and_its_line_that_are_no_recent_time_are_told() -> None:
    assert reading("12 340 3 90") == "mark bed=12 level_ml=340; mark bed=3 level_ml=90"


def test_a_change_of_canister_is_told_in_the_words_of_a_tired_nurse() -> None:
    assert reading("change of canister 12 1815 - old 1990") == "exchanged bed=12 at=18:15 final_ml=1990"
    assert reading("12 canister chnged 1815 old 1990") == "exchanged bed=12 at=18:15 final_ml=1990"
    assert reading("change of canister due on 12") == "ask kind"


def test_how_it_was_is_not_told_as_how_it_is() -> None:
    assert reading("8 was bubbling").startswith("ask ")
    assert "suction_cmh2o=0" not in reading("8 reading 95 right now, was off suction for xray")
    assert reading("8 was clamped at 1800") == "incident bed=8 at=18:00 what=clamped"


def test_a_report_that_was_given_asks_for_none() -> None:
    assert reading("closing line for 17 880ml at 1905, report given") == (
        "mark bed=17 at=19:05 level_ml=880 closing"
    )
    assert reading("report on 12") == "asked bed=12 topic=handoff"


def test_minutes_before_an_hour_that_may_end_the_number_are_asked_either_way() -> None:
    said = "bed number two the level is one hundred and seventy five to six in the evening"
    assert reading(said, channel="voice") == "ask level_ml"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("24 looked at it at 1800 and it was 115", "ask level_ml"),
        ("wrong side on bed 14, the 300 was left not right", "ask at"),
        ("I put the 1900 on 5 but it belongs to 6", "ask at"),
        ("I put the 1050 on 5 but it belongs to 6", "corrected bed=5 was_ml=1050 to_bed=6"),
        ("12 that is not right", "answered bed=12 answer=no"),
    ],
)
def test_a_line_of_another_bed_side_or_time_keeps_its_level(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 21 455 @1910 gave report to the night nurse", "mark bed=21 at=19:10 level_ml=455"),
        ("21 300 at 1900 out", "ask level_ml"),
        ("gave report on 12", "asked bed=12 topic=handoff"),
        ("12 valve replacement pod 1", "described bed=12 reason=cardiac"),
    ],
)
def test_a_verb_behind_a_time_takes_no_time_for_an_amount(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_valve_that_cracked_is_no_reason_for_the_drain() -> None:
    assert "reason" not in reading("changed canister bed 11 bc valve cracked, old one 1320, at 1900")


@pytest.mark.parametrize("text", ["12 at like 340 at 1900", "12 340 maybe at 1900", "12 maybe 340 at 1900"])
def test_a_level_that_is_a_guess_is_told_as_one(text: str) -> None:
    assert reading(text) == "mark bed=12 at=19:00 level_ml=340 about"


def test_a_change_with_no_value_behind_it_puts_nothing_right() -> None:
    assert reading("6 drain is up to 1000 and change") == "ask level_ml"
    assert reading("change 12 to 340") == "corrected bed=12 level_ml=340"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("16 box 1/2 full", "ask level_ml"),
        ("2/4 340 at 1900", "ask level_ml"),
        ("4B leak 1/7", "checked bed=4B air_leak=present leak_grade=1"),
        ("12/A 340 at 1900", "mark bed=12A at=19:00 level_ml=340"),
    ],
)
def test_digits_with_a_stroke_between_are_no_bed_of_those_digits(text: str, read: str) -> None:
    """On a ward that has lettered beds too."""
    assert reading(text, beds=(*(str(n) for n in range(1, 25)), "4B", "12A")) == read


@pytest.mark.parametrize(
    "text",
    [
        "b18 sx 20 \u2714 seal 2 \u2714 leak \u2718 swing \u2714",
        "bed 8 leak \u2717",
        "bed 8 swing \u274c",
        "bed 8 ascitic tap 3 litres drained",
    ],
)
def test_a_cross_behind_a_sign_and_a_tap_of_something_else_are_recorded_by_nobody(text: str) -> None:
    """A cross was dropped as an ornament, and the leak recorded as there."""
    assert not reading(text) or reading(text).startswith("ask")


@pytest.mark.parametrize("channel", ["text", "voice"])
@pytest.mark.parametrize(
    "text",
    [
        "bed three can we pull the tube if it stays under a hundred",
        "bed three can we pull it if it is at one fifty",
        "could we pull the drain in bed three if it stays at one fifty",
    ],
)
def test_who_asks_what_is_to_be_done_if_a_line_is_so_tells_no_line(text: str, channel: Channel) -> None:
    assert reading(text, BEDS, channel).startswith("ask")


def test_that_one_after_is_no_minute_past_the_hour() -> None:
    text = "Bed 13 mark 640, bed 20 mark 55, bed 14 mark... I'll do that one after."
    assert "at=" not in reading(text, BEDS, "voice")


@pytest.mark.parametrize(
    "text",
    [
        "Physio walked 5 100 metres with the drain",
        "5 did 20 laps",
        "bed 5 at 300 feet with physio",
        "wish bed 5 was at 0 so I could go home",
        "bed 8 640 idk",
    ],
)
def test_how_far_somebody_walked_and_what_is_wished_for_are_no_lines(text: str) -> None:
    assert reading(text).startswith("ask")


def test_a_meniscus_right_on_the_mark_is_of_no_right_tube() -> None:
    assert reading("bed 8 reads 970, meniscus right on the mark") == "mark bed=8 level_ml=970"
