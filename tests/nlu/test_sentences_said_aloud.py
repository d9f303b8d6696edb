"""What somebody who dictates says around a line: when that was, a yes to begin with, where they go next."""

from __future__ import annotations

import pytest

from .saying import BEDS, CHANNELS, Channel, reading

LINE = "mark bed=12 at=18:45 level_ml=540"
UNTIMED = "mark bed=12 level_ml=540"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("i have the line at 540 mils for bed 12 that was twenty minutes ago", LINE),
        ("i read five forty mils on the box for bed twelve that was 20 minutes ago", LINE),
        ("please chart a line of 540 on bed 12 and that was about twenty minutes ago", LINE),
        ("for bed 12 the mark is 540, that was 20 minutes ago, she wants a pillow", LINE),
        ("bed 12 was 540, that was 510", "ask level_ml"),
        ("bed 12 mark 540 that was wrong", "ask level_ml"),
        ("that was bed 12 twenty minutes ago 540", "corrected bed=12 at=18:45 level_ml=540"),
        ("bed 12 mark 540 twenty minutes ago that was 510", "ask level_ml"),
    ],
)
def test_how_long_ago_that_was_is_when_the_line_was_read(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("yeah, mark 0.54 liter for the chest tube in bed 12", UNTIMED),
        ("yeah, next one is bed 12 and the mark is 540", UNTIMED),
        ("yep bed 12 line's at 540", UNTIMED),
        ("yes bed 12, is reading five forty", UNTIMED),
        ("yes bed 12 540", "answered bed=12 answer=yes level_ml=540"),
        ("yes mark 540", "answered answer=yes level_ml=540"),
        ("yeah 540 for bed 12", "answered bed=12 answer=yes level_ml=540"),
        ("no bed 12 mark 540", "answered bed=12 answer=no level_ml=540"),
    ],
)
def test_a_yes_before_a_whole_line_is_thinking_aloud(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 mark 540 at 1845 off to my next one", LINE),
        ("bed 12 mark 540 at 1845, off to the next patient", LINE),
        ("bed 12 mark 540 at 1845, i'm off to lunch", LINE),
        ("bed 12 mark 540 at 1845 off to CT", f"{LINE}; away bed=12 at=18:45"),
        ("bed 12 mark 540 at 1845, she's off to theatre", f"{LINE}; away bed=12 at=18:45"),
    ],
)
def test_a_nurse_who_goes_on_is_no_patient_who_is_away(text: str, read: str, channel: Channel) -> None:
    assert reading(text, BEDS, channel) == read


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("has anyone seen the bladder scanner", ""),
        ("seen bed 12", "acknowledged bed=12"),
        ("ok seen", "acknowledged"),
    ],
)
def test_whoever_looks_for_something_has_seen_no_notice(text: str, read: str, channel: Channel) -> None:
    assert reading(text, BEDS, channel) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 line point five four litres at eighteen forty five", LINE),
        ("mark is point five four liters on bed 12", UNTIMED),
        ("bed 12 mark won point five four litres", "mark bed=12 level_ml=1540"),
        ("to point five four litres on the canister bed 12", "ask level_ml"),
        ("point five four litres on the canister bed 12", "ask level_ml"),
    ],
)
def test_a_litre_that_begins_with_its_point_is_whole_behind_a_word(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    "measure",
    [
        "sats 97 percent",
        "sats are ninety six per cent on two liters",
        "oxygen saturation is 98 percent",
        "BP is 132 over 80",
        "blood pressure one twenty over seventy five",
        "pain is 3 out of 10",
        "pain score four out of ten",
        "respirations 16",
        "respiratory rate is eighteen",
        "heart rate eighty two",
        "temperature thirty eight point one",
    ],
)
def test_what_is_measured_of_a_patient_is_known_as_it_is_spoken(measure: str, channel: Channel) -> None:
    assert reading(f"bed 12 mark 540 at 1845 {measure}", BEDS, channel) == LINE
    assert reading(f"bed 12 mark 540 at 1845, {measure}, thanks", BEDS, channel) == LINE


def test_a_patient_in_pain_tells_nothing_of_a_drain() -> None:
    assert reading("patient in nine is complaining of pain seven out of ten", BEDS, "voice") == ""


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed twelve sat at ninety", "mark bed=12 level_ml=90"),
        ("bed 12 line 540 over eighty", "ask level_ml"),
        ("bed 12 mark 540 5 out of 10", "ask level_ml"),
    ],
)
def test_a_number_beyond_what_is_measured_is_asked_about(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read


@pytest.mark.parametrize(
    "remark",
    [
        "he's grumpy today",
        "i'll be back later",
        "i changed her dressing",
        "gown changed too",
        "she's going home tomorrow",
        "he wants to know when he can go home",
        "i'll check on him again before midnight",
        "the family brought cake",
        "surgeons have rounded already",
        "we're short staffed tonight",
        "coughing a lot today",
        "will check again in an hour",
    ],
)
def test_a_clause_of_its_own_that_holds_nothing_doubtful_leaves_the_line_whole(remark: str) -> None:
    assert reading(f"bed 12 mark five forty at eighteen forty five {remark}", BEDS, "voice") == LINE
    assert reading(f"bed twelve mark 540, {remark}", BEDS, "voice") == UNTIMED
    assert reading(f"{remark}, bed 12 mark 540 at 1845", BEDS, "voice") == LINE


@pytest.mark.parametrize(
    "clause",
    [
        "and he pulled it out",
        "the box fell over when he got up",
        "he's off to CT",
        "it's bright red",
        "there's a leak now",
    ],
)
def test_what_happens_to_a_drain_is_told_and_never_left_out(clause: str) -> None:
    assert reading(f"bed 12 mark five forty at eighteen forty five {clause}", BEDS, "voice") != LINE


@pytest.mark.parametrize(
    "clause",
    [
        "i changed it",
        "i've just changed his canister",
        "i think it's five fifty",
        "i might be wrong",
        "i mean bed five",
        "that's for bed five",
        "it was four eighty before",
        "fife",
        "the whole shift",
        "this morning it was less",
    ],
)
def test_a_clause_that_may_be_of_the_line_is_asked_about(clause: str) -> None:
    assert "ask " in reading(f"bed twelve mark five hundred {clause}", BEDS, "voice")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 tube a that was 540", "corrected bed=12 tube=A level_ml=540"),
        ("bed 12 drain a looks like 540", "mark bed=12 tube=A level_ml=540"),
        ("bed 12 tube a closing line is 540", "mark bed=12 tube=A level_ml=540 closing"),
        ("bed 12 drain a closing line of 540", f"{UNTIMED} closing"),
        ("line 540 on bed 12 tube a she is asleep", "mark bed=12 tube=A level_ml=540"),
    ],
)
def test_a_letter_behind_the_word_tube_is_its_name_before_a_verb(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read
