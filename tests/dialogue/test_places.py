"""Beds are not patients: tubes, placements, moves, swaps, and late lines for a bed that changed hands."""

from __future__ import annotations

import pytest

from bot.dialogue.said import Report
from bot.engine.entries import Moved
from tests.dialogue.ward import Ward


def two_tubes() -> Ward:
    """Bed 12 with a left and a right drain since 08:00."""
    ward = Ward()
    ward.says("Amy", "new chest tube bed 12 left at 0800", at="08:01")
    ward.says("Amy", "new chest tube bed 12 right at 0802", at="08:03")
    return ward


def test_a_placement_told_live_starts_at_nothing_and_reminds_of_two_identifiers() -> None:
    answer = Ward().says("Amy", "new chest tube bed 12 right at 0800", at="08:01")
    assert "Bed 12 right, 08:00, tube placed" in answer.reply
    assert "two identifiers" in answer.reply
    assert "two_identifiers" in answer.codes


def test_a_placement_told_late_asks_what_the_canister_reads() -> None:
    ward = Ward()
    asked = ward.says("Amy", "new chest tube bed 12 right at 0800", at="09:00")
    assert "what does the canister read now?" in asked.reply
    answer = ward.says("Amy", "150", at="09:01")
    assert answer.chart == []
    assert ward.levels("12") == [150]
    assert ward.says("Amy", "bed 12 right mark 180 at 1000", at="10:01").chart == [(30, "09:01", "10:00")]


def test_a_line_for_a_bed_with_two_tubes_asks_which() -> None:
    ward = two_tubes()
    asked = ward.says("Amy", "bed 12 mark 40 at 0900", at="09:01")
    assert "which tube" in asked.reply
    assert set(asked.says) == {"left", "right"}
    answer = ward.says("Amy", "left", at="09:02")
    assert "Bed 12 left, 09:00, line 40 mL." in answer.reply


def test_two_tubes_in_one_message_are_two_drains() -> None:
    ward = Ward()
    answer = ward.says("Amy", "bed 12 left mark 340 at 0700; bed 12 right mark 120 at 0700", at="07:01")
    assert answer.status == "recorded"
    assert len(ward.ledgers("12")) == 2


def test_a_tube_that_the_bed_has_not_had_is_asked() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 340 at 0700", at="07:01")
    asked = ward.says("Amy", "bed 12 left mark 350 at 0800", at="08:01")
    assert "First: that drain. Second: another drain." in asked.reply
    ward.says("Amy", "first", at="08:02")
    assert ward.levels("12") == [340, 350]
    assert ward.says("Amy", "bed 12 left mark 360 at 0810", at="08:11").status == "recorded"


def test_a_second_drain_can_be_told_by_an_answer() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 340 at 0700", at="07:01")
    ward.says("Amy", "bed 12 left mark 50 at 0800", at="08:01")
    ward.says("Amy", "second", at="08:02")
    assert [ledger.tube for ledger in ward.ledgers("12")] == ["left", None]


def test_a_placement_on_an_open_drain_is_asked() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 340 at 0700", at="07:01")
    asked = ward.says("Amy", "new chest tube bed 12 at 0800", at="08:01")
    assert "it has an open drain (last line 340 mL at 07:00)" in asked.reply
    placed = ward.says("Amy", "yes", at="08:02")
    assert "The drain before is closed, last line 340 mL at 07:00." in placed.reply
    assert [ledger.is_open() for ledger in ward.ledgers("12")] == [True, False]


def test_a_placement_of_another_tube_is_not_asked() -> None:
    assert [ledger.is_open() for ledger in two_tubes().ledgers("12")] == [True, True]


def test_a_move_takes_the_drain_along_and_late_lines_still_find_it() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 340 at 0700", at="07:01")
    moved = ward.says("Amy", "bed 12 moved to bed 14", at="08:00")
    assert "moved to bed 14" in moved.reply
    assert "two identifiers" in moved.reply
    assert ward.says("Amy", "bed 14 mark 400 at 0900", at="09:01").chart == [(60, "07:00", "09:00")]
    late = ward.says("Ben", "bed 12 mark 360 at 0730", at="09:05")
    assert "Bed 12 (now bed 14), 07:30" in late.reply
    assert ward.levels("14") == [340, 360, 400]


def test_a_line_for_a_bed_whose_patient_moved_away_is_asked() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 340 at 0700", at="07:01")
    ward.says("Amy", "bed 12 moved to bed 14", at="08:00")
    asked = ward.says("Ben", "bed 12 mark 20 at 0900", at="09:01")
    assert "moved to bed 14 at 08:00. Is this a new drain?" in asked.reply


def test_two_patients_who_swap_beds_in_one_message() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 340 at 0700; bed 14 mark 50 at 0700", at="07:01")
    moves = (("12", "14"), ("14", "12"))
    said = (Report(bed=bed, fact=Moved(from_bed=bed, to_bed=to)) for bed, to in moves)
    answer = ward.tells("Amy", *said, at="08:00")
    assert answer.status == "recorded"
    assert ward.says("Amy", "bed 14 mark 400 at 0900", at="09:01").chart == [(60, "07:00", "09:00")]
    assert ward.says("Amy", "bed 12 mark 80 at 0900", at="09:02").chart == [(30, "07:00", "09:00")]


def test_a_move_that_clears_a_bed_says_which_drains_it_closes() -> None:
    ward = two_tubes()
    ward.says("Amy", "bed 12 left 40 right 15 at 0830", at="08:30")
    ward.says("Amy", "bed 14 mark 250 at 0831", at="08:31")
    asked = ward.says("Amy", "bed 14 moved to 12", at="08:40").reply
    assert "open drains (left, last line 40 mL at 08:30; right, last line 15 mL at 08:30)" in asked
    answer = ward.says("Amy", "second", at="08:41")
    assert answer.reply.split("\n")[:3] == [
        "Bed 12 left: the drain before is closed, last line 40 mL at 08:30.",
        "Bed 12 right: the drain before is closed, last line 15 mL at 08:30.",
        "Bed 14, 08:40: the drain moved to bed 12.",
    ]
    assert [result["kind"] for result in answer.json["results"]] == ["left", "moved"]
    assert [ledger.drain for ledger in ward.ledgers("12") if ledger.is_open()] == [ward.ledger("14").drain]


def test_a_move_to_a_bed_with_a_drain_is_asked_and_may_be_a_swap() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 340 at 0700; bed 14 mark 50 at 0700", at="07:01")
    asked = ward.says("Amy", "bed 12 moved to bed 14", at="08:00")
    assert "bed 14 has an open drain" in asked.reply
    ward.says("Amy", "first", at="08:01")
    assert ward.says("Amy", "bed 14 mark 400 at 0900", at="09:01").chart == [(60, "07:00", "09:00")]
    assert ward.says("Amy", "bed 12 mark 80 at 0900", at="09:02").chart == [(30, "07:00", "09:00")]


def test_a_move_to_a_bed_whose_patient_left_closes_that_drain() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 340 at 0700; bed 14 mark 50 at 0700", at="07:01")
    ward.says("Amy", "bed 12 moved to bed 14", at="08:00")
    ward.says("Amy", "second", at="08:01")
    open_levels = [ledger.levels[-1].level_ml for ledger in ward.ledgers("14") if ledger.is_open()]
    assert open_levels == [340]


def test_a_line_before_the_placement_asks_for_its_time() -> None:
    ward = Ward()
    ward.says("Amy", "new chest tube bed 12 at 0800", at="08:01")
    asked = ward.says("Amy", "bed 12 mark 40 at 0700", at="09:01")
    assert "placed at 08:00. What time was it?" in asked.reply
    assert ward.levels("12") == [0]


def moved_in() -> Ward:
    """The patient with the drain of bed 11 went to bed 15 at 06:30."""
    ward = Ward()
    ward.says("Amy", "bed 11 mark 300 at 0600", at="06:01")
    ward.says("Amy", "bed 11 moved to 15", at="06:30")
    return ward


def test_a_line_from_before_the_patient_came_to_the_bed_is_asked_and_opens_no_second_ledger() -> None:
    ward = moved_in()
    asked = ward.says("Ben", "bed 15 mark 310 at 0615", at="06:55")
    assert "was in bed 11 until 06:30. Is it that drain?" in asked.reply
    assert ward.levels("15") == [300]
    answer = ward.says("Ben", "yes", at="06:56")
    assert "Bed 11 (now bed 15), 06:15, line 310 mL. Chart 10 mL" in answer.reply
    assert [each.bed for each in ward.ledgers("15")] == ["15"]


def test_a_line_from_before_the_patient_came_may_be_of_another_time_or_nothing() -> None:
    ward = moved_in()
    ward.says("Ben", "bed 15 mark 310 at 0615", at="06:55")
    assert ward.says("Ben", "0645", at="06:56").chart == [(10, "06:00", "06:45")]
    ward.says("Ben", "bed 15 mark 320 at 0620", at="06:57")
    ward.says("Ben", "no", at="06:58")
    assert ward.levels("15") == [300, 310]


def test_of_several_tubes_that_came_the_right_one_is_asked() -> None:
    ward = Ward()
    ward.says("Amy", "bed 11 left 300 right 100 at 0600", at="06:01")
    ward.says("Amy", "bed 11 moved to 15", at="06:30")
    ward.says("Ben", "bed 15 mark 310 at 0620", at="06:55")
    asked = ward.says("Ben", "yes", at="06:56")
    assert set(asked.says) == {"left", "right"}
    assert ward.says("Ben", "left", at="06:57").chart == [(10, "06:00", "06:20")]


def test_a_danger_before_the_patient_came_is_told_with_the_question() -> None:
    ward = moved_in()
    asked = ward.says("Ben", "bed 15 mark 900 at 0620", at="06:55")
    assert asked.reply.startswith("URGENT if right: 600 mL in 20 min")


@pytest.mark.parametrize("answer", ["bed 15", "15", "no i meant 15", "sorry, bed 15"])
def test_a_line_for_the_bed_that_the_patient_left_can_be_sent_on_by_an_answer(answer: str) -> None:
    ward = moved_in()
    asked = ward.says("Ben", "bed 11 mark 345", at="06:45")
    assert 'say "bed 15"' in asked.reply
    assert ward.says("Ben", answer, at="06:46").chart == [(45, "06:00", "06:45")]


def test_a_line_of_one_of_the_joined_tubes_is_read_back_as_of_both() -> None:
    ward = Ward()
    ward.says("Amy", "new chest tubes bed 12 left and right y-connected, empty", at="06:00")
    answer = ward.says("Amy", "bed 12 left mark 70", at="06:57")
    assert "Bed 12 left and right, 06:57, line 70 mL. Chart 70 mL" in answer.reply
