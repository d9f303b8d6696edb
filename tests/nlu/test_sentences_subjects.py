"""What fell, was kicked, is back or came off: events only where they are of the drain or its patient."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    "text",
    [
        "pt in 5 fell at 1700, drain ok",
        "phone fell on the floor in 11",
        "bed 11 pt fell asleep",
        "IV fell out bed 11",
        "pt fell out of bed 16 and the chest drain fell over too",
        "he kicked me while i was marking 12",
        "visitor fell over in bed 6",
        "bed 1 skin cracked around site",
        "bed 4 lip split, sutured",
        "head of bed 21 raised 30 degrees",
        "pulled pt up in bed 12, drain intact",
        "changed 24 at 1800",
        "bed 24 changed, mark later",
        "bed 12 tube feeds off, ng clamped",
        "my back hurts, bed 13 is heavy",
        "bed 11 back pain 6/10",
        "done with 12, going home",
        "bed 3's wife went home",
        "ask the reg if bed 3 ok off suction",
        "night shift said they changed 7s canister",
        "canister in 4 is nearly full, going to swap it at 2000",
        "6A suction reconnected 0920 after it fell off the wall port",
        "bed 9 CXR shows tube in good position",
        "bed 12 back on at 1855",
        "bed 5 had a fall, no injury",
    ],
)
def test_an_event_of_something_else_is_asked(text: str) -> None:
    assert set(reading(text).split("; ")) <= {"ask kind", "ask bed", "ask level_ml", "ask at", "ask final_ml"}


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "visitor kicked the canister in 5, all fluid went to the other chambers",
            "incident bed=5 what=tipped",
        ),
        ("lady in 22 kicked her box over", "incident bed=22 what=tipped"),
        ("bed 7 drain found lying on its side", "incident bed=7 what=tipped"),
        (
            "the visitor tripped over the drain of bed 5 and it tipped at 1830",
            "incident bed=5 at=18:30 what=tipped",
        ),
        ("someone raised 13's drain up on the bed rail above her chest", "incident bed=13 what=raised"),
        ("box for 4 hanging on iv pole above his chest!!", "incident bed=4 what=raised"),
        ("bed 21 drain hung on the bed rail above his chest", "incident bed=21 what=raised"),
        ("tubing all twisted under him bed 8, straightened", "incident bed=8 what=kinked"),
        ("found a kink in the line bed 11", "incident bed=11 what=kinked"),
        ("pulled his own chest tube out 4", "incident bed=4 what=dislodged"),
        ("bed 9 drain yanked out by pt 1850", "incident bed=9 at=18:50 what=dislodged"),
        ("6 tube pulled apart at the connector", "incident bed=6 what=disconnected"),
        (
            "suction found off in 9, back on at 1855",
            "incident bed=9 what=suction_off; incident bed=9 at=18:55 what=suction_on",
        ),
        ("15 discharged against advice 1830", "left bed=15 at=18:30"),
        ("24 went down for ct 10 min ago", "away bed=24 at=18:55"),
        ("bed 8 down in radiology for a scan", "away bed=8"),
        ("22 returned from mri", "back bed=22"),
    ],
)
def test_an_event_of_the_drain_is_told_in_everyday_words(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("19 bubbling in water seal constantly", "checked bed=19 air_leak=continuous"),
        ("14 bubbling on cough only, swinging", "checked bed=14 air_leak=intermittent tidaling=True"),
        (
            "12 canister now at 1225 ml, AL neg",
            "mark bed=12 at=19:05 level_ml=1225; checked bed=12 at=19:05 air_leak=none",
        ),
        (
            "18: wall suction 90 mmhg, ordered 20 dry suction dial set at 20",
            "ordered bed=18 suction_cmh2o=20; checked bed=18 suction_cmh2o=20 wall_mmhg=90",
        ),
        ("seal low 1 cm bed 19", "checked bed=19 seal_cm=1"),
        ("bed 3 seal chamber low at 1.5", "checked bed=3 seal_cm=1.5"),
        ("3 has serosang drainage, minimal tidaling", "checked bed=3 tidaling=True fluid=serosanguineous"),
    ],
)
def test_a_check_is_told_whole(text: str, read: str) -> None:
    assert reading(text) == read
