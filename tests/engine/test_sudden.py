"""Rises and stops: the published items, and when a stop is a stop."""

from __future__ import annotations

import pytest

from bot.engine.entries import Exchanged, Reason, What
from bot.engine.values import Severity
from tests.engine.sheet import Sheet, codes, hourly, only, rules


def test_75_then_5_in_the_second_hour_is_a_sudden_stop() -> None:
    """Nursing review item: lines 75, 80; assess the tube for occlusion."""
    stop = only(hourly(75, 5), code="sudden_stop")
    assert (stop.value, stop.severity, stop.detail) == (5, Severity.MODERATE, "75 mL/h")


def test_30_an_hour_and_then_220_is_a_sudden_rise() -> None:
    """Nursing review item: 30 mL/h, then 220 mL in the last hour; report at once."""
    rise = only(hourly(30, 30, 30, 220), code="sudden_rise")
    assert (rise.value, rise.detail) == (220, "30 mL/h before")


def test_250_an_hour_for_three_hours_after_heart_surgery_is_urgent() -> None:
    """Nursing review item: notify the surgeon."""
    sustained = only(hourly(250, 250, 250, reason=Reason.CARDIAC), code="rate_sustained")
    assert (sustained.severity, sustained.value, sustained.hours) == (Severity.HIGH, 250, 2)


@pytest.mark.parametrize(
    ("tube", "reason", "severity"),
    [
        (None, Reason.CARDIAC, Severity.HIGH),
        ("mediastinal", Reason.CARDIAC, Severity.HIGH),
        ("A", Reason.CARDIAC, Severity.HIGH),
        ("left", Reason.CARDIAC, Severity.MODERATE),
        ("right pleural", Reason.CARDIAC, Severity.MODERATE),
        (None, Reason.GENERAL, Severity.MODERATE),
        ("mediastinal", Reason.GENERAL, Severity.MODERATE),
    ],
)
def test_a_stop_is_urgent_of_a_mediastinal_or_unnamed_tube_after_heart_surgery(
    tube: str | None, reason: Reason, severity: Severity
) -> None:
    assert only(hourly(80, 80, 0, tube=tube, reason=reason), code="sudden_stop").severity is severity


@pytest.mark.parametrize(
    ("amounts", "stopped"),
    [
        ((50, 50, 10), True),
        ((50, 50, 11), False),
        ((49, 50, 10), False),
        ((60, 0), True),
        ((0, 60, 60, 0), True),
        ((60, 60, 30, 0), False),
    ],
)
def test_a_stop_is_at_most_10_after_a_mean_of_at_least_50(amounts: tuple[int, ...], stopped: bool) -> None:
    assert ("sudden_stop" in codes(hourly(*amounts))) is stopped


def test_a_stop_stands_while_nothing_drains_and_clears_when_it_flows() -> None:
    assert "sudden_stop" in codes(hourly(80, 80, 4, 0, 2, 0, 0))
    assert "sudden_stop" not in codes(hourly(80, 80, 4, 0, 2, 0, 30))


def test_a_clamped_tube_has_not_stopped_by_itself() -> None:
    sheet = hourly(80, 80)
    sheet.happens("10:05", What.CLAMPED)
    sheet.mark("11:00", 160)
    assert "sudden_stop" not in codes(sheet)


def test_a_stretch_that_was_not_measured_is_no_stop() -> None:
    sheet = hourly(80, 80)
    sheet.tells("10:30", Exchanged())
    sheet.mark("11:00", 0)
    assert "sudden_stop" not in codes(sheet)


@pytest.mark.parametrize(
    ("amounts", "risen"),
    [
        ((34, 100), False),
        ((33, 100), True),
        ((10, 99), False),
        ((60, 0, 100), True),
        ((60, 10, 100), False),
        ((100,), False),
    ],
)
def test_a_rise_is_three_times_the_mean_and_at_least_100(amounts: tuple[int, ...], risen: bool) -> None:
    assert ("sudden_rise" in rules(hourly(*amounts))) is risen


def test_a_rise_counts_at_once_before_its_hour_is_over() -> None:
    sheet = hourly(20, 20)
    sheet.mark("10:15", 150)
    assert only(sheet, code="sudden_rise").value == 110


def test_after_a_gap_of_hours_there_is_no_mean_to_rise_from() -> None:
    sheet = Sheet()
    sheet.marks(t0700=0, t1200=50, t1300=200)
    assert "sudden_rise" not in codes(sheet)
