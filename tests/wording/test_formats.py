"""Amounts and times as a chart writes them."""

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from bot.wording import formats

NEW_YORK = ZoneInfo("America/New_York")


def local(text: str) -> datetime:
    return datetime.fromisoformat(text).replace(tzinfo=NEW_YORK).astimezone(UTC)


@pytest.mark.parametrize(
    ("value", "charted"),
    [(0, "0 mL"), (5, "5 mL"), (999, "999 mL"), (1000, "1,000 mL"), (1050, "1,050 mL"), (12345, "12,345 mL")],
)
def test_a_level_has_a_space_before_its_unit_and_a_comma_from_a_thousand_on(value: int, charted: str) -> None:
    assert formats.ml(value) == charted


@pytest.mark.parametrize(
    ("value", "unit", "charted"),
    [
        (2.0, "cm", "2 cm"),
        (0.5, "cm", "0.5 cm"),
        (3.14, "mL/kg/h", "3.1 mL/kg/h"),
        (2.04, "cm", "2 cm"),
        (129.5, "mL/h", "130 mL/h"),
        (3, "", "3"),
        (-0.04, "cm", "0 cm"),
        (-1.5, "cm", "-1.5 cm"),
    ],
)
def test_no_trailing_zero_and_always_a_leading_one(value: float, unit: str, charted: str) -> None:
    assert formats.quantity(value, unit) == charted


def test_a_rate_and_a_subtraction_are_whole_millilitres() -> None:
    assert formats.ml_h(1204.6) == "1,205 mL/h"
    assert formats.difference(1180, 1050) == "1,180 - 1,050"


def test_a_time_of_today_is_the_clock_alone() -> None:
    now = local("2026-03-04T19:05")
    assert formats.clock(local("2026-03-04T00:00"), NEW_YORK, now) == "00:00"


def test_a_time_of_another_day_says_which() -> None:
    now = local("2026-03-04T00:05")
    assert formats.clock(local("2026-03-03T23:55"), NEW_YORK, now) == "Tue 3 Mar 23:55"


def test_a_time_that_the_autumn_change_repeats_carries_its_zone() -> None:
    now = datetime(2026, 11, 1, 12, tzinfo=UTC)
    first, second = (datetime(2026, 11, 1, hour, 30, tzinfo=UTC) for hour in (5, 6))
    assert formats.clock(first, NEW_YORK, now) == "01:30 EDT"
    assert formats.clock(second, NEW_YORK, now) == "01:30 EST"


@pytest.mark.parametrize(
    ("begin", "end", "told"),
    [
        ("2026-03-04T15:00", "2026-03-04T19:00", "15:00-19:00"),
        ("2026-03-03T15:00", "2026-03-03T19:00", "Tue 3 Mar 15:00-19:00"),
        ("2026-03-03T23:00", "2026-03-04T01:00", "Tue 3 Mar 23:00 to 01:00"),
    ],
)
def test_a_stretch_says_a_shared_day_once(begin: str, end: str, told: str) -> None:
    now = local("2026-03-04T19:05")
    assert formats.stretch(local(begin), local(end), NEW_YORK, now) == told


def test_a_night_across_the_autumn_change_is_thirteen_hours() -> None:
    begin = datetime(2026, 10, 31, 19, tzinfo=NEW_YORK)
    end = datetime(2026, 11, 1, 7, tzinfo=NEW_YORK)
    assert formats.elapsed(begin, end) == "13 h"
    assert formats.minutes_between(begin, end) == 13 * 60


@pytest.mark.parametrize(
    ("minutes", "told"),
    [(0, "0 min"), (60, "60 min"), (90, "90 min"), (91, "1 h 31 min"), (240, "4 h"), (4320, "3 days")],
)
def test_a_length_of_time_is_told_in_the_unit_a_nurse_would_use(minutes: int, told: str) -> None:
    assert formats.length(timedelta(minutes=minutes)) == told


@pytest.mark.parametrize(
    ("words", "told"), [((), ""), (("a",), "a"), (("a", "b"), "a and b"), (("a", "b", "c"), "a, b and c")]
)
def test_words_in_a_row_end_with_and(words: tuple[str, ...], told: str) -> None:
    assert formats.listed(words) == told


@pytest.mark.parametrize(
    ("value", "comparison", "told"),
    [
        (100.4, "over", "100.4 mL/h"),
        (100.04, "over", "100.04 mL/h"),
        (100.6, "over", "101 mL/h"),
        (130.4, "over", "130 mL/h"),
        (100.4, "at_least", "100 mL/h"),
        (99.6, "under", "99.6 mL/h"),
        (99.4, "under", "99 mL/h"),
        (100.4, "at_most", "100 mL/h"),
        (100.4, "", "100 mL/h"),
    ],
)
def test_a_rate_that_meets_a_rule_is_seen_to_meet_it(value: float, comparison: str, told: str) -> None:
    assert formats.beyond(value, "mL/h", 100, comparison) == told
