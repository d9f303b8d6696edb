"""What is put right or taken back, where a number may be of another sort or the other way round: asked."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    "text",
    [
        "that 1201 on bed 12 should have been 830",
        "bed 12: 1650 is wrong, correct level is 690",
        "bed 12 tube A correct 1140 to 550",
        "bed 12 1250 -> 50 typo sorry",
        "bed 12 mark was 1429, please amend the 350",
        "correct bed 12 1010 920",
        "put 460 on 12... actually 480? at 1800",
        "one of them is wrong, 945 or 1805, bed 12",
        "bed 12 left 1032 should have been right 592",
        "correction bed 12 its 1500 i read the wrong column 1790",
        "bed 12 1800 s/b 1753 hrs",
        "the 1075 on bed 12 was drawn at 1834, i put 1900",
    ],
)
def test_a_number_that_may_be_of_another_sort_is_asked_where_a_line_is_put_right(text: str) -> None:
    assert reading(text).startswith("ask "), text


@pytest.mark.parametrize(
    "text",
    [
        "bed 12 the 1750 i put on the right is the left ones",
        "you put arrival time on bed 12, i read it at 1800",
        "bed 12 mark is 20, the 1817 is rubbish",
        "so 1555 was off, bed 12 level is 465",
        "bed 12 timestamp off. 1255 pls",
        "the one at 1815 went to bed 9, its bed 12s",
        "1849hrs on bed 12: it was right side, 100, at 1800h",
        "bed 12 340 at 1849. at 1800h",
        "ignore the 1200 i just sent for bed 12",
        "bed 12 340 at 18:45 utc",
        "yes no wait",
        "yes wait",
    ],
)
def test_what_was_told_before_or_is_said_to_be_wrong_is_no_new_line(text: str) -> None:
    assert reading(text).startswith("ask "), text


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("correct bed 12 1900 to 1005", "corrected bed=12 at=19:00 level_ml=1005"),
        ("the 1725 line on bed 12 should be 560", "corrected bed=12 at=17:25 level_ml=560"),
        (
            "bed 12 that 160 was right pleural not left",
            "corrected bed=12 tube=left was_ml=160 to_tube=right pleural",
        ),
        ("the 1800 line on 11 was for 12", "corrected bed=11 at=18:00 to_bed=12"),
        ("oops wrong bed, the 1800 line on 11 was for 12", "corrected bed=11 at=18:00 to_bed=12"),
        ("ignore the 1200 line for bed 12", "withdrawn bed=12 at=12:00"),
        ("bed 12 340 at 1830, i put a clean dressing on", "mark bed=12 at=18:30 level_ml=340"),
        ("bed 12 moved to 9 at 1815", "moved bed=12 at=18:15 to_bed=9"),
    ],
)
def test_what_can_be_only_one_thing_is_put_right(text: str, read: str) -> None:
    assert reading(text) == read
