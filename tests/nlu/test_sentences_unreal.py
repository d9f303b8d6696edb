"""A number or an event of another thing, of an exercise, a dream or another year is asked, never recorded."""

from __future__ import annotations

import pytest

from .saying import reading

OF_THINGS = (
    "bed 7 room thermostat is stuck at 68",
    "bed 7 blinds stuck at 300",
    "bed 7 his watch shows 1830",
    "bed 7 dose is at 40",
    "bed 7 stopcock for the art line is at level 5",
    "bed 7 bed rail is at level 3",
    "bed 7 I dreamed it was at 800",
    "bed 7 I promised him it was at 200",
    "old canister of bed 7 is in the sluice with 900 in it",
    "yesterday's registrar note has bed 7 at 750",
    "sink in 7 has a leak and is bubbling",
    "bed 7 line out at 1800",
)
CUT_SHORT = (
    "bed 7 level 48_ the last figure is under the clip",
    "bed 7 level 48-, last digit hidden by the strap",
    "bed 7 mark 62, third number is covered by the label",
    "bed 7 level 105. last figure behind the tape",
)
UNREAL = (
    "quiz for the students: bed 7 line was 500 at 1800",
    "training scenario bed 7 line 700 at 1800",
    "Practice scenario. Bed 7 line 900 at 1830",
    "test case bed 7 mark 500 at 1830",
    "bed 7 was at 500 in the exam question",
    "in my dream bed 7 was at 800",
    "bed 7 line 500 at 1800, thats the sample answer",
    "the student nurse dreamt bed 7 was at 900",
    "bed 7 physio joked it was at 500",
    "last Christmas bed 7 hit 900",
    "two years ago bed 7 was at 400",
)
EVENTS = (
    "bed 7 tube out at 1830, the feeding one",
    "bed 7 tube clamped at 1845, the PEG",
    "bed 7 drain clamped at 1820, bile one",
    "bed 7 tube out at 1815, ET I mean",
    "bed 7 seal broken on the med cart drawer",
    "bed 7 suction off for the hoover",
    "bed 7 pillow raised above chest",
)
RELAYED = (
    "bed 7 line 480, the tech read it out over the phone and she may mean 8",
    "bed 7 mark 450 told to me by the visitor",
    "bed 7 mark 320 but thats the feed pump",
    "bed 7 mark 420, sorry that's from the urine bag",
    "bed 7 line 340 at 6, am or pm no idea",
    "bed 7 line 340 at 7, morning or evening not sure",
)


@pytest.mark.parametrize("text", [*OF_THINGS, *CUT_SHORT, *UNREAL, *EVENTS, *RELAYED])
def test_what_is_of_no_drain_of_this_shift_is_asked(text: str) -> None:
    assert reading(text).startswith("ask")


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("bed 7 mark 450 at 1850, brb", "mark bed=7 at=18:50 level_ml=450; ask kind"),
        (
            "bed 7 mark 450 at 1850, fluid brb",
            "mark bed=7 at=18:50 level_ml=450; checked bed=7 at=18:50 fluid=bright_red",
        ),
        ("bed 7 leak check: none", "ask kind"),
        ("bed 7 tube clamped at 1855 for the air leak trial", "incident bed=7 at=18:55 what=clamped"),
        ("bed 7 mark 700 at 1850, he slept on his back all night", "mark bed=7 at=18:50 level_ml=700"),
        ("bed 7 weighs 780 in nappies", "ask level_ml"),
        ("bed 7 weighs 8 kg", "described bed=7 weight_kg=8"),
    ],
)
def test_what_only_sounds_like_a_finding_is_none(text: str, told: str) -> None:
    assert reading(text) == told


@pytest.mark.parametrize(
    "text",
    [
        "bed 7 drain on the left is at 480",
        "bed 7 box by the window is at 480",
        "bed 7 canister beside the chair is at 480",
        "bed 7 lady is at 480",
        "the lady in bed 7 is at 480",
        "bed 7 I noticed it was at 480",
        "bed 7 steadily up to 480",
        "bed 7 walked, now at 480",
        "bed 7 level 480 - swinging grand",
        "bed 7 level 480, he loves his new watch",
        "bed 7 line 480, in training this week",
        "bed 7 line 480, exam tomorrow",
        "bed 7 line 480, he watched a movie",
        "bed 7 line 480, was here last year too",
        "bed 7 line 480, wiped the smear off",
    ],
)
def test_what_is_told_of_the_drain_stands_beside_it(text: str) -> None:
    read = reading(text)
    assert "level_ml=480" in read
    assert "ask" not in read


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("bed 7 left tube out at 1845, the other one stays", "removed"),
        ("bed 7 drain clamped at 1850, surgeon aware", "clamped"),
        ("bed 7 seal broken on the canister", "damaged"),
        ("bed 7 suction off for the walk", "suction_off"),
        ("bed 7 canister changed, old one is in the bin", "exchanged"),
    ],
)
def test_an_event_of_the_drain_is_told_whole(text: str, told: str) -> None:
    assert told in reading(text)
