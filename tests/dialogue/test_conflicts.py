"""Two different levels for one minute: what a no means."""

from __future__ import annotations

from tests.dialogue.ward import Ward


def test_a_no_to_two_levels_at_one_minute_leaves_the_first_and_says_so() -> None:
    ward = Ward()
    ward.says("Amy", "bed 16 mark 240 at 1000", at="10:00")
    asked = ward.says("Amy", "bed 16 mark 470 at 1000", at="10:05")
    assert asked.status == "question"
    answer = ward.says("Amy", "no", at="10:06")
    assert (answer.status, answer.entries) == ("told", [])
    assert "The first line stays. Nothing was changed." in answer.reply
    assert "Not recorded yet" not in ward.says("Amy", "bed 16 mark 250 at 1030", at="10:30").reply
