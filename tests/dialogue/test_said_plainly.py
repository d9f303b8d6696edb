"""What changes a line that somebody else told, or goes to a patient who has left, is said."""

from __future__ import annotations

import pytest

from bot.dialogue.said import Report
from bot.engine.entries import Left, Placed
from tests.dialogue.ward import Ward


def test_taking_back_an_exchange_says_which_line_is_below_the_one_before_it_now() -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 mark 1800 at 0300", at="03:00")
    ward.says("Amy", "changed the canister bed 8 at 0330, old one 1860", at="03:31")
    ward.says("Ben", "bed 8 mark 60 at 0400", at="04:00")
    reply = ward.says("Amy", "scratch that", at="04:00").reply
    assert "Bed 8, 04:00: line 60 mL (Ben) is now below 1,800 mL at 03:00" in reply


def test_taking_back_what_lets_no_line_fall_says_nothing_of_a_fall() -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 mark 100 at 0300", at="03:00")
    ward.says("Amy", "bed 8 mark 200 at 0330", at="03:31")
    ward.says("Ben", "bed 8 mark 260 at 0400", at="04:00")
    assert "below" not in ward.says("Amy", "scratch that", at="04:00").reply


def after_a_transfer() -> Ward:
    """The patient of bed 12 left at 09:00; another one has been there since 10:00."""
    ward = Ward()
    ward.says("Amy", "bed 12 mark 500 at 0800", at="08:00")
    ward.tells("Amy", Report(bed="12", fact=Left()), at="09:00")
    ward.tells("Amy", Report(bed="12", fact=Placed(bed="12", opening_ml=0)), at="10:00")
    return ward


def test_a_late_line_for_the_patient_who_left_says_so() -> None:
    reply = after_a_transfer().says("Amy", "bed 12 mark 520 at 0830", at="11:10").reply
    assert "Chart 20 mL" in reply
    assert "That is the patient who left at 09:00, not what is in bed 12 now." in reply


def test_a_line_for_the_patient_in_the_bed_says_nothing_of_the_one_who_left() -> None:
    assert "who left" not in after_a_transfer().says("Amy", "bed 12 mark 40 at 1100", at="11:10").reply


def test_a_no_with_other_words_is_no_answer_once_something_else_was_said() -> None:
    ward = Ward()
    ward.says("Amy", "mark 640", at="06:54")
    ward.says("Amy", "bed 4 tube came out", at="06:55")
    told = ward.says("Amy", "no the dressing came off, tube ok", at="06:56").reply
    assert 'Not understood, not recorded: "no the dressing came off, tube ok".' in told
    assert "Not recorded yet: 640 mL." in told
    assert ward.says("Amy", "no", at="06:57").reply.startswith("Not recorded: 640 mL.")


@pytest.mark.parametrize("words", ["yes but the tube came out", "yes, canister tipped over"])
def test_an_event_behind_a_yes_is_asked_about_and_not_lost(words: str) -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 100 at 0600", at="06:00")
    ward.says("Amy", "bed 12 mark 900 at 0700", at="07:00")
    told = ward.says("Amy", words, at="07:01").reply
    assert "which bed?" in told
    assert "Not recorded yet: bed 12 900 mL at 07:00." in told


def test_a_yes_with_words_that_were_not_read_is_one_right_after_the_question() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 100 at 0600", at="06:00")
    ward.says("Amy", "bed 12 mark 900 at 0700", at="07:00")
    ward.says("Amy", "yes just read it again", at="07:01")
    assert ward.levels("12") == [100, 900]


def test_figures_that_nobody_knows_are_told_as_not_read() -> None:
    ward = Ward()
    reply = ward.says("Amy", "bed 4 mark 340 at 0850. hcg 12", at="09:00").reply
    assert "line 340 mL" in reply
    assert 'Not read: "hcg 12".' in reply


def test_known_figures_of_other_things_are_not_told_again() -> None:
    ward = Ward()
    assert "Not read" not in ward.says("Amy", "bed 4 mark 340 at 0850, sats 96 on 2 L", at="09:00").reply
