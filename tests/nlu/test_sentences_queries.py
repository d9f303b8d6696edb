"""What is asked, as nurses write them."""

from __future__ import annotations

import pytest

from .saying import ARRIVED, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 7?", "asked bed=7 topic=last"),
        ("7?", "asked bed=7 topic=last"),
        ("bed 7", "asked bed=7 topic=last"),
        ("what's the last mark on 12", "asked bed=12 topic=last"),
        ("last mark 17", "asked bed=17 topic=last"),
        ("whats bed 5 at", "asked bed=5 topic=last"),
        ("where is bed 5 at", "asked bed=5 topic=last"),
    ],
)
def test_a_bed_with_nothing_else_asks_for_its_last_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("total bed 12 last shift", "asked bed=12 topic=total window=last_shift"),
        ("bed 7 total", "asked bed=7 topic=total"),
        ("bed 5 24h total", "asked bed=5 topic=total window=24h"),
        ("bed 12 total 24h", "asked bed=12 topic=total window=24h"),
        ("total bed 12 3h", "asked bed=12 topic=total window=3h"),
        ("total bed 12 this shift", "asked bed=12 topic=total window=shift"),
        ("how much did bed 12 drain since 1500", "asked bed=12 topic=total window=15:00"),
        (
            "how much altogether from 5 since the drain was put in",
            "asked bed=5 topic=total window=placement",
        ),
        ("bed 12 output last 4 hours", "asked bed=12 topic=total window=4h"),
        ("total bed 12 yesterday", "asked bed=12 topic=total window=last_day"),
        ("total bed 12 today", "asked bed=12 topic=total window=day"),
    ],
)
def test_totals_are_asked_with_their_windows(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("what do I chart for 12", "asked bed=12 topic=chart"),
        ("how many ml an hour is 5 doing", "asked bed=5 topic=rate"),
        ("rate bed 12", "asked bed=12 topic=rate"),
        ("trend 12", "asked bed=12 topic=trend"),
        ("when is 12 due", "asked bed=12 topic=due"),
        ("what's due", "asked topic=due"),
        ("handoff 12", "asked bed=12 topic=handoff"),
        ("handoff", "asked topic=handoff"),
        ("when will 12 be full", "asked bed=12 topic=capacity"),
        ("when is bed 11 full", "asked bed=11 topic=capacity"),
        ("is 9 full?", "asked bed=9 topic=capacity"),
        ("is bed 9 full", "asked bed=9 topic=capacity"),
        ("is bed 9 leaking", "asked bed=9 topic=checks"),
        ("has 9 been changed?", "asked bed=9 topic=history"),
        ("who changed bed 9", "asked bed=9 topic=history"),
        ("was bed 4 changed overnight", "asked bed=4 topic=history"),
        ("what are the checks for 12", "asked bed=12 topic=checks"),
        ("is there an air leak in 12", "asked bed=12 topic=checks"),
        ("history 13", "asked bed=13 topic=history"),
        ("all marks bed 5 today", "asked bed=5 topic=history"),
        ("what's open on 8", "asked bed=8 topic=open"),
        ("open questions", "asked topic=open"),
        ("beds", "asked topic=beds"),
        ("who has chest tubes", "asked topic=beds"),
        ("who am i", "asked topic=me"),
        ("repeat that", "asked topic=repeat"),
        ("help", "help"),
        ("how does this work", "help"),
        ("seen 12", "acknowledged bed=12"),
        ("amended", "acknowledged"),
    ],
)
def test_every_topic_is_asked_by_its_own_words(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "arrived", "read"),
    [
        ("how much did 4 drain last night", "07:03", "asked bed=4 topic=total window=last_shift"),
        ("what was charted for 4 last night", "15:00", "asked bed=4 topic=chart window=last_shift"),
        ("trend 4 last night", "09:00", "asked bed=4 topic=trend window=last_shift"),
        ("how much did 4 drain last night", "06:54", "asked bed=4 topic=total window=shift"),
        ("total bed 4 tonight", "23:00", "asked bed=4 topic=total window=shift"),
        ("how much did 4 drain last night", "20:30", "ask window"),
        ("how much did 4 drain last night", "03:00", "ask window"),
        ("total bed 4 tonight", "09:00", "ask window"),
    ],
)
def test_last_night_is_a_shift_where_it_is_sure_which(text: str, arrived: str, read: str) -> None:
    hour, _, minute = arrived.partition(":")
    assert reading(text, arrived=ARRIVED.replace(hour=int(hour), minute=int(minute))) == read


@pytest.mark.parametrize(
    "text",
    [
        "what was the line at 2000 on bed 5",
        "what was the mark at 1900 for bed 5",
        "bed 5 what was the line at 1900",
        "what was the reading at 640 on bed 5",
        "whats the 1900 line for bed 5",
    ],
)
def test_what_the_line_was_at_a_time_is_asked_and_that_time_is_no_line(text: str) -> None:
    assert reading(text) == "asked bed=5 topic=last"


def test_a_line_beside_what_is_asked_is_asked_and_not_lost() -> None:
    assert reading("bed 2 340 no leak, ok?").startswith("ask")
    assert reading("bed 2 340 swinging?").startswith("ask")


@pytest.mark.parametrize("text", ["anything for me", "anything else for me?", "anything more for me"])
def test_who_asks_whether_there_is_anything_asks_for_the_open_questions(text: str) -> None:
    assert reading(text) == "asked topic=open"
