"""What is asked before it is recorded, and every answer to it, through the real intake."""

from __future__ import annotations

import pytest

from bot.engine.entries import Exchanged, Line
from tests.dialogue.ward import Heard, Ward


def fallen(ward: Ward) -> Heard:
    """A line of 1,180 at 18:00, and one of 1,130 at 19:00 that is asked about."""
    ward.says("Amy", "bed 7 mark 1180 at 1800", at="18:01")
    return ward.says("Amy", "bed 7 mark 1130 at 1900", at="19:01")


def test_a_fall_is_asked_and_not_recorded() -> None:
    ward = Ward()
    asked = fallen(ward)
    assert asked.status == "question"
    assert "Bed 7, 19:00: 1,130 mL is below 1,180 mL at 18:00." in asked.reply
    assert asked.says == ["misread", "new canister", "earlier wrong", "yes"]
    assert ward.levels("7") == [1180]


def test_misread_asks_for_the_level_and_takes_a_bare_number() -> None:
    ward = Ward()
    fallen(ward)
    asked = ward.says("Amy", "misread", at="19:02")
    assert "Bed 7, 19:00: what does the line read?" in asked.reply
    answer = ward.says("Amy", "1230", at="19:03")
    assert "Bed 7, 19:00, line 1,230 mL. Chart 50 mL" in answer.reply


def test_misread_with_a_level_is_recorded_at_once() -> None:
    ward = Ward()
    fallen(ward)
    answer = ward.says("Amy", "misread, 1230", at="19:02")
    assert answer.chart == [(50, "18:00", "19:00")]


def test_a_level_that_is_still_below_is_asked_again() -> None:
    ward = Ward()
    fallen(ward)
    assert ward.says("Amy", "misread, 1100", at="19:02").status == "question"
    assert ward.levels("7") == [1180]


def test_a_new_canister_is_recorded_with_the_line_and_its_final_level_is_asked_first() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 1180 at 1800", at="18:01")
    ward.says("Amy", "bed 7 mark 30 at 1900", at="19:01")
    answer = ward.says("Amy", "new canister", at="19:02")
    assert answer.reply.startswith("Final level of the old canister? Read it before disposal.")
    assert "Chart at least 30 mL" in answer.reply
    later = ward.says("Amy", "1200", at="19:04")
    assert "final level 1,200 mL. 20 mL (1,200 - 1,180 at 18:00), see Amend" in later.reply
    assert ward.ledger("7").levels[-1].total_ml == 50


def test_a_new_canister_with_the_old_ones_level_needs_no_second_question() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 1180 at 1800", at="18:01")
    ward.says("Amy", "bed 7 mark 30 at 1900", at="19:01")
    answer = ward.says("Amy", "new canister, old one 1200", at="19:02")
    assert answer.status == "recorded"
    assert ward.ledger("7").levels[-1].total_ml == 50


def test_a_final_level_that_was_not_read_stays_at_least() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 1180 at 1800", at="18:01")
    ward.says("Amy", "bed 7 mark 30 at 1900", at="19:01")
    ward.says("Amy", "new canister", at="19:02")
    answer = ward.says("Amy", "no", at="19:03")
    assert "at least" in answer.reply
    assert ward.unsettled() == ()


def test_the_earlier_line_can_be_put_right_with_the_answer() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 400 at 1700", at="17:01")
    ward.says("Amy", "bed 7 mark 480 at 1800", at="18:01")
    ward.says("Amy", "bed 7 mark 450 at 1900", at="19:01")
    answer = ward.says("Amy", "earlier wrong, 430", at="19:02")
    assert ward.levels("7") == [400, 430, 450]
    assert "was 480 mL" in answer.reply
    assert "Amend: 17:00-18:00 80 to 30 mL." in answer.reply


def test_the_earlier_line_is_asked_for_when_the_answer_does_not_say_it() -> None:
    ward = Ward()
    ward.says("Ben", "bed 7 mark 480 at 1800", at="18:01")
    ward.says("Amy", "bed 7 mark 450 at 1900", at="19:01")
    asked = ward.says("Amy", "earlier wrong", at="19:02")
    assert "what was the line at 18:00, not 480 mL?" in asked.reply
    answer = ward.says("Amy", "430", at="19:03")
    assert ward.levels("7") == [430, 450]
    assert "Ben is told." in answer.reply
    assert ("corrected", False) in ward.notices()


def test_an_earlier_line_that_nobody_knows_is_withdrawn() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 400 at 1700", at="17:01")
    ward.says("Amy", "bed 7 mark 480 at 1800", at="18:01")
    ward.says("Amy", "bed 7 mark 450 at 1900", at="19:01")
    ward.says("Amy", "earlier wrong", at="19:02")
    ward.says("Amy", "no", at="19:03")
    assert ward.levels("7") == [400, 450]


def test_a_fall_that_is_right_is_kept_as_a_new_baseline() -> None:
    ward = Ward()
    fallen(ward)
    answer = ward.says("Amy", "yes", at="19:02")
    assert "Kept as a new baseline" in answer.reply
    assert answer.chart == []
    assert ward.ledger("7").levels[-1].baseline
    line = ward.entries()[-1].payload
    assert isinstance(line, Line)
    assert "line_fell" in line.accepted


def test_no_means_that_it_was_misread() -> None:
    ward = Ward()
    fallen(ward)
    assert "what does the line read?" in ward.says("Amy", "no", at="19:02").reply


def test_another_bed_in_the_answer_takes_the_line_there() -> None:
    ward = Ward()
    fallen(ward)
    answer = ward.says("Amy", "no, bed 9", at="19:02")
    assert "Bed 9, 19:00, line 1,130 mL." in answer.reply
    assert ward.levels("7") == [1180]
    assert ward.levels("9") == [1130]


def test_a_yes_for_a_bed_that_was_not_asked_about_takes_nothing_there() -> None:
    ward = Ward()
    fallen(ward)
    answer = ward.says("Amy", "9 yes", at="19:02")
    assert answer.status == "told"
    assert ward.ledgers("9") == []
    assert ward.levels("7") == [1180]


def test_an_answer_that_answers_nothing_is_asked_again() -> None:
    ward = Ward()
    asked = fallen(ward)
    again = ward.says("Amy", "first", at="19:02")
    assert again.status == "question"
    assert again.reply == asked.reply


@pytest.mark.parametrize(
    ("answer", "levels"), [("first", [100]), ("second", [110]), ("100", [100]), ("110", [110])]
)
def test_two_levels_at_one_minute_are_asked(answer: str, levels: list[int]) -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:01")
    asked = ward.says("Ben", "bed 7 mark 110 at 0800", at="08:02")
    assert "First (100) or second (110)?" in asked.reply
    ward.says("Ben", answer, at="08:03")
    assert ward.levels("7") == levels


def test_over_the_capacity_is_asked() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 1900 at 0800", at="08:01")
    asked = ward.says("Amy", "bed 7 mark 2100 at 0900", at="09:01")
    assert "2,100 mL is over the canister's 2,000 mL" in asked.reply
    ward.says("Amy", "yes", at="09:02")
    assert ward.levels("7") == [1900, 2100]


def test_a_large_step_is_asked_and_carries_its_danger() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 720 at 1800", at="18:01")
    asked = ward.says("Amy", "bed 7 mark 1340 at 1900", at="19:01")
    assert asked.reply.startswith("URGENT if right: 620 mL in 60 min, over 500 mL")
    assert "Assess the patient now." in asked.reply
    assert "Is 1,340 right?" in asked.reply
    assert any(caution["if_right"] for caution in asked.json["cautions"])
    assert ("amount_at_once", True) in ward.notices()
    assert ward.levels("7") == [720]
    answer = ward.says("Amy", "yes", at="19:02")
    assert "URGENT: 620 mL in 60 min" in answer.reply
    assert ("amount_at_once", False) in ward.notices()


def test_an_unknown_bed_is_asked_and_a_bare_number_names_it() -> None:
    ward = Ward()
    asked = ward.says("Amy", "bed 31 mark 100 at 0800", at="08:01")
    assert "There is no bed 31" in asked.reply
    assert asked.status == "question"
    answer = ward.says("Amy", "13", at="08:02")
    assert "Bed 13, 08:00, line 100 mL" in answer.reply


def test_the_time_that_was_meant_is_kept_until_the_answer() -> None:
    ward = Ward()
    ward.says("Amy", "bed 31 mark 100", at="08:01")
    assert "Bed 13, 08:01" in ward.says("Amy", "13", at="08:12").reply


def test_a_line_long_after_the_last_asks_for_the_patient() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 0100", at="01:01")
    asked = ward.says("Amy", "bed 7 mark 160 at 1600", at="16:01")
    assert "15 h before. Same patient and drain?" in asked.reply
    assert ward.says("Amy", "yes", at="16:02").chart == [(60, "01:00", "16:00")]


def test_a_new_patient_after_a_long_silence_is_a_new_ledger() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 0100", at="01:01")
    ward.says("Amy", "bed 7 mark 160 at 1600", at="16:01")
    answer = ward.says("Amy", "no", at="16:02")
    assert answer.chart == []
    assert [ledger.is_open() for ledger in ward.ledgers("7")] == [True, False]


def test_an_exchange_is_recorded_and_its_final_level_asked() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 1820 at 0300", at="03:01")
    answer = ward.says("Amy", "changed the canister bed 7 at 0330", at="03:31")
    assert answer.reply.startswith("Final level of the old canister?")
    assert any(isinstance(entry.payload, Exchanged) for entry in ward.entries())
    assert "Chart 40 mL (1,860 - 1,820 at 03:00)" in ward.says("Amy", "1860", at="03:32").reply
    new = ward.says("Amy", "bed 7 mark 60 at 0400", at="04:01")
    assert new.chart == [(60, "03:30", "04:00")]


def test_one_exchange_told_by_two_nurses_is_asked() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 1820 at 0300", at="03:01")
    ward.says("Amy", "changed the canister bed 7 at 0330, old one 1860", at="03:31")
    asked = ward.says("Ben", "changed the canister bed 7 at 0335, old one 1860", at="03:36")
    assert "recorded already (Amy)" in asked.reply
    ward.says("Ben", "no", at="03:37")
    assert len(ward.ledger("7").canisters) == 2


def test_a_removal_asks_for_the_final_level() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 300 at 1000", at="10:01")
    answer = ward.says("Amy", "tube out bed 7", at="10:15")
    assert "final level of the canister?" in answer.reply
    assert not ward.ledger("7").is_open()
    assert ward.says("Amy", "340", at="10:16").chart == [(40, "10:00", "10:15")]


def test_a_line_after_a_removal_is_asked() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 300 at 1000", at="10:01")
    ward.says("Amy", "tube out bed 7, final 340", at="10:15")
    asked = ward.says("Ben", "bed 7 mark 20 at 1200", at="12:01")
    assert "the drain here was removed at 10:15. Is this a new drain?" in asked.reply
    answer = ward.says("Ben", "yes", at="12:02")
    assert "First line" in answer.reply
    assert len(ward.ledgers("7")) == 2


@pytest.mark.parametrize(
    "answer", ["new one", "new canister", "the canister was changed", "it's a new canister"]
)
def test_a_new_canister_in_the_words_of_the_ward(answer: str) -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 1180 at 1800", at="18:01")
    ward.says("Amy", "bed 7 mark 30 at 1900", at="19:01")
    assert ward.says("Amy", answer, at="19:02").reply.startswith("Final level of the old canister?")
    assert len(ward.ledger("7").canisters) == 2


@pytest.mark.parametrize("answer", ["the earlier one was wrong, it was 430", "earlier wrong, 430"])
def test_an_earlier_line_in_the_words_of_the_ward(answer: str) -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 480 at 1800", at="18:01")
    ward.says("Amy", "bed 7 mark 450 at 1900", at="19:01")
    ward.says("Amy", answer, at="19:02")
    assert ward.levels("7") == [430, 450]


@pytest.mark.parametrize("answer", ["no I meant bed 9", "no, bed 9"])
def test_the_bed_that_was_meant_in_the_words_of_the_ward(answer: str) -> None:
    ward = Ward()
    fallen(ward)
    ward.says("Amy", answer, at="19:02")
    assert ward.levels("7") == [1180]
    assert ward.levels("9") == [1130]


@pytest.mark.parametrize(
    ("answer", "drains"), [("yes, same patient", 1), ("same patient", 1), ("new patient", 2)]
)
def test_the_patient_in_the_words_of_the_ward(answer: str, drains: int) -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 0100", at="01:01")
    ward.says("Amy", "bed 7 mark 160 at 1600", at="16:01")
    ward.says("Amy", answer, at="16:02")
    assert len(ward.ledgers("7")) == drains
    assert ward.unsettled() == ()
