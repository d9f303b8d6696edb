"""Beside a whole line, figures of things that no list knows: they are left out, unless they may be ours."""

from __future__ import annotations

import pytest

import nlu

from .saying import BEDS, at, reading


@pytest.mark.parametrize(
    ("clock", "text", "read"),
    [
        (
            "2041",
            "bed 4 mark 265 at 2030. Feeds at 55 an hour, aspirate 20",
            "mark bed=4 at=20:30 level_ml=265",
        ),
        (
            "0903",
            "wife brought 20 donuts. bed 1 chest drain reads 465 mL at 0900",
            "mark bed=1 at=09:00 level_ml=465",
        ),
        (
            "0048",
            "bed 19 mark 980 at 0045. Blood bank has 2 units ready",
            "mark bed=19 at=00:45 level_ml=980",
        ),
        (
            "1427",
            "bed 6 mediastinal 180 at 1420, wires set at 90 and 10 mA",
            "mark bed=6 tube=mediastinal at=14:20 level_ml=180",
        ),
        (
            "1957",
            "chest drain bed 16 reads 770 mL at 1950. 18 hours since theatre",
            "mark bed=16 at=19:50 level_ml=770",
        ),
        ("1200", "bed 9 340 at 1150 and a zorbing stocking size 3", "mark bed=9 at=11:50 level_ml=340"),
        ("1200", "bed 9 340 at 1150, spare zorb boxes: 12", "mark bed=9 at=11:50 level_ml=340"),
        ("1200", "bed 9 line 340 at 1150; vanc level 14.2 today", "mark bed=9 at=11:50 level_ml=340"),
        ("0930", "bed 9 closing 640, 2 zorbs left", "mark bed=9 level_ml=640 closing"),
        ("1846", "moved bed 9 to 11, took 25 minutes and 3 people", "moved bed=9 to_bed=11"),
    ],
)
def test_figures_of_unknown_things_are_left_out(clock: str, text: str, read: str) -> None:
    assert reading(text, beds=BEDS, arrived=at(clock)) == read


@pytest.mark.parametrize(
    ("clock", "text"),
    [
        ("0930", "bed 4 340 at 0900. gah 360"),
        ("0930", "bed 4 340 at 0900. gah 0915"),
        ("0930", "bed 4 340 at 0900, 360 it was"),
        ("0930", "bed 4 340 at 0900, kevin reads 360"),
        ("0930", "bed 4 340 at 0900, the 360 is rubbish"),
        ("0930", "bed 4 340 at 0900, florp 7 210"),
        ("0930", "bed 4 340 at 0900, 7's florp 210"),
        ("0930", "florp 4 340, 7 210, 9 90 at 0900"),
        ("0930", "bed 4 0700 300, 0800 320, 0900 florp 340"),
        ("0930", "bed 4 tube out 0900, florp 340"),
        ("0930", "bed 4 back 0900, florp 340"),
        ("0930", "bed 4 340, zorbs at 0910"),
        ("0930", "bed 4 340 at 0900, left 20"),
        ("0930", "bed 4 340 at 0900, anterior zorb 20"),
        ("0930", "bed 4 340 at 0900, florped 200 ml"),
        ("0930", "bed 4 340 at 0900, zorb leak 3"),
        ("0930", "gloves + touchscreen = 730. bed 13 is 1822"),
        ("0930", "bed 4 340 at 0900, i put 1102hrs"),
        ("0930", "bed 4 340 at 0900, 12 zorbs?"),
        ("0930", "bed 9 suction 20. turned to 10 at 0900"),
        ("0930", "pt in 13 is 84 and her husband is 91, be gentle"),
        ("0930", "bed 22: yesterday's 24h was 310, this morning at 0905 the line is 910"),
        ("0930", "bed 4 340 at 0900, zorb left at 20"),
        ("0930", "bed 4 340 at 0900, zorb left 20"),
    ],
)
def test_what_may_be_ours_is_asked(clock: str, text: str) -> None:
    assert "ask " in reading(text, beds=BEDS, arrived=at(clock))


@pytest.mark.parametrize(
    ("text", "unread"),
    [
        ("bed 4 mark 340 at 0900. hcg 12", ("hcg 12",)),
        ("wife brought 20 donuts. bed 4 mark 340 at 0900 & 3 zorbs", ("wife brought 20 donuts", "3 zorbs")),
        ("bed 4 mark 340 at 0900, no leak", ()),
        ("bed 4 mark 340 at 0900, sats 96 on 2L", ()),
        ("hcg 12", ()),
    ],
)
def test_what_is_left_out_and_unknown_is_told(text: str, unread: tuple[str, ...]) -> None:
    assert nlu.parse(text, arrived=at("0930"), beds=BEDS).unread == unread
