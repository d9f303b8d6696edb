"""The chat's clock."""

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from bot.cli.clock import Clock, ClockError

NEW_YORK = ZoneInfo("America/New_York")
NOON = datetime(2026, 3, 4, 12, 0, tzinfo=NEW_YORK).astimezone(UTC)


def local(clock: Clock) -> str:
    return f"{clock.now().astimezone(NEW_YORK):%d %H:%M}"


@pytest.fixture
def clock() -> Clock:
    return Clock(NEW_YORK, real=lambda: NOON)


def test_it_is_the_real_clock_until_set(clock: Clock) -> None:
    assert clock.now() == NOON


@pytest.mark.parametrize(
    ("told", "then"),
    [
        ("18:55", "04 18:55"),
        ("0700", "04 07:00"),
        ("+45", "04 12:45"),
        ("+60 minutes", "04 13:00"),
        ("real", "04 12:00"),
    ],
)
def test_it_can_be_set_anywhere_in_the_day_before_the_first_message(
    clock: Clock, told: str, then: str
) -> None:
    clock.set(told)
    assert local(clock) == then


def test_it_goes_on_ticking_from_where_it_was_set() -> None:
    moments = iter([NOON, NOON, NOON + timedelta(minutes=5)])
    clock = Clock(NEW_YORK, real=lambda: next(moments))
    clock.set("18:55")
    assert local(clock) == "04 19:00"


def test_once_used_an_earlier_time_is_tomorrows(clock: Clock) -> None:
    clock.set("18:55")
    clock.stamp()
    clock.set("07:00")
    assert local(clock) == "05 07:00"


def test_once_used_it_does_not_go_back_to_the_real_time(clock: Clock) -> None:
    clock.set("18:55")
    clock.stamp()
    with pytest.raises(ClockError):
        clock.set("real")


@pytest.mark.parametrize("told", ["", "25:00", "7pm", "-5"])
def test_what_is_no_time_is_refused(clock: Clock, told: str) -> None:
    with pytest.raises(ClockError, match="say 18:55"):
        clock.set(told)
