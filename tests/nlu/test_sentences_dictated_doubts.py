"""Dictated numbers, beds and times that may be others: begun again, broken off, or of the bed before them."""

from __future__ import annotations

import pytest

from .saying import CHANNELS, Channel, reading

LETTERED = ("CT1", "CT2", "CT3", "CT4", "CT5")
HUNDREDS = tuple(str(number) for number in range(201, 231))


@pytest.mark.parametrize(
    "text",
    [
        "bed nine nineteen hundred",
        "bed nine eighteen fifty",
        "bed one one one fifty",
        "bed six quarter past six forty",
        "bed six line six six forty",
        "bed six line six six six forty",
        "bed six line six um six forty",
        "bed six line six hundred six forty",
        "bed twelve eight six forty",
        "bed six six forty minutes ago",
        "bed six bed six forty",
        "bed six room six forty",
        "bed six two five oh nine oh five",
        "bed six eleven hundred and six",
        "bed six feeds six forty",
        "bed six fluids six forty",
        "bed six no line six forty",
        "remove bed six six forty",
        "bed 6 60 40 at 18:30",
        "bed 4 4 440 at 6",
        "bed 4 4 440 p.m.",
        "bed 20 2 640 at 18:30",
        "bed 20 4 50 at 18:30",
    ],
)
def test_a_number_that_may_be_another_is_asked(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed nine eighteen fifty at nineteen hundred", "mark bed=9 at=19:00 level_ml=1850"),
        ("bed nine line nineteen hundred", "mark bed=9 level_ml=1900"),
        ("bed nine ten fifty", "mark bed=9 level_ml=1050"),
        ("bed six quarter past six six forty", "mark bed=6 at=18:15 level_ml=640"),
        ("bed six line four hundred six forty", "mark bed=6 at=18:40 level_ml=400"),
        ("bed six line six hundred at six forty", "mark bed=6 at=18:40 level_ml=600"),
        ("bed twelve eight at six forty", "mark bed=12 at=18:40 level_ml=8"),
        ("bed six eight now", "mark bed=6 at=19:05 level_ml=8"),
        ("bed six six hundred forty minutes ago", "mark bed=6 at=18:25 level_ml=600"),
        ("bed six bed six six forty", "mark bed=6 level_ml=640"),
        ("bed six eleven hundred and six at six", "mark bed=6 at=18:00 level_ml=1106"),
        ("bed six six hundred and forty", "mark bed=6 level_ml=640"),
        ("bed six line fluid six forty", "mark bed=6 level_ml=640"),
        ("bed six tube removed at six forty", "removed bed=6 at=18:40"),
        ("bed 6 10 50 at 18:30", "mark bed=6 at=18:30 level_ml=1050"),
        ("bed 6 6 4 0 at 18:30", "mark bed=6 at=18:30 level_ml=640"),
        ("bed 20 450 at 18:30", "mark bed=20 at=18:30 level_ml=450"),
    ],
)
def test_near_ones_that_can_be_but_one_number_are_read(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    "end", ["at", "at uh", "as of", "or", "but", "since", "at the", "at eighteen hundred but", "that's"]
)
def test_a_message_that_breaks_off_behind_its_number_is_asked(end: str) -> None:
    assert reading(f"bed six line six forty {end}", channel="voice").startswith("ask ")
    assert reading(f"bed 6 line 640 {end}").startswith("ask ")


def test_a_clause_that_only_ends_with_such_a_word_is_whole() -> None:
    said = "bed 9 stood at 740 at 1830, and I have not had a minute since"
    assert reading(said) == "mark bed=9 at=18:30 level_ml=740"
    assert reading("bed nine seven forty at half past six, so it is", channel="voice") == (
        "mark bed=9 at=18:30 level_ml=740"
    )


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed six six hundred scratch that", "ask at"),
        ("bed six six forty scratch that", "ask at"),
        ("scratch bed six six forty", "ask at"),
        ("delete the six hundred mark on bed six", "withdrawn bed=6 at=06:00"),
        ("scratch that bed six at six forty", "withdrawn bed=6 at=18:40"),
    ],
)
def test_a_level_that_is_taken_back_is_no_time_of_a_line(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    "text", ["ct four moved to ct five", "ct four to ct five", "ct four to ct five six forty"]
)
def test_a_bed_behind_a_place_is_no_line(text: str) -> None:
    assert reading(text, LETTERED, "voice").startswith("ask ")


def test_a_bed_of_three_digits_may_end_with_what_stands_behind_it() -> None:
    assert reading("bed 220 6 40", HUNDREDS, "voice").startswith("ask ")
    assert reading("bed 220 640", HUNDREDS, "voice") == "mark bed=220 level_ml=640"
    assert reading("bed 2 20 640", HUNDREDS, "voice") == "mark bed=220 level_ml=640"


@pytest.mark.parametrize("text", ["wait a second", "one second", "just a second", "half a second"])
@pytest.mark.parametrize("channel", CHANNELS)
def test_a_second_of_waiting_is_not_the_second_choice(text: str, channel: Channel) -> None:
    assert reading(text, channel=channel).startswith("ask ")
    assert reading("the second one", channel=channel) == "answered choice=second"


@pytest.mark.parametrize("text", ["bed six at six", "bed six left at six", "bed six at eight"])
def test_a_small_number_behind_at_may_be_an_hour(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask ")
    assert reading("6 left at 6").startswith("ask ")
    assert reading("bed six line at six", channel="voice") == "mark bed=6 level_ml=6"
    assert reading("bed 6 at 15") == "mark bed=6 level_ml=15"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("correct bed six six hundred to six forty", "ask at"),
        ("correct bed six oh six hundred to six forty", "corrected bed=6 at=06:00 level_ml=640"),
        ("correct bed six eighteen hundred to six forty", "corrected bed=6 at=18:00 level_ml=640"),
        ("correct bed six two seven", "ask level_ml"),
        ("correct that two six forty", "ask level_ml"),
        ("correct that to six forty", "corrected level_ml=640"),
        ("correct bed two to six forty", "corrected bed=2 level_ml=640"),
        ("correct bed six to two forty", "corrected bed=6 level_ml=240"),
    ],
)
def test_to_that_was_written_as_two_is_no_number_of_a_correction(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


def test_a_wrong_level_of_three_digits_is_no_time_of_the_line() -> None:
    assert reading("correct 6 600 to 640") == "ask at"
    assert reading("correct 6 0600 to 640") == "corrected bed=6 at=06:00 level_ml=640"
    assert reading("correct 6 630 line to 640") == "ask at"
    assert reading("correct 6 0630 line to 640") == "corrected bed=6 at=06:30 level_ml=640"


@pytest.mark.parametrize(
    "text",
    [
        "bed six off the floor six forty",
        "bed six back to bed six forty",
        "bed six six colon forty",
        "bed 6, 6, 40",
        "bed six two seven",
        "bed six plus forty",
        "bed six more forty",
        "bed six drained to six forty",
        "bed six drained to forty",
        "bed six out six forty",
        "bed six six forty out",
        "bed six six forty two rib fractures",
        "bed six six forty one more time",
        "bed six six forty one last thing",
        "bed six six forty six ish",
        "bed six on clamped",
        "bed six and clamped",
    ],
)
def test_a_word_beside_the_number_that_may_be_of_it_is_asked(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed six forty bed seven fifty", "mark bed=6 level_ml=40; mark bed=7 level_ml=50"),
        ("bed six comma six forty", "mark bed=6 level_ml=640"),
        ("bed six line two seven", "mark bed=6 level_ml=27"),
        ("bed six forty more", "drained bed=6 volume_ml=40"),
        ("bed six drained two forty", "drained bed=6 volume_ml=240"),
        ("bed six six forty over and out", "mark bed=6 level_ml=640"),
        ("bed six six forty ish", "mark bed=6 level_ml=640 about"),
        ("bed six six forty two", "mark bed=6 level_ml=642"),
        ("bed six is clamped", "incident bed=6 what=clamped"),
        ("bed six line six forty and clamped", "mark bed=6 level_ml=640; incident bed=6 what=clamped"),
        ("bed six un clamped", "incident bed=6 what=unclamped"),
    ],
)
def test_a_word_that_can_only_be_its_own_leaves_the_number(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


def test_so_much_more_and_drained_to_are_no_line() -> None:
    assert reading("6 more 40") == "ask level_ml"
    assert reading("6 drained to 640") == "ask volume_ml"
    assert reading("6 drained 640") == "drained bed=6 volume_ml=640"


@pytest.mark.parametrize(
    "text",
    [
        "beds six and seven six forty",
        "bed six and seven six forty",
        "beds six and seven at six",
        "beds 6 and 7 640",
        "bed six a six forty b seven forty",
        "bed six swing in six forty",
        "bed six now leak six forty",
        "bed six six forty at six and a half",
        "bed six six four zero six forty",
        "bed six eleven six forty",
    ],
)
def test_a_second_bed_or_a_finding_by_its_sound_is_asked(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed six and nineteen hundred six forty", "mark bed=6 at=19:00 level_ml=640"),
        ("bed six line six forty and nineteen hundred", "mark bed=6 at=19:00 level_ml=640"),
        ("beds six and seven no leak", "checked bed=6 air_leak=none; checked bed=7 air_leak=none"),
        ("bed six six forty b seven seven forty", "mark bed=6 level_ml=640; mark bed=7 level_ml=740"),
        ("bed six now has a leak", "checked bed=6 at=19:05 air_leak=present"),
    ],
)
def test_an_and_before_a_time_or_beside_two_beds_is_read(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read
