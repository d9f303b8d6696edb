"""Lines put right or taken back as nurses ask for it, with the reason and the apology around it."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("correct bed 13 1800 to 1150 i read the wrong column", "corrected bed=13 at=18:00 level_ml=1150"),
        ("fix bed 13 1800 to 1105, I read the scale wrong", "corrected bed=13 at=18:00 level_ml=1105"),
        (
            "I need to correct bed 4, the one from 1500 should be 754 instead of 745.",
            "corrected bed=4 at=15:00 was_ml=745 level_ml=754",
        ),
        ("bed 7 should be 430 rather than 340", "corrected bed=7 was_ml=340 level_ml=430"),
        ("bed 7 I wrote 340 but the line is at 430", "corrected bed=7 was_ml=340 level_ml=430"),
        (
            "Apologies, I put bed 2 at 1800 as 510 but it should be 501",
            "corrected bed=2 at=18:00 was_ml=510 level_ml=501",
        ),
        (
            "hi, I gave the wrong number for bed 7 at 1800, the right one is 430",
            "corrected bed=7 at=18:00 level_ml=430",
        ),
        ("bed 7 last one was 430 sorry not 340", "corrected bed=7 was_ml=340 level_ml=430"),
        ("make the 1600 on bed 5 650", "corrected bed=5 at=16:00 level_ml=650"),
        ("can you make the 1800 for bed 5 640 please", "corrected bed=5 at=18:00 level_ml=640"),
        ("bed 7 1800 should be 430, I had the two mixed up", "corrected bed=7 at=18:00 level_ml=430"),
        ("bed 7 1800 should be 430, looked at it again just now", "corrected bed=7 at=18:00 level_ml=430"),
        ("bed 7 wrong tube, the right one is 430", "ask to_tube"),
        ("bed 7 1800 right should be 430", "corrected bed=7 tube=right at=18:00 level_ml=430"),
        ("the 1530 mark on bed 4 was 430 not 540", "corrected bed=4 at=15:30 was_ml=540 level_ml=430"),
        ("i make the line 340 in bed 5 at 1800", "mark bed=5 at=18:00 level_ml=340"),
    ],
)
def test_a_level_is_put_right_whatever_the_reason(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 line i sent for 1830 was actually taken at 1800", "corrected bed=12 at=18:30 to_at=18:00"),
        ("the 1800 mark on bed 4 was taken at 1845 not 1800", "corrected bed=4 at=18:00 to_at=18:45"),
        ("bed 4 line i gave you for 1800 was really read at 1830", "corrected bed=4 at=18:00 to_at=18:30"),
        ("bed 7 430 was at 1830 not 1800", "corrected bed=7 at=18:00 was_ml=430 to_at=18:30"),
        ("bed 7 1050 was at 1830 not 1800", "ask at"),
        ("bed 7 1050 was at 1830", "ask level_ml"),
        ("bed 4 1800 was 430 not 450", "corrected bed=4 at=18:00 was_ml=450 level_ml=430"),
    ],
)
def test_the_time_that_a_line_was_really_read(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("the mark i put on 11 at 1800 belongs to 12", "corrected bed=11 at=18:00 to_bed=12"),
        ("what i sent for bed 11 at 1800 was for bed 12, sorry", "corrected bed=11 at=18:00 to_bed=12"),
        ("the 640 i sent for bed 11 was for bed 12", "corrected bed=11 was_ml=640 to_bed=12"),
        ("move bed 5's 1800 line onto bed 6, i had the wrong room", "corrected bed=5 at=18:00 to_bed=6"),
        ("sorry, move the 1800 on bed 5 to bed 6", "corrected bed=5 at=18:00 to_bed=6"),
        ("move bed 5 1800 to bed 6", "ask kind"),
        ("transfer 5 1800 to 6 pls", "ask kind"),
        ("moved bed 5 to bed 6 at 1800", "moved bed=5 at=18:00 to_bed=6"),
        ("move bed 5 to bed 6", "moved bed=5 to_bed=6"),
    ],
)
def test_a_line_is_given_to_another_bed_and_a_patient_may_have_moved(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "delete the 1600 mark on bed 21, that was bed 20's canister that I was looking at",
            "withdrawn bed=21 at=16:00",
        ),
        ("delete the 1600 on bed 21 it was the foley", "withdrawn bed=21 at=16:00"),
        ("delete 1600 for bed 21, i was looking at bed 20", "withdrawn bed=21 at=16:00"),
        ("take off my 1800 for bed 20, I had the wrong chart open", "withdrawn bed=20 at=18:00"),
        ("delete 1800 mark 20", "withdrawn bed=20 at=18:00"),
        ("delete 1600 for bed 21, i meant bed 20", "ask bed"),
        ("delete the 1600 on bed 21, it was 340", "ask at"),
        ("delete the 1600 on bed 21, it tipped", "ask kind"),
        ("scratch that he pulled the tube out", "ask kind"),
        ("delete 1800 mark 340", "ask kind"),
        ("delete the 1800 mark, mark 640", "ask kind"),
        ("take out the right tube on bed 5", "ask kind"),
    ],
)
def test_a_line_is_taken_back_for_a_reason_that_tells_nothing_more(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("put the 1800 from bed 3 under bed 8", "corrected bed=3 at=18:00 to_bed=8"),
        ("move the 1800 from bed 3 under bed 8", "corrected bed=3 at=18:00 to_bed=8"),
        ("reassign bed 3 1800 to bed 8", "ask kind"),
        ("the 540 belongs to bed 11", "corrected was_ml=540 to_bed=11"),
        ("bed 9 suction should be 20 rather than 10", "ask kind"),
        ("bed 9 suction should be 20 not 10", "ask kind"),
        ("put the 340 on bed 5 at 1800", "mark bed=5 at=18:00 level_ml=340"),
        ("put 340 down for bed 5 at 1800", "mark bed=5 at=18:00 level_ml=340"),
        ("delete 0600 mark 20", "withdrawn bed=20 at=06:00"),
        (
            "no it was the previous entry that was off, somebody read the wrong side",
            "answered answer=no choice=earlier_wrong",
        ),
        ("previous reading incorrect, I had the bed up", "answered choice=earlier_wrong"),
        ("any beds late?", "asked topic=due"),
        ("bed list pls", "asked topic=beds"),
        ("how many more mls fit in bed 9", "asked bed=9 topic=capacity"),
        ("how many mls has bed 9 drained today", "asked bed=9 topic=total window=day"),
        ("bed 24 340 at 1800, bloods back", "mark bed=24 at=18:00 level_ml=340"),
        ("16 stopped being bloody, straw coloured now", "checked bed=16 at=19:05 fluid=serous"),
        ("could not read bed 9 at 1730 (in the scanner), 820 at 1845", "ask kind; ask kind"),
        ("skipped bed 9 at 1730", "ask kind"),
    ],
)
def test_the_same_in_other_words(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_dictated_line_belongs_to_another_bed() -> None:
    said = "the noon mark I gave for bed eleven belongs to bed twelve"
    assert reading(said, channel="voice") == "corrected bed=11 at=12:00 to_bed=12"
