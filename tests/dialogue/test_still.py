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
