"""Two tubes of one bed, other people's words, and remarks that tell nothing of a drain."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("9 #1 340 #2 120", "mark bed=9 tube=1 level_ml=340; mark bed=9 tube=2 level_ml=120"),
        ("9 L-340 R-120", "mark bed=9 tube=left level_ml=340; mark bed=9 tube=right level_ml=120"),
        (
            "l chest 340, r chest 120 bed 9",
            "mark bed=9 tube=left level_ml=340; mark bed=9 tube=right level_ml=120",
        ),
        ("9 lt 340 lt basal 50", "mark bed=9 tube=left level_ml=340; mark bed=9 tube=left basal level_ml=50"),
        (
            "9 l sx 20 r ws",
            "checked bed=9 tube=left suction_cmh2o=20; checked bed=9 tube=right suction_cmh2o=0",
        ),
        (
            "14 left for ct 1840 L chest 300",
            "away bed=14 at=18:40; mark bed=14 tube=left at=18:40 level_ml=300",
        ),
        (
            "bed 9 new CT L chest hemothorax got 700 out right away",
            "placed bed=9 tube=left reason=trauma; drained bed=9 tube=left volume_ml=700",
        ),
        ("9 pt turned left, 340", "mark bed=9 level_ml=340"),
        ("9 left and right totals", "asked bed=9 topic=total"),
        (
            "12 890 14 1280 both at 1900",
            "mark bed=12 at=19:00 level_ml=890; mark bed=14 at=19:00 level_ml=1280",
        ),
        ("9 both to one box 340", "mark bed=9 level_ml=340"),
        ("3 hasnt drained anything", "drained bed=3 volume_ml=0"),
        ("my beds", "asked topic=beds"),
        ("show me my beds", "asked topic=beds"),
        ("help", "help"),
    ],
)
def test_what_is_said_of_each_tube_or_of_both_beds_is_theirs(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 9 both tubes 340",
        "bed 9 both at 340",
        "bed 9 both at 340 and 120",
        "9 r drained 20, l 40",
        "9 drained 20, 12 40",
        "9 drained 20, 15 640",
        "9 340 plus 1900",
        "9 340 ml left in it",
        "9 left lung up, right 120",
        "3 according to days it was at 640 at 1500",
        "3 report was 640 at 1500",
        "3 didnt see any leak",
        "3 no drain",
        "3 no chest tube",
        "my beds are all quiet tonight",
        "all my beds are done",
        "my beds 3 9 12",
        "HELP 9 bleeding",
        "ignore 3s 1050",
    ],
)
def test_of_which_tube_on_whose_word_or_a_remark_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "18 left tube out, right no leak",
            "removed bed=18 tube=left; checked bed=18 tube=right air_leak=none",
        ),
        ("18 left and right tubes out", "removed bed=18 tube=left; removed bed=18 tube=right"),
        ("18 right hemithorax ok", "ask kind"),
    ],
)
def test_a_tube_is_out_only_where_nothing_else_is_told_of_it(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "18 l drain d/c r to sxn",
        "18 left removed final 90, right 120",
        "18 first tube out",
        "18 r out",
        "18 tube 1 out",
        "18 take back 1850",
        "18 left clamped right open",
    ],
)
def test_which_tube_is_out_or_what_is_open_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")
