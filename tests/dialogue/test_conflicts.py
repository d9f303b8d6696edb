"""Two different levels for one minute: what a no means."""

from __future__ import annotations

import pytest

from tests.dialogue.ward import Ward


def test_a_no_to_two_levels_at_one_minute_leaves_the_first_and_says_so() -> None:
    ward = Ward()
    ward.says("Amy", "bed 16 mark 240 at 1000", at="10:00")
    asked = ward.says("Amy", "bed 16 mark 470 at 1000", at="10:05")
    assert asked.status == "question"
    answer = ward.says("Amy", "no", at="10:06")
    assert (answer.status, answer.entries) == ("told", [])
    assert "The first line stays: 240 mL at 10:00 (Amy). Nothing was changed." in answer.reply
    assert "Not recorded yet" not in ward.says("Amy", "bed 16 mark 250 at 1030", at="10:30").reply


def told_twice(second: str) -> Ward:
    """Bed 1 at 100 mL at 06:03, told again by somebody."""
    ward = Ward()
    ward.says("Amy", "bed 1 mark 90 at 0530", at="05:30")
    ward.says("Amy", "bed 1 mark 100 at 0603", at="06:04")
    ward.says(second, "bed 1 mark 100 at 0603", at="06:05")
    return ward


def test_a_line_that_its_nurse_told_twice_is_put_right_as_one() -> None:
    ward = told_twice("Amy")
    answer = ward.says("Amy", "correct bed 1 0603 to 110", at="06:06")
    assert answer.status == "recorded"
    assert "line 110 mL (was 100 mL, Amy). 20 mL (110 - 90 at 05:30), see Amend." in answer.reply
    assert ward.levels("1") == [90, 110]


def test_a_line_that_another_nurse_has_borne_out_is_asked_about() -> None:
    asked = told_twice("Ben").says("Amy", "correct bed 1 0603 to 110", at="06:06")
    assert "100 mL is marked already (Ben), now 110 mL" in asked.reply


@pytest.mark.parametrize("second", ["Amy", "Ben"])
def test_a_line_that_was_told_twice_is_taken_back_as_one(second: str) -> None:
    ward = told_twice(second)
    ward.says("Amy", "delete bed 1 0603", at="06:06")
    assert ward.levels("1") == [90]
