"""A line told in fields of any order, what happened cut short, and lists that close a shift."""

from __future__ import annotations

import pytest

from .saying import LETTERED, reading

LINE = "mark bed=9 at=19:00 level_ml=450"


@pytest.mark.parametrize(
    "text",
    [
        "450 mL - 9 - 1900",
        "lvl 450 - #9 - 1900",
        "450/9/1900",
        "1900 | bed 9 | 450",
        "@1900 / B9 / 450cc",
        "9 \u00b7 450 \u00b7 1900",
        "9 / 19:00 / 450 mL",
        "rm 9 - 450 - 19.00",
    ],
)
def test_bed_line_and_time_stand_in_any_order(text: str) -> None:
    assert reading(text) == LINE


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("1855 bed 2 1,340", "mark bed=2 at=18:55 level_ml=1340"),
        ("b2 1855 1,340", "mark bed=2 at=18:55 level_ml=1340"),
        (
            "9 / seal 2 / 1,075 mL / 19:00",
            "mark bed=9 at=19:00 level_ml=1075; checked bed=9 at=19:00 seal_cm=2",
        ),
        ("19:00 10 / med / 180", "mark bed=10 tube=mediastinal at=19:00 level_ml=180"),
        ("9, med, 450, 1900", "mark bed=9 tube=mediastinal at=19:00 level_ml=450"),
        ("9 - 450 - med - 1900", "mark bed=9 tube=mediastinal at=19:00 level_ml=450"),
        ("9; L pl; 450cc; 19:00", "mark bed=9 tube=left pleural at=19:00 level_ml=450"),
        (
            "B10 / 18.55 / 1075mL / -20cmH2O / wall 95mmHg",
            "mark bed=10 at=18:55 level_ml=1075; checked bed=10 at=18:55 suction_cmh2o=20 wall_mmhg=95",
        ),
        ("9 -20 cmH2O", "checked bed=9 suction_cmh2o=20"),
        ("9 serous -20", "checked bed=9 suction_cmh2o=20 fluid=serous"),
        ("9 AL grade 3 cont", "checked bed=9 air_leak=continuous leak_grade=3"),
        ("9 no AL cont obs", "ask kind"),
        ("9 - 1855 - 1050", "ask level_ml"),
        ("9/1750/1900", "ask level_ml"),
        ("9 450 1900 -20", "ask level_ml"),
        ("9 - leak - 450cc - 1900", "ask kind; ask kind"),
        ("9 450 1900, pain med given", LINE),
    ],
)
def test_what_a_field_says_shows_by_itself(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("#14 sxn -20, +tidal, \u00d8 leak", "checked bed=14 suction_cmh2o=20 air_leak=none tidaling=True"),
        ("9 450 1900 \u00d8 AL", f"{LINE}; checked bed=9 at=19:00 air_leak=none"),
        ("9 \u00d8 out", "drained bed=9 volume_ml=0"),
    ],
)
def test_a_nought_struck_through_says_that_there_is_none(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("15 exch 1855 old 1760", "exchanged bed=15 at=18:55 final_ml=1760"),
        ("15 exch'd 1855 old 1760", "exchanged bed=15 at=18:55 final_ml=1760"),
        ("chg'd unit b15 1855 final 1760", "exchanged bed=15 at=18:55 final_ml=1760"),
        ("15 exch 1855, OLD 1760, NEW opened at 20", "exchanged bed=15 at=18:55 final_ml=1760 opening_ml=20"),
        ("12 disconn @ Y 1845, reconn'd, no SOB", "incident bed=12 at=18:45 what=disconnected"),
        ("12 unclamp'd 1845", "incident bed=12 at=18:45 what=unclamped"),
        ("12 dislod 1845", "ask level_ml"),
        ("del bed 9 1800 mark", "withdrawn bed=9 at=18:00"),
        ("corr 12 1800 = 310", "corrected bed=12 at=18:00 level_ml=310"),
        ("corr 12 1730 = 310", "corrected bed=12 at=17:30 level_ml=310"),
        ("9 cool mist 450 1900", "ask level_ml"),
    ],
)
def test_what_happened_is_told_with_its_first_letters(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "head",
    ["eos 1900:", "eos lines 1900 -", "closing 1900:", "1900 closing lines", "end of shift 1900:"],
)
def test_a_heading_that_closes_the_shift_is_said_of_each_row(head: str) -> None:
    lines = "mark bed=2 at=19:00 level_ml=110 closing; mark bed=5 at=19:00 level_ml=130 closing"
    assert reading(f"{head} 2 110 / 5 130") == lines


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "final line nights: 2 110, 5 130",
            "mark bed=2 level_ml=110 closing; mark bed=5 level_ml=130 closing",
        ),
        ("days closing: 2 110, 5 130", "mark bed=2 level_ml=110 closing; mark bed=5 level_ml=130 closing"),
        ("not closing: 2 110, 5 130", "ask level_ml"),
        ("last line days: 2 110, 5 130", "ask level_ml"),
        ("1900 - 2 60 - 5 130", "mark bed=2 at=19:00 level_ml=60; mark bed=5 at=19:00 level_ml=130"),
    ],
)
def test_a_shift_named_before_a_list_closes_it(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "19:00 \u2014 4: 205; 5: 340; 41: 100",
            "mark bed=4 at=19:00 level_ml=205; mark bed=5 at=19:00 level_ml=340; ask bed",
        ),
        ("4: 205; 41: 100; 5: 340", "mark bed=4 level_ml=205; mark bed=5 level_ml=340; ask bed"),
        ("4: 205; 5: 340; 18:50", "mark bed=4 at=18:50 level_ml=205; mark bed=5 at=18:50 level_ml=340"),
        (
            "4: 205, 5: 340, seal: 2",
            "mark bed=4 level_ml=205; mark bed=5 level_ml=340; checked bed=5 seal_cm=2",
        ),
        ("4 205, 5 340, 41 100 all 1900", "ask level_ml"),
    ],
)
def test_only_the_row_of_no_bed_is_asked(text: str, read: str) -> None:
    assert reading(text) == read


def test_the_tubes_of_a_lettered_bed_have_short_names() -> None:
    assert reading("CT1 med 210 L pl 85 R pl 30 @ 1900", LETTERED) == (
        "mark bed=CT1 tube=mediastinal at=19:00 level_ml=210; "
        "mark bed=CT1 tube=left pleural at=19:00 level_ml=85; "
        "mark bed=CT1 tube=right pleural at=19:00 level_ml=30"
    )


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("18 box changed 1850 / 1760 old", "exchanged bed=18 at=18:50 final_ml=1760"),
        ("18 exch; 1760 old; 1850", "exchanged bed=18 at=18:50 final_ml=1760"),
        ("18 new R CT 1850 init 350", "placed bed=18 tube=right at=18:50 level_ml=350"),
        ("18 bk fr OR 1850", "back bed=18 at=18:50"),
        ("18 tx to 20 1850", "moved bed=18 at=18:50 to_bed=20"),
        ("18 tx to SDU 1850", "left bed=18 at=18:50"),
        ("18 CT out - 320 final - 1850", "ask level_ml"),
        ("18 450 1900 AL", "mark bed=18 at=19:00 level_ml=450; checked bed=18 at=19:00 air_leak=present"),
        ("18 AL 2", "checked bed=18 air_leak=present leak_grade=2"),
        ("7 not 8 320 1900", "ask at"),
        ("bed 7 not bed 8 320 1900", "ask at"),
        ("7 not 8, 320 at 1900", "corrected bed=8 at=19:00 level_ml=320 to_bed=7"),
    ],
)
def test_what_happened_has_its_fields_in_any_order(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_place_is_no_part_of_a_bed_behind_it() -> None:
    beds = (*LETTERED, "4", "CT4")
    assert reading("to x-ray CT4 at 1850", beds) == "away bed=CT4 at=18:50"
    assert reading("to theatre CT4 - 1850", beds) == "away bed=CT4 at=18:50"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("6 d/c R chest tube 1830, 720 final", "removed bed=6 tube=right at=18:30 level_ml=720"),
        ("6: dc ICD 1830 final 720", "removed bed=6 at=18:30 level_ml=720"),
        ("6 d/c tube", "ask kind"),
        ("6 for d/c tube 1830", "ask level_ml"),
        ("6 ok to d/c tube", "ask kind"),
        ("6 d/c home 1830", "left bed=6 at=18:30"),
        ("6 tube out accidentally 1830", "incident bed=6 at=18:30 what=dislodged"),
        ("6 box changed 1830 1980 out of old", "exchanged bed=6 at=18:30 final_ml=1980"),
        ("6 disconnected 1830, reconnected 1831", "incident bed=6 at=18:30 what=disconnected"),
        ("6 tipped 1830 upright 1831", "incident bed=6 at=18:30 what=tipped"),
        ("6 disconnected, reconnected 1831", "ask kind"),
        (
            "6 clamped 1830 unclamped 1840",
            "incident bed=6 at=18:30 what=clamped; incident bed=6 at=18:40 what=unclamped",
        ),
        ("6 -> HDU 1830", "left bed=6 at=18:30"),
        ("6 trf HDU 1830", "left bed=6 at=18:30"),
        ("6 MO wants sxn 10", "ordered bed=6 suction_cmh2o=10"),
        ("6 CABG x3, 81kg", "described bed=6 reason=cardiac weight_kg=81"),
    ],
)
def test_what_was_taken_out_put_right_or_ordered_is_told_in_a_word(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "5 L=780 R=90 1845",
            "mark bed=5 tube=left at=18:45 level_ml=780; mark bed=5 tube=right at=18:45 level_ml=90",
        ),
        ("5 L: 780 1845", "mark bed=5 tube=left at=18:45 level_ml=780"),
        ("5 drained 2 L: 2000", "ask volume_ml"),
        (
            "5 med 780 pl 90 1845",
            "mark bed=5 tube=mediastinal at=18:45 level_ml=780; mark bed=5 tube=pleural at=18:45 level_ml=90",
        ),
    ],
)
def test_a_tube_is_named_by_its_letters(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("19:00: 12 340", "mark bed=12 at=19:00 level_ml=340"),
        ("19:00: 12 340, 14 90", "mark bed=12 at=19:00 level_ml=340; mark bed=14 at=19:00 level_ml=90"),
        ("19:00:30 12 340", "mark bed=12 at=19:00 level_ml=340"),
        ("rds 1900: 12-340 / 14-90", "mark bed=12 at=19:00 level_ml=340; mark bed=14 at=19:00 level_ml=90"),
    ],
)
def test_behind_a_colon_of_its_own_stand_no_seconds(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_time_and_its_colon_leave_a_lettered_bed_whole() -> None:
    lines = "mark bed=CT1 at=19:00 level_ml=740; mark bed=CT2 at=19:00 level_ml=90"
    assert reading("lines 19:00: CT1 740 | CT2 90", LETTERED) == lines
    assert reading("2B-260 1900", LETTERED) == "mark bed=2B at=19:00 level_ml=260"
    assert reading("2B -260 1900", LETTERED) == "ask level_ml"
