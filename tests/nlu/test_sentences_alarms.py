"""Who fears for somebody or calls for help still tells the line; from memory of how wards call."""

from __future__ import annotations

import pytest

import nlu
from nlu.statements import Parsed

from .saying import BEDS, MORNING, reading


def read_text(text: str) -> Parsed:
    """The message read at five to seven in the morning, whole."""
    return nlu.parse(text, arrived=MORNING, beds=BEDS)


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("bed 9 crashing, 1150 bloody", "mark bed=9 level_ml=1150; checked bed=9 fluid=sanguineous"),
        ("MET call bed 9, drain 1150 bright red", "mark bed=9 level_ml=1150; checked bed=9 fluid=bright_red"),
        ("code blue 14, line 900", "mark bed=14 level_ml=900"),
        ("14 900 bleeding", "mark bed=14 level_ml=900"),
        ("14 arrested, 900 in drain", "mark bed=14 level_ml=900"),
        ("14 may be bleeding, 320", "mark bed=14 level_ml=320"),
        ("think bed 5 is bleeding, 200 in ten mins", "drained bed=5 volume_ml=200"),
        ("bed 14 has bled another 300", "drained bed=14 volume_ml=300"),
        ("bed 14 bled 300 in the last hour", "drained bed=14 volume_ml=300"),
        ("bed 7 went from 300 to 700 in 20 min", "mark bed=7 level_ml=700"),
        ("12 340 at 0650, bleeding now", "mark bed=12 at=06:50 level_ml=340"),
        ("14 not bleeding, line 320", "mark bed=14 level_ml=320"),
    ],
)
def test_an_alarm_beside_a_line_leaves_it_whole(said: str, read: str) -> None:
    assert reading(said, arrived=MORNING) == read


@pytest.mark.parametrize(
    "said",
    [
        "rapid response bed nine line is nine hundred",
        "emergency bed nine nine hundred and rising",
        "bed nine is crashing the line is nine hundred",
    ],
)
def test_a_dictated_alarm_leaves_the_line_whole(said: str) -> None:
    assert reading(said, channel="voice", arrived=MORNING) == "mark bed=9 level_ml=900"


@pytest.mark.parametrize("said", ["3 bleeding", "bed 3 is bleeding", "i think 3 is bleeding", "3 arrested"])
def test_who_bleeds_has_a_line_that_is_asked(said: str) -> None:
    parsed = read_text(said)
    assert [(u.slot, u.statement.bed if u.statement else None) for u in parsed.unclear] == [("level_ml", "3")]
    assert not parsed.statements


@pytest.mark.parametrize(
    "said",
    [
        "if 14 bleeds more than 200 call me",
        "14 might have bled 200",
        "team not sure, 5 640",
        "probably 640 on 5, he's crashing",
        "is 3 bleeding?",
        "paged 3",
    ],
)
def test_a_fear_tells_no_amount_that_is_only_feared(said: str) -> None:
    assert not read_text(said).statements


@pytest.mark.parametrize(
    ("said", "level"),
    [("9 gushing blood, 1200 so much of it", 1200), ("9 1150 bright red zigzag", 1150)],
)
def test_a_line_beside_words_that_are_not_understood_is_asked_by_its_number(said: str, level: int) -> None:
    parsed = read_text(said)
    assert [u.choices for u in parsed.unclear] == [(level,)]
