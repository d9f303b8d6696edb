"""Mishaps with how they came and that they are put right, and lines mended in their own message."""

from __future__ import annotations

import pytest

from .saying import CHANNELS, LETTERED, Channel, reading

TIPPED = "incident bed=4 what=tipped"


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("said", "read"),
    [
        (
            "bed 4 drain was lifted above the chest during transfer, now back down",
            "incident bed=4 what=raised",
        ),
        ("bed 4 drain lifted above his chest, back down again", "incident bed=4 what=raised"),
        ("bed 4 drain knocked over by the tea lady", TIPPED),
        ("bed 4 drain knocked over by his missus", TIPPED),
        ("bed 4 drain knocked over getting out of bed", TIPPED),
        ("bed 4 drain knocked over coming back from theatre", TIPPED),
        ("bed 4 drain knocked over going down to xray", TIPPED),
        ("just letting you know bed 4 drain knocked over", TIPPED),
        (
            "bed 4 clamped at 1855 for the change, unclamped at 1858",
            "incident bed=4 at=18:55 what=clamped; incident bed=4 at=18:58 what=unclamped",
        ),
    ],
)
def test_how_a_mishap_came_and_that_it_is_put_right_is_part_of_it(
    said: str, read: str, channel: Channel
) -> None:
    assert reading(said, channel=channel) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("bed 4 drain knocked over, back from theatre", "back bed=4; incident bed=4 what=tipped"),
        ("bed 4 back from theatre", "back bed=4"),
        ("bed 4 gone to xray", "away bed=4"),
        ("bed 4 moved to 9", "moved bed=4 to_bed=9"),
    ],
)
def test_who_came_back_and_who_moved_is_still_told(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("bed 4 mark 340 at 1830. Sorry, that was bed 5.", "ask bed"),
        ("bed 4 mark 340 at 1830 sorry I meant bed 5", "ask bed"),
        ("bed 4 mark 340 at 1830, oops that was bed 5", "ask bed"),
        ("bed 4 left mark 340 at 1830. Sorry, that was right", "ask tube"),
        ("4 340 at 1830. oops that was for 5", "ask level_ml"),
        ("bed 4 mark 340 at 1830 should be bed 5", "corrected bed=4 at=18:30 to_bed=5 was_ml=340"),
        ("i put 340 at 1830 in bed 4, sorry that was bed 5", "corrected bed=4 at=18:30 to_bed=5 was_ml=340"),
        ("sorry the 1830 mark 340 on bed 4 was bed 5", "corrected bed=4 at=18:30 to_bed=5 was_ml=340"),
    ],
)
def test_a_line_mended_in_its_own_message_is_asked_and_one_sent_before_is_put_right(
    said: str, read: str, channel: Channel
) -> None:
    words = read.split("; ")
    assert sorted(reading(said, channel=channel).split()) == sorted(" ".join(words).split())


def test_a_lettered_bed_is_mended_too() -> None:
    assert reading("CT1 mark 340 at 1830. Sorry, that was CT2.", LETTERED) == "ask bed"


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("and 13", "ask kind"),
        ("at 1815", "answered at=18:15"),
        ("at eighteen fifteen", "answered at=18:15"),
        ("1815", "answered level_ml=1815"),
        ("at three forty", "answered level_ml=340"),
    ],
)
def test_a_bare_time_is_no_level_and_one_bed_more_is_none(said: str, read: str, channel: Channel) -> None:
    assert reading(said, channel=channel) == read


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("how much has bed 10 drained from 3 pm", "asked bed=10 topic=total window=15:00"),
        ("how many mils has bed five done today", "asked bed=5 topic=total window=day"),
        ("what did bed five do last shift", "asked bed=5 topic=total window=last_shift"),
        ("What's bed 5 done in the last 24 hours?", "asked bed=5 topic=total window=24h"),
        ("which ones have i still got to do", "asked topic=due"),
        ("who have i left to do", "asked topic=due"),
        ("picking up six, last mark?", "asked bed=6 topic=last"),
        ("is it picking up on bed 6", "asked bed=6 topic=trend"),
    ],
)
def test_questions_in_a_nurses_own_words(said: str, read: str, channel: Channel) -> None:
    assert reading(said, channel=channel) == read


def test_a_whole_line_with_its_time_in_words_is_no_answer() -> None:
    said = "yes hi log bed twelve at five forty mils at nineteen hundred"
    assert reading(said) == "mark bed=12 at=19:00 level_ml=540"
