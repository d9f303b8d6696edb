"""What the nurses of many wards write at the change of shift in the evening."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 3 serosang 50 ml", "checked bed=3 fluid=serosanguineous; ask level_ml"),
        ("when's 12 full", "asked bed=12 topic=capacity"),
        ("whats 12 left at?", "asked bed=12 topic=last"),
        ("12 and 14 totals", "asked bed=12 topic=total; asked bed=14 topic=total"),
        (
            "bed 14 tube clamped for transport 6am, unclamped 615",
            "ask at; ask at",
        ),
        (
            "end of shift 12 1050 14 220",
            "mark bed=12 level_ml=1050 closing; mark bed=14 level_ml=220 closing",
        ),
        ("12: 1050 (+210)", "mark bed=12 level_ml=1050"),
        ("bed 12 1050 (was 840)", "mark bed=12 level_ml=1050"),
        ("bed 12 from 840 to 1050 at 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 up by 60 to 1050 at 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("final for my shift bed 12 1050 (closing)", "mark bed=12 level_ml=1050 closing"),
        ("day shift left it at 1050 bed 12", "mark bed=12 level_ml=1050"),
        ("taking over 12, canister at 1050", "mark bed=12 level_ml=1050"),
        ("bed 12 new canister on, 60 in it", "exchanged bed=12; mark bed=12 level_ml=60"),
        ("swapped 12's drain, 1980 in the old one", "exchanged bed=12 final_ml=1980"),
        (
            "pulled the left tube bed 3 at 1815, 40 since last mark",
            "removed bed=3 tube=left at=18:15; drained bed=3 tube=left at=18:15 volume_ml=40",
        ),
        ("bed 3 RIP 1700", "left bed=3 at=17:00"),
        ("bed 3 to OR 1700 back 1845", "away bed=3 at=17:00; back bed=3 at=18:45"),
        ("bed 3 back from OR 1845 mark 300", "back bed=3 at=18:45; mark bed=3 at=18:45 level_ml=300"),
        ("bed 3 air leak 2/7", "checked bed=3 air_leak=present leak_grade=2"),
        ("bed 3 seal chamber low, topped up to 2", "checked bed=3 seal_cm=2"),
        ("bed 3 300 mls of blood last hour", "drained bed=3 volume_ml=300; checked bed=3 fluid=sanguineous"),
        (
            "Evening all. 12 sitting at 1050, 14 at 220 and 3 hasn't moved",
            "mark bed=12 level_ml=1050; mark bed=14 level_ml=220; drained bed=3 volume_ml=0",
        ),
        ("new pt bed 20 with a chest tube, valve replacement", "placed bed=20 reason=cardiac"),
        ("bed 4 changed box, new starts 0", "exchanged bed=4 opening_ml=0"),
        ("how much has 4 put out in 24 hrs", "asked bed=4 topic=total window=24h"),
        ("4 - 515, 5 - 90", "mark bed=4 level_ml=515; mark bed=5 level_ml=90"),
        ("b12 @ 1050 @ 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("Rm 4 CT line 385 as of 1845", "mark bed=4 at=18:45 level_ml=385"),
        ("4's up to 385 now", "mark bed=4 at=19:05 level_ml=385"),
        ("eos bed 9 770", "mark bed=9 level_ml=770 closing"),
        ("closing line 9 - 770 @1900", "mark bed=9 at=19:00 level_ml=770 closing"),
        (
            "bed 14 L 340 R 95 1900",
            "mark bed=14 tube=left at=19:00 level_ml=340; mark bed=14 tube=right at=19:00 level_ml=95",
        ),
        (
            "14 left pleural 340, mediastinal 95, both at 1900",
            (
                "mark bed=14 tube=left pleural at=19:00 level_ml=340; "
                "mark bed=14 tube=mediastinal at=19:00 level_ml=95"
            ),
        ),
        (
            "bed 3 - sat at 220 at 1800, now 260",
            "mark bed=3 at=18:00 level_ml=220; mark bed=3 at=19:05 level_ml=260",
        ),
        (
            "catching up on 6: 1500=300 1600=340 1700=360 1800=400",
            (
                "mark bed=6 at=15:00 level_ml=300; "
                "mark bed=6 at=16:00 level_ml=340; "
                "mark bed=6 at=17:00 level_ml=360; "
                "mark bed=6 at=18:00 level_ml=400"
            ),
        ),
        (
            "missed a few on bed 6, 300 at 1500, 340 at 1600, 400 at 1800",
            (
                "mark bed=6 at=15:00 level_ml=300; "
                "mark bed=6 at=16:00 level_ml=340; "
                "mark bed=6 at=18:00 level_ml=400"
            ),
        ),
        (
            "2, 5, 9 all unchanged",
            "drained bed=2 volume_ml=0; drained bed=5 volume_ml=0; drained bed=9 volume_ml=0",
        ),
        ("bed 2 nil since 1800", "drained bed=2 volume_ml=0"),
        ("bed 11 dumped 300 all at once", "drained bed=11 volume_ml=300"),
        ("bed 11 dumped 300 when we turned him", "drained bed=11 volume_ml=300"),
        ("bed 11 another 45 out at 1830", "drained bed=11 at=18:30 volume_ml=45"),
        ("bed 8 put out 120 since 1700", "drained bed=8 volume_ml=120"),
        ("dr ross put a right chest tube in bed 19 at 1615", "placed bed=19 tube=right at=16:15"),
        (
            "bed 21 pigtail placed 1100 for effusion, opening level 150",
            "placed bed=21 at=11:00 level_ml=150 reason=effusion",
        ),
        ("bed 21 is 72kg", "described bed=21 weight_kg=72"),
        ("bed 5 pt is s/p VATS lobectomy", "described bed=5 reason=lung"),
        (
            "10 new box 1730. old 1890. new one reads 40 now",
            "exchanged bed=10 at=17:30 final_ml=1890; mark bed=10 at=19:05 level_ml=40",
        ),
        (
            "swapped canister bed 10, final 1890, new one primed at 0",
            "exchanged bed=10 final_ml=1890 opening_ml=0",
        ),
        ("new canister for 10, starting at 20", "exchanged bed=10 opening_ml=20"),
        ("bed 16 tube came out at 1640, last level 610", "removed bed=16 at=16:40 level_ml=610"),
        ("removed R chest tube bed 16 1640 final 610", "removed bed=16 tube=right at=16:40 level_ml=610"),
        ("bed 13 moved to bed 20 at 1500", "moved bed=13 at=15:00 to_bed=20"),
        ("pt from 13 now in 20", "moved bed=13 to_bed=20"),
        ("bed 7 off unit for CT scan 1620", "away bed=7 at=16:20"),
        ("bed 7 back from scan 1710, line 655", "back bed=7 at=17:10; mark bed=7 at=17:10 level_ml=655"),
        ("7 back 1710", "back bed=7 at=17:10"),
        ("bed 22 expired 1510", "left bed=22 at=15:10"),
        ("bed 22 transferred to stepdown at 3pm", "left bed=22 at=15:00"),
        ("correction bed 4 1845 was 358 not 385", "corrected bed=4 at=18:45 was_ml=385 level_ml=358"),
        ("bed 4 the 1845 should be 358", "corrected bed=4 at=18:45 level_ml=358"),
        ("I put 385 for bed 4, should be bed 14", "corrected bed=4 was_ml=385 to_bed=14"),
        ("fix bed 4: 1845 reading was actually at 1830", "corrected bed=4 at=18:45 to_at=18:30"),
        ("delete bed 9 1900", "withdrawn bed=9 at=19:00"),
        ("take out my last entry", "withdrawn"),
        ("cancel that last one, wrong patient", "withdrawn"),
        (
            "bed 3 water seal 2cm, sxn -20, wall 90, no AL, + tidaling, serosang",
            (
                "checked bed=3 seal_cm=2 suction_cmh2o=20 wall_mmhg=90 air_leak=none "
                "tidaling=True fluid=serosanguineous"
            ),
        ),
        (
            "b3 ws only, tidaling +, small intermittent air leak w cough",
            "checked bed=3 suction_cmh2o=0 air_leak=intermittent tidaling=True",
        ),
        ("3 drainage now bright red", "checked bed=3 at=19:05 fluid=bright_red"),
        ("bed 3 fluid turned milky", "checked bed=3 fluid=chylous"),
        ("md order suction 20 bed 3", "ordered bed=3 suction_cmh2o=20"),
        ("per dr lee bed 3 to water seal at 1400", "checked bed=3 at=14:00 suction_cmh2o=0"),
        ("bed 18 drain got knocked over 1850", "incident bed=18 at=18:50 what=tipped"),
        ("bed 18 CT clamped 1400 for trial", "incident bed=18 at=14:00 what=clamped"),
        ("unclamped 18 at 1500", "incident bed=18 at=15:00 what=unclamped"),
        ("bed 18 tubing pulled apart from drain", "incident bed=18 what=disconnected"),
        ("whats 12 done since 1500", "asked bed=12 topic=total window=15:00"),
        ("24h total for 12?", "asked bed=12 topic=total window=24h"),
        ("how much has 12 drained today", "asked bed=12 topic=total window=day"),
        ("12 output last shift?", "asked bed=12 topic=total window=last_shift"),
        ("output in the past 4h bed 12", "asked bed=12 topic=total window=4h"),
        ("is bed 12 slowing down", "asked bed=12 topic=trend"),
        ("how fast is 12 draining", "asked bed=12 topic=rate"),
        ("sbar for bed 12 pls", "asked bed=12 topic=handoff"),
        ("what do I chart for 12 at 1900", "asked bed=12 at=19:00 topic=chart"),
        ("who's due for a mark", "asked topic=due"),
        ("when will 12 need a new box", "asked bed=12 topic=capacity"),
        ("any unanswered questions", "asked topic=open"),
        ("last checks 12", "asked bed=12 topic=checks"),
        ("all of 12's marks today", "asked bed=12 topic=history"),
        ("seen bed 12", "acknowledged bed=12"),
        ("amended, bed 12", "acknowledged bed=12"),
        ("yes", "answered answer=yes"),
        ("yes 880", "answered answer=yes level_ml=880"),
        ("nope its 880", "answered answer=no level_ml=880"),
        ("misread sorry 880", "answered choice=misread level_ml=880"),
        ("left one", "answered tube=left"),
        ("1840", "answered level_ml=1840"),
        ("at 1840", "answered at=18:40"),
        ("bed 12 JP 45, CT 1050 at 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 foley 400 ct 1050", "mark bed=12 level_ml=1050"),
        (
            "bed 12 weight 82 kg 1050 at 1900",
            "mark bed=12 at=19:00 level_ml=1050; described bed=12 at=19:00 weight_kg=82",
        ),
        ("bed 12 drain 1050 pain 4/10", "mark bed=12 level_ml=1050"),
        ("bed 12 due for mark at 2000", "asked bed=12 topic=due"),
    ],
)
def test_an_evening_message_is_read_as_its_nurse_meant_it(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("can you remind me for 12 in 1 hr", "ask kind"),
        ("done with 12, going home", "ask kind"),
        ("12 0640", "ask level_ml"),
        ("12 0640 at 0640", "ask level_ml"),
        ("bed 12 new canister started at 1600, 60 now", "ask at"),
        ("bed 12 disregard 1050", "ask at"),
        ("oops meant 14", "ask kind"),
        ("13 not 12", "ask kind"),
        ("bed 2 between 400 and 450", "ask level_ml"),
        ("what did 12 put out on nights", "ask window"),
        ("bed 12 1050 final at 1900", "ask level_ml"),
        ("bed 12 new canister 60", "ask final_ml"),
        ("the old one in 12 was 1980", "ask final_ml; ask level_ml"),
        ("bed 3 tube d/c 1815", "ask level_ml"),
        ("goal for bed 12 is under 300 by morning", ""),
        ("bed 12 BP 105/60 hr 88", ""),
        ("bed 8 output 210", "ask kind"),
        ("bed 40 mark 100", "ask bed"),
        ("new CT bed 17, left, for pneumo, 1430", "ask level_ml"),
        ("bed 17 new left CT placed 1430 for pneumothorax", "ask level_ml"),
        ("fresh CABG to bed 1, 2 mediastinals and a left pleural y'd together, came up 1500", "ask kind"),
        ("bed 19 R chest tube inserted by dr ross 1615 with 400 out right away", "ask level_ml"),
        ("16 CT d/c'd 1640", "ask level_ml"),
        ("13 is in 20 now", "ask level_ml"),
        ("bed 14 1900 left and right are swapped", "ask kind"),
        ("what was 12 at 1500", "ask level_ml"),
        ("bed 12 didn't drain anything over 200 all day", "ask volume_ml"),
        ("bed 12 hasnt reached 1050 yet", "ask kind"),
        ("plan to pull bed 12 CT when <150/24h", "ask kind"),
        ("bed 12 goal <200", ""),
        ("bed 12 JP 45", ""),
        ("bed 12 hgb 8.2", ""),
        ("bed 12 BP 92/50 HR 118", ""),
        ("bed 12 K 3.4 replaced", "ask kind"),
        ("bed 12 running at 75 ml/hr", ""),
        ("bed 12 draining about 50 an hour", "ask level_ml"),
        ("bed 12 between 1000 and 1050 at 1900", "ask level_ml"),
        ("bed 12 1050-1060 at 1900", "ask level_ml"),
        ("bed 12 1050.5", "ask level_ml"),
        ("night nurse said bed 12 was 1050", "ask level_ml"),
        ("I think bed 12 is 1050", "ask kind"),
        ("is bed 12 1050?", "ask level_ml"),
        ("bed 12 1050?", "ask level_ml"),
        ("bed 12 no 13 1050 at 1900", "ask bed"),
        ("bed 12 1050 no wait 1005 at 1900", "ask level_ml"),
        ("bed 12 1050 or maybe 1060", "ask level_ml"),
        ("bed 12 1900 1930", "ask level_ml"),
        ("bed 12 chest tube day 3", ""),
        ("bed 12 20g IV placed", "ask level_ml"),
        ("bed 12 wound vac canister changed", "ask final_ml"),
        ("bed 12 iv fluids changed to 100", ""),
        ("bed 12 got 500 LR bolus", ""),
        ("pt in 12 ate 50% lunch, drank 240", ""),
        ("bed 12 chest xray at 1700", ""),
        ("call lab 4455 about bed 12", ""),
        ("bed 12 mark at 2000 please", "ask level_ml"),
    ],
)
def test_an_evening_message_that_is_not_sure_or_not_ours_tells_nothing(text: str, read: str) -> None:
    assert reading(text) == read
