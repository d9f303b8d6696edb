"""Dictated messages, as a recogniser writes them."""

from __future__ import annotations

from typing import Literal

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed twelve mark ten fifty at nineteen hundred hours", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed twelve mark a thousand and fifty at seven p m", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed twelve mark one point two liters at nineteen hundred", "mark bed=12 at=19:00 level_ml=1200"),
        ("bed twelve mark twelve hundred at quarter to seven", "mark bed=12 at=18:45 level_ml=1200"),
        ("bed twelve mark one oh five oh at nineteen hundred", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed two mark five hundred at nineteen hundred", "mark bed=2 at=19:00 level_ml=500"),
        ("bed to mark five hundred at nineteen hundred", "mark bed=2 at=19:00 level_ml=500"),
        ("Bed 12, mark $10.50, at 1900.", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 mark 10:50 and 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed nine mark ninety five at eighteen forty", "mark bed=9 at=18:40 level_ml=95"),
        ("right okay bed nine mark six thirty at nineteen hundred", "mark bed=9 at=19:00 level_ml=630"),
    ],
)
def test_spoken_numbers_and_times_are_understood(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed nine died at seventeen forty", "left bed=9 at=17:40"),
        ("bed twelve moved to fourteen", "moved bed=12 to_bed=14"),
        ("changed the box on bed twelve the old one was nineteen eighty", "exchanged bed=12 final_ml=1980"),
        (
            "bed twelve tube out at eighteen fifteen final three forty",
            "removed bed=12 at=18:15 level_ml=340",
        ),
        (
            "bed nine suction twenty seal two tidaling no leak",
            "checked bed=9 seal_cm=2 suction_cmh2o=20 air_leak=none tidaling=True",
        ),
    ],
)
def test_dictated_events_are_understood(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("correct bed twelve nineteen hundred to ten oh five", "corrected bed=12 at=19:00 level_ml=1005"),
        ("no eleven fifty", "answered answer=no level_ml=1150"),
        ("yeah that's correct", "answered answer=yes"),
        ("misread it's eight eighty", "answered choice=misread level_ml=880"),
    ],
)
def test_dictated_corrections_and_answers_are_understood(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed twelve no thirteen mark 300 at 1900", "ask bed"),
        ("bed twelve did not drain three forty", "ask kind"),
        ("bed nine mark six thirty correction six forty at nineteen hundred", "ask level_ml"),
        ("bed twelve mark half seven", "ask level_ml"),
    ],
)
def test_what_is_in_doubt_when_dictated_is_asked(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed seventeen comma mark three thirty comma nineteen hundred period",
            "mark bed=17 at=19:00 level_ml=330",
        ),
        (
            "bed nine mark four fifty full stop bed ten comma two twenty period",
            "mark bed=9 level_ml=450; mark bed=10 level_ml=220",
        ),
        (
            "bed nine comma left three forty comma right one twenty comma at nineteen hundred",
            "mark bed=9 tube=left at=19:00 level_ml=340; mark bed=9 tube=right at=19:00 level_ml=120",
        ),
        ("bed nine drained forty over a period of an hour", "drained bed=9 volume_ml=40"),
        ("bed nine over the four hour period drained forty", "drained bed=9 volume_ml=40"),
        ("stop suction on bed nine", "ask kind"),
        ("bed nine colon four fifty dash nineteen hundred", "mark bed=9 at=19:00 level_ml=450"),
        ("bed nine mark four fifty dash four sixty", "ask level_ml"),
        ("bed nine had a colon resection mark four fifty", "mark bed=9 level_ml=450"),
    ],
)
def test_stops_that_are_spoken_are_stops(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("so uh bed fourteen's at like about a hundred and twenty", "mark bed=14 level_ml=120 about"),
        ("bed 14 mark 640, time now", "mark bed=14 at=19:05 level_ml=640"),
        ("bed 14 mark 640, time now 1900", "mark bed=14 at=19:00 level_ml=640"),
        ("bed 14 mark 640 at 1900, mark 640, 1900", "mark bed=14 at=19:00 level_ml=640"),
        ("bed 14 mark 640 at 1900, mark 660, 1900", "ask level_ml"),
        ("wait no bed fourteen was eight seventeen at seven", "ask kind"),
        ("no bed fourteen was eight seventeen at seven", "answered bed=14 at=19:00 answer=no level_ml=817"),
        ("my last one, bed twelve, closing line two thirty five", "mark bed=12 level_ml=235 closing"),
        ("what was my last one, bed twelve, closing line", "asked bed=12 topic=last"),
    ],
)
def test_a_line_is_dictated_in_passing(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 7 mark half-litre at 1900", "mark bed=7 at=19:00 level_ml=500"),
        ("bed 7 mark one and a half-litres at 1900", "mark bed=7 at=19:00 level_ml=1500"),
        ("bed 7 mark 640 ml at 15 minutes past 15h", "mark bed=7 at=15:15 level_ml=640"),
        ("bed 7 mark 640 ml at 15 past 15h", "mark bed=7 at=15:15 level_ml=640"),
        ("bed 7 mark 640 ml at ten to nineteen hundred", "mark bed=7 at=18:50 level_ml=640"),
        ("bed 7 mark 640 ml at 15 minutes past 1500", "mark bed=7 at=15:15 level_ml=640"),
        ("total for 9 past 6h", "asked bed=9 topic=total window=6h"),
    ],
)
def test_minutes_are_counted_from_a_whole_hour(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize("channel", ["voice", "text"])
@pytest.mark.parametrize(
    "text",
    ["bed 7 mark 640 ml the day before", "bed 7 mark 640 the hour before", "bed 7 it was 640 the day before"],
)
def test_a_line_of_before_is_asked(text: str, channel: Literal["text", "voice"]) -> None:
    assert reading(text, channel=channel).startswith("ask ")
