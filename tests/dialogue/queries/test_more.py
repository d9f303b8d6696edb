""" "More" is the next page of the last reply to whoever says it."""

from __future__ import annotations

import json

import pytest

from bot.dialogue.context import Context
from bot.dialogue.queries.more import asked_for_more
from bot.unit import Person
from tests.dialogue.queries.ward import AMY, BEN, WARD_4, Ward, moment

PAGED = 'Bed 7 history, newest first:\n19:00 line 90 mL\nPage 1 of 3: say more ("history bed 7 page 2").'


def more(ward: Ward, text: str, who: Person = AMY) -> str | None:
    with ward.store.turn(ward.unit.id) as book:
        context = Context(unit=WARD_4, person=who, now=moment("4 19:05"), message_id="m")
        book.take_up("m", who.id, context.now)
        return asked_for_more(text, context, book)


@pytest.fixture
def ward() -> Ward:
    ward = Ward()
    ward.replies("4 19:00", json.dumps({"reply": PAGED}))
    return ward


@pytest.mark.parametrize("text", ["more", "More", " more. ", "next", "next page", "say more", "MORE?"])
def test_more_stands_for_the_query_that_the_last_reply_named(ward: Ward, text: str) -> None:
    assert more(ward, text) == "history bed 7 page 2"


@pytest.mark.parametrize("text", ["60 more", "more drained", "bed 12 mark 1050", "", "no more"])
def test_anything_else_is_left_to_the_reader(ward: Ward, text: str) -> None:
    assert more(ward, text) is None


def test_more_is_about_ones_own_last_reply_and_not_another_persons(ward: Ward) -> None:
    assert more(ward, "more", BEN) is None


def test_after_a_reply_with_no_more_pages_there_is_no_more(ward: Ward) -> None:
    ward.replies("4 19:01", json.dumps({"reply": "Bed 12: 19:00 line 1,050 mL."}))
    assert more(ward, "more") is None
