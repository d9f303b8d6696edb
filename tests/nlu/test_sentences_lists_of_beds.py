"""Lists of beds, what was written and is put right, and whose time it is."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading

NINE_TEN_ELEVEN = (
    "mark bed=9 at=06:50 level_ml=410; mark bed=10 at=06:50 level_ml=220; mark bed=11 at=06:50 level_ml=90"
)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("9: 410, 10: 220, 11: 90 at 0650", NINE_TEN_ELEVEN),
        (
            "9: 410, 10: 220, 11: 90 at 0650. 9 has intermittent leak, 11 not swinging",
            "mark bed=9 at=06:50 level_ml=410; mark bed=10 at=06:50 level_ml=220; "
            "mark bed=11 at=06:50 level_ml=90; checked bed=9 at=06:50 air_leak=intermittent; "
            "checked bed=11 at=06:50 tidaling=False",
        ),
        ("9 410, 10 220, 11 90 at 0650", NINE_TEN_ELEVEN),
        ("hourly 9 410, 10 220, 11 90", "ask level_ml"),
        ("bp 9 120, 10 130, 11 90", "ask kind; ask kind"),
        ("2 9, 14 20, 15 16", "ask level_ml"),
    ],
)
def test_a_list_of_beds_needs_no_word_for_a_bed(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 0600 was 390, i wrote 930", "corrected bed=9 at=06:00 was_ml=930 level_ml=390"),
        ("bed 9 0600 390 (not 930)", "corrected bed=9 at=06:00 was_ml=930 level_ml=390"),
        ("bed 9 930 was a typo, 390", "corrected bed=9 was_ml=930 level_ml=390"),
        (
            "bed 9 390 at 0600, i put 410 at 0650",
            "mark bed=9 at=06:00 level_ml=390; mark bed=9 at=06:50 level_ml=410",
        ),
        ("9 340, not 10 220", "ask level_ml"),
        ("bed 9 suction 20 (not 10)", "ask kind"),
        ("void bed 9 0600", "withdrawn bed=9 at=06:00"),
        ("void 400 ml bed 9", ""),
        ("bed 9 swap 0640 old 1945", "exchanged bed=9 at=06:40 final_ml=1945"),
        ("bed 9 swap dressing 0640 old 19", "ask kind"),
    ],
)
def test_what_was_written_is_put_right_or_taken_back(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 back 1840, bed 10 340", "back bed=9 at=18:40; mark bed=10 level_ml=340"),
        (
            "bed 9 clamped, bed 10 340 at 1840",
            "incident bed=9 what=clamped; mark bed=10 at=18:40 level_ml=340",
        ),
        ("bed 9 340 at 1800; bed 9 should be 360", "ask level_ml"),
        ("bed 9 from 1600 drained 340", "drained bed=9 volume_ml=340"),
        ("bed 9 340, both tubes no leak", "ask kind"),
    ],
)
def test_a_line_and_what_happened_in_another_bed_do_not_share_a_time(text: str, read: str) -> None:
    assert reading(text) == read
