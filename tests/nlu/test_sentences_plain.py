"""How nurses text when nobody watches: asked, put right, told and remarked in passing."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("how long til 3s canister is full", "asked bed=3 topic=capacity"),
        ("how long until 3's box is full", "asked bed=3 topic=capacity"),
        ("hours til full on 3", "asked bed=3 topic=capacity"),
        ("when will the box in 11 be full", "asked bed=11 topic=capacity"),
        ("when is the canister for bed 11 going to be full", "asked bed=11 topic=capacity"),
        ("when will the bed 3 canister fill up", "asked bed=3 topic=capacity"),
    ],
)
def test_when_a_canister_is_full_is_asked_around_its_bed(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "if 4 tips over do i need a new box",
        "do i need a new box if 4 tips over",
        "if 4 is disconnected do i check the leak",
    ],
)
def test_what_has_not_happened_is_no_query_of_a_bed(text: str) -> None:
    assert reading(text) == "ask kind"


def test_a_query_may_be_put_with_an_if() -> None:
    assert reading("can you tell me if 4 is due") == "asked bed=4 topic=due"


@pytest.mark.parametrize(
    "text",
    [
        "bed 12 last one, number's fine but time was 1850",
        "bed 12 last one was at 1850",
        "bed 5 milky drainage since breakfast?!",
        "bed 5 new air leak?!",
        "what's the foley output for bed 5?",
    ],
)
def test_what_tells_more_than_a_query_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 7 that 160 was right pleural not left",
            "corrected bed=7 tube=left was_ml=160 to_tube=right pleural",
        ),
        ("bed 7 the 160 was right not left", "corrected bed=7 tube=left was_ml=160 to_tube=right"),
        (
            "bed 7 160 was right pleural not left pleural",
            "corrected bed=7 tube=left pleural was_ml=160 to_tube=right pleural",
        ),
    ],
)
def test_a_line_of_the_wrong_tube_keeps_its_level(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 12 line 1050 at 1900, thats 45 in the hr",
        "bed 12 up to 1050 at 1900 so 45 in the hr",
        "bed 12 1050 at 1900, which is 60 since last",
        "bed 12 line 1050 at 1900, that's 60 out",
    ],
)
def test_what_is_reckoned_from_a_line_is_no_amount_beside_it(text: str) -> None:
    assert reading(text) == "mark bed=12 at=19:00 level_ml=1050"


def test_a_chair_is_no_shower() -> None:
    assert reading("bed 12 line 1050 at 1900, pt in shower chair") == "mark bed=12 at=19:00 level_ml=1050"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "dr put in left chest tube rm 7 at 1855 for effusion",
            "placed bed=7 tube=left at=18:55 reason=effusion",
        ),
        ("popped in a right drain bed 7 at 1855", "placed bed=7 tube=right at=18:55"),
    ],
)
def test_a_tube_that_was_put_in_is_placed(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_tube_that_is_put_on_suction_is_not_placed() -> None:
    assert "placed" not in reading("put left chest tube on suction 20 bed 7")
