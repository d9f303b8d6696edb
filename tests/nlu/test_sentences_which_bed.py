"""Dictated beds that may be another: one letter or another, an article that is a letter, a row of beds."""

from __future__ import annotations

import pytest

from .saying import BEDS, reading

PAIRS = tuple(f"{number}{letter}" for number in range(1, 13) for letter in "AB")
MIXED = (*BEDS, "12A", "12B")


@pytest.mark.parametrize(
    "text",
    [
        "bed nine a or b mark six ten at nineteen hundred",
        "bed nine a or maybe b mark six ten at nineteen hundred",
        "nine a or nine b mark six ten at nineteen hundred",
        "bed nine a and b mark six ten at nineteen hundred",
    ],
)
def test_one_of_two_letters_of_a_number_is_asked_for_its_bed(text: str) -> None:
    assert reading(text, beds=PAIRS, channel="voice") == "ask bed"


@pytest.mark.parametrize("text", ["bed 9a or b mark 610 at 1900", "9A or 9B 610 at 1900", "9a/b 610 1900"])
def test_a_typed_letter_or_another_is_asked_for_its_bed(text: str) -> None:
    assert reading(text, beds=PAIRS) == "ask bed"


def test_what_was_found_of_two_letters_of_a_number_is_of_both() -> None:
    found = reading("bed nine a and b no air leak at nineteen hundred", beds=PAIRS, channel="voice")
    assert found == "checked bed=9A at=19:00 air_leak=none; checked bed=9B at=19:00 air_leak=none"


@pytest.mark.parametrize("level", ["a thousand and sixty", "a thousand", "a hundred and sixty"])
def test_an_a_before_a_thousand_may_be_the_letter_of_a_bed_where_the_unit_has_both(level: str) -> None:
    text = f"bed twelve {level} at nineteen hundred"
    assert reading(text, beds=MIXED, channel="voice") == "ask bed"
    assert reading(text, beds=BEDS, channel="voice").startswith("mark bed=12 at=19:00 level_ml=")
    assert "mark" not in reading(text, beds=PAIRS, channel="voice")
    other = reading(text.replace("twelve", "twelve mark"), beds=MIXED, channel="voice")
    assert other.startswith("mark bed=12 at=19:00 level_ml=")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("beds seven and eight mark nine ten at nineteen hundred", "ask bed"),
        ("bed seven and bed eight at nine ten at nineteen hundred", "ask bed"),
        (
            "beds seven and eight both mark nine ten at nineteen hundred",
            "mark bed=7 at=19:00 level_ml=910; mark bed=8 at=19:00 level_ml=910",
        ),
        (
            "beds seven and eight each at nine ten at nineteen hundred",
            "mark bed=7 at=19:00 level_ml=910; mark bed=8 at=19:00 level_ml=910",
        ),
    ],
)
def test_one_dictated_line_is_of_two_beds_only_where_that_is_said(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


def test_a_number_in_a_row_of_beds_is_no_level() -> None:
    said = "beds seven eight and nine all at nine ten at nineteen hundred"
    assert "level_ml=8" not in reading(said, channel="voice")
    assert "level_ml=8" not in reading("beds 7 8 and 9 all at 910 at 1900")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("seven a line is at nine twenty at seven pm", "mark bed=7A at=19:00 level_ml=920"),
        ("four b round about two hundred at nineteen hundred", "mark bed=4B at=19:00 level_ml=200 about"),
        ("four b i've drawn my line at six sixty at seven", "mark bed=4B at=19:00 level_ml=660"),
        ("four b no leak tidaling nicely", "checked bed=4B air_leak=none tidaling=True"),
    ],
)
def test_a_dictated_bed_with_a_letter_has_its_line_and_its_check(text: str, read: str) -> None:
    assert reading(text, beds=PAIRS, channel="voice") == read
