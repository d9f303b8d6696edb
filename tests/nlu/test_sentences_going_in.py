"""Drains that went in, drains that only are in, and what a new canister held before it was connected."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 13 right chest drain in at 18:40, pneumothorax",
            "placed bed=13 tube=right at=18:40 reason=air",
        ),
        ("left icd in at 1840 bed 4", "placed bed=4 tube=left at=18:40"),
        ("bed 6 drain in 0740 left", "placed bed=6 tube=left at=07:40"),
        ("bed 4 chest drain in", "placed bed=4"),
        ("bed 4 chest drain in by dr smith at 1840", "placed bed=4 at=18:40"),
        ("bed 4 drain in for pneumothorax", "placed bed=4 reason=air"),
        ("bed 4 two chest drains in at 1840", "placed bed=4 at=18:40"),
        ("4 has a pigtail in at 1840, left side", "placed bed=4 tube=left at=18:40"),
        ("chest tube put in bed 14 at 1805, stab injury", "placed bed=14 at=18:05 reason=trauma"),
        ("chest tube put in 4 at 1840", "placed bed=4 at=18:40"),
        ("drain in 9 340 at 1900", "mark bed=9 at=19:00 level_ml=340"),
        ("4 has a drain in, line 340", "mark bed=4 level_ml=340"),
        ("bed 4 still has a chest drain in, 340 at 1900", "mark bed=4 at=19:00 level_ml=340"),
        ("bed 4 chest tube in place, no leak", "checked bed=4 air_leak=none"),
        ("bed 4 drain in 1840", "ask level_ml"),
        ("bed 4 drain in since monday", "ask kind"),
        ("3's pigtail in the liver gave 90", "ask volume_ml"),
    ],
)
def test_a_drain_that_went_in_is_placed_and_one_that_is_in_is_not(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "pigtail in 9 right side at 1840 for effusion",
            "placed bed=9 tube=right at=18:40 reason=effusion",
        ),
        ("chest drain bed 4 at 1840, stab wound", "placed bed=4 at=18:40 reason=trauma"),
        ("bed 4 has a drain for empyema", "described bed=4 reason=effusion"),
        ("bed 4 gsw 1840", "described bed=4 reason=trauma; ask level_ml"),
        ("bed 7 64kg ptx, L drain at 1830", "placed bed=7 tube=left at=18:30 reason=air weight_kg=64"),
        (
            "bed 7 64kg lady with ptx, L drain at 1830",
            "placed bed=7 tube=left at=18:30 reason=air weight_kg=64",
        ),
        ("bed 7 drain in at 1830 lt, gush of air, 20 mls", "placed bed=7 tube=left at=18:30 level_ml=20"),
        ("bed 10 htx from fall", "described bed=10 reason=trauma"),
        ("wt for 3: 12.4kg", "described bed=3 weight_kg=12.4"),
        (
            "bed 4 drain for empyema, no leak at 1840",
            "checked bed=4 at=18:40 air_leak=none; described bed=4 reason=effusion",
        ),
        (
            "bed 12 haemothorax right drain line 340 @ 1840",
            "mark bed=12 tube=right at=18:40 level_ml=340; described bed=12 tube=right reason=trauma",
        ),
    ],
)
def test_why_a_drain_is_in_has_no_time_so_one_told_with_a_time_went_in_then(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "12 new admit effusion, no drain yet",
        "8 new admission haemothorax no chest tube",
        "8 new pt ptx, may need a drain",
        "8 new pt without a drain, effusion",
        "8 new pt effusion, drain not in yet",
    ],
)
def test_who_came_without_a_drain_has_none_placed(text: str) -> None:
    assert reading(text) == "ask kind"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "4 fresh gsw from ed right chest tube, 340 in canister on arrival",
            "placed bed=4 tube=right level_ml=340 reason=trauma",
        ),
        (
            "new admission bed 4, left chest drain, 200 in the bottle on arrival",
            "placed bed=4 tube=left level_ml=200",
        ),
        (
            "bed 4 arrived from er with left chest tube, canister at 200 on arrival",
            "placed bed=4 tube=left level_ml=200",
        ),
        ("bed 4 new pt, right chest tube, line 150 now", "mark bed=4 tube=right at=19:05 level_ml=150"),
        ("bed 4 back 1840, 340 on arrival", "ask kind"),
    ],
)
def test_what_was_in_the_canister_on_arrival_is_where_a_newcomer_begins(text: str, read: str) -> None:
    assert reading(text) == read


OPENED_AT_40 = "exchanged bed=12 at=18:40 final_ml=1940 opening_ml=40"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "changed bed 12's chamber, old 1940, new one had 40 in it before we hooked it up, at 1840",
            OPENED_AT_40,
        ),
        ("bed 12 new canister 1840, old 1940, 40 in the new one before connecting", OPENED_AT_40),
        ("bed 12 canister changed 1840 old one 1940 new had 40 in before it was connected", OPENED_AT_40),
        ("bed 12 bottle changed 1840, final 1940, new one at 40 when we connected it", OPENED_AT_40),
        ("bed 12 bottle changed 1840, final 1940, new one was 40 to start with", OPENED_AT_40),
        ("bed 12 changed at 1840 old 1940, there was 40 in the new one before it went on", OPENED_AT_40),
        ("bed 4 chest tube in at 1840, 340 on insertion", "placed bed=4 at=18:40 level_ml=340"),
        (
            "bed 12 bottle changed 1840, final 1940, new one had 40 in it",
            "exchanged bed=12 at=18:40 final_ml=1940; mark bed=12 level_ml=40",
        ),
        (
            "bed 12 bottle changed 1840, final 1940, new one 40 now",
            "exchanged bed=12 at=18:40 final_ml=1940; mark bed=12 at=19:05 level_ml=40",
        ),
        ("bed 12 had 1940 in it before we hooked up the new one at 1840", "ask kind"),
        ("bed 12 line 340 before we hooked up suction", "ask level_ml"),
        (
            "changed box bed 2 at 1810 final level 1870, prefilled water 40 in the new one",
            "exchanged bed=2 at=18:10 final_ml=1870 opening_ml=40",
        ),
    ],
)
def test_what_a_canister_held_before_it_was_connected_opens_it(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "surgical reg put a pigtail in 11 at 1830 right, malignant effusion, drained 900",
            "placed bed=11 tube=right at=18:30 reason=effusion; drained bed=11 tube=right volume_ml=900",
        ),
        ("surgical dressing 11 pigtail put in at 1830", "ask bed"),
    ],
)
def test_who_put_a_drain_in_may_have_a_rank(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "new drains bed 22 mediastinal and left pleural at 1840",
            "placed bed=22 tube=mediastinal at=18:40; placed bed=22 tube=left pleural at=18:40",
        ),
        (
            "bed 8 left apical and basal drains placed at 1840",
            "placed bed=8 tube=left apical at=18:40; placed bed=8 tube=left basal at=18:40",
        ),
        (
            "bed 8 mediastinal and left pleural tubes placed at 1840 y'd to one box",
            "placed bed=8 at=18:40 tubes=left pleural+mediastinal",
        ),
        ("bed 8 new left chest tube apical", "placed bed=8 tube=left apical"),
        ("bed 8 new drain pleural left", "placed bed=8 tube=left pleural"),
        ("the cts team put a mediastinal in 4 at 1815", "placed bed=4 tube=mediastinal at=18:15"),
        ("put a mediastinal line at 340 bed 4", "mark bed=4 tube=mediastinal level_ml=340"),
        ("chest tube insertion bed 2 not done, pt refused", "ask level_ml"),
        ("bed 2 canister change at 1800 not possible", "ask final_ml"),
    ],
)
def test_tubes_that_went_in_side_by_side_are_each_placed_unless_they_are_joined(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 6 arrived 1750 from OR s/p AVR with 2 mediastinal tubes to one box 80 ml in it on arrival",
            "placed bed=6 tube=mediastinal at=17:50 level_ml=80 reason=cardiac",
        ),
        (
            "bed 9 pigtail fell out so new one put in by IR at 1815 right",
            "placed bed=9 tube=right at=18:15; incident bed=9 tube=right at=18:15 what=dislodged",
        ),
        (
            "bed 14 right sided chest drain now in situ since 1800, spontaneous ptx, 70kg",
            "described bed=14 tube=right reason=air weight_kg=70",
        ),
        ("bed 9 box cracked so new one put in at 1815", "incident bed=9 at=18:15 what=damaged"),
    ],
)
def test_who_arrived_has_a_drain_from_then_and_a_new_one_that_was_put_in_is_one(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("said", ["bed one oh two", "bed twelve oh two"])
def test_a_label_that_was_cut_in_two_has_no_level_of_a_few_millilitres(said: str) -> None:
    assert reading(said, channel="voice") == "ask bed"


def test_how_many_tubes_somebody_came_with_is_no_dictated_level() -> None:
    assert reading("fresh heart into 8 at 1830, one mediastinal tube", channel="voice").startswith("ask ")
