"""Small words beside a line or an event, who knocked a drain over, and harm that did not come."""

from __future__ import annotations

import pytest

from .saying import BEDS, at, reading


@pytest.mark.parametrize(
    ("clock", "beds", "text", "read"),
    [
        (
            "1905",
            BEDS,
            "7 pm: bed 12 670, bed 6 still only 15, bed 3 120",
            "mark bed=12 at=19:00 level_ml=670; mark bed=6 at=19:00 level_ml=15; mark bed=3 "
            "at=19:00 level_ml=120",
        ),
        (
            "1905",
            BEDS,
            "bed 6 only 15 at 1900",
            "mark bed=6 at=19:00 level_ml=15",
        ),
        (
            "1905",
            BEDS,
            "bed 6 only 15 out",
            "drained bed=6 volume_ml=15",
        ),
        (
            "1905",
            BEDS,
            "bed 18 770 at 1845, sorry fat thumbs",
            "mark bed=18 at=18:45 level_ml=770",
        ),
        (
            "1905",
            BEDS,
            "bed 18 770 at 1845 sorry gloves",
            "mark bed=18 at=18:45 level_ml=770",
        ),
        (
            "1905",
            BEDS,
            "19 drained 120 mL more at 1900",
            "drained bed=19 at=19:00 volume_ml=120",
        ),
        (
            "1905",
            BEDS,
            "tube halfway out of his chest bed 9 need help",
            "incident bed=9 what=dislodged",
        ),
        (
            "1905",
            BEDS,
            "found drain on its side bed 7 at 1840",
            "incident bed=7 at=18:40 what=tipped",
        ),
        (
            "1905",
            BEDS,
            "Obs bed 22 at 1840 drain swinging not bubbling",
            "checked bed=22 at=18:40 air_leak=none tidaling=True",
        ),
        (
            "1905",
            BEDS,
            "obs on bed 22: drain swinging, not bubbling, suction 20",
            "checked bed=22 suction_cmh2o=20 air_leak=none tidaling=True",
        ),
        (
            "1905",
            BEDS,
            "the tea trolley knocked bed 15's bottle over, ten minutes ago, stood it back up",
            "incident bed=15 at=18:55 what=tipped",
        ),
        (
            "1905",
            BEDS,
            "mop guy knocked 12s drain over, upright again",
            "incident bed=12 what=tipped",
        ),
        (
            "1905",
            BEDS,
            "bed 9 220 at 1845, a touch bloody",
            "mark bed=9 at=18:45 level_ml=220; checked bed=9 at=18:45 fluid=sanguineous",
        ),
        (
            "1905",
            BEDS,
            "15 up to 690 at 1845, 19 hasnt moved, no change",
            "mark bed=15 at=18:45 level_ml=690; drained bed=19 at=18:45 volume_ml=0",
        ),
        (
            "1905",
            BEDS,
            "bed 21 box knocked over, no crack that i can see",
            "incident bed=21 what=tipped",
        ),
        (
            "1905",
            BEDS,
            "knocked over! box of bed 21, no crack that i can see",
            "incident bed=21 what=tipped",
        ),
        (
            "1905",
            BEDS,
            "bed 21 no damage, box knocked over",
            "incident bed=21 what=tipped",
        ),
        (
            "1905",
            BEDS,
            "bed 9 pleural fluid a bit bloody",
            "checked bed=9 fluid=sanguineous",
        ),
    ],
)
def test_small_words_leave_what_is_told(clock: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert reading(text, beds=beds, arrived=at(clock)) == read


@pytest.mark.parametrize(
    ("clock", "beds", "text"),
    [
        ("1905", BEDS, "bed 6 only 3, 4 and 5 done"),
        ("1905", BEDS, "bed 18 two fingers below 700"),
        ("1905", BEDS, "bed 18 770, sorry 700, fat thumbs"),
        ("1905", BEDS, "19 120 ml more at 1900"),
        ("1905", BEDS, "found drain 7 on its side"),
        ("1905", BEDS, "obs bed 22 120/60 no leak"),
        ("1905", BEDS, "obs bed 22 36.8 88 16 no leak"),
        ("1905", BEDS, "nobody knocked 12s drain over"),
        ("1905", BEDS, "someone nearly knocked 12s drain over"),
        ("1905", BEDS, "who knocked 12s drain over"),
        ("1905", BEDS, "he says mop guy knocked 12s drain over"),
        ("1905", BEDS, "wife thinks a trolley knocked 12s drain over"),
        ("1905", BEDS, "food cart knocked bed 12's table over"),
        ("1905", BEDS, "bed 9 touch base at 1845"),
        ("1905", BEDS, "bed 21 box not cracked"),
        ("1905", BEDS, "bed 21 box tipped, damage?"),
        ("1905", BEDS, "bed 9 pleural fluid"),
        ("1905", BEDS, "bed 9 has pleural fluid on xray, drain serous"),
    ],
)
def test_what_may_not_be_so_is_asked(clock: str, beds: tuple[str, ...], text: str) -> None:
    told = reading(text, beds=beds, arrived=at(clock))
    assert "ask " in told or not told
