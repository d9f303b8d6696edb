"""What is asked for, told by somebody else, or of a ward, a moment or a tube that nobody named."""

from __future__ import annotations

import pytest

from .saying import reading

ASKED = (
    "2 same as when i took over",
    "9 480 at >1900",
    "9 480 leak 200",
    "9 new drain please",
    "9 suction 20 please",
    "9 drain changed per pt",
    "9 new box per handover",
    "9 chest tube off by MO, last reading 140",
    "the fella on ward 3 who lost 900",
    "9 seal at 6",
    "is suction off on 12",
    "no change in bed 20's meds",
    "just practising: bed 2 mark 300 at 1900",
    "learning the system, bed 9 420",
    "new canister for 12 is on its way up",
    "swing by bed 16 when free",
    "bed 9 420, made that number up tbh",
    "bed 9 420, copied from last time",
    "bed 9 420, invented",
    "9 left 200, right as well",
)
READ = (
    ("2 same as before, all quiet here", "drained bed=2 volume_ml=0"),
    ("9 480 > 1900", "mark bed=9 at=19:00 level_ml=480"),
    ("9 480 no leak 700", "mark bed=9 at=19:00 level_ml=480; checked bed=9 at=19:00 air_leak=none"),
    ("9 placed new drain at 1845 please", "placed bed=9 at=18:45"),
    ("9 suction 20 at 1850 please", "checked bed=9 at=18:50 suction_cmh2o=20"),
    ("consultant says bed 9 on suction 10 please", "ordered bed=9 suction_cmh2o=10"),
    ("9 seal at 2", "checked bed=9 seal_cm=2"),
    ("suction off on 12", "incident bed=12 what=suction_off"),
    ("no change in bed 20's drain", "drained bed=20 volume_ml=0"),
    ("new canister for 12 on at 1850", "exchanged bed=12 at=18:50"),
    ("bed 9 420, made the bed too", "mark bed=9 level_ml=420"),
    ("9 right as well, 300", "mark bed=9 tube=right level_ml=300"),
    ("bed 3 240 at 1900, please chart it", "mark bed=3 at=19:00 level_ml=240"),
    ("bed 10 chest drain 1,240mls at 19:00", "mark bed=10 at=19:00 level_ml=1240"),
    ("bed 10 chest drain 1, 240 at 1900", "mark bed=10 tube=1 at=19:00 level_ml=240"),
    ("beds 6 and 7 both 640", "mark bed=6 level_ml=640; mark bed=7 level_ml=640"),
)


@pytest.mark.parametrize("text", ASKED)
def test_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(("text", "read"), READ)
def test_its_near_opposite_is_read(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    ["bed six both six forty", "bed six water seal at six", "bed six suction twenty please"],
)
def test_dictated_it_is_asked_too(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask ")


def test_one_setting_of_each_tube_is_of_no_other_bed() -> None:
    assert "level_ml=9" not in reading("9 suction a 20 b 10")
