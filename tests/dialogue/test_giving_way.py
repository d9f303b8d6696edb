"""Questions that a new statement settles: what it tells again, what is not recorded, what waited for it."""

from __future__ import annotations

from typing import Literal

import pytest

from tests.dialogue.ward import Ward


def test_a_line_told_whole_leaves_nothing_to_ask_of_whether_it_was_one() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 100", at="18:00")
    ward.says("Amy", "bed 12 output 210", at="19:05")
    answer = ward.says("Amy", "bed 12 mark 210", at="19:06")
    assert "No longer asked: bed 12 210 mL (19:05)." in answer.reply
    assert ward.unsettled() == ()


@pytest.mark.parametrize(
    ("dictated", "lost"),
    [
        ("bed 12 output 210 then bed 7 tube out", "bed 7 tube out"),
        ("bed 12 output 210, bed 7 mark 300", "bed 7 mark 300"),
    ],
)
def test_what_waited_for_a_line_that_is_told_whole_is_named_as_not_recorded(dictated: str, lost: str) -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 100", at="18:00")
    ward.says("Amy", "bed 7 mark 100", at="18:00")
    ward.says("Amy", dictated, at="19:05", channel="voice")
    answer = ward.says("Amy", "bed 12 mark 210", at="19:06")
    [named] = [line for line in answer.reply.splitlines() if line.startswith("Not recorded: ")]
    assert lost in named
    assert ward.levels("7") == [100]


@pytest.mark.parametrize(
    ("words", "channel", "levels"),
    [
        ("bed 7 mark 50 at 1901, bed 7 mark 60 at 1903", "text", {"7": [100, 120, 50, 60], "12": [100]}),
        ("bed 7 mark 50, bed 12 mark 160", "voice", {"7": [100, 120, 50], "12": [100, 160]}),
    ],
)
def test_what_waited_for_a_fall_is_recorded_once_the_change_of_canister_is_told_whole(
    words: str, channel: Literal["text", "voice"], levels: dict[str, list[int]]
) -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100", at="18:00")
    ward.says("Amy", "bed 12 mark 100", at="18:00")
    ward.says("Amy", words, at="19:05", channel=channel)
    if channel == "voice":
        ward.says("Amy", "yes", at="19:05", channel=channel)
    answer = ward.says("Amy", "bed 7 new canister at 1830 final 120", at="19:06")
    assert answer.status == "recorded"
    assert ward.unsettled() == ()
    assert {bed: ward.levels(bed) for bed in levels} == levels


def test_what_is_told_with_the_change_of_canister_waits_for_what_waited_for_the_fall() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100", at="18:00")
    ward.says("Amy", "bed 7 mark 50 at 1901, bed 7 mark 40 at 1903", at="19:05")
    answer = ward.says("Amy", "bed 7 new canister at 1830 final 120, bed 7 mark 70 at 1906", at="19:06")
    assert "Waits for that answer: bed 7 70 mL at 19:06." in answer.reply
    ward.says("Amy", "misread, 55", at="19:07")
    assert ward.levels("7") == [100, 120, 50, 55, 70]


def test_what_waited_for_a_fall_is_recorded_once_its_right_level_is_told_as_a_correction() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100", at="18:00")
    ward.says("Amy", "bed 7 mark 50 at 1901, bed 7 mark 160 at 1903", at="19:05")
    answer = ward.says("Amy", "correct bed 7 1901 to 150", at="19:06")
    assert "Bed 7, 19:03, line 160 mL. Chart 10 mL (160 - 150 at 19:01)." in answer.reply
    assert ward.levels("7") == [100, 150, 160]


def test_a_correction_of_another_line_says_that_what_may_be_a_line_is_not_recorded() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 1000", at="18:00")
    ward.says("Amy", "bed 12 mark 1050 on the old canister", at="19:00")
    answer = ward.says("Amy", "correct bed 12 1800 to 990", at="19:02")
    assert answer.reply.endswith("Replaced, not recorded: bed 12 1,050 mL.")


@pytest.mark.parametrize("text", ["bed 8 mark", "8 mark 400 at 2530"])
def test_what_is_told_again_in_the_same_words_is_asked_once(text: str) -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 340 at 1800", at="18:05")
    ward.says("Amy", text, at="19:01")
    again = ward.says("Amy", text, at="19:02")
    assert again.status == "question"
    assert "\n" not in again.reply
    assert "1 open question," in ward.says("Carla", "open", at="19:03").reply


def test_another_level_of_that_bed_is_another_question() -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 340 at 1800", at="18:05")
    ward.says("Amy", "8 mark 400 at 2530", at="19:01")
    told = ward.says("Amy", "8 mark 410 at 2530", at="19:02")
    assert told.reply.endswith("Not recorded yet: bed 8 400 mL.")


def test_a_level_that_lacked_its_time_is_no_longer_asked_once_it_is_told_with_one() -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 340 at 1800", at="18:05")
    ward.says("Amy", "8 mark 400 at 2530", at="19:05")
    told = ward.says("Amy", "8 400 at 1930", at="19:50").reply
    assert "No longer asked: bed 8 400 mL (19:05)." in told
    assert "Unconfirmed" not in told


def test_an_amount_that_lacked_its_time_may_be_another_one() -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 340 at 1800", at="18:05")
    ward.says("Amy", "8 drained 60 at 2530", at="19:05")
    ward.says("Amy", "8 drained 60 at 1930", at="19:50")
    told = ward.says("Amy", "yes", at="19:51").reply
    assert "Unconfirmed: bed 8 60 mL drained (asked 19:05, Amy), not counted." in told
