"""A word that nobody taught the reader may say of what a number is: then the number is asked.

The words are made up or of other things, so that no list in the reader can hold them.
"""

from __future__ import annotations

import pytest

import nlu
from nlu.statements import Drained, Exchanged, Mark, Placed, Removed

from .saying import ARRIVED, BEDS, CHANNELS, SHIFTS, Channel, reading

WORDS = ("florp", "tacro", "humidity", "kettle", "jigsaw", "trough")
NUMBERS = (85, 340)
FORMS = (
    "bed 4 {x} level {n}",
    "bed 4 {x} level is {n}",
    "bed 4 {x} level {n} at 1830",
    "{x} level {n} bed 4",
    "bed 4 {x} {n}",
    "bed 4 {x} at {n}",
    "bed 4 {x} {n} ml",
    "bed 4 {x}: {n}",
    "bed 4 has {x}, {n}",
    "bed 4 has {x}, {n} of them",
    "bed 4 has {x} at home, {n}",
    "bed 4 has {n} {x}",
    "bed 4 gone to {x} {n} at 1830",
    "bed 4 back from {x} {n}",
    "{n} {x} in bed 4",
    "{n} of {x} bed 4",
    "bed 4 {x} {n} out",
    "bed 4 {x} mark {n}",
    "bed 4 {x} reading {n}",
    "bed 4 {x} canister {n}",
    "bed 4 {x} drained {n}",
    "bed 4 drained {n} {x}",
    "bed 4 no leak. {x} level {n}",
    "bed 4 no leak, {n} {x}",
    "bed 4 tube out 1830, final {x} {n}",
    "bed 4 changed canister 1830, old {x} {n}",
    "bed 4 suction on, {x} at {n}",
    "bed 4 swinging, {x} level {n}",
    "bed 4 drained 30 since last. {x} level {n}",
    "bed 4 clamped at 1830. {n} {x}",
    "new chest tube bed 4 at 1830, {x} {n}",
    "bed 4 moved to 5, {x} {n}",
    "bed 4 {x} output {n}",
    "bed 4 {x} tube {n}",
)
UNSTOPPED = ("bed 4 {x} mark {n}",)
"""Dictated without its stop, "bed 4 had a colon resection mark 340" is a line behind a remark."""
AMOUNTS = (Mark, Drained, Exchanged, Placed, Removed)


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize("form", FORMS)
def test_a_number_beside_an_unknown_word_is_no_line(form: str, channel: Channel) -> None:
    if channel == "voice" and form in UNSTOPPED:
        return
    for word in WORDS:
        for number in NUMBERS:
            text = form.format(x=word, n=number)
            parsed = nlu.parse(text, arrived=ARRIVED, beds=BEDS, shifts=SHIFTS, channel=channel)
            told = [s for s in parsed.statements if isinstance(s, AMOUNTS) and str(number) in str(s)]
            assert not told, text


@pytest.mark.parametrize(
    "form",
    [
        "the {x} 4, 340 ml",
        "{x} number 4 is at 340",
        "line on {x} 4 is 340",
        "mark {x} 4 at 340",
    ],
)
def test_the_number_of_an_unknown_thing_is_no_bed(form: str) -> None:
    for word in WORDS:
        parsed = nlu.parse(form.format(x=word), arrived=ARRIVED, beds=BEDS, shifts=SHIFTS)
        assert not parsed.statements, word


@pytest.mark.parametrize(
    "form",
    [
        "bed 4 340, {x} started at 1830",
        "bed 4 340, {x} left at 1830",
        "bed 4 340, {x} out at 1830",
        "bed 4 340, new {x} at 1830",
        "bed 4 line 340 ml, {x} started at 1830",
    ],
)
def test_when_an_unknown_thing_was_is_not_when_the_line_was(form: str) -> None:
    for word in WORDS:
        text = form.format(x=word)
        parsed = nlu.parse(text, arrived=ARRIVED, beds=BEDS, shifts=SHIFTS)
        assert not any(s.at for s in parsed.statements), text


@pytest.mark.parametrize("form", ["bed 4 340, {x} in bed 7 14", "bed 4 {x} for bed 7, 340 at 1830"])
def test_a_bed_that_an_unknown_thing_is_of_has_no_line(form: str) -> None:
    for word in WORDS:
        parsed = nlu.parse(form.format(x=word), arrived=ARRIVED, beds=BEDS, shifts=SHIFTS)
        assert not any(s.bed == "7" for s in parsed.statements), word


@pytest.mark.parametrize(
    "text",
    [
        "the blanket is bloody bed 12",
        "clamped the chair in bed 12",
        "wheelchair tipped over bed 12",
        "bed 12 new 2000 ml canister",
        "bed 12 canister is 2000 ml size",
        "bed 12 3 bubbles",
        "bed 12 right drained 35, left nothing",
        "bed 12 right 340 at 1830, left dry",
        "pt 14 in bed 12",
        "Bed 14 drained 0 since last mark. tacro level 9",
        "bed 14 vanc level 14",
        "bed 14 noise level 14",
        "bed 12 turned 85",
        "bed 12 340 at 1800, 60 more",
        "bed 12 340, 60 more",
        "bed 12 340 at 1800, 280 left",
        "bed 14 k level 4",
        "bed 14 gent level is 2",
        "bed 12 has grandchildren, 14 of them",
        "bed 12's PICC is 42 cm, 2 out",
        "bed 12 gone to theatre 2 at 1830",
        "bed 12 no leak, 415 this am",
    ],
)
def test_what_may_be_of_another_thing_is_asked(text: str) -> None:
    assert "ask " in reading(text), text


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 rechecked level 340 at 1830", "mark bed=12 at=18:30 level_ml=340"),
        ("bed 12 current level 340", "mark bed=12 level_ml=340"),
        ("bed 12 drain level 340", "mark bed=12 level_ml=340"),
        ("bed 12 right pleural level 340", "mark bed=12 tube=right pleural level_ml=340"),
        ("the trolley knocked over 12's drain", "incident bed=12 what=tipped"),
        ("bed 12 tipped by the chair", "incident bed=12 what=tipped"),
        ("bed 12 pillow kinked it", "incident bed=12 what=kinked"),
        ("bed 12 comfy, 340 at 1830", "mark bed=12 at=18:30 level_ml=340"),
        ("bed 12 has visitors, 340 at 1830", "mark bed=12 at=18:30 level_ml=340"),
        ("bed 12 drained 40 overnight", "drained bed=12 volume_ml=40"),
    ],
)
def test_a_word_that_says_which_or_when_puts_nothing_in_doubt(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 suction 20, was 10 this am", "checked bed=12 suction_cmh2o=20"),
        ("suction 20 on bed 12, was 10 earlier", "checked bed=12 suction_cmh2o=20"),
        ("leak grade 3 on bed 12, was 2 earlier", "checked bed=12 air_leak=present leak_grade=3"),
        ("wall 90 on bed 12, was 80", "checked bed=12 wall_mmhg=90"),
        ("bed 12 seal 2 up from 1", "checked bed=12 seal_cm=2"),
        ("bed 12 suction 20 (was 10)", "checked bed=12 suction_cmh2o=20"),
        ("bed 12 leak grade 3, was 1 this am", "checked bed=12 air_leak=present leak_grade=3"),
        ("bed 12 seal 2 cm, was 3 this am", "checked bed=12 seal_cm=2"),
        ("bed 12 leak 2, 3 earlier", "checked bed=12 air_leak=present leak_grade=2"),
        ("bed 12 leak 2/7, 3/7 last night", "checked bed=12 air_leak=present leak_grade=2"),
    ],
)
def test_what_a_check_was_before_is_no_time_of_it(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 12 seal 2 cm, 3 this am",
        "bed 12 seal 2, 415 yesterday",
        "bed 12 wall 90, 80 earlier",
        "bed 12 suction 20, was 415 this am",
    ],
)
def test_what_may_have_been_a_line_then_is_asked(text: str) -> None:
    assert "ask " in reading(text), text


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("Wall suction in bed 12 only shows 60", "checked bed=12 wall_mmhg=60"),
        ("water seal in bed 12 shows 2", "checked bed=12 seal_cm=2"),
        ("ordered suction 10 for bed 11. same note orders furosemide", "ordered bed=11 suction_cmh2o=10"),
        ("dr says suction down to 10 on bed 4", "ordered bed=4 suction_cmh2o=10"),
        (
            "bed 10 off to CT at 1810, line before leaving 735",
            "away bed=10 at=18:10; mark bed=10 at=18:10 level_ml=735",
        ),
        (
            "Bed 5 closing line 1190 at 1700, and 1215 at 1800",
            "mark bed=5 at=17:00 level_ml=1190 closing; mark bed=5 at=18:00 level_ml=1215",
        ),
    ],
)
def test_a_value_belongs_to_the_check_that_was_said(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 11 weight off by 4 kg",
        "bed 11 fluid positive 3 kg",
        "12 gained 2 kg",
        "bed 11 340 at 1830, wt gain of 2 kg",
    ],
)
def test_how_much_more_somebody_weighs_is_no_weight(text: str) -> None:
    assert "weight" not in reading(text)


@pytest.mark.parametrize("introduced", ["backfilling", "catching up", "notes for", "from my scrap of paper"])
def test_a_list_of_pairs_may_be_introduced(introduced: str) -> None:
    read = reading(f"{introduced} bed 12: 17:00 1185, 18:00 1190, 19:00 1275")
    assert read == "; ".join(
        f"mark bed=12 at={hour}:00 level_ml={level}" for hour, level in ((17, 1185), (18, 1190), (19, 1275))
    )


@pytest.mark.parametrize("word", [*WORDS, "urine", "sbp", "glucose", "not"])
def test_what_a_list_of_pairs_may_be_of_is_asked(word: str) -> None:
    assert "mark" not in reading(f"bed 12 {word}: 1700 185, 1800 190").replace("level_ml", "")
