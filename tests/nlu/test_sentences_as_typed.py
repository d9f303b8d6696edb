"""What nurses type without a second look: amounts that came, orders, questions with their reasons."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading

WARD = (*(str(number) for number in range(1, 25)), "8A", "8B", "9A", "9B")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "pt in 2 rolled, 120 dark red came out",
            "drained bed=2 volume_ml=120; checked bed=2 fluid=dark_red",
        ),
        ("bed 2 60 bloody gushed out", "drained bed=2 volume_ml=60; checked bed=2 fluid=sanguineous"),
        ("bed 2 90 gushed out at 0600", "drained bed=2 at=06:00 volume_ml=90"),
        ("bed 2 340 serous no leak", "mark bed=2 level_ml=340; checked bed=2 air_leak=none fluid=serous"),
        (
            "bed 2 340 serous, drained 40 since last",
            "mark bed=2 level_ml=340; checked bed=2 fluid=serous; drained bed=2 volume_ml=40",
        ),
        (
            "bed 6 put out another 80 since breakfast and still swinging",
            "drained bed=6 volume_ml=80; checked bed=6 tidaling=True",
        ),
    ],
)
def test_what_came_out_is_an_amount_and_no_line(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "6: 95 at 0600, no air leak, water seal",
            "mark bed=6 at=06:00 level_ml=95; checked bed=6 at=06:00 suction_cmh2o=0 air_leak=none",
        ),
        ("bed 6 no leak, ws, swinging", "checked bed=6 suction_cmh2o=0 air_leak=none tidaling=True"),
        ("bed 6 no leak, water seal 2", "checked bed=6 seal_cm=2 air_leak=none"),
        ("bed 6 suction 20, water seal", "checked bed=6 suction_cmh2o=20"),
        ("checked tubing, water seal, dressing bed 6", "ask kind"),
    ],
)
def test_a_water_seal_told_alone_is_how_the_drain_is_set(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("arvo crew can ignore bed 3, no drain in there anymore", "ask kind"),
        ("nights to ignore bed 3", "ask kind"),
        ("disregard bed 3, no drain there", "ask kind"),
        ("disregard bed 3", "withdrawn bed=3"),
        ("you can ignore the 0600 on bed 3", "withdrawn bed=3 at=06:00"),
        (
            "please take out what I sent for bed 11 at 06:00, I was standing at the wrong patient",
            "withdrawn bed=11 at=06:00",
        ),
    ],
)
def test_a_bed_that_others_may_leave_out_takes_nothing_back(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize("text", ["Jen here for 8A to 9B", "Jen covering 8A to 9B", "I have 8A to 9B"])
def test_whose_beds_these_are_moves_nobody(text: str) -> None:
    assert "moved bed" not in reading(text, WARD)


def test_a_bed_to_a_bed_is_a_move() -> None:
    assert reading("8A to 9B", WARD) == "moved bed=8A to_bed=9B"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "surgeon wants bed 16 off suction, so please put the order in as water seal",
            "ordered bed=16 suction_cmh2o=0",
        ),
        (
            "dr ordered bed 16 off suction, is now on water seal",
            "ordered bed=16 suction_cmh2o=0; checked bed=16 suction_cmh2o=0",
        ),
        (
            "Resident clamped the tube in 5 at 0615 and wants an x-ray in four hours",
            "incident bed=5 at=06:15 what=clamped",
        ),
        ("Resident clamped the tube in 5 at 0615 and wants it unclamped at 1000", "ask kind"),
    ],
)
def test_what_is_ordered_is_not_found_and_what_was_done_stays_done(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("is 11 still leaking?", "asked bed=11 topic=checks"),
        (
            "Has anyone checked the seal on bed 1 today? I can't see it on the chart",
            "asked bed=1 topic=checks",
        ),
        (
            "How much has bed 2 put out since the tube went in? attending wants it for morning report",
            "asked bed=2 topic=total window=placement",
        ),
        ("What is the hourly rate on 11 since he came back?", "asked bed=11 topic=rate"),
        ("what's the total on 11 since he came back from theatre", "ask window"),
    ],
)
def test_a_question_has_the_topic_of_its_own_sentence(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 14 was 1115 at 06:00, slower than last night", "mark bed=14 at=06:00 level_ml=1115"),
        ("9 925 6am drsg changed", "mark bed=9 at=06:00 level_ml=925"),
        ("bed 6 780 0630 dressing changed cdi", "mark bed=6 at=06:30 level_ml=780"),
        ("bed 6 changed 780 at 0630", "ask level_ml"),
        ("bed 6 780 0600 dressing soaked", "mark bed=6 at=06:00 level_ml=780"),
        ("4 swinging 2cm, no leak", "checked bed=4 air_leak=none tidaling=True"),
        (
            "bed 3 700 at 6 am column moving, no bubbling",
            "mark bed=3 at=06:00 level_ml=700; checked bed=3 at=06:00 air_leak=none tidaling=True",
        ),
        ("10 canister knocked over on the way back from ct", "incident bed=10 what=tipped"),
        ("bed 10 on the way back from ct", "back bed=10"),
        ("bed 3 column not moving", "checked bed=3 tidaling=False"),
        ("11 drain got knocked over on the trolley coming back", "incident bed=11 what=tipped"),
        ("bed 3 tubing came apart 0640, reconnected", "incident bed=3 at=06:40 what=disconnected"),
    ],
)
def test_what_is_compared_or_put_right_leaves_the_line_whole(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read
