"""Remarks beside a line that hold a word of ours: they ask, answer, correct and add nothing."""

from __future__ import annotations

import pytest

from .saying import CHANNELS, Channel, reading

LINE = "mark bed=12 at=19:00 level_ml=340"
ONE = "bed 12 line 340 mL at 1900"
ASKED = {
    f"{LINE}; ask level_ml",
    "ask level_ml",
    "ask kind",
    "ask at",
    "ask bed",
    "ask kind; ask kind",
    f"{LINE}; ask kind",
}
"""Where the remark is not understood beside the line, that is asked; never is something added."""


@pytest.mark.parametrize(
    "told",
    [
        "he's asleep at last",
        "hang on a second",
        "just a second",
        "first night back for me",
        "nice and easy to read for a change",
        "linen change done",
        "the correct answer is tea",
        "nothing wrong with him",
        "he's actually asleep",
        "yeah no worries",
        "I've charted the rest myself",
        "chart is up to date",
        "report given to nights",
        "did ever so well",
        "he's had his physio and did ever so well",
        "lunch is due",
        "at any rate",
        "history in the making",
        "open and shut case",
        "any questions just ask",
        "he has capacity",
        "his back is sore",
        "got him back into bed",
        "she's out for the count",
        "in full swing",
        "all the same",
        "cardiac diet ordered",
        "new grad on peds cardiac with my preceptor",
        "bloody freezing in here",
        "blood taken",
        "left my pen at the desk",
        "the change of shift was chaos",
        "fell about laughing",
        "fell out with my sister",
        "right royal pain in the neck",
        "right you are",
        "nothing left in the fridge",
        "I've got your back",
        "back in five",
        "he's on the transfer list for rehab",
        "he's crying out for tea",
        "should be fine",
        "corrected my spelling",
        "change the subject",
        "clamped my car",
        "leak in the staff room roof",
        "last straw",
    ],
)
@pytest.mark.parametrize("channel", CHANNELS)
def test_a_remark_with_a_word_of_ours_adds_nothing_to_a_line(told: str, channel: Channel) -> None:
    for text in (f"{ONE}. {told}", f"{told}, {ONE}"):
        assert reading(text, channel=channel) in {LINE, *ASKED}


@pytest.mark.parametrize(
    "told",
    [
        "he's asleep at last",
        "hang on a second",
        "nice and easy to read for a change",
        "report given to nights",
        "did ever so well",
        "yeah no worries",
        "bloody freezing in here",
    ],
)
def test_most_such_remarks_leave_the_line_whole(told: str) -> None:
    assert reading(f"{ONE}. {told}") == LINE


@pytest.mark.parametrize(
    ("text", "told"),
    [
        (f"{ONE}, what's the total", f"{LINE}; asked bed=12 topic=total"),
        (f"{ONE}, trend?", f"{LINE}; asked bed=12 topic=trend"),
        (f"{ONE}. show me the last line on 14", f"{LINE}; asked bed=14 topic=last"),
        (f"{ONE}. handoff on 14", f"{LINE}; asked bed=14 topic=handoff"),
        (f"{ONE}. any chance of the hourly rate for 12", f"{LINE}; asked bed=12 topic=rate"),
        ("12 drained 80 in the last hour", "drained bed=12 volume_ml=80"),
        ("I got bed 12 wrong, it should be 340 at 1900", "corrected bed=12 at=19:00 level_ml=340"),
        ("please change bed 12 1900 to 340", "corrected bed=12 at=19:00 level_ml=340"),
        ("bed 12 actually 340 at 1900", "corrected bed=12 at=19:00 level_ml=340"),
        ("the first one, bed 12 340", "answered bed=12 choice=first level_ml=340"),
        ("yes bed 12 340 at 1900", "answered bed=12 at=19:00 answer=yes level_ml=340"),
        (f"{ONE}, trauma patient", f"{LINE}; described bed=12 reason=trauma"),
        (f"{ONE} post op heart", f"{LINE}; described bed=12 reason=cardiac"),
        (f"{ONE}, bloody drainage", f"{LINE}; checked bed=12 at=19:00 fluid=sanguineous"),
        (f"{ONE}, back from theatre 1830", f"{LINE}; back bed=12 at=18:30"),
        (f"{ONE}, he knocked the box over", f"{LINE}; incident bed=12 at=19:00 what=tipped"),
        ("bed 12 left 340 right 120 at 1900", "mark bed=12 tube=left at=19:00 level_ml=340; mark bed=12 "
         "tube=right at=19:00 level_ml=120"),
    ],
)  # fmt: skip
def test_what_is_asked_answered_or_put_right_beside_figures_stays(text: str, told: str) -> None:
    assert reading(text) == told


@pytest.mark.parametrize(
    ("told", "read"),
    [
        ("left", "mark bed=12 tube=left at=19:00 level_ml=340"),
        ("gone to ct", f"{LINE}; away bed=12 at=19:00"),
        ("clamped his drain", f"{LINE}; incident bed=12 at=19:00 what=clamped"),
        ("fresh blood", f"{LINE}; checked bed=12 at=19:00 fluid=sanguineous"),
    ],
)
def test_what_is_of_the_drain_stays(told: str, read: str) -> None:
    assert reading(f"bed 12 340 at 1900, {told}") == read


def test_a_bed_and_its_line_are_never_dropped_with_what_is_not_ours() -> None:
    assert reading("full english for breakfast 12 340 at 1900").startswith("ask")


@pytest.mark.parametrize("told", ["clocks wrong", "and i'm wrong"])
def test_a_doubt_about_the_line_is_still_asked(told: str) -> None:
    assert reading(f"bed 12 340 at 1900, {told}").startswith("ask")
