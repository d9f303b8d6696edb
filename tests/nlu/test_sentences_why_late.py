"""Lines that come late with the reason, and looks of the fluid that are of no drain or no longer so."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "couldn't get to bed 5 at six as we had an emergency next door, at ten to seven it was 580 ml",
            "mark bed=5 at=18:50 level_ml=580",
        ),
        ("couldn't do bed 5 at 1700, at 1840 it was 580", "mark bed=5 at=18:40 level_ml=580"),
        ("missed bed 5 at 1700 sorry, 580 at 1840", "mark bed=5 at=18:40 level_ml=580"),
        (
            "didn't manage bed 5 at 1700 because of the admission, 580 at 1840",
            "mark bed=5 at=18:40 level_ml=580",
        ),
        ("bed 5 was meant to be read at 1700 but we were in a code, 580 at 1840", "ask at"),
        ("missed bed 5 at 1700", "ask kind"),
        ("missed bed 5 at 1700 as he pulled his tube out, 580 at 1840", "ask kind; ask kind"),
        ("forgot to text bed 5 at 1700, it was 580", "mark bed=5 at=17:00 level_ml=580"),
        ("forgot to chart bed 5 at 1700", "ask kind"),
        ("marked bed 14 20 min ago at 760", "mark bed=14 at=18:45 level_ml=760"),
        ("room 14 marked 20 min ago at 760", "mark bed=14 at=18:45 level_ml=760"),
        ("bed 14 clamped 20 min ago at 1845", "ask level_ml"),
    ],
)
def test_the_time_that_was_missed_is_of_no_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("8 drained at 1500", "ask volume_ml"),
        ("bed 8 dumped at 1800", "ask volume_ml"),
        ("bed eight drained at fifteen hundred", "ask volume_ml"),
        ("bed 8 drained 1500", "drained bed=8 volume_ml=1500"),
        ("bed 8 drained 150 at 1500", "drained bed=8 at=15:00 volume_ml=150"),
        ("7 goal is under 200 for the day, line is 130 at 1800", "mark bed=7 at=18:00 level_ml=130"),
        ("7 goal <300, line 130 at 1800", "mark bed=7 at=18:00 level_ml=130"),
        ("goal 200, 7 line 130 at 1800", "mark bed=7 at=18:00 level_ml=130"),
        ("640 goal is under 200", ""),
    ],
)
def test_a_number_after_at_may_be_when_and_a_goal_is_no_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("16 fluid no longer bloody, serous now", "checked bed=16 at=19:05 fluid=serous"),
        ("bed 16 not bloody any more, serous", "checked bed=16 fluid=serous"),
        (
            "16 340 at 1800, no longer bloody, serous",
            "mark bed=16 at=18:00 level_ml=340; checked bed=16 at=18:00 fluid=serous",
        ),
        ("bed 24 tiny bit of blood, gone now", "ask level_ml"),
        ("bed 24 a bit of blood earlier, clear now", "ask level_ml"),
        ("bed 24 not bloody", "ask kind"),
        ("bed 24 340 at 1800, on blood thinners", "mark bed=24 at=18:00 level_ml=340"),
        ("24 340 at 1800 bloods taken", "mark bed=24 at=18:00 level_ml=340"),
        ("24 blood running, line 340 at 1800", "mark bed=24 at=18:00 level_ml=340"),
        ("bed 24 blood in the drain", "checked bed=24 fluid=sanguineous"),
        ("bed 24 draining blood", "checked bed=24 fluid=sanguineous"),
        ("24 old dark red clots only", "checked bed=24 fluid=dark_red"),
        ("bed 6 clots", "ask kind"),
    ],
)
def test_blood_of_the_patient_or_of_before_is_no_look_of_now(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("6 dressing leaking but no air leak", "checked bed=6 air_leak=none"),
        ("6 site oozing, no air leak", "checked bed=6 air_leak=none"),
        ("6 dressing soaked, no leak in chamber", "checked bed=6 air_leak=none"),
        ("6 dressing wet, no bubbling", "checked bed=6 air_leak=none"),
        ("6 dressing leaking, no leak", "ask kind"),
        ("bed 9 same as last check", "drained bed=9 volume_ml=0"),
        ("bed 9 no change since last check", "drained bed=9 volume_ml=0"),
    ],
)
def test_a_wet_dressing_is_no_air_leak_and_the_last_check_is_when(text: str, read: str) -> None:
    assert reading(text) == read
