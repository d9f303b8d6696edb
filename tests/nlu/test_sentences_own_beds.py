"""Sentences of several beds: what happened in one is never told of the next, and a clause that cannot be read
is asked alone."""

from __future__ import annotations

import pytest

from tests.nlu.saying import LETTERED, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 660 mL 1744hrs and pulled the tube on bed 6 at 1845",
         "mark bed=4 at=17:44 level_ml=660; removed bed=6 at=18:45"),
        ("bed 4 line 1370 at 1800 and new chest tube in 23 at 1805",
         "mark bed=4 at=18:00 level_ml=1370; placed bed=23 at=18:05"),
        ("4 no air leak; swapped the canister on bed 9 at 1800",
         "checked bed=4 air_leak=none; exchanged bed=9 at=18:00"),
        ("dr wants 7 on suction 20\nswapped the canister on bed 18 at 1801",
         "ordered bed=7 suction_cmh2o=20; exchanged bed=18 at=18:01"),
        ("21 tidaling - pulled the tube on bed 8 at 1845",
         "checked bed=21 tidaling=True; removed bed=8 at=18:45"),
        ("15 no leak, then tube out on 11 at 1830, 190 mL in the box",
         "checked bed=15 air_leak=none; removed bed=11 at=18:30 level_ml=190"),
        ("11 to CT at 1830 - 23 suction 20", "away bed=11 at=18:30; checked bed=23 suction_cmh2o=20"),
        ("bed 18 line 1405 ml and 11 canister tipped over at 1853",
         "mark bed=18 level_ml=1405; incident bed=11 at=18:53 what=tipped"),
        ("24 tidaling\nchanged canister on bed 5 at 1835, old one 1540",
         "checked bed=24 tidaling=True; exchanged bed=5 at=18:35 final_ml=1540"),
        ("changed 13 canister at 1811, old 1670; tube out 3 at 1753, final 713",
         "exchanged bed=13 at=18:11 final_ml=1670; removed bed=3 at=17:53 level_ml=713"),
        ("21 pain 4\ntube out on 19 at 1800, 80 mL in the box", "removed bed=19 at=18:00 level_ml=80"),
        ("11 canister tipped over at 1858hrs 12 no air leak",
         "incident bed=11 at=18:58 what=tipped; checked bed=12 air_leak=none"),
        ("bed 3 to CT 1810. also nothing drained on 8 since 1700. all good otherwise",
         "away bed=3 at=18:10; drained bed=8 volume_ml=0"),
        ("20 off to MRI, 21 at 515 at 1845", "away bed=20; mark bed=21 at=18:45 level_ml=515"),
        ("22 had a chest drain, not any more, out 17:20. 23 has 430ml at 18:45", "ask level_ml"),
        ("when is 4 due? 6 pulled at 1820, final 90",
         "asked bed=4 topic=due; removed bed=6 at=18:20 level_ml=90"),
    ],
)  # fmt: skip
def test_each_is_of_the_bed_of_its_clause(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("orders: 4 suction 20 and 5 suction 10",
         "ordered bed=4 suction_cmh2o=20; ordered bed=5 suction_cmh2o=10"),
        ("dr wants 4 and 5 on suction 20", "ordered bed=4 suction_cmh2o=20; ordered bed=5 suction_cmh2o=20"),
        ("closing 1900 - bed 1 505 - bed 2 1770 - bed 3 nil out",
         "mark bed=1 at=19:00 level_ml=505 closing; mark bed=2 at=19:00 level_ml=1770 closing; "
         "drained bed=3 at=19:00 volume_ml=0"),
        ("lines at 1800 - bed 3, 280. bed 7, 1130. bed 12 in theatre since 1620. 13, 110.",
         "mark bed=3 at=18:00 level_ml=280; mark bed=7 at=18:00 level_ml=1130; away bed=12 at=16:20; "
         "mark bed=13 at=18:00 level_ml=110"),
        ("8 + 7 to CT 1810", "away bed=8 at=18:10; away bed=7 at=18:10"),
        ("9 610 at 1900, seal 2, -20, no leak", "mark bed=9 at=19:00 level_ml=610; "
         "checked bed=9 at=19:00 seal_cm=2 suction_cmh2o=20 air_leak=none"),
        ("4's back, still 95, suction back on 20", "mark bed=4 level_ml=95; checked bed=4 suction_cmh2o=20; "
         "back bed=4"),
    ],
)  # fmt: skip
def test_what_begins_a_message_or_is_said_of_all_is_of_all(text: str, read: str) -> None:
    assert sorted(reading(text).split("; ")) == sorted(read.split("; "))


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("Bed 17 off to CT at 1835, line florp 560. Bed 18 line 905 at 1900.",
         "ask kind; mark bed=18 at=19:00 level_ml=905"),
        ("bed 4 line at 1900 was 95, bed 6 line at 1900 was 1200",
         "mark bed=4 at=19:00 level_ml=95; ask level_ml"),
        ("9 leak, 10 none", "checked bed=9 air_leak=present; ask kind"),
        ("12 line 340 at 1700; moved to bed 6 at 1730",
         "moved bed=12 at=17:30 to_bed=6; mark bed=12 at=17:00 level_ml=340"),
    ],
)  # fmt: skip
def test_only_the_clause_that_cannot_be_read_is_asked(text: str, read: str) -> None:
    assert sorted(reading(text).split("; ")) == sorted(read.split("; "))


@pytest.mark.parametrize(
    "text",
    [
        "sorted 13 canister at 1811, old 1670; tube out 3 at 1753",
        "tubes out: bed 9 at 1800 30, bed 11 at 1810 40",
        "changed canisters in 5 and 7 at 1700, finals 1800 and 1950",
        "one of the two in 4 and 5 is at 900",
        "1802 2 1728 and 8 seal 2 cm",
        "changed 13 canister at 1811, old 1670 and new chest tube 3 left at 1753",
    ],
)
def test_no_event_or_number_is_taken_from_another_clause(text: str) -> None:
    told = [each for each in reading(text).split("; ") if not each.startswith("ask")]
    assert all(each.startswith("checked bed=8") for each in told)


def test_a_label_with_letters_opens_its_clause() -> None:
    assert (
        reading("2A no leak, CT1 tube out at 1810", beds=LETTERED)
        == "checked bed=2A air_leak=none; removed bed=CT1 at=18:10"
    )


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("dr ordered suction 20 on 6 and 7, 8 stays as is",
         "ordered bed=6 suction_cmh2o=20; ordered bed=7 suction_cmh2o=20; ask kind"),
        ("3 wall suction 60 only, turned it up to 90, gauge fine now", "ask wall_mmhg"),
        ("3 big continuous bubbling since going up to 30", "checked bed=3 air_leak=continuous; ask level_ml"),
        ("5 out at 1810, 6 out at 1812, 7 line 480 at 1800", "ask level_ml"),
        ("5 rr 22 sats 94, marked at 365 at 1807", "mark bed=5 at=18:07 level_ml=365"),
        ("3 line went up to 340", "mark bed=3 level_ml=340"),
        ("bed 18 line 18 at 1855", "mark bed=18 at=18:55 level_ml=18"),
        ("3 suction 10, turned it up to 20 at 1830", "checked bed=3 at=18:30 suction_cmh2o=20"),
    ],
)  # fmt: skip
def test_a_setting_or_a_time_that_only_looks_like_a_line_is_asked(text: str, read: str) -> None:
    assert reading(text) == read
