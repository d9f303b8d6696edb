"""What stands in the log of a ward: which bed a correction is of, what is new, what only lies somewhere."""

from __future__ import annotations

import pytest

from .saying import reading

READ = (
    ("time on the 22 one was 1745 not 1800", "corrected bed=22 at=18:00 to_at=17:45"),
    ("the time on 9 should be 1745", "corrected bed=9 to_at=17:45"),
    ("final on 22 actually 1420", "corrected bed=22 level_ml=1420"),
    ("22 final should be 1420", "corrected bed=22 level_ml=1420"),
    ("i put 20 on 9, should be 200", "corrected bed=9 was_ml=20 level_ml=200"),
    ("meant bed 2 870, not 780", "corrected bed=2 was_ml=780 level_ml=870"),
    ("meant bed 2 not 3", "corrected bed=3 to_bed=2"),
    ("1 1600 med should be 66", "corrected bed=1 tube=mediastinal at=16:00 level_ml=66"),
    ("22 tube A should be 410", "corrected bed=22 tube=A level_ml=410"),
    ("15 med level still 445", "mark bed=15 tube=mediastinal level_ml=445"),
    ("apical out bed 3 at 1845 level 95", "removed bed=3 tube=apical at=18:45 level_ml=95"),
    ("the chest drain in 9 was taken out at 1815 with 480 in it", "removed bed=9 at=18:15 level_ml=480"),
    ("15 new box reads 45 at 1800", "mark bed=15 at=18:00 level_ml=45"),
    ("2 died in theatre 1730", "left bed=2 at=17:30"),
    ("7 returned to theatre 1815 for bleeding", "away bed=7 at=18:15"),
    ("7 back from theatre 1815", "back bed=7 at=18:15"),
    (
        "11 closing left 595 right 100, 22 closing 85",
        "mark bed=11 tube=left level_ml=595 closing; mark bed=11 tube=right level_ml=100 closing; "
        "mark bed=22 level_ml=85 closing",
    ),
    (
        "7 both pleurals still going. left 310 right 265 at 1800",
        "mark bed=7 tube=left at=18:00 level_ml=310; mark bed=7 tube=right at=18:00 level_ml=265",
    ),
    ("12 moved to 4, drain n all", "moved bed=12 to_bed=4"),
    ("bed 8 bottle raised onto the bed by porters, now back on the floor", "incident bed=8 what=raised"),
    ("3 passed away at 1800", "left bed=3 at=18:00"),
    ("12 med unclamped 1822", "incident bed=12 tube=mediastinal at=18:22 what=unclamped"),
    ("sorry 22 shud be 857 not 875", "corrected bed=22 was_ml=875 level_ml=857"),
    ("12's 1800 should be 513 typo", "corrected bed=12 at=18:00 level_ml=513"),
    ("bed 12 suction put on -20 by reg at 1815", "checked bed=12 at=18:15 suction_cmh2o=20"),
    ("new order for 14, decrease suction to -10", "ordered bed=14 suction_cmh2o=10"),
    ("4 surgeon says take suction down to 10", "ordered bed=4 suction_cmh2o=10"),
    ("11 bubbling intermittently with the vent", "checked bed=11 air_leak=intermittent"),
    ("7 fluid looking milky on the right", "checked bed=7 tube=right fluid=chylous"),
    (
        "12 A 310 B 85 at 1800",
        "mark bed=12 tube=A at=18:00 level_ml=310; mark bed=12 tube=B at=18:00 level_ml=85",
    ),
)
ASKED = (
    "3 passed at 1800",
    "12md 12 315, 15 410, 18 5",
    "new pt coming to 18 from ED, will have a R chest tube",
    "5 ICD 3,40 at 1800",
    "12 a 310 b 8 at 1800",
    "12's 1800 of 513 was a typo",
    "7 looking for blood",
    "12 med given 310",
    "bed 4 120 per 1h",
)


@pytest.mark.parametrize(("text", "read"), READ)
def test_it_is_read(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("text", ASKED)
def test_it_is_asked(text: str) -> None:
    assert "ask " in reading(text)


def test_an_unclamping_that_passed_is_nobodys_death() -> None:
    assert "left bed=3" not in reading("3 unclamped at 1800 passed, xr looked good")
