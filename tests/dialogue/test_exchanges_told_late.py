"""An exchange told after a line that is behind it: on which canister was that line read?"""

from __future__ import annotations

import pytest

from tests.dialogue.ward import Heard, Ward

ASKED = "Bed 9, 06:40, canister changed: was the line 1,120 mL at 06:50 read on the new canister?"


def told_late(exchange: str = "9 new canister 0640, old one 1120") -> tuple[Ward, Heard]:
    """Bed 9 stood at 1,120 mL at 06:50; then its exchange of 06:40 is told."""
    ward = Ward()
    ward.says("Amy", "bed 9 mark 1040 at 0300", at="03:01")
    ward.says("Amy", "9 1120 at 0650", at="06:51")
    return ward, ward.says("Amy", exchange, at="06:55")


@pytest.mark.parametrize(
    "exchange", ["9 new canister 0640, old one 1120", "changed the canister bed 9 at 0640"]
)
def test_a_line_behind_an_exchange_as_high_as_the_old_canister_is_asked_about(exchange: str) -> None:
    _, asked = told_late(exchange)
    assert asked.status == "question"
    assert ASKED in asked.reply
    assert asked.entries == []
    assert asked.says == ["yes", "no"]


def test_a_yes_records_the_exchange_and_the_line_was_read_on_the_new_canister() -> None:
    ward, _ = told_late()
    answer = ward.says("Amy", "yes", at="06:56")
    assert answer.status == "recorded"
    assert "final level 1,120 mL" in answer.reply
    assert answer.reply.count("URGENT") == 1  # 1,120 mL on the new canister in ten minutes


def test_a_no_records_nothing_and_asks_for_the_exchange_again() -> None:
    ward, _ = told_late()
    answer = ward.says("Amy", "no", at="06:56")
    assert answer.entries == []
    assert "Tell the exchange again, with its time." in answer.reply
    again = ward.says("Amy", "9 new canister 0652, old one 1120", at="06:57")
    assert again.status == "recorded"
    assert "URGENT" not in again.reply


@pytest.mark.parametrize(
    "text",
    ["0652", "at 0652", "no, 0652", "it was at 0652", "it was changed at 0652", "no, changed at 0652"],
)
def test_the_right_time_is_an_answer_too(text: str) -> None:
    ward, _ = told_late()
    answer = ward.says("Amy", text, at="06:57")
    assert answer.status == "recorded", answer.reply
    assert "06:52" in answer.reply
    assert "URGENT" not in answer.reply


@pytest.mark.parametrize("level", [15, 400])
def test_a_lower_line_was_read_on_the_new_canister(level: int) -> None:
    ward = Ward()
    ward.says("Amy", "bed 9 mark 1040 at 0300", at="03:01")
    ward.says("Amy", f"9 {level} at 0650", at="06:51")
    ward.says("Amy", "new canister", at="06:52")
    assert ward.levels("9")[-1] == level


def test_an_exchange_told_at_once_has_no_line_behind_it() -> None:
    ward = Ward()
    ward.says("Amy", "9 1120 at 0650", at="06:51")
    assert ward.says("Amy", "9 new canister, old one 1130", at="06:55").status == "recorded"


def test_a_line_behind_another_exchange_is_not_asked_about() -> None:
    ward = Ward()
    ward.says("Amy", "bed 9 mark 340 at 0100", at="01:01")
    ward.says("Amy", "9 new canister 0500, old one 900", at="05:01")
    ward.says("Amy", "9 400 at 0650", at="06:51")
    told = ward.says("Amy", "9 new canister 0300, old one 350", at="06:55")
    assert "read on the new canister?" not in told.reply


def test_a_dictated_exchange_is_asked_about_too() -> None:
    ward = Ward()
    ward.says("Amy", "bed 9 mark 1040 at 0300", at="03:01")
    ward.says("Amy", "9 1120 at 0650", at="06:51")
    words = "bed nine new canister at oh six forty the old one was eleven twenty"
    asked = ward.says("Amy", words, at="06:55", channel="voice")
    assert ASKED in asked.reply
    assert ward.says("Amy", "yes", at="06:56", channel="voice").status == "recorded"


def test_an_exchange_behind_which_a_line_fell_needs_no_question() -> None:
    ward = Ward()
    ward.says("Amy", "bed 9 mark 40 at 0300", at="03:01")
    ward.says("Amy", "9 60 at 0650", at="06:51")
    told = ward.says("Amy", "9 new canister 0640, old one 310", at="06:55")
    assert "270 mL (310 - 40 at 03:00)" in told.reply
    assert "06:40-06:50 60 mL" in told.reply


@pytest.mark.parametrize("text", ["it was at 0600", "0600", "no it was 0600"])
def test_a_time_told_in_words_is_the_answer_where_a_time_is_asked(text: str) -> None:
    ward = Ward()
    assert ward.says("Amy", "7 mark 300 at 6 or 7", at="06:50").status == "question"
    assert "Bed 7, 06:00, line 300 mL." in ward.says("Amy", text, at="06:51").reply
