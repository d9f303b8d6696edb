"""Levels and times over their whole range, against a general reference for number words and the calendar."""

from __future__ import annotations

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from num2words import num2words

import nlu
from nlu.statements import Mark, Parsed
from tests.nlu.saying import Channel

ZONE = ZoneInfo("America/New_York")
EVENING = datetime(2026, 3, 4, 19, 5, tzinfo=ZONE)
BEDS = tuple(str(bed) for bed in range(1, 41))
HUNDREDS = range(0, 2600, 100)


def read(text: str, arrived: datetime = EVENING, channel: Channel = "voice") -> Parsed:
    return nlu.parse(text, arrived=arrived, beds=BEDS, channel=channel)


def the_mark(text: str, arrived: datetime = EVENING, channel: Channel = "voice") -> Mark:
    parsed = read(text, arrived, channel)
    assert parsed.unclear == (), text
    (mark,) = parsed.statements
    assert isinstance(mark, Mark), text
    return mark


@pytest.mark.parametrize("hundreds", HUNDREDS)
def test_every_level_in_digits_is_that_level(hundreds: int) -> None:
    for level in range(hundreds, min(hundreds + 100, 2501)):
        assert the_mark(f"bed 7 mark {level} ml at 1900", channel="text").level_ml == level


@pytest.mark.parametrize("hundreds", HUNDREDS)
def test_every_level_in_words_is_that_level(hundreds: int) -> None:
    for level in range(hundreds, min(hundreds + 100, 2501)):
        words = num2words(level).replace(",", "")
        for said in {words, words.replace(" and ", " "), words.replace("-", " ")}:
            assert the_mark(f"bed seven mark {said} mils at nineteen hundred").level_ml == level, said


def pairs(level: int) -> str:
    """1050 as "ten fifty", 305 as "three oh five", 1200 as "twelve hundred" (common practice, no source)."""
    head, tail = divmod(level, 100)
    low = "hundred" if tail == 0 else f"oh {num2words(tail)}" if tail < 10 else num2words(tail)
    return f"{num2words(head)} {low}".replace("-", " ")


@pytest.mark.parametrize("hundreds", range(100, 2500, 100))
def test_every_level_said_in_pairs_is_that_level(hundreds: int) -> None:
    for level in range(hundreds, hundreds + 100):
        assert the_mark(f"bed seven mark {pairs(level)} mils at nineteen hundred").level_ml == level


@pytest.mark.parametrize("hour", range(24))
def test_every_minute_of_the_day_in_four_digits_is_that_minute(hour: int) -> None:
    for minute in range(60):
        at = EVENING.replace(hour=hour, minute=minute)
        arrived = at + timedelta(minutes=20)
        assert the_mark(f"bed 7 mark 640 ml at {at:%H%M}", arrived, "text").at == at


@pytest.mark.parametrize("hour", range(24))
def test_every_minute_of_the_day_with_am_or_pm_is_that_minute(hour: int) -> None:
    for minute in range(60):
        at = EVENING.replace(hour=hour, minute=minute)
        said = f"{at.hour % 12 or 12}:{at:%M} {at:%p}".lower()
        assert the_mark(f"bed 7 mark 640 ml at {said}", at + timedelta(minutes=20), "text").at == at


def spoken_24_hours(at: datetime) -> str:
    """07:05 as "oh seven oh five", 19:00 as "nineteen hundred hours" (common practice, no source)."""
    head = f"oh {num2words(at.hour)}" if at.hour < 10 else num2words(at.hour)
    tail = (
        "hundred"
        if at.minute == 0
        else f"oh {num2words(at.minute)}"
        if at.minute < 10
        else num2words(at.minute)
    )
    return f"{head} {tail} hours".replace("-", " ")


@pytest.mark.parametrize("hour", range(1, 24))
def test_every_minute_of_the_day_in_words_is_that_minute(hour: int) -> None:
    for minute in range(60):
        at = EVENING.replace(hour=hour, minute=minute)
        said = spoken_24_hours(at)
        mark = the_mark(f"bed seven mark six hundred and forty mils at {said}", at + timedelta(minutes=20))
        assert (mark.level_ml, mark.at) == (640, at), said


@pytest.mark.parametrize("bed", BEDS)
def test_every_bed_is_that_bed_in_digits_and_in_words(bed: str) -> None:
    words = num2words(int(bed)).replace("-", " ")

    assert the_mark(f"bed {bed} mark 640 ml at 1900", channel="text").bed == bed
    assert the_mark(f"bed {words} mark six hundred and forty mils at nineteen hundred").bed == bed


@pytest.mark.parametrize(
    ("zone", "moment", "asked"),
    [
        ("America/New_York", "2026-03-08T02:30", "skipped"),
        ("America/New_York", "2026-11-01T01:30", "repeated"),
        ("Europe/London", "2026-03-29T01:30", "skipped"),
        ("Europe/London", "2026-10-25T01:30", "repeated"),
        ("Australia/Lord_Howe", "2026-10-04T02:15", "skipped"),
        ("Australia/Lord_Howe", "2026-04-05T01:45", "repeated"),
    ],
)
def test_a_local_time_that_a_clock_change_skips_or_repeats_is_asked(
    zone: str, moment: str, asked: str
) -> None:
    local = datetime.fromisoformat(moment)
    arrived = local.replace(hour=4, minute=10, tzinfo=ZoneInfo(zone))

    parsed = read(f"bed 7 mark 640 ml at {local:%H%M}", arrived, "text")

    assert parsed.statements == (), asked
    assert [each.slot for each in parsed.unclear] == ["at"]


def test_a_zone_without_clock_changes_asks_nothing() -> None:
    arrived = datetime(2026, 3, 29, 4, 10, tzinfo=ZoneInfo("Asia/Kolkata"))

    assert the_mark("bed 7 mark 640 ml at 0130", arrived, "text").at == arrived.replace(hour=1, minute=30)
