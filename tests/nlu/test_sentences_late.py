"""Lines that come late, and what is told of their being late."""

from __future__ import annotations

from datetime import timedelta

import pytest

from .saying import ARRIVED, reading

LATE = "mark bed=7 at=17:00 level_ml=425"
NIGHT = ARRIVED.replace(hour=2, minute=20)


@pytest.mark.parametrize(
    "text",
    [
        "late entry. bed 7 was 425 at 1700, never sent it",
        "bed 7 425 at 1700 never charted it",
        "bed 7 425 at 1700 didn't send it earlier",
        "bed 7 425 at 1700, couldn't send it - no signal",
        "late entry bed 7 425 at 1700, got busy and didn't send",
        "bed 7 425 at 1700 i forgot to send it",
        "i never sent the 1700 on bed 7, it was 425",
        "never charted my 1700 on bed 7, 425",
        "forgot to send the 1700 for bed 7, was 425",
        "missed the 1700 on bed 7 - 425",
        "forgot the 1700 one for bed 7 it was 425 at 1700",
        "meant to send at 1700: bed 7 425",
        "should have sent this at 1700, bed 7 425",
        "was 425 on bed 7 at 1700, only sending now",
        "bed 7 late entry 425 at 1700",
        "sorry forgot to chart the 5pm mark on bed 7 it was 425",
    ],
)
def test_that_a_line_was_not_sent_or_forgotten_denies_nothing_of_it(text: str) -> None:
    assert reading(text) == LATE


@pytest.mark.parametrize(
    "text",
    [
        "forgot to send the seventeen hundred for bed seven it was four twenty five",
        "bed seven was four twenty five at seventeen hundred never sent it",
        "bed seven mark four twenty five at seventeen hundred i forgot to send it",
    ],
)
def test_a_dictated_line_comes_late_as_well(text: str) -> None:
    assert reading(text, channel="voice") == LATE


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("bed 7 425 at 1700, I never sent that", "ask level_ml"),
        ("bed 7 425 at 1700, not charting it", "ask level_ml"),
        ("bed 7 425 at 1700 don't chart it", "ask level_ml"),
        ("bed 7 425 at 1700, didn't record because misread", "ask level_ml"),
        ("never sent 425 for bed 7", "ask kind"),
        ("bed 12 1900 mark missed", "ask kind"),
        ("forgot the 1700 on bed 10", "ask level_ml"),
        ("forgot the 1700 for bed 10, 1800 was 500", "ask at"),
    ],
)
def test_where_the_line_itself_may_be_denied_or_was_not_told_it_is_asked(text: str, asked: str) -> None:
    assert reading(text) == asked


@pytest.mark.parametrize(
    "text",
    [
        "I forgot to send noon for bed 10!! it was 500 at 12:00",
        "forgot to send noon for bed 10, was 500",
        "didn't send the noon for bed 10, it was 500",
    ],
)
def test_noon_and_then_12_00_are_one_time(text: str) -> None:
    assert reading(text) == "mark bed=10 at=12:00 level_ml=500"


def test_what_a_line_was_then_is_no_time_of_it() -> None:
    yesterday = (ARRIVED - timedelta(days=1)).strftime("%d-%b")
    assert reading("bed 7 was 125 at 2300", arrived=NIGHT) == f"mark bed=7 at={yesterday}-23:00 level_ml=125"
    assert reading("bed 7 125 at 2300", arrived=NIGHT) == "ask level_ml"
