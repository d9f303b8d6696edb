"""Questions of nurses who say which beds are theirs, and how these did."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("taking 3 and 4. when is 3 next due?", "asked bed=3 topic=due"),
        ("I've 14 and 15 today, can you give me the handover on 14 please", "asked bed=14 topic=handoff"),
        (
            "Morning, Fiona in high care. 2 and 3 are mine. How did 2 drain last night?",
            "asked bed=2 topic=total window=shift",
        ),
        ("got 3, 4 and 7 today. total on 4 overnight?", "asked bed=4 topic=total window=shift"),
        ("taking over beds 3, 4, 5. what's the rate on 5?", "asked bed=5 topic=rate"),
        ("I have 12. What's 12 at?", "asked bed=12 topic=last"),
        ("3 is mine. total on 4?", "asked bed=4 topic=total"),
        ("i have 3 and 4, totals for both?", "asked bed=3 topic=total; asked bed=4 topic=total"),
        ("i have 3 and 4. last lines?", "asked bed=3 topic=last; asked bed=4 topic=last"),
        ("bed 3? and total on bed 4", "asked bed=3 topic=total; asked bed=4 topic=total"),
        ("I have 3 and 4. 3 is at 400", "ask level_ml"),
    ],
)
def test_a_question_that_names_its_bed_is_of_none_of_ones_other_beds(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("How did 2 do last night?", "asked bed=2 topic=total window=shift"),
        ("how's 2 been doing today", "asked bed=2 topic=total window=day"),
        ("what did 2 drain last night", "asked bed=2 topic=total window=shift"),
        ("last line on 2 last night", "asked bed=2 topic=last"),
        ("when is 2 going home today", "ask kind"),
        ("who has 2 today", "ask kind"),
    ],
)
def test_how_a_bed_did_in_a_shift_asks_for_its_sum(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("What does that make my chartable volume for bed 5?", "asked bed=5 topic=chart"),
        ("chartable for 5 this shift", "asked bed=5 topic=chart window=shift"),
        ("What checks were done on 20 since arrival", "asked bed=20 topic=checks"),
        ("which checks are done on 20", "asked bed=20 topic=checks"),
        ("20 checks done", "ask kind"),
        ("what rate is 5 running at", "asked bed=5 topic=rate"),
        ("what is the rate on 5 running at 30", "ask kind"),
        ("heparin running at 12 on bed 5", ""),
    ],
)
def test_a_query_is_known_by_the_words_of_its_ward(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("what's due, bed 4 is bleeding", "asked topic=due; ask level_ml"),
        ("whats the total on 3, bed 4 is bleeding", "asked bed=3 topic=total; ask level_ml"),
        ("what's due, bed 4 please", "asked bed=4 topic=due"),
        ("totals, bed 4 and bed 5", "asked bed=4 topic=total; asked bed=5 topic=total"),
        ("report, bed 4 the new guy", "asked bed=4 topic=handoff"),
    ],
)
def test_what_is_told_behind_a_question_is_not_lost(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read
