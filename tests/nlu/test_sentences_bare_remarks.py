"""Remarks without a number and without anybody beside a line: the line stands; what may be ours is asked."""

from __future__ import annotations

import pytest

from .saying import reading

LINE = "mark bed=12 at=19:00 level_ml=340"
REMARKS = [
    "pleasantly confused",
    "reading his paper",
    "refusing to wear the gown",
    "diabetic diet ordered",
    "on sips",
    "position changed, back care given",
    "doing his deep breathing",
    "steam inhalation given",
    "good cough, strong",
    "bringing up sputum",
    "using the urinal",
    "catheter care done",
    "pressure areas intact",
    "eye drops given",
    "side room door shut, isolation",
    "no bm yet",
    "keen to go home",
    "hoping for home soon",
    "thanking you",
]


@pytest.mark.parametrize("told", REMARKS)
@pytest.mark.parametrize("stop", [". ", ", ", " - ", "; ", " and "])
def test_a_whole_line_stands_before_a_bare_remark(told: str, stop: str) -> None:
    assert reading(f"bed 12 340 at 1900{stop}{told}") == LINE


@pytest.mark.parametrize("told", [*REMARKS, "sorry was with another pt", "my phone was charging sorry"])
@pytest.mark.parametrize("stop", [". ", " - "])
def test_a_whole_line_stands_behind_a_bare_remark(told: str, stop: str) -> None:
    assert reading(f"{told}{stop}bed 12 340 at 1900") == LINE


@pytest.mark.parametrize(
    "text",
    [
        "12 340 at 1900, was the other pt",
        "12 340 at 1900, sheet says 600",
        "12 340 at 1900, position of drain changed",
        "12 340 at 1900, power of suction low",
        "heparin given 340 at 1900 bed 12",
        "12 hoping to go home",
    ],
)
def test_what_may_be_of_the_drain_is_asked(text: str) -> None:
    assert reading(text) != LINE


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12 340 at 1900, cough, swinging", f"{LINE}; checked bed=12 at=19:00 tidaling=True"),
        ("12 340 at 1900, went home", f"{LINE}; left bed=12 at=19:00"),
        ("12 tube out at 1845, hoping to go home", "removed bed=12 at=18:45"),
        ("12 to ct at 1845, heparin given", "away bed=12 at=18:45"),
    ],
)
def test_what_is_ours_beside_a_bare_remark_is_read(text: str, read: str) -> None:
    assert reading(text) == read
