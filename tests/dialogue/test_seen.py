"""A "seen" or "amended" whose bed was not said: which it may be, and that it never counts as a reading."""

from __future__ import annotations

import pytest

from bot.engine.entries import Seen
from tests.dialogue.ward import Ward


def drains(*beds: str) -> Ward:
    """A ward at 19:00 where 200 mL came in the last hour at each of these beds."""
    ward = Ward()
    for bed in beds:
        ward.says("Amy", f"bed {bed} mark 150 at 1800", at="18:01")
    for bed in beds:
        ward.says("Amy", f"bed {bed} mark 350 at 1900", at="19:00")
    return ward


def test_where_nothing_waits_so_it_is_told_and_nothing_is_held_open() -> None:
    ward = Ward()
    answer = ward.says("Amy", "seen", at="19:00")
    assert answer.status == "told"
    assert "no caution waits to be seen on Harbour Ward" in answer.reply
    assert ward.unsettled() == ()
    assert "seen" not in ward.says("Amy", "bed 12 mark 300", at="19:02").reply


def test_the_beds_that_wait_are_named_and_a_bare_bed_is_the_answer() -> None:
    ward = drains("14", "12")
    asked = ward.says("Amy", "seen", at="19:01")
    assert asked.reply == "Seen: which bed? Waiting: beds 12 and 14."
    assert ward.says("Amy", "12", at="19:02").reply == "Bed 12, 19:02, seen. Noted."
    assert "Waiting: bed 14." in ward.says("Amy", "seen", at="19:03").reply


def test_what_was_seen_waits_again_once_there_is_more() -> None:
    ward = drains("12")
    ward.says("Amy", "seen 12", at="19:05")
    assert "no caution waits" in ward.says("Amy", "seen", at="19:06").reply
    ward.says("Amy", "bed 12 mark 560 at 2000", at="20:00")
    assert "Waiting: bed 12." in ward.says("Amy", "seen", at="20:01").reply


def test_the_next_message_lets_it_go_and_says_so_once() -> None:
    ward = drains("12")
    ward.says("Amy", "seen", at="19:01")
    answer = ward.says("Amy", "bed 13 mark 40", at="19:02")
    assert answer.reply.endswith("No longer asked: seen (19:01).")
    assert ward.unsettled() == ()
    assert "seen" not in ward.says("Amy", "last 13", at="19:03").reply


@pytest.mark.parametrize("again", ["seen", "seen 12"])
def test_said_again_it_is_asked_or_taken_without_a_word_of_the_first(again: str) -> None:
    ward = drains("12")
    ward.says("Amy", "seen", at="19:01")
    assert "No longer asked" not in ward.says("Amy", again, at="19:02").reply
    assert len(ward.unsettled()) == (again == "seen")


def test_it_never_counts_as_an_unconfirmed_reading() -> None:
    ward = drains("12")
    ward.says("Amy", "seen", at="19:01")
    for words in ("bed 12 seal 2", "open questions", "handoff 12"):
        answer = ward.says("Ben", words, at="19:30")
        assert "Unconfirmed" not in answer.reply
        assert "unconfirmed" not in answer.codes


def test_beside_an_open_question_it_is_to_be_said_with_its_bed() -> None:
    ward = drains("12")
    ward.says("Amy", "bed 12 mark 300 at 1901", at="19:01")
    told = ward.says("Amy", "seen", at="19:02")
    assert 'Say it with the bed: "seen 12".' in told.reply
    assert told.reply.endswith("Not recorded yet: bed 12 300 mL at 19:01.")
    ward.says("Amy", "yes", at="19:03")
    assert ward.levels("12") == [150, 350, 300]


def test_a_notice_without_a_bed_is_named_with_whom_to_ask() -> None:
    ward = Ward()
    ward.says("Amy", "chest tube came out", at="09:00")
    told = ward.says("Carla", "seen", at="09:01").reply
    assert "its bed is not known yet" in told
    assert "Not recorded yet: dislodged (asked 09:00, Amy)." in told


def test_amended_without_its_bed_is_asked_of_the_charts_that_wait_and_stays_amended() -> None:
    ward = drains("12", "14")
    assert "no chart waits to be amended" in ward.says("Amy", "amended", at="19:01").reply
    ward.says("Amy", "correct bed 14 1800 to 160", at="19:02")
    assert ward.says("Amy", "amended", at="19:03").reply.startswith("Amended: which bed? Waiting: bed 14.")
    ward.says("Amy", "14", at="19:04")
    assert ward.entries()[-1].payload == Seen(amended=True)
    assert "Amend:" not in ward.says("Amy", "handoff 14", at="19:05").reply
