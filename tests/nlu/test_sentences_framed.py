"""What stands around lines, as nurses type it: who writes, how many beds come, that they go home.

And what looks like it, and must not be left out.
"""

from __future__ import annotations

import pytest

from .saying import MORNING, reading

BOTH = "mark bed=2 at=06:00 level_ml=210; mark bed=5 at=06:00 level_ml=1340"
TWO = "bed 2 210, bed 5 1340, both at 0600"
ONE = "mark bed=3 at=06:00 level_ml=410"


@pytest.mark.parametrize(
    "text",
    [
        "my two for report, all at 0600: bed 2 210, bed 5 1340",
        "my two at 0600: bed 2 210, bed 5 1340",
        "numbers for the hour at 0600: bed 2 210, bed 5 1340",
        f"Nights here. {TWO}. Off home now",
        f"from the top: {TWO}",
        f"handing over: {TWO}. heading home",
        f"codes all night so here's {TWO}",
        f"sorry, slammed here: {TWO}",
        f"{TWO}. quiet tonight knock on wood",
        f"{TWO}. giving report now",
        f"numbers before i run: {TWO}",
        f"back from break: {TWO}",
        f"{TWO} and i'm off",
        f"{TWO}. what a night",
        f"last two: {TWO}",
        f"two to log: {TWO}",
        f"one by one: {TWO}",
        f"apologies for lateness: {TWO}",
        "the other two at 0600: bed 2 210, bed 5 1340",
        f"pen ready? {TWO}",
        f"{TWO}. all yours now",
        f"{TWO}. i leave at 0730",
        f"{TWO}. report at 0715",
        f"{TWO}. call me if any issues",
        "6am numbers: bed 2 210, bed 5 1340",
        "0600 hourlies - bed 2 210, bed 5 1340",
        "beds 2 and 5 at 210 and 1340, 0600",
        "beds 2 and 5 at 0600: 210 and 1340",
        "2 and 5 are 210 and 1340 at 0600",
        "beds 2 and 5 at 0600 210 and 1340 respectively",
    ],
)
def test_what_stands_around_lines_is_left_out(text: str) -> None:
    assert reading(text, arrived=MORNING) == BOTH


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 3 mark 410 at 0600, clocks went back", ONE),
        ("bed 3 mark 410 at 0600. im off now", ONE),
        ("bed 3 hourly: 0500 390, 0600 410", f"mark bed=3 at=05:00 level_ml=390; {ONE}"),
        ("bed 3 on the hour: 0500 390, 0600 410", f"mark bed=3 at=05:00 level_ml=390; {ONE}"),
        ("bed 3, two readings: 0500 390, 0600 410", f"mark bed=3 at=05:00 level_ml=390; {ONE}"),
        ("bed 3 final for the night 410 at 0600", f"{ONE} closing"),
        ("bed 3 q1h: 0500 390, 0600 410", f"mark bed=3 at=05:00 level_ml=390; {ONE}"),
        ("kiddo in 3 level 410 at 0600", ONE),
        ("beds 3, 7, 11: 630, 85, 1220", "mark bed=3 level_ml=630; mark bed=7 level_ml=85; "
         "mark bed=11 level_ml=1220"),
        ("3 closing line for nights 410, 0600", f"{ONE} closing"),
        ("bed 5 drain knocked off its hook n fell 0612", "incident bed=5 at=06:12 what=tipped"),
    ],
)  # fmt: skip
def test_beside_a_line_such_words_change_nothing_of_it(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    "text",
    [
        "my three for report, all at 0600: bed 2 210, bed 5 1340",
        "bed 2 210 at 0600. off now",
        "bed 2 210 at 0600. Off home now",
        "bed 2 210 at 0600, going home",
        "bed 2 210 at 0600. gone home",
        "bed 2 210 at 0600, went back",
        "bed 2 210 at 0600, clocks wrong",
        "bed 2 210 at 0600, next mark 280 at 0700",
        "report from amy: bed 2 210 at 0600",
        "foley numbers for the hour: bed 2 210, bed 5 1340",
        "goal for the hour: bed 2 210, bed 5 1340",
        "this morning: bed 2 210, bed 5 1340",
        "morning numbers: bed 2 210 at 3, bed 5 1340 at 4",
        "bed 2 210 at 0600. sorry bed 5 210 at 0600",
        "beds 2 and 5 at 0600: 210",
        "beds 2 and 5 at 0600: 210, 60 and 30",
        "beds 2 and 5 at 0500 and 0600: 210 and 1340",
        "next two: bed 2 210 at 0600",
        "bed 2 on the hour: 40, 45",
        "bed 2 q1h 210",
        "bed 2 210 at 0600. patient leaving at 0730",
        "bed 2 210 at 0600. tube out at 0730",
        "bed 2 210 at 0600. i did 240 at 0730",
        "bed 2 210 at 0600. report at 0500",
        "bed 2 210 at 0600. if any issues",
        "bed 2 210 at 0600? not sure",
        "is bed 2 ok? 210 at 0600",
        "is bed 2 210 at 0600",
        "was bed 2 at 210 at 0600",
        "6am goals: bed 2 210, bed 5 1340",
        "before: bed 2 210, after: bed 2 250",
        "bed 2 210 at 0600. off suction until tomorrow",
        "bed 2 210 at 0600 and i'm wrong",
        "bed 2 hourly 40",
        "bed 2 hourly output: 0500 40, 0600 35",
        "bed 3, two readings: 0400 380, 0500 390, 0600 410",
        "beds 2 and 5 at 5 and 6",
        "beds 2 and 5 at 0500 and 0600",
        "beds 2 and 25: 210 and 1340",
        "2 and 5: drained 210 and 60",
        "one of mine is at 340 as of 0600",
        "bed 3 5: 410, 6: 430",
        "15 and 20. 15 no leak",
    ],
)
def test_what_only_looks_so_is_asked(text: str) -> None:
    assert reading(text, arrived=MORNING).startswith("ask ")


def test_lines_told_in_words_beside_another_bed_s_remark_are_asked() -> None:
    said = "bed twelve ten fifty bed fourteen two twenty at nineteen hundred got it, bed 7 noted"
    assert reading(said).endswith("ask level_ml")
