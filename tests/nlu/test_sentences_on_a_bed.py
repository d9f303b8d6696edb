"""What is asked about a bed in general."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    "text",
    [
        "anything wrong with bed 4?",
        "anything i should know about bed 4",
        "any concerns bed 4",
        "whats going on with 4",
        "hey whats up with 4 please",
        "brief me on 4",
        "tell me about bed 4",
        "any alerts for bed 4",
        "anything new in 4 overnight?",
        "is something wrong with 4",
    ],
)
def test_anything_about_a_bed_is_its_handover(text: str) -> None:
    assert reading(text) == "asked bed=4 topic=handoff"


@pytest.mark.parametrize("text", ["how is bed 4", "how's 4", "is bed 4 ok", "everything ok in 4?"])
def test_how_a_bed_is_asks_for_its_last_line(text: str) -> None:
    assert reading(text) == "asked bed=4 topic=last"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("how is bed 4 draining", "asked bed=4 topic=total"),
        ("any leak on 4", "asked bed=4 topic=checks"),
        ("anything on 4 since 0700", "asked bed=4 topic=history"),
        ("whats wrong with the number on 4", "ask level_ml"),
        ("tell 4 I'm coming", "ask kind"),
        ("any news on 4 640", "ask level_ml"),
        ("is 4 going to CT", "ask kind"),
    ],
)
def test_what_says_more_is_another_question_or_none(text: str, read: str) -> None:
    assert reading(text) == read


def test_it_is_asked_aloud_too() -> None:
    assert reading("any concerns with bed four", channel="voice") == "asked bed=4 topic=handoff"
