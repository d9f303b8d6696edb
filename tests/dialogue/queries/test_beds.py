"""The charge nurse's summary: urgent beds first, then overdue ones, then the rest."""

from __future__ import annotations

import pytest

from bot.engine.entries import Away, Checked, Correction, Exchanged, FinalLevel, Line, Seen
from bot.wording.gsm import segments
from bot.wording.pages import PAGE_SEGMENTS
from tests.dialogue.queries.ward import BEN, CARLA, Ward


@pytest.fixture
def ward() -> Ward:
    """Bed 3 calm, bed 7 overdue, bed 12 bleeding, bed 14 with a reading that nobody confirmed."""
    ward = Ward()
    for bed, told in (
        ("3", "4 18:00 100, 19:00 130"),
        ("7", "4 15:00 100"),
        ("12", "4 18:00 100, 19:00 720"),
    ):
        ward.lines(bed, told)
        ward.tell("4 19:00", bed, Checked(seal_cm=2))
    ward.lines("14", "4 18:00 100, 19:00 120")
    ward.asks_back("4 18:30", "14", 1340)
    return ward


def whole(ward: Ward, at: str = "4 19:10") -> list[str]:
    """All pages in one."""
    found: list[str] = []
    number = 1
    while True:
        page = ward.asks(at, "beds", who=CARLA, page=number).lines
        found += [line for line in page if not line.startswith("Page ") and line not in found]
        if "say more" not in page[-1]:
            return found
        number += 1


def order(lines: list[str]) -> list[str]:
    return [line.split(":")[0] for line in lines if line.startswith("Bed ")]


def test_the_first_line_says_how_the_unit_stands(ward: Ward) -> None:
    assert whole(ward)[0] == "Ward 4: of 4 beds with drains 1 urgent, 1 overdue."


def test_urgent_comes_first_then_overdue_then_what_waits_then_the_rest(ward: Ward) -> None:
    assert order(whole(ward)) == ["Bed 12", "Bed 7", "Bed 14", "Bed 3"]


def test_an_urgent_bed_has_its_caution_spelled_out_under_it(ward: Ward) -> None:
    lines = whole(ward)
    below = lines[lines.index(next(line for line in lines if line.startswith("Bed 12"))) + 1]
    assert below.startswith("URGENT bed 12: 620 mL in 60 min")
    assert "amount_at_once" in {each.caution.code for each in ward.asks("4 19:10", "beds").cautions}


def test_a_row_has_the_line_its_age_the_shift_sum_and_the_rate(ward: Ward) -> None:
    ward.lines("3", "4 20:00 175")
    row = next(line for line in whole(ward, "4 20:05") if line.startswith("Bed 3"))
    assert row == "Bed 3: nothing open; 175 mL 20:00 (5 min ago), shift 45 mL since 19:00, 45 mL/h."


def test_a_reading_that_nobody_confirmed_is_spelled_out_under_its_bed(ward: Ward) -> None:
    lines = whole(ward)
    row = next(line for line in lines if line.startswith("Bed 14"))
    assert "1 unconfirmed" in row
    assert "1,340 mL" in lines[lines.index(row) + 1]
    assert ward.asks("4 19:10", "beds").tells_unconfirmed


def test_a_question_that_is_still_open_is_counted_on_its_bed(ward: Ward) -> None:
    ward.asks_back("4 20:01", "3", 150)
    row = next(line for line in whole(ward, "4 20:05") if line.startswith("Bed 3"))
    assert row.startswith("Bed 3: 1 open question; ")


def test_a_dangerous_question_makes_its_bed_urgent(ward: Ward) -> None:
    ward.asks_back("4 19:05", "3", 900, danger=True)
    assert set(order(whole(ward))[:2]) == {"Bed 3", "Bed 12"}


def test_an_unconfirmed_reading_of_a_bed_without_a_drain_is_not_lost(ward: Ward) -> None:
    ward.asks_back("4 18:30", "20", 777)
    assert any("777 mL" in line for line in whole(ward))
    assert whole(ward)[0].startswith("Ward 4: of 4 beds with drains")


def test_what_is_to_be_amended_is_counted_until_someone_says_that_it_was(ward: Ward) -> None:
    wrong = ward.tell("4 20:00", "3", Line(level_ml=190))
    ward.tell("4 20:00", "3", Correction(target=wrong.id, level_ml=160), entered="4 20:05", who=BEN)
    told = next(line for line in whole(ward, "4 20:10") if line.startswith("Bed 3"))
    ward.tell("4 20:12", "3", Seen(amended=True))
    after = next(line for line in whole(ward, "4 20:15") if line.startswith("Bed 3"))
    assert "1 to amend" in told
    assert "to amend" not in after


def test_a_patient_who_is_away_is_not_overdue(ward: Ward) -> None:
    ward.tell("4 15:10", "7", Away())
    row = next(line for line in whole(ward) if line.startswith("Bed 7"))
    assert "away" in row
    assert "overdue" not in row


def test_every_page_fits_a_phone_and_no_bed_is_left_out() -> None:
    ward = Ward()
    for bed in range(1, 25):
        ward.lines(str(bed), f"4 18:00 {bed * 10}, 19:00 {bed * 10 + 30}")
    number, seen = 1, []
    while True:
        reply = ward.asks("4 19:10", "beds", page=number)
        assert segments(reply.text) <= PAGE_SEGMENTS
        seen += order(list(reply.lines))
        if "say more" not in reply.lines[-1]:
            break
        number += 1
    assert sorted(seen) == sorted(f"Bed {bed}" for bed in range(1, 25))


def test_a_handoff_without_a_bed_is_the_summary(ward: Ward) -> None:
    assert ward.asks("4 19:10", "handoff") == ward.asks("4 19:10", "beds")


def test_after_an_exchange_a_row_names_the_new_canister_and_the_old_level_as_old(ward: Ward) -> None:
    ward.tell("4 19:05", "3", FinalLevel(level_ml=150))
    ward.tell("4 19:05", "3", Exchanged())
    row = next(line for line in whole(ward) if line.startswith("Bed 3"))
    assert "; new canister 19:05, old one 150 mL, shift " in row
    ward.lines("3", "4 19:08 10")
    row = next(line for line in whole(ward) if line.startswith("Bed 3"))
    assert "; 10 mL 19:08 (2 min ago), shift " in row
