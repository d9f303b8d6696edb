"""Sentences that tell something beside what they ask, and looks and lines whose words mean two things."""

from __future__ import annotations

import pytest

from .saying import LETTERED, MORNING, reading


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("12 will need a new box tonight, whats the rate", "asked bed=12 topic=rate"),
        ("when will 12 need a new box", "asked bed=12 topic=capacity"),
        ("when am i going to need a new box for 12", "asked bed=12 topic=capacity"),
        ("bed 11 is 8 hours behind with lines, what was the last one", "asked bed=11 topic=last"),
        ("bed 11 is overdue, what was the last one", "asked bed=11 topic=last"),
        ("am i behind on 11", "asked bed=11 topic=due"),
        ("bed 11 when is it due", "asked bed=11 topic=due"),
    ],
)
def test_what_is_told_beside_a_question_is_not_asked(text: str, said: str) -> None:
    """That a box will be full, or that lines are late, is the reason for the question."""
    assert reading(text) == said


def test_the_shift_of_whoever_is_named() -> None:
    """In the morning the night is the shift at hand; in the evening the day is the one before."""
    of_days = "what did the day nurse get on 2B for the shift"
    assert reading(of_days, LETTERED, arrived=MORNING.replace(hour=20)).endswith("window=last_shift")
    of_nights = "what did the night nurse get on 2B for the shift"
    assert reading(of_nights, LETTERED, arrived=MORNING.replace(hour=17)).endswith("window=last_shift")
    assert reading("total for 2B for the shift", LETTERED).endswith("window=shift")


@pytest.mark.parametrize("text", ["checks on 9 same as last", "obs for 9 same as last"])
def test_checks_that_are_the_same_are_no_line(text: str) -> None:
    """What has not changed is what was looked at."""
    assert reading(text) == "ask kind"


def test_a_line_that_is_the_same_stays_one() -> None:
    """Nothing drained."""
    assert reading("9 same as last") == "drained bed=9 volume_ml=0"


def test_a_moving_column_swings() -> None:
    """The column of the water seal."""
    assert reading("22 column moving, no air leak").endswith("checked bed=22 air_leak=none tidaling=True")
    assert reading("22 column isnt moving, no air leak").endswith("air_leak=none tidaling=False")


def test_a_line_put_to_another_bed_moves_nobody() -> None:
    """ "put bed 9 1900 to bed 10": the line or the patient."""
    assert reading("put bed 9 1800 to bed 10", channel="voice") == "ask kind"
    assert reading("shift bed 9 1800 over to bed 10", channel="voice") == "ask kind"
    assert reading("bed 9 shifted to bed 10 at 1800") == "moved bed=9 at=18:00 to_bed=10"
