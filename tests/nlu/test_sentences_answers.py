"""Short answers, as nurses write them."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("yes", "answered answer=yes"),
        ("yep", "answered answer=yes"),
        ("no", "answered answer=no"),
        ("nope", "answered answer=no"),
        ("12 yes", "answered bed=12 answer=yes"),
        ("12 no", "answered bed=12 answer=no"),
        ("bed 12: yes", "answered bed=12 answer=yes"),
        ("yes bed 12", "answered bed=12 answer=yes"),
        ("yes for 12", "answered bed=12 answer=yes"),
        ("yes 12", "answered bed=12 answer=yes"),
        ("yes, same patient", "answered answer=yes"),
        ("no its the same canister", "answered answer=no"),
        ("yes that's right", "answered answer=yes"),
        ("no thats wrong", "answered answer=no"),
    ],
)
def test_yes_and_no_answer_with_or_without_a_bed(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("misread, 880", "answered choice=misread level_ml=880"),
        ("i misread it", "answered choice=misread"),
        ("12 misread", "answered bed=12 choice=misread"),
        ("12 misread 1190", "answered bed=12 choice=misread level_ml=1190"),
        ("2 misread, 230", "answered bed=2 choice=misread level_ml=230"),
        ("misread bed 12 880", "answered bed=12 choice=misread level_ml=880"),
        ("new one", "answered choice=new_canister"),
        ("new canister", "answered choice=new_canister"),
        ("new one yes", "answered answer=yes choice=new_canister"),
        ("yes new canister", "answered answer=yes choice=new_canister"),
        ("the earlier one was wrong, it was 430", "answered choice=earlier_wrong level_ml=430"),
        ("earlier was wrong", "answered choice=earlier_wrong"),
        ("first", "answered choice=first"),
        ("second one", "answered choice=second"),
        ("12 first", "answered bed=12 choice=first"),
    ],
)
def test_a_choice_answers_by_its_name(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("640", "answered level_ml=640"),
        ("880 ml", "answered level_ml=880"),
        ("left", "answered tube=left"),
        ("the left one", "answered tube=left"),
        ("right mediastinal", "answered tube=right mediastinal"),
        ("at 1900", "answered at=19:00"),
        ("7pm", "answered at=19:00"),
        ("20 min ago", "answered at=18:45"),
        ("no 1150", "answered answer=no level_ml=1150"),
        ("no, it's 1150", "answered answer=no level_ml=1150"),
        ("12 no 1050", "answered bed=12 answer=no level_ml=1050"),
        ("12 yes 1050", "answered bed=12 answer=yes level_ml=1050"),
        ("no 1050 at 1845", "answered at=18:45 answer=no level_ml=1050"),
    ],
)
def test_a_value_answers(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("correct", "answered answer=yes"),
        ("12 correct", "answered bed=12 answer=yes"),
        ("560 is right", "answered answer=yes level_ml=560"),
        ("no i misread it is 740", "answered answer=no choice=misread level_ml=740"),
    ],
)
def test_correct_alone_is_a_yes(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("seen 12 and 14", "acknowledged bed=12; acknowledged bed=14"),
        ("seen 12, 14", "acknowledged bed=12; acknowledged bed=14"),
        ("seen beds 3 and 7", "acknowledged bed=3; acknowledged bed=7"),
        ("seen 12 and 99", "ask level_ml"),
        ("seen 12 450", "ask level_ml"),
        ("noted 12 1050 at 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("roger, 12 mark 1050", "mark bed=12 level_ml=1050"),
    ],
)
def test_a_notice_is_seen_for_each_bed_that_was_named(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("how do i chart a new canister", "help"),
        ("how to log a tipped drain", "help"),
        ("how do i tell you i misread it", "help"),
        ("is it a new canister", "ask kind"),
        ("how do i chart 210", "ask bed"),
        ("new canister?", "ask kind"),
    ],
)
def test_who_asks_how_to_write_a_thing_has_not_written_it(text: str, read: str) -> None:
    assert reading(text) == read
