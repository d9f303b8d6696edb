"""Levels read on canisters, as nurses write them."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 mark 1050 at 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("b12 1050 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("12 @ 1050 7pm", "mark bed=12 at=19:00 level_ml=1050"),
        ("840 cc in bed 7 at 18:45", "mark bed=7 at=18:45 level_ml=840"),
        ("bed 12 1050 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("at 1845 bed 7 mark 840", "mark bed=7 at=18:45 level_ml=840"),
        ("rm 9 340ml @1840", "mark bed=9 at=18:40 level_ml=340"),
        ("room 14 line at 410 at 1850", "mark bed=14 at=18:50 level_ml=410"),
        ("bed 3: 95 mL", "mark bed=3 level_ml=95"),
        ("Bed 12 - 300ml @ 1900", "mark bed=12 at=19:00 level_ml=300"),
        ("bed 12 at 340", "mark bed=12 level_ml=340"),
        ("bed 20 chamber reads 1310 at 6:50 pm", "mark bed=20 at=18:50 level_ml=1310"),
        ("marked bed 5 at 220, 1855", "mark bed=5 at=18:55 level_ml=220"),
        ("pls note bed 14 drain level 725 ml as of 1900 hrs", "mark bed=14 at=19:00 level_ml=725"),
        ("bed 9 meniscus 610 half an hour ago", "mark bed=9 at=18:35 level_ml=610"),
        ("bed 9 610 20 min ago", "mark bed=9 at=18:45 level_ml=610"),
        ("bed 12 mark 1050 yesterday 2300", "mark bed=12 at=03-Mar-23:00 level_ml=1050"),
        ("bed 12 mark 1050 this morning at 7", "mark bed=12 at=07:00 level_ml=1050"),
        ("bed 12 mark 1050 at 7 tonight", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 mark 1.05 L at 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 1,050 ml at 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 mark 1 050 at 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 mark 1850 at 1850", "mark bed=12 at=18:50 level_ml=1850"),
        ("bed 14 mark approx. 700ml 1900", "mark bed=14 at=19:00 level_ml=700 about"),
        ("bed 12 about 300 at 1900", "mark bed=12 at=19:00 level_ml=300 about"),
        ("bed 12 end of shift 300", "mark bed=12 level_ml=300 closing"),
        ("closing line bed 12 1050", "mark bed=12 level_ml=1050 closing"),
        ("final mark for my shift bed 3 is 220", "mark bed=3 level_ml=220 closing"),
        ("bed 14 makr 725 at 1900", "mark bed=14 at=19:00 level_ml=725"),
    ],
)
def test_a_bed_a_level_and_a_time_in_any_order_are_a_mark(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 right pleural mark 300 at 1900", "mark bed=12 tube=right pleural at=19:00 level_ml=300"),
        ("bed 12 pleural right mark 300 at 1900", "mark bed=12 tube=right pleural at=19:00 level_ml=300"),
        ("bed 12 tube a mark 300 at 1900", "mark bed=12 tube=A at=19:00 level_ml=300"),
        ("bed 12 mediastinal 40 at 1900", "mark bed=12 tube=mediastinal at=19:00 level_ml=40"),
        ("R tube bed 12 300 at 1900", "mark bed=12 tube=right at=19:00 level_ml=300"),
        ("bed 12 chest tube 2 mark 300 at 1900", "mark bed=12 tube=2 at=19:00 level_ml=300"),
        ("bed 12 L 300 at 1900", "mark bed=12 tube=left at=19:00 level_ml=300"),
        (
            "12 R 300 L 120 1900",
            "mark bed=12 tube=right at=19:00 level_ml=300; mark bed=12 tube=left at=19:00 level_ml=120",
        ),
        (
            "bed 12 R: 300, L: 120 at 1900",
            "mark bed=12 tube=right at=19:00 level_ml=300; mark bed=12 tube=left at=19:00 level_ml=120",
        ),
        (
            "bed 12 lt 300 rt 120 @1900",
            "mark bed=12 tube=left at=19:00 level_ml=300; mark bed=12 tube=right at=19:00 level_ml=120",
        ),
        (
            "bed 12 left 340 right 120 at 1900",
            "mark bed=12 tube=left at=19:00 level_ml=340; mark bed=12 tube=right at=19:00 level_ml=120",
        ),
        (
            "bed 14 r ct 410 l ct 95 @ 1900",
            "mark bed=14 tube=right at=19:00 level_ml=410; mark bed=14 tube=left at=19:00 level_ml=95",
        ),
    ],
)
def test_tubes_are_named_by_side_place_letter_or_number(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "12 1050, 14 220, 3 80 at 1900",
            "mark bed=12 at=19:00 level_ml=1050; "
            "mark bed=14 at=19:00 level_ml=220; "
            "mark bed=3 at=19:00 level_ml=80",
        ),
        (
            "1 mark 200, 2 mark 800, 3 mark 150 at 1900",
            "mark bed=1 at=19:00 level_ml=200; "
            "mark bed=2 at=19:00 level_ml=800; "
            "mark bed=3 at=19:00 level_ml=150",
        ),
        (
            "13 mark 365, 15 mark 590 at 1900",
            "mark bed=13 at=19:00 level_ml=365; mark bed=15 at=19:00 level_ml=590",
        ),
        (
            "at 1900 bed 12 300, bed 14 210",
            "mark bed=12 at=19:00 level_ml=300; mark bed=14 at=19:00 level_ml=210",
        ),
        (
            "7pm marks 12 300, 14 210, 15 90",
            "mark bed=12 at=19:00 level_ml=300; "
            "mark bed=14 at=19:00 level_ml=210; "
            "mark bed=15 at=19:00 level_ml=90",
        ),
        (
            "1900 marks: 14 725, 15 90, 16 1310",
            "mark bed=14 at=19:00 level_ml=725; "
            "mark bed=15 at=19:00 level_ml=90; "
            "mark bed=16 at=19:00 level_ml=1310",
        ),
        (
            "beds 12 and 13 mark 1050 at 1900",
            "mark bed=12 at=19:00 level_ml=1050; mark bed=13 at=19:00 level_ml=1050",
        ),
    ],
)
def test_several_beds_share_one_time(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "12: 1600 1050, 1700 1080, 1800 1100",
            "mark bed=12 at=16:00 level_ml=1050; "
            "mark bed=12 at=17:00 level_ml=1080; "
            "mark bed=12 at=18:00 level_ml=1100",
        ),
        (
            "bed 12 1700 1050, 1800 1080, 1900 1100",
            "mark bed=12 at=17:00 level_ml=1050; "
            "mark bed=12 at=18:00 level_ml=1080; "
            "mark bed=12 at=19:00 level_ml=1100",
        ),
    ],
)
def test_a_catch_up_list_is_pairs_of_time_and_level_in_order(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 12 mark 1050 at 1900 seal 2 no leak",
            "mark bed=12 at=19:00 level_ml=1050; checked bed=12 at=19:00 seal_cm=2 air_leak=none",
        ),
        ("bed 12 mark 200 suction 20", "mark bed=12 level_ml=200; checked bed=12 suction_cmh2o=20"),
        (
            "bed 12 1050 at 1900 swinging no leak bloody",
            "mark bed=12 at=19:00 level_ml=1050; "
            "checked bed=12 at=19:00 air_leak=none tidaling=True fluid=sanguineous",
        ),
        (
            "bed 12 mark 1050 at 1900 tidaling no leak",
            "mark bed=12 at=19:00 level_ml=1050; checked bed=12 at=19:00 air_leak=none tidaling=True",
        ),
    ],
)
def test_a_line_and_its_checks_are_said_in_one_breath(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 3 tube 1 200, tube 2 340 at 1900",
            "mark bed=3 tube=1 at=19:00 level_ml=200; mark bed=3 tube=2 at=19:00 level_ml=340",
        ),
        (
            "bed 3 tube 1: 200, tube 2: 340 at 1900",
            "mark bed=3 tube=1 at=19:00 level_ml=200; mark bed=3 tube=2 at=19:00 level_ml=340",
        ),
        ("bed 3 chest tube 1 050 at 1900", "mark bed=3 at=19:00 level_ml=1050"),
        (
            "bed 22 l line 90 r nil 1900",
            "mark bed=22 tube=left at=19:00 level_ml=90; drained bed=22 tube=right at=19:00 volume_ml=0",
        ),
        (
            "rt apical bed 16 90 ml, rt basal 210 ml 1850",
            "mark bed=16 tube=right apical at=18:50 level_ml=90; "
            "mark bed=16 tube=right basal at=18:50 level_ml=210",
        ),
        (
            "bed 7 left drain 230 at 1855, right drain 415",
            "mark bed=7 tube=left at=18:55 level_ml=230; mark bed=7 tube=right at=18:55 level_ml=415",
        ),
        (
            "beds 3 450, 4 230, 5 no change, all at 1900",
            "mark bed=3 at=19:00 level_ml=450; "
            "mark bed=4 at=19:00 level_ml=230; "
            "drained bed=5 at=19:00 volume_ml=0",
        ),
        (
            "6pm round: bed 1 220, bed 2 310, bed 3 95",
            "mark bed=1 at=18:00 level_ml=220; "
            "mark bed=2 at=18:00 level_ml=310; "
            "mark bed=3 at=18:00 level_ml=95",
        ),
    ],
)
def test_numbered_tubes_have_their_own_levels(text: str, read: str) -> None:
    assert reading(text) == read
