"""A caution that stands is told again to the same nurse at once when it gets worse, and is quiet when not."""

from __future__ import annotations

import pytest

from tests.dialogue.ward import Ward


def hourly(*levels: int) -> Ward:
    """Bed 12 from 08:00 on, a line an hour by Amy."""
    ward = Ward()
    for hour, level in enumerate(levels, start=8):
        ward.says("Amy", f"bed 12 mark {level} at {hour:02}00", at=f"{hour:02}:00")
    return ward


@pytest.mark.parametrize("drained", [110, 120, 195])
def test_a_rate_as_high_or_higher_in_a_new_hour_is_told_as_still_with_its_number(drained: int) -> None:
    answer = hourly(100, 210).says("Amy", f"bed 12 mark {210 + drained} at 1000", at="10:00")
    still = [line for line in answer.reply.split("\n") if line.startswith("CAUTION still")]
    assert len(still) == 1
    assert f"{drained} mL/h" in still[0]
    assert "rate_high" in answer.codes


def test_a_rate_that_goes_down_and_is_still_over_its_limit_is_not_repeated() -> None:
    answer = hourly(100, 220).says("Amy", "bed 12 mark 325 at 1000", at="10:00")
    assert "CAUTION" not in answer.reply


def test_a_line_that_measures_no_new_hour_does_not_repeat_the_rate() -> None:
    answer = hourly(100, 220).says("Amy", "bed 12 seal 2", at="09:10")
    assert "CAUTION" not in answer.reply


@pytest.mark.parametrize(
    ("first", "then", "told"),
    [
        ("intermittent air leak", "air leak continuous", True),
        ("air leak continuous", "intermittent air leak", False),
        ("intermittent air leak", "intermittent air leak", False),
        ("wall 70", "wall 60", True),
        ("wall 60", "wall 70", False),
    ],
)
def test_a_check_that_finds_it_worse_is_told_at_once(first: str, then: str, told: bool) -> None:
    ward = hourly(100)
    assert "CAUTION" in ward.says("Amy", f"bed 12 {first}", at="08:10").reply
    assert ("CAUTION still" in ward.says("Amy", f"bed 12 {then}", at="08:20").reply) is told


def test_what_only_time_has_brought_is_new_to_the_first_who_hears_of_it() -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 mark 620 at 0300", at="03:01")
    first = ward.says("Amy", "bed 8 seal 2", at="04:20").reply
    assert "CAUTION: line overdue, due at 04:00" in first
    assert "CAUTION still: line overdue, due at 04:00" in ward.says("Ben", "bed 8 no leak", at="04:21").reply


def test_what_was_told_of_an_earlier_overdue_line_does_not_silence_the_next_one() -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 mark 620 at 0300", at="03:01")
    ward.says("Amy", "bed 8 seal 2", at="04:20")
    ward.says("Amy", "bed 8 mark 650", at="04:25")
    assert "CAUTION: line overdue, due at 05:25" in ward.says("Amy", "bed 8 no leak", at="05:45").reply


def test_two_rows_of_one_rule_are_one_sentence_and_two_cautions() -> None:
    ward = Ward()
    ward.says("Amy", "new chest tube bed 5 at 0000 post op heart empty", at="00:01")
    ward.says("Amy", "bed 5 mark 20", at="01:00")
    asked = ward.says("Amy", "bed 5 mark 590", at="01:30")
    assert asked.reply.count("570 mL in 30 min") == 1
    assert {"ladder", "amount_at_once"} <= asked.codes
    answer = ward.says("Amy", "yes", at="01:31")
    assert answer.reply.count("URGENT: 570 mL in 30 min, over 500 mL (Melanson)") == 1
    assert {"ladder", "amount_at_once"} <= answer.codes
    assert ward.says("Ben", "handoff 5", at="01:32").reply.count("URGENT: 570 mL in 30 min") == 1
