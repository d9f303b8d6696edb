"""Long replies are cut into pages that fit a phone, and say how to get the next one."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.wording.gsm import segments
from bot.wording.pages import PAGE_SEGMENTS, next_page, page_of

HEAD = "Ward 4: 20 beds with drains."
ROWS = tuple(f"Bed {bed}: 19:00 line 1,050 mL (Amy, 35 min ago), 45 mL/h." for bed in range(1, 21))


def all_pages(rows: tuple[str, ...]) -> list[tuple[str, ...]]:
    pages = [page_of(HEAD, rows, 1, "beds")]
    while next_page("\n".join(pages[-1])):
        pages.append(page_of(HEAD, rows, len(pages) + 1, "beds"))
    return pages


def test_a_short_reply_is_one_page_and_says_nothing_of_pages() -> None:
    assert page_of(HEAD, ROWS[:3]) == (HEAD, *ROWS[:3])


def test_a_long_reply_says_how_to_get_the_next_page() -> None:
    page = page_of(HEAD, ROWS, 1, "beds")
    assert page[-1] == 'Page 1 of 4: say more ("beds page 2").'
    assert next_page("\n".join(page)) == "beds page 2"


def test_the_last_page_offers_no_more() -> None:
    page = page_of(HEAD, ROWS, 4, "beds")
    assert page[-1] == "Page 4 of 4."
    assert next_page("\n".join(page)) is None


@pytest.mark.parametrize(("number", "same_as"), [(0, 1), (-3, 1), (5, 4), (99, 4)])
def test_a_page_that_is_not_there_is_the_nearest_one(number: int, same_as: int) -> None:
    assert page_of(HEAD, ROWS, number, "beds") == page_of(HEAD, ROWS, same_as, "beds")


@pytest.mark.parametrize(
    "reply", ["", "Bed 12, 19:00, line 690 mL.", "Page 1 of 2.", 'say more ("beds page 2")']
)
def test_a_reply_without_more_gives_nothing_to_ask_for(reply: str) -> None:
    assert next_page(reply) is None


@given(st.lists(st.integers(min_value=1, max_value=150).map(lambda size: "x" * size), max_size=60).map(tuple))
def test_every_row_is_on_one_page_and_every_page_fits_the_phone(rows: tuple[str, ...]) -> None:
    pages = all_pages(rows)
    told = [row for page in pages for row in page if row != HEAD and not row.startswith("Page ")]
    assert told == list(rows)
    assert all(segments("\n".join(page)) <= PAGE_SEGMENTS for page in pages)


def test_a_row_longer_than_a_page_stands_alone_and_is_not_lost() -> None:
    rows = ("short", "y" * 600, "end")
    assert [page[1] for page in all_pages(rows)] == list(rows)
