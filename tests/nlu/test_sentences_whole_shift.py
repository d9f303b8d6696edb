"""What nurses log of a whole shift, of every kind: in passing, in fields, of two beds at once."""

from __future__ import annotations

import pytest

from .saying import BEDS, Channel, reading

WARD = (*BEDS, "204", "212", "CT4", "CT6")
READ = (
    (
        "fresh heart into CT6 at 1830, mediastinal and left pleural tubes Y'd together, canister at 60",
        "placed bed=CT6 at=18:30 level_ml=60 reason=cardiac tubes=left pleural+mediastinal",
    ),
    (
        "fresh heart into CT6 at 1830, mediastinal tube, canister at 60",
        "placed bed=CT6 tube=mediastinal at=18:30 level_ml=60 reason=cardiac",
    ),
    (
        "new valve to bed 9 at 1815 med drain in starting at 0",
        "placed bed=9 tube=mediastinal at=18:15 level_ml=0 reason=cardiac",
    ),
    (
        "new valve back from theatre to bed 9 at 1815 med drain in starting at 0",
        "placed bed=9 tube=mediastinal at=18:15 level_ml=0 reason=cardiac",
    ),
    (
        "9 tube disconnected from box at 1825, back together 1826",
        "incident bed=9 at=18:25 what=disconnected",
    ),
    ("bed 12 box fell over 1850, upright again 1851", "incident bed=12 at=18:50 what=tipped"),
    ("bed 12 disconnected at 1820, back at 1826", "incident bed=12 at=18:20 what=disconnected"),
    (
        "bed 12 disconnected 1820, back together, 340 at 1830",
        "incident bed=12 at=18:20 what=disconnected; mark bed=12 at=18:30 level_ml=340",
    ),
    (
        "three beds 1800: bed 1 - 90, bed 6 - 1005, bed 16 - 410",
        "mark bed=1 at=18:00 level_ml=90; mark bed=6 at=18:00 level_ml=1005; mark bed=16 at=18:00 "
        "level_ml=410",
    ),
    (
        "all three 1800: bed 1 90, bed 6 1005, bed 16 410",
        "mark bed=1 at=18:00 level_ml=90; mark bed=6 at=18:00 level_ml=1005; mark bed=16 at=18:00 "
        "level_ml=410",
    ),
    ("what the day staff last recorded for bed 22?", "asked bed=22 topic=last"),
    (
        "the registrar would like bed 22 left without suction, on water seal only",
        "ordered bed=22 suction_cmh2o=0; checked bed=22 suction_cmh2o=0",
    ),
    ("bed 20: drained 220 mL since unclamping.", "drained bed=20 volume_ml=220"),
    ("CT taking bed 12 now", "away bed=12 at=19:05"),
    ("16 discharged home at 1850 with no drain issues", "left bed=16 at=18:50"),
    (
        "bed 7 #1 at 560, #2 at 75, 1815",
        "mark bed=7 tube=1 at=18:15 level_ml=560; mark bed=7 tube=2 at=18:15 level_ml=75",
    ),
    ("order received bed 12: water seal", "ordered bed=12 suction_cmh2o=0"),
    ("thoracic says go down to minus ten on bed 9", "ordered bed=9 suction_cmh2o=10"),
    ("surgeon said to keep 9 at minus 15", "ordered bed=9 suction_cmh2o=15"),
    (
        "surgeon ordered suction 20 on CT6 and CT4",
        "ordered bed=CT6 suction_cmh2o=20; ordered bed=CT4 suction_cmh2o=20",
    ),
    (
        "no leak on 6, 1 and 3",
        "checked bed=6 air_leak=none; checked bed=1 air_leak=none; checked bed=3 air_leak=none",
    ),
    (
        "clamped beds 6 and 1 at 1800",
        "incident bed=6 at=18:00 what=clamped; incident bed=1 at=18:00 what=clamped",
    ),
    ("tubes out on 6 and 1 at 1800", "removed bed=6 at=18:00; removed bed=1 at=18:00"),
    (
        "exchange CT4 at 1855 old final 1310 new one opened at 0, then 12 mL at 1900",
        "exchanged bed=CT4 at=18:55 final_ml=1310 opening_ml=0; mark bed=CT4 at=19:00 level_ml=12",
    ),
    ("4 leak down to a 2 out of 7, continuous", "checked bed=4 air_leak=continuous leak_grade=2"),
    ("bed 6 leak up to grade 4", "checked bed=6 air_leak=present leak_grade=4"),
    ("did 9's canister just now, old read 1795", "exchanged bed=9 at=19:05 final_ml=1795"),
    (
        "bed 5 back from theatre ten to seven, bottle on 85",
        "back bed=5 at=18:50; mark bed=5 at=18:50 level_ml=85",
    ),
    (
        "bed 9 drain lifted above chest height by the porter, now back down",
        "incident bed=9 what=raised",
    ),
    ("still -20 on bed 19, wall gauge 95 mmHg", "checked bed=19 suction_cmh2o=20 wall_mmhg=95"),
    (
        "bed 12 clotty, stripped tubing, then 90 mL came out at 1815",
        "drained bed=12 at=18:15 volume_ml=90",
    ),
    ("bed 9 dc to rehab this arvo at 1530", "left bed=9 at=15:30"),
    (
        "bed 17 gush of 220cc w/ coughing at 1805, sanguinous",
        "drained bed=17 at=18:05 volume_ml=220; checked bed=17 at=18:05 fluid=sanguineous",
    ),
    ("bed 11 somewhere round 190, noon", "mark bed=11 at=12:00 level_ml=190 about"),
    (
        "bed 22 has drained nothing so far; the water is swinging.",
        "drained bed=22 volume_ml=0; checked bed=22 tidaling=True",
    ),
    ("bed 22 was moved to bed 3 at 18:15 so that we can watch him.", "moved bed=22 at=18:15 to_bed=3"),
    ("morning! 204s on 410 at 7pm", "mark bed=204 at=19:00 level_ml=410"),
    (
        "12 right/ 600 at 1800/ clamped 1802 for pain",
        "mark bed=12 tube=right at=18:00 level_ml=600; incident bed=12 tube=right at=18:00 what=clamped",
    ),
    (
        "bed 12 mediastinal 130 at 1800 suction 20 no leek",
        "mark bed=12 tube=mediastinal at=18:00 level_ml=130; checked bed=12 tube=mediastinal "
        "at=18:00 suction_cmh2o=20 air_leak=none",
    ),
    (
        "room 12 - order is suction 20, wall set at 100",
        "ordered bed=12 suction_cmh2o=20; checked bed=12 wall_mmhg=100",
    ),
    (
        "bed 20: unclamped; time 1800; level 500 mL, no change.",
        "mark bed=20 at=18:00 level_ml=500; incident bed=20 at=18:00 what=unclamped",
    ),
    (
        "21 is 165 at 6:00 pm, a wee leak on and off",
        "mark bed=21 at=18:00 level_ml=165; checked bed=21 at=18:00 air_leak=intermittent",
    ),
    (
        "put a new canister on 23 at 6:45, the cracked one had 80 in it",
        "exchanged bed=23 at=18:45 final_ml=80",
    ),
    ("CT4 med 250 exact", "mark bed=CT4 tube=mediastinal level_ml=250"),
    ("bed 11: suction 10 as ordered, seal at 2", "checked bed=11 seal_cm=2 suction_cmh2o=10"),
    (
        "204: 0600 280, 0700 310, 0800 335, 0900 335, 1000 360, 1100 390, 1200 395",
        "mark bed=204 at=06:00 level_ml=280; mark bed=204 at=07:00 level_ml=310; mark bed=204 "
        "at=08:00 level_ml=335; mark bed=204 at=09:00 level_ml=335; mark bed=204 at=10:00 "
        "level_ml=360; mark bed=204 at=11:00 level_ml=390; mark bed=204 at=12:00 level_ml=395",
    ),
    ("12 left has put out another 60 today", "drained bed=12 tube=left volume_ml=60"),
    ("bed 11 dressing changed, 720 at 1500", "mark bed=11 at=15:00 level_ml=720"),
    ("bed 3 120 at 1800, same as 1700", "mark bed=3 at=18:00 level_ml=120"),
    ("bed 3 the same as at six", "drained bed=3 volume_ml=0"),
    (
        "bed 21 stopped swinging at 1700, no output since",
        "drained bed=21 volume_ml=0; checked bed=21 at=17:00 tidaling=False",
    ),
    (
        "bed 21 on water seal since 1400, no leak, 240 at 1800",
        "mark bed=21 at=18:00 level_ml=240; checked bed=21 at=18:00 suction_cmh2o=0 air_leak=none",
    ),
    ("bed 1 drain at 555, about 30/hr", "mark bed=1 level_ml=555"),
    (
        "bed 3 tubing had a dependent loop, 75 came over",
        "drained bed=3 volume_ml=75; incident bed=3 what=kinked",
    ),
    ("13 clamped per CT surg 1800", "incident bed=13 at=18:00 what=clamped"),
    (
        "20 box tipped over when porter moved bed 1825, 510 at 1840",
        "incident bed=20 at=18:25 what=tipped; mark bed=20 at=18:40 level_ml=510",
    ),
    ("19 tubing kinked under him, sorted, draining again 1850", "incident bed=19 what=kinked"),
    ("1 air leak now continuous 5/7, Dr notified", "checked bed=1 air_leak=continuous leak_grade=5"),
    (
        "5 L tube 110, R tube 245, 1800",
        "mark bed=5 tube=left at=18:00 level_ml=110; mark bed=5 tube=right at=18:00 level_ml=245",
    ),
    (
        "17 is a fresh VATS lobectomy from PACU 1820, R CT, 60 in box",
        "placed bed=17 tube=right at=18:20 level_ml=60 reason=lung",
    ),
    ("no the second one was right", "answered answer=no choice=second"),
    ("bed 12 stopped bubbling", "checked bed=12 air_leak=none"),
    ("204 same as before at 2pm", "drained bed=204 at=14:00 volume_ml=0"),
    ("bed 18 no CT output x3h, flushed by resident", "drained bed=18 volume_ml=0"),
    (
        "21 tubing disconnected from drain when turning, reconnected within seconds, no resp change",
        "incident bed=21 what=disconnected",
    ),
    ("when i went in at 1800 bed 5 was at 340", "mark bed=5 at=18:00 level_ml=340"),
    (
        "bed 21 suction was on 20, I turned it to 15 per reg 1850",
        "checked bed=21 at=18:50 suction_cmh2o=15",
    ),
    ("bed 13 180 in the drain 300 in the urine bag", "mark bed=13 level_ml=180"),
    ("bed 20 drain removed at 1830 from under the arm", "removed bed=20 at=18:30"),
    ("bed 17 moved from 5 at 1730", "moved bed=5 at=17:30 to_bed=17"),
    ("bed 3 emptied the drain, line 20 at 1800", "mark bed=3 at=18:00 level_ml=20"),
    ("bed 23 chest drain clamped 1800 for 1 hr then unclamp", "incident bed=23 at=18:00 what=clamped"),
    ("bed 9 chest drain on free drainage", "checked bed=9 suction_cmh2o=0"),
    ("bed 4 drained 220 since unclamping at 1500", "drained bed=4 volume_ml=220"),
    ("bed 4 no leak since unclamped", "checked bed=4 air_leak=none"),
    ("bed 4 no issues with leak, 340 at 1800", "mark bed=4 at=18:00 level_ml=340"),
    ("bed 21 back to HDU 1850", "left bed=21 at=18:50"),
    ("bed 20 transferred to HDU at 1850", "left bed=20 at=18:50"),
    ("bed 3 310 at 1800, thats 60 in the hr", "mark bed=3 at=18:00 level_ml=310"),
)
DICTATED = (
    (
        "a new drain went in bed seven right side at quarter past five for an effusion",
        "placed bed=7 tube=right at=17:15 reason=effusion",
    ),
    (
        "bed twenty three canister exchanged at half past five pm didn't get the final level",
        "exchanged bed=23 at=17:30",
    ),
    ("tube has come out of the chest bed nineteen come quick", "incident bed=19 what=dislodged"),
    (
        "bed seventeen mark three ninety five at quarter past six it's gone serous",
        "mark bed=17 at=18:15 level_ml=395; checked bed=17 at=18:15 fluid=serous",
    ),
    (
        "bed 12 ordered suction 20, wall is at 100",
        "ordered bed=12 suction_cmh2o=20; checked bed=12 wall_mmhg=100",
    ),
    (
        "9 mark 430 at 1800. 10 nil out since 1700.",
        "mark bed=9 at=18:00 level_ml=430; drained bed=10 at=18:00 volume_ml=0",
    ),
    (
        "suction back on bed eight at half past six reading minus twenty no leak",
        "checked bed=8 at=18:30 suction_cmh2o=20 air_leak=none; incident bed=8 at=18:30 what=suction_on",
    ),
    ("bed eleven clamped at five for a trial", "incident bed=11 at=17:00 what=clamped"),
    (
        "bed one air leak is continuous five out of seven",
        "checked bed=1 air_leak=continuous leak_grade=5",
    ),
    ("bed one's at five fifty five that's about thirty an hour", "mark bed=1 level_ml=555"),
    ("bed eleven seven twenty at three dressing changed", "mark bed=11 at=15:00 level_ml=720"),
    ("bed thirteen two seventy at six no change", "mark bed=13 at=18:00 level_ml=270"),
    (
        "bed nineteen's water seal was dry so I filled it to two centimetres",
        "checked bed=19 seal_cm=2",
    ),
    ("when we got back bed five was at three forty at six pm", "mark bed=5 at=18:00 level_ml=340"),
)
ASKED = (
    "7, 12",
    "bed 20: 1000 0 mL",
    "bed 20 500, no change at 1800",
    "bed 20 1195 at 0600, nothing since",
    "bed 4 90s on the wall",
    "bed 12 90 came out at 1815",
    "bed 6 leak down to 240",
    "surgeon said bed 9 was at -15",
    "bed 22 still at 20, wall 95",
    "bed 9 come quick",
    "new trauma into bed 3 at 1800, no chest tube",
    "bed 9 chest drain inserted 1840 R side",
    "bed 16 transferred ICU to ward 1830 w R ICC at 340",
    "bed 1 about 30 an hour",
    "20 tipped over when we moved bed 4",
    "13 clamped 1855 maybe",
    "bed 1 leak intermittent 2 at 1800",
    "5 L at 1800",
    "bed 11 dressing changed 1430, 720 at 1500",
    "12 tube completely out 1735, occlusive drsg on, 180",
    "bed 6 leak up to 3",
    "bed 21 340 at 1300, no level change",
    "no drain output?",
    "bed 21 no canister change",
    "when i went in bed 5 was at 340",
    "bed 23 leak was 4/7 this am, 2/7 now",
    "bed 17 transferred in from 5 west at 1730, 445 in the canister",
    "bed 13 chest tube pulled out of the suction port, reattached",
    "bed 20 removed tubing from under the patient, draining fine",
    "bed 13 300 in the urine bag, 180 in the drain",
    "bed 3 emptied the drain bag, 340",
    "340 on 4 and 5 at 1800",
    "bed 5 canister on 80 suction",
    "bed 5 bottle on 60 of suction, 340 or 350",
    "bed 9 to free drainage at 1800",
    "bed 3 was 310 at 1600 so 60 since",
    "bed 20 transferred from HDU at 1850, L drain 560",
    "bed 20 transferred from ICU to bed 3 at 1850",
)
ASKED_ALOUD = (
    "bed nine come quick",
    "what time was bed five's tube pulled",
    "when was bed five tube pulled",
    "bed thirteen three hundred in the urine bag one eighty in the drain",
    "bed three emptied the drain bag three forty",
    "bed twenty transferred from HDU at ten to seven with a left drain on five sixty",
)


@pytest.mark.parametrize(("said", "read"), READ)
def test_what_is_typed_of_a_shift_is_read(said: str, read: str) -> None:
    assert reading(said, WARD) == read


@pytest.mark.parametrize(("said", "read"), DICTATED)
def test_what_is_dictated_of_a_shift_is_read(said: str, read: str) -> None:
    assert reading(said, WARD, "voice") == read


@pytest.mark.parametrize(
    ("said", "channel"), [*((said, "text") for said in ASKED), *((said, "voice") for said in ASKED_ALOUD)]
)
def test_what_may_be_otherwise_is_asked(said: str, channel: Channel) -> None:
    assert "ask" in reading(said, WARD, channel)
