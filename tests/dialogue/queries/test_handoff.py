"""The handoff in SBAR order: what the next nurse must know, and nothing that tells them what to do."""

from __future__ import annotations

import pytest

from bot.engine.entries import (
    Away,
    Checked,
    Correction,
    Exchanged,
    FinalLevel,
    Incident,
    Line,
    Moved,
    Placed,
    Reason,
    Seen,
    What,
)
from tests.dialogue.queries.ward import BEN, Ward


@pytest.fixture
def ward() -> Ward:
    """A drain of the second day, with an exchange in the night, calm."""
    ward = Ward()
    placed = Placed(bed="12", tube="left", opening_ml=0, reason=Reason.LUNG, weight_kg=80.5)
    ward.tell("3 14:10", "12", placed, tube="left")
    ward.lines("12", "3 19:00 200, 4 03:00 400", tube="left")
    ward.tell("4 03:30", "12", FinalLevel(level_ml=420), tube="left")
    ward.tell("4 03:30", "12", Exchanged(), tube="left")
    ward.lines("12", "4 07:00 60, 15:00 140, 17:00 160, 18:00 175, 19:00 200, 20:00 230", tube="left")
    ward.tell("4 20:00", "12", Checked(seal_cm=2, air_leak="none"), tube="left")
    return ward


def told(ward: Ward, at: str = "4 20:10", bed: str = "12") -> tuple[str, ...]:
    return ward.asks(at, "handoff", bed).lines


def part(lines: tuple[str, ...], letter: str) -> str:
    return next(line for line in lines if line.startswith((f"{letter}:", f"{letter} ")))


def test_the_parts_stand_in_the_order_of_sbar(ward: Ward) -> None:
    letters = [line[0] for line in told(ward) if line[1:2] == ":"]
    assert letters == ["S", "B", "A", "R"]


def test_the_situation_has_bed_tube_day_reason_weight_and_last_line(ward: Ward) -> None:
    assert told(ward)[0] == (
        "S: Bed 12 left, day 2, after lung surgery, 80.5 kg. Last 20:00 line 230 mL (Amy, 10 min ago)."
    )


def test_the_background_has_placement_and_exchanges(ward: Ward) -> None:
    assert part(told(ward), "B") == "B: placed Tue 3 Mar 14:10; canister changed 03:30."


def test_the_background_has_moves_and_incidents_and_a_missing_final_level(ward: Ward) -> None:
    ward.tell("4 19:20", "12", Incident(what=What.KINKED), tube="left")
    ward.tell("4 19:30", "12", Moved(from_bed="12", to_bed="14"), tube="left")
    ward.tell("4 20:05", "14", Exchanged(), tube="left")

    background = part(told(ward, bed="14"), "B")

    assert "moved from bed 12 to bed 14 19:30" in background
    assert "kinked 19:20" in background
    assert "canister changed 03:30 and 20:05 (no final level of 1)" in background


def test_the_assessment_has_the_shifts_the_day_the_whole_and_the_rate(ward: Ward) -> None:
    assessment = part(told(ward), "A")
    assert "Night shift so far 30 mL, 19:00-20:00. Day shift 140 mL, 07:00-19:00." in assessment
    assert "Night shift 280 mL, Tue 3 Mar 19:00 to 07:00." in assessment
    assert "In all 650 mL, Tue 3 Mar 14:10 to 20:00." in assessment
    assert "Rate 30 mL/h (19:00-20:00, 10 min ago)." in assessment
    assert "18:00-19:00 25 mL/h" in assessment


def test_the_assessment_ends_with_the_forecast_and_the_last_check_follows(ward: Ward) -> None:
    lines = told(ward)
    assert "At the recent 30 mL/h: three quarters (1,500 mL) about" in part(lines, "A")
    assert "Bed 12 left: last check 20:00 no air leak, seal 2 cm (Amy)." in lines


def test_what_is_due_comes_last(ward: Ward) -> None:
    assert part(told(ward), "R") == (
        "R: line due 21:00, check due Thu 5 Mar 00:00, closing line due Thu 5 Mar 07:00."
    )


def test_an_urgent_caution_follows_the_situation_at_once(ward: Ward) -> None:
    ward.lines("12", "4 21:00 860", tube="left")
    lines = told(ward, "4 21:05")
    assert lines[0].startswith("S: ")
    assert lines[1].startswith("URGENT")
    assert "630 mL" in "".join(line for line in lines if line.startswith("URGENT"))


def test_an_amendment_stays_until_someone_says_that_it_was_made(ward: Ward) -> None:
    line = ward.tell("4 21:00", "12", Line(level_ml=300), tube="left")
    ward.tell(
        "4 21:00", "12", Correction(target=line.id, level_ml=250), tube="left", entered="4 21:05", who=BEN
    )
    before = told(ward, "4 21:10")
    ward.tell("4 21:15", "12", Seen(amended=True), tube="left")
    after = told(ward, "4 21:20")

    assert "Amend: 20:00-21:00 70 to 20 mL." in before
    assert not [each for each in after if each.startswith("Amend")]


def test_unconfirmed_readings_and_open_questions_are_told_to_anyone(ward: Ward) -> None:
    ward.asks_back("4 19:00", "12", 1340)
    ward.asks_back("4 20:08", "12", 990)

    reply = ward.asks("4 20:10", "handoff", "12", who=BEN)

    assert any(line.startswith("Unconfirmed: ") and "1,340 mL" in line for line in reply.lines)
    assert any("is 990 mL right?" in line for line in reply.lines)
    assert reply.tells_unconfirmed


def test_a_drain_found_without_its_placement_says_so() -> None:
    ward = Ward()
    ward.lines("3", "4 18:00 100, 19:00 130")
    lines = told(ward, "4 19:10", "3")
    assert lines[0].startswith("S: Bed 3, day 1 here (placement not told), reason not told.")
    assert part(lines, "B") == "B: first line 18:00; first canister."


def test_each_tube_has_its_own_part_and_what_is_due_is_told_once() -> None:
    ward = Ward()
    ward.lines("12", "4 18:00 300, 19:00 340", tube="left")
    ward.lines("12", "4 18:00 100, 19:00 120", tube="right")

    lines = told(ward, "4 19:10")

    assert [line.split(":")[0] for line in lines if line[:2] in ("S:", "B ", "A ", "R:")] == [
        "S", "S", "B left", "A left", "B right", "A right", "R",
    ]  # fmt: skip


def test_a_patient_who_is_away_is_said_to_be_away(ward: Ward) -> None:
    ward.tell("4 20:05", "12", Away(), tube="left")
    assert told(ward)[0].endswith("; patient away.")
