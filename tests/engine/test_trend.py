"""What a trend picture shows is what the ledger holds, cut to the window."""

from __future__ import annotations

from dataclasses import replace

from bot.engine.trend import Struck, Trend, trend_of
from bot.engine.values import Caution, Severity
from tests.engine.sheet import SCHEDULE, Sheet, at, hourly, raised


def shown(sheet: Sheet, begin: str = "07:00", end: str = "23:00") -> Trend:
    """The trend of that window, with the cautions that the drain raises."""
    return trend_of(sheet.ledger, SCHEDULE, at(begin), at(end), raised(sheet))


def test_the_levels_of_the_window_come_after_the_last_one_before_it() -> None:
    trend = shown(hourly(50, 60, 70, 80), "10:30", "11:30")
    assert [level.level_ml for level in trend.levels] == [110, 180]
    assert [step.volume_ml for step in trend.steps] == [70]


def test_volumes_across_a_canister_add_up_to_the_difference_of_the_totals() -> None:
    sheet = hourly(100, 200)
    sheet.exchanged("11:00", final_ml=350)
    sheet.mark("12:00", 40)
    trend = shown(sheet)
    assert trend.exchanges == (at("11:00"),)
    assert sum(step.volume_ml for step in trend.steps) == 390
    assert trend.levels[-1].total_ml - trend.levels[0].total_ml == 390


def test_a_shift_that_starts_in_the_window_is_shown_and_no_other() -> None:
    trend = shown(hourly(50, 50), "07:00", "20:00")
    assert [(shift.name, shift.start) for shift in trend.shifts] == [
        ("day", at("07:00")),
        ("night", at("19:00")),
    ]
    assert shown(hourly(50), "07:01", "18:59").shifts == ()


def test_a_corrected_level_is_struck_where_it_would_have_stood() -> None:
    sheet = hourly(100)
    wrong = sheet.mark("10:00", 900)
    sheet.corrects(wrong, level_ml=190)
    assert shown(sheet).struck == (Struck(at=at("10:00"), level_ml=900, total_ml=900, how="corrected"),)


def test_a_line_that_was_told_at_another_time_is_struck_at_the_wrong_one() -> None:
    sheet = hourly(100)
    wrong = sheet.mark("10:00", 190)
    sheet.corrects(wrong, moment=at("10:30"))
    assert [(each.at, each.level_ml) for each in shown(sheet).struck] == [(at("10:00"), 190)]


def test_a_withdrawn_line_is_struck_and_counts_for_nothing() -> None:
    sheet = hourly(100)
    sheet.withdraws(sheet.mark("10:00", 190))
    trend = shown(sheet)
    assert [(each.level_ml, each.how) for each in trend.struck] == [(190, "withdrawn")]
    assert [level.level_ml for level in trend.levels] == [0, 100]


def test_the_only_line_withdrawn_has_no_place_left_to_stand() -> None:
    sheet = Sheet()
    sheet.withdraws(sheet.mark("10:00", 190))
    trend = shown(sheet)
    assert (trend.levels, trend.struck[0].total_ml) == ((), None)


def test_a_final_level_told_late_is_not_a_correction() -> None:
    sheet = hourly(100)
    sheet.exchanged("10:00", final_ml=120)
    assert shown(sheet).struck == ()


def test_each_canister_is_full_at_a_total_of_its_own() -> None:
    sheet = hourly(100)
    sheet.exchanged("10:00", final_ml=120, opening_ml=30)
    sheet.mark("11:00", 80)
    first, second = shown(sheet).ceilings
    assert (first.end, first.total_ml) == (at("10:00"), 2000)
    assert (second.begin, second.end, second.total_ml) == (at("10:00"), at("23:00"), 2090)


def test_the_cautions_of_another_drain_of_the_bed_are_left_out() -> None:
    own = Caution(code="rate_high", severity=Severity.MODERATE, rule="r", source="s", drain="a" * 16)
    other, bed = replace(own, drain="b" * 16), replace(own, drain=None)
    trend = trend_of(hourly(50).ledger, SCHEDULE, at("07:00"), at("12:00"), (own, other, bed))
    assert trend.cautions == (own, bed)


def test_a_trend_for_a_small_picture_leaves_the_volumes_out_and_nothing_else() -> None:
    ledger = hourly(50, 60).ledger
    whole, small = (
        trend_of(ledger, SCHEDULE, at("07:00"), at("12:00"), volumes=volumes) for volumes in (True, False)
    )
    assert len(whole.steps) == 2
    assert small == replace(whole, steps=())
