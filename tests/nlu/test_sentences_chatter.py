"""What is told beside whole lines and is of no drain: another bed's cannula, whom to call, who has which."""

from __future__ import annotations

import pytest

from .saying import reading

LINE = "mark bed=12 at=19:00 level_ml=340"
ONE = "bed 12 340 at 1900"
TWO = f"{LINE}; mark bed=14 at=19:00 level_ml=220"


@pytest.mark.parametrize(
    "told",
    [
        "cannula in 17 resited",
        "bed 18 refused obs",
        "bed 6 needs a cannula",
        "dorm for 23 given",
        "Jess has bed 2 and 16 till 20:45",
        "Sam is covering 3 and 5 until 2000",
        "meds for 22 due at 2000",
        "doc wants call if more than 100/h",
        "call md if over 200/hr",
        "does that seem like a lot to u guys lol",
        "handing over to Mel now",
        "rounds at 2000",
        "walked x2",
        "eating 50%",
        "propofol 20",
        "bed 7 bp 90/50",
        "hfnc 40L 50%",
    ],
)
@pytest.mark.parametrize("stop", [". ", ", "])
def test_a_whole_line_stands_beside_what_is_of_no_drain(told: str, stop: str) -> None:
    assert reading(f"{ONE}{stop}{told}") == LINE
    assert reading(f"{ONE}, bed 14 220 at 1900{stop}{told}") == TWO


@pytest.mark.parametrize("told", ["cannula in 17 resited", "doc wants call if more than 100/h"])
def test_a_whole_line_stands_behind_what_is_of_no_drain(told: str) -> None:
    assert reading(f"{told}. {ONE}") == LINE


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (f"{ONE}. bed 14 has 20", "ask level_ml"),
        (f"{ONE}, bed 18 full", f"{LINE}; ask kind"),
        (f"{ONE}, bed 18 bleeding", f"{LINE}; ask level_ml"),
        (f"{ONE}, shes got 20", f"{LINE}; ask level_ml"),
        (f"{ONE}, chest tube in 14 resited", f"{LINE}; ask kind"),
        (f"{ONE}, call me if bed 14 hits 500", f"{LINE}; ask kind"),
        ("bed 3 bp 110, bed 5 90", "ask kind; ask kind"),
        ("9 450 call me if you think it is off", "ask kind"),
        (f"{ONE}. bed 14 has 220", TWO),
        (f"{ONE}. bed 14 is 220", TWO),
        ("14 mark 220. turned at 1800", "ask level_ml"),
        ("14 mark 220. cough strong, IS 1250", "ask level_ml"),
        (f"{ONE}. bed 7 on 2L now", f"{LINE}; ask level_ml"),
    ],
)
def test_what_may_be_of_a_drain_is_never_left_out(text: str, read: str) -> None:
    assert reading(text) == read


def test_who_has_which_beds_is_no_line() -> None:
    assert "mark" not in reading("lunch. Jess has bed 2 and 16 till 12:45")


def test_a_leak_of_chyle_is_the_look_of_the_fluid() -> None:
    assert reading("bed 12 chyle leak") == "checked bed=12 fluid=chylous"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (f"{ONE} draining straw coloured, sats 95", f"{LINE}; checked bed=12 at=19:00 fluid=serous"),
        (f"{ONE} draining straw coloured", f"{LINE}; checked bed=12 at=19:00 fluid=serous"),
        ("12 output at 1850 is 1010 on the box", "ask kind"),
    ],
)
def test_what_drains_is_its_look_and_what_is_read_is_no_time(text: str, read: str) -> None:
    assert reading(text) == read
