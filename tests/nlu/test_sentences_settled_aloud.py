"""Questions, answers and what is taken back in a nurse's own words, typed and dictated."""

from __future__ import annotations

import pytest

import nlu

from .saying import CHANNELS, MORNING, Channel, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("when do i have to read 3 again", "asked bed=3 topic=due"),
        ("when am i supposed to mark 3 again", "asked bed=3 topic=due"),
        ("when did i read 5 last", "asked bed=5 topic=last"),
        ("which drains need reading now", "asked topic=due"),
        ("which beds havent been marked this shift", "asked topic=due"),
        ("am i late on anything", "asked topic=due"),
        ("show hx on 22", "asked bed=22 topic=history"),
        ("what do i put on the flowsheet for 3", "asked bed=3 topic=chart"),
        ("which of our beds have a chest tube in tonight", "asked topic=beds"),
        ("who am i logged in as on this phone", "asked topic=me"),
        ("what are you waiting on", "asked topic=open"),
        ("do i need to do 7", "asked bed=7 topic=due"),
        ("is 5 on water seal", "asked bed=5 topic=checks"),
        ("was 5 tidaling earlier", "asked bed=5 topic=checks"),
        ("is 12 still bubbling", "asked bed=12 topic=checks"),
        ("did my last mark go through", "asked topic=history"),
        ("show me what i charted for 5", "asked bed=5 topic=history"),
        ("hows bed 6 looking", "asked bed=6 topic=last"),
        ("what did nights have on 11", "asked bed=11 topic=last"),
        ("how many drains does bed 4 have", "asked bed=4 topic=beds"),
    ],
)
def test_a_question_in_other_words_is_of_its_topic(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("anything still open for me", "asked topic=open"),
        ("sorry can you repeat that for me", "asked topic=repeat"),
        ("is anybody overdue for a mark", "asked topic=due"),
    ],
)
@pytest.mark.parametrize("channel", CHANNELS)
def test_a_question_with_no_bed_and_no_number_tells_nothing_that_could_be_lost(
    text: str, read: str, channel: Channel
) -> None:
    assert reading(text, channel=channel) == read


@pytest.mark.parametrize(
    "text", ["is 5 clamped", "is 5 at 340", "how come 4 is up 300", "how's 5 looking at 340"]
)
def test_a_question_of_an_event_or_a_number_is_no_report_and_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize("text", ["what's due, tube fell out", "which bed had the tube put in"])
def test_an_event_beside_a_question_is_asked(text: str) -> None:
    assert reading(text) == "ask kind"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "last line on 6 and total for 7 this shift plz",
            "asked bed=6 topic=last; asked bed=7 topic=total window=shift",
        ),
        ("last mark bed 2, total bed 3", "asked bed=2 topic=last; asked bed=3 topic=total"),
        ("trend on 2 and 24h total on 6", "asked bed=2 topic=trend; asked bed=6 topic=total window=24h"),
        ("last and total on 4", "asked bed=4 topic=total"),
        (
            "total 4 and 5 since 1500",
            "asked bed=4 topic=total window=15:00; asked bed=5 topic=total window=15:00",
        ),
    ],
)
def test_each_of_two_questions_has_its_own_topic(text: str, read: str) -> None:
    assert reading(text) == read


def test_each_of_two_dictated_questions_has_its_own_topic() -> None:
    read = reading("bed three total for the day and bed six last mark please", channel="voice")
    assert read == "asked bed=3 topic=total window=day; asked bed=6 topic=last"


@pytest.mark.parametrize("text", ["12 total 4, 5 total 7", "total on 12 300"])
def test_a_number_behind_a_sum_that_may_be_an_amount_is_asked(text: str) -> None:
    assert reading(text) == "ask kind"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("seen 11. line is 570 at 1850", "acknowledged bed=11; mark bed=11 at=18:50 level_ml=570"),
        ("ack 9. now 340", "acknowledged bed=9; mark bed=9 at=19:05 level_ml=340"),
        ("seen 9, tube clamped", "acknowledged bed=9; incident bed=9 what=clamped"),
        ("seen 5, hemothorax", "acknowledged bed=5; described bed=5 reason=trauma"),
        ("seen 5, trauma paged", "acknowledged bed=5"),
        ("seen 9, 12 mark 340 at 1850", "acknowledged bed=9; mark bed=12 at=18:50 level_ml=340"),
    ],
)
def test_what_is_told_behind_a_notice_that_was_seen_is_of_that_bed_or_of_the_one_named(
    text: str, read: str
) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("remove the 1400 mark for bed 15, was charted twice", "withdrawn bed=15 at=14:00"),
        (
            "remove the 1400 mark for bed 5, what do i chart now",
            "withdrawn bed=5 at=14:00; asked bed=5 topic=chart",
        ),
        ("scratch that, total on 4", "withdrawn; asked bed=4 topic=total"),
        ("take back my entry on 7", "withdrawn bed=7"),
        ("take back 9", "ask kind"),
        ("take back my patient in 9", "ask kind"),
        ("1100 mark on 5 never happened", "withdrawn bed=5 at=11:00"),
        ("that 1500 reading on bed 3 isnt real", "withdrawn bed=3 at=15:00"),
        ("bed 3 tipping never happened", "ask kind"),
        ("kill the 1500 mark on 6", "withdrawn bed=6 at=15:00"),
        ("pull the 1500 mark on 6", "withdrawn bed=6 at=15:00"),
        ("drop in the reading on 6 340 at 1850", "mark bed=6 at=18:50 level_ml=340"),
        ("pls remove duplicate on 6", "withdrawn bed=6"),
        ("bed 3 mark 340 never happened", "ask kind"),
    ],
)
def test_a_line_is_taken_back_in_other_words(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("it was the earlier one that was wrong", "answered choice=earlier_wrong"),
        ("nope its the old one thats off", "answered answer=no choice=earlier_wrong"),
        ("the second one is wrong", "ask kind"),
        ("nah thats not correct", "answered answer=no"),
        ("no that isnt right", "answered answer=no"),
        ("its been changed", "answered choice=new_canister"),
        ("its not been changed", "ask kind"),
        ("its the left one right?", "answered tube=left"),
        ("thats due right?", "asked topic=due"),
        ("12 is due right?", "asked bed=12 topic=due"),
        ("yes on 6 no on 7", "ask answer"),
        ("6 is right, 7 should be 340", "ask kind"),
        ("6 should be 340, 7 is right", "ask kind"),
        ("yes, 7 should be 340", "corrected bed=7 level_ml=340"),
        ("yes it really is 1400", "answered answer=yes level_ml=1400"),
        ("hourly for 3 pls", "ask kind"),
    ],
)
def test_an_answer_in_other_words(text: str, read: str) -> None:
    assert reading(text) == read


def test_an_earlier_line_that_was_not_wrong_is_asked() -> None:
    assert "answered" not in reading("earlier one wasn't wrong")
    assert "answered" not in reading("earlier one on 5 was wrong")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "uh this is for bed twenty uh level of seven oh oh at noon uh yeah",
            "mark bed=20 at=12:00 level_ml=700",
        ),
        ("okay yeah bed four level three hundred at seven pm", "mark bed=4 at=19:00 level_ml=300"),
        ("no bed four level three hundred at seven pm", "answered bed=4 at=19:00 answer=no level_ml=300"),
        ("yep bed six is at five ten", "answered bed=6 answer=yes level_ml=510"),
        ("yes bed four three hundred", "answered bed=4 answer=yes level_ml=300"),
    ],
)
def test_a_yes_beside_a_whole_dictated_line_with_its_time_is_a_filler(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


def test_a_line_of_a_time_keeps_that_time_when_its_level_is_asked() -> None:
    (asked,) = nlu.parse("the 0600 mark on 12", arrived=MORNING, beds=("12",)).unclear
    assert asked.slot == "level_ml"
    assert asked.statement is not None
    assert asked.statement.at == MORNING.replace(hour=6, minute=0)
