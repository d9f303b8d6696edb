"""Questions of the unit beside those of a bed, a canister nearly full, beds on water seal, and new drains."""

from __future__ import annotations

import pytest

from .saying import BEDS, at, reading

LETTERED = tuple(f"{number}{letter}" for number in range(1, 13) for letter in "AB")
CT = (*map(str, range(1, 13)), *(f"CT{number}" for number in range(1, 9)))


@pytest.mark.parametrize(
    ("clock", "beds", "text", "read"),
    [
        (
            "2000",
            BEDS,
            "which beds are due and whats the rate on 22",
            "asked topic=due; asked bed=22 topic=rate",
        ),
        (
            "2000",
            BEDS,
            "who's due and when will 9 be full",
            "asked topic=due; asked bed=9 topic=capacity",
        ),
        (
            "2000",
            BEDS,
            "what's due, and 9's last line",
            "asked topic=due; asked bed=9 topic=last",
        ),
        (
            "2000",
            BEDS,
            "which beds are due and what's 9 at",
            "asked topic=due; asked bed=9 topic=last",
        ),
        (
            "2000",
            BEDS,
            "rate on 22 and which beds are due",
            "asked bed=22 topic=rate; asked topic=due",
        ),
        (
            "2000",
            BEDS,
            "whats the rate on 22 and when is it due",
            "asked bed=22 topic=rate; asked bed=22 topic=due",
        ),
        (
            "2000",
            BEDS,
            "anything due? and total on 9",
            "asked topic=due; asked bed=9 topic=total",
        ),
        (
            "2000",
            BEDS,
            "when is 9 due and which beds are overdue",
            "asked bed=9 topic=due; asked topic=due",
        ),
        (
            "2000",
            BEDS,
            "which beds are due, what is 22 at, and when will 9 be full",
            "asked topic=due; asked bed=22 topic=last; asked bed=9 topic=capacity",
        ),
        (
            "2000",
            BEDS,
            "what is due on 9 and whats the rate",
            "asked bed=9 topic=due; asked bed=9 topic=rate",
        ),
        (
            "2000",
            BEDS,
            "bed 15 canister nearly full",
            "asked bed=15 topic=capacity",
        ),
        (
            "2000",
            BEDS,
            "is the box on 15 nearly full, do I need to change it",
            "asked bed=15 topic=capacity; asked bed=15 topic=due",
        ),
        (
            "1905",
            BEDS,
            "bed 9 suction 20, 2 water seal",
            "checked bed=9 seal_cm=2 suction_cmh2o=20",
        ),
        (
            "1905",
            BEDS,
            "9 suction 20, 2 cm water seal",
            "checked bed=9 seal_cm=2 suction_cmh2o=20",
        ),
        (
            "1905",
            BEDS,
            "9 suction 20, seal 2",
            "checked bed=9 seal_cm=2 suction_cmh2o=20",
        ),
        (
            "1905",
            CT,
            "CT1 and CT2 suction 20, CT3 water seal",
            "checked bed=CT1 suction_cmh2o=20; checked bed=CT2 suction_cmh2o=20; checked "
            "bed=CT3 suction_cmh2o=0",
        ),
        (
            "1905",
            CT,
            "CT3 water seal",
            "checked bed=CT3 suction_cmh2o=0",
        ),
        (
            "1905",
            CT,
            "CT3 water seal?",
            "asked bed=CT3 topic=checks",
        ),
        (
            "1905",
            CT,
            "CT3 water seal 2cm, no leak",
            "checked bed=CT3 seal_cm=2 air_leak=none",
        ),
        (
            "1905",
            LETTERED,
            "3A 420 at 1900, 3B water seal",
            "mark bed=3A at=19:00 level_ml=420; checked bed=3B at=19:00 suction_cmh2o=0",
        ),
        (
            "1905",
            BEDS,
            "new drain placed bed 11, 12 kg kid, effusion, at 1830",
            "placed bed=11 at=18:30 reason=effusion weight_kg=12",
        ),
        (
            "1905",
            BEDS,
            "new drain placed bed 11 right pleural at 1830",
            "placed bed=11 tube=right pleural at=18:30",
        ),
        (
            "1905",
            BEDS,
            "new drain placed bed 11 at 1830, old one 1500",
            "exchanged bed=11 at=18:30 final_ml=1500",
        ),
        (
            "1905",
            BEDS,
            "new chest tube placed bed 11, 12 kg kid, effusion, at 1830",
            "placed bed=11 at=18:30 reason=effusion weight_kg=12",
        ),
    ],
)
def test_a_question_or_setting_is_of_its_own_bed(
    clock: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert reading(text, beds=beds, arrived=at(clock)) == read


@pytest.mark.parametrize(
    ("clock", "beds", "text"),
    [
        ("2000", BEDS, "bed 15 canister nearly full, will need changing soon"),
        ("2000", BEDS, "need to change bed 15's canister soon, nearly full"),
        ("2000", BEDS, "bed 15 box almost full, changing it soon"),
        ("2000", BEDS, "which beds are due and which are nearly full"),
        ("1905", BEDS, "1 and 2 suction 20, 3 water seal"),
        ("1905", BEDS, "1 suction 20, 3 water seal"),
        ("1905", BEDS, "9 440, 2 water seal"),
        ("1905", BEDS, "bed 11 his kid had an effusion, 340 at 1900"),
    ],
)
def test_what_may_be_of_either_is_asked(clock: str, beds: tuple[str, ...], text: str) -> None:
    told = reading(text, beds=beds, arrived=at(clock))
    assert "ask " in told or not told
