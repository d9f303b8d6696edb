"""What is broken off, denied, one of two, of before or still to come; common practice, no source."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading

LINES_OF_TWO = "mark bed=9 tube=left at=18:50 level_ml=480; mark bed=9 tube=right at=18:50 level_ml=300"


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("bed 3 mark 640 wait no hang on", "ask level_ml"),
        ("bed 3 640 at 1850 wait", "ask level_ml"),
        ("whoops 9 was 640", "ask level_ml"),
        ("9 606 not 660 or the other way round", "ask level_ml"),
        ("9 606 not 660, or vice versa", "ask level_ml"),
        ("bed 17 level 1840 or time 1840", "ask level_ml"),
        ("4 950 at 1850 or 14", "ask at"),
        ("bed 9 1810 or it's 1840", "ask level_ml"),
        ("14 no change of canister since 1600", "ask volume_ml"),
        ("14 no change in orders", "ask volume_ml"),
        ("14 no change in the drain", "drained bed=14 volume_ml=0"),
        ("14 no canister change", "ask final_ml"),
        (
            "9 640 at 1850, no leak or kinks",
            "mark bed=9 at=18:50 level_ml=640; checked bed=9 at=18:50 air_leak=none",
        ),
        ("9 no leak but kinked", "checked bed=9 air_leak=none; incident bed=9 what=kinked"),
        ("9 260 at 1850, closing line to follow", "mark bed=9 at=18:50 level_ml=260"),
        ("9 260 at 1850, leave the box till shift change", "mark bed=9 at=18:50 level_ml=260"),
        ("9 260 at 1850, closing line", "mark bed=9 at=18:50 level_ml=260 closing"),
        ("9 med dumped 300 in an hour", "drained bed=9 tube=mediastinal volume_ml=300"),
    ],
)
def test_what_is_broken_off_denied_or_one_of_two_is_not_taken(said: str, read: str) -> None:
    assert reading(said) == read


MIDNIGHT = MORNING.replace(hour=1, minute=40)


@pytest.mark.parametrize(
    "said",
    ["9 640 at start of shift", "9 640 when i came on", "9 was 640 at handover", "9 start of shift 640"],
)
def test_a_line_of_the_start_of_the_shift_is_not_of_now(said: str) -> None:
    assert reading(said, arrived=MIDNIGHT) == "ask at"
    assert reading(said).startswith("mark bed=9")


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("9 640 at 5 to", "ask level_ml"),
        ("9 previous line 640", "ask level_ml"),
        ("9 640 ml/kg at 1850", "ask level_ml"),
        ("9 for new drain at 8", "ask kind"),
        ("9 480 room", "ask level_ml"),
        ("kg 64 9", "ask level_ml"),
        ("this is a test, 9 at 999", "ask kind"),
        ("9 410 at 1850 hang on let me recheck", "ask kind"),
        ("9 410 at 1850, will recheck at 2100", "mark bed=9 at=18:50 level_ml=410"),
        ("is 260 right for 21", "ask kind"),
        ("would 100 in one hr on 9 be worth a call", "ask kind"),
        ("9 480 1850 on o2", "mark bed=9 at=18:50 level_ml=480"),
        ("9 480 1850 with foley", "mark bed=9 at=18:50 level_ml=480"),
        ("9 left 480 right 300 both at 1850", LINES_OF_TWO),
        ("9 same nurse", "ask kind"),
        ("9 same as yesterday", "ask volume_ml"),
        ("9 same as at handover", "ask volume_ml"),
        ("9 same as last time", "drained bed=9 volume_ml=0"),
        ("9 same again", "drained bed=9 volume_ml=0"),
        ("9 good", "ask kind"),
        ("9 nil of note", "ask kind"),
        ("9 480 both", "ask level_ml"),
        ("9 480 in 300 out", "ask level_ml"),
        ("9 480 of blood", "checked bed=9 fluid=sanguineous; ask level_ml"),
        ("9 480 ml of blood in the box", "mark bed=9 level_ml=480; checked bed=9 fluid=sanguineous"),
        ("9 480 space left", "ask level_ml"),
        ("9 480 all night", "ask level_ml"),
        ("9 480 in er", "ask level_ml"),
        ("9 clamp at 480", "ask kind"),
        (
            "9 clamped at 1850 at 480",
            "mark bed=9 at=18:50 level_ml=480; incident bed=9 at=18:50 what=clamped",
        ),
        ("9 clamp at 7 per team", "ask kind"),
        ("9 clamped at 1850 per team", "incident bed=9 at=18:50 what=clamped"),
    ],
)
def test_what_is_of_before_or_to_come_is_not_of_now(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("cancel the change on 9", "ask at"),
        ("cancel the 1830 change on 9", "withdrawn bed=9 at=18:30"),
        ("delete everything on 9", "ask at"),
        ("i misread 9", "ask level_ml"),
        ("misread 880", "answered choice=misread level_ml=880"),
        ("9 640 confirm?", "ask kind"),
        ("9 640 confirm", "answered bed=9 answer=yes level_ml=640"),
    ],
)
def test_what_is_taken_back_or_answered_is_named_or_asked(said: str, read: str) -> None:
    assert reading(said) == read
