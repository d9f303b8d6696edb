"""What is due, and when the canister will be full."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

import pytest

from bot.engine.due import due
from bot.engine.entries import Away, Back, Checked, Reason, Removed, What
from bot.engine.forecast import forecasts
from bot.engine.patient import Patient
from bot.engine.policy import Policy
from bot.engine.rates import hour_rates, recent_rate
from tests.engine.sheet import ADULT, Sheet, at, hourly


def expected(sheet: Sheet, clock: str, policy: Policy = ADULT) -> list[tuple[str, datetime, bool]]:
    patient = Patient(bed="12", drains=(sheet.ledger,))
    return [(one.what, one.at, one.overdue) for one in due(patient, at(clock), policy)]


def test_a_line_each_hour_a_check_each_four_and_the_closing_line_are_due() -> None:
    assert expected(hourly(20), "09:05") == [
        ("line", at("10:00"), False),
        ("check", at("12:00"), False),
        ("closing", at("19:00"), False),
    ]


@pytest.mark.parametrize(("clock", "overdue"), [("10:15", False), ("10:16", True)])
def test_a_line_is_overdue_when_over_15_min_late(clock: str, overdue: bool) -> None:
    assert ("line", at("10:00"), overdue) in expected(hourly(20), clock)


def test_hours_between_lines_are_a_setting_of_the_unit_and_of_the_profile() -> None:
    policy = replace(ADULT, line_every_h=4.0, line_every_by=(("cardiac", 0.5),))
    assert ("line", at("13:00"), False) in expected(hourly(20), "09:05", policy)
    assert ("line", at("09:30"), False) in expected(hourly(20, reason=Reason.CARDIAC), "09:05", policy)


def test_a_check_is_due_so_long_after_the_last_one() -> None:
    sheet = hourly(20)
    sheet.tells("09:30", Checked(seal_cm=2))
    assert ("check", at("13:30"), False) in expected(sheet, "09:35")


def test_nothing_is_due_while_the_patient_is_away_and_all_of_it_at_the_return() -> None:
    sheet = hourly(20)
    sheet.tells("09:30", Away())
    assert expected(sheet, "12:00") == []
    sheet.tells("13:00", Back())
    assert ("line", at("13:00"), False) in expected(sheet, "13:05")


def test_nothing_is_due_of_a_drain_that_is_out() -> None:
    sheet = hourly(20)
    sheet.tells("09:30", Removed())
    assert expected(sheet, "12:00") == []


@pytest.mark.parametrize(
    ("clock", "overdue"), [("19:20", False), ("19:31", True), ("21:00", True), ("21:01", None)]
)
def test_a_closing_line_that_was_not_told_is_overdue_until_it_can_no_longer_be(
    clock: str, overdue: bool | None
) -> None:
    found = [one for one in expected(hourly(20), clock) if one[:2] == ("closing", at("19:00"))]
    assert found == ([] if overdue is None else [("closing", at("19:00"), overdue)])


def test_a_closing_line_told_early_is_no_longer_due() -> None:
    sheet = hourly(20)
    sheet.mark("18:00", 60, closing=True)
    assert ("closing", at("19:00"), False) not in expected(sheet, "18:05")


def test_a_drain_without_a_line_is_due_one_since_it_was_heard_of() -> None:
    sheet = Sheet()
    sheet.tells("09:00", Checked(seal_cm=2))
    assert ("line", at("09:00"), True) in expected(sheet, "09:30")


def ahead(sheet: Sheet) -> list[tuple[int, datetime | None]]:
    return [(one.level_ml, one.at) for one in forecasts(sheet.ledger, at("24:00"), ADULT)]


def test_the_canister_is_full_when_the_recent_rate_fills_it() -> None:
    sheet = Sheet()
    sheet.marks(t0800=1200, t0900=1300)
    assert ahead(sheet) == [(1500, at("11:00")), (2000, at("16:00"))]


def test_a_level_already_reached_is_at_the_last_line() -> None:
    sheet = Sheet()
    sheet.marks(t0800=1500, t0900=1600)
    assert ahead(sheet) == [(1500, at("09:00")), (2000, at("13:00"))]


def test_after_an_exchange_the_new_canister_fills() -> None:
    sheet = Sheet()
    sheet.mark("08:00", 1700)
    sheet.exchanged("09:00", final_ml=1800)
    assert ahead(sheet) == [(1500, at("24:00")), (2000, at("29:00"))]


@pytest.mark.parametrize("kind", ["one line", "nothing drained", "tipped"])
def test_without_a_rate_nothing_is_forecast(kind: str) -> None:
    sheet = Sheet()
    sheet.mark("08:00", 100)
    if kind != "one line":
        sheet.mark("09:00", 100 if kind == "nothing drained" else 200)
    if kind == "tipped":
        sheet.happens("09:10", What.TIPPED)
    assert ahead(sheet) == [(1500, None), (2000, None)]


def test_without_a_line_there_is_no_forecast() -> None:
    assert ahead(Sheet()) == []


def test_the_recent_rate_is_that_of_the_newest_hour() -> None:
    sheet = hourly(20, 60)
    sheet.mark("10:20", 110)
    found = recent_rate(sheet.ledger, at("10:30"))
    assert found is not None
    assert (found.begin, found.end, round(found.value, 2)) == (at("09:00"), at("10:20"), 67.5)


def test_rates_are_given_by_the_hour_short_intervals_joined_and_long_ones_as_averages() -> None:
    sheet = Sheet()
    sheet.marks(t0800=0, t0830=40, t0900=70, t1200=160, t1220=165)
    found = [(one.value, one.average) for one in hour_rates(sheet.ledger, at("13:00"))]
    assert found == [(70, False), (30, True)]
