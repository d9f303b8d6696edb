"""Beds whose labels are no plain numbers: two parts, letters alone or behind a number, a prefix."""

from __future__ import annotations

import pytest

from .saying import BEDS, CHANNELS, Channel, reading

BAYS = ("1-1", "1-2", "2-1", "2-2", "2-3", "2-4")
LETTERS = tuple("ABCDEFGH")
PAIRED = ("12A", "12B", "14A", "14B", "3")
BESIDE = ("12", "12A", "12B", "13", "14")
PREFIXED = ("CT1", "CT2", "CT3", "CT4", "ICU1", "B2-4", "B3-1")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bay 2 bed 4 mark 340 at 1900", "mark bed=2-4 at=19:00 level_ml=340"),
        ("bay 2 bed 4 340 1900", "mark bed=2-4 at=19:00 level_ml=340"),
        ("room 2 bed 4 line 340 at 1900", "mark bed=2-4 at=19:00 level_ml=340"),
        ("bed 2-4 340 at 1900", "mark bed=2-4 at=19:00 level_ml=340"),
        ("2-4: 340 (1900)", "mark bed=2-4 at=19:00 level_ml=340"),
        ("2-4 same", "drained bed=2-4 volume_ml=0"),
        ("bay 2 bed 3 moved to bay 1 bed 2", "moved bed=2-3 to_bed=1-2"),
        (
            "bay 2: bed 1 340 bed 2 120 at 1900",
            "mark bed=2-1 at=19:00 level_ml=340; mark bed=2-2 at=19:00 level_ml=120",
        ),
    ],
)
def test_a_label_of_bay_and_bed_is_found_in_parts_and_whole(text: str, read: str) -> None:
    assert reading(text, BAYS) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bay two bed four mark three forty at nineteen hundred", "mark bed=2-4 at=19:00 level_ml=340"),
        ("bay to bed for mark three forty at nineteen hundred", "mark bed=2-4 at=19:00 level_ml=340"),
        ("bay 2, bed 4, mark 340 at 1900", "mark bed=2-4 at=19:00 level_ml=340"),
        ("Bay two, bed one. Mark one ten, nineteen hundred.", "mark bed=2-1 at=19:00 level_ml=110"),
        (
            "bay one bed two is at two twenty and bay two bed one is at ninety at seven pm",
            "mark bed=1-2 at=19:00 level_ml=220; mark bed=2-1 at=19:00 level_ml=90",
        ),
    ],
)
def test_a_label_of_bay_and_bed_is_dictated_in_parts(text: str, read: str) -> None:
    assert reading(text, BAYS, "voice") == read


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    "text",
    ["bay 2, bed 4, mark 340 at 1900", "bed 2, bed 4, mark 340 at 1900", "bed 2 bed 4 mark 340 at 1900"],
)
def test_a_line_behind_two_beds_is_asked_for_its_bed(text: str, channel: Channel) -> None:
    assert reading(text, BEDS, channel) == "ask bed"


def test_a_line_said_of_several_beds_is_of_each() -> None:
    assert reading("beds 2 and 4 both at 340, 1900") == (
        "mark bed=2 at=19:00 level_ml=340; mark bed=4 at=19:00 level_ml=340"
    )


@pytest.mark.parametrize(("text", "slots"), [("beds 2-4 no leak", "ask bed"), ("2-4 no leak", "ask bed")])
def test_a_range_of_beds_is_asked_and_is_no_bed_and_level(text: str, slots: str) -> None:
    assert reading(text) == slots


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed A mark 340 at 1900", "mark bed=A at=19:00 level_ml=340"),
        ("A 340 at 1900", "mark bed=A at=19:00 level_ml=340"),
        ("bed a at 340", "mark bed=A level_ml=340"),
        ("bed E mark 90 at 1900", "mark bed=E at=19:00 level_ml=90"),
        ("mark 340 at 1900 bed G", "mark bed=G at=19:00 level_ml=340"),
        (
            "B 340, C 120, D 60 at 1900",
            "mark bed=B at=19:00 level_ml=340; mark bed=C at=19:00 level_ml=120; "
            "mark bed=D at=19:00 level_ml=60",
        ),
        ("bed a 340 b 220 at 1900", "mark bed=A at=19:00 level_ml=340; mark bed=B at=19:00 level_ml=220"),
        ("bed d drain a 120 at 1900", "mark bed=D tube=A at=19:00 level_ml=120"),
        ("moved A to F", "moved bed=A to_bed=F"),
        ("bed A tipped", "incident bed=A what=tipped"),
        ("H?", "asked bed=H topic=last"),
        ("there is a leak in bed B", "checked bed=B air_leak=present"),
    ],
)
def test_a_label_without_digits_is_a_bed_where_a_bed_stands(text: str, read: str) -> None:
    assert reading(text, LETTERS) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed a mark three forty at nineteen hundred", "mark bed=A at=19:00 level_ml=340"),
        ("bed be mark three forty at nineteen hundred", "mark bed=B at=19:00 level_ml=340"),
        ("bed see mark three forty at nineteen hundred", "mark bed=C at=19:00 level_ml=340"),
        ("bed b at a hundred at nineteen hundred", "mark bed=B at=19:00 level_ml=100"),
        ("bed charlie mark three forty at nineteen hundred", "mark bed=C at=19:00 level_ml=340"),
        (
            "bed g is at ninety bed f is at forty all at nineteen hundred",
            "mark bed=G at=19:00 level_ml=90; mark bed=F at=19:00 level_ml=40",
        ),
        ("bed eight mark three forty at nineteen hundred", "ask bed"),
    ],
)
def test_a_label_without_digits_is_dictated(text: str, read: str) -> None:
    assert reading(text, LETTERS, "voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed twelve bee mark three forty at nineteen hundred", "mark bed=12B at=19:00 level_ml=340"),
        ("bed twelve bravo mark three forty at nineteen hundred", "mark bed=12B at=19:00 level_ml=340"),
        ("room fourteen bed b mark three forty at nineteen hundred", "mark bed=14B at=19:00 level_ml=340"),
        ("room fourteen bed A line three forty at seven pm", "mark bed=14A at=19:00 level_ml=340"),
        ("bed twelve mark three forty at nineteen hundred", "ask bed"),
    ],
)
def test_a_letter_behind_a_number_is_dictated(text: str, read: str) -> None:
    assert reading(text, PAIRED, "voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12/A mark 340 at 1900", "mark bed=12A at=19:00 level_ml=340"),
        ("12-A mark 340 at 1900", "mark bed=12A at=19:00 level_ml=340"),
        ("bed 12 mark 340 at 1900", "mark bed=12 at=19:00 level_ml=340"),
        ("bed 12 drain A 340 at 1900", "mark bed=12 tube=A at=19:00 level_ml=340"),
        ("bed 12 A mark 340 at 1900", "ask bed"),
    ],
)
def test_a_letter_is_never_dropped_where_the_bed_without_it_is_there_too(text: str, read: str) -> None:
    assert reading(text, BESIDE) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("C.T. four mark three forty at nineteen hundred", "mark bed=CT4 at=19:00 level_ml=340"),
        ("c t four mark three forty at nineteen hundred", "mark bed=CT4 at=19:00 level_ml=340"),
        ("I.C.U. one is at ninety", "mark bed=ICU1 level_ml=90"),
        ("B2-4 mark 340 at 1900", "mark bed=B2-4 at=19:00 level_ml=340"),
        ("b3-1 340 at 1900", "mark bed=B3-1 at=19:00 level_ml=340"),
    ],
)
def test_a_label_with_a_prefix_is_dictated(text: str, read: str) -> None:
    assert reading(text, PREFIXED, "voice") == read


@pytest.mark.parametrize(
    ("text", "bed"), [("7A 340 at 1900", "7A"), ("07A 340 at 1900", "07A"), ("bed 7 340 at 1900", "7")]
)
def test_labels_that_differ_only_by_a_nought_are_told_apart(text: str, bed: str) -> None:
    assert reading(text, ("7", "07A", "7A")) == f"mark bed={bed} at=19:00 level_ml=340"


def test_a_label_of_two_numbers_is_not_the_number_without_its_dash() -> None:
    assert reading("24 mark 340 at 1900", ("2-4", "24")) == "mark bed=24 at=19:00 level_ml=340"
    assert reading("2-4 mark 340 at 1900", ("2-4", "24")) == "mark bed=2-4 at=19:00 level_ml=340"


def test_a_four_that_a_recogniser_may_have_written_as_for_is_asked() -> None:
    assert reading("bed twenty for mark three forty at seven pm", BEDS, "voice") == "ask bed"


@pytest.mark.parametrize("said", ["bed forty two", "bed forty", "bed one oh two"])
def test_a_bed_that_the_unit_lacks_is_asked_in_words_too(said: str) -> None:
    assert reading(f"{said} mark three forty at nineteen hundred", BEDS, "voice") == "ask bed"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed a one mark three forty at nineteen hundred", "mark bed=A1 at=19:00 level_ml=340"),
        ("bed b two mark three forty at nineteen hundred", "mark bed=B2 at=19:00 level_ml=340"),
        (
            "a one is at three forty and b two is at two twenty at nineteen hundred",
            "mark bed=A1 at=19:00 level_ml=340; mark bed=B2 at=19:00 level_ml=220",
        ),
        ("bay b bed two mark three forty at nineteen hundred", "mark bed=B2 at=19:00 level_ml=340"),
    ],
)
def test_a_letter_and_a_number_word_are_a_label(text: str, read: str) -> None:
    assert reading(text, ("A1", "A2", "B1", "B2"), "voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12C 340 at 1900", "ask bed"),
        ("12d mark 340", "ask bed"),
        ("bed 12 b/l tubes left 40 right 50 at 1900", "ask level_ml"),
        ("12A mark 340 12B mark 220 13 mark 90 at 1900",
         "mark bed=12A at=19:00 level_ml=340; mark bed=12B at=19:00 level_ml=220; "
         "mark bed=13 at=19:00 level_ml=90"),
        ("1900: 12A 340, 12B 220",
         "mark bed=12A at=19:00 level_ml=340; mark bed=12B at=19:00 level_ml=220"),
    ],
)  # fmt: skip
def test_a_label_that_the_unit_lacks_is_asked_and_bilateral_is_no_letter(text: str, read: str) -> None:
    assert reading(text, BESIDE) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "12 mark 340 14 mark 220 at 1900",
            "mark bed=12 at=19:00 level_ml=340; mark bed=14 at=19:00 level_ml=220",
        ),
        (
            "1900: bed 12 340, bed 14 220",
            "mark bed=12 at=19:00 level_ml=340; mark bed=14 at=19:00 level_ml=220",
        ),
        ("1900: 12 340, 14 220", "mark bed=12 at=19:00 level_ml=340; mark bed=14 at=19:00 level_ml=220"),
    ],
)
def test_beds_after_a_time_or_each_with_the_word_mark_are_read_in_a_row(text: str, read: str) -> None:
    assert reading(text) == read
