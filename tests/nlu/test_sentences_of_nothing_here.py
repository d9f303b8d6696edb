"""What a clause of something else counts, times, places or weighs is in no statement beside it."""

from __future__ import annotations

import pytest

import nlu
from nlu.statements import Asked, Checked, Described, Drained, Mark

from .saying import ARRIVED, BEDS, LETTERED, SHIFTS, reading

COUNTS = (
    "4 rib fractures",
    "he has 4 budgies at home",
    "2 suction caths at the bedside",
    "she has 5 trauma plates",
    "3 zinnias on the sill",
    "swing shift covers 3 beds",
    "the scanner is on level 2",
    "level 2 care",
    "his dog is 20 kg",
    "the trolley weighs 80 kg",
    "the spinal drain is levelled at 10 and gave 12",
    "first day gave 800",
    "handover starts at 0700 in room 2",
    "history of 4 falls",
    "gliptase 5",
    "6 L optiflow",
    "watching the 6 oclock news",
    "the new nurse is on till 8",
)
LINES = {
    "bed 12 640 at 1850": Mark,
    "bed 12 seal 2, suction 20, no leak": Checked,
    "bed 12 drained 75 since last line": Drained,
}
JOINTS = ("{line}, {other}", "{line}. {other}", "{line} ({other})", "{line} and {other}", "{other}; {line}")
OWN = {"12"}


@pytest.mark.parametrize("joint", JOINTS)
@pytest.mark.parametrize("other", COUNTS)
@pytest.mark.parametrize("line", LINES)
def test_nothing_is_taken_from_a_clause_of_something_else(line: str, other: str, joint: str) -> None:
    """It is read without it, or asked."""
    parsed = nlu.parse(joint.format(line=line, other=other), arrived=ARRIVED, beds=BEDS, shifts=SHIFTS)
    told = parsed.statements
    assert {s.bed for s in told} <= OWN
    assert all(s.tube is None and not isinstance(s, Asked | Described) for s in told)
    assert all(s.level_ml == 640 and s.at == ARRIVED.replace(hour=18, minute=50) for s in marks(told))
    assert all(s.volume_ml == 75 and s.at is None for s in told if isinstance(s, Drained))


def marks(told: tuple[nlu.Statement, ...]) -> list[Mark]:
    """The lines among them."""
    return [s for s in told if isinstance(s, Mark)]


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "Bed 22 checks\n1. seal 2\n2. dial 20\n3. swinging",
            "checked bed=22 seal_cm=2 suction_cmh2o=20 tidaling=True",
        ),
        (
            "bed 22: 1) seal 2 2) dial 20 3) no leak",
            "checked bed=22 seal_cm=2 suction_cmh2o=20 air_leak=none",
        ),
        (
            "bed 9 checks\na. seal 2\nb. suction 20\nc. no leak",
            "checked bed=9 seal_cm=2 suction_cmh2o=20 air_leak=none",
        ),
        (
            "1. bed 4 340\n2. bed 7 220\nboth at 1900",
            "mark bed=4 at=19:00 level_ml=340; mark bed=7 at=19:00 level_ml=220",
        ),
        ("1. 340\n2. 220\n3. 90", "ask at"),
        ("bed 7 at 1900 640, had a rough hour", "mark bed=7 at=19:00 level_ml=640"),
        ("bed 7 roughly 640 at 1900", "mark bed=7 at=19:00 level_ml=640 about"),
        ("the dog weighs 20 kg. bed 12 640 at 1850", "mark bed=12 at=18:50 level_ml=640"),
        ("bed 12 weighs 62 kg", "described bed=12 weight_kg=62"),
        ("12 rib fractures", "ask kind"),
        ("bed 12 rib fractures", "described bed=12 reason=trauma"),
        ("12 rib fracture", "described bed=12 reason=trauma"),
        ("bed 12 gave 75 since the last line", "drained bed=12 volume_ml=75"),
        ("bed 9 level 12", "mark bed=9 level_ml=12"),
        ("handoff on 9", "asked bed=9 topic=handoff"),
        (
            "bed 12 640 at 1850. history of bed 4 please",
            "mark bed=12 at=18:50 level_ml=640; asked bed=4 topic=history",
        ),
    ],
)
def test_what_is_of_a_drain_is_read(text: str, read: str) -> None:
    """What stands near to it, and is told of a drain."""
    assert reading(text) == read


def test_a_bed_of_letters_is_no_count() -> None:
    """ "CT1 looks dry": nobody counts so."""
    assert reading("CT1 480, CT3 1275 at 1900. 4 rib fractures", beds=(*LETTERED, "4")).count("bed=4") == 0


@pytest.mark.parametrize(
    "text",
    [
        "Bed 5 off to CT at 1825 with 2 porters and 2 L on the trolley",
        "bed 5 back from CT at 1825 with 3 staff",
        "bed 7 discharged at 1815 with 6 meds to take home",
        "bed 22 back from theatre 1855, had 1.2 L in and est loss 300",
        "80 / 10 on pacing box, bed 11 375 at 1735",
    ],
)
def test_what_somebody_went_with_is_no_line(text: str) -> None:
    told = reading(text)
    assert "ask " in told or told.startswith(("back bed", "left bed"))
    assert "level_ml" not in told.replace("ask level_ml", "")
    assert "volume" not in told


def test_spare_canisters_are_no_bed() -> None:
    told = reading("Only 2 spare canisters on the shelf and bed 12's is at 1530 at 1845")
    assert "bed=2 " not in told


def test_a_time_with_a_comma_at_which_something_was_checked_is_asked() -> None:
    assert reading("bed 10 checked at 1,500 no leak", channel="voice") == "ask level_ml"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("95 on the wall gauge for bed 15's drain", "checked bed=15 wall_mmhg=95"),
        ("bed 15 95 on the regulator", "checked bed=15 wall_mmhg=95"),
        ("bed 4 340 on the wall board", "ask level_ml"),
    ],
)
def test_what_stands_on_the_wall_is_of_the_wall(text: str, read: str) -> None:
    assert reading(text) == read
