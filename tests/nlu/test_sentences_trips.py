"""Who was taken to theatre or a scan, in everyday words."""

from __future__ import annotations

import pytest

from .saying import BEDS, at, reading


@pytest.mark.parametrize(
    ("clock", "beds", "text", "read"),
    [
        (
            "1905",
            BEDS,
            "Just popped bed 9 down to theatre",
            "away bed=9",
        ),
        (
            "1905",
            BEDS,
            "nipped bed 9 over to CT",
            "away bed=9",
        ),
        (
            "1905",
            BEDS,
            "nipped 9 down to xray at 1840",
            "away bed=9 at=18:40",
        ),
        (
            "1905",
            BEDS,
            "dropped bed 9 off at theatre",
            "away bed=9",
        ),
        (
            "1905",
            BEDS,
            "took bed 9 for his CT",
            "away bed=9",
        ),
        (
            "1905",
            BEDS,
            "ive just walked bed 9 round to theatre",
            "away bed=9",
        ),
        (
            "1905",
            BEDS,
            "whisked bed 9 off to theatre",
            "away bed=9",
        ),
        (
            "1905",
            BEDS,
            "handed bed 9 over to theatre at 1840",
            "away bed=9 at=18:40",
        ),
        (
            "1905",
            BEDS,
            "bed 9 collected by theatre at 1850",
            "away bed=9 at=18:50",
        ),
        (
            "1905",
            BEDS,
            "bed 9 picked up by porters for CT",
            "away bed=9",
        ),
        (
            "1905",
            BEDS,
            "bed 9 popped down to theatre",
            "away bed=9",
        ),
        (
            "1905",
            BEDS,
            "bed 9 whisked off to theatre 1840",
            "away bed=9 at=18:40",
        ),
        (
            "1905",
            BEDS,
            "bed 9 nipped to xray",
            "away bed=9",
        ),
        (
            "1905",
            BEDS,
            "bed 9 taken by theatre staff 1840, drain at 340",
            "away bed=9 at=18:40; mark bed=9 at=18:40 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "bed 16 has left for the OR at 1830",
            "away bed=16 at=18:30",
        ),
        (
            "1905",
            BEDS,
            "16 already left for the OR, line 340 at 1830",
            "away bed=16 at=18:30; mark bed=16 at=18:30 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "bed 16 340 at 1830, waiting for the OR",
            "mark bed=16 at=18:30 level_ml=340",
        ),
        (
            "1905",
            BEDS,
            "bed 16 headed down to the OR at 1830",
            "away bed=16 at=18:30",
        ),
        (
            "1905",
            BEDS,
            "bed 16 wheeled into the OR 1830",
            "away bed=16 at=18:30",
        ),
    ],
)
def test_who_was_taken_somewhere_is_away(clock: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert reading(text, beds=beds, arrived=at(clock)) == read


@pytest.mark.parametrize(
    ("clock", "beds", "text"),
    [
        ("1905", BEDS, "popped to theatre for bed 9's meds"),
        ("1905", BEDS, "popped over to CT, bed 9 340 at 1840"),
        ("1905", BEDS, "dropped bed 9 notes off at theatre"),
        ("1905", BEDS, "took bed 9 for a walk"),
        ("1905", BEDS, "about to pop bed 9 down to theatre"),
        ("1905", BEDS, "popping bed 9 down to theatre at 2000"),
        ("1905", BEDS, "who took bed 9 to CT"),
        ("1905", BEDS, "took bed 9 in for the CT team"),
        ("1905", BEDS, "took bed 9 at theatre handover 340 at 1840"),
        ("1905", BEDS, "rolled bed 9 in the scan room"),
        ("1905", BEDS, "bed 9 picked up by his wife"),
        ("1905", BEDS, "bed 9 collected by porters for discharge"),
        ("1905", BEDS, "bed 9 picked up 340 by theatre"),
        ("1905", BEDS, "bed 9 to be collected by theatre at 2000"),
        ("1905", BEDS, "bed 9 collected by theatre?"),
        ("1905", BEDS, "bed 9 has not been collected by theatre"),
        ("1905", BEDS, "bed 16 has left for home"),
        ("1905", BEDS, "bed 16 has not left for the OR"),
        ("1905", BEDS, "bed 16 goes to the OR at 2000"),
        ("1905", BEDS, "bed 16 340 the or 350"),
        ("1905", BEDS, "bed 16 the or the 340"),
    ],
)
def test_whoever_only_may_go_is_asked_about(clock: str, beds: tuple[str, ...], text: str) -> None:
    told = reading(text, beds=beds, arrived=at(clock))
    assert "ask " in told or not told
