"""What somebody else did or wants, and what stands beside it: no removal, no finding and no withdrawal."""

from __future__ import annotations

import pytest

from .saying import reading

DISLODGED = "incident bed=12 what=dislodged"


@pytest.mark.parametrize(
    "text",
    [
        "bed 12 husband pulled the drain out",
        "12 wife pulled the drain out",
        "12 his sister pulled the drain out",
        "12 child pulled drain out",
        "12 the cleaner pulled the drain out",
        "12 drain pulled by husband",
        "12 drain pulled out by his wife",
        "12 he pulled the drain out",
    ],
)
def test_nobody_of_the_family_removes_a_drain(text: str) -> None:
    assert reading(text) == DISLODGED


@pytest.mark.parametrize(
    "text",
    [
        "12 doctor pulled the drain out",
        "12 sister pulled the drain out",
        "12 doctor took the drain out, husband present",
        "12 drain pulled by surgeon, wife present",
        "12 we pulled the drain",
    ],
)
def test_the_team_removes_a_drain(text: str) -> None:
    assert reading(text) == "removed bed=12"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("team want bed 4 at gravity, can you put the order in", "ordered bed=4 suction_cmh2o=0"),
        ("team want bed 4 on suction 20", "ordered bed=4 suction_cmh2o=20"),
        ("docs want 4 on 20 of suction", "ordered bed=4 suction_cmh2o=20"),
        ("we want bed 4 at gravity, can you put the order in", "ask kind"),
        ("do the team want bed 4 at gravity", "ask kind"),
        ("team want the drain out of 4 at 1900", "ask kind"),
        ("bed 4 at gravity", "checked bed=4 suction_cmh2o=0"),
    ],
)
def test_a_setting_that_is_wished_for_is_no_finding(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("cancel the bed for 12", "ask kind"),
        ("cancel bed for 12", "ask kind"),
        ("cancel bed 12", "withdrawn bed=12"),
        ("cancel the line for 12", "withdrawn bed=12"),
    ],
)
def test_a_bed_that_was_booked_is_no_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("CT on 8 done at 1810, 700 out the box", "ask volume_ml"),
        ("CT on 8 done at 1810, drained 700", "ask volume_ml"),
        ("8 drained 70 at 1810, CT done", "drained bed=8 at=18:10 volume_ml=70"),
    ],
)
def test_the_time_of_a_scan_is_not_that_of_an_amount(text: str, read: str) -> None:
    assert reading(text) == read
