"""Corrections that are doubted, asked about or broken off, and remarks that only look like them."""

from __future__ import annotations

import pytest

from tests.nlu.saying import reading


@pytest.mark.parametrize(
    "text",
    [
        "bed 5 1800 should be 430 not 340, not sure though",
        "bed 5 1800 should be 430, I think",
        "not convinced bed 22 is really 1270",
        "doubt bed 22 is really 640",
        "maybe delete bed 5 1800 mark",
        "bed 5 1800 should be 430 not 340 lol jk",
        "night nurse says bed 5 1800 should be 430 not 340",
        "the bed that was 6 before we renumbered, her box is 510",
        "bed 7 mark 500 at 1830. Correction... hang on someone's coding",
        "bed 17 630 at 1800, that was mrs green",
        "bed 17 630 at 1800, that was next door's",
    ],
)
def test_a_doubt_of_a_correction_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    "text",
    [
        "should I delete bed 5's 1800 mark?",
        "should i delete the 1800 mark on bed 5",
        "would you like me to delete bed 5 1800?",
        "shall we change bed 8 1800 to 440?",
        "should bed 8 1800 be 440 not 404?",
        "who deleted my 1800 mark on bed 5",
    ],
)
def test_a_correction_or_a_withdrawal_that_is_only_asked_about_is_not_made(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("can you delete my 1800 on bed 8?", "withdrawn bed=8 at=18:00"),
        ("could you change the 1800 on bed 8 to 440?", "corrected bed=8 at=18:00 level_ml=440"),
        ("should be 440 for bed 8", "corrected bed=8 level_ml=440"),
        (
            "bed 5 1800 should be 430 not 340, pretty sure I misread it",
            "corrected bed=5 at=18:00 was_ml=340 level_ml=430",
        ),
        ("correct bed 5 1800 to 430 when you get a sec", "corrected bed=5 at=18:00 level_ml=430"),
        ("340 for bed 4 belongs to bed 5", "corrected bed=4 was_ml=340 to_bed=5"),
    ],
)
def test_what_is_bidden_or_explained_is_put_right(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 17 box changed at 1815, old one 1870, that was the last one in stock",
            "exchanged bed=17 at=18:15 final_ml=1870",
        ),
        ("bed 17 630 at 1800 that was my last one", "mark bed=17 at=18:00 level_ml=630"),
        ("that was bed 6", "corrected to_bed=6"),
        ("bed 5 level 630 at 1800, and yes that is my handwriting", "mark bed=5 at=18:00 level_ml=630"),
        ("bed 5 640 at 1800, sure of it", "mark bed=5 at=18:00 level_ml=640"),
        ("bed 5 mark 640 at 1800, confirmed", "mark bed=5 at=18:00 level_ml=640"),
        ("yes bed 5 640", "answered bed=5 answer=yes level_ml=640"),
    ],
)
def test_a_remark_behind_a_line_puts_nothing_right_and_answers_nothing(text: str, read: str) -> None:
    assert reading(text) == read


def test_room_left_is_asked_and_no_sum() -> None:
    assert reading("how much room's left in the canister bed seven") == "asked bed=7 topic=capacity"
