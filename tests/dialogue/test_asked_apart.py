"""A number that is not sure, beside a check that is: the number is asked, and neither is lost."""

from __future__ import annotations

from dataclasses import fields

import pytest

from bot.dialogue.said import Fix, Slots
from bot.dialogue.slots import whose
from bot.engine.entries import Checked, Line
from tests.dialogue.ward import Ward


def payloads(ward: Ward) -> list[object]:
    """What was recorded, in order, but for the finding of the drain."""
    return [entry.payload for entry in ward.entries() if entry.payload.kind != "opened"]


def test_a_doubtful_line_beside_a_check_is_asked_once_and_both_are_recorded() -> None:
    ward = Ward()
    heard = ward.says("Amy", "bed three serosanguinous mark oh point three at oh three hundred", at="05:00")
    assert [each["slot"] for each in heard.json["questions"]] == ["level_ml"]
    ward.says("Amy", "300")
    assert {type(each) for each in payloads(ward)} == {Checked, Line}
    assert [each.fluid for each in payloads(ward) if isinstance(each, Checked)] == ["serosanguineous"]
    assert ward.levels("3") == [300]


def test_a_suction_that_was_not_read_is_asked_and_its_answer_is_a_check() -> None:
    ward = Ward()
    assert ward.says("Amy", "bed 5 suction 2O", at="19:05").json["questions"][0]["slot"] == "suction_cmh2o"
    assert "suction 20 cmH2O" in ward.says("Amy", "20").reply
    assert payloads(ward) == [Checked(suction_cmh2o=20)]


def test_a_move_that_is_not_sure_beside_a_check_breaks_nothing() -> None:
    ward = Ward()
    heard = ward.says("Amy", "now bed sixteen 3 bed 1820 grade 2 bed", at="19:05")
    assert heard.json["status"] == "question"
    assert ward.says("Amy", "first").json["status"] in ("question", "recorded", "told")


def test_an_answer_that_takes_back_the_message_that_asked_is_taken() -> None:
    ward = Ward()
    ward.says("Amy", "strike the 0600 mark on 12 strike the 0600 mark on 12 ", at="17:09")
    assert ward.says("Amy", "640").reply.startswith("Taken back")
    assert ward.unsettled() == ()


@pytest.mark.parametrize("kind", ["checked", "corrected", "mark"])
def test_a_statement_s_own_slots_are_its_own(kind: str) -> None:
    own = {"checked": fields(Checked), "corrected": fields(Fix), "mark": ()}[kind]
    for slot in ("bed", "tube", "at", "kind", *(field.name for field in own)):
        assert whose(Slots(kind=kind, bed="3"), slot) is None


@pytest.mark.parametrize(
    ("kind", "slot", "owner"),
    [
        ("checked", "level_ml", "mark"),
        ("checked", "to_bed", "moved"),
        ("checked", "volume_ml", "drained"),
        ("mark", "suction_cmh2o", "checked"),
        ("mark", "leak_grade", "checked"),
        ("corrected", "seal_cm", "checked"),
        ("incident", "level_ml", None),
    ],
)
def test_another_statement_s_slot_is_that_one_s(kind: str, slot: str, owner: str | None) -> None:
    assert whose(Slots(kind=kind, bed="3"), slot) == owner


@pytest.mark.parametrize(
    "said",
    [
        "bed 3 air leak intermittent, air leak continuous",
        "bed 3 leak intermittent or continuous",
        "bed 3 fluid serous fluid purulent",
        "bed 3 serous or bloody",
        "bed 3 tidaling no tidaling",
        "bed 3 suction indicator in range, indicator not in range",
    ],
)
@pytest.mark.parametrize("answer", ["1050", "2", "0", "1", "yes", "no", "1 2"])
def test_a_number_is_never_taken_for_a_word_that_was_asked(said: str, answer: str) -> None:
    ward = Ward()
    ward.says("Amy", said, at="19:05")
    ward.says("Amy", answer)
    for each in payloads(ward):
        assert isinstance(each, Checked)
        assert not isinstance(each.fluid, int)
        assert not isinstance(each.air_leak, int)
        assert each.tidaling in (True, False, None)
        assert not isinstance(each.suction_indicator, int)
    assert ward.says("Amy", "bed 3 checks").json["status"] in ("told", "question")


def test_two_ways_of_leaking_are_asked_and_the_first_is_recorded() -> None:
    ward = Ward()
    heard = ward.says("Amy", "bed 3 leak intermittent or continuous", at="19:05")
    assert [each["slot"] for each in heard.json["questions"]] == ["air_leak"]
    ward.says("Amy", "second")
    assert payloads(ward) == [Checked(air_leak="continuous")]
