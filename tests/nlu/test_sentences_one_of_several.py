"""One sentence is whole: it is told, and the others are asked, unless they may be of it."""

from __future__ import annotations

from typing import Literal

import pytest

from .saying import BEDS, at, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 6 340 at 1850. xray shows 2 cm apical gap still", "mark bed=6 at=18:50 level_ml=340; ask kind"),
        ("bed 6 mark 340 at 1850; air in the zorb seal", "mark bed=6 at=18:50 level_ml=340; ask kind"),
    ],
)
def test_a_whole_sentence_stands_and_the_others_are_asked(text: str, read: str) -> None:
    assert reading(text, beds=BEDS, arrived=at("1905")) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 6 340 at 1850. gah 360",
        "bed 6 340 at 1850. its 200 tho on xray",
        "bed 6 340 at 1850. tube out on the floor",
        "bed 6 340 at 1850. gone home zorbing",
        "bed 6 340 at 1850. at 1800h",
        "bed 6 340. apical gap 2 cm at 1850",
        "bed 6 340 at 1850. no that was bed 7",
        "bed 6 340 at 1850. someone said apical 100",
        "gloves + touchscreen = 90. bed 14 is 1862!!",
        "sleepy. bed 3 1600 -> bed 19 1500. level ok",
        "bed 23 right drain removed at 1830. zorb level 290. Left drain stays",
        "bed 6 340 at 1850. apical two forty",
        "for example. bed 6 mark 340 at 1850 apical 10",
    ],
)
def test_what_may_be_of_the_other_sentence_is_asked_with_it(text: str) -> None:
    told = reading(text, beds=BEDS, arrived=at("1905"))
    assert "ask " in told
    assert "mark bed=6" not in told
    assert "removed" not in told or "level_ml=290" in told


@pytest.mark.parametrize(
    ("channel", "text", "read"),
    [
        ("voice", "bed 13 write chest tube 430 at 1900", "mark bed=13 tube=right at=19:00 level_ml=430"),
        ("voice", "write chest tube 430 for bed 13", "mark bed=13 level_ml=430"),
        ("text", "Bed 6 knocked his drain right over", "incident bed=6 what=tipped"),
        ("text", "bed 6 pulled the tube right out", "removed bed=6"),
        ("text", "bed 6 tube right out at 1830", "removed bed=6 tube=right at=18:30"),
    ],
)
def test_a_right_that_is_no_side_and_a_write_that_is_one(
    channel: Literal["text", "voice"], text: str, read: str
) -> None:
    assert reading(text, channel=channel) == read
