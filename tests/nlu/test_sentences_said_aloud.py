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


@pytest.mark.parametrize(
    "head",
    [
        "hang on let me move the blanket",
        "he's asleep so i'm whispering",
        "she's just had her tea",
        "don't mind the noise",
        "right bear with me",
        "the lady by the window",
        "okay where's my torch",
    ],
)
def test_what_somebody_says_to_begin_with_leaves_the_line_whole(head: str) -> None:
    assert reading(f"{head} bed 12 mark 540 at 1845", BEDS, "voice") == LINE
    assert reading(f"{head}, on bed 12 i get five forty at eighteen forty five", BEDS, "voice") == LINE


@pytest.mark.parametrize(
    "text",
    [
        "she's not in bed 12 540",
        "i'm not doing bed 12 mark 540",
        "i couldn't read it bed 12 mark 540 or 550",
        "not sure which, bed 12 or 13 mark 540",
        "forget what i said, bed 12 mark 540 or so they say 550",
    ],
)
def test_a_doubt_to_begin_with_is_asked_about(text: str) -> None:
    assert reading(text, BEDS, "voice") != UNTIMED


@pytest.mark.parametrize(
    "remark",
    [
        "he's ninety three years old",
        "she's day two post op",
        "the hoist is broken again",
        "jenny's gone to get the linen",
        "they're talking about going home on friday",
        "my colleague is covering the other side",
        "the bed alarm keeps going off",
        "his temp was thirty eight one",
        "i'm doing the rest of the bay now",
    ],
)
def test_a_number_or_an_event_of_something_else_is_none_of_the_line(remark: str) -> None:
    assert reading(f"bed 12 mark 540 {remark}", BEDS, "voice") == UNTIMED
    assert reading(f"bed 12 mark 540 at 6:45 p m {remark}", BEDS, "voice") == LINE


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 mark eight zero oh the bed alarm is loud", "mark bed=12 level_ml=800"),
        (
            "bed 12 reads point six four liters just now, her birthday is tomorrow",
            "mark bed=12 at=19:05 level_ml=640",
        ),
        ("bed 12 mark 540 two hundred more came", "ask level_ml"),
        ("bed 12 mark 540 he has had two hundred", "ask level_ml"),
    ],
)
def test_a_remark_takes_nothing_of_the_line_with_it(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("quick one from me, right bed 12 is sitting at 540", "ask tube"),
        ("right bear with me, bed 12 chest drain level 540", UNTIMED),
        ("right tube bed 12 540", "mark bed=12 tube=right level_ml=540"),
        (
            "right bed 12 540 left 300",
            "mark bed=12 tube=right level_ml=540; mark bed=12 tube=left level_ml=300",
        ),
        ("bed 12 mark 540, comfortable on his left side", UNTIMED),
        ("bed 12 the drain on his left side is at 540", "mark bed=12 tube=left level_ml=540"),
    ],
)
def test_a_right_before_a_bed_and_how_somebody_lies_name_no_tube(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("now then bed 12 mark 540", UNTIMED),
        ("bed 12 mark 540 i'm doing the rest of the bay now", UNTIMED),
        ("just marked bed 12 at 540 ml hannah's taking over from me at nine", "ask at"),
        ("bed 12 mark 540 as of now", "mark bed=12 at=19:05 level_ml=540"),
        ("bed 12 mark 540 at 1845 she's asleep now", LINE),
    ],
)
def test_the_time_of_a_remark_is_no_time_of_the_line(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 line half a litre that's 500", "mark bed=12 level_ml=500"),
        ("bed 12 is at 0.54 liters that's 540", UNTIMED),
        ("bed 12 canister a litre so that's one thousand", "mark bed=12 level_ml=1000"),
        ("bed 12 line 0.2 L, that's 300 milliliters", "ask level_ml"),
        ("mark five hundred on bed twelve, no it's 510", "ask level_ml"),
        ("bed twelve mark five hundred, or maybe 520", "ask level_ml"),
    ],
)
def test_a_level_told_again_is_the_same_or_asked_and_never_a_time(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read
