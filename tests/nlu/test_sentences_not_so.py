"""What somebody else did or wants, and what stands beside it: no removal, no finding and no withdrawal."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading

DISLODGED = "incident bed=12 what=dislodged"


@pytest.mark.parametrize(
    "text",
    [
        "bed 12 husband pulled the drain out",
        "12 wife pulled the drain out",
        "12 his sister pulled the drain out",
        "12 child pulled drain out",
        "12 porter pulled the drain out",
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


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12 340 leak and swing as before", "mark bed=12 level_ml=340"),
        ("12 swing, leak as before, 340", "mark bed=12 level_ml=340"),
        ("12 leak as before", "ask kind"),
        ("12 swinging as before", "checked bed=12 tidaling=True"),
        ("12 small leak as before", "checked bed=12 air_leak=present"),
        ("12 no leak as before", "checked bed=12 air_leak=none"),
    ],
)
def test_what_is_only_named_as_before_is_not_found(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text", ["7 210 out 1845", "7 210 out at 1845", "7 210, out 1845", "9 45 out 1850", "7 mark 210 out 1845"]
)
def test_a_number_that_was_out_at_a_time_is_asked(text: str) -> None:
    assert reading(text) == "ask level_ml"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("7 210 out", "drained bed=7 volume_ml=210"),
        ("7 -20 ws", "ask seal_cm"),
        ("7 20 ws", "ask seal_cm"),
        ("7 2 ws", "checked bed=7 seal_cm=2"),
        ("7 -20 seal 2", "checked bed=7 seal_cm=2 suction_cmh2o=20"),
    ],
)
def test_no_seal_is_as_deep_as_a_suction(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("3 410 ? kinked", "ask kind"),
        ("3 410 tipped?", "ask kind"),
        ("3 410 tipped", "ask kind"),
        ("3 410 kink sorted", "ask kind"),
        ("8 520 kink?", "ask kind"),
        ("8 520 clamp sorted", "ask kind"),
        ("3 630 tipped", "ask kind"),
        ("3 at 410 tipped", "ask kind"),
        ("3 410 suction off for walk", "ask kind"),
        ("3 1830 tipped", "incident bed=3 at=18:30 what=tipped"),
        ("3 4:10 tipped", "incident bed=3 at=16:10 what=tipped"),
        ("3 410 out tmrw", "ask kind"),
    ],
)
def test_a_number_behind_its_bed_is_not_the_old_time_of_what_happened(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(("label", "number"), [("forty", 40), ("forty one", 41), ("twenty", 20)])
def test_a_line_that_is_taken_back_at_a_bed_in_words_is_no_booked_bed(label: str, number: int) -> None:
    """ "bed for 12" is booked for somebody; "bed forty" begins with the same letters."""
    beds = tuple(map(str, range(1, 50)))
    said = reading(f"cancel the 0600 on bed {label}", beds, arrived=MORNING)
    assert said == f"withdrawn bed={number} at=06:00"
