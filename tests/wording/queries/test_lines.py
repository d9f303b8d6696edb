"""What is to be amended is told so that it can be found on the chart."""

from __future__ import annotations

from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest

from bot.engine.values import Amendment, Charted, Shift
from bot.wording.queries.lines import amend_text
from bot.wording.queries.view import View
from tests.wording.language import faults

ZONE = ZoneInfo("America/New_York")


def at(hour: int) -> datetime:
    return datetime(2026, 3, 4, hour, tzinfo=ZONE).astimezone(UTC)


VIEW = View(zone=ZONE, now=at(20))
DAY = Shift(start=at(7), end=at(19), name="day")


def charted(begin: int, end: int, volume_ml: int) -> Charted:
    return Charted(begin=at(begin), end=at(end), volume_ml=volume_ml)


@pytest.mark.parametrize(
    ("volume_ml", "at_least", "replaces", "told"),
    [
        (165, False, (charted(15, 19, 210),), "Amend: 15:00-19:00 210 to 165 mL"),
        (1165, True, (charted(15, 19, 1210),), "Amend: 15:00-19:00 1,210 to at least 1,165 mL"),
        (0, False, (charted(15, 19, 210),), "Amend: 15:00-19:00 210 to 0 mL"),
        (165, False, (charted(15, 17, 100),), "Amend: 15:00-19:00 165 mL instead of 15:00-17:00 100 mL"),
        (
            165,
            False,
            (charted(15, 17, 100), charted(17, 19, 110)),
            "Amend: 15:00-19:00 165 mL instead of 15:00-17:00 100 mL and 17:00-19:00 110 mL",
        ),
        (165, False, (), "Amend: add 15:00-19:00 165 mL"),
    ],
)
def test_an_amendment_names_what_was_charted_and_what_holds_now(
    volume_ml: int, at_least: bool, replaces: tuple[Charted, ...], told: str
) -> None:
    amendment = Amendment(
        begin=at(15), end=at(19), volume_ml=volume_ml, at_least=at_least, shift=DAY, replaces=replaces
    )
    assert amend_text(amendment, VIEW) == told
    assert faults(told) == []


def test_a_volume_that_no_longer_holds_is_to_be_struck_out() -> None:
    amendment = Amendment(
        begin=at(15),
        end=at(19),
        volume_ml=0,
        at_least=False,
        shift=DAY,
        replaces=(charted(15, 19, 210),),
        withdrawn=True,
    )
    assert amend_text(amendment, VIEW) == "Amend: strike out 15:00-19:00 210 mL"
