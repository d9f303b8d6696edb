"""Answers, what is taken back, and notices that were seen, with what nurses say beside them."""

from __future__ import annotations

import pytest

from .saying import LETTERED, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("no this ones right, the earlier one was off", "answered choice=earlier_wrong"),
        ("earlier line was the wrong one", "answered choice=earlier_wrong"),
        ("the previous mark was a typo", "answered choice=earlier_wrong"),
        ("the first choice pls", "answered choice=first"),
        ("second option", "answered choice=second"),
        ("its a fresh new canister now", "answered choice=new_canister"),
        ("nope thats not it", "answered answer=no"),
        ("no this one is right", "ask answer"),
        ("yep correct", "answered answer=yes"),
        ("rechecked, 340", "answered level_ml=340"),
        ("double checked bed 5 its 340", "mark bed=5 level_ml=340"),
        ("new canister now", "ask bed"),
        ("the last one was off suction", "ask bed"),
    ],
)
def test_an_answer_may_say_which_was_wrong(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("oh scratch that, that was the urine bag", "withdrawn"),
        ("scratch that, wrong pt", "withdrawn"),
        ("delete 5 mark at 1900, wrong pt", "withdrawn bed=5 at=19:00"),
        ("delete 5 mark at 1050, wrong pt", "ask kind"),
        ("no scratch that last one pls", "withdrawn"),
        ("pls remove 1100 mark on 18", "withdrawn bed=18 at=11:00"),
        ("void 10s 0930 line", "withdrawn bed=10 at=09:30"),
        ("undo the 8 one please", "withdrawn bed=8"),
        ("scratch that, patient tipped it over", "ask kind"),
        ("delete the 1900 mark on 12, canister tipped over", "ask kind"),
        ("scratch that, it was the left", "ask kind"),
        ("cancel the breakfast tray for 12", "ask kind"),
        ("scratch that, pump was alarming", "ask kind"),
        ("remove tube 18 mark 340 at 1900", "ask kind"),
        ("voided 300 mark 640 on 12", "mark bed=12 level_ml=640"),
    ],
)
def test_what_is_taken_back_may_have_its_reason_but_nothing_more(text: str, read: str) -> None:
    assert reading(text) == read


def test_the_one_of_a_lettered_bed_is_no_number() -> None:
    assert reading("undo the 2A one please", LETTERED) == "withdrawn bed=2A"


@pytest.mark.parametrize("text", ["no no scratch that", "no scratch that"])
def test_a_dictated_no_before_it_leaves_it_taken_back(text: str) -> None:
    assert reading(text, channel="voice") == "withdrawn"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("seen 5, paging trauma now", "acknowledged bed=5"),
        ("seen 12 going in now", "acknowledged bed=12"),
        ("seen 12, 640 at 1900", "acknowledged bed=12; mark bed=12 at=19:00 level_ml=640"),
        ("seen 5, leak continuous", "acknowledged bed=5; checked bed=5 air_leak=continuous"),
        ("seen 5, paging trauma, canister tipped", "ask"),
        ("seen 5 going to 8", "ask"),
    ],
)
def test_a_notice_that_was_seen_says_what_is_done_about_it(text: str, read: str) -> None:
    assert reading(text).startswith(read)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("what kinds of things can you do", "help"),
        ("can you say that one again", "asked topic=repeat"),
        ("report on 3 for transfer", "asked bed=3 topic=handoff"),
        ("sbar on 24 for the transfer", "asked bed=24 topic=handoff"),
        ("report given on 3 for transfer to 5", "ask kind"),
        ("have I got any open questions left?", "asked topic=open"),
        ("which beds are due for a line now", "asked topic=due"),
        ("remind me what was the last mark on bed 12", "asked bed=12 topic=last"),
        ("tell me when 12 hits 1000", "ask kind"),
    ],
)
def test_what_is_asked_around_a_drain(text: str, read: str) -> None:
    assert reading(text) == read
