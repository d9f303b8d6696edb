"""Clauses with a subject of their own beside a whole line: what they deny, rate, count and have is theirs."""

from __future__ import annotations

import pytest

import nlu

from .saying import ARRIVED, BEDS, reading

LINE = "mark bed=12 at=18:50 level_ml=340"


@pytest.mark.parametrize(
    "remark",
    [
        "he gave it a 9/10 for ouch",
        "the new aide starts 0700",
        "4 more days til leave",
        "theres only 1 of us on this side",
        "I'm off for 4 days, be good",
        "1 of the 3 lifts is back in service",
        "he's calling it his handbag",
        "he's 6 ft 5 and never fits the bed",
        "bank nurse turned up for the wrong ward at half 6",
        "mum cried, dad went out for air",
        "ask for the charge on 3318 if you need her",
        "no tears tonight",
        "his pain's a 6 but he's laughing",
        "wheel fell off the commode",
        "bell's broken",
        "she rates it 7 out of 10",
        "he turned 80 last week",
        "his brother, who is 71, wants to bring a dog up",
        "she says the ceiling fan squeaks",
        "I'm the only nurse with 9 patients",
        "lost her left hearing aid",
        "he wouldn't let go of the remote",
        "attender gone to blood bank",
        "ct booked for 0900 tomorrow",
        "took 4 goes to get the cannula in",
        "won't wear the stockings",
        "he wrote down 2 other things",
        "it's 3 degrees outside and snowing",
        "the aide is 2 hours late",
        "discharge lounge opens at 11",
        "he's got 12 grandkids and a photo of each",
    ],
)
@pytest.mark.parametrize("form", ["bed 12 line 340 at 1850, {}", "{}. bed 12 drain 340 ml at 1850"])
def test_what_somebody_else_does_changes_no_line(form: str, remark: str) -> None:
    assert reading(form.format(remark)) == LINE


@pytest.mark.parametrize(
    "remark",
    [
        "florp 350",
        "kevin says 420",
        "the student had 350",
        "wife thinks it's 300",
        "reg wants 10",
        "doc said 20",
        "turned him and 80 ran out",
        "80 after the walk",
        "the other one is 200",
        "he left with his wife at 3",
        "he's gone home",
        "aide emptied it at 6",
        "he isn't the one",
        "she's at 20",
        "not mine",
        "wrong patient",
        "I didn't see it well",
        "1840 even",
        "2 more",
        "20 less",
        "she had 350",
        "down from 400",
        "surgeon wants it out at 6",
        "dr smith saw him at 5 and clamped",
        "luer lock disconnected",
        "if any issues",
    ],
)
def test_what_may_be_of_the_line_is_asked(remark: str) -> None:
    assert "ask " in reading(f"bed 12 line 340 at 1850, {remark}")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 discharged at 1840 with 14 days of antibiotics and a smile", "left bed=4 at=18:40"),
        ("bed 16's tube was pulled at 1855 with 310 in the box; he's booked on the 2 pm bus", "removed"),
        ("CT booked for 0900 tomorrow. bed 12 tube out at 1840", "removed bed=12 at=18:40"),
        (
            "my closing line bed 4 is 690, 5 falls risk pts on this side btw",
            "mark bed=4 level_ml=690 closing",
        ),
    ],
)
def test_what_happened_is_told_beside_them(text: str, read: str) -> None:
    said = reading(text)
    assert said.startswith(read)
    assert "ask " not in said


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 12 suction 20, no leak, his brother, who is 71, wants to bring a dog up",
            "checked bed=12 suction_cmh2o=20 air_leak=none",
        ),
        ("bed 12 line 340 at 1850, back is sore, heat pack on", LINE),
        ("bed 12 line 340 at 1850, and we have 1 commode between 11 patients", LINE),
        ("bed 12 tube out at 1840. We have 3 empty beds and 1 nurse", "removed bed=12 at=18:40"),
        (
            "bed 12 suction 20, no leak, both sons are coming up at 8",
            "checked bed=12 suction_cmh2o=20 air_leak=none",
        ),
        ("bed 12 off to the OR, left the floor 1840", "away bed=12 at=18:40"),
        ("bed 12 suction on gravity only 1825", "checked bed=12 at=18:25 suction_cmh2o=0"),
        ("bed 12 chest tube 1820 at 515 mL", "mark bed=12 at=18:20 level_ml=515"),
        ("bed 12 tube out at 1840. Left the window open for him", "removed bed=12 at=18:40"),
        ("bed 12 tube out at 1840. Pain team upped his pump to 4 an hour", "removed bed=12 at=18:40"),
        ("bed 12 clamped at 1840, steps on his watch: 212", "incident bed=12 at=18:40 what=clamped"),
        (
            "new chest tube bed 12 at 1840, right side. Held the 6 o'clock heparin",
            "placed bed=12 tube=right at=18:40",
        ),
    ],
)
def test_no_number_of_theirs_is_a_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 12 drained 60 since 1800. Foley came out at noon",
        "bed 12 suction 20, no leak, came on at 7",
        "bed 12 tube out at 1840, final 310. He's read 200 pages since lunch",
        "bed 12 off to CT at 1850, we've had 4 porters say no",
        "bed 12 340 at 515 ml",
    ],
)
def test_what_is_theirs_and_was_taken_for_ours_is_asked(text: str) -> None:
    assert "ask " in reading(text)


def test_what_no_word_accounts_for_is_told() -> None:
    text = "bed 12 line 340 at 1850, ask for the charge on 3318 if you need her"
    unread = nlu.parse(text, arrived=ARRIVED, beds=BEDS).unread
    assert unread == ("ask for the charge on 3318 if you need her",)
