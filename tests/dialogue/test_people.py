"""Who may do what, and what nobody of one unit sees of another."""

from __future__ import annotations

from dataclasses import replace

import pytest

from bot.unit import Role, demo_unit
from tests.dialogue.ward import Ward, nurse


def test_a_reader_writes_nothing() -> None:
    ward = Ward()
    answer = ward.says("Dan", "bed 7 mark 630 at 1800", at="18:01")
    assert answer.status == "refused"
    assert ward.entries() == []


def test_a_reader_of_whom_nothing_is_asked_cannot_answer() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01")
    ward.says("Amy", "bed 7 mark 600 at 1830", at="18:31")
    assert ward.says("Dan", "7 yes", at="18:32").status == "refused"
    assert ward.levels("7") == [630]


def test_a_stranger_is_told_nothing_of_the_unit() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01")
    answer = ward.says("stranger", "bed 7 mark 640 at 1900", at="19:01")
    assert answer.status == "refused"
    assert not any(word in answer.reply for word in ("7", "630", "Harbour"))
    assert ward.levels("7") == [630]


@pytest.mark.parametrize("text", ["bed 7 mark 640 at 1900, MRN 1234567", "bed 7 mark 640 a.b@ward.org"])
def test_a_message_that_may_name_a_patient_is_neither_recorded_nor_kept(text: str) -> None:
    ward = Ward()
    answer = ward.says("Amy", text, at="19:01")
    assert answer.status == "refused"
    assert ward.entries() == []
    with ward.store.turn(ward.unit.id) as book:
        row = book.message("msg-1")
    assert row is not None
    assert "1234567" not in str(row)
    assert "a.b@" not in str(row)


def two_wards() -> Ward:
    """Bed 7 in both, one nurse in each, and one in both."""
    here = replace(demo_unit(), people=(nurse("Amy"), nurse("Both")))
    there = replace(here, id="icu", name="ICU", people=(nurse("Zoe", Role.CHARGE), nurse("Both")))
    return Ward(here, there)


def test_one_bed_label_in_two_units_is_two_beds() -> None:
    ward = two_wards()
    ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01")
    answer = ward.says("Zoe", "bed 7 mark 40 at 1830", at="18:31")
    assert "First line" in answer.reply
    assert "630" not in answer.reply
    assert ward.levels("7") == [630]


def test_an_unconfirmed_reading_of_one_unit_is_not_shown_in_another() -> None:
    ward = two_wards()
    ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01")
    ward.says("Amy", "bed 7 mark 600 at 1810", at="18:11")
    answer = ward.says("Zoe", "bed 7 mark 40 at 1900", at="19:01")
    assert "Unconfirmed" not in answer.reply


def test_someone_of_two_units_is_asked_which_one_is_meant() -> None:
    ward = two_wards()
    assert ward.says("Both", "bed 7 mark 630 at 1800", at="18:01").status == "refused"
    assert ward.says("Both", "ICU bed 7 mark 630 at 1800", at="18:02").status == "recorded"
    assert ward.ledgers("7") == []


def test_a_reader_who_may_not_write_is_not_told_how_to() -> None:
    assert "First time here?" not in Ward().says("Dan", "bed 7 mark 630").reply
