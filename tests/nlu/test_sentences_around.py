"""A whole line with something harmless around it: what its bed says, when it was read, why it is about so."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("18 cannister says 75 cc at 6:40pm", "mark bed=18 at=18:40 level_ml=75"),
        ("ok so im at the bedside and 13 says 1065, its 1903", "mark bed=13 at=19:03 level_ml=1065"),
        ("bed 1 says 130 ml as of 7 pm", "mark bed=1 at=19:00 level_ml=130"),
        ("LEVEL IN 16 IS 1020 ML, READ AT 1858", "mark bed=16 at=18:58 level_ml=1020"),
        ("pen line on 8 is now 455, drew it at 1900", "mark bed=8 at=19:00 level_ml=455"),
        ("bed 8 is 560, had a look at 18:50, no bubbles", "mark bed=8 at=18:50 level_ml=560; "
         "checked bed=8 at=18:50 air_leak=none"),
        ("885 right now in bed 24", "mark bed=24 at=19:05 level_ml=885"),
        ("marked 23 just now 905", "mark bed=23 at=19:05 level_ml=905"),
        ("around 1.1 L in bed 11's box at 1700", "mark bed=11 at=17:00 level_ml=1100 about"),
        ("#1 tube in bed 4 reads 310 at 1900", "mark bed=4 tube=1 at=19:00 level_ml=310"),
        ("bed 6 roughly 500 at 1905 cant read under the bed", "mark bed=6 at=19:05 level_ml=500 about"),
        ("8 abt 600 at 1900 can't get the light on", "mark bed=8 at=19:00 level_ml=600 about"),
        ("17 290 at 1800 n 18 is 60", "mark bed=17 at=18:00 level_ml=290; mark bed=18 at=18:00 level_ml=60"),
        ("bed five 945 @ 7 pm yikes, tidaling fine", "mark bed=5 at=19:00 level_ml=945; "
         "checked bed=5 at=19:00 tidaling=True"),
        ("that's me away. bed 19 closing line 1235", "mark bed=19 level_ml=1235 closing"),
        ("forgot the 3 o'clock one love, bed 8 was 615 at 15:00", "mark bed=8 at=15:00 level_ml=615"),
        ("bed 12 mark 440 at 1900, giving report now", "mark bed=12 at=19:00 level_ml=440"),
        ("bed 4 level 305 @1900, will check again at 2000", "mark bed=4 at=19:00 level_ml=305"),
        ("phone was dead, 15 at 6pm was 540", "mark bed=15 at=18:00 level_ml=540"),
        ("bed 24 sits at 1505 as at 1900", "mark bed=24 at=19:00 level_ml=1505"),
    ],
)  # fmt: skip
def test_a_whole_line_with_something_harmless_around_it(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "nurse in 13 says 340 at 1900",
        "dr says 12 340 at 1900",
        "bed 12 says 8",  # pain, from nought to ten
        "bed 12 mark 1850 read at 1900",  # either may be when
        "bed 12 mark 340, read at 420",
        "bed 8 is 560, dr had a look at 1850",
        "12's pt right now in bed 24",
        "12 right now in bed 24",
        "bed 12 885 right now in bed 24",
        "marked 23 just now, 24 905",
        "#1 tube in bed 4 at 1900",
        "bed 6 roughly 500 at 1905 cant be right",
        "bed 6 500 at 1905 cant see it",
        "bed 6 about 500 at 1905 can't find the drain",
        "bed 6 about 500 at 1905 can't read it, maybe 600",
        "12 340 n 360 at 1900",
        "that's me away to CT with bed 19 at 1900",
        "forgot the 3 o'clock one, bed 8 was 615 at 1600",
        "forgot the 3pm one, bed 8 was 615 at 0300",
        "bed 4 305, might be at 1800",
        "bed 4 305, could have been at 1800",
        "bed 4 305 at 1900, should be 400 at 2000",
        "bed 4 will mark at 2000",
        "bed 24 level is six hundred and something, I will recheck and send",
        "bed 12 600 odd at 1900",
        "bed 12 600 and a bit",
    ],
)
def test_what_looks_like_it_and_may_be_otherwise_is_asked(text: str) -> None:
    read = reading(text)
    assert "ask " in read
    assert "mark" not in read
