"""The words that a paged reply gives for its next page are read back as the same query, a page on."""

from __future__ import annotations

from datetime import timedelta
from itertools import product
from typing import get_args

import pytest

from bot.dialogue.said import Query, Window
from bot.reading import read
from bot.wording.queries.asking import asking_words
from tests.dialogue.queries.ward import WARD_4, moment

_PAGED = ("chart", "trend", "history")
_WINDOWS = (None, *get_args(Window), timedelta(hours=8), moment("4 15:00"))
QUERIES = (
    Query(topic="beds"),
    Query(topic="open"),
    Query(topic="open", bed="12"),
    *(Query(topic=topic) for topic in ("last", "total", "rate", "due", "capacity", "checks")),
    *(Query(topic="history", bed="7", tube=tube) for tube in (None, "left", "right pleural", "A")),
    Query(topic="chart", bed="12", at=moment("4 15:00")),
    *(Query(topic=topic, bed="12", window=window) for topic, window in product(_PAGED[:2], _WINDOWS)),
)


@pytest.mark.parametrize("query", QUERIES, ids=repr)
def test_the_next_page_is_asked_for_in_words_that_are_read_as_that_page(query: Query) -> None:
    words = asking_words(query.topic, query.bed, query.tube, query.window, WARD_4.zone, at=query.at)

    (read_back,) = read(f"{words} page 3", WARD_4, moment("4 19:05")).said

    assert isinstance(read_back, Query)
    assert read_back.page == 3
    assert (read_back.topic, read_back.bed, read_back.tube) == (query.topic, query.bed, query.tube)
    assert (_span(read_back), read_back.at) == (_span(query), query.at)


def _span(query: Query) -> object:
    return timedelta(hours=24) if query.window == "24h" else query.window
