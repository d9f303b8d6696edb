"""Putting lines right and taking them back: whose they were, what follows, what stays readable."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.dialogue.said import Fix, TakeBack
from bot.engine.entries import Correction, Withdrawal
from tests.dialogue.ward import Ward


def marked(ward: Ward, who: str = "Amy") -> Ward:
    """Lines of 840 at 15:00, 1,050 at 19:00 and 1,130 at 20:00."""
    ward.says(who, "bed 12 mark 840 at 1500", at="15:01")
    ward.says(who, "bed 12 mark 1050 at 1900", at="19:01")
    ward.says(who, "bed 12 mark 1130 at 2000", at="20:01")
    return ward


def test_a_correction_names_the_old_level_and_lists_both_intervals_to_amend() -> None:
    answer = marked(Ward()).says("Amy", "correct bed 12 1900 to 1005", at="20:05")
    assert "Bed 12, 19:00, line 1,005 mL (was 1,050 mL, Amy). 165 mL" in answer.reply
    assert "Amend: 15:00-19:00 210 to 165 mL." in answer.reply
    assert "Amend: 19:00-20:00 80 to 125 mL." in answer.reply
    replaced = [(row["volume_ml"], row["replaces"][0]["volume_ml"]) for row in answer.json["chart"]]
    assert replaced == [(165, 210), (125, 80)]


def test_the_author_of_a_line_is_told_of_anothers_correction() -> None:
    ward = marked(Ward())
    answer = ward.says("Ben", "correct bed 12 1900 to 1005", at="20:05")
    assert "Amy is told." in answer.reply
    assert ("corrected", False) in ward.notices()


def test_ones_own_correction_tells_nobody() -> None:
    ward = marked(Ward())
    ward.says("Amy", "correct bed 12 1900 to 1005", at="20:05")
    assert ("corrected", False) not in ward.notices()


def test_a_correction_can_be_corrected() -> None:
    ward = marked(Ward())
    ward.says("Amy", "correct bed 12 1900 to 1005", at="20:05")
    answer = ward.says("Amy", "correct bed 12 1900 to 1015", at="20:06")
    assert "was 1,005 mL" in answer.reply
    assert ward.levels("12") == [840, 1015, 1130]
    assert sum(isinstance(entry.payload, Correction) for entry in ward.entries()) == 2


def test_a_correction_below_the_line_before_is_asked() -> None:
    ward = marked(Ward())
    assert ward.says("Amy", "correct bed 12 1900 to 805", at="20:05").status == "question"
    assert ward.levels("12") == [840, 1050, 1130]
    ward.says("Amy", "misread, 1005", at="20:06")
    assert ward.levels("12") == [840, 1005, 1130]


def test_a_correction_of_a_line_that_is_not_there_changes_nothing_and_names_the_last_ones() -> None:
    answer = marked(Ward()).says("Amy", "correct bed 12 1800 to 1005", at="20:05")
    assert answer.status == "told"
    assert "19:00 1,050 mL" in answer.reply


def test_a_line_on_the_wrong_bed_is_written_to_the_right_one_and_withdrawn_here() -> None:
    ward = marked(Ward())
    answer = ward.says("Amy", "correct bed 12 2000 to bed 9", at="20:05")
    assert "Bed 9, 20:00, line 1,130 mL." in answer.reply
    assert "Withdrawn: bed 12, 20:00, line 1,130 mL" in answer.reply
    assert ward.levels("12") == [840, 1050]
    assert ward.levels("9") == [1130]
    assert "Amend: strike out 19:00-20:00 80 mL" in answer.reply.replace("Bed 12: ", "")


def test_a_line_that_does_not_fit_the_other_bed_stays_until_that_is_answered() -> None:
    ward = marked(Ward())
    ward.says("Ben", "bed 9 mark 1500 at 1900", at="20:04")
    assert ward.says("Amy", "correct bed 12 2000 to bed 9", at="20:05").status == "question"
    assert ward.levels("12") == [840, 1050, 1130]
    ward.says("Amy", "yes", at="20:06")
    assert ward.levels("12") == [840, 1050]
    assert ward.levels("9") == [1500, 1130]


def test_a_nurse_cannot_change_a_line_before_the_previous_shift_but_a_charge_nurse_can() -> None:
    ward = marked(Ward())
    ward.next_day()
    refused = ward.says("Amy", "correct bed 12 yesterday 1500 to 800", at="19:30")
    assert refused.status == "refused"
    assert "charge nurse" in refused.reply
    assert ward.levels("12")[0] == 840
    ward.says("Carla", "correct bed 12 yesterday 1500 to 800", at="19:31")
    assert ward.levels("12")[0] == 800


def test_a_correction_without_a_time_is_of_ones_own_last_line() -> None:
    ward = marked(Ward())
    ward.tells("Amy", Fix(bed="12", level_ml=1120), at="20:05")
    assert ward.levels("12") == [840, 1050, 1120]


@pytest.mark.parametrize(("answer", "last"), [("yes", 1120), ("no", 1130)])
def test_a_correction_without_a_time_of_anothers_line_is_asked(answer: str, last: int) -> None:
    ward = marked(Ward())
    asked = ward.tells("Ben", Fix(bed="12", level_ml=1120), at="20:05")
    assert "do you mean the line 1,130 mL at 20:00 (Amy)?" in asked.reply
    ward.says("Ben", answer, at="20:06")
    assert ward.levels("12") == [840, 1050, last]


def test_taking_back_a_bed_without_a_time_of_anothers_line_is_asked() -> None:
    ward = marked(Ward())
    assert ward.tells("Ben", TakeBack(bed="12"), at="20:05").status == "question"
    ward.says("Ben", "yes", at="20:06")
    assert ward.levels("12") == [840, 1050]


def test_the_wrong_bed_of_the_last_message_needs_no_name() -> None:
    ward = marked(Ward())
    answer = ward.tells("Amy", Fix(to_bed="9"), at="20:02")
    assert "Bed 9, 20:00, line 1,130 mL." in answer.reply
    assert ward.levels("12") == [840, 1050]


def test_a_wrong_time_is_put_right() -> None:
    ward = marked(Ward())
    answer = ward.tells("Amy", Fix(bed="12", at=ward.utc("19:00"), to_at=ward.utc("18:30")), at="20:02")
    assert "Bed 12, 18:30, line 1,050 mL (was 1,050 mL at 19:00, Amy)" in answer.reply


def test_a_wrong_tube_is_put_right() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 left mark 100 at 0800; bed 7 right mark 300 at 0800", at="08:01")
    ward.says("Amy", "bed 7 left mark 350 at 0900", at="09:01")
    ward.tells("Amy", Fix(bed="7", tube="left", at=ward.utc("09:00"), to_tube="right"), at="09:02")
    held = {ledger.tube: [level.level_ml for level in ledger.levels] for ledger in ward.ledgers("7")}
    assert held == {"left": [100], "right": [300, 350]}


def test_two_lines_of_one_level_are_asked_which() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:01")
    ward.says("Amy", "bed 7 mark 100 at 0900", at="09:01")
    asked = ward.tells("Amy", Fix(bed="7", was_ml=100, level_ml=110), at="09:02")
    assert "which line" in asked.reply
    ward.says("Amy", "second", at="09:03")
    assert ward.levels("7") == [100, 110]


def test_scratch_that_undoes_the_last_message_whole() -> None:
    ward = marked(Ward())
    ward.says("Amy", "bed 12 mark 1200 at 2100; bed 9 mark 40 at 2100", at="21:01")
    answer = ward.says("Amy", "scratch that", at="21:02")
    assert "Withdrawn: bed 12, 21:00, line 1,200 mL" in answer.reply
    assert "bed 9, 21:00, line 40 mL" in answer.reply
    assert "strike out 20:00-21:00 70 mL" in answer.reply
    assert ward.levels("12") == [840, 1050, 1130]
    assert ward.levels("9") == []


def test_scratch_that_takes_back_an_open_question() -> None:
    ward = marked(Ward())
    ward.says("Amy", "bed 12 mark 900 at 2100", at="21:01")
    ward.says("Amy", "scratch that", at="21:02")
    assert ward.unsettled() == ()
    assert ward.says("Amy", "yes", at="21:03").status == "told"


def test_scratch_that_of_an_answer_takes_back_what_the_answer_recorded() -> None:
    ward = marked(Ward())
    ward.says("Amy", "bed 12 mark 900 at 2100", at="21:01")
    ward.says("Amy", "misread, 1190", at="21:02")
    ward.says("Amy", "scratch that", at="21:03")
    assert ward.levels("12") == [840, 1050, 1130]


def test_scratch_that_undoes_a_correction() -> None:
    ward = marked(Ward())
    ward.says("Amy", "correct bed 12 1900 to 1005", at="20:05")
    answer = ward.says("Amy", "scratch that", at="20:06")
    assert ward.levels("12") == [840, 1050, 1130]
    assert "Amend: 15:00-19:00 165 to 210 mL." in answer.reply


@pytest.mark.parametrize(("minutes", "done"), [(30, True), (31, False)])
def test_scratch_that_reaches_back_for_so_long_only(minutes: int, done: bool) -> None:
    ward = marked(Ward())
    ward.now += timedelta(minutes=minutes - 1)
    ward.says("Amy", "scratch that")
    assert (ward.levels("12") == [840, 1050]) is done


def test_scratch_that_never_undoes_somebody_elses_message() -> None:
    ward = marked(Ward())
    answer = ward.says("Ben", "scratch that", at="20:02")
    assert answer.entries == []
    assert ward.levels("12") == [840, 1050, 1130]


def test_taking_back_the_first_line_leaves_the_drain_to_those_who_wrote_to_it_since() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 840 at 1500", at="15:01")
    ward.says("Ben", "bed 12 mark 860 at 1510", at="15:11")
    ward.says("Amy", "scratch that", at="15:12")
    assert ward.levels("12") == [860]
    assert ward.ledger("12").bed == "12"


def test_nothing_is_erased() -> None:
    ward = marked(Ward())
    before = [entry.id for entry in ward.entries()]
    ward.says("Amy", "correct bed 12 1900 to 1005", at="20:05")
    ward.says("Amy", "scratch that", at="20:06")
    after = ward.entries()
    assert [entry.id for entry in after][: len(before)] == before
    assert any(isinstance(entry.payload, Withdrawal) for entry in after)


@pytest.mark.parametrize(
    "text", ["oops that was bed 9", "wrong bed, its 9", "that was for bed 9", "sorry, bed 9", "i mean bed 9"]
)
def test_the_right_bed_of_the_last_line_in_the_words_of_the_ward(text: str) -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 200 at 0600; bed 9 mark 200 at 0600", at="06:01")
    ward.says("Amy", "bed 7 mark 230", at="06:52")
    assert "Withdrawn: bed 7, 06:52, line 230 mL" in ward.says("Amy", text, at="06:53").reply
    assert (ward.levels("7"), ward.levels("9")) == ([200], [200, 230])


def test_sorry_and_a_bed_after_a_query_asks_for_that_bed() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 200; bed 9 mark 300", at="06:01")
    ward.says("Amy", "last 7", at="06:02")
    assert "Bed 9: 06:01 line 300 mL" in ward.says("Amy", "sorry, bed 9", at="06:03").reply


def test_a_line_is_not_moved_to_the_bed_where_it_is() -> None:
    ward = Ward()
    ward.says("Amy", "bed 9 mark 200 at 0600", at="06:01")
    told = ward.says("Amy", "correct bed 9 0600 to bed 9", at="06:02")
    assert told.entries == []
    assert ward.levels("9") == [200]


def test_a_correction_whose_bed_was_asked_for_is_of_the_last_line_there() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 640 at 1900", at="19:01")
    asked = ward.says("Amy", "correct to 605", at="20:40")
    assert asked.reply.startswith("Correction to 605 mL: which bed?")
    assert "line 605 mL (was 640 mL, Amy)" in ward.says("Amy", "12", at="20:41").reply


def test_a_correction_of_a_final_level_is_not_of_the_last_line_of_the_new_canister() -> None:
    ward = Ward()
    ward.says("Amy", "bed 5 mark 950 at 0400", at="04:01")
    ward.says("Amy", "changed the canister bed 5, old one 980", at="04:30")
    ward.says("Amy", "bed 5 mark 30", at="05:00")
    answer = ward.says("Amy", "correct bed 5 final level to 985", at="05:13")
    assert (
        "Bed 5, 04:30, final level 985 mL (was 980 mL, Amy). 35 mL (985 - 950 at 04:00), see Amend."
        in answer.reply
    )
    assert ward.levels("5") == [950, 985, 30]


def test_what_was_scratched_by_mistake_holds_again_and_is_named() -> None:
    ward = Ward()
    ward.says("Amy", "bed 3 disconnected", at="06:01")
    ward.says("Amy", "scratch that", at="06:02")
    again = ward.says("Amy", "scratch that", at="06:03").reply
    assert "It holds again: disconnected." in again
    assert "URGENT: tubing off the canister" in again


def test_a_number_that_is_one_lines_level_and_the_time_of_another_is_asked() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 500 at 1800", at="18:01")
    ward.says("Amy", "bed 12 mark 600 at 2000", at="20:01")
    asked = ward.tells("Amy", Fix(bed="12", at=ward.utc("18:00"), to_at=ward.utc("19:30")), at="20:05")
    assert "which line, 18:00 500 mL or 20:00 600 mL?" in asked.reply
    ward.says("Amy", "second", at="20:06")
    assert [each.at for each in ward.ledger("12").levels] == [ward.utc("18:00"), ward.utc("19:30")]


def test_a_time_at_which_there_is_no_line_is_not_taken_for_a_level_of_the_12_hour_clock() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 mark 500 at 1800", at="18:01")
    told = ward.says("Amy", "correct bed 12 1700 to 450", at="19:05")
    assert "there is no such line at 17:00" in told.reply
    assert ward.levels("12") == [500]


def test_a_right_bed_that_no_last_line_can_be_meant_for_is_asked_with_what_it_is() -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 mark 640 at 1900", at="19:01")
    ward.says("Amy", "bed 9 seal 2", at="19:30")
    asked = ward.says("Amy", "wrong bed, that was 9", at="19:40")
    assert asked.reply == "A line that belongs to bed 9: which bed was it told for?"
    assert "Bed 9, 19:00" in ward.says("Amy", "8", at="19:41").reply


@pytest.mark.parametrize(
    ("words", "correction"),
    [
        ("3 right misread, 130", "correct bed 3 right to 130"),
        ("3 misread 130", "correct bed 3 to 130"),
    ],
)
def test_a_misreading_that_nothing_asked_about_is_told_how_to_put_it_right(
    words: str, correction: str
) -> None:
    ward = Ward()
    ward.says("Amy", "bed 3 right 300 at 2200", at="22:00")
    told = ward.says("Amy", words, at="22:01")
    assert told.entries == []
    assert told.reply.endswith(f'nothing was recorded. To put its last line right say "{correction}".')
    assert "line 130 mL (was 300 mL, Amy)" in ward.says("Amy", correction, at="22:02").reply
