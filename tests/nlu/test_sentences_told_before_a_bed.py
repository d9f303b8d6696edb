"""What stands before a bed and its number, or behind a question, is no line and is not lost."""

from __future__ import annotations

import pytest

from tests.nlu.saying import reading

NUMBERED = tuple(str(number) for number in range(201, 231))


@pytest.mark.parametrize(
    "text", ["suction 216 30", "seal 216 2", "suction 216 30, wall 80", "wall bed 216 90"]
)
def test_the_value_of_a_check_before_its_bed_is_no_line(text: str) -> None:
    read = reading(text, beds=NUMBERED)
    assert "mark" not in read
    assert "ask" in read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("suction 216 ok 340 at 1830", "mark bed=216 at=18:30 level_ml=340"),
        ("suction on 216, mark 640 at 1830", "mark bed=216 at=18:30 level_ml=640"),
    ],
)
def test_a_line_told_apart_from_it_stays_one(text: str, read: str) -> None:
    assert reading(text, beds=NUMBERED).startswith(read)


@pytest.mark.parametrize(
    "text",
    [
        "how full is bed 20. leak none, swinging",
        "bed 20 getting close to full. no leak, swinging",
        "when is 3 due, no leak on 4",
    ],
)
def test_what_was_found_is_not_lost_behind_a_question(text: str) -> None:
    assert "ask kind" in reading(text)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("what is the leak on 20. swinging?", "asked bed=20 topic=checks"),
        ("bed 20 no leak. is it nearly full", "checked bed=20 air_leak=none; asked bed=20 topic=capacity"),
    ],
)
def test_nor_is_a_finding_that_is_asked_told(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("text", ["8: 12 605, 17 1160, 19 345", "18: 12 605, 17 1160"])
def test_an_hour_before_a_list_or_a_bed_is_asked(text: str) -> None:
    assert reading(text).startswith("ask")


def test_the_bed_of_a_wrong_line_is_no_level() -> None:
    read = reading("wrong bed!! the 1720 line of 222 belongs to 223", beds=NUMBERED)
    assert read.startswith("ask")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("8 10am 228", "mark bed=8 at=10:00 level_ml=228"),
        ("8 10am 228, 11 8am 50", "mark bed=8 at=10:00 level_ml=228; mark bed=11 at=08:00 level_ml=50"),
        ("1 L 1340 at 1835", "mark bed=1 tube=left at=18:35 level_ml=1340"),
        ("bed 9 1 L 1830", "mark bed=9 at=18:30 level_ml=1000"),
        ("9 610 1855, 2 635 1853, 17 24 1830", "mark bed=9 at=18:55 level_ml=610; "
         "mark bed=2 at=18:53 level_ml=635; mark bed=17 at=18:30 level_ml=24"),
        ("beds 24 5 13 are 233 110 1320 at 1830", "mark bed=24 at=18:30 level_ml=233; "
         "mark bed=5 at=18:30 level_ml=110; mark bed=13 at=18:30 level_ml=1320"),
        ("4 @1810hrs 180, 5 @1755 1800", "mark bed=4 at=18:10 level_ml=180; "
         "mark bed=5 at=17:55 level_ml=1800"),
        ("9 1800 (1800)", "ask level_ml"),
    ],
)  # fmt: skip
def test_numbers_side_by_side_are_parted_where_a_bed_can_begin(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("13 canister changed at 1811, old 1670; tube out 3 at 1753",
         "exchanged bed=13 at=18:11 final_ml=1670; removed bed=3 at=17:53"),
        ("dressing changed on 12. tube out bed 12 at 1815", "removed bed=12 at=18:15"),
    ],
)  # fmt: skip
def test_each_event_is_of_its_bed(text: str, read: str) -> None:
    assert reading(text) == read
