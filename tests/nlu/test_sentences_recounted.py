"""Exchanges, mishaps, journeys, corrections and questions that are told in whole sentences, dictated."""

from __future__ import annotations

import pytest

from .saying import reading

READ = (
    (
        "I've changed the bottle on bed 9, that was ten to six, the old one had 1,955 in it",
        "exchanged bed=9 at=17:50 final_ml=1955",
    ),
    ("bed 9 bottle changed at 1750, that was 1,955", "exchanged bed=9 at=17:50 final_ml=1955"),
    ("bed 9 tube out, that was quarter to six, final 340", "removed bed=9 at=17:45 level_ml=340"),
    ("bed 9 line 340, that was wrong, it was 430", "corrected bed=9 was_ml=340 level_ml=430"),
    (
        "bed 11 suction was off so I turned it up to 20 at 1800",
        "checked bed=11 at=18:00 suction_cmh2o=20; incident bed=11 at=18:00 what=suction_off",
    ),
    (
        "changed the drain on bed 9 at six pm because it was full, old one said 1,980",
        "exchanged bed=9 at=18:00 final_ml=1980",
    ),
    (
        "bed 4's canister is full so I changed it at 6:50 pm, final level was 1,990",
        "exchanged bed=4 at=18:50 final_ml=1990",
    ),
    (
        "bed 9's new bottle went up at 18:55, old one was on 690, new one starts at nought",
        "exchanged bed=9 at=18:55 final_ml=690 opening_ml=0",
    ),
    ("bed 8's bottle changed at 1830, the old one ended 1,770", "exchanged bed=8 at=18:30 final_ml=1770"),
    (
        (
            "bed eleven had a canister change at eighteen thirty, closing level 1,640, new one had "
            "sixty by nineteen hundred"
        ),
        "exchanged bed=11 at=18:30 final_ml=1640; mark bed=11 at=19:00 level_ml=60",
    ),
    (
        "bed 14 both canisters changed at 1800, left one was 1,230 and right one was 980",
        (
            "exchanged bed=14 tube=left at=18:00 final_ml=1230; exchanged bed=14 tube=right at=18:00 "
            "final_ml=980"
        ),
    ),
    (
        "both of bed 3's boxes were swapped at 5:30 pm, right old one 1,600, left old one 1,150",
        "exchanged bed=3 tube=right at=17:30 final_ml=1600; exchanged bed=3 tube=left at=17:30 final_ml=1150",
    ),
    (
        (
            "right side of bed two got a new canister at 18:55, old one ended 1,770, and the left one "
            "got changed at 19:00, old one 1,805"
        ),
        "exchanged bed=2 tube=right at=18:55 final_ml=1770; exchanged bed=2 tube=left at=19:00 final_ml=1805",
    ),
    (
        "bed eleven, canister's been changed, that was at eighteen thirty, final eleven sixty",
        "exchanged bed=11 at=18:30 final_ml=1160",
    ),
    (
        "bed 19 drain removed by the registrar at ten to six, it was on 560",
        "removed bed=19 at=17:50 level_ml=560",
    ),
    (
        (
            "bed 3 they pulled the left one at sixteen fifty, the right's still in at two sixty as of "
            "eighteen twenty"
        ),
        "removed bed=3 tube=left at=16:50; mark bed=3 tube=right at=18:20 level_ml=260",
    ),
    (
        "bed 7, new chest drain on the right at ten past two pm, it's a pneumothorax, starts at zero",
        "placed bed=7 tube=right at=14:10 level_ml=0 reason=air",
    ),
    ("bed 2 new tubes from the OR at 1845, post CABG", "placed bed=2 at=18:45 reason=cardiac"),
    (
        "took bed 12 off suction at 1720 for physio and put him back on at 1750",
        "incident bed=12 at=17:20 what=suction_off; incident bed=12 at=17:50 what=suction_on",
    ),
    (
        "suction came off bed three at four o'clock for his walk and went back on at half past four",
        "incident bed=3 at=16:00 what=suction_off; incident bed=3 at=16:30 what=suction_on",
    ),
    ("bed ten has been clamped since fourteen hundred for a trial", "incident bed=10 at=14:00 what=clamped"),
    (
        "bed seven had his tube clamped by the resident at 18:20, he's still clamped",
        "incident bed=7 at=18:20 what=clamped",
    ),
    (
        "somebody kicked bed 2's drain over, it tipped right on its side, I stood it back up",
        "incident bed=2 what=tipped",
    ),
    (
        "bed 17 canister tipped right over at three fifty pm, line was seven sixty at half past three pm",
        "incident bed=17 at=15:50 what=tipped; mark bed=17 at=15:30 level_ml=760",
    ),
    (
        "bed nineteen's drain tipped over while we were turning him at 1640",
        "incident bed=19 at=16:40 what=tipped",
    ),
    (
        "bed 9, drain tipped when the bed was lowered at 18:45, I'll change it",
        "incident bed=9 at=18:45 what=tipped",
    ),
    (
        (
            "the tech tipped bed thirteen's drain at four fifteen wheeling him back, canister changed "
            "at four twenty five, old one read six ninety"
        ),
        "incident bed=13 at=16:15 what=tipped; exchanged bed=13 at=16:25 final_ml=690",
    ),
    (
        "bed 21's tube has slid out about three centimetres, I noticed it at 1830",
        "incident bed=21 at=18:30 what=dislodged",
    ),
    (
        "bed 2 the left chest tube slipped out about an inch at 18:20",
        "incident bed=2 tube=left at=18:20 what=dislodged",
    ),
    (
        "bed nine patient pulled his own tube out at ten to six, it's completely out",
        "incident bed=9 at=17:50 what=dislodged",
    ),
    (
        "bed 3's canister cracked, it's leaking on the floor, that happened at six oh five",
        "incident bed=3 at=18:05 what=damaged",
    ),
    (
        (
            "I've found bed 3's drain up on the bed rail above his chest, it's been put back on the "
            "floor, that was 1850"
        ),
        "incident bed=3 at=18:50 what=raised",
    ),
    (
        "took bed six to CT with the drain at 17:40 and we were back at 18:10, line is 365 as of 18:30",
        "away bed=6 at=17:40; back bed=6 at=18:10; mark bed=6 at=18:30 level_ml=365",
    ),
    (
        "took bed sixteen down to x-ray at six fifteen, back up at twenty to seven",
        "away bed=16 at=18:15; back bed=16 at=18:40",
    ),
    ("room 22's patient went into 19 at 1820", "moved bed=22 at=18:20 to_bed=19"),
    ("bed 3's gone to bed 18, moved at five pm", "moved bed=3 at=17:00 to_bed=18"),
    ("bed 6 went out to the floor at eighteen thirty, he's transferred", "left bed=6 at=18:30"),
    ("hold on, bed 9 isn't 430 at six, it's 340", "corrected bed=9 at=18:00 was_ml=430 level_ml=340"),
    ("twenty three's final wasn't 1,840, it was 1,814", "corrected bed=23 was_ml=1840 level_ml=1814"),
    (
        "bed 12's line wasn't 540 at eighteen hundred, it was 450",
        "corrected bed=12 at=18:00 was_ml=540 level_ml=450",
    ),
    ("the 1800 mark on bed 8 goes to bed 18", "corrected bed=8 at=18:00 to_bed=18"),
    ("bed eight the 1800 mark goes to bed 18 not 8", "corrected bed=8 at=18:00 to_bed=18"),
    (
        "for bed 2 the eighteen hundred mark I gave should be at 18:30 instead",
        "corrected bed=2 at=18:00 to_at=18:30",
    ),
    ("has anybody checked bed 21 since handover", "asked bed=21 topic=checks"),
    ("did anybody do a check on bed fifteen tonight", "asked bed=15 topic=checks"),
    ("did I give you bed six yet, what's its last line", "asked bed=6 topic=last"),
    ("can you tell me who's due for a line right now", "asked topic=due"),
    ("got it, I've seen bed seven's alert", "acknowledged bed=7"),
    (
        "bed 3 is swinging, suction off the wall is minus twenty",
        "checked bed=3 suction_cmh2o=20 tidaling=True",
    ),
    (
        "we swapped bed six's box at sixteen forty, it was full at two thousand",
        "exchanged bed=6 at=16:40 final_ml=2000",
    ),
    (
        "I've just put a clean bottle on bed four, the full one was two litres",
        "exchanged bed=4 final_ml=2000",
    ),
    (
        "so the box on bed 20 filled up at two pm and I hung a new one, the old had two thousand in it",
        "exchanged bed=20 at=14:00 final_ml=2000",
    ),
    (
        "in bed 12 the canister was up to nineteen hundred so we put a new one on at six thirty",
        "exchanged bed=12 at=18:30 final_ml=1900",
    ),
    (
        "we had to swap the unit on bed 10 because somebody stood on it, 1830, it was at 640",
        "exchanged bed=10 at=18:30 final_ml=640",
    ),
    (
        "had to change bed ten's bottle at five to six, it cracked, old one was reading seven twenty",
        "exchanged bed=10 at=17:55 final_ml=720; incident bed=10 at=17:55 what=damaged",
    ),
    (
        "swap on bed 12 at 1815, old canister eleven hundred, it's reading thirty now",
        "exchanged bed=12 at=18:15 final_ml=1100; mark bed=12 at=19:05 level_ml=30",
    ),
    (
        "both drains removed from bed 13 at 1800, left final 210, right final 340",
        "removed bed=13 tube=left at=18:00 level_ml=210; removed bed=13 tube=right at=18:00 level_ml=340",
    ),
    (
        "bed 2 the consultant took the left drain out at quarter past six, last level two ninety",
        "removed bed=2 tube=left at=18:15 level_ml=290",
    ),
    (
        "lady in bed 11 knocked her own drain over getting out of bed at 1830",
        "incident bed=11 at=18:30 what=tipped",
    ),
    (
        "student had bed 3's drain up on the pillow at 1810, it's back down now",
        "incident bed=3 at=18:10 what=raised",
    ),
    (
        "the drain in bed 19 has come out a few centimetres, noticed at six twenty",
        "incident bed=19 at=18:20 what=dislodged",
    ),
    (
        "bed 22's chest tube fell right out when he coughed at ten past six",
        "incident bed=22 at=18:10 what=dislodged",
    ),
    (
        "bed 16 tube's worked its way out a bit, can see the holes, 1845",
        "incident bed=16 at=18:45 what=dislodged",
    ),
    (
        "drain fell out of bed 8 when we sat him up at 1805, gauze is on",
        "incident bed=8 at=18:05 what=dislodged",
    ),
    ("bed 3 drain's leaking from the bottom, it's broken", "incident bed=3 what=damaged"),
    (
        "bed 10 clamped for the x-ray at 1830 and released at 1840",
        "incident bed=10 at=18:30 what=clamped; incident bed=10 at=18:40 what=unclamped",
    ),
    (
        "we've got bed 15 clamped since noon to see if the lung stays up",
        "incident bed=15 at=12:00 what=clamped",
    ),
    (
        "disconnected bed 17's suction for transport at 1800, reconnected at 1830",
        "incident bed=17 at=18:00 what=suction_off; incident bed=17 at=18:30 what=suction_on",
    ),
    ("bed 10 went back on suction at ten past six", "incident bed=10 at=18:10 what=suction_on"),
    (
        "we took bed 4 to the scanner at 1755 and got back to the ward at 1825",
        "away bed=4 at=17:55; back bed=4 at=18:25",
    ),
    ("the man from bed 7 has gone across to bed 11, 1830", "moved bed=7 at=18:30 to_bed=11"),
    ("we've put bed 20 in bed 18 at 1800", "moved bed=20 at=18:00 to_bed=18"),
    (
        "scrap what I told you for bed 6, the 1800 should be three eighty",
        "corrected bed=6 at=18:00 level_ml=380",
    ),
    (
        "I gave you bed 3 at 1800 as six ten, it's actually one sixty",
        "corrected bed=3 at=18:00 was_ml=610 level_ml=160",
    ),
    ("bed 24 was 515 at six not 550", "corrected bed=24 at=18:00 was_ml=550 level_ml=515"),
    ("take bed 11's 1800 out, it was the urine bag", "withdrawn bed=11 at=18:00"),
    ("please take off bed 14's six pm", "withdrawn bed=14 at=18:00"),
    ("please remove the 6 pm entry on bed 12, I put it in twice", "withdrawn bed=12 at=18:00"),
    ("cancel what I just said", "withdrawn"),
    ("who have I got left to do", "asked topic=due"),
    ("read that back to me please", "asked topic=repeat"),
    ("which patients have I got", "asked topic=beds"),
)
ASKED = (
    "they're taking bed 17's tube out in the morning",
    "new bottle on bed 7 at half past six pm, it's reading fifteen now, last one was on 1,770",
    "scratch bed 3 off the list, he's gone",
    "delete my alarm for bed 3",
    "bed 4's box was on 20 so we changed it at 1830",
    "bed 4 off suction at 1800, back on ward at 1830",
    "change on bed 4 at 1830, old line 340",
    "bed 4 pulled the drain over a bit at 1800",
    "bed 4's line goes to bed 5's monitor",
    "bed 4 canister dressing got changed at 1830",
    "have you got anything for bed 13 at 1800",
    "do you know if bed 5 is clamped",
    "can you see if bed 5 went to CT",
    "did they take bed 5's tube out",
    "are you sure bed 5 was 340 at 1800",
    "could bed 5 be 340 at 1800",
    "bed 8's line at 1800 was wrong, it should be 880",
    "the 1800 mark on bed 2 should be 18:30",
    "bed 9 isn't due at 1800, it's 340",
    "suction on bed 9 isn't 20, it's 10",
    "the seal on bed 9 isn't 2, it's 1",
    "bed 12 wasn't 540 at 18:00, it was 450 at 18:30",
    "bed 23 tubing was kinked under him sorted now",
    "the line goes to bed 18",
    "bed 7 nearly tipped right over at 1800",
    "take bed 6 to CT at 1900",
    "nobody took bed 6 to CT at 1800",
    "bed 6 might have slid out about three centimetres",
    "bed 9 I'll change it when it's full, line 1,900 at 1850",
    "bed 9 is on suction, off the wall at 1830",
    "we need to put a clean bottle on bed 4, the old one had 1,700",
    "don't hang a new one on bed 4, the old one had 1,700 at 1800",
    "would have had to change bed 4's bottle",
    "swapped bed six's box at 640",
    "drain removed from bed 4 at ten to six, it was on 20 of suction",
    "bed 4 clamped, x-ray at 1830",
    "delete the 1800 line on bed twenty fife",
    "take bed 11's tube out at 1800",
)


@pytest.mark.parametrize(("said", "read"), READ)
def test_what_happened_is_read_from_a_whole_sentence(said: str, read: str) -> None:
    assert reading(said, channel="voice") == read


@pytest.mark.parametrize("said", ASKED)
def test_what_is_asked_doubted_or_of_something_else_is_not_told(said: str) -> None:
    assert "ask" in reading(said, channel="voice")
