"""Sentences that are whole alone: together they say the same, and nothing of one is of the bed of another."""

from __future__ import annotations

import pytest

from .saying import reading

SENTENCES = (
    (
        "bed 7 560 at 1855, tipped at 1830",
        "mark bed=7 at=18:55 level_ml=560; incident bed=7 at=18:30 what=tipped",
    ),
    ("14 not bleeding, line 320", "mark bed=14 level_ml=320"),
    ("EOS line 9 is 1240 at 1840", "mark bed=9 at=18:40 level_ml=1240 closing"),
    ("22 back from theatre at 1815", "back bed=22 at=18:15"),
)


@pytest.mark.parametrize("stop", [". ", "\n", "! ", "; "])
@pytest.mark.parametrize(
    ("first", "read"),
    [
        (
            "12 left 640, 12 right 650",
            "mark bed=12 tube=left level_ml=640; mark bed=12 tube=right level_ml=650",
        ),
        ("bed 11: suction 10 as ordered, seal at 2", "checked bed=11 seal_cm=2 suction_cmh2o=10"),
        ("when i went in at 1800 bed 5 was at 340", "mark bed=5 at=18:00 level_ml=340"),
        ("4 340, on 20 and no leak", "mark bed=4 level_ml=340; checked bed=4 suction_cmh2o=20 air_leak=none"),
    ],
)
@pytest.mark.parametrize(("second", "also"), SENTENCES)
def test_two_sentences_of_two_beds_say_what_each_says(
    first: str, read: str, stop: str, second: str, also: str
) -> None:
    assert reading(first) == read
    assert reading(second) == also
    said = sorted(reading(f"{first}{stop}{second}").split("; "))
    assert [_untimed(s, said) for s in sorted(f"{read}; {also}".split("; "))] == said


def _untimed(alone: str, said: list[str]) -> str:
    """The same with the time of the message, where one was shared."""
    if " at=" in alone or alone in said:
        return alone
    bed = alone.split()[1]
    return next((s for s in said if s.split()[:2] == alone.split()[:2] and _same(s, alone)), f"{bed} is lost")


def _same(said: str, alone: str) -> bool:
    return {w for w in said.split() if not w.startswith("at=")} == {*alone.split()}


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "13 mark 365. 15 mark 590 at 1900",
            "mark bed=13 at=19:00 level_ml=365; mark bed=15 at=19:00 level_ml=590",
        ),
        (
            "6:54pm: 10 616\n13 1550 at 1655\n2 420",
            "mark bed=10 at=18:54 level_ml=616; mark bed=13 at=16:55 level_ml=1550; "
            "mark bed=2 at=18:54 level_ml=420",
        ),
        ("closing: bed 3 240. bed 4 310", "mark bed=3 level_ml=240 closing; mark bed=4 level_ml=310 closing"),
        (
            "bed 3 240 at 1845. bed 4 310 at 1850, closing line",
            "mark bed=3 at=18:45 level_ml=240; mark bed=4 at=18:50 level_ml=310 closing",
        ),
        ("bed 11 seal 2\n14 320", "checked bed=11 seal_cm=2; mark bed=14 level_ml=320"),
        (
            "5 310\n6 420\n7 1200",
            "mark bed=5 level_ml=310; mark bed=6 level_ml=420; mark bed=7 level_ml=1200",
        ),
    ],
)
def test_a_time_and_a_closing_line_may_be_told_once(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("text", ["bed 12 level 1\n050", "bed 12 mark 340 at 19\n30 more"])
def test_what_stands_on_two_lines_is_no_number(text: str) -> None:
    assert reading(text).startswith("ask")


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("Questions:\nrate on bed 18?", "asked bed=18 topic=rate"),
        ("quick question: when is bed 4 due", "asked bed=4 topic=due"),
        ("open questions on bed 4", "asked bed=4 topic=open"),
    ],
)
def test_a_heading_asks_nothing(text: str, asked: str) -> None:
    assert reading(text) == asked


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 tube out at 1800. bed 5 340", "removed bed=4 at=18:00; mark bed=5 level_ml=340"),
        (
            "bed 4 changed 1800 old 1980 new 20. now 60. bed 5 340",
            "exchanged bed=4 at=18:00 final_ml=1980; mark bed=4 at=18:00 level_ml=20; "
            "mark bed=4 at=19:05 level_ml=60; mark bed=5 level_ml=340",
        ),
        (
            "bed 4 340 at 1800. bed 5 210",
            "mark bed=4 at=18:00 level_ml=340; mark bed=5 at=18:00 level_ml=210",
        ),
    ],
)
def test_when_something_happened_is_no_time_of_another_line(text: str, read: str) -> None:
    assert reading(text) == read
