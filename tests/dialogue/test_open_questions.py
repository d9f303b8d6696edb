"""Questions over time: which answer counts for which, reminders, lapse, replacing, asking again."""

from __future__ import annotations

from pathlib import Path

import pytest

from bot.dialogue.said import Report, TakeBack
from bot.engine.entries import Line, Moved, Placed, Removed
from tests.dialogue.ward import Ward


def asked_about(ward: Ward, bed: str, who: str = "Amy") -> None:
    """A line of 100 at 08:00 and one of 90 at 08:30 that is asked about."""
    ward.says(who, f"bed {bed} mark 100 at 0800")
    ward.says(who, f"bed {bed} mark 90 at 0830")


def opened() -> Ward:
    """A ward at 08:31."""
    ward = Ward()
    ward.says("Amy", "help", at="08:31")
    return ward


def test_a_reply_about_something_else_ends_with_what_is_not_recorded_yet() -> None:
    ward = opened()
    asked_about(ward, "7")
    answer = ward.says("Amy", "bed 9 mark 10 at 0835", at="08:36")
    assert answer.reply.endswith("Not recorded yet: bed 7 90 mL at 08:30.")


@pytest.mark.parametrize("words", ["handoff 7", "open questions"])
def test_a_reply_that_tells_the_question_whole_does_not_name_it_again(words: str) -> None:
    ward = opened()
    asked_about(ward, "7")
    answer = ward.says("Amy", words, at="08:36")
    assert "Asked Amy 08:33: Bed 7, 08:30: 90 mL is below 100 mL" in answer.reply
    assert "Not recorded yet" not in answer.reply


@pytest.mark.parametrize("words", ["handoff 7", "open questions", "last 7, handoff 7"])
def test_a_reply_that_tells_the_question_whole_ends_with_it(words: str) -> None:
    ward = opened()
    asked_about(ward, "7")
    assert ward.says("Amy", words, at="08:36").reply.endswith(
        "Misread, new canister, or was the earlier line wrong? (yes: it is right)"
    )


@pytest.mark.parametrize(
    "words",
    [
        "last 7", "chart 7", "total 7", "rate 7", "trend 7", "due", "capacity 7", "beds", "checks 7",
        "history 7", "who am i", "help", "thanks", "seen", "seen 7", "handoff 9", "bed 9 seal 2",
        "bed 9 off to ct", "bed 9 discharged", "bed 99 mark 10", "bed 7 moved to 11", "bed 7 tube out",
    ],
)  # fmt: skip
def test_every_other_reply_to_its_sender_ends_with_what_is_not_recorded_yet(words: str) -> None:
    ward = opened()
    asked_about(ward, "7")
    ward.says("Ben", "bed 9 mark 10 at 0834", at="08:34")
    assert "Not recorded yet: bed 7 90 mL at 08:30." in ward.says("Amy", words, at="08:36").reply.split("\n")


def test_a_bare_answer_with_two_questions_open_asks_which() -> None:
    ward = opened()
    asked_about(ward, "7")
    asked_about(ward, "9")
    answer = ward.says("Amy", "yes")
    assert "Several questions are open" in answer.reply
    assert ward.levels("7") == [100]
    assert ward.levels("9") == [100]
    assert ward.says("Amy", "9 yes").status == "recorded"
    assert ward.levels("9") == [100, 90]
    assert ward.levels("7") == [100]


def test_an_answer_sent_before_the_question_is_none() -> None:
    ward = opened()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:32")
    ward.says("Amy", "bed 7 mark 90 at 0830", at="08:34")
    answer = ward.says("Amy", "yes", at="08:35", sent="08:33")
    assert "sent before the question" in answer.reply
    assert ward.levels("7") == [100]


def test_a_question_lapses_into_unconfirmed_which_everyone_is_shown() -> None:
    ward = opened()
    asked_about(ward, "7")
    answer = ward.says("Ben", "bed 7 mark 120 at 0900", at="09:01")
    assert "Unconfirmed: bed 7 90 mL at 08:30" in answer.reply
    assert "not counted" in answer.reply
    assert "unconfirmed" in answer.codes
    assert answer.chart == [(20, "08:00", "09:00")]


def test_a_bare_yes_after_the_lapse_records_nothing() -> None:
    ward = opened()
    asked_about(ward, "7")
    answer = ward.says("Amy", "yes", at="08:59")
    assert answer.status == "told"
    assert "Unconfirmed: bed 7 90 mL" in answer.reply
    assert ward.levels("7") == [100]


def test_an_unconfirmed_reading_is_settled_by_an_answer_that_names_its_bed() -> None:
    ward = opened()
    asked_about(ward, "7")
    ward.says("Ben", "7 misread, 130", at="09:10")
    assert ward.levels("7") == [100, 130]
    assert ward.unsettled() == ()
    assert "Unconfirmed" not in ward.says("Ben", "bed 7 mark 140 at 0915", at="09:16").reply


def test_an_unconfirmed_reading_is_withdrawn_with_its_bed() -> None:
    ward = opened()
    asked_about(ward, "7")
    ward.says("Amy", "7 no", at="09:10")
    ward.says("Amy", "no", at="09:11")
    assert ward.levels("7") == [100]
    assert ward.unsettled() == ()


def test_an_unconfirmed_reading_goes_with_its_drain_to_another_bed() -> None:
    ward = opened()
    asked_about(ward, "7")
    ward.says("Ben", "bed 7 moved to bed 9", at="09:00")
    assert "Unconfirmed: bed 7 90 mL" in ward.says("Ben", "bed 9 mark 120 at 0905", at="09:06").reply
    new = ward.tells("Ben", Report(bed="7", fact=Placed(bed="7")), at="09:10")
    assert "Unconfirmed" not in new.reply
    ward.says("Ben", "9 misread, 110", at="09:11")
    assert ward.levels("9") == [100, 110, 120]


def test_the_right_line_of_that_minute_settles_an_unconfirmed_reading() -> None:
    ward = opened()
    asked_about(ward, "7")
    answer = ward.says("Ben", "bed 7 mark 130 at 0830", at="09:00")
    assert "Replaced, not recorded: bed 7 90 mL at 08:30." in answer.reply
    assert "Unconfirmed" not in answer.reply


def test_an_unconfirmed_reading_can_be_taken_back_by_its_time() -> None:
    ward = opened()
    asked_about(ward, "7")
    ward.tells("Ben", TakeBack(bed="7", at=ward.utc("08:30")), at="09:00")
    assert ward.unsettled() == ()
    assert ward.levels("7") == [100]


def test_a_new_line_of_the_drain_replaces_the_question_and_says_so() -> None:
    ward = opened()
    asked_about(ward, "7")
    answer = ward.says("Amy", "bed 7 mark 110 at 0835", at="08:36")
    assert "Replaced, not recorded: bed 7 90 mL at 08:30." in answer.reply
    assert ward.levels("7") == [100, 110]
    assert ward.unsettled() == ()


def test_another_nurses_line_does_not_replace_the_question() -> None:
    ward = opened()
    asked_about(ward, "7")
    ward.says("Ben", "bed 7 mark 110 at 0835", at="08:36")
    assert len(ward.unsettled()) == 1


def test_a_question_overtaken_by_another_nurses_line_is_asked_again() -> None:
    ward = opened()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:32")
    ward.says("Amy", "bed 7 mark 90 at 0830", at="08:33")
    ward.says("Ben", "bed 7 mark 85 at 0820", at="08:34")
    ward.says("Ben", "yes", at="08:35")
    answer = ward.says("Amy", "yes", at="08:36")
    assert answer.status == "recorded"
    assert ward.levels("7") == [100, 85, 90]


def test_a_yes_is_not_taken_for_a_doubt_that_was_not_asked() -> None:
    ward = opened()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:32")
    ward.says("Amy", "bed 7 mark 900 at 0830", at="08:33")
    ward.says("Ben", "bed 7 mark 120 at 0835", at="08:36")
    again = ward.says("Amy", "yes", at="08:37")
    assert again.status == "question"
    assert "900 mL is above 120 mL at 08:35" in again.reply
    assert ward.levels("7") == [100, 120]


def test_a_yes_after_the_drain_was_closed_is_asked_again() -> None:
    ward = opened()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:32")
    ward.says("Amy", "bed 7 mark 90 at 0830", at="08:33")
    removed = Report(bed="7", at=ward.utc("08:20"), fact=Removed(), final_ml=110)
    ward.tells("Ben", removed, at="08:34")
    again = ward.says("Amy", "yes", at="08:36")
    assert "was removed at 08:20. Is this a new drain?" in again.reply
    assert ward.levels("7") == [100, 110]


def test_a_yes_after_the_patient_moved_is_asked_again() -> None:
    ward = opened()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:32")
    ward.says("Amy", "bed 7 mark 90 at 0830", at="08:40")
    ward.tells("Ben", Report(bed="7", at=ward.utc("08:20"), fact=Moved(from_bed="7", to_bed="9")), at="08:41")
    again = ward.says("Amy", "yes", at="08:42")
    assert "moved to bed 9 at 08:20. Is this a new drain?" in again.reply


def test_two_nurses_have_their_own_questions_about_one_bed() -> None:
    ward = opened()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:32")
    ward.says("Amy", "bed 7 mark 90 at 0830", at="08:33")
    ward.says("Ben", "bed 7 mark 80 at 0831", at="08:34")
    ward.says("Ben", "misread, 110", at="08:35")
    assert ward.levels("7") == [100, 110]
    ward.says("Amy", "misread, 105", at="08:36")
    assert ward.levels("7") == [100, 105, 110]


def test_an_exchange_told_instead_of_an_answer_takes_the_line_to_the_new_canister() -> None:
    ward = opened()
    asked_about(ward, "7")
    answer = ward.says("Amy", "changed the canister bed 7, old one 105", at="08:34")
    assert ward.ledger("7").levels[-1].total_ml == 95
    assert "line 90 mL" in answer.reply
    assert ward.unsettled() == ()


def test_what_follows_a_doubtful_line_of_the_same_drain_waits_for_its_answer() -> None:
    ward = opened()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:32")
    ward.says("Amy", "bed 7 mark 90 at 0815; bed 7 mark 120 at 0830; bed 9 mark 5 at 0830", at="08:33")
    assert ward.levels("7") == [100]
    assert ward.levels("9") == [5]
    ward.says("Amy", "misread, 110", at="08:34")
    assert ward.levels("7") == [100, 110, 120]


def test_what_waits_goes_on_waiting_while_the_level_is_asked_for() -> None:
    ward = opened()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:32")
    ward.says("Amy", "bed 7 mark 90 at 0815; bed 7 mark 120 at 0830", at="08:33")
    ward.says("Amy", "misread", at="08:34")
    assert ward.levels("7") == [100]
    ward.says("Amy", "110", at="08:35")
    assert ward.levels("7") == [100, 110, 120]


def test_a_danger_in_what_waits_is_told_with_the_question() -> None:
    ward = opened()
    ward.says("Amy", "bed 7 mark 100 at 0700", at="08:32")
    answer = ward.says("Amy", "bed 7 mark 90 at 0730; bed 7 mark 760 at 0830", at="08:33")
    assert answer.status == "question"
    assert "URGENT if right" in answer.reply


def test_the_question_survives_a_restart(tmp_path: Path) -> None:
    ward = Ward(url=f"sqlite:///{tmp_path / 'ward.db'}")
    ward.says("Amy", "help", at="08:31")
    asked_about(ward, "7")
    ward.restart()
    ward.says("Amy", "misread, 110", at="08:36")
    assert ward.levels("7") == [100, 110]


def test_while_a_question_is_open_nothing_of_it_is_on_the_ledger() -> None:
    ward = opened()
    asked_about(ward, "7")
    lines = [entry.payload.level_ml for entry in ward.entries() if isinstance(entry.payload, Line)]
    assert lines == [100]


def test_a_correction_settles_the_unconfirmed_reading_of_that_minute() -> None:
    ward = opened()
    asked_about(ward, "7")
    answer = ward.says("Amy", "correct bed 7 0830 to 130", at="09:00")
    assert "Bed 7, 08:30, line 130 mL." in answer.reply.replace(" (entered 09:00)", "")
    assert ward.levels("7") == [100, 130]
    assert ward.unsettled() == ()


def test_a_correction_of_an_unconfirmed_reading_is_doubted_like_any_line() -> None:
    ward = opened()
    asked_about(ward, "7")
    assert ward.says("Amy", "correct bed 7 0830 to 95", at="09:00").status == "question"
    assert ward.levels("7") == [100]


def test_a_bare_bed_is_for_the_one_question_that_lacks_a_bed() -> None:
    ward = Ward()
    ward.says("Amy", "bed 5 mark 300 at 1900", at="19:01")
    ward.says("Amy", "bed 5 mark 200 at 1905", at="19:06")
    ward.says("Amy", "mark 840", at="19:07")
    answer = ward.says("Amy", "bed 4", at="19:08")
    assert ward.levels("4") == [840]
    assert "Not recorded yet: bed 5 200 mL at 19:05." in answer.reply


def test_a_bare_tube_is_for_the_one_question_that_lacks_a_tube() -> None:
    ward = Ward()
    ward.says("Amy", "bed 5 left 300 right 200 at 1900", at="19:01")
    ward.says("Amy", "bed 5 mark 310", at="19:06")
    ward.says("Amy", "mark 840", at="19:07")
    assert ward.says("Amy", "left", at="19:08").chart == [(10, "19:00", "19:06")]


def test_the_line_that_was_asked_for_may_be_told_with_its_bed() -> None:
    ward = Ward()
    ward.says("Amy", "bed 6 drained 40", at="03:00")
    ward.says("Amy", "bed 6 250", at="03:02")
    assert ward.levels("6") == [250]
    assert ward.entries()[-1].at == ward.utc("03:00")
    assert ward.unsettled() == ()


def test_a_line_of_another_tube_or_with_a_time_is_not_the_one_that_was_asked_for() -> None:
    ward = Ward()
    ward.says("Amy", "bed 6 left drained 40", at="03:00")
    ward.says("Amy", "bed 6 right 250", at="03:02")
    ward.says("Amy", "bed 7 drained 40", at="03:04")
    ward.says("Amy", "bed 7 250 at 0301", at="03:06")
    assert [each.slot for each in ward.unsettled()] == ["level_ml"]
    assert ward.entries()[-1].at == ward.utc("03:01")


def test_a_number_alone_that_may_be_a_bed_is_told_how_to_ask_for_it() -> None:
    assert 'For the bed say "last 12".' in Ward().says("Amy", "12", at="19:06").reply
    assert "Say the bed with it." in Ward().says("Amy", "850", at="19:06").reply


@pytest.mark.parametrize(("said", "told"), [("mark", "850 mL"), ("drained", "850 mL drained")])
def test_a_number_that_is_no_bed_is_the_level_that_lacks_too(said: str, told: str) -> None:
    ward = Ward()
    ward.says("Amy", said, at="02:46")
    assert ward.says("Amy", "850", at="02:47").reply.startswith(f"02:46, {told}: which bed?")
    assert "Bed 12" in ward.says("Amy", "12", at="02:48").reply


def test_an_answer_of_a_bed_that_nothing_was_asked_about_is_told_which() -> None:
    assert "No question about bed 11 is open" in Ward().says("Amy", "11 no", at="19:06").reply


def test_two_questions_about_one_bed_are_not_to_be_told_apart_by_it() -> None:
    ward = opened()
    asked_about(ward, "7")
    ward.says("Amy", "bed 7 new canister old one 80", at="08:35")
    assert "Say what is right whole, with its bed." in ward.says("Amy", "yes").reply


def test_a_question_about_a_query_is_no_unconfirmed_reading() -> None:
    ward = Ward()
    asked = ward.says("Amy", "what was charted at 7 last night", at="07:01")
    assert asked.reply.startswith("Which bed?")
    assert "Not recorded yet" not in ward.says("Amy", "bed 3 mark 100", at="07:02").reply
    assert "no open questions and no unconfirmed readings" in ward.says("Amy", "open", at="07:30").reply


@pytest.mark.parametrize("answer", ["didn't read it", "no idea", "already thrown out", "unknown"])
def test_a_final_level_that_nobody_knows_any_more_in_the_words_of_the_ward(answer: str) -> None:
    ward = Ward()
    ward.says("Amy", "bed 8 mark 1620 at 0300", at="03:01")
    ward.says("Amy", "changed the canister bed 8", at="04:10")
    told = ward.says("Amy", answer, at="04:11")
    assert 'Not read: sums across this exchange stay "at least".' in told.reply
    assert ward.unsettled() == ()


def test_all_that_is_not_recorded_yet_stands_in_one_line_with_every_number() -> None:
    ward = Ward()
    ward.says("Amy", "bed 2 1480, bed 11 1610, bed 12 1750 at 1855", at="18:55")
    ward.says("Amy", "bed 2 60, bed 11 40, bed 12 90 at 1930", at="19:32")
    told = ward.says("Amy", "bed 14 mark 310 at 1930", at="19:33").reply.split("\n")
    waits = "bed 2 60 mL at 19:30; bed 11 40 mL at 19:30; bed 12 90 mL at 19:30"
    assert told[1:] == [f"Not recorded yet: {waits}."]
    told = ward.says("Amy", "11 yes", at="19:34").reply.split("\n")
    assert told[-1] == "Not recorded yet: bed 2 60 mL at 19:30; bed 12 90 mL at 19:30."


def test_a_final_level_that_is_asked_for_is_no_reading_that_waits() -> None:
    ward = Ward()
    ward.says("Amy", "bed 2 1480, bed 11 1610 at 1855", at="18:55")
    ward.says("Amy", "bed 2 60, bed 11 40 at 1930", at="19:32")
    ward.says("Amy", "2 new canister", at="19:33")
    told = ward.says("Amy", "bed 14 mark 310 at 1930", at="19:34").reply.split("\n")
    assert "Not recorded yet: bed 11 40 mL at 19:30." in told
    assert "Final level of the old canister? Read it before disposal. (Bed 2)" in told
