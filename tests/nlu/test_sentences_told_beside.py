"""Words of a remark beside what happened or was found: no side, device or amount of it is the drain's."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("bed 3 off to CT 1840, porter has 2 more after this", "ask kind"),
        ("pulled the chest tube in bed 3 at 1820. Right lung sounds lovely", "ask kind"),
        ("19 moved to 24 1820 as it's nearer the desk, right by us", "ask kind"),
    ],
)
def test_a_side_or_a_count_of_a_remark_is_asked(text: str, asked: str) -> None:
    assert reading(text) == asked


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "got a post lobectomy in bed 4, right chest tube placed, opened at 40",
            "placed bed=4 tube=right level_ml=40 reason=lung",
        ),
        ("bed 4 tube out at 1840, right side", "removed bed=4 tube=right at=18:40"),
        ("bed 4 tipped at 1840, the right one", "incident bed=4 tube=right at=18:40 what=tipped"),
    ],
)
def test_what_is_told_of_the_drain_stands(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "the abdominal drain in bed 4 is at 40 mils",
        "the belly drain in bed 4 is at 40",
        "the biliary drain bed 4 is at 40",
        "his stomach tube in bed 4 is at 40",
    ],
)
def test_a_dictated_word_before_a_drain_says_which_it_is(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask")


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("18 put out 40, line barely at 515", "ask at"),
        ("18 put out 40, line blorp at 515", "ask at"),
        ("bed 3 closing 1210 @1845. swapped it 1850, new one at 10", "ask final_ml"),
        ("bed 3 old one 1210 at 1845, canister changed 1850, new one at 10", "ask final_ml"),
    ],
)
def test_a_number_that_may_be_the_line_or_another_time_is_asked(text: str, asked: str) -> None:
    assert reading(text) == asked


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("18 put out 40, line at 515", "drained bed=18 volume_ml=40; mark bed=18 level_ml=515"),
        (
            "bed 3 closing 1210 at 1845, canister changed at 1850",
            "mark bed=3 at=18:45 level_ml=1210 closing; exchanged bed=3 at=18:50",
        ),
        (
            "bed 3 canister changed 1850, old one 1210, new one at 10",
            "exchanged bed=3 at=18:50 final_ml=1210; mark bed=3 level_ml=10",
        ),
    ],
)
def test_what_has_one_time_or_each_its_own_is_read(text: str, read: str) -> None:
    assert reading(text) == read
