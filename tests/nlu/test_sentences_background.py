"""Whole lines beside clauses of background: what the patient, the family or the team does and plans."""

from __future__ import annotations

import pytest

from .saying import ARRIVED, reading

NOON = ARRIVED.replace(hour=12)
LINE = "mark bed=9 at=11:00 level_ml=710"


@pytest.mark.parametrize(
    "tail",
    [
        ", he's been sitting up for breakfast and says he feels better than yesterday",
        ", she slept through the move and the dressing is dry",
        " so it has slowed down, he is asleep and warm",
        ". His wife is here and has brought soup, so I'll check on the dressing after",
        ", her husband has gone home and she is settled",
        ", he would like to go home today",
        ", physio is coming back to walk her later",
        ", he's up in the chair with physio now",
        ", team want him walking this afternoon",
        ", he went right back to sleep",
        ", we turned him with two of us and he was sore",
        ", I am going for lunch, back soon",
        ", that was when I went in with his pain meds",
        ", the night doctor reviewed him for his cough and left him on his antibiotics",
        ", he managed half his porridge and is dozing now",
        ", bloods sent and antibiotics given",
        ", chest x-ray is booked for this afternoon",
        ", she's due to go to theatre tomorrow",
        ", he did two laps with physio",
        ", sat out for two hours and managed well",
        ", lab is coming to take his bloods",
        ", he moved himself up the bed",
        " physio coming back later to walk him",
    ],
)
def test_what_somebody_does_behind_a_line_leaves_the_line_whole(tail: str) -> None:
    assert reading(f"bed 9 line 710 mL at 1100{tail}", arrived=NOON) == LINE


@pytest.mark.parametrize(
    "text",
    [
        "Physio is with bed 9 so I read it before she got started: 710 mL at 11 am",
        "The gentleman in bed 9 had his wash and his walk, then I checked the drain at 1100: 710 mL",
        "While the aide sat with 9 I read the drain, it's 710 mL at 1100",
        "I gave 9 his meds and right after it the line was 710 mL at 1100",
        "bed 9 had his morning wash and I read the drain at 11:00, it's 710 mL",
        "When I went in to bed 9 for her antibiotics at 1100 the line was 710 mL",
        "Physio walked bed 9 to the door at quarter to ten, I read 710 mL at 1100 once she sat down again",
        "Bed 9 is asleep so I let him rest, line 710 mL at 1100",
    ],
)
def test_what_somebody_does_before_a_line_leaves_its_bed_and_its_line(text: str) -> None:
    assert reading(text, arrived=NOON) == LINE


@pytest.mark.parametrize(
    "tail",
    [
        ", he knocked it over getting out of bed",
        ", his wife says the number is wrong",
        ", he isn't in bed 9, he is in 5",
        ", the other drain is at 200",
        ", he was at 500 before",
        ", he's not right",
        ", patient leaving at 1330",
        ", he pulled it off",
        ", wife asks what's his total",
        ", transport left with him",
        ", no leak, only when he coughs",
        ", they came for him at 1130",
        ", her neighbour has 300 as well",
    ],
)
def test_a_clause_of_somebody_that_may_be_of_the_line_is_asked_about_or_read(tail: str) -> None:
    assert reading(f"bed 9 line 710 mL at 1100{tail}", arrived=NOON) != LINE


@pytest.mark.parametrize(
    "text",
    [
        "bed 9 has three in, left 60 and right 310",
        "the format is bed 9 mark 710 at 1100",
        "bed 9 will be at 1100 by 1900, she is asleep",
        "bed 9 is at 1100, he is asleep, line 710",
        "9 450 i'm guessing",
        "Went in to 9 after he woke at 1030, 710",
    ],
)
def test_a_number_or_a_second_bed_in_such_a_clause_is_asked_about(text: str) -> None:
    assert "ask" in reading(text, arrived=NOON)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 line 710 mL at 1100, npo for bronch", LINE),
        ("bed 9 line 710 mL at 1100. He is down for theatre today, so nil by mouth", LINE),
        ("bed 9 line 710 mL at 1100, he's for a CT this afternoon", LINE),
        ("bed 9 line 710 mL at 1100, she's going for a walk with her husband", LINE),
        ("bed 9 line 710 mL at 1100, as he was just back from the shower", LINE),
        ("bed 9 went for a walk at 1100", "away bed=9 at=11:00"),
        ("bed 9 down for CT", "away bed=9"),
        ("bed 9 line 710 mL at 1100, back from CT", f"{LINE}; back bed=9 at=11:00"),
    ],
)
def test_who_waits_for_a_scan_or_takes_a_few_steps_has_not_gone(text: str, read: str) -> None:
    found = reading(text, arrived=NOON)
    assert sorted(found.split("; ")) == sorted(read.split("; "))


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 line was 710 mL at 1100 when we did the bedside handover", LINE),
        ("bed 9 line 710 mL at 1100, giving report now", LINE),
        ("giving report on 9", "asked bed=9 topic=handoff"),
        ("handover for bed 9", "asked bed=9 topic=handoff"),
        ("can I have bed 9 for the handover?", "asked bed=9 topic=handoff"),
    ],
)
def test_a_handover_that_the_nurses_had_asks_for_none(text: str, read: str) -> None:
    assert reading(text, arrived=NOON) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 line 710 mL at 1100, RT is giving him a neb", LINE),
        ("bed 9 line 710 mL at 1100, trach care done by RT", LINE),
        ("bed 9 line 710 mL at 1100, lungs sound better per RT", LINE),
        ("bed 9 line 710 mL at 1100, he fell asleep while I was talking", LINE),
        ("bed 9 line 710 mL at 1100, wife left", LINE),
        ("bed 9 line 710 mL at 1100, IV in left arm", LINE),
        ("bed 9 line 710 mL, that was at 1100, she is asleep", LINE),
        ("bed 9 line 710 mL at 1100, his brother took him out in the fresh air", LINE),
        ("bed 9 rt 710 mL at 1100", "mark bed=9 tube=right at=11:00 level_ml=710"),
        ("bed 9 left 710 mL at 1100", "mark bed=9 tube=left at=11:00 level_ml=710"),
    ],
)
def test_who_left_and_which_arm_are_no_side_of_a_drain(text: str, read: str) -> None:
    assert reading(text, arrived=NOON) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 line 710 mL, that was at 1100, he's had his pill and should settle", LINE),
        (
            "bed 9 710 mL, that was at 1100, it should be 730",
            "corrected bed=9 at=11:00 was_ml=710 level_ml=730",
        ),
        ("bed 9 empyema drain showing pus, 710 mL at 1100", f"{LINE}; checked bed=9 at=11:00 fluid=purulent"),
    ],
)
def test_a_remark_beside_it_makes_no_other_thing_of_what_is_told(text: str, read: str) -> None:
    assert reading(text, arrived=NOON) == read


def test_who_went_may_be_the_visitor_or_the_patient() -> None:
    assert "ask" in reading("bed 9 710 1100 wife visiting and she went home now", arrived=NOON)
