"""What ended with which level, of which bed; a bed named again before what happened there."""

from __future__ import annotations

import pytest

from .saying import reading

TOLD_AGAIN = {
    "14 1745 at 1858hrs, 14 canister tipped over at 1800": (
        "mark bed=14 at=18:58 level_ml=1745; incident bed=14 at=18:00 what=tipped"
    ),
    "14 20 at 1858, 14 clamped at 1800": (
        "mark bed=14 at=18:58 level_ml=20; incident bed=14 at=18:00 what=clamped"
    ),
    "5 870 at 1850, 17 clamped 1840": (
        "mark bed=5 at=18:50 level_ml=870; incident bed=17 at=18:40 what=clamped"
    ),
    "5 870 at 1850, 2 tubes out": "ask level_ml",
    "8 clamped 1853hrs, 20 1830 1900": "incident bed=8 at=18:53 what=clamped; ask level_ml",
    "14 1745 at 1858, 14 suction 20": "mark bed=14 at=18:58 level_ml=1745; "
    "checked bed=14 at=18:58 suction_cmh2o=20",
}
OF_THE_OTHER_BED = {
    "bed 15 1830 at 1840. changed 5 canister at 1837, old 1650": (
        "mark bed=15 at=18:40 level_ml=1830; exchanged bed=5 at=18:37 final_ml=1650"
    ),
    "bed 23 740 at 5:58pm. changed 4 canister at 1830, old 990": (
        "mark bed=23 at=17:58 level_ml=740; exchanged bed=4 at=18:30 final_ml=990"
    ),
    "bed 9 340 at 1800. moved 10 to 14 at 1840": (
        "mark bed=9 at=18:00 level_ml=340; moved bed=10 at=18:40 to_bed=14"
    ),
    "bed 9 to ct 1810, back 1840. bed 10 410": (
        "away bed=9 at=18:10; back bed=9 at=18:40; mark bed=10 level_ml=410"
    ),
}
ENDED = {
    "18 canister out at 1270, new one on at 18:55": "exchanged bed=18 at=18:55 final_ml=1270",
    "18 canister out at 1850, new one on at 18:55": "ask at",
    "old canister 10 1705, changed at 6:53 pm": "exchanged bed=10 at=18:53 final_ml=1705",
    "changed the R canister on 6 at 1830, old one 1630": "exchanged bed=6 tube=right at=18:30 final_ml=1630",
    "changed bed 6 L box at 1830, old 1630": "exchanged bed=6 tube=left at=18:30 final_ml=1630",
    "changed bed 6 canister at 1830": "exchanged bed=6 at=18:30",
    "right box bed 3 changed at 1844, it had 1640": "exchanged bed=3 tube=right at=18:44 final_ml=1640",
    "box bed 3 changed at 1844, it had 20 of suction": (
        "exchanged bed=3 at=18:44; checked bed=3 at=18:44 suction_cmh2o=20"
    ),
    "bed 15 - new box 18:25 (old 1720)": "exchanged bed=15 at=18:25 final_ml=1720",
    "bed 15 tube out 1825 (was 720)": "removed bed=15 at=18:25 level_ml=720",
    "bed 15 1050 at 1825 (was 840)": "mark bed=15 at=18:25 level_ml=1050",
    "21 canister replaced 1830 old volume 1800": "exchanged bed=21 at=18:30 final_ml=1800",
    "9 ct pulled at 1839 last 750": "removed bed=9 at=18:39 level_ml=750",
    "9 ct pulled at 1839. last 24h 340": "ask at",
    "9 canister changed at 1839, last at 1750": "ask at",
    "bed 20 tube out 1100 with 1580": "removed bed=20 at=11:00 level_ml=1580",
    "bed 5 L CT dc 1600 w/ 540": "removed bed=5 tube=left at=16:00 level_ml=540",
    "bed 20 tube out at 1840 with 2 sutures": "removed bed=20 at=18:40",
    "16 at 1210 when canister changed at 6:50pm": "exchanged bed=16 at=18:50 final_ml=1210",
    "16 at 1210 when canister changed": "ask final_ml",
    "RT changed canister in 6 at 1830, old 525": "exchanged bed=6 at=18:30 final_ml=525",
    "6 rt changed 1830 old 900": "exchanged bed=6 tube=right at=18:30 final_ml=900",
    "6 canister changed 1857 old 1200, new one now at 20": (
        "exchanged bed=6 at=18:57 final_ml=1200; mark bed=6 at=19:05 level_ml=20"
    ),
    "7 old one read 1720, new canister on 1826": "exchanged bed=7 at=18:26 final_ml=1720",
    "15 canister changed at 1825, old 720, 40 at 1900": (
        "exchanged bed=15 at=18:25 final_ml=720; mark bed=15 at=19:00 level_ml=40"
    ),
    "15 canister changed at 1825, old 720, 40": "ask final_ml",
    "15 canister changed at 1825, old 720, 14 at 1900": "ask final_ml",
}
LINE_BEFORE = {
    "bed 19 line 1359 at 1800. tube pulled 1839hrs, final 1470": (
        "mark bed=19 at=18:00 level_ml=1359; removed bed=19 at=18:39 level_ml=1470"
    ),
    "19 90 at 1840, tube out 1900h": "mark bed=19 at=18:40 level_ml=90; removed bed=19 at=19:00",
    "9 340 ml at 1840, chest tube removed": "removed bed=9 at=18:40 level_ml=340",
}
NOT_CHANGED = {
    "canister change for 4 due at 1825": "ask kind",
    "canister changed on 4 at 1825, due to a crack": (
        "exchanged bed=4 at=18:25; incident bed=4 at=18:25 what=damaged"
    ),
    "change the box 10 line to 340": "ask final_ml",
    "canister 10 change 1854 final 1720": "exchanged bed=10 at=18:54 final_ml=1720",
    "change bed 10 1900 to 1005": "corrected bed=10 at=19:00 level_ml=1005",
}
THERE_AND_BACK = {
    "2 1100 at 1853, suction 25. tubing was kinked at 1830": (
        "mark bed=2 at=18:53 level_ml=1100; checked bed=2 at=18:53 suction_cmh2o=25; "
        "incident bed=2 at=18:30 what=kinked"
    ),
    "17 to CT 18:13, back 1830, 1310 on return": (
        "away bed=17 at=18:13; back bed=17 at=18:30; mark bed=17 at=18:30 level_ml=1310"
    ),
    "bed 13 went to OR 1800, back 1849 with 1450 in box": (
        "away bed=13 at=18:00; back bed=13 at=18:49; mark bed=13 at=18:49 level_ml=1450"
    ),
    "13 760 ml at 1800 and back on suction at 1830": (
        "mark bed=13 at=18:00 level_ml=760; incident bed=13 at=18:30 what=suction_on"
    ),
    "21 to CT 1835 at 540, back 1840hrs at 1902": "ask kind",
    "22 CT 1700, back 1800": "away bed=22 at=17:00; back bed=22 at=18:00",
    "22 CT 1700": "ask level_ml",
    "22 CT 1700 no leak, back 1800": "ask kind",
    "24 back in bed from CT 18:36": "back bed=24 at=18:36",
    "24 back in bed 18:36": "back bed=24 at=18:36",
    "4 suction off 17:55 on 18:30": (
        "incident bed=4 at=17:55 what=suction_off; incident bed=4 at=18:30 what=suction_on"
    ),
    "4 suction off 1755, on 340": "incident bed=4 at=17:55 what=suction_off; ask level_ml",
    "12 canister got knocked over at 1854, line 720 at 1900": (
        "incident bed=12 at=18:54 what=tipped; mark bed=12 at=19:00 level_ml=720"
    ),
    "2 box tipped over 18:06, line 1250 at 18:06": (
        "mark bed=2 at=18:06 level_ml=1250; incident bed=2 at=18:06 what=tipped"
    ),
}


@pytest.mark.parametrize(("text", "read"), [*TOLD_AGAIN.items()])
def test_a_bed_named_again_before_what_happened_there_is_no_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(("text", "read"), [*OF_THE_OTHER_BED.items()])
def test_what_happened_behind_a_stop_is_of_the_bed_that_is_named_there(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(("text", "read"), [*ENDED.items()])
def test_what_an_old_canister_or_a_tube_ended_with_is_read_or_asked(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(("text", "read"), [*LINE_BEFORE.items()])
def test_a_line_that_is_told_before_a_removal_with_its_own_time_is_a_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(("text", "read"), [*NOT_CHANGED.items()])
def test_a_change_that_is_due_or_of_a_line_is_no_new_canister(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(("text", "read"), [*THERE_AND_BACK.items()])
def test_journeys_and_incidents_have_each_their_own_time(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_stop_that_ends_a_sentence_behind_pm_is_a_stop() -> None:
    assert reading("6 pm. bed 5 640. bed 6 340") == (
        "mark bed=5 at=18:00 level_ml=640; mark bed=6 at=18:00 level_ml=340"
    )
