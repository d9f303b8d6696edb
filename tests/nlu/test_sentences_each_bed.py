"""Several beds told in one message, and what an ending makes of the numbers and words beside it."""

from __future__ import annotations

import pytest

from .saying import CHANNELS, MORNING, Channel, reading

TEN = MORNING.replace(hour=10, minute=35)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 13 drain out 0940 total 330, bed 14 drain out 0955 total 190",
            "removed bed=13 at=09:40 level_ml=330; removed bed=14 at=09:55 level_ml=190",
        ),
        (
            "bed 17 drain removed 0615 total 540 in bottle, bed 18 moved to 17",
            "removed bed=17 at=06:15 level_ml=540; moved bed=18 to_bed=17",
        ),
        (
            "6 tube pulled 0950 final 175, and 11 is off to IR",
            "removed bed=6 at=09:50 level_ml=175; away bed=11",
        ),
        ("drain out bed 24 0945 and bed 23 home at 0930", "removed bed=24 at=09:45; left bed=23 at=09:30"),
        (
            "4 moved to 9 at 0530, 9 moved to 22 before that at 0515",
            "moved bed=4 at=05:30 to_bed=9; moved bed=9 at=05:15 to_bed=22",
        ),
        (
            "house sup update: 13 transferred out 0600, 16 died 0440, 18 to OR at 0630",
            "left bed=13 at=06:00; left bed=16 at=04:40; away bed=18 at=06:30",
        ),
        (
            "bed 4 right removed at 0950 final 300, left now 410",
            "removed bed=4 tube=right at=09:50 level_ml=300; mark bed=4 tube=left at=10:35 level_ml=410",
        ),
        (
            "bed 4 right out at 0950 final 300. left 410 at 1000",
            "removed bed=4 tube=right at=09:50 level_ml=300; mark bed=4 tube=left at=10:00 level_ml=410",
        ),
    ],
)
def test_what_happened_in_each_bed_or_tube_is_read_for_itself(text: str, read: str) -> None:
    assert reading(text, arrived=TEN) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 13 removed 0940 final 330, bed 14 final 190", "removed bed=13 at=09:40 level_ml=330; ask kind"),
        ("bed 13 drain out 0940 total 330 since midnight", "removed bed=13 at=09:40; ask kind"),
        ("bed 13 tube out 0940, bed 14 total 330", "removed bed=13 at=09:40; ask kind"),
        (
            "bed 4 removed 0930 final 300, bed 5 removed 0940 final 200, or the other way round",
            "ask level_ml",
        ),
        ("bed 4 drain not out, bed 5 drain out 0930 final 200", "ask level_ml"),
        ("bed 4 right removed at 0950, left 410", "ask level_ml"),
        ("206 chest drain removed, canister at 410", "ask bed"),
        ("bed 3 home today", "ask level_ml"),
        ("bed 3 home health called 0930", "ask level_ml"),
        ("300 came out at 0940 final 900", "ask bed"),
        ("if bed 4 is out by 0930, bed 5 moves to 4", "ask kind; ask kind"),
        ("did bed 4 go to CT and bed 5 come back at 0930", "ask kind"),
        ("bed 3 half full, new canister at 0955, old 1005", "ask final_ml"),
    ],
)
def test_a_clause_that_leans_on_another_is_asked(text: str, read: str) -> None:
    assert reading(text, arrived=TEN) == read


@pytest.mark.parametrize(
    "behind",
    [
        "tomorrow",
        "draining well",
        "is next",
        "to follow",
        "fine",
        "comes out tomorrow",
        "left in",
        "stays in",
    ],
)
def test_a_tube_of_which_something_else_is_said_was_not_taken_out(behind: str) -> None:
    assert (
        reading(f"bed 4 left tube removed 0930, right {behind}", arrived=TEN)
        == "removed bed=4 tube=left at=09:30"
    )


@pytest.mark.parametrize("behind", ["and the right", "and right", ", right too", ", right also"])
def test_a_tube_that_is_only_named_behind_one_that_was_taken_out_is_out_as_well(behind: str) -> None:
    said = "removed bed=4 tube=left at=09:30; removed bed=4 tube=right at=09:30"
    assert reading(f"bed 4 left tube removed 0930 {behind}", arrived=TEN) == said


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("d/c'd CT bed 3 0815 total 640", "removed bed=3 at=08:15 level_ml=640"),
        ("bed 3 tube pulled 0500 with 540 total", "removed bed=3 at=05:00 level_ml=540"),
        ("bed 3 tube out 0500, 540 ml total", "removed bed=3 at=05:00 level_ml=540"),
        ("bed 3 tube out 0500, canister at 540", "removed bed=3 at=05:00 level_ml=540"),
        ("bed 3 tube out 0500, bottle 540", "removed bed=3 at=05:00 level_ml=540"),
        ("15 came out at 0640 final 220", "removed bed=15 at=06:40 level_ml=220"),
        ("bed 4 right out 0950 final 300", "removed bed=4 tube=right at=09:50 level_ml=300"),
        ("bed 22 full, put on a new canister at 0955, old 2005", "exchanged bed=22 at=09:55 final_ml=2005"),
        (
            "24 new box at 0945, old was 1850, and this one 30 at 1015",
            "exchanged bed=24 at=09:45 final_ml=1850; mark bed=24 at=10:15 level_ml=30",
        ),
        (
            "bed 3 box changed at 0930, old 1290, its at 20",
            "exchanged bed=3 at=09:30 final_ml=1290; mark bed=3 level_ml=20",
        ),
        (
            "bed 9 gone to theatre 0725, line before he went 790",
            "away bed=9 at=07:25; mark bed=9 at=07:25 level_ml=790",
        ),
        (
            "bed 4 off to CT 1010 and back 1025, level 640",
            "away bed=4 at=10:10; back bed=4 at=10:25; mark bed=4 level_ml=640",
        ),
        ("bed 4 off to CT 0810 and back 0825, level 640", "ask kind"),
    ],
)
def test_what_ended_says_what_the_number_beside_it_is(text: str, read: str) -> None:
    assert reading(text, arrived=TEN) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 mark 300, bed 5 tube out 0940", "mark bed=4 level_ml=300; removed bed=5 at=09:40"),
        ("bed 13 tube out, bed 14 off to CT at 1000", "removed bed=13; away bed=14 at=10:00"),
        (
            "bed 13 tipped, bed 14 tipped at 1000",
            "incident bed=13 at=10:00 what=tipped; incident bed=14 at=10:00 what=tipped",
        ),
    ],
)
def test_what_is_told_of_one_bed_has_not_the_time_of_another_event(text: str, read: str) -> None:
    assert reading(text, arrived=TEN) == read


@pytest.mark.parametrize("channel", CHANNELS)
def test_a_closing_line_said_for_each_bed_closes_each(channel: Channel) -> None:
    said = "closing line bed fourteen eight ninety closing line bed fifteen twelve thirty"
    read = "mark bed=14 level_ml=890 closing; mark bed=15 level_ml=1230 closing"
    assert reading(said, channel=channel, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 8 final 210 tube out 0940", "removed bed=8 at=09:40 level_ml=210"),
        ("bed 10 210 final, tube out 0940", "removed bed=10 at=09:40 level_ml=210"),
        (
            "bed 10 final 300 tube out, bed 11 final 400 tube out at 1000",
            "removed bed=10 at=10:00 level_ml=300; removed bed=11 at=10:00 level_ml=400",
        ),
        (
            "bed 8 old one 1900 new box 0930, tube out 0940",
            "exchanged bed=8 at=09:30 final_ml=1900; removed bed=8 at=09:40",
        ),
        ("bed 8 final 210 tube out 0940 level 230", "ask level_ml"),
    ],
)
def test_a_final_level_told_before_the_tube_is_out_is_kept(text: str, read: str) -> None:
    assert reading(text, arrived=TEN) == read
