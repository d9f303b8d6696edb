"""What is said in the words of an answer where nothing was asked."""

from __future__ import annotations

import pytest

from tests.dialogue.ward import Ward


@pytest.mark.parametrize("text", ["yeah bed 7 300", "yes, bed 7 mark 300 at 1900"])
def test_a_yes_with_a_whole_line_is_a_line_where_nothing_was_asked(text: str) -> None:
    ward = Ward()
    assert "line 300 mL." in ward.says("Amy", text, at="19:02").reply
    assert ward.levels("7") == [300]


def test_a_yes_with_a_whole_line_is_an_answer_where_its_bed_was_asked_about() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 900 at 1800", at="18:01")
    assert ward.says("Amy", "bed 7 mark 300 at 1900", at="19:01").status == "question"
    assert ward.says("Amy", "yes bed 7 300", at="19:02").status == "recorded"
    assert ward.levels("7") == [900, 300]
