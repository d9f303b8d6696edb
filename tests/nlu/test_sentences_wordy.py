"""Lines and events told in whole sentences: when they were read, what was done, what is told around them."""

from __future__ import annotations

import pytest

from tests.nlu.saying import reading

LEFT_AND_RIGHT = "mark bed=4 tube=left at=18:30 level_ml=120; mark bed=4 tube=right at=18:30 level_ml=455"


@pytest.mark.parametrize(
    "text",
    [
        "The lady in bed 7 has 880 in her canister, I read it at 1845",
        "bed 7 880, I looked at it at 1845",
        "Could you log 880 for bed 7, I took it at 1845",
        "bed 7 was 880, I checked it at 1845",
        "bed 7 is at 880, which I read at 1845",
        "bed 7 is at 880 and I did it at 1845",
        "bed 7 is at 880, that was at 1845",
        "bed 7 is at 880, that's from 1845",
        "I went in to bed 7 at 1845 and the box was showing 880",
        "I got to bed 7 at 1845 and it was at 880",
        "I looked in on bed 7 at 1845, the level is 880",
        "Bed 7's reading for 1845 comes to 880",
        "the line for bed 7 came to 880 at 1845",
        "Bed 7 hasn't changed much, 880 at 1845",
        "Bed 7 has barely moved all day, the line is at 880 at 1845",
        "bed 7 is at 880 at 1845, he walked to the window and back",
    ],
)
def test_when_a_line_was_read_is_told_behind_it_or_before(text: str) -> None:
    assert reading(text) == "mark bed=7 at=18:45 level_ml=880"


@pytest.mark.parametrize(
    "text",
    [
        "bed 7 mark 1850, read at 1900",  # which is the line?
        "bed 7 is at 880, it was at 1045",
        "bed 7 suction 20, read at 1830",
        "the physio went in to bed 7 at 1830 and the line was 640",
        "bed 7 comes to 880 at 1845",
        "bed 7 hasn't changed much",
    ],
)
def test_what_may_be_another_line_an_amount_or_when_another_came_is_asked(text: str) -> None:
    assert "ask" in reading(text)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("Bed 4: left 120, right 455, both read at 1830", LEFT_AND_RIGHT),
        ("bed 4 has two drains, left is 120 and right is 455 at 1830", LEFT_AND_RIGHT),
        ("The man in bed 4 has two of them, left is 120 and right is 455 at 1830", LEFT_AND_RIGHT),
        ("Bed 4 has one on each side: left 120, right 455, read at 1830", LEFT_AND_RIGHT),
        (
            "bed 4 has a right apical and a right basal drain, apical is 95 and basal is 340, at 1830",
            "mark bed=4 tube=right apical at=18:30 level_ml=95; "
            "mark bed=4 tube=right basal at=18:30 level_ml=340",
        ),
    ],
)
def test_how_many_tubes_a_bed_has_is_told_before_their_lines(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 4 has three drains, left is 120 and right is 455 at 1830",
        "bed 4 has two drains, left is 120 at 1830",
        "bed 4 has a right apical and a basal drain, apical is 95 and basal is 340, at 1830",
    ],
)
def test_a_tube_that_is_counted_and_has_no_line_is_asked(text: str) -> None:
    assert "ask" in reading(text)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "Someone clamped bed 10 at 1755 and I unclamped it at 1810",
            "incident bed=10 at=17:55 what=clamped; incident bed=10 at=18:10 what=unclamped",
        ),
        (
            "bed 10's suction was off at 1755 and back on at 1810",
            "incident bed=10 at=17:55 what=suction_off; incident bed=10 at=18:10 what=suction_on",
        ),
        (
            "bed 10 suction off at 1755 and he was back on the ward at 1810",
            "incident bed=10 at=17:55 what=suction_off; back bed=10 at=18:10",
        ),
        ("The drain in bed 10 fell over when he got up at 1810", "incident bed=10 at=18:10 what=tipped"),
        ("We've had to move bed 13 into 20, done at 1830", "moved bed=13 at=18:30 to_bed=20"),
        (
            "We had to change the canister on bed 5 at 1820, the old one had 1905 in it",
            "exchanged bed=5 at=18:20 final_ml=1905",
        ),
        ("We would have had to change the canister on bed 5 at 1820", "ask kind"),
        ("We had to change the dressing on bed 5 at 1820", ""),
        ("Bed 6 is back from CT, got here at 1820", "back bed=6 at=18:20"),
        ("Bed 11 is back on the ward from theatre, arrived at 1820", "back bed=11 at=18:20"),
        ("I transferred bed 13 to the step-down unit at 1830", "left bed=13 at=18:30"),
        ("18 transferred to HDU bed 3 at 1800", "left bed=18 at=18:00"),
        ("The surgeon wants bed 14 on 10 of suction instead of 20", "ordered bed=14 suction_cmh2o=10"),
        ("bed 14 1800 should be 430 instead of 340", "corrected bed=14 at=18:00 was_ml=340 level_ml=430"),
        ("bed 6 went to x-ray and back at 1840", "away bed=6; back bed=6 at=18:40"),
    ],
)
def test_an_event_told_in_a_sentence_is_read_as_it_happened(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "before",
    [
        "It's been a long one.",
        "Everything took ages today.",
        "The student and I did this one together:",
        "I was stuck with a code brown so this is late:",
        "None of the pens on this ward work.",
    ],
)
def test_what_is_told_before_any_drain_is_named_is_of_none(before: str) -> None:
    assert reading(f"{before} Bed 12 is at 640 as of 1830") == "mark bed=12 at=18:30 level_ml=640"
    assert reading(f"{before} Bed 12 went down to CT at 1840") == "away bed=12 at=18:40"


@pytest.mark.parametrize(
    "before",
    [
        "This is from yesterday:",
        "This one is urine:",
        "It won't go down:",
        "Don't chart this:",
    ],
)
def test_what_is_told_before_it_of_the_line_is_asked(before: str) -> None:
    assert "ask" in reading(f"{before} bed 12 is at 640 as of 1830")


def test_a_dictated_question_before_a_line_is_asked() -> None:
    assert "ask" in reading("is it still bed 5 210 at 1850", channel="voice")


def test_when_a_dictated_line_was_looked_at_is_its_time() -> None:
    text = "bed 22 about 850 when i looked at 1900"
    assert reading(text, channel="voice") == "mark bed=22 at=19:00 level_ml=850 about"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("Two porters and I took bed 15 to CT at 1825", "away bed=15 at=18:25"),
        (
            "I've changed bed 17's canister, that was at 1815 and the old one read 1890",
            "exchanged bed=17 at=18:15 final_ml=1890",
        ),
        (
            "We needed to swap the box on bed 17 at 1815, it was at 1890",
            "exchanged bed=17 at=18:15 final_ml=1890",
        ),
        (
            "A visitor tripped over the drain of bed 18 at 1815 and it tipped",
            "incident bed=18 at=18:15 what=tipped",
        ),
        ("bed 9 is at 640, 1820", "mark bed=9 at=18:20 level_ml=640"),
        ("bed 9 is at 1820, 640", "ask level_ml"),
        ("bed 9 640 at 1820. That was a struggle.", "mark bed=9 at=18:20 level_ml=640"),
        ("bed 9 640 at 1820. That was 460", "ask level_ml"),
        ("bed 23 no wait that was a foley, mark 300", "ask kind"),
        (
            "When I went in to bed 9 for her meds at 1820 the line was 640 mL",
            "mark bed=9 at=18:20 level_ml=640",
        ),
        ("bed 9 640 at 1820, no thanks to the lift", "mark bed=9 at=18:20 level_ml=640"),
        ("bed 9 640 at 1820, which the doctor saw", "mark bed=9 at=18:20 level_ml=640"),
        ("Handover ran over, bed 9 640 at 1820", "mark bed=9 at=18:20 level_ml=640"),
        ("handover for bed 9 please", "asked bed=9 topic=handoff"),
        ("which was the last line on bed 9", "asked bed=9 topic=last"),
    ],
)
def test_words_around_a_line_or_an_event_put_nothing_right_and_ask_nothing(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_right_that_the_message_begins_with_names_no_side() -> None:
    assert "tube=right" not in reading("Right, last patient on my list: I read 730 in bed 14 at 1850")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("how much has bed 7 drained in the last 24 hours? Radiology are on the phone.", "24h"),
        ("how much has bed 7 drained in the last 24 hours? The surgeon wants to know.", "24h"),
    ],
)
def test_what_is_told_behind_a_question_is_no_part_of_it(text: str, read: str) -> None:
    assert reading(text) == f"asked bed=7 topic=total window={read}"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("Bed 13 finished the shift at 475", "mark bed=13 level_ml=475 closing"),
        ("That's bed 16 finishing the shift at 990", "mark bed=16 level_ml=990 closing"),
        (
            "Closing line on bed 7 comes to 560 and bed 14 is 390",
            "mark bed=7 level_ml=560 closing; mark bed=14 level_ml=390 closing",
        ),
        ("my closing line for bed 9 before I hand over: 605", "mark bed=9 level_ml=605 closing"),
        ("bed 9 515 at 1820, and her appetite is coming back", "mark bed=9 at=18:20 level_ml=515"),
        ("bed 9 515 at 1820, the bloods went off to the lab", "mark bed=9 at=18:20 level_ml=515"),
        ("bed 9 515 at 1820, he came back from CT", "mark bed=9 at=18:20 level_ml=515; back bed=9 at=18:20"),
        (
            "bed 9 515 at 1820, the lady went home",
            "mark bed=9 at=18:20 level_ml=515; left bed=9 at=18:20",
        ),
        ("Once I got the dressing done bed 9 is at 515 as of 1820", "mark bed=9 at=18:20 level_ml=515"),
        ("The night tech says bed 10's box tipped over at 1810", "incident bed=10 at=18:10 what=tipped"),
        (
            "bed 8 tube came out at 1815 without a hitch, final level was 315",
            "removed bed=8 at=18:15 level_ml=315",
        ),
        (
            "bed 8 tube came out at 1815 without a leak, final level was 315",
            "removed bed=8 at=18:15 level_ml=315; checked bed=8 at=18:15 air_leak=none",
        ),
    ],
)
def test_how_a_shift_ended_and_what_came_or_went_beside_is_read(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "Bed 13 finished the shift at 1900",
        "Please don't chart anything for bed 12 yet, 980 at 1830",
        "Please don't chart anything for bed 12 yet, the 980 I shouted across was his urine.",
        "Bed 4 got a litre of saline through his drip, 1000 at 1830",
        "I've had to sit with bed 2, so the eleven o'clock was done late, it's 1850 now and it reads 365.",
        "what was the last line on bed 7? it was 430 I think",
        "what was the last line on bed 7? He pulled it out.",
        "his wife says the drain in bed 10 fell over",
    ],
)
def test_a_number_that_may_be_of_something_else_and_an_event_behind_a_question_are_asked(text: str) -> None:
    assert "ask" in reading(text)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "Bed 12's tube is gone, the surgeon took it out at 1830 with 260 in the bottle",
            "removed bed=12 at=18:30 level_ml=260",
        ),
        ("bed 12's tube is gone", "ask kind"),
        ("bed 12 is gone", "left bed=12"),
        ("Bed 12 chest tube: he pulled it out at 1830", "incident bed=12 at=18:30 what=dislodged"),
        ("bed 12 had a foley, the nurse took it out at 1830", "ask level_ml"),
        ("Bed 15 is in theatre, they collected her at 1825", "away bed=15 at=18:25"),
        ("Bed 15 went to CT, they picked him up at 1825", "away bed=15 at=18:25"),
    ],
)
def test_a_tube_that_is_gone_is_no_patient_who_left(text: str, read: str) -> None:
    assert reading(text) == read
