"""Events that are asked about, bidden, waited for or supposed beside a line: none of them happened."""

from __future__ import annotations

import pytest

from tests.nlu.saying import reading

LINE = "mark bed=8 at=19:00 level_ml=640"
EVENTS = ("incident", "exchanged", "removed", "moved bed", "away", "placed", "left bed")


@pytest.mark.parametrize("before", ["", "bed 8 640 at 1900, "])
@pytest.mark.parametrize(
    "spoken",
    [
        "was bed 8 tube clamped?", "has bed 8 tube been unclamped?", "is bed 8 suction turned off?",
        "has bed 8 been put back on suction?", "was bed 8 box knocked over?", "waiting to clamp bed 8",
        "waiting to put bed 8 back on suction", "forgot to clamp bed 8", "forgot to unclamp bed 8",
        "someone clamp bed 8 please", "someone change the canister on bed 8 please",
        "someone take bed 8 to CT please", "bed 8 to be taken to CT", "bed 8 to be put back on suction",
        "when we clamp bed 8 i'll text", "when we move bed 8 to 21 i'll text",
        "once we put a chest tube in bed 8 i'll text", "if we clamp bed 8 I will call",
    ],
)  # fmt: skip
def test_an_event_that_is_only_spoken_of_is_never_told(spoken: str, before: str) -> None:
    read = reading(before + spoken)

    assert not any(said.startswith(EVENTS) for said in read.split("; "))


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 8 640 at 1900, clamped bed 8 at 1840", f"{LINE}; incident bed=8 at=18:40 what=clamped"),
        ("bed 8 640 at 1900, had to change the canister on bed 9 at 1840",
         f"{LINE}; exchanged bed=9 at=18:40"),
    ],
)  # fmt: skip
def test_an_event_that_happened_is_told(text: str, read: str) -> None:
    assert reading(text) == read
