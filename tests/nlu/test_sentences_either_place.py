"""Where a number, a time, a letter or a side can stand in one of two places: run together, or pointed at."""

from __future__ import annotations

import pytest

from .saying import ARRIVED, Channel, reading

EVENING = ARRIVED.replace(hour=19, minute=40)


@pytest.mark.parametrize(
    "text",
    [
        "bed twelve at eleven twenty eight twenty",
        "bed twelve at eleven twenty eight fifty",
        "bed nine at fourteen ten six forty",
        "bed 8 at thirteen fifty five 50",
        "bed 8 at thirteen fifty five fifty",
        "bed seven at six thirty three twenty",
        "bed seven at eighteen thirty five twenty",
        "bed seven at nineteen twenty two forty",
        "bed nine six forty five thirty",
    ],
)
def test_where_a_number_may_end_elsewhere_it_is_asked(text: str) -> None:
    assert reading(text, channel="voice", arrived=EVENING).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed nine at ten past two six forty", "mark bed=9 at=14:10 level_ml=640"),
        ("bed 8 at thirteen fifty five six hundred", "mark bed=8 at=13:55 level_ml=600"),
        ("bed seven at nineteen hundred two forty", "mark bed=7 at=19:00 level_ml=240"),
        ("at eighteen thirty three bed seven two forty", "mark bed=7 at=18:33 level_ml=240"),
        ("bed seven two forty at eighteen thirty three", "mark bed=7 at=18:33 level_ml=240"),
        ("bed seven ten fifty nineteen twenty", "mark bed=7 at=19:20 level_ml=1050"),
        ("bed seven at ten fifty nineteen hundred", "mark bed=7 at=19:00 level_ml=1050"),
        ("bed seven line ten fifty nineteen twenty five", "mark bed=7 at=19:25 level_ml=1050"),
    ],
)
def test_a_number_that_ends_in_one_place_only_is_read(text: str, read: str) -> None:
    assert reading(text, channel="voice", arrived=EVENING) == read


@pytest.mark.parametrize("channel", ["text", "voice"])
@pytest.mark.parametrize("about", ["roughly", "approximately", "nearly", "almost", "about", "around"])
def test_the_letter_of_a_tube_stands_before_about_so_much(about: str, channel: Channel) -> None:
    told = reading(f"bed 14 tube A {about} 960 at 1840", channel=channel, arrived=EVENING)
    assert told == "mark bed=14 tube=A at=18:40 level_ml=960 about"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("Yeah 9 reads 260 at 1500.", "mark bed=9 at=15:00 level_ml=260"),
        ("Yeah, 15 mark 920 at 7 35 p.m.", "mark bed=15 at=19:35 level_ml=920"),
        ("yeah reads 260 at 1500", "answered at=15:00 answer=yes level_ml=260"),
        ("yeah it's 260", "answered answer=yes level_ml=260"),
    ],
)
def test_a_yeah_before_a_whole_line_is_thinking_aloud(text: str, read: str) -> None:
    assert reading(text, channel="voice", arrived=EVENING) == read


@pytest.mark.parametrize(
    "text",
    [
        "pt arrived 1315 from OR with left tube bed 5",
        "bed 5 admitted 1315 with a left chest drain",
        "arrived 1315 from OR bed 5 chest tube left",
    ],
)
def test_when_somebody_came_is_no_line(text: str) -> None:
    assert reading(text, arrived=EVENING).startswith("ask ")


@pytest.mark.parametrize(
    "text",
    [
        "the 300 on bed 7 was the left tube not the right",
        "the 300 was for bed 12 not bed 10",
        "the 300 reading for bed 7 should be 310",
        "the 620 line for bed 7 should be 640",
    ],
)
def test_three_digits_that_point_at_a_line_may_be_its_time_or_its_level(text: str) -> None:
    assert reading(text, arrived=EVENING) == "ask at"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("that 640 on 7 was the left one", "corrected bed=7 to_tube=left was_ml=640"),
        ("the 640 on bed 7 was the left tube", "corrected bed=7 to_tube=left was_ml=640"),
        ("bed 7: that 640 was the apical", "corrected bed=7 to_tube=apical was_ml=640"),
        ("the 640 at 1845 was the left tube bed 7", "corrected bed=7 to_tube=left at=18:45 was_ml=640"),
        ("that 640 on 7 was right", "ask kind"),
        ("bed 7 the 640 is right", "answered bed=7 answer=yes level_ml=640"),
        ("bed 7 the left tube was 640 at 1845", "mark bed=7 tube=left at=18:45 level_ml=640"),
        ("the left is 640 on bed 7", "mark bed=7 tube=left level_ml=640"),
    ],
)
def test_that_line_was_of_a_tube(text: str, read: str) -> None:
    found = reading(text, arrived=EVENING)
    assert found.split()[0] == read.split()[0]
    assert set(found.split()) == set(read.split())


def test_now_before_a_line_is_no_hour() -> None:
    told = reading("bed twelve now ten seventy at nineteen hundred hours", channel="voice", arrived=EVENING)
    assert told == "mark bed=12 at=19:00 level_ml=1070"


@pytest.mark.parametrize(
    "text",
    [
        "bed 9 tube too level forty at eighteen thirty",
        "bed nine level seventeen hundred and for twenty minutes ago",
        "three hundred mils on bed nine add to in the morning",
        "bed nine tube one zero eighteen thirty",
    ],
)
def test_a_number_that_is_only_there_by_its_sound_is_asked(text: str) -> None:
    assert reading(text, channel="voice", arrived=EVENING).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed nine three hundred c c's at eighteen thirty", "mark bed=9 at=18:30 level_ml=300"),
        ("bed nine three hundred c c at eighteen thirty", "mark bed=9 at=18:30 level_ml=300"),
        (
            "bed nine tube A chest drain level four hundred and fifty mils at eighteen thirty",
            "mark bed=9 tube=A at=18:30 level_ml=450",
        ),
    ],
)
def test_letters_of_a_unit_and_of_a_tube_are_read(text: str, read: str) -> None:
    assert reading(text, channel="voice", arrived=EVENING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("9 415 1630", "ask level_ml"),
        ("9 415 0900", "ask level_ml"),
        ("9 415 at 0900", "mark bed=9 at=09:00 level_ml=415"),
        ("bed 9 mark 415 0900", "mark bed=9 at=09:00 level_ml=415"),
        ("9 415 1800", "mark bed=9 at=18:00 level_ml=415"),
    ],
)
def test_bare_numbers_are_line_and_time_only_within_two_hours(text: str, read: str) -> None:
    assert reading(text, arrived=EVENING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("4 at 615, 1900", "mark bed=4 at=19:00 level_ml=615"),
        ("bed 4 at 640, 1850", "mark bed=4 at=18:50 level_ml=640"),
        ("4 at 615 - 1900", "mark bed=4 at=19:00 level_ml=615"),
        ("4 at 615 1900", "ask level_ml"),
        ("4 at 1845, 1900", "ask level_ml"),
        ("4 at 1050, 1900", "mark bed=4 at=19:00 level_ml=1050"),
        ("1900 bed 9 at 634", "mark bed=9 at=19:00 level_ml=634"),
        ("9 at 1600, 634", "ask level_ml"),
        ("9 at 116, 1600", "ask level_ml"),
        ("9 at 1800 at 1004", "ask level_ml"),
        ("9 at 1050 at 1600", "mark bed=9 at=16:00 level_ml=1050"),
        ("bed 9 1050 at 645", "mark bed=9 at=18:45 level_ml=1050"),
        ("1845 bed 9 at 1050", "mark bed=9 at=18:45 level_ml=1050"),
    ],
)
def test_a_line_behind_at_is_not_the_time_of_the_time(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text", ["bed four at six fifteen nineteen hundred", "bed four at six forty eighteen fifty"]
)
def test_nor_where_it_is_spoken(text: str) -> None:
    assert reading(text, channel="voice") == "ask level_ml"
