"""Abbreviations with stops, "that's right" as an answer, an end of shift of both tubes, and odd days."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 3 back from the O.R. at 1845", "back bed=3 at=18:45"),
        ("bed 3 back from the O.R.", "back bed=3"),
        ("bed 3 to C.T. at 1845", "away bed=3 at=18:45"),
        ("bed 3 mark 340 at 7 p.m.", "mark bed=3 at=19:00 level_ml=340"),
        ("bed 3 L. 340 R. 20", "mark bed=3 tube=left level_ml=340; mark bed=3 tube=right level_ml=20"),
        ("bed 3 B.P. 105/60", ""),
    ],
)
def test_letters_with_stops_are_the_word_that_they_abbreviate(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("that's right", "answered answer=yes"),
        ("12 that's right", "answered bed=12 answer=yes"),
        ("bed 12, that's right, thanks", "answered bed=12 answer=yes"),
        ("that's the right one", "answered tube=right"),
    ],
)
def test_that_is_right_answers_yes_where_nothing_else_is_said(text: str, read: str) -> None:
    assert reading(text) == read


def test_an_end_of_shift_said_last_is_of_each_tube() -> None:
    assert reading("12 left 340 right 120 end of shift") == (
        "mark bed=12 tube=left level_ml=340 closing; mark bed=12 tube=right level_ml=120 closing"
    )


def test_a_saturday_is_no_saturation() -> None:
    assert reading("bed 12 mark 340 sat 2200") == "ask at"


def test_a_saturation_is_still_none_of_ours() -> None:
    assert reading("bed 12 mark 340 sat 94") == "mark bed=12 level_ml=340"
