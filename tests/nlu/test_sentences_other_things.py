"""Sentences in which something happens to another thing, and numbers that may be two things."""

from __future__ import annotations

import pytest

from .saying import reading

LINE = "bed 7 mark 450 at 1900"
TOLD = "mark bed=7 at=19:00 level_ml=450"


@pytest.mark.parametrize(
    "remark",
    [
        "NG clamped",
        "O2 off now",
        "hgb back at 8.1",
        "cannula fell out",
        "also his iv pump alarming",
        "only the bin next to it fell over",
        "screen cracked but it still sends",
        "wall clock in there has stopped",
        "thermostat broken again",
        "sink drain fixed",
        "he pulled his NG out",
        "knocked his jug over",
        "moved his table closer",
        "NG to low suction",
        "NG clamped and foley out",
        "foley out this morning",
    ],
)
def test_what_happens_to_another_thing_leaves_the_line(remark: str) -> None:
    assert reading(f"{LINE}, {remark}") == TOLD
    assert reading(f"{remark}. {LINE}") == TOLD


@pytest.mark.parametrize(
    ("remark", "event"),
    [
        ("clamped", "clamped"),
        ("clamped while iv changed", "clamped"),
        ("NG out and drain clamped", "clamped"),
        ("trolley knocked the drain", "tipped"),
        ("pillow kinked it", "kinked"),
        ("fan off, suction off", "suction_off"),
        ("kinked under the bed rail", "kinked"),
    ],
)
def test_an_event_of_the_drain_beside_another_thing_is_read(remark: str, event: str) -> None:
    assert reading(f"{LINE}, {remark}") == f"{TOLD}; incident bed=7 at=19:00 what={event}"


@pytest.mark.parametrize(
    "remark",
    [
        "NG out, clamped",
        "clamped for NG insertion",
        "pulled his iv and chest tube out",
        "bin fell over and so did the box",
        "fan broken, line 460",
        "stopcock broken",
        "pump disconnected",
        "luer lock disconnected",
        "three way tap disconnected",
        "battery disconnected",
        "light broken so it's a guess",
        "screen cracked, hard to read",
    ],
)
def test_what_may_be_of_the_drain_after_all_is_asked(remark: str) -> None:
    assert "ask" in reading(f"{LINE}, {remark}")


@pytest.mark.parametrize(
    "text",
    [
        "bed 5 640 no leak, back in 5",
        "7 320 jp 30 1845",
        "7 320 (jp 30) 1845",
        "3 410 left in box",
        "3 410 out in am",
        "3 tube out in the am",
        "3 410 going home in am",
        "4 30 from 5 to 6",
        "4 level 30 from 5 to 6",
        "7 9 not 7",
        "9 410 not 7",
        "7 suction off on 1845",
    ],
)
def test_a_number_that_may_be_another_is_asked(text: str) -> None:
    assert "mark" not in reading(text).split(" ask")[0]
    assert "ask" in reading(text)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("suction on 9 back up to 20", "checked bed=9 suction_cmh2o=20"),
        ("wall suction on bed 10 up to 90", "checked bed=10 wall_mmhg=90"),
        ("bed 10 up to 340", "mark bed=10 level_ml=340"),
        ("7 320 1845 jp 30", "mark bed=7 at=18:45 level_ml=320"),
        ("bed 5 410 no leak", "mark bed=5 level_ml=410; checked bed=5 air_leak=none"),
        ("9 410 not 401", "corrected bed=9 was_ml=401 level_ml=410"),
        ("9 suction back on 1845", "incident bed=9 at=18:45 what=suction_on"),
        ("3 tube out at 9 in the am", "removed bed=3 at=09:00"),
        (
            "lights off now. bed 3 left 320 right 110 at 1850",
            "mark bed=3 tube=left at=18:50 level_ml=320; mark bed=3 tube=right at=18:50 level_ml=110",
        ),
    ],
)
def test_a_number_that_can_be_only_one_thing_is_read(text: str, said: str) -> None:
    assert reading(text) == said
