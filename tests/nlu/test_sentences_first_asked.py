"""What nurses ask in words of their own."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("whats left to mark", "asked topic=due"),
        ("who do I still have to check", "asked topic=due"),
        ("when do i have to mark 15 next", "asked bed=15 topic=due"),
        ("do I need to swap the box on 7 before I go", "asked bed=7 topic=capacity"),
        ("what have we got charted for 12 today", "asked bed=12 topic=chart window=day"),
        ("list the readings on bed 2 since midnight", "asked bed=2 topic=history"),
        ("can i see the whole log for 17", "asked bed=17 topic=history"),
        ("did I answer you about bed 9?", "asked bed=9 topic=open"),
        ("what did you just say", "asked topic=repeat"),
        ("sorry missed that, again?", "asked topic=repeat"),
        ("am i down as charge tonight?", "asked topic=me"),
        ("which patients have two tubes", "asked topic=beds"),
        ("morning, can you tell me where bed 3 was left", "asked bed=3 topic=last"),
        ("which ones are late", "asked topic=due"),
        ("what commands are there", "help"),
        ("whats the 24 hr total on 5", "asked bed=5 topic=total window=24h"),
        ("what's the rate on 4, 5 and 6", "; ".join(f"asked bed={bed} topic=rate" for bed in "456")),
    ],
)
def test_a_question_in_other_words_is_the_same_question(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 3 drained nothing since last, is it due?", "drained bed=3 volume_ml=0; asked bed=3 topic=due"),
        ("is 5 due? 7 marked 430 at 0640", "asked bed=5 topic=due; mark bed=7 at=06:40 level_ml=430"),
        ("saw the alert on 9, calling surgeon", "acknowledged bed=9"),
        ("option 2", "answered choice=second"),
        ("last one is right", "ask kind"),
        ("right", "answered tube=right"),
        ("ok chart fixed for 10", "acknowledged bed=10"),
        ("whats due, also 3 is 95 at 0650", "asked topic=due; mark bed=3 at=06:50 level_ml=95"),
        ("4 is 220 at 0645 hows the trend", "mark bed=4 at=06:45 level_ml=220; asked bed=4 topic=trend"),
        ("its not a misread its really that low", "answered answer=yes"),
    ],
)
def test_what_is_told_or_answered_is_no_question(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    "text",
    [
        "saw the alert on 9, canister tipped",
        "is 5 due? 7 430",
        "option 2 640",
        "was bed 8 at 640 at 0600?",
        "do I need to swap the box on 7, its 1900 now",
        "when do i have to mark 15 640 at 0650",
    ],
)
def test_a_number_beside_a_question_is_never_dropped(text: str) -> None:
    said = reading(text, arrived=MORNING)
    assert not said.startswith("asked") or "; " in said, said
    assert said != "acknowledged bed=9"
