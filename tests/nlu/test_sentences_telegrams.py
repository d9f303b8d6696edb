"""Short messages without a word too many: signs for words, where a patient went, what was changed, vitals."""

from __future__ import annotations

import pytest

from .saying import LETTERED, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("11 -> CT", "away bed=11"),
        ("11 --> OR at 1850", "away bed=11 at=18:50"),
        ("11 \u2192 theatre", "away bed=11"),
        ("11 340 at 1845 -> MRI", "mark bed=11 at=18:45 level_ml=340; away bed=11 at=18:45"),
        ("8 to OT", "away bed=8"),
        ("11 -> 12", "moved bed=11 to_bed=12"),
        ("11 440 -> 480", "ask level_ml"),
        ("8 referred to OT", "ask kind"),
    ],
)
def test_an_arrow_behind_a_bed_leads_out(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_lettered_bed_goes_to_theatre_too() -> None:
    assert reading("CT2 to OT", LETTERED) == "away bed=CT2"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("14 changed @1840, final 1345", "exchanged bed=14 at=18:40 final_ml=1345"),
        ("bed 14 swapped 1840, old one 1345", "exchanged bed=14 at=18:40 final_ml=1345"),
        ("14 changed 1840 final 1345", "exchanged bed=14 at=18:40 final_ml=1345"),
        ("14 changed @1840", "ask level_ml"),
        ("14 changed to 15", "ask bed"),
    ],
)
def test_what_was_changed_beside_a_final_level_is_the_canister(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "remark",
    [
        "O2 sat 96%",
        "o2 sats 96 on 2L",
        "svo2 64",
        "svo2 64 ci 2.4",
        "obs stable news 1",
        "news2 3",
        "dressing changed cdi",
        "dressing cdi",
        "dsg intact",
    ],
)
def test_vitals_and_the_dressing_behind_a_line_leave_it_whole(remark: str) -> None:
    assert reading(f"6 700 at 1900 {remark}") == "mark bed=6 at=19:00 level_ml=700"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("8 and 9 both 340 at 1900", "mark bed=8 at=19:00 level_ml=340; mark bed=9 at=19:00 level_ml=340"),
        ("8 & 9 340 each @1900", "mark bed=8 at=19:00 level_ml=340; mark bed=9 at=19:00 level_ml=340"),
        (
            "8, 9 and 10 all 340 at 1900",
            "mark bed=8 at=19:00 level_ml=340; mark bed=9 at=19:00 level_ml=340; "
            "mark bed=10 at=19:00 level_ml=340",
        ),
        ("8 and 9 all 340 at 1900", "ask level_ml"),
        ("8 and 9 340 at 1900", "ask level_ml"),
        ("8 and 9 both 10", "ask bed; ask bed"),
        ("8 and 9 both suction 20", "checked bed=8 suction_cmh2o=20; checked bed=9 suction_cmh2o=20"),
    ],
)
def test_a_line_of_both_is_of_each(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("beds?", "asked topic=beds"),
        ("delete 0700 mark 5", "withdrawn bed=5 at=07:00"),
        ("delete 0700 mark 500", "ask kind"),
        ("bed 2 clamped 1830 per SpR", "incident bed=2 at=18:30 what=clamped"),
    ],
)
def test_a_command_needs_few_words(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "my lines for 1900: bed 1 at 505, bed 2 at 1115",
            "mark bed=1 at=19:00 level_ml=505; mark bed=2 at=19:00 level_ml=1115",
        ),
        (
            "3 is at 1230  4 is at 88 all @1900",
            "mark bed=3 at=19:00 level_ml=1230; mark bed=4 at=19:00 level_ml=88",
        ),
        (
            "3 is at 1930 and 4 is at 88 1900 lines",
            "mark bed=3 at=19:00 level_ml=1930; mark bed=4 at=19:00 level_ml=88",
        ),
    ],
)
def test_no_bed_has_the_line_of_the_bed_before_it(text: str, read: str) -> None:
    assert reading(text) == read
