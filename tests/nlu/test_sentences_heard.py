"""What a recogniser writes for a word of the ward."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("at 12 Mark 1050 at 1900.", "mark bed=12 at=19:00 level_ml=1050"),
        ("Dead 17 mark 950 at 1850", "mark bed=17 at=18:50 level_ml=950"),
        ("Bit 12 change canister at 1820 old one 1980", "exchanged bed=12 at=18:20 final_ml=1980"),
        ("bad three right mark six fifty at nineteen oh five", "mark bed=3 tube=right at=19:05 level_ml=650"),
        ("bed 12 mark 340 at O700 this morning", "mark bed=12 at=07:00 level_ml=340"),
        ("bed 12 mark 340 at O-900", "mark bed=12 at=09:00 level_ml=340"),
        ("bed 12 mark 340 at 0 900", "mark bed=12 at=09:00 level_ml=340"),
    ],
)
def test_a_misheard_bed_or_nought_is_put_right(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    "text",
    [
        "at 12 mark 1050",
        "drained a bit 40 ml",
        "bed 3 serous and bonus mark 980 at 1900",
        "bed 9 Sarah's fluid no air leak",
        "bed 7 mark 128 7 oh 2 pm",
        "the leak oh last reading for bed three",
        "to leave the last reading for bed three",
        "and ah and sixty",
        "and three on ah it's it's the ah the the",
    ],
)
def test_words_that_show_that_something_was_lost_are_asked(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask")
