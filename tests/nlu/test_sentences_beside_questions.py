"""What is told beside a question, and one question after another."""

from __future__ import annotations

import pytest

from .saying import CHANNELS, MORNING, Channel, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "Aye bed 19 drain's sitting at 1120 at 1845, and whit's due on 19?",
            "mark bed=19 at=18:45 level_ml=1120; asked bed=19 topic=due",
        ),
        (
            "12 is 1190 now, when is it gonna be full?",
            "mark bed=12 at=19:05 level_ml=1190; asked bed=12 topic=capacity",
        ),
        (
            "12 is 1190 now when is it gonna be full?",
            "mark bed=12 at=19:05 level_ml=1190; asked bed=12 topic=capacity",
        ),
        (
            "End of shift line, bed 10, 1,465 mL at 18:45. Kindly give me the shift total for bed 10.",
            "mark bed=10 at=18:45 level_ml=1465 closing; asked bed=10 topic=total window=shift",
        ),
        (
            "Bed 4 final line of the shift is 480 at 6:55 pm. Handoff for bed 4 please!",
            "mark bed=4 at=18:55 level_ml=480 closing; asked bed=4 topic=handoff",
        ),
        ("12 tipped over what do i chart", "incident bed=12 what=tipped; asked bed=12 topic=chart"),
        ("12 tipped over, what do i chart", "incident bed=12 what=tipped; asked bed=12 topic=chart"),
        (
            "changed the box on 9 at 1830 do i chart the old one",
            "exchanged bed=9 at=18:30; asked bed=9 topic=chart",
        ),
        ("scratch that whats the total on 5", "withdrawn; asked bed=5 topic=total"),
        ("help whats due", "help; asked topic=due"),
        (
            "seen 9, bed 9 870 at 1900, what's due",
            "acknowledged bed=9; mark bed=9 at=19:00 level_ml=870; asked bed=9 topic=due",
        ),
        ("what is 12 at? 5 is 640 at 1850", "asked bed=12 topic=last; mark bed=5 at=18:50 level_ml=640"),
        ("seen 5, what's the total on 5?", "acknowledged bed=5; asked bed=5 topic=total"),
        ("bed 18 is back from CT and when is he due", "back bed=18; asked bed=18 topic=due"),
        (
            "what's the total on 4? bed 5 mark 300 at 1900",
            "asked bed=4 topic=total; mark bed=5 at=19:00 level_ml=300",
        ),
    ],
)
def test_what_is_told_is_told_and_what_is_asked_is_asked(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "what's the total on 4 this shift and what's the rate on 5",
            "asked bed=4 topic=total window=shift; asked bed=5 topic=rate",
        ),
        ("total and rate on 5 this shift", "asked bed=5 topic=total window=shift; asked bed=5 topic=rate"),
        ("what's due and what's open", "asked topic=due; asked topic=open"),
    ],
)
def test_two_questions_are_both_answered(text: str, read: str) -> None:
    assert reading(text) == read
    spoken = text.replace("4", "four").replace("5", "five")
    assert reading(spoken, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("what still needs answering on my beds", "asked topic=open"),
        ("anything I've no answered yet?", "asked topic=open"),
        ("show me everything entered on 16 overnight", "asked bed=16 topic=history"),
        ("bed 3 last reading how much ah", "asked bed=3 topic=last"),
        ("how much since the last mark on 3", "asked bed=3 topic=total"),
        ("Hi it's me again! What's bed 4 at?", "asked bed=4 topic=last"),
        ("what was the total on 4 again", "asked bed=4 topic=total"),
        ("say again bed 4", "asked bed=4 topic=repeat"),
        ("hey hey startin nights, which beds hav drains", "asked topic=beds"),
        ("Evening lovely, bank nurse tonight, what beds have I got with drains in?", "asked topic=beds"),
        ("charge here, need a list of every bed w a chest tube", "asked topic=beds"),
        ("which beds have drains right now", "asked topic=beds"),
        ("whats 18 doin per hr", "asked bed=18 topic=rate"),
        ("what's the hourly on room 16", "asked bed=16 topic=rate"),
        ("when box of 6 will be full", "asked bed=6 topic=capacity"),
    ],
)
def test_a_question_is_known_by_words_that_stand_apart(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("changed 12 when full at 1900", "ask kind"),
        ("12 1900 how much", "ask level_ml"),
        ("since the exchange how much on 4", "ask window"),
        ("after the change how much on 4", "ask"),
        ("12 going to OR when is next mark due", "ask kind"),
        ("rate up on 4, 300 at 1850", "ask level_ml"),
        ("bed 9 is 65 and bed 2 is 110 at 1900, last lines from my side", "mark"),
        ("what's due on 12 640 at 1900", "ask"),
        ("12 1050 ok?", "ask"),
        ("what was 12 at, 640 at 0600", "ask"),
        ("disregard that, which was wrong", "withdrawn"),
    ],
)
def test_what_only_looks_like_a_question_swallows_nothing(text: str, read: str) -> None:
    said = reading(text)
    assert said.startswith(read), said
    assert "asked" not in said


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("seen bed 9 and bed 9 mark 870 at 1900", "acknowledged bed=9; mark bed=9 at=19:00 level_ml=870"),
        ("seen bed 9 and bed 10", "acknowledged bed=9; acknowledged bed=10"),
        ("seen bed 9 and bed 10 mark 640 at 1900", "acknowledged bed=9; mark bed=10 at=19:00 level_ml=640"),
    ],
)
def test_a_notice_that_was_seen_leaves_the_line_behind_it_whole(
    text: str, read: str, channel: Channel
) -> None:
    assert reading(text, channel=channel) == read
