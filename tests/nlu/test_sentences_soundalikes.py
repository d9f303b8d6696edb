"""Dictated words that sound like a digit: for, to, ate, won."""

from __future__ import annotations

import pytest

from tests.nlu.saying import reading


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("bed 6 reads for hundred ten cc", "mark bed=6 level_ml=410"),
        ("there's for hundred and thirty in the canister for bed 12", "mark bed=12 level_ml=430"),
        ("record one thousand ate hundred ninety for bed twelve", "mark bed=12 level_ml=1890"),
        ("bed 12 line a thousand to hundred", "mark bed=12 level_ml=1200"),
        ("bed twelve line one oh ate O", "mark bed=12 level_ml=1080"),
        ("bed twelve line ate twenty at eighteen hundred", "mark bed=12 at=18:00 level_ml=820"),
        ("bed twelve line is won fifty", "mark bed=12 level_ml=150"),
        ("bed twelve mark thirty for at seven", "mark bed=12 at=19:00 level_ml=34"),
        ("bed twelve line six ate five", "mark bed=12 level_ml=685"),
        ("bed twelve mark six hundred ate at seven", "mark bed=12 at=19:00 level_ml=608"),
        ("got ninety five on bed fourteen at for", "mark bed=14 at=16:00 level_ml=95"),
        ("bed 14 line 95 at half past for", "mark bed=14 at=16:30 level_ml=95"),
        ("bed 14 line 95 to hours ago", "mark bed=14 at=17:05 level_ml=95"),
        ("bed 14 line 95 seal to centimeters", "mark bed=14 level_ml=95; checked bed=14 seal_cm=2"),
        (
            "bed 14 line 95 seal to and no leak",
            "mark bed=14 level_ml=95; checked bed=14 seal_cm=2 air_leak=none",
        ),
    ],
)
def test_is_the_digit_where_it_can_be_nothing_else(said: str, wanted: str) -> None:
    """ "for hundred ten" is never a hundred and ten."""
    assert reading(said, channel="voice") == wanted


@pytest.mark.parametrize(
    "said",
    [
        "bed 12 is for 10 ml",
        "chest tube in bed 2 is at for 70",
        "bed 12 line for 20 at 1900",
        "roughly for twenty on the canister bed 4",
        "i have bed 12 for 60",
        "bed 12 is for sixty at six",
        "mark bed 12 for 40",
        "bed three line for five oh",
        "bed nine mark 640 at six fifty for",
        "bed nine mark six hundred and for tea",
        "bed nine mark one thousand and ate",
        "bed three mark for zero",
    ],
)
def test_before_tens_is_asked(said: str) -> None:
    """ "line for 20" may be 420."""
    assert reading(said, channel="voice") == "ask level_ml"


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("line for 20 is 340", "mark bed=20 level_ml=340"),
        ("the 6 pm mark for 12 is 340", "mark bed=12 at=18:00 level_ml=340"),
        ("put bed 12 down for 40", "mark bed=12 level_ml=40"),
        ("bed 12 mark 340 at for a quarter past 6 pm", "mark bed=12 at=18:15 level_ml=340"),
        ("bed 3 line 455, no leak, dressing intact", "mark bed=3 level_ml=455; checked bed=3 air_leak=none"),
        ("bed 3 line 455 no distress", "mark bed=3 level_ml=455"),
        ("bed 12 up to fifty", "mark bed=12 level_ml=50"),
        ("bed 12 mark up to hundred", "mark bed=12 level_ml=100"),
        ("twelve ate fifty percent of lunch", ""),
    ],
)
def test_keeps_its_own_work(said: str, wanted: str) -> None:
    """ "line for 20 is 340" is of bed 20."""
    assert reading(said, channel="voice") == wanted


@pytest.mark.parametrize(
    "said",
    [
        "bed then line 1790 at 1245 pm bed 17 line 1350 at 7 pm",
        "bed 4 line 950 wall 95 and fluid is buddy",
        "bed 20 two 60 bed 16 520 both at 6 pm",
        "bed 3 line 455, no leak, tied link well",
        "bed 3 line 455 no early",
    ],
)
def test_what_was_heard_as_another_word_is_asked(said: str) -> None:
    """ "bed then" may be bed ten, "buddy" bloody, "20 two 60" bed 22, "tied link" tidaling."""
    assert reading(said, channel="voice") == "ask level_ml"


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("bed 12 put out for fifty", "ask volume_ml"),
        ("bed 12 drained 50 for the hour", "drained bed=12 volume_ml=50"),
        ("bed 12 seal is at to mark 340", "ask level_ml"),
        ("bed 12 seal at two mark 340", "mark bed=12 level_ml=340; checked bed=12 seal_cm=2"),
        ("bed 12 moved to bed for", "moved bed=12 to_bed=4"),
        ("his bed is 12 his line is 340", "mark bed=12 level_ml=340"),
    ],
)
def test_of_amounts_and_seals_too(said: str, wanted: str) -> None:
    """ "put out for fifty" may be 450, "seal is at to" lost its two."""
    assert reading(said, channel="voice") == wanted


def test_typed_nothing_sounds_like_a_digit() -> None:
    """Who types "for" means it."""
    assert reading("12 for 340 at 1800") == reading("12 for 340 at 1800", channel="voice")
    assert reading("bed 12 line for 20") == "mark bed=12 level_ml=20"


@pytest.mark.parametrize("bed", ["bed two", "bed to", "bed too", "bed for"])
def test_a_bed_right_before_a_hundred_may_be_the_hundreds_of_the_line(bed: str) -> None:
    assert reading(f"{bed} hundred ten at six pm", channel="voice").startswith("ask ")
