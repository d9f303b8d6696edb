"""Words of degree before a number: they change how sure it is, and never what it is of."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 bang on 1050", "mark bed=12 level_ml=1050"),
        ("bed 12 dead on 1050 at 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 a touch under 1050", "mark bed=12 level_ml=1050 about"),
        ("bed 12 slightly over the 340 line", "mark bed=12 level_ml=340 about"),
        ("bed 12 meniscus just above 1050", "mark bed=12 level_ml=1050 about"),
        ("bed 12 drained about 50", "drained bed=12 volume_ml=50 about"),
        ("bed 12 drained a bit over 50", "drained bed=12 volume_ml=50 about"),
        ("bed 12 line only 1050", "mark bed=12 level_ml=1050"),
        (
            "bed 12 drained 30 in the last hr, line only 1050",
            "drained bed=12 volume_ml=30; mark bed=12 level_ml=1050",
        ),
        (
            "bed 4 left 60 right only 305 no leak",
            "mark bed=4 tube=left level_ml=60; mark bed=4 tube=right level_ml=305; "
            "checked bed=4 tube=right air_leak=none",
        ),
        ("bed 20 drain only 50 ml from last time", "drained bed=20 volume_ml=50"),
        ("bed 20 drain about 50 ml from last time", "drained bed=20 volume_ml=50 about"),
        (
            "12 left 640, 12 right about 650",
            "mark bed=12 tube=left level_ml=640; mark bed=12 tube=right level_ml=650 about",
        ),
        ("bed 4 left 640 about 1900", "mark bed=4 tube=left at=19:00 level_ml=640"),
        ("bed 12 line 1050 at 1900, that's about 60 out", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 1050 at 1900, which is only 60 since last", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 9 suction on about 20", "checked bed=9 suction_cmh2o=20"),
        ("wall 60 on bed 4, turned up to about 90", "checked bed=4 wall_mmhg=90"),
    ],
)
def test_a_word_of_degree_leaves_a_number_what_it_is(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("bed 12 out about 50", "ask level_ml"),
        ("bed 12 out roughly 50 ml", "ask level_ml"),
        ("9 suction 20 just 80", "checked bed=9 suction_cmh2o=20; ask level_ml"),
        ("bed 9 was about 12", "ask bed"),
        ("bed 3 dumped 215 when he stood up, line blorp 630", "ask at"),
        ("bed 3 dumped 215 when he stood up, line nearby 1630", "ask at"),
        ("bed 12 at least 1050", "ask level_ml"),
        ("bed 12 over 1050", "ask level_ml"),
    ],
)
def test_it_makes_no_line_of_what_is_none_without_it(text: str, asked: str) -> None:
    assert reading(text) == asked


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 second chamber at 1340", "mark bed=12 level_ml=1340"),
        (
            "bed 12 1340 in the second column, no leak",
            "mark bed=12 level_ml=1340; checked bed=12 air_leak=none",
        ),
        ("bed 12 drainage line reads 1050 ml at 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 chest tube drainage line 1050", "mark bed=12 level_ml=1050"),
        ("bed 12 output level 1050", "mark bed=12 level_ml=1050"),
        ("bed 12 drainage line kinked at 1900", "incident bed=12 at=19:00 what=kinked"),
        ("bed 12 drainage 1050 at 1900", "ask kind"),
        ("bed 12 first chamber 700, second chamber 340", "ask level_ml"),
        ("bed 12 20 on to second column", "ask bed"),
    ],
)
def test_which_part_of_the_canister_is_no_answer(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 12 level 200 in last hour",
        "bed 12 line 340 overnight",
        "bed 12 level 340 this shift",
        "bed 12 level 200 x 24h",
        "bed 12 level 340 hourly",
        "bed 12 level 200 through the night",
    ],
)
def test_a_level_over_a_length_of_time_may_be_an_amount(text: str) -> None:
    assert reading(text) == "ask level_ml"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 line 340, quiet overnight", "mark bed=12 level_ml=340"),
        ("bed 12 up 120 this shift, line 340", "mark bed=12 level_ml=340"),
        ("bed 7 went from 300 to 700 in 20 min", "mark bed=7 level_ml=700"),
        ("bed 12 hourly line 340", "mark bed=12 level_ml=340"),
        ("bed 12 line 340 30 min ago", "mark bed=12 at=18:35 level_ml=340"),
    ],
)
def test_a_length_of_time_beside_a_line_leaves_it(text: str, read: str) -> None:
    assert reading(text) == read
