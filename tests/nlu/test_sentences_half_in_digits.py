"""Numbers that a recogniser writes half in words and half in digits, or in two pieces."""

from __future__ import annotations

import pytest

from .saying import BEDS, reading

HUNDREDS = tuple(str(n) for n in range(401, 425))
MIXED = (*(str(n) for n in range(1, 25)), *HUNDREDS)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 level ten 30 at 1850", "mark bed=9 at=18:50 level_ml=1030"),
        ("bed 24 mark one 30 at 1850", "mark bed=24 at=18:50 level_ml=130"),
        ("the level in bed 19 is eight 70 at 1850", "mark bed=19 at=18:50 level_ml=870"),
        ("bed ten nine 80 at 1850", "mark bed=10 at=18:50 level_ml=980"),
        ("bed twelve fourteen 20 mils at 1850", "mark bed=12 at=18:50 level_ml=1420"),
        ("bed 11 tube one mark fourteen 20 at 1850", "mark bed=11 tube=1 at=18:50 level_ml=1420"),
    ],
)
def test_a_number_half_in_words_and_half_in_digits_is_one(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 07 mark 1820 at 1850", "mark bed=407 at=18:50 level_ml=1820"),
        ("room four 10 line 1600 at 1850", "mark bed=410 at=18:50 level_ml=1600"),
        (
            "bed 4 24 right 1320 and left 1120 at 1850",
            "mark bed=424 tube=right at=18:50 level_ml=1320; mark bed=424 tube=left at=18:50 level_ml=1120",
        ),
        ("bed 4 04 220 at 7 pm", "mark bed=404 at=19:00 level_ml=220"),
    ],
)
def test_a_bed_of_hundreds_heard_in_two_pieces_is_the_one_that_the_unit_has(text: str, read: str) -> None:
    assert reading(text, channel="voice", beds=HUNDREDS) == read


@pytest.mark.parametrize(
    ("text", "beds"),
    [
        ("bed twenty two thousand four hundred and eighty at 1850", BEDS),
        ("bed four twenty two thousand two hundred now", HUNDREDS),
    ],
)
def test_a_thousand_without_its_a_leaves_two_beds(text: str, beds: tuple[str, ...]) -> None:
    assert reading(text, channel="voice", beds=beds) == "ask bed"


def test_where_the_unit_has_both_beds_the_pieces_are_asked() -> None:
    assert reading("bed 4 07 at 1850", channel="voice", beds=MIXED).startswith("ask ")
    assert reading("bed 4 12 mark 340 at 1850", channel="voice").startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 20 hourly mark 12 twenty mils", "mark bed=20 level_ml=1220"),
        ("bed 12 hourly reading five sixty at 1850", "mark bed=12 at=18:50 level_ml=560"),
        ("bed 5 chest tube 1350 at 1850 dressing is dry and intact", "mark bed=5 at=18:50 level_ml=1350"),
        ("bed 5 nine thirty at 1850 i'm heading to the next room", "mark bed=5 at=18:50 level_ml=930"),
        ("bed 5 nine thirty at 1850 family is at the bedside", "mark bed=5 at=18:50 level_ml=930"),
        ("bed 5 level 626 at 1850 call me if you need me", "mark bed=5 at=18:50 level_ml=626"),
        ("one nine nine oh on bed eighteen he is doing fine", "mark bed=18 level_ml=1990"),
        ("bed 22 tube a line 1120 at 1850", "mark bed=22 tube=A at=18:50 level_ml=1120"),
        ("bed 15 drain a collection chamber reads 2016 at 1850", "mark bed=15 tube=A at=18:50 level_ml=2016"),
        ("bed 4 right basal is up to 1300 at 1850", "mark bed=4 tube=right basal at=18:50 level_ml=1300"),
        ("bed 2 tube b is up to 190", "mark bed=2 tube=B level_ml=190"),
        ("bed 12 tube number one eighty at 1850", "mark bed=12 tube=1 at=18:50 level_ml=80"),
        ("bed 3 chest tube five", "mark bed=3 level_ml=5"),
        (
            "bed 16 closing line three hundred thirty intermittent leak",
            "mark bed=16 level_ml=330 closing; checked bed=16 air_leak=intermittent",
        ),
        (
            "drew the line on bed 14 at 1310 as of 1850 and continuous air leak",
            "mark bed=14 at=18:50 level_ml=1310; checked bed=14 at=18:50 air_leak=continuous",
        ),
    ],
)
def test_what_is_said_round_a_dictated_line_is_no_reason_to_ask(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    "text",
    [
        "dressing 340 bed 12",
        "bed 12 340 dressing soaked",
        "call me if bed 12 is up to 340",
        "bed 12 going to the next room 340",
        "bed 12 three 40 at seven 20 or seven 30",
    ],
)
def test_what_may_change_the_line_is_still_asked(text: str) -> None:
    assert not reading(text, channel="voice").startswith("mark bed=12 level_ml=340")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed nine mark eighteen sixty two hours ago", "mark bed=9 at=17:05 level_ml=1860"),
        ("bed nine mark two eighty three hours ago", "mark bed=9 at=16:05 level_ml=280"),
        ("bed 3 mark 340 at five tonight", "mark bed=3 at=17:00 level_ml=340"),
        (
            "closing line bed 5 eight ninety closing line bed 7 twelve thirty",
            "mark bed=5 level_ml=890 closing; mark bed=7 level_ml=1230 closing",
        ),
        ("now bed twenty one mark 240", "mark bed=21 at=19:05 level_ml=240"),
    ],
)
def test_a_time_said_aloud_is_the_only_one_that_can_be_meant(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("4 17 mark 690 at 1850", "mark bed=417 at=18:50 level_ml=690"),
        ("4 04 is at 780 at 1850", "mark bed=404 at=18:50 level_ml=780"),
    ],
)
def test_a_bed_in_two_pieces_opens_a_line_without_the_word_bed(text: str, read: str) -> None:
    assert reading(text, channel="voice", beds=HUNDREDS) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed twelve for fifty at 1850",
        "bed twenty four twenty three forty",
        "now bed 14",
        "4 17 mark 690 at 1850",
        "bed 5 is at 1850",
    ],
)
def test_two_splits_of_neighbouring_numbers_are_asked(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask ")


@pytest.mark.parametrize(
    "text",
    ["mark 403 4 17", "4 12 is at 770 4 13 is at nine 20 at 1850", "bed 412 mark 770 4 13 mark 920 at 1850"],
)
def test_a_bed_in_two_pieces_behind_a_line_is_never_taken_for_its_time(text: str) -> None:
    assert reading(text, channel="voice", beds=HUNDREDS).startswith("ask ")
