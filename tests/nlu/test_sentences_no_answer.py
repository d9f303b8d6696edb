"""A "no" that is of the word behind it, a plan without a question, half-heard endings: never an answer."""

from __future__ import annotations

import pytest

from .saying import BEDS, CHANNELS, Channel, reading


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    "text", ["bed 9 no tipping", "bed 9 no crackles", "9 no bleeding", "no crackles in bed 9", "9 no drips"]
)
def test_a_no_of_the_word_behind_it_answers_nothing(text: str, channel: Channel) -> None:
    assert "answered" not in reading(text, BEDS, channel)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("no it was 880", "answered answer=no level_ml=880"),
        ("no thanks", "answered answer=no"),
        ("no misread 880", "answered answer=no choice=misread level_ml=880"),
        ("no worries", ""),
    ],
)
def test_a_no_by_itself_or_with_a_value_answers(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    "text", ["bed 9 canister needs changing", "9 needs changing", "bed 9 tube might come out tomorrow"]
)
def test_what_is_planned_for_a_bed_asks_for_no_line_of_it(text: str, channel: Channel) -> None:
    assert reading(text, BEDS, channel).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 is a post op day 1 heart", "described bed=9 reason=cardiac"),
        ("bed 9 pod 2 lobectomy", "described bed=9 reason=lung"),
        ("bed 9 is post op day 1 from a cabg", "described bed=9 reason=cardiac"),
        ("bed 9 pod 2", ""),
    ],
)
def test_the_day_after_an_operation_hides_no_reason(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed nine mark five twenty to seven", "ask level_ml"),
        ("bed nine mark five hundred twenty to seven", "ask level_ml"),
        ("bed nine mark five hundred at twenty to seven", "mark bed=9 at=18:40 level_ml=500"),
        ("bed nine mark five hundred, twenty to seven", "mark bed=9 at=18:40 level_ml=500"),
        ("bed nine mark five hundred quarter to seven", "mark bed=9 at=18:45 level_ml=500"),
    ],
)
def test_minutes_that_may_be_the_end_of_the_level_are_asked(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed nine zero sanguinous drainage", "checked bed=9 fluid=serosanguineous"),
        ("bed nine fluid is serious sanguineous", "checked bed=9 fluid=serosanguineous"),
        ("bed nine mark zero, sanguineous", "mark bed=9 level_ml=0; checked bed=9 fluid=sanguineous"),
        ("bed nine water seal is at to", "ask kind"),
    ],
)
def test_what_a_recogniser_makes_of_a_finding_is_put_right_or_asked(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read
