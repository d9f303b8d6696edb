"""Corrections, withdrawals, moves and nothing drained put in other words, and what stays asked."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from .saying import reading

EVENING = datetime(2026, 3, 4, 18, 41, tzinfo=ZoneInfo("America/New_York"))
LEVELS = "corrected bed=9 was_ml=640 level_ml=460"
AT_SIX = "corrected bed=9 at=18:00 was_ml=640 level_ml=460"
MOVED = "moved bed=9 at=18:30 to_bed=14"


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("*460 ml, bed 9. autocorrect gave you 640", LEVELS),
        ("Sorry I fat-fingered the 1800h reading for 9. It's 460 mL, I put 640 mL", AT_SIX),
        ("for bed 9 at 6:00pm replace 640 ml by 460 ml", AT_SIX),
        ("bed 9 1800h entry of 640 ml was an error, true reading 460 ml", AT_SIX),
        ("The canister in 9 never read 640, it read 460. That was the 1800hrs line.", AT_SIX),
        ("bed 9 value wrongly given as 640 ml, actual 460 ml", LEVELS),
        ("the 640 ml I sent for 9 ought to be 460 ml", LEVELS),
        ("disregard 640 ml for bed 9, the canister shows 460 ml", LEVELS),
        ("by mistake 640 ml was sent from my side, please take 460 ml", "corrected was_ml=640 level_ml=460"),
        ("9 swapped digits at 1800, s/b 460 ml", "corrected bed=9 at=18:00 level_ml=460"),
    ],
)
def test_which_of_two_lines_was_wrong(said: str, read: str) -> None:
    assert reading(said, arrived=EVENING) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        (
            "I hit 13 but meant to hit 11, for the 640 ml reading",
            "corrected bed=13 was_ml=640 to_bed=11",
        ),
        ("it was bed 8 i was looking at when i sent bed 9 640 ml", "corrected bed=9 was_ml=640 to_bed=8"),
        (
            "pls reassign 9 640ml @ 1830 to bed 3",
            "corrected bed=9 at=18:30 was_ml=640 to_bed=3",
        ),
        ("change bed on last entry to 14", "corrected to_bed=14"),
        ("wrong room number sorry, 18 s/b 7", "corrected bed=18 to_bed=7"),
        ("not the right, the left! for bed 9", "corrected bed=9 tube=right to_tube=left"),
        (
            "bed 9 640 ml was the left chest tube, i typed right by mistake",
            "corrected bed=9 tube=right was_ml=640 to_tube=left",
        ),
        (
            "the time is not 1830hrs, it's 1800h for bed 9 last reading",
            "corrected bed=9 at=18:30 to_at=18:00",
        ),
        ("kindly correct timing for bed 9, 1827 in place of 5:05pm", "corrected bed=9 at=17:05 to_at=18:27"),
        ("backdate bed 9's 1830h mark to 18:05, I wrote it up late", "corrected bed=9 at=18:30 to_at=18:05"),
        ("wrong time for bed 9. took it at 1800h and typed 1830h", "corrected bed=9 at=18:30 to_at=18:00"),
    ],
)
def test_which_bed_tube_or_time_was_wrong(said: str, read: str) -> None:
    assert reading(said, arrived=EVENING) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("bed 9 1805h reading is not valid, take it off", "withdrawn bed=9 at=18:05"),
        ("don't count bed 9's line from 6:23pm please", "withdrawn bed=9 at=18:23"),
        ("clear 9's 6:23pm mark, the 640 ml one", "withdrawn bed=9 at=18:23"),
        (
            "That was the urine bag I read, not the chest drain. Delete bed 9 1805 mark",
            "withdrawn bed=9 at=18:05",
        ),
        ("room change 9 to 14, 1830", MOVED),
        ("bed management had us move 9 at 1830, he is in 14", MOVED),
        ("Swapped beds: patient from 9 went into 14 at 1830h", MOVED),
        ("pt mv 9>14 6:30pm", MOVED),
        ("discharge done for bed 9 at 1830hrs, drain went with him", "left bed=9 at=18:30"),
        ("transfer out 9 -> stepdown, report called, gone 6:30pm", "left bed=9 at=18:30"),
        ("moved from 9 to the surgical HDU, not our unit any more", "left bed=9"),
        ("9 went LAMA at 6:15pm", "left bed=9 at=18:15"),
        ("transport took 9 to CT 1830h", "away bed=9 at=18:30"),
        ("line hasn't budged on 9", "drained bed=9 volume_ml=0"),
        ("zero output from 9's chest tube at 1830hrs", "drained bed=9 at=18:30 volume_ml=0"),
        (
            "neither 4 nor 3 put anything out at 1800",
            "drained bed=4 at=18:00 volume_ml=0; drained bed=3 at=18:00 volume_ml=0",
        ),
    ],
)
def test_what_is_taken_back_who_went_and_what_did_not_drain(said: str, read: str) -> None:
    assert reading(said, arrived=EVENING) == read


@pytest.mark.parametrize(
    "said",
    [
        "bed 9 is 640 ml, I put 600 ml at 1800h",
        "sorry bed 9 is 640 ml i put 600 ml at 1800h",
        "bed 9 left 640 ml, i meant right",
        "bed 6, I meant bed 16, is 420 ml at 1800h",
        "bed 9 new reading 660 ml, i logged 640 ml at 1700h",
        "bed 9 updated reading 660 ml, i sent 640 ml",
        "bed 9 read 660 ml, i sent 640 ml at 1700h",
        "wait bed 9 is 660 ml i logged 640 ml",
        "read it again, bed 9 is 660 ml, i logged 640 ml",
        "bed 9 660 ml, we said 640 ml",
        "don't chart bed 9 1800h mark",
        "please transfer out 9 -> stepdown",
        "i typed 12 instead of 14",
        "i typed 12 instead of 14 for bed 9",
        "bed 9 i put 1800 instead of 1830",
        "Actually 1829. Bed 13. Not 100.",
        "swap bed 9 for bed 3",
        "i put 640 ml for bed 9, 600 ml is right",
        "bed 9 intake should be 640 ml not 460 ml",
        "bed 9 bolus meant 640 ml not 460 ml",
        "wish i put 640 ml instead of 460 ml for bed 9",
        "don't put 640 ml for bed 9, put 600 ml",
        "if i put 640 ml instead of 600 ml for bed 9",
        "remove bed 9 canister at 1800h",
        "remove the left drain of bed 9 at 1800h",
        "remove bed 9's line at 1800h",
        "should i delete bed 9's 1800h mark",
        "delete bed 9 1800h mark and bed 3 1800h mark",
        "ignore bed 9 reading of 640 ml at 1800h, it was 600 ml at 1700h",
        "9 not moved to 14",
        "13 and 8 swapped beds at 1700",
        "9 expired bag 1800h",
        "no drainage from 9 since 1800h",
    ],
)
def test_what_may_be_either_is_asked(said: str) -> None:
    assert reading(said, arrived=EVENING).startswith("ask ")


def test_lettered_beds_are_named_without_a_word_for_them() -> None:
    read = reading(
        "sides mixed up on 8B: the 640 ml is the right one's, I put left", beds=("8A", "8B"), arrived=EVENING
    )
    assert read == "corrected bed=8B tube=left was_ml=640 to_tube=right"


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("how much should i document on bed 19 this shift", "asked bed=19 topic=chart window=shift"),
        ("how much drainage for 22 in past hour", "asked bed=22 topic=total window=1h"),
        ("what was the output on 8 for the shift before mine", "asked bed=8 topic=total window=last_shift"),
    ],
)
def test_what_to_document_and_whose_shift(said: str, read: str) -> None:
    assert reading(said, arrived=EVENING) == read
