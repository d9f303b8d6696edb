"""Lines, exchanges, falls, tip-overs, corrections: what the ledger makes of them."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.engine.entries import (
    Away,
    Back,
    Described,
    FinalLevel,
    Left,
    Line,
    Moved,
    Opened,
    Placed,
    Reason,
    Removed,
    What,
)
from bot.engine.ledger import fold
from bot.engine.volumes import intervals, total
from tests.engine.sheet import SCHEDULE, Sheet, at


def charted(sheet: Sheet) -> list[int]:
    return [one.volume_ml for one in intervals(sheet.ledger, SCHEDULE)]


def uncertain(sheet: Sheet) -> list[bool]:
    return [one.at_least for one in intervals(sheet.ledger, SCHEDULE)]


def test_a_first_line_is_a_baseline_and_charts_nothing() -> None:
    sheet = Sheet()
    sheet.mark("19:00", 630)
    assert charted(sheet) == []
    assert total(sheet.ledger).volume_ml is None
    assert sheet.ledger.levels[0].baseline


def test_a_line_charts_the_difference_to_the_line_before() -> None:
    """Worked case: 1,050 at 19:00, then 1,180 at 23:00 is 130 mL (rule: NSW ACI)."""
    sheet = Sheet()
    sheet.marks(t1900=1050, t2300=1180)
    assert charted(sheet) == [130]


def test_across_an_exchange_old_and_new_canister_add_up() -> None:
    """Worked case: line 1,820, closed at 1,860, new one 60: 40 + 60 = 100 mL."""
    sheet = Sheet()
    sheet.mark("03:00", 1820)
    sheet.exchanged("03:30", final_ml=1860)
    sheet.mark("04:00", 60)
    assert charted(sheet) == [40, 60]
    assert uncertain(sheet) == [False, False]
    assert sheet.ledger.final_missing == ()


def test_without_a_final_level_the_sum_is_at_least_until_it_is_told() -> None:
    sheet = Sheet()
    sheet.mark("03:00", 1820)
    exchange = sheet.exchanged("03:30")
    sheet.mark("04:00", 60)
    assert (charted(sheet), uncertain(sheet)) == ([60], [True])
    assert [*sheet.ledger.final_missing] == [exchange]
    sheet.tells("05:00", FinalLevel(level_ml=1860, exchange=exchange))
    assert (charted(sheet), uncertain(sheet)) == ([40, 60], [False, False])
    assert not sheet.ledger.final_missing
    assert sheet.ledger.levels[1].at == at("03:30")


def test_a_new_canister_that_opens_at_40_counts_from_40() -> None:
    sheet = Sheet()
    sheet.mark("03:00", 1820)
    sheet.exchanged("03:30", final_ml=1860, opening_ml=40)
    sheet.mark("04:00", 60)
    assert charted(sheet) == [40, 20]


def test_a_line_told_before_the_exchange_of_its_minute_was_read_on_the_old_canister() -> None:
    sheet = Sheet()
    sheet.marks(t1800=1820, t1900=1860)
    sheet.exchanged("19:00")
    sheet.mark("20:00", 30)
    assert sheet.totals() == (0, 40, 70)


def test_a_line_told_after_the_exchange_of_its_minute_was_read_on_the_new_canister() -> None:
    sheet = Sheet()
    sheet.mark("18:00", 1820)
    sheet.exchanged("19:00", final_ml=1860)
    sheet.mark("19:00", 5)
    assert sheet.totals() == (0, 40, 45)


def test_an_exchange_as_the_first_word_of_a_drain_opens_it() -> None:
    sheet = Sheet()
    sheet.exchanged("08:00")
    sheet.mark("09:00", 60)
    assert (charted(sheet), uncertain(sheet)) == ([60], [False])


def test_a_fall_is_a_new_baseline_and_sums_across_it_are_at_least() -> None:
    sheet = Sheet()
    sheet.marks(t0800=1180, t0900=1130, t1000=1150)
    assert sheet.totals() == (0, 0, 20)
    assert charted(sheet) == [20]
    assert "line_fell" in sheet.ledger.levels[1].codes
    assert total(sheet.ledger).at_least


def test_a_fall_is_no_fall_any_more_when_the_line_before_it_is_corrected() -> None:
    sheet = Sheet()
    wrong = sheet.mark("08:00", 1180)
    sheet.tells("09:00", Line(level_ml=1130, accepted=("line_fell",)))
    sheet.corrects(wrong, 1080)
    assert charted(sheet) == [50]
    assert "line_fell" not in sheet.ledger.levels[1].codes


def test_after_a_tip_over_nothing_is_charted_until_an_exchange() -> None:
    sheet = Sheet()
    sheet.marks(t0800=100, t0900=150)
    sheet.happens("09:30", What.TIPPED)
    sheet.marks(t1000=400, t1100=420)
    assert sheet.totals() == (0, 50, 50, 50)
    assert charted(sheet) == [50]
    sheet.exchanged("11:30")
    sheet.mark("12:00", 30)
    assert (charted(sheet), uncertain(sheet)) == ([50, 30], [False, True])
    assert sheet.ledger.final_missing == ()


def test_a_level_told_with_the_tip_over_is_not_trusted() -> None:
    sheet = Sheet()
    sheet.mark("08:00", 100)
    sheet.mark("09:00", 700)
    sheet.happens("09:00", What.TIPPED)
    assert sheet.totals() == (0, 0)


def test_a_corrected_line_changes_both_intervals_beside_it_and_not_their_sum() -> None:
    sheet = Sheet()
    sheet.marks(t1500=840)
    wrong = sheet.mark("19:00", 1050)
    sheet.mark("20:00", 1080)
    assert charted(sheet) == [210, 30]
    sheet.corrects(wrong, 1005)
    assert charted(sheet) == [165, 75]
    assert sheet.ledger.levels[1].corrected


def test_of_several_corrections_the_last_word_on_each_field_holds() -> None:
    sheet = Sheet()
    line = sheet.mark("19:00", 1050)
    sheet.corrects(line, 1005)
    sheet.corrects(line, moment=at("18:50"))
    last = sheet.corrects(line, 1010)
    assert (sheet.ledger.levels[0].level_ml, sheet.ledger.levels[0].at) == (1010, at("18:50"))
    sheet.withdraws(last)
    assert (sheet.ledger.levels[0].level_ml, sheet.ledger.levels[0].at) == (1005, at("18:50"))


def test_a_correction_of_a_correction_is_about_the_line() -> None:
    sheet = Sheet()
    line = sheet.mark("19:00", 1050)
    first = sheet.corrects(line, 1500)
    sheet.corrects(first, 1005)
    assert sheet.ledger.levels[0].level_ml == 1005
    sheet.withdraws(first)
    assert sheet.ledger.levels[0].level_ml == 1005


def test_a_withdrawal_that_is_withdrawn_gives_the_line_back() -> None:
    sheet = Sheet()
    line = sheet.mark("19:00", 1050)
    withdrawal = sheet.withdraws(line)
    assert not sheet.ledger.levels
    assert sheet.ledger.effective(line) is None
    sheet.withdraws(withdrawal)
    assert sheet.ledger.levels[0].level_ml == 1050


@pytest.mark.parametrize("target", ["nothing", "aaaaaaaaaaaaaaaa-9", "aaaaaaaaaaaaaaaa-2"])
def test_a_correction_of_nothing_or_of_itself_is_kept_and_changes_nothing(target: str) -> None:
    sheet = Sheet()
    sheet.mark("19:00", 1050)
    sheet.corrects(target, 7)
    sheet.withdraws(target)
    assert sheet.ledger.levels[0].level_ml == 1050
    assert len(sheet.ledger.entries) == 3


def test_the_opening_of_a_placement_and_of_an_exchange_can_be_corrected() -> None:
    sheet = Sheet()
    placed = sheet.placed("08:00")
    sheet.mark("09:00", 100)
    exchange = sheet.exchanged("09:30", final_ml=110)
    sheet.mark("10:00", 60)
    sheet.corrects(placed, 30)
    sheet.corrects(exchange, 20)
    assert charted(sheet) == [70, 10, 40]


def test_a_final_level_follows_its_exchange_when_that_is_corrected_in_time() -> None:
    sheet = Sheet()
    sheet.mark("08:00", 1800)
    exchange = sheet.exchanged("09:00")
    sheet.tells("11:00", FinalLevel(level_ml=1900, exchange=exchange))
    sheet.corrects(exchange, moment=at("09:20"))
    assert sheet.ledger.levels[1].at == at("09:20")


def test_a_late_line_lands_on_the_canister_that_was_there_then() -> None:
    sheet = Sheet()
    sheet.mark("08:00", 1800)
    sheet.exchanged("09:00", final_ml=1900)
    sheet.mark("10:00", 50)
    sheet.tells("08:30", Line(level_ml=1850), told="10:30")
    assert charted(sheet) == [50, 50, 50]
    assert [level.canister for level in sheet.ledger.levels] == [0, 0, 0, 1]


@pytest.mark.parametrize(
    ("told", "repeats"), [("19:05", True), ("19:06", False), ("18:55", True), ("18:54", False)]
)
def test_a_line_of_the_same_level_within_5_min_is_counted_once(told: str, repeats: bool) -> None:
    sheet = Sheet()
    first = sheet.mark("19:00", 1050)
    again = sheet.mark(told, 1050)
    assert sheet.ledger.duplicates == (((again, first),) if repeats else ())
    assert len(sheet.ledger.levels) == 2 - repeats


def test_a_repeat_counts_again_when_the_line_that_it_repeats_is_withdrawn() -> None:
    sheet = Sheet()
    first = sheet.mark("19:00", 1050)
    again = sheet.mark("19:03", 1050)
    sheet.withdraws(first)
    assert [level.entry for level in sheet.ledger.levels] == [again]


def test_a_repeat_that_is_the_closing_line_makes_the_line_the_closing_one() -> None:
    sheet = Sheet()
    sheet.mark("18:58", 1050)
    sheet.mark("19:00", 1050, closing=True)
    assert [level.closing for level in sheet.ledger.levels] == [True]


def test_a_line_after_the_drain_is_out_never_raises() -> None:
    sheet = Sheet()
    sheet.mark("08:00", 100)
    sheet.tells("10:15", FinalLevel(level_ml=340))
    sheet.tells("10:15", Removed())
    sheet.mark("11:00", 350)
    assert sheet.totals() == (0, 240, 250)
    assert not sheet.ledger.is_open()
    assert sheet.ledger.is_open(at("10:00"))


@pytest.mark.parametrize(("final", "at_least"), [(True, False), (False, True)])
def test_a_drain_removed_without_a_final_level_drained_at_least_its_total(
    final: bool, at_least: bool
) -> None:
    sheet = Sheet()
    sheet.marks(t0800=100, t0900=150)
    if final:
        sheet.tells("10:15", FinalLevel(level_ml=340))
    sheet.tells("10:15", Removed())
    assert total(sheet.ledger).at_least is at_least


def test_a_placement_told_later_opens_the_canister() -> None:
    sheet = Sheet()
    sheet.mark("15:00", 60)
    sheet.tells("14:10", Placed(bed="12", opening_ml=0), told="15:30")
    assert charted(sheet) == [60]
    assert sheet.ledger.placed_at == at("14:10")


def test_a_placement_that_does_not_know_the_level_waits_for_a_baseline() -> None:
    sheet = Sheet()
    sheet.placed("14:10", opening_ml=None)
    sheet.marks(t1430=400, t1500=420)
    assert charted(sheet) == [20]


def test_the_drain_goes_with_the_patient_from_bed_to_bed() -> None:
    sheet = Sheet()
    sheet.tells("08:00", Opened(bed="12", tube="left"))
    sheet.tells("10:00", Moved(from_bed="12", to_bed="14"))
    ledger = sheet.ledger
    assert (ledger.bed, ledger.tube) == ("14", "left")
    assert [ledger.bed_at(at(clock)) for clock in ("07:00", "09:59", "10:00")] == ["12", "12", "14"]


def test_reason_and_weight_told_later_hold_and_the_last_word_wins() -> None:
    sheet = Sheet()
    sheet.placed("08:00", reason=Reason.LUNG)
    sheet.tells("09:00", Described(reason=Reason.CARDIAC))
    sheet.tells("10:00", Described(weight_kg=8))
    assert (sheet.ledger.reason, sheet.ledger.weight_kg) == (Reason.CARDIAC, 8)


def test_a_patient_is_away_until_back() -> None:
    sheet = Sheet()
    sheet.tells("08:00", Away())
    assert sheet.ledger.away
    sheet.tells("09:00", Back())
    assert (sheet.ledger.away, sheet.ledger.back_at) == (False, at("09:00"))


def test_a_patient_who_left_closes_the_drain_without_a_removal() -> None:
    sheet = Sheet()
    sheet.marks(t0800=100, t0900=150)
    sheet.tells("10:00", Left())
    assert sheet.ledger.closed_at == at("10:00")
    assert not total(sheet.ledger).at_least


def test_lines_are_found_by_moment_and_entry() -> None:
    sheet = Sheet()
    first, second = sheet.mark("08:00", 100), sheet.mark("09:00", 150)
    ledger = sheet.ledger
    before, after = ledger.level_before(at("09:00")), ledger.level_after(at("08:00"))
    assert before is not None
    assert after is not None
    assert (before.entry, after.entry) == (first, second)
    assert ledger.level_before(at("08:00")) is None
    assert ledger.level_after(at("09:00")) is None
    assert [level.entry for level in ledger.levels_at(at("08:00") + timedelta(seconds=30))] == [first]
    assert ledger.find(first) == sheet.entries[0]
    assert ledger.find("x") is None
    assert ledger.find("b" * 16 + "-1") is None


def test_entries_of_another_drain_are_left_out() -> None:
    one, other = Sheet(), Sheet(drain="b" * 16)
    one.marks(t0800=1, t0900=2)
    other.mark("08:30", 700)
    other.entries[0] = type(other.entries[0])(
        drain="b" * 16,
        position=9,
        at=at("08:30"),
        entered=at("08:30"),
        who="rn-1",
        message="m",
        payload=Line(level_ml=700),
    )
    assert fold([*one.entries, *other.entries]) == one.ledger
