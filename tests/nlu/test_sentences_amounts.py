"""Amounts told in words, in parts of a litre and over a length of time."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 drained half a litre", "drained bed=12 volume_ml=500"),
        ("bed 12 drained 1/2 liter since 1500", "drained bed=12 volume_ml=500"),
        ("bed 12 drained 1/4 L", "drained bed=12 volume_ml=250"),
        ("bed 12 drained three quarters of a litre", "drained bed=12 volume_ml=750"),
        ("bed three three-quarters of a liter", "mark bed=3 level_ml=750"),
        ("bed 12 drained a litre and a quarter", "drained bed=12 volume_ml=1250"),
        ("bed 12 about a litre and a half", "mark bed=12 level_ml=1500 about"),
        ("bed 12 drained another litre", "drained bed=12 volume_ml=1000"),
        ("bed 12 mark 1 1/2 liters at 1900", "mark bed=12 at=19:00 level_ml=1500"),
        ("bed 12 mark 1 and a half L", "mark bed=12 level_ml=1500"),
        ("bed 12 mark 1\u00bd L", "mark bed=12 level_ml=1500"),
        ("bed 12 mark \u00beL", "mark bed=12 level_ml=750"),
        ("bed 12 mark one and three quarter litres", "mark bed=12 level_ml=1750"),
        ("bed 12 mark a litre and a half at quarter past six", "mark bed=12 at=18:15 level_ml=1500"),
        ("bed 12 mark 1,25 L", "mark bed=12 level_ml=1250"),
        ("bed 12 1,2L", "mark bed=12 level_ml=1200"),
        ("half a litre out of bed 12 since 1800", "drained bed=12 volume_ml=500"),
    ],
)
def test_a_part_of_a_litre_is_read_in_digits_words_and_signs(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 12 drained a third of a litre",
        "bed 12 drained two thirds of a liter",
        "bed 12 drained a litre and a bit",
        "bed 12 drained 2 litres and some",
        "bed 12 canister three quarters full",
        "bed 12 half full",
        "bed 12 3/4 full",
        "bed 12 mark one and a half at 1900",
        "tube 1 1/2 litres bed 5",
        "bed 12 mark a litre point two",
        "bed 12 1 litre 50",
    ],
)
def test_a_part_that_is_no_whole_number_or_of_no_litre_is_asked(text: str) -> None:
    assert "_ml=" not in reading(text)
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "ml"),
    [
        ("four-hundred-and-twenty", 420),
        ("one-thousand-and-fifty", 1050),
        ("twelve-hundred", 1200),
        ("nine-hundred-ninety-five", 995),
        ("one-oh-five-oh", 1050),
        ("one thousand-twenty", 1020),
    ],
)
def test_a_number_written_with_hyphens_is_one_number(text: str, ml: int) -> None:
    assert reading(f"bed 12 mark {text} at 1900") == f"mark bed=12 at=19:00 level_ml={ml}"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "new chest tube bed 12 right at 1810, 1200 out immediately",
            "placed bed=12 tube=right at=18:10; drained bed=12 tube=right volume_ml=1200",
        ),
        (
            "bed 2 new hemothorax chest tube 1840 R side, 600 came straight out",
            "placed bed=2 tube=right at=18:40 reason=trauma; drained bed=2 tube=right volume_ml=600",
        ),
        (
            "chest drain inserted bed 9 left side 1830 for haemothorax drained 800 straight away",
            "placed bed=9 tube=left at=18:30 reason=trauma; drained bed=9 tube=left volume_ml=800",
        ),
        ("bed 12 pigtail placed 1845, initial 300", "placed bed=12 at=18:45 level_ml=300"),
        ("bed 12 chest tube placed 1845, output 300", "ask level_ml"),
    ],
)
def test_what_came_when_a_tube_went_in_has_drained_and_is_no_opening_level(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("120 out this hr bed 5", "drained bed=5 volume_ml=120"),
        ("bed 5 put out 120 this hour", "drained bed=5 volume_ml=120"),
        ("bed 12 24h", "asked bed=12 topic=total window=24h"),
        ("bed 12 same as last hr", "drained bed=12 volume_ml=0"),
        ("bed 12 output same as last hour", "ask volume_ml"),
        ("bed 12 drained the same as last hour", "ask volume_ml"),
        ("12 same amount as last hour", "ask volume_ml"),
        ("12 no change in output", "ask volume_ml"),
        ("12 same", "drained bed=12 volume_ml=0"),
        ("12 level same as last hour", "drained bed=12 volume_ml=0"),
    ],
)
def test_an_amount_of_the_hour_is_taken_and_as_much_again_is_asked(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 drained 300 in 2 hours", "drained bed=12 volume_ml=300"),
        ("bed 12 lost half a litre in an hour", "drained bed=12 volume_ml=500"),
        ("300 out of bed 12 in 2 hours", "drained bed=12 volume_ml=300"),
        ("bed 12 will have drained 300 in 2 hours", "ask kind"),
        ("pt out of bed 12 is at 340", "mark bed=12 level_ml=340"),
    ],
)
def test_what_came_in_a_length_of_time_lies_behind_unless_it_is_planned(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 14 is bleeding 400 in 20 min", "drained bed=14 volume_ml=400"),
        ("rapid called on 5, bp 70/40, drain 340 in 30 min", "drained bed=5 volume_ml=340"),
        ("bed 12 mark 1050 in 30 min", "ask kind"),
        ("check 12 in 30 min", "ask kind"),
        ("bed 3 60+", "ask level_ml"),
        ("bed 3 240 for the night, line 880", "mark bed=3 level_ml=880"),
        ("3 hasnt drained since midnight", "ask volume_ml"),
    ],
)
def test_what_bled_in_minutes_is_an_amount_and_what_is_over_a_number_is_none(text: str, read: str) -> None:
    assert reading(text) == read
