"""Why a message was read as it was: of the very pieces that its readings saw."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from nlu.explaining import explained

BEDS = [str(bed) for bed in range(1, 25)]
ARRIVED = datetime(2026, 11, 26, 6, 55, tzinfo=ZoneInfo("America/New_York"))


@pytest.mark.parametrize(
    ("text", "line"),
    [
        ("12 suction 20 not 10, no leak", "'12'[0:2] = bed, '20'[11:13] = check: nothing against it"),
        (
            "bed 12 340 at 0600, what is 14",
            "'12'[4:6] = bed, '340'[7:10] = level, '0600'[14:18] = time: nothing against it",
        ),
        ("the 640 belongs to 6", "'640'[4:7] = level, '6'[19:20] = bed"),
    ],
)
def test_the_roles_that_are_explained_are_those_of_the_pieces_that_were_read(text: str, line: str) -> None:
    assert line in explained(text, arrived=ARRIVED, beds=BEDS)


def test_a_way_on_which_nothing_is_told_is_explained_too() -> None:
    said = "Yeah, please chart a line of nine seven five on Rm 9 as of 3 30 p.m, she's asleep."
    assert "way 1" in explained(said, arrived=ARRIVED.replace(hour=15), beds=BEDS, voice=True)
