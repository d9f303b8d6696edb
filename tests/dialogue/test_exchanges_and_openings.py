"""What goes with a new canister or tube: the checklist, a canister that tipped over, an opening level."""

from __future__ import annotations

import pytest

from bot.wording.checklist import exchange_checklist
from tests.dialogue.ward import Ward


def test_an_exchange_is_answered_with_the_checklist_once() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 1900 at 1800", at="18:01")
    changed = ward.says("Amy", "changed the canister bed 7 at 1830", at="18:31")
    final = ward.says("Amy", "1980", at="18:32")
    assert exchange_checklist() in changed.reply
    assert "final level 1,980 mL" in final.reply
    assert exchange_checklist() not in final.reply


def test_a_line_is_answered_without_the_checklist() -> None:
    assert exchange_checklist() not in Ward().says("Amy", "bed 7 mark 1900 at 1800", at="18:01").reply


def test_a_unit_can_turn_the_checklist_off() -> None:
    ward = Ward(checklists=False)
    ward.says("Amy", "bed 7 mark 1900 at 1800", at="18:01")
    changed = ward.says("Amy", "changed the canister bed 7 at 1830, old one 1980", at="18:31")
    assert changed.status == "recorded"
    assert exchange_checklist() not in changed.reply


def test_a_voice_does_not_read_the_checklist_out() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 1900 at 1800", at="18:01")
    ward.says("Amy", "changed the canister bed 7 at 1830, old one 1980", at="18:31", channel="voice")
    changed = ward.says("Amy", "yes", at="18:32", channel="voice")
    assert exchange_checklist() in changed.reply
    assert "hecklist" not in changed.json["speech"]


def test_the_final_level_of_a_canister_that_tipped_over_is_no_first_line() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 300 at 1200", at="12:01")
    ward.says("Amy", "bed 7 someone kicked the drain over", at="12:10")
    changed = ward.says("Amy", "changed the canister bed 7 at 1215, old one 365", at="12:16")
    assert "First line" not in changed.reply
    assert "No volume to chart: this canister was tipped over." in changed.reply
    assert "Day shift volume not known since 12:00" in changed.reply


def test_a_tube_placed_in_the_shift_is_not_said_to_lack_a_line_at_its_start() -> None:
    ward = Ward()
    ward.says("Amy", "new chest tube bed 7 at 1400", at="14:02")
    answer = ward.says("Amy", "bed 7 mark 60 at 1500", at="15:01")
    assert "Day shift 60 mL since 14:00 (from the opening level)." in answer.reply


def changed_without_a_final_level() -> Ward:
    """Bed 8 at 620 mL, then a new canister at 04:10, which held 50 mL at 04:30."""
    ward = Ward()
    ward.says("Amy", "bed 8 mark 620 at 0300", at="03:01")
    ward.says("Amy", "changed the canister bed 8", at="04:10")
    ward.says("Amy", "bed 8 mark 50", at="04:30")
    return ward


@pytest.mark.parametrize(
    "text", ["bed 8 old one was 655", "final level of the old canister bed 8 was 655", "8 old canister 655"]
)
def test_a_final_level_told_late_goes_to_the_exchange_that_lacks_it(text: str) -> None:
    ward = changed_without_a_final_level()
    answer = ward.says("Amy", text, at="04:40")
    assert "Bed 8, 04:10, final level 655 mL. 35 mL (655 - 620 at 03:00), see Amend." in answer.reply
    assert "Amend: 03:00-04:10 35 mL and 04:10-04:30 50 mL instead of 03:00-04:30 50 mL." in answer.reply


def test_an_old_canister_that_would_have_fallen_is_asked() -> None:
    asked = changed_without_a_final_level().says("Amy", "bed 8 old one was 60", at="04:40")
    assert asked.status == "question"
    assert asked.entries == []


def test_a_second_change_is_still_asked() -> None:
    asked = changed_without_a_final_level().says("Amy", "changed the canister bed 8, old one 655", at="04:40")
    assert "Second: changed again." in asked.reply


def test_a_line_after_an_exchange_says_that_the_final_level_is_not_told_yet() -> None:
    ward = changed_without_a_final_level()
    later = ward.says("Ben", "bed 8 mark 60", at="04:45").reply
    assert "not told yet" not in later
    ward = Ward()
    ward.says("Amy", "bed 8 mark 620 at 0300", at="03:01")
    ward.says("Amy", "changed the canister bed 8", at="04:10")
    assert "Final level at 04:10 not told yet." in ward.says("Ben", "bed 8 mark 50", at="04:30").reply
    ward.says("Ben", "bed 8 old one was 655", at="04:31")
    assert "not told yet" not in ward.says("Ben", "bed 8 mark 60", at="04:40").reply


def test_an_exchange_with_its_final_level_and_the_new_canisters_line_are_one_message() -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 mark 1820 at 0300", at="03:01")
    text = "changed the canister bed 8 at 0330, old one 1860, now 60 at 0400"
    answer = ward.says("Amy", text, at="04:01")
    assert answer.status == "recorded"
    assert answer.chart == [(40, "03:00", "03:30"), (60, "03:30", "04:00")]


def test_what_an_exchange_ends_in_the_minute_of_the_next_line_is_one_volume_to_copy() -> None:
    ward = Ward()
    ward.says("Amy", "bed 21 mark 300", at="10:00")
    ward.says("Amy", "bed 21 mark 40", at="11:00")
    ward.says("Amy", "new canister", at="11:01")
    assert "Amend: 10:00-11:00 40 to 80 mL." in ward.says("Amy", "340", at="11:02").reply
    assert ward.says("Amy", "chart 21", at="11:03").reply.endswith("To chart:\n10:00-11:00 80 mL")


def test_a_new_canister_told_with_its_bed_where_nothing_was_asked_is_a_change() -> None:
    ward = Ward()
    ward.says("Amy", "bed 11 mark 300", at="08:00")
    answer = ward.says("Amy", "11 new canister", at="08:10")
    assert answer.reply.startswith("Final level of the old canister?")
    assert "Bed 11, 08:10, canister changed, new one at 0 mL." in answer.reply
    assert ward.says("Amy", "bed 11 40", at="09:00").chart[-1] == (40, "08:00", "09:00")


def test_a_new_canister_is_an_answer_where_that_was_asked_even_once_it_has_lapsed() -> None:
    ward = Ward()
    ward.says("Amy", "bed 11 mark 300", at="08:00")
    ward.says("Amy", "bed 11 mark 20", at="08:10")
    answer = ward.says("Ben", "11 new canister", at="08:40")
    assert "Bed 11, 08:10, line 20 mL." in answer.reply
    assert answer.reply.startswith("Final level of the old canister?")
    assert [each.slot for each in ward.unsettled()] == ["final_ml"]


def test_a_new_canister_at_a_bed_with_no_drain_records_nothing() -> None:
    answer = Ward().says("Amy", "11 new canister", at="08:10")
    assert (answer.status, answer.entries) == ("told", [])
