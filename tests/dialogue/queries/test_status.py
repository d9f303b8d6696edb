"""What is due, room and forecast, the last check, the rate: measured when, and what is not known."""

from __future__ import annotations

import pytest

from bot.engine.entries import Away, Checked, Exchanged, FinalLevel, Incident, Line, Ordered, What
from tests.dialogue.queries.ward import BEN, Ward


@pytest.fixture
def ward() -> Ward:
    """45 mL in the last hour, 40 in the one before."""
    ward = Ward()
    ward.lines("12", "4 17:00 965, 18:00 1005, 19:00 1050")
    return ward


def test_capacity_tells_the_room_left_and_when_it_is_three_quarters_full_and_full(ward: Ward) -> None:
    assert ward.asks("4 19:10", "capacity", "12").lines == (
        "Bed 12: room for 950 mL (line 1,050 of 2,000 at 19:00)."
        " At the recent 45 mL/h: three quarters (1,500 mL) about Thu 5 Mar 05:00,"
        " full about Thu 5 Mar 16:06.",
    )


def test_capacity_past_three_quarters_says_so_and_looks_ahead_to_full() -> None:
    ward = Ward()
    ward.lines("12", "4 18:00 1500, 19:00 1600")

    told = ward.asks("4 19:10", "capacity", "12").lines[0]

    assert "Three quarters or more full. At the recent 100 mL/h: full about 23:00." in told


def test_capacity_of_a_new_canister_counts_from_what_it_opened_at(ward: Ward) -> None:
    ward.tell("4 19:05", "12", FinalLevel(level_ml=1060))
    ward.tell("4 19:05", "12", Exchanged(opening_ml=40))

    told = ward.asks("4 19:10", "capacity", "12").lines[0]

    assert told.startswith("Bed 12: room for 1,960 mL (new canister, no line on it yet).")


def test_capacity_with_a_single_line_has_no_forecast() -> None:
    ward = Ward()
    ward.lines("12", "4 19:00 1050")
    assert ward.asks("4 19:10", "capacity", "12").lines[0].endswith("No recent rate, so no forecast.")


def test_capacity_with_nothing_draining_says_that_it_does_not_fill() -> None:
    ward = Ward()
    ward.lines("12", "4 18:00 1050, 19:00 1050")
    assert "At the recent 0 mL/h it does not fill soon." in ward.asks("4 19:10", "capacity", "12").text


def test_a_full_canister_is_said_to_be_full() -> None:
    ward = Ward()
    ward.lines("12", "4 18:00 1950, 19:00 2000")
    assert "room for 0 mL" in ward.asks("4 19:10", "capacity", "12").lines[0]
    assert "It is full." in ward.asks("4 19:10", "capacity", "12").lines[0]


def test_a_forecast_from_a_long_stretch_is_called_an_average() -> None:
    ward = Ward()
    ward.lines("12", "4 15:00 850, 19:00 1050")
    assert "At the recent average 50 mL/h" in ward.asks("4 19:10", "capacity", "12").text


def test_a_canister_that_was_tipped_over_has_no_room_to_tell(ward: Ward) -> None:
    ward.tell("4 19:05", "12", Incident(what=What.TIPPED))
    assert ward.asks("4 19:10", "capacity", "12").lines[0] == (
        "Bed 12: the canister was tipped over, so the room left and the forecast are not known."
    )


def test_the_capacity_of_the_unit_has_the_fullest_canister_first(ward: Ward) -> None:
    ward.lines("3", "4 19:00 1700")
    lines = ward.asks("4 19:10", "capacity").lines
    assert lines[0] == "Ward 4, capacity, 2 beds with drains:"
    assert [line.split(":")[0] for line in lines[1:]] == ["Bed 3", "Bed 12"]


def test_the_rate_is_told_with_the_stretch_that_it_was_measured_over(ward: Ward) -> None:
    assert ward.asks("4 19:10", "rate", "12").lines == (
        "Bed 12: 45 mL/h (18:00-19:00, 10 min ago). Before: 17:00-18:00 40 mL/h.",
    )


def test_a_rate_over_hours_is_an_average() -> None:
    ward = Ward()
    ward.lines("12", "4 15:00 850, 19:00 1050")
    assert ward.asks("4 19:10", "rate", "12").lines == (
        "Bed 12: average 50 mL/h (15:00-19:00, 10 min ago), the last hour alone not known.",
    )


def test_there_is_no_rate_without_two_lines() -> None:
    ward = Ward()
    ward.lines("12", "4 19:00 1050")
    assert ward.asks("4 19:10", "rate", "12").lines[0] == (
        "Bed 12: no rate: it takes two lines at least 45 min apart."
    )


def test_the_rates_of_the_tubes_are_added_up_where_each_has_lines() -> None:
    ward = Ward()
    ward.lines("12", "4 18:00 300, 19:00 340", tube="left")
    ward.lines("12", "4 18:00 100, 19:00 120", tube="right")

    assert ward.asks("4 19:10", "rate", "12").lines[:3] == (
        "Bed 12, all tubes: 60 mL/h (18:00-19:00, 10 min ago).",
        "Bed 12 left: 40 mL/h (18:00-19:00, 10 min ago).",
        "Bed 12 right: 20 mL/h (18:00-19:00, 10 min ago).",
    )


def test_the_rates_of_tubes_that_were_read_apart_are_not_added_up() -> None:
    ward = Ward()
    ward.lines("12", "4 18:00 300, 19:00 340", tube="left")
    ward.lines("12", "4 16:30 100, 18:30 120", tube="right")

    assert ward.asks("4 19:10", "rate", "12").lines[0] == (
        "Bed 12, all tubes: no rate: it takes lines of all tubes in the same 15 min, twice."
    )


def test_due_tells_the_next_line_the_closing_line_and_the_check(ward: Ward) -> None:
    ward.tell("4 19:00", "12", Checked(seal_cm=2))
    assert ward.asks("4 19:10", "due", "12").lines == (
        "Bed 12: line due 20:00, check due 23:00, closing line due Thu 5 Mar 07:00.",
    )


def test_what_is_overdue_comes_first_with_how_long(ward: Ward) -> None:
    ward.tell("4 17:00", "12", Checked(seal_cm=2))
    told = ward.asks("4 20:30", "due", "12").lines[0]
    assert told.startswith("Bed 12: line overdue since 20:00 (30 min), check due 21:00")


def test_nothing_is_due_while_the_patient_is_away(ward: Ward) -> None:
    ward.tell("4 19:20", "12", Away())
    assert ward.asks("4 22:00", "due", "12").lines[0] == "Bed 12: patient away, nothing due until back."


def test_of_the_unit_a_bed_whose_patient_is_away_is_named_last(ward: Ward) -> None:
    ward.lines("14", "4 18:00 300, 19:00 340")
    ward.tell("4 19:20", "12", Away())
    told = ward.asks("4 22:00", "due").lines
    assert [line.split(":")[0] for line in told[1:]] == ["Bed 14", "Bed 12"]
    assert told[-1] == "Bed 12: patient away, nothing due until back."


def test_due_of_several_tubes_names_the_tube() -> None:
    ward = Ward()
    ward.lines("12", "4 18:00 300, 19:00 340", tube="left")
    ward.lines("12", "4 18:00 100, 18:30 120", tube="right")
    told = ward.asks("4 19:10", "due", "12").lines[0]
    assert "right line due 19:30" in told
    assert "left line due 20:00" in told


def test_the_unit_is_told_the_bed_that_waits_longest_first(ward: Ward) -> None:
    ward.lines("3", "4 15:00 100")
    lines = ward.asks("4 19:10", "due").lines
    assert lines[0] == "Ward 4, what is due, 2 beds with drains:"
    assert lines[1].startswith("Bed 3: line overdue since 16:00 (3 h 10 min)")
    assert lines[2].startswith("Bed 12:")


def test_checks_give_the_last_check_and_what_earlier_ones_add(ward: Ward) -> None:
    ward.tell("4 14:00", "12", Ordered(suction_cmh2o=20))
    ward.tell("4 15:00", "12", Checked(seal_cm=2, suction_cmh2o=20, wall_mmhg=90, air_leak="intermittent"))
    ward.tell("4 18:00", "12", Checked(air_leak="none", tidaling=True, fluid="serosanguineous"), who=BEN)

    assert ward.asks("4 19:10", "checks", "12").lines == (
        "Bed 12: last check 18:00 no air leak, tidaling, serosanguineous (Ben).",
        "Earlier: 15:00 seal 2 cm, suction 20 cmH2O, wall 90 mmHg (Amy).",
        "Ordered suction 20 cmH2O (14:00).",
    )


def test_a_check_of_zero_and_no_is_told_and_not_taken_for_unknown(ward: Ward) -> None:
    ward.tell("4 18:00", "12", Checked(seal_cm=0, suction_cmh2o=0, tidaling=False, leak_grade=0))
    assert ward.asks("4 19:10", "checks", "12").lines[0] == (
        "Bed 12: last check 18:00 leak grade 0, no tidaling, seal 0 cm, water seal only (Amy)."
    )


def test_a_bed_without_a_check_says_so(ward: Ward) -> None:
    assert ward.asks("4 19:10", "checks", "12").lines == ("Bed 12: no check recorded.",)


def test_the_checks_of_the_unit_are_one_row_a_tube(ward: Ward) -> None:
    ward.tell("4 18:00", "12", Checked(air_leak="none"))
    ward.lines("3", "4 19:00 100")
    assert ward.asks("4 19:10", "checks").lines == (
        "Ward 4, last checks, 2 beds with drains:",
        "Bed 3: no check recorded.",
        "Bed 12: last check 18:00 no air leak (Amy).",
    )


@pytest.mark.parametrize("topic", ["total", "rate", "trend", "due", "capacity", "checks", "chart", "history"])
def test_an_urgent_caution_is_told_whatever_was_asked(topic: str) -> None:
    ward = Ward()
    ward.tell("4 18:00", "12", Line(level_ml=100))
    ward.tell("4 19:00", "12", Line(level_ml=720))

    reply = ward.asks("4 19:05", topic, "12")  # type: ignore[arg-type]

    assert any(line.startswith("URGENT") and "620 mL" in line for line in reply.lines)
    assert "amount_at_once" in {each.caution.code for each in reply.cautions}
    assert {each.bed for each in reply.cautions} == {"12"}


@pytest.mark.parametrize("topic", ["last", "total", "rate", "due", "capacity", "checks"])
def test_a_list_over_the_unit_begins_with_every_urgent_caution(topic: str, ward: Ward) -> None:
    ward.lines("3", "4 18:00 100, 19:00 720")

    reply = ward.asks("4 19:05", topic)  # type: ignore[arg-type]

    assert reply.lines[1].startswith("URGENT bed 3: 620 mL in 60 min")
    assert {each.bed for each in reply.cautions} == {"3"}
