"""Questions with who asks and why beside them, and what is only planned for the bed."""

from __future__ import annotations

import pytest

from .saying import CHANNELS, Channel, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "trend of bed 17 for the last six hours? the house officer is on the phone",
            "asked bed=17 topic=trend window=6h",
        ),
        (
            "what's the total for bed 17 since midnight, doctor wants to know",
            "asked bed=17 topic=total window=00:00",
        ),
        ("whats bed 5 doing per hour, dr on phone", "asked bed=5 topic=rate"),
        ("Dr on the phone, how full is bed 12's canister", "asked bed=12 topic=capacity"),
        ("what's the last mark on bed 12, need it for the chart", "asked bed=12 topic=last"),
        ("what's the last mark on bed 12, I can't find the chart", "asked bed=12 topic=last"),
        ("Lost my notes. what's the last mark on bed 12", "asked bed=12 topic=last"),
        (
            "how much has 14 drained this shift, she is complaining of pain",
            "asked bed=14 topic=total window=shift",
        ),
        ("what's the last mark on bed 12, I'm just back from break", "asked bed=12 topic=last"),
        (
            "12 needs a new canister soon, could you tell me what it's running at per hour?",
            "asked bed=12 topic=rate",
        ),
        ("bed 12 is going to theatre soon, what's the total today?", "asked bed=12 topic=total window=day"),
        ("we're going to pull 12's tube tomorrow, what was the last mark", "asked bed=12 topic=last"),
        ("what's the last mark on bed 12, thinking of pulling the tube", "asked bed=12 topic=last"),
        (
            "what's the last mark on bed 12, and the total",
            "asked bed=12 topic=last; asked bed=12 topic=total",
        ),
        (
            "what's the last mark on bed 12, surgeon wants the trend too",
            "asked bed=12 topic=last; asked bed=12 topic=trend",
        ),
        ("what's due, bed 4 is bleeding", "asked topic=due; ask level_ml"),
        ("what's the last mark on bed 12, he pulled it out", "ask kind"),
        ("what's the last mark on bed 12, the box fell over", "ask kind"),
        ("changed the canister on 12, what's the rate", "exchanged bed=12; asked bed=12 topic=rate"),
        ("12 640 at 1830, doctor wants to know the rate", "ask level_ml"),
        ("bed 3 was 1120 mL at 1830 when we did the bedside handover", "mark bed=3 at=18:30 level_ml=1120"),
    ],
)
def test_who_asks_and_why_is_no_part_of_a_question_and_an_event_is(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("How long until the canister in 12 is full at this rate?", "asked bed=12 topic=capacity"),
        ("how much longer before 12's box is full", "asked bed=12 topic=capacity"),
        ("is 23 close to full, and whats 24's last", "asked bed=23 topic=capacity; asked bed=24 topic=last"),
        ("is bed 23 close to capacity", "asked bed=23 topic=capacity"),
        ("which bays r overdue", "asked topic=due"),
        ("what r we waiting on", "ask kind"),
        ("r bed 5 and 6 due", "asked bed=5 topic=due; asked bed=6 topic=due"),
        ("total of bed 5 r side today", "asked bed=5 tube=right topic=total window=day"),
        ("what's the last on bed 5 r tube", "asked bed=5 tube=right topic=last"),
        ("beds?", "asked topic=beds"),
        ("what was the last 24h on bed 12", "asked bed=12 topic=total window=24h"),
        ("all caught up, giving report now", "ask bed"),
        ("give me report", "asked topic=handoff"),
        ("12 340 at 1830, at this rate it will be full by midnight", "mark bed=12 at=18:30 level_ml=340"),
        ("what's the rate on 12", "asked bed=12 topic=rate"),
    ],
)
def test_questions_in_other_words(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("keep it", "answered answer=yes"),
        ("yes keep that please", "answered answer=yes"),
        ("keep it clamped", "ask bed"),
        ("keep bed 5 clamped", "ask kind"),
        ("it was bed 12", "answered bed=12"),
        ("its for room 12", "answered bed=12"),
        ("it was bed 12 mark 340 at 1830", "mark bed=12 at=18:30 level_ml=340"),
        (
            "It was the earlier one that was wrong, I must have read the scale upside down",
            "answered choice=earlier_wrong",
        ),
        ("the earlier one was wrong because I read it from the wrong side", "answered choice=earlier_wrong"),
        ("the earlier one was wrong, the canister was changed", "ask bed"),
        ("the earlier one was wrong, the new one is too", "ask kind"),
    ],
)
def test_an_answer_is_told_with_its_reason(text: str, read: str, channel: Channel) -> None:
    assert reading(text, channel=channel) == read
