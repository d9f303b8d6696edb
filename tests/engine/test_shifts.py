"""Shift starts, boundary lines, sums and windows; clock changes; published intake and output sheets."""

from __future__ import annotations

from datetime import UTC, datetime, time, timedelta

import pytest

from bot.engine.policy import Schedule
from bot.engine.shifts import boundary, shift_after, shift_at, shift_before, shift_sum
from bot.engine.volumes import charted_by, intervals, total
from bot.engine.windows import day_at, window_sum
from tests.engine.sheet import SCHEDULE, THREE_SHIFTS, ZONE, Sheet, at

NIGHT = shift_at(SCHEDULE, at("20:00"))
DAY = shift_at(SCHEDULE, at("12:00"))


@pytest.mark.parametrize(
    ("clock", "name", "start"),
    [
        ("07:00", "day", "07:00"),
        ("18:59", "day", "07:00"),
        ("19:00", "night", "19:00"),
        ("30:59", "night", "19:00"),
    ],
)
def test_a_moment_is_in_the_shift_that_started_last(clock: str, name: str, start: str) -> None:
    found = shift_at(SCHEDULE, at(clock))
    assert (found.name, found.start) == (name, at(start))


def test_three_shifts_are_day_evening_and_night() -> None:
    first = shift_at(THREE_SHIFTS, at("08:00"))
    second = shift_after(THREE_SHIFTS, first)
    assert [first.name, second.name, shift_after(THREE_SHIFTS, second).name] == ["day", "evening", "night"]
    assert shift_before(THREE_SHIFTS, second) == first


@pytest.mark.parametrize(("day", "month", "hours"), [(7, 3, 11), (31, 10, 13), (4, 3, 12)])
def test_the_night_of_a_clock_change_lasts_11_or_13_hours(day: int, month: int, hours: int) -> None:
    night = shift_at(SCHEDULE, at("20:00", day, month))
    assert night.end - night.start == timedelta(hours=hours)


@pytest.mark.parametrize(("day", "month", "hours"), [(7, 3, 23), (31, 10, 25), (4, 3, 24)])
def test_the_day_of_a_clock_change_lasts_23_or_25_hours(day: int, month: int, hours: int) -> None:
    begin, end = day_at(SCHEDULE, at("12:00", day, month))
    assert end - begin == timedelta(hours=hours)


def test_a_start_that_the_clocks_skip_comes_an_hour_later() -> None:
    odd = Schedule(zone=ZONE, starts=(time(2, 30), time(14, 30)))
    assert shift_at(odd, at("12:00", 8)).start == datetime(2026, 3, 8, 7, 30, tzinfo=UTC)


def test_a_start_that_the_clocks_repeat_is_its_first_occurrence() -> None:
    odd = Schedule(zone=ZONE, starts=(time(1, 30), time(13, 30)))
    assert shift_at(odd, at("12:00", 1, 11)).start == datetime(2026, 11, 1, 5, 30, tzinfo=UTC)


def test_every_minute_of_a_clock_change_is_in_one_shift() -> None:
    odd = Schedule(zone=ZONE, starts=(time(1, 30), time(2, 30), time(3)))
    for begin in (datetime(2026, 3, 8, 5, tzinfo=UTC), datetime(2026, 11, 1, 4, tzinfo=UTC)):
        for minute in range(300):
            moment = begin + timedelta(minutes=minute)
            shift = shift_at(odd, moment)
            assert shift.start <= moment < shift.end


def how(sheet: Sheet) -> tuple[str, datetime] | None:
    found = boundary(sheet.ledger, SCHEDULE, at("19:00"))
    return (found.how, found.level.at) if found else None


@pytest.mark.parametrize(
    ("lines", "found"),
    [
        ({"t1840": 1, "t1925": 2}, ("near", "18:40")),
        ({"t1830": 1}, ("near", "18:30")),
        ({"t1829": 1}, ("earlier", "18:29")),
        ({"t1850": 1, "t1910": 2}, ("near", "18:50")),
        ({"t1855": 1, "t1904": 2}, ("near", "19:04")),
        ({"t0700": 1}, ("earlier", "07:00")),
        ({"t0659": 1}, None),
        ({"t1931": 1}, None),
    ],
)
def test_a_shift_start_is_cut_at_the_nearest_line_or_an_earlier_one(
    lines: dict[str, int], found: tuple[str, str] | None
) -> None:
    sheet = Sheet()
    sheet.marks(**lines)
    assert how(sheet) == ((found[0], at(found[1])) if found else None)


@pytest.mark.parametrize(
    ("clock", "closing"), [("17:00", True), ("16:59", False), ("21:00", True), ("21:01", False)]
)
def test_a_line_told_to_be_closing_is_the_boundary_within_2_h(clock: str, closing: bool) -> None:
    sheet = Sheet()
    sheet.mark("16:00", 10)
    sheet.mark(clock, 20, closing=True)
    found = how(sheet)
    assert (found is not None and found[0] == "closing") is closing


def test_of_two_closing_lines_the_last_told_holds() -> None:
    sheet = Sheet()
    sheet.mark("19:10", 30, closing=True)
    sheet.tells("18:45", sheet.entries[0].payload, told="19:30")
    assert how(sheet) == ("closing", at("18:45"))


def test_the_shift_sum_runs_from_its_boundary_to_its_boundary() -> None:
    sheet = Sheet()
    sheet.marks(t0705=100, t1200=200, t1855=350, t2200=400)
    found = shift_sum(sheet.ledger, SCHEDULE, DAY, at("22:05"))
    assert (found.volume_ml, found.running, found.flags) == (250, False, ())
    running = shift_sum(sheet.ledger, SCHEDULE, NIGHT, at("22:05"))
    assert (running.volume_ml, running.running) == (50, True)


def test_a_shift_without_a_line_at_its_start_is_summed_since_its_first_line() -> None:
    sheet = Sheet()
    sheet.marks(t1800=630, t1900=690)
    found = shift_sum(sheet.ledger, SCHEDULE, DAY, at("19:02"))
    assert (found.volume_ml, found.flags) == (60, ("since_first_line",))


def test_a_shift_with_one_line_has_no_sum_and_not_0() -> None:
    sheet = Sheet()
    sheet.mark("19:00", 690)
    assert shift_sum(sheet.ledger, SCHEDULE, NIGHT, at("19:02")).volume_ml is None


def test_what_drained_before_a_first_line_hours_into_the_shift_is_said_to_be_uncounted() -> None:
    sheet = Sheet()
    sheet.mark(at("06:00"), 10)
    sheet.marks(t2200=100, t2300=130)
    found = shift_sum(sheet.ledger, SCHEDULE, NIGHT, at("23:30"))
    assert (found.volume_ml, found.flags) == (30, ("since_first_line", "uncounted_before"))


def test_an_interval_across_an_unlined_start_goes_to_the_later_shift_and_says_so() -> None:
    sheet = Sheet()
    sheet.marks(t1700=100, t2100=180)
    (found,) = intervals(sheet.ledger, SCHEDULE)
    assert (found.shift, found.includes_before) == (NIGHT, at("19:00"))


def test_a_line_five_minutes_into_the_shift_ends_the_shift_before() -> None:
    sheet = Sheet()
    sheet.marks(t1700=100, t1905=180, t2100=200)
    first, second = intervals(sheet.ledger, SCHEDULE)
    assert (first.shift, first.includes_before) == (DAY, None)
    assert (second.shift, second.includes_before) == (NIGHT, None)


def test_an_early_closing_line_leaves_the_rest_of_the_hour_to_the_next_shift() -> None:
    sheet = Sheet()
    sheet.mark("17:00", 100)
    sheet.mark("18:00", 150, closing=True)
    sheet.mark("18:50", 170)
    assert [one.shift for one in intervals(sheet.ledger, SCHEDULE)] == [DAY, NIGHT]
    assert shift_sum(sheet.ledger, SCHEDULE, DAY, at("18:55")).volume_ml == 50


def sheet_of(amounts: dict[str, int]) -> Sheet:
    """A canister whose lines add these amounts, an empty one at 07:00."""
    sheet = Sheet()
    sheet.placed("07:00")
    level = 0
    for clock, amount in amounts.items():
        level += amount
        sheet.mark(clock, level)
    return sheet


def test_a_published_sheet_adds_up_by_shift_and_day() -> None:
    """g-wlearning fig. 15.21: day 550 + 400 = 950, evening 400 + 375 = 775 (printed); night 590, 24 h 2,315
    (derived)."""
    amounts = {"11:00": 550, "15:00": 400, "19:00": 400, "23:00": 375}
    amounts |= {"25:00": 100, "27:00": 150, "29:00": 90, "31:00": 250}
    ledger = sheet_of(amounts).ledger
    day = shift_at(THREE_SHIFTS, at("08:00"))
    evening = shift_after(THREE_SHIFTS, day)
    night = shift_after(THREE_SHIFTS, evening)
    later = at("32:00")
    sums = [shift_sum(ledger, THREE_SHIFTS, shift, later).volume_ml for shift in (day, evening, night)]
    assert sums == [950, 775, 590]
    assert window_sum(ledger, THREE_SHIFTS, *day_at(THREE_SHIFTS, at("12:00"))).volume_ml == 2315
    charted = intervals(ledger, THREE_SHIFTS)
    assert [
        sum(one.volume_ml for one in charted_by(charted, shift)) for shift in (day, evening, night)
    ] == sums


def test_the_24_hours_of_a_unit_run_from_0700_to_0700() -> None:
    """HL7 CPG IG example, net intake and output: the 24 h period is 07:00 to 07:00."""
    assert day_at(SCHEDULE, at("06:59")) == (at("07:00", 3), at("07:00"))
    assert day_at(SCHEDULE, at("07:00")) == (at("07:00"), at("07:00", 5))


def test_a_window_is_cut_at_lines_and_names_its_real_ends() -> None:
    sheet = Sheet()
    sheet.marks(t0800=100, t1140=160, t1500=220)
    found = window_sum(sheet.ledger, SCHEDULE, at("12:00"), at("16:00"))
    assert found.begin is not None
    assert found.end is not None
    assert (found.volume_ml, found.begin.at, found.end.at) == (60, at("11:40"), at("15:00"))
    assert found.flags == ()


def test_a_window_without_a_line_near_its_start_says_so() -> None:
    sheet = Sheet()
    sheet.marks(t0800=100, t1000=160, t1500=220)
    found = window_sum(sheet.ledger, SCHEDULE, at("12:00"), at("15:00"))
    assert (found.volume_ml, found.flags) == (60, ("no_boundary_line",))


def test_a_window_before_all_lines_runs_from_the_first() -> None:
    sheet = Sheet()
    sheet.marks(t1000=160, t1500=220)
    found = window_sum(sheet.ledger, SCHEDULE, at("15:00", 3), at("15:00"))
    assert (found.volume_ml, found.flags) == (60, ("since_first_line",))


def test_lines_through_the_repeated_hour_are_in_order_of_what_happened() -> None:
    begin = datetime(2026, 11, 1, 5, tzinfo=UTC)
    sheet = Sheet()
    for number in range(4):
        sheet.mark(begin + timedelta(minutes=30 * number), 100 + 10 * number)
    assert total(sheet.ledger).volume_ml == 30
    assert [one.volume_ml for one in intervals(sheet.ledger, SCHEDULE)] == [10, 10, 10]
