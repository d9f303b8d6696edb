"""Exchanges, removals, placements and orders in the words of many wards, and what of them stays asked."""

from __future__ import annotations

import pytest

from .saying import reading

OLD_ONES = {
    "did a canister exchange for 21 @ 1853, disposed 1930cc": "exchanged bed=21 at=18:53 final_ml=1930",
    "Changed out canister @ 1855 in 23. Start 0. End of old 430 mL": (
        "exchanged bed=23 at=18:55 final_ml=430 opening_ml=0"
    ),
    "bed 10 box swap: old box 150, new box 470": "exchanged bed=10 final_ml=150; mark bed=10 level_ml=470",
    "canister change 21, old canister not measured, new one on 1770 ml": (
        "exchanged bed=21; mark bed=21 level_ml=1770"
    ),
    "chg cani 20 1670 final": "exchanged bed=20 final_ml=1670",
    "swap 3 done, old=1460, new=20 canister": "exchanged bed=3 final_ml=1460; mark bed=3 level_ml=20",
    "changed over 18 canister, new one begins from zero": "exchanged bed=18 opening_ml=0",
    "second canister started bed 1 150 ml in the first": "exchanged bed=1 final_ml=150",
    "bed 23 new drain container fitted at 1800hrs. pt tolerated well. 252 ml old.": (
        "exchanged bed=23 at=18:00 final_ml=252"
    ),
    "old box 260 ml bed 11, binned and new one on at 1853": "exchanged bed=11 at=18:53 final_ml=260",
    "before throwing i noted 1320 ml in bed 6 bottle, changed with new at 1800": (
        "exchanged bed=6 at=18:00 final_ml=1320"
    ),
    "bed 19 full up @ 830 ml, changed over at 1839 and new line 1030 ml": (
        "exchanged bed=19 at=18:39 final_ml=830; mark bed=19 level_ml=1030"
    ),
    "new box on 11 at 1855, 1st bottle had 1053": "exchanged bed=11 at=18:55 final_ml=1053",
    "new box on 11 at 1855, threw out 961 ml": "exchanged bed=11 at=18:55 final_ml=961",
    "box changed bed 11, 790 ml amt in old bottle, new bottle level 1210": (
        "exchanged bed=11 final_ml=790; mark bed=11 level_ml=1210"
    ),
    "renewed canister bed 4 at 1840, old one had 1820": "exchanged bed=4 at=18:40 final_ml=1820",
    "drain chamber bed 4 renewed at 1840, starts 0": "exchanged bed=4 at=18:40 opening_ml=0",
    "bed 4 can changed over, 1820 in the one that came off": "ask final_ml",
    "took down canister on 4 at 1820 ml, new one up at 1840": "exchanged bed=4 at=18:40 final_ml=1820",
    "bed 4 1820 ml when canister changed at 1840": "exchanged bed=4 at=18:40 final_ml=1820",
    "bed 4 canister was full (1820) so changed to new at 1840": "ask level_ml",
    "chest drain bottle of bed 4 replaced at 1840, previous bottle content 1820 ml": (
        "exchanged bed=4 at=18:40 final_ml=1820"
    ),
    "new box on 11 at 1855, threw out 300 ml urine": "exchanged bed=11 at=18:55",
    "new box on 11 at 1855, discarded 20 ml of flush": "ask final_ml",
    "bed 4 new box 1840, 200 ml thrown up": "ask final_ml",
    "bed 4 new box at 1840, 820 ml discarded urine": "ask final_ml",
    "bed 4 new box 1840, 300 ml left in old iv bag": "ask final_ml",
    "bed 4 new box 1840, old one had 1800 or 1900": "ask final_ml",
    "box 11 full, dressing changed over at 1839": "ask bed",
    "bed 11 new canister not fitted yet, 1900 ml in the old one": "ask final_ml",
    "bed 11 new canister to be fitted at 2000, 1900 ml in the old one": "ask at",
    "did you change the canister in 11? 1900 in the old one": "ask final_ml",
    "bed 3 box swap 1840: old box 150, bed 4 new box 470": (
        "exchanged bed=3 at=18:40 final_ml=150; ask final_ml"
    ),
    "box changed bed 3 at 1840, 150 ml in the first hour": (
        "exchanged bed=3 at=18:40; drained bed=3 at=18:40 volume_ml=150"
    ),
    "canister changed bed 3 start 1800": "ask final_ml",
    "chg can 20 not 21 1670 final": "ask kind",
    "renewed the canister order for bed 4": "ask kind",
    "14 back from theatre 1825, new canister started at 0": "ask kind",
}
TUBES = {
    "PA took 2's tube out, canister read 940 mL": "removed bed=2 level_ml=940",
    "wife took 2's tube out, canister read 940 mL": "ask level_ml",
    "no more drain in 22, surgeons had it out at 1800": "removed bed=22 at=18:00",
    "bed 9 drain: surgeons had it out on the table at 1830": "ask level_ml",
    "surgeons want it out, 9 at 1900": "ask level_ml",
    "intercostal drain out for 8, 1380 ml on last look, dressing dry": "removed bed=8 level_ml=1380",
    "registrar whipped the drain out in 16, didn't note the time, bottle at 890 ml": (
        "removed bed=16 level_ml=890"
    ),
    "cardiac surgery pulled bed 6's drains this round, 1540 ml on the canister at the end": (
        "removed bed=6 level_ml=1540"
    ),
    "bed 9 cardiac surgery has line 340 at 1800": (
        "mark bed=9 at=18:00 level_ml=340; described bed=9 reason=cardiac"
    ),
    "for bed 8 intercostal drain is put at 1850, indication is pneumothorax only": (
        "placed bed=8 at=18:50 reason=air"
    ),
    "chest drain is to be put at 1900 in bed 9": "ask level_ml",
    "from theatre into 11 with new chest drain at 1800, mitral valve replacement, drain showing 820 ml": (
        "placed bed=11 at=18:00 level_ml=820 reason=cardiac"
    ),
    "box changed bed 9 new drain at 1800, trauma pt": (
        "exchanged bed=9 at=18:00; described bed=9 reason=trauma"
    ),
    "Fresh chest drain, bed 14, at 18:50, 24F, fluid on the lung": "placed bed=14 at=18:50 reason=effusion",
    "put a chest tube in 9 and another in 15 at 1700": "ask at",
    "put a chest tube in 9 and another in an hour": "ask kind",
}
ORDERS = {
    "NP order: 16 place to H2O seal": "ordered bed=16 suction_cmh2o=0",
    "MD d/c'd suction on 12, straight drain": "ask kind",
    "dc'd suction tubing on 12": "ask bed; ask bed",
    "Dr has told no suction for bed 11, only under water seal": "ordered bed=11 suction_cmh2o=0",
    "as per ward round at 1857hrs bed 3 free drainage, no suction": "ordered bed=3 at=18:57 suction_cmh2o=0",
    "Dr: 5 suction 20, 24 water seal": "ordered bed=5 suction_cmh2o=20; ordered bed=24 suction_cmh2o=0",
    "Dr: 5 was on suction 20 at 1800": "ask kind",
    "chest tube order for bed 10: suction off until further notice, per Dr": "ordered bed=10 suction_cmh2o=0",
    "at rounds they decided 18 water seal trial, order in chart": "ordered bed=18 suction_cmh2o=0",
    "Dr saw bed 4, says gravity drainage from here on": "ordered bed=4 suction_cmh2o=0",
    "Dr saw bed 4, mum says gravity drainage": "ask kind",
    "Dr says bed 4 can go to water seal": "ordered bed=4 suction_cmh2o=0",
    "Dr says bed 4 can go to water seal if cxr ok": "ask kind",
    "continue suction 20 on 4 per Dr": "ordered bed=4 suction_cmh2o=20",
    "4 can come off suction per Dr": "ordered bed=4 suction_cmh2o=0",
    "can bed 4 go to water seal per Dr": "ask kind",
    "bed 4 put on water seal by surgeon at 1830": "checked bed=4 at=18:30 suction_cmh2o=0",
    "consultant happy for 4 to go on water seal": "ordered bed=4 suction_cmh2o=0",
    "asking Dr for bed 4 to go to water seal": "ask kind",
    "Dr said never put bed 4 on suction 20": "ask kind",
    "bed 4 suction to be kept at 15 per Dr": "ordered bed=4 suction_cmh2o=15",
    "new suction order 4: 15": "ask bed",
    "MD changed suction order bed 4 to 15": "ordered bed=4 suction_cmh2o=15",
}


@pytest.mark.parametrize(("text", "told"), OLD_ONES.items())
def test_what_an_old_canister_ended_with_is_read_however_it_is_told(text: str, told: str) -> None:
    """What an old canister ended with, in any order around its change; of anything else it is asked."""
    assert reading(text) == told


@pytest.mark.parametrize(("text", "told"), TUBES.items())
def test_a_tube_that_came_out_or_went_in_is_told_by_who_did_it(text: str, told: str) -> None:
    """Who took it out, and what went in."""
    assert reading(text) == told


@pytest.mark.parametrize(("text", "told"), ORDERS.items())
def test_an_order_is_one_by_whose_it_is(text: str, told: str) -> None:
    """Whose order it is; a doubt, a condition and a relative order nothing."""
    assert reading(text) == told
