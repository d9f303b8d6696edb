"""A tube by its letter or place right behind the bed, one that was taken out, and beds that were mixed up."""

from __future__ import annotations

import pytest

from .saying import LETTERED, reading

READ = (
    ("6 A pulled 1810 final 520", "removed bed=6 tube=A at=18:10 level_ml=520"),
    ("6 A stays in, 410 at 1830", "mark bed=6 tube=A at=18:30 level_ml=410"),
    ("bed 6 B clamped 1810", "incident bed=6 tube=B at=18:10 what=clamped"),
    ("6 tube B out at 1820, last level 290", "removed bed=6 tube=B at=18:20 level_ml=290"),
    (
        "23 right was taken out at 1800 by surgery, had 80 in it",
        "removed bed=23 tube=right at=18:00 level_ml=80",
    ),
    ("rate on 12 med?", "asked bed=12 tube=mediastinal topic=rate"),
    ("scratch that, 12 med", "withdrawn bed=12 tube=mediastinal"),
    ("4 opened clamp at 1800", "incident bed=4 at=18:00 what=unclamped"),
    ("that 1800 line of 190 belongs to bed 2, not 3", "corrected bed=3 at=18:00 was_ml=190 to_bed=2"),
    ("yes it is right", "answered answer=yes"),
    ("9 left the ward for CT at 1810", "away bed=9 at=18:10"),
    ("9 left the ward at 1810", "left bed=9 at=18:10"),
    ("8 left 75 out", "drained bed=8 tube=left volume_ml=75"),
)
ASKED = (
    "9 right was taken out at 1800 to the garden",
    "14 back from theatre 1825, new canister started at 0",
    "bed 6, I meant bed 16, is 420 at 1900",
    "dont log the last line on 9",
    "bed 8 A out too, 18:10, 575 in the box",
    "8 left out, 75",
)


@pytest.mark.parametrize(("text", "read"), READ)
def test_it_is_read(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("text", ASKED)
def test_it_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


CT_BEDS = (
    (
        "CT2 end of shift A 340 B 215",
        "mark bed=CT2 tube=A level_ml=340 closing; mark bed=CT2 tube=B level_ml=215 closing",
    ),
    ("CT2 B tidaling, serosang", "checked bed=CT2 tube=B tidaling=True fluid=serosanguineous"),
    ("CT2 A 468 at 1800", "mark bed=CT2 tube=A at=18:00 level_ml=468"),
    ("CT2 med was kinked under him", "incident bed=CT2 tube=mediastinal what=kinked"),
    (
        "CT3 closing: med 440 / right pleural 58",
        "mark bed=CT3 tube=mediastinal level_ml=440 closing; "
        "mark bed=CT3 tube=right pleural level_ml=58 closing",
    ),
)


@pytest.mark.parametrize(("text", "read"), CT_BEDS)
def test_so_it_is_on_a_ward_whose_beds_have_letters_of_their_own(text: str, read: str) -> None:
    assert reading(text, LETTERED) == read


@pytest.mark.parametrize("text", ["2 A 20 B 30", "CT2 med given 30"])
def test_a_letter_of_a_bed_and_a_medicine_are_asked(text: str) -> None:
    assert "ask " in reading(text, LETTERED)


SPOKEN = (
    (
        "okay lines for nineteen hundred bed four is six twenty bed five is two eighty",
        "mark bed=4 at=19:00 level_ml=620; mark bed=5 at=19:00 level_ml=280",
    ),
    ("bed two is already at six eighty at nineteen hundred", "mark bed=2 at=19:00 level_ml=680"),
    ("bed eighteen water's at two", "checked bed=18 seal_cm=2"),
    ("bed seven mark zero mils at nineteen hundred", "mark bed=7 at=19:00 level_ml=0"),
    ("levels for bed four six twenty at nineteen hundred", "mark bed=4 at=19:00 level_ml=620"),
)


@pytest.mark.parametrize(("text", "read"), SPOKEN)
def test_so_are_dictated_ones(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


def test_an_article_is_no_tube() -> None:
    assert "tube" not in reading("6 A bit bloody, 410 at 1830")
    assert "tube" not in reading("6 a bit bloody, 410 at 1830")
