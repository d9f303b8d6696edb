"""Beds and their lines side by side, and what comes later told behind a line."""

from __future__ import annotations

import pytest

from .saying import reading


def at_seven(*lines: str, when: str = " at=19:00", more: str = "") -> str:
    """The marks of a round: "3 310"."""
    told = (line.split() for line in lines)
    return "; ".join(f"mark bed={bed}{when} level_ml={level}{more}" for bed, level in told)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("1900 lines: 3 310, 8 715, 9 1135, 24 1650", at_seven("3 310", "8 715", "9 1135", "24 1650")),
        ("1900s 4/1180 6/455 9/90", at_seven("4 1180", "6 455", "9 90")),
        ("1900 - bed 3 630, bed 7 85, bed 11 1220", at_seven("3 630", "7 85", "11 1220")),
        ("1900 bed 3 410 bed 5 90", at_seven("3 410", "5 90")),
        ("1900 round. 3: 410. 5: 90. 9: 1020.", at_seven("3 410", "5 90", "9 1020")),
        ("quick one - 17 at 1855 was 88", at_seven("17 88", when=" at=18:55")),
        ("bed 12 760 at 1900 off to break xx", at_seven("12 760")),
        ("1900: 3 1475, 7 620, 15 670 and 24 90", at_seven("3 1475", "7 620", "15 670", "24 90")),
        ("2 1285 3 90 7 640 teatime round 1730", at_seven("2 1285", "3 90", "7 640", when=" at=17:30")),
        ("7p lines 3 - 410, 6 - 130, 11 - 990", at_seven("3 410", "6 130", "11 990")),
        ("closing marks 3 355 8 640 9 735", at_seven("3 355", "8 640", "9 735", when="", more=" closing")),
        ("21 has 310, 22 is 480, 23 is 75. All read at 1900.", at_seven("21 310", "22 480", "23 75")),
        ("bed 4 305 at 1900 will recheck at 2000", at_seven("4 305")),
        ("10 canister reads 740 at 1900 will need changing tonight", at_seven("10 740")),
        ("10 740 at 1900 will prob need a new bottle by lunch", at_seven("10 740")),
        ("bed 5 300 at 1900 will be back at 2000", at_seven("5 300")),
        ("bed 5 300 at 1900 i'll do the next one at 2000", at_seven("5 300")),
        ("b9 1900: 715", at_seven("9 715")),
        ("bed 9 line 1900: 715", at_seven("9 715")),
        ("14: 640 (1900)", at_seven("14 640")),
        ("could you put 4 down as 330 at 1900 ta", at_seven("4 330")),
        ("bed 23 mark 505 at 1900, next due 2000", at_seven("23 505")),
        ("bed 23 505, next due 1800", at_seven("23 505", when="")),
        ("marked 12 at 865 mL 1900", at_seven("12 865")),
        ("pen line on 7 is 320, drawn 1900", at_seven("7 320")),
        ("12 is 430, took it 1h ago", at_seven("12 430", when=" at=18:05")),
        ("bed 20 1330 at 1900 dont wake her pls", at_seven("20 1330")),
        ("bed 22 about 850 when i looked at 1900", at_seven("22 850", more=" about")),
    ],
)
def test_a_round_and_what_comes_later(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "1900 outputs: 3 310, 8 715, 9 1135",
        "1900 hourly: 3 31, 8 45, 9 35",
        "since 1900 bed 3 410 bed 5 90",
        "1900 bed 3 410 bed 5 90 bed 9",
        "1900 bed 3 410 bed 3 90",
        "1900 bed 3 bp 110 bed 5 90",
        "1900 bed 3 drained 41 bed 5 90",
        "2100 bed 3 410 bed 5 90",  # still to come
        "bed 9 1900: 1915",
        "bed 9 1900 715",
        "bed 9 1900: 715, 800",
        "9 13: 640 (1900)",
        "9 640 (+1900)",
        "can you put 4 down as 330 at 1845?",
        "can you put 12 back on suction",
        "12 off to break at 1900",
        "bed 12 1900 3 310 8 715 9 1135",  # a bed too many
        "3 310 8 715 3 1135",
        "3 10, 8 15, 9 11",  # beds, all of them
        "urine 3 310, 8 715, 9 1135",
        "3 310, 8 715, sorry 9 1135, 4 200",
        "3 1900, 8 1930, 9 1850",  # when each is due, perhaps
        "3 310, 8 715, 99 1135",  # no bed of this unit
        "10 740 at 1900 will be 900 at 2000",
        "10 will be 740 at 1900",
        "10 740 will be at 1900",
        "bed 8 is 560, took him for a walk at 1850",
    ],
)
def test_what_may_be_no_round_or_no_later_is_asked(text: str) -> None:
    read = reading(text)
    assert "ask " in read
    assert "mark" not in read
