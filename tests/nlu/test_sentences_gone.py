"""What a canister held that was changed, and a tube that is out beside one that stays."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bottle changed on bed 2 at 1848, had 1475 in it", "exchanged bed=2 at=18:48 final_ml=1475"),
        ("changed 2's canister at 1848, it had 1475 in it", "exchanged bed=2 at=18:48 final_ml=1475"),
        ("swapped the chamber on bed 2 at 1848 with 1475 in it", "exchanged bed=2 at=18:48 final_ml=1475"),
        ("2 canister change 1848, contained 1475 ml", "exchanged bed=2 at=18:48 final_ml=1475"),
        ("bed 2 new bottle at 1848, had 1475 in it", "ask final_ml"),
        (
            "bed 2 bottle changed at 1848, new one had 40 in it",
            "exchanged bed=2 at=18:48; mark bed=2 level_ml=40",
        ),
        (
            "bed 2 bottle changed at 1848, bed 3 had 1475 in it",
            "exchanged bed=2 at=18:48; mark bed=3 level_ml=1475",
        ),
        (
            "bed 2 bottle changed at 1848 with 20 suction",
            "exchanged bed=2 at=18:48; checked bed=2 at=18:48 suction_cmh2o=20",
        ),
        ("bed 2 changed the box 1848, had 2 leaks", "ask final_ml"),
        (
            "swapped chamber bed 4 6:20pm. was 1,950. new one reading 10",
            "exchanged bed=4 at=18:20 final_ml=1950; mark bed=4 level_ml=10",
        ),
        (
            "bed 3 new canister up 1840. final on the old 1910. 15 in new now",
            "exchanged bed=3 at=18:40 final_ml=1910; mark bed=3 at=19:05 level_ml=15",
        ),
        (
            "bed 4 box changed at 1820, suction was 20",
            "exchanged bed=4 at=18:20; checked bed=4 at=18:20 suction_cmh2o=20",
        ),
    ],
)
def test_what_a_canister_had_in_it_that_was_changed_is_its_final_level(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "old drain unit off bed 4 at 1830 with 1655 in it, new one on",
            "exchanged bed=4 at=18:30 final_ml=1655",
        ),
        ("4 old canister down at 1830 with 1655, new one up", "exchanged bed=4 at=18:30 final_ml=1655"),
        ("old bottle off 4 1830, final 1655", "exchanged bed=4 at=18:30 final_ml=1655"),
        ("old box off suction bed 4", "checked bed=4 suction_cmh2o=0"),
        (
            "bed 2 box is nearly three quarters, changed it at 18:25, old one finished on 1465",
            "exchanged bed=2 at=18:25 final_ml=1465",
        ),
        ("bed 2 box 3/4 full so changed it at 1825, final 1465", "exchanged bed=2 at=18:25 final_ml=1465"),
        ("bed 2 box half full, no need to change yet", "ask kind"),
        (
            "box on 14 changed yesterday at 1600 old 1850",
            "exchanged bed=14 at=03-Mar-16:00 final_ml=1850",
        ),
        (
            "bed 8 canister knocked over and changed at 1810. old reading 560. new starting 0",
            "exchanged bed=8 at=18:10 final_ml=560 opening_ml=0; incident bed=8 at=18:10 what=tipped",
        ),
        ("12 - changed drain bottle, 1900 discarded, at 1825", "exchanged bed=12 at=18:25 final_ml=1900"),
        ("new UWSD for bed 5 at 1845, prev bottle total 1480", "exchanged bed=5 at=18:45 final_ml=1480"),
        ("bed 2 dressing tipped and changed at 1810", "ask kind"),
        ("box 12 changed, 1880, 1845", "ask final_ml"),
        ("box 12 changed at 1845, final 1880", "exchanged bed=12 at=18:45 final_ml=1880"),
        ("box 12 changed sides", "ask kind"),
        ("bed 12 had 1940 in it before we hooked up the new one at 1840", "ask kind"),
    ],
)
def test_an_old_canister_that_is_off_and_how_full_it_was_tell_of_a_change(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("apical out on 23 at 1810, final was 45", "removed bed=23 tube=apical at=18:10 level_ml=45"),
        ("left out on bed 3 at 1810 final 45", "removed bed=3 tube=left at=18:10 level_ml=45"),
        ("apical out on 23 at 1810", "ask level_ml"),
        (
            "surgeons pulled the right tube in 16 at 1822, left stays. final on right 280",
            "removed bed=16 tube=right at=18:22 level_ml=280",
        ),
        (
            "16 right tube out 1822, left one stays in, final 280",
            "removed bed=16 tube=right at=18:22 level_ml=280",
        ),
        ("16 right tube out 1822, left stays, left 280", "ask level_ml"),
        ("bed 15 R tube pulled at 1815, 24h total 90", "removed bed=15 tube=right at=18:15; ask kind"),
        ("bed 15 R tube pulled at 1815, total 90", "removed bed=15 tube=right at=18:15 level_ml=90"),
        (
            "bed 12 drain pulled at 1850 with 410 total in the box",
            "removed bed=12 at=18:50 level_ml=410",
        ),
        ("14 both chest drains out at 1830", "removed bed=14 at=18:30"),
        ("14 both chest drains out at 1830, left 85 right 40", "ask level_ml"),
        ("bed 4 both chest drains 340 out", "drained bed=4 volume_ml=340"),
        ("21 tube removed at 1800, drain had 275 in it", "removed bed=21 at=18:00 level_ml=275"),
        (
            "took the tube out of bed 15 at 1815, there was 90 in the box",
            "removed bed=15 at=18:15 level_ml=90",
        ),
        (
            "chest tube d/c bed 12 at 1755 total in canister 1240 at time of removal",
            "removed bed=12 at=17:55 level_ml=1240",
        ),
        ("bed 9 ICC out 1815, total 340 final", "removed bed=9 at=18:15 level_ml=340"),
        ("15 chest tube d/c'd @1830, 410 at removal", "removed bed=15 at=18:30 level_ml=410"),
        ("surgeons pulled the right tube in 16 at 1822, left stays. 280", "ask level_ml"),
        ("bed 19 CTT removed by Dr 6:10pm, last level 330", "removed bed=19 at=18:10 level_ml=330"),
    ],
)
def test_a_tube_that_is_out_has_its_final_level_though_another_stays(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 open heart surgery", "described bed=12 reason=cardiac"),
        ("bed 12 cardiac surgery wants suction 20", "ordered bed=12 suction_cmh2o=20"),
        ("bed 12 thoracic surgery ordered suction 10", "ordered bed=12 suction_cmh2o=10"),
        ("bed 4 clamped at 1808, hit a litre", "incident bed=4 at=18:08 what=clamped; ask kind"),
        ("bed 4 hit a litre at 1808", "mark bed=4 at=18:08 level_ml=1000"),
    ],
)
def test_who_wants_something_is_no_reason_and_what_was_hit_may_be_no_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "exchanged canister 6 at 1820 because it fell, unknown final",
        "6 canister changed 1820 after it fell, final unknown",
        "exchanged canister 6 because it fell, unknown final, 1830",
        "changed 6 box at 1820, it fell, no final",
    ],
)
def test_a_final_level_that_nobody_knows_takes_no_number(text: str) -> None:
    assert "final_ml=" not in reading(text)


def test_a_tube_that_came_out_is_dictated_with_its_final_level() -> None:
    said = "the right drain in bed eighteen came out at six ten final drainage thirty five mils"
    assert reading(said, channel="voice") == "removed bed=18 tube=right at=18:10 level_ml=35"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 15 chest tube #1 out 1850 final 130, #2 stays at 340", "ask kind"),
        ("bed 15 drain #2 340", "mark bed=15 tube=2 level_ml=340"),
        ("bed #12 340 at 1900", "mark bed=12 at=19:00 level_ml=340"),
        ("we dont have any new boxes for bed 9, its at 1750", "mark bed=9 level_ml=1750"),
    ],
)
def test_a_number_behind_its_sign_is_no_other_bed_and_what_one_has_not_is_not_asked_for(
    text: str, read: str
) -> None:
    assert reading(text) == read


def test_a_drain_after_an_operation_that_is_dictated_has_its_reason() -> None:
    said = "bed nine got a new chest tube on the right at eighteen twenty five after open heart surgery"
    assert reading(said, channel="voice") == "placed bed=9 tube=right at=18:25 reason=cardiac"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("changed 7s box 1840 had 455 in it", "exchanged bed=7 at=18:40 final_ml=455"),
        ("changed 7's box 1840 had 455 in it", "exchanged bed=7 at=18:40 final_ml=455"),
        ("kicked 12s drain over", "incident bed=12 what=tipped"),
    ],
)
def test_whose_box_it_is_needs_no_apostrophe(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "told", ["total in canister 515", "total in the box was 515", "total was 515", "total 515"]
)
def test_the_total_in_its_canister_is_the_last_level_of_a_tube_that_is_out(told: str) -> None:
    assert reading(f"bed 2 tube out 1848, {told}") == "removed bed=2 at=18:48 level_ml=515"
