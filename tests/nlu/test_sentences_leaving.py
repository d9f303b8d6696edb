"""Events told around a bed, in shorthand, beside chatter; and what only sounds like one."""

from __future__ import annotations

from datetime import timedelta

import pytest

from .saying import ARRIVED, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("transferred 21 out to stepdown 1430", "left bed=21 at=14:30"),
        ("transferred pt in 21 to another hospital", "left bed=21"),
        ("discharged 12 home at 1300", "left bed=12 at=13:00"),
        ("sent 12 to theatre at 1830", "away bed=12 at=18:30"),
        ("took 12 down to CT", "away bed=12"),
        ("22 back frm OR", "back bed=22"),
        ("moved 21 to 14", "moved bed=21 to_bed=14"),
        ("moved 10 to 5 at 1830", "moved bed=10 at=18:30 to_bed=5"),
        ("xferred 10 to 5", "moved bed=10 to_bed=5"),
        ("took 12 off suction", "ask kind"),
    ],
)
def test_who_went_is_read_around_the_bed(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("4 cannister swapped, dumped one was 1875", "exchanged bed=4 final_ml=1875"),
        ("10 - tube came right out of his chest", "incident bed=10 what=dislodged"),
        ("bed 7 nearly full 1450", "mark bed=7 level_ml=1450"),
        ("bed 7 nearly full", "asked bed=7 topic=capacity"),
        ("last line for 21", "asked bed=21 topic=last"),
        ("last line of the yr, 19, 1490 at 1855", "mark bed=19 at=18:55 level_ml=1490"),
        ("removed 12's tube at 1830, last line 340", "removed bed=12 at=18:30 level_ml=340"),
        ("yes thats what it says", "answered answer=yes"),
        ("happy new year lol", ""),
        ("bed 12 mark 1050 at 1900 happy new year lol", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 new year resident says pull", "ask kind"),
    ],
)
def test_words_mean_what_the_rest_of_the_message_makes_of_them(text: str, read: str) -> None:
    arrived = ARRIVED - timedelta(minutes=5)
    assert reading(text, arrived=arrived) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 on suction", "ask suction_cmh2o"),
        ("12 suction", "ask kind"),
        ("bed 12 suction", "asked bed=12 topic=checks"),
        ("5, 20 suction, no leak", "checked bed=5 suction_cmh2o=20 air_leak=none"),
        ("3 and 5 on continuous suction", "ask level_ml"),
        ("2 20 suction, 9 waterseal", "checked bed=2 suction_cmh2o=20; checked bed=9 suction_cmh2o=0"),
        ("19 ws -- no bub", "checked bed=19 suction_cmh2o=0 air_leak=none"),
        ("19 water seal intact", "ask bed"),
        ("19 suction 20, 2 ws", "ask level_ml"),
        ("bed 2 suction 20 seal intact", "checked bed=2 suction_cmh2o=20"),
        ("bed 2 20 of suction, 2 water seal", "checked bed=2 seal_cm=2 suction_cmh2o=20"),
    ],
)
def test_suction_without_its_value_is_no_query_and_a_bed_is_no_depth(text: str, read: str) -> None:
    assert reading(text) == read


def test_dictated_beds_in_a_row_on_suction_ask_nothing_of_the_ledger() -> None:
    assert "asked" not in reading("3, 5, 9 all on suction")
    assert "checked" not in reading("2 20 suction 9 waterseal")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("please put 5 back on suction", "ask kind"),
        ("15 nearly tipped the drain", "ask kind"),
        ("12 almost pulled his tube out", "ask kind"),
        ("22 is in theatre, back about 2100", "away bed=22; ask at"),
        ("bed 8 sent to or 2000", "ask at"),
        ("12 tube fell on the floor when he got up", "ask kind"),
        ("12 turned to left side, 120 dumped", "drained bed=12 volume_ml=120"),
        ("urine 40 this hr bed 16, chest drain 30", "ask level_ml"),
        ("14 cxr shows ptx", "ask kind"),
        ("5 is tipped upright again", "ask kind"),
    ],
)
def test_what_was_asked_for_or_nearly_happened_or_is_of_another_is_not_told(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("11 bubbling has gone but still swings", "checked bed=11 air_leak=none tidaling=True"),
        ("bed 6 suction down from 20 to 10", "checked bed=6 suction_cmh2o=10"),
        ("seal low on 15 topped up to 2", "checked bed=15 seal_cm=2"),
        ("17 passed away at 1815 family here", "left bed=17 at=18:15"),
        ("12 swapped the unit over cos it was full - 2000", "exchanged bed=12 final_ml=2000"),
        ("12 changed position and 80 came out", "drained bed=12 volume_ml=80"),
        ("15 kinked, fixed, 90 gushed out", "drained bed=15 volume_ml=90; incident bed=15 what=kinked"),
        (
            "12 coughed and 60 came out bright red",
            "drained bed=12 volume_ml=60; checked bed=12 fluid=bright_red",
        ),
    ],
)
def test_what_happened_is_read_with_the_reason_why(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 8 transferred from 5", "moved bed=5 to_bed=8"),
        ("moved from 5 to 8", "moved bed=5 to_bed=8"),
        ("pt moved from 7 to 19 and marked 310", "moved bed=7 to_bed=19; ask bed"),
        ("bed 8 from 5", "ask bed"),
        ("bed 5 now 8", "ask level_ml"),
        ("bed 5 now 640", "mark bed=5 at=19:05 level_ml=640"),
        ("bed 8 changing the box now its at 1910", "ask final_ml"),
        ("bed 8 box 2 240", "ask level_ml"),
        ("bed 8 second box 240", "ask kind"),
        ("first 2 tubes out", "ask level_ml"),
        ("12's tubes out", "removed bed=12"),
        ("bed 8 order: water seal", "ordered bed=8 suction_cmh2o=0"),
    ],
)
def test_which_bed_and_which_canister_it_was_is_read_or_asked(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("9 no new drain placed", "ask kind"),
        ("no new canister", "ask bed"),
    ],
)
def test_no_new_drain_placed_is_no_placement(text: str, read: str) -> None:
    assert reading(text) == read
