"""What has not changed, how a drain was before, and what is set beside what was ordered."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 10 same checks", "ask kind"),
        ("bed 10 suction same", "ask kind"),
        ("bed 10 leak same", "checked bed=10 air_leak=present"),
        ("7 color same as before", "ask bed"),
        ("bed 4 checks unchanged", "ask kind"),
        ("14 same as last check", "drained bed=14 volume_ml=0"),
        ("12 same suction, no leak", "checked bed=12 air_leak=none"),
        ("12 450 at 1850 same suction", "mark bed=12 at=18:50 level_ml=450"),
        (
            "12 450 at 1850, no change in leak",
            "mark bed=12 at=18:50 level_ml=450; checked bed=12 at=18:50 air_leak=present",
        ),
        ("12 no leak same", "checked bed=12 air_leak=none"),
    ],
)
def test_a_check_that_has_not_changed_is_no_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12 same, no leak", "drained bed=12 volume_ml=0; checked bed=12 air_leak=none"),
        ("12 no leak, same", "drained bed=12 volume_ml=0; checked bed=12 air_leak=none"),
        ("12 same no leak", "drained bed=12 volume_ml=0; checked bed=12 air_leak=none"),
        ("12 suction 20, same", "drained bed=12 volume_ml=0; checked bed=12 suction_cmh2o=20"),
        ("4 same level no leak", "drained bed=4 volume_ml=0; checked bed=4 air_leak=none"),
        ("bed 4 no change since 1700", "drained bed=4 volume_ml=0"),
    ],
)
def test_a_line_that_has_not_changed_is_told_beside_checks(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("6 drainage bloody, was straw coloured at handover", "checked bed=6 fluid=sanguineous"),
        ("6 serous, was bloody at handover", "checked bed=6 fluid=serous"),
        ("6 now serous, bloody at handoff", "checked bed=6 at=19:05 fluid=serous"),
        ("8 fluid purulent since report", "checked bed=8 fluid=purulent"),
        ("bed 8 leak new, not there at handover", "checked bed=8 air_leak=present"),
        ("7 output bloody this shift", "checked bed=7 fluid=sanguineous"),
        ("6 drainage straw, bloody yesterday", "checked bed=6 fluid=serous"),
        ("5 went from serous to bloody overnight", "checked bed=5 fluid=sanguineous"),
        ("5 serous earlier bloody now", "checked bed=5 at=19:05 fluid=sanguineous"),
        ("6 serous, turned bloody at handover", "checked bed=6 fluid=sanguineous"),
        ("8 lots of bubbles in the seal, leak grade 4 of 5", "checked bed=8 air_leak=present leak_grade=4"),
        ("leak grade 2 on 5", "checked bed=5 air_leak=present leak_grade=2"),
        ("8 swinging today", "checked bed=8 tidaling=True"),
    ],
)
def test_how_the_fluid_was_before_is_not_how_it_is(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 8 handover", "asked bed=8 topic=handoff"),
        ("4 no leak. handover?", "checked bed=4 air_leak=none; asked bed=4 topic=handoff"),
        ("4 leak, give me handover on 4", "checked bed=4 air_leak=present; asked bed=4 topic=handoff"),
        ("8 output today", "asked bed=8 topic=total window=day"),
        ("8 drainage since 1500", "asked bed=8 topic=total window=15:00"),
    ],
)
def test_a_handover_is_asked_for_and_a_sum_of_a_day(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("3 bubbling in the seal, level 2", "checked bed=3 seal_cm=2 air_leak=present"),
        ("3 water seal chamber fine, level 2, no leak", "checked bed=3 seal_cm=2 air_leak=none"),
        ("3 seal ok, level at 2 suction 20", "checked bed=3 seal_cm=2 suction_cmh2o=20"),
        ("water seal on 3 is ok, level 2", "checked bed=3 seal_cm=2"),
        ("5 seal ok level 12", "mark bed=5 level_ml=12"),
        ("5 seal bubbling level 220", "mark bed=5 level_ml=220; checked bed=5 air_leak=present"),
        ("5 seal 2 level 200", "mark bed=5 level_ml=200; checked bed=5 seal_cm=2"),
        ("5 seal good level is 2 ml", "mark bed=5 level_ml=2"),
        ("5 seal fine. mark 2", "mark bed=5 level_ml=2"),
        ("bed 5 new box, seal filled, level 0", "exchanged bed=5; mark bed=5 level_ml=0"),
    ],
)
def test_the_level_in_a_seal_is_how_deep_it_is(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "12 ordered for 20 but dial is on 10",
            "ordered bed=12 suction_cmh2o=20; checked bed=12 suction_cmh2o=10",
        ),
        ("12 orders say 20, dial on 10", "ordered bed=12 suction_cmh2o=20; checked bed=12 suction_cmh2o=10"),
        (
            "12 order is for 20, suction is at 10",
            "ordered bed=12 suction_cmh2o=20; checked bed=12 suction_cmh2o=10",
        ),
        ("12 dial at 10, ordered 20", "ordered bed=12 suction_cmh2o=20; checked bed=12 suction_cmh2o=10"),
        (
            "12 450 at 1850, ordered 20, suction on 10",
            "mark bed=12 at=18:50 level_ml=450; ordered bed=12 at=18:50 suction_cmh2o=20; checked "
            "bed=12 at=18:50 suction_cmh2o=10",
        ),
        (
            "bed 12 ordered 10 dial 20, bed 14 ordered 20 dial 20",
            "ordered bed=12 suction_cmh2o=10; checked bed=12 suction_cmh2o=20; ordered bed=14 "
            "suction_cmh2o=20; checked bed=14 suction_cmh2o=20",
        ),
        (
            "dr wants 20 but suction is 15 on bed 12",
            "ordered bed=12 suction_cmh2o=20; checked bed=12 suction_cmh2o=15",
        ),
        ("order 12 20 suction", "ordered bed=12 suction_cmh2o=20"),
        ("bed 12 ordered 20", "ask level_ml"),
        ("bed 12 on suction, ordered 2 units of blood", "ask kind"),
        ("dr patel wants 8 at suction 10", "ordered bed=8 suction_cmh2o=10"),
        ("bed 12 suction still at 20", "checked bed=12 suction_cmh2o=20"),
        ("bed 12 wall currently 90", "checked bed=12 wall_mmhg=90"),
        ("8 water seal still at 340", "ask level_ml"),
        ("8 on suction now at 60", "ask level_ml"),
    ],
)
def test_what_is_ordered_and_what_is_set_are_two_numbers(text: str, read: str) -> None:
    assert reading(text) == read
