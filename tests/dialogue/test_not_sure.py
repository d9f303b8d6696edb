"""What could not be read one way only: asked with its choices, answered by a word, a value or a number."""

from __future__ import annotations

import pytest

from bot.dialogue.said import Amount, Answered, NotSure, Query, Report, Slots
from bot.engine.entries import Line
from tests.dialogue.ward import Ward


def level_or_amount() -> NotSure:
    """ "output 210" """
    return NotSure(
        slot="kind",
        text="output 210",
        choices=("mark", "drained"),
        readings=(Report(bed="7", fact=Line(level_ml=210)), Amount(bed="7", volume_ml=210)),
        partial=Slots(kind="mark", bed="7"),
    )


def test_two_readings_are_offered_as_first_and_second() -> None:
    asked = Ward().tells("Amy", level_or_amount(), at="08:01")
    assert "Bed 7: Not sure what you mean. First: 210 mL (the line)." in asked.reply
    assert "Second: 210 mL drained (an amount)." in asked.reply
    assert asked.says == ["first", "second"]


def test_the_first_reading_is_taken_at_the_time_of_the_message() -> None:
    ward = Ward()
    ward.tells("Amy", level_or_amount(), at="08:01")
    answer = ward.tells("Amy", Answered(choice="first"), at="08:05")
    assert "Bed 7, 08:01, line 210 mL" in answer.reply


def test_the_second_reading_goes_on_to_its_own_question() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:00")
    ward.tells("Amy", level_or_amount(), at="08:30")
    asked = ward.tells("Amy", Answered(choice="second"), at="08:31")
    assert "that makes the line 310 mL" in asked.reply


@pytest.mark.parametrize("answer", [Answered(bed="12"), Answered(level_ml=12), Answered(choice="second")])
def test_a_bed_that_was_heard_in_two_ways(answer: Answered) -> None:
    ward = Ward()
    partial = Slots(kind="mark", values=(("level_ml", 210),))
    asked = ward.tells("Amy", NotSure(slot="bed", text="", choices=("2", "12"), partial=partial), at="08:01")
    assert "bed 2" in asked.reply
    answered = ward.tells("Amy", answer, at="08:02")
    assert "Bed 12, 08:01, line 210 mL" in answered.reply


@pytest.mark.parametrize(
    "answer", [Answered(level_ml=1900), Answered(level_ml=19), Answered(choice="second")]
)
def test_a_time_of_two_meanings(answer: Answered) -> None:
    ward = Ward()
    choices = (ward.utc("07:00"), ward.utc("19:00"))
    partial = Slots(kind="mark", bed="7", values=(("level_ml", 210),))
    ward.tells("Amy", NotSure(slot="at", text="7", choices=choices, partial=partial), at="19:20")
    assert "Bed 7, 19:00, line 210 mL" in ward.tells("Amy", answer, at="19:21").reply


def test_a_level_that_was_not_said_is_asked_and_taken() -> None:
    ward = Ward()
    item = NotSure(slot="level_ml", text="", partial=Slots(kind="mark", bed="7"))
    asked = ward.tells("Amy", item, at="08:01")
    assert "what does the line read, in mL?" in asked.reply
    assert "Bed 7, 08:01, line 340 mL" in ward.says("Amy", "340", at="08:03").reply


def test_one_missing_slot_after_the_other() -> None:
    ward = Ward()
    ward.tells("Amy", NotSure(slot="bed", text="", partial=Slots(kind="mark")), at="08:01")
    asked = ward.tells("Amy", Answered(bed="7"), at="08:02")
    assert "what does the line read, in mL?" in asked.reply
    assert "Bed 7, 08:01, line 340 mL" in ward.says("Amy", "340", at="08:03").reply


def test_a_danger_in_one_of_the_readings_is_told() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:00")
    readings = tuple(Report(bed="7", fact=Line(level_ml=level)) for level in (150, 750))
    item = NotSure(slot="level_ml", text="", choices=(150, 750), readings=readings)
    asked = ward.tells("Amy", item, at="09:00")
    assert asked.reply.startswith("URGENT if right: 650 mL in 60 min")


def test_a_stretch_that_means_nothing_is_told_and_not_recorded() -> None:
    ward = Ward()
    answer = ward.tells("Amy", NotSure(slot="kind", text="blue tulips"), at="08:01")
    assert answer.status == "told"
    assert 'Not understood, not recorded: "blue tulips"' in answer.reply


def test_no_drops_what_was_asked() -> None:
    ward = Ward()
    ward.tells("Amy", level_or_amount(), at="08:01")
    ward.says("Amy", "no", at="08:02")
    assert ward.unsettled() == ()
    assert ward.entries() == []


def test_a_query_whose_bed_was_not_clear_is_answered_after_the_bed() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:00")
    partial = Slots(kind="asked", values=(("topic", "last"),))
    ward.tells("Dan", NotSure(slot="bed", text="", choices=("7", "17"), partial=partial), at="08:01")
    assert "100 mL" in ward.tells("Dan", Answered(bed="7"), at="08:02").reply


def test_a_bed_alone_answers_which_bed_and_is_a_query_otherwise() -> None:
    ward = Ward()
    ward.says("Amy", "bed 31 mark 100 at 0800", at="08:00")
    assert ward.tells("Amy", Answered(bed="9"), at="08:01").status == "recorded"
    assert ward.tells("Amy", Query(topic="last", bed="9"), at="08:02").status == "told"


@pytest.mark.parametrize(
    "text",
    ["thanks", "Thank you so much!", "ok great", "hi", "good morning all", "ta", "grand", "no worries"],
)
def test_small_talk_is_not_told_that_it_was_not_understood(text: str) -> None:
    answer = Ward().tells("Amy", NotSure(slot="kind", text=text), at="08:01")
    assert answer.status == "told"
    assert "Nothing to record" in answer.reply


@pytest.mark.parametrize(
    "text", ["ok 340", "thanks bed 7", "good drainage", "smoke", "tap", "grandad", "..."]
)
def test_what_may_mean_something_is_no_small_talk(text: str) -> None:
    assert "Not understood" in Ward().tells("Amy", NotSure(slot="kind", text=text), at="08:01").reply


def test_a_lone_number_that_is_not_the_level_is_the_time() -> None:
    ward = Ward()
    asked = ward.says("Amy", "bed 12 at 1900", at="19:02")
    assert "Bed 12, 19:00 or 1,900 mL: what does the line read, in mL?" in asked.reply
    assert "Bed 12, 19:00, line 640 mL." in ward.says("Amy", "640", at="19:03").reply


def test_a_lone_number_that_is_the_level_was_read_when_it_was_sent() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 at 1855", at="19:02")
    assert "Bed 12, 19:02, line 1,855 mL." in ward.says("Amy", "1855", at="19:03").reply


def test_a_level_asked_for_can_be_answered_with_its_time() -> None:
    ward = Ward()
    ward.says("Amy", "bed 12 at 1900", at="19:02")
    assert "Bed 12, 18:50, line 300 mL." in ward.says("Amy", "300 at 1850", at="19:03").reply


def test_a_query_about_a_bed_that_the_unit_does_not_have_names_it() -> None:
    assert Ward().says("Amy", "bed 99?").reply.startswith("There is no bed 99 in Harbour Ward.")


@pytest.mark.parametrize("topic", ["rate", "capacity", "checks", "last"])
def test_what_can_be_told_of_every_bed_is_told_of_every_bed_where_none_is_named(topic: str) -> None:
    ward = Ward()
    ward.says("Amy", "bed 1 mark 100; bed 2 mark 200", at="06:00")
    told = ward.says("Amy", topic, at="06:01")
    assert told.status == "told"
    assert {"Bed 1", "Bed 2"} <= {line.partition(":")[0] for line in told.reply.split("\n")}


def test_numbers_that_no_answer_would_record_are_named_with_the_question() -> None:
    ward = Ward()
    partial = Slots(kind="mark", bed="12", values=(("level_ml", 120),))
    asked = NotSure(slot="at", text="", partial=partial, beside=("340", "1830", "14", "85"))
    told = ward.tells("Amy", asked, at="19:08")
    assert told.status == "question"
    assert (
        "Bed 12, 120 mL: at what time?\nAlso said, not recorded: 340, 1830, 14, 85. Send each" in told.reply
    )


@pytest.mark.parametrize("beside", [(), ("1900",), ("1900", "340")])
def test_the_level_and_the_time_that_are_asked_about_are_not_named_again(beside: tuple[str, ...]) -> None:
    asked = NotSure(slot="level_ml", text="", partial=Slots(kind="mark", bed="12"), beside=beside)
    assert "Also said" not in Ward().tells("Amy", asked, at="19:08").reply


def test_a_list_that_is_not_understood_is_to_be_sent_line_by_line() -> None:
    ward = Ward()
    text = "1300 rounds: 1 330 x 2 905 x 5 1480"
    told = ward.tells("Amy", NotSure(slot="kind", text=text, beside=("330", "905", "1480")), at="13:05")
    assert told.reply.startswith(f'Not understood, not recorded: "{text}". Send each line on its own, as in')
    assert "no open questions" in ward.says("Amy", "open", at="13:06").reply


@pytest.mark.parametrize(
    ("partial", "told"),
    [
        (Slots(kind="drained", bed="7", values=(("volume_ml", 60),)), "60 mL drained"),
        (Slots(kind="exchanged", bed="7", values=(("final_ml", 60),)), "canister change, final level 60 mL"),
        (Slots(kind="removed", bed="7", values=(("level_ml", 60),)), "tube removal, final level 60 mL"),
        (Slots(kind="placed", bed="7", values=(("level_ml", 60),)), "tube placement, opening level 60 mL"),
        (Slots(kind="corrected", bed="7", values=(("level_ml", 60),)), "correction to 60 mL"),
    ],
)
def test_a_number_that_is_no_line_does_not_look_like_one(partial: Slots, told: str) -> None:
    ward = Ward()
    asked = ward.tells("Amy", NotSure(slot="at", text="", partial=partial), at="08:01")
    assert asked.reply.startswith(f"Bed 7, {told}: at what time?")
    assert f"Not recorded yet: bed 7 {told}." in ward.says("Amy", "bed 9?", at="08:02").reply


def test_which_shift_is_asked_in_words_that_name_it() -> None:
    ward = Ward()
    ward.says("Amy", "bed 4 700 at 0200", at="02:00")
    asked = ward.says("Amy", "how much did 4 drain last night", at="03:12")
    assert asked.reply == "Bed 4: Not sure what you mean. First: this shift. Second: last shift."
    assert "Bed 4: Night shift so far" in ward.says("Amy", "first", at="03:13").reply


@pytest.mark.parametrize(
    ("answer", "recorded"), [("yes", "line 310 mL, closing"), ("320", "line 320 mL, closing"), ("no", "")]
)
def test_a_doubted_line_is_named_and_asked(answer: str, recorded: str) -> None:
    ward = Ward()
    asked = ward.says("Amy", "bed 7 closing 310, not sure though", at="18:50")
    assert asked.reply.startswith("Bed 7, 18:50, line 310 mL, closing. Right?")
    reply = ward.says("Amy", answer, at="18:52").reply
    assert recorded in reply
    assert recorded or "Not recorded" in reply


def test_a_line_on_somebody_elses_word_is_to_be_read_and_its_number_is_no_time() -> None:
    ward = Ward()
    asked = ward.says("Amy", "the tech says 7 is at 310", at="18:50")
    assert asked.reply.startswith("Bed 7: what does the line read, in mL?")
    assert "Bed 7, 18:50, line 312 mL" in ward.says("Amy", "312", at="18:52").reply


def test_goals_are_not_read_back_as_lines() -> None:
    assert "Right?" not in Ward().says("Amy", "goals: 3 440, 5 1260", at="18:50").reply


@pytest.mark.parametrize(
    ("answer", "told"),
    [
        ("no seven thirty five", "Bed 9, 09:00, line 735 mL. Right?"),
        ("seven thirty five", "735 mL: at what time?"),
        ("six ninety", "Bed 9, 07:45, line 690 mL. Right?"),
        ("seven forty five", "Bed 9, 09:00, line 745 mL. Right?"),
    ],
)
def test_a_number_that_may_be_a_time_is_none_where_the_answer_is_near_it(answer: str, told: str) -> None:
    ward = Ward()
    ward.says("Amy", "bed 9 640 at 0700", at="07:02")
    asked = ward.says("Amy", "bed nine seven forty five no leak swinging", at="09:00", channel="voice")
    assert "07:45 or 745 mL" in asked.reply
    assert told in ward.says("Amy", answer, at="09:01", channel="voice").reply


def test_a_bed_and_a_time_alone_ask_for_the_line() -> None:
    ward = Ward()
    assert "Bed 9, 08:45: what does the line read" in ward.says("Amy", "9 at 0845", at="09:00").reply
    assert "Bed 9, 08:45, line 640 mL." in ward.says("Amy", "640", at="09:01").reply
