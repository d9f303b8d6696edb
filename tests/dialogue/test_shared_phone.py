"""A ward phone that several people write from."""

from __future__ import annotations

from dataclasses import replace

from bot.unit import Person, Role, demo_unit
from tests.dialogue.ward import Ward


def ward_with_phone() -> Ward:
    """The demo ward with one phone that is shared."""
    unit = demo_unit()
    phone = Person(id="phone", name="Ward phone", role=Role.NURSE, shared=True)
    return Ward(replace(unit, people=(*unit.people, phone)))


def test_the_phone_asks_who_is_writing_and_takes_what_was_said_once_it_knows() -> None:
    ward = ward_with_phone()
    asked = ward.says("Ward phone", "bed 7 mark 630 at 1800", at="18:01")
    assert "Who is writing?" in asked.reply
    assert ward.ledgers("7") == []
    answer = ward.says("Ward phone", "Amy here", at="18:05")
    assert "Bed 7, 18:00, line 630 mL" in answer.reply
    assert {entry.who for entry in ward.entries()} == {"amy"}


def test_the_phone_remembers_until_the_shift_ends() -> None:
    ward = ward_with_phone()
    ward.says("Ward phone", "Amy", at="18:01")
    assert ward.says("Ward phone", "bed 7 mark 630 at 1800", at="18:02").status == "recorded"
    assert "Who is writing?" in ward.says("Ward phone", "bed 7 mark 640 at 1900", at="19:01").reply


def test_another_name_takes_over() -> None:
    ward = ward_with_phone()
    ward.says("Ward phone", "Amy", at="18:01")
    ward.says("Ward phone", "this is Ben", at="18:02")
    ward.says("Ward phone", "bed 7 mark 630 at 1800", at="18:03")
    assert {entry.who for entry in ward.entries()} == {"ben"}


def test_scratch_that_from_the_phone_undoes_only_ones_own_message() -> None:
    ward = ward_with_phone()
    ward.says("Ward phone", "Amy", at="18:01")
    ward.says("Ward phone", "bed 7 mark 630 at 1800", at="18:02")
    assert ward.says("Ward phone", "scratch that", at="18:03").entries != []
    ward.says("Ward phone", "bed 7 mark 630 at 1800", at="18:04")
    ward.says("Ward phone", "Ben", at="18:05")
    ward.says("Ward phone", "scratch that", at="18:06")
    assert ward.levels("7") == [630]


def test_a_danger_does_not_wait_for_the_name() -> None:
    ward = ward_with_phone()
    ward.says("Amy", "bed 7 mark 100 at 1700", at="17:01")
    asked = ward.says("Ward phone", "bed 7 mark 760 at 1800", at="18:01")
    assert "URGENT if right" in asked.reply
    assert ("amount_at_once", True) in ward.notices()
