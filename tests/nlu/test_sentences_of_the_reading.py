"""A clause beside a line that is of the reading puts it in doubt; of anybody else it changes nothing."""

from __future__ import annotations

import pytest

from tests.nlu.saying import reading

LINES = ("bed 7 450 at 1840{}", "7 left 450, right 120 at 1840{}", "bed 7 tube out at 1840, final 450{}")
DOUBTS = (
    "hope that's the right patient", "hopefully I read the right box", "fingers crossed it's the right one",
    "I wouldn't put my name to it", "bit of a guess between the lines", "scale is scratched", "pen smudged",
    "light was off and didn't want to wake him", "read it in the dark", "couldn't get a torch on it",
    "fluid moving about while I read it", "he was walking when I read it", "canister was on a slope",
    "my watch stopped", "forgot to look at the clock", "not sure whose box it is", "number got wet",
    "the aide called it out to me", "got it off the whiteboard", "taken from the last shift's note",
    "that seems like a lot", "that can't be", "wonky number", "worth a second look", "second check needed",
    "someone should recheck that", "pending recheck", "best I could do", "as far as I could see",
    "near as I can tell", "or maybe that's the neighbour's", "might be the old line I read",
    "forgot my specs",
    "foam on top so hard to tell", "tape over half the numbers", "can charge come look at it with me",
    "we couldn't agree on the level", "not certain abt that", "nt sure", "possible typo",
    "? time", "?accurate",
    "only saw it in passing", "half asleep so double check me", "sketchy reading", "unless I've gone blind",
)  # fmt: skip
ELSEWHERE = (
    "family hoping for a side room", "couldn't get his ipad to charge", "lost his glasses somewhere",
    "hard to rouse after the sedation", "pharmacy unsure about his warfarin", "doctor not certain about home",
    "team to take another look at his wound tomorrow", "asked for the light to be left on",
    "family updated by phone", "pain probably from the rib", "foam settled", "double checked",
    "triple checked this one",
    "line is inked", "read at eye level", "box below the chest", "witnessed by the other nurse",
    "I know it's a lot but it's right",
)  # fmt: skip


@pytest.mark.parametrize("line", LINES)
@pytest.mark.parametrize("doubt", DOUBTS)
def test_a_doubt_of_the_reading_is_asked(doubt: str, line: str) -> None:
    read = reading(line.format(", " + doubt))

    assert "ask " in read
    assert "level_ml=450" not in read or "120" not in line


@pytest.mark.parametrize("stop", [". ", " - ", " "])
@pytest.mark.parametrize("doubt", DOUBTS)
def test_a_doubt_of_the_reading_is_asked_behind_any_stop(doubt: str, stop: str) -> None:
    assert "level_ml=450" not in reading(f"bed 7 450 at 1840{stop}{doubt}")


@pytest.mark.parametrize("remark", ELSEWHERE)
def test_the_same_words_of_something_else_leave_the_line(remark: str) -> None:
    assert reading(f"bed 7 450 at 1840, {remark}") == "mark bed=7 at=18:40 level_ml=450"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 8 mark 195 at 1842; may have transposed the digits", "ask kind"),
        ("22 1290 at 1859 - ? correct bed", "ask kind"),
        ("changed canister on 6 at 1800, old one was 3 days old", "exchanged bed=6 at=18:00"),
        ("changed canister on 6 at 1800, old one was 300", "exchanged bed=6 at=18:00 final_ml=300"),
        ("bed 4: for 1820 read 280", "ask level_ml"),
        ("entry made in bed 7 by mistake, kindly put same in bed 8", "ask volume_ml"),
        ("7 same at 1900", "drained bed=7 at=19:00 volume_ml=0"),
        ("16 is what I meant and I keyed 6, mark timed 1817", "ask kind"),
        ("bed 6 bottle removed at 1800", "ask level_ml"),
        ("bed 6 680 at 1840, bubbles on top made it tricky to read", "ask kind; ask kind"),
    ],
)
def test_a_number_of_something_else_or_in_doubt_is_no_line(text: str, read: str) -> None:
    assert reading(text) == read
