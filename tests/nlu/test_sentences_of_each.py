"""What was found of each of two tubes or beds, said behind it, and what they are set to."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 9 med 400 at 1850, pleural 175, no leak either, both sxn 20",
            "mark bed=9 tube=mediastinal at=18:50 level_ml=400; checked bed=9 tube=mediastinal "
            "at=18:50 suction_cmh2o=20 air_leak=none; mark bed=9 tube=pleural at=18:50 level_ml=175; "
            "checked bed=9 tube=pleural at=18:50 suction_cmh2o=20 air_leak=none",
        ),
        (
            "9 l 400 r 175 at 1850, no leak on either",
            "mark bed=9 tube=left at=18:50 level_ml=400; checked bed=9 tube=left at=18:50 "
            "air_leak=none; mark bed=9 tube=right at=18:50 level_ml=175; checked bed=9 tube=right "
            "at=18:50 air_leak=none",
        ),
        (
            "9 l 400 r 175 at 1850 tidal x2",
            "mark bed=9 tube=left at=18:50 level_ml=400; checked bed=9 tube=left at=18:50 "
            "tidaling=True; mark bed=9 tube=right at=18:50 level_ml=175; checked bed=9 tube=right "
            "at=18:50 tidaling=True",
        ),
        (
            "9 l 400 r 175 at 1850, swinging and no leak both tubes",
            "mark bed=9 tube=left at=18:50 level_ml=400; checked bed=9 tube=left at=18:50 "
            "air_leak=none tidaling=True; mark bed=9 tube=right at=18:50 level_ml=175; checked bed=9 "
            "tube=right at=18:50 air_leak=none tidaling=True",
        ),
        (
            "9 l 400 r 175 1850, suction 20 on both",
            "mark bed=9 tube=left at=18:50 level_ml=400; checked bed=9 tube=left at=18:50 "
            "suction_cmh2o=20; mark bed=9 tube=right at=18:50 level_ml=175; checked bed=9 tube=right "
            "at=18:50 suction_cmh2o=20",
        ),
        (
            "9 l 400 r 175 at 1850, 20 of suction on both",
            "mark bed=9 tube=left at=18:50 level_ml=400; checked bed=9 tube=left at=18:50 "
            "suction_cmh2o=20; mark bed=9 tube=right at=18:50 level_ml=175; checked bed=9 tube=right "
            "at=18:50 suction_cmh2o=20",
        ),
        (
            "12 R 445 12 L 90 tidal both",
            "mark bed=12 tube=right level_ml=445; checked bed=12 tube=right tidaling=True; mark "
            "bed=12 tube=left level_ml=90; checked bed=12 tube=left tidaling=True",
        ),
        (
            "3 375 5 150 at 1850 tidal both",
            "mark bed=3 at=18:50 level_ml=375; checked bed=3 at=18:50 tidaling=True; mark bed=5 "
            "at=18:50 level_ml=150; checked bed=5 at=18:50 tidaling=True",
        ),
        (
            "3 375, 4 210, 5 150 at 1850 tidaling x3",
            "mark bed=3 at=18:50 level_ml=375; checked bed=3 at=18:50 tidaling=True; mark bed=4 "
            "at=18:50 level_ml=210; checked bed=4 at=18:50 tidaling=True; mark bed=5 at=18:50 "
            "level_ml=150; checked bed=5 at=18:50 tidaling=True",
        ),
        (
            "3 375, 4 210 at 1850, all good no leak",
            "mark bed=3 at=18:50 level_ml=375; checked bed=3 at=18:50 air_leak=none; mark bed=4 "
            "at=18:50 level_ml=210; checked bed=4 at=18:50 air_leak=none",
        ),
        (
            "9 l 400 r 175 no leak, tidaling both",
            "mark bed=9 tube=left level_ml=400; checked bed=9 tube=left tidaling=True; mark bed=9 "
            "tube=right level_ml=175; checked bed=9 tube=right air_leak=none tidaling=True",
        ),
    ],
)
def test_what_was_found_is_of_each_where_that_is_said_behind_it(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "9 l 400 r 175 1850, left tidaling, right no leak either",
            "mark bed=9 tube=left at=18:50 level_ml=400; mark bed=9 tube=right at=18:50 level_ml=175; "
            "checked bed=9 tube=left at=18:50 tidaling=True; checked bed=9 tube=right at=18:50 "
            "air_leak=none",
        ),
        (
            "9 l no leak, r no tidaling either",
            "checked bed=9 tube=left air_leak=none; checked bed=9 tube=right tidaling=False",
        ),
        (
            "bed 3 375 bed 5 150 at 1850, no leak on 5 either",
            "mark bed=3 at=18:50 level_ml=375; mark bed=5 at=18:50 level_ml=150; checked bed=5 "
            "at=18:50 air_leak=none",
        ),
        (
            "3 300, 4 200 at 1850 no leak all night",
            "mark bed=3 at=18:50 level_ml=300; mark bed=4 at=18:50 level_ml=200; checked bed=4 "
            "at=18:50 air_leak=none",
        ),
        ("12 500 no leak either", "mark bed=12 level_ml=500; checked bed=12 air_leak=none"),
        ("9 no leak either tube", "checked bed=9 air_leak=none"),
        ("3 and 5 no leak either", "checked bed=3 air_leak=none; checked bed=5 air_leak=none"),
    ],
)
def test_what_was_found_of_one_is_of_no_other(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "9 l 400 r 175 1850, both on 20 no leaks",
            "mark bed=9 tube=left at=18:50 level_ml=400; checked bed=9 tube=left at=18:50 "
            "suction_cmh2o=20 air_leak=none; mark bed=9 tube=right at=18:50 level_ml=175; checked "
            "bed=9 tube=right at=18:50 suction_cmh2o=20 air_leak=none",
        ),
        (
            "bed 9 400 at 1850, on 20, no leak",
            "mark bed=9 at=18:50 level_ml=400; checked bed=9 at=18:50 suction_cmh2o=20 air_leak=none",
        ),
        ("4 340, on 20 and no leak", "mark bed=4 level_ml=340; checked bed=4 suction_cmh2o=20 air_leak=none"),
        (
            "bed 9 400 at 1850, on 12, no leak",
            "mark bed=9 at=18:50 level_ml=400; checked bed=12 at=18:50 air_leak=none",
        ),
        (
            "bed 9 400 at 1850, on bed 20 no leak",
            "mark bed=9 at=18:50 level_ml=400; checked bed=20 at=18:50 air_leak=none",
        ),
        (
            "bed 9 400 at 1850, on 20 410 at 1850",
            "mark bed=9 at=18:50 level_ml=400; mark bed=20 at=18:50 level_ml=410",
        ),
        ("8 340 at 1850, on 20 tipped over", "mark bed=8 at=18:50 level_ml=340; incident bed=20 what=tipped"),
    ],
)
def test_a_dial_behind_a_line_is_no_bed(text: str, read: str) -> None:
    assert reading(text) == read
