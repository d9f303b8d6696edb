"""Spoken times over the whole day in every style, and the odd phrases around them."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from num2words import num2words

from .saying import reading
from .test_numbers_and_times import the_mark

DAY = datetime(2026, 3, 4, tzinfo=ZoneInfo("America/New_York"))
Style = Callable[[datetime], str]


def words(number: int) -> str:
    return str(num2words(number)).replace("-", " ")


def half(at: datetime) -> str:
    return "a m" if at.hour < 12 else "p m"


def spelt(at: datetime) -> str:
    """07:27 as "zero seven two seven"."""
    return " ".join("zero" if digit == "0" else words(int(digit)) for digit in f"{at:%H%M}")


def twelve_hours(at: datetime) -> str:
    low = "" if at.minute == 0 else f"oh {words(at.minute)}" if at.minute < 10 else words(at.minute)
    return f"exactly {words(at.hour % 12 or 12)} {low} {half(at)}"


def past(at: datetime) -> str:
    return f"{words(at.minute or 60)} minutes past {words(at.hour % 12 or 12)} {half(at)}"


def to(at: datetime) -> str:
    after = at + timedelta(hours=1)
    return f"{words(60 - at.minute)} minutes to {words(after.hour % 12 or 12)} {half(after)}"


def of(at: datetime) -> str:
    return to(at).replace(" to ", " of ")


@pytest.mark.parametrize("hour", range(24))
@pytest.mark.parametrize("style", [spelt, twelve_hours, past, to, of])
def test_every_minute_of_the_day_in_every_spoken_style_is_that_minute(style: Style, hour: int) -> None:
    for minute in range(1, 60):
        at = DAY.replace(hour=hour, minute=minute)
        said = style(at)
        mark = the_mark(f"bed seven mark six hundred and forty mils at {said}", at + timedelta(minutes=30))
        assert mark.at == at, said


@pytest.mark.parametrize(
    ("said", "at"),
    [
        ("a quarter of an hour ago", "18:50"),
        ("three quarters of an hour ago", "18:20"),
        ("half-past six", "18:30"),
        ("half past six o'clock", "18:30"),
        ("a quarter to seven o'clock", "18:45"),
        ("6 oh 5 p m", "18:05"),
        ("seventeen hundred and thirty", "17:30"),
        ("seven o'clock sharp", "19:00"),
        ("march third at five pm", "03-Mar-17:00"),
        ("the third of march at 1700", "03-Mar-17:00"),
        ("2026-03-04 17:00", "17:00"),
        ("03/04/2026 17:00", "17:00"),
        ("the top of the hour", "19:00"),
        ("five to seven", "18:55"),
    ],
)
def test_odd_ways_to_say_a_time_are_understood(said: str, at: str) -> None:
    assert reading(f"bed 7 mark 640 ml at {said}", channel="voice") == f"mark bed=7 at={at} level_ml=640"


@pytest.mark.parametrize(
    "said",
    ["six to seven", "just after seven pm", "between six and seven", "4 past 7 pm", "03/04/2025 17:00"],
)
def test_a_time_that_is_a_range_or_may_have_been_misheard_is_asked(said: str) -> None:
    assert "ask" in reading(f"bed 7 mark 640 ml at {said}", channel="voice")


@pytest.mark.parametrize(
    ("said", "level"),
    [
        ("one thousand, two hundred and eighty-seven ml", 1287),
        ("1 thousand 287 ml", 1287),
        ("440 M.L.", 440),
        ("440 c.c.", 440),
        ("440 cubic centimeters", 440),
        ("forty-five (45) ml", 45),
    ],
)
def test_odd_ways_to_say_a_level_are_understood(said: str, level: int) -> None:
    assert the_mark(f"bed 7 mark {said} at 1900").level_ml == level


def test_a_level_written_twice_with_two_values_is_asked() -> None:
    assert "ask" in reading("bed 7 mark forty-five (54) ml at 1900", channel="voice")
