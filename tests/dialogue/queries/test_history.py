"""The history erases nothing: who, when it happened, when it was entered, and what replaced it."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.engine.entries import (
    Correction,
    Exchanged,
    FinalLevel,
    Line,
    Moved,
    Placed,
    Reason,
    Removed,
    Seen,
    Withdrawal,
)
from tests.dialogue.queries.ward import BEN, Ward


@pytest.fixture
def ward() -> Ward:
    ward = Ward()
    ward.tell("4 14:10", "12", Placed(bed="12", opening_ml=0, reason=Reason.CARDIAC, weight_kg=80))
    ward.lines("12", "4 15:00 60")
    return ward


def test_each_row_has_what_happened_when_who_and_when_it_was_entered(ward: Ward) -> None:
    assert ward.asks("4 15:10", "history", "12").lines == (
        "Bed 12 history, newest first:",
        "15:00 line 60 mL (Amy, entered 15:02)",
        "14:10 tube placed: opening level 0 mL, after heart surgery, 80 kg (Amy, entered 14:12)",
    )


def test_a_late_entry_shows_both_days(ward: Ward) -> None:
    ward.tell("4 23:00", "12", Line(level_ml=200), entered="5 00:40", who=BEN)
    assert (
        "Wed 4 Mar 23:00 line 200 mL (Ben, entered Thu 5 Mar 00:40)"
        in ward.asks("5 01:00", "history", "12").lines
    )


def test_a_corrected_row_keeps_what_was_told_and_names_what_replaced_it_and_by_whom(ward: Ward) -> None:
    line = ward.tell("4 16:00", "12", Line(level_ml=1050))
    first = ward.tell("4 16:00", "12", Correction(target=line.id, level_ml=105), entered="4 16:10", who=BEN)
    ward.tell("4 16:00", "12", Correction(target=first.id, level_ml=110), entered="4 16:20")

    assert ward.asks("4 16:30", "history", "12").lines[1] == (
        "16:00 line 1,050 mL (Amy, entered 16:02);"
        " corrected to 105 mL by Ben 16:10; corrected to 110 mL by Amy 16:20"
    )


def test_a_corrected_time_is_told(ward: Ward) -> None:
    line = ward.tell("4 16:00", "12", Line(level_ml=90))
    new = line.at + timedelta(minutes=30)
    ward.tell("4 16:00", "12", Correction(target=line.id, at=new), entered="4 16:40")
    assert "corrected to 16:30 by Amy 16:40" in ward.asks("4 16:45", "history", "12").text


def test_a_withdrawn_row_stays_readable_and_so_does_the_withdrawal_of_a_correction(ward: Ward) -> None:
    line = ward.tell("4 16:00", "12", Line(level_ml=90))
    fix = ward.tell("4 16:00", "12", Correction(target=line.id, level_ml=95), entered="4 16:10")
    ward.tell("4 16:00", "12", Withdrawal(target=fix.id), entered="4 16:15")
    ward.tell("4 16:00", "12", Withdrawal(target=line.id), entered="4 16:20", who=BEN)

    assert ward.asks("4 16:30", "history", "12").lines[1] == (
        "16:00 line 90 mL (Amy, entered 16:02); corrected to 95 mL by Amy 16:10;"
        " that correction taken back by Amy 16:15; withdrawn by Ben 16:20"
    )


def test_a_line_that_was_put_on_another_bed_says_so(ward: Ward) -> None:
    line = ward.tell("4 16:00", "12", Line(level_ml=90))
    moved = Withdrawal(target=line.id, moved_to="0123456789abcdef-3")
    ward.tell("4 16:00", "12", moved, entered="4 16:05")
    assert "moved to another drain by Amy 16:05" in ward.asks("4 16:30", "history", "12").lines[1]


def test_a_line_that_was_put_on_another_bed_names_that_bed(ward: Ward) -> None:
    line = ward.tell("4 16:00", "12", Line(level_ml=90))
    there = ward.tell("4 16:00", "14", Line(level_ml=90))
    ward.tell("4 16:00", "12", Withdrawal(target=line.id, moved_to=there.id), entered="4 16:05")
    assert "moved to bed 14 by Amy 16:05" in ward.asks("4 16:30", "history", "12").lines[1]


def test_exchanges_moves_and_what_was_seen_are_rows_too(ward: Ward) -> None:
    ward.tell("4 16:00", "12", FinalLevel(level_ml=1860))
    ward.tell("4 16:00", "12", Exchanged())
    ward.tell("4 17:00", "12", Moved(from_bed="12", to_bed="14"))
    ward.tell("4 18:00", "14", Seen(amended=True))

    told = ward.asks("4 18:10", "history", "14").text

    assert "16:00 final level 1,860 mL" in told
    assert "16:00 canister changed, new one at 0 mL" in told
    assert "17:00 moved from bed 12 to bed 14" in told
    assert "18:00 chart said to be amended" in told


def test_the_history_of_a_removed_drain_can_be_asked_for_ever_after(ward: Ward) -> None:
    ward.tell("4 20:00", "12", Removed())
    lines = ward.asks("9 08:00", "history", "12").lines
    assert lines[0] == "Bed 12: no open drain, the last one was removed Wed 4 Mar 20:00."
    assert any("tube removed" in line for line in lines)


def test_the_rows_of_several_tubes_name_their_tube() -> None:
    ward = Ward()
    ward.lines("12", "4 18:00 300", tube="left")
    ward.lines("12", "4 19:00 120", tube="right")
    lines = ward.asks("4 19:10", "history", "12").lines
    assert lines[1].startswith("right: 19:00 line 120 mL")


def test_a_long_history_is_paged_newest_first_and_loses_no_row() -> None:
    ward = Ward()
    ward.lines("12", ", ".join(f"4 {7 + hour:02}:00 {100 + hour}" for hour in range(14)))

    pages = [ward.asks("4 21:10", "history", "12", page=number).lines for number in (1, 2, 3)]
    levels = [line.split("line ")[1].split(" mL")[0] for page in pages for line in page if " line " in line]

    assert pages[0][-1] == 'Page 1 of 2: say more ("history bed 12 page 2").'
    assert pages[1] == pages[2]
    assert levels[:14] == [str(level) for level in range(113, 99, -1)]


def test_a_history_over_one_tube_keeps_to_it() -> None:
    ward = Ward()
    ward.lines("12", "4 18:00 300", tube="left")
    ward.lines("12", "4 19:00 120", tube="right")
    lines = ward.asks("4 19:10", "history", "12", tube="left").lines
    assert lines[0] == "Bed 12 left history, newest first:"
    assert not [line for line in lines if "120 mL" in line]
