"""Corrections that are doubted, asked about or broken off, and remarks that only look like them."""

from __future__ import annotations

import pytest

from tests.nlu.saying import reading


@pytest.mark.parametrize(
    "text",
    [
        "bed 5 1800 should be 430 not 340, not sure though",
        "bed 5 1800 should be 430, I think",
        "not convinced bed 22 is really 1270",
        "doubt bed 22 is really 640",
        "maybe delete bed 5 1800 mark",
        "bed 5 1800 should be 430 not 340 lol jk",
        "night nurse says bed 5 1800 should be 430 not 340",
        "the bed that was 6 before we renumbered, her box is 510",
        "bed 7 mark 500 at 1830. Correction... hang on someone's coding",
        "bed 17 630 at 1800, that was mrs green",
        "bed 17 630 at 1800, that was next door's",
    ],
)
def test_a_doubt_of_a_correction_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    "text",
    [
        "should I delete bed 5's 1800 mark?",
        "should i delete the 1800 mark on bed 5",
        "would you like me to delete bed 5 1800?",
        "shall we change bed 8 1800 to 440?",
        "should bed 8 1800 be 440 not 404?",
        "who deleted my 1800 mark on bed 5",
    ],
)
def test_a_correction_or_a_withdrawal_that_is_only_asked_about_is_not_made(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("can you delete my 1800 on bed 8?", "withdrawn bed=8 at=18:00"),
        ("could you change the 1800 on bed 8 to 440?", "corrected bed=8 at=18:00 level_ml=440"),
        ("should be 440 for bed 8", "corrected bed=8 level_ml=440"),
        (
            "bed 5 1800 should be 430 not 340, pretty sure I misread it",
            "corrected bed=5 at=18:00 was_ml=340 level_ml=430",
        ),
        ("correct bed 5 1800 to 430 when you get a sec", "corrected bed=5 at=18:00 level_ml=430"),
        ("340 for bed 4 belongs to bed 5", "corrected bed=4 was_ml=340 to_bed=5"),
    ],
)
def test_what_is_bidden_or_explained_is_put_right(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 17 box changed at 1815, old one 1870, that was the last one in stock",
            "exchanged bed=17 at=18:15 final_ml=1870",
        ),
        ("bed 17 630 at 1800 that was my last one", "mark bed=17 at=18:00 level_ml=630"),
        ("that was bed 6", "corrected to_bed=6"),
        ("bed 5 level 630 at 1800, and yes that is my handwriting", "mark bed=5 at=18:00 level_ml=630"),
        ("bed 5 640 at 1800, sure of it", "mark bed=5 at=18:00 level_ml=640"),
        ("bed 5 mark 640 at 1800, confirmed", "mark bed=5 at=18:00 level_ml=640"),
        ("yes bed 5 640", "answered bed=5 answer=yes level_ml=640"),
    ],
)
def test_a_remark_behind_a_line_puts_nothing_right_and_answers_nothing(text: str, read: str) -> None:
    assert reading(text) == read


def test_room_left_is_asked_and_no_sum() -> None:
    assert reading("how much room's left in the canister bed seven") == "asked bed=7 topic=capacity"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("for bed 6 i gave 910 at 6, its 901", "corrected bed=6 at=18:00 was_ml=910 level_ml=901"),
        ("gave you 910 for bed 6 at 1800, it's 901", "corrected bed=6 at=18:00 was_ml=910 level_ml=901"),
        ("for bed 6 i told you 910, it's 901", "corrected bed=6 was_ml=910 level_ml=901"),
        ("ITS THE RIGHT SIDE bed 16 not left", "corrected bed=16 tube=left to_tube=right"),
        ("make that bed ten not nine", "corrected bed=9 to_bed=10"),
        ("sorry, bed 6 not 880, 830", "corrected bed=6 was_ml=880 level_ml=830"),
        ("bed 6, not 880 sorry, 830", "corrected bed=6 was_ml=880 level_ml=830"),
        (
            "correct bed 14 1800 from 640 to 540, I was off by a hundred",
            "corrected bed=14 at=18:00 was_ml=640 level_ml=540",
        ),
        (
            "bed 14 1800 should be 540 not 640, out by 100",
            "corrected bed=14 at=18:00 was_ml=640 level_ml=540",
        ),
        (
            "We decided together that 20 was misread, at 1600 it was 1020 rather than 1200.",
            "corrected bed=20 at=16:00 was_ml=1200 level_ml=1020",
        ),
        ("12 changed mind ignore my 1810 reading", "withdrawn bed=12 at=18:10"),
        ("forget bed 5's 1800 line, i misread it", "withdrawn bed=5 at=18:00"),
        (
            "bed 5 1800 should be 430 not 340, not sure how I missed it",
            "corrected bed=5 at=18:00 was_ml=340 level_ml=430",
        ),
        (
            "bed 5 1800 should be 430. is bed 6 due?",
            "corrected bed=5 at=18:00 level_ml=430; asked bed=6 topic=due",
        ),
    ],
)
def test_a_line_is_put_right_in_a_nurses_words(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 6 i gave him 500 of saline at 1800, its 640",
        "bed 16 right tube out not left",
        "bed 16 right clamped not left",
        "make that 10 not 9",
        "19 chg - 1890",
        "it's the right side bed 16",
        "oh no I deleted the 1800 on 11",
        "think I should delete the 1800 on 11",
        "I find it hard to accept 22 is really 1270",
        "bed 13 1800 reading was taken at 1730",
        "bed 5 630 at 1800, she was actually sitting out",
        "bed 5 630 at 1800, need to correct my watch",
        "how do i delete bed 8's 1800 mark?",
        "bed 8 level with the bedside table, drain I mean, it should be lower",
    ],
)
def test_what_only_looks_like_a_correction_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("chart me 12 for this shift pls", "asked bed=12 topic=chart window=shift"),
        ("read me the handover for bed nine", "asked bed=9 topic=handoff"),
        ("Could you remind me which beds still need a line before seven?", "asked topic=due"),
    ],
)
def test_a_question_in_a_nurses_words(text: str, read: str) -> None:
    assert reading(text) == read


WARD = (*(str(n) for n in range(1, 31)), "12A", "CT4")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed CT for mark eight hundred at eighteen ten", "mark bed=CT4 at=18:10 level_ml=800"),
        ("Bed CT for, line 800 at 18:10.", "mark bed=CT4 at=18:10 level_ml=800"),
        ("Bed 12 A, Mark 360 at 18:00.", "mark bed=12A at=18:00 level_ml=360"),
        ("seen CT four", "acknowledged bed=CT4"),
        ("bed twelve a mark three sixty at eighteen hundred", "ask bed"),
        ("bed twelve mark three sixty at eighteen hundred", "mark bed=12 at=18:00 level_ml=360"),
        (
            "change the eighteen twenty line on bed twenty nine to five seventeen",
            "corrected bed=29 at=18:20 level_ml=517",
        ),
        (
            "bed nine fluid's serosanguinous she's swinging",
            "checked bed=9 tidaling=True fluid=serosanguineous",
        ),
    ],
)
def test_a_dictated_bed_of_letters_and_digits(text: str, read: str) -> None:
    assert reading(text, WARD, "voice") == read


@pytest.mark.parametrize("text", ["bed 12 a mark 340 at 1800", "bed 4 for CT at six pm"])
def test_a_typed_letter_or_a_scan_is_no_label_for_sure(text: str) -> None:
    assert not reading(text, WARD).startswith("mark")
