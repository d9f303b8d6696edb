"""The last line of a bed: what was read, what it charted, the running shift."""

from __future__ import annotations

from dataclasses import replace

import pytest

from bot.engine.entries import Correction, Exchanged, FinalLevel, Line, Moved, Placed, Removed, Withdrawal
from bot.engine.entries import Left as LeftUnit
from tests.dialogue.queries.ward import BEN, DAN, WARD_4, Ward


@pytest.fixture
def ward() -> Ward:
    ward = Ward()
    ward.lines("12", "4 07:00 700, 15:00 840, 19:00 1050")
    return ward


def test_the_first_line_of_the_reply_is_the_last_line_with_who_and_how_long_ago(ward: Ward) -> None:
    reply = ward.asks("4 19:35", "last", "12")
    assert reply.lines[0] == "Bed 12: 19:00 line 1,050 mL (Amy, 35 min ago)."
    assert reply.beds == ("12",)


def test_it_says_what_the_line_charted_and_by_which_subtraction(ward: Ward) -> None:
    assert ward.asks("4 19:35", "last", "12").lines[1] == "Charted 210 mL (1,050 - 840 at 15:00)."


def test_it_says_the_sum_of_the_shift_with_its_real_ends(ward: Ward) -> None:
    assert ward.asks("4 18:30", "last", "12").lines[2] == "Day shift so far 350 mL, 07:00-19:00."


def test_a_new_shift_without_a_line_has_no_sum_and_not_zero(ward: Ward) -> None:
    assert ward.asks("4 19:35", "last", "12").lines[2] == "Night shift so far: no line (last 19:00)."


def test_a_corrected_line_is_told_as_corrected(ward: Ward) -> None:
    ward.tell("4 20:00", "12", Line(level_ml=1100))
    target = ward.tell("4 21:00", "12", Line(level_ml=1200))
    ward.tell("4 21:00", "12", Correction(target=target.id, level_ml=1120), entered="4 21:05", who=BEN)

    reply = ward.asks("4 21:10", "last", "12")

    assert reply.lines[0] == "Bed 12: 21:00 line 1,120 mL (Amy, 10 min ago, corrected)."
    assert reply.lines[1] == "Charted 20 mL (1,120 - 1,100 at 20:00)."


def test_a_withdrawn_line_is_no_longer_the_last(ward: Ward) -> None:
    target = ward.tell("4 20:00", "12", Line(level_ml=1900))
    ward.tell("4 20:00", "12", Withdrawal(target=target.id), entered="4 20:05")

    assert ward.asks("4 20:10", "last", "12").lines[0].startswith("Bed 12: 19:00 line 1,050 mL")


def test_a_volume_across_an_exchange_says_so(ward: Ward) -> None:
    ward.tell("4 20:00", "12", FinalLevel(level_ml=1090))
    ward.tell("4 20:00", "12", Exchanged())
    ward.lines("12", "4 21:00 60")

    reply = ward.asks("4 21:10", "last", "12")

    assert reply.lines[1] == "Charted 60 mL (60 - 0, new canister since the line at 20:00)."
    assert reply.lines[2] == "Night shift so far 100 mL, 19:00-21:00."


def test_a_volume_past_a_missing_final_level_is_at_least(ward: Ward) -> None:
    ward.tell("4 20:00", "12", Exchanged())
    ward.lines("12", "4 21:00 60")

    reply = ward.asks("4 21:10", "last", "12")

    assert reply.lines[1].startswith("Charted at least 60 mL")
    assert reply.lines[2] == "Night shift so far at least 60 mL, 19:00-21:00."


def test_a_first_line_has_charted_nothing() -> None:
    ward = Ward()
    ward.lines("7", "4 18:00 630")

    reply = ward.asks("4 18:05", "last", "7")

    assert reply.lines[0] == "Bed 7: 18:00 line 630 mL (Amy, 5 min ago, baseline)."
    assert reply.lines[1] == "First line: nothing charted yet."


def test_a_day_that_is_not_today_is_named(ward: Ward) -> None:
    assert ward.asks("5 08:00", "last", "12").lines[0] == (
        "Bed 12: Wed 4 Mar 19:00 line 1,050 mL (Amy, 13 h ago)."
    )


def test_every_tube_of_the_bed_is_told_and_one_tube_alone_when_asked() -> None:
    ward = Ward()
    ward.lines("12", "4 18:00 300, 19:00 340", tube="left")
    ward.lines("12", "4 18:00 100, 19:00 120", tube="right")

    both = ward.asks("4 19:05", "last", "12").text
    right = ward.asks("4 19:05", "last", "12", tube="right").text

    assert "Bed 12 left: 19:00 line 340 mL" in both
    assert "Bed 12 right: 19:00 line 120 mL" in both
    assert "Bed 12 right: 19:00 line 120 mL" in right
    assert "left" not in right


def test_a_unit_that_charts_by_shift_is_told_that_the_step_is_not_charted() -> None:
    ward = Ward(unit=replace(WARD_4, policy=replace(WARD_4.policy, chart_by="shift")))
    ward.lines("12", "4 15:00 840, 18:00 1050")

    assert ward.asks("4 18:05", "last", "12").lines[1] == (
        "210 mL since 15:00 (1,050 - 840), charted only at the closing line."
    )


def test_a_bed_that_the_unit_does_not_have_is_said_plainly() -> None:
    reply = Ward().asks("4 19:00", "last", "40")
    assert reply.lines == ("There is no bed 40 in Ward 4.",)
    assert reply.beds == ()


def test_a_bed_with_no_drain_is_said_plainly() -> None:
    assert Ward().asks("4 19:00", "last", "3").lines == ("Bed 3: no drain recorded.",)


def test_a_tube_that_the_bed_does_not_have_is_said_with_those_that_it_has() -> None:
    ward = Ward()
    ward.lines("12", "4 18:00 300", tube="left")

    assert ward.asks("4 19:00", "last", "12", tube="right").lines == (
        "Bed 12 has no right tube recorded; it has left.",
    )


def test_a_removed_drain_is_told_first_and_still_answers_for_a_day(ward: Ward) -> None:
    ward.tell("4 20:00", "12", FinalLevel(level_ml=1080))
    ward.tell("4 20:00", "12", Removed())

    reply = ward.asks("4 21:00", "last", "12")

    assert reply.lines[0] == "Bed 12: no open drain, the last one was removed 20:00."
    assert "20:00 final level 1,080 mL" in reply.lines[1]


def test_a_drain_that_was_removed_days_ago_answers_no_more(ward: Ward) -> None:
    ward.tell("4 20:00", "12", Removed())

    assert ward.asks("7 08:00", "last", "12").lines == (
        "Bed 12: no open drain, the last one was removed Wed 4 Mar 20:00.",
    )


def test_a_patient_who_left_is_not_said_to_have_had_the_tube_removed(ward: Ward) -> None:
    ward.tell("4 20:00", "12", LeftUnit())
    assert "the patient left the unit 20:00" in ward.asks("4 21:00", "last", "12").lines[0]


def test_a_removed_tube_is_told_as_removed_while_the_other_one_stays_open() -> None:
    ward = Ward()
    ward.lines("12", "4 18:00 300", tube="left")
    ward.lines("12", "4 18:00 100", tube="right")
    ward.tell("4 19:00", "12", Removed(), tube="left")

    left = ward.asks("4 19:10", "last", "12", tube="left")
    bed = ward.asks("4 19:10", "last", "12")

    assert left.lines[0] == "Bed 12 left: no open drain, the last one was removed 19:00."
    assert "18:00 line 300 mL" in left.lines[1]
    assert bed.lines[0].startswith("Bed 12 right: 18:00 line 100 mL")
    assert "left" not in bed.text


def test_a_new_drain_in_the_bed_answers_alone(ward: Ward) -> None:
    ward.tell("4 20:00", "12", Removed())
    ward.new_drain("12")
    ward.tell("4 21:00", "12", Placed(bed="12", opening_ml=0))

    text = ward.asks("4 21:05", "last", "12").text

    assert "opening level 0 mL" in text
    assert "1,050" not in text


def test_a_drain_that_moved_answers_in_its_new_bed_and_the_old_one_says_where_it_went(ward: Ward) -> None:
    ward.tell("4 19:30", "12", Moved(from_bed="12", to_bed="14"))

    assert ward.asks("4 19:40", "last", "14").lines[0].startswith("Bed 14: 19:00 line 1,050 mL")
    assert ward.asks("4 19:40", "last", "12").lines == ("Bed 12: no drain here now, it moved to bed 14.",)


def test_the_whole_unit_is_listed_in_the_order_of_its_beds() -> None:
    ward = Ward()
    ward.lines("14", "4 19:00 220")
    ward.lines("3", "4 19:00 80")

    reply = ward.asks("4 19:05", "last")

    assert reply.lines == (
        "Ward 4, last lines, 2 beds with drains:",
        "Bed 3: 19:00 line 80 mL (Amy, 5 min ago, baseline).",
        "Bed 14: 19:00 line 220 mL (Amy, 5 min ago, baseline).",
    )
    assert reply.beds == ("3", "14")


def test_a_unit_without_drains_says_so() -> None:
    assert Ward().asks("4 19:00", "last").lines == ("Ward 4: no open drains.",)


def test_a_reader_may_ask_anything(ward: Ward) -> None:
    assert ward.asks("4 19:35", "last", "12", who=DAN) == ward.asks("4 19:35", "last", "12")


def test_another_unit_on_the_same_database_sees_none_of_it(ward: Ward) -> None:
    other = ward.with_unit(replace(WARD_4, id="ward-5", name="Ward 5"))

    assert other.asks("4 19:35", "last", "12").lines == ("Bed 12: no drain recorded.",)
    assert other.asks("4 19:35", "beds").lines == ("Ward 5: no open drains.",)


def test_a_placement_whose_level_is_not_known_has_no_line_yet() -> None:
    ward = Ward()
    ward.tell("4 14:10", "12", Placed(bed="12"))

    assert ward.asks("4 14:20", "last", "12").lines == ("Bed 12: no line yet.",)


@pytest.mark.parametrize(
    ("final", "told"),
    [
        (
            (FinalLevel(level_ml=1080),),
            "20:00 final level 1,080 mL (Amy, 5 min ago); new canister since 20:00 at 0 mL.",
        ),
        ((), "19:00 line 1,050 mL (Amy, 65 min ago); new canister since 20:00 at 0 mL."),
    ],
)
def test_after_an_exchange_the_last_level_is_told_to_be_of_the_canister_before(
    final: tuple[FinalLevel, ...], told: str
) -> None:
    ward = Ward()
    ward.lines("12", "4 15:00 840, 19:00 1050")
    for level in final:
        ward.tell("4 20:00", "12", level)
    ward.tell("4 20:00", "12", Exchanged())

    assert ward.asks("4 20:05", "last", "12").lines[0] == f"Bed 12: {told}"
