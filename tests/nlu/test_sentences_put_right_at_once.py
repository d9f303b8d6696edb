"""What was put right at once, whoever was called away, and what an old canister ended at."""

from __future__ import annotations

import pytest

from .saying import BEDS, at, reading

WARD = tuple(str(number) for number in range(201, 231))


@pytest.mark.parametrize(
    ("clock", "beds", "text", "read"),
    [
        (
            "2130",
            BEDS,
            "bed 10 tubing came disconnected at 2120 reconnected straight away",
            "incident bed=10 at=21:20 what=disconnected",
        ),
        (
            "2130",
            BEDS,
            "bed 10 disconnected at 2120 reconnected",
            "incident bed=10 at=21:20 what=disconnected",
        ),
        (
            "2130",
            BEDS,
            "bed 10 tubing came apart at 2120 but reconnected within seconds",
            "incident bed=10 at=21:20 what=disconnected",
        ),
        (
            "2130",
            BEDS,
            "bed 10 tubing came off, reconnected within 10 seconds",
            "incident bed=10 what=disconnected",
        ),
        (
            "2130",
            BEDS,
            "bed 6 connector came off, reconnected within seconds",
            "incident bed=6 what=disconnected",
        ),
        (
            "2130",
            BEDS,
            "bed 6 drain was tipped over at 2120 but righted immediately",
            "incident bed=6 at=21:20 what=tipped",
        ),
        (
            "2130",
            BEDS,
            "bed 6 came apart at the connector 2120 fixed right away",
            "incident bed=6 at=21:20 what=disconnected",
        ),
        (
            "2130",
            BEDS,
            "bed 10 disconnected at 2120 reconnected to suction at 2125",
            "incident bed=10 at=21:20 what=disconnected; incident bed=10 at=21:25 what=suction_on",
        ),
        (
            "1530",
            BEDS,
            "bed 5 read 370 ml fifteen minutes ago, got pulled into a crash call",
            "mark bed=5 at=15:15 level_ml=370",
        ),
        (
            "1530",
            BEDS,
            "got pulled away to a code. bed 5 370 at 1515",
            "mark bed=5 at=15:15 level_ml=370",
        ),
        (
            "1230",
            WARD,
            "HOW FULL IS THE BOX ON 217",
            "asked bed=217 topic=capacity",
        ),
        (
            "1230",
            WARD,
            "is the box on 217 full",
            "asked bed=217 topic=capacity",
        ),
        (
            "1230",
            WARD,
            "whats the suction on 217",
            "asked bed=217 topic=checks",
        ),
        (
            "1230",
            WARD,
            "217 back, box on 340",
            "back bed=217; mark bed=217 level_ml=340",
        ),
        (
            "2000",
            BEDS,
            "bed 4 changed canister, old one topped out at 1940",
            "exchanged bed=4 final_ml=1940",
        ),
        (
            "2000",
            BEDS,
            "bed 4 box swapped, old one maxed out at 1940",
            "exchanged bed=4 final_ml=1940",
        ),
        (
            "2000",
            BEDS,
            "bed 4 new box, old one got changed at 1940",
            "exchanged bed=4 at=19:40",
        ),
        (
            "2000",
            BEDS,
            "Drain bottle changed bed 16 at 18:20 as 3/4 full. 1500 in the old bottle.",
            "exchanged bed=16 at=18:20 final_ml=1500",
        ),
        (
            "2000",
            WARD,
            "Replaced chest drain unit rm 215 @ 1640. Final on old unit 1,790 mL. New one seal 2 suction 20.",
            "exchanged bed=215 at=16:40 final_ml=1790; checked bed=215 at=16:40 seal_cm=2 suction_cmh2o=20",
        ),
    ],
)
def test_what_was_put_right_is_told_as_it_happened(
    clock: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert reading(text, beds=beds, arrived=at(clock)) == read


@pytest.mark.parametrize(
    ("clock", "beds", "text"),
    [
        ("2130", BEDS, "bed 10 disconnected at 2120 to be reconnected"),
        ("2130", BEDS, "bed 10 disconnected 2120 reconnected 40 ml out"),
        ("2130", BEDS, "bed 10 disconnected at 2120 reconnected?"),
        ("2130", BEDS, "bed 10 disconnected at 2120 and needs reconnected asap"),
        ("1530", BEDS, "bed 5 370 at 1515, it got pulled"),
        ("1530", BEDS, "bed 5 370 at 1515, tube got pulled into the bed rail"),
        ("1530", BEDS, "bed 5 370 at 1515 got pulled out"),
        ("1530", BEDS, "bed 5 got pulled into a side room"),
        ("1230", WARD, "217 back from xray, how full is the box on 217? bottle on 340"),
        ("2000", BEDS, "bed 4 new box, old one finished at 1940"),
        ("2000", BEDS, "bed 4 new box, old one got full at 1940"),
        ("2000", BEDS, "bed 16 box 3/4 full"),
        ("2000", BEDS, "changed bed 16 box on 3/4, old 1500"),
    ],
)
def test_what_is_not_done_is_asked(clock: str, beds: tuple[str, ...], text: str) -> None:
    told = reading(text, beds=beds, arrived=at(clock))
    assert "ask " in told or not told
