"""Corrections that name no line: the only line of the last message, or the question which it was."""

from __future__ import annotations

import pytest

from tests.dialogue.ward import Ward


@pytest.mark.parametrize(
    "text", ["*1090", "sorry 1090", "oops 1090", "my bad 1090", "sorry 12 was 1090", "correction 1090"]
)
def test_the_only_line_of_the_last_message_is_put_right(text: str) -> None:
    ward = Ward()
    ward.says("Amy", "12 1050 at 1900", at="19:05")
    ward.says("Amy", "12 1100 2000 no leak swinging", at="20:03")
    answer = ward.says("Amy", text, at="20:04")
    assert "Bed 12, 20:00, line 1,090 mL (was 1,100 mL, Amy)." in answer.reply
    assert ward.levels("12") == [1050, 1090]


@pytest.mark.parametrize("text", ["*1090", "sorry 1090", "correction 1090"])
def test_of_several_lines_it_is_asked_which(text: str) -> None:
    ward = Ward()
    ward.says("Amy", "12 1100 2000, 9 300 2000", at="20:03")
    asked = ward.says("Amy", text, at="20:04")
    assert "Correction to 1,090 mL: which bed?" in asked.reply
    assert ward.levels("9") == [300]
    assert "Bed 12, 20:00, line 1,090 mL (was 1,100 mL, Amy)." in ward.says("Amy", "12", at="20:05").reply


def test_of_several_times_of_one_bed_it_is_asked_which() -> None:
    ward = Ward()
    ward.says("Amy", "9: 1800 210, 1900 250, 2000 300", at="20:03")
    asked = ward.says("Amy", "correct bed 9 to 260", at="20:04")
    assert "which line, 18:00 210 mL, 19:00 250 mL or 20:00 300 mL? Say its time." in asked.reply
    assert ward.says("Amy", "1900", at="20:05").status == "recorded"
    assert ward.levels("9") == [210, 260, 300]


def test_one_told_since_is_the_last_line_of_its_bed() -> None:
    ward = Ward()
    ward.says("Amy", "9: 1800 210, 1900 250", at="19:03")
    ward.says("Amy", "9 300 at 2000", at="20:01")
    assert "(was 300 mL, Amy)" in ward.says("Amy", "correct bed 9 to 310", at="20:04").reply


@pytest.mark.parametrize("before", ["9 200 at 2000", "12 left no leak"])
def test_of_two_tubes_it_is_asked_which(before: str) -> None:
    ward = Ward()
    ward.says("Amy", "12 L 340 R 120 at 2000", at="20:03")
    ward.says("Amy", before, at="20:04")
    asked = ward.says("Amy", "correct bed 12 to 350", at="20:05")
    assert asked.status == "question"
    assert "Say its tube." in asked.reply
    assert "Bed 12 left, 20:00, line 350 mL (was 340 mL, Amy)." in ward.says("Amy", "left", at="20:06").reply


def test_a_sorry_about_another_bed_comes_with_a_line_of_its_own() -> None:
    ward = Ward()
    ward.says("Amy", "12 1100 at 1900", at="19:03")
    ward.says("Amy", "9 500 at 1900", at="19:04")
    ward.says("Amy", "sorry 12 was 1190", at="20:05")
    assert ward.levels("12") == [1100, 1190]


def test_a_number_with_a_sorry_answers_what_is_asked() -> None:
    ward = Ward()
    ward.says("Amy", "12 1100 at 1900", at="19:03")
    ward.says("Amy", "12 300 at 2000", at="20:03")
    assert "line 1,130 mL. Chart 30 mL" in ward.says("Amy", "sorry 1130", at="20:04").reply


def test_a_number_that_may_be_a_bed_or_a_line_is_asked() -> None:
    ward = Ward()
    ward.says("Amy", "12 1100 2000", at="20:03")
    asked = ward.says("Amy", "oops meant 9", at="20:04")
    assert "First: correction to bed 9. Second: correction to 9 mL." in asked.reply
    assert ward.says("Amy", "first", at="20:05").status == "recorded"
    assert ward.levels("9") == [1100]
