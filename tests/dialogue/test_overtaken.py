"""A question that another nurse's line has overtaken is asked again, on the ledger as it is then."""

from __future__ import annotations

from tests.dialogue.ward import Ward


def asked_and_overtaken() -> Ward:
    ward = Ward()
    ward.says("Ben", "bed 8 mark 700 at 1000", at="10:00")
    ward.says("Ben", "bed 8 mark 640 at 1100", at="11:00")
    ward.says("Amy", "bed 8 mark 760 at 1104", at="11:04")
    return ward


def test_a_yes_is_not_used_on_a_ledger_that_has_changed_under_it() -> None:
    answer = asked_and_overtaken().says("Ben", "yes", at="11:06")
    assert answer.status == "question"
    assert "and 760 mL was read at 11:04 (Amy)" in answer.reply
    assert answer.chart == []


def test_the_second_yes_is_believed() -> None:
    ward = asked_and_overtaken()
    ward.says("Ben", "yes", at="11:06")
    answer = ward.says("Ben", "yes", at="11:07")
    assert answer.status == "recorded"
    assert "Bed 8, 11:00, line 640 mL." in answer.reply


def test_the_right_level_settles_it_at_once() -> None:
    answer = asked_and_overtaken().says("Ben", "misread, 750", at="11:06")
    assert answer.status == "recorded"
    assert "Bed 8, 11:00, line 750 mL. 50 mL (750 - 700 at 10:00), see Amend." in answer.reply


def test_a_new_canister_before_another_nurses_line_is_asked_again_on_the_new_ledger() -> None:
    ward = Ward()
    ward.says("Amy", "bed 4 mark 100 at 0600", at="06:01")
    ward.says("Amy", "bed 4 mark 80 at 0630", at="06:30")
    ward.says("Ben", "bed 4 mark 130 at 0631", at="06:31")
    again = ward.says("Amy", "new canister", at="06:32")
    assert "80 mL is below 100 mL at 06:00, and 130 mL was read at 06:31 (Ben)" in again.reply
    assert ward.levels("4") == [100, 130]
    ward.says("Amy", "new canister", at="06:33")
    assert ward.levels("4") == [100, 80, 130]
