"""What the nurses of a thoracic ward write."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 8 canister swapped for a fresh one 1852, old read 1488, fresh one starts at 0",
            "exchanged bed=8 at=18:52 final_ml=1488 opening_ml=0",
        ),
        ("bed 3 left theatre recovery n is back w us 1900", "back bed=3 at=19:00"),
        (
            "r/o tamponade 17?? mediastinal zero out past hr",
            "asked bed=17 tube=mediastinal topic=total window=1h",
        ),
        (
            "12 tube kicked apart at the connector 1845 back together 1846",
            "incident bed=12 at=18:45 what=disconnected",
        ),
        (
            "12 canister now at 1225 ml, wall 90, suction dial 20, AL neg",
            "mark bed=12 at=19:05 level_ml=1225; "
            "checked bed=12 at=19:05 suction_cmh2o=20 wall_mmhg=90 air_leak=none",
        ),
        ("19 bubbling in water seal constantly", "checked bed=19 air_leak=continuous"),
        ("when will 20 hit full", "asked bed=20 topic=capacity"),
        (
            "18: wall suction 90 mmhg, ordered 20 dry suction dial set at 20",
            "ordered bed=18 suction_cmh2o=20; checked bed=18 suction_cmh2o=20 wall_mmhg=90",
        ),
        (
            "bed 17 r 215 l 480 med 90 1850",
            (
                "mark bed=17 tube=right at=18:50 level_ml=215; "
                "mark bed=17 tube=left at=18:50 level_ml=480; "
                "mark bed=17 tube=mediastinal at=18:50 level_ml=90"
            ),
        ),
        ("pulled his own chest tube out 4", "incident bed=4 what=dislodged"),
        (
            "no tidaling bed 19, leak is continuous, seal topped to 2",
            "checked bed=19 seal_cm=2 air_leak=continuous tidaling=False",
        ),
        ("mark 12 left apical 85 1830 hrs", "mark bed=12 tube=left apical at=18:30 level_ml=85"),
        ("box for 4 hanging on iv pole above his chest!!", "incident bed=4 what=raised"),
        ("15 discharged against advice 1810", "left bed=15 at=18:10"),
        ("what did 2 drain yesterday", "asked bed=2 topic=total window=last_day"),
        ("show me every entry for bed 5", "asked bed=5 topic=history"),
        ("wipe out the 1630 mark on 9", "withdrawn bed=9 at=16:30"),
        ("17s tube trend over last 4h", "asked bed=17 topic=trend window=4h"),
        (
            "right pleural on 17 seven fifty five at 1800",
            "mark bed=17 tube=right pleural at=18:00 level_ml=755",
        ),
    ],
)
def test_an_evening_message_is_read_as_its_nurse_meant_it(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("4 dropped off: 2300 480, 0000 510, 0100 530, 0200 555", "ask level_ml; ask at; ask at; ask at"),
        ("ask the reg if 3 ok off suction", "ask kind"),
        ("pt fell out of bed 16 and the chest drain fell over too", "ask kind"),
        ("6 suction reconnected 1820 after it fell off the wall port", "ask kind"),
        ("10 9 945", "ask bed"),
        ("evening all", ""),
        ("ta love", ""),
        ("nice one", ""),
        ("merry xmas everyone", ""),
    ],
)
def test_an_evening_message_that_is_not_sure_or_not_ours_tells_nothing(text: str, read: str) -> None:
    assert reading(text) == read
