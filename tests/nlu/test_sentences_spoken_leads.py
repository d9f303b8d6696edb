"""What is said before and behind a dictated line, and between its bed and its level, and tells nothing."""

from __future__ import annotations

import pytest

from .saying import BEDS, CHANNELS, Channel, reading

LINE = "mark bed=12 at=19:00 level_ml=540"


@pytest.mark.parametrize(
    "lead",
    [
        "I'm in", "I am at", "checking on", "just checking in on", "I'm calling in", "calling about",
        "reporting on", "here's", "next one is", "last but not least", "moving on to", "I'll give you",
        "let me give you", "a quick update", "update for", "an update on", "hourly check for",
        "the guy in", "our lady in", "we've got", "okay I'm looking at", "good evening", "so I just checked",
    ],
)  # fmt: skip
def test_what_opens_a_dictated_line_tells_nothing(lead: str) -> None:
    assert reading(f"{lead} bed twelve mark five forty at nineteen hundred", BEDS, "voice") == LINE


@pytest.mark.parametrize(
    "cue",
    [
        "the line's at", "line's", "canister's at", "the box says", "the chest tube's at", "I'm reading",
        "I see", "we're seeing", "I've got it at", "the pen mark's at", "went up to", "has gone up to",
        "climbed to", "is holding at", "remains at", "stays at", "shows us",
    ],
)  # fmt: skip
def test_what_stands_before_a_dictated_level_says_that_it_is_one(cue: str) -> None:
    assert reading(f"bed twelve {cue} five forty at nineteen hundred", BEDS, "voice") == LINE


@pytest.mark.parametrize("cue", ["came out to", "comes to", "volume is at", "total canister volume"])
def test_a_number_that_may_be_a_level_or_an_amount_is_asked(cue: str) -> None:
    assert reading(f"bed twelve {cue} five forty at nineteen hundred", BEDS, "voice") == "ask kind"


@pytest.mark.parametrize(
    "tail",
    [
        "vitals stable", "doing fine", "he's comfortable", "patient stable", "family visiting",
        "over and out", "that's all", "thank you", "end of report",
    ],
)  # fmt: skip
@pytest.mark.parametrize("channel", CHANNELS)
def test_a_remark_at_the_end_takes_no_time_from_the_line(tail: str, channel: Channel) -> None:
    text = f"bed twelve mark five forty at nineteen hundred {tail}"
    assert reading(text, BEDS, channel) == LINE


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "can you put bed ten down for five twenty five at eighteen forty",
            "mark bed=10 at=18:40 level_ml=525",
        ),
        ("bed ten went from four eighty to five twenty five", "mark bed=10 level_ml=525"),
        ("bed twelve to gravity", "checked bed=12 suction_cmh2o=0"),
        ("bed twelve somebody knocked the drain over", "incident bed=12 what=tipped"),
        ("bed eleven was discharged home", "left bed=11"),
        (
            "bed ten suction's at minus twenty water seal's right at two",
            "checked bed=10 seal_cm=2 suction_cmh2o=20",
        ),
    ],
)
def test_what_nurses_say_aloud_is_read(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 11 suction ordered at 20", "ordered bed=11 suction_cmh2o=20"),
        ("bed 11 suction ordered at minus 20", "ordered bed=11 suction_cmh2o=20"),
        ("bed 11 new suction order of minus 10 at 1830", "ordered bed=11 at=18:30 suction_cmh2o=10"),
        ("bed 11 doctor wants 20", "ask level_ml"),
        ("bed 11 surgeon wants it at 10", "ask level_ml"),
        ("bed 11 new order 15", "ask level_ml"),
    ],
)
def test_what_was_ordered_is_suction_or_asked_and_never_a_line(
    text: str, read: str, channel: Channel
) -> None:
    assert reading(text, BEDS, channel) == read
