"""A clause with a subject of its own leaves the line or event beside it whole; a doubtful one does not."""

from __future__ import annotations

import pytest

from tests.nlu.saying import Channel, reading

MAINS = (
    ("bed 7 line 450 at 1900", "mark bed=7 at=19:00 level_ml=450"),
    ("bed 7 tube removed at 1900 final 450", "removed bed=7 at=19:00 level_ml=450"),
    ("we clamped bed 7 at 1900", "incident bed=7 at=19:00 what=clamped"),
)
BEHIND = (
    "because the doctor didn't want more than that all at once",
    "and he's sleeping like a baby",
    "before his wife came in",
    "while physio stood by",
    "once he'd settled down",
    ", she felt dizzy and hasn't eaten much",
    ", chest x-ray booked for this afternoon",
    ", he would like to go home today",
    ", his daughter has gone home",
    ". His wife is here and has brought soup, so I'll check on the dressing after.",
    "as he wanted to use the commode",
)


@pytest.mark.parametrize("main", MAINS)
@pytest.mark.parametrize("clause", BEHIND)
def test_a_clause_of_its_own_changes_nothing_of_what_is_told(main: tuple[str, str], clause: str) -> None:
    assert reading(f"{main[0]} {clause}") == main[1]


@pytest.mark.parametrize(
    ("text", "channel"),
    [
        ("bed seven line four fifty at nineteen hundred before his wife came in", "voice"),
        ("bed seven line four fifty at nineteen hundred while physio stood by", "voice"),
    ],
)
def test_it_changes_nothing_of_a_dictated_line(text: str, channel: Channel) -> None:
    assert reading(text, channel=channel) == "mark bed=7 at=19:00 level_ml=450"


@pytest.mark.parametrize(
    "text",
    [
        "we clamped bed 7 at 1900 but it may be wrong",
        "we clamped bed 7 at 1900 if the doctor agrees",
        "we clamped bed 7 at 1900 so the doctor wants it open",
        "nurse told me we clamped bed 7 at 1900",
        "he asked if we clamped bed 7 at 1900",
        "we clamped bed 7 at 1900, doctor hasn't done it yet",
        "we clamped bed 7 at 1900 but he pulled it",
    ],
)
def test_a_doubtful_clause_leaves_it_asked(text: str) -> None:
    assert "ask" in reading(text)


def test_an_event_in_the_clause_is_read() -> None:
    text = "bed 7 line 450 at 1900 and the drain fell over when he got up"
    assert reading(text) == "mark bed=7 at=19:00 level_ml=450; incident bed=7 at=19:00 what=tipped"


def test_when_that_was_is_its_time_before_such_a_clause() -> None:
    text = "Bed 14 is now at 900 mL, that was at 6 pm, he's had his sleeping pill and should settle."
    assert reading(text) == "mark bed=14 at=18:00 level_ml=900"


@pytest.mark.parametrize(
    ("text", "channel"),
    [
        ("let me put my glasses on please put down bed seven four fifty at nineteen hundred", "voice"),
        ("bed seven four fifty at nineteen hundred and he wants a cup of tea bless him", "voice"),
        ("bed seven line four fifty at nineteen hundred Maria is on her break", "voice"),
    ],
)
def test_a_head_or_a_remark_that_is_dictated_needs_no_stop(text: str, channel: Channel) -> None:
    assert reading(text, channel=channel) == "mark bed=7 at=19:00 level_ml=450"


@pytest.mark.parametrize(
    ("text", "channel"),
    [
        ("surgeon wants bed 7 tube out", "voice"),
        ("bed 7 450 this shift", "voice"),
        ("7 tipped over, the cup", "voice"),
        ("bed 7 tube pulled when he rolled", "text"),
        ("13 has a jp too, 30 out of that", "text"),
    ],
)
def test_half_a_clause_or_another_drain_is_never_left_out(text: str, channel: Channel) -> None:
    assert "ask" in reading(text, channel=channel)
