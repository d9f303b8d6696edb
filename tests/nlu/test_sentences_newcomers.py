"""Patients who came with a drain, drains that somebody put in, and why a drain is in."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "fresh heart into 8 at 1830, one mediastinal tube",
            "placed bed=8 tube=mediastinal at=18:30 reason=cardiac",
        ),
        (
            "4 back from OR at 1830 with new mediastinal tube, post op heart, weighs 8 kg",
            "placed bed=4 tube=mediastinal at=18:30 reason=cardiac weight_kg=8",
        ),
        ("4 back from theatre, new right pleural drain in", "placed bed=4 tube=right pleural"),
        (
            "thora did a pigtail on 24 left at 1855 for effusion, empty box",
            "placed bed=24 tube=left at=18:55 level_ml=0 reason=effusion",
        ),
        ("dr lee did a chest tube on 9 at 1830", "placed bed=9 at=18:30"),
        (
            "new one 9, chest tube right at 1805, stab injury",
            "placed bed=9 tube=right at=18:05 reason=trauma",
        ),
        (
            "new pt in 14 at 1800 with right chest tube, gsw",
            "placed bed=14 tube=right at=18:00 reason=trauma",
        ),
        ("new one on 8 at 1830", "exchanged bed=8 at=18:30"),
        ("5 with two mediastinal drains, 340 at 1900", "mark bed=5 tube=mediastinal at=19:00 level_ml=340"),
        ("1 left tube 340", "mark bed=1 tube=left level_ml=340"),
        ("4 back from OR at 1830 with new tubing on the left drain", "back bed=4 at=18:30"),
        ("4 off to OR for a new mediastinal tube", "away bed=4"),
    ],
)
def test_a_drain_that_somebody_came_with_or_put_in_is_placed(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "did a pigtail on 9 at 1830",
        "who did a pigtail on 9",
        "thora will do a pigtail on 9 at 1930",
        "thora did not do a pigtail on 9",
        "dr lee did a chest tube dressing on 9",
        "expecting a fresh heart into 8, one mediastinal tube",
        "fresh heart going to 8 at 2000, one mediastinal tube",
        "new one in 9, left tube 20 at 1900",
        "4 away to theatre, getting a new left chest tube",
    ],
)
def test_a_drain_that_is_asked_for_expected_or_not_told_whole_is_asked(text: str) -> None:
    assert "placed" not in reading(text)
    assert "ask " in reading(text)


@pytest.mark.parametrize(
    "text", ["4 back from the OR with no new tubes", "4 back from ct, needs a new left tube"]
)
def test_who_is_back_with_no_drain_has_none_placed(text: str) -> None:
    assert reading(text) == "back bed=4; ask kind"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12 patient is after lung surgery, they removed a lobe", "described bed=12 reason=lung"),
        ("they removed the left lung on 9", "described bed=9 reason=lung"),
        ("removed left upper tube on 9", "removed bed=9 tube=left upper"),
        ("5 had a vats yesterday", "described bed=5 reason=lung"),
        ("2 weight today 5.4 kg", "described bed=2 weight_kg=5.4"),
        (
            "the bed 8 left have no leak, liquid is serous, the suction 20",
            "checked bed=8 tube=left suction_cmh2o=20 air_leak=none fluid=serous",
        ),
    ],
)
def test_why_a_drain_is_in_and_how_heavy_somebody_is_may_be_told_with_a_day(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "5 for vats today",
        "5 having a vats tomorrow",
        "2 weight today 340",
        "bed 9 they removed the right lower lobe and the left tube is out",
        "bed 5 clear liquids, no leak",
    ],
)
def test_what_lies_ahead_or_is_of_something_else_describes_nothing(text: str) -> None:
    assert reading(text).startswith("ask ")
