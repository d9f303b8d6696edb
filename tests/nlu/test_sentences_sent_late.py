"""What comes late, an hour behind a whole line, and a bed from which nothing came."""

from __future__ import annotations

import pytest

from .saying import BEDS, at, reading

WARD = tuple(str(number) for number in range(201, 231))


@pytest.mark.parametrize(
    ("clock", "beds", "text", "read"),
    [
        (
            "0207",
            BEDS,
            "forgot to send 8 was 1340 at 1 and 1365 at 2",
            "mark bed=8 at=01:00 level_ml=1340; mark bed=8 at=02:00 level_ml=1365",
        ),
        (
            "0207",
            BEDS,
            "sorry forgot to send 8 was 340 at 1 and 365 at 2",
            "mark bed=8 at=01:00 level_ml=340; mark bed=8 at=02:00 level_ml=365",
        ),
        (
            "0207",
            BEDS,
            "forgot to send bed 8 1340 at 1 and 1365 at 2",
            "mark bed=8 at=01:00 level_ml=1340; mark bed=8 at=02:00 level_ml=1365",
        ),
        (
            "0207",
            BEDS,
            "forgot to send 8: 1340 at 1",
            "mark bed=8 at=01:00 level_ml=1340",
        ),
        (
            "0207",
            BEDS,
            "forgot to tell you 8 was 1340 at 1",
            "mark bed=8 at=01:00 level_ml=1340",
        ),
        (
            "0207",
            BEDS,
            "meant to send earlier bed 8 1340 at 1",
            "mark bed=8 at=01:00 level_ml=1340",
        ),
        (
            "2000",
            BEDS,
            "late: bed 4 tube out at 1800",
            "removed bed=4 at=18:00",
        ),
        (
            "2000",
            BEDS,
            "late: bed 4 off to CT 1800",
            "away bed=4 at=18:00",
        ),
        (
            "2000",
            BEDS,
            "late: changed the canister bed 4 at 1800, old one 1500",
            "exchanged bed=4 at=18:00 final_ml=1500",
        ),
        (
            "2000",
            BEDS,
            "late - canister changed bed 4 at 1800, final 1500",
            "exchanged bed=4 at=18:00 final_ml=1500",
        ),
        (
            "2000",
            BEDS,
            "delayed entry: bed 4 canister changed at 1800",
            "exchanged bed=4 at=18:00",
        ),
        (
            "2000",
            BEDS,
            "late: bed 4 1500 at 1700",
            "mark bed=4 at=17:00 level_ml=1500",
        ),
        (
            "0610",
            BEDS,
            "bed 15 is at 1720 at 6, seal topped up to 2",
            "mark bed=15 at=06:00 level_ml=1720; checked bed=15 at=06:00 seal_cm=2",
        ),
        (
            "0610",
            BEDS,
            "bed 15 is at 1720 at 6",
            "mark bed=15 at=06:00 level_ml=1720",
        ),
        (
            "1905",
            BEDS,
            "nil out from 17 since the last mark",
            "drained bed=17 volume_ml=0",
        ),
        (
            "1905",
            BEDS,
            "no output from 17 since 1800",
            "drained bed=17 volume_ml=0",
        ),
        (
            "1905",
            BEDS,
            "nothing from 17 this hour",
            "drained bed=17 volume_ml=0",
        ),
        (
            "1905",
            BEDS,
            "nothing further from 17 since lunch",
            "drained bed=17 volume_ml=0",
        ),
        (
            "1905",
            BEDS,
            "nil more from 17 in the last hour",
            "drained bed=17 volume_ml=0",
        ),
        (
            "1905",
            BEDS,
            "none out of 17 overnight",
            "drained bed=17 volume_ml=0",
        ),
        (
            "1905",
            WARD,
            "no output from 217 since 1800, no leak",
            "drained bed=217 volume_ml=0; checked bed=217 air_leak=none",
        ),
    ],
)
def test_a_line_that_comes_late_is_read(clock: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert reading(text, beds=beds, arrived=at(clock)) == read


@pytest.mark.parametrize(
    ("clock", "beds", "text"),
    [
        ("0207", BEDS, "forgot to send 340 for bed 8 at 1"),
        ("0207", BEDS, "forgot to send 8 to CT at 1"),
        ("0207", BEDS, "forgot to send 8 ml for bed 3"),
        ("0207", BEDS, "i forgot to send 8 was in CT"),
        ("0207", BEDS, "forgot to send 8 was 1340 yesterday"),
        ("2000", BEDS, "late, bed 4 is late"),
        ("2000", BEDS, "too late: bed 4 tube out at 1800"),
        ("2000", BEDS, "late: 4, 5, 6"),
        ("1805", BEDS, "bed 15 is at 1720 at 6"),
        ("1905", BEDS, "bed 15 is at 1100 at 640"),
        ("1905", BEDS, "nil out from 17"),
        ("1905", BEDS, "nothing new from 17 since the line at 340"),
        ("1905", BEDS, "no change from 17 since 1800"),
        ("1905", BEDS, "no urine output from 17 since 1800"),
        ("1905", BEDS, "nothing from 17 since 340 at 1800"),
        ("1905", BEDS, "nothing from lab on 17 since 1800"),
        ("1905", BEDS, "no drainage from the site on 17 since 1800"),
        ("1905", BEDS, "is there no output from 17 since 1800"),
    ],
)
def test_what_may_be_something_else_is_asked(clock: str, beds: tuple[str, ...], text: str) -> None:
    told = reading(text, beds=beds, arrived=at(clock))
    assert "ask " in told or not told
