"""A line from the message to the reply: what is read back, charted and summed."""

from __future__ import annotations

from dataclasses import replace

import pytest

from bot.engine.entries import Line
from bot.wording.gsm import is_gsm
from tests.dialogue.ward import Ward


def test_a_first_line_is_a_baseline_and_asks_for_the_line_of_the_shift_start() -> None:
    answer = Ward().says("Amy", "bed 7 mark 630 at 1800", at="18:01")
    assert answer.status == "recorded"
    assert "Bed 7, 18:00, line 630 mL. First line: nothing to chart yet." in answer.reply
    assert "Was there a line at 07:00?" in answer.reply
    assert answer.chart == []


def test_a_second_line_is_read_back_with_its_subtraction_and_the_shift_sum() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01")
    answer = ward.says("Amy", "bed 7 mark 690 at 1900", at="19:02")
    assert answer.reply == (
        "Bed 7, 19:00, line 690 mL. Chart 60 mL (690 - 630 at 18:00).\n"
        "Day shift 60 mL since 18:00 (no line at 07:00)."
    )
    assert answer.chart == [(60, "18:00", "19:00")]
    assert answer.json["segments"] == 1


def test_a_first_line_at_the_shift_start_asks_for_no_other() -> None:
    answer = Ward().says("Amy", "bed 7 mark 120 at 0705", at="07:06")
    assert "Was there" not in answer.reply


def test_a_shift_with_a_line_at_its_start_is_summed_from_there() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 120 at 0700", at="07:01")
    ward.says("Amy", "bed 7 mark 180 at 0800", at="08:01")
    answer = ward.says("Amy", "bed 7 mark 230 at 0900", at="09:01")
    assert "Day shift 110 mL since 07:00." in answer.reply


def test_only_the_first_message_of_a_person_says_how_to_ask_for_help() -> None:
    ward = Ward()
    first = ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01")
    second = ward.says("Amy", "bed 7 mark 640 at 1830", at="18:31")
    other = ward.says("Ben", "bed 7 mark 650 at 1900", at="19:01")
    assert "help" in first.reply
    assert "help" not in second.reply
    assert "help" in other.reply


def test_without_a_time_the_line_was_read_when_the_message_was_sent() -> None:
    ward = Ward()
    answer = ward.says("Amy", "bed 7 mark 630", at="18:04", sent="18:02")
    assert "Bed 7, 18:02, line 630 mL" in answer.reply
    assert "arrived" not in answer.reply


def test_a_message_that_was_long_on_its_way_says_so() -> None:
    answer = Ward().says("Amy", "bed 7 mark 630", at="18:40", sent="18:02")
    assert "Bed 7, 18:02" in answer.reply
    assert "Sent 18:02, arrived 18:40." in answer.reply


def test_a_repeated_line_is_kept_and_counted_once() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01")
    answer = ward.says("Ben", "bed 7 mark 630 at 1803", at="18:04")
    assert "Already marked at 18:00; counted once." in answer.reply
    assert ward.levels("7") == [630]
    assert sum(isinstance(entry.payload, Line) for entry in ward.entries()) == 2


def test_a_late_line_splits_the_interval_and_lists_what_to_amend() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 1500", at="15:01")
    ward.says("Amy", "bed 7 mark 310 at 1900", at="19:01")
    answer = ward.says("Ben", "bed 7 mark 250 at 1700", at="19:10")
    assert "Bed 7, 17:00 (entered 19:10), line 250 mL. 150 mL" in answer.reply
    assert "Amend: 15:00-17:00 150 mL and 17:00-19:00 60 mL instead of 15:00-19:00 210 mL." in answer.reply
    amended = [row for row in answer.json["chart"] if row["replaces"]]
    assert sum(row["volume_ml"] for row in amended) == 210


def test_a_list_in_any_order_is_read_back_with_its_final_volumes() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 1500", at="15:01")
    answer = ward.says("Amy", "bed 7 mark 300 at 1700; bed 7 mark 180 at 1600", at="17:05")
    assert "17:00, line 300 mL. Chart 120 mL (300 - 180 at 16:00)" in answer.reply
    assert "16:00 (entered 17:05), line 180 mL. Chart 80 mL (180 - 100 at 15:00)" in answer.reply
    assert answer.chart == [(80, "15:00", "16:00"), (120, "16:00", "17:00")]
    assert answer.reply.count("Day shift") == 1


@pytest.mark.parametrize(("volume", "line"), [(60, 160), (250, 350)])
def test_an_amount_is_asked_as_the_line_that_it_makes(volume: int, line: int) -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 1500", at="15:01")
    asked = ward.says("Amy", f"bed 7 drained {volume}", at="16:00")
    assert asked.status == "question"
    assert f"that makes the line {line} mL" in asked.reply
    answer = ward.says("Amy", "yes", at="16:01")
    assert answer.chart == [(volume, "15:00", "16:00")]


def test_an_amount_that_the_canister_does_not_read_gives_way_to_the_line_that_it_does() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 1500", at="15:01")
    ward.says("Amy", "bed 7 drained 60", at="16:00")
    answer = ward.says("Amy", "170", at="16:01")
    assert answer.chart == [(70, "15:00", "16:00")]


def test_nothing_drained_soon_after_a_line_is_recorded_without_asking() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 1500", at="15:01")
    answer = ward.says("Amy", "bed 7 drained 0", at="16:00")
    assert answer.status == "recorded"
    assert answer.chart == [(0, "15:00", "16:00")]


def test_nothing_drained_long_after_a_line_is_asked() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:01")
    assert ward.says("Amy", "bed 7 drained 0", at="16:00").status == "question"


def test_an_amount_without_a_line_to_add_it_to_asks_what_the_canister_reads() -> None:
    ward = Ward()
    asked = ward.says("Amy", "bed 7 drained 60", at="16:00")
    assert "there is no line to add it to" in asked.reply
    ward.says("Amy", "410", at="16:01")
    assert ward.levels("7") == [410]


def test_an_amount_without_a_line_still_warns_of_what_came_out() -> None:
    ward = Ward()
    asked = ward.says("Amy", "new chest tube bed 7 at 1410, 1600 out immediately", at="14:20")
    assert "URGENT if right" in asked.reply
    assert all(each["if_right"] for each in asked.json["cautions"] if each["severity"] == "high")


def test_between_closing_lines_a_unit_that_charts_by_shift_is_told_not_to_chart() -> None:
    ward = Ward(policy=replace(Ward().unit.policy, chart_by="shift"))
    ward.says("Amy", "bed 7 mark 100 at 0700", at="07:01")
    between = ward.says("Amy", "bed 7 mark 160 at 0900", at="09:01")
    closing = ward.says("Amy", "bed 7 mark 300 at 1855", at="18:56")
    assert "60 mL (160 - 100 at 07:00), not to be charted." in between.reply
    assert [row["to_chart"] for row in between.json["chart"]] == [False]
    assert "Chart 200 mL (300 - 100 at 07:00)." in closing.reply
    assert closing.chart == [(200, "07:00", "18:55")]


def test_every_reply_is_in_the_alphabet_of_a_text_message() -> None:
    ward = Ward()
    replies = [
        ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01").reply,
        ward.says("Amy", "bed 7 mark 600 at 1830", at="18:31").reply,
        ward.says("Amy", "yes", at="18:32").reply,
    ]
    assert all(map(is_gsm, replies))


def test_the_speech_says_the_numbers_in_words() -> None:
    answer = Ward().says("Amy", "bed 7 mark 1050 at 1900", at="19:01")
    assert "one thousand fifty milliliters" in answer.json["speech"]


def test_yes_to_the_invitation_of_an_earlier_line_says_how_to_send_it() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01")
    answer = ward.says("Amy", "yes", at="18:02")
    assert "Send that line with its bed and time" in answer.reply
    assert answer.entries == []


def test_no_to_the_invitation_changes_nothing() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01")
    assert "before your first line" in ward.says("Amy", "no", at="18:02").reply
    assert ward.levels("7") == [630]


def test_no_change_told_in_the_minute_of_the_first_line_repeats_that_line() -> None:
    ward = Ward()
    ward.says("Amy", "bed 6 mark 250", at="03:00")
    answer = ward.says("Amy", "bed 6 same", at="03:00")
    assert "Already marked at 03:00; counted once." in answer.reply
    assert ward.unsettled() == ()
