"""A question that nobody answered: what can be said to it, and how a reading of no bed is dropped."""

from __future__ import annotations

from typing import Literal

import pytest

from tests.dialogue.ward import Ward


def two_levels() -> Ward:
    """Two levels at one minute, whose question has lapsed."""
    ward = Ward()
    ward.says("Amy", "bed 12 mark 305 at 1900", at="19:00")
    ward.says("Ben", "bed 12 mark 350 at 1900", at="19:02")
    ward.says("Amy", "bed 12 seal 2", at="19:20")
    return ward


@pytest.mark.parametrize("words", ["first", "last 12", "open questions"])
def test_an_unconfirmed_reading_says_what_each_of_its_answers_means(words: str) -> None:
    told = two_levels().says("Ben", words, at="19:21").reply
    assert 'Say "12 first": 305 mL stays, "12 second": 350 mL is right; or tell what is right.' in told


def test_the_first_of_two_levels_is_read_back_when_it_stays() -> None:
    assert two_levels().says("Ben", "12 first").reply == "The first line stays: 305 mL at 19:00 (Amy)."


def test_the_second_of_two_levels_is_read_back_as_what_it_takes_the_place_of() -> None:
    assert "line 350 mL (was 305 mL, Amy)" in two_levels().says("Ben", "12 second").reply


def test_a_lapsed_yes_that_means_more_than_right_says_what() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 305 at 0100", at="01:00")
    ward.says("Amy", "bed 12 mark 350 at 1900", at="19:00")
    told = ward.says("Ben", "last 12", at="19:20").reply
    assert 'Say "12 yes": the same drain, "12 no": a new patient or drain;' in told


def test_a_reading_that_is_not_right_is_named_when_it_is_dropped() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 305 at 1900", at="19:00", channel="voice")
    assert "Not recorded: bed 12 305 mL at 19:00. Say it again." in ward.says("Amy", "no").reply


def test_a_reading_whose_bed_was_never_said_is_shown_to_its_sender_until_it_is_told_again() -> None:
    ward = Ward()
    ward.says("Amy", "mark 500", at="08:00")
    later = ward.says("Amy", "bed 3 mark 100", at="08:20").reply
    assert "Unconfirmed: 500 mL (asked 08:00, Amy), not counted. Its bed was not said" in later
    assert "500" not in ward.says("Ben", "bed 3?", at="08:21").reply
    assert "No longer asked: 500 mL (08:00)." in ward.says("Amy", "bed 4 mark 500", at="08:22").reply
    assert ward.unsettled() == ()


def no_bed(ward: Ward) -> str:
    """Two readings of no bed that lapsed, and the reply that shows them."""
    ward.says("Amy", "mark 50", at="19:05")
    ward.says("Amy", "drained 40", at="19:06")
    return ward.says("Amy", "last 12", at="19:30").reply


def test_a_no_drops_the_readings_whose_bed_was_never_said_and_names_them() -> None:
    ward = Ward()
    shown = no_bed(ward)
    assert shown.count("Its bed was not said: send it again with the bed.") == 1
    assert shown.endswith('Or say "no" to drop that.')
    assert ward.says("Amy", "no").reply == "Not recorded: 50 mL.\nNot recorded: 40 mL drained."
    assert ward.unsettled() == ()
    assert "No question is open" in ward.says("Amy", "no").reply


def test_a_no_that_drops_a_reading_of_no_bed_names_what_waited_for_it_too() -> None:
    ward = Ward()
    ward.says("Amy", "drained 40. seal 3 no leak", at="19:05", channel="voice")
    ward.says("Amy", "last 12", at="19:30")
    assert ward.says("Amy", "no").reply == 'Not recorded: 40 mL drained; "drained 40. seal 3 no leak".'


@pytest.mark.parametrize(("who", "channel"), [("Ben", "text"), ("Amy", "voice")])
def test_nobody_elses_no_drops_them_and_none_that_would_take_a_message_back(
    who: str, channel: Literal["text", "voice"]
) -> None:
    ward = Ward()
    no_bed(ward)
    assert "to drop that" not in ward.says(who, "last 12", at="19:31", channel=channel).reply
    ward.says(who, "no", at="19:32", channel=channel)
    assert len(ward.unsettled()) == 2


def test_a_no_to_an_open_question_drops_nothing_else() -> None:
    ward = Ward()
    no_bed(ward)
    asked = ward.says("Amy", "bed 12 output 210", at="19:31")
    assert "to drop that" not in asked.reply
    ward.says("Amy", "no", at="19:32")
    assert len(ward.unsettled()) == 2


def test_a_line_that_was_asked_for_and_never_told_leaves_nothing_unconfirmed() -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 mark 340 at 1800", at="18:01")
    ward.says("Amy", "bed 8 mark", at="19:00")
    assert ward.says("Amy", "bed 9 mark 10", at="19:05").reply.endswith("Not recorded yet: bed 8 line.")
    assert "Unconfirmed" not in ward.says("Amy", "bed 8?", at="19:30").reply
    assert "no open questions and no unconfirmed readings" in ward.says("Carla", "open", at="19:31").reply


def test_a_number_that_may_be_a_time_is_kept_unconfirmed() -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 at 1900", at="19:02")
    assert "Unconfirmed: bed 8 line" in ward.says("Amy", "bed 8?", at="19:30").reply
