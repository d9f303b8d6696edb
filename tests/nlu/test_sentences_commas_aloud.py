"""Dictated times with a comma, thousands with a nought, bays before their beds, and letters one by one."""

from __future__ import annotations

import pytest

from .saying import ARRIVED, BEDS, Channel, reading


def said(text: str, arrived: str, beds: tuple[str, ...], channel: Channel = "text") -> str:
    """One message that came at an hour such as "0304"."""
    at = ARRIVED.replace(hour=int(arrived[:2]), minute=int(arrived[2:]))
    return reading(text, beds=beds, channel=channel, arrived=at)


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("1907", BEDS, "bed 6 mark 1,090 at 1,900", "mark bed=6 at=19:00 level_ml=1090"),
        ("2104", BEDS, "bed fifteen mark nine sixty at 2,100 hours", "mark bed=15 at=21:00 level_ml=960"),
        ("1907", BEDS, "bed 8 three fifty mils at 1,900", "mark bed=8 at=19:00 level_ml=350"),
        ("1907", BEDS, "bed 8 350 at 1,900", "mark bed=8 at=19:00 level_ml=350"),
        ("1907", BEDS, "bed 6 tube out at 1,840 final 350", "removed bed=6 at=18:40 level_ml=350"),
        (
            "1907",
            BEDS,
            "bed 6 canister changed at 1,840 old one 1,960",
            "exchanged bed=6 at=18:40 final_ml=1960",
        ),
        (
            "1907",
            BEDS,
            "bed 6 left 340 at 1,900 right 120 at 1,900",
            ("mark bed=6 tube=left at=19:00 level_ml=340; mark bed=6 tube=right at=19:00 level_ml=120"),
        ),
        ("1907", BEDS, "the 1,900 hours line for bed 6 is 340", "mark bed=6 at=19:00 level_ml=340"),
        (
            "1907",
            BEDS,
            "bed 6 was 1,040 at 1,800 and 1,090 at 1,900",
            "mark bed=6 at=18:00 level_ml=1040; mark bed=6 at=19:00 level_ml=1090",
        ),
    ],
)
def test_a_comma_is_in_the_time(arrived: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert said(text, arrived, beds, channel="voice") == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("1907", BEDS, "bed six line at 1,900", "mark bed=6 level_ml=1900"),
        ("1507", BEDS, "bed twelve at 1,900", "mark bed=12 level_ml=1900"),
        ("1907", BEDS, "bed 6 is at 1,050 now", "mark bed=6 at=19:07 level_ml=1050"),
        (
            "1907",
            BEDS,
            "bed 6 left at 1,050 right at 1,200",
            "mark bed=6 tube=left level_ml=1050; mark bed=6 tube=right level_ml=1200",
        ),
        ("1907", BEDS, "bed 5 340 bed 6 at 1,900", "mark bed=5 level_ml=340; mark bed=6 level_ml=1900"),
        ("1507", BEDS, "bed 6 tube 2 at 1,840", "mark bed=6 tube=2 level_ml=1840"),
        (
            "1907",
            BEDS,
            "bed 6 suction 20 line at 1,840",
            "mark bed=6 level_ml=1840; checked bed=6 suction_cmh2o=20",
        ),
        ("1907", BEDS, "correct bed 6 from 1,090 to 1,900", "corrected bed=6 was_ml=1090 level_ml=1900"),
    ],
)
def test_a_comma_is_in_the_level(arrived: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert said(text, arrived, beds, channel="voice") == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("1907", BEDS, "bed 6 at 1,900", "ask level_ml"),
        ("1907", BEDS, "bed twenty one at 1,900", "ask level_ml"),
        ("1907", BEDS, "bed 8 three fifty at 1,900", "ask at"),
        ("1907", BEDS, "bed 6 340 at 1,865", "ask at"),
        ("1907", BEDS, "bed 6 20 at 1,840", "ask at"),
        ("1907", BEDS, "bed 6 340 and 350 at 1,840", "ask level_ml"),
        ("0720", BEDS, "bed three the line was two ninety five last night", "ask level_ml"),
        ("0720", BEDS, "bed three two ninety five this morning", "ask level_ml"),
        ("0720", BEDS, "bed three the line was two ninety one last time", "ask level_ml"),
        ("1309", BEDS, "nurse in bay two here bed seven line eight sixty", "ask bed"),
        ("0638", BEDS, "bay two, four 340", "ask level_ml"),
        ("0638", BEDS, "bed 2, bed 7 340", "ask level_ml"),
    ],
)
def test_what_may_be_either_is_asked(arrived: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert said(text, arrived, beds, channel="voice") == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        (
            "1638",
            BEDS,
            "bed two the pen line's at one thousand oh five at sixteen thirty",
            "mark bed=2 at=16:30 level_ml=1005",
        ),
        ("1638", BEDS, "bed two line one thousand oh five", "mark bed=2 level_ml=1005"),
        ("0638", BEDS, "bed two line one thousand oh five hundred", "mark bed=2 at=05:00 level_ml=1000"),
        (
            "0720",
            BEDS,
            "late one, bed three the line was two ninety five last night at eleven",
            "mark bed=3 at=03-Mar-23:00 level_ml=295",
        ),
        (
            "1509",
            BEDS,
            "bed two line five fifty at fifteen hundred B P one ten over sixty",
            "mark bed=2 at=15:00 level_ml=550",
        ),
        (
            "1309",
            BEDS,
            (
                "staff nurse on bay two, bed seven, drain reading eight hundred and sixty mils "
                "at thirteen hundred"
            ),
            "mark bed=7 at=13:00 level_ml=860",
        ),
        ("0638", BEDS, "nurse in bay two, bed seven 340", "mark bed=7 level_ml=340"),
        ("0638", BEDS, "bay two, bed seven, line 340", "ask bed"),
    ],
)
def test_numbers_and_places_as_they_are_said(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds, channel="voice") == read
